import { expect, test } from 'vitest';
import { hearPiece } from '../../../src/speech/recogniser/hear-piece.ts';
import { quietestPlace } from '../../../src/speech/recogniser/quiet-place.ts';
import { joined, whiteNoise } from '../../kit/sound.ts';

const RATE = 16_000;

/** Two noisy halves with a pause at 5.5 s. */
const sound = joined([whiteNoise(5.3, RATE), new Float32Array(0.4 * RATE), whiteNoise(4.3, RATE)]);

test('the quietest place is the pause', () => {
  expect(quietestPlace(sound, 3 * RATE, 7 * RATE) / RATE).toBeCloseTo(5.5, 1);
});

test('a text that could have been spoken is taken as it is, with white space tidied', async () => {
  const parts = await hearPiece(sound, async () => ({ text: '  The hull \u0007 is  9.5 metres.\n' }));
  expect(parts).toEqual([{ start: 0, end: sound.length, text: 'The hull is 9.5 metres.' }]);
});

test.each([
  ['nothing', ''],
  ['more than can be spoken', 'word '.repeat(80)],
  ['the same words over and over', 'and then '.repeat(12)],
])('%s is heard again in halves, cut at the pause', async (_, stumble) => {
  const parts = await hearPiece(sound, async (samples) => ({
    text: samples.length === sound.length ? stumble : 'A half.',
  }));
  expect(parts.map(({ text }) => text)).toEqual(['A half.', 'A half.']);
  expect((parts[0]?.end ?? 0) / RATE).toBeCloseTo(5.5, 1);
  expect(parts[1]?.end).toBe(sound.length);
});

test('halving goes three levels deep and no further', async () => {
  let runs = 0;
  const parts = await hearPiece(whiteNoise(30, RATE), async () => {
    runs++;
    return { text: '' };
  });
  expect(runs).toBe(1 + 2 + 4 + 8);
  expect(parts).toHaveLength(8);
});
