/** Finds the noun phrases of a memo: one pass over the tagged words, no grammar beyond the phrase itself. */
import { isPlural, kindsOf, type NounKind, singular } from '../lexicon/trade-nouns.ts';
import { wordSet } from '../word-table.ts';
import { endsWithTime, tellsWhen } from './telling-when.ts';
import { LIGHT_ADJECTIVES, OTHER_ADJECTIVES, SPEAKERS, TELLING_ADJECTIVES } from './word-lists.ts';
import type { Word } from './words.ts';

export interface Phrase {
  /** Place among the phrases of the memo. */
  readonly index: number;
  /** First and last word, determiner included. */
  readonly first: number;
  readonly last: number;
  /** Words that name the thing: telling modifiers and head, lower case. Empty for pronouns. */
  readonly name: readonly string[];
  readonly head: string;
  readonly kinds: ReadonlySet<NounKind>;
  readonly plural: boolean;
  readonly determiner?: string;
  /** "it", "that", "one", "they". */
  readonly pronoun?: string;
  readonly age?: 'new' | 'old';
  /** A quantity inside the phrase, before its head: "a 40 amp supply". Index into the quantities. */
  readonly quantity?: number;
  /** True when nothing but the head names it: "the top". */
  readonly bare: boolean;
}

const NO_KINDS: ReadonlySet<NounKind> = new Set();

function keepInName(word: Word, isLastModifier: boolean): boolean {
  if (word.tag === 'noun') return true;
  if (TELLING_ADJECTIVES.has(word.lower)) return true;
  if (LIGHT_ADJECTIVES.has(word.lower) || OTHER_ADJECTIVES.has(word.lower)) return false;
  return isLastModifier && word.tag === 'adjective';
}

/** "The ladder money": what a thing costs is no other thing. */
const PRICES = wordSet('money cost price');

interface Scan {
  readonly end: number;
  readonly phrase?: Omit<Phrase, 'index'>;
}

/** Reads one phrase that begins at `first`, or says where to go on. */
function scanPhrase(words: readonly Word[], first: number): Scan {
  let at = first;
  let determiner: string | undefined;
  while (
    words[at]?.tag === 'determiner' ||
    words[at]?.tag === 'possessive' ||
    (determiner !== undefined && words[at]?.tag === 'number')
  ) {
    if (words[at]?.tag !== 'number') determiner = words[at]?.lower;
    at++;
  }
  const modifiers: Word[] = [];
  let quantity: number | undefined;
  let lastNoun = -1;
  let age: 'new' | 'old' | undefined;
  for (; at < words.length; at++) {
    const word = words[at] as Word;
    if (lastNoun >= 0 && (tellsWhen(words, at) || PRICES.has(word.lower))) break;
    if (word.tag === 'noun') {
      lastNoun = at;
      modifiers.push(word);
      if (endsWithTime(words, at, determiner)) break;
    } else if (word.tag === 'adjective' && (lastNoun < 0 || words[at + 1]?.tag === 'noun')) {
      if (word.lower === 'new' || word.lower === 'old') age = word.lower;
      modifiers.push(word);
    } else if (word.tag === 'genitive' && lastNoun === at - 1) {
    } else if (
      word.tag === 'quantity' &&
      lastNoun < 0 &&
      quantity === undefined &&
      opensAfterQuantity(words, at)
    ) {
      quantity = word.quantity;
    } else if (
      word.tag === 'number' &&
      lastNoun < 0 &&
      /^(?:first|second|third|fourth|fifth)$/.test(word.lower)
    ) {
      modifiers.push(word);
    } else if (word.lower === 'one' || word.lower === 'ones') {
      if (lastNoun < 0 && modifiers.length === 0) break;
      return {
        end: at,
        phrase: {
          first,
          last: at,
          name: modifiers.filter((modifier) => keepInName(modifier, true)).map((modifier) => modifier.lower),
          head: word.lower,
          kinds: NO_KINDS,
          plural: word.lower === 'ones',
          pronoun: word.lower,
          bare: false,
          ...(determiner ? { determiner } : {}),
          ...(age ? { age } : {}),
        },
      };
    } else break;
  }
  if (lastNoun < 0) {
    const only = modifiers.at(-1);
    // "the first's had 24 hours", "the other's 40": a fellow of something named before.
    if (only && determiner === 'the' && /^(?:first|second|third|fourth|fifth|other)$/.test(only.lower))
      return {
        end: at - 1,
        phrase: {
          first,
          last: at - 1,
          name: [only.lower],
          head: 'one',
          kinds: NO_KINDS,
          plural: false,
          pronoun: 'one',
          bare: false,
          determiner,
        },
      };
    return { end: Math.max(first, at - 1) };
  }
  const kept = modifiers.filter(
    (word, k) => word === words[lastNoun] || keepInName(word, modifiers[k + 1]?.tag === 'noun'),
  );
  const name = kept.map((word) => word.lower);
  const head = words[lastNoun]?.lower ?? '';
  return {
    end: lastNoun,
    phrase: {
      first,
      last: lastNoun,
      name,
      head,
      kinds: isMannerOfSpeaking(words, first, name, determiner) ? ABSTRACT : kindsOfPhrase(name),
      plural: isPlural(head),
      bare: name.length === 1,
      ...(determiner ? { determiner } : {}),
      ...(age ? { age } : {}),
      ...(quantity !== undefined ? { quantity } : {}),
    },
  };
}

