/** The stories that are spoken: those that confusions may be learned from, and those kept aside, which nobody reads. */
import { existsSync, readdirSync } from 'node:fs';
import { basename, join } from 'node:path';
import { isKeptAside } from '../../tests/kit/kept-aside.ts';
import type { Story } from '../../tests/kit/story.ts';
import { readStoryFile } from '../../tests/kit/story-file.ts';

const own = join(import.meta.dirname, '../../tests/stories');

const drill = join(own, 'drill');

/** A memo marks its sentences about every eighth word; a recogniser that writes none is nobody to read aloud. */
const LEAST_MARKS = 0.05;

/** Whether a story is written as a recogniser wrote it: spoken, its words would be misheard twice. */
function isAsHeard({ memos }: Story): boolean {
  const text = memos.map((memo) => memo.text).join(' ');
  return (text.match(/[.?!,]/g)?.length ?? 0) < LEAST_MARKS * text.split(/\s+/).length;
}

/** These are as well, with some marks put in. */
const ALSO_AS_HEARD = /^(?:work-(?:3|7|20)|aside-3)\.json$/;

/** Stories in the order of their numbers. */
const numbered = (folder: string, pattern: RegExp): readonly string[] =>
  readdirSync(folder)
    .filter((name) => pattern.test(name) && !ALSO_AS_HEARD.test(name))
    .sort((a, b) => Number(/\d+/.exec(a)?.[0]) - Number(/\d+/.exec(b)?.[0]))
    .map((name) => join(folder, name));

/** `corpus` is a folder with more stories, as `story-dev1.json`; it may be absent. */
export function storiesToSpeak(corpus?: string): {
  readonly learned: readonly Story[];
  readonly aside: readonly Story[];
} {
  const more = (numbers: readonly number[]) =>
    corpus === undefined ? [] : numbers.map((number) => join(corpus, `story-dev${number}.json`));
  const read = (files: readonly string[]) =>
    files
      .filter((file) => existsSync(file))
      .map(readStoryFile)
      .filter((story) => !isAsHeard(story));
  const talks = numbered(drill, /\.talk$/);
  const ofDrill = (aside: boolean) => talks.filter((file) => isKeptAside(basename(file)) === aside);
  return {
    learned: read([...more([1, 2, 3, 5, 7]), ...numbered(own, /^work-\d+\.json$/), ...ofDrill(false)]),
    aside: read([...more([4, 6, 8]), ...numbered(own, /^aside-\d+\.json$/), ...ofDrill(true)]),
  };
}
