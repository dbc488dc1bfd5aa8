import { expect, test } from 'vitest';
import type { FigurePlace } from '../../src/model/figure-around.ts';
import type { MemoView } from '../../src/model/views.ts';
import { hasToWait } from '../../src/tui/key-order.ts';
import { figureLines } from '../../src/tui/state/figure-lines.ts';
import { foundFigures } from '../../src/tui/state/figure-rows.ts';
import { reduce } from '../../src/tui/state/reduce.ts';
import { shownNotes } from '../../src/tui/state/rows.ts';
import { type KeyPress, openingState, type ScreenState } from '../../src/tui/state/screen-state.ts';
import { settleWords } from '../../src/tui/state/settle-words.ts';
import { chosenTask, taskRow } from '../../src/tui/state/task-rows.ts';
import { transcriptRow, transcriptWords } from '../../src/tui/state/transcript-steps.ts';
import { AROUND, FIGURES, FINDING, LIMITS, MEMO, MEMOS, NEXT, TASKS } from '../kit/views.ts';

const data = { projectName: 'Mill loft', memos: [...MEMOS].reverse(), findings: [FINDING], next: NEXT };
const opened = openingState(data);
const typed = (text: string): KeyPress => ({ text });
const named = (name: NonNullable<KeyPress['name']>): KeyPress => ({ text: '', name });
const after = (state: ScreenState, ...keys: KeyPress[]) =>
  keys.reduce((step, key) => reduce(step.state, { kind: 'key', key }), {
    state,
    effects: [] as readonly unknown[],
  });

test('down stops at the last memo, up at the first', () => {
  expect(after(opened, named('down'), named('down'), named('down')).state.chosen.memos).toBe(1);
  expect(after(opened, named('up')).state.chosen.memos).toBe(0);
});

test('enter opens the chosen memo, and it is shown when it comes', () => {
  const step = after(opened, named('down'), named('enter'));
  expect(step.effects).toEqual([{ do: 'open-memo', id: 'm1' }]);
  expect(reduce(step.state, { kind: 'memo', memo: MEMO }).state).toMatchObject({
    view: 'heard',
    memo: { id: 'm1' },
  });
});

test.each([
  ['1', 'keep-old'],
  ['2', 'take-new'],
  ['3', 'both-right'],
])('%s on a clash settles it: %s', (key, choice) => {
  expect(after(opened, typed('c'), typed(key)).effects).toEqual([{ do: 'settle', id: 'm2.k1', choice }]);
});

test('a memo that comes late does not draw back who went elsewhere meanwhile', () => {
  const waiting = after(opened, named('enter'), typed('c')).state;
  expect(reduce(waiting, { kind: 'memo', memo: MEMO }).state.view).toBe('clashes');
  const left = after(reduce(opened, { kind: 'memo', memo: MEMO }).state, typed('m')).state;
  expect(reduce(left, { kind: 'memo', memo: MEMO }).state.view).toBe('memos');
  expect(reduce(after(left, named('enter')).state, { kind: 'memo', memo: MEMO }).state.view).toBe('heard');
});

test('l shows what each engine heard in a memo, 1 lets the marked one count, Esc goes back to its notes', () => {
  const heard = (version: number, counts: boolean) => ({
    version,
    engine: `engine ${version}`,
    words: 2,
    counts,
    text: `words ${version}`,
    utterances: [],
    dropped: [],
  });
  const memo = reduce(opened, { kind: 'memo', memo: MEMO }).state;
  const asked = after(memo, typed('l'));
  expect(asked.effects).toEqual([{ do: 'read-transcripts', memoId: 'm1' }]);
  const transcripts = [heard(1, false), heard(2, true)];
  const told = reduce(asked.state, { kind: 'transcripts', memoId: 'm1', transcripts }).state;
  expect([told.chosen.transcripts, transcriptWords(told)]).toEqual([1, 'words 2']);
  expect(transcripts.map(transcriptRow)).toEqual([
    '  1  engine 1  2 words',
    '* 2  COUNTS  engine 2  2 words',
  ]);
  // It counts already.
  expect(after(told, typed('1')).effects).toEqual([]);
  expect(after(told, named('up'), typed('1')).effects).toEqual([
    {
      do: 'by-hand',
      change: { kind: 'transcript-chosen', memoId: 'm1', version: 1, by: 'person' },
      line: 'transcript 1 counts now, by engine 1',
    },
  ]);
  expect(after(told, named('back'))).toMatchObject({
    state: { view: 'heard' },
    effects: [{ do: 'open-memo', id: 'm1' }],
  });
  const none = reduce(asked.state, { kind: 'transcripts', memoId: 'm1', transcripts: [] }).state;
  expect(transcriptWords(none)).toContain('there is no transcript');
  const other = reduce(asked.state, { kind: 'transcripts', memoId: 'm7', transcripts }).state;
  expect(other.transcripts).toBeUndefined();
});

