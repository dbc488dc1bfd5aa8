/** Figures told round about: put right behind the clause, by what they differ, by what stands near heat, as the known one. */
import { describe, expect, test } from 'vitest';
import { readMemo } from '../../src/language/pipeline.ts';

const CONTEXT = { units: 'metric', region: 'GB', recordedAt: '2026-06-10T18:00:00+01:00' } as const;
const sizesOf = (text: string, more: object = {}) =>
  readMemo(text, { ...CONTEXT, ...more }).notes.figures.map((figure) => [
    figure.item,
    figure.attribute,
    figure.value,
    figure.unit,
  ]);

describe('put right behind the rest of the clause', () => {
  test.each([
    ['Window board is 1100 off the floor with the new floor in, no hang on, 1060.', 1060],
    ['The shelf is 300 up from the worktop on the kitchen side, sorry, 330.', 330],
  ])('"%s"', (text, value) => {
    const sizes = sizesOf(text);
    expect(sizes.map((each) => each[2])).toEqual([value]);
    expect(sizes[0]?.[0]).toMatch(/^(?:window board|shelf)/);
  });

  test.each([
    'The bulkhead is 1800 from the doors, no good, 1830 is what it wants.',
    'I cut one at 1100 on the left side of the door, no, four of them at 900.',
  ])('but not "%s"', (text) => {
    expect(sizesOf(text).length).not.toBe(1);
  });
});

describe('told by what it differs', () => {
  test.each([
    ["The centre line's at 200, that's 13 up from what I had.", 200, 187],
    ['The top is 580 deep, 20 less than the drawing.', 580, 600],
    ["It's 1260 long, so that's 20 more than I said.", 1260, 1240],
  ])('"%s"', (text, value, was) => {
    const { figures } = readMemo(text, CONTEXT).notes;
    expect(figures.map((figure) => [figure.value, figure.replaces?.value])).toEqual([[value, was]]);
  });

  test('but not where two things are compared', () => {
    expect(sizesOf('The shelf is 580 deep, 20 less than the worktop.').map((each) => each[2])).toContain(580);
    expect(
      readMemo('The shelf is 580 deep, 20 less than the worktop.', CONTEXT).notes.figures[0]?.replaces,
    ).toBe(undefined);
  });
});

describe('how far what gets hot stays from what burns', () => {
  test.each([
    'Stood the stove in the corner. Leaves 255 to the ply.',
    'The exhaust runs 60 mil from the brake hose.',
    'The stove maker says 400 mil to bare wood.',
    'The flue is 250 mil from the curtain.',
  ])('"%s" is a clearance', (text) => {
    expect(sizesOf(text).map((each) => each[1])).toEqual(['clearance']);
  });

  test.each(['The shelf is 60 mil from the board.', "The stove's hearth is 40 mil of foam."])(
    '"%s" is none',
    (text) => {
      expect(sizesOf(text).map((each) => each[1])).not.toContain('clearance');
    },
  );
});

test('the known figure that is spoken of is the one meant', () => {
  const known = { knownFigures: [{ item: 'worktop', attribute: 'height', value: 910, unit: 'mm' }] };
  expect(sizesOf("Sides are cut at 872 so with the 38 top that's the 910.", known).at(-1)).toEqual([
    'worktop',
    'height',
    910,
    'mm',
  ]);
});

test('as far as a thing was said to go is a size of that thing', () => {
  expect(
    sizesOf("The splashback goes from the worktop to the underside of the window cill so that's 160 now."),
  ).toEqual([['splashback', 'height', 160, 'mm']]);
});

describe('what is neither work nor snag nor delivery', () => {
  test.each([
    'The wall is 3420, plaster to plaster.',
    'Hm, did I read the tape wrong.',
    'The yard shuts on the 20th.',
    'The sill is wet, 24 percent.',
  ])('"%s"', (text) => {
    const { tasks, problems, arrivals, done } = readMemo(text, CONTEXT).notes;
    expect({ tasks, problems, arrivals, done }).toEqual({ tasks: [], problems: [], arrivals: [], done: [] });
  });
});

test('what viewers were told they would be shown is a promise, whatever it is of', () => {
  const { promises } = readMemo("I said I'd show how I lime wash the stone.", CONTEXT).notes;
  expect(promises.map((each) => each.gist)).toEqual(['Show how I lime wash the stone']);
});

test('"it" behind work on a top is the top', () => {
  const { done } = readMemo("Fridge is in. Scribed the top to the wall, it's down and fixed.", CONTEXT).notes;
  expect(done.map((each) => each.gist)).toContain("The top's down and fixed");
});

test('how late a delivery was is no figure', () => {
  expect(sizesOf('The top turned up a day late.')).toEqual([]);
});

test.each([
  ['The stove book says 300 mm to anything that burns.', 'at-least'],
  ['The stove wants 300 mm off any timber.', 'at-least'],
  ['Stove is in. The manual wants 300 mm to all combustibles.', 'at-least'],
  // What there is, and what is asked for one thing, bind nothing.
  ['The stove sits 300 mm from anything that burns.', 'exact'],
  ['I measured 300 mm from the stove to anything that burns.', 'exact'],
  ['The stove wants glass. It sits 300 mm from anything that burns.', 'exact'],
  ['The stove wants 300 mm off the ply.', 'exact'],
])('what is asked for between heat and all that burns is the least: "%s" is %s', (said, bound) => {
  const { figures } = readMemo(said, CONTEXT).notes;
  expect(figures).toMatchObject([{ attribute: 'clearance', value: 300, bound }]);
});
