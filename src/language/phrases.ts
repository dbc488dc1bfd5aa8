import type { Token } from './tokens.ts';

/** A phrase found in the tokens, `to` exclusive. */
export interface PhraseHit<T> {
  readonly from: number;
  readonly to: number;
  readonly meaning: T;
}

interface Entry<T> {
  readonly words: readonly string[];
  readonly meaning: T;
}

/**
 * A table of phrases, looked up by their first or last word; the longest phrase wins. Phrases are written as
 * tokens with spaces between them: "n't" never stands alone, "it 's" does.
 */
export class PhraseTable<T> {
  readonly #first = new Map<string, Entry<T>[]>();
  readonly #last = new Map<string, Entry<T>[]>();

  constructor(phrases: Iterable<readonly [string, T]>) {
    for (const [text, meaning] of phrases) {
      const words = text.split(' ');
      const entry = { words, meaning };
      for (const [index, word] of [
        [this.#first, words[0]],
        [this.#last, words[words.length - 1]],
      ] as const) {
        if (word === undefined) continue;
        const list = index.get(word) ?? [];
        list.push(entry);
        list.sort((a, b) => b.words.length - a.words.length);
        index.set(word, list);
      }
    }
  }

  /** The longest phrase that starts at token `at`. */
  startingAt(tokens: readonly Token[], at: number): PhraseHit<T> | undefined {
    const word = tokens[at]?.word;
    if (word === undefined) return undefined;
    for (const { words, meaning } of this.#first.get(word) ?? []) {
      if (words.every((expected, k) => tokens[at + k]?.word === expected)) {
        return { from: at, to: at + words.length, meaning };
      }
    }
    return undefined;
  }

  /** The longest phrase whose last token is the one before `end`. */
  endingAt(tokens: readonly Token[], end: number): PhraseHit<T> | undefined {
    const word = tokens[end - 1]?.word;
    if (word === undefined) return undefined;
    for (const { words, meaning } of this.#last.get(word) ?? []) {
      const from = end - words.length;
      if (from >= 0 && words.every((expected, k) => tokens[from + k]?.word === expected)) {
        return { from, to: end, meaning };
      }
    }
    return undefined;
  }
}

/** One meaning for many phrases: `each('about', 'roughly, about')`. */
export function each<T>(meaning: T, list: string): (readonly [string, T])[] {
  return list.split(',').map((phrase) => [phrase.trim(), meaning] as const);
}

const FILLERS = new PhraseTable<true>(
  each(
    true,
    "er, erm, um, uh, ah, ooh, oh, eh, like, well, what, you know, i think, i reckon, let me see, lemme see, let ’s see, let 's see, hang on, hold on",
  ),
);

/** Index before which only hesitation stands: walks back over "er", "um", "what" and the commas round them. */
export function backOverFillers(tokens: readonly Token[], end: number): number {
  let at = end;
  for (let steps = 0; steps < 6; steps++) {
    const hit = FILLERS.endingAt(tokens, at);
    const comma =
      tokens[at - 1]?.word === ',' && (hit !== undefined || steps > 0 || FILLERS.endingAt(tokens, at - 1));
    if (hit) at = hit.from;
    else if (comma && (FILLERS.endingAt(tokens, at - 1) || steps > 0)) at -= 1;
    else break;
  }
  return at;
}

/** Index after hesitation: walks on over "er", "um" and the commas round them. */
export function onOverFillers(tokens: readonly Token[], start: number): number {
  let at = start;
  for (let steps = 0; steps < 6; steps++) {
    const comma = tokens[at]?.word === ',' ? 1 : 0;
    const hit = FILLERS.startingAt(tokens, at + comma);
    if (!hit) break;
    at = tokens[hit.to]?.word === ',' ? hit.to + 1 : hit.to;
  }
  return at;
}
