/** Originals that were never in this project: the sound of recordings that an import could not bring along. */
import type { Database } from 'better-sqlite3';

/** Call inside a transaction. */
export function noteAbsent(db: Database, hashes: readonly string[]): void {
  const put = db.prepare('INSERT OR IGNORE INTO absent_originals (sha256) VALUES (?)');
  for (const hash of hashes) put.run(hash);
}

/** Call inside a transaction. */
export function notePresent(db: Database, sha256: string): void {
  db.prepare('DELETE FROM absent_originals WHERE sha256 = ?').run(sha256);
}

export function absentOriginals(db: Database): ReadonlySet<string> {
  return new Set(db.prepare('SELECT sha256 FROM absent_originals').pluck().all() as string[]);
}
