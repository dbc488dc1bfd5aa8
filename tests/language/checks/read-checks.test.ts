import { expect, test } from 'vitest';
import { checksIn, recordsIn } from '../../kit/records.ts';

test('checks come in the order of speech, each with its sentence as its quote', () => {
  const said =
    'All of it has to stay under 400 kilos. The stove has to go down the companionway. Full cure is seven days at twenty.';
  expect(recordsIn(said).map(({ quote }) => quote)).toEqual([
    'All of it has to stay under 400 kilos',
    'The stove has to go down the companionway',
    'Full cure is seven days at twenty',
  ]);
});

test('a text of nothing but checks gives no more than a day has', () => {
  expect(checksIn('The stove has to go down the companionway. '.repeat(200))).toHaveLength(60);
});
