/** The files of a project that a backup holds, by their paths in the project's own folder. */
import { lstatSync, readdirSync } from 'node:fs';
import { join } from 'node:path';

export const DATABASE_PATH = 'project.db';

/** No other path is written into a backup, or out of one: none of these leaves the project's own folder. */
const ORIGINAL = /^originals\/[0-9a-f]{64}(?:\.[a-z0-9]{1,5})?$/;
const RECORDING = /^recordings\/talk-[\d-]{1,40}(?:\.\d{1,10})?(?:\.no-talk)?\.wav$/;

export const isOriginal = (path: string) => ORIGINAL.test(path);

/** Whether a backup may hold this path. */
export const isKeptPath = (path: string) =>
  path === DATABASE_PATH || ORIGINAL.test(path) || RECORDING.test(path);

/** Ordinary files in one of the two folders, in the order of their names; links are not followed. */
export function keptPaths(home: string, folder: 'originals' | 'recordings'): readonly string[] {
  let names: readonly string[] = [];
  try {
    names = readdirSync(join(home, folder)).sort();
  } catch {
    // A project without memos has no such folder.
  }
  return names
    .map((name) => `${folder}/${name}`)
    .filter((path) => isKeptPath(path))
    .filter((path) => lstatSync(join(home, path), { throwIfNoEntry: false })?.isFile());
}
