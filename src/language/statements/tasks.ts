import { findDates } from '../dates.ts';
import {
  type Draft,
  draft,
  firstWord,
  isReason,
  isSubordinate,
  neighbour,
  phraseRule,
  type Scene,
  type StatementRule,
} from './draft.ts';
import { type Found, find, phrase } from './phrase.ts';
import type { Said, Word } from './words.ts';

const set = (words: string) => new Set(words.trim().split(/\s+/));
const has = (words: readonly Word[], letter: string) => words.some((word) => word.classes.includes(letter));

/** Verbs after "need to" that are no work: talk, thought, rest and states. */
const NO_TASK =
  set(`be say admit know have keep let think remember tell show wait live laugh like love feel hope thank
  mention confess talk explain apologise apologize eat sleep sit stay stand understand believe see watch want lose
  worry care agree wonder imagine guess breathe drink die stress lie cry hurry share subscribe respect clear need cost
  come look last match suit reach own seem mean`);
/** Errands and thinking work that is a task although no work on a thing. */
const ERRANDS =
  set(`go get ask see find work look sort think decide come figure start begin try carry double-check research google
  visit speak chat talk learn practise practice choose pick ring call remember have let add`);

/** Clauses in which nothing is left to do, whatever their verbs. */
function silent(said: Said, scene: Scene): boolean {
  return (
    scene.unreal.has(said.index) || said.asks || (isSubordinate(said) && !/^once|soon as/.test(said.opener))
  );
}

/** A day ahead named in the clause itself. */
export function dayIn(said: Said, scene: Scene): string | undefined {
  const text = scene.text.slice(said.start, said.end);
  const recorded = scene.dates.recordedAt.slice(0, 10);
  return findDates(text, scene.dates).find(({ day }) => day >= recorded)?.day;
}

const task = (
  name: string,
  pattern: RegExp,
  guard: (found: Found, said: Said, scene: Scene) => boolean | Partial<Omit<Draft, 'kind' | 'rule'>>,
): StatementRule =>
  phraseRule(
    'task',
    name,
    pattern,
    (found, said, scene) => !silent(said, scene) && guard(found, said, scene),
  );

const I_WE = /^(i|we|me|us|somebody|someone|me_and)$/;

/** Who is to do it: the speaker, somebody, a person, or a thing that has it done to it. */
function subjectOf(found: Found): 'speaker' | 'person' | 'thing' | 'viewer' | 'none' {
  const words = found.part('subject');
  if (words.length === 0) return 'none';
  if (words.some(({ lower }) => I_WE.test(lower))) return 'speaker';
  if (words.some(({ lower }) => lower === 'you')) return 'viewer';
  if (has(words, 'J')) return 'person';
  return 'thing';
}

function isTaskVerb(verb: Word | undefined, next: Word | undefined): boolean {
  if (!verb || NO_TASK.has(verb.lower)) {
    // "have a price for", "come up with", "clear out": errands with their own words.
    if (verb?.lower === 'have') return next !== undefined && next.classes.includes('T');
    if (verb?.lower === 'come') return next?.lower === 'up' || next?.lower === 'back';
    if (verb?.lower === 'clear') return next !== undefined && /^(out|the|up|that|all|away)$/.test(next.lower);
    if (verb?.lower === 'think' || verb?.lower === 'look')
      return /^(about|into|up|at)$/.test(next?.lower ?? '');
    return false;
  }
  return /[B]/.test(verb.classes) || ERRANDS.has(verb.lower) || verb.classes === '';
}

const REST_ONLY =
  / (?:drink|holiday|beer|brew|cup|nap|hand|minute|moment|break|bath|lie|hug|life|word|haircut|tea|coffee|sit|rest|day|week)\//;

