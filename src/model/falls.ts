/** Falls and slopes told as one in so many: "one in forty" stands as 40, and is reckoned with as 1/40. */
import { nameStems } from './names.ts';
import type { StandingRow } from './rows.ts';

/** What goes by these words is a slope where its figure is a plain number. */
const SLOPES: ReadonlySet<string> = new Set(nameStems('fall slope gradient ramp pitch incline crossfall'));

/** Whether a figure is a fall: by the name of its thing, as a plain number. */
export function isFall(name: string, { unit, attribute }: Pick<StandingRow, 'unit' | 'attribute'>): boolean {
  if (unit !== '1' || (attribute !== 'ratio' && attribute !== 'angle')) return false;
  return nameStems(name).some((stem) => SLOPES.has(stem));
}

/**
 * The rise over the run of a plain number that is told of a fall: 40 is one in forty, 1/40; a number up to one is the
 * share itself.
 */
export const shareOfFall = (told: number): number => (told > 1 ? 1 / told : told);

/** A range of falls as shares. At least one in forty is at least as steep, so the ends change places. */
export function sharesOfFall<R extends { readonly low: number; readonly mid: number; readonly high: number }>(
  range: R,
): R {
  const [a, b] = [shareOfFall(range.low), shareOfFall(range.high)];
  return { ...range, low: Math.min(a, b), mid: shareOfFall(range.mid), high: Math.max(a, b) };
}
