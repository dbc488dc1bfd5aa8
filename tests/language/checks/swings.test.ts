import { expect, test } from 'vitest';
import { checksIn } from '../../kit/records.ts';

test.each([
  [
    'The lid has to swing up to ninety degrees without hitting the ceiling.',
    'box length=lid length; box depth=lid thickness; from angle=0 deg; to angle=90 deg; ceiling=lid hinge to ceiling clearance',
  ],
  [
    "The hatch has to clear the floor when it swings down. It's hinged along the top edge.",
    'box length=hatch length; box depth=hatch thickness; pivot from back=0 mm; pivot from bottom=0 mm; floor=hatch hinge to floor clearance',
  ],
  [
    'The motor box needs to tilt 70 degrees and stay clear of the transom.',
    'box length=motor box length; box depth=motor box thickness; to angle=70 deg; wall ahead=motor box hinge to transom clearance',
  ],
  [
    "The door mustn't hit the cooker when it opens.",
    'box length=door length; box depth=door thickness; wall ahead=door hinge to cooker clearance',
  ],
  [
    'The bed is 1900 long and 80 thick. The bed has to fold up past the cupboards.',
    'box length=bed length; box depth=bed thickness; from angle=0 deg; ceiling=bed hinge to cupboards clearance',
  ],
])('"%s" wants something to swing clear', (said, inputs) => {
  expect(checksIn(said)).toEqual([`swing clearance: ${inputs}`]);
});

test.each([
  'The door swings over the worktop.',
  'The lid hit the ceiling when it opened.',
  'The drawer has to clear the door casing.',
  'The boat swings on its anchor.',
  'Does the door clear the cooker when it opens?',
])('"%s" wants nothing of a swing', (said) => {
  expect(checksIn(said)).toEqual([]);
});

test.each([
  [
    'The motor tilts from level to 70 degrees and it mustn’t hit the transom. The motor’s 900 long and 300 high. The pivot is 200 from the back and 100 up from the bottom. The transom is 600 from the pivot.',
    'box length=motor length; box depth=motor height; pivot from back=200 mm; pivot from bottom=100 mm; from angle=0 deg; to angle=70 deg; wall ahead=600 mm',
  ],
  [
    'The lid’s hinged at the back, it’s 500 deep and 20 thick, and it has to open to 90 degrees without hitting the shelf, the shelf is 480 above the hinge.',
    'box length=lid depth; box depth=lid thickness; pivot from back=0 mm; pivot from bottom=0 mm; from angle=0 deg; to angle=90 deg; ceiling=480 mm',
  ],
  [
    'I need the table to fold down past the seat, it’s 700 long and 25 thick, hinged on the wall side, goes from 0 to minus 90.',
    'box length=table length; box depth=table thickness; pivot from back=0 mm; pivot from bottom=0 mm; from angle=0 deg; to angle=-90 deg; wall ahead=table hinge to seat clearance',
  ],
])('"%s" tells of the pivot and the swing', (said, inputs) => {
  expect(checksIn(said)).toEqual([`swing clearance: ${inputs}`]);
});

test.each([
  'Does the lid clear the shelf when it opens?',
  'The lid didn’t hit the shelf when it opened.',
  'The door swung past the post.',
  'The lid has to be sanded.',
])('"%s" wants nothing clear', (said) => {
  expect(checksIn(said)).toEqual([]);
});
