import { expect, test } from 'vitest';
import type { ItemRow } from '../../src/model/rows.ts';
import { isSpokenOf, spokenOf, stemsSaid } from '../../src/model/spoken-names.ts';
import { ToldStory } from '../kit/told-story.ts';

const things = (...names: readonly string[]) => names.map((name) => ({ name }) as ItemRow);
const spoken = (talk: string, ...names: readonly string[]) =>
  spokenOf(things(...names), stemsSaid(talk)).map(({ name }) => name);

test.each([
  ['bench top', 'The top is 40.', true],
  ['bench top', 'The bench is 900 high.', false],
  ['galley bench top', 'The galley bench is 900 high.', true],
  ['hatch', 'The bench is 900 high.', false],
])('"%s" in "%s": %s', (name, talk, expected) => {
  expect(isSpokenOf(name, stemsSaid(talk))).toBe(expected);
});

test('what is said in full is meant, and no other thing that ends in the same word', () => {
  const names = ['bench top', 'galley duct top', 'legs', 'hatch'] as const;
  expect(spoken('The bench top is 900 high, so cut the legs at 860.', ...names)).toEqual([
    'bench top',
    'legs',
  ]);
  expect(spoken('The top is 900 high.', ...names)).toEqual(['bench top', 'galley duct top']);
});

test('a word that many things end in names none of them', () => {
  const tops = Array.from({ length: 9 }, (_, k) => `top of kind ${k} top`);
  expect(spoken('The top is 900 high.', ...tops)).toEqual([]);
  expect(spoken('The top is 900 high.', ...tops.slice(1))).toHaveLength(8);
});

test('a size that is told of one top is not worked out from another that happens to fit', () => {
  const story = new ToldStory().set('galley duct top', 'depth', 40).set('bench top', 'height', 900);
  story.hear('The bench top is 900 millimetres high, so cut the legs at 860.');
  expect(story.formulas()).toEqual([]);
  const named = new ToldStory().set('galley duct top', 'depth', 40).set('bench top', 'height', 900);
  named.hear('The bench top is 900 high less the galley duct top, so cut the legs at 860.');
  expect(named.formulas()).toEqual(['bench legs length = 900 mm - galley duct top depth']);
});
