import { expect, test } from 'vitest';
import { memoLine } from '../../src/tui/state/rows.ts';
import { MEMOS } from '../kit/views.ts';

const [, clashing] = MEMOS;

test('a memo is loud only while one of its clashes is open', () => {
  if (!clashing) throw new Error('the kit has no memo with a clash');
  expect(memoLine(clashing)).toMatch(/3 notes, 1 CLASH$/);
  expect(memoLine({ ...clashing, findingCount: 3, openFindingCount: 2 })).toMatch(/3 notes, 2 CLASHES$/);
  expect(memoLine({ ...clashing, openFindingCount: 0 })).toMatch(/3 notes, clashes settled$/);
  expect(memoLine({ ...clashing, findingCount: 0, openFindingCount: 0 })).toMatch(/3 notes$/);
});
