/**
 * Splits a memo into words for the shallow parse and gives each a part of speech. A quantity becomes one word, so
 * that "a 40 amp supply" reads as determiner, quantity, noun.
 */

import { isTradeNoun, singular } from '../lexicon/trade-nouns.ts';
import type { Span } from '../notes.ts';
import {
  ADVERBS,
  AUXILIARIES,
  BE,
  CONJUNCTIONS,
  DETERMINERS,
  DIMENSION_WORDS,
  FILLERS,
  LIGHT_ADJECTIVES,
  MODALS,
  NUMBER_WORDS,
  OTHER_ADJECTIVES,
  PAST_FORMS,
  POSSESSIVES,
  PREPOSITIONS,
  PRONOUNS,
  TELLING_ADJECTIVES,
  UNIT_WORDS,
  VERBS,
} from './word-lists.ts';

export type Tag =
  | 'noun'
  | 'verb'
  | 'participle'
  | 'be'
  | 'auxiliary'
  | 'modal'
  | 'adjective'
  | 'adverb'
  | 'determiner'
  | 'possessive'
  | 'genitive'
  | 'pronoun'
  | 'preposition'
  | 'conjunction'
  | 'number'
  | 'unit'
  | 'dimension'
  | 'filler'
  | 'quantity'
  | 'comma'
  | 'stop';

export interface Word {
  readonly lower: string;
  readonly span: Span;
  readonly tag: Tag;
  /** Index into the quantities, for the tag `quantity`. */
  readonly quantity?: number;
}

/** Place of a quantity; `isCore` when it holds number and unit and nothing else. */
export interface QuantitySpan extends Span {
  readonly isCore: boolean;
}

interface Raw {
  readonly lower: string;
  readonly span: Span;
  readonly quantity?: number;
}

