import type { Database } from 'better-sqlite3';
import type { NewEvent, ProjectEvent } from '../model/events.ts';
import { prepared } from './prepared.ts';
import { BY_HAND } from './schema.ts';

interface LogLine {
  readonly seq: number;
  readonly at: string;
  readonly kind: string;
  readonly body: string;
}

/** Writes one event at the end of the log and gives it back with its place. Call inside a transaction. */
export function appendToLog(db: Database, event: NewEvent): ProjectEvent {
  const { seq } = prepared(db, 'SELECT coalesce(max(seq), 0) + 1 AS seq FROM log').get() as { seq: number };
  const { at, kind, ...body } = event;
  prepared(db, 'INSERT INTO log (seq, at, kind, body) VALUES (?, ?, ?, ?)').run(
    seq,
    at,
    kind,
    JSON.stringify(body),
  );
  return { ...event, seq } as ProjectEvent;
}

/** The log from one place on, in order. */
export function readLog(db: Database, from = 1): readonly ProjectEvent[] {
  return events(db.prepare('SELECT seq, at, kind, body FROM log WHERE seq >= ? ORDER BY seq').all(from));
}

/** Everything in the log but memos and what was read from them: what people did by hand. */
export function readHandLog(db: Database): readonly ProjectEvent[] {
  return events(db.prepare(`SELECT seq, at, kind, body FROM log WHERE ${BY_HAND} ORDER BY seq`).all());
}

/** One event by its place. */
export function readEvent(db: Database, seq: number): ProjectEvent | undefined {
  return events(db.prepare('SELECT seq, at, kind, body FROM log WHERE seq = ?').all(seq))[0];
}

function events(lines: readonly unknown[]): readonly ProjectEvent[] {
  return (lines as readonly LogLine[]).map(
    ({ seq, at, kind, body }) => ({ seq, at, kind, ...JSON.parse(body) }) as ProjectEvent,
  );
}
