import type { Database } from 'better-sqlite3';
import type { MemoRow } from '../model/rows.ts';
import { absentOriginals } from './absent-originals.ts';
import { Sqlite } from './sqlite.ts';

/** A copy of the database as it was at one instant. */
export interface StoreCopy {
  readonly events: number;
  readonly memos: readonly MemoRow[];
  /** Hashes of originals that were never here. */
  readonly absent: ReadonlySet<string>;
  /** What is wrong with the structure of the file, one line each. */
  readonly faults: readonly string[];
}

/**
 * Copies the database into an empty file, as it is at one instant, while others write to it. The copy is one file: it
 * needs no log beside it.
 */
export async function copyDatabase(db: Database, file: string): Promise<StoreCopy> {
  // All pages in one step: in several, the copy would begin anew whenever another process writes.
  await db.backup(file, { progress: () => 0x7fffffff });
  const copy = new Sqlite(file, { fileMustExist: true });
  try {
    copy.pragma('journal_mode = DELETE');
    const { events } = copy.prepare('SELECT count(*) AS events FROM log').get() as { events: number };
    const bodies = copy.prepare('SELECT body FROM memos ORDER BY ord').all() as { body: string }[];
    const faults = (copy.pragma('quick_check') as { quick_check: string }[])
      .map(({ quick_check: line }) => line)
      .filter((line) => line !== 'ok')
      .map((line) => `structure: ${line}`);
    const memos = bodies.map(({ body }) => JSON.parse(body) as MemoRow);
    return { events, memos, absent: absentOriginals(copy), faults };
  } finally {
    copy.close();
  }
}
