import type { Database, Statement } from 'better-sqlite3';
import type { Dimension } from '../language/notes.ts';
import { isLike, itemStems } from '../model/items.ts';
import type { RecordKind, RecordOf } from '../model/kept/record-rows.ts';
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
} from '../model/rows.ts';
import { keyOf } from '../model/rows.ts';
import { ItemCache } from './item-cache.ts';
import { asProblem } from './open.ts';
import { SEARCHED, TABLES, type WORD_TABLES } from './schema.ts';

type Words = (typeof WORD_TABLES)[number];
interface Body {
  readonly body: string;
}

/** The model's rows in SQLite: the same port that the in-memory model has. */
export class SqliteRows implements ProjectRows {
  readonly #db: Database;
  readonly #statements = new Map<string, Statement>();
  readonly #items = new ItemCache();

  constructor(db: Database) {
    this.#db = db;
  }

  /** Forgets what another process may have changed. Call when a transaction begins. */
  refresh(): void {
    this.#items.keepFor(this.#db.pragma('data_version', { simple: true }) as number);
  }

  /** Forgets everything, also what a transaction wrote that did not come to its end. */
  forget(): void {
    this.#items.clear();
  }

  all<T extends TableName>(table: T): readonly ModelRows[T][] {
    return this.#rows(`SELECT body FROM ${known(table)} ORDER BY ord`);
  }

  get<T extends TableName>(table: T, key: string): ModelRows[T] | undefined {
    return this.#rows<ModelRows[T]>(`SELECT body FROM ${known(table)} WHERE key = ?`, key)[0];
  }

  where<T extends keyof AskedBy>(table: T, column: AskedBy[T], value: string): readonly ModelRows[T][] {
    const columns: readonly string[] = SEARCHED[table];
    if (!columns.includes(column)) throw new TypeError(`${table} is not searched by ${column}`);
    return this.#rows(`SELECT body FROM ${table} WHERE ${column} = ? ORDER BY ord`, value);
  }

