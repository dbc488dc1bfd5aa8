/** "Scratch that" takes back what was said in the sentence before it; a number behind it puts a figure right. */
import { expect, test } from 'vitest';
import type { MemoNotes } from '../../src/language/notes.ts';
import { readMemo } from '../../src/language/pipeline.ts';
import { figuresSaid } from '../kit/figures-said.ts';

test.each([
  ['The locker is 18 mm deep. No, scratch that.', 'none'],
  ['The locker is 18 mm deep. Scratch that.', 'none'],
  ['The locker is 18 mm deep. Hang on, scratch all of that.', 'none'],
  ['The locker is 18 mm deep. No. Scratch that, please.', 'none'],
  ['The bench top is 915 mm high, no, strike that.', 'none'],
  ['The chamber is 1240 mm wide and 860 mm deep. Sorry, forget that one.', 'none'],
  ['The shelf is 320 mm deep. The locker is 18 mm deep. No, scratch that.', '320 mm'],
  ['The locker is 18 mm deep. No, scratch that. The locker is 80 mm deep.', '80 mm'],
])('"%s" leaves %s', (said, left) => {
  expect(figuresSaid(said)).toBe(left);
});

test.each([
  ['The locker is 18 mm deep. No, scratch that, 80 mm.', '80 mm'],
  ['The locker is 18 mm deep. No, scratch that 80 mm.', '80 mm'],
  ['The locker is 18 mm deep, I think. No, scratch that, 80.', '80 mm'],
  ['The locker is 18 mm deep. No. Scratch that. 80 millimetres.', '80 mm'],
  ['The locker is 320 mm wide and 18 mm deep. No, scratch that, 80 mm deep.', '320 mm; 80 mm'],
  ['The gap is 5 mm, but I will ignore that.', '5 mm'],
  ['The locker is 18 mm deep. Scratch that panel and I am out.', '18 mm'],
  ['The locker is 18 mm deep. I scratched that twice.', '18 mm'],
  ['Scratch that. The locker is 18 mm deep.', '18 mm'],
  ['The locker is 18 mm deep. We cut the rails today. Scratch that.', '18 mm'],
  ['The locker is 18 mm deep. No.', '18 mm'],
  ['The locker is 18 mm deep. Hang on, the lid is 20 mm.', '18 mm; 20 mm'],
  ["The locker is 918 mm deep. Hang on, the depth's 910 mm.", '910 mm'],
])('"%s" still says %s', (said, left) => {
  expect(figuresSaid(said)).toBe(left);
});

const CONTEXT = { units: 'metric', region: 'GB', recordedAt: '2026-06-09T10:00:00+01:00' } as const;
/** What was read, a line for each note: its kind and its words. */
const notesOf = (text: string) => {
  const notes: MemoNotes = readMemo(text, CONTEXT).notes;
  return Object.values(notes)
    .flat()
    .map(({ kind, quote }) => `${kind}: ${quote}`);
};

test.each([
  ['a task', 'I need to order more screws.'],
  ['a choice and its reason', 'We decided on brass hinges because they do not rust.'],
  ['what came', 'The hinges have arrived.'],
  ['what was done', 'I fitted the sink today.'],
  ['a promise', "I'll show you the stair drawing next week."],
  ['a snag', 'The gutter bracket cracked.'],
  ['a batch and its clock', "I mixed the epoxy at two o'clock."],
])('%s is taken back: "%s"', (_, said) => {
  expect(notesOf(said)).not.toEqual([]);
  for (const order of ['No, scratch that.', 'Sorry. Forget that.', 'Strike that, please.'])
    expect(notesOf(`${said} ${order}`)).toEqual([]);
});

test.each([
  [
    'the sentence before it alone',
    'I need to oil the beam. I need to order more screws. No, scratch that. The gate wants hanging.',
    ['task: I need to oil the beam', 'task: The gate wants hanging'],
  ],
  [
    'what is said instead stands',
    'I need to oil the hinges. No, scratch that, I need to wax them.',
    ['task: I need to wax them'],
  ],
  ['the end of the same sentence', 'I need to call the welder, uh, no, hang on, scratch that.', []],
  [
    'with a number it puts right a figure, and no more',
    'The locker is 18 mm deep and I need to oil the hinges. No, scratch that, 80 mm.',
    ['figure: 80 mm', 'task: I need to oil the hinges'],
  ],
  [
    'a gate that is taken back keeps nothing waiting',
    'I need to hang the gate. It has to wait until the paint is dry. No, scratch that.',
    ['task: I need to hang the gate'],
  ],
  [
    'a number that is work',
    'I need to oil the beam. Scratch that 80 mm line off.',
    ['figure: 80 mm', 'task: I need to oil the beam'],
  ],
  [
    'words that only sound so',
    'I have to order glass and I must not forget that.',
    ['task: I have to order glass'],
  ],
])('%s', (_, said, left) => {
  expect(notesOf(said)).toEqual(left);
});

test('the trace says what was taken back', () => {
  const { trace } = readMemo('I need to order more screws. No, scratch that.', CONTEXT);
  expect(trace).toContainEqual({
    stage: 'taken back in the next breath',
    rule: expect.any(String),
    span: { start: 0, end: 27 },
    outcome: 'dropped',
    why: 'taken back: "scratch that"',
  });
});
