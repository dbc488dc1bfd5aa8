/**
 * Weights of what speaks for and against a repair. Written by scripts/fit-repair.ts; do not edit by
 * hand.
 */
import type { Feature } from './weigh-candidate.ts';

export const REPAIR_WEIGHTS: Readonly<Record<Feature, number>> = {
  bias: -0.59,
  distance: -0.74,
  'same sound': 0.41,
  neighbours: 0.21,
  'heard unlikely': 0.01,
  seen: 0.67,
  'seen always': 2.26,
  'project knows it': 1.62,
  'project knows the heard': -1.47,
  'said elsewhere': -0.04,
  'heard elsewhere': -0.12,
  'makes a phrase': 1.69,
  'heard makes a phrase': -0.94,
  'heard is of the trade': -0.09,
  'heard is no word': 0.08,
  'heard is common': -0.1,
  'meant is common': -0.08,
  'meant never said': -0.57,
  'two for one': -0.22,
  'one for two': -0.18,
  short: -0.13,
  'only the ending': -0.46,
  'distance of a word': -0.48,
  'begins alike': -0.2,
  'ends alike': -0.42,
  nearest: 0.49,
  'pair said elsewhere': 0.25,
  'unit behind a number': 3.95,
};
