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
  ['The shelf it sits on is rated for 250.', ['shelf weight 250 kg']],
  ['The winch is good for 450.', ['winch weight 450 kg']],
  ['The hoist will take 500.', ['hoist weight 500 kg']],
  ['The brackets hold 40 each.', ['brackets weight 40 kg']],
  ['The trailer carries 750 tops.', ['trailer weight 750 kg']],
  [
    'The plate says 1600 kilos and she weighs 1120 empty so that is 480 to play with.',
    ['plate weight 1600 kg', 'plate weight 1120 kg', 'plate weight 480 kg'],
  ],
  // No weight: other kinds of rating, and what is put on it.
  ["The breaker's rated at 16.", ['breaker current 16 A']],
  ['The shelf is good for 80 litres.', ['shelf volume 80 L']],
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
