/** Finished work read from the grammar of its clause, where no closer rule has read it. */

import { workParticiple } from '../lexicon/work-verbs.ts';
import { type Grammar, grammarOf, leadLength } from './clause-grammar.ts';
import { has, isLately, isWorkOn, NO_ERRAND, NO_RESULT, silent } from './deed-words.ts';
import { draft, firstWord, neighbour, type Scene, type StatementRule } from './draft.ts';
import type { Said, Word } from './words.ts';

const set = (words: string) => new Set(words.trim().split(/\s+/));

const PLACED = /^(?:in|on|up|down|off|out|through|away|together|apart|back)$/;
/** Particles that make work of a verb which alone may be a fault: "ripped out the old cooker". */
const REMOVES = /^(?:out|off|up|down|away|apart|back)$/;

/** States that a thing only has when the work on it is finished. */
const FINISHED_STATES = set(
  'ready finished complete weathertight watertight airtight waterproof bare level plumb tight live empty clean usable roadworthy',
);
/** Things that fragments name without reporting work: weather, time, people's doings. */
const IDLE_THINGS =
  / (?:rain|tea|dinner|lunch|supper|breakfast|coffee|kettle|dog|cat|heating|telly|music|sun|wind|snow|weather|forecast|heating|kettle|radio|light|lights|clouds?|power|hands?|fingers?|knees?|back|feet|head|time|day|days|week|weeks|hours?|minutes?|year|years|month|months|tomorrow|price|part|question|comment|comments|thumbs|fingers|eyes|hang|hold|come|carry|game|job|jobs|tools|gloves|mask|goggles|jacket|coat|shoes|boots|what|how|why|who|where)\//;

const code = (words: readonly Word[]) => words.map((word) => ` ${word.lower}/`).join('');
const isFault = (word: Word) => word.classes.includes('F') || word.classes.includes('X');
const isKnownWork = (word: Word) => word.classes.includes('P') && !NO_RESULT.has(word.lower);

/** A verb that says what was done: "rotted" is a fault, "ripped out" is none. */
function isWorkVerb(verb: Word, rest: readonly Word[]): boolean {
  if (!isKnownWork(verb) || verb.classes.includes('Z')) return false;
  return !isFault(verb) || rest.slice(0, 4).some(({ lower }) => REMOVES.test(lower));
}

type Reader = (grammar: Grammar, said: Said, scene: Scene) => boolean;
const byGrammar = (name: string, reads: Reader): StatementRule => ({
  name,
  read: (said, scene) => {
    if (silent(said, scene)) return undefined;
    const grammar = grammarOf(said);
    if (!grammar || grammar.negated || !reads(grammar, said, scene)) return undefined;
    return draft('done', said, {}, firstWord(said));
  },
});

const isMedia = (words: readonly Word[]) => has(words, 'E');

/** "Panels cut, edges banded, bilge pump wired and tested": a thing and a participle, with no helper between. */
function isFragment(grammar: Grammar, said: Said, scene: Scene): boolean {
  if (grammar.form !== 'verbless' && grammar.form !== 'past') return false;
  const words = said.words.slice(leadLength(said.words));
  const at = words.findIndex((word, k) => k > 0 && k <= 5 && (isKnownWork(word) || PLACED.test(word.lower)));
  const result = words[at];
  if (!result || words.length > at + 6 || /\b(?:which|that|who)\b/.test(said.opener)) return false;
  const thing = words.slice(0, at);
  if (thing.some((word) => /[OIRJEVNZ]/.test(word.classes) && !/T/.test(word.classes))) return false;
  if (isMedia(words) || IDLE_THINGS.test(code(thing)) || has(thing.slice(-1), 'D')) return false;
  // "glued and screwed", "fully welded" say how, of a thing told just before; "next up" tells of no thing.
  if (
    !thing.some((word) => isNounLike(word)) ||
    /^(?:next|back|straight|all|way)$/.test(thing[0]?.lower ?? '')
  )
    return false;
  if (!PLACED.test(result.lower) && !workParticiple(result.lower)) return false;
  if (thing.some((word) => word.classes === 'b' || word.classes.includes('Q')) && !opensSentence(said, scene))
    return false;
  if (/^(?:pitched|tested|works|squared)$/.test(result.lower)) return false;
  if (thing.some((word) => word.classes === 'b') || isHowItWasDone(said, scene)) return false;
  const after = words.slice(at + 1);
  if (after.some((word) => /[SHMV]/.test(word.classes))) return false;
  if (PLACED.test(result.lower))
    return (
      thing.every((word) => !/[PGF]/.test(word.classes) || /T/.test(word.classes)) &&
      isPlaceTail(after) &&
      thing.length <= 4 &&
      opensTalk(said, scene)
    );
  return (
    isWorkVerb(result, after) &&
    !/^(?:the|a|an|it|them|my|of|by)$/.test(after[0]?.lower ?? '') &&
    opensTalk(said, scene)
  );
}

