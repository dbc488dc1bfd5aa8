import type { Database } from 'better-sqlite3';
import type { HouseUnits } from '../language/notes.ts';
import type { NewEvent, ProjectEvent } from '../model/events.ts';
import { changesNow, reachesBack } from '../model/replay.ts';
import type { MemoRow, ProjectRows } from '../model/rows.ts';
import { absentOriginals, noteAbsent, notePresent } from './absent-originals.ts';
import { copyDatabase, type StoreCopy } from './copy.ts';
import { appendToLog, readHandLog, readLog } from './log.ts';
import { asProblem, createDatabase, openDatabase } from './open.ts';
import { puttingInto, rebuild } from './rebuild.ts';
import { reproject } from './reproject.ts';
import { SqliteRows } from './rows.ts';
import { type Said, searchSaid } from './search.ts';
import { type Upgraded, upgrade } from './upgrade.ts';
import { type Verdict, verifyDatabase } from './verify.ts';

export interface NewProject {
  readonly name: string;
  readonly units: HouseUnits;
  readonly region?: string;
  /** ISO 8601 instant of making. */
  readonly at: string;
}

/** Makes a project's database at `file` (or `:memory:`). */
export function createStore(file: string, project: NewProject): ProjectStore {
  const store = new ProjectStore(createDatabase(file), file);
  store.append([{ kind: 'project-made', ...project }]);
  return store;
}

/**
 * Makes a project's database from the log of another. `absent` are the hashes of originals that do not come along.
 * Throws what the model throws on a log that is none.
 */
export function storeFromLog(
  file: string,
  log: readonly ProjectEvent[],
  absent: readonly string[],
): ProjectStore {
  const db = createDatabase(file);
  try {
    db.transaction(() => {
      for (const { seq: _place, ...event } of log) appendToLog(db, event as NewEvent);
      rebuild(db, new SqliteRows(db), log);
      noteAbsent(db, absent);
    })();
    return new ProjectStore(db, file);
  } catch (error) {
    db.close();
    throw error;
  }
}

/**
 * Opens a project's database and brings it up to date; throws a Problem with exit code 4 when it cannot be opened.
 * `withCopy`: whether a database of an older format is first copied beside itself.
 */
export function openStore(
  file: string,
  { withCopy = true }: { readonly withCopy?: boolean } = {},
): ProjectStore {
  const db = openDatabase(file);
  try {
    return new ProjectStore(db, file, upgrade(db, file, withCopy));
  } catch (error) {
    db.close();
    throw asProblem(error, file);
  }
}

/** A project on disk: the log, and the model rebuilt from it. */
export class ProjectStore {
  readonly file: string;
  readonly rows: ProjectRows;
  /** What it was before it was opened, where that was of an older format. */
  readonly upgraded: Upgraded | undefined;
  readonly #db: Database;
  readonly #rows: SqliteRows;

  constructor(db: Database, file: string, upgraded?: Upgraded) {
    this.#db = db;
    this.file = file;
    this.upgraded = upgraded;
    this.#rows = new SqliteRows(db);
    this.rows = this.#rows;
  }

