/** Cuts a memo into words and puts the words of each quantity together as one. */
import { remembered } from '../../remembered.ts';
import { allMatches } from '../all-matches.ts';
import { isTradeNoun } from '../lexicon/trade-nouns.ts';
import type { Span } from '../notes.ts';
import { wordTable } from '../word-table.ts';
import { NUMBER_WORDS, UNIT_WORDS } from './word-lists.ts';

/** Place of a quantity; `isCore` when it holds number and unit and nothing else. */
export interface QuantitySpan extends Span {
  readonly isCore: boolean;
}

/** A word before its part of speech is known; `#` stands for a quantity. */
export interface Raw {
  readonly lower: string;
  readonly span: Span;
  readonly quantity?: number;
}

// "740's" is a number and a verb, and no number of feet. Both cases are spelled out: a pattern with the flags `i` and `u` and classes of letters takes 15 ms to compile.
const PIECE =
  /\d+\/\d+|\p{L}\d+\p{L}?\b|\d+(?:[.,:]\d+)*(?:[Ss][Tt]|[Nn][Dd]|[Rr][Dd]|[Tt][Hh])?(?:(?!'(?:[SsDd]|[Rr][Ee]|[Ll][Ll])\b)['"′″]+\d*)*|\p{L}+[Nn]['’][Tt]\b|\p{L}+[Ii][Nn]['’](?!\p{L})|[\p{L}°%]+(?:-\p{L}+)*|['’](?:[SsDdMm]|[Rr][Ee]|[Vv][Ee]|[Ll][Ll]|[Ee][Mm])\b|[.!?…]+|[,;:()—–-]|["'’]/gu;

/** Numbers and units at the edges of a reading's span; the words between them belong to it as well. */
export function isMeasureWord(lower: string): boolean {
  if (/^\d/.test(lower) || /^[°%]/.test(lower)) return true;
  if (NUMBER_WORDS.has(lower) || UNIT_WORDS.has(lower)) return true;
  return lower.includes('-') && lower.split('-').every(isMeasureWord);
}

/**
 * Narrows a quantity's span to its number and unit: "nothing wider than 740" gives 740. Keeps the whole span when
 * it holds no number that is known here.
 */
function coreOf(pieces: readonly Raw[], from: number, to: number): readonly [number, number] {
  let first = from;
  let last = to;
  // A lone letter or "in" is a unit only after a number.
  while (
    first <= last &&
    !(
      isMeasureWord(pieces[first]?.lower ?? '') &&
      !/^(?:[a-z]|in|second|minute|min|hour|day)$/.test(pieces[first]?.lower ?? '')
    )
  )
    first++;
  if (first > last) return [from, to];
  // Stops at the first word after the number that is no part of a quantity, so that "five inches, not six" is five.
  let end = first;
  for (let k = first; k <= last; k++) {
    const lower = pieces[k]?.lower ?? '';
    if (isMeasureWord(lower) && lower !== 'in') end = k;
    else if (!/^(?:and|a|an|of|by|to|or|less|point|plus|give|take|in|-|,)$/.test(lower)) break;
  }
  // "an inch", "a couple of mil", "a metre": the article is the number one.
  if (first > from && /^an?$/.test(pieces[first - 1]?.lower ?? '') && !/^\d/.test(pieces[first]?.lower ?? ''))
    first--;
  last = end;
  return [first, last];
}

const STRETCHES = new Set([
  'floor ceiling',
  'front back',
  'top bottom',
  'bow stern',
  'stem stern',
  'nose tail',
  'floor roof',
]);

/** "Tongue and groove": one stuff, and no groove. */
const PAIRED = new Set(['tongue groove']);

/** Makes one word of "wall to wall" and "floor to ceiling", a way of measuring and no wall, and of a stuff named by two. */
function joinStretches(raw: readonly Raw[]): Raw[] {
  const out: Raw[] = [];
  for (let k = 0; k < raw.length; k++) {
    const from = raw[k] as Raw;
    const to = raw[k + 2];
    if (raw[k + 1]?.lower === 'and' && to && PAIRED.has(`${from.lower} ${to.lower}`)) {
      out.push({
        lower: `${from.lower}-and-${to.lower}`,
        span: { start: from.span.start, end: to.span.end },
      });
      k += 2;
      continue;
    }
    const joins =
      raw[k + 1]?.lower === 'to' &&
      to !== undefined &&
      isTradeNoun(from.lower) &&
      (from.lower === to.lower || STRETCHES.has(`${from.lower} ${to.lower}`));
    if (!joins) {
      out.push(from);
      continue;
    }
    out.push({ lower: `${from.lower}-to-${to.lower}`, span: { start: from.span.start, end: to.span.end } });
    k += 2;
  }
  return out;
}

/** Short forms written without their apostrophe, as recognisers and quick typists do: where each is cut. */
const CLIPPED = wordTable<number>({
  thats: 4,
  whats: 4,
  theres: 5,
  heres: 4,
  wheres: 5,
  whos: 3,
  shes: 3,
  hes: 2,
  theyre: 4,
  youre: 3,
  theyve: 4,
  youve: 3,
  weve: 2,
  ive: 1,
  im: 1,
  itll: 2,
  thatll: 4,
  theyll: 4,
  youll: 3,
});
const NEGATED = wordTable<string>({
  dont: "don't",
  doesnt: "doesn't",
  didnt: "didn't",
  isnt: "isn't",
  arent: "aren't",
  wasnt: "wasn't",
  werent: "weren't",
  wont: "won't",
  wouldnt: "wouldn't",
  cant: "can't",
  couldnt: "couldn't",
  shouldnt: "shouldn't",
  hasnt: "hasn't",
  havent: "haven't",
  hadnt: "hadn't",
  aint: "ain't",
});
const SHORT_FORMS: ReadonlySet<string> = new Set(['its', ...Object.keys(CLIPPED), ...Object.keys(NEGATED)]);
/** What follows "its" only where it is short for "it is". */
const AFTER_IT_IS =
  /^(?:\d|(?:a|an|the|not|now|only|just|about|been|going|gone|coming|got|like|still|too|all|down|up|out|in|on|my)$)/;

/** Adds a word; "thats" comes in two, as "that's" does. */
function addPiece(found: Raw[], lower: string, start: number, after: string): void {
  const length = lower.length;
  const cut = lower === 'its' && (AFTER_IT_IS.test(after) || isMeasureWord(after)) ? 2 : CLIPPED[lower];
  if (cut === undefined) {
    found.push({ lower: NEGATED[lower] ?? lower, span: { start, end: start + length } });
    return;
  }
  found.push({ lower: lower.slice(0, cut), span: { start, end: start + cut } });
  found.push({ lower: `'${lower.slice(cut)}`, span: { start: start + cut, end: start + length } });
}

/** More than any memo has that are not the same. */
const MOST_PIECES = 20_000;

/** In small letters and with plain apostrophes; "holdin'" is "holding". */
const plainPiece = remembered(MOST_PIECES, (said) =>
  said
    .toLowerCase()
    .replace(/’/g, "'")
    .replace(/^(\p{L}{2,}in)'$/u, '$1g'),
);

const NEXT_WORD = /[\p{L}\d]+/uy;
function wordAfter(text: string, at: number): string {
  NEXT_WORD.lastIndex = at + 1;
  return NEXT_WORD.exec(text)?.[0].toLowerCase() ?? '';
}

/** A memo is parsed twice, for the things of its figures and for what is kept on record, and cut into pieces once. */
export const pieces = remembered(1, cutIntoPieces);

function cutIntoPieces(text: string): readonly Raw[] {
  const found: Raw[] = [];
  for (const match of allMatches(PIECE, text)) {
    const lower = plainPiece(match[0]);
    const start = match.index;
    const end = start + match[0].length;
    if (SHORT_FORMS.has(lower)) addPiece(found, lower, start, wordAfter(text, end));
    else found.push({ lower, span: { start, end } });
  }
  return joinStretches(found);
}

/** Puts each quantity's words together into one; two quantities never share a word. */
export function collapse(raw: readonly Raw[], spans: readonly QuantitySpan[]): Raw[] {
  const out: Raw[] = [];
  const order = spans.map((_, k) => k).sort((a, b) => (spans[a]?.start ?? 0) - (spans[b]?.start ?? 0));
  let at = 0;
  for (const quantity of order) {
    const span = spans[quantity] as QuantitySpan;
    let from = at;
    while (from < raw.length && (raw[from] as Raw).span.end <= span.start) from++;
    let to = from - 1;
    while (to + 1 < raw.length && (raw[to + 1] as Raw).span.start < span.end) to++;
    if (to < from) continue;
    const [first, last] = span.isCore ? [from, to] : coreOf(raw, from, to);
    for (let k = at; k < first; k++) out.push(raw[k] as Raw);
    out.push({
      lower: '#',
      span: { start: (raw[first] as Raw).span.start, end: (raw[last] as Raw).span.end },
      quantity,
    });
    at = last + 1;
  }
  for (let k = at; k < raw.length; k++) out.push(raw[k] as Raw);
  return out;
}
