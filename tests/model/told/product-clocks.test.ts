/** Times of products from talk: the clock that a memo starts, read at the memos after it. */
import { expect, test } from 'vitest';
import { answerOf } from '../../../src/model/answer.ts';
import { checkViews } from '../../../src/model/checks/check-views.ts';
import { nextView } from '../../../src/model/day-views.ts';
import type { ProjectInfo } from '../../../src/model/views.ts';
import { nextStepsPage } from '../../../src/reports/next-steps.ts';
import { ToldStory } from '../../kit/told-story.ts';

/** What each check comes to now, by its kind; what its row keeps must be the same. */
function states(story: ToldStory): Readonly<Record<string, string>> {
  const kept = story.project.rows.all('checks').filter(({ active }) => active);
  const views = checkViews(story.project.rows);
  expect(kept.map(({ last }) => `${last.state}: ${last.why}`)).toEqual(
    views.map(({ state, why }) => `${state}: ${why}`),
  );
  return Object.fromEntries(views.map(({ check, state, why }) => [check, `${state}: ${why}`]));
}
const broken = (story: ToldStory) =>
  story
    .findings()
    .filter(({ kind }) => kind === 'check')
    .map(({ status, item, why }) => `${status} ${item}: ${why}`);

const WINDOW = 'The primer can be recoated after four hours, no later than twelve.';

test('a coat starts the window, and the memos after it are its "now"', () => {
  const story = new ToldStory().hearAt('2026-02-03T14:20', `${WINDOW} First coat of primer went on at two.`);
  expect(states(story)['recoat window']).toBe(
    'told: primer laid 2026-02-03 14:00; the next coat from 2026-02-03 18:00 until 2026-02-04 02:00, 3 h 40 min to wait at worst',
  );
  story.hearAt('2026-02-03T19:00', 'Swept the floor.');
  expect(states(story)['recoat window']).toMatch(/, 7 h left at worst$/);
  story.hearAt('2026-02-05T09:00', 'Ordered the hinges.');
  expect(states(story)['recoat window']).toMatch(/, over since then$/);
  expect(broken(story)).toEqual([]);
});

test.each([
  [
    '2026-02-03T15:30',
    'primer laid 2026-02-03 15:30, 1 h 30 min after the coat of 2026-02-03 14:00: 2 h 30 min too early at worst',
  ],
  [
    '2026-02-04T08:00',
    'primer laid 2026-02-04 08:00, 18 h after the coat of 2026-02-03 14:00: 6 h too late at worst',
  ],
])('a second coat at %s is outside the window: %s', (at, why) => {
  const story = new ToldStory()
    .hearAt('2026-02-03T14:20', `${WINDOW} First coat of primer went on at two.`)
    .hearAt(at, 'Second coat of primer on now.');
  expect(broken(story)).toEqual([`open recoat window (primer): ${why}`]);
  expect(story.open().find(({ kind }) => kind === 'check')?.now.source?.memoId).toBe('m2');
});

test('a second coat within the window holds, and the window of the next one begins', () => {
  const story = new ToldStory()
    .hearAt('2026-02-03T14:20', `${WINDOW} First coat of primer went on at two.`)
    .hearAt('2026-02-03T19:00', 'Second coat on now.');
  expect(states(story)['recoat window']).toBe(
    'holds: the coat laid 2026-02-03 19:00, 5 h after the coat of 2026-02-03 14:00, within its times; the next coat from 2026-02-03 23:00 until 2026-02-04 07:00',
  );
  expect(broken(story)).toEqual([]);
});

test('a first coat elsewhere is held against no window, and begins one of its own', () => {
  const story = new ToldStory()
    .hearAt('2026-02-03T14:20', `${WINDOW} Primed the bulkhead at two.`)
    .hearAt('2026-02-03T15:00', 'First coat of primer went on the deck just now.');
  expect(states(story)['recoat window']).toMatch(/^told: primer \(deck\) laid 2026-02-03 15:00; /);
});

