/** What there is, set against what is asked for: a bare number takes the unit of the other one. */
import { expect, test } from 'vitest';
import { readMemo } from '../../../src/language/pipeline.ts';
import { figuresSaid } from '../../kit/figures-said.ts';

test.each([
  ["The tarpaulin wants 14 metres, the yard's only 12.", '14 m at-least; 12 m'],
  ["The drop wants 14 metres, the shaft's only got 12.", '14 m at-least; 12 m'],
  ["The cable run wants 9 metres and I've only 7.", '9 m at-least; 7 m'],
  ["The rope needs 30 metres and the coil's only 25.", '30 m at-least; 25 m'],
  ["It needs 40 kilos and the shelf's only 25.", '40 kg at-least; 25 kg'],
  ["We need 12 amps, the supply's only 10.", '12 A; 10 A'],
  ["The barn door wants 3 metres, the opening's only 2.", '3 m at-least; 2 m'],
  ["She needs 1.2 metres of water and there's only 0.9.", '1.2 m; 0.9 m'],
  ["Need 450 to the bulkhead by the book, I've 380.", '450 mm at-least; 380 mm'],
  ['The brace is 12 metres, it wants 14.', '12 m; 14 m'],
])('"%s": in the unit of what is asked for: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ['It wants 14 metres. The lid is only 12 thick.', '14 m; 12 mm'],
  ["The rope wants 14 metres, it's only 12 mil.", '14 m at-least; 12 mm'],
  ["The beam is 6 metres and the web's only 15.", '6 m; 15 mm'],
  ["It takes 5 litres and there's only 4 bolts.", '5 L'],
  ["It wants 14 metres and there's only two of us.", '14 m'],
  ["The hoist needs 40 kilos on the end and the chain's only 12 thick.", '40 kg at-least; 12 mm'],
])('"%s" sets nothing against it: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test('the depth of water keeps its unit where it was told in metres, and has none where nobody said one', () => {
  const read = (text: string) =>
    readMemo(text, { units: 'metric', recordedAt: '2026-05-01T12:00:00Z' }).notes.figures.map(
      ({ item, value, unit }) => `${item} ${value} ${unit}`,
    );
  expect(read("She needs 1.2 metres of water and there's only 0.9.")).toEqual(['water 1.2 m', 'water 0.9 m']);
  expect(read('The water is 250.')).toEqual(['water 250 1']);
});
