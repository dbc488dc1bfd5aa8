/** Demands and limits that attach a check, and likenesses of them that attach none. */
import { expect, test } from 'vitest';
import { checksIn } from '../../kit/records.ts';

test.each([
  [
    'The only way in for the bed is the companionway.',
    [
      'panel through opening: panel length=bed length; panel width=bed width; thickness=bed height; opening width=companionway width; opening height=companionway height',
    ],
  ],
  [
    'The bed has to come in through the hatch.',
    [
      'panel through opening: panel length=bed length; panel width=bed width; thickness=bed height; opening width=hatch width; opening height=hatch height',
    ],
  ],
  [
    'The bed has to come in by the side door.',
    [
      'panel through opening: panel length=bed length; panel width=bed width; thickness=bed height; opening width=side door width; opening height=side door height',
    ],
  ],
  [
    'The bed has to come in through the hatch and the door.',
    [
      'panel through opening: panel length=bed length; panel width=bed width; thickness=bed height; opening width=hatch width; opening height=hatch height; opening width=door width; opening height=door height',
    ],
  ],
  [
    'The hatch is 710 by 540. The bed has to go through that.',
    [
      'panel through opening: panel length=bed length; panel width=bed width; thickness=bed height; opening width=710 mm; opening height=540 mm',
    ],
  ],
  [
    'Everything has to come in through the hatch.',
    ['panel through opening: opening width=hatch width; opening height=hatch height'],
  ],
  [
    'The bed is 1900 by 700 by 200 and it has to come in through the hatch.',
    [
      'panel through opening: panel length=1900 mm; panel width=700 mm; thickness=200 mm; opening width=hatch width; opening height=hatch height',
    ],
  ],
  [
    'Get the mattress out through the rear doors.',
    [
      'panel through opening: panel length=mattress length; panel width=mattress width; thickness=mattress thickness; opening width=rear doors width; opening height=rear doors height',
    ],
  ],
  [
    'I want four shelves at 610 out of a 2440 sheet.',
    ['pieces from stock: stock=2440 mm; piece=610 mm; wanted=4'],
  ],
  [
    'That sheet should give four shelves at 600.',
    ['pieces from stock: stock=sheet length; piece=600 mm; wanted=4'],
  ],
  [
    'The lid has to lift up and clear the shelf.',
    [
      'swing clearance: box length=lid length; box depth=lid thickness; from angle=0 deg; ceiling=lid hinge to shelf clearance',
    ],
  ],
  [
    'The lid must not hit the shelf when it lifts.',
    [
      'swing clearance: box length=lid length; box depth=lid thickness; from angle=0 deg; ceiling=lid hinge to shelf clearance',
    ],
  ],
  [
    "The motor tilts to 70 degrees and it mustn't hit the transom.",
    [
      'swing clearance: box length=motor length; box depth=motor thickness; to angle=70 deg; wall ahead=motor hinge to transom clearance',
    ],
  ],
  [
    "The motor tilts from 10 to 70 degrees and it mustn't hit the transom.",
    [
      'swing clearance: box length=motor length; box depth=motor thickness; from angle=10 deg; to angle=70 deg; wall ahead=motor hinge to transom clearance',
    ],
  ],
  [
    'The lid is hinged at the back. It has to open past the shelf.',
    [
      'swing clearance: box length=lid length; box depth=lid thickness; pivot from back=0 mm; pivot from bottom=0 mm; from angle=0 deg; ceiling=lid hinge to shelf clearance',
    ],
  ],
  [
    'The hinge is 650 above the floor. The flap has to drop clear of the floor.',
    ['swing clearance: box length=flap length; box depth=flap thickness; from angle=0 deg; floor=650 mm'],
  ],
  ['The payload is 620 kilos.', ['running mass: limit=620 kg']],
  ['The payload was 620 kilos.', ['running mass: limit=620 kg']],
  ["I've got 250 kilos to play with.", ['running mass: limit=250 kg']],
  [
    "The roof rack and what's on it can't be more than 75 kilos.",
    ['running mass: part=roof rack weight; part=every weight in roof rack; limit=75 kg'],
  ],
  [
    "Everything on the roof can't be more than 75 kilos.",
    ['running mass: part=every weight in roof; limit=75 kg'],
  ],
  ['No more than 75 kilos on the roof.', ['running mass: part=every weight in roof; limit=75 kg']],
  [
    "The batteries, the charger and the inverter can't be over 90 kilos between them.",
    [
      'running mass: part=every batteries weight; part=every charger weight; part=every inverter weight; limit=90 kg',
    ],
  ],
  ["All up she's not to go over fifteen hundred kilos.", ['running mass: limit=1500 kg']],
  ["The galley can't be over 90 kilos all in.", ['running mass: part=every weight in galley; limit=90 kg']],
  ['The epoxy cures in seven days.', ['cure time: time=7 d']],
  ['The epoxy is touch dry in four hours.', ['drying time: time=4 h']],
  ['The varnish can be recoated in four to twelve hours.', ['recoat window: earliest=4 h; latest=12 h']],
  [
    'The second coat of varnish goes on after four hours and before twelve hours.',
    ['recoat window: earliest=4 h; latest=12 h'],
  ],
  [
    'Pot life of the epoxy is thirty minutes at twenty degrees.',
    ['pot life: time=30 min; data sheet temperature=20 degC'],
  ],
  ['24 hours for the varnish to dry, the pot life is thirty minutes.', ['pot life: time=30 min']],
  ['The tin says not below ten degrees.', ['product temperature: least=10 degC']],
  ["Don't use the glue under ten degrees.", ['product temperature: least=10 degC']],
  ["The glue won't set below eight degrees.", ['product temperature: least=8 degC']],
  ['The minimum temperature is eight degrees.', ['product temperature: least=8 degC']],
  ['The maximum temperature is thirty degrees.', ['product temperature: most=30 degC']],
])('"%s" is kept', (text, read) => expect(checksIn(text)).toEqual(read));

