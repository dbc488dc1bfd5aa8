import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type Stretch,
  StretchJoiner,
  span,
  spoken,
  within,
} from '../../../src/speech/recogniser/stretches.ts';

const rule = { longestGap: 30, longestPiece: 150 };

function join(stretches: readonly Stretch[]) {
  const joiner = new StretchJoiner(rule);
  return [...stretches.flatMap((stretch) => joiner.add(stretch)), ...joiner.finish()];
}

describe('joining stretches of speech', () => {
  test('neighbours become one piece, a long pause parts them', () => {
    expect(
      join([
        { start: 0, end: 20 },
        { start: 30, end: 50 },
        { start: 90, end: 100 },
      ]),
    ).toEqual([
      [
        { start: 0, end: 20 },
        { start: 30, end: 50 },
      ],
      [{ start: 90, end: 100 }],
    ]);
  });

  test('too long a piece is parted at the widest pause of its later half', () => {
    const pieces = join([
      { start: 0, end: 60 },
      { start: 62, end: 90 },
      { start: 110, end: 130 },
      { start: 135, end: 160 },
    ]);
    expect(pieces.map((piece) => [piece[0]?.start, piece.at(-1)?.end])).toEqual([
      [0, 90],
      [110, 160],
    ]);
  });

  test('silence closes the open piece once the pause is long enough', () => {
    const joiner = new StretchJoiner(rule);
    joiner.add({ start: 0, end: 20 });
    expect(joiner.silentUntil(49)).toEqual([]);
    expect(joiner.openFrom).toBe(0);
    expect(joiner.silentUntil(50)).toEqual([[{ start: 0, end: 20 }]]);
    expect(joiner.openFrom).toBeUndefined();
  });

  const stretchLists = fc
    .array(fc.tuple(fc.integer({ min: 1, max: 60 }), fc.integer({ min: 1, max: 140 })), { maxLength: 40 })
    .map((pairs) => {
      let at = 0;
      return pairs.map(([gap, length]) => {
        const start = at + gap;
        at = start + length;
        return { start, end: at };
      });
    });

  test('no stretch is lost, doubled or moved, and no joined piece is too long', () => {
    fc.assert(
      fc.property(stretchLists, (stretches) => {
        const pieces = join(stretches);
        expect(pieces.flat()).toEqual(stretches);
        for (const piece of pieces) expect(piece.length === 1 || span(piece) <= rule.longestPiece).toBe(true);
      }),
    );
  });
});

test('a part of a piece holds the parts of its stretches', () => {
  const piece = [
    { start: 0, end: 20 },
    { start: 30, end: 50 },
  ];
  expect(within(piece, 10, 35)).toEqual([
    { start: 10, end: 20 },
    { start: 30, end: 35 },
  ]);
  expect(spoken(piece)).toBe(40);
});
