import { expect, test } from 'vitest';
import { checksIn } from '../../kit/records.ts';

test.each([
  ['The drain has to fall one in forty over 3 metres.', 'fall over a run: run=drain length; fall=1/40'],
  [
    "The shower tray wants 12 mil a metre fall and it's 900 long.",
    'fall over a run: run=shower tray length; fall=12 mm / (1 m)',
  ],
  [
    "It needs a fall of 1 in 80 over the four metres and I've only got 40 mil.",
    'fall over a run: run=4 m; fall=1/80; drop=40 mm',
  ],
  [
    "The gutter's 20 feet long and needs to drop a quarter inch a foot.",
    'fall over a run: run=gutter length; fall=0.25 in / (1 ft)',
  ],
  [
    'The waste pipe should fall 2 percent over 2.4 metres.',
    'fall over a run: run=waste pipe length; fall=2 %',
  ],
  [
    "The ramp mustn't be steeper than 1 in 8, it comes up 18 inches over 12 feet.",
    'slope: rise=18 in; run=12 ft; steepest=1/8',
  ],
])('"%s" asks for the check', (said, inputs) => {
  expect(checksIn(said)).toEqual([`${inputs}`]);
});

test.each([
  'The drain falls one in forty.',
  'The drain fell one in forty over 3 metres.',
  'Does the drain have to fall one in forty over 3 metres?',
  'The shelf has to drop 40 mil.',
  'The price has to drop ten percent.',
])('"%s" asks for none', (said) => {
  expect(checksIn(said)).toEqual([]);
});
