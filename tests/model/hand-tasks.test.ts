/** Tasks and snags as a person sets them: each event with the whole row that it leaves. */
import { describe, expect, test } from 'vitest';
import { findingViews } from '../../src/model/project-views.ts';
import { NotedStory, type NoteToTell } from '../kit/noted-story.ts';
import { AT } from '../kit/told-story.ts';

const task = (gist: string, ...waitsFor: readonly string[]): NoteToTell => ({ kind: 'task', gist, waitsFor });
const rowOf = (told: NotedStory, id: string) => told.project.rows.get('tasks', id);
const byHand = (seq: number) => ({ memoId: `s${seq}`, recordedAt: AT, quote: '' });
/** A story with two tasks: the project is made by event 1, the memo by 2 to 4; the next one by hand is 5. */
const two = () => new NotedStory().memo('First talk.', task('Fit the shelf'), task('Sand the rail'));
const FIT = {
  id: 'm1.t1',
  gist: 'Fit the shelf',
  quote: 'First talk.',
  around: 'First talk.',
  waitsFor: [],
  source: { memoId: 'm1', recordedAt: '2026-02-01T17:00:00+01:00', quote: 'First talk.' },
  status: 'open',
};

describe('a task', () => {
  test('is added with its day and what it waits for', () => {
    const told = two().hand({
      kind: 'task-added',
      gist: 'Oil the top',
      due: '2026-03-01',
      waitsFor: ['the oil arrives', '2026-02-20'],
    });
    expect(rowOf(told, 's5')).toEqual({
      id: 's5',
      gist: 'Oil the top',
      quote: 'Oil the top',
      around: '',
      due: '2026-03-01',
      waitsFor: ['the oil arrives', '2026-02-20'],
      gates: [
        { kind: 'arrival', words: 'the oil arrives' },
        { kind: 'date', words: '2026-02-20', date: '2026-02-20' },
      ],
      source: byHand(5),
      status: 'open',
    });
  });

  test('is added plain', () => {
    expect(rowOf(two().hand({ kind: 'task-added', gist: 'Oil the top' }), 's5')).toEqual({
      id: 's5',
      gist: 'Oil the top',
      quote: 'Oil the top',
      around: '',
      waitsFor: [],
      source: byHand(5),
      status: 'open',
    });
  });

  test('is closed, and opened again as it was', () => {
    const told = two().hand({ kind: 'task-closed', taskId: 'm1.t1' });
    expect(rowOf(told, 'm1.t1')).toEqual({ ...FIT, status: 'done', closedById: 's5', closedBy: byHand(5) });
    told.hand({ kind: 'task-reopened', taskId: 'm1.t1' });
    expect(rowOf(told, 'm1.t1')).toEqual(FIT);
  });

  test('is given a day, another one, and none', () => {
    const told = two().hand({ kind: 'task-due-set', taskId: 'm1.t1', due: '2026-03-01' });
    expect(rowOf(told, 'm1.t1')).toEqual({ ...FIT, due: '2026-03-01' });
    told.hand({ kind: 'task-due-set', taskId: 'm1.t1', due: '2026-03-02' });
    expect(rowOf(told, 'm1.t1')).toEqual({ ...FIT, due: '2026-03-02' });
    told.hand({ kind: 'task-due-set', taskId: 'm1.t1' });
    expect(rowOf(told, 'm1.t1')).toEqual(FIT);
  });

  test.each(['task-closed', 'task-reopened', 'task-due-set'] as const)(
    'that is not there: %s changes nothing',
    (kind) => {
      const told = two().hand({ kind, taskId: 'm9.t9' });
      expect(told.project.rows.all('tasks').map(({ id }) => id)).toEqual(['m1.t1', 'm1.t2']);
      expect(rowOf(told, 'm1.t1')).toEqual(FIT);
    },
  );
});