test('the data sheet may be read after the coat is on', () => {
  const story = new ToldStory()
    .hearAt('2026-02-03T14:20', 'First coat of primer went on at two.')
    .hearAt('2026-02-03T15:00', WINDOW);
  expect(states(story)['recoat window']).toMatch(
    /^told: primer laid 2026-02-03 14:00; .*3 h to wait at worst$/,
  );
});

test('a mix in use after its pot life breaks it; one that was used up in time does not', () => {
  const sheet = 'Pot life of the epoxy is twenty five minutes.';
  const late = new ToldStory()
    .hearAt('2026-02-03T09:12', `${sheet} Mixed the epoxy at ten past nine.`)
    .hearAt('2026-02-03T09:42', 'Still brushing the epoxy out.');
  expect(broken(late)).toEqual([
    'open pot life (epoxy): epoxy mixed 2026-02-03 09:10, usable until 2026-02-03 09:35; in use 2026-02-03 09:42, 7 min over at worst',
  ]);
  const early = new ToldStory()
    .hearAt('2026-02-03T09:12', `${sheet} Mixed the epoxy at ten past nine.`)
    .hearAt('2026-02-03T09:30', 'The epoxy went on just now.')
    .hearAt('2026-02-03T12:00', 'Lunch.');
  expect(states(early)['pot life']).toMatch(/over since then$/);
  expect(broken(early)).toEqual([]);
});

test('a coat of the next day is of another mix, and not held against the pot life of the first', () => {
  const story = new ToldStory()
    .hearAt(
      '2026-02-03T09:12',
      'Pot life of the epoxy is twenty five minutes. Mixed the epoxy at ten past nine.',
    )
    .hearAt('2026-02-04T10:00', 'Second coat of epoxy on now.');
  expect(broken(story)).toEqual([]);
});

test('a cure is told while it runs, and holds when its time is over', () => {
  const story = new ToldStory().hearAt(
    '2026-02-03T14:20',
    'Full cure of the glue is two days. Glued the lining up at two.',
  );
  expect(states(story)['cure time']).toBe(
    "told: glue (lining) laid 2026-02-03 14:00, by the data sheet's time cured 2026-02-05 14:00, 47 h 40 min to go at worst",
  );
  story.hearAt('2026-02-06T08:00', 'Cold this morning.');
  expect(states(story)['cure time']).toMatch(/^holds: .*: that time is over$/);
});

test('clocks of two products run apart', () => {
  const story = new ToldStory().hearAt(
    '2026-02-03T14:20',
    'The primer can be recoated after two hours. The varnish can be recoated after sixteen hours. Primed the hatch at noon. Varnished the tiller at two.',
  );
  const windows = checkViews(story.project.rows).map(({ window }) => [
    window?.product,
    window?.opens?.slice(5, 16),
  ]);
  expect(windows).toEqual([
    ['primer', '02-03T14:00'],
    ['varnish', '02-04T06:00'],
  ]);
});

test('of two products a coat without a name starts neither', () => {
  const story = new ToldStory()
    .hearAt('2026-02-03T09:20', 'The epoxy can be recoated after eight hours.')
    .hearAt('2026-02-03T10:00', 'Second coat on now.');
  expect(states(story)['recoat window']).toMatch(/^told: the coat laid 2026-02-03 10:00; /);
  story.hearAt('2026-02-03T12:00', 'The paint takes sixteen hours to dry.');
  expect(states(story)).toEqual({
    'recoat window': 'told: recoat from 8 h after the last coat',
    'drying time': 'told: dry after 16 h',
  });
  story.hearAt('2026-02-03T14:00', 'Painted the floor just now.');
  expect(states(story)).toMatchObject({
    'recoat window': 'told: recoat from 8 h after the last coat',
    'drying time': expect.stringMatching(/^told: paint \(floor\) laid 2026-02-03 14:00, /),
  });
});

