/**
 * Hears a recording with any engine: decodes it here, feeds the recogniser's own process no faster than it hears, and
 * gathers what comes back. A crash over there is a problem over here, and nothing else.
 */
import { basename } from 'node:path';
import { plainText } from '../plain-text.ts';
import { EXIT, Problem, type Result } from '../problem.ts';
import { decodeRecording, type SoundEnd } from './decode.ts';
import type { Engine, EngineSource, HeardRecording, HearOptions } from './engine.ts';
import { type OpenRecording, openRecording } from './media/open-recording.ts';
import { ENGINE_NAME } from './model-folder.ts';
import type { Heard } from './recogniser/listener.ts';
import type { RecogniserSetup } from './recogniser/messages.ts';
import { type RecogniserProcess, startRecogniser } from './recogniser/recogniser-process.ts';
import { silencing } from './silencing.ts';
import { startTally } from './take-tally.ts';

export function engineOf(source: EngineSource): Engine {
  return { name: source.name, transcribe: (file, options) => hearRecording(source, file, options) };
}

/** Hears one recording with this engine. */
export async function hearRecording(
  source: EngineSource,
  file: string,
  options: HearOptions = {},
): Promise<Result<HeardRecording>> {
  const opened = await openRecording(file);
  if (!opened.ok) return opened;
  try {
    const setup = await source.prepare(options);
    if (!setup.ok) return setup;
    const { heardFile } = options;
    const keeping = heardFile === undefined ? {} : { heardFile };
    return await hear(source.name, file, opened.value, { ...setup.value, ...keeping }, options);
  } finally {
    opened.value.close();
  }
}

async function hear(
  engine: string,
  file: string,
  recording: OpenRecording,
  setup: RecogniserSetup,
  options: HearOptions,
): Promise<Result<HeardRecording>> {
  if (options.signal?.aborted) return { ok: false, problem: cancelled(file) };
  const tally = startTally(recording.facts.durationSeconds, options.onProgress);
  const heard: Heard[] = [];
  const child = startRecogniser(setup, {
    onLine: options.onEngineLine,
    onMessage(message) {
      if (message.kind !== 'progress') return;
      if (message.heard) heard.push(message.heard);
      tally.heardUntil(message.secondsHeard, message.heard?.utterances.at(-1)?.text);
    },
  });
  const stop = () => child.stop();
  options.signal?.addEventListener('abort', stop);
  try {
    const sound = decodeRecording(file, recording, options.signal);
    const end = await feed(child, silencing(sound, options.silences ?? []));
    const { failure } = await child.finished;
    if (options.signal?.aborted) return { ok: false, problem: cancelled(file) };
    if (failure) return { ok: false, problem: crashed(file, engine, failure) };
    tally.heardAll();
    return { ok: true, value: transcriptOf(engine, recording, end, heard) };
  } catch (error) {
    if (options.signal?.aborted) return { ok: false, problem: cancelled(file) };
    if (error instanceof Problem) return { ok: false, problem: error };
    throw error;
  } finally {
    options.signal?.removeEventListener('abort', stop);
    child.stop();
    await child.finished;
  }
}

/** Sends the sound over, no faster than it is heard, until it ends or the process is gone. */
async function feed(
  child: RecogniserProcess,
  sound: AsyncGenerator<Float32Array, SoundEnd>,
): Promise<SoundEnd | undefined> {
  let gone = false;
  child.finished.then(() => {
    gone = true;
  });
  try {
    for (let next = await sound.next(); ; next = await sound.next()) {
      if (next.done) {
        child.end();
        return next.value;
      }
      await child.write(next.value);
      if (gone) return undefined;
    }
  } finally {
    await sound.return({ durationSeconds: 0, endsEarly: true });
  }
}

function transcriptOf(
  engine: string,
  recording: OpenRecording,
  end: SoundEnd | undefined,
  heard: readonly Heard[],
): HeardRecording {
  const durationSeconds = end?.durationSeconds ?? recording.facts.durationSeconds;
  const facts = { ...recording.facts, ...(end?.endsEarly ? { endsEarly: true } : {}) };
  return {
    engine,
    durationSeconds,
    utterances: heard.flatMap(({ utterances }) => utterances),
    dropped: heard.flatMap(({ dropped }) => dropped),
    // A cut-off file may state no length, or one that is not there.
    facts: facts.endsEarly ? { ...facts, durationSeconds } : facts,
  };
}

function cancelled(file: string): Problem {
  return new Problem(`stopped while hearing ${basename(file)}`, {
    code: 'cancelled',
    exitCode: EXIT.partly,
    kept: 'the recording was left as it was',
    next: 'take it again to hear it',
  });
}

function crashed(file: string, engine: string, failure: string): Problem {
  const said = engine === ENGINE_NAME ? '' : ` (${engine}): ${plainText(failure).slice(0, 300)}`;
  return new Problem(`cannot hear ${basename(file)}: the recogniser stopped${said}`, {
    code: 'recogniser-stopped',
    exitCode: EXIT.partly,
    kept: 'the recording was left as it was, and so was everything taken before',
    next: 'try again; if it stops at the same file, convert that file to WAV first',
    cause: new Error(failure),
  });
}
