/** What a winch, a hook or a bracket carries, held against what is told to hang from it or to stand on it. */
import { expect, test } from 'vitest';
import { ToldStory } from '../../kit/told-story.ts';

const WINCH = 'The winch is good for 450 kilos.';
const BRACKETS = 'The shelf brackets hold 40 kilos each.';

test.each([
  [WINCH, "The keel block weighs 520 kilos, I'll lift it with the winch.", '450 kg -> 520 kg'],
  [WINCH, "The stove's 520 kilos. That's going in on the winch.", '450 kg -> 520 kg'],
  [
    'The rating on that winch is 450 kilos.',
    'The keel block weighs 520 kilos and it hangs off the winch.',
    '450 kg -> 520 kg',
  ],
  ['The shelf is rated for 250.', "Weighed the tank full, it's 318 kilos on that shelf.", '250 kg -> 318 kg'],
  [BRACKETS, 'The battery weighs 52 kilos and it sits on the shelf brackets.', '40 kg -> 52 kg'],
])('%s %s', (limit, load, broken) => {
  const found = new ToldStory().hear(limit, load).found();
  expect(found).toEqual([expect.stringMatching(/^limit: /)]);
  expect(found[0]).toContain(broken);
});

test.each([
  ["The hearth needs to be at least 150 from any timber, and I've got a joist at 120 from it.", ''],
  ['Keep all timber at least 50 from the flue.', "The rafter's 35 from the flue."],
  ['The flue has to be at least 50 from anything combustible.', "The rafter's 35 from the flue."],
])('what must be kept away: %s %s', (limit, told) => {
  const found = new ToldStory().hear(...[limit, told].filter(Boolean)).found();
  expect(found).toEqual([expect.stringMatching(/^limit: .*clearance/)]);
});

test.each([
  ['far enough', "The rafter's 60 from the flue."],
  ['nothing that burns', "The copper pipe's 35 from the flue."],
  ['another measure', "The rafter's 45 wide."],
])('%s is let be', (_, told) => {
  const limit = 'The flue has to be at least 50 from anything combustible.';
  expect(new ToldStory().hear(limit, told).found()).toEqual([]);
});

test.each([
  ['what it carries', WINCH, "The keel block weighs 420 kilos, I'll lift it with the winch."],
  ['what nobody lifts with it', WINCH, 'The keel block weighs 520 kilos.'],
  ['what another thing lifts', WINCH, "The keel block weighs 520 kilos, I'll lift it with the crane."],
  ['a size', WINCH, "The keel block is 520 wide, I'll lift it with the winch."],
])('%s is let be', (_, limit, load) => {
  expect(new ToldStory().hear(limit, load).found()).toEqual([]);
});
