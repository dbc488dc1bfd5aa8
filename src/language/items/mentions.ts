/** How well a thing mentioned before goes with a pronoun, and which things may own parts. */
import { isPlural, kindsOf, type NounKind, singular } from '../lexicon/trade-nouns.ts';
import { isNoThing } from './fitness.ts';
import type { Phrase } from './noun-phrases.ts';
import { hostOf, opensSentence, type Parse, phraseAt, tagAt, wordAt } from './parse.ts';

/** Heads that are spoken of as old and as new in one memo: "the old joists", "new ones". */
export function contrastedHeads(parse: Parse): ReadonlySet<string> {
  const ages = new Map<string, Set<string>>();
  let lastOld: string | undefined;
  for (const phrase of parse.phrases) {
    if (!phrase.age) continue;
    const isOne = phrase.pronoun !== undefined;
    const head = isOne ? lastOld : singular(phrase.head);
    if (!head) continue;
    if (phrase.age === 'old' && !isOne) lastOld = head;
    ages.set(head, (ages.get(head) ?? new Set()).add(phrase.age));
  }
  return new Set([...ages].filter(([, said]) => said.size > 1).map(([head]) => head));
}

export const isStuffOnly = (kinds: ReadonlySet<NounKind>): boolean =>
  kinds.size === 1 && kinds.has('material');

/** First word of the clause that a word stands in. */
export function clauseStart(parse: Parse, word: number): number {
  const furthest = Math.max(0, word - LONGEST_CLAUSE);
  for (let k = word - 1; k >= furthest; k--) {
    const tag = tagAt(parse, k);
    if (tag === 'comma' || tag === 'conjunction' || tag === 'stop') return k + 1;
  }
  return furthest;
}
/** In words. Talk without a pause for longer is a list of numbers, or nothing that a person says. */
const LONGEST_CLAUSE = 200;

export const MEASURED =
  /\b(?:tape|calipers?|callipers|rule|ruler|stick|laser|gauge|meter|level|square|line|micrometer|feelers?|scales?|counter|tacho|eye|bob) (?:on|across|off|over|along|down|under|to|up|onto|against|through)(?: \w+)?$|\b(?:measured|weighed|taped|gauged|checked|remeasured|re-measured|measuring|weighing)(?: up| out)?$/;

export const VESSEL_PRONOUN = /^(?:she|her)$/;

export function agreement(
  phrase: Phrase,
  name: readonly string[],
  kinds: ReadonlySet<NounKind>,
  pronoun: Phrase | undefined,
): number {
  if (!pronoun) return 0;
  if (VESSEL_PRONOUN.test(pronoun.head)) return kinds.has('vessel') ? 1.2 : kinds.has('machine') ? 0.4 : -0.3;
  if (pronoun.pronoun === 'which') return 0;
  const plural = phrase.pronoun ? isPlural(name.at(-1) ?? '') : phrase.plural;
  if (pronoun.pronoun === 'that' || pronoun.pronoun === 'this') return plural ? -0.3 : 0;
  return plural === pronoun.plural ? 0.2 : -1.1;
}

/** True when only a comma, a time or an adverb stands between: "I cut the header this morning, that's". */
function standsRightBefore(parse: Parse, phrase: Phrase, word: number): boolean {
  if (word - phrase.last > 6) return false;
  for (let k = phrase.last + 1; k < word; k++) {
    const tag = tagAt(parse, k);
    const other = phraseAt(parse, k);
    if (other && !isNoThing(other.kinds)) return false;
    const links =
      tag === 'comma' || tag === 'adverb' || tag === 'stop' || tag === 'filler' || wordAt(parse, k) === 'and';
    if (!other && !links) return false;
  }
  return true;
}

/** "The gap behind the bench that's 50": the thing named first, with nothing said of it yet, is taken up again. */
function takenUpAgain(parse: Parse, phrase: Phrase, word: number): boolean {
  if (!opensSentence(parse, phrase)) return false;
  const tail = parse.phrases[phrase.index + 1];
  return tail !== undefined && hostOf(parse, tail) === phrase && standsRightBefore(parse, tail, word);
}

/** "that" and "which" point to what stands right before; "with the bezel it's 635" does not point to the bezel. */
export function nearness(
  parse: Parse,
  phrase: Phrase,
  word: number,
  clause: number,
  pronoun: Phrase | undefined,
): number {
  if (/^(?:that|which|this)$/.test(pronoun?.pronoun ?? '')) {
    if (takenUpAgain(parse, phrase, word)) return 1.7;
    const host = hostOf(parse, phrase);
    if (standsRightBefore(parse, phrase, word)) return host && takenUpAgain(parse, host, word) ? -0.9 : 1.7;
  }
  if (phrase.first < clause || tagAt(parse, phrase.first - 1) !== 'preposition') return 0;
  return wordAt(parse, phrase.first - 1) === 'at' ? 0.9 : -0.9;
}

/** "the top" has an owner to be found; "a top" has none yet. */
export const mayBeOwned = (phrase: Phrase): boolean =>
  phrase.determiner === undefined ||
  /^(?:the|its|their|her|his|each|every|both|all|my|our)$/.test(phrase.determiner);

/** Kinds of thing that have tops, legs and sides to be spoken of. */
export const HOLDERS: readonly NounKind[] = [
  'assembly',
  'opening',
  'appliance',
  'vessel',
  'space',
  'container',
];

const NO_OWNER: ReadonlySet<NounKind> = new Set([
  'material',
  'person',
  'time',
  'abstract',
  'measure',
  'air',
  'tool',
  'region',
]);
export function canOwn(name: readonly string[]): boolean {
  const kinds = kindsOf(name);
  // Small parts have no tops and legs: "Pulleys. The motor" is no pulley motor.
  return !['round', 'fastener', 'cable', 'hole'].some((kind) => kinds.has(kind as NounKind)) && isThing(name);
}

export function isThing(name: readonly string[]): boolean {
  const kinds = kindsOf(name);
  if (kinds.size === 0) return true;
  for (const kind of kinds) if (!NO_OWNER.has(kind)) return true;
  return false;
}
