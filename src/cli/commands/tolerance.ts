import { Command } from 'commander';
import { DIMENSIONS, type Dimension } from '../../language/notes.ts';
import { print } from '../print.ts';
import { withProject } from '../project-of.ts';
import { invalid, knownQuantity, oneOf, quantityValue } from '../values.ts';

/** `tolerance`: the difference that is let pass in the whole project. */
export function toleranceCommand(): Command {
  return new Command('tolerance')
    .description('set the difference that is let pass, for one dimension')
    .argument('<dimension>', 'length, angle, mass...', (word) => oneOf('dimension', DIMENSIONS, word))
    .argument('<quantity>', 'the difference: "2 mm"')
    .action((dimension: Dimension, value: string, _options: object, command: Command) =>
      withProject(command, async (project) => {
        const { quantityText } = await import('../../reports/quantity-text.ts');
        const said = quantityValue('quantity', value);
        const quantity = await knownQuantity('quantity', said, project.info.region);
        if (!(quantity.value > 0)) throw invalid('quantity', 'a difference above nothing', value);
        project.setByHand({ kind: 'tolerance-set', dimension, quantity });
        print(`A ${dimension} may differ by ${quantityText(quantity)}.`);
      }),
    );
}