test('a key that means nothing in a view says so, and Esc takes the words away', () => {
  const step = after(opened, typed('1'));
  expect(step.effects).toEqual([]);
  expect(step.state.message).toEqual({ tone: 'good', lines: ['"1" is no key here: ? lists the keys'] });
  expect(after(step.state, named('back')).state).toEqual({ ...opened, message: undefined });
});

test('a typed file name is taken in; keys that mean something elsewhere are letters there', () => {
  const step = after(opened, typed('t'), typed('quick.wavx'), named('erase'), named('enter'));
  expect(step.effects).toEqual([{ do: 'take', file: 'quick.wav' }]);
  expect(step.state).toMatchObject({ typing: undefined, jobs: [{ file: 'quick.wav' }] });
});

test('a second file waits for the first, and starts when that one is over, taken or not', () => {
  const first = after(opened, typed('t'), typed('a.wav'), named('enter')).state;
  const second = after(first, typed('t'), typed('b.wav'), named('enter'));
  expect(second.effects).toEqual([]);
  const over = reduce(second.state, { kind: 'failed', lines: ['cannot take a.wav'] });
  expect(over.effects).toEqual([{ do: 'take', file: 'b.wav' }]);
  expect(over.state.message).toEqual({ tone: 'bad', lines: ['cannot take a.wav'] });
});

test('nothing typed takes nothing', () => {
  expect(after(opened, typed('t'), typed('  '), named('enter')).effects).toEqual([]);
});

test('the chosen clash stays in the list when it has become shorter', () => {
  const two = openingState({ ...data, findings: [FINDING, { ...FINDING, id: 'm2.k2' }] });
  const onSecond = after(two, typed('c'), named('down')).state;
  expect(onSecond.chosen.clashes).toBe(1);
  expect(reduce(onSecond, { kind: 'data', data }).state.chosen.clashes).toBe(0);
});

test('? shows the keys, Esc goes back to where it was pressed', () => {
  const keys = after(opened, typed('c'), typed('?')).state;
  expect(keys).toMatchObject({ view: 'keys', viewBefore: 'clashes' });
  expect(after(keys, named('back')).state.view).toBe('clashes');
});

test.each([typed('q'), named('interrupt')])('%j leaves', (key) => {
  expect(after(opened, key).effects).toEqual([{ do: 'leave' }]);
});

test('Ctrl-C leaves even while typing', () => {
  expect(after(opened, typed('t'), typed('half'), named('interrupt')).effects).toEqual([{ do: 'leave' }]);
});

const book = { figures: FIGURES };
/** The figure that was opened, once it has been read. */
function read(state: ScreenState, around = AROUND.find(({ figure }) => figure === state.opened?.listed)) {
  const listed = state.opened?.listed;
  if (!listed) throw new Error('no figure is opened');
  return reduce(state, { kind: 'figure', place: listed, around: around ?? null, limits: LIMITS }).state;
}
const atFigures = reduce(after(opened, typed('f')).state, { kind: 'book', book }).state;
const atTasks = reduce(after(opened, typed('w')).state, { kind: 'tasks', tasks: TASKS }).state;
const pages = ['journal', 'next', 'episode'].map((title) => ({
  title,
  file: `${title}.md`,
  text: 'a\nb\nc\n',
}));
const atDay = reduce(after(opened, typed('d')).state, {
  kind: 'pages',
  pages,
  days: ['2026-03-09', '2026-03-11'],
}).state;
const typing = (text: string) => [...text].map(typed);

test.each([
  ['f', { do: 'read-book', firstSoon: true }],
  ['k', { do: 'read-rules' }],
  ['w', { do: 'read-tasks' }],
  ['d', { do: 'read-pages' }],
])('%s asks for what it shows, and for it anew when the project has changed', (key, effect) => {
  const step = after(opened, typed(key));
  expect(step.effects).toEqual([effect]);
  expect(reduce(step.state, { kind: 'data', data }).effects).toEqual([effect]);
});

