/** Tasks that wait for a reading: of moisture, of the air, of the wind. */
import { expect, test } from 'vitest';
import { standingFigures } from '../../../src/model/project-views.ts';
import { ToldStory } from '../../kit/told-story.ts';

const GLUE = 'The moisture has to be under 12 percent before I glue the planks.';
const VARNISH = "No varnishing until the humidity's below 70.";
const LAUNCH = "I can't launch until the wind drops under 15 knots.";
const ROOF = "I can't roof the shed until it's above ten degrees.";

test.each([
  [GLUE, 'Moisture in the planks is 11 percent today.', 'ready'],
  [GLUE, 'Moisture in the planks is 16 percent today.', 'waiting'],
  [GLUE, 'The planks are at 11 percent now.', 'ready'],
  // The keel's own moisture says nothing of the planks.
  [GLUE, 'Moisture in the keel is 11 percent today.', 'waiting'],
  [GLUE, 'Humidity is 11 percent today.', 'waiting'],
  [VARNISH, 'Humidity is 65 percent.', 'ready'],
  [VARNISH, 'Humidity is 82 percent.', 'waiting'],
  [VARNISH, 'Moisture in the rail is 14 percent.', 'waiting'],
  [LAUNCH, "Wind's 12 knots this morning.", 'ready'],
  [LAUNCH, "Wind's 22 knots this morning.", 'waiting'],
  [ROOF, "It's twelve degrees outside.", 'ready'],
  [ROOF, "It's eight degrees outside.", 'waiting'],
])('%s %s: %s', (waits, read, status) => {
  const tasks = new ToldStory().hear(waits, read).tasksOn(3);
  expect(tasks.map((task) => task.status)).toEqual([status]);
});

test('what a task waits for is no reading, and no angle', () => {
  const { rows } = new ToldStory().hear(GLUE, ROOF, LAUNCH).project;
  expect(
    standingFigures(rows).map(({ item, dimension, bound, state }) => [item, dimension, bound, state]),
  ).toEqual([
    ['moisture', 'ratio', 'at-most', 'target'],
    ['shed', 'temperature', 'at-least', 'target'],
    ['wind', 'speed', 'at-most', 'target'],
  ]);
});

test('the work itself is not what must not be done until it is done', () => {
  expect(new ToldStory().hear(GLUE).tasksOn(2)[0]?.before).toBeUndefined();
});

test('two jobs that wait in one breath stay two', () => {
  const tasks = new ToldStory().hear(`${VARNISH} ${LAUNCH}`).tasksOn(2);
  expect(tasks.map(({ gist, waitsFor }) => [gist, waitsFor])).toEqual([
    ['Varnishing', ['humidity below 70']],
    ['Launch', ['wind drops under 15 knots']],
  ]);
});
