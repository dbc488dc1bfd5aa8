import type { Database, Statement } from 'better-sqlite3';
import type { Dimension } from '../language/notes.ts';
import { type CheckRow, checkKeys } from '../model/checks/check-rows.ts';
import { type Holder, ItemIndex } from '../model/item-index.ts';
import { itemStems, leastShared } from '../model/items.ts';
import type { RecordKind, RecordOf } from '../model/kept/record-rows.ts';
import { OpenTasks } from '../model/open-tasks.ts';
import { isQuestion } from '../model/questions.ts';
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
  ProblemRow,
  ProjectRows,
  PromiseRow,
  Slot,
  StandingRow,
  TableName,
  TaskRow,
} from '../model/rows.ts';
import { dayOf, isFoundation, keyOf } from '../model/rows.ts';
import { asProblem } from './open.ts';
import { prepared } from './prepared.ts';
import { SEARCHED, TABLES, type WORD_TABLES } from './schema.ts';

type Words = (typeof WORD_TABLES)[number];
interface Body {
  readonly body: string;
}

/** The model's rows in SQLite: the same port that the in-memory model has. */
export class SqliteRows implements ProjectRows {
  readonly #db: Database;
  /** Items as they were last read: naming asks for the same few hundred with every figure. */
  readonly #items = new ItemIndex({
    row: (id) => this.get('items', id),
    holders: (word) => this.#lines<Holder>('SELECT key AS id, least FROM item_words WHERE word = ?', word),
  });
  /** The open tasks as they were last read; undefined until they are asked for. */
  #openTasks: OpenTasks | undefined;
  #version: number | undefined;
  /** Place in the log of the event whose changes are put; undefined while none is. */
  #seq: number | undefined;

  constructor(db: Database) {
    this.#db = db;
  }

  /** Forgets what another process may have changed. Call when a transaction begins. */
  refresh(): void {
    this.#forgetIfWritten();
    this.#seq = undefined;
  }

  #forgetIfWritten(): void {
    const { data_version: version } = prepared(this.#db, 'PRAGMA data_version').get() as {
      data_version: number;
    };
    if (version !== this.#version) {
      this.#items.clear();
      this.#openTasks = undefined;
    }
    this.#version = version;
  }

  /** The open tasks, read once and kept as they change. */
  #tasksKnown(): OpenTasks {
    if (!this.#db.inTransaction) this.#forgetIfWritten();
    if (!this.#openTasks) {
      this.#openTasks = new OpenTasks();
      const lines = this.#lines<Body & { readonly ord: number }>(
        "SELECT ord, body FROM tasks WHERE status = 'open' ORDER BY ord",
      );
      for (const { ord, body } of lines) this.#openTasks.put(this.#parsed<TaskRow>(body), ord);
    }
    return this.#openTasks;
  }

  /** Items as they were last read, without those that another process may have changed since. */
  #known(): ItemIndex {
    if (!this.#db.inTransaction) this.#forgetIfWritten();
    return this.#items;
  }

  /** Forgets everything, also what a transaction wrote that did not come to its end. */
  forget(): void {
    this.#items.clear();
    this.#openTasks = undefined;
    this.#seq = undefined;
  }

  /** Says which event the changes that follow come from, by its place in the log; 0 is before the first one. */
  begin(seq: number): void {
    this.#seq = seq;
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

  daysWithTalk(): readonly string[] {
    const days = this.#lines<{ day: string }>('SELECT DISTINCT day FROM memos ORDER BY day');
    return days.map(({ day }) => day);
  }
  questions(limit: number): readonly FindingRow[] {
    const sql = 'SELECT body FROM findings WHERE asks IS NOT NULL ORDER BY asks DESC, ord LIMIT ?';
    return this.#bodies(sql, limit).map((body) => JSON.parse(body) as FindingRow);
  }

  nameRule(key: string): NameRow | undefined {
    if (this.#seq !== undefined)
      this.#statement('INSERT OR IGNORE INTO asked (key, seq) VALUES (?, ?)').run(key, this.#seq);
    return this.get('names', key);
  }
  item(id: string): ItemRow | undefined {
    return this.#known().row(id);
  }
  itemsSharing(stems: readonly string[]): readonly ItemRow[] {
    return this.#known().sharing(stems);
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
    return this.#known().like(stems);
  }
  itemsNamed(name: string): readonly ItemRow[] {
    return this.#known().named(name);
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
    return this.#rows('SELECT body FROM standing WHERE dimension = ? ORDER BY ord', dimension);
  }
  latestIn(dimension: Dimension, limit: number): readonly StandingRow[] {
    const rows = this.#rows<StandingRow>(
      'SELECT body FROM standing WHERE dimension = ? ORDER BY ord DESC LIMIT ?',
      dimension,
      limit,
    );
    return rows.reverse();
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
    return this.#tasksKnown().all();
  }
  openTasksSharing(stems: readonly string[]): readonly TaskRow[] {
    return this.#tasksKnown().sharing(stems);
  }
  gatedTasks(): readonly TaskRow[] {
    return this.#tasksKnown().gated();
  }
  measuringTasks(): readonly TaskRow[] {
    return this.#tasksKnown().measuring();
  }
  openProblems(): readonly ProblemRow[] {
    return this.#rows("SELECT body FROM problems WHERE status = 'open' ORDER BY ord");
  }
  openPromises(): readonly PromiseRow[] {
    return this.#rows("SELECT body FROM promises WHERE status = 'open' ORDER BY ord");
  }
  expectedArrivals(): readonly ArrivalRow[] {
    return this.#rows("SELECT body FROM arrivals WHERE status = 'expected' ORDER BY ord");
  }
  actsNaming(head: string, stems: readonly string[], least: number): readonly ActRow[] {
    const others = stems.filter((stem) => stem !== head);
    const needed = others.length < stems.length ? least - 1 : least;
    if (needed <= 0) return this.#sharing('acts', 'act_words', [head]);
    const sql = `SELECT body FROM acts WHERE key IN (
        SELECT key FROM act_words AS other WHERE word IN (SELECT value FROM json_each(?))
          AND EXISTS (SELECT 1 FROM act_words WHERE word = ? AND key = other.key)
        GROUP BY key HAVING count(*) >= ${Number(needed)})
      ORDER BY ord`;
    return this.#rows(sql, JSON.stringify(others), head);
  }
  findingsOn(slot: Slot): readonly FindingRow[] {
    // The plus keeps SQLite from the index of the status: a slot has few findings, the project many open ones.
    return this.#rows("SELECT body FROM findings WHERE slot = ? AND +status = 'open' ORDER BY ord", slot);
  }

  records<K extends RecordKind>(kind: K): readonly RecordOf<K>[] {
    return this.#rows('SELECT body FROM records WHERE kind = ? ORDER BY ord', kind);
  }

  check(id: string): CheckRow | undefined {
    return this.get('checks', id);
  }
  checksWatching(keys: readonly string[]): readonly CheckRow[] {
    return this.#sharing('checks', 'check_keys', keys);
  }

  /** Puts one row; a row with the same key gives way to it and keeps its place in the order. */
  put(change: ModelChange): void {
    const { table } = change;
    const seq = this.#seq ?? 0;
    const old = `INSERT OR IGNORE INTO journal (seq, kind, key, body)
      SELECT ?, '${known(table)}', key, body FROM ${table} WHERE key = ? AND since < ?`;
    if (!isFoundation(table)) this.#statement(old).run(seq, keyOf(change), seq);
    this.write(change, { since: isFoundation(table) ? 0 : seq });
  }

  /** Writes a row as it stands, without a word in the journal; `ord` where its place is known. */
  write(change: ModelChange, { since, ord }: { readonly since: number; readonly ord?: number }): void {
    const { table, row } = change;
    const key = keyOf(change);
    const columns: readonly string[] = SEARCHED[table];
    const values = columns.map((column) => columnOf(column, row));
    this.#statement(writing(known(table))).run(ord ?? null, key, since, ...values, JSON.stringify(row));
    if (change.table === 'items') {
      this.#indexItem(change.row);
      this.#items.put(change.row);
    }
    if (change.table === 'tasks') this.#openTasks?.put(change.row, ord);
    if (change.table === 'acts') this.#index('act_words', key, change.row.words);
    if (change.table === 'formulas') this.#index('formula_inputs', key, change.row.inputs);
    if (change.table === 'checks') this.#index('check_keys', key, checkKeys(change.row));
  }

  #indexItem(item: ItemRow): void {
    const least = leastShared(item);
    this.#statement('DELETE FROM item_words WHERE key = ?').run(item.id);
    const insert = this.#statement('INSERT INTO item_words (word, key, least) VALUES (?, ?, ?)');
    for (const word of itemStems(item)) insert.run(word, item.id, least);
  }

  #index(table: Words, key: string, words: readonly string[]): void {
    this.#statement(`DELETE FROM ${table} WHERE key = ?`).run(key);
    const insert = this.#statement(`INSERT OR IGNORE INTO ${table} (word, key) VALUES (?, ?)`);
    for (const word of words) insert.run(word, key);
  }

  #sharing<T extends 'items' | 'acts' | 'formulas' | 'checks'>(
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

  #rows<R>(sql: string, ...bound: readonly (string | number)[]): R[] {
    return this.#bodies(sql, ...bound).map((body) => this.#parsed<R>(body));
  }

  #parsed<R>(body: string): R {
    try {
      return JSON.parse(body) as R;
    } catch (error) {
      throw asProblem(error, this.#db.name);
    }
  }

  #bodies(sql: string, ...bound: readonly (string | number)[]): readonly string[] {
    return this.#lines<Body>(sql, ...bound).map(({ body }) => body);
  }

  #lines<L>(sql: string, ...bound: readonly (string | number)[]): readonly L[] {
    try {
      return this.#statement(sql).all(...bound) as L[];
    } catch (error) {
      throw asProblem(error, this.#db.name);
    }
  }

  #statement(sql: string): Statement {
    return prepared(this.#db, sql);
  }
}