test.each([
  ['', ['hoist beam', 'brace', 'peg']],
  ['be', ['hoist beam']],
  ['length b', ['hoist beam', 'brace']],
  ['TREAD', ['stair tread']],
  ['ength', []],
])('"%s" finds %j: starts of words, counts only when asked for', (find, items) => {
  expect(foundFigures({ book, find }).map(({ item }) => item)).toEqual(items);
});

test('figures are found while typing; Enter opens the marked one, Esc goes back step by step', () => {
  const found = after(atFigures, typed('/'), ...typing('len'), named('down')).state;
  expect(found).toMatchObject({ find: 'len', chosen: { figures: 1 }, typing: { what: 'find' } });
  const one = after(found, named('enter')).state;
  expect(one).toMatchObject({ view: 'figure', typing: undefined });
  expect(one.opened?.listed.item).toBe('brace');
  const list = after(one, named('back')).state;
  expect(list).toMatchObject({ view: 'figures', find: 'len', chosen: { figures: 1 } });
  const all = after(list, named('back')).state;
  expect(all).toMatchObject({ view: 'figures', find: '' });
  expect(after(all, named('back')).state.view).toBe('memos');
});

test('with nothing found Enter leaves the words to be put right; Esc while typing shows all', () => {
  const none = after(atFigures, typed('/'), ...typing('zz'), named('enter')).state;
  expect(none).toMatchObject({ view: 'figures', typing: { text: 'zz' } });
  expect(after(none, named('back')).state).toMatchObject({ find: '', typing: undefined });
});

test('a figure that does not stand any more has no lines', () => {
  const step = after(atFigures, named('enter'));
  expect(step.effects).toMatchObject([{ do: 'read-figure', place: { item: 'hoist beam' } }]);
  // Its head alone, until the rest has come.
  expect(figureLines(step.state)).toHaveLength(1);
  expect(figureLines(read(step.state)).length).toBeGreaterThan(5);
  const gone = reduce(step.state, {
    kind: 'figure',
    place: step.state.opened?.listed as FigurePlace,
    around: null,
    limits: [],
  }).state;
  expect(figureLines(gone)).toEqual([]);
});

test('what comes of a figure that was left meanwhile is not shown', () => {
  const brace = after(atFigures, named('down'), named('enter')).state;
  const [beam] = AROUND;
  if (!beam) throw new Error('the kit has no figures');
  const late = { kind: 'figure', place: beam.figure, around: beam, limits: [] } as const;
  expect(reduce(brace, late).state.opened?.around).toBeUndefined();
});

test('a limit names what breaks it', () => {
  const [limit] = LIMITS;
  if (!limit) throw new Error('the kit has no limit');
  const breach = {
    ...FINDING,
    kind: 'limit' as const,
    was: { value: limit.value, unit: 'mm', source: limit.source },
    now: { value: 2170, unit: 'mm' },
  };
  const one = read(after({ ...atFigures, data: { ...data, findings: [breach] } }, named('enter')).state);
  const texts = figureLines(one).map(({ text }) => text);
  expect(texts).toContain('    BROKEN by hoist beam length, 2170 mm');
  expect(texts).not.toContain('    nothing known breaks it');
});

