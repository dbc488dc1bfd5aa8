/** On a real project: whatever a key of the screen changes by hand, `u` takes back and `z` does again. */
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { ProjectApi } from '../../src/project-api.ts';
import { KEY_BYTES, openTerminal } from '../kit/fake-terminal.ts';
import { screenOn } from '../kit/screen-on.tsx';
import { toldProject } from '../kit/told-project.ts';

const MONDAY = [
  'The stair opening is 820 wide, I measured it. The locker is 18 mm thick.',
  'I need to oil the hoist beam. I must order more screws.',
].join(' ');
const THURSDAY = 'The stair opening is 280 wide. I have to hang the gate. The gutter bracket cracked.';
const NOW = '2026-03-13T09:00:00Z';

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

/** All that the project says of itself. */
const told = () =>
  JSON.stringify([
    project.memos().map(({ id }) => project.memo(id)),
    [...project.figureList()],
    project.findings({}),
    project.currentTasks(NOW),
    project.next(NOW),
  ]);

const { enter, down, clear } = { ...KEY_BYTES, clear: '\u0015' };
const NOTES = ['m', enter];
const OLDER = ['m', down, enter];

test.each<[string, readonly string[], readonly string[]]>([
  ['a note is right', NOTES, ['1']],
  ['a note is out', NOTES, ['-']],
  ['all sure ones', NOTES, ['a']],
  ['a note is put right', NOTES, ['e', clear, 'stair opening width = 810 mm', enter]],
  ['a note is of another kind', OLDER, [down, down, 'y', 'done', enter]],
  ['misheard words', NOTES, ['h', clear, 'The stair opening is 285 wide.', enter]],
  ['a thing is another one', NOTES, ['j', 'hatch', enter]],
  ['a figure is set', ['f'], ['e', clear, 'stair opening width = 825 mm', enter]],
  ['names are joined', ['f'], ['j', 'locker', enter]],
  ['the older size holds', ['c'], ['1']],
  ['the newer size holds', ['c'], ['2']],
  ['both are right', ['c'], ['3']],
  ['neither is', ['c'], ['4', '822 mm', enter]],
  ['a task is closed', ['w'], ['1']],
  ['a task is added', ['w'], ['a', 'Sweep the loft', enter]],
  ['a task waits', ['w'], ['h', 'the paint is dry', enter]],
  ['a task has a day', ['w'], ['b', '2026-04-01', enter]],
  ['a task comes later', ['w'], ['l']],
  ['a task comes sooner', ['w'], [down, 's']],
  ['what is no task', ['w'], ['-']],
  ['a snag is put right', ['w'], [down, down, down, '1']],
])('%s: u takes it back, z does it again', async (_, view, keys) => {
  const terminal = openTerminal(screenOn(project, NOW), 80, 30);
  try {
    const before = told();
    await terminal.press(...view);
    await terminal.press(...keys);
    await terminal.settle();
    const after = told();
    expect(after).not.toBe(before);
    await terminal.press('u');
    await terminal.settle();
    expect(told()).toBe(before);
    expect(terminal.frame()).toContain('undone: ');
    await terminal.press('z');
    await terminal.settle();
    expect(told()).toBe(after);
    await terminal.press('u');
    await terminal.settle();
    expect(told()).toBe(before);
  } finally {
    terminal.close();
  }
});
