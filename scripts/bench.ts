/**
 * Measures every promise of speed and size, prints them in one table, and writes docs/performance.md.
 * Usage: npm run build && npm run bench -- [--processor] [--only PART,...] [--date YYYY-MM-DD] [--note TEXT]
 *   [--keep FOLDER] [--dry]
 * Each part is a bench of its own (npm run bench:PART) and runs by itself, one after the other. With --processor times are
 * those of the processor wherever a part can tell them. --note says on the page what else the machine was doing; --dry
 * writes no page. With --keep made builds and results stay in that folder, and what was measured there is not measured
 * again: a run that was cut off goes on. What a part needs and does not find here (voices, ffmpeg) leaves its rows out, and the page says so.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { cpus, loadavg, release, tmpdir, totalmem, type } from 'node:os';
import { join, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { VERSION } from '../src/version.ts';
import { type Promised, promiseLines } from './bench/promises.ts';

interface Part {
  readonly name: string;
  readonly about: string;
  readonly args: readonly string[];
}

/** A part that ran. */
interface Measured extends Part {
  /** Absent where the part did not run to its end. */
  readonly rows?: readonly Promised[];
  /** Absent where it was measured in a run before. */
  readonly load?: number;
}

const { values } = parseArgs({
  options: {
    processor: { type: 'boolean', default: false },
    only: { type: 'string' },
    date: { type: 'string' },
    note: { type: 'string' },
    keep: { type: 'string' },
    dry: { type: 'boolean', default: false },
  },
});
const root = join(import.meta.dirname, '..');
const work = values.keep ? resolve(values.keep) : mkdtempSync(join(tmpdir(), 'bench-'));
mkdirSync(work, { recursive: true });

const PARTS: readonly Part[] = [
  { name: 'start', about: 'Start-up of the built command', args: ['--keep', work] },
  { name: 'language', about: 'Reading talk, one core, processor time', args: [] },
  { name: 'speech', about: 'Hearing sound', args: ['--speed'] },
  { name: 'model', about: 'The model and its store', args: ['0.1', '1'] },
  { name: 'pages', about: 'Pages', args: ['1'] },
  { name: 'screen', about: 'The screen', args: ['--keep', work, '1'] },
  { name: 'live', about: 'Live at the bench', args: ['--keep', work, '1'] },
];

function measure(part: Part): Measured {
  const rowsFile = join(work, `${part.name}.json`);
  const readRows = () => JSON.parse(readFileSync(rowsFile, 'utf8')) as Promised[];
  if (existsSync(rowsFile)) return { ...part, rows: readRows() };
  const args = ['run', '--silent', `bench:${part.name}`, '--', ...part.args];
  if (values.processor) args.push('--processor');
  console.log(`\n== ${part.about}: npm ${args.join(' ')}`);
  const [before = 0] = loadavg();
  const env = { ...process.env, HEARWRIGHT_BENCH_ROWS: rowsFile };
  // By way of Node: on Windows npm is a script that only a shell can start.
  const npm = process.env.npm_execpath;
  const [program, words] = npm ? [process.execPath, [npm, ...args]] : ['npm', args];
  spawnSync(program, words, { cwd: root, env, stdio: 'inherit' });
  const [after = 0] = loadavg();
  const load = Math.max(before, after);
  if (!existsSync(rowsFile)) return { ...part, load };
  return { ...part, rows: readRows(), load };
}

/** Text in a cell of a Markdown table. */
const cell = (text: string) => text.replaceAll('|', '\\|').replaceAll('<', '&lt;').replaceAll('>', '&gt;');

/** Where and when a part was measured. */
function circumstances(load: number | undefined): string {
  const date = values.date ?? new Date().toISOString().slice(0, 10);
  const [cpu] = cpus();
  const machine = `${cpus().length} cores (${cpu?.model.trim() ?? 'of unknown make'}), ${Math.round(totalmem() / 1e9)} GB, ${type()} ${release()}`;
  const how = values.processor ? 'times of the processor, all threads added up' : 'times by the clock';
  const note = values.note ? ` ${values.note}` : '';
  return `${date}, Hearwright ${VERSION}, Node ${process.versions.node}, ${machine}; ${how}${load === undefined ? '' : `; load meanwhile ${load.toFixed(1)}`}.${note}`;
}

function sectionOf({ about, name, rows, load }: Measured): string {
  const head = `## ${about}\n\n\`npm run bench:${name}\`, ${circumstances(load)}\n\n`;
  if (!rows || rows.length === 0)
    return `${head}Not measured: what it needs is not here, or it did not run to its end.\n`;
  const verdict = (kept: boolean | undefined) => (kept === undefined ? '' : kept ? 'kept' : '**missed**');
  const lines = rows.map(({ what, limit, measured, kept }) => [
    ...[what, limit ?? 'no promise', measured].map(cell),
    verdict(kept),
  ]);
  return `${head}${tableOf([['promise', 'limit', 'measured', ''], ...lines])}`;
}

/** A Markdown table with its columns lined up, as the format check wants it; the first row is its head. */
function tableOf(rows: readonly (readonly string[])[]): string {
  const wide = (column: number) => Math.max(3, ...rows.map((row) => row[column]?.length ?? 0));
  const lineOf = (row: readonly string[]) =>
    `| ${row.map((text, column) => text.padEnd(wide(column))).join(' | ')} |\n`;
  const [head = [], ...body] = rows;
  return [head, head.map((_, column) => '-'.repeat(wide(column))), ...body].map(lineOf).join('');
}

const PAGE = join(root, 'docs/performance.md');
const INTRODUCTION = `# Performance

Every promise of speed and size, with its limit and what was measured. Written by \`npm run bench\`; do not edit by hand. A
part that was not run again stands as it was. "Ten years" is the made-up build of \`tests/kit/ten-year-build.ts\`: 4,000
memos, 60,000 claims, 5,000 items.

On a machine with other work the clock tells how busy it is. Then the processor's time is told (\`--processor\`): it grows
only a little with other work, and counts the helping threads that run beside the main one on a quiet machine.
`;

/** The page with new sections for what was measured; those of other parts stay as they are. */
function pageOf(all: readonly Measured[]): string {
  const before = existsSync(PAGE)
    ? readFileSync(PAGE, 'utf8')
        .split(/^(?=## )/m)
        .slice(1)
    : [];
  const sections = PARTS.map((part) => {
    const measured = all.find(({ name }) => name === part.name);
    if (measured) return sectionOf(measured);
    return before
      .find((section) => section.startsWith(`## ${part.about}\n`))
      ?.trimEnd()
      .concat('\n');
  });
  return [INTRODUCTION, ...sections.filter((section) => section !== undefined)].join('\n');
}

try {
  const only = values.only?.split(',');
  const all = PARTS.filter(({ name }) => only === undefined || only.includes(name)).map(measure);
  console.log('\n== All promises');
  console.log(promiseLines(all.flatMap(({ rows }) => rows ?? [])));
  const absent = all.filter(({ rows }) => rows === undefined).map(({ name }) => name);
  if (absent.length > 0) console.log(`not measured: ${absent.join(', ')}`);
  if (!values.dry) writeFileSync(PAGE, pageOf(all));
  const missed = all.some(({ rows }) => rows === undefined || rows.some(({ kept }) => kept === false));
  process.exitCode = missed ? 1 : 0;
} finally {
  if (!values.keep) rmSync(work, { recursive: true, force: true });
}
