import type { Database } from 'better-sqlite3';
import type { ProjectEvent } from '../model/events.ts';
import { replay } from '../model/replay.ts';
import type { ModelChange } from '../model/rows.ts';
import type { SqliteRows } from './rows.ts';
import { clearProjections, TABLES, WORD_TABLES } from './schema.ts';
import { fileWords } from './search.ts';

/** Puts one change and what follows from it in the search index. */
export function putChange(db: Database, rows: SqliteRows, change: ModelChange): void {
  const old = change.table === 'memos' ? rows.get('memos', change.row.id) : undefined;
  rows.put(change);
  if (change.table === 'memos' && change.row.text !== undefined && change.row.text !== old?.text) {
    fileWords(db, change.row);
  }
}

/** Builds every projection anew from the log. Call inside a transaction. */
export function rebuild(db: Database, rows: SqliteRows, events: readonly ProjectEvent[]): void {
  clearProjections(db);
  rows.forget();
  replay(rows, events, (change) => putChange(db, rows, change));
}

/** Every projected row as one line of text: two databases with the same lines hold the same model. */
export function* projectionLines(db: Database): Generator<string> {
  for (const table of [...TABLES, ...WORD_TABLES, 'said']) {
    const order =
      table === 'said' ? 'id' : (WORD_TABLES as readonly string[]).includes(table) ? 'word, key' : 'ord';
    for (const row of db.prepare(`SELECT * FROM ${table} ORDER BY ${order}`).iterate()) {
      yield `${table} ${JSON.stringify(row)}`;
    }
  }
}
