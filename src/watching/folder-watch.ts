/** Files that appear in a folder, once they are whole. */
import { type FSWatcher, watch } from 'node:fs';
import { readdir, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { EXIT, Problem } from '../problem.ts';
import { type SeenFile, settle, type Watching } from './settling.ts';

/** Between two looks. The system's own notices make them sooner; folders on a network give none. */
const LOOK_MS = 1_000;

export interface WatchOptions {
  readonly signal: AbortSignal;
  /** The folder went away (a drive was unplugged), or came back. */
  readonly onGone?: (isGone: boolean) => void;
}

/**
 * Gives the path of each file that is in `folder` or comes into it, once, when it is whole; folders in it are left
 * alone. Ends when the signal is set off. Throws a Problem when there is no such folder at the start.
 */
export async function filesInto(folder: string, options: WatchOptions): Promise<AsyncIterable<string>> {
  if ((await lookInto(folder)) === undefined) throw noFolder(folder);
  return filesOf(folder, options);
}

async function* filesOf(folder: string, { signal, onGone }: WatchOptions): AsyncGenerator<string> {
  let known: Watching = new Map();
  let isGone = false;
  const bell = openBell(folder, signal);
  try {
    while (!signal.aborted) {
      const seen = await lookInto(folder);
      if ((seen === undefined) !== isGone) {
        isGone = !isGone;
        onGone?.(isGone);
      }
      // What is known stays known while the folder is away.
      if (seen) {
        const settled = settle(known, seen, performance.now());
        known = settled.known;
        for (const name of settled.ready) {
          if (signal.aborted) return;
          yield join(folder, name);
        }
      }
      await bell.wait();
    }
  } finally {
    bell.close();
  }
}

/** The ordinary files in the folder; undefined when it cannot be read. */
async function lookInto(folder: string): Promise<readonly SeenFile[] | undefined> {
  const entries = await readdir(folder, { withFileTypes: true }).catch(() => undefined);
  if (!entries) return undefined;
  const seen = entries
    .filter((entry) => entry.isFile())
    .map(async ({ name }): Promise<readonly SeenFile[]> => {
      // It may go between the two questions.
      const facts = await stat(join(folder, name)).catch(() => undefined);
      if (facts) return [{ name, bytes: facts.size, changedAt: facts.mtimeMs }];
      // Bytes that are no UTF-8 keep it from being found by its name: its size is not to be asked, and whoever takes it tells why.
      return name.includes('\ufffd') ? [{ name, bytes: 1, changedAt: 0 }] : [];
    });
  return (await Promise.all(seen)).flat();
}

interface Bell {
  /** Until the next look is due, or the watching ends. */
  wait(): Promise<void>;
  close(): void;
}

function openBell(folder: string, signal: AbortSignal): Bell {
  let ring = () => {};
  let watcher: FSWatcher | undefined;
  try {
    watcher = watch(folder, () => ring());
    // A folder that goes away is seen by looking.
    watcher.on('error', () => {});
  } catch {
    // No notices here: looking is enough.
  }
  const onAbort = () => ring();
  signal.addEventListener('abort', onAbort);
  return {
    wait: async () => {
      let timer: NodeJS.Timeout | undefined;
      if (!signal.aborted) {
        await new Promise<void>((resolve) => {
          timer = setTimeout(resolve, LOOK_MS);
          ring = resolve;
        });
      }
      clearTimeout(timer);
      // Notices come in crowds while a file is written.
      if (!signal.aborted) await new Promise((resolve) => setTimeout(resolve, LOOK_MS / 10));
    },
    close() {
      signal.removeEventListener('abort', onAbort);
      watcher?.close();
    },
  };
}

function noFolder(folder: string): Problem {
  return new Problem(`cannot watch ${folder}: there is no such folder, or it may not be read`, {
    code: 'watch-folder-missing',
    exitCode: EXIT.usage,
    next: 'name the folder that the phone syncs to',
  });
}
