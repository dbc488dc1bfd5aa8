import type { Database, Statement } from 'better-sqlite3';

const statements = new WeakMap<Database, Map<string, Statement>>();

/** The statement of these words, prepared once for each database. The words are ours and never the user's. */
export function prepared(db: Database, sql: string): Statement {
  let own = statements.get(db);
  if (!own) {
    own = new Map();
    statements.set(db, own);
  }
  let statement = own.get(sql);
  if (!statement) {
    statement = db.prepare(sql);
    own.set(sql, statement);
  }
  return statement;
}
