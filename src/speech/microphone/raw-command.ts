/** A program that gives raw sound on its standard output, as a microphone. No shell is involved. */
import { type ChildProcess, execFile, spawn } from 'node:child_process';
import { PassThrough, type Readable } from 'node:stream';
import { EXIT, Problem, type Result } from '../../problem.ts';
import type { Microphone, MicrophoneEnd } from './microphone.ts';

export interface RawCommand {
  readonly program: string;
  readonly words: readonly string[];
  /** Number of the pipe that the sound comes from: standard output, or 3 where a library prints on that. */
  readonly soundOn?: 1 | 3;
}

/** A device that gives nothing for so long is unplugged or asleep. */
const LONGEST_STILL_MS = 8_000;
const GRACE_MS = 500;
/** Between asking a program to stop and ending it. */
const PATIENCE_MS = 1_500;
const BYTES = 2;

/**
 * Starts `command` and answers once it gives sound. `name` is for the person. When the program ends before, the
 * problem's message is what it said.
 */
export async function openRawCommand(command: RawCommand, name: string): Promise<Result<Microphone>> {
  const { soundOn = 1 } = command;
  const child = spawn(command.program, [...command.words], {
    stdio: [
      'ignore',
      soundOn === 1 ? 'pipe' : 'ignore',
      'pipe',
      ...(soundOn === 3 ? (['pipe'] as const) : []),
    ],
    // Control-C on the terminal is for this program; the recorder is told by it.
    detached: true,
    windowsHide: true,
  });
  const { end, lastLine } = watchEnd(child);
  const pipe = heldSound(child.stdio[soundOn] as Readable);
  const first = await firstSound(pipe, end);
  if (first) {
    const stop = () => void endOf(child, end, 'stopped');
    return { ok: true, value: { name, sound: soundOf(child, pipe, end), ended: end.promise, stop } };
  }
  // A program that has just closed its sound is about to say why.
  await Promise.race([end.promise, new Promise((resolve) => setTimeout(resolve, GRACE_MS))]);
  endOf(child, end, 'lost');
  return { ok: false, problem: refused(await end.promise, lastLine()) };
}

/**
 * The sound with somebody who listens from the first moment: when a program ends, Node throws away what nobody has asked
 * for yet, and a microphone may be unplugged while the rest of this program still starts.
 */
function heldSound(pipe: Readable): Readable {
  const held = new PassThrough();
  // A pipe that breaks ends like any other: the program's last line says why.
  pipe.on('error', () => held.end());
  return pipe.pipe(held);
}

interface Ending {
  readonly promise: Promise<MicrophoneEnd>;
  readonly settle: (end: MicrophoneEnd) => void;
}

function watchEnd(child: ChildProcess): { readonly end: Ending; readonly lastLine: () => string } {
  let settle: (end: MicrophoneEnd) => void = () => {};
  const promise = new Promise<MicrophoneEnd>((resolve) => {
    settle = resolve;
  });
  let lastLine = '';
  child.stderr?.setEncoding('utf8').on('data', (text: string) => {
    lastLine =
      text
        .split('\n')
        .filter((line) => line.trim() !== '')
        .at(-1)
        ?.trim() ?? lastLine;
  });
  child.on('error', (error: NodeJS.ErrnoException) =>
    settle({ kind: 'lost', reason: error.code === 'ENOENT' ? 'not installed' : error.message }),
  );
  // 'close' comes after the last sound and the last line.
  child.on('close', (code, signal) =>
    settle({ kind: 'lost', reason: lastLine || `it ended with ${signal ?? code}` }),
  );
  return { end: { promise, settle }, lastLine: () => lastLine };
}

/** Waits for the first bytes; false when the program ended before, or gave none for too long. */
async function firstSound(pipe: Readable, end: Ending): Promise<boolean> {
  let timer: NodeJS.Timeout | undefined;
  const readable = new Promise<boolean>((resolve) => {
    pipe.once('readable', () => resolve(pipe.readableLength > 0));
    timer = setTimeout(() => resolve(false), LONGEST_STILL_MS);
  });
  try {
    return await Promise.race([readable, end.promise.then(() => false)]);
  } finally {
    clearTimeout(timer);
  }
}

/** Ends the program: gently first. What it has written until then is still read. */
function endOf(child: ChildProcess, end: Ending, kind: 'stopped' | 'lost'): void {
  end.settle(kind === 'stopped' ? { kind } : { kind, reason: 'it gives no sound' });
  child.kill('SIGTERM');
  setTimeout(() => child.kill('SIGKILL'), PATIENCE_MS).unref();
}

async function* soundOf(child: ChildProcess, pipe: Readable, end: Ending): AsyncGenerator<Int16Array> {
  let rest: Uint8Array = new Uint8Array();
  let still: NodeJS.Timeout | undefined;
  const watchStill = () => {
    clearTimeout(still);
    // In two steps: a process that was itself suspended reads what waits before it judges.
    still = setTimeout(() => {
      still = setTimeout(() => endOf(child, end, 'lost'), GRACE_MS);
    }, LONGEST_STILL_MS);
  };
  watchStill();
  try {
    for await (const bytes of pipe as AsyncIterable<Buffer>) {
      watchStill();
      const all = rest.length > 0 ? Buffer.concat([rest, bytes]) : bytes;
      const whole = all.length - (all.length % BYTES);
      // Copied, because samples must begin at an even place.
      if (whole > 0) yield new Int16Array(Uint8Array.from(all.subarray(0, whole)).buffer);
      rest = all.subarray(whole);
    }
  } finally {
    clearTimeout(still);
    child.kill('SIGTERM');
  }
}

function refused(end: MicrophoneEnd, lastLine: string): Problem {
  const reason = end.kind === 'lost' ? end.reason : lastLine;
  return new Problem(reason, { code: 'microphone-missing', exitCode: EXIT.partly });
}

/** What a program prints; nothing when it is not there, fails or takes too long. */
export function outputOf({ program, words }: RawCommand): Promise<string> {
  return new Promise((resolve) => {
    execFile(
      program,
      [...words],
      { timeout: LONGEST_STILL_MS, encoding: 'utf8', windowsHide: true },
      (error, stdout) => resolve(error ? '' : stdout),
    );
  });
}
