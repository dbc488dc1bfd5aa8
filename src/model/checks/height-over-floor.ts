import type { Check, Given, Worked } from './check.ts';
import { all, less, maybe, one, sumOf } from './ranges.ts';
import { isRoom, roomWords } from './room.ts';
import { saidRange } from './said-range.ts';

/**
 * A height over the bare floor and over the finished one: what is laid later comes off a height taken before it.
 * Formula: height over finished floor = height over bare floor - layers to come.
 * Source: arithmetic; the case of a floor laid after the cabinets is told at
 * https://woodweb.com/knowledge_base/Accomodating_Flooring_Thickness.html
 */
export const HEIGHT_OVER_FLOOR: Check = {
  name: 'height over finished floor',
  says: 'what a height comes to once the layers that are not laid yet are down',
  formula: 'height over finished floor = height over bare floor - layers to come',
  source: 'arithmetic; the case as told at woodweb.com, Accommodating Flooring Thickness',
  inputs: [
    { name: 'height', kind: 'length', says: 'the height as it was taken' },
    { name: 'layers', kind: 'length', says: 'thickness of each layer not laid yet', many: true },
    { name: 'least', kind: 'length', says: 'least height wanted over the finished floor', optional: true },
  ],
  options: [
    { name: 'taken over', says: 'what the height was measured from', of: ['bare floor', 'finished floor'] },
  ],
  gives: 'height over finished floor',
  run: heightOf,
};

function heightOf(given: Given): Worked {
  const { say } = given;
  const [height, layers] = [one(given, 'height'), sumOf(all(given, 'layers'))];
  const isBare = given.options.get('taken over') !== 'finished floor';
  const finished = isBare ? less(height, layers) : height;
  const bare = isBare ? height : sumOf([height, layers]);
  const least = maybe(given, 'least');
  const room = least ? less(finished, least) : undefined;
  const sunk = finished.low <= 0;
  const told = sunk
    ? 'the layers to come are as thick as the height'
    : `${saidRange(say, finished, 'length')} over the finished floor, ${saidRange(say, bare, 'length')} over the bare one`;
  return {
    verdict: sunk || (room && !isRoom(room)) ? 'broken' : room ? 'holds' : 'told',
    why: room ? `${told}; ${roomWords(room, say)} over the least wanted` : told,
    results: [
      { name: 'height over finished floor', kind: 'length', range: finished },
      { name: 'height over bare floor', kind: 'length', range: bare },
      { name: 'layers to come', kind: 'length', range: layers },
    ],
    notes: [`the height was taken over the ${isBare ? 'bare' : 'finished'} floor`],
  };
}
