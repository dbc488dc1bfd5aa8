/** What a day did to the figures, and to the tasks. */
import { expect, test } from 'vitest';
import { dayView } from '../../src/model/day-views.ts';
import { exportDocument } from '../../src/model/export.ts';
import { ToldStory } from '../kit/told-story.ts';

const story = () =>
  new ToldStory().hear(
    'The bench top is 900 high. The shelf is 300 deep. I need to sand the deck.',
    'The bench top is 900 high. The shelf is now 320 deep, I changed my mind. The rail is 40 thick.',
    'Sanded the deck.',
  );

test('what was said before is confirmed or changed, and the rest is new', () => {
  const changes = dayView(story().project.rows, '2026-02-02')?.changes ?? [];
  expect(
    changes.map((change) => [
      change.kind,
      change.figure.quote,
      'old' in change ? change.old.value : undefined,
    ]),
  ).toEqual([
    ['confirmed', '900 high', 900],
    ['changed', '320 deep', 300],
    ['new', '40 thick', undefined],
  ]);
});

test('a figure of another size of the same thing is no old value', () => {
  const other = new ToldStory().hear('The shelf is 300 deep.', 'The shelf is 18 thick.');
  expect(dayView(other.project.rows, '2026-02-02')?.changes.map(({ kind }) => kind)).toEqual(['new']);
});

test('a changed figure stands under the name of its thing, as its clash does', () => {
  const heard = new ToldStory().hear(
    'The stove hearth is 615 wide.',
    "Changed my mind about the hearth, it's going to be 650 wide now.",
  );
  const day = dayView(heard.project.rows, '2026-02-02');
  expect(day?.changes.map(({ kind, figure }) => [kind, figure.item])).toEqual([['changed', 'stove hearth']]);
  expect(day?.findings.map(({ item }) => item)).toEqual(['stove hearth']);
});

test('a rejected figure is no old value', () => {
  const other = new ToldStory().hear('The shelf is 300 deep.', 'The tray is 90 deep.');
  other.hand({ kind: 'note-rejected', noteId: 'm1.f1' });
  other.hear('The shelf is 320 deep.');
  expect(dayView(other.project.rows, '2026-02-03')?.changes.map(({ kind }) => kind)).toEqual(['new']);
});

test.each([
  ['2026-02-01', ['Sand the deck'], [], []],
  ['2026-02-02', [], [], ['Sand the deck']],
  ['2026-02-03', [], ['Sand the deck'], ['Sand the deck']],
])('on %s tasks were opened %o, closed %o, and open before %o', (date, opened, closed, before) => {
  const day = dayView(story().project.rows, date);
  const gists = (tasks: readonly { readonly gist: string }[] = []) => tasks.map(({ gist }) => gist);
  expect([gists(day?.tasksOpened), gists(day?.tasksClosed), gists(day?.openTasksBefore)]).toEqual([
    opened,
    closed,
    before,
  ]);
});

test('a day without talk has no view', () => {
  expect(dayView(story().project.rows, '2026-02-04')).toBeUndefined();
});

test('the export has a clash under the memo that brought it, and under no other', () => {
  const document = exportDocument(story().project.rows) as {
    readonly memos: readonly { readonly conflicts: readonly unknown[] }[];
  };
  expect(document.memos.map(({ conflicts }) => conflicts)).toEqual([
    [],
    [
      expect.objectContaining({
        item: 'shelf',
        attribute: 'depth',
        was: expect.objectContaining({ value: 300, unit: 'mm' }),
        now: expect.objectContaining({ value: 320, unit: 'mm' }),
        kind: 'decided',
        why: 'it was changed on purpose',
      }),
    ],
    [],
  ]);
});