/** Nouns that name a piece of work to be had: "wants a coat of oil". */
const SERVICE =
  / (?:coats?|clean|sand|sanding|rub|rubdown|wipe|wash|flush|polish|tidy|service|check|test|trim|tweak|going-over|lick|touch-up|seal|top-up|bleed|rebuild|replacement|skim|repair|patch|weld|bead|squirt|grease|second|third|final|another|new|fresh|bonding|undercoat|primer|adjustment|once-over|inspection|bracket|one)\//;

export const TASK_RULES: readonly StatementRule[] = [
  task(
    'need to <do>',
    phrase(
      "^<lead>* (?<subject> <any>{0,8}? ) (?: <modal> )? (?: <adverb> | <not> )* (?: need | needs | have | has | 've | 's | got | ought | 're ) (?: got | just | still | also | only | really | all | both )* (?<not> not )? to (?: <adverb> )* (?<verb> <any> ) (?<object> <any>* )",
    ),
    (found, said) => {
      const [verb] = found.part('verb');
      const object = found.part('object');
      if (has(found.words.slice(0, found.words.indexOf(verb as Word)), 'N')) return false;
      const who = subjectOf(found);
      if (who === 'viewer' || has(found.part('subject'), 'E')) return false;
      if (isReason(said) && who === 'thing') return false;
      if (who === 'thing') return isDoneToThing(verb, object);
      if (verb?.lower === 'be') return false;
      return isTaskVerb(verb, object[0]);
    },
  ),
  task(
    'must <do>',
    phrase(
      "^<lead>* (?<subject> <any>{0,5}? ) (?: must | 'd better | had better | better ) (?: <adverb> )* (?<verb> <any> ) (?<object> <any>* )",
    ),
    (found) => {
      const [verb] = found.part('verb');
      const who = subjectOf(found);
      if (who === 'viewer') return false;
      return who === 'thing'
        ? isDoneToThing(verb, found.part('object'))
        : verb?.lower !== 'have' && isTaskVerb(verb, found.part('object')[0]);
    },
  ),
  task(
    '<thing> wants <doing>',
    phrase(
      '^<lead>* (?<subject> <any>{0,9}? ) (?: <modal> )? <adverb>* (?: want | wants | need | needs | do with | requires | crying out for ) (?: a | an | some | another | good | bit | of | its | their | proper | <adverb> )* (?<verb> <doing> )',
    ),
    (found) => {
      const who = subjectOf(found);
      return (
        who !== 'speaker' &&
        who !== 'viewer' &&
        !has(found.words, 'N') &&
        found.part('verb')[0]?.lower !== 'being'
      );
    },
  ),
  task(
    '<thing> wants a <coat>',
    phrase(
      '^<lead>* (?<subject> <any>{1,9}? ) (?: <modal> )? <adverb>* (?: want | wants | need | needs | do with | crying out for | due | owed ) (?: a | an | another | its | their | her | his | some | one more ) (?<object> <any>{1,7} )',
    ),
    (found, said) => {
      const who = subjectOf(found);
      if (who !== 'thing' || has(found.words, 'N') || has(found.part('object'), 'Q')) return false;
      return SERVICE.test(said.code.slice(said.codeStarts[found.from] ?? 0));
    },
  ),
  task(
    'I need <thing>',
    phrase(
      "^<lead>* (?<subject> i | we ) (?: 'll | will )? <adverb>* (?: need | want ) (?: a | an | some | more | another | new | two | three | four ) (?<object> <any>+ )",
    ),
    (_, said) =>
      !REST_ONLY.test(said.code) &&
      !/ (?:need|want)\/\w* (?:a|an)\/\w* \d/.test(said.code) &&
      !isReason(said) &&
      !/ want\//.test(said.code),
  ),
  task(
    'I owe <thing> <thing>',
    phrase(
      '^<lead>* (?<subject> i | we ) <adverb>* owe (?<object> <any>{1,3}? (?: a | an | another | some | new ) <any>+ )',
    ),
    (found) =>
      !has(found.part('object'), 'E') && !/^(you|the|my)$/.test(found.part('object')[0]?.lower ?? ''),
  ),
  task(
    '<thing> to <do>',
    phrase(
      "(?: there | i | we | that ) (?: 's | is | are | 've | have | leaves ) (?: still | just | only | got )* !to (?<object> <any>{1,6}? ) to (?<verb> <do> ) (?<rest> <any>{0,5} )$",
    ),
    (found) => {
      const verb = found.part('verb')[0]?.lower ?? '';
      const object = found.part('object');
      if (has(object, 'N') || has(object, 'V') || NO_TASK.has(verb) || /^(use|clear|hold|work)$/.test(verb))
        return false;
      return !/^(going|about|able|supposed|used|hard|easy|ready|nothing)$/.test(object.at(-1)?.lower ?? '');
    },
  ),
  task(
    'still to <do>',
    phrase('(?: still | yet | left ) (?: to be <done> | to (?<verb> <do> ) )'),
    (found, said) =>
      !/ (?:have|has|'ve|'s|got|need)\/\w* (?:still|yet)\//.test(said.code) &&
      found.part('verb')[0]?.lower !== 'show',
  ),
  task(
    'that is <day> job',
    phrase("(?: <day> | weekend | week ) 's? <adverb>* (?: job | jobs | problem | task )$"),
    (_, said) => said.words.length > 2,
  ),
  task(
    "that's one for <somebody>",
    phrase(
      "(?: that | it | this ) 's (?: one | a job | job | another | something ) for (?: somebody | someone | me | us | <day> | the weekend | <det>? <person> ) ",
    ),
    () => true,
  ),
  task(
    '<day> is a <doing> day',
    phrase("^<lead>* <day> 's? (?: is )? (?: a | an | the )? <plain>{0,2}? (?<verb> <doing> ) day"),
    () => true,
  ),
  task(
    'I have a date with <thing>',
    phrase("<day> (?: i | we ) (?: 've | have )? <adverb>* got <any>"),
    (found) => !/^to$/.test(found.words.at(-1)?.lower ?? ''),
  ),
  task(
    'I will <do> <thing> <day>',
    phrase(
      "^<lead>* (?<when> <day>{0,2} ) (?<subject> i | we ) (?: 'll | will | 'm | 're | am | are | shall ) (?: be | going to | <adverb> )* (?<verb> <do> | <doing> | going | having | getting ) (?<object> <any>* )",
    ),
    (found, said, scene) => {
      const verb = found.part('verb')[0]?.lower ?? '';
      if (has(found.words.slice(0, 6), 'N') || has(found.part('object'), 'E') || isReason(said)) return false;
      if (/^(show|film|post|filming|posting|showing|publish|upload|see|tell|do|doing)$/.test(verb))
        return false;
      return dayIn(said, scene) !== undefined || dayAfter(said, scene) !== undefined;
    },
  ),
  task(
    'I am going to <do> <thing>',
    phrase(
      "^<lead>* (?: i | we ) (?: 'm | 're | am | are ) <adverb>* going to <adverb>* (?<verb> <do> ) (?<object> <any>+ )",
    ),
    (found, said) =>
      !has(found.part('object'), 'E') &&
      !isReason(said) &&
      !/^(show|film|use|post|do|leave|let|call|tell|guess|skip|run|put)$/.test(
        found.part('verb')[0]?.lower ?? '',
      ),
  ),
  task(
    "what I'll do is <do>",
    phrase("^<lead>* what (?: i | we ) (?: 'll | will | 'm going to ) do is (?<verb> <do> ) "),
    () => true,
  ),
  task(
    '<thing> is coming <off>',
    phrase(
      "^<lead>* (?<subject> <plain>{1,8}?) (?: can | could | 're | are | is | 's | 'll | will | <adverb> )+ (?: be )? (?: coming | come | going | go ) (?<back> back )? (?<verb> off | out | in | on | up | down | back ) (?<rest> <any>* )",
    ),
    (found, said, scene) => {
      if (has(found.words, 'N') || has(found.part('subject'), 'J') || has(found.part('subject'), 'E'))
        return false;
      if (/^(i|we|you|he|she)$/.test(found.part('subject')[0]?.lower ?? '')) return false;
      return (
        found.part('back').length > 0 ||
        found.part('verb')[0]?.lower === 'back' ||
        dayIn(said, scene) !== undefined
      );
    },
  ),
  task(
    '<piece of work> is <day>',
    phrase(
      "^<lead>* (?<subject> <plain>{1,6}?) (?: 's | is | are ) (?<when> (?: on | for )? <day> <any>{0,3} )$",
    ),
    (found, said, scene) => {
      const head = found.part('subject').at(-1);
      if (!head || has(found.part('subject'), 'E') || has(found.part('subject'), 'J')) return false;
      const isWork =
        head.classes.includes('B') ||
        /^(coat|coats|one|lift|pour|test|launch|glue-up|half|side|stage)$/.test(head.lower);
      return isWork && dayIn(said, scene) !== undefined;
    },
  ),
  task(
    '<thing> is due its <coat>',
    phrase(
      "^<lead>* (?<subject> <plain>{1,6}?) (?: 's | 're | is | are ) <adverb>* due (?: its | their | her | a | another ) <any>+",
    ),
    (found) => !has(found.part('subject'), 'E'),
  ),
  task(
    '<thing> <from me> by <day>',
    phrase('(?: from | off ) (?: me | us )'),
    (_, said, scene) => dayIn(said, scene) !== undefined || dayAfter(said, scene) !== undefined,
  ),
  task(
    'on the list',
    phrase('on (?: the | my ) (?: shopping | jobs | job | to-do | snag | snagging | todo )? list'),
    (found) => !has(found.words, 'N'),
  ),
  task('<thing> is next', phrase("^<lead>* (?<subject> <plain>{1,6}?) (?: 's | is | are ) next$"), (found) =>
    has(found.part('subject'), 'E') || has(found.part('subject'), 'J') ? false : { weak: true },
  ),
  task(
    'next up is <thing>',
    phrase("^<lead>* (?: next (?: up | job | jobs | thing | on the list )? (?: is | are | 's ) )"),
    (_, said) => (/ (?:video|film|episode|week)\//.test(said.code) ? false : { weak: true }),
  ),
  {
    name: 'job of a list',
    read: (said, scene) => {
      if (scene.unreal.has(said.index) || said.asks) return undefined;
      const found = find(IMPERATIVE, said);
      if (!found || !isOrder(found, said, scene)) return undefined;
      const verb = found.part('verb')[0];
      return draft('task', said, {}, verb ? said.words.indexOf(verb) : firstWord(said));
    },
  },
];

const IMPERATIVE = phrase(
  "^ (?: <lead> | that 's | it 's | still | got to | next | please | maybe | first | second | third | one | two | three | finally | lastly | to )* (?<verb> <do> | get | go | find | ask | see | look | sort ) (?<object> <any>* )",
);

/** Whether a clause that starts with a bare verb is a job and no story told without "I", nor a word to viewers. */
function isOrder(found: Found, said: Said, scene: Scene): boolean {
  const verb = found.part('verb')[0] as Word;
  const object = found.part('object');
  const [next] = object;
  if (!next || (has(object, 'S') && !/ (?:once|before|until|till)\//.test(said.code))) return false;
  if (
    NO_TASK.has(verb.lower) ||
    /^(call|make)$/.test(verb.lower && /^(it|sense)$/.test(next.lower) ? verb.lower : '')
  )
    return false;
  if (has(object.slice(0, 2), 'Q') && !/[TO]/.test(next.classes)) return false;
  const takesObject = /[TOCR]/.test(next.classes) || scene.listed.has(said.index);
  if (!takesObject) {
    const bare = neighbour(scene, said, -1);
    if (!(bare && /^(so|and|then)$/.test(said.opener)) && said.opener !== 'so') return false;
  }
  if (scene.listed.has(said.index)) return true;
  // "So, buy underlayment", "oh, reset the overload", "Order those tomorrow".
  const before = neighbour(scene, said, -1);
  const led =
    /so|then/.test(said.opener) ||
    before?.opener === 'so' ||
    (before !== undefined && before.words.every((word) => word.classes.includes('L')));
  const alone = before === undefined && !verb.classes.includes('b');
  if (!led && !alone) return false;
  return (
    !/^(write|mark|take|give|leave|use|hold|tell|let|do|run|show|work|hit|turn|stop|keep|share|like|watch|support|post|trust|check|meet|pick)$/.test(
      verb.lower,
    ) || dayIn(said, scene) !== undefined
  );
}

/** A day in the next clause, when that is only a scrap ("..., tomorrow ideally"). */
export function dayAfter(said: Said, scene: Scene): string | undefined {
  const next = neighbour(scene, said, 1);
  if (!next || next.opener || next.words.length > 6 || has(next.words, 'S') || has(next.words, 'H'))
    return undefined;
  return dayIn(next, scene);
}

/** "to be sanded", "to come off", "to go in": work said of the thing it is done to. */
function isDoneToThing(verb: Word | undefined, object: readonly Word[]): boolean {
  if (!verb) return false;
  if (verb.lower === 'be') {
    const [first, second] = object.filter(
      (word) => !/^(all|both|re|properly|really|just|also|first|then|now|fully)$/.test(word.lower),
    );
    if (!first?.classes.includes('P') || (first.lower === 'done' && !second)) return first?.lower === 'done';
    return !/^(set|held|kept|made|left|supported|given|run|called|placed|found)$/.test(first.lower);
  }
  if (/^(come|go)$/.test(verb.lower))
    return (
      /^(off|out|in|on|up|back|apart|together)$/.test(object[0]?.lower ?? '') &&
      !/^(to|at|of)$/.test(object[1]?.lower ?? '')
    );
  return false;
}

const HEADER =
  /^(?: [^ ]+)* (?:jobs?|to-do|todo|list|tasks?|snags?|snag-list|do)\/[A-Za-z]*(?: (?:then|now|left|next|tomorrow|today|to|do|are|is|for|this|the|week|weekend|again|so|please)\/[A-Za-z]*)*$/;
const HEADER_WORDS = phrase(
  '(?: jobs | job | to do | to-do | todo | list | tasks | still to do | left to do | things to do )',
);
const STARTS_LIST = phrase("(?: need | have | 've | got | must | ought ) (?: got | still | just )* to ");

/** Numbers of the clauses that stand in a list of jobs: after a heading, or after "I need to ..." in the same breath. */
export function findJobLists(said: readonly Said[]): ReadonlySet<number> {
  const listed = new Set<number>();
  let open = -1;
  for (const clause of said) {
    if (HEADER.test(clause.code) && HEADER_WORDS.test(clause.code) && clause.words.length <= 8) {
      open = clause.sentence;
      continue;
    }
    const before = said[clause.index - 1];
    const startsSentence = !before || before.sentence !== clause.sentence;
    if (open >= 0 && clause.sentence > open + 1) open = -1;
    const imperative = startsWithOrder(clause);
    if (open >= 0 && imperative) {
      listed.add(clause.index);
      if (startsSentence) open = clause.sentence;
    } else if (
      !startsSentence &&
      imperative &&
      before &&
      (listed.has(before.index) || STARTS_LIST.test(before.code)) &&
      clause.words.length > 1
    ) {
      listed.add(clause.index);
    }
  }
  return listed;
}

function startsWithOrder(clause: Said): boolean {
  let k = 0;
  while (k < clause.words.length - 1 && /[L]/.test(clause.words[k]?.classes ?? '')) k++;
  const first = clause.words[k];
  if (!first || (!/[B]/.test(first.classes) && !/^(get|go|find|ask|see|look|sort|do)$/.test(first.lower)))
    return false;
  const next = clause.words[k + 1];
  return !next || !/[SHM]/.test(next.classes);
}
