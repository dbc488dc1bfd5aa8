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

describe('put right by being told so', () => {
  test.each([
    ["There's damp in the back wall.", "The back wall's dry now."],
    ['The back wall is damp.', "Wall's dry now."],
    ['The tap under the sink is dripping.', 'The tap has stopped dripping.'],
    ['The pump is noisy.', 'The pump runs quiet now.'],
    ["The hatch won't close.", 'The hatch closes again.'],
    ["There's water in the locker under the port bunk.", "The locker's finally dry."],
    ['The fuse keeps tripping on the pump circuit.', 'No more tripping on the pump circuit.'],
    ['The drain is blocked.', 'The drain is clear again.'],
    ['The gate is sagging.', 'Gate hangs level now.'],
    ['The tiller is loose.', 'The tiller is tight again.'],
  ])('%s %s', (snag, state) => {
    expect(openAfter(snag)).toHaveLength(1);
    expect(openAfter(snag, state)).toEqual([]);
  });

  test('with what was told beside it, where it is of the same kind', () => {
    const cure = "The roof is fixed. There was one bad screw, and it's dry now.";
    expect(openAfter("The roof is leaking. There's water on the shelf.", cure)).toEqual([]);
    expect(openAfter('The roof is leaking. The vice is loose.', cure)).toEqual(['The vice is loose']);
  });

  test.each([
    ['a state of another kind', 'The lid is warped.', 'The lid is dry now.'],
    ['a state of another thing', 'The north wall is damp.', 'The south wall is dry now.'],
    ['a state that is denied', 'The wall is damp.', "The wall isn't dry yet."],
    ['a state that is waited for', 'The wall is damp.', 'Once the wall is dry now I can plaster.'],
    ['a state that is hoped for', 'The wall is damp.', 'The wall should be dry again soon.'],
  ])('not by %s', (_, snag, state) => {
    expect(openAfter(snag, state)[0]).toBe(openAfter(snag)[0]);
  });
});

test('a question whether it is right again leaves the snag open', () => {
  expect(openAfter('The pump leaks.', 'Is the pump dry now?')).toEqual(['The pump leaks']);
  expect(openAfter('The pump leaks.', 'The pump is dry now.')).toEqual([]);
});