test('oil that dries is a finish; what goes into an engine is none', () => {
  const story = new ToldStory().hearAt(
    '2026-02-03T14:20',
    'Oil needs 24 hours to dry. The first coat of oil went on at two.',
  );
  expect(states(story)['drying time']).toMatch(/^told: oil laid 2026-02-03 14:00, /);
  expect(
    new ToldStory()
      .hearAt('2026-02-03T14:20', 'Put the oil in the engine at two.')
      .project.rows.records('clock'),
  ).toEqual([]);
});

test('the air that was told last is held against the least that the product takes, and warms or cools its times', () => {
  const story = new ToldStory()
    .hearAt(
      '2026-02-03T08:00',
      "It's eight degrees in the shed. The primer tin says don't use it under ten degrees.",
    )
    .hearAt(
      '2026-02-03T08:30',
      'The primer can be recoated after four hours at twenty degrees. Primed the hatch just now.',
    );
  expect(broken(story)).toEqual([
    'open product temperature (primer): 8 °C: 2 °C under the least of 10 °C at worst',
  ]);
  expect(states(story)['recoat window']).toBe(
    'refused: 8 °C is below the 10 °C that the product takes at least: no time is worked out',
  );
  story.hearAt('2026-02-03T11:00', 'The shed is up to ten degrees now.');
  expect(broken(story)[0]).toMatch(/^settled /);
  // Twice as long for ten degrees colder.
  expect(states(story)['recoat window']).toMatch(
    /^told: primer \(hatch\) laid 2026-02-03 08:30; the next coat from 2026-02-03 16:30/,
  );
});

test('air of another day is no air to go by', () => {
  const story = new ToldStory()
    .hearAt(
      '2026-02-03T08:00',
      "It's fourteen degrees in the shed. The primer tin says don't use it under ten degrees.",
    )
    .hearAt(
      '2026-02-06T08:00',
      'The primer can be recoated after four hours at twenty degrees. Primed the hatch just now.',
    );
  expect(states(story)['product temperature']).toMatch(
    /^stale: .*told on 2026-02-03, and may be another by now/,
  );
  expect(states(story)['recoat window']).toMatch(/next coat from 2026-02-06 12:00/);
});

test('next steps show when a window opens and when it closes', () => {
  const story = new ToldStory().hearAt('2026-02-03T14:20', `${WINDOW} First coat of primer went on at two.`);
  const windows = (on: string) =>
    (nextView(story.project.rows, on).windows ?? []).map(({ window }) => [window?.opens, window?.closes]);
  expect(windows('2026-02-03')).toEqual([['2026-02-03T18:00:00+01:00', '2026-02-04T02:00:00+01:00']]);
  expect(windows('2026-02-05')).toEqual([]);
});

test('a data sheet that is read again takes the place of the first reading', () => {
  const story = new ToldStory()
    .hear('Pot life of the epoxy is twenty five minutes.')
    .hear('Pot life of the epoxy is actually thirty minutes.');
  expect(checkViews(story.project.rows).map(({ check, why }) => `${check} ${why}`)).toEqual([
    'pot life usable for 30 min',
  ]);
});

test('the page of next steps names the product, the time and where the coat was told', () => {
  const story = new ToldStory()
    .hearAt('2026-02-03T14:20', `${WINDOW} First coat of primer went on at two.`)
    .hearAt('2026-02-03T19:00', 'Second coat on now.');
  const page = nextStepsPage(nextView(story.project.rows, '2026-02-03'), {
    name: 'Shed',
    units: 'metric',
    folder: 'x',
    memos: 2,
  } as unknown as ProjectInfo);
  expect(page).toContain(
    '- Tuesday 2026-02-03, today: 23:00, primer: the window for the next coat opens (memo 2)',
  );
  expect(page).toContain(
    '- Wednesday 2026-02-04, in 1 day: 07:00, primer: the window for the next coat closes (memo 2)',
  );
});

