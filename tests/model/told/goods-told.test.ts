/** What is expected, what came under another name, and what its use tells. */
import { describe, expect, test } from 'vitest';
import { bareGoods, isSameGoods, partsOf } from '../../../src/model/goods.ts';
import { ToldStory } from '../../kit/told-story.ts';

const heard = (...memos: readonly string[]) => new ToldStory('metric', 'GB').hear(...memos);
const expectedOf = (story: ToldStory) => story.project.rows.expectedArrivals().map(({ item }) => item);

test.each([
  ['a length of larch, four by three', 'larch'],
  ['the missing base', 'base'],
  ['rest of the bricks', 'bricks'],
  ['eight hundred bricks', 'bricks'],
  ['two sheets of sixteen gauge steel', 'sixteen gauge steel'],
  ['right hand bracket', 'right hand bracket'],
])('"%s" without how many and which: "%s"', (name, bare) => {
  expect(bareGoods(name)).toBe(bare);
});

test.each([
  ['the larch', 'a length of larch, four by three', true],
  ['fourth base', 'missing base', true],
  ['rest of the bricks', 'bricks', true],
  ['bricks', 'floor boards', false],
  ['left bracket', 'fuse box', false],
])('"%s" and "%s"', (a, b, same) => {
  expect(isSameGoods(a, b)).toBe(same);
});

test.each([
  ['belt and a set of bearings', ['belt', 'set of bearings']],
  ['Bath and basin', ['Bath', 'basin']],
  ['hob and the sink', ['hob', 'sink']],
  ['tongue and groove', ['tongue and groove']],
  ['hot and cold pipes', ['hot and cold pipes']],
  ['two and a half tonnes of sand', ['two and a half tonnes of sand']],
])('"%s" comes as %j', (item, parts) => {
  expect(partsOf(item)).toEqual(parts);
});

describe('what is still to come', () => {
  test('of two things that were ordered together one may come first', () => {
    const story = heard('I ordered the hob and the sink, they should be here on Friday.', "The hob's here.");
    expect(expectedOf(story)).toEqual(['sink']);
    expect(expectedOf(story.hear('The sink arrived.'))).toEqual([]);
  });
  test('what was worked with has come', () => {
    const story = heard(
      'I ordered the hob, it should be here on Friday.',
      'I bedded the hob this afternoon.',
    );
    expect(expectedOf(story)).toEqual([]);
  });
  test.each(['I rang the shop about the hob.', 'I measured the hob opening.', 'I cut the hole for the hob.'])(
    'it is still to come after "%s"',
    (said) => {
      expect(expectedOf(heard('I ordered the hob, it should be here on Friday.', said))).toEqual(['hob']);
    },
  );
});

describe('promises kept by what was done', () => {
  const promise = "I promised Ruth I'd show her how the moisture meter works.";
  const open = (...memos: readonly string[]) =>
    heard(...memos)
      .project.rows.openPromises()
      .map(({ gist }) => gist);
  test('a promise is called by what was promised', () => {
    expect(open(promise)).toEqual(['Show Ruth how the moisture meter works']);
  });
  test('the same verb as a deed keeps it', () => {
    expect(open(promise, 'Showed Ruth the moisture meter.')).toEqual([]);
  });
  test.each([
    'I need to show Ruth the moisture meter.',
    'I bought a moisture meter.',
    'Showed Ruth the garden.',
  ])('"%s" does not', (said) => {
    expect(open(promise, said)).toHaveLength(1);
  });
});

describe('tasks that one deed ends', () => {
  const left = (...memos: readonly string[]) =>
    heard(...memos)
      .tasks(20)
      .filter((line) => !line.startsWith('done'));
  test('two, done in two ways', () => {
    const tasks = left(
      'I need to plumb the tanks. I also need to prime the hatch.',
      'I plumbed the tanks and primed the hatch.',
    );
    expect(tasks).toEqual([]);
  });
  test('what was put back is not what was to be taken up', () => {
    expect(left('I need to get the floorboards up.', 'The floorboards are down.')).toHaveLength(1);
  });
  test('a thing of the same name in front is another thing', () => {
    expect(left('I need to cut the sink hole.', "The sink's in.")).toHaveLength(1);
  });
  test('goods do not end what only sounds like getting them', () => {
    expect(left('I need to get the springs lashed.', 'The new springs arrived.')).toHaveLength(1);
  });
});

test('what is expected has come once it is worked with, and not by being measured, ordered or asked about', () => {
  const story = heard(
    'The hob should come on Thursday.',
    'Measured the hob.',
    'Ordered the hob.',
    'Asked about the hob.',
  );
  expect(expectedOf(story)).toEqual(['hob']);
  story.hear('Bedded the hob.');
  expect(expectedOf(story)).toEqual([]);
});
