import { expect, test } from 'vitest';
import type { CheckNote } from '../../../src/language/notes.ts';
import { readMemo } from '../../../src/language/pipeline.ts';
import { checksIn, recordsIn } from '../../kit/records.ts';

const passage = (name: string, sides: readonly string[], ...openings: readonly string[]) => {
  const [length, width, thickness] = sides.map((side) => `${name} ${side}`);
  const ways = openings.map((one) => `opening width=${one} width; opening height=${one} height`);
  return `panel through opening: panel length=${length}; panel width=${width}; thickness=${thickness}; ${ways.join('; ')}`;
};
const FLAT = ['length', 'width', 'thickness'];
const UPRIGHT = ['height', 'width', 'depth'];
const LYING = ['length', 'width', 'height'];

test.each([
  [
    'The aft bulkhead panel has to go through the side hatch.',
    passage('aft bulkhead panel', FLAT, 'side hatch'),
  ],
  ['The bulkhead needs to fit through the escape hatch.', passage('bulkhead', FLAT, 'escape hatch')],
  ["The stove's going to have to go down the companionway.", passage('stove', UPRIGHT, 'companionway')],
  ["We've still got to get the engine out through the main hatch.", passage('engine', LYING, 'main hatch')],
  ['The table top must pass through the side door.', passage('table top', FLAT, 'side door')],
  [
    "We'll have to get the wardrobe through the front door and down the hall.",
    passage('wardrobe', UPRIGHT, 'front door', 'hall'),
  ],
  [
    'The worktop has to be carried down the hall and through the kitchen door.',
    passage('worktop', FLAT, 'hall', 'kitchen door'),
  ],
  [
    'The shower tray should fit through the bathroom door, just.',
    passage('shower tray', LYING, 'bathroom door'),
  ],
  [
    "The fridge has got to come in through the slider, and it's 595 wide, 640 deep and 850 high.",
    passage('fridge', UPRIGHT, 'slider'),
  ],
  [
    'Get the mattress out through the rear doors before anything else.',
    passage('mattress', FLAT, 'rear doors'),
  ],
  ['I want the cooker to fit through the hatch.', passage('cooker', UPRIGHT, 'hatch')],
  ['The tank can only come out through the cockpit hatch.', passage('tank', LYING, 'cockpit hatch')],
])('"%s" attaches a passage', (said, check) => {
  expect(checksIn(said)).toEqual([check]);
});

test('"this" is the thing that was named before it', () => {
  const said =
    'The engine box lid is 1220 long, 700 wide and 18 thick. This has to go through the side hatch.';
  expect(checksIn(said)).toEqual([passage('engine box lid', FLAT, 'side hatch')]);
  expect(recordsIn(said).map(({ quote }) => quote)).toEqual(['This has to go through the side hatch']);
});

test('sizes that were said name the sides: a panel that has a height is as high as it is long', () => {
  const said = 'The partition is 1980 high and 700 wide. It needs to come in through the rear door.';
  expect(checksIn(said)).toEqual([passage('partition', ['height', 'width', 'thickness'], 'rear door')]);
});

test('figures that stand already name the sides as well', () => {
  const known = (['length', 'width', 'depth'] as const).map((attribute) => ({
    item: 'locker',
    attribute,
    value: 400,
    unit: 'mm',
  }));
  expect(checksIn('The locker has to go through the hatch.', known)).toEqual([
    passage('locker', ['length', 'width', 'depth'], 'hatch'),
  ]);
});

test('sizes said of the opening in the same breath are taken as they are', () => {
  expect(checksIn('It all has to come in through the back door, 690 by 1140.')).toEqual([
    'panel through opening: opening width=690 mm; opening height=1140 mm',
  ]);
});

test('everything is every thing of the memo that has sizes', () => {
  const said =
    'The galley top is 1800 long and 600 wide. The bunk board is 1900 long and 650 wide. All of it has to come in through the side door.';
  expect(checksIn(said)).toEqual([
    passage('galley top', FLAT, 'side door'),
    passage('bunk board', FLAT, 'side door'),
  ]);
});

test("sizes told right behind the way are the way's, and leave the thing its own", () => {
  expect(checksIn('The bench top has to go through the side hatch, 710 by 540.')).toEqual([
    'panel through opening: panel length=bench top length; panel width=bench top width; ' +
      'thickness=bench top thickness; opening width=710 mm; opening height=540 mm',
  ]);
});

