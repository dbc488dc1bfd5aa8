/** Jobs told as a list, as an order to oneself, or as bare things under a heading. */
import { draft, firstWord, isSubordinate, neighbour, type Scene, type StatementRule } from './draft.ts';
import { type Found, find, matches, phrase } from './phrase.ts';
import { dayAfter, dayIn, leadsDay } from './tasks.ts';
import type { Said, Word } from './words.ts';

const has = (words: readonly Word[], letter: string) => words.some((word) => word.classes.includes(letter));

const HEADING = phrase(
  "^<lead>* (?: (?: right | the | my | so | and | a | three | two | four | five | more | few | remaining | other | next | some | this | that 's | here 's | are | big | little | quick | on | just ) )* (?: jobs | job list | job | to do | to-do | to-dos | todo | list | tasks | still to do | left to do | things to do | homework | what 's left | what is left | what 's next | what i (?: 've )? (?: got | have )? (?: left | to do ) <any>{0,9} | things i need <any>{0,4} | what needs doing <any>{0,3} | outstanding | remaining | shopping list | snag list | snags | order of play | plan | punch list | work list ) (?: is | are | then | now | left | next | tomorrow | today | to do | for | this | the | week | weekend | again | so | please | to | do | on | before | <day> | me | my | that )* $",
);
const SHORT_HEADING =
  /^(?: (?:so|right|now|next|on|for|tomorrow|then|and|the|my|this|weekend|week|jobs?|list|plan|monday|tuesday|wednesday|thursday|friday|saturday|sunday|tonight)\/[A-Za-z]*)+$/;
const STARTS_LIST = phrase(
  "(?: need | have | 've | got | must | ought | 'll | will | 'm | am | going | should ) (?: got | still | just | going | then )* (?: to )? <do>",
);
/** "I have to sand the lid ...", "I'll sand it ...", but not "I've sanded it ...". */
const PLAINLY_TO_COME = phrase(
  "(?: (?: need | needs | have | has | 've | got | ought | going | want | supposed | meant ) (?: <adverb> )* to | 'll | will | must | should ) (?: <adverb> | then )* (?: <do> | get | find | go | have | make | ring | order )",
);

const ORDER = '(?<verb> <do> | get | go | find | ask | see | look | sort | have | grab | chase )';
const IMPERATIVE = phrase(
  `^ (?: <lead> | that 's | it 's | still | got to | next | please | maybe | first | second | third | one | two | three | four | finally | lastly | to | oh | also | need to )* ${ORDER} (?<object> <any>* )`,
);

const SIZE_NOUN =
  /^(?:lengths?|widths?|heights?|depths?|thickness|sizes?|ratio|angle|spacing|diameter|radius|gap|clearance|weight)$/;

/** Whether a clause may be an item of a list: an order, or a thing with no verb. */
function isItem(said: Said, open: boolean): boolean {
  // "... rather than send it back": what was not chosen; "before the pintles": which of two comes first.
  if (/\bthan\b|^(?:before|after|until|till)$/.test(said.opener)) return false;
  const k = firstWord(said);
  const first = said.words[k];
  if (!first || /^(?:i|we|you|it|that|there|they|he|she|because|give|let)$/.test(first.lower)) return false;
  if (
    first.classes.includes('B') ||
    /^(?:get|go|find|ask|see|look|sort|do|have|grab|chase|finish|start)$/.test(first.lower)
  ) {
    const next = said.words[k + 1];
    if (/^(?:it|that|me)$/.test(next?.lower ?? '') && /^(?:call|make|say)$/.test(first.lower)) return false;
    // "scarf length six to one": a size of a scarf, although to scarf is work.
    if (next && SIZE_NOUN.test(next.lower)) return false;
    // Outside a heading's reach a noun may look like a verb: "point three high", "top end of it".
    if (
      !open &&
      !/^(?:the|a|an|my|our|that|those|these|this|some|it|them|all|both|up|out|off|in|on|down|another|more|new|one|two|three|four)$/.test(
        next?.lower ?? '',
      )
    ) {
      if (next === undefined || /[R]/.test(next.classes)) return false;
      return /\b(?:and|then)\b/.test(said.opener) || isPlainlyDone(first, next);
    }
    return !next || !/[sHM]/.test(next.classes) || /^(?:her|his)$/.test(next.lower);
  }
  if (!open || said.words.slice(k).some((word) => /[SHMV]/.test(word.classes)) || said.words.length > 8)
    return false;
  // Under a heading an unknown verb or a bare thing is a job as well: "scrape the bottom", "second coat".
  return (
    said.words.length - k >= 2 &&
    !/^(?:um|no|not|by|for|in|at|with|on|of|so)$/.test(first.lower) &&
    !has([first], 'Q') &&
    !has([first], 'D') &&
    !has(said.words, 'N')
  );
}

