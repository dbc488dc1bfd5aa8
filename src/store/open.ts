import { chmodSync, closeSync, existsSync, openSync, readSync, rmSync, statfsSync, statSync } from 'node:fs';
import { dirname } from 'node:path';
import type { Database } from 'better-sqlite3';
import { EXIT, Problem } from '../problem.ts';
import { signModel } from './made-by.ts';
import { APPLICATION_ID, FORMAT, layOut } from './schema.ts';
import { Sqlite } from './sqlite.ts';

/** How long one process waits for another that is writing. */
const BUSY_MS = 5000;
const MEMORY = ':memory:';

/** Makes a new database file, readable by its owner only. Throws a Problem when one is there already. */
export function createDatabase(file: string): Database {
  if (file !== MEMORY && existsSync(file)) {
    throw new Problem(`a project is already at ${file}`, {
      code: 'project-exists',
      exitCode: EXIT.usage,
      kept: 'the project there was left as it was',
      next: 'take memos into it, or choose another folder',
    });
  }
  if (file !== MEMORY) closeSync(openSync(file, 'wx', 0o600));
  try {
    const db = new Sqlite(file);
    settle(db);
    db.transaction(() => {
      layOut(db);
      signModel(db);
      db.pragma(`application_id = ${APPLICATION_ID}`);
      db.pragma(`user_version = ${FORMAT}`);
    })();
    return db;
  } catch (error) {
    // A file that was never filled would stand in the way of the next try, and look like a stranger's.
    if (file !== MEMORY) rmSync(file, { force: true });
    throw error;
  }
}

/**
 * Opens a project's database. Throws a Problem with exit code 4 when the file is missing, is no project, is
 * damaged, or was written by a newer format.
 */
export function openDatabase(file: string): Database {
  if (!existsSync(file)) {
    throw new Problem(`no project at ${file}`, {
      code: 'project-missing',
      exitCode: EXIT.damaged,
      next: 'make one with: hearwright init',
    });
  }
  if (statSync(file).size === 0) throw neverMade(file);
  if (!hasSqliteHeader(file)) throw notAProject(file);
  let db: Database | undefined;
  try {
    db = new Sqlite(file, { fileMustExist: true });
    const id = db.pragma('application_id', { simple: true });
    const format = db.pragma('user_version', { simple: true }) as number;
    if (id !== APPLICATION_ID) throw notAProject(file);
    if (format > FORMAT) throw tooNew(file, format);
    settle(db);
    db.prepare('SELECT seq FROM log ORDER BY seq DESC LIMIT 1').get();
    chmodSync(file, 0o600);
    return db;
  } catch (error) {
    db?.close();
    throw asProblem(error, file);
  }
}

function settle(db: Database): void {
  db.pragma(`busy_timeout = ${BUSY_MS}`);
  db.pragma('journal_mode = WAL');
  db.pragma('synchronous = FULL');
  db.pragma('foreign_keys = ON');
  db.pragma('trusted_schema = OFF');
}

/** SQLite files begin with these 16 bytes. Source: the file format's description, https://www.sqlite.org/fileformat2.html */
const HEADER = 'SQLite format 3\0';

function hasSqliteHeader(file: string): boolean {
  const bytes = Buffer.alloc(HEADER.length);
  const handle = openSync(file, 'r');
  try {
    readSync(handle, bytes, 0, HEADER.length, 0);
  } finally {
    closeSync(handle);
  }
  return bytes.toString('latin1') === HEADER;
}

function neverMade(file: string): Problem {
  return new Problem(`${file} is empty: making the project was cut off`, {
    code: 'project-missing',
    exitCode: EXIT.damaged,
    kept: 'no memo was in it yet',
    next: 'make it again: hearwright init',
  });
}

function notAProject(file: string): Problem {
  return new Problem(`${file} is not a project of this program`, {
    code: 'not-a-project',
    exitCode: EXIT.damaged,
    kept: 'the file was left as it was',
    next: 'name the project folder with --project',
  });
}

function tooNew(file: string, format: number): Problem {
  return new Problem(`${file} has format ${format}, and this program reads up to ${FORMAT}`, {
    code: 'format-too-new',
    exitCode: EXIT.damaged,
    kept: 'the project was left as it was',
    next: 'use the newer program that wrote it',
  });
}

/** Turns a failure of SQLite into what a person can act on; other errors pass unchanged. */
export function asProblem(error: unknown, file: string): unknown {
  // A row that is no JSON any more was spoilt on the disk: none is written that way.
  if (error instanceof SyntaxError) return damaged(error, file);
  if (!(error instanceof Sqlite.SqliteError)) return error;
  if (/^SQLITE_(CORRUPT|NOTADB|FORMAT)/.test(error.code) || /^no such (table|column)/.test(error.message))
    return damaged(error, file);
  if (/^SQLITE_(BUSY|LOCKED)/.test(error.code)) {
    return new Problem(`another program is writing to ${file}`, {
      code: 'project-busy',
      exitCode: EXIT.unexpected,
      kept: 'nothing was written by this one',
      next: 'wait until the other has finished, then try again',
      cause: error,
    });
  }
  if (/^SQLITE_(FULL|IOERR|READONLY|CANTOPEN)/.test(error.code)) {
    const isFull = error.code === 'SQLITE_FULL' || (error.code.startsWith('SQLITE_IOERR') && !hasRoom(file));
    return new Problem(`cannot write to ${file}: ${isFull ? 'the disk is full' : error.message}`, {
      code: 'project-unwritable',
      exitCode: EXIT.unexpected,
      kept: 'everything written before',
      next: 'see that the disk has room and the folder may be written to, then try again',
      cause: error,
    });
  }
  return error;
}

/**
 * Whether the disk has room for what SQLite keeps beside an open database: 32 kB that processes share, and the first
 * pages of its log. Without, opening fails as "disk I/O error", which tells nobody what to do.
 */
function hasRoom(file: string): boolean {
  try {
    const { bavail, bsize } = statfsSync(dirname(file));
    return bavail * bsize >= LEAST_ROOM;
  } catch {
    return true;
  }
}
const LEAST_ROOM = 64 * 1024;

function damaged(error: Error, file: string): Problem {
  return new Problem(`the project's database ${file} is damaged: ${error.message}`, {
    code: 'project-damaged',
    exitCode: EXIT.damaged,
    kept: 'the recordings beside it are whole files and were not touched',
    next: 'put the database back from a copy, or make a new project and take the recordings again',
    cause: error,
  });
}
