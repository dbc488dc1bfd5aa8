import { expect, test } from 'vitest';
import { readItems } from '../../src/language/items/assign-items.ts';
import { Noted, Weighing } from '../../src/language/items/tally.ts';
import { readWords } from '../../src/language/items/words.ts';
import { readMemo } from '../../src/language/pipeline.ts';
import { bracketed } from '../kit/bracketed.ts';

const tagged = (text: string) => readWords(text, []).map(({ lower, tag }) => `${lower}/${tag}`);

test.each([
  ['thats the sill', ['that/pronoun', "'s/be"]],
  ['theyre oak', ['they/pronoun', "'re/be"]],
  ['shes on her legs', ['she/pronoun', "'s/be"]],
  ['im going up', ['i/pronoun', "'m/be"]],
  ['ive cut it', ['i/pronoun', "'ve/auxiliary"]],
  ['itll fit', ['it/pronoun', "'ll/modal"]],
  ['its 40 wide', ['it/pronoun', "'s/be"]],
  ['its not level', ['it/pronoun', "'s/be"]],
  ['dont paint it', ["don't/auxiliary"]],
  ['wont fit', ["won't/modal"]],
])('"%s" is read as with its apostrophe', (text, first) => {
  expect(tagged(text).slice(0, first.length)).toEqual(first);
});

test.each([
  ['its lid is oak', 'its/possessive'],
  ['its bracket', 'its/possessive'],
  ['ill fitting', 'ill/noun'],
  ['well made', 'well/filler'],
])('"%s" opens with %s', (text, first) => {
  expect(tagged(text)[0]).toBe(first);
});

test('both halves of a short form keep their place in the text', () => {
  const text = 'so thats it';
  expect(readWords(text, []).map(({ span }) => text.slice(span.start, span.end))).toEqual([
    'so',
    'that',
    's',
    'it',
  ]);
});

const items = (marked: string) => {
  const { text, quantities } = bracketed(marked);
  const context = { units: 'metric', recordedAt: '2026-05-01T12:00:00Z' } as const;
  return readItems(text, quantities, context).figures.map(({ item }) => item);
};

test.each([
  ['The planks are here. Boards run [3.2 m] to [4 m].', 'boards'],
  ['the railing is up, the county says [920] at the least', 'railing'],
  ['I planed the shelf and the micrometer says [21.5]', 'shelf'],
])('"%s" is of the %s', (said, item) => {
  expect(items(said)[0]).toBe(item);
});

test.each([
  ['I cut the legs last night at [900 mm], all four.', 'legs'],
  ['Cut the treads Thursday, [770] long.', 'treads'],
  ['We hung the hatch this morning, [610 mm] wide.', 'hatch'],
  ['Glued up the mast last week, [7.2 m] long.', 'mast'],
  ["Friday's coaming is [120 mm] high.", 'coaming'],
  ["Last week's boards are [22 mm] thick.", 'boards'],
  ['The ladder money is [40 GBP].', 'ladder'],
  ['The timber cost is [300 GBP].', 'timber'],
  // Things that are named for when they serve.
  ['The night store is [1900 mm] high.', 'night store'],
  ['The day tank is [300 mm] deep.', 'day tank'],
  ['The day bed is [760 mm] wide.', 'day bed'],
  ['The storage heater is [680 mm] wide.', 'storage heater'],
  ['The summer beam is [300 mm] deep.', 'summer beam'],
])('words of time and of money stay out of the name: "%s" is of the %s', (said, item) => {
  expect(items(said)[0]).toBe(item);
});

test('weights of features add up, unknown ones weigh nothing', () => {
  const weighing = new Weighing({ first: 1.5, 'kind|hole': 0.25, 'kind|hole|length': -1 });
  weighing.one('first');
  weighing.one('never');
  weighing.two('kind', 'hole', 2);
  weighing.two('kind', 'pipe');
  weighing.three('kind', 'hole', 'length', 0.5);
  weighing.three('kind', 'hole', 'mass');
  expect(weighing.sum).toBe(1.5);
  const noted = new Noted();
  noted.one('first');
  noted.two('kind', 'hole', 2);
  noted.three('kind', 'hole', 'length', 0.5);
  expect(noted.features).toEqual([
    ['first', 1],
    ['kind|hole', 2],
    ['kind|hole|length', 0.5],
  ]);
});

test('a number with its verb run on is no number of feet', () => {
  expect(
    readMemo("Nothing wider than 740's going to fit.", {
      units: 'metric',
      recordedAt: '2026-05-01T12:00:00Z',
    }).notes.figures.map(({ item, value }) => [item, value]),
  ).toEqual([['unnamed', 740]]);
});
