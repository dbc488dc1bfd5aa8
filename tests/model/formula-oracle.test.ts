/** Formulas against mathjs 15 as an outside reference: the same sums, worked out by another program. */
import fc from 'fast-check';
import * as math from 'mathjs';
import { expect, test } from 'vitest';
import { evaluate } from '../../src/model/evaluate.ts';
import { readFormula } from '../../src/model/formula.ts';
import { convert } from '../../src/model/units.ts';

/** Units that both know, with the spelling of each. mathjs has no torque of its own, so none is asked for. */
const LENGTHS = ['mm', 'cm', 'm', 'in', 'ft', 'yd'] as const;
const MASSES = ['g', 'kg', 'lb', 'oz'] as const;
const MATHJS: Readonly<Record<string, string>> = { lb: 'lbm' };

type Shape =
  | { readonly kind: 'quantity'; readonly value: number; readonly unit: string }
  | { readonly kind: 'sum' | 'difference'; readonly left: Shape; readonly right: Shape }
  | { readonly kind: 'times' | 'over'; readonly left: Shape; readonly by: number };

const SIGNS = { sum: '+', difference: '-', times: '*', over: '/' } as const;

function shapes(units: readonly string[]): fc.Arbitrary<Shape> {
  const value = fc.integer({ min: -40_000, max: 40_000 }).map((whole) => whole / 16);
  const quantity = fc.record({
    kind: fc.constant('quantity' as const),
    value,
    unit: fc.constantFrom(...units),
  });
  const { shape } = fc.letrec<{ shape: Shape }>((tie) => ({
    shape: fc.oneof(
      { maxDepth: 4, withCrossShrink: true },
      quantity,
      fc.record({
        kind: fc.constantFrom('sum' as const, 'difference' as const),
        left: tie('shape'),
        right: tie('shape'),
      }),
      fc.record({
        kind: fc.constantFrom('times' as const, 'over' as const),
        left: tie('shape'),
        by: fc.integer({ min: 1, max: 24 }),
      }),
    ),
  }));
  return shape;
}

/** The formula as it is written, with the spelling of units that the reader wants. */
function written(shape: Shape, spell: (unit: string) => string): string {
  if (shape.kind === 'quantity') {
    const size = `${Math.abs(shape.value)} ${spell(shape.unit)}`;
    return shape.value < 0 ? `(-(${size}))` : size;
  }
  const left = written(shape.left, spell);
  const right = 'by' in shape ? String(shape.by) : written(shape.right, spell);
  return `(${left} ${SIGNS[shape.kind]} ${right})`;
}

function sizeOf(shape: Shape): number {
  if (shape.kind === 'quantity') return 1;
  return 1 + sizeOf(shape.left) + ('right' in shape ? sizeOf(shape.right) : 0);
}

function ours(text: string): number {
  const read = readFormula(text);
  if (!read.ok) throw new Error(`${text}: ${read.why}`);
  const result = evaluate(read.formula, () => undefined);
  if (!result.ok) throw new Error(`${text}: ${result.what}`);
  return result.value.exact.base.valueOf();
}

test.each([
  ['length', LENGTHS, 'm'],
  ['mass', MASSES, 'kg'],
] as const)(
  'sums, differences, multiples and shares of a %s come out as mathjs has them',
  (_kind, units, base) => {
    fc.assert(
      fc.property(
        shapes(units).filter((shape) => sizeOf(shape) <= 12),
        (shape) => {
          const reference = math.evaluate(written(shape, (unit) => MATHJS[unit] ?? unit)) as math.Unit;
          const told = ours(written(shape, (unit) => unit));
          const wanted = reference.toNumber(base);
          // mathjs adds floating numbers: what cancels out leaves its own noise.
          expect(Math.abs(told - wanted)).toBeLessThanOrEqual(
            1e-9 * Math.max(1, Math.abs(wanted), biggest(shape)),
          );
        },
      ),
      { numRuns: 400 },
    );
  },
);

