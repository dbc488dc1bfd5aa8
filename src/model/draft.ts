import type { Dimension } from '../language/notes.ts';
import { namesAtLeast } from './acts.ts';
import { type CheckRow, checkKeys } from './checks/check-rows.ts';
import { isLike, itemStems, plainKeys } from './items.ts';
import type { RecordKind, RecordOf } from './kept/record-rows.ts';
import { isToMeasure } from './measured-tasks.ts';
import { nameStems, plainKey } from './names.ts';
import type {
  ActRow,
  ArrivalRow,
  ClaimRow,
  FindingRow,
  FormulaRow,
  ItemRow,
  LimitRow,
  ModelChange,
  ModelReader,
  ModelRows,
  NameRow,
  ProblemRow,
  PromiseRow,
  Slot,
  StandingRow,
  TableName,
  TaskRow,
} from './rows.ts';
import { keyIn, keyOf } from './rows.ts';

/** A model with changes that are not put yet: reads see them, the model underneath does not. */
export class Draft implements ModelReader {
  readonly #base: ModelReader;
  readonly #put = new Map<TableName, Map<string, ModelRows[TableName]>>();
  readonly #changes: ModelChange[] = [];
  /** Things whose claims or standing figures were put: those of any other thing are read straight from underneath. */
  readonly #touched = { claims: new Set<string>(), standing: new Set<string>() };

  constructor(base: ModelReader) {
    this.#base = base;
  }

  /** Every change so far, in the order in which they were put. */
  changes(): readonly ModelChange[] {
    return this.#changes;
  }

  put(change: ModelChange): void {
    this.#changes.push(change);
    let rows = this.#put.get(change.table);
    if (!rows) {
      rows = new Map();
      this.#put.set(change.table, rows);
    }
    rows.set(keyOf(change), change.row);
    // A claim or a figure never passes to another thing, so the thing underneath is the same one.
    if (change.table === 'claims' || change.table === 'standing')
      this.#touched[change.table].add(change.row.itemId);
  }

