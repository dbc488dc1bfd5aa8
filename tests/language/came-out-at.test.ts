import { expect, test } from 'vitest';
import { readMemo } from '../../src/language/pipeline.ts';

const stateIn = (said: string) =>
  readMemo(said, {
    units: 'metric',
    region: 'GB',
    recordedAt: '2026-06-10T12:00:00+01:00',
  }).notes.figures.map(({ value, state }) => [value, state]);

test.each([
  ['The bench came out at 1600.', 1600],
  ['The step comes out at 252 mil.', 252],
])('"%s" is a measured size', (said, value) => {
  expect(stateIn(said)).toEqual([[value, 'measured']]);
});

test.each([
  ['The two together come out at 1800 mil.', 1800],
  ['That comes out at 430 kilos.', 430],
  ['The rise comes to 196 mil.', 196],
])('"%s" is worked out', (said, value) => {
  expect(stateIn(said)).toEqual([[value, 'calculated']]);
});
