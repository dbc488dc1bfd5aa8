/** Jobs by need, duty and want, and needs in like words that are no job of this work. */
import { describe, expect, test } from 'vitest';
import { readMemo } from '../../src/language/pipeline.ts';

const CONTEXT = { units: 'metric', region: 'GB', recordedAt: '2026-06-10T18:00:00+01:00' } as const;
const notesOf = (text: string) => readMemo(text, CONTEXT).notes;

describe('jobs', () => {
  test.each([
    ['I need to glue the rail.', ['Glue the rail']],
    ['I want to glue the rail.', ['Glue the rail']],
    ['I want to glue the rail on Friday.', ['Glue the rail on Friday']],
    ['Tom has to fit the glass.', ['Tom has to fit the glass']],
    ['The glass has to be fitted.', ['The glass has to be fitted']],
    ['I must glue the rail.', ['Glue the rail']],
    ['I should glue the rail.', ['Glue the rail']],
    ['Tom should glue the rail.', ['Tom should glue the rail']],
    ['Tom must glue the rail on Friday.', ['Tom must glue the rail on Friday']],
    ['Better glue the rail.', ['Glue the rail']],
    ['Remind me to glue the rail.', ['Glue the rail']],
    ['Remember to glue the rail.', ['Glue the rail']],
    ['Mental note, glue the rail.', ['Glue the rail']],
    ['The rail wants gluing.', ['The rail wants gluing']],
    ['The deck needs sanded.', ['The deck needs sanded']],
    ['The deck wants a coat of oil.', ['The deck wants a coat of oil']],
    ['Could do with a new hose.', ['Get a new hose']],
    ['I need a new hose.', ['Get a new hose']],
    ['I need the boards counted.', ['Get the boards counted']],
    ['I need a new hose because it leaks.', ['Get a new hose']],
    ['Need a hose.', ['Get a hose']],
    ['Gluing the rail is the plan.', ['Gluing the rail is the plan']],
    ["I've not glued the rail yet as I'm waiting on the clamps.", ['Glue the rail']],
    ['Need to make the frame.', ['Make the frame']],
    ['Need to give it a rub.', ['Give it a rub']],
    ['Need to use the saw.', ['Use the saw']],
    ['Need to look at the pump.', ['Look at the pump']],
    ['Need to see to the pump.', ['See to the pump']],
    ['Need to clear the bench.', ['Clear the bench']],
    ['Need to work out the fall.', ['Work out the fall']],
    ['Need to get tape.', ['Get tape']],
  ])('"%s" is read', (text, read) => expect(notesOf(text).tasks.map(({ gist }) => gist)).toEqual(read));

  test.each([
    'It all has to come in through the back door.',
    'Everything has to fit past the stove.',
    "I must say it's fine.",
    'I must make a confession.',
    "It's better than short.",
    'Remember you promised to glue it.',
    'I remember gluing the rail.',
    'The rail needs something.',
    'The rail wants nothing.',
    'The deck wants a friend.',
    'The deck takes two coats of oil.',
    'I could do with a beer.',
    'I need a holiday.',
    'Need 450 to the bulkhead.',
    'Need 450 mil.',
    'Gluing the rail is the trick.',
    "I've glued the rail as I was waiting on the clamps.",
    'Need to look.',
    'Need to see.',
    'Need to eat.',
  ])('"%s" tells none', (text) => expect(notesOf(text).tasks).toEqual([]));
});
