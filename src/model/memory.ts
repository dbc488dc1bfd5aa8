import type { Dimension } from '../language/notes.ts';
import type { NewEvent, ProjectEvent } from './events.ts';
import { isLike, itemStems } from './items.ts';
import type { RecordKind, RecordOf } from './kept/record-rows.ts';
import { changesNow, reachesBack, replay } from './replay.ts';
import type {
  ActRow,
  ArrivalRow,
  AskedBy,
  ClaimRow,
  FindingRow,
  FormulaRow,
  ItemRow,
  LimitRow,
  ModelChange,
  ModelRows,
  NameRow,
  ProjectRows,
  PromiseRow,
  Slot,
  StandingRow,
  TableName,
  TaskRow,
} from './rows.ts';
import { keyOf } from './rows.ts';

/** The model's rows in memory. */
export class MemoryRows implements ProjectRows {
  readonly #tables = new Map<TableName, Map<string, ModelRows[TableName]>>();

  all<T extends TableName>(table: T): readonly ModelRows[T][] {
    return [...this.#table(table).values()];
  }
  get<T extends TableName>(table: T, key: string): ModelRows[T] | undefined {
    return this.#table(table).get(key);
  }
  where<T extends keyof AskedBy>(table: T, column: AskedBy[T], value: string): readonly ModelRows[T][] {
    return this.all(table).filter((row) => (row as unknown as Record<string, unknown>)[column] === value);
  }
  nameRule(key: string): NameRow | undefined {
    return this.get('names', key);
  }
  item(id: string): ItemRow | undefined {
    return this.get('items', id);
  }
  itemsSharing(stems: readonly string[]): readonly ItemRow[] {
    return this.all('items').filter((item) => itemStems(item).some((stem) => stems.includes(stem)));
  }
  itemsLike(stems: readonly string[]): readonly ItemRow[] {
    return this.all('items').filter((item) => isLike(item, stems));
  }
  itemsNear(stems: readonly string[], limit: number): readonly ItemRow[] {
    const near = this.all('items')
      .map((item, index) => {
        const own = itemStems(item);
        return { item, index, shared: stems.filter((stem) => own.includes(stem)).length };
      })
      .filter((one) => one.shared > 0)
      .sort((a, b) => b.shared - a.shared || b.index - a.index);
    return near
      .slice(0, limit)
      .sort((a, b) => a.index - b.index)
      .map((one) => one.item);
  }
  itemCount(): number {
    return this.#table('items').size;
  }
  claim(id: string): ClaimRow | undefined {
    return this.get('claims', id);
  }
  claimsOf(itemId: string): readonly ClaimRow[] {
    return this.all('claims').filter((claim) => claim.itemId === itemId);
  }
  standing(slot: Slot): StandingRow | undefined {
    return this.get('standing', slot);
  }
  standingOf(itemId: string): readonly StandingRow[] {
    return this.all('standing').filter((row) => row.itemId === itemId);
  }
  standingIn(dimension: Dimension): readonly StandingRow[] {
    return this.all('standing').filter((row) => row.dimension === dimension);
  }
  limitsIn(dimension: Dimension): readonly LimitRow[] {
    return this.all('limits').filter((limit) => limit.active && limit.dimension === dimension);
  }
  formula(slot: Slot): FormulaRow | undefined {
    return this.get('formulas', slot);
  }
  formulasReading(slot: Slot): readonly FormulaRow[] {
    return this.all('formulas').filter((formula) => formula.inputs.includes(slot));
  }
  openTasks(): readonly TaskRow[] {
    return this.all('tasks').filter((task) => task.status === 'open');
  }
  openPromises(): readonly PromiseRow[] {
    return this.all('promises').filter((promise) => promise.status === 'open');
  }
  expectedArrivals(): readonly ArrivalRow[] {
    return this.all('arrivals').filter((arrival) => arrival.status === 'expected');
  }
  actsSharing(stems: readonly string[]): readonly ActRow[] {
    return this.all('acts').filter((act) => act.words.some((word) => stems.includes(word)));
  }
  findingsOn(slot: Slot): readonly FindingRow[] {
    return this.all('findings').filter((finding) => finding.slot === slot && finding.status === 'open');
  }

  records<K extends RecordKind>(kind: K): readonly RecordOf<K>[] {
    return this.all('records').filter((row): row is RecordOf<K> => row.kind === kind);
  }

  put(change: ModelChange): void {
    this.#table(change.table).set(keyOf(change), change.row as never);
  }
  clear(): void {
    this.#tables.clear();
  }

  #table<T extends TableName>(table: T): Map<string, ModelRows[T]> {
    let rows = this.#tables.get(table);
    if (!rows) {
      rows = new Map();
      this.#tables.set(table, rows);
    }
    return rows as Map<string, ModelRows[T]>;
  }
}

/** A project without a disk: the same log and the same model, kept in memory. */
export class MemoryProject {
  readonly rows = new MemoryRows();
  readonly #log: ProjectEvent[] = [];

  append(events: readonly NewEvent[]): readonly ProjectEvent[] {
    return events.map((event) => {
      const written = { ...event, seq: this.#log.length + 1 } as ProjectEvent;
      this.#log.push(written);
      if (reachesBack(this.rows, written)) {
        this.rows.clear();
        replay(this.rows, this.#log, (change) => this.rows.put(change));
      } else for (const change of changesNow(this.rows, written)) this.rows.put(change);
      return written;
    });
  }

  log(): readonly ProjectEvent[] {
    return this.#log;
  }
}
