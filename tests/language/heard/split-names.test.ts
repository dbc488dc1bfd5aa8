import { expect, test } from 'vitest';
import { heardWords } from '../../../src/language/heard/repair.ts';
import { splitNames } from '../../../src/language/heard/split-names.ts';
import type { ReadContext } from '../../../src/language/notes.ts';

const HEARD: ReadContext = { units: 'metric', recordedAt: '2026-03-02T18:00:00Z', isHeard: true };

test.each([
  ['a hatchboard of oak', 'hatch board'],
  ['a ringbolt in the deck', 'ring bolt'],
])('"%s" holds %s', (text, means) => {
  expect(splitNames(heardWords(text), HEARD)).toMatchObject([{ means }]);
});

test.each([
  'the floorboards and the headroom',
  'a tankless heater',
  'the handrail is hardwood',
  'a carport',
  'a mousehole',
  'the zzboardqq',
])('"%s" is left alone', (text) => expect(splitNames(heardWords(text), HEARD)).toEqual([]));

test('typed talk is left alone', () => {
  expect(splitNames(heardWords('the hatchboard'), { ...HEARD, isHeard: false })).toEqual([]);
});
