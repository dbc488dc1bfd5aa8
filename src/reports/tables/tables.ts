/** Flat tables for spreadsheets and scripts: a record for each figure, claim, task or finding, under the same names. */
import type { FindingView, Source, SourcedQuantity, StandingFigure, TaskView } from '../../model/views.ts';
import { type Cell, writeDelimited } from '../delimited.ts';
import { tapeReading } from '../sheet/length-words.ts';
import { clock, dayOf } from '../source-text.ts';
import { taskDetails } from '../task-list.ts';
import { oneLine } from '../words.ts';

type Columns<Row> = readonly (readonly [name: string, cell: (row: Row) => Cell])[];

/** Where something was said, under names that start alike: `memo`, `said at`, `clip seconds`, `quote`. */
function sourceColumns<Row>(sourceOf: (row: Row) => Source | undefined, before = ''): Columns<Row> {
  return [
    [`${before}memo`, (row) => sourceOf(row)?.memoId],
    [`${before}said at`, (row) => sourceOf(row)?.recordedAt],
    [`${before}clip seconds`, (row) => sourceOf(row)?.startSeconds],
    [`${before}quote`, (row) => sourceOf(row)?.quote],
  ];
}

const FIGURES: Columns<StandingFigure> = [
  ['item', ({ item }) => item],
  ['attribute', ({ attribute }) => attribute],
  ['dimension', ({ dimension }) => dimension],
  ['bound', ({ bound }) => bound],
  ['value', ({ value }) => value],
  ['high', ({ high }) => high],
  ['unit', ({ unit }) => unit],
  ['status', ({ status }) => status],
  ['state', ({ state }) => state],
  ['tolerance', ({ tolerance }) => tolerance?.value],
  ['tolerance unit', ({ tolerance }) => tolerance?.unit],
  ['tolerance from', ({ tolerance }) => tolerance?.from],
  ['nearest sixteenth', (figure) => tapeReading(figure)?.inches],
  ['off by mm', (figure) => tapeReading(figure)?.offMm],
  ['formula', ({ formula }) => formula],
  ['rule', ({ rule }) => rule],
  ...sourceColumns<StandingFigure>(({ source }) => source),
];

type Claim = StandingFigure['history'][number];

const CLAIMS: Columns<Claim> = [
  ['id', ({ id }) => id],
  ['item', ({ item }) => item],
  ['attribute', ({ attribute }) => attribute],
  ['bound', ({ bound }) => bound],
  ['value', ({ value }) => value],
  ['high', ({ high }) => high],
  ['unit', ({ unit }) => unit],
  ['plus or minus', ({ plusMinus }) => plusMinus],
  ['plus or minus unit', ({ plusMinusUnit }) => plusMinusUnit],
  ['status', ({ status }) => status],
  ['state', ({ state }) => state],
  ['condition', ({ condition }) => condition],
  ['measured from', ({ datum }) => datum],
  ...sourceColumns<Claim>(({ source }) => source),
];

/** What a task waits for and what waits for it: its day and its age have columns of their own. */
const whatHolds = ({ due: _due, ...task }: TaskView) => taskDetails({ ...task, carriedDays: 0 }).join('; ');

const TASKS: Columns<TaskView> = [
  ['id', ({ id }) => id],
  ['task', ({ gist }) => gist],
  ['status', ({ status }) => status],
  ['due', ({ due }) => due],
  ['carried days', ({ carriedDays, status }) => (status === 'done' ? undefined : carriedDays)],
  ['waits for', (task) => whatHolds(task)],
  ...sourceColumns<TaskView>(({ source }) => source),
  ['closed on', ({ closedBy }) => closedBy && dayOf(closedBy.recordedAt)],
  ['closed by', ({ closedBy }) => closedBy?.quote],
];

/** One side of a finding; a side without a number has no cells. */
function sideColumns(name: string, sideOf: (finding: FindingView) => SourcedQuantity): Columns<FindingView> {
  return [
    [`${name} value`, (finding) => (sideOf(finding).unit === '' ? undefined : sideOf(finding).value)],
    [`${name} unit`, (finding) => sideOf(finding).unit],
    [`${name} state`, (finding) => sideOf(finding).state],
    ...sourceColumns<FindingView>((finding) => sideOf(finding).source, `${name} `),
  ];
}

const FINDINGS: Columns<FindingView> = [
  ['id', ({ id }) => id],
  ['kind', ({ kind }) => kind],
  ['status', ({ status }) => status],
  ['item', ({ item }) => item],
  ['attribute', ({ attribute }) => attribute],
  ...sideColumns('was', ({ was }) => was),
  ...sideColumns('now', ({ now }) => now),
  ['difference', ({ difference }) => difference?.value],
  ['difference unit', ({ difference }) => difference?.unit],
  ['tolerance', ({ tolerance }) => tolerance?.value],
  ['tolerance unit', ({ tolerance }) => tolerance?.unit],
  ['why', ({ why }) => why],
  ['next', ({ next }) => next],
  ['found at', ({ foundAt }) => clock(foundAt)],
  ['settled by', ({ settledBy }) => settledBy?.choice],
  ['settled on', ({ settledBy }) => settledBy && dayOf(settledBy.at)],
  ['reason', ({ settledBy }) => settledBy?.reason],
];

/** A table as names and records, whatever it is written as. */
export interface Table {
  readonly columns: readonly string[];
  readonly records: readonly (readonly Cell[])[];
}

/** What a division left behind the twelfth figure is no measure. */
const plain = (cell: Cell): Cell => (typeof cell === 'number' ? Number(cell.toPrecision(12)) : cell);

function tableOf<Row>(columns: Columns<Row>, rows: readonly Row[]): Table {
  return {
    columns: columns.map(([name]) => name),
    records: rows.map((row) => columns.map(([, cell]) => plain(cell(row)))),
  };
}

export const figuresTable = (figures: readonly StandingFigure[]): Table => tableOf(FIGURES, figures);
/** Everything that was ever said of a figure, whether it stands or not. */
export const claimsTable = (figures: readonly StandingFigure[]): Table =>
  tableOf(
    CLAIMS,
    figures.flatMap(({ history }) => history),
  );
export const tasksTable = (tasks: readonly TaskView[]): Table => tableOf(TASKS, tasks);
export const findingsTable = (findings: readonly FindingView[]): Table => tableOf(FINDINGS, findings);

/** Returns a table as comma-separated values. */
export function tableAsCsv({ columns, records }: Table): string {
  return writeDelimited([columns, ...records]);
}

/** Returns a table as a JSON list of objects; what is empty is left out. */
export function tableAsJson({ columns, records }: Table): string {
  const objects = records.map((record) =>
    Object.fromEntries(
      record.flatMap((cell, index) => {
        const value = typeof cell === 'string' ? oneLine(cell) : cell;
        return value === undefined || value === '' ? [] : [[columns[index] as string, value]];
      }),
    ),
  );
  return `${JSON.stringify(objects, null, 2)}\n`;
}
