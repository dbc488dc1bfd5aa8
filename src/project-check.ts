/** Checks that every kept original still holds the bytes that were taken. */
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import type { MemoRow } from './model/rows.ts';
import { hashFile } from './originals.ts';

/** One line per original that is missing or changed, and how many there are. */
export async function checkOriginals(
  projectHome: string,
  memos: readonly MemoRow[],
): Promise<{ readonly faults: readonly string[]; readonly count: number }> {
  const faults: string[] = [];
  for (const memo of memos) {
    const file = join(projectHome, memo.file);
    if (!existsSync(file)) faults.push(`original of ${memo.id} (${memo.source.name}): it is missing`);
    else if ((await hashFile(file)).sha256 !== memo.source.sha256)
      faults.push(`original of ${memo.id} (${memo.source.name}): its bytes were changed`);
  }
  return { faults, count: memos.length };
}
