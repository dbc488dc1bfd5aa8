/** Looks left of a quantity for its verb, the subject of that verb, and what stands between. */
import { singular } from '../lexicon/trade-nouns.ts';
import type { Name, Need } from './discourse.ts';
import { isNoThing } from './fitness.ts';
import type { Phrase } from './noun-phrases.ts';
import {
  hostOf,
  isSpeaker,
  opensSentence,
  type Parse,
  phraseAt,
  phraseFrom,
  tagAt,
  wordAt,
} from './parse.ts';
import type { Site } from './site.ts';
import { placeOf } from './told-apart.ts';

export const needOf = (site: Site): Need => ({
  dimension: site.dimension,
  quantity: site.quantity,
  ...(site.said ? { attribute: site.said } : {}),
});

export function namePhrase(site: Site, phrase: Phrase): Name | undefined {
  return site.discourse.nameOf(phrase, needOf(site));
}

export interface Anchor {
  readonly verb?: number;
  readonly subject?: Phrase;
  /** Phrase between verb and number, or with no verb at all. */
  readonly direct?: Phrase;
  /** A comma stands between that and the number. */
  readonly comma: boolean;
  /** Preposition before the number: "at", "to". */
  readonly preposition?: string;
}

const BOUND_WORDS =
  /^(?:least|most|more|than|less|max|maximum|minimum|about|of|to|at|up|down|for|by|in|over|under|within|a|an|the|another|only|just|same|what|no|not|like|some)$/;

const anchors = new WeakMap<Site, Anchor>();

/** What stands left of a quantity. The frames ask for it one after the other: it is looked for once. */
export function anchorOf(site: Site): Anchor {
  let found = anchors.get(site);
  if (!found) {
    found = lookLeft(site);
    anchors.set(site, found);
  }
  return found;
}

function lookLeft(site: Site): Anchor {
  const { parse, at } = site;
  const sentence = parse.sentenceOf[at];
  let comma = false;
  let preposition: string | undefined;
  const told = () => ({ comma, ...(preposition ? { preposition } : {}) });
  for (let k = at - 1; k >= 0 && parse.sentenceOf[k] === sentence; k--) {
    const tag = tagAt(parse, k);
    const word = wordAt(parse, k);
    if (tag === 'stop') break;
    if (tag === 'comma') comma = true;
    else if (tag === 'preposition') preposition ??= comma ? undefined : word;
    else if (tag === 'quantity') {
      const inside = phraseAt(parse, k);
      if (inside && inside.last < at && inside.last > k) return { direct: inside, ...told() };
    } else if (tag === 'conjunction') {
      // "560 deep and 480 high" goes on; "and measures 40" has no subject of its own.
      const left = tagAt(parse, k - 1);
      if (left !== 'quantity' && left !== 'dimension' && left !== 'number' && left !== 'unit') return told();
    } else if (SKIPPED.has(tag ?? '')) {
    } else if (BOUND_WORDS.test(word) && tag !== 'noun' && tag !== 'pronoun') {
    } else if (
      /^(?:level|square|plumb|true|wind|line|flat)$/.test(word) &&
      /^(?:of|outta)$/.test(wordAt(parse, k - 1))
    ) {
    } else {
      const phrase = phraseAt(parse, k);
      // "LED strips instead of the round ones, four foot": what was turned down carries nothing.
      if (phrase && isTurnedDown(parse, phrase)) {
        k = phrase.first;
        continue;
      }
      // "Screws, two per joist, fifty mil": what they are counted by is not what is measured.
      if (phrase && wordAt(parse, phrase.first - 1) === 'per') {
        k = phrase.first - 1;
        continue;
      }
      if (phrase && isNoThing(phrase.kinds) && !isSpeaker(phrase)) {
        k = phrase.first;
        continue;
      }
      if (phrase) return { direct: phrase, ...told() };
      if (tag === 'adjective' || tag === 'determiner' || tag === 'possessive' || tag === 'genitive') continue;
      const subject = subjectBefore(site, k);
      return { verb: k, ...told(), ...(subject ? { subject } : {}) };
    }
  }
  return told();
}

