import type { Database } from 'better-sqlite3';
import { readLog } from './log.ts';
import { rebuild } from './rebuild.ts';
import { SqliteRows } from './rows.ts';
import { FORMAT, layOutAnew } from './schema.ts';

/** Brings a database of an older format up to date: the model is laid out and built anew. */
export function upgrade(db: Database): void {
  if (formatOf(db) >= FORMAT) return;
  db.transaction(() => {
    // Another process may have done it while this one waited.
    if (formatOf(db) >= FORMAT) return;
    layOutAnew(db);
    rebuild(db, new SqliteRows(db), readLog(db));
    db.pragma(`user_version = ${FORMAT}`);
  }).immediate();
}

const formatOf = (db: Database) => db.pragma('user_version', { simple: true }) as number;
