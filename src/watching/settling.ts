/** When a file that somebody copies or syncs into a folder is whole. Pure. */

/** One file as a look into the folder shows it. */
export interface SeenFile {
  readonly name: string;
  readonly bytes: number;
  /** Milliseconds of its last change, as the system counts. */
  readonly changedAt: number;
}

interface Watched extends SeenFile {
  /** When it was first seen as it is now. */
  readonly since: number;
  readonly isDone: boolean;
}

/** Files by name, as far as they are known. */
export type Watching = ReadonlyMap<string, Watched>;

/** A sync that stalls for longer is rare, and what was cut off is taken again when it goes on. */
export const SETTLED_MS = 3_000;

/** Names of files that are still on their way, or belong to a system. */
const UNDERWAY = /^\.|~$|\.(?:part|partial|tmp|temp|crdownload|download|filepart)$/i;

/**
 * Compares a look into the folder with what was known, and names the files that have kept their size and time for
 * long enough, in the order of their last change. Each is named once, and again only when it changes.
 */
export function settle(
  known: Watching,
  seen: readonly SeenFile[],
  nowMs: number,
): { readonly known: Watching; readonly ready: readonly string[] } {
  const next = new Map<string, Watched>();
  const ready: Watched[] = [];
  for (const file of seen) {
    if (UNDERWAY.test(file.name)) continue;
    const before = known.get(file.name);
    const isSame = before?.bytes === file.bytes && before.changedAt === file.changedAt;
    const now = isSame ? before : { ...file, since: nowMs, isDone: false };
    const isReady = !now.isDone && now.bytes > 0 && nowMs - now.since >= SETTLED_MS;
    if (isReady) ready.push(now);
    next.set(file.name, isReady ? { ...now, isDone: true } : now);
  }
  ready.sort((a, b) => a.changedAt - b.changedAt || a.name.localeCompare(b.name));
  return { known: next, ready: ready.map(({ name }) => name) };
}
