/** Finished work told without a verb of its own: "panels cut", "lid on", "two coats on the hull", "new glass in the door". */
import { workParticiple } from '../lexicon/work-verbs.ts';
import { type Grammar, grammarOf, leadLength } from './clause-grammar.ts';
import { has, isWorkVerb } from './deed-words.ts';
import { neighbour, type Scene } from './draft.ts';
import type { Said, Word } from './words.ts';

export const PLACED = /^(?:in|on|up|down|off|out|through|away|together|apart|back)$/;
/** Adjectives and adverbs that stand for a participle. */
const ENDED = /^(?:done|complete|finished|sorted|ready|gone|home)$/;

/** Things that fragments name without reporting work: weather, time, people's doings. */
export const IDLE_THINGS =
  / (?:rain|tea|dinner|lunch|supper|breakfast|coffee|kettle|dog|cat|heating|telly|music|sun|wind|snow|weather|forecast|radio|light|lights|clouds?|power|hands?|fingers?|knees?|back|feet|head|time|day|days|week|weeks|hours?|minutes?|year|years|month|months|tomorrow|price|part|question|comment|comments|thumbs|eyes|hang|hold|come|carry|game|job|jobs|tools|gloves|mask|goggles|jacket|coat|shoes|boots|what|how|why|who|where|water|money|news|luck)\//;

export const code = (words: readonly Word[]) => words.map((word) => ` ${word.lower}/`).join('');
const isKnownWork = (word: Word) => word.classes.includes('P');

const isNounLike = (word: Word) => !/[ATPCRQLN]/.test(word.classes) || /[BG]/.test(word.classes);

/** "Old", "cracked", "back": words before a noun that only tell which one it is. */
const isNoThing = (thing: readonly Word[]) =>
  !thing.some(isNounLike) ||
  // "with the right sums on", "nail the shakes on", "diagonals two out"
  thing.some((word) => word.classes.includes('R') && word.lower !== 'of') ||
  (/B/.test(thing[0]?.classes ?? '') &&
    /[T]/.test(thing[1]?.classes ?? '') &&
    !/[T]/.test(thing[0]?.classes ?? '')) ||
  (thing.length > 1 && has(thing.slice(-1), 'Q')) ||
  (thing.length === 1 && /^(?:next|back|straight|all|way|that|it|job)$/.test(thing[0]?.lower ?? ''));

/** Where the thing of a fragment ends and what was done to it starts; -1 where it is no fragment. */
function resultAt(words: readonly Word[]): number {
  for (let k = 1; k < Math.min(words.length, 8); k++) {
    const word = words[k] as Word;
    if (PLACED.test(word.lower)) {
      // "panes in now" has its thing before it, "boards in oak" a second one behind.
      if (/[R]/.test(words[k - 1]?.classes ?? '') && !/[PBG]/.test(words[k - 1]?.classes ?? '')) return -1;
      return k;
    }
    if (ENDED.test(word.lower)) return k;
    // "cracked pane replaced": a participle before its noun tells which pane.
    if (isKnownWork(word) && !isBeforeNoun(words, k)) return k;
  }
  return -1;
}

const isBeforeNoun = (words: readonly Word[], k: number) => {
  const next = words[k + 1];
  if (!next || !isNounLike(next) || !/^[a-z]/.test(next.lower)) return false;
  return words.slice(k + 2, k + 4).some((word) => isKnownWork(word) || PLACED.test(word.lower));
};

