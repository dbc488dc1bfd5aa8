import { findDates } from '../dates.ts';
import { wordSet } from '../word-table.ts';
import {
  type Draft,
  isReason,
  isSubordinate,
  neighbour,
  phraseRule,
  type Scene,
  type StatementRule,
} from './draft.ts';
import { type Found, phrase } from './phrase.ts';
import { tellsWhichAndSize } from './which-and-size.ts';
import type { Said, Word } from './words.ts';

const has = (words: readonly Word[], letter: string) => words.some((word) => word.classes.includes(letter));

/** Verbs after "need to" that are no work: talk, thought, rest and states. */
const NO_TASK =
  wordSet(`be say admit know have keep think remember tell show wait live laugh like love feel hope thank
  mention confess talk explain apologise apologize eat sleep sit stay stand understand believe see watch want lose
  worry care agree wonder imagine guess breathe drink die stress lie cry hurry share subscribe respect need cost
  come last look match suit reach own seem mean stop hand give take-note let smile brag boast grovel-not squint
  duck stoop use fit clear work`);
/** Errands and thinking work that is a task although no work on a thing. */
const ERRANDS =
  wordSet(`go get ask see find work look sort think decide come figure start begin try carry double-check
  research google visit speak chat talk learn practise practice choose pick ring call remember add chase grab nip pop
  make let have catch sweet-talk persuade convince beg`);

/** "I have to put something right": leads in a correction, which is made as it is said. */
const SETS_RIGHT =
  / (?:put|set|get|make)\/\S* (?:(?:some|any)thing|one\/\S* thing|a\/\S* thing|things|the\/\S* record)\/\S* (?:right|straight)\//;

/** Clauses in which nothing is left to do, whatever their verbs. */
function silent(said: Said, scene: Scene): boolean {
  if (scene.unreal.has(said.index) || said.asks || SETS_RIGHT.test(said.code)) return true;
  return isSubordinate(said) && !/^once|soon as/.test(said.opener);
}

/** A day ahead named in the clause itself. */
export function dayIn(said: Said, scene: Scene): string | undefined {
  const text = scene.text.slice(said.start, said.end);
  const recorded = scene.dates.recordedAt.slice(0, 10);
  return findDates(text, scene.dates).find(({ day }) => day >= recorded)?.day;
}

/** A day in the next clause, when that is only a scrap ("..., tomorrow ideally") or leads a day in. */
export function dayAfter(said: Said, scene: Scene): string | undefined {
  const next = neighbour(scene, said, 1);
  if (!next) return undefined;
  if (leadsDay(next, scene)) return dayIn(next, scene);
  if (next.opener || next.words.length > 8 || has(next.words, 'S') || has(next.words, 'H')) return undefined;
  return dayIn(next, scene);
}

/** So many words may stand behind "before" where a day follows: "before the plasterer comes back on Monday". */
const LONGEST_LEAD = 7;

/**
 * "... before Sunday", "... by the tide on Wednesday": the clause only leads in the day by which the clause before it
 * holds. One that has a job of its own ("before I paint it") names an order of jobs, and no day.
 */
export function leadsDay(said: Said, scene: Scene): boolean {
  return (
    /^(?:before|by|till|until)$/.test(said.opener) &&
    said.words.length <= LONGEST_LEAD &&
    !has(said.words, 'I') &&
    dayIn(said, scene) !== undefined
  );
}

const hasDay = (said: Said, scene: Scene) =>
  dayIn(said, scene) !== undefined || dayAfter(said, scene) !== undefined;

export { hasDay, isTaskVerb, silent as tellsNoTask, subjectOf };

type Guard = (found: Found, said: Said, scene: Scene) => boolean | Partial<Omit<Draft, 'kind' | 'rule'>>;
const task = (name: string, source: string, guard: Guard): StatementRule =>
  phraseRule(
    'task',
    name,
    phrase(source),
    (found, said, scene) =>
      !silent(said, scene) && !tellsWhichAndSize(said, scene) && guard(found, said, scene),
  );

const I_WE = /^(?:i|we|me|us|somebody|someone)$/;

/** Who is to do it: the speaker, somebody, a person, or a thing that has it done to it. */
function subjectOf(found: Found): 'speaker' | 'person' | 'thing' | 'viewer' | 'none' {
  const words = found.part('subject').filter((word) => !word.classes.includes('L'));
  if (words.length === 0) return 'none';
  const last = words.at(-1) as Word;
  if (words.some(({ lower }) => lower === 'you')) return 'viewer';
  if (words.some(({ lower }) => I_WE.test(lower)))
    return I_WE.test(last.lower) || words.length < 5 ? 'speaker' : 'thing';
  if (last.classes.includes('J') && !/^(?:they|people)$/.test(last.lower)) return 'person';
  return 'thing';
}

