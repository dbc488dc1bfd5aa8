/** Words that make an interval of an expression: "706 mm +- 1 mm", "600 to 700 kg/m3", "about 900 mm", "at least 560 mm". */
import { readFormula } from '../formula.ts';
import { ABOUT_SHARE } from '../tolerance.ts';
import { unitKind } from '../units.ts';
import type { Range } from './check.ts';

export type IntervalShape = 'plain' | 'about' | 'spread' | 'between' | 'at-least' | 'at-most';

/** An expression taken apart: one part, or two for a spread and for "between". */
export interface IntervalWords {
  readonly shape: IntervalShape;
  readonly parts: readonly [string] | readonly [string, string];
}

const LEADS: readonly (readonly [RegExp, IntervalShape])[] = [
  [/^(?:about|roughly|approximately|approx|circa|~)\s*(?=\S)/i, 'about'],
  [/^(?:at least|no less than|>=|≥)\s*(?=\S)/i, 'at-least'],
  [/^(?:at most|no more than|up to|<=|≤)\s*(?=\S)/i, 'at-most'],
];
const SPREAD = /\s*(?:±|\+\/-|\+-|\bgive or take\b|\bplus or minus\b)\s*/i;
const BETWEEN = /^between\s+(.+)\s+and\s+(.+)$/i;
const TO = /^(.+?)\s+to\s+(.+)$/i;

/** Takes an expression apart. What reads as a plain formula is one, also where a name holds such a word. */
export function intervalWords(expression: string): IntervalWords {
  const text = expression.trim();
  for (const [lead, shape] of LEADS) if (lead.test(text)) return { shape, parts: [text.replace(lead, '')] };
  const spread = text.split(SPREAD);
  if (spread.length === 2 && spread[0] && spread[1])
    return { shape: 'spread', parts: [spread[0], spread[1]] };
  const ends = BETWEEN.exec(text) ?? (readFormula(text).ok ? undefined : TO.exec(text));
  if (ends?.[1] && ends[2]) return { shape: 'between', parts: sharedUnit(ends[1], ends[2]) };
  return { shape: 'plain', parts: [text] };
}

/** "600 to 700 kg/m3": the unit at the end is that of both. */
function sharedUnit(low: string, high: string): readonly [string, string] {
  const unit = /\d\s*([\p{L}%].*)$/u.exec(high)?.[1]?.trim();
  const isBare = /^[\d\s./]+$/.test(low);
  return isBare && unit !== undefined && unitKind(unit) ? [`${low} ${unit}`, high] : [low, high];
}

const WORDS: Readonly<Record<IntervalShape, (parts: readonly string[]) => string>> = {
  plain: ([one = '']) => one,
  about: ([one = '']) => `about ${one}`,
  spread: ([one = '', by = '']) => `${one} +- ${by}`,
  between: ([low = '', high = '']) => `between ${low} and ${high}`,
  'at-least': ([one = '']) => `at least ${one}`,
  'at-most': ([one = '']) => `at most ${one}`,
};

/** Writes an interval out so that it reads back the same. */
export const writeInterval = (shape: IntervalShape, parts: readonly string[]): string => WORDS[shape](parts);

/** A part of an interval as it is known, with the kind of its quantity and the unit that it was written in. */
export interface PartRange {
  readonly range: Range;
  readonly kind: string;
  readonly unit: string;
}

/** The interval of the parts; words where they do not go together. An open end stands where it was said. */
export function rangeOfParts(
  shape: IntervalShape,
  [first, second]: readonly PartRange[],
  region?: string,
): Range | string {
  if (!first) return 'nothing is given';
  const { low, mid, high } = first.range;
  if (shape === 'about') {
    const hedge = Math.abs(sizeOf(first, mid, region)) * ABOUT_SHARE;
    return { low: low - hedge, mid, high: high + hedge };
  }
  if (!second) return first.range;
  if (shape === 'between') {
    if (first.kind !== second.kind) return `${first.kind} and ${second.kind} are no two ends`;
    const ends = [low, high, second.range.low, second.range.high];
    return { low: Math.min(...ends), mid: (mid + second.range.mid) / 2, high: Math.max(...ends) };
  }
  const by = spreadOf(first, second, region);
  return by === undefined
    ? `a tolerance of ${second.kind} on a quantity of ${first.kind}`
    : { low: low - by, mid, high: high + by };
}

/** A tolerance is of the same kind, or a share of the figure; of a temperature it is a difference. */
function spreadOf(first: PartRange, second: PartRange, region?: string): number | undefined {
  const { kind, range } = second;
  if (kind === first.kind) return Math.abs(sizeOf(second, range.high, region));
  if (kind === 'temperature difference' && first.kind === 'temperature') return Math.abs(range.high);
  if (kind !== 'ratio' || second.unit !== '%') return undefined;
  return Math.abs(sizeOf(first, first.range.mid, region) * range.high);
}

/** A size counted from nought of its own unit: 20 degrees is 20 of them, and not 293 kelvins. */
function sizeOf({ unit }: PartRange, base: number, region?: string): number {
  return base - (unitKind(unit, region)?.offset?.valueOf() ?? 0);
}
