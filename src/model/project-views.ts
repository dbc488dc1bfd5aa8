/** Views of the rows: what the command line, the screen and the pages ask for. Nothing here changes anything. */
import { NO_NOTES } from '../language/notes.ts';
import { isFall } from './falls.ts';
import { nameOfSlot } from './formulas.ts';
import { SET_BY_HAND } from './hand-figures.ts';
import { keepNotes } from './keep-notes.ts';
import { nameStems } from './names.ts';
import { reviewsOf } from './replay.ts';
import type {
  ClaimRow,
  FindingRow,
  FormulaRow,
  MemoRow,
  ProblemRow,
  ProjectRows,
  Slot,
  StandingRow,
} from './rows.ts';
import { agree } from './tolerance.ts';
import { difference } from './units.ts';
import type {
  ClaimView,
  ExpectedArrival,
  FindingView,
  LimitView,
  ListedFigure,
  MemoSummary,
  MemoView,
  ProblemView,
  ProjectInfo,
  PromiseView,
  StandingFigure,
  Tolerance,
} from './views.ts';

export function projectInfo(rows: ProjectRows): ProjectInfo {
  const row = rows.get('project', 'project');
  if (!row) return { name: '', units: 'metric', tolerances: {} };
  const { id: _id, ...info } = row;
  return info;
}

export function memoViews(rows: ProjectRows): readonly MemoView[] {
  const findings = new Map<string, FindingRow[]>();
  for (const finding of rows.all('findings'))
    findings.set(finding.memoId, [...(findings.get(finding.memoId) ?? []), finding]);
  return rows.all('memos').map((memo) => viewOfMemo(rows, memo, findings.get(memo.id) ?? []));
}

/** Memos without their words and notes, in the order in which they were taken. */
export function memoSummaries(rows: ProjectRows): readonly MemoSummary[] {
  const findings = new Map<string, FindingRow[]>();
  for (const finding of rows.all('findings'))
    findings.set(finding.memoId, [...(findings.get(finding.memoId) ?? []), finding]);
  return rows.all('memos').map((memo) => summaryOf(memo, findings.get(memo.id) ?? []));
}

/** Those of the last days with talk, at least so many where there are so many; in the order in which they were taken. */
export function latestMemoSummaries(rows: ProjectRows, least: number): readonly MemoSummary[] {
  const memos: MemoRow[] = [];
  for (const day of [...rows.daysWithTalk()].reverse()) {
    memos.push(...rows.where('memos', 'day', day));
    if (memos.length >= least) break;
  }
  const number = ({ id }: MemoRow) => Number(id.slice(1));
  return memos
    .sort((a, b) => number(a) - number(b))
    .map((memo) => summaryOf(memo, rows.where('findings', 'memoId', memo.id)));
}

export function memoView(rows: ProjectRows, id: string): MemoView | undefined {
  const memo = rows.get('memos', id);
  return memo && viewOfMemo(rows, memo, rows.where('findings', 'memoId', id));
}

function viewOfMemo(rows: ProjectRows, memo: MemoRow, findings: readonly FindingRow[]): MemoView {
  return {
    ...summaryOf(memo, findings),
    text: memo.text ?? '',
    notes: keepNotes(memo.id, memo.notes ?? NO_NOTES, memo.utterances, reviewsOf(rows, memo), memo.noteIds),
    ...(memo.utterances ? { utterances: memo.utterances } : {}),
    ...repairsOf(memo),
    ...(memo.isReworded ? { isReworded: true } : {}),
    ...(memo.engine === undefined ? {} : { heard: heardBy(rows, memo, memo.engine) }),
    ...(memo.dropped ? { droppedSpeech: memo.dropped } : {}),
  };
}

/** What was read otherwise than it was heard. Heard anew by another recogniser, the memo may hold other words. */
function repairsOf({ id, text = '', repairs = [] }: MemoRow): Pick<MemoView, 'repairs'> {
  const found = repairs
    .map((one, at) => ({ ...one, id: `${id}.h${at + 1}` }))
    .filter(({ start, end, quote }) => text.slice(start, end) === quote);
  return found.length > 0 ? { repairs: found } : {};
}

