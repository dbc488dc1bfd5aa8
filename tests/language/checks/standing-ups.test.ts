import { expect, test } from 'vitest';
import { checksIn } from '../../kit/records.ts';

test.each([
  [
    "The wardrobe has to stand up under the ceiling. It's 2350 high and 600 deep, ceiling's 2400.",
    'depth=wardrobe depth; ceiling=ceiling height; height=wardrobe height',
  ],
  [
    "I've got to be able to tip the bookcase up in there, the ceiling is 2380.",
    'depth=bookcase depth; ceiling=ceiling height; height=bookcase height',
  ],
  [
    "We've got to tip the cupboard upright under a 96 inch ceiling, it's 24 inches deep.",
    'depth=cupboard depth; ceiling=ceiling height; height=cupboard height',
  ],
  [
    "The locker will have to be stood upright once it's inside and the headroom is 1830.",
    'depth=locker depth; ceiling=locker headroom clearance; height=locker height',
  ],
  [
    "The dresser needs to be tilted up under the beam, the beam's at 2050.",
    'depth=dresser depth; ceiling=2050 mm; height=dresser height',
  ],
  [
    'The carcass gets built flat on the floor and then it has to stand up. Carcass is 2200 high and 580 deep, ceiling 2290.',
    'depth=carcass depth; ceiling=ceiling height; height=carcass height',
  ],
  [
    "The tank has to be stood up in the cabin once it's in.",
    'depth=tank depth; ceiling=ceiling height; height=tank height',
  ],
])('"%s" wants something stood up', (said, inputs) => {
  expect(checksIn(said)).toEqual([`standing up: ${inputs}`]);
});

test.each([
  'I have to be able to stand up in the galley.',
  'The paint has to stand up to the weather.',
  'The lid has to lift up.',
  'The ladder has to stand up against the wall.',
  'The mast has to go up on Friday.',
  'The post has to go away up the road for that.',
  'The wardrobe had to be tipped up under the ceiling.',
  'Does the wardrobe have to stand up under the ceiling?',
])('"%s" wants nothing stood up', (said) => {
  expect(checksIn(said)).toEqual([]);
});
