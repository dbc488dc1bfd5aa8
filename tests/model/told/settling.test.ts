import { expect, test } from 'vitest';
import { exportDocument } from '../../../src/model/export.ts';
import { wordsOfFinding } from '../../../src/model/settling.ts';
import type { FindingView } from '../../../src/model/views.ts';
import { ToldStory } from '../../kit/told-story.ts';

test('the old height is kept: what was worked out from it stands as it was', () => {
  const story = new ToldStory().hear(
    'The bench top is 900 millimetres high. The legs are the bench top less 38 millimetres, so the legs are 862 millimetres long.',
    'I changed my mind, the bench top is now 950 millimetres high.',
  );
  const length = () => story.figures('bench legs').filter((line) => line.startsWith('bench legs length'));
  expect(length()).toEqual(['bench legs length 912 mm = bench top height - 38 mm (stale)']);
  const decided = story.findings().find((finding) => finding.kind === 'decided');
  story.hand({ kind: 'finding-settled', findingId: decided?.id ?? '', choice: 'keep-old' });
  expect(story.figures('bench top')[0]).toBe('bench top height 900 mm');
  expect(length()).toEqual(['bench legs length 862 mm = bench top height - 38 mm']);
  expect(story.open()).toEqual([]);
  story.hear('I changed my mind, the bench top is now 960 millimetres high.');
  expect(story.found(story.open())).toEqual(['stale: bench legs length 862 mm -> 922 mm']);
});

test('a chain of worked-out figures follows there and back', () => {
  const story = new ToldStory()
    .set('room', 'length', 4000)
    .formula('bench top', 'length', 'room length - 1000 mm')
    .formula('rail', 'length', 'bench top length / 2')
    .set('room', 'length', 4100);
  expect(story.found(story.open())).toEqual([
    'stale: bench top length 3000 mm -> 3100 mm',
    'stale: rail length 1500 mm -> 1550 mm',
  ]);
  story.set('room', 'length', 4000);
  expect(story.open()).toEqual([]);
  expect(story.figures()).toEqual([
    'room length 4000 mm',
    'bench top length 3000 mm = room length - 1000 mm',
    'rail length 1500 mm = bench top length / 2',
  ]);
});

test('a task that is opened again is exported as open, and its deed closes nothing', () => {
  const story = new ToldStory().hear(
    'I need to oil the bench top tomorrow.',
    'I oiled the bench top this morning.',
  );
  const told = () =>
    exportDocument(story.project.rows) as {
      open: string[];
      memos: { tasks: { id: string }[]; done: { closes?: string }[] }[];
    };
  const task = told().memos[0]?.tasks[0]?.id ?? '';
  expect([told().open, told().memos[1]?.done[0]?.closes]).toEqual([[], task]);
  story.hand({ kind: 'task-reopened', taskId: task });
  expect([told().open, told().memos[1]?.done[0]?.closes]).toEqual([[task], undefined]);
});

const SLIP = [
  'The bench top is 915 millimetres high, I measured it.',
  'The bench top is 951 millimetres high.',
];
const slipOf = (story: ToldStory) => story.findings()[0] as FindingView;

test('a settling holds for what the finding said, also when its id has moved', () => {
  const story = new ToldStory().hear(...SLIP);
  const finding = wordsOfFinding(slipOf(story));
  story.hand({ kind: 'finding-settled', findingId: 'm2.c7', finding, choice: 'take-new' });
  expect([story.open(), story.figures()]).toEqual([[], ['bench top height 951 mm']]);
});

test.each([
  ['item', { item: 'shelf' }],
  ['attribute', { attribute: 'width' }],
  ['older value', { was: { value: 905, unit: 'mm' } }],
  ['newer value', { now: { value: 951, unit: 'cm' } }],
] as const)('an id that has come to mean another %s settles nothing', (_what, other) => {
  const story = new ToldStory().hear(...SLIP);
  const finding = { ...wordsOfFinding(slipOf(story)), ...other };
  story.hand({ kind: 'finding-settled', findingId: slipOf(story).id, finding, choice: 'take-new' });
  expect(story.open().map(({ kind }) => kind)).toEqual(['slip']);
  expect(story.figures()).toEqual(['bench top height 915 mm (in-doubt)']);
});
