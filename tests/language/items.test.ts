import { expect, test } from 'vitest';
import { readItems } from '../../src/language/items/assign-items.ts';
import { bracketed } from '../kit/bracketed.ts';

const named = (marked: string) => {
  const { text, quantities } = bracketed(marked);
  const { figures } = readItems(text, quantities, { units: 'metric', recordedAt: '2026-05-01T12:00:00Z' });
  return figures.map(({ item, attribute }) => `${item}: ${attribute}`);
};

test.each([
  ['The hatch is [520] wide by [610] high.', ['hatch: width', 'hatch: height']],
  [
    'Windows, the east sash opening is [1210] wide and the west one is [1190] wide.',
    ['east sash opening: width', 'west sash opening: width'],
  ],
  ['I need a [40 A] supply.', ['supply: current']],
  ['Battery, [55 kg].', ['battery: weight']],
  ['The berth needs [18 mm] ply.', ['berth ply: thickness']],
  ['So nothing wider than [740] comes in.', ['anything comes in: width']],
])('"%s" names its figures', (said, wanted) => {
  expect(named(said)).toEqual(wanted);
});
