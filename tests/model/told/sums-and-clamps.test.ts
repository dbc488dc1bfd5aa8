/** What counts in a sum of weights, clamps that came off too soon, clocks by hand, checks that a day made stale. */
import { expect, test } from 'vitest';
import { checkViews } from '../../../src/model/checks/check-views.ts';
import { dayView } from '../../../src/model/day-views.ts';
import type { ProjectInfo } from '../../../src/model/views.ts';
import { journalPage } from '../../../src/reports/journal.ts';
import { ToldStory } from '../../kit/told-story.ts';

const told = (story: ToldStory) => checkViews(story.project.rows).map(({ state, why }) => `${state}: ${why}`);
const LIMIT = 'All of it has to stay under 400 kilos.';

test.each([
  ["The water's 250 litres. The batteries are 96 kilos.", /^holds: 346 kg of 400 kg: 54 kg left/],
  ['The water is 250 kilos. The batteries are 196 kilos.', /^broken: 446 kg of 400 kg: 46 kg over/],
  ['The batteries are 196 kilos. The water is 250.', /^not-run: the water was told as 250, and not in what/],
  [
    'The stove is 60 kilos. The fuel is 80 litres.',
    /^not-run: the fuel is 80 L, and what a litre of it weighs/,
  ],
  ['The stove is 60 kilos. The diesel is 100 litres.', /^holds: 142 kg to 144\.5 kg of 400 kg/],
  ["I've got three twenty kilo bags of plaster.", /^holds: 60 kg of 400 kg/],
])('a mass limit counts fluids where their unit is clear: %s', (text, why) => {
  expect(told(new ToldStory().hear(`${LIMIT} ${text}`))[0]).toMatch(why);
});

test('an amount told again with its unit is counted', () => {
  const story = new ToldStory().hear(
    `${LIMIT} The stove is 196 kilos. The water is 250.`,
    'The water is 250 litres.',
  );
  expect(told(story)[0]).toMatch(/^broken: 446 kg of 400 kg/);
});

const broken = (story: ToldStory) =>
  story
    .findings()
    .filter(({ kind }) => kind === 'check')
    .map(({ why }) => why);
const GLUE = 'The glue needs 24 hours to cure.';

test.each([
  ['The clamps are off the rib.'],
  ['Took the clamps off the rib.'],
  ['The rib is unclamped.'],
  ['Pulled all the clamps off.'],
])('off before the time of the data sheet: %s', (text) => {
  const story = new ToldStory()
    .hearAt('2026-02-03T19:00', `${GLUE} Glued the rib at six o'clock.`)
    .hearAt('2026-02-04T08:00', text);
  expect(broken(story)).toEqual([
    'glue (rib) laid 2026-02-03 18:00, clamps or formwork off 2026-02-04 08:00, 14 h after it: 10 h too early at worst',
  ]);
});

test('told without a time it is counted from the memo, where half a working day more would not do either', () => {
  const early = new ToldStory()
    .hearAt('2026-02-03T19:00', `${GLUE} I glued the rib this evening.`)
    .hearAt('2026-02-04T08:00', 'The clamps are off.');
  expect(broken(early)[0]).toMatch(
    /13 h after it, counted from the memo that told of it: 11 h too early at worst$/,
  );
  const near = new ToldStory()
    .hearAt('2026-02-03T17:00', `${GLUE} I glued the rib.`)
    .hearAt('2026-02-04T14:00', 'The clamps are off.');
  expect(broken(near)).toEqual([]);
});

test.each([
  ['when the time is over', '2026-02-04T19:00', 'The clamps are off.'],
  ['while they are on', '2026-02-04T08:00', 'The clamps are still on.'],
  ['when it is to come', '2026-02-04T08:00', "I'll take the clamps off tomorrow."],
  ['when it is asked for', '2026-02-04T08:00', 'I need to take the clamps off.'],
])('no finding %s', (_, at, text) => {
  const story = new ToldStory()
    .hearAt('2026-02-03T19:00', `${GLUE} Glued the rib at six o'clock.`)
    .hearAt(at, text);
  expect(broken(story)).toEqual([]);
});

test('formwork comes off concrete too soon', () => {
  const story = new ToldStory()
    .hearAt('2026-02-03T17:00', 'The concrete needs seven days to cure. Poured the slab at noon.')
    .hearAt('2026-02-05T12:00', 'Struck the formwork.');
  expect(broken(story)[0]).toMatch(
    /^concrete laid 2026-02-03 12:00, .* 48 h after it: 5 d too early at worst$|: 5 d too early/,
  );
});

test('a batch kept by hand starts the clock as speech does', () => {
  const story = new ToldStory().hear('The glue needs 24 hours to cure.').hand({
    kind: 'record-kept',
    record: { kind: 'batch', product: 'glue', facts: [{ what: 'used', words: 'rib' }] },
  });
  expect(told(story)[0]).toMatch(
    /^\w+: glue laid 2026-02-28 20:00, by the data sheet's time cured 2026-03-01 20:00/,
  );
});

test('the journal tells what a day left to be measured again', () => {
  const story = new ToldStory()
    .hear('The side hatch is 560 millimetres wide and 480 high.')
    .hand({
      kind: 'check-added',
      check: 'clearance',
      inputs: [
        { input: 'opening', expression: 'side hatch width' },
        { input: 'part', expression: '540 mm' },
      ],
    })
    .hear('Lined the side hatch with cork.');
  expect(told(story)[0]).toMatch(/^stale: /);
  const day = dayView(story.project.rows, '2026-02-02');
  const project: ProjectInfo = { name: 'Shed', units: 'metric', tolerances: {} };
  const page = day ? journalPage(day, project) : '';
  expect(page).toContain('### To be measured again\n\n- **clearance (side hatch)**: ');
  const before = dayView(story.project.rows, '2026-02-01');
  expect(before ? journalPage(before, project) : '').not.toContain('To be measured again');
});
