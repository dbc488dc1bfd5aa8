/** What holds for every check of sizes: ranges contain what any values inside them give, and units are no matter. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Check, Range } from '../../../src/model/checks/check.ts';
import { CLEARANCE } from '../../../src/model/checks/clearance.ts';
import { DIAGONAL_FOR_SQUARE } from '../../../src/model/checks/diagonal-for-square.ts';
import { FALL_OVER_RUN } from '../../../src/model/checks/fall-over-run.ts';
import { HEIGHT_OVER_FLOOR } from '../../../src/model/checks/height-over-floor.ts';
import { PANEL_THROUGH_OPENING } from '../../../src/model/checks/panel-through-opening.ts';
import { exactRange } from '../../../src/model/checks/ranges.ts';
import { RISE_AND_RUN } from '../../../src/model/checks/rise-and-run.ts';
import { ROD_ROUND_CORNER } from '../../../src/model/checks/rod-round-corner.ts';
import { runCheck } from '../../../src/model/checks/run-check.ts';
import { sayingIn } from '../../../src/model/checks/say.ts';
import { SLOPE } from '../../../src/model/checks/slope.ts';
import { STACK_UP } from '../../../src/model/checks/stack-up.ts';
import { STANDING_UP } from '../../../src/model/checks/standing-up.ts';
import { SWING_CLEARANCE } from '../../../src/model/checks/swing-clearance.ts';
import { TAPER } from '../../../src/model/checks/taper.ts';
import { given, sayPlain } from '../../kit/given.ts';

/** Sizes in metres, or degrees, that an input is tried with: each a figure as said, and where in its range it is. */
interface Drawn {
  readonly mid: number;
  readonly spread: number;
  readonly leaning: number;
  readonly inside: number;
}
type Draw = fc.Arbitrary<readonly Drawn[]>;

const drawn = (least: number, most: number, share = 0.2): fc.Arbitrary<Drawn> =>
  fc.record({
    mid: fc.double({ min: least, max: most, noNaN: true }),
    spread: fc.oneof(fc.constant(0), fc.double({ min: 0, max: share, noNaN: true })),
    leaning: fc.double({ min: 0, max: 1, noNaN: true }),
    inside: fc.double({ min: 0, max: 1, noNaN: true }),
  });
const size = (least: number, most: number, share?: number): Draw =>
  drawn(least, most, share).map((one) => [one]);
const sizes = (least: number, most: number, from: number, to: number): Draw =>
  fc.array(drawn(least, most), { minLength: from, maxLength: to });

const rangeOf = ({ mid, spread, leaning }: Drawn): Range => {
  const width = Math.abs(mid) * spread;
  return { low: mid - width * leaning, mid, high: mid + width * (1 - leaning) };
};
const pointIn = (one: Drawn): Range => {
  const { low, high } = rangeOf(one);
  return exactRange(low + (high - low) * one.inside);
};

