import { expect, test } from 'vitest';
import { checksIn } from '../../kit/records.ts';

test.each([
  ['What’s 1220 mil in inches?', 'length in fractions: length=1220 mm'],
  ['I need 1220 mil in sixteenths.', 'length in fractions: length=1220 mm'],
  ['Convert 2440 to inches.', 'length in fractions: length=2440 mm'],
  [
    'The shelf is 905 wide. I need that in sixteenths for the tape.',
    'length in fractions: length=shelf width',
  ],
  ['The shelf’s 905 wide, give me that in feet and inches.', 'length in fractions: length=shelf width'],
  ['The shelf is 905 wide. What’s the shelf width in inches?', 'length in fractions: length=shelf width'],
  ['What’s five and three sixteenths in mil?', 'fractions to millimetres: length=5.1875 in'],
  [
    'The stile’s five and three sixteenths inches wide, what is that in millimetres?',
    'fractions to millimetres: length=stile width',
  ],
  [
    'Work out the shelf width in millimetres. The shelf is 30 and a quarter inches wide.',
    'fractions to millimetres: length=shelf width',
  ],
])('"%s" asks for the length', (said, check) => {
  expect(checksIn(said)).toEqual([check]);
});

test.each([
  'Everything’s drawn in inches.',
  'The tape’s in inches.',
  'I work in millimetres.',
  'It’s 40 mil in.',
  'The drawing was marked in inches, 905 wide.',
  'I need it in the van.',
  'Don’t put 905 in inches.',
])('"%s" asks for none', (said) => {
  expect(checksIn(said)).toEqual([]);
});
