/** A memo as the rules for records see it: the shallow parse, cut into lines of one sentence each. */
import type { Phrase } from '../items/noun-phrases.ts';
import { type Parse, parseMemo, phraseAt, tagAt, wordAt } from '../items/parse.ts';
import type { ArrivalNote, FigureNote, Span } from '../notes.ts';

/** One sentence. */
export interface Line extends Span {
  readonly index: number;
  /** First word, and the word after the last one. */
  readonly first: number;
  readonly end: number;
  readonly endWord: number;
  /** Lower-case words with one space before and after each; a quantity is `#`. */
  readonly words: string;
  /** Offset in `words` of each word. */
  readonly starts: readonly number[];
  readonly asks: boolean;
}

export interface RecordScene {
  readonly text: string;
  readonly parse: Parse;
  readonly figures: readonly FigureNote[];
  readonly arrivals: readonly ArrivalNote[];
  readonly lines: readonly Line[];
}

/** Reads the scene of one memo. Linear in its length. */
export function sceneOf(
  text: string,
  figures: readonly FigureNote[],
  arrivals: readonly ArrivalNote[],
): RecordScene {
  const parse = parseMemo(
    text,
    figures.map(({ span }) => ({ ...span, isCore: false })),
  );
  const lines = parse.sentenceStart
    .flatMap((first, index) => cut(parse, first, parse.sentenceStart[index + 1] ?? parse.words.length))
    .filter(([first, end]) => end > first)
    .map(([first, end], index) => lineOf(parse, index, first, end));
  return { text, parse, figures, arrivals, lines };
}

/** A sentence of more words has no full stops in it, and is cut where a fresh clause begins. */
const LONGEST = 45;
const SHORTEST = 8;

function cut(parse: Parse, first: number, end: number): readonly (readonly [number, number])[] {
  if (end - first <= LONGEST) return [[first, end]];
  const pieces: (readonly [number, number])[] = [];
  let from = first;
  for (let k = first + SHORTEST; k < end; k++) {
    const word = wordAt(parse, k);
    const opens =
      /^(?:then|so|but)$/.test(word) ||
      (/^(?:i|we|they|it|he|there)$/.test(word) && tagAt(parse, k - 1) !== 'preposition') ||
      (word === 'and' && /^(?:determiner|pronoun)$/.test(tagAt(parse, k + 1) ?? ''));
    if (!opens || k - from < SHORTEST) continue;
    pieces.push([from, k]);
    from = k;
  }
  return [...pieces, [from, end]];
}

function lineOf(parse: Parse, index: number, first: number, endWord: number): Line {
  const starts: number[] = [];
  let words = ' ';
  for (let k = first; k < endWord; k++) {
    starts.push(words.length);
    words += `${wordAt(parse, k)} `;
  }
  return {
    index,
    first,
    endWord,
    words,
    starts,
    start: parse.words[first]?.span.start ?? 0,
    end: parse.words[endWord - 1]?.span.end ?? 0,
    asks: wordAt(parse, endWord - 1).includes('?'),
  };
}

/** The word that stands at an offset of a line's words. */
export function wordAtOffset(line: Line, offset: number): number {
  let low = 0;
  let high = line.starts.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((line.starts[middle] as number) <= offset) low = middle;
    else high = middle - 1;
  }
  return line.first + low;
}

/** The phrases of a line, in order of speech. */
export function phrasesOf({ parse }: RecordScene, line: Line): readonly Phrase[] {
  const found: Phrase[] = [];
  for (let k = line.first; k < line.endWord; k++) {
    const phrase = phraseAt(parse, k);
    if (!phrase || phrase.first < line.first) continue;
    found.push(phrase);
    k = Math.max(k, phrase.last);
  }
  return found;
}

/** The line that holds an offset. */
export function lineAt({ lines }: RecordScene, offset: number): Line | undefined {
  const line = lines[firstFrom(lines, (one) => one.start > offset) - 1];
  return line && offset < line.end + 1 ? line : undefined;
}

/** Index of the first of a sorted list that is past a point; its length when none is. */
function firstFrom<T>(list: readonly T[], isPast: (one: T) => boolean): number {
  let low = 0;
  let high = list.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (isPast(list[middle] as T)) high = middle;
    else low = middle + 1;
  }
  return low;
}

