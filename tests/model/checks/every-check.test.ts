/** What holds for every check there is: missing and absurd inputs, units, growth with each size, and no word of permission. */
import { describe, expect, test } from 'vitest';
import { CHECKS, checkNamed } from '../../../src/model/checks/all-checks.ts';
import type { Check, Range } from '../../../src/model/checks/check.ts';
import { CLEARANCE } from '../../../src/model/checks/clearance.ts';
import { DIAGONAL_FOR_SQUARE } from '../../../src/model/checks/diagonal-for-square.ts';
import { DRYING_TIME } from '../../../src/model/checks/drying-time.ts';
import { EXAMPLES } from '../../../src/model/checks/examples.ts';
import { FALL_OVER_RUN } from '../../../src/model/checks/fall-over-run.ts';
import { FRACTIONS_TO_MILLIMETRES } from '../../../src/model/checks/fractions-to-millimetres.ts';
import { HEIGHT_OVER_FLOOR } from '../../../src/model/checks/height-over-floor.ts';
import { rangeOfExpression } from '../../../src/model/checks/known-range.ts';
import { LENGTH_IN_FRACTIONS } from '../../../src/model/checks/length-in-fractions.ts';
import { PANEL_THROUGH_OPENING } from '../../../src/model/checks/panel-through-opening.ts';
import { POT_LIFE } from '../../../src/model/checks/pot-life.ts';
import { RECOAT_WINDOW } from '../../../src/model/checks/recoat-window.ts';
import { RISE_AND_RUN } from '../../../src/model/checks/rise-and-run.ts';
import { ROD_ROUND_CORNER } from '../../../src/model/checks/rod-round-corner.ts';
import { runCheck } from '../../../src/model/checks/run-check.ts';
import { RUNNING_MASS } from '../../../src/model/checks/running-mass.ts';
import { sayingIn } from '../../../src/model/checks/say.ts';
import { SLOPE } from '../../../src/model/checks/slope.ts';
import { STACK_UP } from '../../../src/model/checks/stack-up.ts';
import { STANDING_UP } from '../../../src/model/checks/standing-up.ts';
import { SWING_CLEARANCE } from '../../../src/model/checks/swing-clearance.ts';
import { TAPER } from '../../../src/model/checks/taper.ts';
import { readWrittenCheck } from '../../../src/model/checks/written-check.ts';
import { readFormula } from '../../../src/model/formula.ts';
import { type Draws, isMonotone, type Options } from '../../kit/check-properties.ts';

/** The example of a check, its figures in base units; `of` may write each one another way before it is read. */
function exampleOf(check: Check, of: (expression: string) => string = (text) => text) {
  const written = readWrittenCheck(`${check.name} ${(EXAMPLES[check.name] ?? []).join(' ')}`);
  if (!written.ok) throw new Error(written.why);
  const inputs = new Map<string, Range[]>();
  for (const { input, expression } of written.value.inputs) {
    const text = expression.split(/\s*\+-\s*/).map(of);
    const [middle, spread] = text.map((one) => {
      const formula = readFormula(one);
      const result = formula.ok ? rangeOfExpression(formula.formula, new Map()) : undefined;
      if (!result?.ok) throw new Error(`${input}: ${one} cannot be read`);
      return result.range.mid;
    });
    const [mid, by] = [middle ?? Number.NaN, spread ?? 0];
    inputs.set(input, [...(inputs.get(input) ?? []), { low: mid - by, mid, high: mid + by }]);
  }
  const options = new Map([
    ...(check.options ?? []).map(({ name, of: choices }) => [name, choices[0] ?? ''] as const),
    ...Object.entries(written.value.options ?? {}),
  ]);
  return { inputs, options };
}

const metric = sayingIn('metric');

