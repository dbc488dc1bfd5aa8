// Scores the reader on story files, in this process: npm run score -- [--verbose] STORY.json ...
// With --gold-quantities only the naming of items is scored, on the gold's own numbers.
// With --gold-notes the model alone is scored: it is fed the stories' own notes.
import { nameGoldQuantities, nameStability } from '../tests/kit/gold-quantities.ts';
import { readGoldNotes, readStory } from '../tests/kit/read-story.ts';
import { StoryScore } from '../tests/kit/score-story.ts';
import { readStoryFile } from '../tests/kit/story-file.ts';

const args = process.argv.slice(2);
const verbose = args.includes('--verbose');
const onGold = args.includes('--gold-quantities');
const read = args.includes('--gold-notes') ? readGoldNotes : readStory;
const files = args.filter((arg) => !arg.startsWith('--'));
if (files.length === 0) {
  console.error('usage: npm run score -- [--verbose] [--gold-quantities | --gold-notes] STORY.json ...');
  process.exit(2);
}
const score = new StoryScore(verbose ? (line) => console.log(line) : undefined);
for (const file of files) {
  const story = readStoryFile(file);
  if (onGold) {
    const { named, reading } = nameGoldQuantities(story);
    score.add(story, reading);
    const { same, all, differing } = nameStability(named);
    console.log(`${story.story}: ${same} of ${all} later mentions keep the first one's name`);
    if (verbose) for (const line of differing) console.log(`  ${line}`);
  } else score.add(story, read(story));
}
console.log('what               gold  said right     F1');
for (const { name, gold, said, right, f1 } of score.rows()) {
  console.log(
    `${name.padEnd(18)} ${[gold, said, right].map((n) => String(n).padStart(4)).join('  ')} ${f1.toFixed(3).padStart(7)}`,
  );
}
const { found, words, perThousand } = score.falseFindings();
console.log(
  `false findings     ${found} in ${words} words: ${perThousand.toFixed(2)} for each thousand (at most 1.00 wanted)`,
);
