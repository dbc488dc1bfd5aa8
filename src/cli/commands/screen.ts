import { Command } from 'commander';
import { now } from '../../instant.ts';
import type { ProjectApi } from '../../project-api.ts';
import { print } from '../print.ts';
import { withProject } from '../project-of.ts';
import { finishKeptFirst } from './resume.ts';

/** One that calls itself dumb takes no orders to its cursor: a screen would be a heap of signs there. */
const hasTerminal = () => Boolean(process.stdout.isTTY && process.stdin.isTTY) && process.env.TERM !== 'dumb';

async function openOrPrint(project: ProjectApi): Promise<void> {
  const { overviewText } = await import('../../reports/overview-text.ts');
  if (!hasTerminal()) return print(overviewText(project.info, project.memos(), project.next(now())));
  await finishKeptFirst(project);
  const { startScreenThread } = await import('../screen-thread.ts');
  // The project is opened beside, while the parts of the screen are loaded here.
  const thread = startScreenThread(project.folder);
  try {
    const [{ openScreen }, opening] = await Promise.all([import('../../tui/open.tsx'), thread.opening]);
    await openScreen(opening, thread.work);
  } finally {
    await thread.close();
  }
}

/** `screen`: opens the screen on a terminal; elsewhere prints a short overview. */
export function screenCommand(): Command {
  return new Command('screen')
    .description('open the screen; where there is no terminal, print an overview')
    .action((_options: object, command: Command) =>
      withProject(command, openOrPrint, { finishesKept: hasTerminal() }),
    );
}