/** "Call Rita for a price", "order stainless bolts": no noun, and what it is done to. */
const isPlainlyDone = (verb: Word, next: Word) =>
  verb.classes.includes('B') &&
  !/[QP]/.test(next.classes) &&
  !/[SHMVRLJ]/.test(next.classes) &&
  !NOUNS_AS_WELL.test(verb.lower) &&
  !/^(?:of|and|or|for|to|at|by|from|with|more|less|than|like|so)$/.test(next.lower);

/** The clause that a list goes on from: an aside, a time or a size between two items is passed over. */
function listedBefore(said: readonly Said[], clause: Said, listed: ReadonlySet<number>): Said | undefined {
  for (let index = clause.index - 1; index >= Math.max(0, clause.index - 3); index--) {
    const before = said[index];
    if (!before || before.sentence !== clause.sentence) return undefined;
    if (listed.has(index) || !isPassedOver(before)) return before;
  }
  return undefined;
}

const isPassedOver = (clause: Said) =>
  isSubordinate(clause) || !clause.words.some((word) => /[SHMBV]/.test(word.classes));

/**
 * Numbers of the clauses that stand in a list of jobs: under a heading ("jobs, then"), or after "I need to ..." in
 * the same breath.
 */
export function findJobLists(said: readonly Said[]): ReadonlySet<number> {
  const listed = new Set<number>();
  // The sentence in which the open list goes on; -1 when none is open.
  let open = -1;
  for (const clause of said) {
    const before = said[clause.index - 1];
    const startsSentence = !before || before.sentence !== clause.sentence;
    if (clause.words.length <= 14 && matches(HEADING, clause)) {
      open = clause.sentence;
      continue;
    }
    if (open >= 0 && clause.sentence > open + 1) open = -1;
    if (open >= 0 && clause.words.length <= 4 && SHORT_HEADING.test(clause.code)) continue;
    const headed = open >= 0;
    if (headed && isItem(clause, true)) {
      listed.add(clause.index);
      if (startsSentence) open = clause.sentence;
    } else if (headed && !isScrap(clause)) {
      open = -1;
    } else if (
      !headed &&
      !startsSentence &&
      before &&
      clause.words.length > 1 &&
      isItem(clause, false) &&
      goesOn(listedBefore(said, clause, listed), clause, listed)
    ) {
      listed.add(clause.index);
    }
  }
  return listed;
}

/** Whether a list is open at the clause before: an item of it, or the words that begin one. */
function goesOn(before: Said | undefined, clause: Said, listed: ReadonlySet<number>): boolean {
  if (!before) return false;
  if (listed.has(before.index)) return true;
  // "Put", "cut", "fit" may have happened: they are still to come only where the words before leave no doubt.
  return matches(clause.words[0]?.classes.includes('b') ? PLAINLY_TO_COME : STARTS_LIST, before);
}

/** A size, a time or an aside between two items leaves the list open. */
const isScrap = (clause: Said) =>
  !clause.words.some((word) => /[SHM]/.test(word.classes)) ||
  /because|since|so|until|till|once|before|if|which/.test(clause.opener);

const ASIDE_VERBS =
  /^(?:write|mark|take|give|leave|use|hold|tell|let|do|run|show|work|hit|turn|stop|keep|share|like|watch|support|post|trust|check|meet|pick|hang|put|call|see|look|go|have|get|ask|bear|wait|mind|start|come|feel|skip|switch|cue)$/;

/** Orders to oneself and items of lists. */
export const JOB_RULES: readonly StatementRule[] = [
  {
    name: 'job of a list',
    read: (said, scene) => {
      if (!scene.listed.has(said.index) || scene.unreal.has(said.index) || said.asks) return undefined;
      // "Pull the sheaves and grease them": two strokes at one thing are one job.
      if (
        said.opener === 'and' &&
        !said.afterPause &&
        /^(?:it|them)$/.test(said.words[1]?.lower ?? '') &&
        scene.listed.has(said.index - 1)
      )
        return undefined;
      return draft('task', said, {}, firstWord(said));
    },
  },
  {
    name: 'order to oneself',
    read: (said, scene) => {
      if (scene.listed.has(said.index) || scene.unreal.has(said.index) || said.asks) return undefined;
      const verb = orderingVerb(said, scene);
      if (!verb) return undefined;
      return draft(
        'task',
        said,
        isPlainOrder(verb, said, scene) ? { plain: true } : {},
        said.words.indexOf(verb),
      );
    },
  },
];

