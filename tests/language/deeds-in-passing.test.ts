import { expect, test } from 'vitest';
import { readMemo } from '../../src/language/pipeline.ts';

const notesOf = (said: string) =>
  readMemo(said, { units: 'metric', region: 'GB', recordedAt: '2026-06-10T12:00:00+01:00' }).notes;

test.each([
  ['Up it went, no bother.', 'Up it went'],
  ['In it went, sweet as you like.', 'In it went'],
  ["Hatch cover's down to 35 and a half.", "Hatch cover's down to 35 and a half"],
  ['The uprights are down to 150.', 'The uprights are down to 150'],
  ["The hump's no more.", "The hump's no more"],
  ["The old lining's history.", "The old lining's history"],
  ["That's the skim coat off the list.", "That's the skim coat off the list"],
  ['No more leak at the elbow.', 'No more leak at the elbow'],
  ["I'm done with the wiring.", "I'm done with the wiring"],
  ["The wiring's behind me.", "The wiring's behind me"],
  ["We're weathertight.", "We're weathertight"],
  ['The pressure test held.', 'The pressure test held'],
  ['It passed first time.', 'It passed first time'],
  ['Paid the deposit.', 'Paid the deposit'],
  ['Took the rubbish to the tip.', 'Took the rubbish to the tip'],
  ['Dropped the brake shoes at the relining place.', 'Dropped the brake shoes at the relining place'],
  ['Let the new piece in this morning.', 'Let the new piece in this morning'],
  ['Bricks, counted.', 'Bricks, counted'],
  ['Got the engine to fire.', 'Got the engine to fire'],
  ['Got the door to close at last.', 'Got the door to close at last'],
  ['Finally got it to sit.', 'Finally got it to sit'],
])('"%s" is finished work', (said, quote) => {
  const { done, tasks } = notesOf(said);
  expect(done.map((each) => each.quote)).toEqual([quote]);
  expect(tasks).toEqual([]);
});

test.each([
  "The temperature's down to ten.",
  'The ribs are down to seventeen.',
  "Moisture's down to 17 per cent.",
  "I'm down to my last blade.",
  "The battery's down to 11 volts.",
  "We're down to two boards.",
  'The bench is in the shed.',
  "Rain's stopped.",
  'The shop was shut.',
  'Off she went.',
  "I'm done with people.",
  'In it goes tomorrow.',
])('"%s" is none', (said) => {
  expect(notesOf(said).done).toEqual([]);
});

test.each([
  ["I've got the pump to prime.", "I've got the pump to prime"],
  ['Got the strings to cut.', 'Got the strings to cut'],
])('"%s" is still to do', (said, quote) => {
  expect(notesOf(said).tasks).toMatchObject([{ quote }]);
});
