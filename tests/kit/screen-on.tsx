/** The screen on a project, with its work in the same thread. */
import type { ProjectApi } from '../../src/project-api.ts';
import { App } from '../../src/tui/app.tsx';
import { openingOf, type SavePage } from '../../src/tui/screen-host.ts';
import { workHere } from '../../src/tui/work-here.ts';

/** `now` is ISO 8601; without `save` pages are said to be written and are not. */
export function screenOn(
  project: ProjectApi,
  now: string,
  save: SavePage = (file) => ({ file: `/barn/${file}`, beside: false }),
) {
  return <App opening={openingOf(project, now)} work={workHere({ project, now: () => now, save })} />;
}
