/** Jobs told by what a thing or the speaker is still without. */
import { isReason, phraseRule, type Scene, type StatementRule } from './draft.ts';
import { DUE_MONEY } from './due-money.ts';
import { type Found, phrase } from './phrase.ts';
import { hasDay, subjectOf, tellsNoTask } from './tasks.ts';
import type { Said, Word } from './words.ts';

const has = (words: readonly Word[], letter: string) => words.some((word) => word.classes.includes(letter));

type Guard = (found: Found, said: Said, scene: Scene) => boolean;
const task = (name: string, source: string, guard: Guard): StatementRule =>
  phraseRule('task', name, phrase(source), (found, said, scene) => {
    if (tellsNoTask(said, scene) || isReason(said) || has(found.words, 'E') || has(found.words, 'N'))
      return false;
    return guard(found, said, scene) && { plain: true };
  });

/** Wanted in a number, these are no goods. */
const NO_GOODS =
  /^(?:people|persons|hands|lads|men|volunteers|days?|hours?|minutes?|weeks?|months?|years?|goes|attempts|tries|times|coats?|more|of|or|and|to|degrees|percent|each|either|per|wide|long|high|deep|thick|clear|off|inches|foot|feet|clearance|room|space)$/;

const WANTS =
  "(?: needs | need | wants | want | could do with | requires | 'll need | will need | is going to need | 's going to need )";

export const WANTED_RULES: readonly StatementRule[] = [
  task(
    'I need <number> <things>',
    "^<lead>* (?: i | we ) (?: 'll | will | 'm going to | 're going to )? (?: <adverb> | probably )* (?: need | want ) (?: about | at least | around | roughly | another | some )* (?<count> (?: a | <number> ) (?: <number> | and | dozen | hundred | couple of )* ) (?<object> <plain>{1,6} )",
    (found, said) => {
      const [first] = found.part('object');
      const count = found.part('count');
      if (!first || (count.length === 1 && count[0]?.lower === 'a')) return false;
      if (!has(count, 'Q') || /[URCDT]/.test(first.classes) || NO_GOODS.test(first.lower)) return false;
      return (
        found.part('object').some(({ lower }) => /[a-z]s$|^(?:sheets|lengths)$/.test(lower)) &&
        !found.part('object').some(({ lower }) => NO_GOODS.test(lower)) &&
        !/\b(?:if|so)\b/.test(said.opener)
      );
    },
  ),
  task(
    'I need <much> of <thing>',
    "^<lead>* (?: i | we ) (?: 'll | will | still | also | <adverb> )* (?: need | want ) (?: about | another | at least | maybe )* (?: a | an | <number> )+ (?: and a half | and a quarter )? <unit> (?: and a half | or so )? of (?<object> <plain>{1,6} )",
    (found) =>
      !/ (?:time|room|space|clearance|fall|play|gap|overlap|bearing|headroom|air|it|them|that|travel|slack)\//.test(
        codeOf(found),
      ),
  ),
  task(
    '<fee> is due <day>',
    `^<lead>* (?<subject> <plain>{0,5}? ${DUE_MONEY} ) (?: is | 's | are ) <adverb>* (?: due | payable ) (?<when> <any>* )`,
    (found, said, scene) => !has(found.part('subject'), 'I') && hasDay(said, scene),
  ),
  task(
    'I am after <thing>',
    "^<lead>* (?: (?: i | we ) (?: 'm | am | 're | are ) )? (?: still | also | always | <adverb> )* (?: after | looking for | on the lookout for | on the hunt for ) (?<object> (?: a | an | some | another | more | new | <number> ) <plain>{1,7} )",
    (found) => {
      const object = found.part('object');
      return (
        object.length > 1 &&
        !/ (?:place|way|excuse|reason|volunteers?|hand|hands|help|while|minute|hour|day|week|month|year|bit|sign|signs|leak|leaks|crack|cracks|size|gap|finish|look|feel)\//.test(
          codeOf(found),
        ) &&
        !has(object.slice(-1), 'U') &&
        !/^(?:to|for|in|at)$/.test(object[1]?.lower ?? '')
      );
    },
  ),
  task(
    '<thing> needs <much> off',
    `^<lead>* (?<subject> <plain>{1,7}? ) <adverb>* ${WANTS} (?: about | another | maybe | a | <adverb> )* <number> <any>{0,4}? (?: off | out of | shaving off | planing off | taking off | taking out | trimming off ) (?<rest> <any>* )`,
    (found) => subjectOf(found) === 'thing',
  ),
  task(
    '<thing> wants its own <thing>',
    `^<lead>* (?<subject> <plain>{1,7}? ) <adverb>* ${WANTS} (?: its | their | her | his ) own (?<object> <plain>{1,5} )`,
    (found) => subjectOf(found) === 'thing' && !/ (?:time|space|way|room|weight)\//.test(codeOf(found)),
  ),
  task(
    '<thing> needs a <thing> round it',
    `^<lead>* (?<subject> <plain>{1,7}? ) <adverb>* ${WANTS} (?: a | an | some | another | its | their | more ) (?<object> <plain>{1,5}? ) (?: round | around | over | under | underneath | behind | across | between | beside | above | below | beneath ) (?: it | them | her | that | the <plain>{1,3} ) `,
    (found) =>
      subjectOf(found) === 'thing' &&
      !has(found.part('object'), 'Q') &&
      !/ (?:gap|clearance|space|room|minute|hand|look|bit|day|week|hour)\//.test(codeOf(found)),
  ),
];

const codeOf = (found: Found) =>
  found
    .part('object')
    .map(({ lower }) => ` ${lower}/`)
    .join('');
