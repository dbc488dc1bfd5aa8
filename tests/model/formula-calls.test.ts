/** Checks as functions in a formula: how they are written, what they give, how tolerances go through them. */
import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { CHECKS } from '../../src/model/checks/all-checks.ts';
import { evaluate, type Input } from '../../src/model/evaluate.ts';
import { readFormula, readsOf, withSlots, writeFormula } from '../../src/model/formula.ts';
import { calledBy } from '../../src/model/formula-calls.ts';
import { workedOver } from '../kit/worked-formula.ts';

const FIGURES: Readonly<Record<string, Input>> = {
  rise: { value: 300, unit: 'mm', tolerance: 2 },
  run: { value: 400, unit: 'mm', tolerance: 1 },
  'loading ramp rise': { value: 24, unit: 'in' },
  'loading ramp run': { value: 20, unit: 'ft' },
  'barn door width': { value: 2.4, unit: 'm' },
  'feed bin mass': { value: 80, unit: 'kg' },
  loads: { value: 1860, unit: 'Wh' },
  supply: { value: 12, unit: 'V' },
};

const worked = workedOver(FIGURES);

test.each([
  ['diagonal(rise; run)', 'mm', 500],
  ['diagonal for square(rise; run)', 'mm', 500],
  ['Diagonal for Square(width: run; length: rise)', 'mm', 500],
  ['diagonal(rise; run) + 2 * 18 mm', 'mm', 536],
  ['2 * diagonal(rise + 300 mm; 2 * run) - 1', 'mm', 1999],
  ['diagonal(diagonal(2 m; 3 m); 6 m)', 'm', 7],
  ['slope(1 m; 1 m)', 'deg', 45],
  ['percent of slope(loading ramp rise; loading ramp run)', '%', 10],
  ['one in n of slope(loading ramp rise; loading ramp run)', '1', 10],
  ['run * slope factor of slope(rise; run)', 'mm', 500],
  ['rise and run(30 deg; slope length: 2 m)', 'mm', 1000],
  ['run of rise and run(45 deg; rise: 2 m)', 'm', 2],
  ['fall over a run(barn door width; 2.5 %)', 'mm', 60],
  ['fall over a run(barn door width; 1/40)', 'mm', 60],
  ['stack-up(900 mm; 40 mm; -3 mm)', 'mm', 937],
  ['stack-up(layers: 900 mm; layers: 40 mm; limit: 1 m)', 'mm', 940],
  ['room left of stack-up(900 mm; 40 mm; limit: 1 m)', 'mm', 60],
  ['clearance(706 mm; 700 mm; gap: 2 mm)', 'mm', 2],
  ['clearance(706 mm; 700 mm; gap: 2 mm; gap on: one side)', 'mm', 4],
  ['tallest that stands up(5 ft; 13 ft)', 'ft', 12],
  ['height over finished floor(915 mm; 12 mm; 3 mm)', 'mm', 900],
])('"%s" comes in %s to %d', (text, unit, value) => {
  expect(worked(text, unit)).toBeCloseTo(value, 6);
});

test('1,860 Wh at 12 V are 155 Ah (published: https://usecalcpro.com/marine/marine-battery-calculator)', () => {
  expect(worked('loads / supply', 'Ah')).toBeCloseTo(155, 9);
  expect(worked('charge of battery(loads; supply)', 'Ah')).toBeCloseTo(155, 9);
});

