/** Properties that checks share: ranges hold every value within them, and a result only rises or falls with a size. */
import * as fc from 'fast-check';
import { expect } from 'vitest';
import type { Check, Range } from '../../src/model/checks/check.ts';
import { exactRange } from '../../src/model/checks/ranges.ts';
import { type Ran, runCheck } from '../../src/model/checks/run-check.ts';
import { resultOf, sayPlain } from './given.ts';

/** Least and most of an input in its base unit; a whole number is drawn where both ends are whole and `whole` is set. */
export interface Drawn {
  readonly least: number;
  readonly most: number;
  readonly whole?: boolean;
  /** How many ranges an input that takes many gets. One where absent. */
  readonly times?: number;
}
export type Draws = Readonly<Record<string, Drawn>>;
export type Options = Readonly<Record<string, string>>;
type Drawing = Readonly<Record<string, readonly Range[]>>;

export function runDrawn(check: Check, drawing: Drawing, options: Options = {}): Ran {
  const inputs = new Map(Object.entries(drawing));
  return runCheck(check, { inputs, options: new Map(Object.entries(options)), say: sayPlain });
}

/** A value within the drawn bounds, to a tenth of a thousandth of them, as figures are said. */
const value = ({ least, most, whole }: Drawn): fc.Arbitrary<number> =>
  whole
    ? fc.integer({ min: least, max: most })
    : fc
        .integer({ min: 0, max: 10_000 })
        .map((step) => Number((least + ((most - least) * step) / 10_000).toFixed(6)));

const range = (drawn: Drawn): fc.Arbitrary<Range> =>
  drawn.whole
    ? value(drawn).map(exactRange)
    : fc.tuple(value(drawn), value(drawn), value(drawn)).map((values) => {
        const [low = 0, mid = 0, high = 0] = values.toSorted((left, right) => left - right);
        return { low, mid, high };
      });

const drawings = (draws: Draws): fc.Arbitrary<Drawing> =>
  fc.record(
    Object.fromEntries(
      Object.entries(draws).map(([name, drawn]) => {
        const length = drawn.times ?? 1;
        return [name, fc.array(range(drawn), { minLength: length, maxLength: length })];
      }),
    ),
  );

const within = (within: Range, at: number): Range => exactRange(within.low + (within.high - within.low) * at);
const SLACK = 1e-9;

/** Whatever the values are within the inputs' ranges, every named result lies within its own. */
export function holdsWhatLiesWithin(
  check: Check,
  draws: Draws,
  names: readonly string[],
  options?: Options,
): void {
  const places = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 12, maxLength: 12 });
  const property = fc.property(drawings(draws), places, (drawing, at) => {
    let place = 0;
    const exact = Object.entries(drawing).map(([name, ranges]) => {
      return [name, ranges.map((one) => within(one, at[place++ % 12] ?? 0))] as const;
    });
    const [wide, narrow] = [
      runDrawn(check, drawing, options),
      runDrawn(check, Object.fromEntries(exact), options),
    ];
    for (const name of names) {
      const [bounds, result] = [resultOf(wide, name), resultOf(narrow, name).mid];
      const slack = SLACK * Math.max(1, Math.abs(result));
      expect(result).toBeGreaterThanOrEqual(bounds.low - slack);
      expect(result).toBeLessThanOrEqual(bounds.high + slack);
      expect(bounds.low).toBeLessThanOrEqual(bounds.mid);
      expect(bounds.mid).toBeLessThanOrEqual(bounds.high);
    }
  });
  fc.assert(property, { numRuns: 200 });
}

/** The result never falls where an input of `rises` grows and never rises where one of `falls` grows. */
export function isMonotone(
  check: Check,
  draws: Draws,
  name: string,
  ways: { readonly rises?: readonly string[]; readonly falls?: readonly string[] },
  options?: Options,
): void {
  const ups = [
    ...(ways.rises ?? []).map((input) => [input, 1] as const),
    ...(ways.falls ?? []).map((input) => [input, -1] as const),
  ];
  for (const [input, way] of ups) {
    const drawn = draws[input];
    if (!drawn) throw new Error(`${input} is not drawn`);
    const property = fc.property(drawings(draws), value(drawn), value(drawn), (drawing, one, other) => {
      const at = (size: number) =>
        resultOf(runDrawn(check, { ...drawing, [input]: [exactRange(size)] }, options), name);
      const [less, more] = [at(Math.min(one, other)), at(Math.max(one, other))];
      const slack = SLACK * Math.max(1, Math.abs(more.mid));
      expect((more.mid - less.mid) * way).toBeGreaterThanOrEqual(-slack);
      expect((more.low - less.low) * way).toBeGreaterThanOrEqual(-slack);
    });
    fc.assert(property, { numRuns: 100 });
  }
}
