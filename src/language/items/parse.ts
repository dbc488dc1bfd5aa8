/** A memo as the frames see it: words, noun phrases, sentences, and where each quantity stands among them. */
import { findPhrases, type Phrase } from './noun-phrases.ts';
import { SPEAKERS } from './word-lists.ts';
import { type QuantitySpan, readWords, type Tag, type Word } from './words.ts';

export interface Parse {
  readonly text: string;
  readonly words: readonly Word[];
  readonly phrases: readonly Phrase[];
  /** For each word the phrase it belongs to, else -1. */
  readonly phraseOfWord: Int32Array;
  /** For each word the last phrase that begins at it or before it, else -1: talk of numbers alone has none for miles. */
  readonly phraseUpTo: Int32Array;
  /** For each word the number of its sentence. */
  readonly sentenceOf: Int32Array;
  /** First word of each sentence. */
  readonly sentenceStart: readonly number[];
  /** For each quantity the word that stands for it, else -1. */
  readonly wordOfQuantity: Int32Array;
}

/**
 * Words after which a sentence without a full stop is cut: frames look through a whole sentence for each quantity, and
 * a memo without a single mark must stay as quick as any.
 */
const LONGEST_SENTENCE = 150;

export function parseMemo(text: string, cores: readonly QuantitySpan[]): Parse {
  const words = readWords(text, cores);
  const phrases = findPhrases(words);
  const phraseOfWord = new Int32Array(words.length).fill(-1);
  for (const phrase of phrases)
    for (let k = phrase.first; k <= phrase.last; k++) phraseOfWord[k] = phrase.index;
  const phraseUpTo = phraseOfWord.slice();
  for (let k = 1; k < phraseUpTo.length; k++)
    if (phraseUpTo[k] === -1) phraseUpTo[k] = phraseUpTo[k - 1] as number;
  const sentenceOf = new Int32Array(words.length);
  const sentenceStart = [0];
  const wordOfQuantity = new Int32Array(cores.length).fill(-1);
  let fresh = false;
  words.forEach((word, k) => {
    if (k - (sentenceStart.at(-1) as number) >= LONGEST_SENTENCE) fresh = true;
    if (fresh && word.tag !== 'stop') {
      sentenceStart.push(k);
      fresh = false;
    }
    sentenceOf[k] = sentenceStart.length - 1;
    if (word.tag === 'stop') fresh = true;
    if (word.quantity !== undefined) wordOfQuantity[word.quantity] = k;
  });
  return { text, words, phrases, phraseOfWord, phraseUpTo, sentenceOf, sentenceStart, wordOfQuantity };
}

export const tagAt = (parse: Parse, at: number): Tag | undefined => parse.words[at]?.tag;
export const wordAt = (parse: Parse, at: number): string => parse.words[at]?.lower ?? '';

/** Lower-case words from `from` on, joined by spaces, at most `count` and never past the sentence. */
export function ahead(parse: Parse, from: number, count: number): string {
  const words: string[] = [];
  const sentence = parse.sentenceOf[from];
  for (let k = from; k < from + count && k < parse.words.length; k++) {
    if (parse.sentenceOf[k] !== sentence || parse.words[k]?.tag === 'stop') break;
    words.push(wordAt(parse, k));
  }
  return words.join(' ');
}

/** Lower-case words before `to`, joined by spaces, at most `count` and never before the sentence. */
export function behind(parse: Parse, to: number, count: number): string {
  let words = '';
  const sentence = parse.sentenceOf[to];
  for (let k = to - 1; k >= 0 && k >= to - count; k--) {
    if (parse.sentenceOf[k] !== sentence || parse.words[k]?.tag === 'stop') break;
    words = words === '' ? wordAt(parse, k) : `${wordAt(parse, k)} ${words}`;
  }
  return words;
}

export function phraseAt(parse: Parse, at: number): Phrase | undefined {
  const index = parse.phraseOfWord[at];
  return index === undefined || index < 0 ? undefined : parse.phrases[index];
}

/** What a phrase hangs on: "the gap" of "behind the bench". */
export function hostOf(parse: Parse, phrase: Phrase): Phrase | undefined {
  return tagAt(parse, phrase.first - 1) === 'preposition' ? phraseAt(parse, phrase.first - 2) : undefined;
}

/** Whether nothing of the sentence stands before a phrase. */
export function opensSentence(parse: Parse, phrase: Phrase): boolean {
  return (
    tagAt(parse, phrase.first - 1) === 'stop' ||
    parse.sentenceOf[phrase.first - 1] !== parse.sentenceOf[phrase.first]
  );
}

/** Index of the last phrase that begins before a word, -1 for none. Looks back only as far as the nearest one. */
export function lastPhraseBefore(parse: Parse, word: number): number {
  return parse.phraseUpTo[Math.min(word, parse.words.length) - 1] ?? -1;
}

/** The phrases of the sentence that a word stands in. */
export function phrasesOfSentence(parse: Parse, word: number): readonly Phrase[] {
  const sentence = parse.sentenceOf[word] as number;
  const end = parse.sentenceStart[sentence + 1] ?? parse.words.length;
  const found: Phrase[] = [];
  for (let k = parse.sentenceStart[sentence] as number; k < end; k++) {
    const phrase = phraseAt(parse, k);
    if (!phrase) continue;
    found.push(phrase);
    k = Math.max(k, phrase.last);
  }
  return found;
}

/** The phrase that begins at `at`, past determiners and light words. */
export function phraseFrom(parse: Parse, at: number): Phrase | undefined {
  let k = at;
  while (tagAt(parse, k) === 'adverb' || tagAt(parse, k) === 'filler') k++;
  return phraseAt(parse, k);
}

export const isSpeaker = (phrase: Phrase): boolean =>
  SPEAKERS.has(phrase.head) || (phrase.kinds.has('person') && phrase.pronoun === undefined);
