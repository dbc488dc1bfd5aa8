/** Opens a backup for reading only, or says why not. */
import { closeSync, openSync, readSync, statSync } from 'node:fs';
import type { Database } from 'better-sqlite3';
import { EXIT, Problem } from '../problem.ts';
import { Sqlite } from '../store/sqlite.ts';
import { BACKUP_FORMAT, BACKUP_ID, ContainerFault } from './container.ts';

/**
 * Places in an SQLite file. Source: the file format's description, https://www.sqlite.org/fileformat2.html, section 1.3.
 */
const HEADER = 'SQLite format 3\0';
const READ_VERSION = 19;
const USER_VERSION = 60;
const APPLICATION_ID = 68;
const HEADER_LENGTH = 100;

function headerOf(file: string): Buffer {
  const header = Buffer.alloc(HEADER_LENGTH);
  const handle = openSync(file, 'r');
  try {
    readSync(handle, header, 0, HEADER_LENGTH, 0);
  } finally {
    closeSync(handle);
  }
  return header;
}

const isMarked = (header: Buffer) =>
  header.toString('latin1', 0, HEADER.length) === HEADER && header.readUInt32BE(APPLICATION_ID) === BACKUP_ID;

/** Whether a file is a backup of this program, of any format. */
export function isBackup(file: string): boolean {
  return isMarked(headerOf(file));
}

/** Opens a backup. Throws a Problem, exit code 4. */
export function openContainer(file: string): Database {
  let header: Buffer;
  try {
    if (!statSync(file).isFile()) throw Object.assign(new Error('it is no file'), { code: 'EISDIR' });
    header = headerOf(file);
  } catch (error) {
    throw unreadable(file, error);
  }
  if (!isMarked(header)) throw notABackup(file);
  const format = header.readUInt32BE(USER_VERSION);
  if (format > BACKUP_FORMAT)
    throw tooNew(file, `has format ${format}, and this program reads up to ${BACKUP_FORMAT}`);
  // A backup has no log beside it: one that asks for it would have files made next to it by being read.
  if (header[READ_VERSION] !== 1) throw damagedBackup(file, new ContainerFault('it is not in one file'));
  try {
    return new Sqlite(file, { readonly: true, fileMustExist: true });
  } catch (error) {
    throw error instanceof Problem ? error : damagedBackup(file, error);
  }
}

function unreadable(file: string, error: unknown): Problem {
  const { code, message } = error as NodeJS.ErrnoException;
  const reason =
    code === 'ENOENT'
      ? 'there is no such file'
      : code === 'EISDIR'
        ? 'it is no ordinary file'
        : code === 'EACCES'
          ? 'it may not be read'
          : message;
  return new Problem(`cannot read the backup ${file}: ${reason}`, {
    code: 'backup-unreadable',
    exitCode: EXIT.damaged,
    kept: 'nothing was written',
    next: 'name a file that hearwright backup wrote',
    cause: error,
  });
}

function notABackup(file: string): Problem {
  return new Problem(`${file} is not a backup of this program`, {
    code: 'not-a-backup',
    exitCode: EXIT.damaged,
    kept: 'nothing was written',
    next: 'name a file that hearwright backup wrote',
  });
}

/** A backup, or the project in it, is of a format that this program does not know yet. */
export function tooNew(file: string, why: string): Problem {
  return new Problem(`the backup ${file} ${why}`, {
    code: 'backup-too-new',
    exitCode: EXIT.damaged,
    kept: 'nothing was written',
    next: 'use the newer program that wrote it',
  });
}

/** Turns what is wrong inside a backup into what a person can act on. */
export function damagedBackup(file: string, error: unknown): Problem {
  return new Problem(`the backup ${file} is damaged: ${(error as Error).message}`, {
    code: 'backup-damaged',
    exitCode: EXIT.damaged,
    kept: 'the backup was left as it was, and nothing was written',
    next: 'copy it again from where it came, or take an older backup',
    cause: error,
  });
}
