/** Standing figures as intervals, and expressions over them. What a bound leaves open is told, never invented. */
import type { UnitName } from '../../language/notes.ts';
import { evaluate } from '../evaluate.ts';
import { type Formula, readsOf } from '../formula.ts';
import type { StandingRow } from '../rows.ts';
import { ABOUT_SHARE } from '../tolerance.ts';
import { spanIn } from '../work-out.ts';
import type { Range } from './check.ts';

/** A figure as it is known, in its own unit. */
export interface Known extends Range {
  readonly unit: UnitName;
  /** The side without an end: `high` of "at least" is its stated end, and more is possible. */
  readonly open?: 'above' | 'below';
  /** Half-width of what it may be off by; absent where nothing was said of that. */
  readonly spread?: number;
}

/** A standing figure as an interval. `isEdge`: a bound is taken at its stated end, as what things are held to. */
export function knownOf(row: StandingRow, isEdge: boolean): Known {
  const { value, unit, bound, high = value } = row;
  if (bound === 'between') return { low: value, mid: (value + high) / 2, high, unit };
  const stated = { low: value, mid: value, high: value, unit };
  if (isEdge) return stated;
  if (bound === 'at-least') return { ...stated, open: 'above' };
  if (bound === 'at-most') return { ...stated, open: 'below' };
  const spread = spreadOf(row);
  return spread === 0 ? stated : { low: value - spread, mid: value, high: value + spread, unit, spread };
}

/** The tolerance of the figure; a hedge is one. How finely a figure was said is no tolerance of its part. */
function spreadOf({ value, unit, bound, tolerance }: StandingRow): number {
  const stated = tolerance && tolerance.from !== 'precision' ? Math.abs(spanIn(tolerance, unit)) : 0;
  if (bound !== 'about') return stated;
  const hedge = tolerance?.from === 'precision' ? Math.abs(spanIn(tolerance, unit)) : 0;
  return Math.max(stated, hedge, Math.abs(value) * ABOUT_SHARE);
}

export type ExpressionRange =
  | { readonly ok: true; readonly range: Range; readonly kind: string; readonly unit: UnitName }
  | { readonly ok: false; readonly why: string };

/** All combinations of ends are tried up to so many figures; beyond, each end by the side to which it moves the result. */
const MOST_CORNERS = 4;

/** Works an expression out over intervals, in the base unit of its kind. Every figure that it reads must be known. */
export function rangeOfExpression(
  formula: Formula,
  known: ReadonlyMap<string, Known>,
  region?: string,
): ExpressionRange {
  const at = (pick: (ref: string, known: Known) => number) =>
    evaluate(
      formula,
      (ref) => {
        const one = known.get(ref);
        return one && { value: pick(ref, one), unit: one.unit };
      },
      region,
    );
  const middle = at((_, { mid }) => mid);
  if (!middle.ok) return { ok: false, why: problemWords(middle) };
  const { exact, unit } = middle.value;
  const mid = exact.base.valueOf();
  const wide = readsOf(formula)
    .map(({ text }) => text)
    .filter((ref) => isWide(known.get(ref)));
  const worth = (ends: ReadonlyMap<string, 'low' | 'high'>) => {
    const result = at((ref, one) => one[ends.get(ref) ?? 'mid']);
    return result.ok ? result.value.exact.base.valueOf() : mid;
  };
  const corners = wide.length <= MOST_CORNERS ? cornersOf(wide) : leaningCorners(wide, worth);
  const values = corners.map(worth);
  return {
    ok: true,
    range: { low: Math.min(mid, ...values), mid, high: Math.max(mid, ...values) },
    kind: exact.kind,
    unit,
  };
}

const isWide = (known: Known | undefined) => known !== undefined && known.low !== known.high;

type Ends = ReadonlyMap<string, 'low' | 'high'>;

function cornersOf(refs: readonly string[]): readonly Ends[] {
  let corners: Ends[] = [new Map()];
  for (const ref of refs)
    corners = corners.flatMap((corner) =>
      (['low', 'high'] as const).map((end) => new Map([...corner, [ref, end] as const])),
    );
  return corners;
}

/** The two corners to which single ends lean: right where each figure moves the result one way only. */
function leaningCorners(refs: readonly string[], worth: (ends: Ends) => number): readonly Ends[] {
  const rises = refs.map((ref) => worth(new Map([[ref, 'high']])) >= worth(new Map([[ref, 'low']])));
  const corner = (up: boolean): Ends =>
    new Map(refs.map((ref, index) => [ref, rises[index] === up ? 'high' : 'low']));
  return [corner(true), corner(false)];
}

function problemWords({ kind, what }: { readonly kind: string; readonly what: string }): string {
  if (kind === 'by-nought') return 'it divides by nothing';
  return kind === 'unknown' ? `"${what}" is not known` : what;
}
