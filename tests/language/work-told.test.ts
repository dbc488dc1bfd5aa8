import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { byRulesAlone } from '../kit/by-rules-alone.ts';

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
    const { notes } = byRulesAlone(text);
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

describe('tasks name what their pronouns stand for', () => {
  test.each([
    ['Floor insulation, I went with cork because it holds no water. I need to order that.', 'Order the cork'],
    [
      "There's rot in the sill by the step, a soft plank. On a new barge! I have to cut that out.",
      'Cut the soft plank out',
    ],
    ["The feed pawl's cracked, so I'll have to make a new one.", 'Make a new pawl'],
    ['Those two windows leak. They need resealing.', 'Those two windows need resealing'],
    ['The hoist slips its brake. Needs swapping before the lift.', 'The hoist needs swapping'],
    ['It weighs like a goat, that battery. That goes back tomorrow.', 'That battery goes back'],
    ['The rigger is back on Monday. I need to ring him.', 'Ring him'],
  ])('"%s": %s', (text, gist) => {
    const { notes } = byRulesAlone(text);
    expect(notes.tasks.map((task) => task.gist)).toEqual([gist]);
  });
});

describe('an open task is told to be at its end', () => {
  const read = (text: string, openTasks: readonly string[]) =>
    byRulesAlone(text, openTasks).notes.done.map(({ quote }) => quote);
  test.each([
    ['Rang the foundry at noon.', 'Ring the foundry about the bell', 'Rang the foundry at noon'],
    [
      'I picked up the frames on the way.',
      'Collect the frames from the smith',
      'I picked up the frames on the way',
    ],
    ['The wall plate has drunk its oil.', 'Oil the wall plate', 'The wall plate has drunk its oil'],
    ["I've the lead costed.", 'Cost the lead', "I've the lead costed"],
    [
      "I've a price for the loft lights too.",
      'Get a price for the loft lights',
      "I've a price for the loft lights too",
    ],
    ['The glass got ordered.', "There's a glass order to phone in on Monday", 'The glass got ordered'],
    ['The park got my email.', 'Email the park about the colour', 'The park got my email'],
    [
      "The pattern's at the glass shop.",
      "The glass shop's waiting on a pattern from me",
      "The pattern's at the glass shop",
    ],
    ["The beech's ordered.", 'Order the beech', "The beech's ordered"],
    ['I measured the ladder.', 'Measure the ladder', 'I measured the ladder'],
  ])('"%s" with "%s" open', (text, open, quote) => expect(read(text, [open])).toEqual([quote]));
  test.each([
    ['I measured the ladder.', 'Paint the door'],
    ["The wall plate hasn't had its oil.", 'Oil the wall plate'],
    ['The wall plate is six inches wide.', 'Oil the wall plate'],
    ['The glass was at the shop when I rang.', "The glass shop's waiting on a pattern"],
    ['The wall plate has cracked.', 'Oil the wall plate'],
    ["I'll ring the foundry tomorrow.", 'Ring the foundry'],
  ])('"%s" ends nothing with "%s" open', (text, open) => expect(read(text, [open])).toEqual([]));
});
