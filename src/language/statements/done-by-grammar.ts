/** Finished work read from the grammar of its clause, where no closer rule has read it. */

import { wordSet } from '../word-table.ts';
import { type Grammar, grammarOf } from './clause-grammar.ts';
import { code, IDLE_THINGS, isBareParticiple, isFragment, isPutOn, PLACED } from './deed-fragments.ts';
import { has, isLately, isWorkOn, isWorkVerb, NO_ERRAND, silent } from './deed-words.ts';
import { draft, firstWord, neighbour, type Scene, type StatementRule } from './draft.ts';
import type { Said, Word } from './words.ts';

/** States that a thing only has when the work on it is finished. */
const FINISHED_STATES = wordSet(
  'ready finished complete weathertight watertight airtight waterproof bare level plumb tight live empty clean usable roadworthy',
);

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
  // "The gas man came at seven, capped it"
  if (grammar.doer === 'person' && /^(?:came|come)$/.test(grammar.verb?.lower ?? '')) return true;
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
  if (!verb.classes.includes(form === 'past' ? 'b' : 'P') || verb.classes.includes('Z')) return false;
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
  // "The boom I already shaped"
  const named = subject.filter(
    ({ classes, lower }) => classes !== 'A' && !/^(?:already|just|now|also)$/.test(lower),
  );
  const thing = named.slice(0, -1);
  const [first] = thing;
  if (!first || thing.length > 6 || (!/[TQ]/.test(first.classes) && first.classes !== '')) return false;
  if (
    thing.some((word) => /[RJENDV]/.test(word.classes)) ||
    /^(?:the way|what)/.test(`${first.lower} ${thing[1]?.lower}`)
  )
    return false;
  if (rest.some((word) => /[SHMV]/.test(word.classes))) return false;
  const makes = /^(?:made|built)$/.test(verb.lower) && rest.length === 0;
  return (makes || isWorkVerb(verb, rest)) && isWorkOn(verb, rest.length > 0 ? rest : thing);
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
  byGrammar('grammar: <coat> on <thing>', isPutOn),
  byGrammar('grammar: <participle>', isBareParticiple),
  byGrammar('grammar: there is now <thing>', isThereNow),
  byGrammar('grammar: <past> <thing>', isDroppedSubject),
  byGrammar('grammar: <person> <past> <thing>', isPersonsWork),
  byGrammar('grammar: <thing> I <past>', isThingFirst),
  byGrammar('grammar: <thing> is <ready>', isFinishedState),
  byGrammar('grammar: <thing> has had <coats>', isCoated),
];
