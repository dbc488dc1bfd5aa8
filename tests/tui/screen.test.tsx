import { afterEach, expect, test } from 'vitest';
import type { HandChange, ProjectApi } from '../../src/project-api.ts';
import type { SavePage } from '../../src/tui/screen-host.ts';
import { talkAround } from '../../src/tui/screens/heard-screen.tsx';
import { figureRows } from '../../src/tui/state/figure-rows.ts';
import { KEY_BYTES, openTerminal } from '../kit/fake-terminal.ts';
import { screenOn } from '../kit/screen-on.tsx';
import {
  AROUND,
  CHECKS,
  DAY,
  FIGURES,
  FINDING,
  LIMITS,
  MEMO,
  MEMOS,
  NEXT,
  SPAN,
  TASKS,
  WHERE,
} from '../kit/views.ts';

const NOW = '2026-03-12T08:00:00+01:00';

/** A project that answers from fixed views and remembers what it was told. */
function standIn(overrides: Partial<ProjectApi> = {}) {
  const told: string[] = [];
  let settled = false;
  const project = {
    info: { name: 'Mill loft', units: 'metric', tolerances: {} },
    memos: () => MEMOS,
    latestMemos: () => MEMOS,
    memoCount: () => MEMOS.length,
    memo: (id: string) => (id === 'm1' ? MEMO : undefined),
    findings: () => (settled ? [] : [FINDING]),
    next: () => NEXT,
    figures: () => FIGURES,
    figureList: () => FIGURES,
    figureAround: ({ item }: { item: string }) => AROUND.find(({ figure }) => figure.item === item),
    figuresToldIn: () => FIGURES,
    many: () => ({ span: () => SPAN }),
    limits: () => LIMITS,
    checks: () => CHECKS,
    currentTasks: () => TASKS,
    days: () => ['2026-03-09'],
    where: () => WHERE,
    undo: () => undefined,
    day: () => DAY,
    span: () => SPAN,
    setByHand: (change: HandChange) => told.push(JSON.stringify(change)),
    settle: (id: string, choice: string) => {
      settled = true;
      told.push(`${id} ${choice}`);
    },
    ...overrides,
  } as unknown as ProjectApi;
  return { project, told };
}

let terminal: ReturnType<typeof openTerminal> | undefined;
afterEach(() => terminal?.close());
const unsaved: SavePage = (file) => ({ file: `/barn/${file}`, beside: false });
function open(columns: number, rows: number, project = standIn().project, save = unsaved) {
  terminal = openTerminal(screenOn(project, NOW, save), columns, rows);
  return terminal;
}

test('80x24: the memos, newest first, what clashes in words, and the keys', async () => {
  const screen = open(80, 24);
  await screen.settle();
  const lines = screen.frame().split('\n');
  expect(lines[0]).toBe('Mill loft  2 memos, 1 to settle, 1 ready to do');
  expect(lines[2]).toBe('> m2   Wed 11 Mar 17:30  hoist-beam-again.m4a  01:01  3 notes, 1 CLASH');
  expect(lines[3]).toBe('  m1   Mon 9 Mar 17:30  hoist-beam.m4a  01:01  3 notes');
  expect(lines.slice(-2)).toEqual([
    'Enter open  u undo',
    '? keys  r rec  t take  c clashes  f figures  w tasks  d day  n next  q quit',
  ]);
});

test.each([
  [80, 24],
  [40, 12],
])('%ix%i: no line is wider and no screen higher than the terminal, in any view', async (columns, rows) => {
  const screen = open(columns, rows);
  for (const keys of [
    [],
    [KEY_BYTES.down, KEY_BYTES.enter],
    ['c'],
    ['n'],
    ['f'],
    [KEY_BYTES.enter],
    ['w'],
    ['d'],
    ['p'],
    ['i'],
    ['?'],
    ['t'],
  ]) {
    await screen.press(...keys);
    const lines = screen.frame().split('\n');
    expect(lines.length).toBeLessThan(rows);
    for (const line of lines) expect(line.length).toBeLessThanOrEqual(columns);
  }
});

