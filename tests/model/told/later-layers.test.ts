/** Layers that go on after a thing was measured, in whatever words they are told. */
import { expect, test } from 'vitest';
import { checkViews } from '../../../src/model/checks/check-views.ts';
import { isLayerWork } from '../../../src/model/checks/layer-words.ts';
import { type ByHand, ToldStory } from '../../kit/told-story.ts';

test.each([
  'Put the cork down on the cabin sole',
  'put the ply on round the side hatch',
  'Stuck ten mil of foam on the hull sides',
  'Glued the formica on the bench top',
  'The carpet went down in the saloon',
  "the insulation's in behind the side hatch",
  'Ripped the old vinyl up off the galley floor',
  'Screwed nine mil ply over the floor',
  'lined the side hatch',
  'Bonded the laminate onto the table',
  'tiles are on in the shower',
])('"%s" changes what was measured before it', (said) => {
  expect(isLayerWork(said)).toBe(true);
});

test.each([
  'Fitted the shelf on the side hatch',
  'painted the side hatch',
  'Hung the door on the wheelhouse',
  'screwed the hinges on the locker lid',
  'Put the stove in the galley',
  'put the panel on the trestles',
  'measured the side hatch',
  'glued the knob on the drawer',
])('"%s" leaves it as it was', (said) => {
  expect(isLayerWork(said)).toBe(false);
});

const clearance = (opening: string, part: string): ByHand => ({
  kind: 'check-added',
  check: 'clearance',
  inputs: [
    { input: 'opening', expression: opening },
    { input: 'part', expression: part },
  ],
});
const told = (story: ToldStory) =>
  checkViews(story.project.rows).map(({ state, why }) => `${state}: ${why}`)[0];

test('a floor of known thickness comes off a height that was taken over the bare one', () => {
  const story = new ToldStory()
    .hear('The worktop is 900 millimetres high above the cabin floor.')
    .hand(clearance('worktop height', '890 mm'))
    .hear('We stuck the cork down on the cabin floor, the cork is 6 millimetres thick.');
  expect(told(story)).toMatch(
    /^stale: .*by the old figures: 10 mm left at worst; with 6 mm of cork on it: 4 mm left at worst$/,
  );
});

test('what one layer alone breaks is broken, and is told as a finding', () => {
  const story = new ToldStory()
    .hear('The worktop is 900 millimetres high above the cabin floor.')
    .hand(clearance('worktop height', '890 mm'))
    .hear('We stuck the cork down on the cabin floor, the cork is 12 millimetres thick.');
  expect(told(story)).toMatch(/^broken: .*with 12 mm of cork on it: 2 mm short at worst$/);
  expect(story.open().filter(({ kind }) => kind === 'check')).toHaveLength(1);
});

test('a lining may be on one side of an opening or on both, and both are told', () => {
  const story = new ToldStory()
    .hear('I measured the side hatch, it is 560 millimetres wide.')
    .hand(clearance('side hatch width', '545 mm'))
    .hear('I have lined the side hatch with ply. The ply is 9 millimetres thick.');
  expect(told(story)).toMatch(
    /^stale: .*with 9 mm of ply on it: 6 mm left at worst, or on both sides: 3 mm short at worst$/,
  );
});

test('a thing that is boarded over grows', () => {
  const story = new ToldStory()
    .hear('I measured the locker, it is 540 millimetres wide.')
    .hand(clearance('560 mm', 'locker width'))
    .hear('I have boarded the locker with ply. The ply is 9 millimetres thick.');
  expect(told(story)).toMatch(
    /with 9 mm of ply on it: 11 mm left at worst, or on both sides: 2 mm left at worst$/,
  );
});

test('a layer of which nobody said the thickness asks for a new measure alone', () => {
  const story = new ToldStory()
    .hear('I measured the side hatch, it is 560 millimetres wide.')
    .hand(clearance('side hatch width', '550 mm'))
    .hear('I have lined the side hatch with ply.');
  expect(told(story)).toMatch(/^stale: .*by the old figures: 10 mm left at worst$/);
});

test('a locker that was lined is no larger outside, and nobody said where it was measured', () => {
  const story = new ToldStory()
    .hear('I measured the locker, it is 540 millimetres wide.')
    .hand(clearance('560 mm', 'locker width'))
    .hear('I have lined the locker with ply. The ply is 9 millimetres thick.');
  expect(told(story)).toMatch(/^stale: .*by the old figures: 20 mm left at worst$/);
});
