/** Bare numbers that are a mass: told by how something is loaded, or left of a mass in the same breath. */
import { expect, test } from 'vitest';
import { readMemo } from '../../../src/language/pipeline.ts';

test.each([
  [
    'Plate says fifteen hundred gross, so that leaves eight twenty for the boat.',
    ['plate weight 1500 kg', 'boat weight 820 kg'],
  ],
  ["The trailer's 750 tare.", ['trailer weight 750 kg']],
  ["The trailer's 750 gross and that leaves 400.", ['trailer weight 750 kg', 'trailer weight 400 kg']],
  // A size, and no mass before it.
  ['The rail is 750 long.', ['rail length 750 mm']],
])('%s', (text, read) => {
  const { figures } = readMemo(text, {
    units: 'metric',
    region: 'GB',
    recordedAt: '2026-06-10T12:00:00+01:00',
  }).notes;
  expect(figures.map(({ item, attribute, value, unit }) => `${item} ${attribute} ${value} ${unit}`)).toEqual(
    read,
  );
});
