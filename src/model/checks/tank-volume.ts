import type { Check, Given, Worked } from './check.ts';
import { one, rangeOf } from './ranges.ts';
import { tankVolume, USABLE_SHARE, WANTED_VOLUME } from './tank-results.ts';

/**
 * Volume of a box-shaped tank from its inside sizes, in litres and both gallons.
 * Formula: length x width x height; usable = volume x usable share. Source: arithmetic; the US gallon of 231 cubic inches
 * and the imperial one of 4.54609 L as on http://pewterbank.com/html/american_measures.htm
 */
export const TANK_VOLUME: Check = {
  name: 'tank volume',
  says: 'what a box-shaped tank holds, in litres, US gallons and imperial gallons',
  formula: 'length x width x height, all inside; usable = volume x usable share',
  source: 'arithmetic; US gallon 231 in3, imperial gallon 4.54609 L (pewterbank.com, American measures)',
  inputs: [
    { name: 'length', kind: 'length', says: 'inside length' },
    { name: 'width', kind: 'length', says: 'inside width' },
    { name: 'height', kind: 'length', says: 'inside height' },
    USABLE_SHARE,
    WANTED_VOLUME,
  ],
  gives: 'volume',
  run: boxVolumeOf,
};

function boxVolumeOf(given: Given): Worked {
  const sizes = ['length', 'width', 'height'].map((name) => one(given, name));
  const volume = rangeOf((...values) => values.reduce((product, size) => product * size, 1), ...sizes);
  return tankVolume(given, volume);
}
