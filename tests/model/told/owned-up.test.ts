/** Limits passed by things of other names, where the talk takes it as trouble. */
import { expect, test } from 'vitest';
import { ToldStory } from '../../kit/told-story.ts';

const broken = (...talk: readonly string[]) =>
  new ToldStory('metric', 'GB')
    .hear(...talk)
    .found()
    .filter((line) => line.startsWith('limit'));

test.each([
  [
    'the room that a thing must have',
    'The bellows have to have at least 450 millimetres of clearance.',
    "I laid a stick from the bellows to the rack, and there's 380 millimetres. And what did the smith tell me? Exactly.",
    ['limit: bellows clearance 450 mm -> 380 mm'],
  ],
  [
    'a load that nobody called by the name of the limit',
    "The davit's good for 250 kilos.",
    'Dinghy, engine and the fuel, it comes to 268 kilos. And what does the plate say? So no.',
    ['limit: dinghy weight 250 kg -> 268 kg'],
  ],
])('%s', (_name, first, second, found) => {
  expect(broken(first, second)).toEqual(found);
});

test.each([
  [
    'nothing is said of trouble',
    'The bellows have to have at least 450 millimetres of clearance.',
    "I laid a stick to the rack, and there's 380 millimetres between the two shelves, lovely.",
  ],
  [
    'trouble with another thing, far from any limit',
    "The davit's good for 250 kilos.",
    "The stove weighs 90 kilos. Its door won't shut.",
  ],
])('%s: no limit is passed', (_name, first, second) => {
  expect(broken(first, second)).toEqual([]);
});
