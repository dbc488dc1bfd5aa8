/** Gives a word its part of speech, from the lists, its ending and its neighbours. */
import { remembered } from '../../remembered.ts';
import { EVERYDAY_ADJECTIVES, EVERYDAY_ADVERBS } from '../lexicon/everyday-words.ts';
import { isPlural, isTradeNoun, isTwoWordNoun, kindsOf, type NounKind } from '../lexicon/trade-nouns.ts';
import type { Span } from '../notes.ts';
import { isMeasureWord, type Raw } from './pieces.ts';
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
  NOUNS_OR_VERBS,
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
  const isEither = NOUNS_OR_VERBS.has(lower);
  const isVerb = isEither || VERBS.has(lower);
  const isNoun = isEither || isTradeNoun(lower);
  if (lower === 'left' && (before === 'number' || before === 'auxiliary' || before === 'pronoun'))
    return 'participle';
  if (isVerb && before === 'noun' && isTwoWordNoun(previous?.lower ?? '', lower)) return 'noun';
  // "Leaves me 50 shy": a verb, though there are leaves on trees.
  if (isVerb && /[^s]s$/.test(lower) && /^(?:me|us)$/.test(next?.lower ?? '') && !opensNounPhrase(before))
    return 'verb';
  if (isVerb && !isNoun) {
    if (PAST_FORMS.has(lower) || (/ed$/.test(lower) && !/^(?:need|feed|bleed|speed|weed|shed)$/.test(lower)))
      return opensNounPhrase(before) ? 'adjective' : 'participle';
    return (before === 'determiner' || before === 'possessive') && !/ing$/.test(lower) ? 'noun' : 'verb';
  }
  if (isVerb && isNoun) {
    if (takesVerb(before, previous?.lower ?? '')) return 'verb';
    if (before === 'pronoun' && /[^s]s$/.test(lower)) return 'verb';
    if (isNextInList(lower, previous, next)) return 'noun';
    if (/[^s]s$/.test(lower) && next?.lower === '#' && !opensNounPhrase(before)) return 'verb';
    if (goesSomewhere(lower, previous, next)) return 'verb';
    // "Boards run 14 to 20 foot": a plural before, so no "board run".
    if (before === 'noun' && next?.lower === '#' && isPlural(previous?.lower ?? '') && !isPlural(lower))
      return 'verb';
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
  // "It skins in twenty minutes": a verb, though hulls have skins; a plural does not stand right behind "it".
  if (isDoneByIt(lower, previous, next)) return 'verb';
  if (isNoun) return 'noun';
  // An unknown word in -s behind "it", with where it goes: "it bellies out by 90".
  if (
    /^(?:it|she|he|that|which)$/.test(previous?.lower ?? '') &&
    before === 'pronoun' &&
    /[^s]s$/.test(lower) &&
    /^(?:out|in|over|up|down|off|away|back)$/.test(next?.lower ?? '')
  )
    return 'verb';
  // An unknown word in -s before a number, with no noun phrase open: "and burns 0.9 litres".
  if (
    next?.lower === '#' &&
    /[^s]s$/.test(lower) &&
    (before === 'conjunction' || before === 'pronoun' || before === 'adverb')
  )
    return 'verb';
  if (/ly$/.test(lower) || EVERYDAY_ADVERBS.has(lower)) return 'adverb';
  if (EVERYDAY_ADJECTIVES.has(lower)) return 'adjective';
  if (isComparative(lower)) return 'adjective';
  if (NOUN_ENDING.test(lower)) return 'noun';
  if (ADJECTIVE_ENDING.test(lower) || /(?:i|g|k|d|t)est$/.test(lower)) return 'adjective';
  if (/ed$/.test(lower)) return opensNounPhrase(before) ? 'adjective' : 'participle';
  if (/n't$|\w\wnae$/.test(lower)) return 'auxiliary';
  if (isBeingDone(lower, previous, next)) return 'verb';
  return 'noun';
}

const isDoneByIt = (lower: string, previous: Word | undefined, next: Raw | undefined): boolean =>
  previous?.tag === 'pronoun' &&
  /^(?:it|she|he)$/.test(previous.lower) &&
  /[^su]s$/.test(lower) &&
  (next?.lower === '#' || PREPOSITIONS.has(next?.lower ?? '') || ADVERBS.has(next?.lower ?? ''));

/** "I'm splurging on the thick one", "twenty for fiddling it in": an unknown word in -ing, and what somebody is doing. */
const isBeingDone = (lower: string, previous: Word | undefined, next: Raw | undefined): boolean =>
  lower.endsWith('ing') &&
  /[aeiouy]/.test(lower.slice(0, -'ing'.length)) &&
  (previous?.tag === 'be' ||
    DETERMINERS.has(next?.lower ?? '') ||
    POSSESSIVES.has(next?.lower ?? '') ||
    /^(?:it|them|me|him|her|us|'em)$/.test(next?.lower ?? ''));

/** "Thicker", "deeper", "drier": more of what an adjective tells. */
function isComparative(lower: string): boolean {
  if (!/[a-z]{2}er$/.test(lower)) return false;
  const stem = lower.slice(0, -2);
  return [stem, `${stem}e`, stem.replace(/i$/, 'y'), stem.replace(/(.)\1$/, '$1')].some(
    (word) => isAdjective(word) || EVERYDAY_ADJECTIVES.has(word),
  );
}

/**
 * "Sockets at 450, switches 1200", "tie beams 200 by 250, braces 100 by 200": the next thing of a list and its number,
 * and not what something does, as "the beam is 140, spans 3600".
 */
function isNextInList(lower: string, previous: Word | undefined, next: Raw | undefined): boolean {
  if (next?.lower !== '#' || !/[^s]s$/.test(lower) || DOES_SO_MUCH.test(lower)) return false;
  if (previous !== undefined && previous.tag !== 'comma' && previous.tag !== 'stop') return false;
  const kinds = kindsOf([lower]);
  return LISTED.some((kind) => kinds.has(kind));
}
const LISTED: readonly NounKind[] = [
  'fastener',
  'electric',
  'joist',
  'timber',
  'part',
  'sheet',
  'pipe',
  'round',
  'hole',
];
/** What a thing does by so much, though there are nouns of the same spelling. */
const DOES_SO_MUCH =
  /^(?:leaves|runs|drops|stands|measures|spans|covers|falls|rises|clears|projects|tapers|slopes|steps|bears|turns|seats|rests|stops|draws|heats|sweeps|laps|overhangs|supports|splits|swings|pulls|pushes|holds|tails|heads|fits|blanks|stays)$/;

/** "Pintles go in 120 from the top", "boards run into the wall": a plural and what it does; there is no "pintle go". */
const goesSomewhere = (lower: string, previous: Word | undefined, next: Raw | undefined): boolean =>
  /^(?:go|run|sit|stand|come|hang|rest|start|finish|stop|kick|cut)$/.test(lower) &&
  previous?.tag === 'noun' &&
  isPlural(previous.lower) &&
  PREPOSITIONS.has(next?.lower ?? '');

/** "Some pull 110 grams", "they all want to be 130": of things that were named before. */
const isDoneByThem = (lower: string, previous: Word | undefined, next: Raw | undefined) =>
  AMONG_THEM.test(previous?.lower ?? '') &&
  (next?.lower === '#' || next?.lower === 'to') &&
  (VERBS.has(lower) || NOUNS_OR_VERBS.has(lower)) &&
  !/[^s]s$/.test(lower) &&
  !PREPOSITIONS.has(lower) &&
  !DIMENSION_WORDS.has(lower);
const AMONG_THEM = /^(?:some|all|most|others)$/;

const isAdjective = (lower: string) =>
  TELLING_ADJECTIVES.has(lower) || LIGHT_ADJECTIVES.has(lower) || OTHER_ADJECTIVES.has(lower);

/** "that" and its kin stand for a thing unless a noun follows at once. */
function tagDemonstrative(lower: string, next: Raw | undefined, second: Raw | undefined): Tag {
  const after = next?.lower ?? '';
  // "That leaves 1837": a verb, though there are leaves on trees.
  if (
    VERBS.has(after) &&
    /[^s]s$/.test(after) &&
    /^(?:#|the|a|an|me|us|you|it|to|at|in|on|by|for|along|past|over|under|across|through|around|round|between|behind|up|down|from|into|out|off)$/.test(
      second?.lower ?? '',
    )
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

/** "The going is 225", "going's 225", "the going I've set at 225": how far each tread of a stair goes in. */
function isOfStair(previous: Word | undefined, next: Raw | undefined, second: Raw | undefined): boolean {
  const isFirst = previous === undefined || previous.tag === 'stop' || previous.tag === 'conjunction';
  const isSaidOf =
    BE.has(next?.lower ?? '') || next?.lower === "'s" || next?.lower === 'of' || next?.lower === 'at';
  if (isFirst) return isSaidOf && second?.lower === '#';
  const isNamed = previous.tag === 'determiner' || previous.tag === 'possessive';
  const after = next?.lower ?? '';
  return (
    isNamed && (isSaidOf || !/^[\p{L}]/u.test(after) || CONJUNCTIONS.has(after) || /^(?:i|we)$/.test(after))
  );
}

/** More than any memo has that are not the same. */
const MOST_WORDS = 20_000;

/** The part of speech that the lists give a word wherever it stands; `open` where neighbours or its ending tell. */
const listedTag = remembered(MOST_WORDS, (lower): Tag | 'open' => {
  if (/^\d/.test(lower) || NUMBER_WORDS.has(lower) || (lower.includes('-') && isMeasureWord(lower)))
    return lower === 'oh' ? 'filler' : 'number';
  if (lower === 'her' || lower === 'there') return 'open';
  if (AUXILIARIES.has(lower)) return 'auxiliary';
  if (POSSESSIVES.has(lower)) return 'possessive';
  if (/(?:self|selves)$/.test(lower) && lower.length > 5) return 'adverb';
  if (PRONOUNS.has(lower) && !DETERMINERS.has(lower)) return 'pronoun';
  return DETERMINERS.has(lower) ? 'determiner' : 'open';
});

/** The same of words and marks that no way of standing together makes another; most of any talk is settled by it. */
const fixedTag = remembered(MOST_WORDS, (lower): Tag | 'open' => {
  if (/^[.!?…]/.test(lower)) return 'stop';
  if (/^[,;:()—–-]$/.test(lower)) return 'comma';
  if (/^["']$/.test(lower)) return 'filler';
  if (/^(?:that|this|these|those|which|what|going|felt|feels|looks|smells|sounds)$/.test(lower))
    return 'open';
  if (BE.has(lower)) return 'be';
  if (MODALS.has(lower)) return 'modal';
  if (/^m\d+s?$/.test(lower)) return 'noun';
  // A verb may be the first half of a compound.
  if (lower.includes('-to-') || lower === 'one' || lower === 'ones' || VERBS.has(lower)) return 'open';
  return listedTag(lower);
});

/** The part of speech of a word after `previous` and before `next` and `second`. */
export function tagOf(
  lower: string,
  previous: Word | undefined,
  next: Raw | undefined,
  second: Raw | undefined,
): Tag {
  const fixed = fixedTag(lower);
  if (fixed !== 'open') return fixed;
  if (/^(?:that|this|these|those|which|what)$/.test(lower)) return tagDemonstrative(lower, next, second);
  if (lower === 'going' && isOfStair(previous, next, second)) return 'noun';
  // "The eighteens felt bouncy": a verb, though there is felt on roofs.
  if (lower === 'felt' && /^(?:noun|pronoun|quantity)$/.test(previous?.tag ?? '') && isFelt(next))
    return 'verb';
  // "The floor feels dry": a verb, though a thing may have a feel.
  if (/^(?:feels|looks|smells|sounds)$/.test(lower) && previous?.tag === 'noun') return 'verb';
  // "480 to play with": what is spare, and no play in a joint.
  if (lower === 'play' && previous?.lower === 'to') return 'verb';
  if (lower.includes('-to-')) return previous?.tag === 'quantity' ? 'dimension' : 'noun';
  if (lower === 'one' || lower === 'ones') return lower === 'one' && countsNoun(next) ? 'number' : 'pronoun';
  if (isCompound(lower, next)) return 'noun';
  const listed = listedTag(lower);
  if (listed !== 'open') return listed;
  if (lower === 'her') return /^[\p{L}#]/u.test(next?.lower ?? '') ? 'possessive' : 'pronoun';
  if (lower === 'there') return BE.has(next?.lower ?? '') ? 'pronoun' : 'adverb';
  if (previous?.tag === 'number' && UNIT_WORDS.has(lower)) return 'unit';
  if (isDoneByThem(lower, previous, next)) return 'verb';
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

const isFelt = (next: Raw | undefined): boolean =>
  /^(?:like|as|more|less|too|a|bit|right|wrong|very|so|really|bouncy|springy|flimsy)$/.test(
    next?.lower ?? '',
  ) ||
  EVERYDAY_ADJECTIVES.has(next?.lower ?? '') ||
  isAdjective(next?.lower ?? '');

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
  next !== undefined && VERBS.has(lower) && isTwoWordNoun(lower, next.lower);

const tagBare = (lower: string): Tag =>
  ADVERBS.has(lower) ? 'adverb' : isTradeNoun(lower) ? 'noun' : 'adjective';
