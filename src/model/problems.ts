/** Snags: kept open until something done answers them, or a person says that they are put right. */
import type { ArrivalNote, DoneNote, ProblemNote } from '../language/notes.ts';
import { isSameGoods } from './goods.ts';
import { shapeOf, wordsOf } from './names.ts';
import { type RightAgain, rightAgain, subjectOf } from './right-again.ts';
import type { ProblemRow, TaskRow } from './rows.ts';
import { stemOf } from './stems.ts';
import { type Telling, telling } from './telling.ts';
import { areRivalWords } from './telling-words.ts';
import type { Kept, Source } from './views.ts';
import type { Working } from './working.ts';

export function openProblem(work: Working, note: Kept<ProblemNote>): void {
  const { id, gist, cause } = note;
  const source = work.source(note);
  const row = { id, gist, ...(cause === undefined ? {} : { cause }), source, status: 'open' } as const;
  work.draft.put({ table: 'problems', row });
}

/** Ways of doing that put something right. */
const REMEDIES = ['mend', 'swap', 'join'];
/** Said of what is right again, or of what was wrong and is gone. */
const RIGHT_AGAIN =
  /\b(?:fixed|sorted|solved|cured|mended|repaired|replaced|freed|unblocked|unstuck|cleared|sealed|straightened|tightened|re-?done|re-?made|re-?bedded|re-?sealed|re-?wired|re-?laid|re-?glued|re-?cut|re-?built|re-?hung|re-?fitted|re-?welded|re-?set|re-?packed|plugged|patched|stopped|gone|dry|tight|straight|square|right again|works|working|runs|holds|found it|new ones?)\b/i;
