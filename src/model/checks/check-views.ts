/** Checks as the command line, the screen and the pages show them. Nothing here changes anything. */
import { cautionsFor } from '../cautions.ts';
import { dayOf, type FindingRow, type ProjectRows } from '../rows.ts';
import type { Caution, FindingView, Source } from '../views.ts';
import { checkNamed } from './all-checks.ts';
import type { AskedCheck, CheckRow, CheckRun } from './check-rows.ts';
import { slotOfCheck, subjectOfCheck } from './file-checks.ts';
import { type CheckSettings, type WorkedCheck, workCheck } from './work-check.ts';

/** A standing check with what it comes to now. */
export interface CheckView extends CheckRun {
  readonly id: string;
  /** "panel through opening (aft panel, side hatch)". */
  readonly subject: string;
  readonly note?: string;
  readonly source: Source;
  /** Since when it has been so: ISO 8601. */
  readonly since: string;
  readonly formula: string;
  readonly formulaSource: string;
}

/** Works out what is asked, on the project's figures. Leaves no mark in the project. */
export function workOutCheck(rows: ProjectRows, asked: AskedCheck, settings: CheckSettings): WorkedCheck {
  return workCheck({ reader: rows, ruleOf: (key) => rows.get('names', key) }, asked, settings);
}

/** The checks that stand, in the order in which they were attached; of those that are wanted, where that is said. */
export function checkViews(
  rows: ProjectRows,
  isWanted: (row: CheckRow) => boolean = () => true,
  now?: string,
): readonly CheckView[] {
  const project = rows.get('project', 'project');
  const settings = {
    units: project?.units ?? 'metric',
    ...(project?.region ? { region: project.region } : {}),
  } as const;
  return rows
    .all('checks')
    .filter((row) => row.active && isWanted(row))
    .map((row) => viewOf(rows, row, { ...settings, ...nowOf(row, now) }));
}

/** The time that a check is shown for: the one that is asked for, else that of its last run. */
function nowOf({ last }: CheckRow, now: string | undefined): Pick<CheckSettings, 'now'> {
  const at = now ?? last.asOf;
  return at === undefined ? {} : { now: at };
}

function viewOf(rows: ProjectRows, row: CheckRow, settings: CheckSettings): CheckView {
  const { run } = workOutCheck(rows, row, settings);
  const check = checkNamed(row.check);
  return {
    id: row.id,
    ...run,
    subject: subjectOfCheck(run, row.note),
    ...(row.note === undefined ? {} : { note: row.note }),
    source: row.source,
    since: row.last.since,
    formula: check?.formula ?? '',
    formulaSource: check?.source ?? '',
  };
}

/** What hazards a check touches, by its own words and those of what it reads. */
export function cautionsOfChecks(runs: readonly Pick<CheckRun, 'check' | 'inputs'>[]): readonly Caution[] {
  return cautionsFor(runs.flatMap(wordsOfCheck));
}

/** Words of the hazards that a check is near, by its name. */
export const touchedBy = (check: string): readonly string[] => checkNamed(check)?.touches ?? [];

/** Words by which hazards of a check are found. */
function wordsOfCheck({ check, inputs }: Pick<CheckRun, 'check' | 'inputs'>): readonly string[] {
  return [...touchedBy(check), ...inputs.map(({ expression }) => expression)];
}

/** Words by which hazards of a check that broke are found. */
export function wordsOfFinding(rows: ProjectRows, { checkId, item }: FindingView): readonly string[] {
  const check = checkId === undefined ? undefined : rows.check(checkId)?.check;
  return [...(check === undefined ? [] : touchedBy(check)), item];
}

/** What a day did to the checks. */
export interface ChecksOfDay {
  readonly broke: readonly FindingView[];
  readonly holdAgain: readonly FindingView[];
  /** Those that say nothing since this day: a size they read was taken before a layer or a change. */
  readonly stale?: readonly CheckView[];
}

/** What broke on a date, what holds again since it, and what is to be measured again since it. */
export function checksOfDay(rows: ProjectRows, date: string): ChecksOfDay {
  const isStale = ({ last }: CheckRow) => last.state === 'stale' && dayOf(last.since) === date;
  const found = rows.all('checks').flatMap(({ id }) => rows.where('findings', 'slot', slotOfCheck(id)));
  return {
    broke: found.filter(({ foundAt }) => dayOf(foundAt) === date).map(asView),
    holdAgain: found
      .filter(({ settledBy }) => settledBy?.choice === 'holds-again' && dayOf(settledBy.at) === date)
      .map(asView),
    stale: checkViews(rows, isStale),
  };
}

const asView = ({ slot: _slot, ...finding }: FindingRow): FindingView => finding;
