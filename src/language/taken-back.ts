/** Sentences that the next breath takes back: "I need to order more screws. No, scratch that." Pure. */
import type { Span, TraceStep } from './notes.ts';
import { type Token, tokenise } from './tokens.ts';
import { wordSet } from './word-table.ts';

/** Words that only lead up to it. */
const LEAD = '(?:no|nope|nah|naw|sorry|er|um|uh|oh|oops|whoops|wait|actually|hang on|hold on)';
const ORDER =
  '(?:scratch|strike|forget|ignore) (?:that last one|that one|the last one|all of that|all that|that)(?: please)?';
/** Talk without one of these takes nothing back. */
const ORDERS = wordSet('scratch strike forget ignore');
/** The words of a size are not read here, only that there is one. */
const NUMBER =
  '(?:\\d|(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\\p{L}+teen|(?:twen|thir|for|fif|six|seven|eigh|nine)ty|hundred|thousand|half|quarter)(?: |$))';
/** Where a sentence holds nothing else, or a pause or a number stands behind it: "scratch that panel" is work. */
const AT_START = new RegExp(`^(?:${LEAD} )*${ORDER}(?= \\||$| ${NUMBER})`, 'u');
/** At the end a pause or a "no" parts it: "I must not forget that" and "I will ignore that" take nothing back. */
const AT_END = new RegExp(`(?:(?:^|\\| )|(?= ${LEAD} ) )((?:${LEAD} (?:\\| )?)*${ORDER})$`);
const BEHIND_PAUSE = new RegExp(`\\| ((?:${LEAD} (?:\\| )?)*${ORDER}) \\|`);
const ONLY_LEAD = new RegExp(`^${LEAD}(?: ${LEAD})*$`);
/** No way of taking back has more words; pauses are counted too. */
const MOST_WORDS = 16;

/** What is taken back, by characters and by tokens, ends exclusive. */
export interface TakenBack extends Span {
  readonly tokens: { readonly from: number; readonly to: number };
  /** The words that do it: they say nothing of the work themselves. */
  readonly order: Span;
  /** Tokens that put a number in the place of the last one: "no, scratch that, 80". Whatever else was said holds. */
  readonly numberPut?: { readonly from: number; readonly to: number };
}

/** A sentence's tokens, from `first` up to `next`. */
interface Stretch {
  readonly first: number;
  readonly next: number;
}

/** Words and pauses of some tokens, for matching, with the token each stands for. */
interface Told {
  readonly text: string;
  readonly places: readonly number[];
}

/** In the order of speech. Linear: of a long sentence only its ends are looked at. */
export function findTakenBack(tokens: readonly Token[]): readonly TakenBack[] {
  if (!tokens.some(({ word }) => ORDERS.has(word))) return [];
  const stretches = stretchesOf(tokens);
  return stretches.flatMap((stretch, index) => {
    const behind = orderAtStart(tokens, stretch);
    const order = behind ?? orderWithin(tokens, stretch);
    if (!order) return [];
    const taken = behind
      ? lastTelling(tokens, stretches, index - 1)
      : { first: stretch.first, next: order.first };
    const own = { first: order.next, next: stretch.next };
    // A recogniser makes a sentence of "80 millimetres." alone.
    const instead = wordsOf(tokens, own) === '' ? (stretches[index + 1] ?? own) : own;
    const found = taken && takenBackOf(tokens, taken, order, instead);
    // "Scratch that 80 mm line" behind no number is work.
    const isOrder = found?.numberPut !== undefined || !IS_NUMBER.test(tokens[order.next]?.word ?? '');
    return found && isOrder ? [found] : [];
  });
}

function takenBackOf(tokens: readonly Token[], taken: Stretch, order: Stretch, instead: Stretch): TakenBack {
  const isNumberPut = hasNumber(tokens, taken) && NUMBER_PUT.test(wordsOf(tokens, instead));
  return {
    ...spanOf(tokens, taken),
    tokens: { from: taken.first, to: taken.next },
    order: spanOf(tokens, order),
    ...(isNumberPut ? { numberPut: { from: instead.first, to: instead.next } } : {}),
  };
}

const spanOf = (tokens: readonly Token[], { first, next }: Stretch): Span => ({
  start: tokens[first]?.start ?? 0,
  end: tokens[next - 1]?.end ?? 0,
});

const IS_NUMBER = new RegExp(`^${NUMBER}`, 'u');
/** "..., 80", "..., make it eighty". */
const NUMBER_PUT = new RegExp(
  `^(?:\\| )?(?:(?:it|that|'s|is|was|be|should|make|call|say|i|meant|mean|about|more|like|only|just|a|an|at) (?:\\| )?)*${NUMBER}`,
  'u',
);

function hasNumber(tokens: readonly Token[], { first, next }: Stretch): boolean {
  for (let at = first; at < next; at++) if (IS_NUMBER.test(tokens[at]?.word ?? '')) return true;
  return false;
}

