/** Figures that are no new size of their thing, and those that are. */
import { describe, expect, test } from 'vitest';
import { isDeviation, isOfMore, isOrElse, oldValueBehind, partThere } from '../../src/model/asides.ts';
import { placeOf, sentencesOf } from '../../src/model/talk.ts';
import { ToldStory } from '../kit/told-story.ts';

/** The place of the words in square brackets. */
function marked(text: string) {
  const start = text.indexOf('[');
  const quote = text.slice(start + 1, text.indexOf(']'));
  const bare = text.replace(/[[\]]/g, '');
  return { quote, place: placeOf(bare, sentencesOf(bare), { start, end: start + quote.length }) };
}

describe('what does under a condition', () => {
  test.each([
    ['The stove needs three hundred clear, or [one fifty] with a shield.', true],
    ['It has to be 400 off the rafter, or only [150] if it is twin wall.', true],
    ['It is three hundred, or [one fifty]. With a shield it looks better.', false],
    ['The rail is [900] high with a shield behind it.', false],
    ['I need 40 or [50] kilos of sand.', false],
  ])('%s', (text, expected) => {
    const { quote, place } = marked(text);
    expect(isOrElse(quote, place)).toBe(expected);
  });
});

describe('by how much it is out', () => {
  test.each([
    'The well is [twelve mil] too wide.',
    'The rail is short by [fourteen mil].',
    'The posts are [45] mil longer than I thought.',
    'The frame is out by about [7 mil].',
    'Mine is [seven centimetres] too large.',
    'The lid is [three mil] out of square.',
    'The brackets are too long by [14].',
  ])('%s', (text) => {
    const { quote, place } = marked(text);
    expect(isDeviation(quote, place)).toBe(true);
  });
  test.each([
    'The well is [710] wide.',
    'The rail is cut short, [860] long.',
    'The shelf sits [310 mil] over the floor.',
    'The panel stands [40] proud.',
    'The step is [180] high and too steep.',
  ])('a size: %s', (text) => {
    const { quote, place } = marked(text);
    expect(isDeviation(quote, place)).toBe(false);
  });
});

test.each([
  [', from ', 'changed'],
  [' now, up from ', 'changed'],
  [' off the floor, and I said ', 'recalled'],
  [', it used to be ', 'recalled'],
  [' by ', undefined],
  [' long, then I cut it to ', undefined],
] as const)('the old value behind the new one: "280%s240"', (between, how) => {
  expect(oldValueBehind(between)).toBe(how);
});

test.each([
  ['it weighs 910 kilos with water in it', true],
  ['three hundred and ten with a person', true],
  ['the lot comes to 268 kilos', true],
  ['all told it is 300', true],
  ['it weighs 62 kilos', false],
  ['62 kilos with the tape measure lost', false],
])('of more than the thing itself: %s', (words, isMore) => expect(isOfMore(words)).toBe(isMore));

test.each([
  ['Over the porch the rafters are only [four inches].', true],
  ['In the bow the floor is only [9 mil].', true],
  ['The rafters are only [four inches].', false],
  ['On Monday the rafters came, [four inches].', false],
])('a part there: %s', (text, isPart) => expect(partThere(marked(text).place)).toBe(isPart));

const found = (...memos: readonly string[]) => new ToldStory('metric', 'GB').hear(...memos).found();

describe('no clash', () => {
  test.each([
    ['The well is 710 wide.', 'The well is twelve mil too wide.'],
    ['The trailer weighs 640 kilos.', 'The trailer weighs 910 kilos with water and tools in it.'],
    ["I've ordered the resin, five litres.", "The resin's in, three litres of it."],
    ['The pump cuts out at 3 bar.', 'The pump held 2.8 bar overnight.'],
    ['The rafters are five inches deep.', 'Over the porch the rafters are only four inches deep.'],
    ['The stove is a small one.', 'The stove needs 300 mm clear at the back, or 150 mm with a shield.'],
    ['The vents are on the list.', "I've gone for vents of 200 by 150."],
    ['I need to trim the uprights. The uprights are 620 long.', 'The uprights are trimmed, 594 long.'],
  ])('%s | %s', (...memos) => expect(found(...memos)).toEqual([]));
});

describe('a clash all the same', () => {
  test.each([
    [['The rail is 900 long.', 'The rail is 915 long.'], 'remeasured: rail length 900 mm -> 915 mm'],
    [
      ['The table weighs 62 kilos.', "I weighed the table again, it's 66 kilos."],
      'remeasured: table weight 62 kg -> 66 kg',
    ],
    [
      ['The step is 180 high.', 'The step is now 195 high, and I said 180.'],
      'remeasured: step height 180 mm -> 195 mm',
    ],
    [
      ['The cabin has a trunk.', "I'm lowering the cabin trunk to 400 mil high, from 500."],
      'decided: cabin trunk height 500 mm -> 400 mm',
    ],
  ] as const)('%j', (memos, clash) => expect(found(...memos)).toEqual([clash]));
});