// Both cases are spelled out: a pattern with the flags `i` and `u` and classes of letters takes 15 ms to compile.
const PIECE =
  /\d+\/\d+|\p{L}\d+\p{L}?\b|\d+(?:[.,:]\d+)*(?:[Ss][Tt]|[Nn][Dd]|[Rr][Dd]|[Tt][Hh])?(?:['"′″]+\d*)*|\p{L}+[Nn]['’][Tt]\b|\p{L}+[Ii][Nn]['’](?!\p{L})|[\p{L}°%]+(?:-\p{L}+)*|['’](?:[SsDdMm]|[Rr][Ee]|[Vv][Ee]|[Ll][Ll]|[Ee][Mm])\b|[.!?…]+|[,;:()—–-]|["'’]/gu;

/** Numbers and units at the edges of a reading's span; the words between them belong to it as well. */
function isMeasureWord(lower: string): boolean {
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

/** Makes one word of "wall to wall" and "floor to ceiling": a way of measuring, and no wall. */
function joinStretches(raw: readonly Raw[]): Raw[] {
  const out: Raw[] = [];
  for (let k = 0; k < raw.length; k++) {
    const from = raw[k] as Raw;
    const to = raw[k + 2];
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

function pieces(text: string): Raw[] {
  const found: Raw[] = [];
  for (const match of text.matchAll(PIECE)) {
    const lower = match[0]
      .toLowerCase()
      .replace(/’/g, "'")
      .replace(/^(\p{L}{2,}in)'$/u, '$1g');
    const start = match.index;
    found.push({ lower, span: { start, end: start + match[0].length } });
  }
  return joinStretches(found);
}

/** Puts each quantity's words together into one; two quantities never share a word. */
function collapse(raw: readonly Raw[], spans: readonly QuantitySpan[]): Raw[] {
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

const NOUN_ENDING =
  /(?:tion|ment|ness|ity|ance|ence|ship|hood|age|er|or|board|work|wood|plate|rail|room|post)s?$/;
const ADJECTIVE_ENDING = /(?:ous|ful|ible|able|ish|ical|ial)$/;

const opensNounPhrase = (tag: Tag | undefined): boolean =>
  tag === 'determiner' ||
  tag === 'possessive' ||
  tag === 'adjective' ||
  tag === 'genitive' ||
  tag === 'quantity';
const takesVerb = (tag: Tag | undefined, lower: string): boolean =>
  tag === 'modal' ||
  (tag === 'auxiliary' && lower !== 'got') ||
  lower === 'to' ||
  (tag === 'pronoun' && lower !== 'one' && lower !== 'ones');

function tagOpen(lower: string, previous: Word | undefined, next: Raw | undefined): Tag {
  const before = previous?.tag;
  const isVerb = VERBS.has(lower);
  const isNoun = isTradeNoun(lower);
  if (lower === 'left' && (before === 'number' || before === 'auxiliary' || before === 'pronoun'))
    return 'participle';
  if (isVerb && before === 'noun' && isTradeNoun(`${previous?.lower} ${singular(lower)}`)) return 'noun';
  if (isVerb && !isNoun) {
    if (PAST_FORMS.has(lower) || (/ed$/.test(lower) && !/^(?:need|feed|bleed|speed|weed|shed)$/.test(lower)))
      return opensNounPhrase(before) ? 'adjective' : 'participle';
    return (before === 'determiner' || before === 'possessive') && !/ing$/.test(lower) ? 'noun' : 'verb';
  }
  if (isVerb && isNoun) {
    if (takesVerb(before, previous?.lower ?? '')) return 'verb';
    if (before === 'pronoun' && /[^s]s$/.test(lower)) return 'verb';
    if (/[^s]s$/.test(lower) && next?.lower === '#' && !opensNounPhrase(before)) return 'verb';
    if (
      before === 'noun' &&
      /[^s]s$/.test(lower) &&
      (PREPOSITIONS.has(next?.lower ?? '') || next?.lower === '#')
    )
      return 'verb';
    if (
      /^(?:the|a|an|my|your|his|her|its|our|their|'em|it|them|this|that|these|those)$/.test(next?.lower ?? '')
    )
      return before === undefined ||
        before === 'stop' ||
        before === 'comma' ||
        before === 'conjunction' ||
        before === 'noun'
        ? 'verb'
        : 'noun';
    return 'noun';
  }
  if (isNoun) return 'noun';
  // An unknown word in -s before a number, with no noun phrase open: "and burns 0.9 litres".
  if (
    next?.lower === '#' &&
    /[^s]s$/.test(lower) &&
    (before === 'conjunction' || before === 'pronoun' || before === 'adverb')
  )
    return 'verb';
  if (/ly$/.test(lower)) return 'adverb';
  if (NOUN_ENDING.test(lower)) return 'noun';
  if (ADJECTIVE_ENDING.test(lower) || /(?:i|g|k|d|t)est$/.test(lower)) return 'adjective';
  if (/ed$/.test(lower)) return opensNounPhrase(before) ? 'adjective' : 'participle';
  if (/n't$/.test(lower)) return 'auxiliary';
  return 'noun';
}

const isAdjective = (lower: string) =>
  TELLING_ADJECTIVES.has(lower) || LIGHT_ADJECTIVES.has(lower) || OTHER_ADJECTIVES.has(lower);

/** "that" and its kin stand for a thing unless a noun follows at once. */
function tagDemonstrative(lower: string, next: Raw | undefined, second: Raw | undefined): Tag {
  const after = next?.lower ?? '';
  // "That leaves 1837": a verb, though there are leaves on trees.
  if (
    VERBS.has(after) &&
    /[^s]s$/.test(after) &&
    /^(?:#|the|a|an|me|us|you|it|to|at|in|on|by|for)$/.test(second?.lower ?? '')
  )
    return 'pronoun';
  if (!/^[\p{L}]/u.test(after)) return after === '#' ? 'determiner' : 'pronoun';
  if (
    BE.has(after) ||
    AUXILIARIES.has(after) ||
    MODALS.has(after) ||
    PREPOSITIONS.has(after) ||
    PRONOUNS.has(after) ||
    DETERMINERS.has(after) ||
    POSSESSIVES.has(after) ||
    CONJUNCTIONS.has(after)
  )
    return after === 'one' || after === 'ones' ? 'determiner' : 'pronoun';
  if (isTradeNoun(after) || isAdjective(after)) return lower === 'which' ? 'pronoun' : 'determiner';
  if (VERBS.has(after) || ADVERBS.has(after) || /ly$/.test(after)) return 'pronoun';
  return 'determiner';
}

function tagOf(
  lower: string,
  previous: Word | undefined,
  next: Raw | undefined,
  second: Raw | undefined,
): Tag {
  if (/^[.!?…]/.test(lower)) return 'stop';
  if (/^[,;:()—–-]$/.test(lower)) return 'comma';
  if (/^["']$/.test(lower)) return 'filler';
  if (/^(?:that|this|these|those|which|what)$/.test(lower)) return tagDemonstrative(lower, next, second);
  if (lower === "'s") return 'be';
  if (BE.has(lower)) return 'be';
  if (MODALS.has(lower)) return 'modal';
  if (/^m\d+s?$/.test(lower)) return 'noun';
  if (lower.includes('-to-')) return previous?.tag === 'quantity' ? 'dimension' : 'noun';
  if (lower === 'one' || lower === 'ones') return lower === 'one' && countsNoun(next) ? 'number' : 'pronoun';
  if (isCompound(lower, next)) return 'noun';
  if (/^\d/.test(lower) || NUMBER_WORDS.has(lower) || (lower.includes('-') && isMeasureWord(lower)))
    return lower === 'oh' ? 'filler' : 'number';
  if (lower === 'can' && opensNounPhrase(previous?.tag)) return 'noun';
  if (AUXILIARIES.has(lower)) return 'auxiliary';
  if (POSSESSIVES.has(lower))
    return lower === 'her' && !/^[\p{L}#]/u.test(next?.lower ?? '') ? 'pronoun' : 'possessive';
  if (/(?:self|selves)$/.test(lower) && lower.length > 5) return 'adverb';
  if (lower === 'there') return BE.has(next?.lower ?? '') ? 'pronoun' : 'adverb';
  if (PRONOUNS.has(lower) && !DETERMINERS.has(lower)) return 'pronoun';
  if (DETERMINERS.has(lower)) return 'determiner';
  if (previous?.tag === 'number' && UNIT_WORDS.has(lower)) return 'unit';
  if (opensNounPhrase(previous?.tag) && isTradeNoun(lower) && !isAdjective(lower)) return 'noun';
  if (isDimensionWord(lower, previous, next)) return 'dimension';
  if (lower === 'less' || lower === 'minus' || lower === 'plus') return 'preposition';
  if (lower === 'so') return 'conjunction';
  if (lower === 'left' && (previous?.tag === 'auxiliary' || previous?.tag === 'pronoun')) return 'participle';
  if (isAdjective(lower)) return tagAdjective(lower, previous, next);
  if (PREPOSITIONS.has(lower)) return 'preposition';
  if (FILLERS.has(lower))
    return opensNounPhrase(previous?.tag) && previous?.tag !== 'quantity' ? 'noun' : 'filler';
  if (CONJUNCTIONS.has(lower)) return 'conjunction';
  if (ADVERBS.has(lower)) return 'adverb';
  return tagOpen(lower, previous, next);
}

/** "1210 wide", "wider than": says which way was measured; "the tall wall" does not. */
function isDimensionWord(lower: string, previous: Word | undefined, next: Raw | undefined): boolean {
  if (!DIMENSION_WORDS.has(lower)) return false;
  if (next?.lower === 'than') return true;
  if (previous?.tag === 'quantity') return !isTradeNoun(next?.lower ?? '') || !isTradeNoun(lower);
  return previous?.tag === 'adverb' && /^(?:across|clear)$/.test(lower);
}

/** Words such as "back", "top" and "inside" name a part when an article stands before and no noun after. */
function tagAdjective(lower: string, previous: Word | undefined, next: Raw | undefined): Tag {
  if (PREPOSITIONS.has(lower) && !opensNounPhrase(previous?.tag)) {
    const after = next?.lower ?? '';
    if (DETERMINERS.has(after) || POSSESSIVES.has(after) || after === 'of') return 'preposition';
  }
  if (FILLERS.has(lower) && (previous === undefined || previous.tag === 'stop') && next?.lower === ',')
    return 'filler';
  if (isTradeNoun(lower)) {
    const after = next?.lower ?? '';
    const nounFollows =
      /^[\p{L}]/u.test(after) &&
      !BE.has(after) &&
      !CONJUNCTIONS.has(after) &&
      !PREPOSITIONS.has(after) &&
      !PRONOUNS.has(after) &&
      !DETERMINERS.has(after) &&
      !AUXILIARIES.has(after) &&
      !MODALS.has(after) &&
      (!VERBS.has(after) || isTradeNoun(after)) &&
      !ADVERBS.has(after);
    if (!nounFollows || after === 'one') {
      if (previous?.tag === 'quantity' && ADVERBS.has(lower)) return 'adverb';
      if (previous?.tag === 'preposition' && ADVERBS.has(lower)) return 'adverb';
      if (after === 'one') return 'adjective';
      const opens = previous === undefined || previous.tag === 'stop';
      return opensNounPhrase(previous?.tag) || (opens && lower.endsWith('side')) ? 'noun' : tagBare(lower);
    }
  }
  return 'adjective';
}

/** "one spot", "one end": a number, where "the west one is" stands for a thing. */
function countsNoun(next: Raw | undefined): boolean {
  const after = next?.lower ?? '';
  if (!/^\p{L}{3,}/u.test(after) || isAdjective(after)) return false;
  if (isTradeNoun(after)) return true;
  return !(
    BE.has(after) ||
    MODALS.has(after) ||
    AUXILIARIES.has(after) ||
    PREPOSITIONS.has(after) ||
    CONJUNCTIONS.has(after) ||
    PRONOUNS.has(after) ||
    DETERMINERS.has(after) ||
    ADVERBS.has(after) ||
    VERBS.has(after) ||
    FILLERS.has(after) ||
    UNIT_WORDS.has(after) ||
    NUMBER_WORDS.has(after)
  );
}

/** "covering boards", "glazing bar": the first word alone would be a verb. */
const isCompound = (lower: string, next: Raw | undefined): boolean =>
  next !== undefined && VERBS.has(lower) && isTradeNoun(`${lower} ${singular(next.lower)}`);

const tagBare = (lower: string): Tag =>
  ADVERBS.has(lower) ? 'adverb' : isTradeNoun(lower) ? 'noun' : 'adjective';

/** Words after which "'s" can only be "is" or "has". */
const NO_OWNER = new Set([
  'it',
  'that',
  'there',
  'what',
  'he',
  'she',
  'who',
  'where',
  'how',
  'here',
  'this',
  'everything',
  'which',
]);

/** Settles "'s": an owner when a noun follows and the clause still has its verb to come, else "is". */
function settleGenitives(words: Word[]): void {
  words.forEach((word, k) => {
    if (word.lower !== "'s" || NO_OWNER.has(words[k - 1]?.lower ?? '')) return;
    let at = k + 1;
    while (words[at]?.tag === 'adjective') at++;
    if (words[at]?.tag !== 'noun' || !words[k - 1] || words[k - 1]?.tag !== 'noun') return;
    for (let j = at + 1; j < words.length; j++) {
      const tag = words[j]?.tag;
      if (tag === 'be' || tag === 'modal' || tag === 'verb' || tag === 'auxiliary' || tag === 'quantity') {
        words[k] = { ...word, tag: 'genitive' };
        return;
      }
      if (tag === 'comma' || tag === 'stop' || tag === 'conjunction') break;
    }
    // A noun right after the only verb of the clause: "sheep's wool" in a list, "somebody's planer".
    const opener = words[k - 2]?.tag;
    if (opener === 'preposition' || opener === 'quantity') words[k] = { ...word, tag: 'genitive' };
  });
}

/** Words said while a number is mended: "eleven eighty, no, tell a lie, eleven ninety". */
const REPAIRS = [
  ['tell', 'a', 'lie'],
  ['hang', 'on'],
  ['hold', 'on'],
  ['hold', 'up'],
  ['scratch', 'that'],
  ['make', 'that'],
  ['let', 'me', 'see'],
  ['listen', 'to', 'me'],
  ['i', 'mean'],
  ['what', 'was', 'it'],
  ['call', 'it'],
  ['if', 'that'],
  ['you', 'know'],
] as const;

function quietRepairs(words: Word[]): void {
  words.forEach((word, k) => {
    for (const repair of REPAIRS) {
      if (repair[0] !== word.lower || !repair.every((part, j) => words[k + j]?.lower === part)) continue;
      for (let j = k; j < k + repair.length; j++) words[j] = { ...(words[j] as Word), tag: 'filler' };
      const before = words[k - 1];
      if (before?.lower === 'i' && repair[0] === 'tell') words[k - 1] = { ...before, tag: 'filler' };
    }
  });
}

/** Reads the words of a text; each of `spans` (one per quantity) becomes one word with the tag `quantity`. */
export function readWords(text: string, spans: readonly QuantitySpan[]): readonly Word[] {
  const raw = collapse(pieces(text), spans);
  const words: Word[] = [];
  raw.forEach((piece, k) => {
    const tag =
      piece.quantity === undefined
        ? tagOf(piece.lower, words.at(-1), raw[k + 1], raw[k + 2])
        : ('quantity' as const);
    words.push(
      piece.quantity === undefined
        ? { lower: piece.lower, span: piece.span, tag }
        : { lower: piece.lower, span: piece.span, tag, quantity: piece.quantity },
    );
  });
  settleGenitives(words);
  quietRepairs(words);
  return words;
}
