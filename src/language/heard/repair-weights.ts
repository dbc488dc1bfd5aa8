/**
 * Weights of what speaks for and against a repair. Written by scripts/fit-repair.ts; do not edit by
 * hand.
 */
import type { Feature } from './weigh-candidate.ts';

export const REPAIR_WEIGHTS: Readonly<Record<Feature, number>> = {
  bias: -0.59,
  distance: -0.72,
  'same sound': 0.47,
  neighbours: 0.21,
  'heard unlikely': 0.01,
  seen: 0.68,
  'seen always': 2.24,
  'project knows it': 1.62,
  'project knows the heard': -1.48,
  'said elsewhere': -0.07,
  'heard elsewhere': -0.08,
  'makes a phrase': 1.81,
  'heard makes a phrase': -1,
  'heard is of the trade': -0.08,
  'heard is no word': 0.08,
  'heard is common': -0.1,
  'meant is common': -0.08,
  'meant never said': -0.57,
  'two for one': -0.25,
  'one for two': -0.21,
  short: -0.11,
  'only the ending': -0.41,
  'distance of a word': -0.48,
  'begins alike': -0.19,
  'ends alike': -0.45,
  nearest: 0.47,
  'pair said elsewhere': 0.18,
  'unit behind a number': 2.94,
};