function isTaskVerb(verb: Word | undefined, next: Word | undefined): boolean {
  if (!verb) return false;
  switch (verb.lower) {
    // "have a price for", "come up with", "clear out", "see about": errands with their own words.
    case 'have':
      return next?.classes.includes('T') ?? false;
    case 'come':
      return /^(?:up|back)$/.test(next?.lower ?? '');
    case 'clear':
    case 'work':
    case 'fit':
      return /^(?:out|up|off|on|the|that|all|away|a|an|my|those|some|new|these|it|them|another)$/.test(
        next?.lower ?? '',
      );
    case 'think':
    case 'look':
    case 'see':
      return /^(?:about|into|up|at|to|if|a)$/.test(next?.lower ?? '');
    // Goods land and turn up; nobody does it.
    case 'land':
    case 'arrive':
    case 'rock':
    case 'appear':
    case 'let':
      return false;
    case 'give':
    case 'hand':
    case 'use':
      return next?.classes.includes('T') ?? false;
    case 'make':
      return !/^(?:sense|do|peace)$/.test(next?.lower ?? '');
    default:
      return (
        !NO_TASK.has(verb.lower) &&
        (verb.classes.includes('B') || ERRANDS.has(verb.lower) || verb.classes === '')
      );
  }
}

const REST_ONLY =
  / (?:rain|sun|weather|luck|help|money|back|knee|knees|hands|arms|brain|body|patience|time|sleep|drink|holiday|beer|brew|cup|nap|hand|minute|moment|break|bath|lie|hug|life|word|haircut|tea|coffee|sit|rest|day|week|pint|hammer-not|sandwich|lottery|wash|shower-not)\//;

/** Nouns that name a piece of work to be had: "wants a coat of oil". */
const SERVICE =
  / (?:coats?|clean|sand|sanding|rub|rubdown|wipe|wash|flush|polish|tidy|service|check|test|trim|tweak|going-over|lick|touch-up|seal|top-up|bleed|rebuild|replacement|skim|repair|patch|weld|bead|squirt|grease|second|third|final|another|new|fresh|bonding|undercoat|primer|adjustment|once-over|inspection|one)\//;

const HAVE_TO =
  "(?: need | needs | have | has | 've | 's | got | ought | 're | 'm | am | are | is | supposed | meant | due | want | wants ) (?: got | just | still | also | only | really | all | both | supposed | meant | due | now | first | then | needed | sat )* to";

const WHOLE = / (?:everything|all|lot)\//;

/** "It all has to come in through the back door": what everything must fit through is a limit, and no job. */
function isPassage(found: Found): boolean {
  const [verb] = found.part('verb');
  if (!verb || !/^(?:go|come|fit|pass|get|squeeze)$/.test(verb.lower)) return false;
  const coded = (words: readonly Word[]) => words.map(({ lower }) => ` ${lower}/`).join('');
  const before = coded(found.words.slice(0, found.words.indexOf(verb)));
  return WHOLE.test(before) && / (?:through|past)\//.test(coded(found.part('object')));
}

/** "I've not glued it yet as I'm waiting on the leather": what holds the job up is told in the same breath. */
function waitedFor(said: Said, scene: Scene): Pick<Draft, 'waitsFor' | 'end'> | undefined {
  const { words } = said;
  const at = words.findIndex(
    ({ lower }, k) => lower === 'waiting' && /^(?:on|for)$/.test(words[k + 1]?.lower ?? ''),
  );
  const gate = at < 0 ? undefined : words[at + 2];
  if (!gate) return undefined;
  let from = at;
  while (from > 1 && !/^(?:as|because|cos|since|while)$/.test(words[from]?.lower ?? '')) from--;
  const last = words[from - 1];
  if (from < 3 || !last) return undefined;
  return { waitsFor: [scene.text.slice(gate.start, said.end)], end: last.end };
}

const OBJECT_OPENS = /^(?:the|that|those|my|our|all|both|up|out|off)$/;
const COMES_BY_ITSELF = /^(?:turn|come|arrive|land|show|be)$/;