/** True for a thing said only to be refused: "instead of X", "not X", "rather than X". */
function isTurnedDown(parse: Parse, phrase: Phrase): boolean {
  const before = wordAt(parse, phrase.first - 1);
  const two = wordAt(parse, phrase.first - 2);
  if (before === 'not') return true;
  return (before === 'of' && two === 'instead') || (before === 'than' && two === 'rather');
}

const SKIPPED: ReadonlySet<string> = new Set(['adverb', 'filler', 'number', 'unit', 'dimension']);

/** The subject of the verb at `verb`: the nearest phrase before it that is no object of a preposition. */
export function subjectBefore(site: Site, verb: number): Phrase | undefined {
  const { parse } = site;
  const sentence = parse.sentenceOf[verb];
  let oblique: Phrase | undefined;
  for (let k = verb - 1; k >= 0 && parse.sentenceOf[k] === sentence; k--) {
    const tag = tagAt(parse, k);
    const phrase = phraseAt(parse, k);
    if (phrase) {
      if (tagAt(parse, phrase.first - 1) !== 'preposition')
        return headAround(site, phrase) ?? relativeHead(site, phrase);
      if (!isNoThing(phrase.kinds)) oblique ??= phrase;
      k = phrase.first - 1;
      continue;
    }
    // "the board's cut and fitted": both verbs have one subject.
    if (
      tag === 'conjunction' &&
      wordAt(parse, k) === 'and' &&
      isVerbal(tagAt(parse, k + 1)) &&
      isVerbal(tagAt(parse, k - 1))
    )
      continue;
    if (tag === 'conjunction' || tag === 'stop') break;
    // "the galley in between the worktop's at 900": a verb before it has a subject of its own.
    if (oblique && isAside(parse, k)) {
      // "The fridge is on, running off the bench supply, draws four amps": the aside has no subject to give.
      oblique = undefined;
      k--;
      continue;
    }
    if (oblique && isVerbal(tag)) return headAround(site, oblique) ?? oblique;
    if (tag === 'comma' && oblique === undefined && k < verb - 1) {
      const inside = tagAt(parse, k + 1);
      if (inside === 'verb' || inside === 'participle') break;
    }
  }
  return oblique;
}

/** A participle right behind a comma: "the fridge, running off the supply, draws". */
const isAside = (parse: Parse, at: number): boolean =>
  /\wing$/.test(wordAt(parse, at)) && tagAt(parse, at) === 'verb' && tagAt(parse, at - 1) === 'comma';

/**
 * "the panel that has to come in through the door is 760", "the beam we laid across the pit is 140": what a relative
 * clause is said of, for a phrase inside that clause. Undefined where the phrase is in none.
 */
function headAround(site: Site, inside: Phrase): Phrase | undefined {
  const { parse } = site;
  const sentence = parse.sentenceOf[inside.first];
  let verbs = 0;
  for (let k = inside.first - 1; k >= 0 && parse.sentenceOf[k] === sentence; k--) {
    const tag = tagAt(parse, k);
    if (tag === 'stop' || tag === 'comma' || tag === 'conjunction' || tag === 'quantity') return undefined;
    if (SAYING.test(wordAt(parse, k))) return undefined;
    // "the bit that worries me is that the hatch is 610": the hatch begins a clause of its own.
    if (wordAt(parse, k) === 'that' && k === inside.first - 1) return undefined;
    const phrase = phraseAt(parse, k);
    if (!phrase) {
      if (isVerbal(tag)) verbs++;
      continue;
    }
    k = phrase.first;
    const head = relativeHead(site, phrase);
    if (head === phrase) continue;
    return verbs > 0 && isClauseStart(parse, head) ? head : undefined;
  }
  return undefined;
}
/** Verbs behind which a clause of its own begins. */
const SAYING =
  /^(?:says?|said|reads?|reckons?|shows?|showed|means?|meant|thinks?|thought|told|tells|knows?|knew|makes|made|hope|wish|find|found|sees?|saw|figured?)$/;

const isClauseStart = (parse: Parse, phrase: Phrase): boolean =>
  opensSentence(parse, phrase) || /^(?:comma|conjunction|stop)$/.test(tagAt(parse, phrase.first - 1) ?? '');

