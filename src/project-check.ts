/** Checks that every kept original still holds the bytes that were taken. */
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { isOriginal } from './backup/kept-paths.ts';
import type { MemoRow } from './model/rows.ts';
import { hashFile } from './originals.ts';

export interface OriginalsCheck {
  /** One line per original that is missing or changed. */
  readonly faults: readonly string[];
  /** How many there should be here. */
  readonly count: number;
  /** Names of those that were never here. */
  readonly absent: readonly string[];
}

/** Looks at every memo's original; `left` are the hashes of those that an import left behind. */
export async function checkOriginals(
  projectHome: string,
  memos: readonly MemoRow[],
  left: ReadonlySet<string>,
): Promise<OriginalsCheck> {
  const faults: string[] = [];
  const absent: string[] = [];
  for (const memo of memos) {
    const file = join(projectHome, memo.file);
    if (!isOriginal(memo.file))
      faults.push(`original of ${memo.id} (${memo.source.name}): it is not in the project`);
    else if (!existsSync(file) && left.has(memo.source.sha256)) absent.push(memo.source.name);
    else if (!existsSync(file)) faults.push(`original of ${memo.id} (${memo.source.name}): it is missing`);
    else if ((await hashFile(file)).sha256 !== memo.source.sha256)
      faults.push(`original of ${memo.id} (${memo.source.name}): its bytes were changed`);
  }
  return { faults, absent, count: memos.length - absent.length };
}
