/** Each part of "where was I", from notes given outright: what is in it, in which order, and where it ends. */
import { describe, expect, test } from 'vitest';
import { whereView } from '../../src/model/where-view.ts';
import { figure, NotedStory, type NoteToTell } from '../kit/noted-story.ts';

const NOW = '2026-02-28';
const done = (gist: string): NoteToTell => ({ kind: 'done', gist, quote: gist });
const decision = (gist: string): NoteToTell => ({ kind: 'decision', gist, quote: gist });
const task = (gist: string, more = {}): NoteToTell => ({
  kind: 'task',
  gist,
  quote: gist,
  waitsFor: [],
  ...more,
});
const promise = (gist: string): NoteToTell => ({ kind: 'promise', gist, quote: gist });
/** A memo whose sentences are its notes, in order. */
const said = (told: NotedStory, ...notes: readonly NoteToTell[]) =>
  told.memo(`${notes.map(({ quote }) => quote ?? 'Well').join('. ')}.`, ...notes);
const story = (...memos: readonly (readonly NoteToTell[])[]) =>
  memos.reduce<NotedStory>(
    (told, notes) => (notes.length > 0 ? said(told, ...notes) : told.memo('We had tea.')),
    new NotedStory(),
  );
const where = (told: NotedStory, now = NOW) => whereView(told.project.rows, now);
const gists = (list: readonly { readonly gist: string }[]) => list.map(({ gist }) => gist);

describe('what was done', () => {
  test('is that of the latest day that has any, last said first', () => {
    const told = story([done('Swept the loft')], [done('Oiled the gate'), done('Painted the rail')], []);
    expect(where(told).done).toEqual([
      {
        gist: 'Painted the rail',
        source: { memoId: 'm2', recordedAt: '2026-02-02T17:00:00+01:00', quote: 'Painted the rail' },
      },
      {
        gist: 'Oiled the gate',
        source: { memoId: 'm2', recordedAt: '2026-02-02T17:00:00+01:00', quote: 'Oiled the gate' },
      },
    ]);
  });

  test('reaches a week back from the last talk', () => {
    const days = (between: number) =>
      story([done('Swept the loft')], ...Array.from({ length: between }, () => []));
    expect(gists(where(days(7)).done)).toEqual(['Swept the loft']);
    expect(gists(where(days(8)).done)).toEqual([]);
  });

  test('is eight things at most', () => {
    const names = ['gate', 'rail', 'loft', 'sink', 'tap', 'lamp', 'step', 'door', 'sill'];
    expect(gists(where(story(names.map((name) => done(`Oiled the ${name}`)))).done)).toEqual(
      [...names]
        .reverse()
        .slice(0, 8)
        .map((name) => `Oiled the ${name}`),
    );
  });

  test('leaves out what a person rejected, and what was filmed', () => {
    const told = story([done('Swept the loft'), done('Oiled the gate'), done('Filmed the gate')]);
    told.hand({ kind: 'note-rejected', noteId: 'm1.x1' });
    expect(gists(where(told).done)).toEqual(['Oiled the gate']);
    expect(gists(where(told).filmed)).toEqual(['Filmed the gate']);
    told.hand({ kind: 'note-rejected', noteId: 'm1.x2' });
    expect(gists(where(told).done)).toEqual([]);
  });

  test('as of a day before it was told is not told yet', () => {
    const told = story([done('Swept the loft')], [done('Oiled the gate')]);
    expect(gists(where(told, '2026-02-01').done)).toEqual(['Swept the loft']);
    expect(where(told, '2026-02-01').lastTalk).toEqual({ date: '2026-02-01', daysAgo: 0, memoIds: ['m1'] });
    expect(where(told).lastTalk).toEqual({ date: '2026-02-02', daysAgo: 26, memoIds: ['m2'] });
  });
});

test('what was decided is that of the latest day that has any, six at most', () => {
  const told = story([decision('Larch it is')], [done('Swept the loft')]);
  expect(gists(where(told).decided)).toEqual(['Larch it is']);
  const many = ['oak', 'ash', 'elm', 'fir', 'yew', 'box', 'teak'].map((wood) => decision(`It is ${wood}`));
  expect(gists(where(said(told, ...many)).decided)).toEqual([
    'It is teak',
    'It is box',
    'It is yew',
    'It is fir',
    'It is elm',
    'It is ash',
  ]);
});

test('what was filmed is the last three, latest first', () => {
  const told = story(['gate', 'rail', 'loft', 'sink'].map((name) => done(`Filmed the ${name}`)));
  expect(gists(where(told).filmed)).toEqual(['Filmed the sink', 'Filmed the loft', 'Filmed the rail']);
});