const closed = { kind: 'task-closed', taskId: 'm1.t1' };
test.each([
  ['1 closes', [typed('1')], closed],
  [
    '2 reopens what is done',
    [named('down'), named('down'), typed('2')],
    { kind: 'task-reopened', taskId: 'm1.t2' },
  ],
  ['a adds', [typed('a'), ...typing('Cut pegs'), named('enter')], { kind: 'task-added', gist: 'Cut pegs' }],
  [
    'h makes wait',
    [typed('h'), ...typing('glue sets'), named('enter')],
    { kind: 'task-waits-set', taskId: 'm1.t1', waits: [{ words: 'glue sets' }] },
  ],
  [
    'b sets a date',
    [typed('b'), ...typing('2026-03-20'), named('enter')],
    { kind: 'task-due-set', taskId: 'm1.t1', due: '2026-03-20' },
  ],
  [
    'b takes it away',
    [typed('b'), ...typing('none'), named('enter')],
    { kind: 'task-due-set', taskId: 'm1.t1' },
  ],
  ...(
    [
      ['nothing', []],
      ['until 2026-04-02', [{ words: '2026-04-02', until: '2026-04-02' }]],
      ['24 hours', [{ words: '24 hours', hours: 24 }]],
      ['m2.t1', [{ words: 'Hang the hoist', taskId: 'm2.t1' }]],
      [
        'loft at least 12 degC',
        [{ words: 'loft at least 12 degC', reading: { value: 12, unit: 'degC', bound: 'at-least' } }],
      ],
      ['the 24 hours race', [{ words: 'the 24 hours race' }]],
    ] as const
  ).map(
    ([text, waits]) =>
      [
        `h reads "${text}"`,
        [typed('h'), ...typing(text), named('enter')],
        { kind: 'task-waits-set', taskId: 'm1.t1', waits },
      ] as const,
  ),
] as const)('in the tasks %s', (_words, keys, change) => {
  expect(after(atTasks, ...keys).effects).toMatchObject([{ do: 'by-hand', change }]);
});

test.each([
  ['closing what is done', [named('down'), named('down'), typed('1')]],
  ['reopening what is open', [typed('2')]],
  ['the first of the list sooner', [typed('s')]],
  ['one that waits before one that is ready', [named('down'), typed('s')]],
  ['the last of the ready ones later', [typed('l')]],
  ['a date for what is done', [named('down'), named('down'), typed('b')]],
  ['a day that the calendar has not', [typed('b'), ...typing('2026-02-30'), named('enter')]],
  ['a task without words', [typed('a'), typed(' '), named('enter')]],
] as const)('%s does nothing', (_words, keys) => {
  expect(after(atTasks, ...keys).effects).toEqual([]);
});

test('s puts a task before the one above it, and the mark goes with it', () => {
  const [ready, ...others] = TASKS;
  if (!ready) throw new Error('the kit has no task');
  const second = { ...ready, id: 'm3.t1', gist: 'Cut pegs' };
  const two = reduce(atTasks, { kind: 'tasks', tasks: [ready, second, ...others] }).state;
  const step = after(two, named('down'), typed('s'));
  expect(step.effects).toMatchObject([{ change: { kind: 'task-placed', taskId: 'm3.t1', before: 'm1.t1' } }]);
  const moved = reduce(step.state, { kind: 'tasks', tasks: [second, ready, ...others] }).state;
  expect(moved.chosen.tasks).toBe(0);
});

test('a task whose day is past is loud', () => {
  const [ready] = TASKS;
  if (!ready) throw new Error('the kit has no task');
  const task = { ...ready, due: '2026-03-13' };
  expect(taskRow(task, '2026-03-13')).toContain(', due 2026-03-13');
  expect(taskRow(task, '2026-03-14')).toContain(', LATE, due 2026-03-13');
});

test('after closing, the mark is on the next task', () => {
  const [ready, ...others] = TASKS;
  if (!ready) throw new Error('the kit has no task');
  const done = { ...ready, status: 'done' as const, closedBy: TASKS[2]?.closedBy ?? ready.source };
  const next = reduce(atTasks, { kind: 'tasks', tasks: [...others, done] }).state;
  expect(chosenTask(next)?.gist).toBe('Hang the hoist');
});

test('1, 2 and 3 choose a page from its top, p writes all of them', () => {
  const down = after(atDay, named('down'), named('down'), named('down')).state;
  expect(down.chosen.day).toBe(2);
  expect(after(down, typed('3')).state).toMatchObject({ page: 2, chosen: { day: 0 } });
  expect(after(down, typed('p')).effects).toEqual([{ do: 'write', pages }]);
});

test('without talk there is no page to write', () => {
  const none = reduce(atDay, { kind: 'pages', pages: [], days: [] }).state;
  expect(after(none, typed('p')).effects).toEqual([]);
});

test('l puts the task below before this one, and the mark goes with it', () => {
  const [ready, ...others] = TASKS;
  if (!ready) throw new Error('the kit has no task');
  const second = { ...ready, id: 'm3.t1', gist: 'Cut pegs' };
  const two = reduce(atTasks, { kind: 'tasks', tasks: [ready, second, ...others] }).state;
  const step = after(two, typed('l'));
  expect(step.effects).toMatchObject([{ change: { kind: 'task-placed', taskId: 'm3.t1', before: 'm1.t1' } }]);
  const moved = reduce(step.state, { kind: 'tasks', tasks: [second, ready, ...others] }).state;
  expect(moved.chosen.tasks).toBe(1);
});

