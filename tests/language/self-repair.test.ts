import { expect, test } from 'vitest';
import type { ReadContext } from '../../src/language/notes.ts';
import { readQuantities } from '../../src/language/quantities.ts';
import { tokenise } from '../../src/language/tokens.ts';

const METRIC: ReadContext = { units: 'metric', region: 'GB', recordedAt: '2026-04-09T09:00:00+01:00' };
const read = (said: string) =>
  readQuantities(said, tokenise(said), METRIC).quantities.map(({ value, unit, quote }) => [
    quote,
    value,
    unit,
  ]);

test.each([
  ['the sill is 900 high, no, 915', [['915', 915, 'mm']]],
  ['the rail is 600 long, no, 610, sorry, 615', [['615', 615, 'mm']]],
  ['the shelf is seventy, no sorry, seventy five deep', [['seventy five deep', 75, 'mm']]],
  ['the cill is eleven eighty, no, tell a lie, eleven ninety wide', [['eleven ninety wide', 1190, 'mm']]],
  ['it weighs about ten kilos, no, listen to me, about two kilos', [['about two kilos', 2, 'kg']]],
  [
    'the ladder is two thousand, two hundred millimetres long',
    [['two thousand, two hundred millimetres long', 2200, 'mm']],
  ],
  [
    'I told you the deck is nine metres long. That was wrong. It is eleven metres long.',
    [['eleven metres long', 11, 'm']],
  ],
])('"%s" gives what stands', (said, figures) => {
  expect(read(said)).toEqual(figures);
});

test.each([
  ['the top is 40 thick and the legs are 900 long', [40, 900]],
  ['the gap is 5 mil, no more', [5]],
  ['the deck is 9 metres long. That was wrong of me, I should have said hello first.', [9]],
])('"%s" repairs nothing', (said, values) => {
  expect(read(said).map(([, value]) => value)).toEqual(values);
});
