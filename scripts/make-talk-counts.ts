// Writes src/language/heard/talk-counts.ts: which words are said how often in talk of builds, and which stand side by
// side. Counted from the stories that may be read: npx tsx scripts/make-talk-counts.ts
import { readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { isKeptAside } from '../tests/kit/kept-aside.ts';
import { readStoryFile } from '../tests/kit/story-file.ts';
import { TalkCounting } from './hearing/talk-counting.ts';

const own = join(import.meta.dirname, '../tests/stories');
const drill = join(own, 'drill');
const files = [
  ...readdirSync(own)
    .filter((name) => /^work-\d+\.json$/.test(name))
    .map((name) => join(own, name)),
  ...readdirSync(drill)
    .filter((name) => name.endsWith('.talk') && !isKeptAside(name))
    .map((name) => join(drill, name)),
].sort();

const counting = new TalkCounting();
for (const file of files) counting.add(readStoryFile(file).memos.map(({ text }) => text));
const { words, pairs, classes } = counting.tables();

writeFileSync(
  join(import.meta.dirname, '../src/language/heard/talk-counts.ts'),
  `/**
 * How often words are said in talk of builds, which word follows which, and which class of word follows which. Written by
 * scripts/make-talk-counts.ts from the stories under tests/stories that may be read; do not edit by hand.
 */

/** Lines "count:words". */
export const WORD_COUNTS = \`
${words}
\`;

/** Lines "word:next count,next count"; pairs said once are left out. */
export const PAIR_COUNTS = \`
${pairs}
\`;

/** The same of classes, with those seen once. */
export const CLASS_PAIR_COUNTS = \`
${classes}
\`;
`,
);
const { sizes } = counting;
console.log(
  `${files.length} stories, ${sizes.words} words, ${sizes.pairs} pairs, ${sizes.classes} pairs of classes`,
);
