/**
 * Measures the model and its store on a made-up build of ten years, at several sizes.
 * Usage: npm run bench:model -- [SIZE...]      sizes are multiples of ten years; without any: 0.1 1
 */
import { mkdtempSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { whatIsKnown } from '../src/known.ts';
import { readMemo } from '../src/language/pipeline.ts';
import { answerOf, tellingWords } from '../src/model/answer.ts';
import { createStore, openStore, type ProjectStore } from '../src/store/store.ts';
import { tenYearBuild } from '../tests/kit/ten-year-build.ts';

interface Measured {
  readonly size: number;
  readonly rows: Readonly<Record<string, number>>;
  /** Median and worst of the last memos, in milliseconds. */
  readonly reconcile: readonly [number, number];
  readonly open: number;
  readonly ask: number;
  /** Reading the words of one memo, with what the project knows of its things, in milliseconds. */
  readonly read: number;
  readonly rebuildSeconds: number;
  readonly megabytes: number;
}

const LAST = 50;

function measure(size: number): Measured {
  const folder = mkdtempSync(join(tmpdir(), 'bench-model-'));
  const file = join(folder, 'project.db');
  try {
    const store = createStore(file, { name: 'ten years', units: 'metric', at: '2017-01-01T08:00:00Z' });
    const times: number[] = [];
    let text = '';
    for (const { events } of tenYearBuild(size)) {
      const said = events.find((event) => event.kind === 'transcript-made');
      text = said?.transcript.text ?? text;
      store.append(events.slice(0, 2));
      const last = events.slice(2);
      times.push(timed(() => store.append(last)));
    }
    store.close();
    const open = median(repeat(5, () => timed(() => openStore(file).close())));
    const opened = openStore(file);
    const question = 'how wide is the galley bench top';
    const ask = median(
      repeat(5, () => timed(() => answerOf(opened.rows, question, opened.search(tellingWords(question))))),
    );
    const read = median(repeat(5, () => timed(() => readText(opened, text))));
    const rebuildSeconds = timed(() => opened.rebuild()) / 1000;
    const rows = Object.fromEntries(
      (['memos', 'items', 'claims', 'formulas', 'tasks', 'findings'] as const).map((table) => [
        table,
        opened.rows.all(table).length,
      ]),
    );
    opened.close();
    const recent = times.slice(-LAST);
    return {
      size,
      rows,
      reconcile: [median(recent), Math.max(...recent)],
      open,
      ask,
      read,
      rebuildSeconds,
      megabytes: statSync(file).size / 1e6,
    };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function readText(store: ProjectStore, text: string): unknown {
  return readMemo(text, {
    units: 'metric',
    recordedAt: '2027-01-01T08:00:00Z',
    ...whatIsKnown(store.rows, text),
  });
}

function timed(work: () => unknown): number {
  const started = performance.now();
  work();
  return performance.now() - started;
}

function repeat<T>(times: number, work: () => T): readonly T[] {
  return Array.from({ length: times }, work);
}

function median(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;
}

/** Promise, limit, and what was measured; limits hold for ten years of work. */
function print({ size, rows, reconcile, open, ask, read, rebuildSeconds, megabytes }: Measured): void {
  const counts = Object.entries(rows)
    .map(([table, count]) => `${count.toLocaleString('en')} ${table}`)
    .join(', ');
  console.log(`\n${size} x ten years: ${counts}`);
  const line = (what: string, limit: string, measured: string) =>
    console.log(`  ${what.padEnd(34)}${limit.padStart(10)}${measured.padStart(22)}`);
  line('', 'limit', 'measured');
  line(
    'one more memo, written and worked in',
    '30 ms',
    `${reconcile[0].toFixed(1)} ms, worst ${reconcile[1].toFixed(0)}`,
  );
  line('open the project', '150 ms', `${open.toFixed(1)} ms`);
  line('read one memo of 250 words', '', `${read.toFixed(1)} ms`);
  line('ask', '50 ms', `${ask.toFixed(1)} ms`);
  line('rebuild everything', '20 s', `${rebuildSeconds.toFixed(1)} s`);
  line('database', '300 MB', `${megabytes.toFixed(0)} MB`);
}

const sizes = process.argv.slice(2).map(Number);
for (const size of sizes.length > 0 ? sizes : [0.1, 1]) print(measure(size));
