import { afterEach, expect, test } from 'vitest';
import { Problem } from '../../src/problem.ts';
import type { ListenEvent, ListenOptions, ProjectApi } from '../../src/project-api.ts';
import { KEY_BYTES, openTerminal } from '../kit/fake-terminal.ts';
import { screenOn } from '../kit/screen-on.tsx';
import { FINDING, MEMO, MEMOS, NEXT } from '../kit/views.ts';

/** A project whose microphone says what the test makes it say. */
function atTheBench(refused?: Problem) {
  let say: ListenOptions['onEvent'] = () => {};
  let end = () => {};
  const told: string[] = [];
  const project = {
    info: { name: 'Mill loft', units: 'metric', tolerances: {} },
    memos: () => MEMOS,
    latestMemos: () => MEMOS,
    memoCount: () => MEMOS.length,
    findings: () => [FINDING],
    next: () => NEXT,
    figureList: () => [],
    limits: () => [],
    checks: () => [],
    days: () => ['2026-03-12'],
    async listen({ onEvent }: ListenOptions) {
      if (refused) return { ok: false, problem: refused };
      say = onEvent;
      const finished = new Promise<void>((done) => {
        end = done;
      });
      return {
        ok: true,
        value: {
          stop: () => told.push('stop'),
          readBack: (isOn: boolean) => told.push(`aloud ${isOn}`),
          finished,
        },
      };
    },
  } as unknown as ProjectApi;
  return { project, told, say: (event: ListenEvent) => say(event), end: () => end() };
}

let terminal: ReturnType<typeof openTerminal> | undefined;
afterEach(() => terminal?.close());
function open(project: ProjectApi, columns = 80, rows = 24) {
  terminal = openTerminal(screenOn(project, '2026-03-12T08:00:00+01:00'), columns, rows);
  return terminal;
}

const LEVEL: ListenEvent = {
  kind: 'level',
  seconds: 42,
  heardSeconds: 42,
  level: { rms: -30, peak: -18 },
};
const HEARD = {
  kind: 'heard',
  words: 'The hoist beam is \u001b[2J2150 long.',
  figures: MEMO.notes.figures,
  notes: [],
  takenBack: [],
  clashes: [FINDING],
  soFar: MEMO.notes.figures,
  notesSoFar: [],
  open: [FINDING],
} satisfies ListenEvent;

test('the figure just heard stands large, in both systems, with what clashes', async () => {
  const bench = atTheBench();
  const screen = open(bench.project);
  await screen.press('r');
  bench.say({ kind: 'started', microphone: 'bench' });
  bench.say(LEVEL);
  await screen.settle();
  expect(screen.frame().split('\n').slice(0, 4)).toEqual([
    'Mill loft  2 memos, 1 to settle, 1 ready to do',
    'RECORDING 00:42 ██████████████░░░░░░ -18 dB',
    'At the bench',
    'No figure yet.',
  ]);
  expect(screen.frame()).toContain('r stop');
  bench.say(HEARD);
  await screen.settle();
  const lines = screen.frame().split('\n');
  expect(lines.slice(3, 10)).toEqual([
    'hoist beam length',
    '██████    ██    ██████  ██████',
    '    ██  ████    ██      ██  ██',
    '██████    ██    ██████  ██  ██',
    '██        ██        ██  ██  ██',
    '██████  ██████  ██████  ██████  mm',
    '≈ 84 5/8 in',
  ]);
  expect(lines[10]).toBe('CLASH  hoist beam length: a slip is likely   [just said]');
  expect(screen.frame()).toContain('heard: The hoist beam is 2150 long.');
});

test('a task stands under the figure, and what the next breath takes back is gone and said so', async () => {
  const bench = atTheBench();
  const screen = open(bench.project, 80, 30);
  await screen.press('r');
  bench.say({ kind: 'started', microphone: 'bench' });
  const quiet = { ...HEARD, clashes: [], open: [] };
  bench.say({ ...quiet, notes: MEMO.notes.tasks, notesSoFar: MEMO.notes.tasks });
  await screen.settle();
  expect(screen.frame()).toContain('\nto do     Oil the hoist beam, by 2026-03-13\n');
  const words = 'I need to \u001b[2Joil it by Friday.';
  bench.say({ ...quiet, words: 'No, scratch that.', takenBack: [words], takenBackNow: words });
  await screen.settle();
  expect(screen.frame()).not.toContain('Oil the hoist beam');
  expect(screen.frame()).toContain('taken back: "I need to oil it by Friday."');
  expect(screen.frame()).toContain('hoist beam length');
  // The talk goes on.
  bench.say(quiet);
  await screen.settle();
  expect(screen.frame()).not.toContain('taken back');
  bench.say({ ...quiet, soFar: [], takenBack: ['The hoist beam is 2150 long.'], takenBackNow: 'The hoist' });
  await screen.settle();
  expect(screen.frame()).toContain('No figure stands.');
});

test('r stops; when all is taken in the screen says so and the bench stays', async () => {
  const bench = atTheBench();
  const screen = open(bench.project);
  await screen.press('r');
  bench.say({ kind: 'started', microphone: 'bench' });
  bench.say(HEARD);
  await screen.press('r');
  expect(bench.told).toEqual(['stop']);
  bench.say({ kind: 'stopped', seconds: 43 });
  await screen.settle();
  expect(screen.frame()).toContain('stopped at 00:43, hearing the last words');
  bench.say({ kind: 'taken', taken: { memoId: 'm3', already: false, memo: MEMO, findings: [FINDING] } });
  bench.end();
  await screen.settle();
  expect(screen.frame()).not.toContain('stopped at');
  expect(screen.frame()).toContain('m3 is taken in, 1 to settle: press c');
  expect(screen.frame()).toContain('r rec');
});

test('without a microphone: what was tried, and what to do', async () => {
  const problem = new Problem('cannot record: no microphone answers (arecord: not installed)', {
    code: 'microphone-missing',
    exitCode: 3,
    kept: 'nothing was recorded',
    next: 'plug one in',
  });
  const screen = open(atTheBench(problem).project);
  await screen.press('r');
  expect(screen.frame()).toContain('cannot record: no microphone answers (arecord: not installed)');
  expect(screen.frame()).toContain('next  plug one in');
  expect(screen.frame()).toContain('> m2');
});

test('q while recording stops it first and leaves when all is taken in', async () => {
  const bench = atTheBench();
  const screen = open(bench.project);
  await screen.press('r');
  bench.say({ kind: 'started', microphone: 'bench' });
  await screen.press('q');
  expect(bench.told).toEqual(['stop']);
  let isGone = false;
  void screen.gone.then(() => {
    isGone = true;
  });
  await screen.settle();
  expect(isGone).toBe(false);
  bench.end();
  await screen.gone;
});

test.each([
  [40, 12],
  [80, 24],
])('%ix%i: no line is wider and no screen higher than the terminal', async (columns, rows) => {
  const bench = atTheBench();
  const screen = open(bench.project, columns, rows);
  await screen.press('r');
  bench.say({ kind: 'started', microphone: 'bench' });
  bench.say(LEVEL);
  bench.say(HEARD);
  bench.say({ ...HEARD, clashes: [] });
  await screen.settle();
  const lines = screen.frame().split('\n');
  expect(lines.length).toBeLessThan(rows);
  for (const line of lines) expect(line.length).toBeLessThanOrEqual(columns);
  expect(screen.frame()).toContain('hoist beam length');
  await screen.press('?', KEY_BYTES.escape);
  expect(screen.frame()).toContain('At the bench');
});
