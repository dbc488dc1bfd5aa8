import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { evaluate } from '../../src/model/evaluate.ts';
import { readFormula } from '../../src/model/formula.ts';
import { bothLengths } from '../../src/model/lengths.ts';
import { convert, unitKind } from '../../src/model/units.ts';

interface Line {
  readonly kind: string;
  readonly quantity: string;
  readonly from: { readonly value: number; readonly unit: string };
  readonly to: { readonly value: number; readonly unit: string };
  readonly source: string;
  readonly relTol?: number;
  readonly method?: string;
  readonly inputs?: readonly (readonly [number, number, number])[];
}
/** Published values; every line names its source. */
const LINES = readFileSync(new URL('../outside/check-values.jsonl', import.meta.url), 'utf8')
  .trim()
  .split('\n')
  .map((line) => JSON.parse(line) as Line);

/** The published spellings of units that the project spells otherwise, with the region that settles them. */
const SPELLINGS: Readonly<Record<string, readonly [unit: string, region: string]>> = {
  'mil (thou)': ['thou', 'US'],
  'gal (US)': ['gal', 'US'],
  'gal (imperial)': ['gal', 'GB'],
  'fl oz (US)': ['floz', 'US'],
  'fl oz (imperial)': ['floz', 'GB'],
  'kW.h': ['kWh', 'US'],
  'W.h': ['Wh', 'US'],
};
const spelled = (unit: string) => SPELLINGS[unit] ?? ([unit, 'US'] as const);

const CONVERSIONS = LINES.filter((line) => line.kind === 'conversion').filter((line) => {
  const [[from, region], [to]] = [spelled(line.from.unit), spelled(line.to.unit)];
  const kind = unitKind(from, region)?.kind;
  return kind !== undefined && kind === unitKind(to, region)?.kind;
});

/** Published conversions that go through a product of units, or through one that the project does not have. */
const THROUGH_A_FORMULA: Readonly<Record<string, string>> = {
  in3: '1 in * 1 in * 1 in',
  ft3: '1 ft * 1 ft * 1 ft',
  'ft/min': '1 ft / 1 min',
  'board foot': '144 * 1 in * 1 in * 1 in',
  cord: '128 * 1 ft * 1 ft * 1 ft',
  'A.h': '1 Ah',
  C: '1 A * 1 s',
  hand: '4 in',
  fathom: '6 ft',
  'ton (short)': '2000 lb',
  'ton (long)': '2240 lb',
  'acre (international)': '43560 ft2',
  'square (roofing)': '100 ft2',
};
/** Units that no spoken figure of a build is kept in. */
const NOT_KEPT = new Set(['J', 'MJ', 'N', 'kgf', 'kgf.m', 'atm', 'hp (electric)', 'arcmin', 'K']);

const OTHERS = LINES.filter((line) => line.kind === 'conversion' && !CONVERSIONS.includes(line));
const isKept = ({ from, to }: Line) => !NOT_KEPT.has(from.unit) && !NOT_KEPT.has(to.unit);

test('every published line is compared, or is of a unit that is not kept', () => {
  const examples = LINES.filter((line) => line.kind === 'worked-example');
  expect(CONVERSIONS.length + OTHERS.length + examples.length).toBe(LINES.length);
  expect(OTHERS.filter((line) => !isKept(line)).map((line) => line.from.unit)).toEqual([
    'W.h',
    'kgf',
    'kgf.m',
    'atm',
    'hp (electric)',
    'kW.h',
    'degF',
    'deg',
  ]);
});

/** A unit's size in the base unit of its kind, through the formula kernel where it is a product. */
function sizeOf(unit: string): { readonly kind: string; readonly size: number } {
  const [own, region] = spelled(unit);
  const read = readFormula(THROUGH_A_FORMULA[unit] ?? `1 ${own}`);
  if (!read.ok) throw new Error(`${unit}: ${read.why}`);
  const result = evaluate(read.formula, () => undefined, region);
  if (!result.ok) throw new Error(`${unit}: ${result.what}`);
  const { kind, base } = result.value.exact;
  return { kind, size: base.valueOf() };
}

