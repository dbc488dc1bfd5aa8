/**
 * Sums of the trade, worked out by the formula kernel and compared with what others published. Each line names its
 * source; a value that was only computed says from which published figure.
 */
import { expect, test } from 'vitest';
import { evaluate } from '../../src/model/evaluate.ts';
import { readFormula } from '../../src/model/formula.ts';
import { bothLengths } from '../../src/model/lengths.ts';
import { convert, inUnit } from '../../src/model/units.ts';

/** What a formula of plain quantities gives, in a unit. */
function worth(text: string, unit: string, region = 'US'): number {
  const read = readFormula(text);
  if (!read.ok) throw new Error(read.why);
  const result = evaluate(read.formula, () => undefined, region);
  if (!result.ok) throw new Error(result.what);
  return inUnit(result.value.exact, unit, region).valueOf();
}

const BOATDESIGN = 'https://www.boatdesign.net/threads/determining-capacity-of-a-tank.17614/';
test.each([
  // 35 in base and 1 in top; then 13/16 in of hardwood laid later.
  ['35 in + 1 in', 'in', 36, 0, 'https://woodweb.com/knowledge_base/Accomodating_Flooring_Thickness.html'],
  ['36 in - 13/16 in', 'in', 35.1875, 0, 'computed from the published 13/16 in, the same page'],
  ['5 3/16 in', 'mm', 131.7625, 1e-9, 'https://dotsnel.com/1-16-inch-to-millimeters/'],
  ['1/16 in', 'mm', 1.5875, 1e-9, 'https://machinecalcs.com/decimal-to-fraction-chart'],
  [
    '27 in * 48 in * 12 in',
    'gal',
    67.324,
    0.01,
    'http://cars454.blogspot.com/2015/05/measure-fuel-oil-tank-capabilities.html',
  ],
  ['27 in * 48 in * 12 in', 'L', 254.85, 0.01, 'computed from the same page'],
  ['12 in * 24 in * 48 in', 'gal', 59.84, 0.01, BOATDESIGN],
  ['600 mm * 600 mm * 600 mm', 'L', 216, 1e-9, BOATDESIGN],
  ['1860 Wh / 12 V', 'Ah', 155, 1e-9, 'https://usecalcpro.com/marine/marine-battery-calculator'],
  ['1860 Wh / 12 V / 0.5', 'Ah', 310, 1e-9, 'half of a lead-acid battery, the same page'],
  [
    '1860 Wh / 12 V / 0.8',
    'Ah',
    194,
    0.5,
    'four fifths of a lithium battery, printed without decimals, the same page',
  ],
  [
    '231 in * 1 in * 1 in',
    'gal',
    1,
    1e-12,
    '231 cubic inches: http://pewterbank.com/html/american_measures.htm',
  ],
  ['24 mm / 240 mm', '%', 10, 1e-9, 'https://learn.ssgcinc.com/lessons/4512be62-c6f1-4d1e-8147-7a671e25b972'],
])('%s is %s: %d (%s)', (text, unit, published, within) => {
  expect(Math.abs(worth(text, unit) - published)).toBeLessThanOrEqual(within);
});

test.each([
  ['US', 3.785411784],
  ['GB', 4.54609],
])('a gallon in %s holds %d litres (http://pewterbank.com/html/american_measures.htm)', (region, litres) => {
  expect(convert({ value: 1, unit: 'gal' }, 'L', region)?.value).toBeCloseTo(litres, 9);
});

test.each([
  ['2000 lb', 907.18474],
  ['2240 lb', 1016.0469],
])(
  'a ton of %s is %d kg (https://quicksilvertranslate.com/821/differencebetweentheusandukton/)',
  (text, kilograms) => {
    expect(Math.abs(worth(text, 'kg') - kilograms)).toBeLessThanOrEqual(0.01);
  },
);

/** Nearest sixteenths computed with an inch of 25.4 mm; no rounding is off by more than half a sixteenth. */
test.each([
  [1010, 636, -0.35],
  [905, 570, -0.125],
  [18, 11, -0.5375],
  [12, 8, 0.7],
  [2440, 1537, -0.0125],
  [1220, 769, 0.7875],
])('%d mm is %d sixteenths of an inch, printed %d mm off', (millimetres, sixteenths, error) => {
  const both = bothLengths({ value: millimetres, unit: 'mm' });
  expect(worth(both?.inches ?? '', 'in') * 16).toBeCloseTo(sixteenths, 9);
  expect(Math.abs((both?.errorMm ?? Number.NaN) - error)).toBeLessThanOrEqual(0.001);
  expect(Math.abs(both?.errorMm ?? Number.NaN)).toBeLessThanOrEqual(0.79375);
});

test.each([
  // Methods: Tolerance Stack Analysis Methods, December 1995, https://wixlib.com/document/6dda5_tolerance-stack-analysis-methods-university-of-washington.html; common textbook cases.
  [Array.from({ length: 10 }, () => 0.1), 1, 0.316],
  [[0.2, 0.1, 0.15], 0.45, 0.269],
])(
  'parts with tolerances of %o add up to %d at worst and %d by root-sum-square',
  (tolerances, worst, rss) => {
    const read = readFormula(tolerances.map((_, index) => `part ${index}`).join(' + '));
    if (!read.ok) throw new Error(read.why);
    const result = evaluate(read.formula, (name) => {
      return { value: 10, unit: 'mm', tolerance: tolerances[Number(name.split(' ')[1])] ?? 0 };
    });
    if (!result.ok) throw new Error(result.what);
    // The base unit of lengths is the metre.
    const factor = worth('1 mm', 'm');
    expect(result.value.worstCase / factor).toBeCloseTo(worst, 9);
    expect(Math.abs(result.value.rootSumSquare / factor - rss)).toBeLessThanOrEqual(0.001);
  },
);
