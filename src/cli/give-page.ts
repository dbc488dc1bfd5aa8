/** Gives a page to standard output or, with `--out`, to a file. */
import type { ProjectApi } from '../project-api.ts';
import { print, tell } from './print.ts';

/** Prints `text`, or writes it to `out` and says where it went. */
export async function givePage(project: ProjectApi, text: string, out: string | undefined): Promise<void> {
  if (out === undefined) return print(text);
  const { pageRecordOf, writePage } = await import('./page-file.ts');
  const written = writePage(out, text, pageRecordOf(project.folder));
  tell(
    written.beside
      ? `${out} was changed since it was written and was left as it is; the new page is ${written.file}`
      : `written: ${written.file}`,
  );
  for (const id of written.ticked)
    tell(`ticked, and still open: ${id}; when it is done: hearwright close ${id}`);
}
