// Writes what the bundled recogniser wrote for words of the trade that the learned voices spoke:
// npx tsx scripts/make-heard-as.ts --lexicon | --talk [--corpus FOLDER] [--folder CACHE]
// --lexicon: in plain sentences (hearing/hear-lexicon.ts), to src/language/heard/heard-as.ts; --talk: in whole stories
// (hearing/hear-stories.ts), to heard-in-talk.ts. What was not heard yet is left out.
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { HearingCache, textOf } from './hearing/heard-talk.ts';
import { lexiconTalks } from './hearing/lexicon-talk.ts';
import { confusionsOf, confusionTable } from './hearing/seen-in-talk.ts';
import { storiesToSpeak } from './hearing/texts.ts';
import { VOICES } from './hearing/voices.ts';

const after = (name: string) => {
  const at = process.argv.indexOf(name);
  return at < 0 ? undefined : process.argv[at + 1];
};
const isLexicon = process.argv.includes('--lexicon');
const cache = new HearingCache(after('--folder'));
const said = isLexicon
  ? (['one', 'many'] as const).flatMap(lexiconTalks)
  : storiesToSpeak(after('--corpus')).learned.flatMap(({ memos }) => memos.map(({ text }) => text));
const heard = said.flatMap((text) =>
  VOICES.filter(({ learned }) => learned).flatMap(({ name }) => {
    const talk = cache.find(text, name);
    return talk ? [{ text, heard: textOf(talk) }] : [];
  }),
);
const confusions = heard.flatMap((one) => confusionsOf(one.text, one.heard));
const [file, name, where] = isLexicon
  ? ['heard-as', 'HEARD_AS', 'that synthetic voices spoke']
  : ['heard-in-talk', 'HEARD_IN_TALK', 'in whole stories that synthetic voices spoke'];
if (heard.length === 0) throw new Error('nothing was heard yet: the table stays as it is');
writeFileSync(
  join(import.meta.dirname, `../src/language/heard/${file}.ts`),
  `/**
 * What the bundled recogniser wrote for words of the trade ${where}. Lines
 * "heard>meant count,meant count". Written by scripts/make-heard-as.ts; do not edit by hand.
 */
export const ${name} = \`
${confusionTable(confusions)}
\`;
`,
);
console.log(`${heard.length} talks, ${confusions.length} words heard as others`);
