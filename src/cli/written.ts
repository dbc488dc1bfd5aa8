/** Sets what a person wrote, and shows what that clashes with. */
import type { Written } from '../model/written.ts';
import { EXIT, Problem } from '../problem.ts';
import type { HandChange, ProjectApi } from '../project-api.ts';
import { printBlocks } from './print.ts';

/** Throws a Problem when it cannot be read; nothing is set then. Gives back what was set. */
export async function setWritten<C extends HandChange>(
  project: ProjectApi,
  read: (region?: string) => Written<C>,
  more: { readonly reason?: string } = {},
  example = 'figures set "bench top length = room length - 1700 mm"',
): Promise<C> {
  const written = read(project.info.region);
  if (!written.ok) throw unreadable(written.why, example);
  await setAndTell(project, { ...written.value, ...more });
  return written.value;
}

/** Sets it, and prints the findings that come of it. */
export async function setAndTell(project: ProjectApi, change: HandChange): Promise<void> {
  const known = new Set(project.findings().map(({ id }) => id));
  project.setByHand(change);
  const found = project.findings().filter(({ id }) => !known.has(id));
  if (found.length > 0) {
    const { findingsText } = await import('../reports/finding-text.ts');
    printBlocks(`${findingsText(found)}\n`);
  }
}

function unreadable(why: string, example: string): Problem {
  return new Problem(`statement: ${why}`, {
    code: 'statement-unread',
    exitCode: EXIT.usage,
    kept: 'nothing was set',
    next: `hearwright ${example}`,
  });
}