const ABSTRACT: ReadonlySet<NounKind> = new Set(['abstract']);
const PART: ReadonlySet<NounKind> = new Set(['part']);

/** "In that case", "in any case": no case of wood. */
const isMannerOfSpeaking = (
  words: readonly Word[],
  first: number,
  name: readonly string[],
  determiner: string | undefined,
) =>
  name.length === 1 &&
  name[0] === 'case' &&
  ((words[first - 1]?.lower === 'in' && /^(?:|that|this|any|which|either)$/.test(determiner ?? '')) ||
    words[first + 1]?.lower === 'of' ||
    words[first + 2]?.lower === 'of');

const NOTHINGS = new Set<NounKind>(['abstract', 'time']);

/** "landing turn": a turn alone is nothing to measure, a landing's is. */
function kindsOfPhrase(name: readonly string[]): ReadonlySet<NounKind> {
  // As a noun it is that of a stair: `isOfStair` of tags.ts.
  if (name.at(-1) === 'going') return PART;
  const kinds = kindsOf(name);
  if (name.length < 2 || kinds.size === 0) return kinds;
  for (const kind of kinds) if (!NOTHINGS.has(kind)) return kinds;
  const owner = kindsOf(name.slice(0, -1));
  for (const kind of owner) if (!NOTHINGS.has(kind) && kind !== 'person') return PART;
  return kinds;
}

/** A quantity belongs to a phrase only when its noun follows: "40 amp supply", not "40 wide". */
function opensAfterQuantity(words: readonly Word[], at: number): boolean {
  let next = at + 1;
  while (words[next]?.tag === 'adjective') next++;
  return words[next]?.tag === 'noun';
}

const THING_PRONOUN = /^(?:it|that|this|they|them|those|these|she|which|'em|one|ones)$/;

export function findPhrases(words: readonly Word[]): readonly Phrase[] {
  const phrases: Phrase[] = [];
  for (let at = 0; at < words.length; at++) {
    const word = words[at] as Word;
    if (word.tag === 'pronoun') {
      phrases.push({
        index: phrases.length,
        first: at,
        last: at,
        name: [],
        head: word.lower,
        kinds: SPEAKERS.has(word.lower) ? new Set<NounKind>(['person']) : NO_KINDS,
        plural: /^(?:they|them|those|these|ones|'em|we|us)$/.test(word.lower),
        bare: true,
        ...(THING_PRONOUN.test(word.lower) ? { pronoun: word.lower } : {}),
      });
      continue;
    }
    if (!/^(?:determiner|possessive|adjective|noun|quantity|number)$/.test(word.tag)) continue;
    if (word.tag === 'number' && words[at + 1]?.tag !== 'noun' && words[at + 1]?.tag !== 'adjective')
      continue;
    const start = word.tag === 'number' ? at + 1 : at;
    const scan = scanPhrase(words, start);
    if (scan.phrase) phrases.push({ index: phrases.length, ...scan.phrase });
    at = scan.end;
  }
  return phrases;
}

/** Words of a name without plural endings: what two names are compared by. */
export function nameKey(name: readonly string[]): readonly string[] {
  return name.map((word) => singular(word));
}
