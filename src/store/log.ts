import type { Database } from 'better-sqlite3';
import type { NewEvent, ProjectEvent } from '../model/events.ts';

interface LogLine {
  readonly seq: number;
  readonly at: string;
  readonly kind: string;
  readonly body: string;
}

/** Writes one event at the end of the log and gives it back with its place. Call inside a transaction. */
export function appendToLog(db: Database, event: NewEvent): ProjectEvent {
  const { seq } = db.prepare('SELECT coalesce(max(seq), 0) + 1 AS seq FROM log').get() as { seq: number };
  const { at, kind, ...body } = event;
  db.prepare('INSERT INTO log (seq, at, kind, body) VALUES (?, ?, ?, ?)').run(
    seq,
    at,
    kind,
    JSON.stringify(body),
  );
  return { ...event, seq } as ProjectEvent;
}

/** The whole log, in order. */
export function readLog(db: Database): readonly ProjectEvent[] {
  const lines = db.prepare('SELECT seq, at, kind, body FROM log ORDER BY seq').all() as LogLine[];
  return lines.map(({ seq, at, kind, body }) => ({ seq, at, kind, ...JSON.parse(body) }) as ProjectEvent);
}
