import { expect, test } from 'vitest';
import { readQuantities } from '../../../src/language/quantities.ts';
import { tokenise } from '../../../src/language/tokens.ts';

const unitsOf = (said: string) =>
  readQuantities(said, tokenise(said), {
    units: 'metric',
    region: 'GB',
    recordedAt: '2026-03-07T18:40:00+00:00',
    knownFigures: [{ item: 'stove', attribute: 'weight', value: 92, unit: 'kg' }],
  }).quantities.map(({ value, unit }) => `${value} ${unit}`);

test('parts that add up to their total take the unit that one of them had before', () => {
  const said =
    'Sums now. Deck, 690. Cabin, 410. Stove, 92. Odds and ends, 130. That makes thirteen twenty two.';
  expect(unitsOf(said)).toEqual(['690 kg', '410 kg', '92 kg', '130 kg', '1322 kg']);
});

test('numbers that do not add up stay sizes', () => {
  expect(
    unitsOf('Deck, 690. Cabin, 410. Shelf, 92. Door, 1130. That makes nineteen twenty two.'),
  ).not.toContain('690 kg');
});
