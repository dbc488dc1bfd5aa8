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

/** What a figure of two numbers, told by its greater term, is told as: a fall of one in 40, a mix of 3 to one. */
export type Proportion = 'one-in' | 'to-one';

/** "One in forty", "1 in 60"; not "the one in the corner". */
const ONE_IN =
  /\b(?:one|1) (?:in|over|on) (?!(?:an?|the|my|our|your|his|her|its|here|there|this|that|it|each)\b)/i;
const TO_ONE = /\bto (?:one|1)\b|\b(?:one|1) to\b|\bparts?\b|\d:\d/i;
const MIXES: ReadonlySet<string> = new Set(
  nameStems(
    'mix mortar concrete plaster render grout hardener resin epoxy gear gearing gearbox reduction purchase',
  ),
);

/** A figure as far as its proportion goes: what it is of, and the words that it was said in. */
export interface Proportioned {
  readonly value: number;
  readonly unit: string;
  readonly attribute?: string | undefined;
  readonly item?: string | undefined;
  readonly quote?: string | undefined;
  readonly source?: { readonly quote: string } | undefined;
}

/**
 * How a plain number above one of a ratio is told: by the words that it was said in, else by the name of its thing;
 * undefined for every other figure, and where neither tells.
 */
export function proportionOf(figure: Proportioned): Proportion | undefined {
  const { value, unit, attribute, item = '' } = figure;
  if (unit !== '1' || !(value > 1) || (attribute !== 'ratio' && attribute !== 'angle')) return undefined;
  const quote = figure.quote ?? figure.source?.quote ?? '';
  if (ONE_IN.test(quote)) return 'one-in';
  if (attribute === 'ratio' && TO_ONE.test(quote)) return 'to-one';
  if (isFall(item, { unit, attribute })) return 'one-in';
  return attribute === 'ratio' && nameStems(item).some((stem) => MIXES.has(stem)) ? 'to-one' : undefined;
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