test('the notes of a memo, with the words of the chosen one in their place', async () => {
  const screen = open(80, 24);
  await screen.press(KEY_BYTES.down, KEY_BYTES.enter);
  expect(screen.frame()).toContain('> 00:02 figure    hoist beam length 2150 mm');
  expect(screen.frame()).toContain('  00:14 to do     Oil the hoist beam, by 2026-03-13');
  await screen.press(KEY_BYTES.down);
  expect(screen.frame()).toContain('> 00:08 decided   Oak beam');
  expect(screen.frame().replace(/\s+/g, ' ')).toContain(
    "The hoist beam is 2150 long. I've decided on oak, because it stays put.",
  );
});

test('a clash shows both quotes, why and what was done on it, and one key settles it', async () => {
  const { project, told } = standIn();
  const screen = open(80, 24, project);
  await screen.press('c');
  expect(screen.frame()).toContain('> slip       hoist beam length: 2150 mm → 2115 mm');
  expect(screen.frame()).toContain('said     2115 mm   memo 2, 00:21   "2115 for the beam"');
  expect(screen.frame()).toContain('why      fifty and fifteen sound alike; nothing said of a change');
  expect(screen.frame()).toContain('on it    ordered: hoist beam');
  await screen.press('1');
  expect(told).toEqual(['m2.k1 keep-old']);
  expect(screen.frame()).toContain('settled: the old figure holds');
  expect(screen.frame()).toContain('Nothing clashes.');
});

test('of very much that hangs on a clash a part is shown, how much more there is, and what to do next', async () => {
  const [made] = FINDING.consequences;
  const consequences = Array.from({ length: 3000 }, (_, index) => ({ ...made, what: `part ${index}` }));
  const finding = { ...FINDING, consequences } as typeof FINDING;
  const screen = open(80, 24, standIn({ findings: () => [finding] }).project);
  await screen.press('c');
  const frame = screen.frame();
  const shown = frame.match(/ part \d+/g)?.length ?? 0;
  expect(shown).toBeGreaterThan(3);
  expect(frame).toContain(`  on it    and ${3000 - shown} more: hearwright findings`);
  expect(frame).toContain('next     ');
});

test('a refused file says what happened, what was kept and what to do', async () => {
  const { Problem } = await import('../../src/problem.ts');
  const problem = new Problem('cannot take loft.m4a: the file ends inside its index', {
    code: 'file-cut-off',
    exitCode: 3,
    kept: 'nothing was added',
    next: 'copy it again from the recorder',
  });
  const { project } = standIn({ take: async () => ({ ok: false, problem }) });
  const screen = open(80, 24, project);
  await screen.press('t', 'loft.m4a', KEY_BYTES.enter);
  expect(screen.frame()).toContain('cannot take loft.m4a: the file ends inside its index');
  expect(screen.frame()).toContain('next  copy it again from the recorder');
});

test('while a file is heard, the stage, the share and the words so far are shown', async () => {
  const { project } = standIn({
    take: (_file, options) => {
      options?.onProgress?.({
        stage: 'transcribing',
        fraction: 0.62,
        remainingSeconds: 9,
        words: 'and the bench \u001b]0;x\u0007top',
      });
      return new Promise(() => {});
    },
  });
  const screen = open(80, 24, project);
  await screen.press('t', 'loft.m4a', KEY_BYTES.enter);
  expect(screen.frame()).toContain('hearing loft.m4a  62 %, about 9 s left\n  and the bench top\nMemos');
});

test('at 40 columns a long name and long words of a file on its way give way to how far it is', async () => {
  const words = `${'the bench is high and '.repeat(9)}the locker is 18 deep`;
  const { project } = standIn({
    take: (_file, options) => {
      options?.onProgress?.({ stage: 'transcribing', fraction: 0.62, remainingSeconds: 9, words });
      return new Promise(() => {});
    },
  });
  const screen = open(40, 20, project);
  await screen.press('t', 'talk-of-the-whole-thursday-evening.m4a', KEY_BYTES.enter);
  const [, job = '', said = ''] = screen.frame().split('\n');
  expect(job).toMatch(/^hearing talk.*… {2}62 %, about 9 s left$/);
  expect(said).toMatch(/^….*the locker is 18 deep$/);
  for (const line of [job, said]) expect(line.length).toBeLessThanOrEqual(40);
});

test('a resized terminal is used in full', async () => {
  const screen = open(80, 24);
  await screen.resize(40, 12);
  expect(
    Math.max(
      ...screen
        .frame()
        .split('\n')
        .map((line) => line.length),
    ),
  ).toBeLessThanOrEqual(40);
});