function summaryOf(memo: MemoRow, findings: readonly FindingRow[]): MemoSummary {
  return {
    id: memo.id,
    recordedAt: memo.recordedAt,
    recordedAtFrom: memo.recordedAtFrom,
    ...(memo.putRight ? { putRight: memo.putRight } : {}),
    source: memo.source,
    status: memo.notes ? 'read' : 'kept',
    words: memo.text?.match(/\S+/g)?.length ?? 0,
    noteCount: Object.values(memo.notes ?? NO_NOTES).reduce((sum, list) => sum + list.length, 0),
    findingCount: findings.length,
    openFindingCount: findings.filter(({ status }) => status === 'open').length,
  };
}

function heardBy(
  rows: ProjectRows,
  { id, version = 1 }: MemoRow,
  engine: string,
): NonNullable<MemoView['heard']> {
  return { engine, version, of: 1 + rows.where('hearings', 'memoId', id).length };
}

interface FindingFilter {
  readonly status?: 'open' | 'settled';
  readonly memoId?: string;
  readonly slot?: Slot;
}

/** Findings in the order in which they were made. */
export function findingViews(rows: ProjectRows, filter: FindingFilter = {}): readonly FindingView[] {
  return findingRows(rows, filter)
    .filter((finding) => filter.status === undefined || finding.status === filter.status)
    .map((finding) => viewOfFinding(rows, finding));
}

/** The narrowest part of the filter chooses the rows to read. */
function findingRows(rows: ProjectRows, { status, memoId, slot }: FindingFilter): readonly FindingRow[] {
  if (slot !== undefined) return rows.where('findings', 'slot', slot);
  if (memoId !== undefined) return rows.where('findings', 'memoId', memoId);
  return status === undefined ? rows.all('findings') : rows.where('findings', 'status', status);
}

/** A finding without what only the model keeps of it, and with what stands since. */
export function viewOfFinding(rows: ProjectRows, { slot, ...view }: FindingRow): FindingView {
  if (slot === undefined || view.kind !== 'slip' || view.status !== 'open') return view;
  const row = rows.standing(slot);
  const source = row?.claimId === undefined ? undefined : rows.claim(row.claimId)?.source;
  const isTold = [view.was, view.now].some((side) => row && Math.abs(difference(side, row) ?? 1) < 1e-9);
  if (!row || isTold) return view;
  const { value, unit, state } = row;
  return { ...view, standsNow: { value, unit, ...(state ? { state } : {}), ...(source ? { source } : {}) } };
}

/** Standing figures, or those of the things whose names hold every word of `item`. */
export function standingFigures(rows: ProjectRows, item?: string): readonly StandingFigure[] {
  const stems = item === undefined ? [] : nameStems(item);
  return rows
    .all('standing')
    .filter((row) => {
      const known = rows.item(row.itemId);
      if (item === undefined) return true;
      return [known?.name ?? '', ...(known?.aliases ?? [])].some((name) => {
        const words = nameStems(name);
        return stems.every((stem) => words.includes(stem));
      });
    })
    .map((row) => standingFigure(rows, row));
}

/** The figures that stand, as a list shows them: each costs one look-up. */
export function* listedFigures(rows: ProjectRows): Generator<ListedFigure> {
  for (const row of rows.all('standing')) yield listedFigure(rows, row);
}

/** Standing figures that something was said of in these memos, in the order of all of them. */
export function figuresToldIn(rows: ProjectRows, memoIds: readonly string[]): readonly StandingFigure[] {
  const slots = new Set(
    memoIds.flatMap((id) => rows.where('claims', 'memoId', id).map((claim) => claim.slot)),
  );
  return rows
    .all('standing')
    .filter(({ slot }) => slots.has(slot))
    .map((row) => standingFigure(rows, row));
}

/** A standing figure as a list shows it. */
export function listedFigure(
  rows: ProjectRows,
  row: StandingRow,
  claim = row.claimId ? rows.claim(row.claimId) : undefined,
): ListedFigure {
  return {
    item: rows.item(row.itemId)?.name ?? '',
    attribute: row.attribute,
    dimension: row.dimension,
    value: row.value,
    unit: row.unit,
    bound: row.bound,
    ...(row.high === undefined ? {} : { high: row.high }),
    ...(row.state === undefined ? {} : { state: row.state }),
    ...(claim?.each === undefined ? {} : { each: claim.each }),
    status: row.status,
    rule: row.rule,
    ...(claim === undefined ? {} : { source: claim.source }),
  };
}

