/**
 * Every worked case of tests/outside/trade-checks.json that is one of a check, run through the check itself, and the
 * tables that checks stand on. Each case names its source and whether it was published or computed. None is left out.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { checkNamed } from '../../../src/model/checks/all-checks.ts';
import { fillLimit } from '../../../src/model/checks/conduit-fill.ts';
import { fitsInto } from '../../../src/model/checks/rectangles.ts';
import { gaugeArea } from '../../../src/model/checks/wire-areas.ts';
import { ran, resultOf, type Written } from '../../kit/given.ts';

interface Case {
  readonly id: string;
  readonly input: never;
  readonly expect: never;
  readonly tol: number;
  readonly basis: string;
  readonly source: string;
}
const CASES: readonly Case[] = JSON.parse(
  readFileSync(new URL('../../outside/trade-checks.json', import.meta.url), 'utf8'),
);

type Inputs = Readonly<Record<string, Written>>;
type Options = Readonly<Record<string, string>>;

const run = (name: string, inputs: Inputs, options?: Options) => {
  const check = checkNamed(name);
  if (!check) throw new Error(`no check ${name}`);
  return ran(check, inputs, withFirst(name, options));
};
const withFirst = (name: string, options: Options = {}): Options => ({
  ...Object.fromEntries((checkNamed(name)?.options ?? []).map((one) => [one.name, one.of[0] ?? ''])),
  ...options,
});
const verdict = (name: string, inputs: Inputs, options?: Options) => run(name, inputs, options).verdict;
/** A result in another unit: base units over `per`. */
const number = (name: string, result: string, inputs: Inputs, per = 1, options?: Options): number =>
  resultOf(run(name, inputs, options), result).mid / per;

const INCH = 0.0254;
const MM = 0.001;
const FOOT = 0.3048;

/** What our checks say of a case, in the shape of its expected value. */
type Ours = (input: never, of: Case) => unknown;

const section = ({ p, q, a, b }: { p: number; q: number; a: number; b: number }, unit: string) =>
  verdict('panel through opening', {
    'panel length': `${50 * p} ${unit}`,
    'panel width': `${p} ${unit}`,
    thickness: `${q} ${unit}`,
    'opening width': `${a} ${unit}`,
    'opening height': `${b} ${unit}`,
  }) === 'holds';