/** Told behind the deed, of the same thing: "took it down and relaid it", "spot on now", "no drips since". */
const AND_RIGHT =
  /\b(?:and|then) (?:\w+ )?(?:re-?\w{3,}|fixed|sealed|straightened|tightened|mended|swapped|replaced|patched|sorted|freed|cleared) (?:it|them|that|those)\b|\b(?:spot on|good as new|right as rain|no (?:more )?(?:drips?|leaks?|play|noise|trouble|bother)|(?:dry|fine|solid|sound|sweet|tight|square|true|level|straight|perfect|good|right|quiet|live|ok|okay)(?: as \w+(?: \w+)?)? (?:now|again)|(?:works|working|runs|running|holds|holding|latches|closes|fits|shuts|starts|drains) (?:\w+ )?(?:now|again|fine|properly|sweetly|lovely|perfectly|as quiet)|now (?:it|they) (?:works?|runs?|holds?|fits?)|(?:that|it)(?:'s| has|s) (?:stopped|cured|sorted|fixed|solved|held|holding|tight|dry)\b|\b(?:nipped|tightened|done) (?:it|that|them) up)\b/i;
/** Something put in where the old one failed. */
const NEW = /\b(?:new|another|replacement|spare|different)\b/i;
/** Goods that are late, missing or not the right ones. */
const WANTING =
  /(?:\b|(?=n['’]t))(?:on back ?order|back-?ordered|out of stock|sold out|late|delayed|held up|missing|not (?:come|arrived|here|turned up)|n['’]t (?:come|arrived|here|turned up|shown up|landed)|wrong|chipped|damaged|dented|short|smashed|cracked|scratched|broken)\b/i;

/** What is known of a deed, and how near before it a snag of the same memo may stand. */
interface Remedy {
  readonly note: Kept<DoneNote>;
  readonly deed: Telling;
  readonly isRight: boolean;
  /** Whether it puts a new one in. */
  readonly isNew: boolean;
}

/**
 * Marks the snags that something done in this memo puts right: it names them and says a remedy, or it is the work
 * that was to put them right. `closed` are the tasks that the memo closed. Goods that came end the want of them.
 */
export function solveProblems(work: Working, closed: readonly TaskRow[]): void {
  const { done, arrivals } = work.memo.notes;
  if (work.draft.openProblems().length === 0) return;
  for (const note of done) solveBy(work, remedyOf(work, note));
  for (const told of rightAgain(work.memo.text, work.sentences)) solveByState(work, told);
  for (const task of closed) solveByTask(work, task);
  for (const note of arrivals) if (note.received) solveByGoods(work, note);
}

function remedyOf(work: Working, note: Kept<DoneNote>): Remedy {
  const said = `${note.gist} ${note.quote}`;
  const deed = telling(note.gist, note.quote);
  const { sentence } = work.place(note.span);
  const at = sentence.indexOf(note.quote);
  const behind = at < 0 ? '' : sentence.slice(at + note.quote.length);
  const isRight =
    RIGHT_AGAIN.test(said) ||
    AND_RIGHT.test(`${note.quote}${behind}`) ||
    // "Swapped the tap" is a way of fitting too, and a remedy all the same.
    REMEDIES.some((way) => deed.ways.has(way) && (way === 'swap' || !deed.ways.has('fit')));
  const isFit = deed.ways.has('fit') || /\b(?:in|on)\b/.test(note.gist);
  return { note, deed, isRight, isNew: isFit && (NEW.test(said) || hasCome(work, deed)) };
}

/** "The belt came and I've fitted it": the goods came in the same memo, or were ordered before. */
function hasCome(work: Working, deed: Telling): boolean {
  return work.memo.notes.arrivals.some(
    ({ item, received }) => received && wordsOf(item).some((word) => deed.things.has(stemOf(word))),
  );
}

function solveBy(work: Working, { note, deed, isRight, isNew }: Remedy): void {
  if (!isRight && !isNew) return;
  const named = work.draft
    .openProblems()
    .filter((problem) => isBefore(work, problem, note))
    .map((problem) => ({ problem, shared: sharedWith(deed, problem) }))
    .filter(({ shared }) => shared > 0);
  const last = named.findLast(({ shared }) => shared >= 2) ?? named.at(-1);
  if (!last) return;
  for (const { problem, shared } of named) {
    // One deed may end what was told twice: both of its things are in it.
    if (problem === last.problem || (shared >= 2 && last.shared >= 2 && isRight))
      solve(work, problem, note.id, work.source(note));
  }
}

/** A snag of an earlier memo, or one that the memo itself tells just before the deed. */
function isBefore(work: Working, problem: ProblemRow, note: Kept<DoneNote>): boolean {
  if (problem.source.memoId !== work.memo.id) return true;
  const own = work.memo.notes.problems.find(({ id }) => id === problem.id);
  if (!own || own.span.end > note.span.start) return false;
  return work.sentenceOf(note.span) - work.sentenceOf(own.span) <= 1;
}

/** The work that was told beside a snag, as its remedy, is done. */
function solveByTask(work: Working, task: TaskRow): void {
  const note = work.memo.notes.done.find(({ id }) => id === task.closedById);
  if (!task.mends || !note || !task.closedBy) return;
  const deed = telling(note.gist, note.quote);
  // Ordered, asked for or fetched, it is not put right yet.
  const isErrand = [...deed.ways].some((way) => ERRANDS.has(way));
  if (isErrand && !['fit', ...REMEDIES].some((way) => deed.ways.has(way))) return;
  const problem = work.draft.openProblems().find(({ id }) => id === task.mends);
  if (problem) solve(work, problem, note.id, task.closedBy);
}
const ERRANDS: ReadonlySet<string> = new Set([
  'buy',
  'fetch',
  'ask',
  'pay',
  'think',
  'measure',
  'send',
  'test',
  'show',
]);

/**
 * "The roof's fixed. One bad screw, and it's dry now": a state told of "it" or "everything" ends what was told beside the
 * snag that this memo has just put right, where it is of its kind.
 */
function solveBeside(work: Working, { words, ends, index }: RightAgain): void {
  const cured = work.draft.solvedProblems().filter(({ solvedById }) => {
    const note = work.memo.notes.done.find(({ id }) => id === solvedById);
    return note !== undefined && Math.abs(index - work.sentenceOf(note.span)) <= NEAR_CURE;
  });
  if (cured.length === 0) return;
  for (const problem of work.draft.openProblems()) {
    const isBeside = cured.some((one) => isToldBeside(problem.id, one.id));
    if (isBeside && ends(`${problem.gist} ${problem.source.quote}`))
      solve(work, problem, `${work.memo.id}.now`, work.source({ quote: words }));
  }
}
/** Sentences between a snag put right and the word that all is well. */
const NEAR_CURE = 2;

/** Whether two snags were told one after the other in one memo. */
function isToldBeside(a: string, b: string): boolean {
  const [memoA, at] = a.split('.p');
  const [memoB, other] = b.split('.p');
  return memoA === memoB && Math.abs(Number(at) - Number(other)) === 1;
}

/** What is told to be right again ends the snags of its kind that are told of it. */
function solveByState(work: Working, { words, ends, index, start }: RightAgain): void {
  const subject = subjectOf(words);
  if (/^(?:it|that|they|everything|all|all of it)$/i.test(subject.trim())) {
    solveBeside(work, { words, ends, index, start });
    return;
  }
  const state = telling(subject, '');
  const over = work.draft.openProblems().filter((problem) => {
    if (!ends(`${problem.gist} ${problem.source.quote}`)) return false;
    const own = work.memo.notes.problems.find(({ id }) => id === problem.id);
    if (own && (own.span.end > start || index - work.sentenceOf(own.span) < 1)) return false;
    return isToldOf(state, problem);
  });
  const [only] = over;
  // A state of many things, such as a "floor", ends the one snag that it can mean.
  if (!only || over.length > 1) return;
  const source = work.source({ quote: words });
  solve(work, only, `${work.memo.id}.now`, source);
}

/** Whether a state is told of what a snag is about: all that the state names is named there. */
function isToldOf(state: Telling, problem: ProblemRow): boolean {
  const snag = telling(problem.gist, problem.source.quote);
  if (areRivalWords(state.plain, snag.plain) || state.name.length === 0) return false;
  return state.name.every((stem) => snag.things.has(stem));
}

function solveByGoods(work: Working, note: Kept<ArrivalNote>): void {
  const late = work.draft
    .openProblems()
    .filter(
      ({ source, gist }) =>
        source.memoId !== work.memo.id && WANTING.test(`${gist} ${source.quote}`) && isAbout(gist, note.item),
    );
  for (const problem of late) solve(work, problem, note.id, work.source(note));
}

/** Whether a snag is told of these goods: they stand at its head. */
function isAbout(gist: string, item: string): boolean {
  const [subject = ''] = gist.split(
    /['’]s\b|\b(?:is|are|has|have|had|was|were|came|come|turned|still|haven['’]t|hasn['’]t|isn['’]t|aren['’]t|wasn['’]t)\b/i,
  );
  return subject !== '' && wordsOf(subject).length <= 6 && isSameGoods(item, subject);
}

function solve(work: Working, problem: ProblemRow, by: string, solvedBy: Source): void {
  work.draft.put({ table: 'problems', row: { ...problem, status: 'solved', solvedById: by, solvedBy } });
}

/** Sentences between a snag and the work that puts it right. */
const BESIDE = 1;

/** The snag of this memo that a task is the remedy of: told just before it, or in the same breath, of the same thing. */
export function mendedBy(
  work: Working,
  task: {
    readonly gist: string;
    readonly quote: string;
    readonly span: { readonly start: number; readonly end: number };
  },
): string | undefined {
  if (work.memo.notes.problems.length === 0) return undefined;
  const here = work.sentenceOf(task.span);
  const near = work.memo.notes.problems.filter((note) => {
    const apart = here - work.sentenceOf(note.span);
    return apart >= 0 && apart <= BESIDE && (apart === 0 || note.span.start < task.span.start);
  });
  if (near.length === 0) return undefined;
  const things = telling(task.gist, '').things;
  return near.findLast((note) => {
    const { head } = shapeOf(note.gist);
    const snag = telling(note.gist, note.quote);
    const shared = [...things].filter((stem) => snag.things.has(stem));
    return shared.length > 0 && (shared.length > 1 || things.size <= 2 || shared.includes(stemOf(head)));
  })?.id;
}

/** How many things a deed and a snag share: two, or the one that the deed is done to; else none. */
function sharedWith(deed: Telling, problem: ProblemRow): number {
  const snag = telling(problem.gist, problem.source.quote);
  if (areRivalWords(deed.plain, snag.plain)) return 0;
  const shared = [...deed.things].filter((stem) => snag.things.has(stem));
  if (shared.length >= 2) return shared.length;
  const [only] = shared;
  if (only === undefined || deed.things.size > 2) return 0;
  return deed.things.size === 1 || only === deed.head ? 1 : 0;
}
