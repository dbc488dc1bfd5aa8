import { expect, test } from 'vitest';
import { checksIn } from '../../kit/records.ts';

test.each([
  [
    "The floor build up can't be more than 60: 25 insulation, 18 ply, 4 of cork.",
    'layers=insulation thickness; layers=ply thickness; layers=cork thickness; limit=60 mm',
  ],
  [
    "All together the roof mustn't be over 3 inches thick, that's two inch foam, half inch ply and a quarter inch of lining.",
    'layers=foam thickness; layers=ply thickness; layers=lining thickness; limit=3 in',
  ],
  [
    'The sandwich is 25 foam, 18 ply and 4 cork and it has to go in 45.',
    'layers=foam thickness; layers=ply thickness; layers=4 mm; limit=45 mm',
  ],
  [
    '25 of foam plus 12 of ply plus 3 of lino has to fit in the 42 mil I’ve got.',
    'layers=foam thickness; layers=ply thickness; layers=3 mm; limit=42 mm',
  ],
])('"%s" asks for the check', (said, inputs) => {
  expect(checksIn(said)).toEqual([`stack-up: ${inputs}`]);
});

test.each([
  "The bench can't be more than 900 high.",
  'The floor build up is 25 insulation and 18 ply.',
  'All together we have 3 sheets.',
  'The fridge has to go in the 600 gap.',
])('"%s" asks for none', (said) => {
  expect(checksIn(said)).toEqual([]);
});
