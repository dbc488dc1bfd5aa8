/** Parts made or ordered to a size that the thing they are for had until it changed. */
import { expect, test } from 'vitest';
import { ToldStory } from '../../kit/told-story.ts';

const WINDOW = [
  'The east window opening is 1210 wide.',
  "I measured the east window opening again and it's 1198.",
];

function heard(...memos: readonly string[]): ToldStory {
  const story = new ToldStory();
  for (const memo of memos) story.hear(memo);
  return story;
}
const ofOldSize = (story: ToldStory) => story.findings().filter(({ kind }) => kind === 'stale');

test('a sill ordered to the opening as it was is told, with what stands now', () => {
  const [finding, ...more] = ofOldSize(heard(...WINDOW, "I've ordered the east window sill at 1210."));
  expect(more).toEqual([]);
  expect(finding).toMatchObject({
    item: 'east window sill',
    was: { value: 1210, unit: 'mm', state: 'ordered', source: { memoId: 'm3' } },
    now: { value: 1198, unit: 'mm', source: { memoId: 'm2' } },
    status: 'open',
    why: 'it is the size that east window opening had before',
  });
  expect(finding?.difference).toEqual({ value: -12, unit: 'mm' });
});

test.each([
  ['the size that stands', [...WINDOW, "I've ordered the east window sill at 1198."]],
  ['a size of its own', [...WINDOW, "I've ordered the east window sill at 1260."]],
  ['a thing that never changed', [WINDOW[0] as string, "I've ordered the east window sill at 1210."]],
  ['a window of the other side', [...WINDOW, "I've ordered the west window sill at 1210."]],
  ['a part of another thing', [...WINDOW, "I've ordered the hatch sill at 1210."]],
  [
    'a sheet, whose thickness comes together by chance',
    [
      'The east window board is 18 thick.',
      "I measured the east window board again and it's 22 thick.",
      "I've ordered the east window board packers at 18 thick.",
    ],
  ],
])('%s is no part of an old size', (_, memos) => {
  expect(ofOldSize(heard(...memos))).toEqual([]);
});

test('the old size of one side is told where the other side stands beside it', () => {
  const changed = ['Bunk base is 1900 by 640.', 'The bunk base is going 600 wide, not 640.'];
  expect(ofOldSize(heard(...changed, 'Cut the bunk base at 640.'))).toMatchObject([
    { item: 'bunk base', was: { value: 640 }, now: { value: 600 }, why: 'it is the size that it had before' },
  ]);
  expect(ofOldSize(heard(...changed, 'Cut the bunk base at 600.'))).toEqual([]);
  expect(ofOldSize(heard(...changed, 'Cut the bunk base at 1900.'))).toEqual([]);
});

test('the part made anew to what it should be answers it, and nothing more is asked', () => {
  const story = heard(...WINDOW, 'I cut the east window sill at 1210.');
  expect(ofOldSize(story)).toMatchObject([{ status: 'open' }]);
  story.hear('I cut the east window sill again at 1198.');
  expect(ofOldSize(story)).toMatchObject([{ status: 'settled', settledBy: { choice: 'take-new' } }]);
  expect(story.findings().filter(({ status }) => status === 'open')).toEqual([]);
});
