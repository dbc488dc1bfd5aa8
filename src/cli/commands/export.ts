import { Command } from 'commander';
import { printJson } from '../print.ts';
import { withProject } from '../project-of.ts';

/** `export`: the whole project as one JSON document. */
export function exportCommand(): Command {
  return new Command('export')
    .description('print the whole project as one JSON document')
    .option('--json', 'as JSON, the only format there is')
    .action((_options: object, command: Command) =>
      withProject(command, (project) => printJson(project.exportDocument())),
    );
}
