import { join } from 'node:path';
import { Command } from 'commander';
import { now } from '../../instant.ts';
import type { ProjectApi } from '../../project-api.ts';
import { print } from '../print.ts';
import { withProject } from '../project-of.ts';
import { finishKeptFirst } from './resume.ts';

const hasTerminal = () => Boolean(process.stdout.isTTY && process.stdin.isTTY);

async function openOrPrint(project: ProjectApi): Promise<void> {
  const { overviewText } = await import('../../reports/overview-text.ts');
  if (!hasTerminal()) return print(overviewText(project.info, project.memos(), project.next(now())));
  await finishKeptFirst(project);
  const { openScreen } = await import('../../tui/open.tsx');
  const { pageRecordOf, writePage } = await import('../page-file.ts');
  await openScreen(project, now, (file, text) =>
    writePage(join(project.folder, file), text, pageRecordOf(project.folder)),
  );
}

/** `screen`: opens the screen on a terminal; elsewhere prints a short overview. */
export function screenCommand(): Command {
  return new Command('screen')
    .description('open the screen; where there is no terminal, print an overview')
    .action((_options: object, command: Command) =>
      withProject(command, openOrPrint, { finishesKept: hasTerminal() }),
    );
}
