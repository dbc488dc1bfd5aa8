/**
 * What speaks for a deed closing a task, and for a figure taking the place of another, by name and amount. The weights are
 * fitted to these signs: a sign that is counted otherwise is seen here, also where nothing comes out differently.
 */
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { weighChange } from '../../../src/model/change-signs.ts';
import { pairsOf } from '../../../src/model/closing.ts';
import type { Sign } from '../../../src/model/closing-signs.ts';
import { Draft } from '../../../src/model/draft.ts';
import { arrivingOf } from '../../../src/model/figures.ts';
import { keepNotes } from '../../../src/model/keep-notes.ts';
import { likelyChanges } from '../../../src/model/likeliest-change.ts';
import { MemoryProject } from '../../../src/model/memory.ts';
import type { TaskRow } from '../../../src/model/rows.ts';
import { Working } from '../../../src/model/working.ts';
import { readOnce } from '../../kit/read-once.ts';

const at = (path: string) => fileURLToPath(new URL(path, import.meta.url));
const signLine = (signs: readonly Sign[]) =>
  signs.map(([name, size]) => (size === 1 ? name : `${name} ${Number(size.toFixed(3))}`)).join(', ');

const task = (gist: string, due?: string, waitsFor: readonly string[] = [], around = gist): TaskRow => ({
  id: gist,
  gist,
  quote: gist,
  around,
  waitsFor,
  ...(due ? { due } : {}),
  source: { memoId: 'm1', recordedAt: '2026-06-03T18:00:00Z', quote: gist },
  status: 'open',
});

const TASKS = [
  task('Cut the left locker lid', '2026-06-10'),
  task('Cut the right locker lid'),
  task('Glue the rib to the frame', '2026-06-20', ['frame is dry']),
  task('Order copper nails for the hull'),
  task('Start on the second coat of varnish on the mast'),
  task('Pull the old cable out from behind the panel'),
  task('Take the hatch off and bring it down'),
  task('Ring the glazier about the rooflight'),
  task(
    'Measure the galley bulkhead',
    undefined,
    [],
    'Measure the galley bulkhead. The stove stands beside it.',
  ),
  task('Clean the bilge and paint it'),
  task('Fit it'),
];

const DEEDS = [
  'The left locker lid is cut',
  'Both locker lids are cut at last',
  'I glued the rib',
  "The ribs aren't glued, not yet",
  'Copper nails came',
  'The first coat is on the mast',
  'Half of the second coat went on',
  "The cable's out",
  'I put the hatch back on',
  'The glazier rang',
  'I measured the bulkhead by the stove',
  'Cleaned the bilge so far as the engine',
  'Painted it',
  "That's fitted",
  'Put the galley stove in',
];

test('signs of what was done for what was to do', async () => {
  const deeds = DEEDS.map((quote) => ({ gist: quote, quote, around: quote }));
  const pairs = pairsOf(deeds, TASKS, '2026-06-12T18:00:00Z');
  const lines = DEEDS.flatMap((said, deed) => [
    `> ${said}`,
    ...pairs
      .filter((pair) => pair.at === deed)
      .map(({ index, score, signs }) => {
        const told = signs ? signLine(signs) : 'barred';
        return `  ${TASKS[index]?.gist}: ${Number(score.toFixed(3))}; ${told}`;
      }),
  ]);
  await expect(`${lines.join('\n')}\n`).toMatchFileSnapshot(at('./closing-signs.txt'));
});

const MEMOS = [
  'The cabin is 2400 long and 1980 wide. The galley worktop is 900 high and 600 deep. The water tank holds 120 litres. The hatch is 560 by 480. The rudder weighs 38 kilos. The mast is about 7.2 metres. The shelf in the galley is 1200 long, and the galley window is 640 wide. The glue takes 4 hours.',
  "I measured the cabin again, 1965 wide, not 1980. The worktop's going to be 915. The tank took 115 before it ran over. I decided on a 580 hatch. The rudder came out at 41 kilos with the tiller. The mast wants to be 6.8 metres. The galley shelf is 1150. I cut the window board to 660, the window being 640. The varnish takes 6 hours.",
  'It was 1965, now it is 1970. The worktop is 36 inches. There is a leak at the tank, 12 litres gone. The hatch I ordered came, 560 by 470. Need to cut the mast to 6800. The cabin sole is 2380 long. The window is roughly 650. No, the shelf was 1250.',
];

test('signs of what takes the place of what was told', async () => {
  const project = new MemoryProject();
  const made = '2026-06-01T08:00:00Z';
  project.append([{ kind: 'project-made', name: 'Launch', units: 'metric', region: 'GB', at: made }]);
  const lines = MEMOS.flatMap((text, k) => {
    const [memoId, recordedAt] = [`m${k + 1}`, `2026-06-0${k + 1}T18:00:00Z`];
    const { notes: read } = readOnce(text, { units: 'metric', region: 'GB', recordedAt });
    const notes = keepNotes(memoId, read, undefined);
    const settings = { units: 'metric', region: 'GB', tolerances: {} } as const;
    const work = new Working(new Draft(project.rows), { id: memoId, recordedAt, text, notes }, settings);
    const told = notes.figures.flatMap((note) => [
      `> ${note.item} ${note.attribute} ${note.value} ${note.unit} "${note.quote}"`,
      ...likelyChanges(work, arrivingOf(work, note)).map(
        ({ row, signs }) => `  ${row.slot}: ${weighChange(signs).toFixed(2)}; ${signLine(signs)}`,
      ),
    ]);
    const source = { name: `${memoId}.txt`, kind: 'text', sha256: memoId, bytes: text.length } as const;
    const kept = { memoId, source, file: source.name, recordedAt, recordedAtFrom: 'given' } as const;
    project.append([
      { kind: 'recording-kept', at: recordedAt, ...kept },
      { kind: 'transcript-made', at: recordedAt, memoId, transcript: { text } },
      { kind: 'notes-read', at: recordedAt, memoId, notes: read, reader: 'test' },
    ]);
    return told;
  });
  await expect(`${lines.join('\n')}\n`).toMatchFileSnapshot(at('./change-signs.txt'));
});