test.each([
  ['diagonal(rise)', 'check: diagonal for square: missing: width (the side next to it)'],
  [
    'diagonal(rise; run; rise)',
    'more figures than diagonal for square takes in order: name them, as in "allowed: ..."',
  ],
  [
    'diagonal(rise; run; height: rise)',
    '"height" is no input of diagonal for square: length, width, first diagonal, second diagonal, allowed',
  ],
  ['diagonal(length: rise; length: run)', 'length of diagonal for square is given more than once'],
  ['hypotenuse(rise; run)', '"hypotenuse" is no check that gives a number'],
  ['room left(rise; run)', '"room left" is no check that gives a number'],
  [
    'diagonal(rise; 400)',
    'unit-clash: width of diagonal for square is a quantity of length, and a number alone is none',
  ],
  [
    'diagonal(rise; feed bin mass)',
    'unit-clash: width of diagonal for square is a quantity of length, and a quantity of mass is none',
  ],
  ['diagonal(rise; run) + feed bin mass', 'unit-clash: length and mass do not add'],
  ['barn door width - slope factor of slope(rise; run)', 'unit-clash: length and ratio do not add'],
  ['diagonal(rise; shuttle)', 'unknown: shuttle'],
  ['diagonal(rise; rise - 300 mm)', 'check: diagonal for square: width: 0 mm is nothing: give its size'],
  [
    'diagonal(rise; 92 m)',
    'check: diagonal for square: width: 92 m is more than anything in a build: 9200 mm, 920 mm, or 92 mm?',
  ],
  [
    'girth of slope(rise; run)',
    'check: slope gives no "girth" here, but angle, percent, one in n, slope factor, slope length',
  ],
  ['clearance(rise; run; gap on: all sides)', 'gap on is one of both sides, one side'],
  ['clearance(rise; run; gap on: 2 mm)', 'gap on is one of both sides, one side'],
  ['clearance(rise; run; gap on: "both")', 'gap on is one of both sides, one side'],
  ['diagonal("rise"; run)', '"rise" stands where a figure should'],
  ['diagonal(rise; run', 'a bracket is not closed'],
  ['diagonal(', 'it ends too early'],
  ['diagonal()', '")" stands where a figure should'],
  ['diagonal(rise; )', '")" stands where a figure should'],
  ['diagonal(rise, run)', '"," is no part of a formula: ";" stands between figures'],
  ['rise; run', '";" is left over'],
  [
    'diagonal(rise: run)',
    '"rise" is no input of diagonal for square: length, width, first diagonal, second diagonal, allowed',
  ],
  ['diagonal('.repeat(26), 'nested deeper than 24'],
])('"%s" gives no number: %s', (text, why) => {
  expect(worked(text, 'mm')).toBe(why);
});

test('every check that gives a number is called by its name, with every choice, and reads back as written', () => {
  for (const check of CHECKS.filter(({ gives }) => gives !== undefined)) {
    const figures = check.inputs
      .filter(({ optional }) => !optional)
      .map((_input, index) => `part ${index + 1}`);
    // A check of which no input is needed is called with its inputs named.
    const bare = `${check.name}(${figures.join('; ') || `${check.inputs[0]?.name}: part`})`;
    const choices = (check.options ?? []).flatMap(({ name, of }) =>
      of.map((choice) => `${name}: ${/[^a-z -]/i.test(choice) ? `"${choice}"` : choice}`),
    );
    for (const text of [bare, ...choices.map((choice) => bare.replace(/\)$/, `; ${choice})`))]) {
      const read = readFormula(text);
      expect(read, text).toMatchObject({ ok: true, formula: { kind: 'call', name: check.name } });
      if (read.ok) expect(writeFormula(read.formula)).toBe(text);
    }
    const labelled = `${check.name}(${check.inputs.map(({ name }) => `${name}: part`).join('; ')})`;
    const read = readFormula(labelled);
    expect(read.ok && writeFormula(read.formula), read.ok ? '' : read.why).toBe(labelled);
  }
});

test('a number that only one check gives is a function too; one that several give needs its check', () => {
  expect(calledBy('longest rod')?.check.name).toBe('rod round corner');
  expect(calledBy('Drop')).toBeUndefined();
  expect(calledBy('drop of voltage drop')?.check.name).toBe('voltage drop');
});

test('names inside a call are read and turned into slots, choices are not', () => {
  const read = readFormula('clearance(bay width; tank width - 2 mm; gap on: one side)');
  if (!read.ok) throw new Error(read.why);
  expect(readsOf(read.formula).map(({ text }) => text)).toEqual(['bay width', 'tank width']);
  const slots = withSlots(read.formula, (name) => `slot of ${name}`);
  expect(writeFormula(slots)).toBe(
    'clearance([slot of bay width]; [slot of tank width] - 2 mm; gap on: one side)',
  );
  const again = readFormula(writeFormula(slots));
  expect(again.ok && writeFormula(again.formula)).toBe(writeFormula(slots));
});