export const spanOfWords = ({ parse }: RecordScene, first: number, last: number): Span => ({
  start: parse.words[first]?.span.start ?? 0,
  end: parse.words[last]?.span.end ?? 0,
});

export function textOfWords(scene: RecordScene, first: number, last: number): string {
  const { start, end } = spanOfWords(scene, first, last);
  return scene.text.slice(start, end);
}

/** A phrase in the speaker's words without its determiner and without a quantity in front. */
export function nameInWords(scene: RecordScene, phrase: Phrase): string {
  let first = phrase.first;
  while (
    first < phrase.last &&
    (/^(?:determiner|possessive|number|quantity)$/.test(tagAt(scene.parse, first) ?? '') ||
      /^(?:only|just|all|last|rest)$/.test(wordAt(scene.parse, first)))
  )
    first++;
  return textOfWords(scene, first, phrase.last).replace(/\s+/g, ' ');
}

const BREAKS = new Set(['comma', 'stop']);
const NEW_CLAUSE = /^(?:and|but|so|because|cause|cos|then|which|while|though|although|;)$/;

/** First word of the clause that a word stands in. */
export function clauseStart({ parse }: RecordScene, line: Line, at: number): number {
  for (let k = at - 1; k >= line.first; k--) {
    if (BREAKS.has(parse.words[k]?.tag ?? '') || NEW_CLAUSE.test(wordAt(parse, k))) return k + 1;
  }
  return line.first;
}

/** Word after the last one of the clause that a word stands in; "and" alone does not end it. */
export function clauseEnd({ parse }: RecordScene, line: Line, at: number): number {
  for (let k = at + 1; k < line.endWord; k++) {
    if (
      BREAKS.has(parse.words[k]?.tag ?? '') ||
      /^(?:but|so|because|cause|cos|then|which|while|though|although)$/.test(wordAt(parse, k))
    )
      return k;
  }
  return line.endWord;
}

/** Words that make what comes after them wished for, supposed, denied, still to come or somebody else's. */
const NOT_DONE =
  /^(?:'ll|will|would|could|should|might|may|must|shall|gonna|gotta|wanna|nothing|none|if|unless|whether|wish|wished|want|wants|wanted|need|needs|needed|never|not|no|nor|without|nearly|almost|suppose|supposing|imagine|going|about|plan|planning|thinking|before|until|till|he|she|they|them|people|someone|somebody|[a-z]+n't)$/;
/** With "have to", "got to" the work is still to do. */
const OWED = /(?:have|has|had|got|ought|trying|try|meant|supposed) to $/;

/** Whether the words of its clause before `at` let the verb there tell of something that was done by the speaker. */
export function isReported(scene: RecordScene, line: Line, at: number): boolean {
  if (line.asks) return false;
  const from = clauseStart(scene, line, at);
  let before = '';
  for (let k = from; k < at; k++) {
    if (NOT_DONE.test(wordAt(scene.parse, k))) return false;
    before += `${wordAt(scene.parse, k)} `;
  }
  if (
    /^(?:if|unless|suppose|supposing|imagine|when|once) /.test(line.words.trimStart()) &&
    from !== line.first
  ) {
    // "If it were colder, I mixed ...": what follows from a supposition is one as well.
    if (/^(?:if|unless|suppose|supposing|imagine) /.test(line.words.trimStart())) return false;
  }
  return !OWED.test(before);
}

/** What was done another year is none of this job. */
export const LONG_AGO =
  / (?:last|previous) (?:year|summer|winter|spring|autumn|month|season|time) | (?:years|months) ago /;

/** Figures whose words lie in a span, in order of speech. */
export function figuresIn({ figures }: RecordScene, { start, end }: Span): readonly FigureNote[] {
  const found: FigureNote[] = [];
  for (let k = firstFrom(figures, ({ span }) => span.start >= start); k < figures.length; k++) {
    const figure = figures[k] as FigureNote;
    if (figure.span.start > end) break;
    if (figure.span.end <= end + 1) found.push(figure);
  }
  return found;
}
