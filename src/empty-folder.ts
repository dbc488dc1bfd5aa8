/** The empty folder that a whole project is put into, by restore and by import. */
import { mkdirSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { HOME } from './find-project.ts';
import { EXIT, Problem } from './problem.ts';
import { sweepBeside } from './unfinished.ts';

/**
 * Makes the folder or sees that it is empty; says whether it was made. Throws a Problem with the `code`
 * of what the person was `doing` where something is in it; `asNamed` is what the person called it.
 */
export function makeEmptyFolder(
  folder: string,
  asNamed: string,
  { doing, code }: { readonly doing: string; readonly code: string },
): boolean {
  const there = statSync(folder, { throwIfNoEntry: false });
  if (!there) {
    mkdirSync(folder, { recursive: true, mode: 0o700 });
    return true;
  }
  // What a call left there that was killed is no project.
  if (there.isDirectory()) sweepBeside(join(folder, HOME));
  if (there.isDirectory() && readdirSync(folder).length === 0) return false;
  throw new Problem(
    `cannot ${doing} into ${asNamed}: ${there.isDirectory() ? 'it is not empty' : 'it is no folder'}`,
    {
      code,
      exitCode: EXIT.usage,
      kept: 'what is there was left as it was',
      next: 'name a folder that is empty or not there yet',
    },
  );
}
