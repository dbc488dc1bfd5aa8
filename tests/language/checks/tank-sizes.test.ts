import { expect, test } from 'vitest';
import { checksIn } from '../../kit/records.ts';

test.each([
  [
    "The tank has to hold 90 litres, it's 600 by 400 by 380 inside.",
    'length=600 mm; width=400 mm; height=380 mm; wanted=90 L',
  ],
  [
    "I need 90 litres out of it and the tank's 700 long, 350 wide and 380 deep.",
    'length=tank length; width=tank width; height=tank depth; wanted=90 L',
  ],
  [
    "The water tank's 27 by 48 by 12 inches inside, it needs to hold sixty gallons.",
    'length=27 in; width=48 in; height=12 in; wanted=60 gal',
  ],
  [
    "The tank's 600 by 400 by 300 inside, that ought to give me 70 litres.",
    'length=600 mm; width=400 mm; height=300 mm; wanted=70 L',
  ],
  [
    "The tank is 600 by 400 by 300 inside and it has to hold 60 litres, only ninety percent of it's usable.",
    'length=600 mm; width=400 mm; height=300 mm; usable share=90 %; wanted=60 L',
  ],
  [
    'The water tank is 600 by 400 by 380 inside and 620 by 420 by 400 outside, it has to hold 90 litres.',
    'length=600 mm; width=400 mm; height=380 mm; wanted=90 L',
  ],
  [
    'The tank has to hold 90 litres. It is 620 by 420 by 400 on the outside. Inside it is 600 by 400 by 380.',
    'length=600 mm; width=400 mm; height=380 mm; wanted=90 L',
  ],
  [
    "The tank has to hold 90 litres, outside it's 620 long, 420 wide and 400 high, inside it's 600 long, 410 wide and 380 high.",
    'length=600 mm; width=410 mm; height=380 mm; wanted=90 L',
  ],
  [
    "The tank's external dimensions are 620 by 420 by 400, internal 600 by 400 by 380, it needs to hold 90 litres.",
    'length=600 mm; width=400 mm; height=380 mm; wanted=90 L',
  ],
  [
    "The tank has to hold 90 litres, it's 620 by 420 by 400 outside.",
    'length=tank inside length; width=tank inside width; height=tank inside height; wanted=90 L',
  ],
])('"%s" asks for the check', (said, inputs) => {
  expect(checksIn(said)).toEqual([`tank volume: ${inputs}`]);
});

test.each([
  'The tank holds 90 litres.',
  'The tank has to hold 90 litres.',
  // Inches, by the gallons; the house measures in millimetres.
  'We need 60 gallons of diesel and the tank is 48 by 27 by 12 inside.',
  "Does the tank have to hold 90 litres? It's 600 by 400 by 380.",
  'The bench is 600 by 400 by 380 and I need 90 litres of paint.',
])('"%s" asks for none', (said) => {
  expect(checksIn(said)).toEqual([]);
});

test('a tank of which both faces were told goes through by its outside', () => {
  const said =
    'The tank is 600 by 400 by 380 inside and 620 by 420 by 410 outside. It has to go through the side hatch.';
  expect(checksIn(said)).toEqual([
    'panel through opening: panel length=620 mm; panel width=420 mm; thickness=410 mm; opening width=side hatch width; opening height=side hatch height',
  ]);
});
