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

/** Opens the named project, else the nearest one upward, does the work and closes it whatever happens. */
export async function withProject<T>(
  command: Command,
  work: (project: ProjectApi) => T | Promise<T>,
): Promise<T> {
  const { openNearestProject } = await import('../project.ts');
  const project = await openNearestProject(globalsOf(command).project);
  if (project.upgraded) {
    const { fromFormat, copy } = project.upgraded;
    tell(`The project was of format ${fromFormat} and is up to date now. As it was before: ${copy}`);
  }
  try {
    return await work(project);
  } finally {
    project.close();
  }
}
