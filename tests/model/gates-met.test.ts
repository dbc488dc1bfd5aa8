/** What a memo, or a person's word, says of the things that open tasks wait for. */
import { describe, expect, test } from 'vitest';
import { isMeant, isOnlyWaiting } from '../../src/model/gates-met.ts';
import type { Gate } from '../../src/model/rows.ts';
import { figure, NotedStory, type NoteToTell } from '../kit/noted-story.ts';

const task = (gist: string, ...waitsFor: readonly string[]): NoteToTell => ({ kind: 'task', gist, waitsFor });
const done = (gist: string): NoteToTell => ({ kind: 'done', gist });
const arrived = (item: string, received = true): NoteToTell => ({ kind: 'arrival', item, received });
const warm = (item: string, value: number, more = {}): NoteToTell =>
  figure(item, 'temperature', value, { dimension: 'temperature', unit: 'degC', ...more });

/** What each gate of the first task has come to: `the top is glued: met by m2.t1`. */
function gatesOf(told: NotedStory, id = 'm1.t1'): readonly string[] {
  return (told.project.rows.get('tasks', id)?.gates ?? []).map(({ words, met, since, reading }) => {
    const parts = [
      ...(met ? [`met by ${met.taskId ?? met.memoId}${met.came ? ', came' : ''}`] : []),
      ...(since ? [`since ${since.memoId}`] : []),
      ...(reading?.latest
        ? [`${reading.latest.value} ${reading.latest.unit} of ${reading.latest.item}`]
        : []),
    ];
    return `${words}: ${parts.join(', ') || 'open'}`;
  });
}

/** The gate of a task, after one memo more with these notes. */
const gateAfter = (waits: string, ...notes: readonly NoteToTell[]) =>
  gatesOf(
    new NotedStory().memo('First talk.', task('Fit the shelf', waits)).memo('Second talk.', ...notes),
  )[0];

describe('what was done meets', () => {
  test.each([
    ['what waits for it', 'the top is glued', done('Glued the top'), 'met by m2'],
    ['not what waits for another thing', 'the top is glued', done('Glued the leg'), 'open'],
    ['not what waits for other work', 'the top is glued', done('Sanded the top'), 'open'],
    ['hours that are told to be over', 'the glue has cured', done('The glue has cured'), 'met by m2'],
    ['not those of another thing', 'the glue has cured', done('The paint has cured'), 'open'],
    ['no hours: they begin with it', 'the glue has cured', done('Laid the glue'), 'since m2'],
    ['no hours of another thing', 'the glue has cured', done('Laid the slates'), 'open'],
    ['no day', '2026-03-01', done('Waited for 2026-03-01'), 'open'],
  ])('%s', (_what, waits, note, expected) => {
    expect(gateAfter(waits, note)).toBe(`${waits}: ${expected}`);
  });

  test('of several deeds the one that answers', () => {
    expect(
      gateAfter('the top is glued', done('Swept the loft'), done('Glued the top'), done('Glued the leg')),
    ).toBe('the top is glued: met by m2');
  });

  test('in the talk that tells the task itself, it is met by nothing, but its hours begin', () => {
    const told = new NotedStory().memo(
      'First talk.',
      task('Fit the shelf', 'the top is glued', 'the glue has cured'),
      done('Glued the top'),
      done('Laid the glue'),
    );
    expect(gatesOf(told)).toEqual(['the top is glued: open', 'the glue has cured: since m1']);
  });

  test('what is met stays as it was met', () => {
    const told = new NotedStory()
      .memo('First talk.', task('Fit the shelf', 'the top is glued'))
      .memo('Second talk.', done('Glued the top'))
      .memo('Third talk.', done('Glued the top'));
    expect(gatesOf(told)).toEqual(['the top is glued: met by m2']);
  });

  test('hours begin anew when the work is done again, and not by talk of other things', () => {
    const told = new NotedStory()
      .memo('First talk.', task('Fit the shelf', 'the glue has cured'))
      .memo('Second talk.', done('Laid the glue'))
      .memo('Third talk.', done('Swept the loft'));
    expect(gatesOf(told)).toEqual(['the glue has cured: since m2']);
    expect(gatesOf(told.memo('Fourth talk.', done('Laid the glue')))).toEqual([
      'the glue has cured: since m4',
    ]);
  });

  test('each gate of a task is met by itself', () => {
    const told = new NotedStory()
      .memo('First talk.', task('Fit the shelf', 'the top is glued', 'the wall is painted'))
      .memo('Second talk.', done('Painted the wall'));
    expect(gatesOf(told)).toEqual(['the top is glued: open', 'the wall is painted: met by m2']);
  });
});

