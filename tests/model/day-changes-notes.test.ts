/** What a day did to the figures, and what a span of days tells beside its days, from notes given outright. */
import { describe, expect, test } from 'vitest';
import { cautionsOfTasks, dayView, nextView, spanView } from '../../src/model/day-views.ts';
import { findingViews } from '../../src/model/project-views.ts';
import { figure, NotedStory, type NoteToTell } from '../kit/noted-story.ts';

const shelf = (value: number, more = {}) => figure('shelf', 'depth', value, more);
const snag = (gist: string): NoteToTell => ({ kind: 'problem', gist });
const done = (gist: string): NoteToTell => ({ kind: 'done', gist });
const task = (gist: string): NoteToTell => ({ kind: 'task', gist, waitsFor: [] });
const promise = (gist: string): NoteToTell => ({ kind: 'promise', gist });
const story = (...memos: readonly (NoteToTell | readonly NoteToTell[])[]) =>
  memos.reduce<NotedStory>(
    (told, notes, day) => told.memo(`Talk of day ${day + 1}.`, ...([notes].flat() as NoteToTell[])),
    new NotedStory(),
  );
const on = (day: number) => `2026-02-${String(day).padStart(2, '0')}`;

/** `changed 320 from 300 by m2.c1` */
const changes = (told: NotedStory, day: number) =>
  dayView(told.project.rows, on(day))?.changes.map(
    ({ kind, figure: { value }, old, findingId }) =>
      `${kind} ${value}${old ? ` from ${old.value}` : ''}${findingId ? ` by ${findingId}` : ''}`,
  );

describe('the changes of a day', () => {
  test.each([
    ['a figure said first is new', [shelf(300)], ['new 300']],
    ['the same again is confirmed', [shelf(300), shelf(300)], ['confirmed 300 from 300']],
    ['up to the tolerance', [shelf(300), shelf(301)], ['confirmed 301 from 300']],
    ['another one has changed by its finding', [shelf(300), shelf(320)], ['changed 320 from 300 by m2.c1']],
    ['a likely slip has changed nothing', [shelf(915), shelf(951)], []],
    ['of another thing is new', [shelf(300), figure('rail', 'depth', 300)], ['new 300']],
    ['of another measure is new', [shelf(300), figure('shelf', 'width', 300)], ['new 300']],
    [
      'each in the order of speech',
      [shelf(300), [figure('rail', 'depth', 40), shelf(300), figure('rail', 'width', 50)]],
      ['new 40', 'confirmed 300 from 300', 'new 50'],
    ],
    [
      'a reading is always new',
      [
        figure('shed', 'temperature', 8, { dimension: 'temperature', unit: 'degC' }),
        figure('shed', 'temperature', 9, { dimension: 'temperature', unit: 'degC' }),
      ],
      ['new 9'],
    ],
  ] as const)('%s', (_what, memos, expected) => {
    expect(changes(story(...memos), memos.length)).toEqual(expected);
  });

  test('a rejected one is no change, and none for what comes after it', () => {
    const told = story(shelf(300), shelf(320), shelf(330)).hand({ kind: 'note-rejected', noteId: 'm2.f1' });
    expect(changes(told, 2)).toEqual([]);
    expect(changes(told, 3)).toEqual(['changed 330 from 300 by m3.c1']);
  });

  test('a day without talk is none', () => {
    expect(dayView(story(shelf(300)).project.rows, on(2))).toBeUndefined();
  });
});

describe('the tasks of a day', () => {
  const told = () =>
    new NotedStory()
      .memo(
        'Oil the gate. Sand the rail.',
        { ...task('Oil the gate'), quote: 'Oil the gate' } as NoteToTell,
        { ...task('Sand the rail'), quote: 'Sand the rail' } as NoteToTell,
      )
      .memo(
        'Oiled the gate. Fit the lamp.',
        { ...done('Oiled the gate'), quote: 'Oiled the gate' } as NoteToTell,
        { ...task('Fit the lamp'), quote: 'Fit the lamp' } as NoteToTell,
      )
      .memo('Tea.');
  const of = (day: number) => {
    const view = dayView(told().project.rows, on(day));
    const gists = (list: readonly { readonly gist: string }[] = []) => list.map(({ gist }) => gist).sort();
    return [gists(view?.tasksOpened), gists(view?.tasksClosed), gists(view?.openTasksBefore)];
  };
  test('are those opened, those closed, and those open before it', () => {
    expect(of(1)).toEqual([['Oil the gate', 'Sand the rail'], [], []]);
    expect(of(2)).toEqual([['Fit the lamp'], ['Oil the gate'], ['Oil the gate', 'Sand the rail']]);
    expect(of(3)).toEqual([[], [], ['Fit the lamp', 'Sand the rail']]);
  });
});