describe.each(CHECKS.map((check) => [check.name, check] as const))('%s', (_name, check) => {
  test('its example runs, and says what it comes to', () => {
    const ran = runCheck(check, { ...exampleOf(check), say: metric });
    expect(['holds', 'broken', 'told']).toContain(ran.verdict);
    expect(ran.why).not.toBe('');
  });

  test('each needed input that is missing is named, and no number is given', () => {
    for (const { name } of check.inputs.filter(({ optional }) => !optional)) {
      const { inputs, options } = exampleOf(check);
      inputs.delete(name);
      const ran = runCheck(check, { inputs, options, say: metric });
      expect(ran).toMatchObject({ verdict: 'not-run', why: expect.stringContaining(name) });
      expect(ran).not.toHaveProperty('results');
    }
  });

  test('nought, a negative size and an absurd one are refused in a sentence, in the middle of sense', () => {
    for (const input of check.inputs) {
      const bad = [
        Number.NaN,
        1e12,
        ...(input.anySign ? [] : [-0.5]),
        ...(input.anySign || input.nought ? [] : [0]),
      ];
      for (const value of bad) {
        const { inputs, options } = exampleOf(check);
        inputs.set(input.name, [{ low: value, mid: value, high: value }]);
        const ran = runCheck(check, { inputs, options, say: metric });
        expect(ran.verdict, `${input.name} of ${value}`).toBe('refused');
        expect(ran).not.toHaveProperty('results');
        expect(ran.why).not.toMatch(/NaN|Infinity|undefined/);
      }
    }
  });

  test('the same figures in inches, pounds and Fahrenheit come to the same', () => {
    const [own, other] = [exampleOf(check), exampleOf(check, inCustomary)];
    const [plain, customary] = [
      runCheck(check, { ...own, say: metric }),
      runCheck(check, { ...other, say: sayingIn('us') }),
    ];
    expect(customary.verdict).toBe(plain.verdict);
    const numbers = (ran: typeof plain) => ('results' in ran ? ran.results : []);
    expect(numbers(customary).map(({ name }) => name)).toEqual(numbers(plain).map(({ name }) => name));
    numbers(plain).forEach(({ range }, index) => {
      const same = numbers(customary)[index]?.range;
      for (const end of ['low', 'mid', 'high'] as const) {
        expect(same?.[end] ?? Number.NaN).toBeCloseTo(range[end], 6);
      }
    });
  });

  test('nothing that it says is a permission, and nothing is called safe', () => {
    const ran = runCheck(check, { ...exampleOf(check), say: metric });
    const said = [check.says, check.formula, ran.why, ...('notes' in ran ? ran.notes : [])].join('\n');
    expect(said).not.toMatch(
      /\bsafe(?:ly)?\b|\bpermitted\b|\ballowed to\b|\byou (?:may|can)\b|\bgo ahead\b|\bapproved\b/i,
    );
  });
});

/** Units with another that is said beside them, and how a figure is written in it: exact, so that nothing is rounded. */
const OTHER: Readonly<Record<string, (value: string) => string>> = {
  mm: (value) => `${value} / 25.4 * 1 in`,
  m: (value) => `${value} / 0.3048 * 1 ft`,
  kg: (value) => `${value} / 0.45359237 * 1 lb`,
  L: (value) => `${value} / 1000 * 1 m3`,
  m2: (value) => `${value} / 0.09290304 * 1 ft2`,
  mm2: (value) => `${value} / 645.16 * 1 in2`,
  degC: (value) => `${Number(value) * 1.8 + 32} degF`,
};

/** "18 mm" as "18 / 25.4 * 1 in"; what has no other unit is left. */
function inCustomary(expression: string): string {
  return expression.replace(/(\d+(?:\.\d+)?) ([A-Za-z]+\d?)\b/g, (whole, value: string, unit: string) => {
    const other = OTHER[unit];
    return other ? other(value) : whole;
  });
}

