/** How far two figures may be apart and still be one: as said, as the project has it, or by how finely they were told. */
import { describe, expect, test } from 'vitest';
import { agree, toleranceBetween } from '../../src/model/tolerance.ts';

type Claim = Parameters<typeof toleranceBetween>[0];

const long = (value: number, unit: string, more: Partial<Claim> = {}): Claim => ({
  value,
  unit,
  dimension: 'length',
  ...more,
});
const heavy = (value: number, unit: string, more: Partial<Claim> = {}): Claim => ({
  value,
  unit,
  dimension: 'mass',
  ...more,
});

describe('told finely', () => {
  test.each([
    ['a millimetre at least', long(200, 'mm'), long(202, 'mm'), 1],
    ['a quarter of a per cent above that', long(1000, 'mm'), long(2000, 'mm'), 5],
    ['of the larger, whichever it is', long(2000, 'mm'), long(1000, 'mm'), 5],
    ['of its size, whatever its sign', long(-2000, 'mm'), long(-1000, 'mm'), 5],
    ['a twentieth of what is about', long(2000, 'mm', { bound: 'about' }), long(1900, 'mm'), 100],
    ['likewise of the newer', long(1900, 'mm'), long(2000, 'mm', { bound: 'about' }), 100],
    ['not of other bounds', long(2000, 'mm', { bound: 'at-most' }), long(1900, 'mm'), 5],
    ['a tenth where both count in tenths', long(12.5, 'mm'), long(12.4, 'mm'), 0.1],
    ['the coarser of a tenth and a hundredth', long(12.5, 'mm'), long(12.43, 'mm'), 0.1],
    ['a millimetre where one is whole', long(12, 'mm'), long(12.43, 'mm'), 1],
    ['a millimetre in the unit of the newer', long(20, 'cm'), long(20.1, 'cm'), 0.1],
    ['no least one of weights', heavy(2, 'kg'), heavy(4, 'kg'), 0.01],
  ])('%s', (_what, older, newer, value) => {
    const found = toleranceBetween(older, newer, {});
    expect(found).toMatchObject({ unit: newer.unit, from: 'precision' });
    expect(found.value).toBeCloseTo(value, 9);
  });

  test('it is never nothing', () => {
    expect(toleranceBetween(heavy(0, 'kg'), heavy(0, 'kg'), {}).value).toBeGreaterThan(0);
  });

  test.each([
    ['whole inches to an eighth', long(508, 'mm'), long(20, 'in'), 1 / 8],
    ['inches with a fraction to a thirty-second', long(38.1, 'mm'), long(1.5, 'in'), 1 / 25.4],
    ['the older inches just so', long(20, 'in'), long(508, 'mm'), 25.4 / 8],
    ['pounds to half of the last place', heavy(3.55, 'kg'), heavy(8, 'lb'), 8 * 0.02],
    ['and to a fiftieth at most', heavy(1361, 'kg'), heavy(3000, 'lb'), 3000 * 0.02],
    ['a last place within a fiftieth', heavy(13.6, 'kg'), heavy(31, 'lb'), 0.5],
  ])('said again in the other system: %s', (_what, older, newer, value) => {
    expect(toleranceBetween(older, newer, {}).value).toBeCloseTo(value, 3);
  });
});

describe('as said', () => {
  test.each([
    ['with the newer', long(900, 'mm'), long(900, 'mm', { plusMinus: 3 }), 3],
    ['with the older', long(900, 'mm', { plusMinus: 3 }), long(900, 'mm'), 3],
    ['the wider of both', long(900, 'mm', { plusMinus: 4 }), long(900, 'mm', { plusMinus: 3 }), 4],
    ['in a unit of its own', long(90, 'cm'), long(90, 'cm', { plusMinus: 5, plusMinusUnit: 'mm' }), 0.5],
    ['in the unit of the older', long(90, 'cm', { plusMinus: 0.5 }), long(900, 'mm'), 5],
    [
      'with what stands',
      long(900, 'mm', { tolerance: { value: 7, unit: 'mm', from: 'said' } }),
      long(900, 'mm'),
      7,
    ],
  ])('%s', (_what, older, newer, value) => {
    const project = { length: { value: 2, unit: 'mm' } };
    const found = toleranceBetween(older, newer, project);
    expect(found).toMatchObject({ unit: newer.unit, from: 'said' });
    expect(found.value).toBeCloseTo(value, 9);
  });
});

describe('as the project has it', () => {
  const project = { length: { value: 0.2, unit: 'cm' } };

  test.each([
    ['where nothing was said', long(900, 'mm'), long(900, 'mm'), 'project', 2],
    [
      'where what stands has one by its precision',
      long(900, 'mm', { tolerance: { value: 7, unit: 'mm', from: 'precision' } }),
      long(900, 'mm'),
      'project',
      2,
    ],
    ['and nothing said is nought', long(900, 'mm', { plusMinus: 0 }), long(900, 'mm'), 'project', 2],
    ['not for another dimension', heavy(400, 'kg'), heavy(400, 'kg'), 'precision', 1],
  ] as const)('%s', (_what, older, newer, from, value) => {
    const found = toleranceBetween(older, newer, project);
    expect(found).toMatchObject({ from, unit: newer.unit });
    expect(found.value).toBeCloseTo(value, 9);
  });

  test.each([
    ['of nothing', { value: 0, unit: 'mm' }],
    ['of another kind', { value: 2, unit: 'kg' }],
  ])('one %s is none', (_what, length) => {
    expect(toleranceBetween(long(900, 'mm'), long(900, 'mm'), { length }).from).toBe('precision');
  });

  test('of temperatures it is a difference, and not a place on the scale', () => {
    const warm = { value: 68, unit: 'degF', dimension: 'temperature' } as const;
    const found = toleranceBetween(warm, warm, { temperature: { value: 2, unit: 'degC' } });
    expect(found.from).toBe('project');
    expect(found.value).toBeCloseTo(3.6, 9);
  });
});

describe('two figures agree', () => {
  test.each([
    ['up to the tolerance', long(900, 'mm'), long(903, 'mm'), { value: 3, unit: 'mm' }, true],
    ['to both sides', long(903, 'mm'), long(900, 'mm'), { value: 3, unit: 'mm' }, true],
    ['not past it', long(900, 'mm'), long(903.01, 'mm'), { value: 3, unit: 'mm' }, false],
    ['nor to the other side', long(903.01, 'mm'), long(900, 'mm'), { value: 3, unit: 'mm' }, false],
    ['across units', long(90, 'cm'), long(903, 'mm'), { value: 3, unit: 'mm' }, true],
    ['alone where the tolerance is of another kind', long(1, 'mm'), long(2, 'mm'), heavy(3, 'kg'), false],
    ['exactly, with any tolerance', long(1, 'mm'), long(1, 'mm'), heavy(3, 'kg'), true],
    ['or do not compare', long(1, 'mm'), heavy(1, 'kg'), { value: 3, unit: 'mm' }, undefined],
  ])('%s', (_what, a, b, tolerance, answer) => {
    expect(agree(a, b, tolerance)).toBe(answer);
  });
});
