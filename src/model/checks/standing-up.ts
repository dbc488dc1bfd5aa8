import type { Check, Given, Worked } from './check.ts';
import { less, maybe, one, rangeOf } from './ranges.ts';
import { isRoom, roomWords } from './room.ts';
import { saidRange } from './said-range.ts';

/**
 * Whether something tall can be tipped upright under a ceiling: on the way up its diagonal stands upright.
 * Formula: sqrt(height^2 + depth^2) <= ceiling; tallest = sqrt(ceiling^2 - depth^2).
 * Source: Pythagoras; that it must be so is argued at http://math.stackexchange.com/questions/339221/
 */
export const STANDING_UP: Check = {
  name: 'standing up',
  says: 'whether a cupboard or tank can be tipped upright under a ceiling, and the tallest that can',
  formula: 'sqrt(height^2 + depth^2) <= ceiling; tallest = sqrt(ceiling^2 - depth^2)',
  source: 'Pythagoras; argued at math.stackexchange.com/questions/339221',
  inputs: [
    { name: 'depth', kind: 'length', says: 'its size along the floor, in the direction it is tipped' },
    { name: 'ceiling', kind: 'length', says: 'clear height from floor to ceiling' },
    { name: 'height', kind: 'length', says: 'its height once it stands', optional: true },
  ],
  gives: 'tallest that stands up',
  run: standingOf,
};

function standingOf(given: Given): Worked {
  const { say } = given;
  const [depth, ceiling] = [one(given, 'depth'), one(given, 'ceiling')];
  const tallest = rangeOf((d, c) => Math.sqrt(Math.max(0, c * c - d * d)), depth, ceiling);
  const height = maybe(given, 'height');
  const limit = `the tallest that stands up is ${saidRange(say, tallest, 'length')}`;
  const results = [{ name: 'tallest that stands up', kind: 'length', range: tallest }];
  const notes = [
    'tipped about its bottom edge on a level floor; fittings on the floor and ceiling are not counted',
  ];
  if (!height) return { verdict: 'told', why: limit, results, notes };
  const diagonal = rangeOf((h, d) => Math.hypot(h, d), height, depth);
  const left = less(ceiling, diagonal);
  return {
    verdict: isRoom(left) ? 'holds' : 'broken',
    why: `its diagonal is ${saidRange(say, diagonal, 'length')}: ${roomWords(left, say)}; ${limit}`,
    results: [
      ...results,
      { name: 'diagonal', kind: 'length', range: diagonal },
      { name: 'room left', kind: 'length', range: left },
    ],
    notes,
  };
}
