import { resolve } from 'node:path';
import { Command } from 'commander';
import { print } from '../print.ts';
import { globalsOf } from '../project-of.ts';
import { regionValue, unitsValue } from '../values.ts';

interface Options {
  readonly units?: ReturnType<typeof unitsValue>;
  readonly region?: string;
  readonly name?: string;
}

/** `init`: makes a project; on an existing one it says so and changes nothing. */
export function initCommand(): Command {
  return new Command('init')
    .description('make a project in this folder')
    .option('--units <system>', 'which system bare numbers belong to: metric, us or mixed', unitsValue)
    .option('--region <cc>', 'country code: settles gallon, ton, dollar and the order of dates', regionValue)
    .option('--name <name>', "the project's name; without it the folder's")
    .action(async (options: Options, command: Command) => {
      const { counted } = await import('../../reports/source-text.ts');
      const { oneLine } = await import('../../reports/words.ts');
      const { makeProject } = await import('../../project.ts');
      const folder = resolve(globalsOf(command).project ?? '.');
      const { made, info, memos } = await makeProject(folder, options);
      const facts = `${oneLine(info.name)}, ${info.units} units${info.region ? `, region ${info.region}` : ''}`;
      print(
        made
          ? `Made a project in ${oneLine(folder)}: ${facts}.`
          : `A project is here already: ${facts}, ${counted(memos, 'memo')}. Nothing was changed.`,
      );
    });
}
