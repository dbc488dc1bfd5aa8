/** Where projects are on the disk. Apart from opening them: a call without a project loads no store. */
import { existsSync, lstatSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';

/** The folder inside a project folder that is the program's own. */
export const HOME = '.hearwright';
const DATABASE = 'project.db';

/** The database of the project in a folder. */
export const databaseOf = (folder: string) => join(folder, HOME, DATABASE);

/** The first part of the project's own folder that is a link instead of being there itself, by its path in `folder`. */
export function linkIn(folder: string): string | undefined {
  return [HOME, ...[DATABASE, 'originals', 'recordings'].map((name) => join(HOME, name))].find((path) => {
    try {
      return lstatSync(join(folder, path)).isSymbolicLink();
    } catch {
      // What is not there, or may not be looked at, is no link.
      return false;
    }
  });
}

/** The nearest folder from `start` upward that holds a project. */
export function findProject(start: string): string | undefined {
  for (let folder = resolve(start); ; folder = dirname(folder)) {
    if (existsSync(databaseOf(folder))) return folder;
    if (dirname(folder) === folder) return undefined;
  }
}
