import { expect, test } from 'vitest';
import { checksIn } from '../../kit/records.ts';

test.each([
  [
    'The lid has to swing up to ninety degrees without hitting the ceiling.',
    'box length=lid length; box depth=lid thickness; to angle=90 deg; ceiling=lid hinge to ceiling clearance',
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
    'box length=bed length; box depth=bed thickness; ceiling=bed hinge to cupboards clearance',
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
