/**
 * Weights of what speaks for and against a repair where the recogniser told its doubts. Written by scripts/fit-repair.ts; do not edit by
 * hand.
 */
import type { SoundFeature } from './weigh-candidate.ts';

export const SOUND_WEIGHTS: Readonly<Record<SoundFeature, number>> = {
  bias: 0.22,
  distance: -0.64,
  'same sound': 0.01,
  neighbours: 0.19,
  'heard unlikely': 0.02,
  seen: 1.96,
  'seen always': -0.57,
  'project knows it': 2.6,
  'project knows the heard': -3.24,
  'said elsewhere': -0.21,
  'heard elsewhere': -0.15,
  'makes a phrase': 2.37,
  'heard makes a phrase': -5.35,
  'heard is of the trade': -0.89,
  'heard is no word': -0.09,
  'heard is common': -0.07,
  'meant is common': -0.03,
  'meant never said': -0.3,
  'two for one': -1.26,
  'one for two': 0.28,
  short: -0.67,
  'only the ending': -0.3,
  'distance of a word': 0.55,
  'begins alike': 0.17,
  'ends alike': 0.04,
  nearest: 0.79,
  'pair said elsewhere': 0.56,
  'not in the sound': -2.53,
  sound: 0.21,
  'sound of a word': 0.41,
  'likelier than heard': 1.71,
  'likeliest in the sound': 0.72,
  'heard unsure': 0.09,
  'unsure of a word': 0.05,
  'far from what was heard': 1.72,
  'only by the sound': -0.49,
};