  nameRule(key: string): NameRow | undefined {
    return this.get('names', key);
  }
  item(id: string): ItemRow | undefined {
    if (!this.#db.inTransaction) return this.get('items', id);
    return this.#items.row(id, () => this.get('items', id));
  }
  itemsSharing(stems: readonly string[]): readonly ItemRow[] {
    // Outside a transaction another process may write between two reads.
    if (!this.#db.inTransaction) return this.#sharing('items', 'item_words', stems);
    return this.#items.sharing(stems, (word) => this.#sharing('items', 'item_words', [word]));
  }
  /** The items whose names share most words with these, of equals the latest, in order of first mention. */
  itemsNear(stems: readonly string[], limit: number): readonly ItemRow[] {
    const sql = `SELECT body FROM items WHERE ord IN (
        SELECT items.ord FROM item_words JOIN items ON items.key = item_words.key
        WHERE word IN (SELECT value FROM json_each(?))
        GROUP BY items.ord ORDER BY count(*) DESC, items.ord DESC LIMIT ?)
      ORDER BY ord`;
    return this.#bodies(sql, JSON.stringify(stems), limit).map((body) => JSON.parse(body) as ItemRow);
  }
  itemsLike(stems: readonly string[]): readonly ItemRow[] {
    if (!this.#db.inTransaction) return this.itemsSharing(stems).filter((item) => isLike(item, stems));
    return this.#items.like(stems, (word) => this.#sharing('items', 'item_words', [word]));
  }
  itemCount(): number {
    return (this.#statement('SELECT count(*) AS n FROM items').get() as { n: number }).n;
  }
  claim(id: string): ClaimRow | undefined {
    return this.get('claims', id);
  }
  claimsOf(itemId: string): readonly ClaimRow[] {
    return this.#rows('SELECT body FROM claims WHERE itemId = ? ORDER BY ord', itemId);
  }
  standing(slot: Slot): StandingRow | undefined {
    return this.get('standing', slot);
  }
  standingOf(itemId: string): readonly StandingRow[] {
    return this.#rows('SELECT body FROM standing WHERE itemId = ? ORDER BY ord', itemId);
  }
  standingIn(dimension: Dimension): readonly StandingRow[] {
    const sql = "SELECT body FROM standing WHERE json_extract(body, '$.dimension') = ? ORDER BY ord";
    return this.#rows(sql, dimension);
  }
  limitsIn(dimension: Dimension): readonly LimitRow[] {
    return this.#rows(
      "SELECT body FROM limits WHERE dimension = ? AND active = 'true' ORDER BY ord",
      dimension,
    );
  }
  formula(slot: Slot): FormulaRow | undefined {
    return this.get('formulas', slot);
  }
  formulasReading(slot: Slot): readonly FormulaRow[] {
    return this.#sharing('formulas', 'formula_inputs', [slot]);
  }
  openTasks(): readonly TaskRow[] {
    return this.#rows("SELECT body FROM tasks WHERE status = 'open' ORDER BY ord");
  }
  openPromises(): readonly PromiseRow[] {
    return this.#rows("SELECT body FROM promises WHERE status = 'open' ORDER BY ord");
  }
  expectedArrivals(): readonly ArrivalRow[] {
    return this.#rows("SELECT body FROM arrivals WHERE status = 'expected' ORDER BY ord");
  }
  actsSharing(stems: readonly string[]): readonly ActRow[] {
    return this.#sharing('acts', 'act_words', stems);
  }
  findingsOn(slot: Slot): readonly FindingRow[] {
    // The plus keeps SQLite from the index of the status: a slot has few findings, the project many open ones.
    return this.#rows("SELECT body FROM findings WHERE slot = ? AND +status = 'open' ORDER BY ord", slot);
  }

  records<K extends RecordKind>(kind: K): readonly RecordOf<K>[] {
    return this.#rows('SELECT body FROM records WHERE kind = ? ORDER BY ord', kind);
  }

  /** Puts one row; a row with the same key gives way to it and keeps its place in the order. */
  put(change: ModelChange): void {
    const { table, row } = change;
    const key = keyOf(change);
    const columns: readonly string[] = SEARCHED[table];
    const values = columns.map((column) => columnOf(column, row));
    const names = ['key', ...columns, 'body'];
    const sets = [...columns, 'body'].map((name) => `${name} = excluded.${name}`).join(', ');
    this.#statement(
      `INSERT INTO ${known(table)} (${names.join(', ')}) VALUES (${names.map(() => '?').join(', ')})
       ON CONFLICT (key) DO UPDATE SET ${sets}`,
    ).run(key, ...values, JSON.stringify(row));
    if (change.table === 'items') {
      const stems = itemStems(change.row);
      this.#index('item_words', key, stems);
      this.#items.put(change.row, stems);
    }
    if (change.table === 'acts') this.#index('act_words', key, change.row.words);
    if (change.table === 'formulas') this.#index('formula_inputs', key, change.row.inputs);
  }

  #index(table: Words, key: string, words: readonly string[]): void {
    this.#statement(`DELETE FROM ${table} WHERE key = ?`).run(key);
    const insert = this.#statement(`INSERT OR IGNORE INTO ${table} (word, key) VALUES (?, ?)`);
    for (const word of words) insert.run(word, key);
  }

  #sharing<T extends 'items' | 'acts' | 'formulas'>(
    table: T,
    words: Words,
    wanted: readonly string[],
  ): readonly ModelRows[T][] {
    return this.#rows(
      `SELECT body FROM ${table} WHERE key IN
         (SELECT key FROM ${words} WHERE word IN (SELECT value FROM json_each(?)))
       ORDER BY ord`,
      JSON.stringify(wanted),
    );
  }

  #rows<R>(sql: string, ...bound: readonly string[]): R[] {
    const bodies = this.#bodies(sql, ...bound);
    try {
      return bodies.map((body) => JSON.parse(body) as R);
    } catch (error) {
      throw asProblem(error, this.#db.name);
    }
  }

  #bodies(sql: string, ...bound: readonly (string | number)[]): readonly string[] {
    try {
      return (this.#statement(sql).all(...bound) as Body[]).map(({ body }) => body);
    } catch (error) {
      throw asProblem(error, this.#db.name);
    }
  }

  #statement(sql: string): Statement {
    let statement = this.#statements.get(sql);
    if (!statement) {
      statement = this.#db.prepare(sql);
      this.#statements.set(sql, statement);
    }
    return statement;
  }
}

/** Table names are ours and never the user's: anything else is a bug. */
function known(table: TableName): TableName {
  if (!TABLES.includes(table)) throw new TypeError(`no table ${table}`);
  return table;
}

function columnOf(column: string, row: ModelRows[TableName]): string | null {
  if (column === 'sha256') return (row as ModelRows['memos']).source.sha256;
  const value = (row as unknown as Record<string, unknown>)[column];
  return value === undefined || value === null ? null : String(value);
}