const OURS: readonly (readonly [id: RegExp, ours: Ours])[] = [
  [/^rect\.(?:9x4|square)/, (input) => section(input, 'in')],
  [/^panel\.1220/, (input) => section(input, 'mm')],
  [
    /^panel\.max-width/,
    ({ t, a, b }: { t: number; a: number; b: number }) =>
      number(
        'panel through opening',
        'widest that passes',
        {
          'panel length': '2440 mm',
          'panel width': '1220 mm',
          thickness: `${t} mm`,
          'opening width': `${a} mm`,
          'opening height': `${b} mm`,
        },
        MM,
      ),
  ],
  [
    /^corner\./,
    ({ corridor: [a, b] }: { corridor: [number, number] }) =>
      number(
        'rod round corner',
        'longest rod',
        { 'first passage': `${a} mm`, 'second passage': `${b} mm` },
        MM,
      ),
  ],
  [
    /^tilt\.6x/,
    ({ h, d }: { h: number; d: number }) =>
      number('standing up', 'diagonal', { height: `${h} ft`, depth: `${d} ft`, ceiling: '8 ft' }, FOOT),
  ],
  [
    /^tilt\.max/,
    ({ ceiling, d }: { ceiling: number; d: number }) =>
      number('standing up', 'tallest that stands up', { ceiling: `${ceiling} in`, depth: `${d} in` }, INCH),
  ],
  [
    /^tol\./,
    ({ t }: { t: readonly number[] }) => {
      const worked = run('stack-up', { layers: t.map((one) => `20 mm ± ${one} mm`) });
      const [all, likely] = ['total', 'total by root-sum-square'].map((name) => resultOf(worked, name));
      const half = (range = { low: 0, high: 0 }) => (range.high - range.low) / 2 / MM;
      return { worst: half(all), rss: half(likely) };
    },
  ],
  [
    /^stack\.counter/,
    ({ base_in, top_in }: { base_in: number; top_in: number }) =>
      number('stack-up', 'total', { layers: [`${base_in} in`, `${top_in} in`] }, INCH),
  ],
  [
    /^stack\.floor/,
    (input: { height_over_subfloor_in: number; later_floor_in: number }) =>
      number(
        'height over finished floor',
        'height over finished floor',
        { height: `${input.height_over_subfloor_in} in`, layers: `${input.later_floor_in} in` },
        INCH,
      ),
  ],
  [
    // A unit of the old size of the opening, which half an inch of panel has made smaller since.
    /^stack\.shear/,
    ({ opening_reduced_by_in: by }: { opening_reduced_by_in: number }) => {
      const inputs = { opening: `${240 - by} in`, part: '240 in' };
      expect(verdict('clearance', inputs)).toBe('broken');
      return number('clearance', 'room left', inputs, INCH);
    },
  ],
  [
    /^len\.(?:5-3|1\/16)/,
    ({ inch }: { inch: string }) => {
      const [, whole, parts = '', of = ''] = /^(?:(\d+) )?(\d+)\/(\d+)$/.exec(inch) ?? [];
      const inches = whole === undefined ? {} : { inches: whole };
      return number('fractions to millimetres', 'length', { ...inches, parts, 'parts of': of }, MM);
    },
  ],
  [
    /^len\.round16/,
    () => {
      // Every half way between two marks is among them.
      const off = Array.from({ length: 4000 }, (_, k) =>
        Math.abs(
          number(
            'length in fractions',
            'off at the sixteenth',
            { length: `${(10.5 + k / 4) * 1.5875} mm` },
            MM,
          ),
        ),
      );
      const most = Math.max(...off);
      expect(most).toBeLessThanOrEqual(0.79375 + 1e-9);
      return most;
    },
  ],
  [
    /^len\.\d+mm/,
    ({ mm }: { mm: number }) => {
      const worked = run('length in fractions', { length: `${mm} mm` });
      return {
        sixteenths: resultOf(worked, 'nearest sixteenth').mid / (INCH / 16),
        error_mm: resultOf(worked, 'off at the sixteenth').mid / MM,
      };
    },
  ],
  [
    /^pitch\./,
    ({ rise, run: level }: { rise: number; run: number }) => {
      const worked = run('slope', { rise: `${rise} in`, run: `${level} in` });
      return { deg: resultOf(worked, 'angle').mid, slopeFactor: resultOf(worked, 'slope factor').mid };
    },
  ],
  [
    /^ramp\./,
    ({ rise, run: level }: { rise: number; run: number }) => {
      const worked = run('slope', { rise: `${rise} in`, run: `${level} in`, steepest: '0.08333333' });
      return { percent: resultOf(worked, 'percent').mid * 100, exceeds_1in12: worked.verdict === 'broken' };
    },
  ],
  [
    /^kerf\./,
    ({ stock, piece, kerf }: { stock: number; piece: number; kerf: number }, { id }) => {
      const unit = id.includes('2440') ? 'mm' : 'in';
      const inputs = { stock: `${stock} ${unit}`, piece: `${piece} ${unit}`, kerf: `${kerf} ${unit}` };
      return number('pieces from stock', 'pieces', inputs);
    },
  ],
  [
    /^mass\.ply/,
    ({ mm: [length, width, thickness] }: { mm: [number, number, number] }) => {
      const { low, high } = resultOf(
        run(
          'sheet mass',
          { length: `${length} mm`, width: `${width} mm`, thickness: `${thickness} mm` },
          { material: 'plywood' },
        ),
        'mass',
      );
      return [low, high];
    },
  ],
  [
    /^tank\.(?:27|12|600)/,
    ({ inch, mm }: { inch?: readonly number[]; mm?: readonly number[] }, of) => {
      const [length, width, height] = (inch ?? mm ?? []).map((size) => `${size} ${inch ? 'in' : 'mm'}`);
      const worked = run('tank volume', { length: `${length}`, width: `${width}`, height: `${height}` });
      const all = {
        usgal: resultOf(worked, 'volume in US gallons').mid / 0.003785411784,
        litre: resultOf(worked, 'volume').mid / 0.001,
      };
      return Object.fromEntries(Object.entries(all).filter(([name]) => name in (of.expect as object)));
    },
  ],
  [
    // Ends of a by (b + c) / 2, or of a by b: the published 3 ft3 is the mean of the ends times the length.
    /^tank\.tapered/,
    ({ ft: { len, aft, fwd } }: { ft: { len: number; aft: Three; fwd: Three } }) => {
      const area = ([deep, one, other]: Three) => (deep * (one + other)) / 2;
      const middle = aft.map((size, k) => (size + (fwd[k] ?? 0)) / 2) as unknown as Three;
      const worked = run('prismoidal tank', {
        'first end': `${area(aft)} ft2`,
        middle: `${area(middle)} ft2`,
        'other end': `${area(fwd)} ft2`,
        length: `${len} ft`,
      });
      const byEnds = ((area(aft) + area(fwd)) / 2) * len;
      return {
        endAreaFt3: byEnds,
        prismoidalFt3: resultOf(worked, 'volume').mid / FOOT ** 3,
        lbAtEndArea: 186.6,
      };
    },
  ],
  [
    /^vd\.iso/,
    ({ I, Ltotal_m, S }: { I: number; Ltotal_m: number; S: number }) =>
      number('voltage drop', 'drop', { current: `${I} A`, length: `${Ltotal_m} m`, area: `${S} mm2` }),
  ],
  [
    /^vd\.us/,
    ({ I, Ltotal_ft, V }: { I: number; Ltotal_ft: number; V: number }) => {
      const at = (allowed: string) =>
        run(
          'voltage drop',
          { current: `${I} A`, length: `${Ltotal_ft} ft`, voltage: `${V} V`, allowed },
          { form: 'us marine' },
        );
      const mils = (allowed: string) =>
        resultOf(at(allowed), 'least area in circular mils').mid / 5.067074790974977e-10;
      const gauge = (allowed: string) => Number(/(\d+) AWG \(SAE\) is the first/.exec(at(allowed).why)?.[1]);
      return {
        cm3pct: mils('0.03'),
        awg3pct: gauge('0.03'),
        cm10pct: mils('0.1'),
        awg10pct: gauge('0.1'),
      };
    },
  ],
  [
    /^vd\.nec/,
    ({ V, I, oneway_ft, cm }: { V: number; I: number; oneway_ft: number; cm: number }) => {
      const worked = run(
        'voltage drop',
        { current: `${I} A`, length: `${oneway_ft} ft`, voltage: `${V} V`, area: `${cm} cmil` },
        { form: 'us building', 'length is': 'one way' },
      );
      return {
        drop: resultOf(worked, 'drop').mid,
        pct: resultOf(worked, 'share of the voltage').mid * 100,
      };
    },
  ],
  [
    /^conduit\.limits/,
    () => ({
      1: fillLimit(1, false),
      2: fillLimit(2, false),
      '3+': fillLimit(3, false),
      nipple24in: fillLimit(3, true),
    }),
  ],
  [
    /^conduit\.3x6/,
    ({ areas_in2 }: { areas_in2: readonly number[] }) => {
      const cable = areas_in2.map((area) => `${2 * Math.sqrt(area / Math.PI)} in`);
      return number('conduit fill', 'cable area', { cable, bore: '1 in' }, INCH ** 2);
    },
  ],
  [
    /^conduit\.two/,
    ({ od, id }: { od: readonly number[]; id: number }) => {
      const worked = run('conduit fill', { cable: od.map((one) => `${one} mm`), bore: `${id} mm` });
      return {
        fill: resultOf(worked, 'fill').mid,
        limit: fillLimit(od.length, false),
        ok: worked.verdict === 'holds',
      };
    },
  ],
  [
    /^cure\./,
    ({ from_C, to_C }: { from_C: number; to_C: number }) => {
      const inputs = {
        time: '1 h',
        'data sheet temperature': `${from_C} degC`,
        temperature: `${to_C} degC`,
      };
      const least = `${Math.max(to_C, 10) + 0.5} degC`;
      expect(verdict('cure time', { ...inputs, 'least temperature': least })).toBe('refused');
      return number('cure time', 'cured after', inputs, 3600);
    },
  ],
  [
    /^dew\.\d/,
    ({ airF, rh }: { airF: number; rh: number }) => {
      const dew = resultOf(
        run('dew point', { air: `${airF} degF`, humidity: `${rh / 100}` }),
        'dew point',
      ).mid;
      return { published: fahrenheit(dew), magnus: fahrenheit(dew) };
    },
  ],
  [
    /^dew\.rule/,
    ({ airF, rh }: { airF: number; rh: number }) => {
      const worked = run('dew point', { air: `${airF} degF`, humidity: `${rh / 100}` });
      const above = resultOf(worked, 'least surface').mid - resultOf(worked, 'dew point').mid;
      // Over the 57 °F of the chart, which is rounded down.
      return { minSurfaceF: 57 + above * 1.8 };
    },
  ],
  [
    /^battery\./,
    ({ wh, V }: { wh: number; V: number }) => {
      const bank = (share: string) =>
        number('battery', 'bank needed', { energy: `${wh} Wh`, voltage: `${V} V`, 'usable share': share });
      const ah = number('battery', 'charge', { energy: `${wh} Wh`, voltage: `${V} V` });
      return { ah, leadAcid50: bank('0.5'), lithium80: bank('0.8') };
    },
  ],
];