test('q gives the terminal back', async () => {
  const screen = open(80, 24);
  await screen.press('q');
  await expect(screen.gone).resolves.toBeUndefined();
});

test('80x24: figures in both unit systems with state, age and source, found while their words are typed', async () => {
  const screen = open(80, 24);
  await screen.press('f');
  const lines = screen.frame().split('\n');
  expect(lines[2]).toBe('3 figures');
  expect(lines[3]).toBe('> hoist beam length    2150 mm (≈ 84 5/8 in)        IN DOUBT 3 days   memo 1');
  expect(lines[4]).toBe('  brace length         1075 mm (≈ 42 5/16 in)                         worked out');
  expect(screen.frame().replace(/\s+/g, ' ')).toContain(
    'hoist beam length: 2150 mm (≈ 84 5/8 in), IN DOUBT, measured, memo 1, 00:02, 3 days old, "2150 long"',
  );
  await screen.press('/', 'b', 'r');
  expect(screen.frame()).toContain('1 figure with "br" (Esc shows all)');
  expect(screen.frame()).toContain('find: br_  (Enter opens the marked one, Esc shows all)');
  expect(screen.frame()).not.toContain('hoist beam');
});

test('a figure shows what it comes from, what hangs on it, its history, limits and checks', async () => {
  const screen = open(80, 40);
  await screen.press('f', KEY_BYTES.enter);
  for (const words of [
    'hangs on it\n  └ brace length: 1075 mm (≈ 42 5/16 in)\n    └ peg length: 75 mm (≈ 2 15/16 in)\n',
    '  = is let pass, 1 mm either way: 1 of 2 outside',
    '  Mon 9 Mar  |---------=*| 2150 mm\n  Wed 11 Mar |o--------==| 2115 mm\n',
    '  Wed 11 Mar  2115 mm (≈ 83 1/4 in)  doubted',
    '  hoist beam length: at most 2160 mm (≈ 85 1/16 in)\n    nothing known breaks it\n',
    'checks\n  BREAKS: clearance (loft, hoist beam)\n    14 mm short at worst',
  ])
    expect(screen.frame()).toContain(words);
  await screen.press(KEY_BYTES.escape, KEY_BYTES.down, KEY_BYTES.enter);
  expect(screen.frame()).toContain(
    'comes from\n  = hoist beam length / 2\n  └ hoist beam length: 2150 mm (≈ 84 5/8 in), IN DOUBT, 3 days old\n',
  );
});

test('at 40 columns a figure still tells its doubt', async () => {
  const screen = open(40, 12);
  await screen.press('f');
  expect(screen.frame()).toContain('> hoist beam length  IN DOUBT  2150 mm');
});

test('at 40 columns every key that settles is in sight, and a long name gives way to the value', async () => {
  const screen = open(40, 20);
  await screen.press('c');
  for (const key of ['1 2150 mm holds', '2 2115 mm holds', '3 both right', '4 neither'])
    expect(screen.frame()).toContain(key);
  const [figure] = FIGURES;
  if (!figure) throw new Error('the kit has no figure');
  const long = { ...figure, item: 'anything that has to go through the hatch' };
  const [row = ''] = figureRows([long], '2026-03-12', 40);
  expect(row).toContain('…  IN DOUBT  2150 mm');
  expect(row.indexOf('2150 mm') + 7).toBeLessThanOrEqual(38);
});

test('tasks are ready, waiting on something, or done today, and one key closes or reopens one', async () => {
  const { project, told } = standIn();
  const screen = open(80, 24, project);
  await screen.press('w');
  expect(screen.frame().split('\n').slice(2, 6)).toEqual([
    '1 ready, 1 waiting, 2 carried over, 1 done today',
    '> ready    3 d old  Oil the hoist beam, due 2026-03-13',
    '  waiting  1 d old  Hang the hoist: waits for bolts arrive',
    '  done              Sweep the loft',
  ]);
  await screen.press('1');
  expect(screen.frame()).toContain('closed: Oil the hoist beam');
  await screen.press(KEY_BYTES.down, KEY_BYTES.down, '2', 'a', 'Turn a \u0007peg', KEY_BYTES.enter);
  expect(screen.frame()).toContain('added: Turn a peg');
  expect(told.map((line) => JSON.parse(line))).toEqual([
    { kind: 'task-closed', taskId: 'm1.t1' },
    { kind: 'task-reopened', taskId: 'm1.t2' },
    { kind: 'task-added', gist: 'Turn a peg' },
  ]);
});

