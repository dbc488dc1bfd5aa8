/** Reads sums that have to hold from now on: what must go through, what all may weigh, what must come out of a sheet. */
import { type CallingWord, callers } from '../kept/called.ts';
import type { Line, RecordScene } from '../kept/scene.ts';
import type { CheckNote, ReadContext } from '../notes.ts';
import { batteryBankIn } from './battery-banks.ts';
import { buildUpIn, tellsTogether } from './build-ups.ts';
import { conduitIn, namesConduit } from './conduits.ts';
import { dewPointIn, namesHumidity } from './dew-points.ts';
import { fallIn } from './falls-to-keep.ts';
import { fractionsIn, namesTape } from './fractions-asked.ts';
import { gapsIn } from './gaps-around.ts';
import { fitIntoIn, namesFitting } from './into-spaces.ts';
import { layerIn, namesLayer } from './layers-to-come.ts';
import { loadSumIn } from './load-sums.ts';
import { massLimitIn } from './mass-limits.ts';
import { productTimesIn } from './product-times.ts';
import { riseIn } from './rises.ts';
import { namesCorner, roundCornerIn } from './round-corners.ts';
import { sheetCountIn } from './sheet-counts.ts';
import { asksWeight, sheetWeightIn } from './sheet-weights.ts';
import { type CheckScene, checkScene } from './spoken-check.ts';
import { namesDiagonal, squareFrameIn } from './square-frames.ts';
import { namesRaising, standingUpIn } from './standing-ups.ts';
import { stockCountIn } from './stock-counts.ts';
import { namesTurning, swingIn } from './swings.ts';
import { tankWantedIn } from './tank-sizes.ts';
import { taperedTankIn } from './tapered-tanks.ts';
import { taperIn, tellsTaper } from './tapers.ts';
import { namesPassing, passagesIn } from './through-openings.ts';
import { tellsDrop, voltageDropIn } from './voltage-drops.ts';

interface CheckReader {
  readonly read: (scene: CheckScene, line: Line) => readonly CheckNote[];
  readonly called?: CallingWord;
}

const READERS: readonly CheckReader[] = [
  { read: passagesIn, called: namesPassing },
  { read: gapsIn },
  { read: fitIntoIn, called: namesFitting },
  { read: standingUpIn, called: namesRaising },
  { read: roundCornerIn, called: namesCorner },
  { read: swingIn, called: namesTurning },
  { read: massLimitIn },
  { read: stockCountIn },
  { read: sheetCountIn },
  { read: sheetWeightIn, called: asksWeight },
  { read: productTimesIn },
  { read: dewPointIn, called: namesHumidity },
  { read: layerIn, called: namesLayer },
  { read: buildUpIn, called: tellsTogether },
  { read: fallIn },
  { read: riseIn },
  { read: squareFrameIn, called: namesDiagonal },
  { read: tankWantedIn },
  { read: taperedTankIn },
  { read: voltageDropIn, called: tellsDrop },
  { read: batteryBankIn },
  { read: loadSumIn },
  { read: taperIn, called: tellsTaper },
  { read: fractionsIn, called: namesTape },
  { read: conduitIn, called: namesConduit },
];

const calledReaders = callers(READERS.map(({ called }) => called));

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
    const called = calledReaders(scene, line);
    READERS.forEach(({ read }, k) => {
      if (called & (1 << k)) notes.push(...read(whole, line));
    });
    if (notes.length >= MOST) break;
  }
  return notes.slice(0, MOST);
}
