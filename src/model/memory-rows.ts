import type { Dimension } from '../language/notes.ts';
import { type CheckRow, checkKeys } from './checks/check-rows.ts';
import { ItemIndex } from './item-index.ts';
import type { RecordKind, RecordOf, RecordRow } from './kept/record-rows.ts';
import { OpenTasks } from './open-tasks.ts';
import { isQuestion } from './questions.ts';
import { type Entry, RowIndex } from './row-index.ts';
import type {
  ActRow,
  ArrivalRow,
  AskedBy,
  ClaimRow,
  FindingRow,
  FormulaRow,
  ItemRow,
  LimitRow,
  MemoRow,
  ModelChange,
  ModelRows,
  NameRow,
  ProblemRow,
  ProjectRows,
  PromiseRow,
  Slot,
  StandingRow,
  TableName,
  TaskRow,
} from './rows.ts';
import { dayOf, isFoundation, keyOf } from './rows.ts';

type AnyRow = ModelRows[TableName];

/** A row as it was before an event changed it. */
export interface Before {
  readonly seq: number;
  readonly table: TableName;
  readonly key: string;
  readonly row: AnyRow;
}

/** The model's rows in memory, found by the same questions as those on disk, and as quickly. */
export class MemoryRows implements ProjectRows {
  readonly #tables = new Map<TableName, Map<string, Entry<AnyRow>>>();
  readonly #lastOrd = new Map<TableName, number>();
  readonly #items = new ItemIndex();
  readonly #claims = new RowIndex<ClaimRow>(({ itemId }) => [itemId]);
  readonly #standing = new RowIndex<StandingRow>(({ itemId }) => [itemId]);
  readonly #standingIn = new RowIndex<StandingRow>(({ dimension }) => [dimension]);
  readonly #limits = new RowIndex<LimitRow>(({ active, dimension }) => (active ? [dimension] : []));
  readonly #formulas = new RowIndex<FormulaRow>(({ inputs }) => [...new Set(inputs)]);
  readonly #openTasks = new OpenTasks();
  readonly #problems = new RowIndex<ProblemRow>(({ status }) => [status]);
  readonly #promises = new RowIndex<PromiseRow>(({ status }) => [status]);
  readonly #arrivals = new RowIndex<ArrivalRow>(({ status }) => [status]);
  readonly #acts = new RowIndex<ActRow>(({ words }) => [...new Set(words)]);
  readonly #findings = new RowIndex<FindingRow>(({ slot, status }) =>
    slot !== undefined && status === 'open' ? [slot] : [],
  );
  readonly #records = new RowIndex<RecordRow>(({ kind }) => [kind]);
  readonly #checks = new RowIndex<CheckRow>(checkKeys);
  readonly #indexes = {
    claims: [this.#claims],
    standing: [this.#standing, this.#standingIn],
    limits: [this.#limits],
    formulas: [this.#formulas],
    problems: [this.#problems],
    promises: [this.#promises],
    arrivals: [this.#arrivals],
    acts: [this.#acts],
    findings: [this.#findings],
    records: [this.#records],
    checks: [this.#checks],
  } as unknown as Readonly<Partial<Record<TableName, readonly RowIndex<AnyRow>[]>>>;
  #seq = 0;
  readonly #asked = new Map<string, number>();
  /** Rows that the event at hand changed already. */
  readonly #changedNow = new Set<Entry<AnyRow>>();
  readonly #before: Before[] = [];
  readonly #touched = new Set<Entry<AnyRow>>();

  /** Says which event the changes that follow come from, by its place in the log. */
  begin(seq: number): void {
    this.#seq = seq;
    this.#changedNow.clear();
  }

  all<T extends TableName>(table: T): readonly ModelRows[T][] {
    return [...this.#table(table).values()].map(({ row }) => row as ModelRows[T]);
  }
  get<T extends TableName>(table: T, key: string): ModelRows[T] | undefined {
    return this.#table(table).get(key)?.row as ModelRows[T] | undefined;
  }
  where<T extends keyof AskedBy>(table: T, column: AskedBy[T], value: string): readonly ModelRows[T][] {
    return this.all(table).filter((row) => columnOf(row, column) === value);
  }
  daysWithTalk(): readonly string[] {
    return [...new Set(this.all('memos').map(({ recordedAt }) => dayOf(recordedAt)))].sort();
  }
  questions(limit: number): readonly FindingRow[] {
    const asked = this.all('findings').filter(isQuestion);
    return asked.sort((a, b) => b.cost - a.cost).slice(0, limit);
  }
  nameRule(key: string): NameRow | undefined {
    if (!this.#asked.has(key)) this.#asked.set(key, this.#seq);
    return this.get('names', key);
  }
  item(id: string): ItemRow | undefined {
    return this.get('items', id);
  }
  itemsSharing(stems: readonly string[]): readonly ItemRow[] {
    return this.#items.sharing(stems);
  }
  itemsLike(stems: readonly string[]): readonly ItemRow[] {
    return this.#items.like(stems);
  }
  itemsNamed(name: string): readonly ItemRow[] {
    return this.#items.named(name);
  }
  itemsNear(stems: readonly string[], limit: number): readonly ItemRow[] {
    return this.#items.near(stems, limit);
  }
  itemCount(): number {
    return this.#table('items').size;
  }
  claim(id: string): ClaimRow | undefined {
    return this.get('claims', id);
  }
  claimsOf(itemId: string): readonly ClaimRow[] {
    return this.#claims.find(itemId);
  }
  standing(slot: Slot): StandingRow | undefined {
    return this.get('standing', slot);
  }
  standingOf(itemId: string): readonly StandingRow[] {
    return this.#standing.find(itemId);
  }
  standingIn(dimension: Dimension): readonly StandingRow[] {
    return this.#standingIn.find(dimension);
  }
  latestIn(dimension: Dimension, limit: number): readonly StandingRow[] {
    return this.#standingIn.latest(dimension, limit);
  }
  limitsIn(dimension: Dimension): readonly LimitRow[] {
    return this.#limits.find(dimension);
  }
  formula(slot: Slot): FormulaRow | undefined {
    return this.get('formulas', slot);
  }
  formulasReading(slot: Slot): readonly FormulaRow[] {
    return this.#formulas.find(slot);
  }
  openTasks(): readonly TaskRow[] {
    return this.#openTasks.all();
  }
  openTasksSharing(stems: readonly string[]): readonly TaskRow[] {
    return this.#openTasks.sharing(stems);
  }
  gatedTasks(): readonly TaskRow[] {
    return this.#openTasks.gated();
  }
  measuringTasks(): readonly TaskRow[] {
    return this.#openTasks.measuring();
  }
  openProblems(): readonly ProblemRow[] {
    return this.#problems.find('open');
  }
  openPromises(): readonly PromiseRow[] {
    return this.#promises.find('open');
  }
  expectedArrivals(): readonly ArrivalRow[] {
    return this.#arrivals.find('expected');
  }
  actsNaming(head: string, stems: readonly string[], least: number): readonly ActRow[] {
    const others = stems.filter((stem) => stem !== head);
    return this.#acts.findWith(head, others, others.length < stems.length ? least - 1 : least);
  }
  findingsOn(slot: Slot): readonly FindingRow[] {
    return this.#findings.find(slot);
  }
  records<K extends RecordKind>(kind: K): readonly RecordOf<K>[] {
    return this.#records.find(kind) as readonly RecordOf<K>[];
  }

  check(id: string): CheckRow | undefined {
    return this.get('checks', id);
  }
  checksWatching(keys: readonly string[]): readonly CheckRow[] {
    return this.#checks.findAny(keys);
  }

  /** Puts one row; a row with the same key gives way to it and keeps its place in the order. */
  put(change: ModelChange): void {
    const { table, row } = change;
    const key = keyOf(change);
    const entry = this.#table(table).get(key);
    if (!entry) {
      const ord = (this.#lastOrd.get(table) ?? 0) + 1;
      this.#touched.add(this.#add(table, { key, ord, since: isFoundation(table) ? 0 : this.#seq, row }));
      return;
    }
    const before = entry.row;
    if (entry.since < this.#seq && !this.#changedNow.has(entry)) {
      this.#changedNow.add(entry);
      this.#before.push({ seq: this.#seq, table, key, row: before });
    }
    entry.row = row;
    this.#touched.add(entry);
    this.#file(table, entry, before);
  }

  /** Takes over a row as it stands elsewhere, with its place. Rows come in the order of their places. */
  load(table: TableName, entry: Entry<AnyRow>): void {
    this.#add(table, { ...entry });
  }
  /** Takes over when names were first asked for. */
  loadAsked(key: string, seq: number): void {
    this.#asked.set(key, seq);
  }

  /** Rows that were put since they were taken over, in the order of their places. */
  touched(table: TableName): readonly Entry<AnyRow>[] {
    return [...this.#table(table).values()].filter((entry) => this.#touched.has(entry));
  }
  /** What changed rows were before, in the order of the changes. */
  before(): readonly Before[] {
    return this.#before;
  }
  /** Names of things that were looked for, by key, with the event that first did. */
  asked(): ReadonlyMap<string, number> {
    return this.#asked;
  }

  #add(table: TableName, entry: Entry<AnyRow>): Entry<AnyRow> {
    this.#table(table).set(entry.key, entry);
    this.#lastOrd.set(table, entry.ord);
    this.#file(table, entry, undefined);
    return entry;
  }

  #file(table: TableName, entry: Entry<AnyRow>, before: AnyRow | undefined): void {
    if (table === 'items') this.#items.put(entry.row as ItemRow);
    if (table === 'tasks') this.#openTasks.put(entry.row as TaskRow, entry.ord);
    for (const index of this.#indexes[table] ?? []) index.put(entry, before);
  }

  #table(table: TableName): Map<string, Entry<AnyRow>> {
    let rows = this.#tables.get(table);
    if (!rows) {
      rows = new Map();
      this.#tables.set(table, rows);
    }
    return rows;
  }
}

function columnOf(row: AnyRow, column: string): unknown {
  if (column === 'day') return dayOf((row as MemoRow).recordedAt);
  return (row as unknown as Record<string, unknown>)[column];
}
