/** Weights of one of several in the sum of all that weighs something. */
import { expect, test } from 'vitest';
import { checkViews } from '../../../src/model/checks/check-views.ts';
import { ToldStory } from '../../kit/told-story.ts';

const LIMIT = 'All of it has to stay under four hundred kilos.';

function mass(story: ToldStory): { readonly why: string | undefined; readonly notes: readonly string[] } {
  const view = checkViews(story.project.rows).find(({ check }) => check === 'running mass');
  return { why: view?.why, notes: view?.notes ?? [] };
}

test('four batteries at 26 kilos each weigh 104 kilos', () => {
  const story = new ToldStory().hear(
    `Four batteries at twenty six kilos each. The water tank is a hundred and forty kilos full. ${LIMIT}`,
  );
  expect(mass(story).why).toBe(
    '244 kg of 400 kg: 156 kg left at worst; heaviest: water tank weight 140 kg, 4 x batteries weight 104 kg',
  );
});

test('two more of them are counted when there are six, and the limit breaks', () => {
  const story = new ToldStory()
    .hear(`Four batteries at sixty kilos each. The water tank is a hundred and forty kilos full. ${LIMIT}`)
    .hear('We have six batteries now, not four.');
  expect(mass(story).why).toMatch(
    /^500 kg of 400 kg: 100 kg over at worst; heaviest: 6 x batteries weight 360 kg/,
  );
  expect(story.open().filter(({ kind }) => kind === 'check')).toHaveLength(1);
});

test('one that is weighed again is still one of four; all of them weighed together are all', () => {
  const four = `Four batteries at twenty six kilos each. ${LIMIT}`;
  const again = new ToldStory().hear(four).hear('I weighed a battery, the batteries are actually 27 kilos.');
  expect(mass(again).why).toMatch(/^108 kg of 400 kg/);
  const together = new ToldStory()
    .hear(`Four batteries at sixty kilos each. ${LIMIT}`)
    .hear('The batteries weigh 106 kilos together.');
  expect(mass(together).why).toMatch(/^106 kg of 400 kg/);
});

test('what each weighs now is still of as many as before', () => {
  const story = new ToldStory()
    .hear(`Four batteries at twenty six kilos each. ${LIMIT}`)
    .hear('The batteries came in at 30 kilos each.');
  expect(mass(story).why).toMatch(/^120 kg of 400 kg/);
});

test('where nobody said how many there are they count once, and that is said', () => {
  const story = new ToldStory().hear(`The gas bottles are eleven kilos apiece. ${LIMIT}`);
  expect(mass(story).why).toMatch(/^11 kg of 400 kg/);
  expect(mass(story).notes).toContain(
    'how many there are was never said, and so counted once: gas bottles weight',
  );
});

test.each([
  ['batteries weight', '104 kg'],
  ['2 * batteries weight', '52 kg'],
])('a part "%s" comes to %s: what was written as a product is left', (part, all) => {
  const story = new ToldStory().hear('Four batteries at twenty six kilos each.').hand({
    kind: 'check-added',
    check: 'running mass',
    inputs: [{ input: 'part', expression: part }],
  });
  expect(checkViews(story.project.rows).map(({ why }) => why.split(' in all')[0])).toEqual([all]);
});

test('a weight by the metre is in no sum, and that is said', () => {
  const story = new ToldStory().hear(
    `The anchor chain is two kilos per metre. The stove is 60 kilos. ${LIMIT}`,
  );
  expect(mass(story).why).toMatch(/^60 kg of 400 kg/);
  expect(mass(story).notes.join()).toContain('by measure, and so not counted: anchor chain (per metre)');
});
