/** Turns told behind the power of a motor, and torques told again. */
import { expect, test } from 'vitest';
import type { KnownFigure } from '../../../src/language/notes.ts';
import { readMemo } from '../../../src/language/pipeline.ts';

const figures = (said: string, knownFigures: readonly KnownFigure[] = []) =>
  readMemo(said, { units: 'us', region: 'US', recordedAt: '2026-06-10T18:00:00+01:00', knownFigures })
    .notes.figures.filter(({ dimension }) => dimension !== 'count')
    .map(({ attribute, value, unit }) => `${attribute} ${value} ${unit}`)
    .join(', ') || 'none';

test.each([
  ['The motor is one horse, seventeen twenty five.', 'power 1 hp, speed 1725 rpm'],
  ['Motor is one horse, 1725.', 'power 1 hp, speed 1725 rpm'],
  ['The saw motor: one and a half horse, thirty four fifty.', 'power 1.5 hp, speed 3450 rpm'],
  ['It has a two horse motor, 3450.', 'power 2 hp, speed 3450 rpm'],
  ['Found a motor, three quarter horse, eleven forty, ball bearings.', 'power 0.75 hp, speed 1140 rpm'],
  ['The lathe motor does 750 watts, fourteen hundred.', 'power 750 W, speed 1400 rpm'],
  ['The motor is 1.1 kilowatt, 2850.', 'power 1.1 kW, speed 2850 rpm'],
  ['Motor plate says 1 HP, 1725, 115 volts.', 'power 1 hp, speed 1725 rpm, voltage 115 V'],
  ['The engine is 20 horse at 3000.', 'power 20 hp, speed 3000 rpm'],
])('"%s" tells the turns: %s', (said, expected) => {
  expect(figures(said)).toBe(expected);
});

test.each([
  ['The motor is two horse, and 30 inches long.', 'power 2 hp, length 30 in'],
  ['The motor is three horse, 415.', 'power 3 hp, voltage 415 V'],
  ['The heater is 2 kilowatts, 1800 wide.', 'power 2 kW, width 1800 in'],
  ['The motor cost: one horse, 1200 dollars.', 'power 1 hp, money 1200 USD'],
])('"%s" tells none: %s', (said, expected) => {
  expect(figures(said)).toBe(expected);
});

const BOLTS: readonly KnownFigure[] = [
  { item: 'head bolts', attribute: 'torque', value: 45, unit: 'ft.lbf' },
];

test.each([
  ['Head bolts, sixty five.', 'torque 65 ft.lbf'],
  ['The head bolts want sixty five.', 'torque 65 ft.lbf'],
  ['Sixty five on the head bolts.', 'torque 65 ft.lbf'],
  ['Head bolts again, sixty five this time.', 'torque 65 ft.lbf'],
  ['The head bolts are five inches long.', 'length 5 in'],
  ['I have sixty five head bolts.', 'none'],
  ['Sixty five for the paint.', 'none'],
  ['Sixteen on the head bolts.', 'none'],
])('of bolts that were told in foot pounds "%s" tells %s', (said, expected) => {
  expect(figures(said, BOLTS)).toBe(expected);
});

test.each([
  [
    'Flange bolts: first pass thirty foot pounds, second pass at fifty, third pass sixty five.',
    'torque 30 ft.lbf, torque 50 ft.lbf, torque 65 ft.lbf',
  ],
  ['Keel bolts at 45 foot pounds. Later sixty on the keel bolts.', 'torque 45 ft.lbf, torque 60 ft.lbf'],
  ['Nip the nuts to thirty foot pounds. Second coat tomorrow.', 'torque 30 ft.lbf'],
])('"%s" tells %s', (said, expected) => {
  expect(figures(said)).toBe(expected);
});
