/** Every check there is, by name. */

import { BATTERY } from './battery.ts';
import type { Check } from './check.ts';
import { CLEARANCE } from './clearance.ts';
import { CONDUIT_FILL } from './conduit-fill.ts';
import { CURE_TIME } from './cure-time.ts';
import { DEW_POINT } from './dew-point-check.ts';
import { DIAGONAL_FOR_SQUARE } from './diagonal-for-square.ts';
import { DRYING_TIME } from './drying-time.ts';
import { FALL_OVER_RUN } from './fall-over-run.ts';
import { FRACTIONS_TO_MILLIMETRES } from './fractions-to-millimetres.ts';
import { HEIGHT_OVER_FLOOR } from './height-over-floor.ts';
import { LENGTH_IN_FRACTIONS } from './length-in-fractions.ts';
import { LOAD_SUM } from './load-sum.ts';
import { PANEL_THROUGH_OPENING } from './panel-through-opening.ts';
import { PIECES_FROM_STOCK } from './pieces-from-stock.ts';
import { POT_LIFE } from './pot-life.ts';
import { PRISMOIDAL_TANK } from './prismoidal-tank.ts';
import { PRODUCT_TEMPERATURE } from './product-temperature.ts';
import { RECOAT_WINDOW } from './recoat-window.ts';
import { RISE_AND_RUN } from './rise-and-run.ts';
import { ROD_ROUND_CORNER } from './rod-round-corner.ts';
import { RUNNING_MASS } from './running-mass.ts';
import { SHEET_MASS } from './sheet-mass.ts';
import { SHEETS_FOR_PIECES } from './sheets-for-pieces.ts';
import { SLOPE } from './slope.ts';
import { STACK_UP } from './stack-up.ts';
import { STANDING_UP } from './standing-up.ts';
import { SWING_CLEARANCE } from './swing-clearance.ts';
import { TANK_CONTENTS_MASS } from './tank-contents-mass.ts';
import { TANK_VOLUME } from './tank-volume.ts';
import { TAPER } from './taper.ts';
import { VOLTAGE_DROP } from './voltage-drop.ts';

export const CHECKS: readonly Check[] = [
  STACK_UP,
  HEIGHT_OVER_FLOOR,
  CLEARANCE,
  PANEL_THROUGH_OPENING,
  STANDING_UP,
  ROD_ROUND_CORNER,
  SWING_CLEARANCE,
  SLOPE,
  RISE_AND_RUN,
  TAPER,
  DIAGONAL_FOR_SQUARE,
  FALL_OVER_RUN,
  SHEET_MASS,
  TANK_CONTENTS_MASS,
  RUNNING_MASS,
  TANK_VOLUME,
  PRISMOIDAL_TANK,
  LENGTH_IN_FRACTIONS,
  FRACTIONS_TO_MILLIMETRES,
  PIECES_FROM_STOCK,
  SHEETS_FOR_PIECES,
  CURE_TIME,
  DRYING_TIME,
  RECOAT_WINDOW,
  POT_LIFE,
  PRODUCT_TEMPERATURE,
  DEW_POINT,
  VOLTAGE_DROP,
  BATTERY,
  LOAD_SUM,
  CONDUIT_FILL,
];

/** A check by its name, in any case; undefined when there is none. */
export const checkNamed = (name: string): Check | undefined =>
  CHECKS.find((check) => check.name === name.toLowerCase());
