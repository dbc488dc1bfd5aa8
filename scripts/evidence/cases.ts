/** Clauses with the features that stand in them and whether each kind is stated there. */
import { featureNumber, features, PLACES } from '../../src/language/statements/evidence/features.ts';
import { KINDS, type Kind } from '../../src/language/statements/evidence/kinds.ts';
import { isBlank } from '../../src/language/statements/evidence/word-scores.ts';
import type { Said } from '../../src/language/statements/words.ts';
import type { Mark, MarkedMemo } from './marked.ts';

export const NO = 0;
export const YES = 1;
/** Not known, or told in the clause beside it: teaches nothing. */
export const OPEN = 2;

export interface ClauseCase {
  readonly memo: number;
  readonly clause: number;
  readonly source: string;
  readonly features: Int32Array;
  /** By kind: NO, YES or OPEN. */
  readonly labels: Uint8Array;
}

export const overlap = (a: Mark, b: Mark) => Math.min(a.end, b.end) - Math.max(a.start, b.start);

/** The clauses that a mark covers, the one that holds most of it first. */
export function clausesOf(mark: Mark, said: readonly Said[]): readonly Said[] {
  return said
    .filter(
      (clause) => overlap(mark, clause) >= 0.5 * Math.min(mark.end - mark.start, clause.end - clause.start),
    )
    .sort((a, b) => overlap(mark, b) - overlap(mark, a) || a.index - b.index);
}

/** Stands in our own sentences alone: most of them state something, and that tells nothing of talk. */
export const OWN_SENTENCE = 1;
const FRAME: ReadonlySet<number> = new Set([PLACES.indexOf('earlier'), PLACES.indexOf('later')]);

/** Every clause of the memos. */
export function casesOf(memos: readonly MarkedMemo[]): ClauseCase[] {
  return memos.flatMap((memo, m) => {
    const { said } = memo.scene;
    const labels = said.map(() => new Uint8Array(KINDS.length).fill(OPEN));
    KINDS.forEach((kind: Kind, k) => {
      const marks = memo.marks[kind];
      if (!marks) return;
      for (const row of labels) row[k] = NO;
      const covered = marks.map((mark) => clausesOf(mark, said));
      for (const clauses of covered) for (const { index } of clauses) (labels[index] as Uint8Array)[k] = OPEN;
      for (const [best] of covered) if (best) (labels[best.index] as Uint8Array)[k] = YES;
    });
    return said
      .filter((clause) => !isBlank(clause))
      .map((clause) => {
        const numbers: number[] = [];
        if (memo.isSentence) numbers.push(OWN_SENTENCE);
        features(clause, memo.scene, (place, a, b, c) => {
          // The same frame stands about all of our own sentences.
          if (memo.isSentence && FRAME.has(place)) return;
          numbers.push(featureNumber(place, a, b, c));
        });
        return {
          memo: m,
          clause: clause.index,
          source: memo.source,
          features: Int32Array.from(numbers),
          labels: labels[clause.index] as Uint8Array,
        };
      });
  });
}
