/**
 * The file that a backup is: an SQLite database of our own that holds the project's files in pieces, each file with its
 * length and the hash of its bytes, and one hash over the list of them. Its format number is SQLite's `user_version`.
 */
import { createHash, type Hash } from 'node:crypto';
import { closeSync, fstatSync, openSync, readSync, writeSync } from 'node:fs';
import type { Database } from 'better-sqlite3';
import { Sqlite } from '../store/sqlite.ts';
import { isKeptPath } from './kept-paths.ts';

/** Marks the file as a backup: "HeBk" in ASCII. */
export const BACKUP_ID = 0x4865426b;
/** Raised whenever older programs could no longer read a backup rightly. */
export const BACKUP_FORMAT = 1;

/** Bytes of a file that stand in one row: a long recording is never in memory whole. */
const PIECE = 1 << 20;

const SCHEMA = [
  'CREATE TABLE facts (name TEXT PRIMARY KEY, value TEXT NOT NULL) STRICT, WITHOUT ROWID',
  'CREATE TABLE files (path TEXT PRIMARY KEY, bytes INTEGER NOT NULL, modified INTEGER NOT NULL, sha256 TEXT NOT NULL) STRICT, WITHOUT ROWID',
  'CREATE TABLE pieces (id INTEGER PRIMARY KEY, path TEXT NOT NULL, part INTEGER NOT NULL, body BLOB NOT NULL) STRICT',
  'CREATE UNIQUE INDEX pieces_in_order ON pieces (path, part)',
] as const;

/** One file as the backup lists it. */
export interface ListedFile {
  readonly path: string;
  readonly bytes: number;
  /** When it was last changed: milliseconds since 1970. */
  readonly modified: number;
  readonly sha256: string;
}

/** Lays a new backup out in an empty file. Nothing of it is whole before `seal`. */
export function layOutContainer(file: string): Database {
  const db = new Sqlite(file, { fileMustExist: true });
  // Nobody reads the file before it is whole, and what is not whole is thrown away: no journal is needed.
  db.pragma('journal_mode = OFF');
  db.pragma('synchronous = OFF');
  db.pragma(`application_id = ${BACKUP_ID}`);
  db.pragma(`user_version = ${BACKUP_FORMAT}`);
  db.exec('BEGIN');
  for (const sql of SCHEMA) db.exec(sql);
  return db;
}

/** Copies a file into a backup under `path`; says how it is listed there. */
export function putFile(db: Database, path: string, file: string): ListedFile {
  const put = db.prepare('INSERT INTO pieces (path, part, body) VALUES (?, ?, ?)');
  const hash = createHash('sha256');
  const handle = openSync(file, 'r');
  try {
    const { size, mtimeMs } = fstatSync(handle);
    const piece = Buffer.alloc(PIECE);
    let bytes = 0;
    // A recording in progress grows meanwhile: it is taken as long as it was at first.
    for (let part = 0; bytes < size; part++) {
      const read = readSync(handle, piece, 0, Math.min(PIECE, size - bytes), bytes);
      if (read === 0) break;
      hash.update(piece.subarray(0, read));
      put.run(path, part, piece.subarray(0, read));
      bytes += read;
    }
    const listed = { path, bytes, modified: Math.trunc(mtimeMs), sha256: hash.digest('hex') };
    db.prepare(
      'INSERT INTO files (path, bytes, modified, sha256) VALUES (@path, @bytes, @modified, @sha256)',
    ).run(listed);
    return listed;
  } finally {
    closeSync(handle);
  }
}

/** Writes the hash over the list and what else is told of the backup. */
export function seal(db: Database, facts: { readonly madeAt: string; readonly program: string }): void {
  const put = db.prepare('INSERT INTO facts (name, value) VALUES (?, ?)');
  put.run('made-at', facts.madeAt);
  put.run('program', facts.program);
  put.run('list-sha256', listHash(db));
  db.exec('COMMIT');
}

const LIST = 'SELECT path, bytes, modified, sha256 FROM files ORDER BY path';

function listHash(db: Database): string {
  const hash = createHash('sha256');
  for (const line of db.prepare(LIST).raw().iterate()) hash.update(`${JSON.stringify(line)}\n`);
  return hash.digest('hex');
}

/** A backup cannot be trusted; the message says which part. */
export class ContainerFault extends Error {}

/** Lengths and times that a number holds exactly; the latest time that dates reach is less. */
const isCount = (value: number) => value >= 0 && value <= 8.64e15;

/**
 * The files that a backup lists, once its structure, its list and every path in it hold. Throws a ContainerFault or an
 * SQLite error otherwise. The bytes of the files are checked by `takeOut` and `checkFile`.
 */
export function listFiles(db: Database): readonly ListedFile[] {
  db.pragma('trusted_schema = OFF');
  db.pragma('cell_size_check = ON');
  // Tables of another shape could be views or rules that run when they are read.
  const found = db
    .prepare('SELECT sql FROM sqlite_schema WHERE sql IS NOT NULL ORDER BY rowid')
    .pluck()
    .all();
  if (JSON.stringify(found) !== JSON.stringify(SCHEMA))
    throw new ContainerFault('its tables are not those of a backup');
  const structure = db.pragma('quick_check(1)', { simple: true });
  if (structure !== 'ok') throw new ContainerFault('its structure is broken');
  const said = db.prepare("SELECT value FROM facts WHERE name = 'list-sha256'").pluck().get();
  if (said !== listHash(db)) throw new ContainerFault('its list of files was changed or is not whole');
  const files = db.prepare(LIST).all() as ListedFile[];
  for (const { path, bytes, modified } of files) {
    if (!isKeptPath(path)) throw new ContainerFault('it names a file that no project has');
    if (!isCount(bytes) || !isCount(modified)) throw new ContainerFault('its list holds an absurd number');
  }
  const stray = db
    .prepare('SELECT 1 FROM pieces WHERE path NOT IN (SELECT path FROM files) OR length(body) > ?')
    .get(PIECE);
  if (stray !== undefined) throw new ContainerFault('it holds bytes that belong to no file');
  return files;
}

/** Reads a listed file's bytes through `each`; throws a ContainerFault when they are not the ones that were put in. */
function readThrough(db: Database, file: ListedFile, each: (piece: Buffer) => void): void {
  const hash: Hash = createHash('sha256');
  let bytes = 0;
  const pieces = db
    .prepare('SELECT body FROM pieces WHERE path = ? ORDER BY part')
    .pluck()
    .iterate(file.path);
  for (const piece of pieces as IterableIterator<Buffer>) {
    bytes += piece.length;
    if (bytes > file.bytes) break;
    hash.update(piece);
    each(piece);
  }
  if (bytes !== file.bytes || hash.digest('hex') !== file.sha256)
    throw new ContainerFault(`the bytes of ${file.path} were changed or are not whole`);
}

/** Checks that a listed file's bytes are those that were put in. */
export function checkFile(db: Database, file: ListedFile): void {
  readThrough(db, file, () => {});
}

/** Writes a listed file to `target`, which must be a handle of an empty file. */
export function takeOut(db: Database, file: ListedFile, target: number): void {
  readThrough(db, file, (piece) => {
    for (let at = 0; at < piece.length; ) at += writeSync(target, piece, at);
  });
}
