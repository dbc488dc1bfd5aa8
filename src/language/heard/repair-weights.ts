/**
 * Weights of what speaks for and against a repair. Written by scripts/fit-repair.ts; do not edit by
 * hand.
 */
import type { Feature } from './weigh-candidate.ts';

export const REPAIR_WEIGHTS: Readonly<Record<Feature, number>> = {
  bias: -0.58,
  distance: -0.75,
  'same sound': -0.16,
  neighbours: 0.19,
  'heard unlikely': -0.03,
  seen: 1.58,
  'seen always': 0.97,
  'project knows it': 1.65,
  'project knows the heard': -1.24,
  'said elsewhere': -0.02,
  'heard elsewhere': 0.56,
  'makes a phrase': 1.69,
  'heard makes a phrase': -1.58,
  'heard is of the trade': -0.88,
  'heard is no word': -0.31,
  'heard is common': -0.16,
  'meant is common': -0.1,
  'meant never said': -0.43,
  'two for one': -0.95,
  'one for two': -0.11,
  short: -0.02,
  'only the ending': -0.45,
  'distance of a word': -0.5,
  'begins alike': 0.43,
  'ends alike': -0.39,
  nearest: 0.86,
  'pair said elsewhere': 0.05,
};
