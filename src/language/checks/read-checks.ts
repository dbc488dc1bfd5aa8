/** Reads sums that have to hold from now on: what must go through, what all may weigh, what must come out of a sheet. */
import type { RecordScene } from '../kept/scene.ts';
import type { CheckNote, ReadContext } from '../notes.ts';
import { batteryBankIn } from './battery-banks.ts';
import { buildUpIn } from './build-ups.ts';
import { conduitIn } from './conduits.ts';
import { dewPointIn } from './dew-points.ts';
import { fallIn } from './falls-to-keep.ts';
import { fractionsIn } from './fractions-asked.ts';
import { gapsIn } from './gaps-around.ts';
import { fitIntoIn } from './into-spaces.ts';
import { layerIn } from './layers-to-come.ts';
import { loadSumIn } from './load-sums.ts';
import { massLimitIn } from './mass-limits.ts';
import { productTimesIn } from './product-times.ts';
import { riseIn } from './rises.ts';
import { roundCornerIn } from './round-corners.ts';
import { sheetCountIn } from './sheet-counts.ts';
import { sheetWeightIn } from './sheet-weights.ts';
import { checkScene } from './spoken-check.ts';
import { squareFrameIn } from './square-frames.ts';
import { standingUpIn } from './standing-ups.ts';
import { stockCountIn } from './stock-counts.ts';
import { swingIn } from './swings.ts';
import { tankWantedIn } from './tank-sizes.ts';
import { taperedTankIn } from './tapered-tanks.ts';
import { taperIn } from './tapers.ts';
import { passagesIn } from './through-openings.ts';
import { voltageDropIn } from './voltage-drops.ts';

const READERS = [
  passagesIn,
  gapsIn,
  fitIntoIn,
  standingUpIn,
  roundCornerIn,
  swingIn,
  massLimitIn,
  stockCountIn,
  sheetCountIn,
  sheetWeightIn,
  productTimesIn,
  dewPointIn,
  layerIn,
  buildUpIn,
  fallIn,
  riseIn,
  squareFrameIn,
  tankWantedIn,
  taperedTankIn,
  voltageDropIn,
  batteryBankIn,
  loadSumIn,
  taperIn,
  fractionsIn,
  conduitIn,
] as const;

/** More than a day's talk has: a text that holds nothing else is not to take longer than any other. */
const MOST = 60;

/**
 * The checks of one memo. The figures that stand help to name a size, and never make one up; a length that was said
 * without a unit has those of the project. Pure.
 */
export function readChecks(
  scene: RecordScene,
  { units, knownFigures = [] }: Pick<ReadContext, 'units' | 'knownFigures'>,
): readonly CheckNote[] {
  const whole = checkScene(scene, knownFigures, units);
  const notes: CheckNote[] = [];
  for (const line of scene.lines) {
    for (const read of READERS) notes.push(...read(whole, line));
    if (notes.length >= MOST) break;
  }
  return notes.slice(0, MOST);
}
