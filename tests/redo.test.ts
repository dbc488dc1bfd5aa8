/** Undo and redo in a real project: one more event each, and the model is what it was. */
import { afterEach, beforeEach, expect, test } from 'vitest';
import type { HandChange, ProjectApi } from '../src/project-api.ts';
import { type ToldProject, toldProject } from './kit/told-project.ts';

const TALK =
  'The smoke chamber is 1240 wide. The self is 320 deep. I need to oil the hinges. The damper sticks.';
const NOW = '2026-03-10T08:00:00Z';

let told: ToldProject;
let project: ProjectApi;
beforeEach(async () => {
  told = await toldProject({ name: 'Smokehouse' }, { name: 'a.txt', at: '2026-03-09T18:00:00Z', text: TALK });
  project = told.project;
}, 60_000);
afterEach(() => told.remove());

/** All that a person sees of it. */
const seen = () =>
  JSON.stringify([
    project.figures(),
    project.currentTasks(NOW),
    project.memo('m1'),
    project.findings(),
    project.limits(),
  ]);

const DEEDS: readonly HandChange[] = [
  { kind: 'notes-accepted', noteIds: ['m1.f1', 'm1.t1'] },
  { kind: 'items-merged', from: 'self', into: 'shelf' },
  { kind: 'note-rejected', noteId: 'm1.f2' },
  { kind: 'task-added', gist: 'Sweep the loft' },
  { kind: 'task-closed', taskId: 'm1.t1' },
];

test('undone one by one and done again one by one, every step is as it was', async () => {
  const states = [seen()];
  for (const deed of DEEDS) {
    project.setByHand(deed);
    states.push(seen());
  }
  const undone: (string | undefined)[] = [];
  for (let step = DEEDS.length - 1; step >= 0; step--) {
    undone.push(project.undo());
    expect(seen()).toBe(states[step]);
  }
  expect(project.undo()).toBeUndefined();
  for (let step = 1; step <= DEEDS.length; step++) {
    expect(project.redo()).toBe(undone.at(-step));
    expect(seen()).toBe(states[step]);
  }
  expect(project.redo()).toBeUndefined();
  // What was done again is undone again, and done once more.
  const last = undone[0];
  expect([project.undo(), project.redo(), project.undo()]).toEqual([last, last, last]);
  expect(seen()).toBe(states.at(-2));
  expect((await project.verify()).faults).toEqual([]);
});

test('what is done after an undo closes the way back; what is only taken in does not', async () => {
  project.setByHand({ kind: 'task-added', gist: 'Sweep the loft' });
  project.undo();
  await told.tell({ name: 'b.txt', at: '2026-03-09T19:00:00Z', text: 'The bearers are 45 by 70.' });
  expect(project.redo()).toBe('the task "Sweep the loft"');
  project.undo();
  project.setByHand({ kind: 'task-added', gist: 'Buy screws' });
  expect(project.redo()).toBeUndefined();
  expect(project.currentTasks(NOW).map(({ gist }) => gist)).not.toContain('Sweep the loft');
});

test('a thing set by hand that was withdrawn by its id comes back', () => {
  project.setByHand({ kind: 'task-added', gist: 'Sweep the loft' });
  const added = () => project.currentTasks(NOW).find(({ gist }) => gist === 'Sweep the loft');
  const id = added()?.id ?? '';
  expect(project.withdraw(id)).toBe('the task "Sweep the loft"');
  expect(added()).toBeUndefined();
  expect(project.redo()).toBe('the task "Sweep the loft"');
  expect(added()?.id).toBe(id);
});
