/** How a figure was worked out, found from the words around it and the figures at hand. */
import { describe, expect, test } from 'vitest';
import {
  derivationOf,
  formulaText,
  hasReasonBehind,
  type Ingredient,
  ingredientOf,
  inputsOf,
  isWorkedOut,
} from '../../src/model/derivation.ts';
import type { StandingRow } from '../../src/model/rows.ts';

/** A place in a talk of one sentence: what is said up to the figure, and what follows. */
const place = (until: string, after = '') => ({
  clause: until,
  sentence: `${until}${after}`,
  until,
  before: '',
  after: '',
  index: 0,
});

const at = (slot: string, value: number, more: Partial<Ingredient> = {}): Ingredient => ({
  slot,
  name: slot,
  value,
  unit: 'mm',
  isNamed: false,
  sentencesBack: 0,
  ...more,
});

const claimed = (value: number, unit = 'mm') => ({ value, unit, slot: 'claim' });

/** The formula in words; nothing where none is believed. */
function found(talk: string, value: number, ingredients: readonly Ingredient[], unit = 'mm') {
  const formula = derivationOf(claimed(value, unit), place(talk), ingredients);
  return formula && formulaText(formula, (slot) => slot);
}

const OPENING = at('opening', 870);
const SIDE = at('side', 30);
const LINING = at('lining', 18);

describe('said as worked out', () => {
  test.each([
    ['so the panel is 930', ''],
    ['930 all told', ''],
    ['set to the same as the door, 930', ''],
    ['cut it to 860', ', because the top is 40 thick'],
    ['cut it to 860', ' to allow for the top'],
  ])('"%s%s"', (until, after) => {
    expect(isWorkedOut(place(until, after))).toBe(true);
  });

  test.each([
    ['the panel is 930', ''],
    ['930, because the opening is so 870', ''],
    ['I cut it. 860', '. Later on, because the top is 40'],
    ['cut it to 860', ` ${'and on and '.repeat(5)}because the top is 40`],
  ])('not "%s%s"', (until, after) => {
    expect(isWorkedOut(place(until, after))).toBe(false);
  });

  test('where the next sentence begins with "so", and not where it has one within', () => {
    expect(isWorkedOut({ ...place('the panel is 930'), after: ' So that went in' })).toBe(true);
    expect(isWorkedOut({ ...place('the panel is 930'), after: 'It is so good' })).toBe(false);
  });

  test('a reason of the clause before is over', () => {
    expect(isWorkedOut(place('because it rained, so it makes 930'))).toBe(true);
  });

  test('a reason stands behind the figure, not before it', () => {
    expect(hasReasonBehind(place('cut to 860', ' because of the top'))).toBe(true);
    expect(hasReasonBehind(place('because of the top 860', ' is cut'))).toBe(false);
  });
});

describe('a sum or a difference', () => {
  test.each([
    ['plus the side makes 900', 900, 'opening + side'],
    ['less the side leaves 840', 840, 'opening - side'],
    ['plus thirty a side makes 930', 930, 'opening + 2 * side'],
    ['less thirty a side leaves 810', 810, 'opening - 2 * side'],
    ['within a millimetre makes 901', 901, 'opening + side'],
  ])('%s', (talk, value, formula) => {
    expect(found(talk, value, [OPENING, SIDE])).toBe(formula);
  });

  test.each([
    ['past a millimetre makes 901.1', 901.1],
    ['one side alone makes 930', 930],
    ['the panel is 900', 900],
  ])('none: %s', (talk, value) => {
    expect(found(talk, value, [OPENING, SIDE])).toBeUndefined();
  });

  test('not of the figure itself, and not of one with itself', () => {
    expect(found('plus makes 900', 900, [OPENING, { ...SIDE, slot: 'claim' }])).toBeUndefined();
    expect(found('plus makes 1740', 1740, [OPENING, { ...OPENING }])).toBeUndefined();
  });

  test('of two out of the past only where both are named', () => {
    const past = { sentencesBack: undefined };
    const [opening, side] = [
      { ...OPENING, ...past },
      { ...SIDE, ...past },
    ].map(({ sentencesBack: _none, ...one }) => one) as [Ingredient, Ingredient];
    expect(found('makes 900', 900, [opening, side])).toBeUndefined();
    expect(found('makes 900', 900, [{ ...opening, isNamed: true }, side])).toBeUndefined();
    expect(
      found('makes 900', 900, [
        { ...opening, isNamed: true },
        { ...side, isNamed: true },
      ]),
    ).toBe('opening + side');
    expect(found('makes 900', 900, [opening, SIDE])).toBe('opening + side');
  });

  test('across units of one kind, and not across kinds', () => {
    expect(found('makes 90', 90, [at('opening', 0.87, { unit: 'm' }), SIDE], 'cm')).toBe('opening + side');
    expect(found('makes 900', 900, [OPENING, at('load', 30, { unit: 'kg' })])).toBeUndefined();
  });

  test.each([
    ['said here before what was said a sentence back', { sentencesBack: 0 }, { sentencesBack: 1 }, 'near'],
    ['a sentence back before two', { sentencesBack: 1 }, { sentencesBack: 2 }, 'near'],
    ['named before just said', { sentencesBack: 1, isNamed: true }, { sentencesBack: 0 }, 'near'],
    ['said here before named further back', { sentencesBack: 0 }, { sentencesBack: 3 }, 'near'],
  ])('%s', (_what, near, far, name) => {
    const pair = [at('far', 30, far), at('near', 30, near)];
    expect(found('makes 900', 900, [OPENING, ...pair])).toBe(`opening + ${name}`);
    expect(found('makes 900', 900, [OPENING, ...pair.reverse()])).toBe(`opening + ${name}`);
  });
});

