import { describe, expect, test } from 'vitest';
import type { ReadContext } from '../../src/language/notes.ts';
import { readMemo } from '../../src/language/pipeline.ts';

const CONTEXT: ReadContext = { units: 'metric', region: 'GB', recordedAt: '2026-06-09T10:00:00+01:00' };
const notesOf = (text: string) => readMemo(text, CONTEXT).notes;
const KINDS = { problem: 'problems', done: 'done', task: 'tasks', decision: 'decisions' } as const;
const count = (text: string, kind: keyof typeof KINDS) => notesOf(text)[KINDS[kind]].length;

/** Words of a note that tell none of its kind, each beside one that does. */
describe('only sounds like it', () => {
  test.each([
    ['problem', "I've had the horn guide off and it isn't cracked.", 'The horn guide is cracked.'],
    ['problem', 'The track will not take more than seven and a half tonne.', 'The gate will not close.'],
    ['problem', 'Anything over 25 amps trips it.', 'The kettle trips the breaker.'],
    ['problem', "Can't fit anything deeper than 560.", "The cooker won't fit."],
    ['problem', "The lift won't take anything over two metres.", "The lift won't move."],
    [
      'problem',
      'Nothing wider than 740 comes in.',
      "Nothing wider than 740 went in, so the cooker's stuck outside.",
    ],
    ['problem', 'The plank that split I went back and forth on.', 'The plank split.'],
    ['problem', 'People keep asking me what I do for a living.', 'The hinge keeps sticking.'],
    ['done', 'Some of the springs are up at 180.', 'The springs are up.'],
    ['done', 'The springs are all over the place.', 'The springs are fitted.'],
    ['done', "The west gable's leaning.", "The west gable's repointed."],
    ['task', "Something's got to give.", 'The cornice has got to come off.'],
    [
      'task',
      'The well needs to clear the motor by at least 40 mil.',
      'I need to clear the bench out tomorrow.',
    ],
    ['task', 'The stove has to come in through the side door.', 'The stove has to come out.'],
    [
      'task',
      "That's what I'm going to plane the new stuff to.",
      "I'm going to plane the new stuff tomorrow.",
    ],
    ['task', "That's not enough to get the top panel on.", 'I need to get the top panel on.'],
    ['task', 'I had to cut a slot for the duct.', 'I have to cut a slot for the duct.'],
    ['decision', "I've moved over to the stairs.", "I've moved over to slate for the stairs."],
    [
      'decision',
      "I'm going to stop pretending the walls are plumb.",
      "I'm going to stop using screws because they rust.",
    ],
    ['done', 'I picked up a cold.', 'I picked up the hinges and fitted them.'],
    ['done', 'We drove 300 miles in a day.', 'We screwed the battens on in a day.'],
    ['done', 'Swapped stories with the miller.', 'Swapped the latch for a bolt.'],
    ['problem', "There's a slot for the cleat.", "There's a hole in the cleat."],
    ['problem', 'The spindles are 95 apart.', 'The spindles have come apart.'],
    ['problem', 'The spur runs under the floorboards.', 'The spur under the floorboards is broken.'],
    ['done', 'The battens I cut stay the same.', 'I cut the battens.'],
    ['done', "It's crowded until the weekend.", "It's glued until the weekend."],
    ['done', "The winch's stopped turning.", "The winch's bolted down."],
    ['done', 'The pulley dropped off.', 'The pulley is screwed on.'],
    ['decision', "We've started tiling the porch.", "We've decided on slate for the porch."],
    [
      'decision',
      "I'm going to make a thicker cushion, no I'm not.",
      "I'm going to make a thicker cushion because the bench is low.",
    ],
  ] as const)('no %s in "%s"', (kind, silent, told) => {
    expect(count(silent, kind)).toBe(0);
    expect(count(told, kind)).toBeGreaterThan(0);
  });

  test.each([
    ['done', 'The lintel is in at 2100.'],
    ['problem', "It isn't just cracked, it's in two pieces."],
    ['task', 'I had to leave the skirting, I have to cut that tomorrow.'],
  ] as const)('%s in "%s"', (kind, told) => expect(count(told, kind)).toBeGreaterThan(0));
});