  nameRule(key: string): NameRow | undefined {
    return this.#one('names', key) ?? this.#base.nameRule(key);
  }
  item(id: string): ItemRow | undefined {
    return this.#one('items', id) ?? this.#base.item(id);
  }
  itemsSharing(stems: readonly string[]): readonly ItemRow[] {
    return this.#many('items', this.#base.itemsSharing(stems), (item) =>
      itemStems(item).some((stem) => stems.includes(stem)),
    );
  }
  itemsLike(stems: readonly string[]): readonly ItemRow[] {
    return this.#many('items', this.#base.itemsLike(stems), (item) => isLike(item, stems));
  }
  itemsNamed(name: string): readonly ItemRow[] {
    const key = plainKey(name);
    const put = this.#put.get('items') as ReadonlyMap<string, ItemRow> | undefined;
    // Where a thing of that name was put, its place among the others matters.
    for (const item of put?.values() ?? [])
      if (plainKeys(item).includes(key)) return this.itemsLike(nameStems(name));
    return this.#base.itemsNamed(name);
  }
  itemsNear(stems: readonly string[], limit: number): readonly ItemRow[] {
    return this.#many('items', this.#base.itemsNear(stems, limit), (item) =>
      itemStems(item).some((stem) => stems.includes(stem)),
    );
  }
  itemCount(): number {
    const added = [...(this.#put.get('items')?.keys() ?? [])].filter((id) => !this.#base.item(id));
    return this.#base.itemCount() + added.length;
  }
  claim(id: string): ClaimRow | undefined {
    return this.#one('claims', id) ?? this.#base.claim(id);
  }
  claimsOf(itemId: string): readonly ClaimRow[] {
    const base = this.#base.claimsOf(itemId);
    if (!this.#touched.claims.has(itemId)) return base;
    return this.#many('claims', base, (claim) => claim.itemId === itemId);
  }
  standing(slot: Slot): StandingRow | undefined {
    return this.#one('standing', slot) ?? this.#base.standing(slot);
  }
  standingOf(itemId: string): readonly StandingRow[] {
    const base = this.#base.standingOf(itemId);
    if (!this.#touched.standing.has(itemId)) return base;
    return this.#many('standing', base, (row) => row.itemId === itemId);
  }
  standingIn(dimension: Dimension): readonly StandingRow[] {
    return this.#many('standing', this.#base.standingIn(dimension), (row) => row.dimension === dimension);
  }
  latestIn(dimension: Dimension, limit: number): readonly StandingRow[] {
    return this.#many(
      'standing',
      this.#base.latestIn(dimension, limit),
      (row) => row.dimension === dimension,
    );
  }
  limitsIn(dimension: Dimension): readonly LimitRow[] {
    return this.#many(
      'limits',
      this.#base.limitsIn(dimension),
      (limit) => limit.active && limit.dimension === dimension,
    );
  }
  formula(slot: Slot): FormulaRow | undefined {
    return this.#one('formulas', slot) ?? this.#base.formula(slot);
  }
  formulasReading(slot: Slot): readonly FormulaRow[] {
    return this.#many('formulas', this.#base.formulasReading(slot), (row) => row.inputs.includes(slot));
  }
  openTasks(): readonly TaskRow[] {
    return this.#many('tasks', this.#base.openTasks(), (task) => task.status === 'open');
  }
  openTasksSharing(stems: readonly string[]): readonly TaskRow[] {
    return this.#many('tasks', this.#base.openTasksSharing(stems), (task) => task.status === 'open');
  }
  gatedTasks(): readonly TaskRow[] {
    return this.#many(
      'tasks',
      this.#base.gatedTasks(),
      (task) => task.status === 'open' && (task.gates !== undefined || task.before !== undefined),
    );
  }
  measuringTasks(): readonly TaskRow[] {
    return this.#many(
      'tasks',
      this.#base.measuringTasks(),
      (task) => task.status === 'open' && isToMeasure(task),
    );
  }
  openProblems(): readonly ProblemRow[] {
    return this.#many('problems', this.#base.openProblems(), (problem) => problem.status === 'open');
  }
  /** Whether a note of this memo has ended a task. */
  closedNow(noteId: string): boolean {
    const put = [...(this.#put.get('tasks')?.values() ?? [])] as readonly TaskRow[];
    return put.some((task) => task.status === 'done' && task.closedById === noteId);
  }
  /** Snags that this memo has put right so far. */
  solvedProblems(): readonly ProblemRow[] {
    const put = [...(this.#put.get('problems')?.values() ?? [])] as readonly ProblemRow[];
    return put.filter((problem) => problem.status === 'solved');
  }
  openPromises(): readonly PromiseRow[] {
    return this.#many('promises', this.#base.openPromises(), (promise) => promise.status === 'open');
  }
  expectedArrivals(): readonly ArrivalRow[] {
    return this.#many('arrivals', this.#base.expectedArrivals(), (arrival) => arrival.status === 'expected');
  }
  actsNaming(head: string, stems: readonly string[], least: number): readonly ActRow[] {
    return this.#many('acts', this.#base.actsNaming(head, stems, least), (act) =>
      namesAtLeast(act, head, stems, least),
    );
  }
  findingsOn(slot: Slot): readonly FindingRow[] {
    return this.#many(
      'findings',
      this.#base.findingsOn(slot),
      (finding) => finding.slot === slot && finding.status === 'open',
    );
  }

  records<K extends RecordKind>(kind: K): readonly RecordOf<K>[] {
    return this.#many(
      'records',
      this.#base.records(kind),
      (row) => row.kind === kind,
    ) as readonly RecordOf<K>[];
  }

  check(id: string): CheckRow | undefined {
    return this.#one('checks', id) ?? this.#base.check(id);
  }
  checksWatching(keys: readonly string[]): readonly CheckRow[] {
    return this.#many('checks', this.#base.checksWatching(keys), (row) =>
      checkKeys(row).some((key) => keys.includes(key)),
    );
  }

  #one<T extends TableName>(table: T, key: string): ModelRows[T] | undefined {
    return this.#put.get(table)?.get(key) as ModelRows[T] | undefined;
  }

  /** The rows underneath, as changed, then the added ones; only those that still answer. */
  #many<T extends TableName>(
    table: T,
    base: readonly ModelRows[T][],
    answers: (row: ModelRows[T]) => boolean,
  ): readonly ModelRows[T][] {
    const put = this.#put.get(table) as ReadonlyMap<string, ModelRows[T]> | undefined;
    if (!put) return base;
    const keyOfRow = keyIn(table);
    const found: ModelRows[T][] = [];
    // Mostly nothing that is underneath was changed, and then no added row can be one of those.
    let seen: Set<string> | undefined;
    for (const row of base) {
      const id = keyOfRow(row);
      const changed = put.get(id);
      if (!changed) {
        found.push(row);
        continue;
      }
      seen ??= new Set();
      seen.add(id);
      // What is underneath answered already: only changed and added rows are tested.
      if (answers(changed)) found.push(changed);
    }
    for (const [id, row] of put) if (!seen?.has(id) && answers(row)) found.push(row);
    return found;
  }
}