const opensSentence = (said: Said, scene: Scene) => neighbour(scene, said, -1) === undefined;
const isNounLike = (word: Word) => !/[ATPCRQLN]/.test(word.classes) || /[BG]/.test(word.classes);

/** "The cable's run, both ends crimped": the words after a deed told with its helper say how it was done. */
function isHowItWasDone(said: Said, scene: Scene): boolean {
  const before = neighbour(scene, said, -1);
  const form = before && grammarOf(before)?.form;
  return (
    said.afterPause &&
    (form === 'passive' ||
      form === 'past' ||
      form === 'perfect' ||
      form === 'copula' ||
      form === 'verbless') &&
    / (?:both|each|all|every|edges|ends|sides)\//.test(said.code)
  );
}

const isPlaceTail = (after: readonly Word[]) =>
  after.length === 0 ||
  /^(?:now|at|and|finally|too|there|today|yesterday|this|last|again)$/.test(after[0]?.lower ?? '');

/** The first clause of a sentence, or one that goes on with a list of such clauses. */
function opensTalk(said: Said, scene: Scene): boolean {
  const before = neighbour(scene, said, -1);
  if (!before) return true;
  if (!/^(?:and|then|and then|so)?$/.test(said.opener)) return false;
  return before.words.every((word) => /L/.test(word.classes)) || isResultLike(before);
}

/** Whether a clause is itself a thing with its participle or place, with or without a helper. */
function isResultLike(said: Said): boolean {
  const last = said.words.slice(1).some((word) => isKnownWork(word) || PLACED.test(word.lower));
  return last && !said.words.some((word) => /[MV]/.test(word.classes));
}

/** "Set up the mill, trammed the head": with nobody named, a form that may be an order is past among pasts. */
function isToldAmongPasts(said: Said, scene: Scene): boolean {
  if (isLately(said, scene)) return true;
  const beside = [neighbour(scene, said, -1), neighbour(scene, said, 1), scene.said[said.index - 1]];
  return beside.some((other) => {
    const grammar = other && grammarOf(other);
    const verb = grammar?.verb;
    return (
      grammar?.form === 'past' &&
      (grammar.doer === 'none' || grammar.doer === 'speaker') &&
      verb !== undefined &&
      !verb.classes.includes('B')
    );
  });
}

/** "Knocked out the last bricks", "took delivery of the beams": a past verb with nobody named. */
function isDroppedSubject(grammar: Grammar, said: Said, scene: Scene): boolean {
  const { verb, rest } = grammar;
  if (grammar.form !== 'past' || grammar.doer !== 'none' || !verb || rest.length === 0) return false;
  if (!/^(?:and|then|and then|so|but)?$/.test(said.opener)) return false;
  if ((said.afterPause || said.opener !== '') && !goesOn(said, scene)) return false;
  if (NO_ERRAND.has(verb.lower) || verb.classes.includes('Z')) return false;
  if (verb.classes.includes('B') && !isToldAmongPasts(said, scene)) return false;
  return isObject(rest) && isWorkOn(verb, rest) && !isSameBreath(said, rest, scene);
}

