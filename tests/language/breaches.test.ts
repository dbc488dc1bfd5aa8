/** Figures that break a limit said before: a problem where the talk owns up to it, and nowhere else. */
import { describe, expect, test } from 'vitest';
import type { KnownLimit } from '../../src/language/notes.ts';
import { readMemo } from '../../src/language/pipeline.ts';

const WAY: KnownLimit = {
  item: 'anything comes through hatch',
  attribute: 'width',
  bound: 'at-most',
  value: 690,
  unit: 'mm',
  dimension: 'length',
};
const RAILING: KnownLimit = { ...WAY, item: 'railing', attribute: 'height', bound: 'at-least', value: 1100 };
const LOAD: KnownLimit = {
  ...WAY,
  item: 'trailer',
  attribute: 'weight',
  dimension: 'mass',
  value: 900,
  unit: 'kg',
};

const problems = (text: string) =>
  readMemo(text, {
    units: 'metric',
    region: 'GB',
    recordedAt: '2026-06-10T18:00:00+01:00',
    knownLimits: [WAY, RAILING, LOAD],
  }).notes.problems.map(({ quote }) => quote);

describe('is told as a problem', () => {
  test.each([
    ['The compressor is 720 mm wide, and you know what the hatch said.'],
    ['I ran the tape up the railing and it is 1040 mm high. You remember the rule.'],
    ['The railing stands 1050 mm high. Ach.'],
    ['With the stove the trailer weighs 940 kilos, so one of us walks.'],
  ])('"%s"', (text) => {
    expect(problems(text)).toHaveLength(1);
  });
});

describe('is no problem', () => {
  test.each([
    [
      'another measure of another thing',
      'The legs are cut again, all four, 735 mm long, so the bench is standing.',
    ],
    ['the way itself', 'The hatch opening is 712 mm wide. I hung the saloon door.'],
    ['a unit is no sigh', 'The legs have to be 715 mm now.'],
    ['within the limit', 'The compressor is 640 mm wide. Ach.'],
    ['taken well', 'The railing is 1080 mm high, which is just fine by the inspector.'],
    ['far past it', 'The fence is 2400 mm wide. Ach.'],
    ['only thought of', 'If the compressor was 720 mm wide we would be in trouble, but it is 600.'],
  ])('%s: "%s"', (_why, text) => {
    expect(problems(text)).toEqual([]);
  });
});