/** "Panels cut, edges banded, bilge pump wired and tested": a thing and a participle, with no helper between. */
export function isFragment(grammar: Grammar, said: Said, scene: Scene): boolean {
  if (grammar.form !== 'verbless' && grammar.form !== 'past') return false;
  const words = said.words.slice(leadLength(said.words));
  const at = resultAt(words);
  const result = words[at];
  if (!result || words.length > at + 9 || /\b(?:which|that|who)\b/.test(said.opener)) return false;
  const thing = words.slice(0, at);
  const after = words.slice(at + 1);
  if (thing.some((word) => /[OIJEVNZ]/.test(word.classes) && !/[TQ]/.test(word.classes))) return false;
  if (thing.some((word) => word.classes === 'b') || after.some((word) => /[SHMV]/.test(word.classes)))
    return false;
  if (has(words, 'E') || IDLE_THINGS.test(code(thing.slice(-1))) || has(thing.slice(-1), 'D')) return false;
  if (isNoThing(thing) || isHowItWasDone(said, scene) || !opensTalk(said, scene)) return false;
  // "then fully welded, flood tested": the last strokes at what was told just before.
  if (thing.length === 1 && has(thing, 'B') && !PLACED.test(result.lower) && neighbour(scene, said, -1))
    return false;
  if (has(thing.slice(-1), 'F') || has(thing.slice(-1), 'x')) return false;
  if (PLACED.test(result.lower) || ENDED.test(result.lower))
    return (
      thing.every(
        (word) => !/[PG]/.test(word.classes) || /[TB]/.test(word.classes) || word !== thing.at(-1),
      ) &&
      isPlaceTail(after) &&
      thing.length <= 6
    );
  if (!workParticiple(result.lower) && !/[a-z]{3}ed$/.test(result.lower)) return false;
  if (/^(?:pitched|works|squared|let|set|cut|put)$/.test(result.lower) && after.length > 0) return false;
  return isWorkVerb(result, after) && !/^(?:the|a|an|it|them|my|of|by)$/.test(after[0]?.lower ?? '');
}

/** "The cable's run, both ends crimped": the words after a deed told with its helper say how it was done. */
function isHowItWasDone(said: Said, scene: Scene): boolean {
  const before = neighbour(scene, said, -1);
  const form = before && grammarOf(before)?.form;
  return (
    said.afterPause &&
    form !== undefined &&
    form !== 'present' &&
    form !== 'other' &&
    / (?:both|each|all|every|edges|ends|sides)\//.test(said.code)
  );
}

const isPlaceTail = (after: readonly Word[]) =>
  after.length === 0 ||
  /^(?:now|at|and|finally|too|there|today|yesterday|this|last|again|already|so|as)$/.test(
    after[0]?.lower ?? '',
  );

/** The first clause of a sentence, or one that goes on with a list of such clauses. */
export function opensTalk(said: Said, scene: Scene): boolean {
  const before = neighbour(scene, said, -1);
  if (!before) return true;
  if (!/^(?:and|then|and then|so|but)?$/.test(said.opener)) return false;
  return before.words.every((word) => /L/.test(word.classes)) || isResultLike(before);
}

/** Whether a clause is itself a thing with its participle or place, with or without a helper. */
function isResultLike(said: Said): boolean {
  const last = said.words.slice(1).some((word) => isKnownWork(word) || PLACED.test(word.lower));
  return last && !said.words.some((word) => /[MV]/.test(word.classes));
}

const COATS =
  / (?:coats?|primer|undercoat|topcoat|undercoats?|varnish|antifoul|antifouling|plaster|skim|render|grout|sealer|oil|paint|mortar|limewash|wax)\//;

/** "Undercoat on the floor today", "two coats on the hull", "new glass in the door": something new in its place. */
export function isPutOn({ form, rest }: Grammar, said: Said, scene: Scene): boolean {
  if (form !== 'verbless' || !opensTalk(said, scene)) return false;
  const at = rest.findIndex(({ lower }) =>
    /^(?:on|in|into|under|over|round|around|along|through)$/.test(lower),
  );
  if (at < 1 || at > 5 || !/[TO]/.test(rest[at + 1]?.classes ?? '')) return false;
  if (/ (?:tomorrow|next|tonight|still|first)\//.test(said.code) || has(rest, 'E')) return false;
  if (rest.slice(0, at).some((word) => /[NJ]/.test(word.classes))) return false;
  return COATS.test(code(rest.slice(0, at))) || (/^(?:new|fresh)$/.test(rest[0]?.lower ?? '') && at > 1);
}

/** "Primed, two coats, both sides", "Sanded.": the thing is the one just spoken of. */
export function isBareParticiple({ form, rest }: Grammar, said: Said, scene: Scene): boolean {
  const [verb, next] = rest;
  if (form !== 'verbless' || !verb || neighbour(scene, said, -1) || said.opener) return false;
  if (!isWorkVerb(verb, rest.slice(1)) || verb.classes.includes('B')) return false;
  if (NO_REPORT.test(verb.lower)) return false;
  return (
    next === undefined || (rest.length <= 3 && rest.slice(1).every((word) => /[ACR]/.test(word.classes)))
  );
}
const NO_REPORT =
  /^(?:dropped|moved|turned|opened|closed|paid|booked|excepted|done|sorted|finished|fixed|agreed|filmed|checked|posted|edited|uploaded|called|asked)$/;
