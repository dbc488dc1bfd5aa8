import { findDates, findLeadTime } from '../dates.ts';
import type {
  ArrivalNote,
  CorrectionNote,
  DecisionNote,
  DoneNote,
  FigureNote,
  MemoNotes,
  ProblemNote,
  PromiseNote,
  ReadContext,
  TaskNote,
  TraceStep,
} from '../notes.ts';
import type { Sentence } from '../sentences.ts';
import { type TakenBack, withoutTakenBack } from '../taken-back.ts';
import { ARRIVAL_RULES } from './arrivals.ts';
import { ARRIVALS_TOLD } from './arrivals-told.ts';
import { withoutDay } from './bare-work.ts';
import { readBreaches } from './breaches.ts';
import { DECISION_RULES } from './decisions.ts';
import { PASSING_DEED_RULES } from './deeds-in-passing.ts';
import { DONE_RULES } from './done.ts';
import { GRAMMAR_RULES } from './done-by-grammar.ts';
import type { Draft, Scene, StatementKind, StatementRule } from './draft.ts';
import { fittedEvidence, weigh } from './evidence/evidence.ts';
import { KINDS } from './evidence/kinds.ts';
import { isBlank, scoreWords, type WordScores } from './evidence/word-scores.ts';
import { ENDS_OWN, FINISHED_RULES, type OpenWork, openWork } from './finished-tasks.ts';
import { readGates } from './gates.ts';
import { withGatesBeside } from './gates-beside.ts';
import { gistOf, waitOf } from './gist.ts';
import { isNamed, itemOf } from './goods-named.ts';
import { findJobLists, JOB_RULES } from './job-lists.ts';
import { withoutLookalikes } from './not-told.ts';
import { rulesByNeed } from './phrase.ts';
import { PROBLEM_RULES } from './problems.ts';
import { CORRECTION_RULES, PROMISE_RULES } from './promises.ts';
import { refine } from './refiners.ts';
import { leadsDay, TASK_RULES } from './tasks.ts';
import { TASKS_BY_GRAMMAR } from './tasks-by-grammar.ts';
import { INTENDED_RULES } from './tasks-intended.ts';
import { PLANNED_RULES } from './tasks-planned.ts';
import { WANTED_RULES } from './things-wanted.ts';
import { findUnreal } from './unreal.ts';
import { WEATHER_JOBS } from './weather-jobs.ts';
import { type Said, wordClauses } from './words.ts';

export type StatementNotes = Omit<MemoNotes, 'figures' | 'records'>;

export interface StatementReading {
  readonly notes: StatementNotes;
  readonly trace: readonly TraceStep[];
}

/** Every kind's rules; within a kind the first that reads a clause has it. */
const RULES: readonly { readonly kind: StatementKind; readonly rules: readonly StatementRule[] }[] = [
  { kind: 'promise', rules: PROMISE_RULES },
  {
    kind: 'task',
    rules: [
      ...JOB_RULES,
      ...WANTED_RULES,
      ...WEATHER_JOBS,
      ...TASK_RULES,
      ...PLANNED_RULES,
      ...TASKS_BY_GRAMMAR,
      ...INTENDED_RULES,
    ],
  },
  { kind: 'decision', rules: DECISION_RULES },
  { kind: 'arrival', rules: [...ARRIVAL_RULES, ...ARRIVALS_TOLD] },
  { kind: 'problem', rules: PROBLEM_RULES },
  { kind: 'done', rules: [...FINISHED_RULES, ...DONE_RULES, ...PASSING_DEED_RULES, ...GRAMMAR_RULES] },
  { kind: 'correction', rules: CORRECTION_RULES },
];

/** By kind, those that may read a clause. */
const RULES_FOR = RULES.map(({ kind, rules }) => ({
  rulesFor: rulesByNeed(rules),
  /** Where evidence keeps the kind; it weighs no corrections. */
  column: kind === 'correction' ? undefined : KINDS.indexOf(kind),
}));

/** Log odds of the words below which no rule of a kind is asked: what it read would hardly stand. */
const SPARED = -5.5;

/** Settles what the rules read; evidence is left out where the rules themselves are looked at. */
export interface Settling {
  readonly evidence?: boolean;
  /** What the next breath takes back: nothing is read from it. */
  readonly takenBack?: readonly TakenBack[];
}

/**
 * Reads what is said about the work in one memo: decisions, tasks, done work, arrivals, problems, promises and
 * corrections, each list in the order of speech. Every quote is a verbatim stretch of `text`. Pure.
 */
