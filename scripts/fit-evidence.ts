// Fits the evidence for statements: npx tsx scripts/fit-evidence.ts [--check] KNOWN.json ... --unseen NEW.talk ...
// Files after --unseen are talk that no rule was written for: only they tell what a rule's reading is worth. The weights
// of words are fitted on all of them and on our own sentences; each memo's clauses are then scored by weights that were
// fitted without its story, and the weights of cues are fitted on those scores. With --check the stories after --unseen
// are left out in turn, and nothing is written.
import { writeFileSync } from 'node:fs';
import type { Draft } from '../src/language/statements/draft.ts';
import { type Candidate, candidatesOf } from '../src/language/statements/evidence/cues.ts';
import { draftOf, type KindWeights, oddsOf } from '../src/language/statements/evidence/evidence.ts';
import { joinAdded } from '../src/language/statements/evidence/join-added.ts';
import { KINDS, type Kind } from '../src/language/statements/evidence/kinds.ts';
import { type Row, STEP, writeTable } from '../src/language/statements/evidence/table-text.ts';
import type { WordScores } from '../src/language/statements/evidence/word-scores.ts';
import { withoutLookalikes } from '../src/language/statements/not-told.ts';
import { refine } from '../src/language/statements/refiners.ts';
import { casesOf, clausesOf, OWN_SENTENCE, overlap } from './evidence/cases.ts';
import { type CueCase, fitCues, fitWords, oddsOfWords, type WordModel } from './evidence/logistic.ts';
import { type Mark, type MarkedMemo, sentenceMemos, storiesFrom } from './evidence/marked.ts';

const args = process.argv.slice(2);
const option = (name: string, fallback: number) =>
  Number(args.find((arg) => arg.startsWith(`--${name}=`))?.split('=')[1] ?? fallback);
const WORDS = { penalty: option('penalty', 4), least: 2, most: option('most', 20_000), rounds: 60 };
const CUE_PENALTY = option('cue-penalty', 3);
/** What a case from talk that rules were tuned on counts: rules look better there than they are. */
const TUNED_WORTH = option('tuned', 0.15);
const FOLDS = 8;

/** A candidate with what the marks say of it. */
interface Judged {
  readonly candidate: Candidate;
  readonly isRight: boolean;
  /** Another reading of what is marked already: neither right nor wrong. */
  readonly isOpen: boolean;
}

interface Told {
  readonly memo: MarkedMemo;
  /** What stands unweighed. */
  readonly settled: readonly Draft[];
  readonly judged: readonly Judged[];
}

const meets = (mark: Mark, other: Mark) =>
  overlap(mark, other) >= 0.5 * Math.min(mark.end - mark.start, other.end - other.start);

/** Word scores of each memo by weights fitted without its source. */
function scoresWithoutOwn(memos: readonly MarkedMemo[]): WordScores[] {
  const cases = casesOf(memos);
  const sources = [...new Set(memos.map(({ source }) => source))];
  const foldOf = new Map(sources.map((source, k) => [source, k % FOLDS]));
  const columns = KINDS.length;
  const scores = memos.map(({ scene }) => new Float64Array(scene.said.length * columns).fill(-9));
  for (let fold = 0; fold < FOLDS; fold++) {
    const model = fitWords(
      cases.filter(({ source }) => foldOf.get(source) !== fold),
      columns,
      WORDS,
    );
    for (const { source, memo, clause, features } of cases)
      if (foldOf.get(source) === fold)
        (scores[memo] as Float64Array).set(oddsOfWords(model, features), clause * columns);
  }
  return scores.map((own) => ({ of: (clause, kind) => own[clause * columns + kind] as number }));
}