const CASES: readonly (readonly [
  Check,
  Readonly<Record<string, Draw>>,
  Readonly<Record<string, string>>?,
])[] = [
  [STACK_UP, { layers: sizes(-0.5, 2, 1, 7), limit: size(0.1, 9), opening: size(0.1, 9) }],
  [HEIGHT_OVER_FLOOR, { height: size(0.5, 2.5), layers: sizes(0.001, 0.1, 1, 4), least: size(0.4, 2.4) }],
  [
    HEIGHT_OVER_FLOOR,
    { height: size(0.5, 2.5), layers: sizes(0.001, 0.1, 1, 4) },
    { 'taken over': 'finished floor' },
  ],
  [CLEARANCE, { opening: size(0.3, 2), part: size(0.3, 2), gap: size(0.001, 0.02) }],
  [CLEARANCE, { opening: sizes(0.3, 2, 2, 2), part: sizes(0.3, 2, 2, 2) }, { 'gap on': 'one side' }],
  [
    PANEL_THROUGH_OPENING,
    {
      'panel length': size(0.5, 3, 0.02),
      'panel width': size(0.3, 2, 0.02),
      thickness: size(0.003, 0.4, 0.1),
      'opening width': sizes(0.4, 1.5, 2, 2),
      'opening height': sizes(0.4, 2.2, 2, 2),
      fittings: sizes(0.001, 0.05, 0, 2),
      gap: size(0.001, 0.02),
    },
    { 'fittings add to': 'all three' },
  ],
  [STANDING_UP, { depth: size(0.2, 1), ceiling: size(1.5, 3), height: size(1, 3) }],
  [ROD_ROUND_CORNER, { 'first passage': size(0.5, 2), 'second passage': size(0.5, 2), length: size(1, 6) }],
  [
    SWING_CLEARANCE,
    {
      'box length': size(0.2, 2),
      'box depth': size(0.2, 2),
      'pivot from back': size(-0.5, 2.5),
      'pivot from bottom': size(-0.5, 2.5),
      'from angle': size(-180, 180),
      'to angle': size(-180, 180),
      floor: size(0.2, 3),
      ceiling: size(0.2, 3),
      'wall ahead': size(0.2, 3),
      'wall behind': size(0.2, 3),
      gap: size(0.001, 0.05),
    },
  ],
  [SLOPE, { rise: size(0.01, 3), run: size(0.05, 9), steepest: size(0.05, 1) }],
  [RISE_AND_RUN, { angle: size(0.1, 70), 'slope length': size(0.1, 9) }],
  [RISE_AND_RUN, { angle: size(0.1, 70), run: size(0.1, 9) }],
  [RISE_AND_RUN, { angle: size(0.1, 70), rise: size(0.1, 9) }],
  [
    TAPER,
    {
      'large end': size(0.05, 1, 0.02),
      'small end': size(0.001, 0.04),
      length: size(1, 3),
      at: size(0.01, 0.9),
    },
  ],
  [
    TAPER,
    { 'large end': size(0.05, 1, 0.02), 'small end': size(0.001, 0.04), length: size(1, 3) },
    { 'tapered on': 'one side' },
  ],
  [DIAGONAL_FOR_SQUARE, { length: size(0.5, 4, 0.01), width: size(0.5, 4, 0.01) }],
  [
    DIAGONAL_FOR_SQUARE,
    {
      length: size(1, 2, 0.02),
      width: size(1, 2, 0.02),
      'first diagonal': size(1.5, 2.4, 0.02),
      'second diagonal': size(1.5, 2.4, 0.02),
      allowed: size(0.001, 0.5),
    },
  ],
  [
    DIAGONAL_FOR_SQUARE,
    { length: size(1, 2, 0.1), width: size(0.3, 0.6, 0.1), 'first diagonal': size(0.9, 2, 0.1) },
  ],
  [FALL_OVER_RUN, { run: size(0.1, 9), fall: size(0.005, 0.2), drop: size(0.001, 1) }],
];

const titled = CASES.map(([check, draws, options]) => {
  const inputs = Object.keys(draws).join(', ');
  return { title: `${check.name} of ${inputs} ${Object.values(options ?? {})}`, check, draws, options };
});

describe.each(titled)('$title', ({ check, draws, options }) => {
  const figures = fc.record(draws as Record<string, Draw>);
  const givenFrom = (all: Record<string, readonly Drawn[]>, of: (one: Drawn) => Range, say = sayPlain) =>
    given(
      Object.fromEntries(
        Object.entries(all)
          .filter(([, list]) => list.length > 0)
          .map(([name, list]) => [name, list.map(of)]),
      ),
      options,
      say,
    );

  test('what comes out for values inside the ranges lies inside the ranges that come out', () => {
    let compared = 0;
    fc.assert(
      fc.property(figures, (all) => {
        const wide = runCheck(check, givenFrom(all, rangeOf));
        const point = runCheck(check, givenFrom(all, pointIn));
        if (!('results' in wide) || !('results' in point)) return;
        for (const { name, range } of wide.results) {
          const inner = point.results.find((result) => result.name === name)?.range;
          if (!inner || name === 'total by root-sum-square') continue;
          compared++;
          const noise = 1e-7 * Math.max(1, Math.abs(inner.mid));
          expect(range.low).toBeLessThanOrEqual(range.mid + noise);
          expect(range.mid).toBeLessThanOrEqual(range.high + noise);
          expect(inner.mid, `${name} of ${JSON.stringify(all)}`).toBeGreaterThanOrEqual(range.low - noise);
          expect(inner.mid, `${name} of ${JSON.stringify(all)}`).toBeLessThanOrEqual(range.high + noise);
        }
        // What holds at the worst holds for each case of it.
        if (wide.verdict === 'holds') expect(point.verdict).toBe('holds');
      }),
      { numRuns: 150, seed: 7 },
    );
    expect(compared).toBeGreaterThan(50);
  });

  test('inches or millimetres change the words and no number', () => {
    fc.assert(
      fc.property(figures, (all) => {
        const [metric, us] = (['metric', 'us'] as const).map((system) =>
          runCheck(check, givenFrom(all, rangeOf, sayingIn(system))),
        );
        expect(us?.verdict).toBe(metric?.verdict);
        expect(us && 'results' in us && us.results).toEqual(metric && 'results' in metric && metric.results);
      }),
      { numRuns: 20, seed: 7 },
    );
  });
});
