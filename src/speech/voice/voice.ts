/** A voice that reads short texts aloud, one after the other. The bundled one where sound can be played, else the system's. */
import { type ChildProcess, fork } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import type { Problem } from '../../problem.ts';
import { isInstalled, PLAYERS, SPEAKERS } from './programs.ts';
import { runSound } from './run-sound.ts';
import type { VoiceAnswer, VoiceQuestion } from './voice-messages.ts';

export interface VoiceListeners {
  /** From now on until `onSilent` it sounds in the room. */
  readonly onSpeaking: () => void;
  readonly onSilent: () => void;
  /** It cannot be heard; nothing more is read aloud. */
  readonly onLost: (problem: Problem) => void;
}

export interface Voice {
  /** Reads a text behind the one that sounds; of those that wait only the newest is kept. */
  say(text: string): void;
  /** Ends what sounds, and the voice. */
  close(): void;
}

/** The voice's process starts with the first text. */
export function openVoice({ onSpeaking, onSilent, onLost }: VoiceListeners): Voice {
  const ending = new AbortController();
  let bundled: BundledVoice | undefined;
  let next: string | undefined;
  let isBusy = false;

  async function speak(text: string): Promise<void> {
    const hasPlayer = PLAYERS.some(({ program }) => isInstalled(program));
    bundled ??= hasPlayer ? startBundledVoice() : undefined;
    const file = await bundled?.speak(text);
    if (ending.signal.aborted) return;
    onSpeaking();
    try {
      const played = file
        ? await runSound(PLAYERS, file, ending.signal)
        : await runSound(SPEAKERS, text, ending.signal);
      if (!played.ok) {
        onLost(played.problem);
        close();
      }
    } finally {
      onSilent();
      if (file) rmSync(file, { force: true });
    }
  }

  async function speakAll(): Promise<void> {
    if (isBusy) return;
    isBusy = true;
    while (next !== undefined && !ending.signal.aborted) {
      const text = next;
      next = undefined;
      await speak(text);
    }
    isBusy = false;
  }

  function close(): void {
    next = undefined;
    ending.abort();
    bundled?.stop();
  }

  return {
    say(text) {
      if (ending.signal.aborted) return;
      next = text;
      void speakAll();
    },
    close,
  };
}

/** Speaks into files; nothing sounds in the room. */
export interface BundledVoice {
  /** The file that it was spoken into; nothing when it could not be. */
  speak(text: string): Promise<string | undefined>;
  /** Ends it; its files go with it. */
  stop(): void;
}

/** A process that dies over a text is started again, once for each text. */
export function startBundledVoice(): BundledVoice {
  const folder = mkdtempSync(join(tmpdir(), 'hearwright-voice-'));
  let running: VoiceProcess | undefined;
  let isStopped = false;
  let number = 0;
  const answered = async (question: VoiceQuestion) => {
    running ??= startVoiceProcess(folder);
    const answer = await Promise.race([answerOf(running.child, question), running.gone]);
    if (answer === undefined) running = undefined;
    return answer;
  };
  return {
    async speak(text) {
      const question = { text, name: `${++number}.wav` };
      const answer = (await answered(question)) ?? (isStopped ? undefined : await answered(question));
      return answer && answer.failure === undefined ? join(folder, question.name) : undefined;
    },
    stop() {
      isStopped = true;
      const clear = () => rmSync(folder, { recursive: true, force: true });
      if (!running) return clear();
      void running.gone.then(clear);
      running.child.kill('SIGKILL');
    },
  };
}

interface VoiceProcess {
  readonly child: ChildProcess;
  /** Resolves when it has ended, whatever for. */
  readonly gone: Promise<undefined>;
}

function startVoiceProcess(folder: string): VoiceProcess {
  const { file, execArgv } = childModule();
  const child = fork(file, [folder], { execArgv, stdio: ['ignore', 'ignore', 'ignore', 'ipc'] });
  const gone = new Promise<undefined>((resolve) => {
    child.on('exit', () => resolve(undefined));
    child.on('error', () => resolve(undefined));
  });
  return { child, gone };
}

function answerOf(child: ChildProcess, question: VoiceQuestion): Promise<VoiceAnswer> {
  return new Promise((resolve) => {
    const take = (answer: VoiceAnswer) => {
      if (answer.name !== question.name) return;
      child.off('message', take);
      resolve(answer);
    };
    child.on('message', take);
    if (child.connected) child.send(question, () => {});
  });
}

/** The built child lies beside the built command line; from source it runs through tsx. */
function childModule(): { readonly file: string; readonly execArgv: string[] } {
  // Node says that its WebAssembly system interface is new; nobody here is to read that.
  const quiet = ['--no-warnings'];
  if (!import.meta.url.endsWith('.ts'))
    return { file: fileURLToPath(new URL('./voice-child.js', import.meta.url)), execArgv: quiet };
  const loader = pathToFileURL(createRequire(import.meta.url).resolve('tsx')).href;
  return {
    file: fileURLToPath(new URL('../voice-child.ts', import.meta.url)),
    execArgv: ['--import', loader, ...quiet],
  };
}
