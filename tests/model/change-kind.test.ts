/** Why a figure differs from the one that stands, from what is known of the two. */
import { describe, expect, test } from 'vitest';
import { changeKindOf, type Difference } from '../../src/model/change-kind.ts';
import type { Likeness } from '../../src/model/likeness.ts';

const mm = (value: number, state?: Difference['was']['state']) => ({
  value,
  unit: 'mm',
  ...(state === undefined ? {} : { state }),
});
const kg = (value: number) => ({ value, unit: 'kg' });
const cue = (
  weight: number,
  change?: Difference['cue']['change'],
  more: Partial<Difference['cue']> = {},
) => ({
  change,
  weight,
  isNeeded: false,
  isRestated: false,
  ...more,
});
const NEEDED = { isNeeded: true };
const RESTATED = { isRestated: true };
const alike = (weight: number): Likeness => ({ kind: 'sounds', words: 'the two sound alike', weight });

const kind = (more: Partial<Difference>) =>
  changeKindOf({
    was: mm(100),
    now: mm(110),
    cue: cue(0),
    likeness: undefined,
    isDerived: false,
    isMade: false,
    isOldSaid: false,
    ...more,
  });

const SLIP = { kind: 'slip', why: 'the two sound alike, and nothing was said of a change' };
const FAR_SLIP = { kind: 'slip', why: 'the two sound alike, and the two are far apart' };
const ANEW = { kind: 'remeasured', why: 'it was measured anew' };
const CAME = { kind: 'remeasured', why: 'what came has this size' };
const LATER = { kind: 'remeasured', why: 'the later figure was measured' };
const SAID_ANEW = { kind: 'remeasured', why: 'a measured figure was said anew' };
const ON_PURPOSE = { kind: 'decided', why: 'it was changed on purpose' };
const ORDERED = { kind: 'decided', why: 'it was ordered in this size' };
const WORDLESS = { kind: 'decided', why: 'the later figure was said without a word about the earlier one' };
const DERIVED = { kind: 'stale', why: 'it was worked out from figures that have changed' };
const MADE = { kind: 'stale', why: 'it was made or ordered to the old size' };
const MADE_BEFORE = { kind: 'stale', why: 'it was made before what it comes from was found to be other' };

describe('two figures that are alike', () => {
  test.each([
    ['half alike, without a word', 0.5, cue(0), SLIP],
    ['half alike, nearly in plain words', 0.5, cue(1.99, 'decided'), SLIP],
    ['half alike, in plain words', 0.5, cue(2, 'decided'), ON_PURPOSE],
    ['half alike, in plain words about what stands', 0.5, cue(2, 'decided', RESTATED), SLIP],
    ['much alike takes plainer words', 0.8, cue(2.99, 'remeasured'), SLIP],
    ['much alike, in plainer words', 0.8, cue(3, 'remeasured'), ANEW],
    ['a little less takes no plainer ones', 0.79, cue(2, 'remeasured'), ANEW],
    ['a little alike is a slip where nothing else is said', 0.1, cue(0), SLIP],
    ['a little alike, said to be changed', 0.49, cue(1, 'decided'), ON_PURPOSE],
    ['a little alike, said to be needed', 0.49, cue(0, undefined, NEEDED), ON_PURPOSE],
    ['not alike at all', 0, cue(0), WORDLESS],
  ] as const)('%s', (_what, weight, said, expected) => {
    expect(kind({ likeness: alike(weight), cue: said })).toEqual(expected);
  });

  test('what is needed of a thing that was made is no slip; needed alone or made alone is', () => {
    const likeness = alike(0.9);
    expect(kind({ likeness, cue: cue(0, undefined, NEEDED), isMade: true })).toEqual(MADE);
    expect(kind({ likeness, cue: cue(0, undefined, NEEDED) })).toEqual(SLIP);
    expect(kind({ likeness, isMade: true })).toEqual(SLIP);
  });
});

