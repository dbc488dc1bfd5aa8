import type { Check, Given, Worked } from './check.ts';
import { ARITHMETIC_ONLY } from './deferral.ts';
import { isAtLeast } from './noise.ts';
import { all, one, rangeOf, sumOf } from './ranges.ts';
import { saidRange } from './said-range.ts';

const NIPPLE = 'nipple up to 24 in';
/** Most that may be filled by how many cables there are, the last for three and more. */
const LIMITS = [0.53, 0.31, 0.4] as const;
const NIPPLE_LIMIT = 0.6;

/**
 * How much of a pipe's bore its cables fill, held against the most that is published for their number.
 * Formula: sum of cable areas / area of the bore: at most 53 % for one cable, 31 % for two, 40 % for three and more, 60 % for
 * a nipple up to 24 in. Source: NFPA 70 (NEC) chapter 9 table 1 and notes, as on
 * https://expertce.com/learn-articles/nec-chapter-9-table-1-conduit-fill and https://conduitbending.com/insights/conduit-fill-chart
 */
export const CONDUIT_FILL: Check = {
  name: 'conduit fill',
  says: 'how much of the bore the cables fill, against the published most for their number',
  formula:
    'sum of cable areas / area of the bore; 53 % for one, 31 % for two, 40 % for three and more, 60 % for a nipple',
  source:
    'NFPA 70 (NEC) chapter 9 table 1 and notes, as on https://expertce.com/learn-articles/nec-chapter-9-table-1-conduit-fill and https://conduitbending.com/insights/conduit-fill-chart',
  inputs: [
    { name: 'cable', kind: 'length', says: 'outside diameter of a cable', many: true, most: 0.3 },
    { name: 'bore', kind: 'length', says: 'inside diameter of the pipe, measured', most: 1 },
  ],
  options: [{ name: 'piece', says: 'a run, or a short nipple', of: ['run', NIPPLE] }],
  gives: 'fill',
  touches: ['mains'],
  run: conduitFillOf,
};

const circle = (diameter: number): number => (Math.PI / 4) * diameter ** 2;

/** The most that may be filled. Two cables may fill less than one or three: they wedge. */
export function fillLimit(cables: number, isNipple: boolean): number {
  return isNipple ? NIPPLE_LIMIT : (LIMITS[cables - 1] ?? LIMITS[2]);
}

function conduitFillOf(given: Given): Worked {
  const cables = all(given, 'cable');
  const { say } = given;
  const areas = sumOf(cables.map((cable) => rangeOf(circle, cable)));
  const bore = rangeOf(circle, one(given, 'bore'));
  const fill = rangeOf((filled, whole) => filled / whole, areas, bore);
  const limit = fillLimit(cables.length, given.options.get('piece') === NIPPLE);
  const holds = isAtLeast(limit, fill.high);
  const isWider = cables.some((cable) => cable.low > one(given, 'bore').high);
  const count = cables.length === 1 ? 'one cable' : `${cables.length} cables`;
  return {
    verdict: holds ? 'holds' : 'broken',
    why: `${isWider ? 'a cable is thicker than the bore; ' : ''}${saidRange(say, fill, 'ratio', '%')} filled by ${count}, ${holds ? 'within' : 'over'} the ${say(limit, 'ratio', '%')} published for it. ${ARITHMETIC_ONLY.charAt(0).toUpperCase()}${ARITHMETIC_ONLY.slice(1)}`,
    results: [
      { name: 'fill', kind: 'ratio', range: fill, unit: '%' },
      { name: 'cable area', kind: 'area', range: areas, unit: 'mm2' },
    ],
    notes: ['round cables; bends, pulling and heat are not looked at'],
  };
}
