/** Words of a memo put right in a real project: the model follows, undo takes it back, the log keeps what was heard. */
import { afterEach, beforeEach, expect, test } from 'vitest';
import { openNearestProject } from '../src/project.ts';
import type { ProjectApi } from '../src/project-api.ts';
import { type ToldProject, toldProject } from './kit/told-project.ts';

const TALK = 'The smoke chamber is 1240 wide. The self is 320 deep. I need to oil the hinges.';

let told: ToldProject;
let project: ProjectApi;
beforeEach(async () => {
  told = await toldProject({ name: 'Smokehouse' }, { name: 'a.txt', at: '2026-03-09T18:00:00Z', text: TALK });
  project = told.project;
}, 60_000);
afterEach(() => told.remove());

const place = (words: string) => {
  const start = project.memo('m1')?.text.indexOf(words) ?? -1;
  return { start, end: start + words.length };
};
const figures = () => project.figures().map(({ item, value }) => `${item} ${value}`);

test('the figure stands under its right name, a note agreed with stays agreed with, and undo takes it back', async () => {
  const before = figures();
  project.setByHand({ kind: 'notes-accepted', noteIds: ['m1.f1', 'm1.t1'] });
  await project.reword('m1', { span: place('self'), words: 'shelf' });
  expect(figures()).toEqual(['smoke chamber 1240', 'shelf 320']);
  expect(project.memo('m1')).toMatchObject({ isReworded: true, text: TALK.replace('self', 'shelf') });
  expect(project.memo('m1')?.notes.tasks).toMatchObject([{ id: 'm1.t1', review: 'accepted' }]);
  expect(project.ask('shelf').said).toMatchObject([{ quote: 'The shelf is 320 deep.' }]);
  expect((await project.verify()).faults).toEqual([]);
  expect(project.undo()).toBe('"shelf" for "self" in memo 1');
  expect(figures()).toEqual(before);
  expect(project.undo()).toBe('the word on 2 notes');
  expect(project.memo('m1')?.notes.tasks[0]?.review).toBeUndefined();
  expect((await project.verify()).faults).toEqual([]);
});

test('a size put right is what the figure says from then on, and what it clashes with goes', async () => {
  await told.tell({ name: 'b.txt', at: '2026-03-10T18:00:00Z', text: 'The smoke chamber is 1420 wide.' });
  expect(project.findings({ status: 'open' })).toHaveLength(1);
  await project.reword('m2', { span: { start: 21, end: 25 }, words: '1240' });
  expect(project.findings({ status: 'open' })).toEqual([]);
  expect(project.figures('smoke chamber')[0]).toMatchObject({ value: 1240, status: 'stands' });
});

test('a task that is none becomes a snag, under its id', () => {
  const fields = { kind: 'problem', gist: 'The hinges want oil' };
  project.setByHand({ kind: 'note-amended', noteId: 'm1.t1', fields });
  expect(project.tasks('2026-03-10')).toEqual([]);
  expect(project.problems()).toMatchObject([{ gist: 'The hinges want oil', status: 'open' }]);
  expect(project.memo('m1')?.notes.problems).toMatchObject([{ id: 'm1.t1', review: 'amended' }]);
  project.undo();
  expect(project.tasks('2026-03-10')).toHaveLength(1);
  expect(project.problems()).toEqual([]);
});

test('a memo that is not there has no words to put right', async () => {
  const reword = project.reword('m9', { span: { start: 0, end: 1 }, words: 'x' });
  await expect(reword).rejects.toMatchObject({ code: 'memo-not-read', exitCode: 2 });
});

test('a memo that was taken as text has no clip to play', async () => {
  expect(await project.playClip('m1', { from: 0, to: 1 })).toMatchObject({
    ok: false,
    problem: { code: 'sound-missing', exitCode: 3, message: 'memo 1 holds no sound: it was taken as text' },
  });
});

test('of two who put words of one memo right at once, the second is told', async () => {
  const other = await openNearestProject(told.folder);
  const [first, second] = await Promise.allSettled([
    project.reword('m1', { span: place('self'), words: 'shelf' }),
    other.reword('m1', { span: place('1240'), words: '1250' }),
  ]);
  other.close();
  expect(first.status).toBe('fulfilled');
  expect(second).toMatchObject({ status: 'rejected', reason: { code: 'memo-changed' } });
  expect(figures()).toContain('shelf 320');
});
