import type { Database } from 'better-sqlite3';
import type { ProjectEvent } from '../model/events.ts';
import { MemoryRows } from '../model/memory-rows.ts';
import { nameKey } from '../model/names.ts';
import { eventsThatCount, foundations, replayFrom } from '../model/replay.ts';
import type { ModelChange } from '../model/rows.ts';
import { readEvent, readHandLog, readLog } from './log.ts';
import { MOST_IN_MEMORY, puttingInto, rebuild, writeDown } from './rebuild.ts';
import { rewind } from './rewind.ts';
import type { SqliteRows } from './rows.ts';
import { TABLES } from './schema.ts';

/**
 * Brings the projections to what they would have been, had an event that reaches back always been known: they are
 * taken back to the first event that it may change, and the log is worked through from there. Costs by what was said
 * since. Call inside a transaction, with the event in the log.
 */
export function reproject(db: Database, rows: SqliteRows, event: ProjectEvent): void {
  const meant = event.kind === 'undone' ? lastUndone(db, event.undoes) : event;
  if (!meant) return;
  const before = effectOfReview(rows, meant);
  rows.begin(0);
  // Words put right take the place of what was read again before.
  const onlyAdds = event.kind !== 'undone' && event.kind !== 'words-corrected';
  if (onlyAdds) for (const change of foundations([event])) rows.put(change);
  else if (foundations([meant]).length > 0) putFoundationsAnew(db, rows);
  if (before !== undefined && before === effectOfReview(rows, meant)) return;
  const from = firstReached(db, meant);
  if (from === undefined) return;
  if (from <= 1) rebuild(db, rows, readLog(db));
  else replayAgain(db, rows, from, event.seq);
}

/** The event that counts again, or no more, when this one is undone: undo may itself be undone. */
function lastUndone(db: Database, seq: number): ProjectEvent | undefined {
  const event = readEvent(db, seq);
  return event?.kind === 'undone' ? lastUndone(db, event.undoes) : event;
}

/** The place in the log of the first event that may come out another way; undefined when there is none. */
function firstReached(db: Database, event: ProjectEvent): number | undefined {
  const seqIn = (sql: string, key: string) => (db.prepare(sql).get(key) as { seq: number } | undefined)?.seq;
  switch (event.kind) {
    case 'note-accepted':
    case 'note-amended':
    case 'note-rejected':
      return seqIn('SELECT since AS seq FROM memos WHERE key = ?', event.noteId.split('.')[0] ?? '');
    case 'notes-accepted':
      return Math.min(
        ...event.noteIds.flatMap(
          (id) => seqIn('SELECT since AS seq FROM memos WHERE key = ?', id.split('.')[0] ?? '') ?? [],
        ),
      );
    case 'heard-again':
    case 'transcript-chosen':
    case 'words-corrected':
      return seqIn('SELECT since AS seq FROM memos WHERE key = ?', event.memoId);
    case 'words-learned':
      return seqIn('SELECT since AS seq FROM memos WHERE key = ?', event.memoId ?? '');
    case 'items-merged':
      return seqIn('SELECT seq FROM asked WHERE key = ?', nameKey(event.from));
    case 'items-split':
      return seqIn('SELECT seq FROM asked WHERE key = ?', nameKey(event.name));
    case 'tolerance-set':
      return 1;
    default:
      return event.seq;
  }
}

/**
 * What a review makes of its note, as far as the model goes: to agree with a note changes nothing in it. Likewise the
 * choice of the transcript that counts already.
 */
function effectOfReview(rows: SqliteRows, event: ProjectEvent): string | undefined {
  if (event.kind === 'transcript-chosen') {
    const version = rows.get('choices', event.memoId)?.version ?? 1;
    return rows.get('hearings', `${event.memoId}/${version}`) ? String(version) : 'first';
  }
  const effectOf = (noteId: string) => {
    const review = rows.get('reviews', noteId);
    return review?.review === 'rejected' ? 'rejected' : JSON.stringify(review?.fields ?? {});
  };
  switch (event.kind) {
    case 'note-accepted':
    case 'note-amended':
    case 'note-rejected':
      return effectOf(event.noteId);
    case 'notes-accepted':
      return event.noteIds.map(effectOf).join(' ');
    default:
      return undefined;
  }
}

/** Puts what was said of names and notes as the whole log leaves it, from the first row on that is another one. */
function putFoundationsAnew(db: Database, rows: SqliteRows): void {
  const changes = foundations(eventsThatCount(readHandLog(db)));
  for (const table of ['names', 'reviews', 'choices', 'rewordings'] as const) {
    const wanted = changes.filter((change) => change.table === table);
    const bodies = db.prepare(`SELECT body FROM ${table} ORDER BY ord`).all() as { body: string }[];
    let same = 0;
    while (same < bodies.length && bodies[same]?.body === JSON.stringify(wanted[same]?.row)) same++;
    db.prepare(`DELETE FROM ${table} WHERE ord > ?`).run(same);
    for (const change of wanted.slice(same)) rows.put(change);
  }
}

/** From this share of the log on it is quicker to load the model into memory, and work there, than to ask the disk. */
const SHARE_FOR_MEMORY = 1 / 6;

function replayAgain(db: Database, rows: SqliteRows, from: number, last: number): void {
  rewind(db, rows, from);
  const events = eventsThatCount(readLog(db, from));
  const isLong = last - from > last * SHARE_FOR_MEMORY;
  if (!isLong || last > MOST_IN_MEMORY) {
    replayFrom(rows, events, puttingInto(db, rows));
    return;
  }
  const memory = loaded(db);
  replayFrom(memory, events, puttingInto(db, memory));
  writeDown(db, rows, memory);
  rows.forget();
}

interface Line {
  readonly ord: number;
  readonly key: string;
  readonly since: number;
  readonly body: string;
}

/** The model as it stands on the disk, in memory. */
function loaded(db: Database): MemoryRows {
  const memory = new MemoryRows();
  for (const table of TABLES) {
    const lines = db.prepare(`SELECT ord, key, since, body FROM ${table} ORDER BY ord`).iterate();
    for (const { ord, key, since, body } of lines as IterableIterator<Line>)
      memory.load(table, { ord, key, since, row: JSON.parse(body) as ModelChange['row'] });
  }
  for (const { key, seq } of db.prepare('SELECT key, seq FROM asked').all() as { key: string; seq: number }[])
    memory.loadAsked(key, seq);
  return memory;
}
