import { expect, test } from 'vitest';
import { checksIn } from '../../kit/records.ts';

test.each([
  [
    "The fridge needs 25 millimetres clear either side. The fridge is 540 wide and the gap's 600.",
    'opening=fridge gap gap; part=fridge width; gap=25 mm',
  ],
  [
    "There has to be five mil all round the door. The door's 595 wide and the opening is 602.",
    'opening=door opening width; part=door width; gap=5 mm',
  ],
  [
    "I want three mil each side of the drawer, the drawer box is 412 wide and the opening's 420.",
    'opening=opening width; part=drawer box width; gap=3 mm',
  ],
  [
    'Leave a quarter inch either side of the battery box.',
    'opening=battery box opening width; part=battery box width; gap=0.25 in',
  ],
  [
    'Keep 50 clear of timber all round the flue.',
    'opening=flue opening diameter; part=flue diameter; gap=50 mm',
  ],
  [
    'The flue has to stay 50 clear of any wood all round.',
    'opening=flue opening diameter; part=flue diameter; gap=50 mm',
  ],
  [
    'The hatch lid wants 2 mil clearance all round.',
    'opening=hatch lid opening width; part=hatch lid width; gap=2 mm',
  ],
  [
    'The door wants an eighth of an inch clearance on each side, the frame is 30 inches wide and the door 29 and three quarters.',
    'opening=frame width; part=door width; gap=0.125 in',
  ],
  [
    "The window needs ten mil packing room all round, the aperture's 910 wide and 1210 high and the window is 890 wide and 1190 high.",
    'opening=aperture width; opening=aperture height; part=window width; part=window height; gap=10 mm',
  ],
  [
    "You've got to leave 50 mil above the fridge, fridge is 850 high and the opening's 920 high.",
    'opening=fridge opening height; part=fridge height; gap=50 mm',
  ],
  [
    "The washing machine has to fit in a 605 gap and it's 598 wide.",
    'opening=605 mm; part=washing machine width',
  ],
  [
    "The oven is 595 wide. It has to fit into the oven housing, that's 600 wide.",
    'opening=oven housing width; part=oven width',
  ],
  [
    "The batteries have to fit in the locker, the locker's 530 long inside and the batteries are 522.",
    'opening=locker length; part=batteries length',
  ],
  [
    "The cooker's 600 wide and it's got to go between the units, 604 between them.",
    'opening=units width; part=cooker width',
  ],
  [
    'The stove flue, 50 clear all round.',
    'opening=stove flue opening diameter; part=stove flue diameter; gap=50 mm',
  ],
  [
    'The stove flue is 100 diameter, 50 clear all round, the hole in the deck is 190.',
    'opening=deck hole diameter; part=stove flue diameter; gap=50 mm',
  ],
  [
    'The exhaust pipe needs 40 clear all round.',
    'opening=exhaust pipe opening diameter; part=exhaust pipe diameter; gap=40 mm',
  ],
])('"%s" asks for a fit', (said, inputs) => {
  expect(checksIn(said)).toEqual([`clearance: ${inputs}`]);
});

test.each([
  'I put the rule on and it is 36 at the top.',
  "The topmast's got to stand another six foot above the cap.",
  "It's going in the alcove, 1240 wide, and I want ten mil either end for my fingers.",
  'Three mil each side is what I left.',
  "There's five mil either side of the door.",
  "We don't need a gap either side of it.",
  'The toilet has to fit in the cupboard.',
  'The pipe has to go in the box.',
  'The screws have to go in the box.',
  'Does the fridge need a gap either side?',
  'Had to leave 20 mil either side of the stove.',
  'If the fridge needs 25 millimetres either side we move the locker.',
  'The panel needs two screws each side.',
  'The bench needs to be 900 high.',
  "There's 50 clear all round the flue.",
  'The flue has 50 clear all round.',
  '50 clear all round is what we have.',
])('"%s" asks for none', (said) => {
  expect(checksIn(said)).toEqual([]);
});

test.each([
  [
    'The fridge needs 30 mil behind it, the recess is 620 deep and the fridge is 600 deep.',
    'opening=recess depth; part=fridge depth; gap=30 mm',
  ],
  [
    "The centreboard is 22 thick and the slot's 28 wide. The centreboard needs 2 mil clear either side.",
    'opening=slot width; part=centreboard thickness; gap=2 mm',
  ],
])('"%s" is held against what is there', (said, inputs) => {
  expect(checksIn(said)).toEqual([`clearance: ${inputs}`]);
});