/** "the legs I cut on Sunday are short": the thing cut, not the one who cut it. */
function relativeHead(site: Site, phrase: Phrase): Phrase {
  if (!isSpeaker(phrase) && !/^(?:that|which|they)$/.test(phrase.pronoun ?? '')) return phrase;
  const before = phraseAt(site.parse, phrase.first - 1);
  if (!before || isSpeaker(before) || before.pronoun) return phrase;
  // "The gap behind the bench that's 50": nothing was said of the gap yet, so it is the gap that is taken up.
  const host = hostOf(site.parse, before);
  return host && !isSpeaker(host) && opensSentence(site.parse, host) ? host : before;
}

/** The phrase that the clause around `before` is about: the subject of the verb to its left. */
export function clauseSubject(site: Site, before: Phrase): Phrase | undefined {
  const { parse } = site;
  const sentence = parse.sentenceOf[before.first];
  for (let k = before.first - 1; k >= 0 && parse.sentenceOf[k] === sentence; k--) {
    const tag = tagAt(parse, k);
    if (tag === 'stop' || tag === 'comma') return undefined;
    if (tag === 'conjunction' && tagAt(parse, k + 1) !== 'determiner' && tagAt(parse, k + 1) !== 'quantity')
      return undefined;
    if (isVerbal(tag)) return subjectBefore(site, k + 1);
  }
  return undefined;
}

/** The phrase between a verb and `before`: "penciled it on the counter as 22" is about "it". */
export function objectBefore(site: Site, before: Phrase): Phrase | undefined {
  const { parse } = site;
  const sentence = parse.sentenceOf[before.first];
  for (let k = before.first - 1; k >= 0 && parse.sentenceOf[k] === sentence; k--) {
    const tag = tagAt(parse, k);
    if (tag === 'preposition' || tag === 'adverb' || tag === 'determiner') continue;
    const phrase = phraseAt(parse, k);
    if (!phrase || isSpeaker(phrase) || isNoThing(phrase.kinds)) return undefined;
    if (tagAt(parse, phrase.first - 1) === 'preposition') {
      k = phrase.first;
      continue;
    }
    return isVerbal(tagAt(parse, phrase.first - 1)) ? phrase : undefined;
  }
  return undefined;
}

export const isVerbal = (tag: string | undefined): boolean =>
  tag === 'be' || tag === 'verb' || tag === 'participle' || tag === 'modal' || tag === 'auxiliary';

/** What the clause or the talk before is about, for phrases that name only a hole, a gap or a stuff. */
export function surrounding(site: Site, before: number): Name | undefined {
  const { parse, discourse } = site;
  const anchor = anchorOf({ ...site, at: before });
  const direct = anchor.direct;
  const ruled = direct && discourse.roleOf(direct) === 'oblique' ? clauseSubject(site, direct) : undefined;
  const phrase = anchor.subject ?? (ruled && !isSpeaker(ruled) ? ruled : direct);
  if (phrase && !isSpeaker(phrase)) {
    const name = namePhrase(site, phrase);
    if (name) return name;
  }
  const topic = discourse.topicAt(before);
  if (topic && (parse.sentenceOf[before] as number) - topic.sentence <= 1) return topic.name;
  return discourse.last?.name;
}

/** What the talk is about when the clause does not say: the topic just put in front, else the last thing measured. */
export function spokenOf(site: Site): Name | undefined {
  const { parse, at, discourse } = site;
  const topic = discourse.topicAt(at);
  const last = discourse.last;
  if (topic && (parse.sentenceOf[at] as number) - topic.sentence <= 1 && (!last || last.word < topic.word))
    return topic.name;
  return last?.name ?? topic?.name;
}

const SUM_WORD = /^(?:less|minus|plus)$/;

/** The thing that a sum is made for: "that's the opening plus 150, so 1170" is about "that". */
export function sumSubject(site: Site): Name | undefined {
  const { parse, at } = site;
  const sentence = parse.sentenceOf[at];
  for (let k = at - 1; k >= 0 && parse.sentenceOf[k] === sentence; k--) {
    if (!SUM_WORD.test(wordAt(parse, k))) continue;
    for (let j = k - 1; j >= 0 && parse.sentenceOf[j] === sentence; j--) {
      if (tagAt(parse, j) !== 'be') continue;
      const subject = subjectBefore(site, j);
      return subject && !isSpeaker(subject) ? namePhrase(site, subject) : undefined;
    }
  }
  return undefined;
}

