// Scores the reader on story files, in this process: npm run score -- [--verbose] STORY.json ...
import { readFileSync } from 'node:fs';
import { readStory } from '../tests/kit/read-story.ts';
import { StoryScore } from '../tests/kit/score-story.ts';
import type { Story } from '../tests/kit/story.ts';

const args = process.argv.slice(2);
const verbose = args.includes('--verbose');
const files = args.filter((arg) => !arg.startsWith('--'));
if (files.length === 0) {
  console.error('usage: npm run score -- [--verbose] STORY.json ...');
  process.exit(2);
}
const score = new StoryScore(verbose ? (line) => console.log(line) : undefined);
for (const file of files) {
  const story = JSON.parse(readFileSync(file, 'utf8')) as Story;
  score.add(story, readStory(story));
}
console.log('what               gold  said right     F1');
for (const { name, gold, said, right, f1 } of score.rows()) {
  console.log(
    `${name.padEnd(18)} ${[gold, said, right].map((n) => String(n).padStart(4)).join('  ')} ${f1.toFixed(3).padStart(7)}`,
  );
}
