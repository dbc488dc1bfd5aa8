/** Writes a site into a folder: each page whole, never over what a person changed, and away with pages that are past. */
import { createHash } from 'node:crypto';
import { appendFileSync, existsSync, mkdirSync, readFileSync, rmSync, statSync } from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';
import { array, record, string } from 'zod/mini';
import { EXIT, Problem } from '../problem.ts';
import { sweepBeside, sweepUnfinished } from '../unfinished.ts';
import { whyUnwritten } from '../unwritten.ts';
import { besideName, refusePlace, writeWhole } from './page-file.ts';

/** By folder, then by page: hashes of what was written there. */
const siteRecord = record(string(), record(string(), array(string())));
type PageHashes = Record<string, readonly string[]>;

export interface WrittenSite {
  readonly folder: string;
  readonly pages: number;
  /** Of those, the ones that were not there as they are. */
  readonly written: number;
  readonly removed: number;
  /** Pages that a person had changed, each with the name of the new one beside it. */
  readonly beside: readonly (readonly [left: string, fresh: string])[];
  /** Pages that are past, and were left because a person had changed them. */
  readonly left: readonly string[];
}

interface SiteFile {
  /** Relative, with "/" between. */
  readonly path: string;
  readonly text: string;
}

const hashOf = (bytes: string | Buffer) => createHash('sha256').update(bytes).digest('hex');

/** Paths that a site of ours can hold. The record is a file: whatever else it names is not touched. */
const OWN_PATH = /^(?:[a-z0-9-]+\/)?[A-Za-z0-9][A-Za-z0-9.-]*$/;

function readJson(file: string): Record<string, PageHashes> {
  try {
    return siteRecord.parse(JSON.parse(readFileSync(file, 'utf8')));
  } catch {
    // Without a record that can be read every page there counts as the person's own, which loses nothing.
    return {};
  }
}

/** One folder of pages, with what is known of those that were written there. */
class SiteFolder {
  readonly folder: string;
  readonly #journal: string;
  readonly #known = new Map<string, Set<string>>();
  readonly now: Record<string, string[]> = {};
  written = 0;

  constructor(folder: string, known: PageHashes, journal: string) {
    this.folder = folder;
    this.#journal = journal;
    for (const [path, hashes] of Object.entries(known)) this.#know(path, ...hashes);
    for (const line of existsSync(journal) ? readFileSync(journal, 'utf8').split('\n') : []) {
      const [hash, path] = line.split(' ');
      if (hash && path) this.#know(path, hash);
    }
  }

  #know(path: string, ...hashes: readonly string[]): void {
    if (OWN_PATH.test(path)) this.#known.set(path, new Set([...(this.#known.get(path) ?? []), ...hashes]));
  }

  /** Whether the file there is missing or was written by us and is as we wrote it. */
  isOurs(path: string, hash?: string): boolean {
    const file = join(this.folder, path);
    if (!existsSync(file)) return true;
    if (!statSync(file).isFile()) return false;
    const there = hashOf(readFileSync(file));
    return there === hash || Boolean(this.#known.get(path)?.has(there));
  }

  /** Writes a page; gives back where it stands, which is beside one that a person changed. */
  put({ path, text }: SiteFile): string {
    const hash = hashOf(text);
    const target = this.isOurs(path, hash)
      ? path
      : besideName(path, (candidate) => this.isOurs(candidate, hash));
    this.now[target] = [hash];
    const file = join(this.folder, target);
    if (existsSync(file) && hashOf(readFileSync(file)) === hash) return target;
    // Said first, so that a page written just before a power cut is known to be ours.
    appendFileSync(this.#journal, `${hash} ${target}\n`, { mode: 0o600 });
    mkdirSync(dirname(file), { recursive: true });
    writeWhole(file, text, false);
    this.written++;
    return target;
  }

  /** Takes away what a killed writing of these pages left under another name. */
  sweepUnfinished(): void {
    const namesIn = new Map<string, Set<string>>();
    for (const path of Object.keys(this.now)) {
      const folder = join(this.folder, dirname(path));
      namesIn.set(folder, (namesIn.get(folder) ?? new Set()).add(basename(path)));
    }
    for (const [folder, names] of namesIn) sweepUnfinished(folder, names);
  }

  /** Takes away pages that are past; gives back how many, and those that a person had changed. */
  sweep(): { readonly removed: number; readonly left: readonly string[] } {
    const past = [...this.#known.keys()].filter(
      (path) => !(path in this.now) && existsSync(join(this.folder, path)),
    );
    const ours = past.filter((path) => this.isOurs(path));
    for (const path of ours) rmSync(join(this.folder, path));
    return { removed: ours.length, left: past.filter((path) => !ours.includes(path)) };
  }
}

/**
 * Writes the pages of a site into `folder`. A page that a person changed is left, and the new one goes beside it; a page
 * that is past is taken away if it is as it was written. `home` is the project's own folder, which remembers what was
 * written. Throws a Problem when the folder cannot be written to.
 */
export function writeSite(
  folder: string,
  pages: Iterable<SiteFile>,
  home: string,
  onPage: (count: number) => void = () => {},
): WrittenSite {
  const wanted = resolve(folder);
  refusePlace(folder, wanted, home, 'folder');
  const recordFile = join(home, 'sites.json');
  const journal = join(home, `site-being-written-${hashOf(wanted).slice(0, 12)}`);
  const sites = readJson(recordFile);
  try {
    mkdirSync(wanted, { recursive: true });
    const site = new SiteFolder(wanted, sites[wanted] ?? {}, journal);
    const beside: [string, string][] = [];
    let count = 0;
    for (const page of pages) {
      const target = site.put(page);
      if (target !== page.path) beside.push([page.path, target]);
      onPage(++count);
    }
    const { removed, left } = site.sweep();
    writeWhole(recordFile, JSON.stringify({ ...sites, [wanted]: site.now }), true, 0o600);
    sweepBeside(recordFile);
    site.sweepUnfinished();
    rmSync(journal, { force: true });
    return { folder: wanted, pages: count, written: site.written, removed, beside, left };
  } catch (error) {
    if (error instanceof Problem) throw error;
    throw new Problem(`cannot write ${folder}: ${whyUnwritten(error)}`, {
      code: 'page-unwritable',
      exitCode: EXIT.unexpected,
      kept: 'the project, and any file of that name',
      next: 'name another folder with --out',
      cause: error,
    });
  }
}
