import { afterEach, expect, test } from 'vitest';
import type { ProjectApi } from '../../src/project-api.ts';
import { App } from '../../src/tui/app.tsx';
import { KEY_BYTES, openTerminal } from '../kit/fake-terminal.ts';
import { FINDING, MEMO, MEMOS, NEXT } from '../kit/views.ts';

const NOW = '2026-03-12T08:00:00+01:00';

/** A project that answers from fixed views and remembers what it was told. */
function standIn(overrides: Partial<ProjectApi> = {}) {
  const told: string[] = [];
  let settled = false;
  const project = {
    info: { name: 'Mill loft', units: 'metric', tolerances: {} },
    memos: () => MEMOS,
    memo: (id: string) => (id === 'm1' ? MEMO : undefined),
    findings: () => (settled ? [] : [FINDING]),
    next: () => NEXT,
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
function open(columns: number, rows: number, project = standIn().project) {
  terminal = openTerminal(<App project={project} now={() => NOW} />, columns, rows);
  return terminal;
}

test('80x24: the memos, newest first, what clashes in words, and the keys', async () => {
  const screen = open(80, 24);
  await screen.settle();
  const lines = screen.frame().split('\n');
  expect(lines[0]).toBe('Mill loft  2 memos, 1 to settle, 1 ready to do');
  expect(lines[2]).toBe('> m2   Wed 11 Mar 17:30  hoist-beam-again.m4a  01:01  3 notes, 1 CLASH');
  expect(lines[3]).toBe('  m1   Mon 9 Mar 17:30  hoist-beam.m4a  01:01  3 notes');
  expect(lines.at(-1)).toBe(
    'Enter open   t take a file in   m memos   c clashes   n next   q leave   ? keys',
  );
});

test.each([
  [80, 24],
  [40, 12],
])('%ix%i: no line is wider and no screen higher than the terminal, in any view', async (columns, rows) => {
  const screen = open(columns, rows);
  for (const keys of [[], [KEY_BYTES.down, KEY_BYTES.enter], ['c'], ['n'], ['?'], ['t']]) {
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
  expect(screen.frame()).toContain('hearing loft.m4a  62 %, about 9 s left  and the bench top');
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
