/**
 * Measures how soon the screen stands and how soon it answers a key, on a made-up build of ten years.
 * The work is done in the thread that the built command uses: npm run build first.
 * Usage: npm run bench:screen -- [--processor] [--keep FOLDER] [SIZE...]   sizes are multiples of ten years; without: 0.1 1
 * With --processor the time is that of the processor: on a busy machine the clock tells how busy it is. With --keep the
 * builds are made in that folder once, and found there again.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { render } from 'ink';
import { createElement } from 'react';
import { startScreenThread } from '../src/cli/screen-thread.ts';
import { App, type ScreenWork } from '../src/tui/app.tsx';
import { FakeInput, FakeOutput, KEY_BYTES } from '../tests/kit/fake-terminal.ts';
import { makeBuild } from './bench/made-builds.ts';
import { atMost, type Promised, tellPromises } from './bench/promises.ts';

/** Promised of a project of ten years, in milliseconds. */
const LIMITS = { paint: 400, key: 50 } as const;
const COLUMNS = 80;
const ROWS = 24;
/** So long after the last frame nothing more is drawn because of a key. */
const QUIET_MS = 150;
/** What a key asks for has come by then. */
const LONGEST_MS = 30_000;
const ROUNDS = 3;

/** What is pressed, in order: each key finds the screen as the one before left it. */
const KEYS: readonly (readonly [what: string, bytes: string])[] = [
  ['the memos: one down', KEY_BYTES.down],
  ['  a page down', KEY_BYTES.pageDown],
  ['  open a memo', KEY_BYTES.enter],
  ['  the next note', KEY_BYTES.down],
  ['the clashes', 'c'],
  ['  one down', KEY_BYTES.down],
  ['the figures', 'f'],
  ['  one down', KEY_BYTES.down],
  ['  a page down', KEY_BYTES.pageDown],
  ['  find', '/'],
  ['  a letter', 'g'],
  ['  another letter', 'a'],
  ['  a third letter', 'l'],
  ['  open a figure', KEY_BYTES.enter],
  ['  scroll it', KEY_BYTES.down],
  ['  back to the list', KEY_BYTES.escape],
  ['  all figures again', KEY_BYTES.escape],
  ['the tasks', 'w'],
  ['  one down', KEY_BYTES.down],
  ['  close a task', '1'],
  ['  undo it', 'u'],
  ['the day', 'd'],
  ['  scroll it', KEY_BYTES.down],
  ['  the day before', KEY_BYTES.left],
  ['what is next', 'n'],
  ['where was I', 'i'],
  ['the keys', '?'],
];

const words = process.argv.slice(2);
const byProcessor = words.includes('--processor');
const keep = words.includes('--keep') ? words[words.indexOf('--keep') + 1] : undefined;

function milliseconds(): number {
  if (!byProcessor) return performance.now();
  const { user, system } = process.cpuUsage();
  return (user + system) / 1e3;
}

const pause = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

/** A terminal that notes when it was first and last written to. */
class WatchedOutput extends FakeOutput {
  first: number | undefined;
  last: number | undefined;
  override write(text: string): boolean {
    // Frames alone: what asks the terminal to change a mode draws nothing.
    if (text.length > COLUMNS) {
      this.first ??= milliseconds();
      this.last = milliseconds();
    }
    return super.write(text);
  }
}

/** Of one key: until the screen answers, and until all that it asks for stands there. */
interface Answered {
  readonly paint: number;
  readonly whole: number;
}

interface Measured {
  readonly opened: number;
  readonly keys: readonly Answered[];
}

const WORKER = { file: resolve('dist', 'screen-worker.js'), execArgv: [] };

