// Writes src/language/heard/heard-as.ts: what the bundled recogniser wrote for words of the trade when they were spoken by
// the learned voices in plain sentences, and in stories where --corpus names their folder.
// npx tsx scripts/make-heard-as.ts [--corpus FOLDER]; what was not heard yet is left out: see hearing/hear-lexicon.ts.
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { heardWords } from '../src/language/heard/repair.ts';
import { soundDistance, soundsOf } from '../src/language/heard/sounds.ts';
import { align, isOfTrade, plainWord } from './hearing/aligned.ts';
import { HearingCache, textOf } from './hearing/heard-talk.ts';
import { lexiconTalks } from './hearing/lexicon-talk.ts';
import { storiesToSpeak } from './hearing/texts.ts';
import { VOICES } from './hearing/voices.ts';

/** What sounds like nothing near the word was heard of its neighbours. */
const FARTHEST = 0.42;

const corpusAt = process.argv.indexOf('--corpus');
const corpus = corpusAt < 0 ? undefined : process.argv[corpusAt + 1];
const cache = new HearingCache();
const counts = new Map<string, Map<string, number>>();
let talks = 0;
let wrong = 0;

function learn(said: string, heard: string): void {
  talks++;
  const words = heardWords(said).map(({ lower }) => plainWord(lower));
  const others = heardWords(heard).map(({ lower }) => plainWord(lower));
  const pairing = align(words, others);
  words.forEach((word, at) => {
    const place = pairing[at] as number;
    if (!isOfTrade(word) || (place >= 0 && others[place] === word)) return;
    wrong++;
    // All that was heard between the neighbours that were heard right.
    const left = at === 0 ? -1 : (pairing[at - 1] as number);
    const right = at + 1 === words.length ? others.length : (pairing[at + 1] as number);
    if (at > 0 && (left < 0 || others[left] !== words[at - 1])) return;
    if (at + 1 < words.length && (right < 0 || others[right] !== words[at + 1])) return;
    const between = others.slice(left + 1, right);
    if (between.length === 0 || between.length > 2 || between.some((one) => /\d/.test(one))) return;
    const written = between.join(' ');
    if (between.join('') === word || between.join('') === `${word}s` || `${between.join('')}s` === word)
      return;
    if (soundDistance(soundsOf(between.join('')), soundsOf(word)) > FARTHEST) return;
    const row = counts.get(written) ?? new Map<string, number>();
    row.set(word, (row.get(word) ?? 0) + 1);
    counts.set(written, row);
  });
}

for (const voice of VOICES.filter(({ learned }) => learned)) {
  for (const form of ['one', 'many'] as const)
    for (const talk of lexiconTalks(form)) {
      const heard = cache.find(talk, voice.name);
      if (heard) learn(talk, textOf(heard));
    }
  if (corpus)
    for (const story of storiesToSpeak(corpus).learned)
      for (const { text } of story.memos) {
        const heard = cache.find(text, voice.name);
        if (heard) learn(text, textOf(heard));
      }
}
const lines = [...counts]
  .sort(([a], [b]) => (a < b ? -1 : 1))
  .map(([heard, meant]) => `${heard}>${[...meant].map(([word, count]) => `${word} ${count}`).join(',')}`);
writeFileSync(
  join(import.meta.dirname, '../src/language/heard/heard-as.ts'),
  `/**
 * What the bundled recogniser wrote for words of the trade that synthetic voices spoke. Lines "heard>meant count,meant
 * count". Written by scripts/make-heard-as.ts; do not edit by hand.
 */
export const HEARD_AS = \`
${lines.join('\n')}
\`;
`,
);
console.log(`${talks} talks, ${wrong} words heard wrong, ${lines.length} learned`);
