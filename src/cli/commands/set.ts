import { Command } from 'commander';
import { ATTRIBUTES, type Attribute } from '../../language/notes.ts';
import { print } from '../print.ts';
import { withProject } from '../project-of.ts';
import { measureValue, oneOf } from '../values.ts';
import { setAndTell } from '../written.ts';

/** `set`: a figure by hand. */
export function setCommand(): Command {
  return new Command('set')
    .description('set a figure by hand')
    .argument('<item>', 'the thing: "bench top"')
    .argument('<attribute>', 'what is measured: height', (word) => oneOf('attribute', ATTRIBUTES, word))
    .argument('<quantity>', 'the value: "915 mm", "915 mm ± 2 mm"')
    .option('--reason <words>', 'why')
    .action(
      (item: string, attribute: Attribute, value: string, options: { reason?: string }, command: Command) =>
        withProject(command, async (project) => {
          const { figuresOfItem } = await import('../../reports/figure-table.ts');
          const measure = await measureValue(value, project.info.region);
          await setAndTell(project, { kind: 'figure-set', item, attribute, ...measure, ...options });
          const figures = project.figures(item).filter((figure) => figure.attribute === attribute);
          print(figuresOfItem(figures, project.info.units));
        }),
    );
}
