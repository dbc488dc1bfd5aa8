import type { Database } from 'better-sqlite3';
import { isFoundation, type ModelChange, type TableName } from '../model/rows.ts';
import type { SqliteRows } from './rows.ts';
import { TABLES } from './schema.ts';
import { dropWords, putWords, type SaidRow } from './search.ts';

/** Word tables by the table whose rows they find. */
const WORDS_OF: Readonly<Partial<Record<TableName, string>>> = {
  items: 'item_words',
  acts: 'act_words',
  formulas: 'formula_inputs',
  checks: 'check_keys',
};

interface Image {
  readonly kind: TableName | 'said';
  readonly key: string;
  readonly body: string;
}

/**
 * Takes the projections back to what they were before the event at `from`. What holds from
 * the beginning (names, notes, transcripts) stays. Costs by what came after. Call inside a transaction.
 */
export function rewind(db: Database, rows: SqliteRows, from: number): void {
  rows.forget();
  // With a lone min(), SQLite takes the other columns from the row that has it: the first image of each row.
  const images = db
    .prepare('SELECT kind, key, body, min(seq) FROM journal WHERE seq >= ? GROUP BY kind, key')
    .all(from) as Image[];
  dropWords(db, tailOf<SaidRow>(db, 'said', 'id', from));
  for (const table of TABLES) if (!isFoundation(table)) dropTail(db, table, from);
  for (const image of images) restore(db, rows, image, from);
  db.prepare('DELETE FROM asked WHERE seq >= ?').run(from);
  db.prepare('DELETE FROM journal WHERE seq >= ?').run(from);
  rows.forget();
}

/** The last row that stood before `from`, found from the end: rows made later have higher places. */
const lastBefore = (table: string, place: string) =>
  `coalesce((SELECT ${place} FROM ${table} WHERE since < ? ORDER BY ${place} DESC LIMIT 1), 0)`;

function tailOf<R>(db: Database, table: string, place: string, from: number): readonly R[] {
  const sql = `SELECT * FROM ${table} WHERE ${place} > ${lastBefore(table, place)}`;
  return db.prepare(sql).all(from) as R[];
}

function dropTail(db: Database, table: TableName, from: number): void {
  const { last } = db.prepare(`SELECT ${lastBefore(table, 'ord')} AS last`).get(from) as { last: number };
  const words = WORDS_OF[table];
  if (words)
    db.prepare(`DELETE FROM ${words} WHERE key IN (SELECT key FROM ${table} WHERE ord > ?)`).run(last);
  db.prepare(`DELETE FROM ${table} WHERE ord > ?`).run(last);
}

function restore(db: Database, rows: SqliteRows, { kind, key, body }: Image, from: number): void {
  if (kind === 'said') {
    const said = JSON.parse(body) as readonly SaidRow[];
    putWords(
      db,
      said.filter(({ since }) => since < from),
    );
    return;
  }
  // A row that came after `from` is gone, whatever it was in between.
  if (rows.get(kind, key) === undefined) return;
  rows.write({ table: kind, row: JSON.parse(body) } as ModelChange, { since: 0 });
}
