/** Other words that the recogniser held to be nearly as likely as those that it wrote. */

/**
 * What is less likely than this, as a logarithm of odds, is no doubt: a hundred and fifty times. Weighed as well, such words
 * were hardly ever what was said.
 */
export const LEAST_ODDS = -5;

/** What heard words may be instead, by the sound. */
export interface HeardDoubt {
  /** Place in the text, in characters. */
  readonly start: number;
  readonly end: number;
  /** How sure the recogniser was of what it wrote: 0 to 1. */
  readonly chance: number;
  readonly others: readonly {
    readonly means: string;
    /** Natural logarithm of the odds of these words against those written: 0 is as likely, -3 twenty times less. */
    readonly odds: number;
    /** The same by the recogniser's own habit of talk, without the sound; absent where it was not asked. */
    readonly habit?: number;
  }[];
}

/**
 * The doubts of sentences, by their place in the text: the sentences joined by single blanks. Undefined where none of them
 * was told. Transcripts of before hold words that are less likely than a doubt: they are left out.
 */
export function doubtsInText(
  sentences: readonly { readonly text: string; readonly doubts?: readonly HeardDoubt[] }[],
): readonly HeardDoubt[] | undefined {
  if (sentences.every(({ doubts }) => doubts === undefined)) return undefined;
  let from = 0;
  return sentences.flatMap(({ text, doubts = [] }) => {
    const moved = doubts.flatMap((doubt) => {
      const others = doubt.others.filter(({ odds }) => odds >= LEAST_ODDS);
      return others.length > 0
        ? [{ ...doubt, start: doubt.start + from, end: doubt.end + from, others }]
        : [];
    });
    from += text.length + 1;
    return moved;
  });
}