describe('a task is made to wait for', () => {
  type Waits = readonly { readonly words: string }[];
  const waits = (...list: Waits) =>
    two().hand({ kind: 'task-waits-set', taskId: 'm1.t1', waits: list as never });

  test.each([
    [
      'another task',
      { words: 'the rail', taskId: 'm1.t2' },
      { kind: 'task', words: 'the rail', taskId: 'm1.t2' },
    ],
    [
      'a day',
      { words: 'after Easter', until: '2026-04-06' },
      { kind: 'date', words: '2026-04-06', date: '2026-04-06' },
    ],
    [
      'hours, from now on',
      { words: 'a day', hours: 24 },
      { kind: 'hours', words: 'a day', hours: 24, since: byHand(5) },
    ],
    [
      'a reading',
      { words: 'warm', reading: { value: 12, unit: 'degC', bound: 'at-least' } },
      {
        kind: 'reading',
        words: 'warm',
        reading: { value: 12, unit: 'degC', bound: 'at-least', dimension: 'temperature' },
      },
    ],
    [
      'a reading in a unit that nobody knows: its words',
      { words: 'the oil arrives', reading: { value: 12, unit: 'spoons', bound: 'at-least' } },
      { kind: 'arrival', words: 'the oil arrives' },
    ],
    ['goods, by the words', { words: 'the oil arrives' }, { kind: 'arrival', words: 'the oil arrives' }],
    [
      'a day in words, from the day of the event',
      { words: 'tomorrow' },
      { kind: 'date', words: 'tomorrow', date: '2026-03-01' },
    ],
    ['anything else', { words: 'the tide is out' }, { kind: 'event', words: 'the tide is out' }],
  ] as const)('%s', (_what, wait, gate) => {
    expect(rowOf(waits(wait), 'm1.t1')).toEqual({ ...FIT, waitsFor: [wait.words], gates: [gate] });
  });

  test('more beside what it waits for; an empty list takes all away', () => {
    const told = waits({ words: 'the oil arrives' }).hand({
      kind: 'task-waits-set',
      taskId: 'm1.t1',
      waits: [{ words: 'the tide is out' }],
    });
    expect(rowOf(told, 'm1.t1')).toEqual({
      ...FIT,
      waitsFor: ['the oil arrives', 'the tide is out'],
      gates: [
        { kind: 'arrival', words: 'the oil arrives' },
        { kind: 'event', words: 'the tide is out' },
      ],
    });
    told.hand({ kind: 'task-waits-set', taskId: 'm1.t1', waits: [] });
    expect(rowOf(told, 'm1.t1')).toEqual(FIT);
  });

  test('what waits for it in turn: that is a finding, and goes with the wait', () => {
    const told = two()
      .hand({ kind: 'task-waits-set', taskId: 'm1.t1', waits: [{ words: 'rail', taskId: 'm1.t2' }] })
      .hand({ kind: 'task-waits-set', taskId: 'm1.t2', waits: [{ words: 'shelf', taskId: 'm1.t1' }] });
    const open = () => findingViews(told.project.rows, { status: 'open' }).map(({ kind }) => kind);
    expect(open()).toEqual(['task-cycle']);
    told.hand({ kind: 'task-due-set', taskId: 'm1.t1', due: '2026-03-01' });
    expect(open()).toEqual(['task-cycle']);
    told.hand({ kind: 'task-waits-set', taskId: 'm1.t2', waits: [] });
    expect(open()).toEqual([]);
  });
});

describe('the order by hand', () => {
  const place = (taskId: string, before: string) => ({ kind: 'task-placed', taskId, before }) as const;
  const three = () => two().hand({ kind: 'task-added', gist: 'Oil the top' });
  const ahead = (told: NotedStory) =>
    ['m1.t1', 'm1.t2', 's5'].map((id) => rowOf(told, id)?.ahead?.join(' ') ?? '-');

  test.each([
    ['one before another', [place('m1.t2', 'm1.t1')], ['-', 'm1.t1', '-']],
    ['the same again', [place('m1.t2', 'm1.t1'), place('m1.t2', 'm1.t1')], ['-', 'm1.t1', '-']],
    ['before two', [place('s5', 'm1.t1'), place('s5', 'm1.t2')], ['-', '-', 'm1.t1 m1.t2']],
    [
      'the other way round takes it back',
      [place('m1.t2', 'm1.t1'), place('m1.t1', 'm1.t2')],
      ['m1.t2', '-', '-'],
    ],
    [
      'and leaves the rest',
      [place('s5', 'm1.t1'), place('s5', 'm1.t2'), place('m1.t1', 's5')],
      ['s5', '-', 'm1.t2'],
    ],
    ['one that is not there', [place('m9.t9', 'm1.t1')], ['-', '-', '-']],
  ] as const)('%s', (_what, events, expected) => {
    expect(ahead(three().hand(...events))).toEqual(expected);
  });
});

describe('a snag', () => {
  const told = () => new NotedStory().memo('The tap drips.', { kind: 'problem', gist: 'The tap drips' });
  const row = (one: NotedStory) => one.project.rows.get('problems', 'm1.p1');
  const OPEN = {
    id: 'm1.p1',
    gist: 'The tap drips',
    source: { memoId: 'm1', recordedAt: '2026-02-01T17:00:00+01:00', quote: 'The tap drips.' },
    status: 'open',
  };

  test('is put right, and open again as it was', () => {
    const one = told().hand({ kind: 'problem-solved', problemId: 'm1.p1' });
    expect(row(one)).toEqual({ ...OPEN, status: 'solved', solvedById: 's5', solvedBy: byHand(5) });
    expect(row(one.hand({ kind: 'problem-reopened', problemId: 'm1.p1' }))).toEqual(OPEN);
  });

  test('that is not there changes nothing', () => {
    const one = told().hand({ kind: 'problem-solved', problemId: 'm1.p9' });
    expect([row(one), one.project.rows.all('problems').length]).toEqual([OPEN, 1]);
  });
});
