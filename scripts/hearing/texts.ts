/** The stories that are spoken: those that confusions may be learned from, and those kept aside, which nobody reads. */
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import type { Story } from '../../tests/kit/story.ts';
import { readStoryFile } from '../../tests/kit/story-file.ts';

const own = join(import.meta.dirname, '../../tests/stories');

/** Not 3, 7, 14 and 20: they are written as a recogniser wrote them, and spoken they would be misheard twice. */
const LEARNED = [1, 2, 4, 5, 6, 8, 10, 12].map((number) => join(own, `work-${number}.json`));
const ASIDE = [1, 2, 4].map((number) => join(own, `aside-${number}.json`));

/** `corpus` is a folder with more stories, as `story-dev1.json`; it may be absent. */
export function storiesToSpeak(corpus?: string): {
  readonly learned: readonly Story[];
  readonly aside: readonly Story[];
} {
  const more = (numbers: readonly number[]) =>
    corpus === undefined ? [] : numbers.map((number) => join(corpus, `story-dev${number}.json`));
  const read = (files: readonly string[]) => files.filter((file) => existsSync(file)).map(readStoryFile);
  return {
    learned: read([...more([1, 2, 3, 5, 7]), ...LEARNED]),
    aside: read([...more([4, 6, 8]), ...ASIDE]),
  };
}
