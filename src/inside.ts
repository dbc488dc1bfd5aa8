/** Whether a path lies in a folder, as the disk sees it: other drives, links and names in other letters considered. */
import { realpathSync } from 'node:fs';
import * as systemPath from 'node:path';

/**
 * Whether `path` is `folder` or lies in it, by the names alone. Both are absolute; `ways` are those of the system.
 * Between two drives of Windows there is no relative way, and a name that begins with two dots leads nowhere upward.
 */
export function isInside(
  folder: string,
  path: string,
  ways: Pick<typeof systemPath, 'relative' | 'isAbsolute' | 'sep'> = systemPath,
): boolean {
  const way = ways.relative(folder, path);
  return !ways.isAbsolute(way) && way.split(ways.sep)[0] !== '..';
}

/** The path as the disk has it: links followed, letters as they were given, as far as it is there. */
export function asOnDisk(path: string): string {
  const whole = systemPath.resolve(path);
  try {
    return realpathSync.native(whole);
  } catch {
    const above = systemPath.dirname(whole);
    return above === whole ? whole : systemPath.join(asOnDisk(above), systemPath.basename(whole));
  }
}