/** A standing figure with its history and what hangs on it. */
export function standingFigure(rows: ProjectRows, row: StandingRow): StandingFigure {
  const claim = row.claimId ? rows.claim(row.claimId) : undefined;
  const formula = rows.formula(row.slot);
  const { status, rule, source, ...listed } = listedFigure(rows, row, claim);
  return {
    ...listed,
    ...(row.tolerance === undefined ? {} : { tolerance: toleranceView(rows, row.tolerance, formula) }),
    ...(formula === undefined || formula.text === '' ? {} : { formula: formula.text }),
    status,
    rule,
    ...(source === undefined ? {} : { source }),
    history: rows
      .where('claims', 'slot', row.slot)
      .map((claim, at, all) => claimView(rows, claim, agreesWith(claim, row, all.slice(0, at)))),
    dependents: rows.formulasReading(row.slot).map((reading) => {
      const name = rows.item(reading.itemId)?.name ?? '';
      return `${name} ${reading.attribute}`;
    }),
  };
}

function claimView(rows: ProjectRows, claim: ClaimRow, agrees: boolean): ClaimView {
  const {
    itemId,
    memoId: _memoId,
    slot: _slot,
    said: _said,
    dimension: _d,
    formula: _f,
    sizeKind: _s,
    ...rest
  } = claim;
  const status = agrees ? 'agrees' : claim.status;
  return { ...rest, status, item: rows.item(itemId)?.name ?? claim.said };
}

/**
 * Whether a claim that does not stand says the same as the one that does. What a person sets by hand takes the place of
 * all that was said before it, however near.
 */
function agreesWith(claim: ClaimRow, standing: StandingRow, before: readonly ClaimRow[]): boolean {
  const { tolerance, claimId, rule } = standing;
  if (claim.status !== 'superseded' || tolerance === undefined) return false;
  const isAfter = before.some(({ id }) => id === claimId);
  return (isAfter || rule !== SET_BY_HAND) && agree(claim, standing, tolerance) === true;
}

export function limitViews(rows: ProjectRows): readonly LimitView[] {
  return rows
    .all('limits')
    .filter((limit) => limit.active)
    .map((limit) => ({
      id: limit.id,
      item: rows.item(limit.itemId)?.name ?? limit.said,
      attribute: limit.attribute,
      about: limit.about,
      bound: limit.bound,
      value: limit.value,
      ...(limit.high === undefined ? {} : { high: limit.high }),
      unit: limit.unit,
      source: limit.source,
    }));
}

/**
 * A tolerance that comes out of a formula, with the figures that it leaves out: how finely a figure was said is no
 * tolerance of its part, and a fall is reckoned with as it stands. A count is a whole number and has none to leave out.
 */
function toleranceView(rows: ProjectRows, tolerance: Tolerance, formula: FormulaRow | undefined): Tolerance {
  if (tolerance.from !== 'formula' || formula === undefined) return tolerance;
  const leftOut = formula.inputs.flatMap((slot) => {
    const part = rows.standing(slot);
    if (!part || part.dimension === 'count') return [];
    const name = nameOfSlot(rows, slot);
    const isStated = part.tolerance !== undefined && part.tolerance.from !== 'precision';
    return isStated && !isFall(name, part) ? [] : [name];
  });
  return leftOut.length === 0 ? tolerance : { ...tolerance, leftOut };
}

/** Snags in the order in which they were said. */
export function problemViews(rows: ProjectRows): readonly ProblemView[] {
  return rows.all('problems').map(problemView);
}

/** Open snags alone, latest first. */
export function openProblemViews(rows: ProjectRows): readonly ProblemView[] {
  return rows.openProblems().map(problemView).reverse();
}

function problemView({ solvedById: _by, ...view }: ProblemRow): ProblemView {
  return view;
}

export function promiseViews(rows: ProjectRows): readonly PromiseView[] {
  return rows.all('promises');
}

export function arrivalViews(rows: ProjectRows): readonly ExpectedArrival[] {
  return rows.all('arrivals');
}

/** Arrivals that are still to come. */
export function expectedArrivalViews(rows: ProjectRows): readonly ExpectedArrival[] {
  return rows.expectedArrivals();
}

/** Which task each `done` note closed, by the done note's id; a task that was opened again is closed by none. */
export function closings(rows: ProjectRows): ReadonlyMap<string, string> {
  const closed = new Map(rows.all('tasks').map((task) => [task.id, task.closedById]));
  const holds = rows.all('closings').filter((row) => closed.get(row.taskId) === row.id);
  return new Map(holds.map((row) => [row.id, row.taskId]));
}
