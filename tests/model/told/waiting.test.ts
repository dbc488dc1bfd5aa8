import { expect, test } from 'vitest';
import { exportDocument } from '../../../src/model/export.ts';
import { MemoryProject } from '../../../src/model/memory.ts';
import { ToldStory } from '../../kit/told-story.ts';

test('a task waits for another one, and is ready by itself when that is said to be done', () => {
  const story = new ToldStory().hear(
    "I can't lay the floor boards until the joists are treated. I need to treat the joists.",
  );
  expect(story.waits('m1.t1', 1)).toEqual(['open task joists are treated on m1.t2 (open: Treat the joists)']);
  expect(story.tasks(1)).toEqual(['ready Treat the joists [m1.t2]', 'waiting Lay the floor boards [m1.t1]']);
  story.hear('The joists are treated.');
  expect(story.waits('m1.t1', 2)).toEqual(['met task joists are treated on m1.t2 (done: Treat the joists)']);
  expect(story.tasks(2)).toEqual(['ready Lay the floor boards [m1.t1]', 'done Treat the joists [m1.t2]']);
  // Opened again by hand: what waited for it waits again.
  story.hand({ kind: 'task-reopened', taskId: 'm1.t2' });
  expect(story.tasks(28)).toEqual(['ready Treat the joists [m1.t2]', 'waiting Lay the floor boards [m1.t1]']);
});

test('closing the task by hand lets the other one go on', () => {
  const story = new ToldStory()
    .hear("I can't lay the floor boards until the joists are treated. I need to treat the joists.")
    .hand({ kind: 'task-closed', taskId: 'm1.t2' });
  expect(story.tasks(28)[0]).toBe('ready Lay the floor boards [m1.t1]');
});

test('goods that come end the waiting for them', () => {
  const story = new ToldStory().hear(
    'The gate hinges should come on Thursday. I need to hang the gate once the hinges arrive.',
  );
  expect(story.waits('m1.t1', 1)).toEqual(['open arrival hinges arrive on m1.a1 (expected 2026-02-05)']);
  story.hear('The gate hinges came.');
  expect(story.waits('m1.t1', 2)).toEqual(['met arrival hinges arrive (it has come)']);
  expect(story.tasks(2)).toContain('ready Hang the gate [m1.t1]');
});

test('a day is waited for, and is no date by when it must be done', () => {
  // The first of February 2026 is a Sunday.
  const story = new ToldStory().hear("I'll fit the window, but not before Wednesday.");
  const [task] = story.tasksOn(1);
  expect([task?.status, task?.due, task?.waits?.[0]?.until]).toEqual(['waiting', undefined, '2026-02-04']);
  expect(story.tasksOn(3)[0]?.status).toBe('waiting');
  expect(story.tasksOn(4)[0]?.status).toBe('ready');
});

test('a reading is waited for: the latest one counts, of the place that is named', () => {
  const story = new ToldStory().hear(
    'I have to paint the door once the workshop is above 12 degrees.',
    'The workshop is 9 degrees. The kettle is 60 degrees.',
    'The workshop is 14 degrees.',
    'The workshop is 8 degrees.',
  );
  const status = (memos: number) => {
    const told = new ToldStory().hear(
      ...[
        'I have to paint the door once the workshop is above 12 degrees.',
        'The workshop is 9 degrees. The kettle is 60 degrees.',
        'The workshop is 14 degrees.',
      ].slice(0, memos),
    );
    return told.tasksOn(memos).map((task) => task.status);
  };
  expect([status(1), status(2), status(3)]).toEqual([['waiting'], ['waiting'], ['ready']]);
  const [wait] = story.tasksOn(4)[0]?.waits ?? [];
  expect([wait?.isMet, wait?.bound, wait?.reach, wait?.latest, wait?.on]).toEqual([
    false,
    'at-least',
    { value: 12, unit: 'degC' },
    { value: 8, unit: 'degC' },
    'workshop',
  ]);
});

test('hours run from when it was done, and are over by themselves', () => {
  const story = new ToldStory().hear(
    'I need to sand the trough once the resin has cured for 36 hours.',
    'I glued up the trough with resin.',
  );
  expect(story.waits('m1.t1', 1)).toEqual([
    'open hours resin has cured for 36 hours (the time has not begun)',
  ]);
  const [wait] = story.tasksOn(3)[0]?.waits ?? [];
  expect([wait?.isMet, wait?.until, wait?.source?.memoId]).toEqual([
    false,
    '2026-02-04T05:00:00+01:00',
    'm2',
  ]);
  expect(story.tasksOn(4)[0]?.status).toBe('ready');
});

