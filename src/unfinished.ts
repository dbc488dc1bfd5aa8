/**
 * What is written under another name first, and what a killed process leaves of it. The number of the process stands in
 * the name, so that the leavings of one that is gone are told from the work of one that is at it.
 */
import { randomBytes } from 'node:crypto';
import { readdirSync, rmSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';

const ENDING = /\.(\d{1,10})-[0-9a-f]{8}\.part$/;

/** A name of its own beside `path`, for what becomes `path` once it is whole. */
export function unfinishedName(path: string): string {
  return `${path}.${process.pid}-${randomBytes(4).toString('hex')}.part`;
}

/** Takes away what processes that are gone left in a folder of `names`, or of anything where none are given. */
export function sweepUnfinished(folder: string, names?: ReadonlySet<string>): void {
  let there: readonly string[] = [];
  try {
    there = readdirSync(folder);
  } catch {
    return;
  }
  for (const name of there) {
    const [ending, pid] = ENDING.exec(name) ?? [];
    if (ending === undefined || isThere(Number(pid))) continue;
    if (names && !names.has(name.slice(0, -ending.length))) continue;
    try {
      rmSync(join(folder, name), { recursive: true, force: true });
    } catch {
      // It stays; whoever may not delete it is not kept from working by it.
    }
  }
}

/** The same for one file or folder to be. */
export const sweepBeside = (path: string) => sweepUnfinished(dirname(path), new Set([basename(path)]));

/** Whether a process of that number runs now. */
export function isThere(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'EPERM';
  }
}