describe('a task that is closed meets', () => {
  const two = () =>
    new NotedStory().memo(
      'Fit the shelf. Glue the top.',
      { kind: 'task', gist: 'Fit the shelf', waitsFor: ['the top is glued'], quote: 'Fit the shelf' },
      { kind: 'task', gist: 'Glue the top', waitsFor: [], quote: 'Glue the top' },
    );

  test('what waits for it, by its words', () => {
    expect(gatesOf(two().memo('Glued the top.', done('Glued the top')))).toEqual([
      'the top is glued: met by m1.t2',
    ]);
  });

  test('closed by hand as well', () => {
    expect(gatesOf(two().hand({ kind: 'task-closed', taskId: 'm1.t2' }))).toEqual([
      'the top is glued: met by m1.t2',
    ]);
  });

  test('not what waits for something else, nor what is met already', () => {
    const told = new NotedStory()
      .memo(
        'First talk.',
        task('Fit the shelf', 'the leg is glued', 'the top is glued'),
        task('Sand the rail'),
      )
      .memo('Second talk.', done('Glued the top'))
      .hand({ kind: 'task-closed', taskId: 'm1.t2' });
    expect(gatesOf(told)).toEqual(['the leg is glued: open', 'the top is glued: met by m2']);
  });

  test('what was made to wait for it by its id', () => {
    const told = new NotedStory()
      .memo('First talk.', task('Fit the shelf'), task('Ring the mill'))
      .hand({ kind: 'task-waits-set', taskId: 'm1.t1', waits: [{ words: 'the mill', taskId: 'm1.t2' }] })
      .memo('Second talk.', done('Fetched the mill'));
    expect(gatesOf(told)).toEqual(['the mill: open']);
    expect(gatesOf(told.hand({ kind: 'task-closed', taskId: 'm1.t2' }))).toEqual(['the mill: met by m1.t2']);
  });
});

describe('goods that came meet', () => {
  test.each([
    ['what waits for their coming', 'the oak boards arrive', arrived('oak boards'), 'met by m2, came'],
    ['by a shorter name', 'the oak boards arrive', arrived('boards'), 'met by m2, came'],
    [
      'with a word that they arrived',
      'the oak boards arrive',
      arrived('oak boards (arrived)'),
      'met by m2, came',
    ],
    ['not what waits for others', 'the oak boards arrive', arrived('hinges'), 'open'],
    ['not when they are still to come', 'the oak boards arrive', arrived('oak boards', false), 'open'],
    ['what waits for a bare name', 'the brass hinges', arrived('hinges'), 'met by m2, came'],
    ['whatever else one does to board', 'the oak boards', arrived('oak boards'), 'met by m2, came'],
    ['not what waits for the boarding', 'the oak boarding', arrived('oak boards'), 'open'],
    ['not what waits for work on them', 'the oak boards are planed', arrived('oak boards'), 'open'],
    ['not what waits for them to be in', 'the oak boards are in', arrived('oak boards'), 'open'],
    ['no hours', 'the oak boards have dried', arrived('oak boards'), 'open'],
  ])('%s', (_what, waits, note, expected) => {
    expect(gateAfter(waits, note)).toBe(`${waits}: ${expected}`);
  });

  test('what does nothing but wait for them, whatever it waits for is called', () => {
    const told = new NotedStory()
      .memo('First talk.', task('Waiting on the oak boards', 'the oak boards are in'))
      .memo('Second talk.', arrived('oak boards'));
    expect(told.project.rows.get('tasks', 'm1.t1')).toMatchObject({
      status: 'done',
      gates: [{ met: { memoId: 'm2', came: true } }],
    });
  });
});

