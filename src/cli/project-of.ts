/** Finds and opens the project that a call is about. */
import type { Command } from 'commander';
import type { ProjectApi } from '../project-api.ts';
import { tell } from './print.ts';

export interface GlobalOptions {
  readonly project?: string;
  readonly verbose?: boolean;
}

/** The options that stand before or after any command. */
export function globalsOf(command: Command): GlobalOptions {
  return command.optsWithGlobals() as GlobalOptions;
}

/** Whether `--json` was given, to this command or to the one it belongs to. */
export function wantsJson(command: Command): boolean {
  return Boolean((command.optsWithGlobals() as { readonly json?: boolean }).json);
}

function tellUnread(count: number): void {
  if (count === 0) return;
  tell(
    count === 1
      ? '1 memo is kept and not read yet, and nothing here is of it. If no other call is at it: hearwright resume'
      : `${count} memos are kept and not read yet, and nothing here is of them. If no other call is at it: hearwright resume`,
  );
}

/**
 * Opens the named project, else the nearest one upward, does the work and closes it whatever happens. `finishesKept`: the
 * work itself reads memos that a call before was killed over; any other call only tells of them, since hearing one may
 * take minutes.
 */
export async function withProject<T>(
  command: Command,
  work: (project: ProjectApi) => T | Promise<T>,
  { finishesKept = false }: { readonly finishesKept?: boolean } = {},
): Promise<T> {
  const { openNearestProject } = await import('../project.ts');
  const project = await openNearestProject(globalsOf(command).project);
  if (project.upgraded) {
    const { fromFormat, copy } = project.upgraded;
    tell(`The project was of format ${fromFormat} and is up to date now. As it was before: ${copy}`);
  }
  try {
    if (!finishesKept) tellUnread(project.unreadCount());
    return await work(project);
  } finally {
    project.close();
  }
}