test('what has to be done before something is closed in stands with it, and holds it back', () => {
  const story = new ToldStory().hear(
    'I have to pressure test the pipes before the bathroom wall is closed in. I need to board over the bathroom wall.',
  );
  const board = story.tasksOn(1).find((task) => task.gist.startsWith('Board'));
  expect([board?.status, board?.first?.map(({ id, isDone }) => [id, isDone])]).toEqual([
    'waiting',
    [['m1.t1', false]],
  ]);
  expect(story.tasksOn(1)[0]?.before).toBe('the bathroom wall is closed in');
  story.hear('The pipes are pressure tested.');
  const ready = story.tasksOn(2).find((task) => task.gist.startsWith('Board'));
  expect([ready?.status, ready?.first?.map(({ isDone }) => isDone)]).toEqual(['ready', [true]]);
});

test('tasks that wait for each other are a finding with the way round, once, and settled when it is broken', () => {
  const story = new ToldStory().hear(
    "I can't tile the hearth until the stove is bolted down. I can't bolt down the stove until the hearth is tiled.",
    'Swept the yard. I need to oil the gate.',
  );
  const [finding, ...more] = story.open();
  expect(more).toEqual([]);
  expect([finding?.kind, finding?.path]).toEqual(['task-cycle', ['m1.t1', 'm1.t2']]);
  expect(finding?.why).toBe(
    'each waits for the next: "Tile the hearth", "Bolt down the stove", "Tile the hearth"',
  );
  // Nothing is lost: all of them are listed.
  expect(story.tasks(2)).toHaveLength(3);
  story.hand({ kind: 'task-waits-set', taskId: 'm1.t2', waits: [] });
  expect(story.open()).toEqual([]);
  expect(story.tasks(28)[0]).toBe('ready Bolt down the stove [m1.t2]');
  story.hand({ kind: 'task-waits-set', taskId: 'm1.t2', waits: [{ words: 'hearth', taskId: 'm1.t1' }] });
  expect(story.open().map(({ kind, id }) => [kind, id])).toEqual([['task-cycle', 's9.c1']]);
});

test('a person says what is waited for, by when, and in which order', () => {
  const story = new ToldStory().hear(
    'I need to oil the gate. I need to sand the trough. I need to cut the pegs.',
  );
  expect(story.tasks(28).map((line) => line.slice(-6))).toEqual(
    ['[m1.t1]', '[m1.t2]', '[m1.t3]'].map((id) => id.slice(-6)),
  );
  story.hand(
    { kind: 'task-placed', taskId: 'm1.t3', before: 'm1.t1' },
    { kind: 'task-waits-set', taskId: 'm1.t2', waits: [{ words: 'pegs', taskId: 'm1.t3' }] },
  );
  expect(story.tasks(28)).toEqual([
    'ready Cut the pegs [m1.t3]',
    'ready Oil the gate [m1.t1]',
    'waiting Sand the trough [m1.t2]',
  ]);
  expect(story.tasksOn(28).map((task) => task.why)).toEqual([
    ['unblocks 1: Sand the trough', 'put before by hand: Oil the gate'],
    [],
    ['after what is ready: it waits'],
  ]);
  story.hand({ kind: 'task-due-set', taskId: 'm1.t2', due: '2026-03-05' });
  expect(story.tasksOn(28)[0]?.why?.[0]).toBe('needed by 2026-03-05 for: Sand the trough');
  story.hand(
    { kind: 'task-due-set', taskId: 'm1.t2' },
    {
      kind: 'task-waits-set',
      taskId: 'm1.t1',
      waits: [{ words: 'barn at least 10 degC', reading: { value: 10, unit: 'degC', bound: 'at-least' } }],
    },
  );
  expect(story.waits('m1.t1', 28)).toEqual(['open reading barn at least 10 degC (nothing was read since)']);
});

