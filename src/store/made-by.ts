/**
 * Which program worked a project's model out. The model follows from the log by rules, and a program with other rules
 * comes to another model: mixed in one file, neither would be true, and a check would take the difference for damage.
 */
import type { Database } from 'better-sqlite3';

/** A hash over the sources that the model follows from, put in when the program is built. */
declare const HEARWRIGHT_MODEL_PRINT: string | undefined;

export const MODEL_PRINT =
  typeof HEARWRIGHT_MODEL_PRINT === 'undefined' ? 'from source' : HEARWRIGHT_MODEL_PRINT;

/** Whether the model in the database was worked out by this program's rules. */
export function isOurModel(db: Database): boolean {
  return db.prepare('SELECT print FROM made_by').pluck().get() === MODEL_PRINT;
}

/** Says that the model in the database is by this program's rules. Call inside a transaction. */
export function signModel(db: Database): void {
  db.exec('DELETE FROM made_by');
  db.prepare('INSERT INTO made_by (print) VALUES (?)').run(MODEL_PRINT);
}
