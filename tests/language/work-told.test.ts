import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { splitSentences } from '../../src/language/sentences.ts';
import { readStatements } from '../../src/language/statements/read-statements.ts';

/** Our own talk of many trades: `[finished work]` and `{work to do}` are marked, all the rest is neither. */
const { told } = JSON.parse(readFileSync(new URL('./work-told.json', import.meta.url), 'utf8')) as {
  readonly told: readonly string[];
};

interface Marked {
  readonly text: string;
  readonly done: readonly string[];
  readonly tasks: readonly string[];
}

function unmarked(line: string): Marked {
  const inside = (pattern: RegExp) => [...line.matchAll(pattern)].map(([, words]) => words as string);
  return {
    text: line.replace(/[[\]{}]/g, ''),
    done: inside(/\[([^\]]*)\]/g),
    tasks: inside(/\{([^}]*)\}/g),
  };
}

/** Whether both stand on the same words: half of the shorter one at least. */
function isSame(text: string, marked: string, quote: string): boolean {
  const [a, b] = [text.indexOf(marked), text.indexOf(quote)];
  const shared = Math.min(a + marked.length, b + quote.length) - Math.max(a, b);
  return shared >= 0.5 * Math.min(marked.length, quote.length);
}

function expectRead(text: string, marked: readonly string[], quotes: readonly string[]): void {
  const left = [...quotes];
  for (const each of marked) {
    const at = left.findIndex((quote) => isSame(text, each, quote));
    expect([each, at >= 0 ? 'read' : `not among ${JSON.stringify(left)}`]).toEqual([each, 'read']);
    left.splice(at, 1);
  }
  expect(left).toEqual([]);
}

describe('finished work and work to do are told apart', () => {
  test.each(told)('%s', (line) => {
    const { text, done, tasks } = unmarked(line);
    const { notes } = readStatements(text, splitSentences(text), {
      units: 'metric',
      region: 'GB',
      recordedAt: '2026-06-10T18:00:00+01:00',
    });
    expectRead(
      text,
      done,
      notes.done.map(({ quote }) => quote),
    );
    expectRead(
      text,
      tasks,
      notes.tasks.map(({ quote }) => quote),
    );
  });
});
