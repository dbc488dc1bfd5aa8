/**
 * Measures how long the built command takes to start, beside Node itself: `--help`, and `next` on ten years of talk.
 * Usage: npm run build && npm run bench:start -- [--processor] [--keep FOLDER]
 * The calls take turns, so that other work on the machine falls on all of them; the quickest of each counts. With
 * --processor the time is that of the processor, all threads added up (Linux): on a busy machine the clock tells how
 * busy it is. With --keep the build is made in that folder once, and found there again.
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { makeBuild } from './bench/made-builds.ts';
import { type Promised, tellPromises } from './bench/promises.ts';

const { values } = parseArgs({
  options: { processor: { type: 'boolean', default: false }, keep: { type: 'string' } },
});
const ROUNDS = 15;
const CLI = join(import.meta.dirname, '../dist/cli.js');

/** Milliseconds of the processor that all children so far have taken. */
function spentByChildren(): number {
  // Fields 16 and 17, counted after the name in brackets; a hundred ticks to the second.
  const fields = readFileSync('/proc/self/stat', 'utf8')
    .replace(/^.*\) /, '')
    .split(' ');
  return (Number(fields[13]) + Number(fields[14])) * 10;
}

function costOf(args: readonly string[]): number {
  const before = values.processor ? spentByChildren() : performance.now();
  const { status } = spawnSync(process.execPath, args, { stdio: 'ignore' });
  if (status !== 0) throw new Error(`${args.join(' ')} ended with ${status}`);
  return (values.processor ? spentByChildren() : performance.now()) - before;
}

const folder = values.keep ?? mkdtempSync(join(tmpdir(), 'bench-start-'));
try {
  const project = join(folder, '1');
  makeBuild(project, 1);
  const calls = [
    ['-e', '0'],
    [CLI, '--help'],
    [CLI, '--project', project, 'next'],
  ];
  // The first of each reads its files from the disk.
  for (const call of calls) costOf(call);
  const costs = calls.map((): number[] => []);
  for (let round = 0; round < ROUNDS; round++) {
    for (const [place, call] of calls.entries()) costs[place]?.push(costOf(call));
  }
  // Of the clock the quickest, which other work held up least; ticks of the processor are coarse, so their mean.
  const value = (times: readonly number[] = []) =>
    values.processor ? times.reduce((sum, ms) => sum + ms, 0) / times.length : Math.min(...times);
  const [node = 0, help = 0, next = 0] = costs.map(value);
  const beside = (what: string, took: number, limit: number): Promised => ({
    what,
    limit: `<= ${limit} x node -e 0`,
    measured: `${(took / node).toFixed(2)} x (${took.toFixed(0)} ms, node ${node.toFixed(0)} ms)`,
    kept: took / node <= limit,
  });
  tellPromises([beside('start-up of --help', help, 2.5), beside('start-up of next, ten years', next, 4)]);
} finally {
  if (values.keep === undefined) rmSync(folder, { recursive: true, force: true });
}