async function measure(folder: string): Promise<Measured> {
  const started = milliseconds();
  const thread = startScreenThread(folder, WORKER);
  let waiting = 0;
  // Every reading is answered by an event: the screen is still once none is missing.
  const work: ScreenWork = {
    perform(effect) {
      waiting++;
      thread.work.perform(effect);
    },
    listen: (onEvent) =>
      thread.work.listen((event) => {
        if (event.kind === 'performed') waiting--;
        onEvent(event);
      }),
  };
  const opening = await thread.opening;
  const stdout = new WatchedOutput(COLUMNS, ROWS);
  const stdin = new FakeInput();
  const app = render(createElement(App, { opening, work }), {
    stdout: stdout as unknown as NodeJS.WriteStream,
    stdin: stdin as unknown as NodeJS.ReadStream,
    exitOnCtrlC: false,
    patchConsole: false,
  });
  const opened = (stdout.first ?? Number.NaN) - started;
  const still = async () => {
    const end = performance.now() + LONGEST_MS;
    do await pause(QUIET_MS);
    while (waiting > 0 && performance.now() < end);
  };
  await still();
  const keys: Answered[] = [];
  for (const [, bytes] of KEYS) {
    stdout.first = undefined;
    const pressed = milliseconds();
    stdin.type(bytes);
    await still();
    keys.push({
      paint: (stdout.first ?? Number.NaN) - pressed,
      whole: (stdout.last ?? Number.NaN) - pressed,
    });
  }
  app.unmount();
  await thread.close();
  return { opened, keys };
}

const middle = (times: readonly number[]) =>
  [...times].sort((a, b) => a - b)[Math.floor(times.length / 2)] ?? Number.NaN;

function line(what: string, took: number, limit: number, size: number, whole?: number): void {
  const missed = size === 1 && took > limit ? '  missed' : '';
  const shown = Number.isNaN(took) ? 'nothing drawn' : `${took.toFixed(1).padStart(8)} ms`;
  const all = whole !== undefined && whole > took + 1 ? `  all of it after ${whole.toFixed(0)} ms` : '';
  console.log(`  ${what.padEnd(34)} ${shown}   limit ${limit} ms${missed}${all}`);
}

/** Prints every key; gives back what is promised of ten years: the first paint, and the slowest of the keys. */
async function report(size: number): Promise<readonly Promised[]> {
  const folder = keep === undefined ? mkdtempSync(join(tmpdir(), 'bench-screen-')) : join(keep, String(size));
  try {
    makeBuild(folder, size);
    // The first time every part is read from the disk and worked out by V8 for the first time.
    const first = await measure(folder);
    const rounds: Measured[] = [];
    for (let round = 0; round < ROUNDS; round++) rounds.push(await measure(folder));
    console.log(`${size} x ten years, ${COLUMNS}x${ROWS}: key to paint, the middle of ${ROUNDS} rounds`);
    const opened = middle(rounds.map((round) => round.opened));
    line('first paint, cold', first.opened, LIMITS.paint, size);
    line('first paint', opened, LIMITS.paint, size);
    let slowest = { what: '', took: 0 };
    for (const [index, [what]] of KEYS.entries()) {
      const of = (one: keyof Answered) => middle(rounds.map(({ keys }) => keys[index]?.[one] ?? Number.NaN));
      const took = of('paint');
      line(what, took, LIMITS.key, size, of('whole'));
      if (took > slowest.took) slowest = { what: what.trim(), took };
    }
    if (size !== 1) return [];
    const cold = `${first.opened.toFixed(0)} ms the first time`;
    const which = `the slowest of ${KEYS.length}: ${slowest.what}`;
    return [
      atMost('first paint, ten years', opened, LIMITS.paint, 'ms', cold),
      atMost('key to paint, ten years', slowest.took, LIMITS.key, 'ms', which),
    ];
  } finally {
    if (keep === undefined) rmSync(folder, { recursive: true, force: true });
  }
}

const sizes = words
  .filter((word, index) => !word.startsWith('--') && words[index - 1] !== '--keep')
  .map(Number);
const rows: Promised[] = [];
for (const size of sizes.length > 0 ? sizes : [0.1, 1]) rows.push(...(await report(size)));
console.log('');
tellPromises(rows);
// The thread would keep the process.
process.exit();
