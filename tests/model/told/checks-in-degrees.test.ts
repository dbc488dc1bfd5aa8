/** Degrees of an answer are those of its figures, and a heading names what plain sizes are of. */
import { expect, test } from 'vitest';
import { checkViews, workOutCheck } from '../../../src/model/checks/check-views.ts';
import { ToldStory } from '../../kit/told-story.ts';

const dewPoint = (air: string, surface?: string) => ({
  check: 'dew point',
  inputs: [
    { input: 'air', expression: air },
    { input: 'humidity', expression: '65 %' },
    ...(surface === undefined ? [] : [{ input: 'surface', expression: surface }]),
  ],
});

test.each([
  [
    'metric',
    '70 degF',
    '60 degF',
    /^dew point 57\.69 °F, surface 60 °F: .* °F above it at worst, 5\.4 °F wanted$/,
  ],
  ['us', '21 degC', '15 degC', /^dew point 14\.\d+ °C, surface 15 °C: .* °C above it at worst, 3 °C wanted$/],
  [
    'mixed',
    '70 degF',
    undefined,
    /^dew point 57\.69 °F: the surface must be 63\.09 °F or more, and was not given$/,
  ],
  ['metric', '70 degF', '15 degC', /^dew point 14\.\d+ °C, /],
] as const)(
  'in a project of %s units %s and %s are answered in their own degrees',
  (units, air, surface, why) => {
    // 57.7 °F at 70 °F and 65 %: Magnus, computed; a chart rounds it down to 57.
    const story = new ToldStory(units);
    expect(workOutCheck(story.project.rows, dewPoint(air, surface), { units }).run.why).toMatch(why);
  },
);

test('a dew point is asked for by the talk of a day; what is missing is asked for, and what was told last is taken', () => {
  const story = new ToldStory('us', 'US').hear('It is sixty two degrees Fahrenheit in the garage.');
  story.hear('Humidity is at seventy percent. The steel is fifty five Fahrenheit.');
  const [view] = checkViews(story.project.rows);
  expect(view).toMatchObject({ subject: 'dew point (steel)', state: 'broken' });
  expect(view?.why).toMatch(/^dew point 52\.1\d* °F, surface 55 °F: /);
  expect(view?.notes).toContain('air: the air as it was told on 2026-02-01');
  story.hear('Humidity is at forty percent. The steel is sixty Fahrenheit.');
  expect(checkViews(story.project.rows).map(({ check }) => check)).toEqual(['dew point']);
});

test('a check of sizes that were said as numbers names its things', () => {
  const story = new ToldStory().hear(
    'The tank is 900 by 450 by 400. It has to go through the side hatch, 500 by 480.',
  );
  expect(checkViews(story.project.rows)).toMatchObject([
    { subject: 'panel through opening (tank, side hatch)', state: 'holds' },
  ]);
  expect(checkViews(story.project.rows)[0]?.why).toMatch(/ through side hatch \(500 mm x 480 mm\)/);
});

test('a check of plain sizes goes by what a person noted of it', () => {
  const story = new ToldStory().hand({
    kind: 'check-added',
    check: 'clearance',
    note: 'fridge bay',
    inputs: [
      { input: 'opening', expression: '560 mm' },
      { input: 'part', expression: '570 mm' },
    ],
  });
  expect(story.open()).toMatchObject([{ item: 'clearance (fridge bay)' }]);
});
