/**
 * Splits a memo into words for the shallow parse and gives each a part of speech. A quantity becomes one word, so
 * that "a 40 amp supply" reads as determiner, quantity, noun.
 */
import { collapse, pieces, type QuantitySpan } from './pieces.ts';
import { tagOf, type Word } from './tags.ts';

export type { QuantitySpan } from './pieces.ts';
export type { Tag, Word } from './tags.ts';

/** Words after which "'s" can only be "is" or "has". */
const NO_OWNER = new Set([
  'it',
  'that',
  'there',
  'what',
  'he',
  'she',
  'who',
  'where',
  'how',
  'here',
  'this',
  'everything',
  'which',
]);

/** Settles "'s": an owner when a noun follows and the clause still has its verb to come, else "is". */
function settleGenitives(words: Word[]): void {
  words.forEach((word, k) => {
    if (word.lower !== "'s" || NO_OWNER.has(words[k - 1]?.lower ?? '')) return;
    let at = k + 1;
    while (words[at]?.tag === 'adjective') at++;
    if (words[at]?.tag !== 'noun' || !words[k - 1] || words[k - 1]?.tag !== 'noun') return;
    for (let j = at + 1; j < words.length; j++) {
      const tag = words[j]?.tag;
      if (tag === 'be' || tag === 'modal' || tag === 'verb' || tag === 'auxiliary' || tag === 'quantity') {
        words[k] = { ...word, tag: 'genitive' };
        return;
      }
      if (tag === 'comma' || tag === 'stop' || tag === 'conjunction') break;
    }
    // A noun right after the only verb of the clause: "sheep's wool" in a list, "somebody's planer".
    const opener = words[k - 2]?.tag;
    if (opener === 'preposition' || opener === 'quantity') words[k] = { ...word, tag: 'genitive' };
  });
}

/** Words said while a number is mended: "eleven eighty, no, tell a lie, eleven ninety". */
const REPAIRS = [
  ['tell', 'a', 'lie'],
  ['hang', 'on'],
  ['hold', 'on'],
  ['hold', 'up'],
  ['scratch', 'that'],
  ['make', 'that'],
  ['let', 'me', 'see'],
  ['listen', 'to', 'me'],
  ['i', 'mean'],
  ['what', 'was', 'it'],
  ['call', 'it'],
  ['if', 'that'],
  ['you', 'know'],
] as const;

function quietRepairs(words: Word[]): void {
  words.forEach((word, k) => {
    for (const repair of REPAIRS) {
      if (repair[0] !== word.lower || !repair.every((part, j) => words[k + j]?.lower === part)) continue;
      for (let j = k; j < k + repair.length; j++) words[j] = { ...(words[j] as Word), tag: 'filler' };
      const before = words[k - 1];
      if (before?.lower === 'i' && repair[0] === 'tell') words[k - 1] = { ...before, tag: 'filler' };
    }
  });
}

/** Reads the words of a text; each of `spans` (one per quantity) becomes one word with the tag `quantity`. */
export function readWords(text: string, spans: readonly QuantitySpan[]): readonly Word[] {
  const raw = collapse(pieces(text), spans);
  const words: Word[] = [];
  raw.forEach((piece, k) => {
    const tag =
      piece.quantity === undefined
        ? tagOf(piece.lower, words.at(-1), raw[k + 1], raw[k + 2])
        : ('quantity' as const);
    words.push(
      piece.quantity === undefined
        ? { lower: piece.lower, span: piece.span, tag }
        : { lower: piece.lower, span: piece.span, tag, quantity: piece.quantity },
    );
  });
  settleGenitives(words);
  quietRepairs(words);
  return words;
}