/** Says of each candidate whether it is marked. A mark that no kept draft reads stands in the clause that holds most of it. */
function judge(memo: MarkedMemo, scores: WordScores): Told {
  const { scene, found, marks } = memo;
  const kept = refine(found, scene, []);
  const candidates = candidatesOf(scene, found, kept, scores);
  const judged = KINDS.flatMap((kind, k) => {
    const wanted = marks[kind];
    if (!wanted) return [];
    const own = candidates.filter((candidate) => candidate.kind === kind);
    const right = new Set<Candidate>();
    const open = new Set<Candidate>();
    for (const mark of wanted) {
      const read = own.filter(({ draft }) => draft && meets(mark, draft));
      const first = read.find((candidate) => !right.has(candidate) && !open.has(candidate));
      const covered = clausesOf(mark, scene.said).map(({ index }) => index);
      const unread = own.filter(({ draft, clause }) => !draft && covered.includes(clause));
      for (const each of [...read, ...unread]) if (!right.has(each)) open.add(each);
      const best =
        first ??
        unread.sort((a, b) => scores.of(b.clause, k) - scores.of(a.clause, k) || a.clause - b.clause)[0];
      if (!best) continue;
      open.delete(best);
      right.add(best);
    }
    return own.map((candidate) => ({
      candidate,
      isRight: right.has(candidate),
      isOpen: open.has(candidate),
    }));
  });
  const settled = withoutLookalikes(
    kept.filter(({ measured, plain }) => measured || plain),
    scene,
    [],
  );
  return { memo, settled, judged };
}

function fitKind(told: readonly Told[], kind: Kind): Readonly<Record<string, number>> {
  const cases: CueCase[] = told.flatMap(({ memo, judged }) =>
    judged
      .filter(({ candidate, isOpen }) => candidate.kind === kind && !isOpen)
      .map(({ candidate, isRight }) => ({
        cues: candidate.cues,
        isRight,
        worth: memo.tuned ? TUNED_WORTH : 1,
      })),
  );
  return fitCues(cases, CUE_PENALTY);
}

interface Count {
  readonly right: number;
  readonly said: number;
  readonly marked: number;
}
const NOTHING: Count = { right: 0, said: 0, marked: 0 };
const f1 = ({ right, said, marked }: Count) => (2 * right) / Math.max(1, said + marked);
const plus = (a: Count, b: Count): Count => ({
  right: a.right + b.right,
  said: a.said + b.said,
  marked: a.marked + b.marked,
});

type Odds = ReadonlyMap<Candidate, number>;

/** Which of the marks are met, each by a statement of its own, as the scoring of stories has it. */
function countMet(spans: readonly Mark[], wanted: readonly Mark[]): Count {
  const used = new Set<Mark>();
  for (const mark of wanted) {
    const hit = spans.find((span) => !used.has(span) && meets(mark, span));
    if (hit) used.add(hit);
  }
  return { right: used.size, said: spans.length, marked: wanted.length };
}

const GRID = Array.from({ length: 17 }, (_, k) => Math.round((-2.2 + 0.2 * k) * 10) / 10);

/** A statement that no rule read must be near as likely as not: a false one costs trust. */
const LEAST_ADD = -0.2;
/**
 * What a rule read as an arrival or a job must be far from likely to be dropped: an order that is lost is made twice, a
 * job that is lost is not done.
 */
const MOST_DROP: Readonly<Partial<Record<Kind, number>>> = { arrival: -1.6, task: -1.2 };
/** Within so much of the best F1 the threshold that changes least is taken. */
const MARGIN = option('margin', 0.004);

/** Counts for each pair of thresholds: first by that below which drafts are dropped, then by that above which they are added. */
type Table = readonly (readonly Count[])[];
/** Before and behind the grid: nothing is dropped, nothing added. */
const DROPS = [-99, ...GRID];
const ADDS = [...GRID, 99];

