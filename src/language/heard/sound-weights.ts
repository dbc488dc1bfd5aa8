/**
 * Weights of what speaks for and against a repair where the recogniser told its doubts. Written by scripts/fit-repair.ts; do not edit by
 * hand.
 */
import type { SoundFeature } from './weigh-candidate.ts';

export const SOUND_WEIGHTS: Readonly<Record<SoundFeature, number>> = {
  bias: -1.67,
  words: 0.29,
  neighbours: 0.28,
  'project knows it': 1.37,
  'said elsewhere': -0.11,
  'makes a phrase': 1.52,
  'heard is of the trade': -0.96,
  'heard is no word': 0.4,
  'two for one': 0.07,
  'not in the sound': -2.01,
  sound: 0.2,
  'sound of a word': 0.08,
  'likelier than heard': 0.38,
  'likeliest in the sound': 2,
  'heard unsure': 0.33,
};
