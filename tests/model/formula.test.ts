import fc from 'fast-check';
import { expect, test } from 'vitest';
import { evaluate } from '../../src/model/evaluate.ts';
import { readFormula, readsOf, writeFormula } from '../../src/model/formula.ts';
import { workedOver } from '../kit/worked-formula.ts';

const FIGURES: Readonly<Record<string, { value: number; unit: string; tolerance?: number }>> = {
  'warp beam': { value: 1200, unit: 'mm', tolerance: 1 },
  'number 2 heddle': { value: 15, unit: 'mm', tolerance: 0.5 },
  'breast beam height': { value: 32.5, unit: 'in' },
  'dye bath': { value: 60, unit: 'degC' },
  'cold tap': { value: 12, unit: 'degC' },
  'clamp bolts': { value: 45, unit: 'N.m' },
  battery: { value: 100, unit: 'Ah' },
  supply: { value: 12, unit: 'V' },
  motor: { value: 1425, unit: 'rpm' },
  'small pulley': { value: 70, unit: 'mm' },
  'big pulley': { value: 210, unit: 'mm' },
};

const worked = workedOver(FIGURES);

test.each([
  ['warp beam - 2 * number 2 heddle', 'mm', 1170],
  ['(warp beam + 30) / 2', 'mm', 615],
  ['4 ft 2 3/8 in', 'in', 50.375],
  ['breast beam height - 18 mm', 'mm', 807.5],
  ['breast beam height - 18', 'in', 14.5],
  ['2 m 10 cm', 'mm', 2100],
  ['3/4 in + 1/2 in', 'in', 1.25],
  ['battery * supply', 'Wh', 1200],
  ['motor * small pulley / big pulley', 'rpm', 475],
  ['warp beam × 2 − 1', 'mm', 2399],
  ['-number 2 heddle + 20', 'mm', 5],
  ['2 * 3 + 4 * 5', '1', 26],
  ['100 - 10 - 5', '1', 85],
])('"%s" is worked out in %s', (text, unit, value) => {
  expect(worked(text, unit)).toBeCloseTo(value, 9);
});

test.each([
  ['warp beam + clamp bolts', 'unit-clash: length and torque do not add'],
  ['clamp bolts + battery * supply', 'unit-clash: torque and energy do not add'],
  ['dye bath + cold tap', 'unit-clash: two temperatures have no sum'],
  ['dye bath * 2', 'unit-clash: a temperature cannot be multiplied'],
  ['warp beam / (2 - 2)', 'by-nought: division'],
  ['shuttle + 2', 'unknown: shuttle'],
  ['2 +', 'it ends too early'],
  ['(2 + 3', 'a bracket is not closed'],
  ['2 3/0', 'a fraction over nought'],
  ['2; DROP TABLE', '";" is left over'],
  ['2 # 3', '"#" is no part of a formula'],
  ['('.repeat(60), 'nested deeper than 24'],
  ['1+'.repeat(150), 'more than 120 parts'],
  ['x'.repeat(500), 'longer than 400 characters'],
])('"%s" is refused with its reason', (text, why) => {
  expect(worked(text, 'mm')).toBe(why);
});

test('a difference of temperatures is no temperature', () => {
  expect(worked('dye bath - cold tap', 'K')).toBe(48);
});

test('an input read twice counts as one: its tolerance doubles and is not taken as two parts', () => {
  const read = readFormula('warp beam + warp beam');
  if (!read.ok) throw new Error(read.why);
  const result = evaluate(read.formula, (name) => FIGURES[name]);
  expect(result).toMatchObject({ ok: true, value: { worstCase: 0.002, rootSumSquare: 0.002 } });
});

test('the names that a formula reads are found once each', () => {
  const read = readFormula('warp beam - 2 * [i3|width|length] - warp beam');
  expect(read.ok && readsOf(read.formula)).toEqual([
    { kind: 'name', text: 'warp beam' },
    { kind: 'slot', text: 'i3|width|length' },
  ]);
});

test('no text keeps the parser busy or makes it throw', () => {
  fc.assert(fc.property(fc.string({ maxLength: 600 }), (text) => typeof readFormula(text).ok === 'boolean'));
});

test('a formula that is written out reads back to the same value', () => {
  const leaf = fc.oneof(fc.integer({ min: 1, max: 99 }).map(String), fc.constantFrom('warp beam', '30 mm'));
  const { tree } = fc.letrec<{ tree: string }>((tie) => ({
    tree: fc.oneof(
      { maxDepth: 3 },
      leaf,
      fc
        .tuple(tie('tree'), fc.constantFrom('+', '-', '*', '/'), tie('tree'))
        .map(([a, sign, b]) => `(${a} ${sign} ${b})`),
    ),
  }));
  fc.assert(
    fc.property(tree, (text) => {
      const once = readFormula(text);
      if (!once.ok) throw new Error(`${text}: ${once.why}`);
      const again = readFormula(writeFormula(once.formula));
      if (!again.ok) throw new Error(`${writeFormula(once.formula)}: ${again.why}`);
      const look = (name: string) => FIGURES[name];
      const [a, b] = [evaluate(once.formula, look), evaluate(again.formula, look)];
      expect(b.ok).toBe(a.ok);
      if (a.ok && b.ok) expect(b.value.exact.base.equals(a.value.exact.base)).toBe(true);
    }),
    { numRuns: 200 },
  );
});
