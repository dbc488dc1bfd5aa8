import { expect, test } from 'vitest';
import { ToldStory } from '../../kit/told-story.ts';

test.each([
  [
    'a part said before its sum is no result of it',
    'The bench top is 900 millimetres high. The legs are the bench top less 38 millimetres, so the legs are 862 millimetres long.',
    ['bench legs length = bench top height - 38 mm'],
  ],
  [
    'a reason given after its result is no result of it',
    'The frame is the opening plus thirty each side, so the frame is 930 wide, because the opening is 870 wide.',
    ['frame width = opening width + 2 * 30 mm'],
  ],
  [
    'the sum of a part and an allowance on both sides',
    'The opening is 870 wide. Plus thirty a side that makes the frame 930 wide.',
    ['frame width = opening width + 2 * 30 mm'],
  ],
])('%s', (_name, talk, formulas) => {
  const story = new ToldStory().hear(talk);
  expect(story.formulas()).toEqual(formulas);
  expect(story.found()).toEqual([]);
});

test('a figure said again is not worked out from its own result', () => {
  const story = new ToldStory().hear(
    'The opening is 870 wide. Plus thirty a side that makes the frame 930 wide.',
    'So the opening is 870 wide and the frame is 930 wide, thirty a side.',
    'I changed my mind, the opening is now 900 wide.',
  );
  expect(story.found()).toEqual([
    'decided: opening width 870 mm -> 900 mm',
    'stale: frame width 930 mm -> 960 mm',
  ]);
});

test.each([
  ['The legs are sawn, 740 millimetres long.', ['stale: legs length 862 mm -> 740 mm']],
  ['New legs are sawn, 740 millimetres long.', []],
  ['New legs are needed, they will be 740 millimetres long.', ['stale: legs length 862 mm -> 740 mm']],
])('a part that follows from others: "%s"', (talk, found) => {
  const story = new ToldStory()
    .hear('The bench top is 900 millimetres high and 38 millimetres thick.')
    .hear('The legs are the bench top less 38 millimetres, so the legs are 862 millimetres long.')
    .hear(talk);
  expect(story.found()).toEqual(found);
});