test('← and → turn to the days with talk and stop at the first and the last', () => {
  expect(after(atDay, named('right')).effects).toEqual([]);
  const earlier = after(atDay, named('down'), named('left'));
  expect(earlier.effects).toEqual([{ do: 'read-pages', day: '2026-03-09' }]);
  expect(earlier.state.chosen.day).toBe(0);
  expect(after(earlier.state, named('left')).effects).toEqual([]);
  expect(after(earlier.state, named('right')).effects).toEqual([{ do: 'read-pages', day: '2026-03-11' }]);
});

test('erase takes a whole character as it is seen', () => {
  const step = after(opened, typed('t'), typed('ae\u0301'), named('erase'));
  expect(step.state.typing?.text).toBe('a');
});

const snag = {
  id: 'm2.p1',
  gist: 'hoist squeaks',
  status: 'open' as const,
  source: { memoId: 'm2', recordedAt: '2026-03-11T17:30:00+01:00', quote: 'the hoist squeaks' },
};
const withSnag = reduce(atTasks, {
  kind: 'data',
  data: { ...data, next: { ...NEXT, problems: [snag] } },
}).state;

test('snags stand behind the tasks; 1 puts one right, what is for tasks alone does nothing', () => {
  const onSnag = after(withSnag, named('page-down')).state;
  expect(onSnag.chosen.tasks).toBe(3);
  expect(after(onSnag, typed('1')).effects).toEqual([
    {
      do: 'by-hand',
      change: { kind: 'problem-solved', problemId: 'm2.p1' },
      line: 'put right: hoist squeaks',
    },
  ]);
  for (const key of ['2', 'b', 's', 'l']) expect(after(onSnag, typed(key)).effects).toEqual([]);
});

test('- takes out what is no task, or no snag', () => {
  expect(after(withSnag, typed('-')).effects).toEqual([
    { do: 'withdraw', id: 'm1.t1', line: 'taken out: Oil the hoist beam' },
  ]);
  expect(after(withSnag, named('page-down'), typed('-')).effects).toMatchObject([{ id: 'm2.p1' }]);
});

/** A memo whose figure clashes, and whose two statements nothing speaks against. */
const HEARD_MEMO = { ...MEMO, id: 'm2' };
const HEARD_FINDING = {
  ...FINDING,
  memoId: 'm2',
  now: {
    ...FINDING.now,
    value: 2150,
    source: { memoId: 'm2', recordedAt: MEMO.recordedAt, quote: '2150 long' },
  },
};
const heard = reduce(openingState({ ...data, findings: [HEARD_FINDING] }), {
  kind: 'memo',
  memo: HEARD_MEMO,
}).state;

test('a agrees with all sure notes at once and leaves the unsure ones alone, with why', () => {
  const step = after(heard, typed('a'));
  expect(step.effects).toMatchObject([
    { do: 'by-hand', change: { kind: 'notes-accepted', noteIds: ['m1.d1', 'm1.t1'] } },
  ]);
  expect(step.state.unsureAlone).toBe(true);
  expect(shownNotes(step.state)).toMatchObject([
    { id: 'm1.f1', state: 'UNSURE', why: [expect.stringMatching(/^clashes with/)] },
  ]);
});

test.each([
  ['1', 'note-accepted'],
  ['-', 'note-rejected'],
])('%s says of the marked note %s, and the mark goes on', (key, kind) => {
  const step = after(heard, typed(key));
  expect(step.effects).toMatchObject([{ do: 'by-hand', change: { kind, noteId: 'm1.f1' } }]);
  expect(step.state.chosen.heard).toBe(1);
});

test('e opens the note as a line; put right there it is amended', () => {
  const line = after(heard, typed('e')).state;
  expect(line.typing).toMatchObject({ what: 'amend', text: 'hoist beam length = 2150 mm' });
  const step = after(line, named('clear'), typed('ridge beam width = at most 3 1/2 in'), named('enter'));
  expect(step.effects).toMatchObject([
    {
      change: {
        kind: 'note-amended',
        fields: { item: 'ridge beam', attribute: 'width', value: 3.5, unit: 'in', bound: 'at-most' },
      },
    },
  ]);
  const wrong = after(line, named('clear'), typed('ridge beam'), named('enter'));
  expect(wrong.effects).toEqual([]);
  expect(wrong.state).toMatchObject({ typing: { text: 'ridge beam' }, message: { tone: 'bad' } });
});

