// Says what cannot be right in stories, and how much each holds: npx tsx scripts/look-over-talk.ts STORY ...

import { storyFaults } from '../tests/kit/story-faults.ts';
import { readStoryFile } from '../tests/kit/story-file.ts';

const KINDS = [
  'figures',
  'decisions',
  'tasks',
  'done',
  'arrivals',
  'problems',
  'promises',
  'conflicts',
] as const;
for (const file of process.argv.slice(2)) {
  const story = readStoryFile(file);
  const words = story.memos.reduce((sum, memo) => sum + memo.text.split(/\s+/).length, 0);
  const held = KINDS.map(
    (kind) => `${kind} ${story.memos.reduce((sum, memo) => sum + (memo[kind]?.length ?? 0), 0)}`,
  );
  console.log(`${story.story}: ${story.memos.length} memos, ${words} words; ${held.join(', ')}`);
  for (const fault of storyFaults(story)) console.log(`  ${fault}`);
}