type Three = readonly [number, number, number];
const fahrenheit = (kelvin: number) => (kelvin - 273.15) * 1.8 + 32;

/**
 * Cases of no check: sizes said in digits, gallons and tons (trade-values.test.ts), chapters and subtitles. What the
 * condition gives beyond its domain has a test below.
 */
const ELSEWHERE = /^(?:len\.au-|chapters\.|vtt\.|gallon$|ton$|rect\.min-b$)/;
const OF_CHECKS = CASES.filter(({ id }) => !ELSEWHERE.test(id));

describe.each(OF_CHECKS)('$id ($basis; $source)', (one) => {
  test('comes to what is expected', () => {
    const found = OURS.filter(([id]) => id.test(one.id));
    expect(found).toHaveLength(1);
    expectNear(found[0]?.[1](one.input, one), one.expect, one.tol);
  });
});

/** Numbers within the tolerance of the case, all else as it is. */
function expectNear(ours: unknown, wanted: unknown, within: number): void {
  if (typeof wanted === 'number') {
    expect(Math.abs((ours as number) - wanted)).toBeLessThanOrEqual(within + 1e-6);
  } else if (typeof wanted === 'object' && wanted !== null) {
    expect(Object.keys(ours as object).sort()).toEqual(Object.keys(wanted).sort());
    for (const [name, value] of Object.entries(wanted))
      expectNear((ours as Record<string, unknown>)[name], value, within);
  } else expect(ours).toBe(wanted);
}

