import { expect, test } from 'vitest';
import { remembered } from '../src/remembered.ts';

test('an answer is found once, until there are too many', () => {
  const asked: string[] = [];
  const lengthOf = remembered(2, (text) => {
    asked.push(text);
    return text.length;
  });
  expect(['oak', 'oak', '', '', 'oak'].map(lengthOf)).toEqual([3, 3, 0, 0, 3]);
  expect(asked).toEqual(['oak', '']);
  // The third one makes room: all before it are found anew.
  expect(['larch', 'oak'].map(lengthOf)).toEqual([5, 3]);
  expect(asked).toEqual(['oak', '', 'larch', 'oak']);
});
