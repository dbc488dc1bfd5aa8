import { expect, test } from 'vitest';
import { type ByHand, ToldStory } from '../../kit/told-story.ts';

const limit = (item: string, value: number, about = ''): ByHand => ({
  kind: 'limit-set',
  item,
  attribute: 'width',
  about,
  bound: 'at-most',
  quantity: { value, unit: 'mm' },
});

const broken = () => new ToldStory().hand(limit('cabinet', 600)).hear('The cabinet is 640 millimetres wide.');

test('a thing that a person lets pass is not raised again, and another size of it is', () => {
  const story = broken();
  expect(story.found(story.open())).toEqual(['limit: cabinet width 600 mm -> 640 mm']);
  story.settle('both-right').hear('The cabinet is 640 millimetres wide.');
  expect(story.open()).toEqual([]);
  story.hear('I changed my mind, the cabinet is now 660 millimetres wide.');
  expect(story.found(story.open())).toEqual(['limit: cabinet width 600 mm -> 660 mm']);
});

test('a limit gives way to the new size and holds from there', () => {
  const story = broken().settle('take-new');
  expect(story.limits()).toEqual(['cabinet width at-most 640 mm']);
  story.hear('I changed my mind, the cabinet is now 650 millimetres wide.');
  expect(story.found(story.open())).toEqual(['limit: cabinet width 640 mm -> 650 mm']);
});

test('a limit that is kept is not touched', () => {
  const story = broken().settle('keep-old');
  expect([story.limits(), story.open()]).toEqual([['cabinet width at-most 600 mm'], []]);
});

test('a limit set by hand is held against what stands already', () => {
  const story = new ToldStory()
    .hear('The cabinet is 640 millimetres wide. The fridge is 545 millimetres wide.')
    .hand(limit('cabinet', 600));
  expect(story.found()).toEqual(['limit: cabinet width 600 mm -> 640 mm']);
});

test('a limit is held against the things that it is about, not against its own passage', () => {
  const story = new ToldStory()
    .hear('The doorway is 760 millimetres wide. The water tank is 755 millimetres wide.')
    .hand(limit('doorway', 740, 'tanks and panels'))
    .hear('The galley panel is 900 millimetres wide. The shelf is 1100 millimetres wide.');
  expect(story.found()).toEqual([
    'limit: water tank width 740 mm -> 755 mm',
    'limit: galley panel width 740 mm -> 900 mm',
  ]);
});

test.each([
  ['keep-old', 'loft hatch width at-most 600 mm'],
  ['take-new', 'loft hatch width at-most 620 mm'],
] as const)('a limit stated anew and settled with %s holds at that side', (choice, left) => {
  const story = new ToldStory().hear(
    'The loft hatch can be at most 600 millimetres wide.',
    'I changed my mind, the loft hatch can be at most 620 millimetres wide now.',
  );
  const [finding] = story.findings();
  story.hand({ kind: 'finding-settled', findingId: finding?.id ?? '', choice });
  expect(story.limits()).toEqual([left]);
});

test('what has to come in is held to the way in, also when the way is only called "it"', () => {
  const story = new ToldStory()
    .hear('The shelf is 27 thick. The side gate is 640 wide, so nothing over 620 comes in through it.')
    .hear('The freezer is 900 wide. The loft is 1900 wide.');
  expect(story.limits()).toEqual([
    'anything comes in through side gate width at-most 620 mm for anything comes in through side gate',
  ]);
  expect(story.found()).toEqual(['limit: freezer width 620 mm -> 900 mm']);
});

const DOORWAY = 'Nothing wider than 690 goes through the doorway.';
test.each([
  'The lathe is 940 wide.',
  'The sofa’s 750 wide.',
  'I have a new panel coming, 720 wide.',
  'The table’s in the garage, it is 940 wide and it has to come in.',
])('what has to come in breaks the limit of the doorway: %s', (said) => {
  expect(new ToldStory().hear(DOORWAY, said).open()).toMatchObject([{ kind: 'limit' }]);
});

test.each([
  'The shed is 940 wide.',
  'The lathe is 940 wide, it lives in the shed.',
  'The workbench I built in the shed is 750 wide.',
  'The table’s staying in the garage, it is 940 wide.',
  'The wardrobe comes flat packed, it’s 900 wide.',
  'The bed base is 1400 wide, it comes apart.',
  'The back gate stands outside, it is 1200 wide.',
])('what need not come in breaks none: %s', (said) => {
  expect(new ToldStory().hear(DOORWAY, said).open()).toEqual([]);
});

test('a limit that is told again by its number alone takes the place of no figure', () => {
  const story = new ToldStory('us', 'US')
    .hear('Wood stove came, it needs 36 inches to anything that burns.')
    .hear(
      'I set the stove where I want it and its 31 inches from the paneling thats 31 the sticker says 36 so no.',
    );
  expect(story.found()).toEqual([expect.stringMatching(/^limit: wood stove clearance.*36 in -> 31 in/)]);
  story.hear('The stove now sits 38 inches from the wood.');
  expect(story.found().filter((line) => line.includes('36 in -> 38 in'))).toEqual([]);
});

test.each([
  ['another number', 'The book says 30 to anything that burns.'],
  ['the same number measured', 'I measured it, the wood stove is 36 inches from the paneling.'],
])('%s is a figure of its own', (_, again) => {
  const story = new ToldStory('us', 'US').hear('Wood stove came, it needs 36 inches to anything that burns.');
  const before = story.project.rows.all('claims').length;
  story.hear(again);
  expect(story.project.rows.all('claims').length).toBe(before + 1);
  expect(story.project.rows.all('claims').at(-1)?.status).toBe('standing');
});
