/** Writes pages to files: whole or not at all, and never over what a person has changed. */
import { createHash } from 'node:crypto';
import {
  closeSync,
  existsSync,
  fsyncSync,
  mkdirSync,
  openSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { dirname, extname, join, resolve } from 'node:path';
import { record, string } from 'zod/mini';
import { whyUnfit } from '../fit-names.ts';
import { asOnDisk, isInside } from '../inside.ts';
import { EXIT, Problem } from '../problem.ts';
import { replaceFile } from '../replacing.ts';
import { ticksOf, withoutTicks, withTicks } from '../reports/boxes.ts';
import { sweepBeside, unfinishedName } from '../unfinished.ts';
import { whyUnwritten } from '../unwritten.ts';

/** Pages that were written, by path, with the hash of what was written. */
const pageRecord = record(string(), string());
type PageRecord = Record<string, string>;

/** Byte for byte but for the boxes: a tick is the person's, and still leaves the page ours to rewrite. */
function sealOf(bytes: Buffer): string {
  const page = withoutTicks(bytes.toString('latin1'));
  return createHash('sha256').update(page, 'latin1').digest('hex');
}

/**
 * Writes a whole file by way of a temporary name beside it. `isForced` waits until it is on the disk: without, a power
 * cut may lose it, which is enough for what can be written again at any time. `mode`: who may read and write it, less what
 * the person takes from every new file; what is the project's own is for its owner only.
 */
export function writeWhole(file: string, text: string, isForced = true, mode = 0o666): void {
  const temporary = unfinishedName(file);
  try {
    const handle = openSync(temporary, 'wx', mode);
    try {
      writeFileSync(handle, text);
      if (isForced) fsyncSync(handle);
    } finally {
      closeSync(handle);
    }
    replaceFile(temporary, file);
  } catch (error) {
    rmSync(temporary, { force: true });
    throw error;
  }
}

function readRecord(file: string): PageRecord {
  try {
    return pageRecord.parse(JSON.parse(readFileSync(file, 'utf8')));
  } catch {
    // Without a record that can be read every existing page counts as the person's own, which loses nothing.
    return {};
  }
}

/** The first name of the kind `page.1.md` that is free, or holds what was written there before. */
export function besideName(file: string, mayReplace: (candidate: string) => boolean): string {
  const extension = extname(file);
  const stem = file.slice(0, file.length - extension.length);
  for (let number = 1; ; number++) {
    const candidate = `${stem}.${number}${extension}`;
    if (mayReplace(candidate)) return candidate;
  }
}

/** Throws a Problem where pages must not go: into the project's own folder, or under a name that no system keeps. */
export function refusePlace(asNamed: string, wanted: string, home: string, what: 'file' | 'folder'): void {
  if (isInside(asOnDisk(home), asOnDisk(wanted))) {
    throw new Problem(`cannot write ${asNamed}: that folder is the project's own`, {
      code: 'page-inside-project',
      exitCode: EXIT.usage,
      next: `name a ${what} outside of it`,
    });
  }
  const reason = whyUnfit(wanted);
  if (reason === undefined) return;
  throw new Problem(`cannot write ${asNamed}: ${reason}`, {
    code: 'page-unwritable',
    exitCode: EXIT.unexpected,
    kept: 'the project, and any file of that name',
    next: `name another ${what} with --out`,
  });
}

export interface WrittenPage {
  readonly file: string;
  /** The page that was asked for is the person's own by now, and this one stands beside it. */
  readonly beside: boolean;
  /** Tasks whose boxes a person had ticked: they are ticked on the new page too. */
  readonly ticked: readonly string[];
}

/** Boxes that are ticked on the page that is written over, else on the one that was asked for. */
function ticksBefore(files: readonly string[]): ReadonlySet<string> {
  const file = files.find((one) => existsSync(one) && statSync(one).isFile());
  return file === undefined ? new Set() : ticksOf(readFileSync(file, 'utf8'));
}

/**
 * Writes `text` to `file`. Where the file holds anything but what was last written there, the page goes beside it.
 * Ticked boxes are no change: they are ticked on the new page too.
 * `recordFile` remembers what was written. Throws a Problem when the folder cannot be written to.
 */
export function writePage(file: string, text: string, recordFile: string): WrittenPage {
  const wanted = resolve(file);
  refusePlace(file, wanted, dirname(recordFile), 'file');
  const record = readRecord(recordFile);
  const seal = sealOf(Buffer.from(text));
  const mayReplace = (candidate: string) =>
    !existsSync(candidate) ||
    (statSync(candidate).isFile() && [record[candidate], seal].includes(sealOf(readFileSync(candidate))));
  try {
    mkdirSync(dirname(wanted), { recursive: true });
    const target = mayReplace(wanted) ? wanted : besideName(wanted, mayReplace);
    const page = withTicks(text, ticksBefore([target, wanted]));
    writeWhole(target, page);
    writeWhole(recordFile, JSON.stringify({ ...record, [target]: seal }, null, 1), true, 0o600);
    for (const written of [target, recordFile]) sweepBeside(written);
    return { file: target, beside: target !== wanted, ticked: [...ticksOf(page)] };
  } catch (error) {
    throw new Problem(`cannot write ${file}: ${whyUnwritten(error)}`, {
      code: 'page-unwritable',
      exitCode: EXIT.unexpected,
      kept: 'the project, and any file of that name',
      next: 'name another file with --out',
      cause: error,
    });
  }
}

/** Where a project remembers the pages it wrote. */
export function pageRecordOf(projectFolder: string): string {
  return join(projectFolder, '.hearwright', 'pages.json');
}
