/** The bundled recogniser on sound that is still being spoken. */
import { checkedModelFiles, ENGINE_NAME } from './model-folder.ts';
import { bundledSetup } from './moonshine-engine.ts';
import type { Heard } from './recogniser/listener.ts';
import { type RecogniserProcess, startRecogniser } from './recogniser/recogniser-process.ts';
import { SAMPLE_RATE } from './recogniser/sample-rate.ts';

export { ENGINE_NAME };

export interface LiveListeners {
  /** A stretch of talk has just ended. Its words come again through `onHeard`, with those around them. */
  readonly onEarly: (heard: Heard) => void;
  readonly onHeard: (heard: Heard) => void;
  /** Looked through until `heardUntil`, in seconds; the last talk ended at `spokenUntil`. */
  readonly onProgress: (heardUntil: number, spokenUntil: number | undefined) => void;
  /** Nothing more will be heard; what was recorded can still be heard from the file. */
  readonly onLost: (reason: string) => void;
}

export interface LiveRecogniser {
  /** Takes sound at once and never keeps anybody waiting. */
  write(sound: Int16Array): void;
  /** No more sound will come. True when all of it was heard. */
  end(): Promise<boolean>;
  stop(): void;
}

/** Sound that waits for the recogniser. On a machine that cannot keep up it is heard from the file afterwards. */
const MOST_WAITING = 180 * SAMPLE_RATE;
const FULL_SCALE = 32_768;

/** Answers at once; the models are loaded while the first sound waits. */
export function startLiveRecogniser(listeners: LiveListeners): LiveRecogniser {
  const waiting: Int16Array[] = [];
  let waitingSamples = 0;
  let ended = false;
  let lost = false;
  let child: RecogniserProcess | undefined;
  let wake = () => {};

  const lose = (reason: string) => {
    if (lost) return;
    lost = true;
    waiting.length = 0;
    child?.stop();
    wake();
    listeners.onLost(reason);
  };

  const pump = async (): Promise<boolean> => {
    const models = await checkedModelFiles();
    if (!models.ok) lose(models.problem.message);
    if (lost || !models.ok) return false;
    child = startRecogniser(
      { ...bundledSetup(models.value), live: true },
      {
        onMessage(message) {
          if (message.kind !== 'progress' || lost) return;
          if (message.early) listeners.onEarly(message.early);
          if (message.heard) listeners.onHeard(message.heard);
          listeners.onProgress(message.secondsHeard, message.spokenUntil);
        },
      },
    );
    child.finished.then(({ failure }) => failure && lose(failure));
    while (!lost) {
      const sound = waiting.shift();
      if (sound) {
        waitingSamples -= sound.length;
        await child.write(Float32Array.from(sound, (sample) => sample / FULL_SCALE));
      } else if (ended) break;
      else
        await new Promise<void>((resolve) => {
          wake = resolve;
        });
    }
    child.end();
    const { failure } = await child.finished;
    return !lost && failure === undefined;
  };
  const done = pump().catch((error) => {
    lose(String(error));
    return false;
  });

  return {
    write(sound) {
      if (lost || ended) return;
      waiting.push(sound);
      waitingSamples += sound.length;
      if (waitingSamples > MOST_WAITING) lose('it cannot keep up with the talk');
      wake();
    },
    end() {
      ended = true;
      wake();
      return done;
    },
    stop: () => lose('it was stopped'),
  };
}
