import type { Check, Given, Range, Worked } from './check.ts';
import { less, maybe, one, rangeOf } from './ranges.ts';
import { saidRange } from './said-range.ts';

export const DEGREES = 180 / Math.PI;

/**
 * The slope that a rise over a run makes, said every way a trade says it.
 * Formula: angle = atan(rise / run); percent = rise / run; 1 in n with n = run / rise; slope factor (length along the
 * slope to its run) = sqrt(1 + (rise / run)^2). Source: trigonometry.
 */
export const SLOPE: Check = {
  name: 'slope',
  says: 'the angle, percentage, 1 in n and slope factor of a rise over a run',
  formula: 'atan(rise / run); rise / run; 1 in run / rise; sqrt(1 + (rise / run)^2)',
  source: 'trigonometry',
  inputs: [
    { name: 'rise', kind: 'length', says: 'how much it rises' },
    { name: 'run', kind: 'length', says: 'over what level distance' },
    {
      name: 'steepest',
      kind: 'ratio',
      says: 'steepest allowed: 1/12, 8 %, 12',
      optional: true,
      most: 10,
      isFall: true,
    },
  ],
  gives: 'angle',
  run: slopeOf,
};

function slopeOf(given: Given): Worked {
  const { say } = given;
  const [rise, run] = [one(given, 'rise'), one(given, 'run')];
  const of = (f: (rise: number, run: number) => number): Range => rangeOf(f, rise, run);
  const share = of((a, b) => a / b);
  const angle = of((a, b) => Math.atan2(a, b) * DEGREES);
  const oneIn = of((a, b) => b / a);
  const steepest = maybe(given, 'steepest');
  const left = steepest ? less(steepest, share) : undefined;
  const told = `${saidRange(say, angle, 'angle')}, 1 in ${saidRange(say, oneIn, 'ratio')}`;
  // A share of rounding: 1 m in 12 m is not steeper than 1/12.
  const isHeld = left !== undefined && left.low >= -1e-12;
  const against = steepest
    ? `: ${isHeld ? 'no steeper' : 'steeper'} than 1 in ${say(1 / steepest.mid, 'ratio')}`
    : '';
  return {
    verdict: left === undefined ? 'told' : isHeld ? 'holds' : 'broken',
    why: told + against,
    results: [
      { name: 'angle', kind: 'angle', range: angle },
      { name: 'percent', kind: 'ratio', range: share, unit: '%' },
      { name: 'one in n', kind: 'ratio', range: oneIn },
      { name: 'slope factor', kind: 'ratio', range: of((a, b) => Math.hypot(a, b) / b) },
      { name: 'slope length', kind: 'length', range: of(Math.hypot) },
    ],
    notes: ['1 in n counts n along the level, not along the slope'],
  };
}