test('a number that sounds like another one stands beside it, and 2 takes the other', () => {
  const [figure] = MEMO.notes.figures;
  const alternatives = [{ value: 2115, unit: 'mm' }] as const;
  const notes = { ...MEMO.notes, figures: [{ ...figure, value: 2150, alternatives }] } as MemoView['notes'];
  const heard = reduce(opened, { kind: 'memo', memo: { ...MEMO, notes } }).state;
  const [line] = shownNotes(heard);
  expect(line).toMatchObject({ what: 'hoist beam length 2150 mm or 2115 mm?', state: 'UNSURE' });
  expect(line?.why).toContain('sounds like 2115 mm');
  expect(after(heard, typed('2')).effects).toEqual([
    {
      do: 'by-hand',
      change: { kind: 'note-amended', noteId: 'm1.f1', fields: { value: 2115, unit: 'mm' } },
      line: 'put right: hoist beam length 2115 mm',
    },
  ]);
  // Without another reading there is nothing to take.
  expect(after(reduce(opened, { kind: 'memo', memo: MEMO }).state, typed('2')).effects).toEqual([]);
});

test('y makes a note one of another kind, by the beginning of its word', () => {
  const step = after(heard, named('down'), named('down'), typed('y'), typed('sn'), named('enter'));
  expect(step.effects).toMatchObject([
    { change: { noteId: 'm1.t1', fields: { kind: 'problem', gist: 'Oil the hoist beam' } } },
  ]);
  expect(after(heard, typed('y'), typed('d'), named('enter')).state.message?.tone).toBe('bad');
});

test('h opens the sentence; only the words that changed are put right', () => {
  const line = after(heard, typed('h')).state;
  expect(line.typing).toMatchObject({ what: 'reword', text: 'The hoist beam is 2150 long.' });
  const step = after(line, named('clear'), typed('The hoist bean is 2150 long.'), named('enter'));
  expect(step.effects).toEqual([
    { do: 'reword', memoId: 'm2', wording: { span: { start: 10, end: 14 }, words: 'bean' } },
  ]);
  expect(after(line, named('enter')).effects).toEqual([]);
});

test('the cursor moves in a typed line', () => {
  const line = after(heard, typed('e'), named('left'), named('left'), named('left'), typed('.5')).state;
  expect(line.typing?.text).toBe('hoist beam length = 2150.5 mm');
  expect(after(line, named('home'), typed('x'), named('end'), named('erase')).state.typing?.text).toBe(
    'xhoist beam length = 2150.5 m',
  );
});

test('a thing is joined with another, or stands apart', () => {
  expect(after(heard, typed('j'), typed('ridge beam'), named('enter')).effects).toMatchObject([
    { change: { kind: 'items-merged', from: 'hoist beam', into: 'ridge beam' } },
  ]);
  expect(after(heard, typed('o')).effects).toMatchObject([
    { change: { kind: 'items-split', name: 'hoist beam' } },
  ]);
});

test('of a clash neither size may be right: 4 asks for it', () => {
  const step = after(opened, typed('c'), typed('4'), typed('2130 mm'), named('enter'));
  expect(step.effects).toEqual([
    { do: 'settle', id: 'm2.k1', choice: 'correct', value: { value: 2130, unit: 'mm' } },
  ]);
});

test('several dropped files wait in a row; a watched folder adds what comes, without a word of what is no memo', () => {
  const step = after(opened, typed('t'), typed('/barn/a.m4a\n/barn/b.m4a'), named('enter'));
  expect(step.state.jobs).toEqual([{ file: '/barn/a.m4a' }, { file: '/barn/b.m4a' }]);
  expect(step.effects).toEqual([{ do: 'take', file: '/barn/a.m4a' }]);
  const found = reduce(opened, { kind: 'found', file: '/sync/c.jpg' });
  expect(found.effects).toEqual([{ do: 'take', file: '/sync/c.jpg', isFound: true }]);
  expect(reduce(found.state, { kind: 'failed' }).state).toEqual(opened);
  const watched = reduce(opened, { kind: 'watching', folder: '/sync' }).state;
  expect(after(watched, typed('x')).effects).toEqual([{ do: 'unwatch' }]);
});