/** Whether a clause orders something of the speaker: "plane the edges flush". */
export const isOrderToSelf = (said: Said, scene: Scene): boolean => orderingVerb(said, scene) !== undefined;

function orderingVerb(said: Said, scene: Scene): Word | undefined {
  // "Before I glue the tiles" tells when, and is no order.
  if (isSubordinate(said) && /^(?:i|we|you)$/.test(said.words[0]?.lower ?? '')) return undefined;
  const found = find(IMPERATIVE, said);
  return found && isOrder(found, said, scene) ? found.part('verb')[0] : undefined;
}

/** Verbs of work that are nouns as well. */
export const NOUNS_AS_WELL =
  /^(?:part|point|square|quarter|coat|ram|plate|bed|board|frame|panel|ply|floor|roof|rail|rope|core|edge|end|face|fence|gauge|grade|house|joint|joist|key|lap|level|line|log|model|mould|nail|number|pin|pipe|pitch|plug|pocket|pole|post|pot|pump|range|ridge|ring|round|score|scale|seat|set|shelf|shim|shoulder|skin|slab|slate|sleeve|slot|step|stock|string|strip|stud|surface|tile|timber|tool|top|track|trim|truss|tube|turn|wall|water|weight|wheel|wire|wood|half|double|lead)$/;

/** Stages of a trade are named by their rank and a word that is a verb as well. */
const isStage = (said: Said, verb: Word) =>
  /^(?:first|second|third|final|1st|2nd)$/.test(said.words[said.words.indexOf(verb) - 1]?.lower ?? '') &&
  /^(?:fix|coat|cut|pour|pass|lift|fill|sand|skim|dip|wash|prime|glaze|fit|dig|plane|layer)$/.test(
    verb.lower,
  );

/** "Before this wall is closed in, photograph the wiring": the sentence begins with when, of a time to come. */
const isToldWhen = (before: Said | undefined, scene: Scene): boolean =>
  before !== undefined &&
  TIME_TO_COME.test(before.opener) &&
  scene.said[before.index - 1]?.sentence !== before.sentence &&
  before.words.length > 2 &&
  / (?:is|are|'s|'re|has|have|goes|go|gets|get|comes|come|starts|start|kicks|cures|dries|sets|i|we|you)\//.test(
    before.code,
  ) &&
  !/ (?:was|were|had|did|went|came|got)\//.test(before.code);
const TIME_TO_COME = /\b(?:before|once|when|as soon as|soon as|after)\b/;

/**
 * Whether a form is as well one of the past: "cut", "put". "Fit" is past in America alone, and elsewhere only beside words
 * of a time gone by.
 */
const mayBePast = (verb: Word, said: Said, scene: Scene): boolean => {
  if (!verb.classes.includes('b')) return false;
  if (verb.lower !== 'fit' || scene.isAmerican) return true;
  return / (?:yesterday|today\/\S*(?! week)|ago|already|last|earlier|this\/\S* (?:morning|afternoon))(?:\/| |$)/.test(
    said.code.replace(/ from\/\S* today\/\S*/, ''),
  );
};

/**
 * "Fit the stove.", "cut the legs before Friday": the sentence is an order and nothing else, although its verb is spelled
 * like its past.
 */
function isPlainOrder(verb: Word, said: Said, scene: Scene): boolean {
  if (neighbour(scene, said, -1) !== undefined || verb !== said.words[firstWord(said)]) return false;
  const object = said.words.slice(said.words.indexOf(verb) + 1);
  const next = neighbour(scene, said, 1);
  // "Build a boat, they said": others' words, and no order.
  if (next !== undefined && !leadsDay(next, scene)) return false;
  const isThing = PLAIN_THING.test(object[0]?.lower ?? '') && object.length > 1;
  const isNamed = (isThing && verb.classes.includes('b')) || ERRAND.test(verb.lower);
  return (
    (isNamed || matches(RINGS, said)) &&
    object.length <= 9 &&
    !object.some(({ classes }) => /[SHMVIN]/.test(classes))
  );
}
const PLAIN_THING = /^(?:the|a|an|my|our|its|those|these|all|both|another|two|three|four|five|six)$/;
const ERRAND = /^(?:buy|order|fetch|grab|phone|email|book|chase|collect|find)$/;
/** "Call Rita for a price", "ask the yard about the crane" */
const RINGS = phrase(
  '^<lead>* (?: call | ring | phone | email | text | message | ask ) !it !that !this !me !us !you (?: !it <plain> ){1,3}? (?: for | about ) (?: <det> | <plain> !sure ) <any>*',
);
/** "Press the button and it hums", "lift the lid and you'll see it": what comes of it. */
const COMES_OF_IT = /^(?:and|or) ?(?:it|you|they|there|that|she|he)\b/;

