/** Every standing figure of one measure, for sums over all that is there: what everything weighs. */
import type { Attribute } from '../../language/notes.ts';
import { LIMIT_MARK } from '../counterpart.ts';
import { usualDimension } from '../measures.ts';
import { shapeOf, wordsOf } from '../names.ts';
import type { ModelReader, StandingRow } from '../rows.ts';
import { stemOf } from '../stems.ts';
import { TANK_CONTENTS } from './materials.ts';

const stemsIn = (words: string) => new Set(words.split(/\s+/).map(stemOf));

/** Things that are what all others go into, or may come to: counted beside them they would count twice. */
const WHOLES = stemsIn(
  `van truck lorry trailer caravan camper motorhome bus car vehicle boat hull barge ship yacht dinghy narrowboat house
  building shed cabin rig hoist crane winch axle tyre jack scale scales weighbridge`,
);
/** Words of a name that make it a sum or a bound. */
const SUMS = stemsIn(
  'total sum whole everything altogether lot gross kerb payload load loading loaded capacity limit maximum most rating rated',
);

/** Fluids that fill tanks, by the last word of their name: kilograms to the litre as `materials.ts` has them. */
const FLUIDS: Readonly<Record<string, string>> = { water: 'fresh water', diesel: 'diesel' };
const FLUID_WORDS = new Set([
  'water',
  'diesel',
  'fuel',
  'petrol',
  'gasoline',
  'kerosene',
  'paraffin',
  'coolant',
]);

/** "Water tank": told by what it holds, it weighs at least that when it is full. */
const TANK_WORDS = new Set(['tank', 'tanks', 'cistern', 'bladder', 'jerrycan', 'jerrycans', 'can', 'cans']);
/** They fill as the fresh one empties, and are not full beside it. */
const WASTE = /\b(?:gr[ae]y|waste|black|foul|dirty)\b/;

/** The fluid that a thing is, or that its name says it holds. */
function fluidOf(name: string): { readonly fluid: string; readonly isTank: boolean } | undefined {
  const words = wordsOf(name);
  const isTank = TANK_WORDS.has(words.at(-1) ?? '');
  const fluid = words.at(isTank ? -2 : -1) ?? '';
  return FLUID_WORDS.has(fluid) && !(isTank && WASTE.test(name)) ? { fluid, isTank } : undefined;
}

/** What there is of a fluid, told by volume or without a unit. */
export interface Fluid {
  readonly name: string;
  readonly row: StandingRow;
  /** Kilograms in a cubic metre, where its volume was told and its density is a published one. */
  readonly density?: { readonly low: number; readonly high: number; readonly source: string };
}

/**
 * Fluids of which no weight stands, and tanks of one that were told by what they hold: by volume, and those whose amount
 * was told without a unit. A fluid that was told by itself is not counted again in its tank.
 */
export function everyFluid(reader: Pick<ModelReader, 'itemsSharing' | 'standingOf'>): readonly Fluid[] {
  const found = reader.itemsSharing(FLUID_STEMS).flatMap(({ id, name }): readonly TankOrFluid[] => {
    const of = fluidOf(name);
    const rows = reader
      .standingOf(id)
      .filter((row) => row.status !== 'series' && !row.slot.includes(LIMIT_MARK));
    if (!of || rows.some(({ dimension }) => dimension === 'mass')) return [];
    const row =
      rows.find(({ dimension }) => dimension === 'volume') ??
      rows.find(({ dimension, attribute }) => !of.isTank && dimension === 'count' && attribute === 'other');
    if (!row) return [];
    const known = TANK_CONTENTS.find((one) => one.name === FLUIDS[of.fluid]);
    return [{ ...of, name, row, ...(known && row.dimension === 'volume' ? { density: known } : {}) }];
  });
  return found.filter(
    ({ fluid, isTank }) => !isTank || !found.some((one) => !one.isTank && one.fluid === fluid),
  );
}
interface TankOrFluid extends Fluid {
  readonly fluid: string;
  readonly isTank: boolean;
}
const FLUID_STEMS = [...FLUID_WORDS].map(stemOf);

export interface EveryFigure {
  readonly rows: readonly StandingRow[];
  /** Names of figures that were left out as wholes. */
  readonly wholes: readonly string[];
  /** Names of figures that are by the metre or the litre, and of no whole thing. */
  readonly byMeasure: readonly string[];
}

/** Those that `isMeant`, all where it is left out. Costs by the figures of that dimension. */
export function everyFigure(
  reader: Pick<ModelReader, 'standingIn' | 'item' | 'claim'>,
  attribute: Attribute,
  isMeant: (row: StandingRow) => boolean = () => true,
): EveryFigure {
  const rows: StandingRow[] = [];
  const wholes: string[] = [];
  const byMeasure: string[] = [];
  for (const row of reader.standingIn(usualDimension(attribute))) {
    if (row.attribute !== attribute || row.slot.includes(LIMIT_MARK) || row.status === 'series') continue;
    if (!isMeant(row)) continue;
    const name = reader.item(row.itemId)?.name ?? '';
    const claim = row.claimId === undefined ? undefined : reader.claim(row.claimId);
    if (claim?.each?.per !== undefined) byMeasure.push(`${name} (per ${claim.each.per})`);
    else if (isWhole(name)) wholes.push(name);
    else rows.push(row);
  }
  return { rows, wholes, byMeasure };
}

function isWhole(name: string): boolean {
  return WHOLES.has(shapeOf(name).head) || wordsOf(name).some((word) => SUMS.has(stemOf(word)));
}