/** The largest quantity in a formula, in metres or kilograms at most: noise is measured against it. */
function biggest(shape: Shape): number {
  if (shape.kind === 'quantity') return Math.abs(shape.value);
  const inner = Math.max(biggest(shape.left), 'right' in shape ? biggest(shape.right) : 0);
  return shape.kind === 'times' ? inner * shape.by : inner;
}

/** Ours beside mathjs's name for the same unit. Its gallon is the US one, its pint and ounce of fluid as well. */
const UNITS: readonly (readonly (readonly [ours: string, theirs: string])[])[] = [
  LENGTHS.map((unit) => [unit, unit] as const),
  [...MASSES, 't'].map((unit) => [unit, { lb: 'lbm', t: 'tonne' }[unit] ?? unit] as const),
  [
    ['L', 'L'],
    ['mL', 'mL'],
    ['m3', 'm^3'],
    ['gal', 'gal'],
    ['qt', 'qt'],
    ['pt', 'pt'],
    ['floz', 'floz'],
  ],
  [
    ['m2', 'm^2'],
    ['mm2', 'mm^2'],
    ['cm2', 'cm^2'],
    ['ft2', 'ft^2'],
    ['in2', 'in^2'],
  ],
  [
    ['Pa', 'Pa'],
    ['kPa', 'kPa'],
    ['bar', 'bar'],
    ['psi', 'psi'],
  ],
  [
    ['s', 's'],
    ['min', 'min'],
    ['h', 'h'],
    ['d', 'day'],
  ],
  [
    ['degC', 'degC'],
    ['degF', 'degF'],
  ],
  [
    ['W', 'W'],
    ['kW', 'kW'],
    ['hp', 'hp'],
  ],
];

test('ten thousand conversions agree with mathjs', () => {
  // A small generator of its own, so that the same conversions come up each time: Park and Miller 1988, from memory.
  let state = 20_260_301;
  const next = (below: number) => {
    state = (state * 16_807) % 2_147_483_647;
    return state % below;
  };
  const apart: string[] = [];
  for (let run = 0; run < 10_000; run++) {
    const group = UNITS[next(UNITS.length)] ?? [];
    const [from, to] = [group[next(group.length)], group[next(group.length)]];
    if (!from || !to) throw new Error('no unit');
    const value = (next(2_000_000) + 1) / 64;
    const told = convert({ value, unit: from[0] }, to[0], 'US')?.value ?? Number.NaN;
    const wanted = math.unit(value, from[1]).toNumber(to[1]);
    if (!(Math.abs(told - wanted) <= 1e-6 * Math.abs(wanted) + 1e-9))
      apart.push(`${value} ${from[0]} in ${to[0]}: ${told}, ${wanted}`);
    const isRounded = [from[0], to[0]].some((unit) => ROUNDED_THERE.has(unit));
    if (!isRounded && !(Math.abs(told - wanted) <= 1e-11 * Math.abs(wanted) + 1e-11))
      apart.push(`${value} ${from[0]} in ${to[0]}: ${told}, ${wanted} (beyond rounding)`);
  }
  expect(apart.slice(0, 5)).toEqual([]);
});

/** Factors that mathjs keeps with fewer digits than their definitions have. */
const ROUNDED_THERE: ReadonlySet<string> = new Set(['gal', 'qt', 'pt', 'floz', 'psi', 'hp', 'lb', 'oz']);

test.each([
  ['2 m * 3 m', 6, 'm^2'],
  ['1 ft * 1 ft * 1 ft', 0.028316846592, 'm^3'],
  ['10 m / 4 s', 2.5, 'm/s'],
  ['12 V * 5 A', 60, 'W'],
  ['3 m / 1500 mm', 2, ''],
])('"%s" has the kind and size that mathjs gives it', (text, size, unit) => {
  const reference = math.evaluate(text) as math.Unit | number;
  const wanted =
    typeof reference === 'number'
      ? reference
      : unit === ''
        ? math.number(reference, '')
        : reference.toNumber(unit);
  expect(wanted).toBeCloseTo(size, 9);
  expect(ours(text)).toBeCloseTo(size, 9);
});