describe('a span of days', () => {
  const told = () =>
    story(
      [shelf(300), snag('The tap leaks'), promise('Show the tap'), done('Swept the loft')],
      [snag('The gate squeaks')],
      [done('Painted the rail')],
    );
  const span = (from: number, to: number, one = told()) => spanView(one.project.rows, on(from), on(to));
  const gists = (list: readonly { readonly gist: string }[] = []) => list.map(({ gist }) => gist);

  test('holds its days with talk, both ends included', () => {
    expect(span(1, 2).days.map(({ date }) => date)).toEqual([on(1), on(2)]);
    expect(span(2, 2).days.map(({ date }) => date)).toEqual([on(2)]);
    expect(span(4, 9).days).toEqual([]);
  });

  test('tells the last time before it', () => {
    expect(span(1, 2).last).toBeUndefined();
    expect(span(2, 3).last?.date).toBe(on(1));
    expect(gists(span(2, 3).last?.done)).toEqual(['Swept the loft']);
    expect(span(5, 9).last?.date).toBe(on(3));
    expect(gists(span(5, 9).last?.done)).toEqual(['Painted the rail']);
  });

  test('leaves a deed that a person rejected out of the last time', () => {
    const one = told().hand({ kind: 'note-rejected', noteId: 'm1.x1' });
    expect(span(2, 3, one).last?.done).toEqual([]);
  });

  test('tells the snags of its own days', () => {
    expect(gists(span(1, 1).problems)).toEqual(['The tap leaks']);
    expect(gists(span(2, 3).problems)).toEqual(['The gate squeaks']);
    expect(gists(span(1, 3).problems)).toEqual(['The tap leaks', 'The gate squeaks']);
    expect(gists(span(3, 3).problems)).toEqual([]);
  });

  test('tells what was open at its end, latest first', () => {
    expect(gists(span(1, 1).next.problems)).toEqual(['The tap leaks']);
    expect(gists(span(2, 3).next.problems)).toEqual(['The gate squeaks', 'The tap leaks']);
    const solved = told().memo('Mended the tap.', done('Mended the tap'));
    expect(gists(span(1, 3, solved).next.problems)).toEqual(['The gate squeaks', 'The tap leaks']);
    expect(gists(span(1, 4, solved).next.problems)).toEqual(['The gate squeaks']);
  });

  test('tells the promises that were made up to its end', () => {
    expect(gists(span(1, 1).promises)).toEqual(['Show the tap']);
    expect(gists(span(2, 3).promises)).toEqual(['Show the tap']);
    const more = told().memo('I promise more.', promise('Show the gate'));
    expect(gists(span(1, 3, more).promises)).toEqual(['Show the tap']);
    expect(gists(span(1, 4, more).promises)).toEqual(['Show the tap', 'Show the gate']);
  });
});

test('questions of a day are five at most, and settled ones are none', () => {
  const names = ['gate', 'rail', 'loft', 'sink', 'lamp', 'step'];
  const told = story(
    names.map((name) => figure(name, 'depth', 915)),
    names.map((name) => figure(name, 'depth', 951)),
  );
  expect(nextView(told.project.rows, on(3)).questions).toHaveLength(5);
  for (const { id } of findingViews(told.project.rows))
    told.hand({ kind: 'finding-settled', findingId: id, choice: 'keep-old' });
  expect(nextView(told.project.rows, on(3)).questions).toEqual([]);
});

test('what tasks touch is cautioned of once, and not for what is done', () => {
  const tasks = (status: 'ready' | 'done', ...gists: readonly string[]) =>
    gists.map((gist) => ({ gist, status, source: { quote: gist } })) as never;
  expect(cautionsOfTasks(tasks('ready', 'Oil the gate'))).toEqual([]);
  const [one, ...more] = cautionsOfTasks(tasks('ready', 'Wire the mains socket', 'Wire the mains lamp'));
  expect([one === undefined, more]).toEqual([false, []]);
  expect(cautionsOfTasks(tasks('done', 'Wire the mains socket'))).toEqual([]);
});
