// Scores one annotation of a story against another: npx tsx scripts/agree.ts [--verbose] FIRST.json SECOND.json
// The first is taken as the notes that stand, the second as what was read. Both must hold the same texts.
import { readingOf } from '../tests/kit/annotation.ts';
import { StoryScore } from '../tests/kit/score-story.ts';
import { readStoryFile } from '../tests/kit/story-file.ts';

const args = process.argv.slice(2);
const [first, second] = args.filter((arg) => !arg.startsWith('--')).map(readStoryFile);
if (!first || !second) {
  console.error('usage: npx tsx scripts/agree.ts [--verbose] FIRST.json SECOND.json');
  process.exit(2);
}
const score = new StoryScore(args.includes('--verbose') ? (line) => console.log(line) : undefined);
score.add(first, readingOf(first, second));
console.log('what              first second same     F1');
for (const { name, gold, said, right, f1 } of score.rows()) {
  const counts = [gold, said, right].map((n) => String(n).padStart(4)).join('  ');
  console.log(`${name.padEnd(18)} ${counts} ${f1.toFixed(3).padStart(7)}`);
}