  /**
   * Writes events and what they change, all or nothing, and gives them back with their places in the log. Events
   * that depend on the model, such as a new memo's id, are made inside: no other process writes in between.
   */
  append(
    events: readonly NewEvent[] | ((rows: ProjectRows) => readonly NewEvent[]),
  ): readonly ProjectEvent[] {
    return this.#inTransaction(() => {
      const made = typeof events === 'function' ? events(this.rows) : events;
      return made.map((event) => this.#write(event));
    });
  }

  /** What the model would be with these events. Nothing of them stays. */
  lookAhead<T>(events: readonly NewEvent[], look: (rows: ProjectRows) => T): T {
    const seen: T[] = [];
    const takenBack = new Error('a look ahead is taken back');
    try {
      this.#inTransaction(() => {
        for (const event of events) this.#write(event);
        seen.push(look(this.rows));
        throw takenBack;
      });
    } catch (error) {
      if (error !== takenBack) throw error;
    }
    return seen[0] as T;
  }

  #inTransaction<T>(work: () => T): T {
    return this.#guarded(() => {
      try {
        return this.#db
          .transaction(() => {
            this.#rows.refresh();
            return work();
          })
          .immediate();
      } catch (error) {
        this.#rows.forget();
        throw error;
      }
    });
  }

  #write(event: NewEvent): ProjectEvent {
    const written = appendToLog(this.#db, event);
    if (reachesBack(this.#rows, written)) reproject(this.#db, this.#rows, written);
    else {
      const into = puttingInto(this.#db, this.#rows);
      into.begin(written.seq);
      for (const change of changesNow(this.#rows, written)) into.put(change);
    }
    return written;
  }

  log(): readonly ProjectEvent[] {
    return this.#guarded(() => readLog(this.#db));
  }

  /** Of the log only what people did by hand. */
  handLog(): readonly ProjectEvent[] {
    return this.#guarded(() => readHandLog(this.#db));
  }

  /** Place of the last event in the log. */
  lastSeq(): number {
    return this.#guarded(
      () => (this.#db.prepare('SELECT coalesce(max(seq), 0) AS n FROM log').get() as { n: number }).n,
    );
  }

  /** The memo that was taken from these bytes, if any. */
  memoWithHash(sha256: string): MemoRow | undefined {
    return this.#guarded(() => {
      const row = this.#db.prepare('SELECT body FROM memos WHERE sha256 = ? ORDER BY ord').get(sha256) as
        | { body: string }
        | undefined;
      return row && (JSON.parse(row.body) as MemoRow);
    });
  }

  memoCount(): number {
    return this.#guarded(
      () => (this.#db.prepare('SELECT count(*) AS n FROM memos').get() as { n: number }).n,
    );
  }

  /** Memos that were kept but not read, in the order in which they were taken. */
  unreadMemos(): readonly MemoRow[] {
    return this.#guarded(() => {
      const rows = this.#db
        .prepare("SELECT body FROM memos WHERE json_extract(body, '$.notes') IS NULL ORDER BY ord")
        .all() as { body: string }[];
      return rows.map(({ body }) => JSON.parse(body) as MemoRow);
    });
  }

  /** How many memos were kept but not read. */
  unreadCount(): number {
    return this.#guarded(
      () =>
        this.#db
          .prepare("SELECT count(*) FROM memos WHERE json_extract(body, '$.notes') IS NULL")
          .pluck()
          .get() as number,
    );
  }

  /** Talk that holds these words, best first. */
  search(words: readonly string[], naming = words, limit = 20): readonly Said[] {
    return this.#guarded(() => searchSaid(this.#db, words, limit, naming));
  }

  /** Builds the model anew from the log, in one transaction. */
  rebuild(): void {
    this.#inTransaction(() => rebuild(this.#db, this.#rows, readLog(this.#db)));
  }

  verify(): Verdict {
    return this.#guarded(() => verifyDatabase(this.#db));
  }

  /** Runs what only reads, while nothing that others write shows in between. */
  atOneInstant<T>(look: () => T): T {
    return this.#guarded(() => this.#db.transaction(look).deferred());
  }

  /** Hashes of originals that were never here: an import left them behind. */
  absentOriginals(): ReadonlySet<string> {
    return this.#guarded(() => absentOriginals(this.#db));
  }

  /** An original that was missing is here now. */
  noteOriginalBack(sha256: string): void {
    this.#inTransaction(() => notePresent(this.#db, sha256));
  }

  /** Copies the database, as it is at one instant, into an empty file. Throws SQLite's own error. */
  copyTo(file: string): Promise<StoreCopy> {
    return copyDatabase(this.#db, file);
  }

  close(): void {
    this.#db.close();
  }

  #guarded<T>(work: () => T): T {
    try {
      return work();
    } catch (error) {
      throw asProblem(error, this.file);
    }
  }
}
