import { expect, test } from 'vitest';
import { weighChange } from '../../src/model/change-signs.ts';
import { LOUD_CHANGE } from '../../src/model/change-weights.ts';
import { Draft } from '../../src/model/draft.ts';
import { arrivingOf } from '../../src/model/figures.ts';
import { keepNotes } from '../../src/model/keep-notes.ts';
import { type LikelyChange, likelyChanges } from '../../src/model/likeliest-change.ts';
import { isLimiting } from '../../src/model/limits.ts';
import { isSeries } from '../../src/model/series.ts';
import { Working } from '../../src/model/working.ts';
import { tellStory } from '../kit/read-story.ts';
import { readStoryFile } from '../kit/story-file.ts';

/** The slots of those that are loud enough, with what they come to. */
const loud = (changes: readonly LikelyChange[]) =>
  changes
    .map(({ row, signs }) => [row.slot, weighChange(signs)] as const)
    .filter(([, sum]) => sum >= LOUD_CHANGE);

test('what is left out unseen is never loud enough', () => {
  const story = readStoryFile('tests/stories/work-1.json');
  const settings = { units: story.units, tolerances: {}, ...(story.region ? { region: story.region } : {}) };
  let [seen, all] = [0, 0];
  tellStory(story, {
    before: (project, { id, recordedAt, text }, read) => {
      const notes = keepNotes(id, read, undefined);
      const work = new Working(new Draft(project.rows), { id, recordedAt, text, notes }, settings);
      for (const note of notes.figures) {
        const arriving = arrivingOf(work, note);
        if (isLimiting(note) || isSeries(note, arriving.place.clause)) continue;
        const [some, every] = [likelyChanges(work, arriving, LOUD_CHANGE), likelyChanges(work, arriving)];
        expect(loud(some)).toEqual(loud(every));
        seen += some.length;
        all += every.length;
      }
    },
    after: () => {},
  });
  // Much is left out, and not all.
  expect(seen).toBeGreaterThan(0);
  expect(seen).toBeLessThan(all / 2);
}, 60_000);
