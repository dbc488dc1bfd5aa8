import { expect, test } from 'vitest';
import { checksIn } from '../../kit/records.ts';

test.each([
  ["The floor still has to go down, that's 22 mil.", 'layers=floor thickness'],
  ["There's a 12 mil floor to go down yet.", 'layers=floor thickness'],
  ["The vinyl still needs to be laid, that's 3 mil.", 'layers=vinyl thickness'],
  ["The screed's still to go in, 65 mil of it.", 'layers=screed thickness'],
  ['Remember the ply floor goes down after, 18 mil.', 'layers=ply floor thickness'],
  ["There's still 18 mil of ply to go on the floor.", 'layers=ply thickness'],
  ["We haven't laid the floor yet, it's 15 mil.", 'layers=floor thickness'],
  ["Once the floor's in we lose 22 mil.", 'layers=floor thickness'],
])('"%s" is a layer to come', (said, inputs) => {
  expect(checksIn(said)).toEqual([`height over finished floor: ${inputs}`]);
});

test('every height over the bare floor is held against it', () => {
  const said =
    "The bench top is 905 above the bare floor. The shelf is 1350 off the floor. The floor still has to go down, that's 22 mil.";
  const checks = checksIn(said);
  expect(checks).toHaveLength(2);
  for (const check of checks)
    expect(check).toMatch(/^height over finished floor: height=.* height; layers=floor thickness$/);
});

test.each([
  "The floor's down, that's 22 mil.",
  'The floor is 22 mil.',
  'The floor has to come up.',
  'The anchor has to go down, 30 metres.',
  "We haven't cut the floor yet, it's 15 mil.",
  "Once the tank's in we have 22 mil.",
  'The screed boards need to come down to 740 at the door.',
  'The floor goes down to 300 at the step.',
  'The lining still has to go on, 9 mil.',
  "The floor isn't going down yet, it's 22 mil.",
  'Does the floor still have to go down, 22 mil?',
])('"%s" is none', (said) => {
  expect(checksIn(said)).toEqual([]);
});

test('each layer that is told along counts', () => {
  expect(
    checksIn(
      'The bench is 900 off the subfloor, and the floor still has to go down, 18 mil of ply and 4 mil of vinyl. The door is 40 thick.',
    ),
  ).toEqual([
    'height over finished floor: height=bench above subfloor height; layers=floor thickness; layers=vinyl thickness',
  ]);
});

test('the most of a build-up, and a list of which one layer was not read, are no layers to come', () => {
  expect(
    checksIn(
      "The floor's going in. The floor build-up can't be more than 90: 50 of insulation, 18 of ply and 20 of oak boards.",
    ),
  ).toEqual([
    'stack-up: layers=insulation thickness; layers=ply thickness; layers=oak boards thickness; limit=90 mm',
  ]);
  expect(
    checksIn("The floor still has to go down, that's 50 insulation, 65 screed and 15 of flags."),
  ).toEqual([]);
});
