/** How many pieces a weight stands for that was said of one of several. */
import { expect, test } from 'vitest';
import { piecesOf } from '../../../src/model/checks/pieces.ts';
import type { ClaimRow, StandingRow } from '../../../src/model/rows.ts';

const claim = (id: string, value: number, more: Partial<ClaimRow> = {}): ClaimRow => ({
  id,
  memoId: 'm1',
  itemId: 'i1',
  slot: 'i1|weight|mass',
  said: 'battery',
  attribute: 'weight',
  dimension: 'mass',
  bound: 'exact',
  value,
  unit: 'kg',
  source: { memoId: 'm1', recordedAt: '2026-02-01T17:00:00+01:00', quote: '' },
  status: 'standing',
  ...more,
});

/** The pieces of the last of these claims; `counted`: a figure that counts the things stands as well. */
function pieces(claims: readonly ClaimRow[], counted = false) {
  const last = claims.at(-1);
  const row = { slot: 'i1|weight|mass', itemId: 'i1', ...(last ? { claimId: last.id } : {}) } as StandingRow;
  const reader = {
    claim: (id: string) => claims.find((one) => one.id === id),
    claimsOf: () => claims,
    standing: (slot: string) =>
      counted && slot === 'i1|count|count' ? ({ slot, value: 5 } as StandingRow) : undefined,
  };
  return piecesOf(reader as never, row);
}
const FOUR = { each: { count: 4 } };

test.each([
  ['of one thing', [claim('a', 26)], undefined],
  ['set by hand', [], undefined],
  ['of each of four', [claim('a', 26, FOUR)], '4'],
  ['of each, and nobody said of how many', [claim('a', 26, { each: {} })], 'unsaid'],
  ['of them all together', [claim('a', 26, { each: { count: 1 } })], undefined],
  ['by the metre', [claim('a', 26, { each: { per: 'metre' } })], undefined],
  ['of each, after how many were told', [claim('a', 26, FOUR), claim('b', 27, { each: {} })], '4'],
  [
    'by the metre, after how many were told',
    [claim('a', 26, FOUR), claim('b', 27, { each: { per: 'metre' } })],
    undefined,
  ],
  ['of each of six now', [claim('a', 26, FOUR), claim('b', 27, { each: { count: 6 } })], '6'],
  [
    'of each, after the last number',
    [claim('a', 26, FOUR), claim('b', 26, { each: { count: 6 } }), claim('c', 27, { each: {} })],
    '6',
  ],
  [
    'of each, after a number for another figure',
    [claim('a', 26, { ...FOUR, slot: 'i1|other|mass' }), claim('b', 27, { each: {} })],
    'unsaid',
  ],
  ['nearer to the weight of one', [claim('a', 26, FOUR), claim('b', 27)], '4'],
  ['nearer to the weight of them all', [claim('a', 26, FOUR), claim('b', 100)], undefined],
  ['just nearer to that of one: less than twice it', [claim('a', 26, FOUR), claim('b', 51)], '4'],
  ['half way between: twice it, of four', [claim('a', 26, FOUR), claim('b', 52)], undefined],
  ['near, in another unit', [claim('a', 26, FOUR), claim('b', 27, { unit: 'lb' })], undefined],
  ['near, where nobody said how many', [claim('a', 26, { each: {} }), claim('b', 27)], undefined],
] as const)('a weight %s', (_what, claims, expected) => {
  expect(pieces(claims)).toEqual(
    expected === undefined
      ? undefined
      : expected === 'unsaid'
        ? { kind: 'unsaid' }
        : { kind: 'counted', factor: expected },
  );
});

test('a figure that counts the things says how many there are now', () => {
  expect(pieces([claim('a', 26, FOUR)], true)).toEqual({ kind: 'counted', factor: '[i1|count|count]' });
  expect(pieces([claim('a', 26, { each: {} })], true)).toEqual({
    kind: 'counted',
    factor: '[i1|count|count]',
  });
  expect(pieces([claim('a', 26)], true)).toBeUndefined();
});
