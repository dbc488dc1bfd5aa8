import type { Database } from 'better-sqlite3';
import type { ProjectEvent } from '../model/events.ts';
import { MemoryRows } from '../model/memory-rows.ts';
import { type ReplayInto, replay } from '../model/replay.ts';
import type { ModelChange } from '../model/rows.ts';
import type { SqliteRows } from './rows.ts';
import { clearProjections, TABLES, WORD_TABLES } from './schema.ts';
import { fileWords } from './search.ts';

/**
 * The longest log that is worked through in memory, which takes about 50 kB for each memo: a longer one is worked
 * through on the disk, slower and in little room.
 */
export const MOST_IN_MEMORY = 60_000;

/** Puts the changes of one event after another, and what follows from them in the search index. */
export function puttingInto(db: Database, rows: SqliteRows | MemoryRows): ReplayInto {
  let at = 0;
  return {
    begin(seq: number) {
      at = seq;
      rows.begin(seq);
    },
    put(change: ModelChange) {
      const old = change.table === 'memos' ? rows.get('memos', change.row.id) : undefined;
      rows.put(change);
      if (change.table === 'memos' && change.row.text !== undefined && change.row.text !== old?.text) {
        fileWords(db, change.row, at);
      }
    },
  };
}

/** Builds every projection anew from the log. Call inside a transaction. */
export function rebuild(
  db: Database,
  rows: SqliteRows,
  events: readonly ProjectEvent[],
  mostInMemory = MOST_IN_MEMORY,
): void {
  clearProjections(db);
  rows.forget();
  if (events.length > mostInMemory) {
    replay(rows, events, puttingInto(db, rows));
    return;
  }
  const memory = new MemoryRows();
  replay(memory, events, puttingInto(db, memory));
  writeDown(db, rows, memory);
}

/** Writes what was changed in memory to the disk. */
export function writeDown(db: Database, rows: SqliteRows, memory: MemoryRows): void {
  for (const table of TABLES)
    for (const { row, since, ord } of memory.touched(table))
      rows.write({ table, row } as ModelChange, { since, ord });
  const journal = db.prepare('INSERT INTO journal (seq, kind, key, body) VALUES (?, ?, ?, ?)');
  for (const { seq, table, key, row } of memory.before()) journal.run(seq, table, key, JSON.stringify(row));
  const asked = db.prepare('INSERT OR IGNORE INTO asked (key, seq) VALUES (?, ?)');
  for (const [key, seq] of memory.asked()) asked.run(key, seq);
}

/** Every projected row as one line of text: two databases with the same lines hold the same model. */
export function* projectionLines(db: Database): Generator<string> {
  const orders = [
    ...TABLES.map((table) => [table, 'ord']),
    ...WORD_TABLES.map((table) => [table, 'word, key']),
    ['said', 'id'],
    ['journal', 'seq, kind, key'],
    ['asked', 'key'],
  ] as const;
  for (const [table, order] of orders)
    for (const row of db.prepare(`SELECT * FROM ${table} ORDER BY ${order}`).iterate())
      yield `${table} ${JSON.stringify(row)}`;
}
