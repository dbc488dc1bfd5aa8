/**
 * Work that counts as done because it was to be done. "I measured the ladder" or "the cable's ordered" reports nothing
 * by itself; with "measure the ladder" among the open tasks it is the end of that task.
 */
import { workBase, workParticiple, workPast } from '../lexicon/work-verbs.ts';
import { grammarOf, leadLength } from './clause-grammar.ts';
import { has, isDuty } from './deed-words.ts';
import {
  draft,
  firstWord,
  isReason,
  isSubordinate,
  neighbour,
  type Scene,
  type StatementRule,
} from './draft.ts';
import type { Said, Word } from './words.ts';

/** What an open task asks for: its verbs in base form and the words of its things. */
export interface OpenWork {
  readonly verbs: ReadonlySet<string>;
  readonly things: ReadonlySet<string>;
  readonly gist: string;
}

/** Errands that one verb opens and another ends: what was to be bought may be ordered. */
const ERRANDS: readonly ReadonlySet<string>[] = [
  new Set(['order', 'buy', 'get', 'source']),
  new Set(['fetch', 'collect', 'get']),
  new Set(['ring', 'call', 'phone', 'speak', 'ask']),
  new Set(['measure', 'check', 'gauge']),
];

const STOP = new Set(
  'the and for that this with all some more out off from them they new old one two three four now again still just into onto over under round down your our his her its own'.split(
    ' ',
  ),
);

