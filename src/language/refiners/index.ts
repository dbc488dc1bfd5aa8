import type { Refiner } from '../rules/rule.ts';
import { addingUp } from './adding-up.ts';
import { bareNumbers } from './bare-numbers.ts';
import { belowZero } from './below-zero.ts';
import { bounds } from './bounds.ts';
import { counts } from './counts.ts';
import { divided } from './divided.ts';
import { haggled } from './haggled.ts';
import { journeys } from './journeys.ts';
import { lists, pairs } from './lists.ts';
import { otherUnits } from './other-units.ts';
import { ages, people } from './people.ts';
import { ranges } from './ranges.ts';
import { rejected } from './rejected.ts';
import { saidAgain, sameAllowance } from './said-again.ts';
import { selfRepair } from './self-repair.ts';
import { settleUnits } from './settle-units.ts';
import { takenBack } from './taken-back.ts';
import { times } from './times.ts';
import { tolerances } from './tolerances.ts';
import { unreal } from './unreal.ts';
import { weighUps } from './weigh-ups.ts';

/** In order: each works on what the ones before it left. */
export const REFINERS: readonly Refiner[] = [
  // First: a repaired value must not lend its unit to a list or end a range.
  selfRepair,
  takenBack,
  lists,
  ranges,
  pairs,
  tolerances,
  // Behind lists and tolerances: "600 by 600" and "five, give or take five" are no number said over.
  saidAgain,
  sameAllowance,
  haggled,
  // Before bounds: "over thirteen" would be one.
  divided,
  // Before counts: "two eighteens" and ranges are settled, "five of them" is not yet.
  counts,
  addingUp,
  weighUps,
  rejected,
  unreal,
  people,
  ages,
  // Before units: "two and a half mil cable" must be known as exact and unsized.
  bounds,
  settleUnits,
  times,
  journeys,
  // Last: a bare number leans on the settled ones before it.
  bareNumbers,
  // The number said over may have been bare.
  otherUnits,
  // After bare numbers: only then is it known that "minus five outside" is heat.
  belowZero,
];
