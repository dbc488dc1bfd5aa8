/** Room that is asked for, bounds on a place, and figures that only look as if they clashed. */
import { describe, expect, test } from 'vitest';
import { ToldStory } from '../../kit/told-story.ts';

const found = (...memos: readonly string[]) => new ToldStory('metric', 'GB').hear(...memos).found();

describe('what is asked for and what there is', () => {
  test.each([
    [
      ['The inverter needs 150 clear above it and there is 120 there.'],
      'limit: inverter clearance 150 mm -> 120 mm',
    ],
    [['The pump wants 12 volts and it is only getting 10.8.'], 'limit: pump voltage 12 V -> 10.8 V'],
    [
      [
        'The fridge is in, the maker says leave fifty mil behind it for air.',
        'There is 30 behind the fridge.',
      ],
      'limit: fridge clearance 50 mm -> 30 mm',
    ],
    [
      ['The backlash is twelve thou, anything over ten is worn out.'],
      'limit: backlash clearance 10 thou -> 12 thou',
    ],
  ])('%j breaks what was asked for', (memos, line) => {
    expect(found(...memos)).toContain(line);
  });

  test.each([
    [['The inverter needs 150 clear above it and there is 200 there.']],
    [['The gate is 2.95 metres high, so nothing over 2.9 metres gets in.']],
    [['The filler has to stand at least 24 hours.', 'The filler has had 19 hours.']],
  ])('%j breaks nothing', (memos) => {
    expect(found(...memos)).toEqual([]);
  });
});

test('a bound on a place is no limit of the thing named before it', () => {
  const story = new ToldStory('metric', 'GB').hear(
    'Put the water tank in the port locker, and nothing over a hundred kilos can go on that side.',
  );
  expect(story.limits().filter((line) => /tank/.test(line))).toEqual([]);
});

test('by how much a thing is out is no size of it', () => {
  expect(
    found('The slats are 620 millimetres long.', 'The slats came out three millimetres too long.'),
  ).toEqual([]);
});

test('a size that only comes near a sum is not worked out from it', () => {
  const story = new ToldStory('metric', 'GB').hear(
    "The slats are 18 ply, 1340 long because the van's 1360 wide.",
    'Measured the van again and it is 1348 wide.',
  );
  expect(story.found().filter((line) => line.startsWith('stale'))).toEqual([]);
});

test('metres do not slip by a factor of units that measure no length', () => {
  expect(
    found('The run to the shed is 28 metres.', 'The run to the shed is 38 metres.').filter((line) =>
      line.startsWith('slip'),
    ),
  ).toEqual([]);
});

test('what came in another size than ordered is not told as measured anew', () => {
  const story = new ToldStory('metric', 'GB').hear(
    'Ordered the sole boards at 390 wide.',
    'Sole boards came, they are 380 wide, not the 390 I asked for.',
  );
  const [finding] = story.findings();
  expect(finding?.why).toContain('what came has another size');
  expect(finding?.why).not.toContain('measured anew');
});