export function readStatements(
  text: string,
  sentences: readonly Sentence[],
  context: ReadContext,
  figures: readonly FigureNote[] = [],
  { evidence = true, takenBack = [] }: Settling = {},
): StatementReading {
  const scene = sceneOf(text, sentences, context);
  const scores = evidence ? scoreWords(scene, fittedEvidence().words) : undefined;
  const trace: TraceStep[] = [];
  // Before anything is settled: what was never meant lends no day and no gate to what stands.
  const found = withoutTakenBack(draftsIn(scene, figures, context, scores), takenBack, trace);
  const yielded = new Map<Draft, Draft>();
  const kept = refine(found, scene, trace, yielded);
  const weighed = scores ? weighAll(scene, found, kept, yielded, scores, trace) : kept;
  // Evidence adds what no rule read.
  const meant = withoutTakenBack(weighed, takenBack, trace);
  const drafts = withGatesBeside(withoutLookalikes(meant, scene, trace), scene, trace);
  for (const each of drafts) {
    trace.push({
      stage: 'statements',
      rule: each.rule,
      span: { start: each.start, end: each.end },
      outcome: 'read',
      why: each.kind,
    });
  }
  return { notes: notesFrom(drafts, scene), trace };
}

/**
 * Weighs what stands. Where a reading falls that another one had yielded its clause to ("Stuck it, no screws" is no
 * choice), that one takes its place and is weighed in turn.
 */
function weighAll(
  scene: Scene,
  found: readonly Draft[],
  kept: readonly Draft[],
  yielded: ReadonlyMap<Draft, Draft>,
  scores: WordScores,
  trace: TraceStep[],
): readonly Draft[] {
  const weighed = weigh(scene, found, kept, scores, trace);
  if (yielded.size === 0) return weighed;
  const stands = new Set(weighed);
  const fallen = new Set(kept.filter((each) => !stands.has(each)));
  const back = [...yielded].flatMap(([loser, winner]) =>
    fallen.has(winner) && !weighed.some((each) => each.kind !== 'correction' && touches(each, loser))
      ? [loser]
      : [],
  );
  if (back.length === 0) return weighed;
  return weigh(scene, found, [...kept.filter((each) => !fallen.has(each)), ...back], scores, trace);
}

const touches = (a: Draft, b: Draft) => a.start < b.end && b.start < a.end;

/** What the rules may look at in one memo. */
export function sceneOf(text: string, sentences: readonly Sentence[], context: ReadContext): Scene {
  const said = wordClauses(text, sentences);
  return {
    text,
    said,
    dates: { recordedAt: context.recordedAt, ...(context.region ? { region: context.region } : {}) },
    isAmerican: context.region ? /^(?:US|CA)$/i.test(context.region) : context.units === 'us',
    unreal: findUnreal(said),
    open: (context.openTasks ?? []).map(openWork),
    listed: findJobLists(said),
  };
}

/**
 * What the rules read in one memo, before evidence and refiners have settled which of it stands. With `scores` rules
 * are spared where the words speak clearly against their kind.
 */
export function draftsIn(
  scene: Scene,
  figures: readonly FigureNote[],
  context: ReadContext,
  scores?: WordScores,
): readonly Draft[] {
  const found: Draft[] = [
    ...readGates(scene),
    ...scene.said.flatMap((clause) => readClause(clause, scene, scores)),
  ];
  found.push(...endsOfOwn(found, scene));
  const problems = found.filter((each) => each.kind === 'problem');
  for (const each of readBreaches(scene, figures, context, problems)) found.push({ ...each, measured: true });
  return found;
}

/** "I have to order the glass." and later "Ordered it": deeds that end a task which the memo itself told before. */
function endsOfOwn(found: readonly Draft[], scene: Scene): readonly Draft[] {
  const sentenceOf = ({ to }: Draft) => scene.said[to]?.sentence ?? Number.POSITIVE_INFINITY;
  const tasks = found
    .filter((each) => each.kind === 'task' && !each.weak)
    .sort((one, other) => sentenceOf(one) - sentenceOf(other));
  const coming = clausesOnTheirWay(found);
  const ended: Draft[] = [];
  let open: OpenWork[] = [];
  let next = 0;
  for (const said of scene.said) {
    // Of the tasks told before, the last few: in talk of any length the work for one clause is the same.
    for (let task = tasks[next]; task && sentenceOf(task) < said.sentence; task = tasks[++next])
      open = [...open.slice(1 - NEAR_TASKS), openWork(gistOf(task, scene))];
    if (open.length === 0 || isBlank(said)) continue;
    if (coming.has(said.index) && !said.words.some(({ lower }) => GOT.test(lower))) continue;
    const end = ENDS_OWN.read(said, { ...scene, open });
    if (end) ended.push({ ...end, rule: ENDS_OWN.name });
  }
  return ended;
}
const GOT = /^(?:ordered|bought|booked|rung|rang|phoned|called|paid|picked|fetched|collected|got|hired)$/;

