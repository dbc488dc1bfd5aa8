/** What a recogniser misheard, put right before the words are read. The memo keeps its own words; see mended-text.ts. */
import type { ReadContext, Span } from '../notes.ts';

/** One stretch of the text that means other words than those written. */
export interface Repair extends Span {
  /** What was meant; never empty. */
  readonly means: string;
  /** Name of the rule, for the trace. */
  readonly rule: string;
  readonly why: string;
}

/** A word of the text as the repair rules see it. */
export interface Heard extends Span {
  /** Lower case, apostrophes plain: "door's", "mill". */
  readonly lower: string;
  /** Whether a mark stands between this word and the one before, or it is the first. */
  readonly opens: boolean;
  /** Whether that mark is a comma alone. */
  readonly pauses: boolean;
}

export type RepairRule = (words: readonly Heard[], context: ReadContext) => readonly Omit<Repair, 'rule'>[];

const WORD = /[\p{L}\d][\p{L}\p{M}\d]*(?:['’][\p{L}]+)*/gu;

/** Cuts the text into words; linear in its length. */
export function heardWords(text: string): readonly Heard[] {
  const words: Heard[] = [];
  let last = 0;
  for (const found of text.matchAll(WORD)) {
    const start = found.index;
    const between = text.slice(last, start);
    last = start + found[0].length;
    const opens = words.length === 0 || /[^\s'’-]/.test(between);
    const pauses = opens && words.length > 0 && between.trim() === ',';
    words.push({ start, end: last, lower: found[0].toLowerCase().replaceAll('’', "'"), opens, pauses });
  }
  return words;
}