test.each([
  'The only way in for the bed was the companionway.',
  'The only way in for the wind is the companionway.',
  'The bed came in through the hatch.',
  'The lamp has to go by the door.',
  'The cable has to go through the door.',
  'The bed has to go through the niche.',
  'We got the mattress out through the rear doors.',
  'The bed does not have to come in through the hatch.',
  'Does the bed have to come in through the hatch?',
  'I want one shelf at 610 out of a 2440 sheet.',
  'I want four shelves at 610 out of the four sheets.',
  'If I want four shelves at 610 out of a 2440 sheet.',
  'I want four shelves 610 wide and 300 deep out of a 2440 sheet.',
  'That sheet gave four shelves at 600.',
  'That sheet should give four shelves.',
  'That sheet should give one shelf at 600.',
  'The lid lifts up and clears the shelf.',
  'The lid has to lift up and clear the dog.',
  'The kettle has to lift up and clear the shelf.',
  'The lid must not hit the shelf.',
  'If the lid has to lift up and clear the shelf.',
  'The payload is about 620 kilos.',
  "I've got 250 kilos to carry.",
  "The joists can't take more than 250 kilos.",
  "The roof rack can't be more than 75 kilos.",
  'No more than 75 kilos each on the roof.',
  "The batteries, the charger and the inverter can't be over 90 kilos.",
  "The batteries, the charger and the inverter can't be over 90 kilos each.",
  "She's not to go over fifteen hundred kilos.",
  "The whole lot can't be over 90 kilos so far.",
  'The epoxy cured in seven days.',
  'The varnish was recoated in four to twelve hours.',
  'Pot life of the epoxy was thirty minutes.',
  'Shelf life of the epoxy is thirty minutes.',
  'The tin is at ten degrees.',
  'The radio says not below ten degrees.',
  "Don't leave the dog under ten degrees.",
  "It's not below ten degrees outside tonight.",
  'The temperature is thirty degrees.',
])('"%s" tells none', (text) => expect(checksIn(text)).toEqual([]));
