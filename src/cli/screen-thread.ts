/** Starts the thread that works for the screen, and speaks with it. */
import { createRequire } from 'node:module';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { Worker } from 'node:worker_threads';
import { EXIT, Problem } from '../problem.ts';
import type { ScreenWork } from '../tui/app.tsx';
import type { ScreenEvent, ScreenOpening } from '../tui/state/screen-state.ts';
import { EventParts, type FromWorker, type ToWorker } from './screen-messages.ts';

export interface ScreenThread {
  /** What the screen opens with. Fails with a Problem when the project cannot be opened. */
  readonly opening: Promise<ScreenOpening>;
  readonly work: ScreenWork;
  /** Resolves when the project is closed, or the thread has taken too long. */
  close(): Promise<void>;
}

/** A thread that does not answer is in the middle of something long: SQLite takes that back. */
const PATIENCE_MS = 3_000;

interface WorkerModule {
  readonly file: string;
  readonly execArgv: string[];
}

/** Opens the project in `folder` in a thread of its own. */
export function startScreenThread(
  folder: string,
  { file, execArgv }: WorkerModule = workerModule(),
): ScreenThread {
  const worker = new Worker(file, { workerData: { folder }, execArgv });
  const say = (message: ToWorker) => worker.postMessage(message);
  const events = new EventParts();
  let onEvent: (event: ScreenEvent) => void = () => {};
  let closed = () => {};
  const opening = new Promise<ScreenOpening>((resolve, reject) => {
    const fail = (error: unknown) => {
      reject(error);
      onEvent({ kind: 'refused', lines: [error instanceof Error ? error.message : String(error)] });
    };
    worker.on('error', (error) => fail(died(error)));
    worker.on('exit', () => {
      fail(died(new Error('it ended')));
      closed();
    });
    worker.on('message', (message: FromWorker) => {
      switch (message.kind) {
        case 'opened':
          resolve(JSON.parse(message.json) as ScreenOpening);
          break;
        case 'problem':
          fail(new Problem(message.problem.message, message.problem));
          break;
        case 'closed':
          onEvent = () => {};
          closed();
          break;
        default: {
          const event = events.take(message);
          if (event) onEvent(event);
        }
      }
    });
  });
  opening.catch(() => {});
  return {
    opening,
    work: {
      perform: (effect) => say({ kind: 'perform', effect }),
      listen(listener) {
        onEvent = listener;
        return () => {
          onEvent = () => {};
        };
      },
    },
    async close() {
      const isClosed = new Promise<void>((resolve) => {
        closed = resolve;
      });
      say({ kind: 'close' });
      let timer: NodeJS.Timeout | undefined;
      const late = new Promise<void>((resolve) => {
        timer = setTimeout(resolve, PATIENCE_MS);
      });
      await Promise.race([isClosed, late]);
      clearTimeout(timer);
      await worker.terminate();
    },
  };
}

const died = (error: Error) =>
  new Problem(`the thread that holds the project ended: ${error.message}`, {
    code: 'unexpected',
    exitCode: EXIT.unexpected,
    kept: 'everything that was said to be done',
    next: 'q, then open the screen again',
    cause: error,
  });

/** The built worker lies beside the built command line; from source it runs through tsx. */
function workerModule(): WorkerModule {
  if (!import.meta.url.endsWith('.ts'))
    return { file: fileURLToPath(new URL('./screen-worker.js', import.meta.url)), execArgv: [] };
  const loader = pathToFileURL(createRequire(import.meta.url).resolve('tsx')).href;
  return {
    file: fileURLToPath(new URL('./screen-worker.ts', import.meta.url)),
    execArgv: ['--import', loader],
  };
}
