/** Opens the screen on a terminal and gives the terminal back as it was. */
import { render } from 'ink';
import { App, type ScreenWork } from './app.tsx';
import { FrameOutput } from './frame-output.ts';
import type { ScreenOpening } from './state/screen-state.ts';

const ENTER_SCREEN = '\u001b[?1049h';
const LEAVE_SCREEN = '\u001b[?1049l\u001b[?25h';

/** Shows the project until the person leaves. */
export async function openScreen(opening: ScreenOpening, work: ScreenWork): Promise<void> {
  const { stdout } = process;
  stdout.write(ENTER_SCREEN);
  // Whatever ends the process, the person's own screen comes back.
  const giveBack = () => stdout.write(LEAVE_SCREEN);
  process.once('exit', giveBack);
  const output = new FrameOutput(stdout, { hasColours: !process.env.NO_COLOR });
  const suspended = (back: () => void) =>
    suspend(() => {
      output.redraw();
      back();
    });
  try {
    const app = render(<App opening={opening} work={work} suspend={suspended} />, {
      // Ink asks for no more of it than there is.
      stdout: output as unknown as NodeJS.WriteStream,
      // Whole frames are written: what of them is sent to the terminal is worked out behind it.
      debug: true,
      exitOnCtrlC: false,
      patchConsole: false,
    });
    const stopListening = onEndingSignal((signal) => {
      output.close();
      app.unmount();
      giveBack();
      process.kill(process.pid, signal);
    });
    await app.waitUntilExit();
    stopListening();
  } finally {
    output.close();
    process.off('exit', giveBack);
    giveBack();
  }
}

/** Signals that end a process without its "exit": what they mean to do is done once the terminal is given back. */
const ENDING = ['SIGTERM', 'SIGHUP', 'SIGINT'] as const;

function onEndingSignal(end: (signal: NodeJS.Signals) => void): () => void {
  const listen = (signal: NodeJS.Signals) => {
    stop();
    end(signal);
  };
  const stop = () => {
    for (const signal of ENDING) process.off(signal, listen);
  };
  for (const signal of ENDING) process.on(signal, listen);
  return stop;
}

/** Stops the process as a shell expects it, with the terminal as it was; `back` is called when it goes on. */
function suspend(back: () => void): void {
  const { stdin, stdout } = process;
  // Windows knows no such signal.
  if (process.platform === 'win32') return;
  stdout.write(LEAVE_SCREEN);
  stdin.setRawMode(false);
  process.once('SIGCONT', () => {
    stdin.setRawMode(true);
    stdout.write(ENTER_SCREEN);
    back();
  });
  process.kill(0, 'SIGTSTP');
}