/** How a result moves with each size; sizes of a check that is tried so in a file of its own are not listed again. */
const WAYS: readonly (readonly [
  Check,
  Draws,
  string,
  { readonly rises?: readonly string[]; readonly falls?: readonly string[] },
  Options?,
])[] = [
  [
    STACK_UP,
    { layers: { least: 0.001, most: 0.1 }, opening: { least: 0.2, most: 0.4 } },
    'total',
    { rises: ['layers'] },
  ],
  [
    STACK_UP,
    { layers: { least: 0.001, most: 0.1 }, opening: { least: 0.2, most: 0.4 } },
    'room left',
    { rises: ['opening'], falls: ['layers'] },
  ],
  [
    HEIGHT_OVER_FLOOR,
    { height: { least: 0.5, most: 2.2 }, layers: { least: 0.001, most: 0.1 } },
    'height over finished floor',
    { rises: ['height'], falls: ['layers'] },
  ],
  [
    CLEARANCE,
    {
      opening: { least: 0.5, most: 0.9 },
      part: { least: 0.3, most: 0.8 },
      gap: { least: 0.001, most: 0.02 },
    },
    'room left',
    { rises: ['opening'], falls: ['part', 'gap'] },
  ],
  [
    PANEL_THROUGH_OPENING,
    {
      'panel length': { least: 1.2, most: 2.5 },
      'panel width': { least: 0.3, most: 1.2 },
      thickness: { least: 0.006, most: 0.1 },
      'opening width': { least: 0.4, most: 0.7 },
      'opening height': { least: 0.3, most: 0.6 },
      fittings: { least: 0.001, most: 0.05 },
      gap: { least: 0.001, most: 0.01 },
    },
    'widest that passes',
    {
      rises: ['opening width', 'opening height'],
      falls: ['panel length', 'thickness', 'fittings', 'gap'],
    },
  ],
  [
    STANDING_UP,
    { depth: { least: 0.2, most: 0.8 }, ceiling: { least: 1.8, most: 2.6 }, height: { least: 1, most: 2.2 } },
    'room left',
    { rises: ['ceiling'], falls: ['depth', 'height'] },
  ],
  [
    ROD_ROUND_CORNER,
    { 'first passage': { least: 0.4, most: 2 }, 'second passage': { least: 0.4, most: 2 } },
    'longest rod',
    { rises: ['first passage', 'second passage'] },
  ],
  [
    SWING_CLEARANCE,
    {
      'box length': { least: 0.3, most: 1 },
      'box depth': { least: 0.2, most: 0.6 },
      'pivot from back': { least: 0, most: 0.1 },
      'pivot from bottom': { least: 0, most: 0.1 },
      'from angle': { least: 0, most: 20 },
      'to angle': { least: 40, most: 80 },
      ceiling: { least: 0.5, most: 1.5 },
    },
    'room left',
    { rises: ['ceiling'], falls: ['box length', 'box depth', 'to angle'] },
  ],
  [
    SLOPE,
    { rise: { least: 0.1, most: 2 }, run: { least: 0.5, most: 6 } },
    'angle',
    { rises: ['rise'], falls: ['run'] },
  ],
  [
    RISE_AND_RUN,
    { angle: { least: 5, most: 60 }, run: { least: 0.2, most: 6 } },
    'rise',
    { rises: ['angle', 'run'] },
  ],
  [
    TAPER,
    {
      'large end': { least: 0.2, most: 0.5 },
      'small end': { least: 0.01, most: 0.1 },
      length: { least: 0.5, most: 3 },
    },
    'angle',
    { rises: ['large end'], falls: ['small end', 'length'] },
  ],
  [
    DIAGONAL_FOR_SQUARE,
    { length: { least: 0.5, most: 4 }, width: { least: 0.5, most: 4 } },
    'diagonal',
    { rises: ['length', 'width'] },
  ],
  [
    FALL_OVER_RUN,
    { run: { least: 0.2, most: 9 }, fall: { least: 0.005, most: 0.1 } },
    'drop',
    { rises: ['run', 'fall'] },
  ],
  [LENGTH_IN_FRACTIONS, { length: { least: 0.01, most: 6 } }, 'nearest thirty-second', { rises: ['length'] }],
  [
    FRACTIONS_TO_MILLIMETRES,
    { feet: { least: 1, most: 9, whole: true }, inches: { least: 1, most: 11, whole: true } },
    'length',
    { rises: ['feet', 'inches'] },
  ],
  [RUNNING_MASS, { part: { least: 1, most: 200 } }, 'mass', { rises: ['part'] }],
  [DRYING_TIME, { time: { least: 600, most: 90_000 } }, 'dry after', { rises: ['time'] }],
  [POT_LIFE, { time: { least: 600, most: 9000 } }, 'usable for', { rises: ['time'] }],
  [RECOAT_WINDOW, { earliest: { least: 600, most: 90_000 } }, 'recoat from', { rises: ['earliest'] }],
];

test.each(WAYS.map((way) => [way[0].name, way[2], way] as const))(
  '%s: %s grows and shrinks with its sizes one way only',
  (_check, _result, [check, draws, result, ways, options]) => {
    isMonotone(check, draws, result, ways, options);
  },
);

/** Checks whose growth with each size is tried beside their formula, in a file of their own. */
const ELSEWHERE = [
  'sheet mass',
  'tank contents mass',
  'tank volume',
  'prismoidal tank',
  'pieces from stock',
  'sheets for pieces',
  'cure time',
  'product temperature',
  'dew point',
  'voltage drop',
  'battery',
  'load sum',
  'conduit fill',
];

test('no check is left out', () => {
  const tried = new Set([...WAYS.map(([{ name }]) => name), ...ELSEWHERE]);
  expect(CHECKS.map(({ name }) => name).filter((name) => !tried.has(name))).toEqual([]);
  for (const name of tried) expect(checkNamed(name)).toBeDefined();
});
