/** Giving a finished file its name, over what stood there. */
import { renameSync } from 'node:fs';

/** Between two tries, in milliseconds: two seconds in all. */
const PAUSES: readonly number[] = [10, 20, 50, 100, 200, 400, 600, 620];
/** Of Windows: another program looks at the file just then, most often one that looks for viruses. */
const HELD = new Set(['EPERM', 'EACCES', 'EBUSY']);

/** How the disk is asked. */
interface Ways {
  readonly rename: (from: string, to: string) => void;
  readonly isWindows: boolean;
  readonly pause: (ms: number) => void;
}

/**
 * Renames `from` to `to`. Elsewhere that never minds who has either open. Windows refuses while another program holds
 * one, which passes within a moment or means that a person has the file open: so it is tried again for two seconds.
 */
export function replaceFile(from: string, to: string, ways: Partial<Ways> = {}): void {
  const { rename = renameSync, isWindows = process.platform === 'win32', pause = wait } = ways;
  for (const ms of isWindows ? PAUSES : []) {
    try {
      rename(from, to);
      return;
    } catch (error) {
      if (!HELD.has((error as NodeJS.ErrnoException).code ?? '')) throw error;
      pause(ms);
    }
  }
  rename(from, to);
}

function wait(ms: number): void {
  Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, ms);
}