describe('a reading', () => {
  const waits = 'it is above 10 degrees in the shed';
  const above = warm('shed', 10, { bound: 'at-least', quote: 'above 10 degrees' });
  const waiting = (words = waits) =>
    new NotedStory().memo(
      `I varnish it when ${words}.`,
      { ...(task('Varnish the shelf', words) as NoteToTell & { kind: 'task' }) },
      above,
    );

  test.each([
    ['of the place that is named', [warm('shed', 12)], '12 degC of shed'],
    ['told roughly', [warm('shed', 12, { bound: 'about' })], '12 degC of shed'],
    ['the last of several', [warm('shed', 12), warm('shed', 9)], '9 degC of shed'],
    ['of the air of any place, where the gate names one', [warm('workshop', 12)], '12 degC of workshop'],
    ['not of a thing', [warm('epoxy', 12)], 'open'],
    ['not a limit', [warm('shed', 12, { bound: 'at-least' })], 'open'],
    ['not what binds others', [warm('shed', 12, { limit: { about: 'varnish' } })], 'open'],
    ['not of another kind', [figure('shed', 'ratio', 60, { dimension: 'ratio', unit: '%' })], 'open'],
    ['none', [done('Swept the loft')], 'open'],
  ] as const)('%s', (_what, notes, expected) => {
    expect(gatesOf(waiting().memo('Second talk.', ...notes))).toEqual([`${waits}: ${expected}`]);
  });

  test('of a thing is that thing and not the air', () => {
    const words = 'the epoxy is above 10 degrees';
    const told = () => waiting(words);
    expect(gatesOf(told().memo('Second talk.', warm('epoxy', 15)))).toEqual([`${words}: 15 degC of epoxy`]);
    expect(gatesOf(told().memo('Second talk.', warm('shed', 15)))).toEqual([`${words}: open`]);
  });

  test('of moisture is of the thing alone', () => {
    const words = 'the larch is down to 16 percent';
    const wet = (item: string, value: number, more = {}) =>
      figure(item, 'ratio', value, { dimension: 'ratio', unit: '%', ...more });
    const told = () =>
      new NotedStory().memo(
        `I plane it when ${words}.`,
        task('Plane the boards', words),
        wet('larch', 16, { bound: 'at-most', quote: 'down to 16 percent' }),
      );
    expect(gatesOf(told().memo('Second talk.', wet('larch', 19)))).toEqual([`${words}: 19 % of larch`]);
    expect(gatesOf(told().memo('Second talk.', wet('shed', 19)))).toEqual([`${words}: open`]);
  });
});

describe('whether a gate means a task', () => {
  const event = (words: string): Gate => ({ kind: 'event', words });
  const glue = { id: 'm1.t2', gist: 'Glue the top', waitsFor: [] };
  test.each([
    ['by its words', event('the top is glued'), glue, true],
    ['not by others', event('the leg is glued'), glue, false],
    ['by its id, whatever the words', { kind: 'task', words: 'the mill', taskId: 'm1.t2' }, glue, true],
    ['not by the id of another', { kind: 'task', words: 'the top is glued', taskId: 'm1.t1' }, glue, false],
    ['not goods', { kind: 'arrival', words: 'the top is glued' }, glue, false],
    ['not a day', { kind: 'date', words: 'the top is glued', date: '2026-03-01' }, glue, false],
    ['hours by their thing', { kind: 'hours', words: 'the glued top has dried' }, glue, true],
    [
      'not by what the task itself waits for',
      event('the wall is painted'),
      { ...glue, gist: 'Glue the top once the wall is painted', waitsFor: ['the wall is painted'] },
      false,
    ],
  ] as const)('%s', (_what, gate, one, answer) => {
    expect(isMeant(gate, one)).toBe(answer);
  });
});

test.each([
  ['Waiting on the cast wheels', true],
  ['Waiting for the cast wheels', true],
  ['Still waiting on the wheels', true],
  ['Waiting on the wheels before I paint', false],
  ['Waiting for the wheels to come', false],
  ['Waiting on the wheels so I can paint', false],
  ['I am waiting on the wheels', false],
  ['Waiting it out', false],
  ['Paint while waiting on the wheels', false],
])('"%s" is nothing but waiting: %s', (gist, answer) => {
  expect(isOnlyWaiting({ gist })).toBe(answer);
});
