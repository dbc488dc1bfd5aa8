import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { placeUtterances, splitSentences } from '../../../src/speech/recogniser/place-utterances.ts';

const second = 16_000;

describe('splitting a text at its sentence ends', () => {
  test.each([
    ['The bench is in. It is 2.4 metres long.', ['The bench is in.', 'It is 2.4 metres long.']],
    ['Is it 40? Yes! It is.', ['Is it 40?', 'Yes!', 'It is.']],
    ['It costs $5. 2 of them fit.', ['It costs $5.', '2 of them fit.']],
    ['Mr. Weaver came. Dr. Loom did not.', ['Mr. Weaver came.', 'Dr. Loom did not.']],
    ['No. 8 screws, 3.5 by 40.', ['No. 8 screws, 3.5 by 40.']],
    ['It is cut at 5 a.m. tomorrow', ['It is cut at 5 a.m. tomorrow']],
    ['', []],
  ])('"%s"', (text, sentences) => {
    expect(splitSentences(text)).toEqual(sentences);
  });
});

describe('times of sentences', () => {
  test('go to the pause that lies nearest', () => {
    const piece = [
      { start: 1 * second, end: 4 * second },
      { start: 5 * second, end: 8 * second },
    ];
    expect(placeUtterances('The first one is here. Then the second one.', piece)).toEqual([
      { startSeconds: 1, endSeconds: 4, text: 'The first one is here.' },
      { startSeconds: 5, endSeconds: 8, text: 'Then the second one.' },
    ]);
  });

  test('follow the length of the sentences where there is no pause', () => {
    expect(placeUtterances('Aaaa aaaa. Bbbb bbbb bbbb bbbb.', [{ start: 0, end: 6 * second }])).toEqual([
      { startSeconds: 0, endSeconds: 2, text: 'Aaaa aaaa.' },
      { startSeconds: 2, endSeconds: 6, text: 'Bbbb bbbb bbbb bbbb.' },
    ]);
  });

  test('rise, do not overlap and stay inside the speech', () => {
    const pieces = fc
      .array(fc.tuple(fc.integer({ min: 1, max: 20_000 }), fc.integer({ min: 4_000, max: 80_000 })), {
        minLength: 1,
        maxLength: 8,
      })
      .map((pairs) => {
        let at = 0;
        return pairs.map(([gap, length]) => {
          const start = at + gap;
          at = start + length;
          return { start, end: at };
        });
      });
    const texts = fc.array(fc.stringMatching(/^[A-Z][a-z]{0,20}[.?!]$/), { minLength: 1, maxLength: 12 });
    fc.assert(
      fc.property(pieces, texts, (piece, sentences) => {
        const utterances = placeUtterances(sentences.join(' '), piece);
        expect(utterances.map(({ text }) => text).join(' ')).toBe(sentences.join(' '));
        let last = (piece[0]?.start ?? 0) / second - 0.01;
        for (const { startSeconds, endSeconds } of utterances) {
          expect(startSeconds).toBeGreaterThanOrEqual(last - 0.011);
          expect(endSeconds).toBeGreaterThanOrEqual(startSeconds);
          last = endSeconds;
        }
        expect(last).toBeLessThanOrEqual((piece.at(-1)?.end ?? 0) / second + 0.011);
      }),
    );
  });
});
