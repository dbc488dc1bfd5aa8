import { expect, test } from 'vitest';
import { ATTRIBUTES, BOUNDS, DIMENSIONS } from '../src/language/notes.ts';

test('the words of the contract are spelled once', () => {
  for (const list of [ATTRIBUTES, BOUNDS, DIMENSIONS]) expect(new Set(list).size).toBe(list.length);
});
