/** A sum that is told once behind a pair of sizes: "594 by 394, that's the aperture less three all round". */
import { expect, test } from 'vitest';
import { findingViews, standingFigures } from '../../src/model/project-views.ts';
import { ToldStory } from '../kit/told-story.ts';

const APERTURES = 'The window apertures, both of them, are 600 by 400.';
const PANES =
  "Glass is ordered, two panes at five ninety four by three ninety four, toughened, that's the aperture less three all round.";
const panesOf = ({ project }: ToldStory) =>
  standingFigures(project.rows, 'glass panes').flatMap(({ value, status }) =>
    value > 300 ? [`${value} ${status}`] : [],
  );

test('both sizes agree with what they came from', () => {
  const story = new ToldStory().hear(APERTURES, PANES);
  expect(panesOf(story)).toEqual(['594 stands', '394 stands']);
  expect(findingViews(story.project.rows)).toEqual([]);
});

test.each([
  ['The window apertures are 592 by 400.', ['586 stale', '394 stands']],
  ['The window apertures are 600 by 392.', ['594 stands', '386 stale']],
])('"%s" changes the one that came from it, and not the other', (said, panes) => {
  expect(panesOf(new ToldStory().hear(APERTURES, PANES, said))).toEqual(panes);
});
