/** What sounds like work to do, and leaves nothing to do; and words that only point back at a job. */
import { describe, expect, test } from 'vitest';
import { readMemo } from '../../src/language/pipeline.ts';

const RECORDED = '2026-02-03T17:00:00+01:00';
const read = (text: string) => readMemo(text, { units: 'metric', recordedAt: RECORDED }).notes;
const tasks = (text: string) => read(text).tasks.map(({ gist, due }) => (due ? `${gist} by ${due}` : gist));

describe('no job', () => {
  test.each([
    'The next coat has to wait for eight hours.',
    'Each coat takes sixteen hours to dry.',
    'The varnish takes two days to harden.',
    'The screed has to cure for a week.',
    'The lime has to sit overnight.',
    "I've got a bone to pick with my own plumb line.",
    'We got to thinking about the boiler.',
    'I owe the yard an apology.',
    "I'll have to wait for the glass.",
    'The rest can wait.',
    'So either I move the trimmer back or lose a riser.',
    'She has not turned since the flood.',
    'The oil is to be applied hot.',
    'Now, what wants doing.',
    'Left to do this week.',
    'The tank is nine twenty long rather than send it back.',
    'I need to have my tea.',
    'I need to clear my head.',
    "I'll have to laugh.",
    'We used to have to caulk the porch.',
    'Scratch that.',
    'Nothing bigger than that comes in unless it comes in through the roof.',
    'The order is: scarf length six to one, glue, clamp.',
    'Next is the cabin sole. The cabin sole is twelve mil ply.',
  ])('%s', (text) => expect(tasks(text)).toEqual([]));
});

describe('a job', () => {
  test.each([
    ['I have to wait for the glue, then plane the edge.', 1],
    ['The screed has to be levelled.', 1],
    ['I need to clear the bench.', 1],
    ['I need to have the flywheel balanced.', 1],
    ["Tomorrow's jobs. Caulk the porch. Oil the latch.", 2],
    ['The rails need two coats of varnish.', 1],
    ['The oil is to be changed.', 1],
    ['I owe the hatch a coat of paint.', 1],
    ['I still have to pick the hinges up.', 1],
    ['The slab needs pouring by Friday.', 1],
  ])('%s', (text, count) => expect(tasks(text)).toHaveLength(count));
});

describe('one job, and its day', () => {
  test.each([
    ['The bulwark wants sanding. Put that on the list.', ['The bulwark wants sanding']],
    ["The struts need trimming, I'll do that tomorrow night.", ['The struts need trimming by 2026-02-04']],
    ["The tank needs flushing out. I'll do it on Saturday.", ['The tank needs flushing out by 2026-02-07']],
    ['I need to oil the gate. That goes on the list.', ['Oil the gate']],
    [
      "The sill needs priming. I'll do the skirting tomorrow.",
      ['The sill needs priming', 'Do the skirting by 2026-02-04'],
    ],
  ])('%s', (text, gists) => expect(tasks(text)).toEqual(gists));

  test.each([
    ['I need to take the pump apart tomorrow.', 'Take the pump apart by 2026-02-04'],
    ['Tomorrow I have to weld the strap.', 'Weld the strap by 2026-02-04'],
    ['The first coat of oil goes on tonight.', 'The first coat of oil goes on by 2026-02-03'],
    ['I have to cut the legs this evening.', 'Cut the legs by 2026-02-03'],
    // A day of the week holds on any day.
    ['I have to cut the legs by Sunday.', 'Cut the legs by Sunday by 2026-02-08'],
  ])('the words of a day that is known are no part of the work: %s', (text, gist) =>
    expect(tasks(text)).toEqual([gist]),
  );
});

test.each([
  ['Now I got something wrong.', 0],
  ['Nothing came.', 0],
  ['The tap came.', 1],
  ['Something for the gate came.', 1],
])('goods that are named: %s', (text, count) => expect(read(text).arrivals).toHaveLength(count));

test.each([
  'The tap has stopped dripping.',
  'The fan no longer rattles.',
  'The door does not stick any more.',
  "The pump doesn't leak anymore.",
  'The roof has not leaked since.',
])('a fault that is over: %s', (text) => expect(read(text).problems).toEqual([]));
test.each(['The pump has stopped working.', 'The tap is dripping.'])('a fault: %s', (text) =>
  expect(read(text).problems).toHaveLength(1),
);
test('"the first thing we make" is no time of day', () => {
  expect(
    read("I'll show you the first thing we make in here, that's a promise.").promises[0]?.due,
  ).toBeUndefined();
});
