import { Command } from 'commander';
import { EXIT, Problem } from '../../problem.ts';
import type { ProjectApi } from '../../project-api.ts';
import type { ClipToMark } from '../../reports/markers/edit-markers.ts';
import {
  type FrameRate,
  measuredRate,
  rateOf,
  readRate,
  standardRate,
} from '../../reports/markers/frame-rates.ts';
import { daysAsked } from '../days-asked.ts';
import { givePage } from '../give-page.ts';
import { tell } from '../print.ts';
import { withProject } from '../project-of.ts';
import { invalid } from '../values.ts';

interface Options {
  readonly rate?: FrameRate;
  readonly out?: string;
}

/** Where no recording of the days has a picture and no rate is asked for. Common practice, no source. */
const USUAL_RATE: FrameRate = { numerator: 25, denominator: 1 };

/** `markers`: the recordings of some days with a marker at every note, for the cutting room. */
export function markersCommand(): Command {
  return new Command('markers')
    .description('write the recordings with a marker at each note as OpenTimelineIO, for the cutting room')
    .argument('[from]', 'first day, YYYY-MM-DD; without it the week up to the latest talk')
    .argument('[to]', 'last day; without it the latest day with talk')
    .option(
      '--rate <frames>',
      'frames a second for recordings without a picture: 25, 29.97, 24000/1001',
      rateValue,
    )
    .option('--out <file>', 'write a file instead of printing')
    .action((from: string | undefined, to: string | undefined, options: Options, command: Command) =>
      withProject(command, async (project) => {
        const { editMarkersOf } = await import('../../reports/markers/edit-markers.ts');
        const [first, last] = daysAsked(project, 'markers', from, to);
        const clips = await clipsOf(project, first, last, options.rate);
        if (clips.length === 0) throw noClips(first, last);
        const days = first === last ? first : `${first} to ${last}`;
        await givePage(project, editMarkersOf(`${project.info.name}, ${days}`, clips), options.out);
      }),
    );
}

function rateValue(value: string): FrameRate {
  const rate = readRate(value);
  if (!rate) throw invalid('--rate', 'frames a second such as 25, 29.97 or 24000/1001', value);
  return rate;
}

/** The recordings of some days in the order in which they were made. */
async function clipsOf(
  project: ProjectApi,
  first: string,
  last: string,
  asked: FrameRate | undefined,
): Promise<readonly ClipToMark[]> {
  const memos = project
    .memos()
    .filter(({ source, recordedAt }) => {
      const day = recordedAt.slice(0, 10);
      return source.kind === 'recording' && day >= first && day <= last;
    })
    .sort((a, b) => Date.parse(a.recordedAt) - Date.parse(b.recordedAt));
  const found = await Promise.all(
    memos.map(async ({ id }) => ({ memo: project.memo(id), measured: await project.framesPerSecond(id) })),
  );
  for (const { memo, measured } of found) {
    if (memo && measured !== undefined && !standardRate(measured))
      tell(
        `${memo.source.name}: ${measured.toFixed(3)} frames a second, which is no usual rate: it may vary`,
      );
  }
  const seen = found.flatMap(({ measured }) => (measured && standardRate(measured)) || []);
  const ofSound = asked ?? onlyOne(seen) ?? USUAL_RATE;
  return found.flatMap(({ memo, measured }) =>
    memo
      ? [
          {
            memo,
            rate: measured === undefined ? ofSound : measuredRate(measured),
            hasPicture: measured !== undefined,
          },
        ]
      : [],
  );
}

/** The rate that all pictures share, where it is a usual one. */
function onlyOne(rates: readonly FrameRate[]): FrameRate | undefined {
  const [first] = rates;
  return first && rates.every((rate) => rateOf(rate) === rateOf(first)) ? first : undefined;
}

function noClips(first: string, last: string): Problem {
  return new Problem(`no recording was made from ${first} to ${last}: there is nothing to mark`, {
    code: 'no-recordings',
    exitCode: EXIT.usage,
    next: 'name other days: hearwright markers FROM TO',
  });
}
