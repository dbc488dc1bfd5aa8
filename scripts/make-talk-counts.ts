// Writes src/language/heard/talk-counts.ts: which words are said how often in talk of builds, and which stand side by
// side. Counted from the stories that may be read: npx tsx scripts/make-talk-counts.ts
import { readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { heardWords } from '../src/language/heard/repair.ts';
import { classOf, countedAs, STOP } from '../src/language/heard/word-classes.ts';
import { isKeptAside } from '../tests/kit/kept-aside.ts';
import { readStoryFile } from '../tests/kit/story-file.ts';

/** Pairs said once tell little of the two words; of their classes they still tell. */
const LEAST = 2;

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

type Counts = Map<string, number>;
const words: Counts = new Map();
const pairs: Counts = new Map();
const classes: Counts = new Map();
const add = (counts: Counts, key: string) => counts.set(key, (counts.get(key) ?? 0) + 1);
for (const file of files)
  for (const { text } of readStoryFile(file).memos) {
    let left = STOP;
    for (const { lower, opens } of heardWords(text)) {
      const word = countedAs(lower);
      if (opens) left = STOP;
      add(words, word);
      add(pairs, `${left} ${word}`);
      add(classes, `${classOf(left)} ${classOf(word)}`);
      left = word;
    }
  }

/** "a:b 3,c 2" lines: what follows each word. */
function table(counts: Counts, least: number): string {
  const rows = new Map<string, string[]>();
  for (const [pair, count] of [...counts].sort(([a], [b]) => (a < b ? -1 : 1))) {
    const [left = '', right = ''] = pair.split(' ');
    if (count >= least) rows.set(left, [...(rows.get(left) ?? []), `${right} ${count}`]);
  }
  return [...rows].map(([left, right]) => `${left}:${right.join(',')}`).join('\n');
}

const byCount = new Map<number, string[]>();
for (const [word, count] of [...words].sort(([a], [b]) => (a < b ? -1 : 1)))
  byCount.set(count, [...(byCount.get(count) ?? []), word]);
const counted = [...byCount].sort(([a], [b]) => b - a).map(([count, list]) => `${count}:${list.join(' ')}`);

writeFileSync(
  join(import.meta.dirname, '../src/language/heard/talk-counts.ts'),
  `/**
 * How often words are said in talk of builds, which word follows which, and which class of word follows which. Written by
 * scripts/make-talk-counts.ts from the stories under tests/stories that may be read; do not edit by hand.
 */

/** Lines "count:words". */
export const WORD_COUNTS = \`
${counted.join('\n')}
\`;

/** Lines "word:next count,next count"; pairs said once are left out. */
export const PAIR_COUNTS = \`
${table(pairs, LEAST)}
\`;

/** The same of classes, with those seen once. */
export const CLASS_PAIR_COUNTS = \`
${table(classes, 1)}
\`;
`,
);
console.log(
  `${files.length} stories, ${words.size} words, ${pairs.size} pairs, ${classes.size} pairs of classes`,
);