/** One form for singular and plural. */
const thingKey = (word: string) => word.replace(/['’]s$/, '').replace(/(?:([sxz]|[cs]h)es|s)$/, '$1');
const NO_THING =
  /^(?:monday|tuesday|wednesday|thursday|friday|saturday|sunday|today|tomorrow|tonight|yesterday|morning|week|weekend|day|days|you|me|him|her|better|worse|good|got|get|than|like|own|bit|lot|way|time)$/;
const isContent = (word: string) =>
  word.length > 2 && !STOP.has(word) && !NO_THING.test(word) && /^[a-z]/.test(word);

/** Reads an open task's gist for what would end it. */
export function openWork(gist: string): OpenWork {
  const words = gist.toLowerCase().match(/[a-z]+/g) ?? [];
  const verbs = new Set<string>();
  const things = new Set<string>();
  words.forEach((word, index) => {
    // A word after an article is a thing, even where it could be a verb.
    const named = /^(?:a|an|the|my|our|some)$/.test(words[index - 1] ?? '');
    const base = index < 7 && !named ? workBase(word) : undefined;
    // The first verb is the work; a word after an article is a thing even where it could be a verb.
    if (base && verbs.size === 0) verbs.add(base);
    else if (isContent(word)) things.add(thingKey(word));
  });
  return { verbs, things, gist };
}

const sameErrand = (done: string, open: ReadonlySet<string>) =>
  open.has(done) || ERRANDS.some((set) => set.has(done) && [...open].some((verb) => set.has(verb)));

const HELPERS = /^(?:'s|is|are|'re|was|were|been|'ve|have|has|had|got|i|we|all)$/;

const HAS_THING =
  /^(?: \w+)? (?:i|we) (?:'ve|have|had|got)(?: got)? (?:the|a|my|all|both|them|those|that|our) /;

/** Base of the deed that a word reports, with its helper or subject before it. */
function deedAt(words: readonly Word[], at: number): string | undefined {
  const word = words[at] as Word;
  const past = workPast(word.lower);
  const participle = workParticiple(word.lower);
  if (!past && !participle) return undefined;
  let before = at - 1;
  while (before >= 0 && /[AL]/.test(words[before]?.classes ?? '')) before--;
  const lead = words[before]?.lower;
  if (lead === undefined) return at <= 2 ? participle : undefined;
  if (HELPERS.test(lead)) return participle ?? past;
  // "I've the lead costed": the thing stands between.
  return HAS_THING.test(
    words
      .slice(0, at)
      .map(({ lower: each }) => ` ${each}`)
      .join(''),
  )
    ? participle
    : undefined;
}

/** Errands that tell of no work on a thing, and still end a task about it: "rang the mill", "got the rivets". */
const ERRAND_DEEDS = new Set(
  'called rang phoned emailed texted messaged spoke talked asked told got found bought ordered measured checked picked collected fetched tested weighed priced costed paid booked sent dropped gave handed borrowed hired rented returned took made put had done did went worked figured sorted'.split(
    ' ',
  ),
);
/** What befalls a thing without anybody finishing anything. */
const BEFALLS =
  /^(?:came|come|arrived|landed|turned|showed|failed|broke|broken|gone|went|cracked|split|left|lost|stopped|started|measured|weighed|been|had|got|looked|felt|seemed|said|wanted|needed|cost|refused|ordered|promised|delayed|expected)$/;
const ENDED =
  /^(?:done|finished|sorted|complete|completed|ready|in|on|up|down|off|out|through|away|together|back|made|over)$/;

/** Whether a thing is among some, by its own name or as a part of a compound: "the mill" is "the sawmill". */
const names = (some: ReadonlySet<string>, thing: string): boolean =>
  some.has(thing) ||
  (thing.length > 3 &&
    [...some].some((other) => other.length > 3 && (other.endsWith(thing) || thing.endsWith(other))));

const contentOf = (words: readonly Word[]) =>
  new Set(
    words
      .flatMap(({ lower }) => lower.split('-'))
      .filter(isContent)
      .map(thingKey),
  );

/** The words that name what the clause is about: its own, and a topic named just before ("Shower, I figured it out"). */
function wordsAbout(said: Said, scene: Scene): readonly Word[] {
  const before = neighbour(scene, said, -1);
  const isTopic = before && before.words.length <= 4 && grammarOf(before)?.form === 'verbless';
  return isTopic ? [...before.words, ...said.words] : said.words;
}

function finishes(said: Said, scene: Scene): boolean {
  const things = contentOf(wordsAbout(said, scene));
  const about = scene.open.filter((work) => [...work.things].some((thing) => names(things, thing)));
  if (about.length === 0) return false;
  return doesTheSame(said, about) ?? tellsTheEnd(said, things, about);
}

/** Whether the clause reports the deed of an open task in its own verb; nothing where it has no such verb. */
function doesTheSame({ words }: Said, about: readonly OpenWork[]): boolean | undefined {
  for (let at = 0; at < words.length; at++) {
    const deed = deedAt(words, at);
    if (!deed) continue;
    if (words.slice(0, at).some(({ classes }) => /[NKM]/.test(classes))) return false;
    if (about.some((work) => sameErrand(deed, work.verbs))) return true;
  }
  return undefined;
}

/** A deed in the verb of a task that the memo told before it: "I have to order the glass", and later "ordered the glass". */
export const ENDS_OWN: StatementRule = {
  name: 'a task of this memo is done',
  read: (said: Said, scene: Scene) => {
    if (scene.open.length === 0 || said.asks || scene.unreal.has(said.index)) return undefined;
    // Most clauses tell of no such deed, whatever they are about.
    if (!doesTheSame(said, scene.open)) return undefined;
    if (scene.listed.has(said.index) || isSubordinate(said) || isReason(said) || isDuty(said))
      return undefined;
    const things = contentOf(wordsAbout(said, scene));
    const about = scene.open.filter((work) => [...work.things].some((thing) => names(things, thing)));
    return doesTheSame(said, about) ? draft('done', said, { finishes: true }, firstWord(said)) : undefined;
  },
};

/** "The foundry has the drawing": two things of one task, and the one has the other. */
function hasWhatWasOwed(
  said: Said,
  subject: readonly Word[],
  rest: readonly Word[],
  things: ReadonlySet<string>,
  about: readonly OpenWork[],
): boolean {
  const verb = said.words[leadLength(said.words) + subject.length]?.lower ?? '';
  if (!/^(?:has|have|got|'s)$/.test(verb) || rest.some(({ classes }) => /[NQ]/.test(classes))) return false;
  return hasTwo(things, about);
}

const hasTwo = (things: ReadonlySet<string>, about: readonly OpenWork[]) =>
  // "Email the park": "the park got my email" has the deed as a thing.
  about.some((work) => [...work.things, ...work.verbs].filter((thing) => names(things, thing)).length > 1);

const shareFirst = (rest: readonly Word[], about: readonly OpenWork[]) =>
  about.some(({ things }) => rest.slice(0, 3).some(({ lower }) => names(things, thingKey(lower))));

/** Whether the clause, that names a thing of an open task, tells of something brought to an end. */
function tellsTheEnd(said: Said, things: ReadonlySet<string>, about: readonly OpenWork[]): boolean {
  const grammar = grammarOf(said);
  if (
    !grammar?.verb ||
    grammar.negated ||
    [grammar.verb, ...grammar.rest].some(({ classes }) => /[FX]/.test(classes))
  )
    return false;
  const { form, doer, subject, verb, rest } = grammar;
  // "I told you", "we got greedy": nobody was to be told, nothing was got.
  if (
    rest[0]?.lower === 'you' ||
    (verb.lower === 'got' && !/[TOQ]/.test(rest[0]?.classes ?? '') && !shareFirst(rest, about))
  )
    return false;
  const shares = (some: ReadonlySet<string>) =>
    about.some((work) => [...work.things].some((thing) => names(some, thing)));
  if (doer === 'speaker' || doer === 'none') {
    // "I've a price for the lamps", where a price was to be got.
    if (form === 'copula' || form === 'other')
      return (
        / (?:'ve|have)\//.test(said.code) && hasTwo(things, about) && !has(rest, 'Q') && !has(said.words, 'M')
      );
    if (form !== 'past' && form !== 'perfect') return false;
    return ERRAND_DEEDS.has(verb.lower) && shares(things) && !rest.some(({ classes }) => /[Y]/.test(classes));
  }
  // "The pattern's at the glass shop", where the glass shop waits on a pattern.
  const size = said.words.some((word) => word.classes.includes('Q'));
  if (form === 'copula' && hasTwo(things, about) && !size && !/ (?:was|were)\//.test(said.code)) return true;
  if ((doer !== 'thing' && doer !== 'person') || !shares(contentOf(subject))) return false;
  switch (form) {
    // "The glass man knows", "the tank stands on its base", "the scupper runs clear".
    case 'present':
      return !has(rest, 'Q') && !has(rest, 'f');
    case 'passive':
    case 'perfect':
      return !BEFALLS.test(verb.lower) && !verb.classes.includes('Z');
    case 'copula':
      return (
        !/ (?:was|were)\//.test(said.code) &&
        ((ENDED.test(verb.lower) && !/^(?:of|for|to|a)$/.test(rest[0]?.lower ?? '')) || verb.lower === 'as')
      );
    default:
      return hasWhatWasOwed(said, subject, rest, things, about);
  }
}

const TO_ORDER = new Set([
  'order',
  'buy',
  'get',
  'source',
  'find',
  'choose',
  'pick',
  'need',
  'price',
  'replace',
  'send',
  'hire',
  'rent',
  'book',
]);
const ORDERED = / (?:ordered|bought|purchased|rented|hired|booked)\/| on\/\w* (?:back\/\w* )?order\//;
/** Words that name no thing of their own: "the new one's ordered", "that's ordered", "ordered it". */
const NAMELESS =
  /^(?:new|one|ones|it|that|those|them|they|this|other|third|second|first|last|another|pair|lot|rest|stuff|bits|well|too|all|ordered|bought|order|paid|back)$/;

/** "The springs are ordered", "ordered it": with something to order open, that thing or one left unnamed. */
function ordersWhatWasOwed(said: Said, scene: Scene): boolean {
  if (!ORDERED.test(said.code) || said.words.some(({ classes }) => /[NMK]/.test(classes))) return false;
  const owed = scene.open.filter(
    ({ verbs, gist }) =>
      [...verbs].some((verb) => TO_ORDER.has(verb)) || /\b(?:order|buy|get|price|quote)\b/i.test(gist),
  );
  if (owed.length === 0) return false;
  const things = [...contentOf(said.words)].filter(
    (thing) =>
      !NAMELESS.test(thing) &&
      !/^(?:quid|dollar|pound|euro|rand|week|day|monday|tuesday|wednesday|thursday|friday|saturday|sunday)$/.test(
        thing,
      ),
  );
  return things.length === 0 || owed.some((work) => things.some((thing) => names(work.things, thing)));
}

export const FINISHED_RULES: readonly StatementRule[] = [
  {
    name: 'what was to be ordered is ordered',
    read: (said: Said, scene: Scene) =>
      scene.open.length > 0 &&
      !said.asks &&
      !scene.unreal.has(said.index) &&
      !scene.listed.has(said.index) &&
      !isSubordinate(said) &&
      !isDuty(said) &&
      ordersWhatWasOwed(said, scene)
        ? draft('done', said, { finishes: true }, firstWord(said))
        : undefined,
  },
  {
    name: 'an open task is done',
    read: (said: Said, scene: Scene) => {
      if (scene.open.length === 0 || said.asks || scene.unreal.has(said.index)) return undefined;
      if (scene.listed.has(said.index) || isSubordinate(said) || isReason(said) || isDuty(said))
        return undefined;
      if (!finishes(said, scene)) return undefined;
      return draft('done', said, { finishes: true }, firstWord(said));
    },
  },
];
