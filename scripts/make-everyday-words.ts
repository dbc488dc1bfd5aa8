// Writes src/language/lexicon/everyday-words.ts: the parts of speech of everyday English words, and the nouns that name
// no thing to measure. Sources: the lexicon of parts of speech that `natural` carries (MIT; tags in order of frequency,
// from the Penn Treebank) and the lexicographer files and sense counts of Princeton WordNet 3.0 (Debian's wordnet-base).
//   npx tsx scripts/make-everyday-words.ts /usr/share/wordnet
import { readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { inflect } from '../src/language/items/word-lists.ts';
import { isTradeNoun } from '../src/language/lexicon/trade-nouns.ts';

const dict = process.argv[2] ?? '/usr/share/wordnet';
const require = createRequire(import.meta.url);
const tags = require('natural/lib/natural/brill_pos_tagger/data/English/lexicon_from_posjs.json') as Record<
  string,
  readonly string[]
>;

/** Lexicographer files of WordNet (lexnames(5WN)) whose nouns are no thing that a size is said of. */
const CLASS_OF_FILE: Readonly<Record<number, 'person' | 'time' | 'abstract'>> = {
  4: 'abstract',
  7: 'abstract',
  9: 'abstract',
  10: 'abstract',
  11: 'abstract',
  12: 'abstract',
  14: 'abstract',
  16: 'abstract',
  18: 'person',
  21: 'abstract',
  22: 'abstract',
  24: 'abstract',
  26: 'abstract',
  28: 'time',
};

interface Senses {
  /** How often each lexicographer file's senses were counted, one added for being there at all. */
  readonly files: Map<number, number>;
  count: number;
}

function readNounSenses(): Map<string, Senses> {
  const counts = new Map<string, number>();
  for (const line of readFileSync(`${dict}/cntlist.rev`, 'utf8').split('\n')) {
    const [key, , count] = line.split(' ');
    const match = /^([a-z]+)%1:(\d\d):(\d\d)::$/.exec(key ?? '');
    if (match) counts.set(`${match[1]} ${Number(match[2])} ${Number(match[3])}`, Number(count));
  }
  const senses = new Map<string, Senses>();
  for (const line of readFileSync(`${dict}/data.noun`, 'utf8').split('\n')) {
    if (line.startsWith(' ') || line === '') continue;
    const fields = line.split(' ');
    const file = Number(fields[1]);
    for (let k = 0; k < Number.parseInt(fields[3] ?? '0', 16); k++) {
      const word = fields[4 + 2 * k] ?? '';
      const sense = Number.parseInt(fields[5 + 2 * k] ?? '0', 16);
      if (!/^[a-z]{3,}$/.test(word)) continue;
      const entry = senses.get(word) ?? { files: new Map(), count: 0 };
      const count = counts.get(`${word} ${file} ${sense}`) ?? 0;
      entry.files.set(file, (entry.files.get(file) ?? 0) + count + 0.2);
      entry.count += count;
      senses.set(word, entry);
    }
  }
  return senses;
}

/** The class of a noun of which nine in ten uses name no thing. */
function classOf({ files }: Senses): 'person' | 'time' | 'abstract' | undefined {
  const of = { person: 0, time: 0, abstract: 0, thing: 0 };
  for (const [file, count] of files) of[CLASS_OF_FILE[file] ?? 'thing'] += count;
  const all = of.person + of.time + of.abstract + of.thing;
  if (of.thing > 0.1 * all) return undefined;
  return of.person > 0.6 * all ? 'person' : of.time > 0.6 * all ? 'time' : 'abstract';
}

const verbCounts = new Map<string, number>();
const adjectiveCounts = new Map<string, number>();
for (const line of readFileSync(`${dict}/cntlist.rev`, 'utf8').split('\n')) {
  const [key, , count] = line.split(' ');
  const match = /^([a-z]+)%([235]):/.exec(key ?? '');
  if (!match) continue;
  const table = match[2] === '2' ? verbCounts : adjectiveCounts;
  table.set(match[1] as string, (table.get(match[1] as string) ?? 0) + Number(count));
}

const nouns = readNounSenses();
const lists = {
  verbs: [] as string[],
  either: [] as string[],
  adjectives: [] as string[],
  adverbs: [] as string[],
  person: [] as string[],
  time: [] as string[],
  abstract: [] as string[],
};
for (const [word, order] of Object.entries(tags)) {
  if (!/^[a-z]{3,}$/.test(word) || isTradeNoun(word)) continue;
  const is = (tag: RegExp) => order.some((found) => tag.test(found));
  const noun = is(/^NNS?$/);
  const counted = nouns.get(word);
  if (is(/^VBP?$/) && (verbCounts.get(word) ?? 0) > 0) (noun ? lists.either : lists.verbs).push(word);
  else if (is(/^JJ/) && !noun && !is(/^VB/) && (adjectiveCounts.get(word) ?? 0) > 0)
    lists.adjectives.push(word);
  else if (is(/^RB/) && !noun && !is(/^(?:JJ|VB|IN)/) && !word.endsWith('ly')) lists.adverbs.push(word);
  if (noun && counted && counted.count > 0) {
    const found = classOf(counted);
    if (found) lists[found].push(word);
  }
}
const forms = new Set(lists.verbs.flatMap(inflect));
const wrap = (words: readonly string[]) => {
  const lines: string[] = [];
  let line = '';
  for (const word of [...new Set(words)].sort()) {
    if (line.length + word.length > 104) {
      lines.push(line);
      line = '';
    }
    line += line === '' ? word : ` ${word}`;
  }
  return [...lines, line].map((each) => `  ${each}`).join('\n');
};
const list = (name: string, doc: string, words: readonly string[]) =>
  `/** ${doc} */\nexport const ${name} = wordSet(\`\n${wrap(words)}\n\`);\n`;
writeFileSync(
  'src/language/lexicon/everyday-words.ts',
  `/**
 * Everyday English words: what part of speech they are, and which nouns name no thing to measure. Words of the trade
 * stand in \`trade-nouns.ts\` and win over these. Written by scripts/make-everyday-words.ts; do not edit by hand.
 * Sources: the lexicon of \`natural\` (MIT, from the Penn Treebank) and Princeton WordNet 3.0 (Copyright 2006 by
 * Princeton University; free to use, copy and change with this notice).
 */
import { wordSet } from '../word-table.ts';

${list('VERB_BASES', 'Verbs that are no nouns, in their base form.', lists.verbs)}
${list('NOUN_OR_VERB', 'Words that are as well nouns as verbs: the place in the sentence tells.', lists.either)}
${list(
  'EVERYDAY_ADJECTIVES',
  'Adjectives that are nothing else.',
  lists.adjectives.filter((word) => !forms.has(word)),
)}
${list('EVERYDAY_ADVERBS', 'Adverbs that are nothing else, without those in -ly.', lists.adverbs)}
${list('PEOPLE', 'Nouns for people.', lists.person)}
${list('TIMES', 'Nouns for times.', lists.time)}
${list('ABSTRACT', 'Nouns for acts, thoughts, words, feelings, states: no thing that a size is said of.', lists.abstract)}`,
);
for (const [name, words] of Object.entries(lists)) console.log(name, words.length);
