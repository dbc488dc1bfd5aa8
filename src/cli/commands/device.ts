import { Command } from 'commander';
import { plainText } from '../../plain-text.ts';
import { EXIT, Problem } from '../../problem.ts';
import type { ProjectApi } from '../../project-api.ts';
import { print, printJson } from '../print.ts';
import { withProject } from '../project-of.ts';
import { invalid, oneOf } from '../values.ts';

interface Choices {
  readonly offset?: string;
  readonly clock?: string;
  readonly files?: readonly string[];
  readonly forget?: boolean;
  readonly json?: boolean;
}

/** `device`: how the clocks of cameras and recorders go. */
export function deviceCommand(): Command {
  return new Command('device')
    .description("tell how a recorder's clock goes; list the recorders")
    .argument('[name]', 'maker or model as the files name it, or a name of your own')
    .option('--offset <time>', 'what must be added to its clock: +01:00:12, -00:07')
    .option('--clock <zone>', 'what its clock counts in, whatever its files say: utc or local')
    .option('--files <pattern...>', 'names of its files, with * and ?: "DJI_*.MP4"')
    .option('--forget', 'its clock is right from now on')
    .option('--json', 'print JSON')
    .action((name: string | undefined, choices: Choices, command: Command) =>
      withProject(command, (project) => tellDevice(project, name, choices)),
    );
}

async function tellDevice(project: ProjectApi, said: string | undefined, choices: Choices): Promise<void> {
  const name = plainText(said ?? '').trim();
  const { offset, clock, files, forget, json } = choices;
  const isChange = Boolean(offset ?? clock ?? files ?? forget);
  if (name === '' && (isChange || said !== undefined)) throw invalid('device', 'a name', said ?? '');
  if (isChange) {
    const known = project.devices().find((one) => one.name.toLowerCase() === name.toLowerCase());
    const offsetSeconds = offset === undefined ? (known?.offsetSeconds ?? 0) : offsetValue(offset);
    const counts = clock === undefined ? known?.counts : oneOf('--clock', ['utc', 'local'], clock);
    const patterns = files ?? known?.files;
    const told = {
      offsetSeconds,
      ...(counts ? { counts } : {}),
      ...(patterns ? { files: patterns.map(plainText) } : {}),
    };
    project.setByHand({
      kind: 'device-set',
      name: known?.name ?? name,
      ...(forget ? {} : { clock: told }),
    });
  }
  const { deviceTable, seenDevices } = await import('../../reports/device-list.ts');
  const all = project.devices();
  if (name !== '' && !isChange && !all.some((one) => one.name.toLowerCase() === name.toLowerCase()))
    throw new Problem(`no device is called "${name}"`, {
      code: 'device-unknown',
      exitCode: EXIT.usage,
      next: `tell how its clock goes: hearwright device "${name}" --offset +00:00:00`,
    });
  const seen = seenDevices(project.memos());
  if (json) printJson({ devices: all, seen });
  else print(deviceTable(all, seen));
}

/** "+01:00:12" in seconds; hours and minutes, "+01:30", where two numbers are given. */
export function offsetValue(value: string): number {
  const parts = /^([+-]?)(\d{1,5}):([0-5]\d)(?::([0-5]\d))?$/.exec(value);
  if (!parts) throw invalid('--offset', 'hours, minutes and seconds such as +01:00:12', value);
  const [, sign, hours, minutes, seconds = '0'] = parts;
  const size = Number(hours) * 3600 + Number(minutes) * 60 + Number(seconds);
  return sign === '-' ? -size : size;
}
