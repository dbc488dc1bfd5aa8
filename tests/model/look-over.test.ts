/** What was made to a figure that gave way stays a task until somebody saw to it. */
import { expect, test } from 'vitest';
import { ToldStory } from '../kit/told-story.ts';

const GLASS = 'look over: glass for the stove hearth (to 615 mm, now 650 mm)';
const BOARD = 'look over: cut the hearth board for the stove hearth to 615 (now 650 mm)';

const changed = () =>
  new ToldStory().hear(
    'The stove hearth is 615 wide. Cut the hearth board for the stove hearth to 615 and ordered the glass for the stove hearth.',
    "Changed my mind about the stove hearth, it's going to be 650 wide now.",
  );
const open = (story: ToldStory) =>
  story
    .tasksOn(20)
    .filter(({ status }) => status !== 'done')
    .map(({ gist }) => gist);

test('each part that hangs on the figure that gave way is to be looked over', () => {
  expect(open(changed())).toEqual([]);
  expect(open(changed().settle('take-new')).sort()).toEqual([BOARD, GLASS]);
});

test.each(['keep-old', 'both-right'] as const)('%s leaves nothing to look over', (choice) => {
  expect(open(changed().settle(choice))).toEqual([]);
});

test('a part that was cut to a size of its own does not hang on another one of its thing', () => {
  const story = new ToldStory().hear(
    'The bunk is 1900 long. I have cut the bunk slats to 710 mm. I have cut the bunk boards to 1900 mm.',
    "Changed my mind about the bunk, it's going to be 1850 long now.",
  );
  expect(open(story.settle('take-new'))).toEqual(['look over: cut the bunk boards to 1900 mm (now 1850 mm)']);
});

test('a figure set by hand gives way too, and the older one set again does not', () => {
  const set = (value: number) => changed().set('stove hearth', 'width', value);
  expect(open(set(640)).length).toBe(2);
  expect(open(set(640))).toContain(GLASS.replace('650', '640'));
  expect(open(set(615))).toEqual([]);
});

test.each([
  ['Fitted the stove hearth trim. Oiled the hearth board of the stove hearth.', [BOARD, GLASS]],
  ['I recut the hearth board for the stove hearth.', [GLASS]],
  ['Cut the hearth board for the stove hearth at 650.', [GLASS]],
  ['I checked the glass for the stove hearth and it still goes in.', [BOARD]],
  ['I trimmed the door.', [BOARD, GLASS]],
])('after "%s" what is left is %j', (said, left) => {
  expect(open(changed().settle('take-new').hear(said)).sort()).toEqual(left);
});

test('what was done anew before the clash was settled, or is the reason for it, is not asked for', () => {
  const before = changed().hear('I recut the hearth board for the stove hearth.').settle('take-new');
  expect(open(before)).toEqual([GLASS]);
  const [finding] = changed().open();
  const told = changed().hand({
    kind: 'finding-settled',
    findingId: finding?.id ?? '',
    choice: 'take-new',
    reason: 'recut it and sent the glass back',
  });
  expect(open(told)).toEqual([]);
});

test('settled anew the other way, nothing is left of the first settling', () => {
  const story = changed().settle('take-new');
  const [finding] = story.findings();
  story.hand({ kind: 'finding-settled', findingId: finding?.id ?? '', choice: 'keep-old' });
  expect(open(story)).toEqual([]);
});