/** How many statements of a kind stand in a memo with each pair of thresholds, and how many of them are marked. */
function tableFor({ memo, judged, settled }: Told, kind: Kind, odds: Odds): Table {
  const wanted = memo.marks[kind] ?? [];
  const { scene } = memo;
  const sure = settled.filter((draft) => draft.kind === kind);
  const own = judged
    .filter(({ candidate }) => candidate.kind === kind)
    .map(({ candidate }) => ({
      isRead: candidate.draft !== undefined,
      own: odds.get(candidate) ?? 0,
      draft: draftOf(candidate, scene),
    }))
    .filter(({ draft }) => withoutLookalikes([draft], scene, []).length > 0);
  const read = own.filter(({ isRead }) => isRead);
  const unread = own.filter(({ isRead }) => !isRead);
  return DROPS.map((drop) => {
    const standing = [...sure, ...read.filter((each) => each.own >= drop).map(({ draft }) => draft)];
    return ADDS.map((add) => {
      const added = unread.filter((each) => each.own > add).map(({ draft }) => draft);
      return countMet(joinAdded(standing, added, scene, []), wanted);
    });
  });
}

const EMPTY: Table = DROPS.map(() => ADDS.map(() => NOTHING));
const added = (tables: readonly Table[]): Table =>
  tables.reduce(
    (sum, table) => sum.map((row, d) => row.map((count, a) => plus(count, table[d]?.[a] ?? NOTHING))),
    EMPTY,
  );
const countAt = (table: Table, drop: number, add: number): Count =>
  table[DROPS.indexOf(drop)]?.[ADDS.indexOf(add)] ?? NOTHING;

/** The tables of the unseen stories, by story. */
function tablesOf(told: readonly Told[], kind: Kind, odds: Odds): ReadonlyMap<string, Table> {
  const tables = new Map<string, Table[]>();
  for (const each of told) {
    const { tuned, source } = each.memo;
    if (!tuned) tables.set(source, [...(tables.get(source) ?? []), tableFor(each, kind, odds)]);
  }
  return new Map([...tables].map(([source, own]) => [source, added(own)]));
}

/** The thresholds with the best F1, smoothed over their neighbours: a lone peak is chance. */
function thresholds(table: Table, kind: Kind): { drop: number; add: number } {
  let [drop, add] = [-1, -0.4];
  const good = (at: (threshold: number) => number): readonly number[] => {
    const values = GRID.map(at);
    const smooth = values.map(
      (value, k) => (2 * value + (values[k - 1] ?? value) + (values[k + 1] ?? value)) / 4,
    );
    const enough = Math.max(...smooth) - MARGIN;
    return GRID.filter((_, k) => (smooth[k] as number) >= enough);
  };
  for (let turn = 0; turn < 2; turn++) {
    drop = Math.min(...good((threshold) => f1(countAt(table, threshold, add))));
    add = Math.max(LEAST_ADD, ...good((threshold) => f1(countAt(table, drop, threshold))));
  }
  return { drop: Math.min(drop, MOST_DROP[kind] ?? drop), add };
}

/** Odds of every candidate of the unseen stories, by cues fitted without its story. */
function oddsWithoutOwn(told: readonly Told[], kind: Kind): Map<Candidate, number> {
  const sources = [...new Set(told.filter(({ memo }) => !memo.tuned).map(({ memo }) => memo.source))];
  const odds = new Map<Candidate, number>();
  for (let fold = 0; fold < FOLDS; fold++) {
    const isOut = ({ memo }: Told) => sources.indexOf(memo.source) % FOLDS === fold;
    const weights = fitKind(
      told.filter((each) => !isOut(each)),
      kind,
    );
    for (const each of told.filter(isOut))
      for (const { candidate } of each.judged)
        if (candidate.kind === kind) odds.set(candidate, oddsOf(candidate, weights));
  }
  return odds;
}

/** Prints what the rules read and what stands after the evidence, thresholds chosen without the story that is counted. */
function check(tables: ReadonlyMap<string, Table>, kind: Kind): void {
  let [all, rules] = [NOTHING, NOTHING];
  for (const [source, table] of tables) {
    const others = [...tables].filter(([other]) => other !== source).map(([, own]) => own);
    const { drop, add } = thresholds(added(others), kind);
    all = plus(all, countAt(table, drop, add));
    rules = plus(rules, countAt(table, -99, 99));
  }
  const told = (count: Count) =>
    `${f1(count).toFixed(3)} (${count.right} right of ${count.said}, ${count.marked} marked)`;
  console.log(`${kind.padEnd(9)} rules ${told(rules)}  with evidence ${told(all)}`);
}

