/** Makes a project again from its export. The export holds every word and every change by hand, and no sound. */
import { createHash } from 'node:crypto';
import {
  closeSync,
  fsyncSync,
  mkdirSync,
  openSync,
  renameSync,
  rmdirSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { join, resolve } from 'node:path';
import { isDeepStrictEqual } from 'node:util';
import { makeEmptyFolder } from '../empty-folder.ts';
import { HOME } from '../find-project.ts';
import type { ProjectEvent, RecordingKept } from '../model/events.ts';
import { exportDocument } from '../model/export.ts';
import { EXIT, Problem } from '../problem.ts';
import { storeFromLog } from '../store/store.ts';
import { unfinishedName } from '../unfinished.ts';
import { whyUnwritten } from '../unwritten.ts';
import { DocumentFault, type ReadDocument, readDocument } from './read-document.ts';

const OCCUPIED = { doing: 'import', code: 'import-occupied' };

export interface Imported {
  readonly events: number;
  readonly memos: number;
  /** Memos whose original is here again, because its words are all of it. */
  readonly originals: number;
  /** Names of the recordings whose sound stayed behind. */
  readonly absent: readonly string[];
  /** Parts of the document that come out otherwise in this program, or that were changed by hand in it. */
  readonly differs: readonly string[];
}

/**
 * Makes the project of an export in `into`, which is made where it is missing and must be empty. `name` is what the
 * person calls the document. Throws a Problem when it is none, is damaged or newer; the folder is as it was then.
 */
export function importProject(text: string, name: string, into: string): Imported {
  const read = inDocument(name, () => readDocument(text));
  const folder = resolve(into);
  let isMade = false;
  try {
    isMade = makeEmptyFolder(folder, into, OCCUPIED);
    const home = unfinishedName(join(folder, HOME));
    try {
      mkdirSync(join(home, 'originals'), { recursive: true, mode: 0o700 });
      const imported = layOut(read, home, name);
      renameSync(home, join(folder, HOME));
      return imported;
    } finally {
      rmSync(home, { recursive: true, force: true });
    }
  } catch (error) {
    if (isMade) rmdirSync(folder);
    throw error instanceof Problem ? error : unimported(into, error);
  }
}

function layOut({ log, document }: ReadDocument, home: string, name: string): Imported {
  const kept = log.filter((event) => event.kind === 'recording-kept');
  const texts = textsOf(log);
  const back = kept.filter((event) => writeText(home, event, texts.get(event.memoId)));
  const absent = kept.filter((event) => !back.includes(event));
  const database = join(home, 'project.db');
  const hashes = absent.map(({ source }) => source.sha256);
  return inDocument(name, () => {
    const store = storeFromLog(database, log, hashes);
    try {
      // Whatever a page can show is worked out once: a log that breaks that is no log of ours.
      const now = exportDocument(store.rows, store.log());
      return {
        events: log.length,
        memos: kept.length,
        originals: back.length,
        absent: absent.map(({ source }) => source.name),
        differs: differing(document, JSON.parse(JSON.stringify(now)) as ReadDocument['document']),
      };
    } finally {
      store.close();
    }
  });
}

function textsOf(log: readonly ProjectEvent[]): ReadonlyMap<string, string> {
  return new Map(
    log.flatMap((event) =>
      event.kind === 'transcript-made' ? [[event.memoId, event.transcript.text] as const] : [],
    ),
  );
}

const BYTE_ORDER_MARK = '\ufeff';

/** Writes the original of a text memo where its words give the very bytes that were taken; says whether they do. */
function writeText(home: string, { source, file }: RecordingKept, text: string | undefined): boolean {
  if (source.kind !== 'text' || text === undefined) return false;
  const bytes = [text, BYTE_ORDER_MARK + text]
    .map((written) => Buffer.from(written))
    .find((written) => createHash('sha256').update(written).digest('hex') === source.sha256);
  if (!bytes) return false;
  const handle = openSync(join(home, file), 'wx', 0o600);
  try {
    writeFileSync(handle, bytes);
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
  return true;
}

function differing(before: ReadDocument['document'], now: ReadDocument['document']): readonly string[] {
  return Object.keys(now).filter((part) => !isDeepStrictEqual(before[part], now[part]));
}

/** Runs what takes the document for what it says it is; whatever is wrong with it becomes one kind of Problem. */
function inDocument<T>(name: string, work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (error instanceof Problem) throw error;
    // A failure of the disk that is written to is none of the document.
    if ((error as NodeJS.ErrnoException).syscall !== undefined) throw error;
    const fault =
      error instanceof DocumentFault ? error : new DocumentFault('its log cannot be worked through');
    throw new Problem(`cannot import ${name}: ${fault.message}`, {
      code: fault.isNewer ? 'import-too-new' : 'import-unread',
      exitCode: EXIT.partly,
      kept: 'the document was left as it was, and nothing was written',
      next: fault.isNewer
        ? 'use the newer program that wrote it'
        : 'export the project again: hearwright export --json > FILE',
      cause: error,
    });
  }
}

function unimported(into: string, error: unknown): Problem {
  return new Problem(`cannot import into ${into}: ${whyUnwritten(error)}`, {
    code: 'import-unwritten',
    exitCode: EXIT.unexpected,
    kept: 'the document; nothing was written',
    next: 'name a folder that may be written to and has room',
    cause: error,
  });
}