describe('the same, parts and times', () => {
  test('the same as a thing that is named', () => {
    const named = { ...OPENING, isNamed: true };
    expect(found('the door is the same as the opening, 870', 870, [named])).toBe('opening');
    expect(found('the door is the same as the opening, 870', 870, [OPENING])).toBeUndefined();
    expect(found('so the door is 870', 870, [named])).toBeUndefined();
    expect(found('the door is the same as the opening, 872', 872, [named])).toBeUndefined();
  });

  test.each([
    ['divided into three equal spaces, that is 290', 290, 'opening / 3'],
    ['three of them per side, 2610', 2610, 'opening * 3'],
    ['divided by 3, that is 290', 290, 'opening / 3'],
    ['divided in three, that is 291', 291, 'opening / 3'],
  ])('%s', (talk, value, formula) => {
    expect(found(talk, value, [OPENING])).toBe(formula);
  });

  test.each([
    ['three of them makes 290', 290],
    ['divided one by one that is 870', 870],
    ['divided in three, that is 292', 292],
    ['a ratio of three, divided that is 290', 290],
    ['three to one divided that is 290', 290],
  ])('none: %s', (talk, value) => {
    expect(found(talk, value, [OPENING])).toBeUndefined();
  });

  test('not by a number that is a size itself: "the counter is at 36, an inch thick"', () => {
    const counter = at('counter', 36, { unit: 'in' });
    expect(found('the counter is at 36, an inch each', 1, [counter], 'in')).toBeUndefined();
    expect(found('36 of them, that is an inch each', 1, [{ ...counter, sentencesBack: 1 }], 'in')).toBe(
      'counter / 36',
    );
  });

  test('times a count is less likely than a sum with a figure told before', () => {
    const { sentencesBack: _none, ...before } = at('before', 870);
    expect(found('two of each, 1740', 1740, [OPENING])).toBe('opening * 2');
    expect(found('two of each, 1740', 1740, [OPENING, before])).toBe('opening + before');
  });

  test('only of what is named or near', () => {
    const talk = 'divided into three equal spaces, that is 290';
    expect(found(talk, 290, [{ ...OPENING, sentencesBack: 1 }])).toBe('opening / 3');
    expect(found(talk, 290, [{ ...OPENING, sentencesBack: 2 }])).toBeUndefined();
    expect(found(talk, 290, [{ ...OPENING, sentencesBack: 2, isNamed: true }])).toBe('opening / 3');
  });
});

describe('a row of figures added up', () => {
  test('is three of them or more, said one after the other', () => {
    expect(found('918 all told', 918, [OPENING, SIDE, LINING])).toBe('opening + side + lining');
    const eight = [1, 2, 4, 8, 16, 32, 64, 128].map((value) => at(`part ${value}`, value * 10));
    expect(found('2550 all told', 2550, eight)).toBe(eight.map(({ name }) => name).join(' + '));
    const nine = [...eight, at('part 256', 2560)];
    expect(found('5110 all told', 5110, nine)).toBeUndefined();
  });

  test('goes two sentences back, and no further', () => {
    const back = (sentencesBack: number) => ({ ...LINING, sentencesBack });
    expect(found('918 all told', 918, [OPENING, SIDE, back(2)])).toBe('opening + side + lining');
    expect(found('918 all told', 918, [OPENING, SIDE, back(3)])).toBeUndefined();
  });

  test('takes words that say so', () => {
    expect(found('each 918', 918, [OPENING, SIDE, LINING])).toBeUndefined();
  });
});

describe('a figure in the ratio of two others', () => {
  const speed = at('motor', 1400, { unit: 'rpm', isNamed: true, sentencesBack: 2 });
  const [small, large] = [at('small pulley', 70), at('large pulley', 210)];

  test('is worked out of what is named and of two said here', () => {
    expect(found('so the saw turns at 467', 467, [speed, small, large], 'rpm')).toBe(
      'motor * (small pulley / large pulley)',
    );
    expect(found('so the saw turns at 4200', 4200, [speed, small, large], 'rpm')).toBe(
      'motor * (large pulley / small pulley)',
    );
  });

  test.each([
    ['further off than a five-hundredth', 469, [speed, small, large]],
    ['what is not named', 467, [{ ...speed, isNamed: false }, small, large]],
    ['a pulley said before', 467, [speed, { ...small, sentencesBack: 1 }, large]],
    ['pulleys of two kinds', 467, [speed, small, { ...large, unit: 'kg' }]],
  ])('none: %s', (_what, value, ingredients) => {
    expect(found('so the saw turns at it', value, ingredients, 'rpm')).toBeUndefined();
  });

  test('lengths in the ratio of lengths come out by chance', () => {
    const rise = at('rise', 1400, { isNamed: true });
    expect(found('so it is at 467', 467, [rise, small, large])).toBeUndefined();
  });
});

test('the slots that a formula reads, each once', () => {
  const formula = derivationOf(claimed(930), place('plus thirty a side makes 930'), [OPENING, SIDE]);
  expect(formula && inputsOf(formula)).toEqual(['opening', 'side']);
});

test('what stands is an ingredient, said so many sentences back or before this memo', () => {
  const row = { slot: 's', value: 3, unit: 'mm' } as StandingRow;
  expect(ingredientOf(row, 'rail', true, 0)).toEqual({
    slot: 's',
    value: 3,
    unit: 'mm',
    name: 'rail',
    isNamed: true,
    sentencesBack: 0,
  });
  expect(ingredientOf(row, 'rail', false)).not.toHaveProperty('sentencesBack');
});
