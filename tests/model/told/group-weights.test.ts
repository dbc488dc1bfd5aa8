/** What some things may weigh together: summed by their names, or by where talk said that they are. */
import { expect, test } from 'vitest';
import { checkViews } from '../../../src/model/checks/check-views.ts';
import { ToldStory } from '../../kit/told-story.ts';

const mass = (story: ToldStory) => {
  const view = checkViews(story.project.rows).find(({ check }) => check === 'running mass');
  return `${view?.state}: ${view?.why}`;
};
const broken = (story: ToldStory) =>
  story
    .findings()
    .filter(({ kind }) => kind === 'check')
    .map(({ status }) => status);

test('shelves in a kiln are summed by themselves, also one that is told later', () => {
  const story = new ToldStory().hear(
    "The shelves in the kiln can't come to more than 40 kilos.",
    'The bottom shelf in the kiln weighs 14 kilos. The middle shelf in the kiln weighs 12 kilos. The stove weighs 90 kilos.',
  );
  expect(mass(story)).toBe(
    'holds: 26 kg of 40 kg: 14 kg left at worst; heaviest: bottom shelf weight 14 kg, middle shelf weight 12 kg',
  );
  story.hear('The top shelf in the kiln weighs 16 kilos.');
  expect(mass(story)).toMatch(/^broken: 42 kg of 40 kg: 2 kg over at worst/);
  expect(broken(story)).toEqual(['open']);
  story.hear('I changed my mind, the top shelf in the kiln now weighs 13 kilos.');
  expect(mass(story)).toMatch(/^holds: 39 kg of 40 kg/);
  expect(broken(story)).toEqual(['settled']);
});

test('what is on the roof is what talk put there, or what is named after it', () => {
  const story = new ToldStory().hear(
    'Everything on the roof has to stay under 100 kilos.',
    'The solar panels on the roof are 48 kilos. The roof box weighs 18 kilos. The water tank weighs 140 kilos.',
  );
  expect(mass(story)).toMatch(/^holds: 66 kg of 100 kg: 34 kg left at worst/);
  story.hear('There are 36 kilos of ladders on the roof.');
  expect(mass(story)).toMatch(/^broken: 102 kg of 100 kg/);
});

test('several of one name count as often as there are', () => {
  const story = new ToldStory().hear(
    "The ballast and the batteries together can't be over 300 kilos.",
    'Four batteries at 26 kilos each. The ballast weighs 180 kilos.',
  );
  expect(mass(story)).toMatch(/^holds: 284 kg of 300 kg/);
  story.hear('We have five batteries now, not four.');
  expect(mass(story)).toMatch(/^broken: 310 kg of 300 kg/);
});

test('a group of which nothing was told waits, and says what for', () => {
  const story = new ToldStory().hear('Everything in the loft has to stay under 250 kilos.');
  const [view] = checkViews(story.project.rows);
  expect(view).toMatchObject({
    state: 'not-run',
    why: 'no weight of any thing in the loft was ever said',
    ask: ['say it with what it is of and that it is in the loft, or name the parts one by one'],
  });
  story.hear('There are 260 kilos of books in the loft.');
  expect(mass(story)).toMatch(/^broken: 260 kg of 250 kg/);
});

test('by hand, in pounds', () => {
  const story = new ToldStory('us')
    .hand({
      kind: 'check-added',
      check: 'running mass',
      inputs: [
        { input: 'part', expression: 'every tank weight' },
        { input: 'limit', expression: '500 lb' },
      ],
    })
    .hear('The water tank weighs 260 pounds. The diesel tank weighs 190 pounds. The stove weighs 80 pounds.');
  expect(mass(story)).toMatch(/^holds: 450 lb of 500 lb/);
});
