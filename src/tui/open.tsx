/** Opens the screen on a terminal and gives the terminal back as it was. */
import { render } from 'ink';
import type { ProjectApi } from '../project-api.ts';
import { App, type SavePage } from './app.tsx';

const ENTER_SCREEN = '\u001b[?1049h';
const LEAVE_SCREEN = '\u001b[?1049l\u001b[?25h';

/** Shows the project until the person leaves. `now` gives the time as ISO 8601, `save` writes pages. */
export async function openScreen(project: ProjectApi, now: () => string, save: SavePage): Promise<void> {
  const { stdout } = process;
  stdout.write(ENTER_SCREEN);
  // Whatever ends the process, the person's own screen comes back.
  const giveBack = () => stdout.write(LEAVE_SCREEN);
  process.once('exit', giveBack);
  try {
    const app = render(<App project={project} now={now} save={save} />, {
      exitOnCtrlC: false,
      patchConsole: false,
    });
    await app.waitUntilExit();
  } finally {
    process.off('exit', giveBack);
    giveBack();
  }
}