test('the pages of the newest day are shown as they will be written, and one key writes all three', async () => {
  const written: [string, string][] = [];
  const save: SavePage = (file, text) => {
    written.push([file, text]);
    return file.startsWith('next')
      ? { file: '/barn/next-2026-03-12.1.md', beside: true }
      : { file: `/barn/${file}`, beside: false };
  };
  const screen = open(80, 24, standIn().project, save);
  await screen.press('d');
  expect(screen.frame()).toContain('[1 journal]  2 next steps   3 outline');
  expect(screen.frame()).toContain('# Monday 2026-03-09: Mill loft');
  await screen.press(KEY_BYTES.down);
  expect(screen.frame()).not.toContain('# Monday 2026-03-09: Mill loft');
  await screen.press('2');
  expect(screen.frame()).toContain('# Next steps for Thursday 2026-03-12: Mill loft');
  await screen.press('3');
  expect(screen.frame()).toContain('# Episode outline: Mill loft');
  await screen.press('p');
  expect(screen.frame()).toContain(
    [
      'written: journal-2026-03-09.md',
      'written: next-2026-03-12.1.md, because next-2026-03-12.md was changed since',
      'written: episode-2026-03-09-2026-03-09.md',
      'in /barn',
    ].join('\n'),
  );
  expect(written.map(([file, text]) => [file, text.split('\n')[0]])).toEqual([
    ['journal-2026-03-09.md', '# Monday 2026-03-09: Mill loft'],
    ['next-2026-03-12.md', '# Next steps for Thursday 2026-03-12: Mill loft'],
    ['episode-2026-03-09-2026-03-09.md', expect.stringContaining('# Episode outline: Mill loft')],
  ]);
});

test('a page that cannot be written is told with what to do', async () => {
  const { Problem } = await import('../../src/problem.ts');
  const save: SavePage = () => {
    throw new Problem('cannot write journal.md: the disk is full', {
      code: 'page-unwritable',
      exitCode: 1,
      next: 'make room',
    });
  };
  const screen = open(80, 24, standIn().project, save);
  await screen.press('d', 'p');
  expect(screen.frame()).toContain('cannot write journal.md: the disk is full\nnext  make room');
});

test('of many figures only those in sight are drawn, around the marked one', async () => {
  const [figure] = FIGURES;
  if (!figure) throw new Error('the kit has no figure');
  const many = Array.from({ length: 60 }, (_, index) => ({ ...figure, item: `post ${index + 1}` }));
  const screen = open(80, 24, standIn({ figureList: () => many }).project);
  await screen.press('f', KEY_BYTES.down, KEY_BYTES.pageDown, KEY_BYTES.pageDown, KEY_BYTES.pageDown);
  expect(screen.frame()).toContain('60 figures');
  expect(screen.frame()).toContain('> post 32 length');
  expect(screen.frame()).not.toContain('post 1 length');
});

test('after more than a week without talk the screen opens with where one was; Esc leads to the memos', async () => {
  const terminal = openTerminal(screenOn(standIn().project, '2026-03-17T08:00:00+01:00'), 80, 24);
  await terminal.settle();
  expect(terminal.frame().split('\n').slice(1, 9)).toEqual([
    'Where was I',
    'Last talk: Wednesday 2026-03-11, 6 days ago (memo 2).',
    '',
    'In the middle',
    "- “I've left the brace in clamps” (memo 2, 00:50, 2026-03-11)",
    '',
    'Drying and curing',
    '- Glue laid 2026-03-11 16:00 (memo 2, 00:50): how long it takes was not said,',
  ]);
  await terminal.press(KEY_BYTES.escape);
  expect(terminal.frame()).toContain('> m2   Wed 11 Mar');
  terminal.close();
});

test('a week without talk is no gap', async () => {
  const screen = open(80, 24);
  await screen.settle();
  expect(screen.frame()).toContain('\nMemos\n');
  await screen.press('i');
  expect(screen.frame()).toContain('\nWhere was I\n');
});

