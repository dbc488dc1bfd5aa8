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

test.each(['work-14.json', 'drill/drill-5.talk', 'drill/drill-86.talk'])(
  '%s',
  { timeout: 60_000 },
  async (name) => {
    const story = readStoryFile(at(`../../stories/${name}`));
    const memos = readInTurn(story).map((notes, k) => [story.memos[k]?.id, ...noteLines(notes)].join('\n'));
    await expect(`${memos.join('\n\n')}\n`).toMatchFileSnapshot(at(`./stories/${story.story}.txt`));
  },
);