/** "I made a strap and fitted it": two strokes at one thing are one deed. */
export function isSameBreath(said: Said, object: readonly Word[], scene: Scene): boolean {
  if (said.opener !== 'and' || said.afterPause || !/^(?:it|them)$/.test(object[0]?.lower ?? '')) return false;
  const before = neighbour(scene, said, -1);
  const told = before && grammarOf(before);
  return (
    (told?.form === 'past' || told?.form === 'perfect') && (told.doer === 'none' || told.doer === 'speaker')
  );
}

const isObject = (rest: readonly Word[]) => {
  const [first] = rest;
  return (
    first !== undefined && (/[TOCQ]/.test(first.classes) || PLACED.test(first.lower) || first.classes === '')
  );
};

/** After a pause a bare past verb goes on with the speaker's own telling, and with nobody else's. */
export function goesOn(said: Said, scene: Scene): boolean {
  const before = neighbour(scene, said, -1);
  const grammar = before && grammarOf(before);
  if (!before || !grammar) return true;
  // "Cut and fitted the lockers"
  if (before.words.length <= 2 && before.words.at(-1)?.classes.includes('b')) return true;
  if (before.words.every((word) => /[LD]/.test(word.classes))) return true;
  if (grammar.negated) return false;
  if (!said.afterPause) {
    if (before.words.some((word) => word.classes.includes('I'))) return true;
    if (grammar.doer === 'person') return !/ (?:previous|former)\//.test(before.code);
  }
  return (
    (grammar.form === 'past' || grammar.form === 'perfect') &&
    (grammar.doer === 'none' || grammar.doer === 'speaker')
  );
}

/** "My brother in law welded the pins", "the lads cut the slabs". */
function isPersonsWork({ form, doer, subject, verb, rest }: Grammar): boolean {
  if ((form !== 'past' && form !== 'perfect') || doer !== 'person' || !verb) return false;
  if (!verb.classes.includes('P') || verb.classes.includes('Z')) return false;
  if (PERSONS_OWN.test(verb.lower) || isRelative(subject)) return false;
  return /[TOC]/.test(rest[0]?.classes ?? '') && isWorkOn(verb, rest);
}
const isRelative = (subject: readonly Word[]) =>
  /^(?:who|that|which|whose|whom)$/.test(subject.at(-1)?.lower ?? '');
const PERSONS_OWN =
  /^(?:told|reckoned|brought|dropped|rang|called|emailed|marked|sent|texted|messaged|caught|wanted|offered|took|made|gave|put|showed|turned|picked|delivered|covered|passed|wrote|said|counted|asked|got|held|priced|quoted|filmed|had|done|did)$/;

/** "The other four I've already puttied", "the rafters I cut on Monday": the thing first. */
function isThingFirst({ form, doer, subject, verb, rest }: Grammar): boolean {
  if ((form !== 'past' && form !== 'perfect') || doer !== 'speaker' || !verb) return false;
  const thing = subject.slice(0, -1);
  const [first] = thing;
  if (!first || thing.length > 6 || (!/[TQ]/.test(first.classes) && first.classes !== '')) return false;
  if (
    thing.some((word) => /[RJENDV]/.test(word.classes)) ||
    /^(?:the way|what)/.test(`${first.lower} ${thing[1]?.lower}`)
  )
    return false;
  if (rest.some((word) => /[SHMV]/.test(word.classes))) return false;
  return isWorkVerb(verb, rest) && isWorkOn(verb, rest.length > 0 ? rest : thing);
}

/** "The bench is ready", "the hull is bare": a state that only work brings about. */
function isFinishedState({ form, doer, subject, verb, rest }: Grammar): boolean {
  if (form !== 'copula' || (doer !== 'thing' && doer !== 'pronoun') || !verb || isMedia(subject))
    return false;
  if (IDLE_THINGS.test(code(subject)) || subject.length === 0) return false;
  if (doer === 'pronoun' && !/^(?:weathertight|watertight|finished|complete)$/.test(verb.lower)) return false;
  return (
    FINISHED_STATES.has(verb.lower) &&
    (rest.length === 0 ||
      (/^(?:again|now|at|too|inside|outside|all|as|finally|for|and)$/.test(rest[0]?.lower ?? '') &&
        !/^for (?:a|the) (?:change)/.test(`${rest[0]?.lower} ${rest[1]?.lower}`)))
  );
}

