/**
 * Weights of what speaks for and against a repair where the recogniser told its doubts. Written by scripts/fit-repair.ts; do not edit by
 * hand.
 */
import type { SoundFeature } from './weigh-candidate.ts';

export const SOUND_WEIGHTS: Readonly<Record<SoundFeature, number>> = {
  bias: -1.65,
  words: 0.29,
  neighbours: 0.28,
  'project knows it': 1.4,
  'said elsewhere': -0.35,
  'makes a phrase': 1.34,
  'heard is of the trade': -0.72,
  'heard is no word': 1.01,
  'two for one': -0.94,
  'not in the sound': -2.03,
  sound: 0.14,
  'sound of a word': 0.15,
  'likelier than heard': 0.33,
  'likeliest in the sound': 2.02,
  'heard unsure': 0.44,
};
