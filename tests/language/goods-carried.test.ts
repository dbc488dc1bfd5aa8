/** Goods named behind whoever brings them, and behind when they come. */
import { expect, test } from 'vitest';
import { readMemo } from '../../src/language/pipeline.ts';

const arrivalsOf = (text: string) =>
  readMemo(text, { units: 'metric', region: 'GB', recordedAt: '2026-06-10T18:00:00+01:00' }).notes.arrivals;

test.each([
  ['The lorry turned up with the pantiles.', 'pantiles', true],
  ['The courier came with the cowl.', 'cowl', true],
  ['Showed up this morning with the rivets.', 'rivets', true],
  ['The lorry comes tomorrow with the purlins.', 'purlins', false],
  ['The sawmill says the purlins will be ready on Friday.', 'purlins', false],
  ['The glazier said Thursday for the skylight.', 'skylight', false],
  ['The pantiles turned up.', 'pantiles', true],
] as const)('%s', (text, item, received) => {
  expect(arrivalsOf(text)).toMatchObject([{ item, received }]);
});

test.each(['The lorry turned up with my brother.', 'No sign of rust.'])('none in "%s"', (text) => {
  expect(arrivalsOf(text)).toEqual([]);
});

test('what there is no sign of is awaited where it is goods', () => {
  expect(arrivalsOf('No sign of the pantiles.')).toMatchObject([{ item: 'pantiles', received: false }]);
});
