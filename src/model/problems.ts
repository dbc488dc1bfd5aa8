/** Snags: kept open until something done answers them, or a person says that they are put right. */
import type { ProblemNote } from '../language/notes.ts';
import { actionsOf } from './actions.ts';
import { wordsOf } from './names.ts';
import { stemOf } from './stems.ts';
import { areRivalWords, EMPTY } from './telling-words.ts';
import type { Kept } from './views.ts';
import type { Working } from './working.ts';

export function openProblem(work: Working, note: Kept<ProblemNote>): void {
  const { id, gist, cause } = note;
  const source = work.source(note);
  const row = { id, gist, ...(cause === undefined ? {} : { cause }), source, status: 'open' } as const;
  work.draft.put({ table: 'problems', row });
}

/** Ways of doing that put something right. */
const REMEDIES = ['mend', 'swap', 'join'];
/** Said of what is right again, or of what was wrong and is gone. */
const RIGHT_AGAIN =
  /\b(?:fixed|sorted|solved|cured|mended|repaired|replaced|freed|unblocked|unstuck|cleared|sealed|straightened|tightened|re-?done|re-?made|re-?bedded|re-?sealed|re-?wired|re-?laid|plugged|patched|stopped|gone|dry|tight|straight|square|right again|works|working|runs|holds|found it|new ones?)\b/i;

/** Marks the snags of earlier memos that something done in this one puts right: it names them and says a remedy. */
export function solveProblems(work: Working): void {
  const { done } = work.memo.notes;
  if (done.length === 0) return;
  const open = work.draft.openProblems().filter((problem) => problem.source.memoId !== work.memo.id);
  for (const note of done) {
    const said = `${note.gist} ${note.quote}`;
    const deed = telling(said);
    if (!RIGHT_AGAIN.test(said) && !REMEDIES.some((way) => deed.ways.has(way))) continue;
    const named = open
      .filter((problem) => isNamed(deed, telling(`${problem.gist} ${problem.source.quote}`)))
      .findLast((problem) => work.draft.openProblems().some((one) => one.id === problem.id));
    if (!named) continue;
    const row = { ...named, status: 'solved', solvedById: note.id, solvedBy: work.source(note) } as const;
    work.draft.put({ table: 'problems', row });
  }
}

interface Telling {
  readonly plain: ReadonlySet<string>;
  readonly things: ReadonlySet<string>;
  readonly ways: ReadonlySet<string>;
}

function telling(text: string): Telling {
  const plain = wordsOf(text);
  const stems = plain.map(stemOf).filter((stem) => !EMPTY.has(stem));
  return {
    plain: new Set(plain),
    things: new Set(stems.filter((stem) => actionsOf(stem).size === 0)),
    ways: new Set(stems.flatMap((stem) => [...actionsOf(stem)])),
  };
}

/** The deed names two things of the snag, or the only one that the deed has. */
function isNamed(deed: Telling, problem: Telling): boolean {
  if (areRivalWords(deed.plain, problem.plain)) return false;
  const shared = [...deed.things].filter((stem) => problem.things.has(stem)).length;
  return shared >= 2 || (shared === 1 && shared * 2 >= deed.things.size);
}
