/** The pictures in `docs/screen.md` are frames of the screen on a real project: read from talk, kept in a real store. */
import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { ProjectApi } from '../../src/project-api.ts';
import { KEY_BYTES, openTerminal } from '../kit/fake-terminal.ts';
import { screenOn } from '../kit/screen-on.tsx';
import { toldProject } from '../kit/told-project.ts';

const MONDAY = [
  'Monday in the mill. The stair opening is 820 wide, I measured it.',
  "I've ordered twelve larch treads, they come on the 19th of March.",
  'I need to oil the hoist beam. I must order more screws.',
  "I'll show you the stair drawing next week, promise.",
].join(' ');
const THURSDAY = [
  "We've started planking the gallery floor, five of the nine boards are down.",
  'The primer wants four hours before the next coat and no more than twelve. First coat of primer went on at two.',
  'The stair opening is 280 wide. We decided on brass hinges because they do not rust.',
  "I can't hang the gate until the hinges arrive. The gutter bracket cracked.",
].join(' ');
const NOW = '2026-04-02T09:00:00Z';

let project: ProjectApi;
let remove = () => {};
beforeAll(async () => {
  ({ project, remove } = await toldProject(
    { name: 'Mill loft', region: 'GB' },
    { name: 'monday.txt', at: '2026-03-09T18:00:00Z', text: MONDAY },
    { name: 'thursday.txt', at: '2026-03-12T18:00:00Z', text: THURSDAY },
  ));
}, 60_000);
afterAll(() => remove());

test.each([
  ['where was I', 42, ['i']],
  ['memos', 24, ['m']],
  ['what was heard', 22, ['m', KEY_BYTES.enter]],
  ['clashes', 24, ['c']],
  ['figures', 15, ['f']],
  ['one figure', 28, ['f', KEY_BYTES.enter]],
  ['tasks', 15, ['w']],
  ['the day', 24, ['d']],
] as const)('the picture of "%s" is what the screen shows', async (_name, rows, keys) => {
  const docs = readFileSync('docs/screen.md', 'utf8');
  const terminal = openTerminal(screenOn(project, NOW), 80, rows);
  await terminal.press(...keys);
  const lines = terminal.frame().split('\n');
  terminal.close();
  // Head, title and what stands beneath; the keys at the foot are told in the table.
  const shown = lines.slice(1, lines.lastIndexOf('')).join('\n').trimEnd();
  const picture = shown.replace(/^(?=.)/gm, '    ');
  expect(docs, 'docs/screen.md holds another picture: put this one in its place').toContain(picture);
});