describe('two figures that are far apart are of two things', () => {
  test.each([
    ['1.8 times as much is near', mm(100), mm(180), cue(0), WORDLESS],
    ['more is not', mm(100), mm(181), cue(0), undefined],
    ['nor the other way round', mm(181), mm(100), cue(0), undefined],
    ['nothing has no size to compare', mm(0), mm(100), cue(0), undefined],
    ['nor has less than nothing', mm(100), mm(-100), cue(0), undefined],
    ['lengths twice each other stay two, whatever is said', mm(100), mm(200), cue(6, 'decided'), undefined],
    ['a weight may be changed to 2.5 times as much', kg(10), kg(25), cue(3, 'decided'), ON_PURPOSE],
    ['not to more', kg(10), kg(25.1), cue(3, 'decided'), undefined],
    ['not in less plain words', kg(10), kg(25), cue(2.9, 'decided'), undefined],
    ['not measured so', kg(10), kg(25), cue(3, 'remeasured'), undefined],
    ['to 5 times as much in the plainest words', kg(10), kg(50), cue(5, 'decided'), ON_PURPOSE],
    ['not in words a little less plain', kg(10), kg(50), cue(4.9, 'decided'), undefined],
    ['not to more than that', kg(10), kg(50.1), cue(5, 'decided'), undefined],
    ['play below a millimetre doubles as it wears', mm(0.4), mm(0.9), cue(3, 'remeasured'), ANEW],
    ['a millimetre is no play', mm(0.4), mm(1), cue(3, 'remeasured'), undefined],
    ['play without plain words', mm(0.4), mm(0.9), cue(2.9, 'remeasured'), undefined],
    ['units of two kinds', mm(100), kg(100), cue(0), undefined],
  ] as const)('%s', (_what, was, now, said, expected) => {
    expect(kind({ was, now, cue: said })).toEqual(expected);
  });

  test.each([
    ['much alike it is a slip all the same, whatever is said', 0.8, cue(6, 'decided'), FAR_SLIP],
    ['less alike it is nothing', 0.79, cue(6, 'decided'), undefined],
  ] as const)('%s', (_what, weight, said, expected) => {
    expect(kind({ now: mm(400), likeness: alike(weight), cue: said })).toEqual(expected);
  });

  test('with the old value told beside it, words of change count; without any it is of another thing', () => {
    const far = { now: mm(400), isOldSaid: true };
    expect(kind({ ...far, cue: cue(1, 'decided') })).toEqual(ON_PURPOSE);
    expect(kind({ ...far, cue: cue(1, 'remeasured') })).toEqual(ANEW);
    expect(kind({ ...far, cue: cue(0, undefined, NEEDED) })).toEqual(ON_PURPOSE);
    expect(kind(far)).toBeUndefined();
    expect(kind({ ...far, likeness: alike(0.9), cue: cue(6, 'decided') })).toEqual(ON_PURPOSE);
  });
});

describe('what was made or worked out', () => {
  test.each([
    ['worked out, without a word', { isDerived: true }, DERIVED],
    ['worked out, changed on purpose', { isDerived: true, cue: cue(3, 'decided') }, DERIVED],
    ['worked out, put right', { isDerived: true, cue: cue(3, 'corrected') }, DERIVED],
    ['worked out, but measured anew', { isDerived: true, cue: cue(3, 'remeasured') }, ANEW],
    ['worked out, measured anew and needed', { isDerived: true, cue: cue(3, 'remeasured', NEEDED) }, DERIVED],
    ['made, and needed otherwise', { isMade: true, cue: cue(0, undefined, NEEDED) }, MADE],
    ['made, and changed on purpose', { isMade: true, cue: cue(3, 'decided') }, ON_PURPOSE],
    ['made and worked out', { isMade: true, isDerived: true }, DERIVED],
    ['needed, and nothing was made', { cue: cue(0, undefined, NEEDED) }, ON_PURPOSE],
  ] as const)('%s', (_what, more, expected) => {
    expect(kind(more)).toEqual(expected);
  });
});

