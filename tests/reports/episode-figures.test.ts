import { expect, test } from 'vitest';
import { standingFigures } from '../../src/model/project-views.ts';
import { standingOf } from '../../src/reports/episode-figures.ts';
import { ToldStory } from '../kit/told-story.ts';

test('a figure that was said again is current, one that was given up is not', () => {
  const story = new ToldStory().hear(
    'The shelf is 740 long.',
    'Change of plan, the shelf is now 704 long.',
    'The shelf is 704 long.',
  );
  const standing = standingFigures(story.project.rows, 'shelf');
  const told = (memoId: string, quote: string) => standingOf({ id: `${memoId}.f1`, quote }, memoId, standing);
  expect(told('m1', '740 long')).toBe('no longer current: now 704 mm');
  expect(told('m2', '704 long')).toBe('current');
  expect(told('m3', '704 long')).toBe('current');
});
