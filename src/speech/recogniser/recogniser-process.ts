/** Starts the recogniser's process, feeds it and listens to it. */
import { type ChildProcess, fork } from 'node:child_process';
import { createRequire } from 'node:module';
import { fileURLToPath, pathToFileURL } from 'node:url';
import type { RecogniserMessage, RecogniserSetup } from './messages.ts';

export interface ProcessEnd {
  /** Undefined when the work was done. */
  readonly failure?: string;
}

export interface RecogniserProcess {
  /** Resolves when the process can take more. Does nothing once the process is gone. */
  write(samples: Float32Array): Promise<void>;
  /** No more sound will come. */
  end(): void;
  /** Resolves when the process is gone. */
  readonly finished: Promise<ProcessEnd>;
  stop(): void;
}

export interface ProcessListeners {
  readonly onMessage: (message: RecogniserMessage) => void;
  readonly onLine?: ((line: string) => void) | undefined;
}

/**
 * One heap of the C library, and large blocks beside it, hold less memory back; what the heap has is not given back after
 * each piece, only to be asked for again. Other systems do not look at it (mallopt(3)).
 */
const LITTLE_MEMORY = {
  MALLOC_ARENA_MAX: '1',
  MALLOC_MMAP_THRESHOLD_: String(1 << 20),
  MALLOC_TRIM_THRESHOLD_: String(16 << 20),
};

export function startRecogniser(setup: RecogniserSetup, listeners: ProcessListeners): RecogniserProcess {
  const { file, execArgv } = childModule();
  const child = fork(file, [JSON.stringify(setup)], {
    execArgv,
    env: { ...process.env, ...LITTLE_MEMORY },
    stdio: ['pipe', 'ignore', 'pipe', 'ipc'],
  });
  const finished = watch(child, listeners);
  // A process that died while being fed shows as its end, not as a broken pipe.
  child.stdin?.on('error', () => {});
  const gone = finished.then(() => {});
  return {
    finished,
    stop: () => stop(child, setup),
    end: () => child.stdin?.end(),
    async write(samples) {
      const bytes = Buffer.from(samples.buffer, samples.byteOffset, samples.byteLength);
      if (!child.stdin?.writable || child.stdin.write(bytes)) return;
      await Promise.race([gone, new Promise((resolve) => child.stdin?.once('drain', resolve))]);
    },
  };
}

/** A process that has started a program ends it first; the others hold native code that may not listen. */
const PATIENCE_MS = 2000;

function stop(child: ChildProcess, { recogniser }: RecogniserSetup): void {
  if (child.exitCode !== null || child.signalCode !== null) return;
  if (recogniser.kind !== 'whisper-program') {
    child.kill('SIGKILL');
    return;
  }
  child.kill('SIGTERM');
  setTimeout(() => child.kill('SIGKILL'), PATIENCE_MS).unref();
}

function watch(child: ChildProcess, { onMessage, onLine }: ProcessListeners): Promise<ProcessEnd> {
  let done = false;
  let reason: string | undefined;
  let lastLine = '';
  child.on('message', (message: RecogniserMessage) => {
    if (message.kind === 'done') done = true;
    if (message.kind === 'failed') reason = message.reason;
    onMessage(message);
  });
  child.stderr?.setEncoding('utf8').on('data', (text: string) => {
    for (const line of text.split('\n').filter((found) => found.trim() !== '')) {
      lastLine = line;
      onLine?.(line);
    }
  });
  return new Promise((resolve) => {
    child.on('error', (error) => resolve({ failure: String(error) }));
    // 'close' comes after the last message and the last line.
    child.on('close', (exitCode, signal) => {
      if (done) return resolve({});
      resolve({ failure: reason ?? `it ended with ${signal ?? exitCode}${lastLine ? `: ${lastLine}` : ''}` });
    });
  });
}

/** The built child lies beside the built command line; from source it runs through tsx. */
function childModule(): { file: string; execArgv: string[] } {
  const memory = ['--expose-gc', '--max-semi-space-size=1'];
  if (!import.meta.url.endsWith('.ts')) {
    return { file: fileURLToPath(new URL('./recogniser-child.js', import.meta.url)), execArgv: memory };
  }
  const loader = pathToFileURL(createRequire(import.meta.url).resolve('tsx')).href;
  const file = fileURLToPath(new URL('../recogniser-child.ts', import.meta.url));
  return { file, execArgv: ['--import', loader, ...memory] };
}