/** "Oil pump wants a new seal. Seal's on order": told as on its way, and by nobody's deed that ends a job. */
function clausesOnTheirWay(found: readonly Draft[]): ReadonlySet<number> {
  const clauses = new Set<number>();
  for (const { kind, received, from, to } of found)
    if (kind === 'arrival' && received !== true) for (let k = from; k <= to; k++) clauses.add(k);
  return clauses;
}

/** So many tasks before it a deed may end: keeps long memos linear. */
const NEAR_TASKS = 6;

function readClause(clause: Said, scene: Scene, scores: WordScores | undefined): readonly Draft[] {
  // Bare numbers and marks between commas state nothing.
  if (isBlank(clause)) return [];
  const drafts: Draft[] = [];
  for (const { rulesFor, column } of RULES_FOR) {
    if (scores && column !== undefined && scores.of(clause.index, column) < SPARED) continue;
    for (const { name, read } of rulesFor(clause)) {
      const found = read(clause, scene);
      if (!found) continue;
      drafts.push({ ...found, rule: name });
      break;
    }
  }
  return drafts;
}

function notesFrom(drafts: readonly Draft[], scene: Scene): StatementNotes {
  const inOrder = [...drafts].sort((a, b) => a.start - b.start || a.end - b.end);
  const of = <Note>(kind: Draft['kind'], make: (draft: Draft) => Note) =>
    inOrder.filter((each) => each.kind === kind).map(make);
  return {
    decisions: of(
      'decision',
      (each): DecisionNote => ({
        kind: 'decision',
        ...common(each, scene),
        ...(each.reason ? { reason: each.reason } : {}),
        ...(each.turnedDown ? { turnedDown: each.turnedDown } : {}),
      }),
    ),
    tasks: of('task', (each): TaskNote => {
      const due = dueOf(each, scene);
      const told = common(each, scene);
      return {
        kind: 'task',
        ...told,
        // Read tomorrow, "tomorrow" is another day.
        ...(due ? { gist: withoutDay(told.gist) } : {}),
        ...(due ? { due } : {}),
        waitsFor: (each.waitsFor ?? []).map(waitOf),
      };
    }),
    done: of('done', (each): DoneNote => ({ kind: 'done', ...common(each, scene) })),
    arrivals: of('arrival', (each): ArrivalNote => {
      const { quote, span } = common(each, scene);
      const expected = each.received ? undefined : expectedOf(each, scene);
      return {
        kind: 'arrival',
        quote,
        span,
        item: itemOf(each, scene),
        received: each.received ?? false,
        ...(expected ? { expected } : {}),
      };
    }).filter(({ item }) => isNamed(item)),
    problems: of(
      'problem',
      (each): ProblemNote => ({
        kind: 'problem',
        ...common(each, scene),
        ...(each.cause ? { cause: each.cause } : {}),
      }),
    ),
    promises: of('promise', (each): PromiseNote => {
      const due = dueOf(each, scene);
      return { kind: 'promise', ...common(each, scene), ...(due ? { due } : {}) };
    }),
    corrections: of('correction', (each): CorrectionNote => ({ kind: 'correction', ...common(each, scene) })),
  };
}

const common = (each: Draft, scene: Scene) => ({
  quote: scene.text.slice(each.start, each.end),
  span: { start: each.start, end: each.end },
  gist: gistOf(each, scene),
});

/** The day that the task's own clauses name; gates and reasons beside it have days of their own. */
function dueOf(each: Draft, scene: Scene): string | undefined {
  const recorded = scene.dates.recordedAt.slice(0, 10);
  for (let k = each.from; k <= lastClause(each, scene); k++) {
    const clause = scene.said[k] as Said;
    if (each.aside?.includes(k)) continue;
    const words = withoutDeed(scene.text.slice(clause.start, clause.end));
    const ahead = findDates(words, scene.dates).find(({ day }) => day >= recorded);
    if (ahead) return ahead.day;
    if (/\b(?:by|till|until|before) then\b/i.test(words)) return dayBefore(k, scene);
  }
  const later = each.dayIn === undefined ? undefined : scene.said[each.dayIn];
  if (!later) return undefined;
  return findDates(scene.text.slice(later.start, later.end), scene.dates).find(({ day }) => day >= recorded)
    ?.day;
}

