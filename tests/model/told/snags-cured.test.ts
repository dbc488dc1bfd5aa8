/** When a snag counts as put right, and when not. */
import { describe, expect, test } from 'vitest';
import { ToldStory } from '../../kit/told-story.ts';

const openAfter = (...memos: readonly string[]) =>
  new ToldStory('metric', 'GB')
    .hear(...memos)
    .project.rows.openProblems()
    .map(({ gist }) => gist);

describe('put right', () => {
  test.each([
    [
      'by the work that was told as its remedy',
      'The gate hinge has cracked, so I need a new one.',
      'New gate hinge is on.',
    ],
    [
      'by a new one in its place',
      'The isolating valve under the sink is weeping.',
      'Fitted a new isolating valve.',
    ],
    [
      'by goods that came and were fitted',
      "The drive belt's perished.",
      'The drive belt came this morning and I fitted it.',
    ],
    [
      'by what is told behind the deed',
      'Two of the courses on the left end are out by ten mil.',
      'Took down the left end and relaid it, spot on now.',
    ],
    ['by goods that were late', "The toilet's on back order.", "The toilet's arrived."],
    ['by the right goods', "The basin's chipped.", 'The new basin came.'],
  ])('%s', (_, snag, deed) => {
    expect(openAfter(snag)).toHaveLength(1);
    expect(openAfter(snag, deed)).toEqual([]);
  });

  test('a deed may end two snags that it names', () => {
    const left = openAfter(
      "The rear door doesn't latch.",
      'Turns out the door latch has a bent striker.',
      'I straightened the striker and the door latch works now.',
    );
    expect(left).toEqual([]);
  });
});

describe('not put right', () => {
  test.each([
    ['by ordering', 'The oil seal at the back is leaking, I need to order one.', "The oil seal's ordered."],
    [
      'by work on another thing of the same name',
      'The gate hinge has cracked.',
      'I pulled the hatch bolts and rebedded them.',
    ],
    ['by a new one of something else', 'The fresh water pump is leaking.', 'Fitted a new bilge hose.'],
    ['by goods of another kind', "The toilet's on back order.", "The bath's arrived."],
  ])('%s', (_, snag, deed) => {
    expect(openAfter(snag, deed)).toHaveLength(1);
  });
});
