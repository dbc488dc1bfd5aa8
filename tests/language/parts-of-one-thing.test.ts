/** Whose part "the legs" and "the sides" are, where several things were spoken of. */
import { expect, test } from 'vitest';
import { readMemo } from '../../src/language/pipeline.ts';

const CONTEXT = { units: 'metric', region: 'GB', recordedAt: '2026-06-10T12:00:00+01:00' } as const;

test.each([
  [
    "The stove is 580 wide. The bench is going to be 900 high, and the top's 27 mil beech, so the legs want to be 873.",
    ['stove', 'bench', 'bench top', 'bench legs'],
  ],
  [
    "The shed is four metres long. The trailer's 2300 wide, the floor's 18 mil ply and the sides are 600 high.",
    ['shed', 'trailer', 'floor', 'trailer sides'],
  ],
  ['The bench is 900 high. The legs are 873.', ['bench', 'bench legs']],
])('%s', (said, things) => {
  const { figures } = readMemo(said, CONTEXT).notes;
  expect(figures.map(({ item }) => item)).toEqual(things);
});
