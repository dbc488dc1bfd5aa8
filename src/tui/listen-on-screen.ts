/** Runs a recording for the screen. */
import type { ListenEvent, OpenListening, ProjectApi } from '../project-api.ts';

/** The eye needs no more, and a slow terminal takes no more. */
const LEVEL_EVERY_MS = 200;

export interface ScreenListening {
  /** Opens the microphone; resolves when the recording is over and taken in. Does nothing while one runs. */
  start(readBack: boolean): Promise<void>;
  stop(): void;
  /** Figures are read aloud from now on, or are not. */
  readBack(isOn: boolean): void;
  /** Stops, and waits until everything is taken in. */
  settle(): Promise<void>;
}

export interface ListeningTold {
  readonly onEvent: (event: ListenEvent) => void;
  /** The project holds more than before. */
  readonly onRead: () => void;
  /** The recording is over; with an error it could not be made. */
  readonly onOver: (trouble?: unknown) => void;
}

export function screenListening(
  project: ProjectApi,
  { onEvent, onRead, onOver }: ListeningTold,
): ScreenListening {
  let open: OpenListening | undefined;
  let running: Promise<void> | undefined;
  let isStopped = false;
  let readsBack = false;

  async function run(): Promise<void> {
    let lastLevel = 0;
    const asked = readsBack;
    const opened = await project.listen({
      ...(asked ? { readBack: true } : {}),
      onEvent(event) {
        if (event.kind === 'level') {
          if (performance.now() - lastLevel < LEVEL_EVERY_MS) return;
          lastLevel = performance.now();
        }
        onEvent(event);
        if (event.kind === 'taken') onRead();
      },
    });
    if (!opened.ok) return onOver(opened.problem);
    open = opened.value;
    if (isStopped) open.stop();
    // It may have been turned on or off while the microphone was being opened.
    if (readsBack !== asked) open.readBack(readsBack);
    await open.finished;
    onOver();
  }

  const stop = () => {
    isStopped = true;
    open?.stop();
  };
  return {
    start(readBack) {
      isStopped = false;
      readsBack = readBack;
      running ??= run()
        .catch(onOver)
        .finally(() => {
          open = undefined;
          running = undefined;
        });
      return running;
    },
    stop,
    readBack(isOn) {
      readsBack = isOn;
      open?.readBack(isOn);
    },
    async settle() {
      stop();
      await running;
    },
  };
}
