/**
 * What is read from whole stories of several trades and ways of talking, memo by memo. A change in these files is a change
 * of what is read: look the diff over before it is kept (DEVELOPERS.md).
 */
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { readInTurn } from '../../kit/in-turn.ts';
import { noteLines } from '../../kit/note-lines.ts';
import { readStoryFile } from '../../kit/story-file.ts';

const at = (path: string) => fileURLToPath(new URL(path, import.meta.url));

const STORIES = [
  'work-2.json',
  'work-4.json',
  'work-6.json',
  'work-8.json',
  'work-9.json',
  'work-10.json',
  'work-12.json',
  'work-13.json',
  'work-14.json',
  'work-15.json',
  'work-18.json',
  'work-20.json',
  'drill/drill-5.talk',
  'drill/drill-14.talk',
  'drill/drill-24.talk',
  'drill/drill-36.talk',
  'drill/drill-45.talk',
  'drill/drill-55.talk',
  'drill/drill-57.talk',
  'drill/drill-66.talk',
  'drill/drill-72.talk',
  'drill/drill-76.talk',
  'drill/drill-81.talk',
  'drill/drill-86.talk',
];

test.each(STORIES)('%s', { timeout: 60_000 }, async (name) => {
  const story = readStoryFile(at(`../../stories/${name}`));
  const memos = readInTurn(story).map((notes, k) => [story.memos[k]?.id, ...noteLines(notes)].join('\n'));
  await expect(`${memos.join('\n\n')}\n`).toMatchFileSnapshot(at(`./stories/${story.story}.txt`));
});
