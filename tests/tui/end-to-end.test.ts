/** The built command in a real terminal, driven by keys: from an empty folder to a written journal. */
import { existsSync, readdirSync, readFileSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import stringWidth from 'string-width';
import { afterEach, expect, type TestContext, test } from 'vitest';
import { openWorkplace } from '../kit/command-line.ts';
import { NO_TERMINAL, openPseudoTerminal, type PseudoTerminal } from '../kit/pseudo-terminal.ts';
import { NO_SCRIPT, openScriptTerminal } from '../kit/script-terminal.ts';

const MONDAY = [
  'The stair opening is 820 wide, I measured it.',
  'I need to oil the hoist beam. I must order more screws.',
  "We've started planking the gallery floor.",
].join(' ');
const THURSDAY = 'The stair opening is 280 wide. The 栈板 shelf is 640 deep. I decided on brass hinges.';

/** Two memos of long ago, by the times of their files. */
function layMemos(folder: string): void {
  for (const [name, text, time] of [
    ['monday.txt', MONDAY, '2026-03-09T18:00:00Z'],
    ['thursday.txt', THURSDAY, '2026-03-12T18:00:00Z'],
  ] as const) {
    const file = join(folder, name);
    writeFileSync(file, text);
    utimesSync(file, new Date(time), new Date(time));
  }
}

let terminal: PseudoTerminal | undefined;
afterEach(() => {
  terminal?.close();
  terminal = undefined;
});

/** A terminal with two memos of long ago lying in the shell's folder; skips the test where there is none. */
async function open({ skip }: TestContext, columns: number, rows: number): Promise<PseudoTerminal> {
  if (NO_TERMINAL) skip(NO_TERMINAL);
  terminal = await openPseudoTerminal(columns, rows);
  layMemos(terminal.folder);
  return terminal;
}

/** What is left of the screen once the command has given the terminal back. */
async function expectGivenBack(shell: PseudoTerminal, modes: string): Promise<void> {
  await shell.untilReady();
  expect([shell.ask('alternate_on'), shell.ask('cursor_flag')]).toEqual(['0', '1']);
  expect(await shell.modes()).toBe(modes);
  expect(await shell.run('verify')).toBe(0);
}

function expectWithin(rows: readonly string[], columns: number): void {
  for (const row of rows) expect(stringWidth(row), row).toBeLessThanOrEqual(columns);
}

test('80x24: from an empty folder to a written journal', { timeout: 120_000 }, async (context) => {
  const shell = await open(context, 80, 24);
  const modes = await shell.modes();
  expect(await shell.run("init --name 'Mill loft'")).toBe(0);
  shell.call('');
  await shell.until('No memos yet. Press r and talk, or t and type the name of a recording');
  expect(shell.ask('alternate_on')).toBe('1');
  // Keys may come faster than the screen draws.
  shell.type('tmonday.txt\r');
  await shell.until('m1 is taken in, nothing clashes');
  shell.type('t');
  await shell.until('file to take in: _');
  shell.type('thursday.txt');
  shell.press('Enter');
  await shell.until('m2 is taken in, 1 to settle: press c');
  expect((await shell.until('1 CLASH')).slice(0, 4)).toEqual([
    'Mill loft  2 memos, 1 to settle, 2 ready to do',
    'Memos',
    expect.stringMatching(/^> m2 {3}Thu 12 Mar 18:00 {2}thursday\.txt {2}text {2}\d+ notes, 1 CLASH$/),
    expect.stringMatching(/^ {2}m1 {3}Mon 9 Mar 18:00 {2}monday\.txt {2}text {2}\d+ notes$/),
  ]);
  shell.press('Enter');
  await shell.until('栈板 shelf depth 640 mm');
  shell.type('c');
  await shell.until('> slip       stair opening width: 820 mm → 280 mm');
  shell.type('1');
  await shell.until('settled: the old figure holds');
  shell.type('u');
  await shell.until('undone: settling');
  shell.type('1');
  await shell.until('Nothing clashes.');
  shell.type('f/sta');
  await shell.until('> stair opening width');
  shell.press('Enter');
  await shell.until('history');
  shell.type('wb2026-04-01\r');
  await shell.until(/due 2026-04-01: .*hoist beam/i);
  shell.type('aSweep the loft\r');
  await shell.until('added: Sweep the loft');
  shell.type('1');
  await shell.until('closed: ');
  shell.type('i');
  await shell.until("- “We've started planking the gallery floor.” (memo 1, 2026-03-09)");
  shell.type('d');
  await shell.until('# Thursday 2026-03-12: Mill loft');
  shell.press('Left');
  await shell.until('# Monday 2026-03-09: Mill loft');
  shell.type('p');
  await shell.until('written: journal-2026-03-09.md');
  shell.type('q');
  await expectGivenBack(shell, modes);
  const journal = join(shell.folder, 'journal-2026-03-09.md');
  expect(existsSync(journal)).toBe(true);
  await shell.run('journal 2026-03-09 > told.md');
  expect(readFileSync(join(shell.folder, 'told.md'), 'utf8')).toBe(readFileSync(journal, 'utf8'));
  // The talk is long ago by now: the screen opens with where one was.
  shell.call('');
  await shell.until('Last talk: Thursday 2026-03-12');
  shell.press('C-c');
  await expectGivenBack(shell, modes);
});

test('40 columns, and a terminal that changes its size', { timeout: 120_000 }, async (context) => {
  const shell = await open(context, 40, 16);
  await shell.run("init --name 'Mill loft'");
  shell.call('');
  await shell.until('No memos yet.');
  shell.type('tmonday.txt\r');
  await shell.until('m1 is taken in');
  shell.type('tthursday.txt\r');
  await shell.until('m2 is taken in');
  const views: readonly (readonly [string, string | RegExp])[] = [
    ['m', '1 CLASH'],
    ['\r', 'What was heard'],
    ['c', '820 mm'],
    ['f', 'stair opening width'],
    ['w', 'ready, '],
    ['d', '1 journal'],
    ['n', 'What is next'],
    ['i', 'Last talk'],
    ['?', 'Keys here'],
  ];
  for (const [key, words] of views) {
    shell.type(key);
    const rows = await shell.until(words);
    expectWithin(rows, 40);
    expect(rows[0]).toMatch(/^Mill loft/);
  }
  shell.type('f');
  await shell.until('stair opening width');
  shell.resize(100, 30);
  await shell.until(/> stair opening width +820 mm \(≈ 32 5\/16 in\)/);
  shell.resize(40, 12);
  const narrow = await shell.until(/> stair opening width {2}IN DOUBT {2}820 mm/);
  expectWithin(narrow, 40);
  expect(narrow.filter((row) => row.startsWith('Figures'))).toHaveLength(1);
  shell.press('C-c');
  await shell.untilReady();
});

test('Ctrl-Z gives the shell back, fg the screen; Ctrl-C ends it, also while something is typed', {
  timeout: 120_000,
}, async (context) => {
  const shell = await open(context, 80, 24);
  const modes = await shell.modes();
  await shell.run("init --name 'Mill loft'");
  await shell.run('take monday.txt');
  shell.call('');
  await shell.until('Last talk: Monday 2026-03-09');
  shell.type('w');
  await shell.until('Tasks');
  shell.press('C-z');
  await shell.until(/Stopped|Suspended/);
  expect([shell.ask('alternate_on'), shell.ask('cursor_flag')]).toEqual(['0', '1']);
  expect(await shell.modes()).toBe(modes);
  // The project is not held while the screen sleeps.
  expect(await shell.run("todo 'Sweep the loft'")).toBe(0);
  shell.type('fg');
  shell.press('Enter');
  const rows = await shell.until('3 ready, 0 waiting');
  expect(rows[0]).toMatch(/^Mill loft/);
  expect(shell.ask('cursor_flag')).toBe('0');
  shell.type('s');
  shell.type('w');
  shell.type('m');
  await shell.until('Memos');
  shell.type('thalf a na');
  await shell.until('file to take in: half a na_');
  shell.press('C-c');
  await expectGivenBack(shell, modes);
});

test('Ctrl-C gives the terminal back from every page', { timeout: 180_000 }, async (context) => {
  const shell = await open(context, 80, 24);
  const modes = await shell.modes();
  await shell.run("init --name 'Mill loft'");
  await shell.run('take monday.txt thursday.txt');
  for (const [keys, title] of [
    ['m', 'Memos'],
    ['m\r', 'What was heard'],
    ['m\rl', 'What each engine heard'],
    ['c', 'What clashes'],
    ['f', 'Figures'],
    ['f\r', 'One figure'],
    ['k', 'Limits and checks'],
    ['w', 'Tasks'],
    ['d', 'The day'],
    ['n', 'What is next'],
    ['i', 'Where was I'],
    ['v', 'At the bench'],
    ['?', 'Keys here'],
  ] as const) {
    shell.call('');
    await shell.until('Last talk: Thursday 2026-03-12');
    // Each by itself: some open what the one before it showed.
    for (const key of keys) {
      shell.type(key);
      await new Promise((resolve) => setTimeout(resolve, 200));
    }
    await shell.until(new RegExp(`^${title}$`, 'm'));
    shell.press('C-c');
    await expectGivenBack(shell, modes);
  }
  expect(await shell.run('verify')).toBe(0);
});

test('a terminal that calls itself dumb is shown an overview', { timeout: 60_000 }, async (context) => {
  const shell = await open(context, 80, 24);
  await shell.run("init --name 'Mill loft'");
  await shell.run('take monday.txt');
  shell.type('clear; TERM=dumb; export TERM');
  shell.press('Enter');
  shell.call('');
  const rows = await shell.until('Oil the hoist beam');
  expect(rows.join('\n')).toContain('Mill loft: 1 memo');
  await shell.untilReady();
  expect(shell.ask('alternate_on')).toBe('0');
});

test.for(['SIGTERM', 'SIGHUP'] as const)(
  '%s from outside gives the terminal back',
  {
    timeout: 120_000,
  },
  async (signal) => {
    const shell = await openPseudoTerminal(80, 24);
    terminal = shell;
    const modes = await shell.modes();
    shell.call("init --name 'Mill loft' >&2; clear");
    await shell.untilReady();
    const pid = await shell.callWithId('');
    await shell.until('No memos yet.');
    process.kill(pid, signal);
    await shell.until(/ready>\n*$/);
    await expectGivenBack(shell, modes);
  },
);

test.for([
  [80, 24],
  [40, 16],
] as const)(
  '%i×%i on a terminal of script(1): from an empty project to a written journal',
  {
    timeout: 120_000,
  },
  async ([columns, rows], { skip }) => {
    if (NO_SCRIPT) skip(NO_SCRIPT);

    const place = openWorkplace();
    layMemos(place.folder);
    place.call(['init', '--name', 'Mill loft']);
    const screen = openScriptTerminal(place.folder, columns, rows);
    try {
      await screen.until('No memos yet.');
      screen.type('tmonday.txt\r');
      await screen.until('m1 is taken in');
      screen.type('tthursday.txt\r');
      await screen.until('m2 is taken in');
      screen.type('c');
      await screen.until('What clashes');
      screen.type('1');
      await screen.until('settled: the old figure holds');
      screen.type('d');
      await screen.until('# Thursday 2026-03-12: Mill loft');
      screen.type('\u001b[D');
      await screen.until('# Monday 2026-03-09: Mill loft');
      screen.type('p');
      await screen.until('written: journal-2026-03-09.md');
      screen.type('q');
      expect(await screen.ended).toBe(0);
      // The last orders leave the second screen and show the cursor.
      const lastOf = (order: string) => screen.raw().lastIndexOf(`\u001b[?${order}`);
      expect(lastOf('1049l')).toBeGreaterThan(lastOf('1049h'));
      expect(lastOf('25h')).toBeGreaterThan(lastOf('25l'));
      const told = place.call(['journal', '2026-03-09']).out;
      expect(readFileSync(join(place.folder, 'journal-2026-03-09.md'), 'utf8')).toBe(told);
      expect(readdirSync(place.folder).filter((name) => name.endsWith('.md'))).toHaveLength(3);
      expect(place.call(['verify']).code).toBe(0);
    } finally {
      screen.close();
      place.remove();
    }
  },
);
