import type { Check, Given, Worked } from './check.ts';
import { maybe, one, rangeOf } from './ranges.ts';
import { saidRange } from './said-range.ts';
import { DEGREES } from './slope.ts';

/**
 * Rise, run and length along a slope from its angle and one of the three.
 * Formula: rise = length x sin(angle), run = length x cos(angle), length = run / cos(angle) = rise / sin(angle).
 * Source: trigonometry.
 */
export const RISE_AND_RUN: Check = {
  name: 'rise and run',
  says: 'rise, run and length along a slope, from its angle and one of them',
  formula: 'rise = length x sin(angle); run = length x cos(angle)',
  source: 'trigonometry',
  inputs: [
    { name: 'angle', kind: 'angle', says: 'angle of the slope to the level', most: 90 },
    { name: 'run', kind: 'length', says: 'level distance', optional: true },
    { name: 'rise', kind: 'length', says: 'height gained', optional: true },
    { name: 'slope length', kind: 'length', says: 'length along the slope', optional: true },
  ],
  gives: 'rise',
  run: riseAndRunOf,
};

const sin = (degrees: number) => Math.sin(degrees / DEGREES);
const cos = (degrees: number) => Math.cos(degrees / DEGREES);

type OfAngle = (angle: number, size: number) => number;
/** Rise, run and length from the angle and the one that is known. Each only rises or only falls up to 90 degrees. */
const FROM: readonly { readonly known: string; readonly sizes: readonly [OfAngle, OfAngle, OfAngle] }[] = [
  {
    known: 'slope length',
    sizes: [(angle, l) => l * sin(angle), (angle, l) => l * cos(angle), (_angle, l) => l],
  },
  {
    known: 'run',
    sizes: [
      (angle, run) => (run * sin(angle)) / cos(angle),
      (_angle, run) => run,
      (angle, run) => run / cos(angle),
    ],
  },
  {
    known: 'rise',
    sizes: [
      (_angle, rise) => rise,
      (angle, rise) => (rise * cos(angle)) / sin(angle),
      (angle, rise) => rise / sin(angle),
    ],
  },
];

/** As steep as this, a level run says nothing of the rise any more. */
const UPRIGHT = 89.9;

function riseAndRunOf(given: Given): Worked {
  const { say } = given;
  const known = FROM.filter((from) => given.inputs.has(from.known));
  if (known.length === 0) return { verdict: 'missing', why: 'missing: one of slope length, run, rise' };
  if (known.length > 1) {
    const names = known.map((from) => from.known).join(' and ');
    return { verdict: 'refused', why: `${names} were both given: one of them and the angle are enough` };
  }
  const [from] = known as [(typeof FROM)[number]];
  const angle = one(given, 'angle');
  if (from.known === 'run' && angle.high > UPRIGHT) {
    return { verdict: 'refused', why: `at ${say(angle.high, 'angle')} a run says nothing of the rise` };
  }
  const size = maybe(given, from.known) ?? one(given, from.known);
  const [rise, run, length] = from.sizes.map((of) => rangeOf(of, angle, size)) as [
    typeof size,
    typeof size,
    typeof size,
  ];
  return {
    verdict: 'told',
    why: `rises ${saidRange(say, rise, 'length')} over ${saidRange(say, run, 'length')}, ${saidRange(say, length, 'length')} along the slope`,
    results: [
      { name: 'rise', kind: 'length', range: rise },
      { name: 'run', kind: 'length', range: run },
      { name: 'slope length', kind: 'length', range: length },
    ],
    notes: [`from the angle and the ${from.known}`],
  };
}