test('a question that names a product check is answered with it', () => {
  const story = new ToldStory().hearAt('2026-02-03T14:20', `${WINDOW} First coat of primer went on at two.`);
  const checks = (question: string) =>
    (answerOf(story.project.rows, question, []).checks ?? []).map(({ subject }) => subject);
  expect(checks('when can I recoat')).toEqual(['recoat window (primer)']);
  expect(checks('what about the primer')).toEqual(['recoat window (primer)']);
  expect(checks('how high is the bench')).toEqual([]);
});

test('a coat of which no time was said is held against no window that it may have met', () => {
  const story = new ToldStory()
    .hearAt('2026-02-03T14:20', `${WINDOW} The first coat of primer went on at two.`)
    .hearAt('2026-02-06T09:00', 'The second coat of primer is on.');
  expect(states(story)['recoat window']).toMatch(/^told: primer laid 2026-02-06 09:00; /);
  expect(broken(story)).toEqual([]);
});

test('a second coat on one thing is not held against the first one on another', () => {
  const story = new ToldStory()
    .hearAt('2026-02-03T09:00', `${WINDOW} First coat of primer went on the hull at half eight.`)
    .hearAt('2026-02-03T13:00', 'First coat of primer went on the deck just now.')
    .hearAt('2026-02-03T14:00', 'The hull has had its second coat just now.');
  expect(states(story)['recoat window']).toMatch(
    /^holds: primer \(hull\)|^holds: the coat \(hull\) laid 2026-02-03 14:00, 5 h 30 min after the coat of 2026-02-03 08:30/,
  );
  expect(broken(story)).toEqual([]);
  story.hearAt('2026-02-03T15:00', 'Second coat of primer on the deck now.');
  expect(broken(story)).toEqual([
    'open recoat window (primer): primer (deck) laid 2026-02-03 15:00, 2 h after the coat of 2026-02-03 13:00: 2 h too early at worst',
  ]);
});

test('a coat of which nobody said where goes on with what was coated last', () => {
  const story = new ToldStory()
    .hearAt('2026-02-03T09:00', `${WINDOW} First coat of primer went on the hull at half eight.`)
    .hearAt('2026-02-03T13:00', 'First coat of primer went on the deck just now.')
    .hearAt('2026-02-03T14:00', 'Second coat on now.');
  expect(broken(story)[0]).toMatch(/ 1 h after the coat of 2026-02-03 13:00: 3 h too early at worst$/);
});

test('each thing has its own times among the next steps', () => {
  const story = new ToldStory()
    .hearAt('2026-02-03T09:00', `${WINDOW} First coat of primer went on the hull at half eight.`)
    .hearAt('2026-02-03T13:00', 'First coat of primer went on the deck just now.');
  const [view] = checkViews(story.project.rows);
  expect(view?.window).toMatchObject({ on: 'deck', opens: '2026-02-03T17:00:00+01:00' });
  expect(view?.alsoRunning).toMatchObject([{ on: 'hull' }]);
  expect(view?.notes.at(-1)).toMatch(/^besides: primer \(hull\) laid 2026-02-03 08:30; /);
});

test('clamps that came off one joint too soon stay told when another is glued up', () => {
  const story = new ToldStory()
    .hearAt('2026-02-03T19:00', "The glue needs 24 hours to cure. Glued the rib at six o'clock this evening.")
    .hearAt('2026-02-04T08:00', 'Took the clamps off the rib.')
    .hearAt('2026-02-04T11:00', 'Glued the stem at ten this morning.');
  expect(broken(story)).toEqual([
    'open cure time (glue): glue (rib) laid 2026-02-03 18:00, clamps or formwork off 2026-02-04 08:00, 14 h after it: 10 h too early at worst',
  ]);
  // The stem's clamps say nothing of the rib.
  story.hearAt('2026-02-05T12:00', 'Took the clamps off the stem.');
  expect(broken(story)).toHaveLength(1);
});