export const TASK_RULES: readonly StatementRule[] = [
  task(
    'need to <do>',
    `^<lead>* (?<subject> <any>{0,9}? ) (?: <modal> )? (?: <adverb> | <not> )* (?<have> ${HAVE_TO} ) (?: <adverb> )* (?<verb> <any> ) (?<object> <any>* )`,
    (found, said, scene) => {
      const [verb] = found.part('verb');
      const object = found.part('object');
      const before = found.words.slice(0, found.words.indexOf(verb as Word));
      if (
        has(before, 'N') ||
        before.some(({ lower }) => /^(?:going|used|able|about|like|happy)$/.test(lower))
      )
        return false;
      const who = subjectOf(found);
      if (who === 'viewer' || has(found.part('subject'), 'E')) return false;
      if (isPassage(found)) return false;
      const have = found.part('have').map(({ lower }) => lower);
      // "Eight sheets, supposed to turn up Friday": goods on their way.
      if (who === 'none' && have[0] === 'supposed' && COMES_BY_ITSELF.test(verb?.lower ?? '')) return false;
      if (/^(?:want|wants)$/.test(have[0] ?? '')) {
        // "they want to come back to 2,276"; wanting alone is no plan yet.
        if (who === 'thing') return isDoneToThing(verb, object, said, scene);
        return hasDay(said, scene) && isTaskVerb(verb, object[0]);
      }
      const dutiful = /^(?:'m|am|are|'re|is|'s)$/.test(have[0] ?? '') && have[1] === 'to';
      if (who === 'thing' || (dutiful && who !== 'speaker' && who !== 'person')) {
        return !isReason(said) && isDoneToThing(verb, object, said, scene);
      }
      if (who === 'person' && dutiful)
        return verb?.lower !== 'be' && (verb?.lower === 'have' || isTaskVerb(verb, object[0]));
      if (verb?.lower === 'be')
        return who === 'none' && !isReason(said) && isDoneToThing(verb, object, said, scene);
      return isTaskVerb(verb, object[0]);
    },
  ),
  task(
    'must <do>',
    "^<lead>* (?<subject> <any>{0,5}? ) (?: must | 'd better | had better | better | should ) (?: <adverb> )* (?<verb> <any> ) (?<object> <any>* )",
    (found, said, scene) => {
      const [verb] = found.part('verb');
      const who = subjectOf(found);
      const should = found.words.some(({ lower }) => lower === 'should');
      if (who === 'viewer' || has(found.words.slice(0, 6), 'N') || has(found.part('subject'), 'V'))
        return false;
      // "What I must do", "better than short", "I must make a confession"
      if (found.part('subject')[0]?.lower === 'what' || verb?.lower === 'than') return false;
      if (/ (?:confession|admission|point|note|complaint|apology)\//.test(said.code)) return false;
      if (who === 'thing') return !should && isDoneToThing(verb, found.part('object'), said, scene);
      if (who === 'person' && !hasDay(said, scene)) return false;
      return !/^(?:have|be|get)$/.test(verb?.lower ?? '') || (verb?.lower === 'get' && !should)
        ? isTaskVerb(verb, found.part('object')[0])
        : false;
    },
  ),
  task(
    'remember to <do>',
    '(?: remind me | let me forget | not forget | remember | note to self | make sure | mental note ) (?: to | i | we )? (?: get | have )? (?<verb> <any> ) (?<object> <any>* )',
    (found, said) =>
      !/ (?:promise|you|used)\//.test(said.code) &&
      (isTaskVerb(found.part('verb')[0], found.part('object')[0]) || found.words[0]?.lower === 'note'),
  ),
  task(
    '<thing> wants <doing>',
    '^<lead>* (?<subject> <any>{0,9}? ) (?: <modal> )? <adverb>* (?: want | wants | need | needs | do with | requires | crying out for ) (?: a | an | some | another | good | bit | of | its | their | proper | <adverb> )* (?<verb> <any> )',
    (found) => {
      const who = subjectOf(found);
      const verb = found.part('verb')[0];
      if (who === 'speaker' || who === 'viewer' || has(found.words, 'N') || !verb) return false;
      if (/ing$/.test(verb.lower))
        return !/^(?:being|something|nothing|anything|thing|string|ceiling|bearing|going)$/.test(verb.lower);
      // "The deck needs sanded" is as good in Scotland, Ulster and the Ohio valley.
      return verb.classes.includes('P') && !verb.classes.includes('B') && !/^(?:to)$/.test(verb.lower);
    },
  ),
  task(
    '<thing> wants a <coat>',
    '^<lead>* (?<subject> <any>{0,9}? ) (?: <modal> )? <adverb>* (?: want | wants | need | needs | do with | crying out for | due | owed | takes ) (?: a | an | another | its | their | her | his | some | one more | (?= new | fresh | replacement ) ) (?<object> <any>{1,7} )',
    (found, said) => {
      const who = subjectOf(found);
      const headless = who === 'none' && / (?:wants|needs|with)\//.test(said.code);
      if (
        (who !== 'thing' && !headless) ||
        has(found.words, 'N') ||
        has(found.part('object').slice(0, 3), 'Q')
      )
        return false;
      if (/ takes\//.test(said.code)) return false;
      const code = said.code.slice(said.codeStarts[found.from] ?? 0);
      return / (?:new|fresh|replacement)\//.test(code) || SERVICE.test(code);
    },
  ),
  task(
    'I need <thing>',
    "^<lead>* (?<subject> i | we ) (?: 'll | will | shall | 'm going to | 're going to )? <adverb>* need (?: to get )? (?: (?: a | an | some | more | another | new | two | three | four | the ) | (?= (?: photos | pictures | prices | quotes | samples | measurements | permission ) ) ) (?<object> <any>+ )",
    (found, said) => {
      const object = found.part('object');
      if (
        REST_ONLY.test(said.code) ||
        isReason(said) ||
        (has(object.slice(0, 1), 'Q') && !(object.length === 1 && / another\//.test(said.code))) ||
        has(found.words, 'N')
      )
        return false;
      const the = found.words.some(({ lower }) => lower === 'the');
      // "I need the slate-and-a-halfs counted"
      return !the || (object.at(-1)?.classes.includes('P') ?? false);
    },
  ),
  task(
    'need <thing>',
    '^<lead>* (?: still )? need (?: to get )? (?<object> (?: a | an | some | more | another | new | <number> ) <any>{1,7} )$',
    (found, said) =>
      !REST_ONLY.test(said.code) &&
      // "Need 450 to the bulkhead": how much room there must be.
      !(has(found.part('object').slice(0, 1), 'Q') && has(found.part('object').slice(1, 2), 'R')) &&
      !/ (?:mil|mm|inch|inches|foot|feet|degrees)\//.test(
        found
          .part('object')
          .slice(1, 2)
          .map((word) => ` ${word.lower}/`)
          .join(''),
      ),
  ),
  task(
    '<thing> is the plan',
    "(?<object> <doing> <any>{0,5}? ) (?: 's | is ) the (?: plan | idea | job | next job | next thing )",
    (found) => !has(found.words, 'N'),
  ),
  task(
    'I want <thing> <participle>',
    "^<lead>* (?<subject> i | we ) (?: 'll | will )? <adverb>* (?: want | need ) (?<object> (?: the | that | those | these | this | all | my | it | them ) <any>{0,5}? ) (?<verb> <done> | looked at | seen to | dealt with | out | off | in | on | up | down | gone ) (?<rest> <any>{0,4} )$",
    (found, said) => !isReason(said) && !has(found.words, 'N') && found.part('rest')[0]?.lower !== 'of',
  ),
  task(
    'I owe <thing> <thing>',
    '^<lead>* (?<subject> i | we ) <adverb>* owe (?<object> <any>{1,3}? (?: a | an | another | some | new ) <any>+ )',
    (found) =>
      !has(found.part('object'), 'E') &&
      !has(found.part('object').slice(0, 3), 'J') &&
      !/^(?:you|my)$/.test(found.part('object')[0]?.lower ?? ''),
  ),
  task(
    '<thing> to <do>',
    "(?: there | i | we | that | which | leaving ) (?: 's | is | are | 've | have | 're | leaves | need )? (?: still | yet | just | only | got | me with | us with | me )* (?<object> (?! to | had ) <any>{1,7}? ) (?: still )? to (?: be (?<verb> <done> ) | (?<does> <do> | come | go | get | find ) ) (?<rest> <any>{0,6} )$",
    (found, said) => {
      const verb = (found.part('does')[0] ?? found.part('verb')[0])?.lower ?? '';
      const object = found.part('object');
      const names = found.words[1]?.lower ?? '';
      if (!/^(?:'s|is|are|'ve|have|'re|leaves|need)$/.test(names) && found.words[0]?.lower !== 'leaving')
        return false;
      if (
        has(object, 'N') ||
        has(object, 'V') ||
        has(object, 'M') ||
        (NO_TASK.has(verb) && !/^(?:come|fit)$/.test(verb))
      )
        return false;
      if (
        /^(?:use|hold|work|stand|play|spare|go)$/.test(verb) &&
        !/^(?:on|back|in|off)$/.test(found.part('rest')[0]?.lower ?? '')
      )
        return false;
      if (isReason(said) || / (?:nothing|hard|easy|ready|time|place|room|enough)\//.test(said.code))
        return false;
      return !/^(?:going|about|able|supposed|used|got|meant|need|want|is|it|decided|said|gone|come|trying|like|down|up)$/.test(
        object.at(-1)?.lower ?? '',
      );
    },
  ),
  task(
    '<number> to <do>',
    '^<lead>* (?<object> (?: another | more | <number> | all | just | only | one | the ) (?! to ) <plain>{0,6}? ) (?: still | left )? to (?: be (?<verb> <done> ) | (?<does> <do> | go | come | find | get ) ) (?<rest> <any>{0,5} )$',
    (found, said) => {
      const verb = (found.part('does')[0] ?? found.part('verb')[0])?.lower ?? '';
      if (
        has(found.words, 'N') ||
        / (?:time|hours|minutes|days|weeks|pounds|quid|way|only-way)\//.test(said.code)
      )
        return false;
      if (said.words.length < 4 || (NO_TASK.has(verb) && !/^(?:come|fit)$/.test(verb))) return false;
      const first = found.part('object')[0]?.lower ?? '';
      return (
        first !== 'the' &&
        first !== 'just' &&
        !/^(?:end|two|one|three|part|half|five|fifty)$/.test(found.part('object').at(-1)?.lower ?? '')
      );
    },
  ),
  task(
    'still to <do>',
    '(?: still | yet | left ) (?: to be <done> | to (?<verb> <do> ) | (?: have | has )? not been <done> )',
    (found, said) =>
      said.words.length > 3 &&
      !/ (?:have|has|'ve|'s|got|need)\/\w* (?:still|yet)\//.test(
        said.code.slice(0, said.codeStarts[found.from] ?? 0),
      ) &&
      found.part('verb')[0]?.lower !== 'show' &&
      // "Left to do this week:" is the heading of a list.
      !/^(?: \S+\/\w*L\w*)* left\/\w* to\/\w* do\/\w*(?: (?:this|the|next|week|weekend|today|tomorrow|tonight|month|now|then|still|here)\/\w*)*$/.test(
        said.code,
      ),
  ),
  task(
    "I haven't <participle> <thing> yet",
    "^<lead>* (?: i | we ) (?: <adverb> )* (?: have | 've | did ) (?: still )? not <adverb>* (?: even | actually )* (?<verb> <done> | <do> | touched | started | bought ) (?<object> <any>+ )",
    (_found, said, scene) =>
      / (?:yet|still)\//.test(said.code) &&
      !/ (?:promised|decided|which)\//.test(said.code) &&
      (waitedFor(said, scene) ?? true),
  ),
  task(
    'what is left is <thing>',
    "^<lead>* (?: what 's left | what remains | what is left | all that 's left | all that leaves | that just leaves | that leaves | which just leaves | which leaves | leaving ) (?: is | to do | now | then | me with | us with | just | only )* (?<object> (?: the | a | to | my | those | that | <doing> | <det> ) <any>* )",
    (found, said) => !has(said.words.slice(1), 'Q') && !has(found.words, 'N'),
  ),
  task(
    'that is <day> job',
    "(?: <day> | weekend | week ) 's? <adverb>* (?: job | jobs | problem | task | turn )",
    (_, said) => said.words.length > 2,
  ),
  task(
    "it is <thing>'s turn",
    "'s turn (?: <any> ){0,2} $",
    (_, said, scene) => dayIn(said, scene) !== undefined,
  ),
  task(
    "that's one for <somebody>",
    "(?: that | it | this | which ) (?: 's | is ) (?: one | a job | job | another | something ) for (?: somebody | someone | me | us | <day> | next week | the weekend | <det>? <person> )",
    () => true,
  ),
  task(
    '<day> is a <doing> day',
    "^<lead>* <day> (?: 's | is )? (?: a | an | the )? <plain>{0,2}? (?<verb> <any> ) day",
    (found) => /ing$/.test(found.part('verb')[0]?.lower ?? ''),
  ),
  task(
    '<day> it is <thing>',
    "^<lead>* (?: on )? (?<when> <day>{1,2} | next week | this weekend | first thing ) (?: it 's | it is | 's | is | we 're on to | i 'm on | means ) (?: then | all | for )* (?<object> (?: the | <doing> | back to | on to | a | <plain> ) <any>* )$",
    (found, said, scene) => {
      if (dayIn(said, scene) === undefined && !/ next\//.test(said.code)) return false;
      const object = found.part('object');
      if (has(object, 'N') || has(object, 'E') || has(object, 'D') || has(object, 'Q') || has(object, 'S'))
        return false;
      const [first, second] = object;
      if (/^(?:the|a|back|on)$/.test(first?.lower ?? ''))
        return (
          !/ (?:plan|forecast|day|big|deadline|earliest|inspector)\//.test(said.code) &&
          !has(object, 'J') &&
          second !== undefined
        );
      return (
        (first?.classes.includes('G') ?? false) ||
        (object.length === 1 && /[^s]s$|ing$/.test(first?.lower ?? ''))
      );
    },
  ),
  task(
    'then it is <thing>',
    "^ (?: and | so | after that | then )* (?: it 's | it is | comes | there 's | on to ) (?<object> (?: the | on to | back to ) <any>{1,6} )$",
    (found, said) =>
      /\bthen\b/.test(said.opener) && !has(found.part('object'), 'Q') && !has(found.part('object'), 'E')
        ? { weak: true }
        : false,
  ),
  task(
    'I have a date with <thing>',
    "<day> (?: i | we ) (?: 've | have ) <adverb>* got <any>",
    (found) => !/^to$/.test(found.words.at(-1)?.lower ?? ''),
  ),
  task(
    'the plan is to <do>',
    "(?: plan | next job | next step | next thing | idea | job ) <any>{0,3}? (?: is | 's ) (?: then | now )? to (?<verb> <any> ) (?<object> <any>* )",
    (found, said, scene) =>
      isTaskVerb(found.part('verb')[0], found.part('object')[0]) &&
      (hasDay(said, scene) || !/ idea\//.test(said.code)),
  ),
  task(
    'I will <do> <thing> <day>',
    "^<lead>* (?<when> (?: on )? <day>{0,2} ) (?<front> <plain>{0,5}? ) (?<subject> i | we ) (?: 'll | will | 'm | 're | am | are | shall | can ) (?: be | going to | <adverb> )* (?<verb> <do> | <doing> | go | going | having | getting | do | doing | starting | start ) (?<object> <any>* )",
    (found, said, scene) => {
      const verb = found.part('verb')[0]?.lower ?? '';
      const object = found.part('object');
      if (
        has(found.words.slice(0, 8), 'N') ||
        has(object, 'E') ||
        has(found.part('front'), 'E') ||
        isReason(said)
      )
        return false;
      if (
        /^(?:show|film|post|filming|posting|showing|publish|upload|see|tell|share|expecting|hoping|waiting)$/.test(
          verb,
        )
      )
        return false;
      if (
        /^(?:do|doing)$/.test(verb) &&
        found.part('front').length === 0 &&
        !/^(?:the|that|those|it|them|my)$/.test(object[0]?.lower ?? '')
      )
        return false;
      return hasDay(said, scene);
    },
  ),
  task(
    'so I will <do> <thing>',
    "^<lead>* (?: i | we ) (?: 'll | will ) (?: <adverb> | be )* (?<verb> <do> | <doing> ) (?<object> (?: the | a | an | another | my | that | those | them | it | some | new | both | all | up ) <any>* )",
    (found, said) =>
      /^(?:so|and so|then|and then)$/.test(said.opener) &&
      !has(found.words, 'N') &&
      !has(found.part('object'), 'E') &&
      !/^(?:do|doing|take|show|use|leave|keep|let|call|give|put|say|hold|wait|film|post|tell|stop|get|go|see|run|try|have|pass|pick|share|skip)$/.test(
        found.part('verb')[0]?.lower ?? '',
      ),
  ),
  task(
    'going to <do> <thing>',
    '^<lead>* (?: going to | will | got to | need to | have to ) (?: <adverb> )* (?<verb> <any> ) (?<object> <any>+ )',
    (found, said, scene) =>
      !has(found.words, 'N') &&
      !has(found.part('object'), 'E') &&
      isTaskVerb(found.part('verb')[0], found.part('object')[0]) &&
      (found.part('verb')[0]?.classes.includes('B') ?? false) &&
      (hasDay(said, scene) || /^(?:got|need|have)$/.test(said.words[0]?.lower ?? '')),
  ),
  task(
    '<thing> gets its <coat> <day>',
    '^<lead>* (?<subject> <plain>{1,8}? ) (?: gets | get ) (?: its | their | her | a | another | the ) (?<object> <any>+ )',
    (found, said, scene) =>
      !has(found.part('object'), 'E') && subjectOf(found) === 'thing' && dayIn(said, scene) !== undefined,
  ),
  {
    // "Tomorrow: ridge tiles": a day alone, then the thing.
    name: '<day>: <thing>',
    read: (said, scene) => {
      const before = neighbour(scene, said, -1);
      if (!before || neighbour(scene, before, -1) || silent(said, scene) || said.opener) return undefined;
      if (before.words.length > 3 || !has(before.words, 'D') || dayIn(before, scene) === undefined)
        return undefined;
      // A greeting names today ("Tuesday, drizzle"): only a day that is surely ahead opens a plan.
      if (!/ (?:tomorrow|next)\//.test(before.code)) return undefined;
      if (
        said.words.length > 7 ||
        said.words.some((word) => /[SHMVNED]/.test(word.classes)) ||
        said.words.length < 2
      )
        return undefined;
      return { kind: 'task', from: before.index, to: said.index, start: before.start, end: said.end };
    },
  },
  task(
    'we <do> <thing> <day>',
    '^<lead>* (?: on )? (?<when> <day>{0,2} ) (?: i | we ) <adverb>* (?<verb> <do> ) (?<object> <any>+ )',
    (found, said, scene) => {
      const verb = found.part('verb')[0];
      if (!verb || isReason(said) || has(found.part('object'), 'E') || has(found.words, 'N')) return false;
      if (/^(?:need|have|want|like|use|let|get|show|post|film)$/.test(verb.lower)) return false;
      // "we cut it on Thursday" may be past: only "tomorrow" and "next" settle it.
      if (verb.classes.includes('b')) return / (?:tomorrow|next|tonight)\//.test(said.code);
      return dayIn(said, scene) !== undefined;
    },
  ),
  task(
    'I am going to <do> <thing>',
    "^<lead>* <plain>{0,4}? (?: i | we ) (?: 'm | 're | am | are ) <adverb>* going to <adverb>* (?: have to | need to )? (?<verb> <any> ) (?<object> <any>+ )",
    (found, said) => {
      const verb = found.part('verb')[0];
      if (has(found.part('object'), 'E') || isReason(said) || has(found.words.slice(0, 6), 'N')) return false;
      if (!verb?.classes.includes('B') || !isTaskVerb(verb, found.part('object')[0])) return false;
      if (
        /^(?:show|film|use|post|do|leave|let|call|tell|guess|skip|run|put|get|go|make|have)$/.test(verb.lower)
      )
        return false;
      return { intends: !found.words.some(({ lower }) => /^(?:have|need)$/.test(lower)) };
    },
  ),
  task(
    "I'll have to <do>",
    "(?: i | we | you | somebody ) (?: 'll | will ) (?: <adverb> )* (?: be )? (?: having | have | need ) to (?<verb> <any> ) (?<object> <any>* )",
    (found) => isTaskVerb(found.part('verb')[0], found.part('object')[0]),
  ),
  task(
    "what I'll do is <do>",
    "^<lead>* what (?: i | we ) (?: 'll | will | 'm going to | need to | have to | 've to ) do (?: now | next | then )? is (?<verb> <do> )",
    () => true,
  ),
  task(
    '<thing> will be <participle> <day>',
    "^<lead>* (?<subject> <any>{1,8}? ) (?: 'll be | will be | gets | get | 's getting | is getting | are getting | being ) (?: <adverb> )* (?<verb> <done> ) (?<rest> <any>* )",
    (found, said, scene) => {
      if (has(found.words, 'N') || has(found.part('subject'), 'E') || subjectOf(found) !== 'thing')
        return false;
      if (
        /^(?:filmed|brought|sent|delivered|shipped|posted|uploaded|edited)$/.test(
          found.part('verb')[0]?.lower ?? '',
        ) ||
        / (?:dropped\/\w* (?:off|round|over)|picked\/\w* up)\//.test(said.code)
      )
        return false;
      return dayIn(said, scene) !== undefined;
    },
  ),
  task(
    '<thing> is coming <off>',
    "^<lead>* (?<subject> <plain>{1,8}?) (?: can | could | 're | are | is | 's | 'll | will | have to | got to | <adverb> )* (?: be )? (?: coming | come | comes | going | go | goes ) (?<back> back )? (?<verb> off | out | in | on | up | down | back | together ) (?<rest> <any>* )",
    (found, said, scene) => {
      const subject = found.part('subject');
      const goes = found.words.some(({ lower }) => /^(?:going|go|goes)$/.test(lower));
      // "They're coming out of Melbourne": where goods set out from; what is taken out of a thing has its article.
      const from = found.part('rest');
      if (
        found.part('verb')[0]?.lower === 'out' &&
        from[0]?.lower === 'of' &&
        !/[TOQ]/.test(from[1]?.classes ?? 'T') &&
        /^\p{Lu}/u.test(scene.text.slice(from[1]?.start ?? 0))
      )
        return false;
      // "Blew a tyre coming back from the mill": told of what happened.
      if (/ (?:blew|burst|broke|lost|hit|dropped|got|had|was|were|went)\//.test(said.code)) return false;
      if (has(found.words, 'N') || has(subject, 'J') || has(subject, 'E') || isReason(said)) return false;
      if (/^(?:i|we|you|he)$/.test(subject[0]?.lower ?? '')) return false;
      if (subject[0]?.lower === 'she' && !goes) return false;
      const next = found.part('rest')[0];
      if (
        next?.classes.includes('D') &&
        found.part('verb')[0]?.lower === 'on' &&
        found.part('back').length === 0 &&
        !(goes && /^(?:tonight|tomorrow)$/.test(next.lower))
      )
        return false;
      if (/^(?:the|a|at|by|to)$/.test(next?.lower ?? '') && found.part('verb')[0]?.lower === 'on')
        return false;
      const plans = found.words.some(({ lower }) =>
        /^(?:coming|come|going|can|'ll|will|got|have|goes|comes|go)$/.test(lower),
      );
      const back = found.part('back').length > 0 || found.part('verb')[0]?.lower === 'back';
      if (back && found.words.some(({ lower }) => /^(?:coming|going|got|have|'ll|will)$/.test(lower)))
        return true;
      // "It goes back to the shop": returned, not to what it was.
      const returned = back && goes && next?.lower === 'to' && !has(found.part('rest').slice(1, 3), 'Q');
      if (
        returned &&
        !/ (?:start|beginning|days|time|normal|way|drawing|\w*ties|century|war|board)\//.test(said.code)
      )
        return true;
      return plans && hasDay(said, scene);
    },
  ),
  task(
    '<piece of work> is <day>',
    "^<lead>* (?<subject> <plain>{1,6}?) (?: 's | is | are ) (?<when> (?: on | for | first thing )? <day> <any>{0,3} )$",
    (found, said, scene) => {
      const head = found.part('subject').at(-1);
      if (!head || has(found.part('subject'), 'E') || has(found.part('subject'), 'J')) return false;
      const isWork =
        head.classes.includes('B') ||
        /^(?:coat|coats|one|lift|pour|test|launch|glue-up|half|side|stage|second|third)$/.test(head.lower) ||
        /ing$/.test(head.lower);
      return isWork && dayIn(said, scene) !== undefined && !/^(?:it|that|today|delivery)$/.test(head.lower);
    },
  ),
  task(
    '<thing> is due its <coat>',
    "^<lead>* (?<subject> <plain>{1,6}?) (?: 's | 're | is | are ) <adverb>* due (?: its | their | her | a | another ) <any>+",
    (found) => !has(found.part('subject'), 'E'),
  ),
  task('<thing> <from me> by <day>', '(?: from | off ) (?: me | us )', (_, said, scene) =>
    hasDay(said, scene),
  ),
  task(
    'on the list',
    'on (?: the | my ) (?: shopping | jobs | job | to-do | snag | snagging | todo )? list',
    (found, said) => !has(found.words, 'N') && said.words.length > 4 && !isHeading(said),
  ),
  task(
    '<thing> is next',
    "^<lead>* (?<subject> <plain>{1,6}?) (?: 's | is | are ) (?: up )? next $",
    (found) => (has(found.part('subject'), 'E') || has(found.part('subject'), 'J') ? false : { weak: true }),
  ),
  task(
    'next up is <thing>',
    "^<lead>* (?: the )? (?: next | first | last ) (?: up | job | jobs | thing | task | step | on the list )? <day>? <day>? (?: is | are | 's ) (?<object> <any>+ )",
    (found, said) => {
      if (/ (?:video|film|episode|week|one)\//.test(said.code) || has(found.words, 'E')) return false;
      // "First job's rip the old ply out": work of its own, whatever the next clause orders.
      const [verb, next] = found.part('object');
      return verb && isTaskVerb(verb, next) && OBJECT_OPENS.test(next?.lower ?? '') ? true : { weak: true };
    },
  ),
  task(
    'somebody <do> <thing>',
    '^<lead>* (?: somebody | someone ) (?: please )? (?<verb> <do> | find | get | buy ) (?<object> <any>+ )',
    (found) =>
      !has(found.part('object'), 'E') &&
      !/^(?:call|stop|tell|pass)$/.test(found.part('verb')[0]?.lower ?? ''),
  ),
];

const isHeading = (said: Said) => /^ (?:on|things|jobs)\//.test(said.code) && said.words.length <= 4;

/** "to be sanded", "to come off", "to go in": work said of the thing it is done to. */
const FALLS_BY_ITSELF =
  / (?:price|prices|cost|costs|quote|temperature|moisture|level|levels|tide|water|river|pressure|weight|speed|noise|rain|fever)\//;

function isDoneToThing(verb: Word | undefined, object: readonly Word[], said: Said, scene: Scene): boolean {
  if (!verb) return false;
  const [next, after] = object;
  switch (verb.lower) {
    case 'be': {
      const [first] = object.filter(
        (word) =>
          !/^(?:all|both|re|properly|really|just|also|first|then|now|fully|well|completely)$/.test(
            word.lower,
          ),
      );
      if (!first?.classes.includes('P'))
        return /^(?:done|in|up|down|on|off|out|ready|finished)$/.test(first?.lower ?? '');
      if (first.lower === 'made')
        return / made\/\w* (?:again|new|up|out|from|longer|shorter|wider)\//.test(said.code);
      return !/^(?:set|held|kept|made|left|supported|given|run|called|placed|found|used)$/.test(first.lower);
    }
    case 'come':
    case 'go': {
      if (/^(?:to|at|of|a)$/.test(after?.lower ?? '') && !/^(?:back|down)$/.test(next?.lower ?? ''))
        return false;
      if (next?.lower === 'to') return hasDay(said, scene) || has(object.slice(0, 4), 'J');
      if (/^(?:back|down)$/.test(next?.lower ?? '') && after?.lower === 'to') return true;
      // "The shelf I put up has to come down", where the price has to go down by itself.
      if (verb.lower === 'come' && next?.lower === 'down' && after === undefined)
        return !FALLS_BY_ITSELF.test(said.code);
      return /^(?:off|out|in|on|up|back|apart|together|round|over|under)$/.test(next?.lower ?? '');
    }
    case 'get':
      return next?.classes.includes('P') ?? false;
    // "The bearers I screwed down on Sunday have to move out."
    case 'move':
    case 'shift':
      return /^(?:out|in|up|down|over|back|across|along|forward|forwards|aft|inboard|outboard|apart)$/.test(
        next?.lower ?? '',
      );
    default:
      return false;
  }
}
