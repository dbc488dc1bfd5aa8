import { expect, test } from 'vitest';
import { levelOf, meter, SILENCE } from '../../../src/speech/microphone/level.ts';

const sine = (amplitude: number) =>
  Int16Array.from({ length: 16_000 }, (_, place) =>
    Math.round(amplitude * 32_767 * Math.sin((2 * Math.PI * 440 * place) / 16_000)),
  );

test.each([
  // A full-scale sine is 0 dB both ways; half of it is 6.02 dB down, a tenth 20 dB. Arithmetic of decibels.
  [1, 0, 0],
  [0.5, -6, -6],
  [0.1, -20, -20],
])('a sine of amplitude %d is at %d dB, its peaks at %d dB', (amplitude, rms, peak) => {
  const level = levelOf(sine(amplitude));
  expect(level.rms).toBeCloseTo(rms, 0);
  expect(level.peak).toBeCloseTo(peak, 0);
});

test('a full-scale square has 3 dB more than a sine', () => {
  const square = Int16Array.from({ length: 1000 }, (_, place) => (place % 20 < 10 ? 32_767 : -32_768));
  expect(levelOf(square)).toEqual({ rms: 3, peak: 0 });
});

test('silence, and no sound at all, are at the bottom', () => {
  expect(levelOf(new Int16Array(100))).toEqual({ rms: SILENCE, peak: SILENCE });
  expect(levelOf(new Int16Array())).toEqual({ rms: SILENCE, peak: SILENCE });
});

test.each([
  [-96, 0, 'no sound'],
  [-60, 0, undefined],
  [-30, 10, undefined],
  [-18, 14, undefined],
  [-0.5, 20, 'too loud'],
  [0, 20, 'too loud'],
])('peaks at %d dB light %d of 20 cells', (peak, lit, word) => {
  expect(meter({ rms: peak, peak }, 20)).toEqual(word ? { lit, word } : { lit });
});
