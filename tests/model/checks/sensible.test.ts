import { expect, test } from 'vitest';
import { CHECKS } from '../../../src/model/checks/all-checks.ts';
import type { CheckInput, Range, Say } from '../../../src/model/checks/check.ts';
import { CLEARANCE } from '../../../src/model/checks/clearance.ts';
import { exactRange, rangeAbout } from '../../../src/model/checks/ranges.ts';
import { missingInputs, runCheck } from '../../../src/model/checks/run-check.ts';
import { mostOf, nonsense } from '../../../src/model/checks/sensible.ts';
import { given, ran } from '../../kit/given.ts';

const HEIGHT: CheckInput = { name: 'bench height', kind: 'length', says: 'height of the bench' };
const OFFSET: CheckInput = { ...HEIGHT, name: 'offset', anySign: true };
const HUMIDITY: CheckInput = { name: 'humidity', kind: 'ratio', says: 'humidity of the air', most: 1 };
const AIR: CheckInput = { name: 'air', kind: 'temperature', says: 'warmth of the air', anySign: true };

const say: Say = (base, kind) => {
  if (kind === 'ratio') return `${base * 100} %`;
  if (kind === 'temperature') return `${Math.round(base - 273.15)} degC`;
  return Math.abs(base) < 1 ? `${Math.round(base * 1000)} mm` : `${base} m`;
};

test.each<[CheckInput, Range, string]>([
  [HEIGHT, exactRange(92), '92 m is more than anything in a build: 9.2 m, 920 mm, or 92 mm?'],
  [HEIGHT, exactRange(6000), '6000 m is more than anything in a build: 6 m?'],
  [HEIGHT, exactRange(9e9), '9000000000 m is more than anything in a build'],
  [HEIGHT, exactRange(0), '0 mm is nothing: give its size'],
  [HEIGHT, exactRange(-0.9), '-900 mm is less than nothing: 900 mm?'],
  [HEIGHT, rangeAbout(0.002, 0.003), '2 mm may be nothing at all: its tolerance is as large as itself'],
  [HEIGHT, exactRange(Number.NaN), 'that is no number'],
  [HEIGHT, exactRange(Number.POSITIVE_INFINITY), 'that is no number'],
  [OFFSET, exactRange(-92), '-92 m is more than anything in a build: -9.2 m, -920 mm, or -92 mm?'],
  [HUMIDITY, exactRange(65), '6500 % is more than the 100 % that makes sense: 65 %, or 6.5 %?'],
  [AIR, exactRange(73.15), '-200 degC is colder than any place to work in'],
])('%o of %o makes no sense, and a sentence says so', (input, range, why) => {
  expect(nonsense(input, range, say)).toBe(why);
});

test.each<[CheckInput, Range]>([
  [HEIGHT, exactRange(0.92)],
  [HEIGHT, rangeAbout(12, 0.5)],
  [OFFSET, exactRange(0)],
  [OFFSET, exactRange(-0.018)],
  [HUMIDITY, exactRange(1)],
  [AIR, exactRange(263.15)],
])('%o of %o makes sense', (input, range) => {
  expect(nonsense(input, range, say)).toBeUndefined();
});

test('a missing input is named with what to give, and nothing is worked out', () => {
  expect(ran(CLEARANCE, { opening: '600 mm' })).toMatchObject({
    verdict: 'not-run',
    why: 'missing: part (size of the part in the same directions)',
  });
  expect(missingInputs(CLEARANCE, given({})).map(({ name }) => name)).toEqual(['opening', 'part']);
});

test.each(
  CHECKS.flatMap((check) => check.inputs.map((input) => [check.name, input.name, { check, input }] as const)),
)('%s refuses an absurd %s with a sentence and no number', (_check, _input, { check, input }) => {
  const absurd = mostOf(input) === Number.POSITIVE_INFINITY ? Number.NaN : mostOf(input) * 2;
  const bad = [
    absurd,
    Number.NaN,
    ...(input.anySign ? [] : [-1]),
    ...(input.anySign || input.nought ? [] : [0]),
  ];
  for (const value of bad) {
    const inputs = new Map(
      check.inputs.map((one) => [one.name, [exactRange(one === input ? value : plain(one))]] as const),
    );
    const worked = runCheck(check, { inputs, options: new Map(), say });
    expect(worked.verdict).toBe('refused');
    expect(worked.why).toMatch(new RegExp(`^${input.name}: `));
    expect(worked).not.toHaveProperty('results');
  }
});

/** Something that makes sense for every input. */
const plain = (input: CheckInput) => (input.kind === 'temperature' ? 290 : Math.min(1, mostOf(input) / 2));
