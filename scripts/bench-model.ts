/**
 * Measures the model and its store on a made-up build of ten years, at several sizes, and how each cost grows.
 * Usage: npm run bench:model -- [--processor] [SIZE...]      sizes are multiples of ten years; without any: 0.1 1
 * With --processor the time is that of the processor: on a busy machine the clock tells how busy it is.
 */
import { mkdtempSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { whatIsKnown } from '../src/known.ts';
import { readMemo } from '../src/language/pipeline.ts';
import { answerOf, tellingWords } from '../src/model/answer.ts';
import { nextView } from '../src/model/day-views.ts';
import type { NewEvent } from '../src/model/events.ts';
import { whereView } from '../src/model/where-view.ts';
import { createStore, openStore, type ProjectStore } from '../src/store/store.ts';
import { type BuildMemo, tenYearBuild } from '../tests/kit/ten-year-build.ts';
import { atMost, type Promised, tellPromises } from './bench/promises.ts';

/** What is promised of a project of ten years, in the unit that is shown. */
interface Line {
  readonly what: string;
  readonly unit: 'ms' | 's' | 'MB';
  readonly limit?: number;
}

const LINES = {
  reconcile: { what: 'one more memo, written and worked in', unit: 'ms', limit: 30 },
  worst: { what: '  the slowest of the last fifty', unit: 'ms' },
  first: { what: '  the first one after opening', unit: 'ms' },
  workedOut: { what: 'a memo with a size that is worked out', unit: 'ms', limit: 30 },
  open: { what: 'open the project', unit: 'ms', limit: 150 },
  read: { what: 'read one memo of 180 words', unit: 'ms' },
  ask: { what: 'ask', unit: 'ms', limit: 50 },
  next: { what: 'next steps', unit: 'ms' },
  where: { what: 'where was I', unit: 'ms' },
  accept: { what: 'agree with a note', unit: 'ms' },
  amendLast: { what: 'amend a note of the last memo', unit: 'ms' },
  undoLast: { what: '  and undo it', unit: 'ms' },
  amendRecent: { what: 'amend a note of 30 memos ago', unit: 'ms' },
  amendMiddle: { what: 'amend a note of half-way back', unit: 's' },
  amendFirst: { what: 'amend a note of the first memo', unit: 's' },
  join: { what: 'join a new name to a known one', unit: 'ms' },
  joinKnown: { what: 'join two known names', unit: 's' },
  setFigure: { what: 'set a figure by hand', unit: 'ms' },
  rebuild: { what: 'rebuild everything', unit: 's', limit: 20 },
  database: { what: 'database', unit: 'MB', limit: 300 },
} as const satisfies Readonly<Record<string, Line>>;
type Key = keyof typeof LINES;

interface Measured {
  readonly size: number;
  readonly rows: Readonly<Record<string, number>>;
  readonly costs: Readonly<Record<Key, number>>;
}

/** So many of the last memos are timed. */
const LAST = 50;
const QUESTION = 'how wide is the galley bench top';
const AT = '2027-06-01T08:00:00Z';

function measure(size: number): Measured {
  const folder = mkdtempSync(join(tmpdir(), 'bench-model-'));
  const file = join(folder, 'project.db');
  try {
    const { times, text, last } = build(file, size);
    const open = median(repeat(5, () => timed(() => openStore(file).close())));
    const opened = openStore(file);
    const first = timed(() => opened.append(last));
    const ask = () => answerOf(opened.rows, QUESTION, opened.search(tellingWords(QUESTION)));
    const costs: Record<Key, number> = {
      reconcile: median(times),
      worst: Math.max(...times),
      first,
      workedOut: median(repeat(5, workedOut(opened))),
      open,
      read: median(repeat(5, () => timed(() => readText(opened, text)))),
      ask: median(repeat(5, () => timed(ask))),
      next: median(repeat(5, () => timed(() => nextView(opened.rows, AT)))),
      where: median(repeat(5, () => timed(() => whereView(opened.rows, AT)))),
      ...corrections(opened),
      rebuild: timed(() => opened.rebuild()) / 1000,
      database: statSync(file).size / 1e6,
    };
    const rows = Object.fromEntries(
      (['memos', 'items', 'claims', 'formulas', 'tasks', 'findings'] as const).map((table) => [
        table,
        opened.rows.all(table).length,
      ]),
    );
    opened.close();
    return { size, rows, costs };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** So many memos are written at once until the last ones, which are timed one by one. */
const AT_ONCE = 100;

/** Takes every memo in but the last, and gives back the times of those before it. */
function build(file: string, size: number) {
  const store = createStore(file, { name: 'ten years', units: 'metric', at: '2017-01-01T08:00:00Z' });
  const left: BuildMemo[] = [];
  for (const memo of tenYearBuild(size)) {
    left.push(memo);
    if (left.length < LAST + 1 + AT_ONCE) continue;
    const batch = left.splice(0, AT_ONCE).flatMap(({ events }) => events);
    if (batch.length > 0) store.append(batch);
  }
  store.append(left.splice(0, Math.max(0, left.length - LAST - 1)).flatMap(({ events }) => events));
  const last = left.pop()?.events ?? [];
  const times = left.map(({ events }) => {
    store.append(events.slice(0, 2));
    return timed(() => store.append(events.slice(2)));
  });
  store.append(last.slice(0, 2));
  store.close();
  const said = last.find((event) => event.kind === 'transcript-made');
  return { times, text: said?.transcript.text ?? '', last: last.slice(2) };
}

/** What a person puts right, and how far back. */
function corrections(store: ProjectStore) {
  const memos = store.memoCount();
  const put = (event: NewEvent) => timed(() => store.append([event]));
  const amend = (memo: number) =>
    put({ kind: 'note-amended', at: AT, noteId: `m${memo}.f2`, fields: { value: 411 } });
  const undo = () => put({ kind: 'undone', at: AT, undoes: store.lastSeq() });
  const [item] = store.rows.where('claims', 'memoId', `m${memos}`);
  const from = store.rows.item(item?.itemId ?? '')?.name ?? 'bench';
  const into = store.rows.item('i2')?.name ?? 'bench';
  return {
    accept: put({ kind: 'note-accepted', at: AT, noteId: `m${memos}.f3` }),
    amendLast: amend(memos),
    undoLast: undo(),
    amendRecent: amend(memos - 30),
    amendMiddle: amend(Math.round(memos / 2)) / 1000,
    amendFirst: amend(1) / 1000,
    join: put({ kind: 'items-merged', at: AT, from: `big ${from}`, into: from }),
    joinKnown: put({ kind: 'items-merged', at: AT, from, into }) / 1000,
    setFigure: put({
      kind: 'figure-set',
      at: AT,
      item: into,
      attribute: 'width',
      quantity: { value: 300, unit: 'mm' },
    }),
  };
}

/** Formulas are looked for among all that is named: of a big build that is much. Nothing of it is kept. */
const WORKED_OUT = 'The bench top is 900 millimetres high, so cut the legs at 860.';
function workedOut(store: ProjectStore): () => number {
  const memoId = `m${store.memoCount() + 1}`;
  const source = { name: 'sum.txt', kind: 'text', sha256: memoId, bytes: WORKED_OUT.length } as const;
  const kept = { memoId, source, file: source.name, recordedAt: AT, recordedAtFrom: 'given' } as const;
  const { notes } = readText(store, WORKED_OUT);
  const events: readonly NewEvent[] = [
    { kind: 'recording-kept', at: AT, ...kept },
    { kind: 'transcript-made', at: AT, memoId, transcript: { text: WORKED_OUT } },
    { kind: 'notes-read', at: AT, memoId, notes, reader: 'bench' },
  ];
  return () => timed(() => store.lookAhead(events, () => undefined));
}

function readText(store: ProjectStore, text: string) {
  return readMemo(text, { units: 'metric', recordedAt: AT, ...whatIsKnown(store.rows, text) });
}

const words = process.argv.slice(2);
const byProcessor = words.includes('--processor');

/** Milliseconds by the clock, or of the processor. */
function instant(): number {
  if (!byProcessor) return performance.now();
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

function timed(work: () => unknown): number {
  const started = instant();
  work();
  const took = instant() - started;
  // A large build takes long: what takes seconds is told as it comes.
  if (took > 5000) console.error(`... ${(took / 1000).toFixed(1)} s`);
  return took;
}

function repeat<T>(times: number, work: () => T): readonly T[] {
  return Array.from({ length: times }, work);
}

function median(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;
}

/** One line for each cost: its limit, which holds for ten years, what was measured, and the growth from size to size. */
function print(all: readonly Measured[]): void {
  for (const { size, rows } of all) {
    const counts = Object.entries(rows).map(([table, count]) => `${count.toLocaleString('en')} ${table}`);
    console.log(`${size} x ten years: ${counts.join(', ')}`);
  }
  console.log(
    `\n${''.padEnd(38)}${'limit'.padStart(8)}${all.map(({ size }) => `x ${size}`.padStart(18)).join('')}`,
  );
  for (const [key, line] of Object.entries(LINES) as [Key, Line][]) {
    const values = all.map(({ costs }) => costs[key]);
    const shown = values.map((value, index) => {
      const before = values[index - 1];
      const grown = before === undefined ? '' : ` (${(value / before).toFixed(1)} x)`;
      return `${value.toFixed(value < 100 ? 1 : 0)} ${line.unit}${grown}`.padStart(18);
    });
    const limit = line.limit === undefined ? '' : `${line.limit} ${line.unit}`;
    const ofTen = all.find(({ size }) => size === 1)?.costs[key];
    const missed = line.limit !== undefined && ofTen !== undefined && ofTen > line.limit ? '  missed' : '';
    console.log(`${line.what.padEnd(38)}${limit.padStart(8)}${shown.join('')}${missed}`);
  }
}

/** Those of the ten years that something is promised of, beside what they were at the size before. */
function promisesOf(all: readonly Measured[]): readonly Promised[] {
  const place = all.findIndex(({ size }) => size === 1);
  const [ten, before] = [all[place], all[place - 1]];
  if (!ten) return [];
  return (Object.entries(LINES) as [Key, Line][]).flatMap(([key, { what, unit, limit }]) => {
    if (limit === undefined) return [];
    const beside = before ? `${before.costs[key].toFixed(1)} ${unit} at ${before.size} of it` : '';
    return [atMost(`${what}, ten years`, ten.costs[key], limit, unit, beside)];
  });
}

const sizes = words.filter((word) => !word.startsWith('--')).map(Number);
const measured = (sizes.length > 0 ? sizes : [0.1, 1]).map(measure);
print(measured);
console.log('');
tellPromises(promisesOf(measured));
