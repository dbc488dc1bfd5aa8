/** A story for each kind of finding, and stories that must leave it alone. */
import { expect, test } from 'vitest';
import { ToldStory } from '../../kit/told-story.ts';

test.each([
  [
    'a size changed on purpose',
    ['The shelf is 300 millimetres deep.', 'Change of plan, the shelf is now 350 millimetres deep.'],
    ['decided: shelf depth 300 mm -> 350 mm'],
  ],
  [
    'a battery of twice the size, chosen on purpose',
    ['The battery is 110 amp hours.', 'I decided to go bigger, the battery is now 220 amp hours.'],
    ['decided: battery other 110 Ah -> 220 Ah'],
  ],
  [
    'the old value said once more right after it was given up',
    [
      'The stove is 8 kilowatts.',
      'The stove got upgraded, I went to the 9 kilowatt, they were out of the 8 kilowatt.',
    ],
    ['decided: stove power 8 kW -> 9 kW'],
  ],
  [
    'a change of mind that is taken back at once',
    [
      'The shelf is 300 millimetres deep.',
      'I decided the shelf is now 350 millimetres deep, hang on, no, it goes back to 300 millimetres deep.',
    ],
    ['decided: shelf depth 300 mm -> 350 mm', 'decided: shelf depth 350 mm -> 300 mm'],
  ],
  [
    'a size measured anew',
    [
      'The window opening is 1120 millimetres wide.',
      'I measured the window opening again and it is 1132 millimetres wide.',
    ],
    ['remeasured: window opening width 1120 mm -> 1132 mm'],
  ],
  [
    'a likely slip',
    ['The rail is 50 millimetres thick.', 'The rail is 15 millimetres thick.'],
    ['slip: rail thickness 50 mm -> 15 mm'],
  ],
  [
    'a derived size that no longer agrees',
    [
      'The opening is 870 wide. Plus thirty a side that makes the frame 930 wide.',
      'I measured the opening again, it is 884 wide.',
    ],
    ['remeasured: opening width 870 mm -> 884 mm', 'stale: frame width 930 mm -> 944 mm'],
  ],
  [
    'a broken limit',
    [
      'Nothing wider than 740 millimetres comes in through the doorway.',
      'The water tank is 760 millimetres wide.',
    ],
    ['limit: water tank width 740 mm -> 760 mm'],
  ],
] as const)('%s', (_name, talk, found) => {
  expect(new ToldStory().hear(...talk).found()).toEqual(found);
});

test.each([
  [
    'a length twice as long, whatever was decided',
    ['The bench is 900 millimetres wide.', 'I decided that the bench is 1800 millimetres wide.'],
  ],
  ['the same again', ['The shelf is 300 millimetres deep.', 'The shelf is 300 millimetres deep.']],
  ['the same in another unit', ['The shelf is 300 millimetres deep.', 'The shelf is 30 centimetres deep.']],
  [
    'within the tolerance said',
    ['The rail is 50 millimetres thick give or take 2 millimetres.', 'The rail is 51.5 millimetres thick.'],
  ],
  [
    'within a quarter of a per cent',
    ['The wall is 4000 millimetres long.', 'The wall is 4009 millimetres long.'],
  ],
  ['readings that change by themselves', ['The shed is 14 degrees.', 'The shed is 19 degrees.']],
  [
    'a value within its limit',
    [
      'Nothing wider than 740 millimetres comes in through the doorway.',
      'The water tank is 720 millimetres wide.',
    ],
  ],
  [
    'two sides of one thing',
    ['The hatch is 560 by 480 millimetres.', 'The hatch is 480 by 560 millimetres.'],
  ],
] as const)('%s is no finding', (_name, talk) => {
  expect(new ToldStory().hear(...talk).found()).toEqual([]);
});

test('a finding carries both quotes with their memos, the difference, the tolerance and its source', () => {
  const story = new ToldStory().hear(
    'The rail is 50 millimetres thick give or take 2 millimetres.',
    'The rail is 15 millimetres thick.',
  );
  expect(story.findings()[0]).toMatchObject({
    was: { value: 50, source: { memoId: 'm1' } },
    now: { value: 15, source: { memoId: 'm2' } },
    difference: { value: -35, unit: 'mm' },
    tolerance: { value: 2, unit: 'mm', from: 'said' },
    status: 'open',
  });
});