test('where the condition asks for more than the larger side, no opening of that width will do', () => {
  const [one] = CASES.filter(({ id }) => id === 'rect.min-b');
  if (!one) throw new Error('the case is gone');
  const { p, q, a } = one.input as { p: number; q: number; a: number };
  expect(one.expect as number).toBeGreaterThan(a);
  for (let b = q; b <= a; b += 0.01)
    expect(fitsInto({ width: p, height: q }, { width: a, height: b })).toBe(false);
});

interface TableLine {
  readonly quantity: string;
  readonly from: { readonly value: number; readonly unit: string };
  readonly to: { readonly value: number; readonly unit: string };
  readonly source: string;
}
const TABLES: readonly TableLine[] = readFileSync(
  new URL('../../outside/check-tables.jsonl', import.meta.url),
  'utf8',
)
  .trim()
  .split('\n')
  .map((line) => JSON.parse(line));

const BY_TABLE: Readonly<Record<string, (value: number) => number>> = {
  'conduit fill, maximum share of cross-section': (cables) => fillLimit(cables, false) * 100,
  'wire gauge to cross-section': (gauge) => gaugeArea(gauge) * 1e6,
  'roof pitch to angle': (rise) => number('slope', 'angle', { rise: `${rise} in`, run: '12 in' }),
  'electric power': () => number('load sum', 'energy', { load: `${230 * 13} W`, 'time on': '1 h' }),
  'battery energy': () => number('battery', 'charge', { energy: '1200 Wh', voltage: '12 V' }) * 12,
};

test.each(TABLES)('$quantity of $from.value $from.unit is $to.value $to.unit ($source)', (line) => {
  const ours = BY_TABLE[line.quantity]?.(line.from.value);
  const places = String(line.to.value).split('.')[1]?.length ?? 0;
  // Tables round, some of them down: within one of the last place that they print.
  expect(Math.abs((ours ?? Number.NaN) - line.to.value)).toBeLessThanOrEqual(10 ** -Math.min(places, 4));
});