test.each(OTHERS.filter(isKept))(
  '$from.value $from.unit is $to.value $to.unit by a formula ($source)',
  ({ from, to }) => {
    const [left, right] = [sizeOf(from.unit), sizeOf(to.unit)];
    expect(left.kind).toBe(right.kind);
    expect(Math.abs((from.value * left.size) / right.size - to.value)).toBeLessThanOrEqual(1e-12 * to.value);
  },
);

test.each(CONVERSIONS)('$from.value $from.unit is $to.value $to.unit ($source)', ({ from, to }) => {
  const [unit, region] = spelled(from.unit);
  const told = convert({ value: from.value, unit }, spelled(to.unit)[0], region)?.value ?? Number.NaN;
  expect(Math.abs(told - to.value)).toBeLessThanOrEqual(1e-12 * Math.max(1, Math.abs(to.value)));
});

test.each(LINES.filter((line) => line.kind === 'worked-example'))(
  '$quantity of $inputs ($source)',
  ({ inputs = [], method, to, relTol }) => {
    const unit = to.unit.startsWith('in') ? 'in' : 'mm';
    const text = inputs.map(([, , sign], index) => `${sign < 0 ? '-' : '+'} part ${index}`).join(' ');
    const read = readFormula(text.replace(/^\+ /, ''));
    if (!read.ok) throw new Error(read.why);
    const result = evaluate(read.formula, (name) => {
      const [value = 0, tolerance = 0] = inputs[Number(name.split(' ')[1])] ?? [];
      return { value, unit, tolerance };
    });
    if (!result.ok) throw new Error(result.what);
    const scale = unitKind(unit)?.factor.valueOf() ?? 1;
    const { exact, worstCase, rootSumSquare } = result.value;
    const told = { nominal: exact.base.valueOf(), 'worst-case': worstCase, rss: rootSumSquare }[method ?? ''];
    expect(Math.abs((told ?? Number.NaN) / scale - to.value)).toBeLessThanOrEqual(
      (relTol ?? 1e-9) * Math.abs(to.value) + 1e-12,
    );
  },
);

test('units of different kinds do not convert', () => {
  expect(convert({ value: 1, unit: 'N.m' }, 'Wh')).toBeUndefined();
  expect(convert({ value: 1, unit: 'GBP' }, 'EUR')).toBeUndefined();
  expect(convert({ value: 1, unit: 'furlong' }, 'm')).toBeUndefined();
});

test('a value said in another unit and back is the same value', () => {
  const lengths = ['mm', 'cm', 'm', 'in', 'ft', 'yd', 'thou'];
  fc.assert(
    fc.property(
      fc.integer({ min: -1_000_000, max: 1_000_000 }),
      fc.constantFrom(...lengths),
      fc.constantFrom(...lengths),
      (thousandths, from, to) => {
        const value = thousandths / 1000;
        const there = convert({ value, unit: from }, to);
        const back = there && convert(there, from)?.value;
        expect(Math.abs((back ?? Number.NaN) - value)).toBeLessThanOrEqual(
          1e-9 * Math.max(1, Math.abs(value)),
        );
      },
    ),
  );
});

test.each([
  // An inch is 25.4 mm: 5 3/16 in is 131.7625 mm exactly.
  [{ value: 5.1875, unit: 'in' }, '131.8 mm', '5 3/16 in', 0],
  // 1220 mm is 48 1/16 in and 0.79 mm over.
  [{ value: 1220, unit: 'mm' }, '1220 mm', '48 1/16 in', 0.788],
  [{ value: 0.75, unit: 'in' }, '19.1 mm', '3/4 in', 0],
  [{ value: 0, unit: 'mm' }, '0 mm', '0 in', 0],
])('%o is said as %s and %s', (length, metric, inches, errorMm) => {
  expect(bothLengths(length)).toEqual({ metric, inches, errorMm });
});