describe('by what the speaker did', () => {
  const { measured, received, made, calculated, ordered, target } = {
    measured: 'measured',
    received: 'received',
    made: 'made',
    calculated: 'calculated',
    ordered: 'ordered',
    target: 'target',
  } as const;

  test.each([
    ['ordered', undefined, ordered, cue(0), ORDERED],
    ['ordered, and told as a change', undefined, ordered, cue(3, 'decided'), ORDERED],
    ['ordered, and told as measured anew', undefined, ordered, cue(3, 'remeasured'), ORDERED],
    ['ordered, and told as put right', undefined, ordered, cue(3, 'corrected'), ANEW],
    ['came so, told as measured anew', undefined, received, cue(3, 'remeasured'), CAME],
    ['put right', undefined, undefined, cue(3, 'corrected'), ANEW],
    ['came so', undefined, received, cue(0), CAME],
    ['came so after it was measured', measured, received, cue(0), CAME],
    [
      'made so',
      target,
      made,
      cue(0),
      { kind: 'remeasured', why: 'it was made to this size', isUnasked: true },
    ],
    ['measured', undefined, measured, cue(0), LATER],
    ['measured after it was planned', target, measured, cue(0), LATER],
    ['measured after it was assumed', 'assumed', measured, cue(0), LATER],
    ['measured after it was quoted', 'quoted', measured, cue(0), LATER],
    ['measured after it was copied', 'copied', measured, cue(0), LATER],
    ['measured after it was ordered', ordered, measured, cue(0), LATER],
    ['measured after it was measured', measured, measured, cue(0), LATER],
    ['measured after it was made', made, measured, cue(0), LATER],
    ['measured after it was decided', 'decided', measured, cue(0), WORDLESS],
    ['said anew after it was measured', measured, undefined, cue(0), SAID_ANEW],
    ['planned after it came', received, target, cue(0), SAID_ANEW],
    ['planned after it was made', made, target, cue(0), SAID_ANEW],
    ['planned after it was planned', target, target, cue(0), WORDLESS],
    ['calculated after it was planned', target, calculated, cue(0), WORDLESS],
    ['calculated after it was measured is of more', measured, calculated, cue(0), undefined],
    ['calculated after it was made is of more', made, calculated, cue(0), undefined],
    ['calculated without a state before', undefined, calculated, cue(0), WORDLESS],
  ] as const)('%s', (_what, was, now, said, expected) => {
    expect(kind({ was: mm(100, was), now: mm(110, now), cue: said })).toEqual(expected);
  });

  test('calculated right after what it comes from changed, it was made before that', () => {
    const one = { was: mm(100, made), now: mm(110, calculated), isAfterChange: true };
    expect(kind(one)).toEqual(MADE_BEFORE);
    expect(kind({ ...one, isAfterChange: false })).toBeUndefined();
    expect(kind({ ...one, was: mm(100, target) })).toEqual(WORDLESS);
  });
});

test('times of two coats are two, unless they are said to change', () => {
  const one = { was: { value: 16, unit: 'h' }, now: { value: 12, unit: 'h' } };
  expect(kind(one)).toBeUndefined();
  expect(kind({ ...one, cue: cue(1, 'decided') })).toEqual(ON_PURPOSE);
  expect(kind({ ...one, cue: cue(1, 'remeasured') })).toEqual(ANEW);
  expect(kind({ ...one, likeness: alike(0.3) })).toEqual(SLIP);
});

test('gallons are compared as the region has them', () => {
  // Nine imperial gallons are 40.9 litres, nine US gallons 34.1: 1.8 times 20 litres lies between.
  const one = { was: { value: 20, unit: 'L' }, now: { value: 9, unit: 'gal' } };
  expect(kind(one)).toEqual(WORDLESS);
  expect(kind({ ...one, region: 'GB' })).toBeUndefined();
});
