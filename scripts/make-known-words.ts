// Writes src/language/heard/english-words.ts: the words of English in all their forms, as a filter. Source: the lexicon of
// `natural` (MIT, from the Penn Treebank). npx tsx scripts/make-known-words.ts
import { writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { packWords } from '../src/language/heard/word-filter.ts';

const require = createRequire(import.meta.url);
const tags = require('natural/lib/natural/brill_pos_tagger/data/English/lexicon_from_posjs.json') as object;
const words = [
  ...new Set(
    Object.keys(tags)
      .map((word) => word.toLowerCase())
      .filter((word) => /^[a-z]{3,}$/.test(word)),
  ),
];
const packed = packWords(words, 7.3).match(/.{1,100}/g) ?? [];
writeFileSync(
  join(import.meta.dirname, '../src/language/heard/english-words.ts'),
  `/**
 * ${words.length} words of English as a filter (word-filter.ts). Written by scripts/make-known-words.ts; do not edit by hand.
 * Source: the lexicon of \`natural\` (MIT, from the Penn Treebank).
 */
export const ENGLISH_WORDS = \`
${packed.join('\n')}
\`;
`,
);
console.log(words.length, 'words');