test.each(['1 m + 1 kg', '1 V - 1 A', '2 m * 3 m + 1 m'])('"%s" is refused by both', (text) => {
  expect(() => math.evaluate(text)).toThrow();
  const read = readFormula(text);
  expect(read.ok && evaluate(read.formula, () => undefined)).toMatchObject({ ok: false, kind: 'unit-clash' });
});

/** Checks as functions, beside the same thing in mathjs over plain metres; each is asked with mixed units. */
const CALLS: readonly (readonly [ours: string, theirs: string])[] = [
  ['diagonal(a; b)', 'sqrt(a^2 + b^2)'],
  ['2 * diagonal(a; b) - a', '2 sqrt(a^2 + b^2) - a'],
  ['diagonal(a + b; 3 * b)', 'sqrt((a + b)^2 + (3 b)^2)'],
  ['slope(a; b)', 'atan(a / b) 180 / pi'],
  ['a * slope factor of slope(a; b)', 'a sqrt(1 + (a / b)^2)'],
  ['rise and run(slope(a; b); slope length: a)', 'a sin(atan(a / b))'],
  ['run of rise and run(slope(a; b); rise: a)', 'b'],
  ['longest rod(a; b)', '(a^(2/3) + b^(2/3))^(3/2)'],
  ['tallest that stands up(a; a + b)', 'sqrt((a + b)^2 - a^2)'],
  ['taper(a + b; b; a)', 'atan(a / (2 a)) 180 / pi'],
  ['fall over a run(a; percent of slope(b; 20 m))', 'a b / 20'],
  ['stack-up(a; b; -a / 2)', 'a + b - a / 2'],
  ['room left of clearance(a + b; a; gap: b / 8)', 'b - 2 b / 8'],
];

const figure = fc.record({
  value: fc.integer({ min: 8, max: 48 }).map((sixteenths) => sixteenths / 16),
  unit: fc.constantFrom('m', 'yd', 'ft'),
});

test.each(CALLS)('%s comes out as mathjs has %s', (text, theirs) => {
  fc.assert(
    fc.property(figure, figure, (a, b) => {
      const metres = (one: { value: number; unit: string }) => math.unit(one.value, one.unit).toNumber('m');
      const read = readFormula(text);
      if (!read.ok) throw new Error(read.why);
      const result = evaluate(read.formula, (name) => (name === 'a' ? a : b));
      if (!result.ok) throw new Error(`${text}: ${result.what}`);
      const wanted = math.evaluate(theirs, { a: metres(a), b: metres(b) }) as number;
      expect(result.value.exact.base.valueOf()).toBeCloseTo(wanted, 9);
    }),
    { numRuns: 60, seed: 3 },
  );
});

test.each(CALLS.slice(0, 6))(
  'a small tolerance goes through %s by the derivative that mathjs finds of %s',
  (text, theirs) => {
    const spread = 1e-5;
    fc.assert(
      fc.property(figure, figure, (a, b) => {
        const [inMetres, other] = [a, b].map(({ value, unit }) => math.unit(value, unit).toNumber('m'));
        const read = readFormula(text);
        if (!read.ok) throw new Error(read.why);
        const result = evaluate(read.formula, (name) => ({
          value: (name === 'a' ? inMetres : other) ?? Number.NaN,
          unit: 'm',
          tolerance: spread,
        }));
        if (!result.ok) throw new Error(`${text}: ${result.what}`);
        const scope = { a: inMetres, b: other };
        const moves = ['a', 'b'].map((name) =>
          Math.abs(math.derivative(theirs, name).evaluate(scope) as number),
        );
        const wanted = moves.reduce((sum, move) => sum + move * spread, 0);
        expect(Math.abs(result.value.worstCase - wanted)).toBeLessThanOrEqual(1e-3 * spread + 1e-3 * wanted);
      }),
      { numRuns: 40, seed: 3 },
    );
  },
);
