import { Command } from 'commander';
import { now } from '../../instant.ts';
import type { ProjectApi } from '../../project-api.ts';
import type { Table } from '../../reports/tables/tables.ts';
import { givePage } from '../give-page.ts';
import { withProject } from '../project-of.ts';
import { oneOf } from '../values.ts';

const KINDS = ['figures', 'claims', 'tasks', 'findings'] as const;
type Kind = (typeof KINDS)[number];

/** `table`: figures, claims, tasks or findings as one flat table. */
export function tableCommand(): Command {
  return new Command('table')
    .description('write figures, claims, tasks or findings as a table for a spreadsheet')
    .argument('<what>', `${KINDS.slice(0, -1).join(', ')} or ${KINDS.at(-1)}`, (value) =>
      oneOf('what', KINDS, value),
    )
    .option('--json', 'as JSON instead of comma-separated values')
    .option('--out <file>', 'write a file instead of printing')
    .action((kind: Kind, options: { json?: boolean; out?: string }, command: Command) =>
      withProject(command, async (project) => {
        const { tableAsCsv, tableAsJson } = await import('../../reports/tables/tables.ts');
        const table = await tableOf(project, kind);
        await givePage(project, options.json ? tableAsJson(table) : tableAsCsv(table), options.out);
      }),
    );
}

async function tableOf(project: ProjectApi, kind: Kind): Promise<Table> {
  const tables = await import('../../reports/tables/tables.ts');
  switch (kind) {
    case 'figures':
      return tables.figuresTable(project.figures());
    case 'claims':
      return tables.claimsTable(project.figures());
    case 'tasks':
      return tables.tasksTable(project.tasks(now()));
    case 'findings':
      return tables.findingsTable(project.findings());
  }
}
