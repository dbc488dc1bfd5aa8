/** Every check there is, by name. */
import type { Check } from './check.ts';
import { CLEARANCE } from './clearance.ts';
import { FRACTIONS_TO_MILLIMETRES } from './fractions-to-millimetres.ts';
import { LENGTH_IN_FRACTIONS } from './length-in-fractions.ts';
import { PIECES_FROM_STOCK } from './pieces-from-stock.ts';
import { PRISMOIDAL_TANK } from './prismoidal-tank.ts';
import { RUNNING_MASS } from './running-mass.ts';
import { SHEET_MASS } from './sheet-mass.ts';
import { SHEETS_FOR_PIECES } from './sheets-for-pieces.ts';
import { TANK_CONTENTS_MASS } from './tank-contents-mass.ts';
import { TANK_VOLUME } from './tank-volume.ts';

export const CHECKS: readonly Check[] = [
  CLEARANCE,
  SHEET_MASS,
  TANK_CONTENTS_MASS,
  RUNNING_MASS,
  TANK_VOLUME,
  PRISMOIDAL_TANK,
  LENGTH_IN_FRACTIONS,
  FRACTIONS_TO_MILLIMETRES,
  PIECES_FROM_STOCK,
  SHEETS_FOR_PIECES,
];

/** A check by its name, in any case; undefined when there is none. */
export const checkNamed = (name: string): Check | undefined =>
  CHECKS.find((check) => check.name === name.toLowerCase());