const wordsOf = (tokens: readonly Token[], { first, next }: Stretch) =>
  told(tokens, first, Math.min(next, first + MOST_WORDS)).text;

/** The sentences of the talk. */
function stretchesOf(tokens: readonly Token[]): readonly Stretch[] {
  const found: Stretch[] = [];
  for (let first = 0; first < tokens.length; ) {
    const number = tokens[first]?.sentence;
    let next = first + 1;
    while (next < tokens.length && tokens[next]?.sentence === number) next++;
    found.push({ first, next });
    first = next;
  }
  return found;
}

/** The sentence at `index`, or the one before it where that only leads up: a recogniser parts "No." from "Scratch that." */
function lastTelling(
  tokens: readonly Token[],
  stretches: readonly Stretch[],
  index: number,
): Stretch | undefined {
  const one = stretches[index];
  if (!one) return undefined;
  return ONLY_LEAD.test(wordsOf(tokens, one).replaceAll(' |', '')) ? stretches[index - 1] : one;
}

/** The order that a sentence opens with. */
function orderAtStart(tokens: readonly Token[], { first, next }: Stretch): Stretch | undefined {
  const { text, places } = told(tokens, first, Math.min(next, first + MOST_WORDS));
  // Pauses between what leads up to it mean nothing.
  const words = text.replace(
    /^(?:(?:no|nope|nah|naw|sorry|er|um|uh|oh|oops|whoops|wait|actually|hang on|hold on) \| )+/,
    '',
  );
  const hit = AT_START.exec(words);
  if (!hit) return undefined;
  const count = wordCount(text) - wordCount(words) + wordCount(hit[0]);
  return { first, next: (places[count - 1] ?? first) + 1 };
}

/** The order that a sentence ends with, or that stands in it between two pauses. */
function orderWithin(tokens: readonly Token[], { first, next }: Stretch): Stretch | undefined {
  const { text, places } = told(tokens, Math.max(first, next - 3 * MOST_WORDS), next);
  const hit = AT_END.exec(text) ?? BEHIND_PAUSE.exec(text);
  const order = hit?.[1];
  if (!hit || order === undefined) return undefined;
  const before = wordCount(text.slice(0, hit.index + hit[0].indexOf(order)));
  const [from, to] = [places[before], places[before + wordCount(order) - 1]];
  return from === undefined || to === undefined ? undefined : { first: from, next: to + 1 };
}

const wordCount = (text: string) => text.split(' ').filter(Boolean).length;

/** Pauses are one sign; other marks, and the stop at the end, are none. */
function told(tokens: readonly Token[], from: number, to: number): Told {
  const places: number[] = [];
  const words: string[] = [];
  for (let at = from; at < to; at++) {
    const { word = '' } = tokens[at] ?? {};
    const isPause = /^(?:,|;|:|-|…|\.{2,})$/.test(word);
    if (!isPause && !/[\p{L}\p{N}]/u.test(word)) continue;
    places.push(at);
    words.push(isPause ? '|' : word);
  }
  while (words.at(-1) === '|') {
    words.pop();
    places.pop();
  }
  return { text: words.join(' '), places };
}

/** What was said and is wholly taken back, in its own words, and what of it the last words of the talk took back. */
export function wordsTakenBack(text: string): {
  readonly takenBack: readonly string[];
  readonly takenBackNow?: string;
} {
  const all = findTakenBack(tokenise(text)).filter(({ numberPut }) => !numberPut);
  const wordsOf = ({ start, end }: Span) => text.slice(start, end).trim();
  const last = all.at(-1);
  const isNow = last !== undefined && !/[\p{L}\p{N}]/u.test(text.slice(last.order.end));
  return { takenBack: all.map(wordsOf), ...(isNow ? { takenBackNow: wordsOf(last) } : {}) };
}

/** What is left of notes, or of what is to become notes, when what was taken back is gone; the trace is told why. */
export function withoutTakenBack<Told extends Span & { readonly rule: string }>(
  all: readonly Told[],
  taken: readonly TakenBack[],
  trace: TraceStep[],
): readonly Told[] {
  if (taken.length === 0) return all;
  return all.filter((one) => {
    const why = whyNotMeant(one, taken);
    if (why === undefined) return true;
    const { start, end, rule } = one;
    trace.push({
      stage: 'taken back in the next breath',
      rule,
      span: { start, end },
      outcome: 'dropped',
      why,
    });
    return false;
  });
}

/** Why nothing is to be read from these words; undefined where they stand. */
export function whyNotMeant({ start, end }: Span, taken: readonly TakenBack[]): string | undefined {
  for (const one of taken) {
    if (!one.numberPut && start >= one.start && end <= one.end) return 'taken back: "scratch that"';
    if (start >= one.order.start && end <= one.order.end) return 'it only takes back what was said before';
  }
  return undefined;
}
