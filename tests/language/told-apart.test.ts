/** Things of one name are told apart by where they stand. */
import { expect, test } from 'vitest';
import { readMemo } from '../../src/language/pipeline.ts';

const items = (text: string) =>
  readMemo(text, { units: 'metric', recordedAt: '2026-05-01T12:00:00Z' }).notes.figures.map(
    ({ item }) => item,
  );

test.each([
  ['The trough by the pigsty is 200 litres.', ['pigsty trough']],
  ['Trough by the pigsty 200. Trough by the hen run 210.', ['pigsty trough', 'hen run trough']],
  [
    'The window over the sink is 900 wide. The window over the bath is 910 wide.',
    ['sink window', 'bath window'],
  ],
  ['The tap in the yard gives 3 bar, the tap in the dairy gives 2 bar.', ['yard tap', 'dairy tap']],
  ['The post by the gate is 100 square and the post by the shed is 95.', ['gate post', 'shed post']],
  ['The stool by the stove is 450 high.', ['stove stool']],
])('"%s" is about %j', (text, named) => {
  expect(items(text)).toEqual(named);
});

test.each([
  // Where it lies just now tells no two things apart.
  ['The plank on the bench is 200 wide.', ['plank']],
  ['The window over the sink is 900 wide.', ['window']],
  ['The bench by Friday has to be 900 high.', ['bench']],
  ['The legs by my reckoning are 810 long.', ['legs']],
])('"%s" keeps the plain name: %j', (text, named) => {
  expect(items(text)).toEqual(named);
});
