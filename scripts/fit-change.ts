/**
 * Fits what speaks for a figure being the new size of something told before, on annotated stories:
 * `npx tsx scripts/fit-change.ts STORY …` writes src/model/change-weights.ts. A pair is right where the story holds a
 * clash of these two values in this memo that is no breach of a limit.
 */
import { writeFileSync } from 'node:fs';
import { Draft } from '../src/model/draft.ts';
import { arrivingOf } from '../src/model/figures.ts';
import { keepNotes } from '../src/model/keep-notes.ts';
import { likelyChanges } from '../src/model/likeliest-change.ts';
import { isLimiting } from '../src/model/limits.ts';
import { isSeries } from '../src/model/series.ts';
import { Working } from '../src/model/working.ts';
import { tellStory } from '../tests/kit/read-story.ts';
import { sameQuantity } from '../tests/kit/score-story.ts';
import type { Story } from '../tests/kit/story.ts';
import { readStoryFile } from '../tests/kit/story-file.ts';
import { fitSigns, type SignedCase, tableOf } from './sign-fit.ts';

/** The score lets pass as much. */
const SAME = 5e-3;
const PENALTY = 3;

function casesOf(story: Story): readonly SignedCase[] {
  const cases: SignedCase[] = [];
  const settings = { units: story.units, tolerances: {}, ...(story.region ? { region: story.region } : {}) };
  tellStory(story, {
    before: (project, { id, recordedAt, text, conflicts = [] }, read) => {
      const notes = keepNotes(id, read, undefined);
      const work = new Working(new Draft(project.rows), { id, recordedAt, text, notes }, settings);
      for (const note of notes.figures) {
        const arriving = arrivingOf(work, note);
        if (isLimiting(note) || isSeries(note, arriving.place.clause)) continue;
        for (const { row, signs } of likelyChanges(work, arriving)) {
          const gold = conflicts.find(
            ({ was, now }) => sameQuantity(now, note, SAME) && sameQuantity(was, row, SAME),
          );
          cases.push({ signs, isRight: gold !== undefined && gold.kind !== 'limit' });
        }
      }
    },
    after: () => {},
  });
  return cases;
}

const cases = process.argv.slice(2).flatMap((file) => casesOf(readStoryFile(file)));
console.log(`${cases.length} pairs, ${cases.filter(({ isRight }) => isRight).length} right`);
writeFileSync(
  'src/model/change-weights.ts',
  `/** Written by scripts/fit-change.ts: what each sign of \`change-signs.ts\` weighs. */
export const CHANGE_WEIGHTS: Readonly<Record<string, number>> = {
${tableOf(fitSigns(cases, PENALTY))}
};

/** A figure takes the place of another where the signs come to this much. */
export const LOUD_CHANGE = -0.9;
`,
);