test.each([
  // What runs through one, and who goes through one.
  'The hose has to go through the bulkhead.',
  'The cable needs to go through the hatch.',
  'The bolts need to go through the hatch frame.',
  'He has to come in through the back door.',
  'You have to go through the back door to get to it.',
  'The dog has to go out through the side door.',
  'Air has to get out through the vent.',
  // Done, asked, supposed, denied.
  'The tank had to go through the hatch on its side.',
  'The fridge went through the side door fine.',
  'Will it go through the hatch?',
  'Does the stove have to go through the side door?',
  "If the fridge has to go through the hatch we're stuck.",
  "The panel doesn't have to go through the hatch.",
  // No thing, no opening.
  'This has to go through the side hatch.',
  'The panel has to go through the planer.',
  'The shelf has to go in the alcove.',
  'The vent has to go in the hatch.',
  'Put the lamp by the door.',
  'Take it out through the back door.',
  'I want to go through the door first.',
  'Get the hose through the hatch.',
  'The boards need to come in at the door by nine.',
  'We have to get through the winter.',
])('"%s" attaches none', (said) => {
  expect(checksIn(said)).toEqual([]);
});

test.each<[string, readonly string[], string | undefined]>([
  [
    "The locker lid's hinges stick out twelve mil. The locker lid has to go through the hatch.",
    ['locker lid hinges offset'],
    undefined,
  ],
  ['The lid has a handle that sticks out 40 mil. The lid has to go through the hatch.', ['40 mm'], undefined],
  [
    'The fridge handle is 45 proud. The fridge has to go through the back door.',
    ['fridge handle offset'],
    'all three',
  ],
  ['The door knobs are 60 mil proud of the face. The panel has to go through the hatch.', [], undefined],
])('"%s" takes what stands out with it: %j', (said, fittings, side) => {
  const { notes } = readMemo(said, { units: 'metric', recordedAt: '2026-03-03T14:20:00Z' });
  const check = notes.records.find((note): note is CheckNote => note.kind === 'check');
  expect(
    check?.inputs.filter(({ input }) => input === 'fittings').map(({ expression }) => expression),
  ).toEqual(fittings);
  expect(check?.options?.['fittings add to']).toBe(side);
});

test.each([
  ['That sheet, 2440 by 1220 by 18, needs to fit through the back doors.', 'sheet'],
  ['This table top, 80 by 40 by 1.5 inches, has to go through the cellar door.', 'table top'],
])('"%s": sizes may stand between a thing and its way', (said, of) => {
  const { notes } = readMemo(said, { units: 'metric', recordedAt: '2026-03-03T14:20:00Z' });
  const check = notes.records.find((note): note is CheckNote => note.kind === 'check');
  expect(check?.inputs.slice(0, 3).map((one) => one.of)).toEqual([of, of, of]);
});

test('a thing that is one sheet has the sizes that were told of it', () => {
  expect(
    checksIn(
      'The kitchen worktop is one sheet, 1850 by 620 by 28 thick, and it has to come in through the side hatch.',
    ),
  ).toEqual([
    'panel through opening: panel length=1850 mm; panel width=kitchen worktop width; thickness=kitchen worktop thickness; opening width=side hatch width; opening height=side hatch height',
  ]);
});

test.each([
  [
    'The bench top has to go through the hatch. The bench top is 2400 by 880 by 27, the hatch is 710 by 540.',
    'panel length=2400 mm; panel width=880 mm; thickness=27 mm; opening width=710 mm; opening height=540 mm',
  ],
  [
    'The hatch is 600 by 400, so the crate has to be able to go through that. The crate is 550 by 450 by 380.',
    'panel length=550 mm; panel width=450 mm; thickness=380 mm; opening width=600 mm; opening height=400 mm',
  ],
  [
    'The only way in for the bed is the companionway. The bed’s 1900 by 700 by 120. The companionway’s 640 wide.',
    'panel length=1900 mm; panel width=700 mm; thickness=120 mm; opening width=companionway width; opening height=companionway height',
  ],
])('"%s" asks for the passage with what was told beside it', (said, inputs) => {
  expect(checksIn(said)).toEqual([`panel through opening: ${inputs}`]);
});

test.each([
  'The only way in for us was the hatch.',
  'We had the crate through that.',
  'If it has to go through there we will cut it.',
  'Is the only way in for the bed the hatch?',
])('"%s" asks for no passage', (said) => {
  expect(checksIn(said)).toEqual([]);
});

test('three sizes told of a thing are not those of the opening', () => {
  const said =
    "Loft hatch is 600 by 550. The tank has to go up through the loft hatch and it's 940 by 540 by 480 outside.";
  expect(checksIn(said)).toEqual([
    'panel through opening: panel length=940 mm; panel width=540 mm; thickness=480 mm; opening width=600 mm; opening height=550 mm',
  ]);
});
