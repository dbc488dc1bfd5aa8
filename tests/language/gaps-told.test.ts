/** What is between things: bars apart, gaps between named things; bounds and capacities that are no snag. */
import { describe, expect, test } from 'vitest';
import { notesTold as notesOf } from '../kit/told.ts';

const sizesOf = (text: string) =>
  notesOf(text).figures.map((figure) => [figure.item, figure.attribute, figure.value]);

test.each([
  ['Gap between the balusters has to be under 100.', ['balusters', 'gap', 100]],
  ["I've left a gap of 10 between the boards.", ['boards', 'gap', 10]],
  ['The bars are twelve apart.', ['bars', 'gap', 12]],
  ['The chassis rails, which are 860 apart.', ['chassis rails', 'gap', 860]],
  ['Balusters worked out at 104 apart.', ['balusters', 'gap', 104]],
  ['The joists are 400 apart.', ['joists', 'other', 400]],
])('"%s"', (text, size) => {
  expect(sizesOf(text)).toEqual([size]);
});

describe('a bound or what a thing can do is no snag', () => {
  test.each([
    "The slates can't go lower than 25 degrees.",
    "The oven can't go over 200 degrees.",
    'The hoist lifts 500 kilos.',
  ])('"%s"', (text) => {
    expect(notesOf(text).problems).toEqual([]);
    expect(notesOf(text).figures).toHaveLength(1);
  });

  test.each([
    'The veneer lifts at the corner.',
    "The gate won't go any further.",
    "The window won't open past the gutter.",
  ])('but "%s" is one', (text) => {
    expect(notesOf(text).problems).toHaveLength(1);
  });
});

test('degrees of what covers a roof are an angle', () => {
  expect(notesOf('The slates want 25 degrees.').figures[0]).toMatchObject({
    unit: 'deg',
    dimension: 'angle',
  });
  expect(notesOf('The slab was 25 degrees.').figures[0]).toMatchObject({ dimension: 'temperature' });
});

test('what a sum came to is no work', () => {
  expect(notesOf('Balusters worked out at 104 apart.').done).toEqual([]);
});
