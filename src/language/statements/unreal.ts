import { matches, phrase } from './phrase.ts';
import type { Said } from './words.ts';

/** What would be, could have been or is supposed: "If I'd built it eight feet long I'd be done by now". */
const SUPPOSED = phrase(
  "(?: would have | could have | might have | should have | would 've | could 've | might 've | should 've | 'd have | 'd 've | i 'd be | i could (?! not | finish ) | i wish | i might | we could !not | we might | pretend | imagine | suppose | supposing | kidding )",
);
/** Words with which a speaker takes a thing out of the notes again. */
const STRUCK = phrase(
  '(?: not a build task | do not write that down | do not note that | off the record | not a job | strike that | forget i said )',
);

/**
 * Numbers of the clauses that only suppose, ask or are struck out by the speaker. A clause after "if" shares its
 * fate with the clause that follows from it.
 */
export function findUnreal(said: readonly Said[]): ReadonlySet<number> {
  const unreal = new Set<number>();
  for (const clause of said) {
    const ifs = /\b(?:if|whether|unless)\b/.test(clause.opener) && !/\bunless\b/.test(clause.opener);
    if (ifs) {
      unreal.add(clause.index);
      const next = said[clause.index + 1];
      // "if I dig through the line we're done, so first ...": "so" starts from the real world again.
      if (next?.sentence === clause.sentence && !/\b(?:so|and|but)\b/.test(next.opener))
        unreal.add(next.index);
    }
    if (matches(SUPPOSED, clause)) unreal.add(clause.index);
    if (matches(STRUCK, clause)) {
      for (const other of sentenceAround(said, clause.index)) unreal.add(other.index);
    }
  }
  return unreal;
}

/** The clauses of one sentence: those beside a clause, and no look through the whole memo for each. */
function sentenceAround(said: readonly Said[], at: number): readonly Said[] {
  const isSame = (k: number) => said[k] !== undefined && said[k]?.sentence === said[at]?.sentence;
  let from = at;
  while (isSame(from - 1)) from--;
  let to = at + 1;
  while (isSame(to)) to++;
  return said.slice(from, to);
}