/** "The spars have had five coats", "the deck's had its oil". */
function isCoated({ form, doer, verb, rest }: Grammar): boolean {
  if (form !== 'perfect' || (doer !== 'thing' && doer !== 'pronoun') || verb?.lower !== 'had') return false;
  return / (?:coats?|primer|undercoat|oil|paint|varnish|sealer|wash|clean|service|grease|treatment|preservative)\//.test(
    code(rest.slice(0, 6)),
  );
}

/** "Undercoat on the floor today", "two coats on the hull": a coat, and where it now is. */
function isCoatOn({ form, rest }: Grammar, said: Said, scene: Scene): boolean {
  if (form !== 'verbless' || !opensTalk(said, scene)) return false;
  const at = rest.findIndex(({ lower }) => /^(?:on|in)$/.test(lower));
  if (at < 1 || at > 5 || !/[TO]/.test(rest[at + 1]?.classes ?? '')) return false;
  if (/ (?:tomorrow|next|tonight)\//.test(said.code) || isMedia(rest)) return false;
  return / (?:coats?|primer|undercoat|topcoat|undercoats?|varnish|antifoul|antifouling|plaster|skim|render|grout)\//.test(
    code(rest.slice(0, at)),
  );
}

/** "Primed, two coats, both sides", "Sanded.": the thing is the one just spoken of. */
function isBareParticiple({ form, rest }: Grammar, said: Said, scene: Scene): boolean {
  const [verb, next] = rest;
  if (form !== 'verbless' || !verb || neighbour(scene, said, -1) || said.opener) return false;
  if (!isWorkVerb(verb, rest.slice(1)) || verb.classes.includes('B')) return false;
  if (
    /^(?:dropped|moved|turned|opened|closed|paid|booked|excepted|done|sorted|finished|fixed|agreed|filmed|checked|posted|edited|uploaded|called|asked)$/.test(
      verb.lower,
    )
  )
    return false;
  return (
    next === undefined || (rest.length <= 3 && rest.slice(1).every((word) => /[ACR]/.test(word.classes)))
  );
}

/** "There's a proper step on it now", "there's now a drain under it". */
function isThereNow({ subject, form, doer, verb, rest }: Grammar, said: Said): boolean {
  // "The shed's got a roof on it now."
  if (doer === 'thing' && verb?.lower === 'got' && / now\//.test(said.code))
    return /[T]/.test(rest[0]?.classes ?? '') && !has(rest, 'Q') && !has(rest, 'f') && !has(rest, 'F');
  if (subject[0]?.lower !== 'there' || form !== 'copula' || has(said.words, 'f') || isMedia(said.words))
    return false;
  return (
    / now\//.test(said.code) &&
    rest.some((word) => /[RC]/.test(word.classes)) &&
    !/ (?:only|just|more|less|enough|nothing|no|room)\//.test(said.code) &&
    !has(said.words, 'Q') &&
    !has(said.words, 'F')
  );
}

export const GRAMMAR_RULES: readonly StatementRule[] = [
  byGrammar('grammar: <thing> <participle>', isFragment),
  byGrammar('grammar: <coat> on <thing>', isCoatOn),
  byGrammar('grammar: <participle>', isBareParticiple),
  byGrammar('grammar: there is now <thing>', isThereNow),
  byGrammar('grammar: <past> <thing>', isDroppedSubject),
  byGrammar('grammar: <person> <past> <thing>', isPersonsWork),
  byGrammar('grammar: <thing> I <past>', isThingFirst),
  byGrammar('grammar: <thing> is <ready>', isFinishedState),
  byGrammar('grammar: <thing> has had <coats>', isCoated),
];
