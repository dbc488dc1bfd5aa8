/**
 * Checks over the days of a build, attached by talk and by hand: broken, held again, stale and back, taken away and
 * brought back, as the figures that they read change.
 */
import { describe, expect, test } from 'vitest';
import { checkViews } from '../../../src/model/checks/check-views.ts';
import { ToldStory } from '../../kit/told-story.ts';

const statesOf = (story: ToldStory) => checkViews(story.project.rows).map(({ state }) => state);
const found = (story: ToldStory) =>
  story
    .findings()
    .filter(({ kind }) => kind === 'check')
    .map(({ status, settledBy }) => (status === 'settled' ? settledBy?.choice : status));

interface Path {
  readonly check: string;
  readonly asked: string;
  /** Memo, and the state and the findings' states behind it. */
  readonly days: readonly (readonly [memo: string, state: string, findings: readonly string[]])[];
}

const SPOKEN: readonly Path[] = [
  {
    check: 'panel through opening, sizes told without names',
    asked: 'The bench top is 2400 by 880 by 40. The bench top has to go through the side hatch, 710 by 540.',
    days: [
      ['The wind was up all day.', 'broken', ['open']],
      ["Cut the bench top again, it's 850 wide now.", 'holds', ['holds-again']],
      ['Stuck the lino down on the bench top.', 'stale', ['holds-again']],
      ['Measured the bench top again, it is 2400 long, 850 wide and 42 thick.', 'holds', ['holds-again']],
      ['Changed my mind, the bench top is 870 wide now.', 'broken', ['holds-again', 'open']],
    ],
  },
  {
    check: 'clearance, by names',
    asked: 'The fridge is 540 wide. The fridge bay is 560 wide. The fridge needs 12 mil clear either side.',
    days: [
      ['The wind was up all day.', 'broken', ['open']],
      ["Planed the fridge bay out, it's 570 wide now.", 'holds', ['holds-again']],
      ['We lined the fridge bay.', 'stale', ['holds-again']],
      ['Measured the fridge bay again, it is 566 wide.', 'holds', ['holds-again']],
      ['Measured the fridge bay again, it is 562 wide.', 'broken', ['holds-again', 'open']],
    ],
  },
  {
    check: 'standing up, by names',
    asked:
      'The ceiling height is 2100. The wardrobe is 2080 high and 580 deep. The wardrobe has to stand up under the ceiling.',
    days: [
      ['The wind was up all day.', 'broken', ['open']],
      ['Changed my mind, the wardrobe is 2000 high now.', 'holds', ['holds-again']],
      ['I boarded the ceiling.', 'stale', ['holds-again']],
      ['Measured the ceiling height again, it is 2090.', 'holds', ['holds-again']],
    ],
  },
  {
    check: 'running mass, over all weights',
    asked: 'The stove weighs 28 kilos. The water tank weighs 60 kilos. All of it has to stay under 85 kilos.',
    days: [
      ['The wind was up all day.', 'broken', ['open']],
      ['Weighed the stove again, it is 22 kilos.', 'holds', ['holds-again']],
      ['The batteries weigh 24 kilos.', 'broken', ['holds-again', 'open']],
    ],
  },
];

describe.each(SPOKEN)('$check', ({ asked, days }) => {
  test('goes with its figures from day to day', () => {
    const story = new ToldStory().hear(asked);
    const told = days.map(([memo]) => {
      story.hear(memo);
      return [memo, statesOf(story)[0], found(story)];
    });
    expect(told).toEqual(days);
    expect(statesOf(story)).toHaveLength(1);
  });

  test('is taken away with what it found, and comes back with it', () => {
    const story = new ToldStory().hear(asked);
    const [check] = checkViews(story.project.rows);
    const event = { kind: 'check-removed', checkId: check?.id ?? '' } as const;
    story.hand(event);
    expect(statesOf(story)).toEqual([]);
    expect(found(story)).toEqual(['taken-away']);
    // The project, the three events of its memo, and the check that was taken away.
    story.hand({ kind: 'undone', undoes: 5 });
    expect(statesOf(story)).toEqual(['broken']);
    expect(found(story)).toEqual(['open']);
  });
});

test('sizes told without names on another day are the sides of what goes through, each by its place', () => {
  const story = new ToldStory().hear('The bench top is 2400 by 880 by 40. The side hatch is 710 by 540.');
  story.hear('The bench top has to go through the side hatch.');
  const [check] = checkViews(story.project.rows);
  expect(check?.inputs.map(({ name, range }) => [name, range?.mid])).toEqual([
    ['panel length', 2400],
    ['panel width', 880],
    ['thickness', 40],
    ['opening width', 710],
    ['opening height', 540],
  ]);
  expect(check?.why).toContain('does not go through side hatch (710 mm x 540 mm)');
});

test('two sizes of a thing are not taken for its three sides, and equal sides are left as they were said', () => {
  const two = new ToldStory().hear(
    'The bench top is 2400 by 880. The bench top has to go through the side hatch.',
  );
  expect(statesOf(two)).toEqual(['not-run']);
  const cube = new ToldStory().hear(
    'The crate is 600 by 600 by 300. It has to go through the side hatch, 500 by 400.',
  );
  expect(statesOf(cube)).toEqual(['broken']);
});

test('one doubt about several figures is told once', () => {
  const story = new ToldStory().hear(
    'The bench top is 2400 by 850 by 40. The bench top has to go through the side hatch, 710 by 540.',
  );
  story.hear('Stuck the lino down on the bench top.');
  const [check] = checkViews(story.project.rows);
  expect(check?.why.match(/Stuck the lino down/g)).toHaveLength(1);
});

test('an opening that a gap waits for may be told of by another word', () => {
  const story = new ToldStory().hear('The flue is 125 across and it wants 50 clear all round.');
  expect(statesOf(story)).toEqual(['not-run']);
  story.hear('The flue hole is 220 across.');
  expect(statesOf(story)).toEqual(['broken']);
  const fridge = new ToldStory().hear('The fridge is 540 wide. The fridge needs 5 mil clear either side.');
  expect(statesOf(fridge.hear('The fridge bay is 560 wide.'))).toEqual(['holds']);
});
