/** Reads sums that have to hold from now on: what must go through, what all may weigh, what must come out of a sheet. */
import type { RecordScene } from '../kept/scene.ts';
import type { CheckNote, KnownFigure } from '../notes.ts';
import { dewPointIn } from './dew-points.ts';
import { layerIn } from './layers-to-come.ts';
import { massLimitIn } from './mass-limits.ts';
import { productTimesIn } from './product-times.ts';
import { checkScene } from './spoken-check.ts';
import { stockCountIn } from './stock-counts.ts';
import { passagesIn } from './through-openings.ts';

const READERS = [passagesIn, massLimitIn, stockCountIn, productTimesIn, dewPointIn, layerIn] as const;

/** More than a day's talk has: a text that holds nothing else is not to take longer than any other. */
const MOST = 60;

/** The checks of one memo. `known` are the figures that stand: they help to name a size, and never make one up. Pure. */
export function readChecks(scene: RecordScene, known: readonly KnownFigure[] = []): readonly CheckNote[] {
  const whole = checkScene(scene, known);
  const notes: CheckNote[] = [];
  for (const line of scene.lines) {
    for (const read of READERS) notes.push(...read(whole, line));
    if (notes.length >= MOST) break;
  }
  return notes.slice(0, MOST);
}