/** Whether a clause that starts with a bare verb is a job and no story told without "I", nor a word to viewers. */
function isOrder(found: Found, said: Said, scene: Scene): boolean {
  const verb = found.part('verb')[0] as Word;
  const object = found.part('object');
  const [next] = object;
  if (
    !next ||
    // "Number eight by two inch" names a screw.
    (verb.lower === 'number' && /[Q]/.test(next.classes)) ||
    // "Scrap the second hatch": what there shall not be is chosen.
    /^(?:scrap|ditch|shelve|scratch)$/.test(verb.lower) ||
    (verb.lower === 'tune' && next.lower === 'in') ||
    // "First fix", "second coat by Friday": a stage of the work and no order; "steel should": what is to come.
    isStage(said, verb) ||
    /^(?:should|will|would|might|may|could|must|'ll)$/.test(next.lower) ||
    /^(?:you|me|us)$/.test(next.lower) ||
    (next.lower === 'it' && (dayIn(said, scene) ?? dayAfter(said, scene)) === undefined) ||
    (has(object, 's') && !/ (?:once|before|until|till)\//.test(said.code)) ||
    / (?:says|said|weighs|measures|needs|wants|takes|comes|runs|sits)\//.test(said.code)
  )
    return false;
  const errand = ERRAND.test(verb.lower);
  if (has(object.slice(0, 2), 'Q') && !/[TO]/.test(next.classes) && !(errand && object.length > 1))
    return false;
  const then = neighbour(scene, said, 1);
  if (then && COMES_OF_IT.test(`${then.opener} ${then.words[0]?.lower ?? ''}`)) return false;
  if (/ and\/\S* (?:it|you|they|there)\/| you\/\S* ?$/.test(said.code)) return false;
  if (has(object, 'E') || (verb.lower === 'make' && /^(?:sense|sure|do)$/.test(next.lower))) return false;
  // "So no machine wider than 740": a bound on machines; "so no fuse yet": what is not there.
  const isDenied = said.words[said.words.indexOf(verb) - 1]?.lower === 'no';
  if (
    isDenied &&
    (/^(?:more|less|\w+er|yet|today|either|so|though)$/.test(next.lower) || !/[TOCV]/.test(next.classes))
  )
    return false;
  const before = neighbour(scene, said, -1);
  const led =
    /so|then/.test(said.opener) ||
    before?.opener === 'so' ||
    said.words[0]?.lower === 'that' ||
    before?.words.every((word) => word.classes.includes('L')) === true ||
    isToldWhen(before, scene);
  const isPast = mayBePast(verb, said, scene);
  // A day ahead leaves no doubt: "find that by Sunday".
  const ahead = / (?:by|before|tomorrow|tonight)\//.test(said.code);
  if (dayIn(said, scene) !== undefined && ahead && (!isPast || before === undefined)) return true;
  if (isPast && before === undefined && then && leadsDay(then, scene)) return true;
  // At the head of a sentence a form that may be past tells a story: "cut the legs this morning".
  const alone =
    before === undefined && !isPast && (errand || /[TOC]/.test(next.classes) || matches(RINGS, said));
  if (!led && !alone) return false;
  // "So it's two layers, quarter inch ply inside": many verbs are nouns as well, and then have no thing after them.
  if (!errand && NOUNS_AS_WELL.test(verb.lower) && !/[TO]/.test(next.classes)) return false;
  // "I went ahead and cut the hole": the form may be past, and the words before tell a story.
  if (isPast && /\band\b/.test(said.opener)) return false;
  // "Get that bent up", "have the drum skimmed": somebody or something is to do it.
  if (
    /^(?:get|have)$/.test(verb.lower) &&
    verb === said.words[firstWord(said)] &&
    object.slice(1).some((word) => /[P]/.test(word.classes))
  )
    return true;
  if (matches(RINGS, said)) return true;
  if (ASIDE_VERBS.test(verb.lower)) return dayIn(said, scene) !== undefined;
  return true;
}