function lossOf(told: readonly Told[], kind: Kind, odds: Odds): number {
  let [loss, n] = [0, 0];
  for (const { judged } of told)
    for (const { candidate, isRight, isOpen } of judged) {
      const own = odds.get(candidate);
      if (candidate.kind !== kind || isOpen || own === undefined) continue;
      loss += Math.log(1 + Math.exp(isRight ? -own : own));
      n += isRight ? 1 : 0;
    }
  return loss / Math.max(1, n);
}

function writeWords(model: WordModel): void {
  const { columns, weights, bias } = model;
  const rows: Row[] = [...model.rows]
    .map(([feature, row]): Row => [feature, [...weights.subarray(row * columns, (row + 1) * columns)]])
    .filter(([feature]) => feature !== OWN_SENTENCE)
    .filter(([, own]) => own.some((weight) => Math.abs(weight) >= STEP / 2));
  const text = writeTable(rows);
  const wrapped = text.match(/.{1,110}/g)?.join('\\\n') ?? '';
  writeFileSync(
    'src/language/statements/evidence/word-table.ts',
    `/** What each feature of \`features.ts\` weighs. Written by scripts/fit-evidence.ts; do not edit by hand. */\nexport const WORD_BIAS: readonly number[] = [${[...bias].map((b) => b.toFixed(2)).join(', ')}];\nexport const WORD_TABLE = \`\\\n${wrapped}\`;\n`,
  );
  console.log(`${rows.length} features of words, ${text.length} letters`);
}

/** Cues that weigh less are left out: together they change next to nothing. */
const LEAST_CUE = 0.05;

function writeCues(kinds: Readonly<Record<Kind, KindWeights>>): void {
  const sorted = Object.fromEntries(
    KINDS.map((kind) => {
      const { cues, drop, add } = kinds[kind];
      const kept = Object.entries(cues)
        .map(([name, weight]) => [name, Math.round(weight * 100) / 100] as const)
        .filter(([, weight]) => Math.abs(weight) >= LEAST_CUE)
        .sort(([a], [b]) => (a < b ? -1 : 1));
      return [kind, { cues: Object.fromEntries(kept), drop, add }];
    }),
  );
  writeFileSync(
    'src/language/statements/evidence/cue-weights.ts',
    `/** What each cue of \`cues.ts\` weighs for each kind. Written by scripts/fit-evidence.ts; do not edit by hand. */\nimport type { KindWeights } from './evidence.ts';\nimport type { Kind } from './kinds.ts';\n\nexport const CUE_WEIGHTS: Readonly<Record<Kind, KindWeights>> = ${JSON.stringify(sorted, null, 2)};\n`,
  );
}

const isFile = (arg: string) => !arg.startsWith('--');
const split = args.indexOf('--unseen');
const known = args.slice(0, split < 0 ? undefined : split).filter(isFile);
const unseen = split < 0 ? [] : args.slice(split).filter(isFile);
const memos = [...storiesFrom(known, true), ...storiesFrom(unseen, false), ...sentenceMemos()];
const scores = scoresWithoutOwn(memos);
// Our own sentences teach words; what is read in them says nothing of stories.
const told = memos
  .map((memo, k) => judge(memo, scores[k] as WordScores))
  .filter(({ memo }) => !memo.isSentence);
const kinds = {} as Record<Kind, KindWeights>;
let loss = 0;
for (const kind of KINDS) {
  const odds = oddsWithoutOwn(told, kind);
  const tables = tablesOf(told, kind, odds);
  check(tables, kind);
  loss += lossOf(told, kind, odds) / KINDS.length;
  kinds[kind] = { cues: fitKind(told, kind), ...thresholds(added([...tables.values()]), kind) };
  console.log(`          dropped below ${kinds[kind].drop}, added above ${kinds[kind].add}`);
}
console.log(`mean loss ${loss.toFixed(4)}`);
if (!args.includes('--check')) {
  writeWords(fitWords(casesOf(memos), KINDS.length, WORDS));
  writeCues(kinds);
}
