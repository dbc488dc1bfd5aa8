/**
 * Classes of words, so that what stands beside a word can be told from words of its kind where the word itself was
 * seldom said.
 */
import { remembered } from '../../remembered.ts';
import {
  EVERYDAY_ADJECTIVES,
  EVERYDAY_ADVERBS,
  NOUN_OR_VERB,
  VERB_BASES,
} from '../lexicon/everyday-words.ts';
import { isPlural, kindsOf } from '../lexicon/trade-nouns.ts';
import { workBase, workIng, workParticiple, workPast, workThird } from '../lexicon/work-verbs.ts';
import { NUMBER_WORDS } from '../statements/vocabulary.ts';

/** Stands for every number. */
export const NUMBER = '#';
/** Stands for the mark or the pause between clauses. */
export const STOP = '.';

/** A word as the counts know it: numbers are one word, and the genitive or "is" is taken off. */
export function countedAs(lower: string): string {
  if (/^\d/.test(lower) || NUMBER_WORDS.has(lower)) return NUMBER;
  return lower.replace(/'s$/, '');
}

const CLOSED: ReadonlySet<string> = new Set(
  `the a an this that these those my our your his her its their some any no every each both all one another other
  i you he she it we they me him us them who which what where when why how there here
  is are was were be been being am has have had having do does did will would can could should shall may might must
  need needs wants want got get gets going gone go goes come comes came
  of in on at to for from with without by into onto over under through across between behind above below inside
  outside off out up down round around along past until till since than as if so because but and or not
  just now then still only too very more most less least about like also again back away
  i'm i've i'll it's that's there's they're we're we've don't can't isn't didn't
  mil mill mm cm metre metres meter meters inch inches foot feet litre litres kilo kilos kg amp amps volt volts watt
  watts degree degrees percent hour hours day days week weeks long wide high deep thick across`.split(/\s+/),
);

/** Classes that were asked for, so that a memo asks once for each of its words; emptied before it grows. */
const MOST_ASKED = 20_000;

/** Class of a word as the counts know it; words that hold sentences together are a class each. */
export const classOf: (word: string) => string = remembered(MOST_ASKED, (word) => findClass(word));

function findClass(word: string): string {
  if (word === NUMBER || word === STOP || CLOSED.has(word)) return word;
  const [kind] = kindsOf([word]);
  if (kind !== undefined && kind !== 'abstract' && kind !== 'person' && kind !== 'time')
    return `${kind}${isPlural(word) ? '+' : ''}`;
  if (workIng(word) !== undefined) return 'working';
  if (workParticiple(word) !== undefined || workPast(word) !== undefined) return 'worked';
  if (workBase(word) !== undefined || VERB_BASES.has(word)) return 'work';
  if (workThird(word) !== undefined) return 'works';
  if (kind !== undefined) return kind;
  if (EVERYDAY_ADJECTIVES.has(word)) return 'such';
  if (EVERYDAY_ADVERBS.has(word) || word.endsWith('ly')) return 'so';
  if (NOUN_OR_VERB.has(word)) return 'thing-or-deed';
  return 'other';
}
