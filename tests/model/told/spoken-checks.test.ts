/** Sums that have to hold, attached by talk alone and worked out on what was said before and after. */
import { expect, test } from 'vitest';
import { checkNamed } from '../../../src/model/checks/all-checks.ts';
import { checkViews } from '../../../src/model/checks/check-views.ts';
import { readFormula } from '../../../src/model/formula.ts';
import { recordsIn } from '../../kit/records.ts';
import { ToldStory } from '../../kit/told-story.ts';

const states = (...memos: readonly string[]) =>
  checkViews(new ToldStory().hear(...memos).project.rows).map(({ state, why }) => `${state}: ${why}`);
const broken = (...memos: readonly string[]) =>
  new ToldStory()
    .hear(...memos)
    .findings()
    .filter(({ kind, status }) => kind === 'check' && status === 'open');

test('a count that leaves nothing for the saw is found', () => {
  expect(states('Four shelves at 610 out of a 2440 sheet.')).toEqual([
    'broken: 4 x 610 mm is all of 2440 mm: nothing is left for the cuts',
  ]);
  const said = 'I need four shelves at 610 out of a 2440 sheet, and the blade takes a 3 mil kerf.';
  expect(states(said)).toEqual(['broken: 2440 mm gives 3 x 610 mm, not 4, with a 3 mm kerf']);
  expect(broken(said)).toHaveLength(1);
});

test('a count waits for the size of the sheet, and is worked out once that is said', () => {
  const count = 'The shelves are 600 wide. I should get four out of a sheet.';
  expect(states(count)[0]).toMatch(/^not-run: the sheet length was never said/);
  expect(states(count, 'The sheet is 2440 long.')).toEqual([
    'told: 2440 mm gives 4 x 600 mm with a kerf of up to 13.3 mm',
  ]);
  expect(states(count, 'The sheet is 2400 long.')[0]).toMatch(/^broken: /);
});

test('the whole is weighed anew with every weight that is told', () => {
  const limit = 'All of it has to stay under 100 kilos.';
  const first = 'The stove weighs 28 kilos. The water tank weighs 60 kilos.';
  expect(states(limit, first)[0]).toMatch(/^holds: 88 kg of 100 kg: 12 kg left/);
  expect(states(limit, first, 'The batteries weigh 24 kilos.')[0]).toMatch(
    /^broken: 112 kg of 100 kg: 12 kg over/,
  );
});

test('what has to come in is held against the opening, each thing by itself', () => {
  const memos = [
    'The galley top is 1800 long, 600 wide and 30 thick. The cooker is 850 high, 600 wide and 600 deep. All of it has to come in through the side door.',
    'The side door is 580 wide and 1750 high.',
  ];
  expect(states(...memos).map((state) => state.split(':')[0])).toEqual(['holds', 'broken']);
  expect(broken(...memos).map(({ item }) => item)).toEqual(['panel through opening (cooker, side door)']);
});

test('a floor to come is taken off a height over the bare one', () => {
  const said = "The bench top is 905 above the bare floor. The floor still has to go down, that's 22 mil.";
  expect(states(said)).toEqual(['told: 883 mm over the finished floor, 905 mm over the bare one']);
});

test('a time without its temperature is told as the data sheet has it', () => {
  expect(states('Full cure is seven days at twenty.')).toEqual(['told: cured after 7 d']);
  expect(states('Recoat after four hours, no more than twenty four.')).toEqual([
    'told: recoat from 4 h until 24 h after the last coat',
  ]);
});

test('what was not said is asked for, and no number stands in for it', () => {
  expect(states("Don't use it under ten degrees.")[0]).toMatch(
    /^not-run: nobody has said how warm the air is/,
  );
});

test.each([
  'The aft panel has to go through the side hatch.',
  'It all has to come in through the back door, 690 by 1140.',
  'All of it has to stay under 400 kilos.',
  'I should get four at 610 out of a sheet, with a 3 mil kerf.',
  'Full cure is seven days at twenty.',
  'Recoat after four hours, no more than twenty four.',
  'Pot life is 25 minutes at twenty.',
  "Don't use it under ten degrees or over thirty.",
  "The floor still has to go down, that's 22 mil.",
])('"%s" asks for a check that there is, of inputs that it has, in words that can be read', (said) => {
  const notes = recordsIn(said).filter((note) => note.kind === 'check');
  expect(notes).toHaveLength(1);
  for (const { check, inputs } of notes) {
    const names = checkNamed(check)?.inputs.map(({ name }) => name) ?? [];
    for (const { input, expression } of inputs) {
      expect(names).toContain(input);
      expect(readFormula(expression)).toMatchObject({ ok: true });
    }
  }
});

test('a way that was measured as an opening is found by its plain name, and is no panel of its own', () => {
  const [check, ...more] = checkViews(
    new ToldStory().hear(
      'The back door opening is 690 wide by 1140 high, and it all has to come in through the back door. The shower tray is 700 by 700 by 90.',
    ).project.rows,
  );
  expect(more).toEqual([]);
  expect(check?.state).toBe('holds');
  expect(check?.inputs.map(({ name, range }) => `${name} ${range?.mid}`)).toEqual(
    expect.arrayContaining(['panel length 700', 'opening width 690', 'opening height 1140']),
  );
});

test('what everything must fit through is no job', () => {
  expect(new ToldStory().hear('It all has to come in through the back door.').tasks(2)).toEqual([]);
  expect(new ToldStory().hear('The old tank has to come out through the back door.').tasks(2)).toHaveLength(
    1,
  );
});

test('a bound on everything is none of the thing that was named before it', () => {
  const story = new ToldStory().hear('The sealer is on. Everything on board has to stay under 350 kilos.');
  expect(story.figures().filter((line) => line.includes('sealer'))).toEqual([]);
});

test('a gap that was asked for is held against what is measured later', () => {
  const memos = [
    'The fridge needs 25 millimetres clear either side.',
    'The fridge is 540 wide. The fridge opening is 600 wide.',
  ];
  expect(states(...memos)).toEqual(['holds: 10 mm left at worst']);
  const again = 'I measured the fridge opening again and it is actually 586 wide.';
  expect(states(...memos, again)).toEqual(['broken: 4 mm short at worst']);
  expect(broken(...memos, again)).toHaveLength(1);
});

test('a tank that was told by what it holds weighs that when it is full, and no fluid is counted twice', () => {
  const sum = (...memos: readonly string[]) => states('All of it has to stay under 500 kilos.', ...memos)[0];
  const stove = 'The stove weighs 28 kilos.';
  expect(sum(stove, 'The water tank holds 180 litres.')).toMatch(/^holds: 208 kg of 500 kg/);
  expect(sum(stove, 'The water tank holds 180 litres. The water is 180 litres.')).toMatch(/^holds: 208 kg/);
  expect(sum(stove, 'The water tank weighs 200 kilos full. The water tank holds 180 litres.')).toMatch(
    /^holds: 228 kg/,
  );
  expect(sum(stove, 'The grey water tank holds 60 litres.')).toMatch(/^holds: 28 kg/);
});
