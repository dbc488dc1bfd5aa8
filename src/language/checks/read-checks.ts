/** Reads sums that have to hold from now on: what must go through, what all may weigh, what must come out of a sheet. */
import type { RecordScene } from '../kept/scene.ts';
import type { CheckNote, KnownFigure } from '../notes.ts';
import { readLayersToCome } from './layers-to-come.ts';
import { readMassLimits } from './mass-limits.ts';
import { readProductTimes } from './product-times.ts';
import { readStockCounts } from './stock-counts.ts';
import { readPassages } from './through-openings.ts';

const READERS = [readPassages, readMassLimits, readStockCounts, readProductTimes, readLayersToCome] as const;

/** The checks of one memo. `known` are the figures that stand: they help to name a size, and never make one up. Pure. */
export function readChecks(scene: RecordScene, known: readonly KnownFigure[] = []): readonly CheckNote[] {
  return READERS.flatMap((read) => read({ ...scene, known }));
}
