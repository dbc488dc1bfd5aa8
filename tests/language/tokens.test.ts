import fc from 'fast-check';
import { expect, test } from 'vitest';
import { tokenise } from '../../src/language/tokens.ts';

const cut = (text: string) => tokenise(text).map((token) => token.text);

test.each([
  ["The deck's 12mm ply", ['The', 'deck', "'s", '12', 'mm', 'ply']],
  ['1,220 by 2.4, so 2x4 is', ['1,220', 'by', '2.4', ',', 'so', '2', 'x', '4', 'is']],
  ['8\'4" and 2-3/8', ['8', "'", '4', '"', 'and', '2', '-', '3', '/', '8']],
  ["don't, can’t, we’ll", ["don't", ',', 'can’t', ',', 'we', '’ll']],
  ['M12 bolts, 6mm2 cable, 4m² deck', ['M12', 'bolts', ',', '6', 'mm2', 'cable', ',', '4', 'm²', 'deck']],
  ['½ inch at 20°C', ['½', 'inch', 'at', '20', '°', 'C']],
])('"%s" is cut into its pieces', (text, pieces) => {
  expect(cut(text)).toEqual(pieces);
});

test('sentences are numbered; a decimal point and "approx." end none', () => {
  const numbers = tokenise('It is 2.4 wide. Approx. six! So?\n\nNext').map((token) => token.sentence);
  expect(numbers).toEqual([0, 0, 0, 0, 0, 1, 1, 1, 1, 2, 2, 3]);
});

test('every token is the text at its place, in order, whatever the text is', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme' }), (text) => {
      let last = 0;
      for (const token of tokenise(text)) {
        expect(text.slice(token.start, token.end)).toBe(token.text);
        expect(token.start).toBeGreaterThanOrEqual(last);
        last = token.end;
      }
    }),
  );
});
