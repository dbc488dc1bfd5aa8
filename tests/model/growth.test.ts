/** What a memo asks of the model must not grow with the project: rows are counted here, since seconds tell of the machine. */
import { expect, test } from 'vitest';
import { keepNotes } from '../../src/model/keep-notes.ts';
import { MemoryRows } from '../../src/model/memory-rows.ts';
import { reconcileMemo } from '../../src/model/reconcile.ts';
import type { ModelReader } from '../../src/model/rows.ts';
import { tenYearBuild } from '../kit/ten-year-build.ts';

const SETTINGS = { units: 'metric', tolerances: {} } as const;

interface Asked {
  calls: number;
  rows: number;
}

/** Rows that count how often each question is asked, and how many rows answer it. */
function counting(rows: MemoryRows): { readonly reader: ModelReader; readonly asked: Map<string, Asked> } {
  const asked = new Map<string, Asked>();
  const reader = new Proxy(rows, {
    get(target, name) {
      const value: unknown = Reflect.get(target, name, target);
      if (typeof value !== 'function') return value;
      return (...args: unknown[]) => {
        const answer: unknown = value.apply(target, args);
        const count = asked.get(String(name)) ?? { calls: 0, rows: 0 };
        count.calls++;
        count.rows += Array.isArray(answer) ? answer.length : 1;
        asked.set(String(name), count);
        return answer;
      };
    },
  });
  return { reader, asked };
}

/** The made-up build of this size, worked in; what its last memos asked, each on average. */
function askedAt(size: number) {
  const rows = new MemoryRows();
  const { reader, asked } = counting(rows);
  const memos = [...tenYearBuild(size)];
  memos.forEach(({ memoId: id, events }, at) => {
    if (at === memos.length - LAST) asked.clear();
    const read = events.find((event) => event.kind === 'notes-read');
    const said = events.find((event) => event.kind === 'transcript-made');
    if (!read || !said) throw new Error('a memo of the build is not read');
    const memo = {
      id,
      recordedAt: read.at,
      text: said.transcript.text,
      notes: keepNotes(id, read.notes, undefined),
    };
    for (const change of reconcileMemo(reader, memo, SETTINGS)) rows.put(change);
  });
  const of = (name: string) => {
    const { calls, rows: found } = asked.get(name) ?? { calls: 0, rows: 0 };
    return { calls: calls / LAST, rows: found / LAST };
  };
  const all = [...asked.values()].reduce((sum, { rows: found }) => sum + found, 0) / LAST;
  return { of, all };
}
const LAST = 20;

test('a memo of a build four times as long is answered with about as many rows', () => {
  const [short, long] = [askedAt(0.01), askedAt(0.04)];
  expect(long.all).toBeLessThan(short.all * 1.75);
  // Nobody waits for a second thing of a name, nor has a task of measuring: neither is looked for.
  expect(long.of('itemsSharing').calls).toBe(0);
  expect(long.of('openTasksSharing').calls).toBeLessThan(10);
}, 60_000);
