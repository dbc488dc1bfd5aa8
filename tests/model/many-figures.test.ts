/** Memos of hundreds of figures of one thing: no recogniser's stammer may hold the taking up. */
import { expect, test } from 'vitest';
import { ToldStory } from '../kit/told-story.ts';

const figures = Array.from({ length: 300 }, (_, k) => `${100 + 7 * k} mm wide`);

test.each([
  ['in one sentence', `The scratch is ${figures.join(' and ')}.`],
  ['in sentences of their own', figures.map((figure) => `The scratch is ${figure}.`).join(' ')],
])('three hundred figures of one thing %s are filed in bounded time', { timeout: 60_000 }, (_how, talk) => {
  const began = performance.now();
  const story = new ToldStory('metric', 'GB').hear(talk);
  expect(story.project.rows.all('claims').length).toBeGreaterThan(250);
  // One to two seconds; each figure held against every other for each that stands took a minute and more.
  expect(performance.now() - began).toBeLessThan(20_000);
});
