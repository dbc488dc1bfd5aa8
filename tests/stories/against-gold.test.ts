/**
 * What is read from every story, held against its annotation: the files in faults/ list what is missed, made up or told
 * otherwise, a line each, so that a change of the reader or the model shows in their diff as faults mended and faults made.
 * A fault that is listed is no wish. Stories kept aside are read by nobody: of them the scores alone stand in a file.
 * Renewed like every file that is looked over (DEVELOPERS.md).
 */
import { readdirSync } from 'node:fs';
import { basename } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { isKeptAside } from '../kit/kept-aside.ts';
import { readStory } from '../kit/read-story.ts';
import { StoryScore } from '../kit/score-story.ts';
import { readStoryFile } from '../kit/story-file.ts';

const at = (path: string) => fileURLToPath(new URL(path, import.meta.url));
const files = [
  ...readdirSync(at('.')).filter((name) => name.endsWith('.json')),
  ...readdirSync(at('drill')).map((name) => `drill/${name}`),
];
const asideOf = (file: string) => isKeptAside(basename(file));
/** A whole story takes a second or two, and longer on a busy machine. */
const TIMEOUT = { timeout: 120_000 };

describe.each(files.filter((file) => !asideOf(file)))('%s', (file) => {
  test('is read as it was annotated, but for faults that are known', TIMEOUT, async () => {
    const story = readStoryFile(at(file));
    const faults: string[] = [];
    const score = new StoryScore((line) => faults.push(line.slice(story.story.length + 1)));
    score.add(story, readStory(story));
    await expect(`${faults.join('\n')}\n`).toMatchFileSnapshot(at(`faults/${story.story}.txt`));
  });
});

test('stories kept aside score as before', TIMEOUT, async () => {
  const score = new StoryScore();
  for (const file of files.filter(asideOf)) {
    const story = readStoryFile(at(file));
    score.add(story, readStory(story));
  }
  const table = score
    .rows()
    .map(
      ({ name, gold, said, right, f1 }) =>
        `${name}: ${right} right of ${gold}, ${said} said, ${f1.toFixed(3)}`,
    );
  await expect(`${table.join('\n')}\n`).toMatchFileSnapshot(at('faults/kept-aside.txt'));
});
