import type { Database } from 'better-sqlite3';
import { readLog } from './log.ts';
import { rebuild } from './rebuild.ts';
import { SqliteRows } from './rows.ts';
import { FORMAT, layOutMissing } from './schema.ts';

/** Brings a database of an older format up to date: the tables it lacks are laid out, and the model is built anew. */
export function upgrade(db: Database): void {
  if (formatOf(db) >= FORMAT) return;
  db.transaction(() => {
    // Another process may have done it while this one waited.
    if (formatOf(db) >= FORMAT) return;
    layOutMissing(db);
    rebuild(db, new SqliteRows(db), readLog(db));
    db.pragma(`user_version = ${FORMAT}`);
  }).immediate();
}

const formatOf = (db: Database) => db.pragma('user_version', { simple: true }) as number;