test('u takes back the last thing done by hand, z does it again; both say what it was, in any view', async () => {
  const done = ['the task "Turn a peg"'];
  const again = ['the task "Turn a peg"'];
  const screen = open(80, 24, standIn({ undo: () => done.pop(), redo: () => again.pop() }).project);
  await screen.press('n', 'u');
  expect(screen.frame()).toContain('undone: the task "Turn a peg" (z does it again)');
  await screen.press('z');
  expect(screen.frame()).toContain('done again: the task "Turn a peg"');
  await screen.press('z');
  expect(screen.frame()).toContain('nothing was undone last: nothing to do again');
  await screen.press('m', 'u');
  expect(screen.frame()).toContain('nothing was set by hand: nothing to undo');
});

test('← shows the day before, with its own journal, and p writes that', async () => {
  const written: string[] = [];
  const earlier = { ...DAY, date: '2026-03-02' };
  const { project } = standIn({
    days: () => ['2026-03-02', '2026-03-09'],
    day: (date) => (date === '2026-03-02' ? earlier : DAY),
  });
  const screen = open(80, 24, project, (file) => {
    written.push(file);
    return { file, beside: false };
  });
  await screen.press('d');
  expect(screen.frame()).toContain('Mon 9 Mar 2026, day 2 of 2 with talk');
  await screen.press(KEY_BYTES.left, KEY_BYTES.left);
  expect(screen.frame()).toContain('Mon 2 Mar 2026, day 1 of 2 with talk');
  expect(screen.frame()).toContain('# Monday 2026-03-02: Mill loft');
  await screen.press('p');
  expect(written[0]).toBe('journal-2026-03-02.md');
  await screen.press(KEY_BYTES.right);
  expect(screen.frame()).toContain('# Monday 2026-03-09: Mill loft');
});

test('keys that come in one piece each count, and a key that the project refuses leaves the screen standing', async () => {
  const { project, told } = standIn();
  const screen = open(80, 24, project);
  await screen.press('wb2026-04-01\r');
  expect(told.map((line) => JSON.parse(line))).toEqual([
    { kind: 'task-due-set', taskId: 'm1.t1', due: '2026-04-01' },
  ]);
  expect(screen.frame()).toContain('due 2026-04-01: Oil the hoist beam');
  await screen.press('b', 'Friday', KEY_BYTES.enter);
  expect(screen.frame()).toContain('expected a day such as 2026-05-03, or none; got "Friday"');
  expect(screen.frame()).toContain('by when, YYYY-MM-DD or none: Friday_');
});

test('what the project cannot do is told, and the screen goes on', async () => {
  const screen = open(
    80,
    24,
    standIn({
      undo: () => {
        throw new Error('the project is held by another program');
      },
    }).project,
  );
  await screen.press('u');
  expect(screen.frame()).toContain('the project is held by another program');
  await screen.press('n');
  expect(screen.frame()).toContain('What is next');
});

test('a file that is dropped on the screen is offered for taking in', async () => {
  const screen = open(80, 24);
  await screen.press("'/barn/talk of monday.m4a'");
  expect(screen.frame()).toContain('file to take in: /barn/talk of monday.m4a_');
});

test('where an order cannot be had, it is said', async () => {
  const [ready, ...others] = TASKS;
  if (!ready) throw new Error('the kit has no task');
  const tasks = [ready, { ...ready, id: 'm3.t1', gist: 'Cut pegs' }, ...others];
  const screen = open(80, 24, standIn({ currentTasks: () => tasks }).project);
  await screen.press('w', 'l');
  expect(screen.frame()).toContain('the order stays: what has to come first is stronger');
});

test.each([
  [80, '…hoist beam is 2150 long. [I have decided on oak], because it stays put.'],
  [24, '…long. [I have decided on oak], because it stays put.'],
])(
  'in %i columns the words of a note are in sight, with as much of the talk before them as there is room for',
  (columns, shown) => {
    const said = `${'So then. '.repeat(20)}The hoist beam is 2150 long. I have decided on oak, because it stays put.`;
    const start = said.indexOf('I have');
    const { before, quote, after } = talkAround(said, { start, end: start + 21 }, columns);
    expect(`${before}[${quote}]${after}`.endsWith(shown.replace(/^…/, ''))).toBe(true);
    expect(before).toMatch(/^…/);
    expect(before.length + quote.length).toBeLessThanOrEqual(2 * columns);
  },
);
