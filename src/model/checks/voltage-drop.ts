import type { Check, Given, Range, Result, Worked } from './check.ts';
import { ARITHMETIC_ONLY } from './deferral.ts';
import { isAtLeast } from './noise.ts';
import { exactRange, maybe, one, rangeOf, times } from './ranges.ts';
import { saidRange } from './said-range.ts';
import { CIRCULAR_MIL, PLAIN_AREAS, plainGaugeFor, SAE_AREAS, saeGaugeFor } from './wire-areas.ts';

const AS_GIVEN = 'as given';
const ONE_WAY = 'one way';
const FOOT = 0.3048;

interface Form {
  readonly name: string;
  /** Ohms of a metre of wire of one square metre. */
  readonly resistivity: number;
  readonly constant: string;
}

/**
 * The three forms in use. All are current x length there and back x a constant / area; they differ in the constant,
 * because each takes the copper at another warmth, and in the length that they are written with.
 */
const FORMS: readonly Form[] = [
  { name: 'iso', resistivity: 0.0164e-6, constant: 'E = 0.0164 I L / S, L there and back in m, S in mm2' },
  {
    name: 'us marine',
    resistivity: (10.75 * CIRCULAR_MIL) / FOOT,
    constant: 'CM = K I L / E, K = 10.75, L there and back in ft',
  },
  {
    name: 'us building',
    resistivity: (12.9 * CIRCULAR_MIL) / FOOT,
    constant: 'E = 2 K I D / CM, K = 12.9, D one way in ft',
  },
];

const WIRES = [...SAE_AREAS, ...PLAIN_AREAS];

/**
 * What a run of copper wire loses, or the least area for a loss that is allowed. It never says that a wire will do.
 * Formula: E = resistivity x current x length there and back / area, by one of FORMS. Sources: iso
 * http://www.energy-solutions.co.uk/voltdrop-calc.html, us marine
 * http://hollandmarine.com/hmp-flipbook-2022/flipbook/inc/html/52.html, us building https://calculators9.com (voltage drop)
 */
export const VOLTAGE_DROP: Check = {
  name: 'voltage drop',
  says: 'what a run of copper wire loses at a current, or the least area for the share that may be lost',
  formula: FORMS.map(({ name, constant }) => `${name}: ${constant}`).join('; '),
  source:
    'iso: http://www.energy-solutions.co.uk/voltdrop-calc.html; us marine: http://hollandmarine.com/hmp-flipbook-2022/flipbook/inc/html/52.html; us building: https://calculators9.com/free-calculators/usa/general-utility-calculators/engineering-construction/voltage-drop-calculator-168',
  inputs: [
    { name: 'current', kind: 'current', says: 'current that the load takes' },
    {
      name: 'length',
      kind: 'length',
      says: 'length of the run, there and back unless one way is chosen',
      most: 500,
    },
    { name: 'area', kind: 'area', says: 'area of the conductor', optional: true, most: 0.001, unit: 'mm2' },
    { name: 'voltage', kind: 'voltage', says: 'voltage of the supply', optional: true },
    { name: 'allowed', kind: 'ratio', says: 'share that may be lost', optional: true, most: 1, unit: '%' },
  ],
  options: [
    { name: 'form', says: 'which formula and constant', of: FORMS.map(({ name }) => name) },
    { name: 'length is', says: 'whether the length counts both wires', of: ['there and back', ONE_WAY] },
    { name: 'wire', says: 'a gauge in place of an area', of: [AS_GIVEN, ...WIRES.map(({ name }) => name)] },
  ],
  gives: 'drop',
  touches: ['mains', 'battery cable'],
  run: voltageDropOf,
};

function voltageDropOf(given: Given): Worked {
  const form = FORMS.find(({ name }) => name === given.options.get('form')) ?? FORMS[0];
  const area = areaOf(given);
  const [voltage, allowed] = [maybe(given, 'voltage'), maybe(given, 'allowed')];
  if (!area && !(voltage && allowed)) {
    return {
      verdict: 'missing',
      why: 'give the area or the wire, or the voltage and the share that may be lost',
    };
  }
  const drop = area && form && rangeOf((loss, size) => loss / size, lossPerArea(given, form), area);
  const share = drop && voltage && rangeOf((lost, whole) => lost / whole, drop, voltage);
  const least =
    form &&
    voltage &&
    allowed &&
    rangeOf((loss, whole, part) => loss / (whole * part), lossPerArea(given, form), voltage, allowed);
  const judged = share && allowed ? (isAtLeast(allowed.low, share.high) ? 'holds' : 'broken') : 'told';
  return {
    verdict: judged,
    why: `${[...sayDrop(given, drop, share), ...sayLeast(given, least)].join('; ')}. ${sentence(ARITHMETIC_ONLY)}`,
    results: resultsOf(drop, share, least),
    notes: [
      form?.constant ?? '',
      `length taken as ${turns(given)}`,
      'copper; joints, fuses and switches not counted',
    ],
  };
}

const sentence = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
const turns = (given: Given): string => given.options.get('length is') ?? 'there and back';

function areaOf(given: Given): Range | undefined {
  const wire = WIRES.find(({ name }) => name === given.options.get('wire'));
  return maybe(given, 'area') ?? (wire && exactRange(wire.area));
}

/** Volts lost for every square metre of copper that is there: current x length there and back x resistivity. */
function lossPerArea(given: Given, { resistivity }: Form): Range {
  const length = one(given, 'length');
  const both = turns(given) === ONE_WAY ? times(length, 2) : length;
  return rangeOf((current, metres) => current * metres * resistivity, one(given, 'current'), both);
}

function sayDrop(given: Given, drop: Range | undefined, share: Range | undefined): readonly string[] {
  if (!drop) return [];
  const { say } = given;
  const lost = `${saidRange(say, drop, 'voltage', 'V')} lost ${turns(given) === ONE_WAY ? 'over both wires' : 'there and back'}`;
  const allowed = maybe(given, 'allowed');
  const wanted = share && allowed ? `, ${saidRange(say, allowed, 'ratio', '%')} allowed` : '';
  return [`${lost}${share ? `, ${saidRange(say, share, 'ratio', '%')} of the voltage` : ''}${wanted}`];
}

function sayLeast({ say, options }: Given, least: Range | undefined): readonly string[] {
  if (!least) return [];
  const isPlain = options.get('form') === 'us building';
  const gauge = isPlain ? plainGaugeFor(least.high) : saeGaugeFor(least.high);
  const none = `no ${isPlain ? 'gauge' : 'SAE area'} known here is as large`;
  const known = gauge ? `${gauge.name} is the first with that area` : none;
  return [`least area ${say(least.high, 'area', 'mm2')} (${say(least.high, 'area', 'cmil')}), ${known}`];
}

function resultsOf(drop?: Range, share?: Range, least?: Range): readonly Result[] {
  return [
    ...(drop ? [{ name: 'drop', kind: 'voltage', range: drop, unit: 'V' }] : []),
    ...(share ? [{ name: 'share of the voltage', kind: 'ratio', range: share, unit: '%' }] : []),
    ...(least ? [{ name: 'least area', kind: 'area', range: least, unit: 'mm2' }] : []),
    ...(least ? [{ name: 'least area in circular mils', kind: 'area', range: least, unit: 'cmil' }] : []),
  ];
}
