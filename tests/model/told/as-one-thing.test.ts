/** Figures of two memos that are of one thing under another name, another side or another way of telling. */
import { expect, test } from 'vitest';
import { ToldStory } from '../../kit/told-story.ts';

const foundIn = (...memos: readonly string[]) => {
  const story = new ToldStory();
  for (const memo of memos) story.hear(memo);
  return story.found();
};

test.each([
  ['Front door opening is 838 wide.', 'Measured the front doorway again, 834 wide.', '838 mm -> 834 mm'],
  ['The work top is 40 thick.', 'Worktop is 38 thick.', '40 mm -> 38 mm'],
  ['Bath is 1700 by 700.', "Bath's 680 wide, put the tape on it.", '700 mm -> 680 mm'],
  [
    'Shaft center line is 187 above the floor.',
    "Centreline's at 200, that's 13 up from what I had.",
    '187 mm -> 200 mm',
  ],
  [
    'Headstock bolts are 65 foot pounds.',
    'Headstock bolts get 16.5 foot pounds.',
    '65 ft.lbf -> 16.5 ft.lbf',
  ],
])('"%s" and then "%s"', (first, then, change) => {
  expect(foundIn(first, then)).toEqual([expect.stringContaining(change)]);
});

test.each([
  ['The front door is 826 wide.', 'The back doorway is 838 wide.'],
  ['The handrail is 900 high.', 'The curtain rail is 2100 long.'],
  ['The window is 600 by 1200.', 'The window is 400 deep.'],
])('"%s" and then "%s" are two', (first, then) => {
  expect(foundIn(first, then)).toEqual([]);
});

test('two numbers of one breath: the one told in so many words is the change, the other is of something beside it', () => {
  const found = foundIn(
    'The bunks are 30 wide.',
    'She says them bunks is too wide so its 27 now not 30, so theres 26 of walkway.',
  );
  expect(found.filter((line) => line.includes('30 mm -> 27 mm'))).toHaveLength(1);
});