/** "The bearers I screwed down on Sunday have to move out": the day of the deed is none of the work on what it made. */
function withoutDeed(words: string): string {
  const told =
    /^(?:the|those|these|that|my|our) [^,;.]*? (?:i|we) [^,;.]*? (?=(?:have|has|need|needs|want|wants|must)\b)/i.exec(
      words,
    );
  return told ? words.slice(told[0].length) : words;
}

/** Scraps after the task belong to it: "make a guard, by Sunday", "props need hiring, tomorrow ideally", "before Friday". */
function lastClause(each: Draft, scene: Scene): number {
  const next = scene.said[each.to + 1];
  const here = scene.said[each.to];
  // "Leave it till Friday" names the day that it rests until.
  const holdsUntil = /^(?:till|until)$/.test(next?.opener ?? '');
  if (next && here && next.sentence === here.sentence && !holdsUntil && leadsDay(next, scene))
    return next.index;
  if (
    !next ||
    !here ||
    next.sentence !== here.sentence ||
    next.opener ||
    next.words.length > (next.words[0]?.classes.includes('Q') ? 9 : 6) ||
    scene.listed.has(next.index)
  )
    return each.to;
  return next.words.some((word) => /[SH]/.test(word.classes)) ? each.to : each.to + 1;
}

/** "By then" points back at the last day named. */
function dayBefore(clause: number, scene: Scene): string | undefined {
  for (let k = clause - 1; k >= Math.max(0, clause - 6); k--) {
    const said = scene.said[k] as Said;
    const found = findDates(scene.text.slice(said.start, said.end), scene.dates).at(-1);
    if (found) return found.day;
  }
  return undefined;
}

/** "..., and they said three weeks" */
const TELLS_HOW_LONG =
  /^(?: \S+\/\w*L\w*)* (?:they|he|she|it)\/\w* (?:said|say|says|reckon|reckons|reckoned|quoted|told|takes|will|'ll|'s)\//;

/** Expected day of a delivery: a day named beside it, else the end of its lead time. */
function expectedOf(each: Draft, scene: Scene): string | undefined {
  const sentence = scene.said[each.to]?.sentence;
  const newer = saidNow(each, scene);
  if (newer) return newer;
  let dates = scene.dates;
  for (let k = each.from; k <= each.to + 2; k++) {
    const clause = scene.said[k];
    if (!clause) break;
    // Past its own words: only what goes on in the same sentence.
    const goesOn =
      !clause.opener || /^(?:till|until|by|before)$/.test(clause.opener) || TELLS_HOW_LONG.test(clause.code);
    if (k > each.to && (!goesOn || clause.sentence !== sentence)) break;
    const words = scene.text.slice(clause.start, clause.end);
    const ordered = orderedOn(clause, scene);
    if (ordered) dates = { ...scene.dates, recordedAt: `${ordered}T12:00:00` };
    const day =
      (ordered ? undefined : findDates(words, scene.dates)[0]?.day) ?? findLeadTime(words, dates)?.day;
    if (day && day >= scene.dates.recordedAt.slice(0, 10)) return day;
  }
  return undefined;
}

const NOW_SAYS =
  / now\/\w* (?:they|he|she)\/\w* (?:'re\/\w* |are\/\w* |'s\/\w* |is\/\w* )?(?:say|saying|says|reckon|reckons)\//;

/** "They said this morning, now they're saying Friday": the newer word holds. */
function saidNow(each: Draft, scene: Scene): string | undefined {
  const sentence = scene.said[each.to]?.sentence;
  for (let k = each.from; k <= each.to + 2; k++) {
    const clause = scene.said[k];
    if (!clause || clause.sentence !== sentence || !NOW_SAYS.test(clause.code)) continue;
    return findDates(scene.text.slice(clause.start, clause.end), scene.dates).at(-1)?.day;
  }
  return undefined;
}

/** The day gone by on which goods were ordered, from which their lead time counts: "I ordered 40 of them on Saturday". */
function orderedOn(clause: Said, scene: Scene): string | undefined {
  if (!/ (?:ordered|sent\/\w* (?:off\/\w* )?for)\//.test(clause.code)) return undefined;
  const words = scene.text.slice(clause.start, clause.end);
  const [date] = findDates(words, { ...scene.dates, lean: 'back' });
  // "Ordered for Saturday", "ordered to come on Saturday".
  if (!date || AHEAD.test(words.slice(0, date.start))) return undefined;
  return date.day <= scene.dates.recordedAt.slice(0, 10) ? date.day : undefined;
}
const AHEAD =
  /\b(?:for|by|due|com(?:e|es|ing)|deliver\w*|arriv\w*|here|land\w*|till|until|back|promised|collect\w*)\b(?: \S+){0,3} *$/i;
