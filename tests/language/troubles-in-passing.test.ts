import { expect, test } from 'vitest';
import { readMemo } from '../../src/language/pipeline.ts';

const notesOf = (said: string) =>
  readMemo(said, { units: 'metric', region: 'GB', recordedAt: '2026-06-10T12:00:00+01:00' }).notes;
const snagsIn = (said: string) => notesOf(said).problems.map(({ quote }) => quote);

test.each([
  // What a machine does, or shows.
  ['The inverter throws an error whenever the kettle goes on.', 'The inverter throws an error'],
  ['The starter only clicks.', 'The starter only clicks'],
  ['The breaker goes every time I switch the kettle on.', 'The breaker goes every time'],
  ['The pressure is dropping overnight.', 'The pressure is dropping overnight'],
  ['The battery has dropped to eleven volts.', 'The battery has dropped to eleven volts'],
  ['It lost half a bar in an hour.', 'It lost half a bar in an hour'],
  ['The gearbox jumps out of reverse.', 'The gearbox jumps out of reverse'],
  // What a hand finds.
  ['You can push a screwdriver clean through it.', 'You can push a screwdriver clean through it'],
  ["The seacock's as stiff as a priest.", "The seacock's as stiff as a priest"],
  ['The bearing feels like a bag of gravel.', 'The bearing feels like a bag of gravel'],
  ["The floor's soaking under the window.", "The floor's soaking under the window"],
  ['There was a puddle under the boiler.', 'a puddle under the boiler'],
  ["The plate's pulled with the heat.", "The plate's pulled with the heat"],
  ['The frame sprang when I took the clamps off.', 'The frame sprang'],
  ["There's a live wire just hanging there.", "There's a live wire just hanging there"],
  ["The earth's not connected to anything.", "The earth's not connected to anything"],
  // What is lost, or to be done over.
  ["That's another sheet in the skip.", "That's another sheet in the skip"],
  ["That's another afternoon gone.", "That's another afternoon gone"],
  ["We've no oil pressure to speak of.", 'no oil pressure to speak of'],
  ["I'm out of screws again.", "I'm out of screws again"],
  ['The glue went off before I got the clamps on.', 'The glue went off'],
  ["The second coat's never gone off properly.", "The second coat's never gone off properly"],
  ['I rounded the head off the last bolt.', 'I rounded the head off the last bolt'],
  ["I've kinked the pipe.", "I've kinked the pipe"],
  ['I drilled it ten mil off.', 'I drilled it ten mil off'],
  // Where a thing lies.
  ["There's a rib smack in the middle of it.", "There's a rib smack in the middle of it"],
  ["The corner's low, two and three eighths low.", "The corner's low"],
  ["The bed's ten mil lower at one end.", "The bed's ten mil lower at one end"],
  ['The two sides are out with each other.', 'The two sides are out with each other'],
  // What others did to it.
  [
    "I ripped the ply out, and someone's gone and siliconed the lot to the roof.",
    "someone's gone and siliconed the lot to the roof",
  ],
  ['Somebody went and painted over the vents.', 'Somebody went and painted over the vents'],
  // What a person could not do, or would not have.
  ["I couldn't get the injector out for love nor money.", "couldn't get the injector out"],
  ["Turns out there's a steel plate behind the panel right where I wanted the vent.", 'steel plate'],
  ["The inspector wasn't having it.", "The inspector wasn't having it"],
])('"%s" tells of a snag', (said, words) => {
  expect(snagsIn(said).join(' | ')).toContain(words);
});

test.each([
  "It couldn't be better.",
  "The plumber's been and connected the tank.",
  'The lads have gone and got lunch.',
  "It came on a lorry that couldn't get down the lane.",
  'The starter clicks and she runs.',
  'The pressure is good.',
  "In ten minutes it's gone off.",
  'You can get a hand behind the tank, which is handy.',
  "That's another shelf done.",
  "That's the whole roof on.",
  "I'm out of time.",
  "I'm out of here.",
  'There is nothing left to do.',
  'I marked it ten mil over for trimming.',
  'The brush is soaking in white spirit.',
  "The drip's gone.",
  "The leak at the elbow's stopped.",
  'I rounded the edge over with the router.',
])('"%s" tells of none', (said) => {
  expect(snagsIn(said)).toEqual([]);
});
