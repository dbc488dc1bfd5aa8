import { join } from 'node:path';
import { Command } from 'commander';
import { HOME } from '../../find-project.ts';
import { plainText } from '../../plain-text.ts';
import { tell } from '../print.ts';
import { withProject } from '../project-of.ts';
import type { WrittenSite } from '../site-files.ts';
import { dayValue } from '../values.ts';
import { nothingSaid } from './journal.ts';

interface PagesOptions {
  readonly out: string;
  readonly on?: string;
}

/** `pages`: the whole project as pages to read in a browser, from a disk or a server. */
export function pagesCommand(): Command {
  return new Command('pages')
    .description('write the project as pages for a browser, to read without a network')
    .requiredOption('--out <dir>', 'the folder to write into')
    .option('--on <date>', 'count ages and dates to that day instead of the latest one on record')
    .action((options: PagesOptions, command: Command) =>
      withProject(command, async (project) => {
        const { sitePages } = await import('../../reports/pages/site.ts');
        const { writeSite } = await import('../site-files.ts');
        const { siteSourceOf } = await import('../site-source-of.ts');
        const source = siteSourceOf(project, options.on && dayValue('--on', options.on));
        if (!source) throw nothingSaid(undefined, []);
        const counter = counterOnTerminal();
        const written = writeSite(options.out, sitePages(source), join(project.folder, HOME), counter.show);
        counter.clear();
        report(written);
      }),
    );
}

/** A person who changed many pages is told of the first ones by name. */
const MOST_NAMED = 10;

function report({ folder, pages, written, removed, beside, left }: WrittenSite): void {
  for (const [old, fresh] of beside.slice(0, MOST_NAMED))
    tell(`${old} was changed since it was written and was left as it is; the new page is ${fresh}`);
  for (const path of left.slice(0, MOST_NAMED))
    tell(`${path} is past, but was changed since it was written, and was left`);
  const more = Math.max(0, beside.length - MOST_NAMED) + Math.max(0, left.length - MOST_NAMED);
  if (more > 0) tell(`and ${more} more`);
  tell(
    `written: ${join(folder, 'index.html')} (${pages} files: ${written} new or changed, ${pages - written} as they were, ${removed} removed)`,
  );
}

/** A line on a terminal that counts; elsewhere nothing is printed. */
function counterOnTerminal(): { readonly show: (count: number) => void; readonly clear: () => void } {
  const { stderr } = process;
  if (!stderr.isTTY || process.env.TERM === 'dumb') return { show: () => {}, clear: () => {} };
  return {
    show: (count) => {
      if (count % 100 === 0) stderr.write(`\r\u001b[K${plainText(`${count} files`)}`);
    },
    clear: () => stderr.write('\r\u001b[K'),
  };
}