const writings = new Map<TableName, string>();

function writing(table: TableName): string {
  let sql = writings.get(table);
  if (sql === undefined) {
    const columns: readonly string[] = SEARCHED[table];
    const names = ['ord', 'key', 'since', ...columns, 'body'];
    const sets = [...columns, 'body'].map((name) => `${name} = excluded.${name}`).join(', ');
    sql = `INSERT INTO ${table} (${names.join(', ')}) VALUES (${names.map(() => '?').join(', ')})
       ON CONFLICT (key) DO UPDATE SET ${sets}`;
    writings.set(table, sql);
  }
  return sql;
}

/** Table names are ours and never the user's: anything else is a bug. */
function known(table: TableName): TableName {
  if (!TABLES.includes(table)) throw new TypeError(`no table ${table}`);
  return table;
}

function columnOf(column: string, row: ModelRows[TableName]): string | null {
  if (column === 'day') return dayOf((row as ModelRows['memos']).recordedAt);
  if (column === 'asks') return rankOf(row as FindingRow);
  if (column === 'sha256') return (row as ModelRows['memos']).source.sha256;
  const value = (row as unknown as Record<string, unknown>)[column];
  return value === undefined || value === null ? null : String(value);
}

/** The cost of a finding that is worth asking about, as text that sorts like the number. */
function rankOf(finding: FindingRow): string | null {
  return isQuestion(finding) ? finding.cost.toFixed(3).padStart(16, '0') : null;
}
