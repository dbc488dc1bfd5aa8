import type { Database } from 'better-sqlite3';
import { readLog } from './log.ts';
import { createDatabase } from './open.ts';
import { projectionLines, rebuild } from './rebuild.ts';
import { SqliteRows } from './rows.ts';

export interface Verdict {
  readonly ok: boolean;
  /** One line per fault, plain words. */
  readonly faults: readonly string[];
  readonly events: number;
  readonly rows: number;
}

/**
 * Checks the file's own structure, then rebuilds the model from the log in a scratch database and compares every
 * row. Changes nothing.
 */
export function verifyDatabase(db: Database): Verdict {
  const faults: string[] = [];
  const integrity = db.pragma('integrity_check') as { integrity_check: string }[];
  for (const { integrity_check: line } of integrity) if (line !== 'ok') faults.push(`structure: ${line}`);
  for (const row of db.pragma('foreign_key_check') as unknown[])
    faults.push(`reference: ${JSON.stringify(row)}`);
  const events = readLog(db);
  events.forEach((event, index) => {
    if (event.seq !== index + 1) faults.push(`log: event ${index + 1} is numbered ${event.seq}`);
  });
  const scratch = createDatabase(':memory:');
  try {
    scratch.transaction(() => rebuild(scratch, new SqliteRows(scratch), events))();
    faults.push(...differences(db, scratch));
    return { ok: faults.length === 0, faults, events: events.length, rows: count(db) };
  } finally {
    scratch.close();
  }
}

const MOST_FAULTS = 20;

function differences(kept: Database, rebuilt: Database): readonly string[] {
  const left = new Set(projectionLines(kept));
  const right = new Set(projectionLines(rebuilt));
  const faults: string[] = [];
  for (const line of left) if (!right.has(line)) faults.push(`only in the file: ${line.slice(0, 200)}`);
  for (const line of right)
    if (!left.has(line)) faults.push(`only in the rebuilt model: ${line.slice(0, 200)}`);
  return faults.slice(0, MOST_FAULTS);
}

function count(db: Database): number {
  let rows = 0;
  for (const _ of projectionLines(db)) rows++;
  return rows;
}