test('no text with calls keeps the parser busy or makes it throw', () => {
  const piece = fc.constantFrom(
    'diagonal',
    '(',
    ')',
    ';',
    ':',
    'gap on',
    'one side',
    'clearance',
    ' of ',
    '2 mm',
    '-',
    '[a|b|c]',
    'slope',
    '1/2',
  );
  fc.assert(
    fc.property(fc.array(piece, { maxLength: 60 }), (pieces) => {
      const read = readFormula(pieces.join(' '));
      if (!read.ok) return;
      const result = evaluate(read.formula, () => ({ value: 2, unit: 'm', tolerance: 0.1 }));
      expect(typeof result.ok).toBe('boolean');
      const again = readFormula(writeFormula(read.formula));
      expect(again.ok).toBe(true);
    }),
    { numRuns: 3000, seed: 1 },
  );
});

const spreadOf = (text: string, figures: Readonly<Record<string, Input>> = FIGURES) => {
  const read = readFormula(text);
  const result = read.ok ? evaluate(read.formula, (name) => figures[name]) : undefined;
  if (!result?.ok) throw new Error(`${text} was not worked out`);
  return result.value;
};

test('tolerances go through a call: by the range of the check, each input as far as it moves the result', () => {
  // 3, 4, 5: a rise off by 2 mm moves the diagonal by 3/5 of that, a run off by 1 mm by 4/5.
  const { worstCase, rootSumSquare, toleranced } = spreadOf('diagonal(rise; run)');
  expect(toleranced).toBe(2);
  expect(worstCase).toBeCloseTo(0.002, 5);
  expect(worstCase).toBeGreaterThanOrEqual(Math.hypot(0.302, 0.401) - 0.5 - 1e-12);
  expect(rootSumSquare).toBeCloseTo(Math.hypot(0.6 * 2, 0.8) / 1000, 5);
});

test('an input that is read twice in a call moves both places at once', () => {
  expect(spreadOf('diagonal(rise; rise)').worstCase).toBeCloseTo(Math.SQRT2 * 0.002, 9);
  // What is added to one side and taken off the other is no tolerance of the room left.
  expect(spreadOf('clearance(run + 1 m; run)').worstCase).toBeCloseTo(0, 12);
  expect(spreadOf('clearance(run; rise)').worstCase).toBeCloseTo(0.003, 12);
});

test('the tolerance of a call covers what any values within those of its inputs give', () => {
  const size = fc.double({ min: 0.2, max: 5, noNaN: true });
  const share = fc.double({ min: 0, max: 0.1, noNaN: true });
  const at = fc.double({ min: -1, max: 1, noNaN: true });
  const calls = [
    'diagonal(a; b)',
    'slope length of slope(a; b)',
    'a * slope factor of slope(a; b)',
    'longest rod(a; b)',
    'stack-up(a; b; -a)',
    'slope(a; b)',
  ];
  fc.assert(
    fc.property(fc.constantFrom(...calls), size, size, share, share, at, at, (text, a, b, s, t, x, y) => {
      const figure = (value: number, tolerance: number): Input => ({ value, unit: 'm', tolerance });
      const said = spreadOf(text, { a: figure(a, a * s), b: figure(b, b * t) });
      const inside = spreadOf(text, { a: figure(a + a * s * x, 0), b: figure(b + b * t * y, 0) });
      const off = Math.abs(inside.exact.base.valueOf() - said.exact.base.valueOf());
      // A product beside a call is carried by its slope, as products are everywhere: second order is let pass there.
      const second = text.includes('*') ? 2 * a * (s + t) ** 2 : 0;
      expect(off).toBeLessThanOrEqual(said.worstCase + second + 1e-9);
    }),
    { numRuns: 400, seed: 9 },
  );
});

test('every call that docs/checks.md shows is one', () => {
  const section = readFileSync('docs/checks.md', 'utf8').split('## In formulas')[1]?.split('\n## ')[0] ?? '';
  const inline = [...section.matchAll(/`([^`]*\([^`]*\))`/g)].map((match) => match[1] as string);
  const set = [...section.matchAll(/figures set '[^']*= ([^']*)'/g)].map((match) => match[1] as string);
  const calls = [...inline, ...set].filter((call) => !call.includes('...'));
  expect(calls.length).toBeGreaterThan(6);
  for (const call of calls) expect(readFormula(call), call).toMatchObject({ ok: true });
});