describe('what is in the middle', () => {
  const begun = (...memos: readonly string[]) =>
    gists(where(memos.reduce((told, text) => told.memo(text), new NotedStory())).begun);

  test('was begun, and not told to be done since', () => {
    const told = new NotedStory().memo("I've started painting the gate.");
    expect(gists(where(told).begun)).toEqual(["I've started painting the gate."]);
    expect(gists(where(said(told, done('Swept the loft'))).begun)).toEqual([
      "I've started painting the gate.",
    ]);
    expect(gists(where(said(told, done('Painted the gate'))).begun)).toEqual([]);
  });

  test('is there again when it is begun again', () => {
    const told = said(new NotedStory(), done('Painted the gate')).memo("I've started painting the gate.");
    expect(gists(where(told).begun)).toEqual(["I've started painting the gate."]);
  });

  test('is told latest first, six at most', () => {
    const names = ['gate', 'rail', 'loft', 'sink', 'lamp', 'step', 'sill'];
    expect(begun(...names.map((name) => `I've started painting the ${name}.`))).toEqual(
      [...names]
        .reverse()
        .slice(0, 6)
        .map((name) => `I've started painting the ${name}.`),
    );
  });
});

describe('what is expected and due', () => {
  test('goods that came are out, dated tasks and those that wait for a day are in', () => {
    const told = story([
      { kind: 'arrival', item: 'oak', received: false },
      { kind: 'arrival', item: 'hinges', received: true },
      task('Oil the gate', { due: '2026-03-01' }),
      task('Paint the rail'),
      task('Fit the lamp', { waitsFor: ['2026-03-05'] }),
      task('Hang the door', { waitsFor: ['2026-02-02'] }),
    ]);
    const view = where(told);
    expect(view.arrivals.map(({ item }) => item)).toEqual(['oak']);
    expect(gists(view.dated)).toEqual(['Oil the gate', 'Fit the lamp']);
    expect([...gists(view.ready)].sort()).toEqual(['Hang the door', 'Oil the gate', 'Paint the rail']);
    expect(view.waiting).toBe(1);
  });

  test('promises stand oldest first', () => {
    const told = story([promise('Show the hoist')], [promise('Show the gate')]);
    expect(gists(where(told).promises)).toEqual(['Show the hoist', 'Show the gate']);
  });

  test('hours that a task waits for, while they run and where they ended since the last talk', () => {
    const told = said(new NotedStory(), task('Oil the gate')).hand({
      kind: 'task-waits-set',
      taskId: 'm1.t1',
      waits: [{ words: 'a day', hours: 24 }],
    });
    expect(where(told).hours.map(({ task: one, wait }) => `${one.gist}: ${wait.words}`)).toEqual([
      'Oil the gate: a day',
    ]);
    expect(where(story([task('Oil the gate', { waitsFor: ['the tide is out'] })])).hours).toEqual([]);
  });
});

test('snags are the latest six', () => {
  const told = story(
    ['gate', 'rail', 'loft', 'sink', 'lamp', 'step', 'sill'].map((name) => ({
      kind: 'problem',
      gist: `The ${name} squeaks`,
      quote: `The ${name} squeaks`,
    })),
  );
  expect(gists(where(told).problems)).toHaveLength(6);
});

test('clashes stand dearest first, and all open ones are counted', () => {
  const told = story([
    figure('gate', 'width', 740, { bound: 'at-most', limit: { about: '' }, quote: 'Gate at most' }),
    figure('rail', 'depth', 915, { quote: 'Rail deep' }),
  ]);
  told.memo('Gate is so.', figure('gate', 'width', 760)).memo('Rail is so.', figure('rail', 'depth', 951));
  const view = where(told);
  expect(view.findings.map(({ kind, cost }) => `${kind} ${cost}`)).toEqual(['limit 6', 'slip 5']);
  expect(view.openFindings).toBe(2);
});

describe('clocks without a time from a data sheet', () => {
  const clock = (act: 'mixed' | 'laid' | 'used' | 'freed', at: string, product = 'glue'): NoteToTell => ({
    kind: 'clock',
    act,
    product,
    at,
    isSaid: true,
  });
  const untimed = (now: string, ...notes: readonly NoteToTell[]) =>
    where(story(notes), now).untimed.map(({ product, act, at }) => `${product} ${act} ${at.slice(5, 16)}`);

  test.each([
    [
      'are told latest first',
      NOW,
      [clock('mixed', '2026-02-01T10:00:00+01:00'), clock('laid', '2026-02-01T11:00:00+01:00')],
      ['glue laid 02-01T11:00', 'glue mixed 02-01T10:00'],
    ],
    ['but not what is only used', NOW, [clock('used', '2026-02-01T10:00:00+01:00')], []],
    ['but not what is still to come', '2026-02-01', [clock('laid', '2026-02-02T10:00:00+01:00')], []],
    ['a week back', NOW, [clock('laid', '2026-01-25T10:00:00+01:00')], ['glue laid 01-25T10:00']],
    ['and no more', NOW, [clock('laid', '2026-01-24T10:00:00+01:00')], []],
  ] as const)('%s', (_what, now, notes, expected) => {
    expect(untimed(now, ...notes)).toEqual(expected);
  });
});
