// Fits the evidence for statements: npx tsx scripts/fit-evidence.ts [--check] KNOWN.json ... --unseen NEW.talk ...
// Files after --unseen are talk that no rule was written for: only they tell what a rule's reading is worth. The weights
// of words are fitted on all of them and on our own sentences; each memo's clauses are then scored by weights that were
// fitted without its story, and the weights of cues are fitted on those scores. With --check the stories after --unseen
// are left out in turn, and nothing is written.
import { writeFileSync } from 'node:fs';
import { type Candidate, candidatesOf } from '../src/language/statements/evidence/cues.ts';
import type { KindWeights } from '../src/language/statements/evidence/evidence.ts';
import { oddsOf } from '../src/language/statements/evidence/evidence.ts';
import { KINDS, type Kind } from '../src/language/statements/evidence/kinds.ts';
import { type Row, STEP, writeTable } from '../src/language/statements/evidence/table-text.ts';
import type { WordScores } from '../src/language/statements/evidence/word-scores.ts';
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
  return { memo, judged };
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
const f1 = ({ right, said, marked }: Count) => (2 * right) / Math.max(1, said + marked);

type Odds = ReadonlyMap<Candidate, number>;

/** How many statements of a kind stand with these thresholds, and how many of them are marked. */
function countOf(told: readonly Told[], kind: Kind, odds: Odds, drop: number, add: number): Count {
  let [right, said, marked] = [0, 0, 0];
  for (const { memo, judged } of told) {
    const wanted = memo.marks[kind] ?? [];
    const spans = judged
      .filter(({ candidate }) => candidate.kind === kind)
      .filter(({ candidate }) => {
        const own = odds.get(candidate) ?? 0;
        return candidate.draft ? own >= drop : own > add;
      })
      .map(({ candidate }) => candidate.draft ?? (memo.scene.said[candidate.clause] as Mark));
    const used = new Set<Mark>();
    for (const mark of wanted) {
      const hit = spans.find((span) => !used.has(span) && meets(mark, span));
      if (hit) used.add(hit);
    }
    right += used.size;
    said += spans.length;
    marked += wanted.length;
  }
  return { right, said, marked };
}

const GRID = Array.from({ length: 17 }, (_, k) => Math.round((-2.2 + 0.2 * k) * 10) / 10);

/** A statement that no rule read must be near as likely as not: a false one costs trust. */
const LEAST_ADD = -0.2;
/** What a rule read as an arrival must be far from likely to be dropped: an order that is lost is made twice. */
const MOST_DROP: Readonly<Partial<Record<Kind, number>>> = { arrival: -1.6 };
/** Within so much of the best F1 the threshold that changes least is taken. */
const MARGIN = option('margin', 0.004);

/** The thresholds with the best F1, smoothed over their neighbours: a lone peak is chance. */
function thresholds(told: readonly Told[], kind: Kind, odds: Odds): { drop: number; add: number } {
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
    drop = Math.min(...good((threshold) => f1(countOf(told, kind, odds, threshold, add))));
    add = Math.max(LEAST_ADD, ...good((threshold) => f1(countOf(told, kind, odds, drop, threshold))));
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
function check(told: readonly Told[], kind: Kind, odds: Odds): void {
  const unseen = told.filter(({ memo }) => !memo.tuned);
  const sources = [...new Set(unseen.map(({ memo }) => memo.source))];
  const parts = sources.map((source) => {
    const { drop, add } = thresholds(
      unseen.filter(({ memo }) => memo.source !== source),
      kind,
      odds,
    );
    return countOf(
      unseen.filter(({ memo }) => memo.source === source),
      kind,
      odds,
      drop,
      add,
    );
  });
  const sum = (pick: (count: Count) => number) => parts.reduce((total, part) => total + pick(part), 0);
  const all = { right: sum((c) => c.right), said: sum((c) => c.said), marked: sum((c) => c.marked) };
  const rules = countOf(unseen, kind, odds, -99, 99);
  const told1 = (count: Count) =>
    `${f1(count).toFixed(3)} (${count.right} right of ${count.said}, ${count.marked} marked)`;
  console.log(`${kind.padEnd(9)} rules ${told1(rules)}  with evidence ${told1(all)}`);
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

function writeCues(kinds: Readonly<Record<Kind, KindWeights>>): void {
  const sorted = Object.fromEntries(
    KINDS.map((kind) => {
      const { cues, drop, add } = kinds[kind];
      const kept = Object.entries(cues)
        .map(([name, weight]) => [name, Math.round(weight * 100) / 100] as const)
        .filter(([, weight]) => Math.abs(weight) >= 0.03)
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
  check(told, kind, odds);
  loss += lossOf(told, kind, odds) / KINDS.length;
  const fresh = told.filter(({ memo }) => !memo.tuned);
  kinds[kind] = { cues: fitKind(told, kind), ...thresholds(fresh, kind, odds) };
  console.log(`          dropped below ${kinds[kind].drop}, added above ${kinds[kind].add}`);
}
console.log(`mean loss ${loss.toFixed(4)}`);
if (!args.includes('--check')) {
  writeWords(fitWords(casesOf(memos), KINDS.length, WORDS));
  writeCues(kinds);
}