/** The first phrase of the sentence that is about a thing. */
export function sentenceSubject(site: Site): Phrase | undefined {
  const { parse, at, discourse } = site;
  const sentence = parse.sentenceOf[at] as number;
  for (let k = parse.sentenceStart[sentence] as number; k < at; k++) {
    const phrase = phraseAt(parse, k);
    if (!phrase) continue;
    k = phrase.last;
    if (isSpeaker(phrase) || isNoThing(phrase.kinds)) continue;
    const role = discourse.roleOf(phrase);
    if (role === 'subject' || role === 'fronted') return phrase;
  }
  return undefined;
}

const REPORTERS =
  /^(?:book|manual|spec|sheet|plate|sticker|label|packet|box|bucket|tin|drawing|plan|sidewall|website|datasheet|instructions|leaflet|tape|calipers|callipers|caliper|scale|scales|gauge|meter|thermometer|law|rule|docket|invoice|paperwork|bag|page|county|council|ministry|city|authority|harbour|state|code|regulation|regs?|bye?-?law|brochure|catalogue|catalog|advert|listing|ticket|receipt|chart|table-of-loads|certificate|clock|counter|micrometer|mike|vernier|multimeter|laser|weighbridge|pot|can|hygrometer|barometer|pyrometer|tester|screen|display|readout|app|log|notebook|book|handbook|survey|quote|estimate|bill|guide|chandler)$/;
export const isReporter = (phrase: Phrase): boolean =>
  REPORTERS.test(singular(phrase.head)) || REPORTERS.test(phrase.head);

/** What a figure may be printed on, and what has a weight and holds something itself: a roof box is no roof. */
const HOLDERS = /^(?:box|bucket|tin|packet|bag|pot|can|sheet|screen|clock|laser)$/;
export const isHolder = (phrase: Phrase): boolean => HOLDERS.test(singular(phrase.head));

/** True when what stands at `verb` tells of what something says: "the book says", "the scale reads". */
export const tells = (site: Site, verb: number): boolean =>
  /^(?:says|say|said|reads|read|reckons|reckon|shows|showed|claims|insists?|states)$/.test(
    wordAt(site.parse, verb),
  );

/** "The sheet says 330": told by what it is printed on or read off. */
export const isReported = (site: Site, { subject, verb }: Anchor): boolean =>
  subject !== undefined && verb !== undefined && isReporter(subject) && tells(site, verb);

/** The thing right after a phrase and a link word: "for the tap", "on the trailer". */
export function linkedAfter(site: Site, from: number, links: RegExp): Name | undefined {
  if (!links.test(wordAt(site.parse, from))) return undefined;
  const phrase = phraseFrom(site.parse, from + 1);
  if (!phrase || isSpeaker(phrase) || isNoThing(phrase.kinds)) return undefined;
  return namePhrase(site, phrase);
}

/**
 * The subject of a sentence that says no more than what a thing measures: "The locker is 15 thick". Nothing said before
 * is meant by such a number, however well it would fit.
 */
export function plainSubject(site: Site, anchor: Anchor): Phrase | undefined {
  const { parse, at } = site;
  const { subject, verb } = anchor;
  if (!subject || verb === undefined || tagAt(parse, verb) !== 'be' || subject.pronoun) return undefined;
  if (subject.determiner === undefined || !opensSentence(parse, subject) || at - verb > 3) return undefined;
  for (let k = subject.last + 1; k < at; k++) if (tagAt(parse, k) === 'quantity') return undefined;
  const { kinds } = subject;
  // "The stool by the stove is 450 high": a word that no list knows, with its place, is a thing as well.
  const isKnown = kinds.size > 0 || placeOf(parse, subject) !== undefined;
  const isThing = isKnown && !kinds.has('measure') && !isNoThing(kinds) && !isReporter(subject);
  return isThing ? subject : undefined;
}