test('a task said again stands once, and may be closed by either saying', () => {
  const story = new ToldStory().hear(
    'I need to treat the joists.',
    'I still need to treat the joists by Friday.',
    'The joists are treated.',
  );
  expect(story.tasks(2)).toEqual(['done Treat the joists [m1.t1]']);
  const [task] = story.tasksOn(2);
  expect([task?.due, task?.again?.map(({ noteId }) => noteId)]).toEqual(['2026-02-06', ['m2.t1']]);
  expect((exportDocument(story.project.rows) as { open: string[] }).open).toEqual([]);
});

test('a task that was ordered is closed when the goods come or are on order', () => {
  const story = new ToldStory().hear(
    'I need to order the roof glass. I need to fit the roof glass. I need to buy copper nails.',
    'The roof glass is on order, it comes on Friday.',
    'The copper nails arrived.',
  );
  expect(story.tasks(3)).toEqual([
    'ready Fit the roof glass [m1.t2]',
    'done Order the roof glass [m1.t1]',
    'done Buy copper nails [m1.t3]',
  ]);
});

test('the same events give the same tasks in a project that is built anew', () => {
  const story = new ToldStory().hear(
    "I can't tile the hearth until the stove is set. I can't set the stove until the flue arrives. The roof leaks at the chimney.",
    'I have to photograph the flue before the chimney is boxed in. The flue came.',
    'The stove is set. I fixed the leak at the chimney.',
  );
  story.hand({ kind: 'task-placed', taskId: 'm2.t1', before: 'm1.t1' });
  const anew = new MemoryProject();
  anew.append(story.project.log().map(({ seq: _seq, ...event }) => event));
  for (const table of ['tasks', 'problems', 'closings', 'findings'] as const)
    expect(anew.rows.all(table)).toEqual(story.project.rows.all(table));
  anew.append([{ kind: 'items-split', name: 'nothing', at: '2026-02-28T20:00:00+01:00' }]);
  expect(anew.rows.all('tasks')).toEqual(story.project.rows.all('tasks'));
});

test.each([
  // The first of February 2026 is a Sunday: the next one is meant.
  ['Sunday', '2026-02-08'],
  ['Monday', '2026-02-02'],
  ['Saturday', '2026-02-07'],
])('not before %s is a date, %s', (day, date) => {
  const story = new ToldStory().hear(`I'll fit the window, but not before ${day}.`);
  expect(story.waits('m1.t1', 1)).toEqual([`open date ${date}`]);
});

test('a warmth is waited for from below, where nobody says which way', () => {
  const story = new ToldStory().hear("I'll glue the keel once the shed is fifteen degrees.");
  const bounds = story
    .tasksOn(1)
    .flatMap(({ waits = [] }) =>
      waits.flatMap((wait) => (wait.kind === 'reading' ? [`${wait.words}: ${wait.bound}`] : [])),
    );
  expect(bounds).toEqual(['shed is fifteen degrees: at-least']);
  story.hear('The shed is sixteen degrees.');
  expect(story.waits('m1.t1', 2)).toEqual(['met reading shed is fifteen degrees on shed']);
});

test('a task that many wait for names three of them and how many more', () => {
  const story = new ToldStory().hear(
    'I need to sand the deck.',
    ['oil the deck', 'fit the cleats', 'bolt the winch', 'lay the teak', 'mount the hatch']
      .map((work) => `I can't ${work} until the deck is sanded.`)
      .join(' '),
  );
  expect(story.tasksOn(2)[0]).toMatchObject({
    gist: 'Sand the deck',
    why: ['unblocks 5: Oil the deck; Fit the cleats; Bolt the winch; and 2 more'],
  });
});

test.each([
  ['Still waiting on the hinges, the yard says the 14th.', 'The hinges came this morning.', 'done'],
  ['Still waiting on the cast wheels, foundry says the 14th.', 'Cast wheels came today.', 'done'],
  ['Still waiting on the hinges, the yard says the 14th.', 'The glass came this morning.', 'waiting'],
])('what is nothing but waiting is ended by its goods: "%s" "%s": %s', (said, came, status) => {
  const [task = ''] = new ToldStory().hear(said, came).tasks(2);
  expect(task.split(' ')[0]).toBe(status);
});

test('the work behind such a wait is ready, and not done', () => {
  const said =
    "Still waiting on the hinges, the yard says the 14th. Can't hang the gate till those are here.";
  const story = new ToldStory().hear(said, 'The hinges came this morning.');
  expect(story.tasks(2)).toEqual(['ready Hang the gate [m1.t2]', 'done Waiting on the hinges [m1.t1]']);
});