test('keys that come ahead of what they are meant for wait; those that lead elsewhere do not', () => {
  const tasks = after(opened, typed('w')).state;
  expect(tasks.underWay).toEqual({ readings: 1, writings: 0 });
  const waits = (state: ScreenState, key: KeyPress) => hasToWait(state, key, state.underWay);
  // In a list that is not there yet there is nothing to move to.
  expect([waits(tasks, typed('1')), waits(tasks, named('down')), waits(tasks, typed('c'))]).toEqual([
    true,
    true,
    false,
  ]);
  const again = { ...tasks, tasks: TASKS };
  expect([waits(again, typed('1')), waits(again, named('down'))]).toEqual([true, false]);
  const there = reduce(tasks, { kind: 'performed', effect: 'read-tasks' }).state;
  expect(waits(there, typed('1'))).toBe(false);
  const closing = after(reduce(there, { kind: 'tasks', tasks: TASKS }).state, typed('1')).state;
  expect([
    waits(closing, named('down')),
    waits(closing, typed('q')),
    waits(closing, named('interrupt')),
  ]).toEqual([true, false, false]);
});

/** The tasks with the mark on one of them. */
function atTasksOn(row: number, tasks = TASKS): ScreenState {
  const state = reduce(atTasks, { kind: 'tasks', tasks }).state;
  return { ...state, chosen: { ...state.chosen, tasks: row } };
}

test.each([
  ['closing what is closed', atTasksOn(2), '1', 'it is closed already: 2 opens it again'],
  ['reopening what is open', atTasksOn(0), '2', 'it is open'],
  ['the first one sooner', atTasksOn(0), 's', 'it is the first of those that are ready'],
  ['a day for what is closed', atTasksOn(2), 'b', 'it is closed: 2 opens it again'],
  ['a task where none is', atTasksOn(99, []), '1', 'no task is marked'],
  ['what waits, where none is', atTasksOn(99, []), 'h', 'no task is marked'],
  [
    'settling where nothing clashes',
    { ...openingState({ ...data, findings: [] }), view: 'clashes' as const },
    '2',
    'nothing clashes: there is nothing to settle',
  ],
  ['stopping where nothing runs', openingState(data), 'x', 'nothing is on its way, and no folder is watched'],
] as const)('%s does nothing and says why', (_, state, key, why) => {
  const step = after(state, typed(key));
  expect(step.effects).toEqual([]);
  expect(step.state.message?.lines).toEqual([why]);
});

test.each([
  ['slip', FINDING, '2150 mm holds', '2115 mm holds'],
  ['limit', { ...FINDING, kind: 'limit' as const }, 'limit holds', 'limit to 2115 mm'],
  ['check', { ...FINDING, kind: 'check' as const }, 'let it be', 'let it be'],
])('the settling keys say what they do to a %s', (_, finding, first, second) => {
  const state = openingState({ ...data, findings: [finding] });
  expect(settleWords(state)).toMatchObject({ 'old-holds': first, 'new-holds': second });
});

test('p plays where the marked note was said, and says so until it has sounded', () => {
  const [note] = MEMO.notes.figures;
  const spoken = {
    ...MEMO,
    notes: { ...MEMO.notes, figures: [{ ...note, startSeconds: 62.4, endSeconds: 65 }] },
  };
  const heard = { ...opened, view: 'heard', memo: spoken as MemoView } as const;
  const step = after(heard, typed('p'));
  expect(step.effects).toEqual([{ do: 'play', memoId: 'm1', stretch: { from: 62.4, to: 65 } }]);
  expect(step.state.message?.lines).toEqual(['playing 01:02 to 01:05: p ends it']);
  expect(reduce(step.state, { kind: 'played' }).state.message).toBeUndefined();
  const said = { ...step.state, message: { tone: 'good', lines: ['agreed with'] } } as const;
  expect(reduce(said, { kind: 'played' }).state.message?.lines).toEqual(['agreed with']);
  // The microphone would hear it.
  const recording = after(
    { ...heard, bench: reduce(opened, { kind: 'key', key: typed('r') }).state.bench },
    typed('p'),
  );
  expect(recording.effects).toEqual([]);
  expect(recording.state.message?.lines).toEqual(['the microphone would hear it: stop the recording first']);
});
