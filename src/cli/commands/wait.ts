import { Command } from 'commander';
import type { HandWait } from '../../model/events.ts';
import { EXIT, Problem } from '../../problem.ts';
import type { ProjectApi } from '../../project-api.ts';
import { oneLine } from '../../reports/words.ts';
import { print, printBlocks } from '../print.ts';
import { withProject } from '../project-of.ts';
import { taskOf } from '../task-of.ts';
import { dayValue, hoursValue } from '../values.ts';

interface Options {
  readonly task?: string;
  readonly until?: string;
  readonly hours?: number;
  readonly reading?: string;
  readonly nothing?: true;
}

/** `wait`: what has to happen before a task can be done. */
export function waitCommand(): Command {
  return new Command('wait')
    .description('say what a task waits for, or that it waits for nothing')
    .argument('<task>', 'its id, as tasks shows it')
    .argument('[words...]', 'what has to happen first: "gutters arrive"')
    .option('--task <id>', 'another task')
    .option('--until <date>', 'a day, YYYY-MM-DD', (value) => dayValue('--until', value))
    .option('--hours <number>', 'hours from now, as for glue', (value) => hoursValue('--hours', value))
    .option('--reading <bound>', 'a reading: "workshop at least 15 degC", "larch at most 16 %"')
    .option('--nothing', 'take away everything that it waits for')
    .action((id: string, words: string[], options: Options, command: Command) =>
      withProject(command, async (project) => {
        const task = taskOf(project, id);
        const waits = await waitsOf(project, words.join(' '), options);
        if ((waits.length === 0) !== (options.nothing === true)) throw nothingToWaitFor();
        const known = new Set(project.findings().map((finding) => finding.id));
        project.setByHand({ kind: 'task-waits-set', taskId: task.id, waits });
        const found = project.findings().filter((finding) => !known.has(finding.id));
        if (found.length > 0) {
          const { findingsText } = await import('../../reports/finding-text.ts');
          printBlocks(`${findingsText(found)}\n`);
        }
        const told = waits.map((wait) => oneLine(wait.words)).join(', ');
        print(`${oneLine(task.gist)}: waits for ${told || 'nothing'}.`);
      }),
    );
}

async function waitsOf(project: ProjectApi, words: string, options: Options): Promise<readonly HandWait[]> {
  const { task, until, hours, reading } = options;
  const waits: HandWait[] = [];
  if (task !== undefined) {
    const other = taskOf(project, task);
    waits.push({ words: words || other.gist, taskId: other.id });
  }
  if (until !== undefined) waits.push({ words: words || until, until });
  if (hours !== undefined) waits.push({ words: words || `${hours} hours`, hours });
  if (reading !== undefined) {
    const { readWrittenReading } = await import('../../model/written.ts');
    const read = readWrittenReading(reading, project.info.region);
    if (!read.ok) throw unreadReading(read.why);
    waits.push({ words: reading, reading: read.value });
  }
  return waits.length === 0 && words !== '' ? [{ words }] : waits;
}

function nothingToWaitFor(): Problem {
  return new Problem('wait: say what the task waits for, or --nothing', {
    code: 'value-mismatch',
    exitCode: EXIT.usage,
    kept: 'nothing was changed',
    next: 'hearwright wait TASK gutters arrive',
  });
}

function unreadReading(why: string): Problem {
  return new Problem(`--reading: ${why}`, {
    code: 'value-invalid',
    exitCode: EXIT.usage,
    kept: 'nothing was changed',
    next: 'hearwright wait TASK --reading "workshop at least 15 degC"',
  });
}
