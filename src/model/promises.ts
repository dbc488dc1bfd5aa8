import type { PromiseNote } from '../language/notes.ts';
import { answers, holdersOf } from './closing.ts';
import { describe } from './described.ts';
import { wordsOf } from './names.ts';
import type { PromiseRow } from './rows.ts';
import { stemOf } from './stems.ts';
import { EMPTY } from './telling-words.ts';
import type { Kept } from './views.ts';
import type { Working } from './working.ts';

interface Vow {
  readonly promise: PromiseRow;
  readonly verb: string;
  readonly things: readonly string[];
}

const vows = new WeakMap<PromiseRow, Vow>();

function vowOf(promise: PromiseRow): Vow {
  const known = vows.get(promise);
  if (known) return known;
  const [verb = '', ...rest] = wordsOf(promise.gist);
  const things = [...new Set(rest.map(stemOf))].filter((stem) => !EMPTY.has(stem));
  const vow = { promise, verb: stemOf(verb), things };
  vows.set(promise, vow);
  return vow;
}

/** The open promises by the verb of what was promised: a sentence is held only against those of its own verb. */
function byVerb(open: readonly PromiseRow[]): ReadonlyMap<string, readonly Vow[]> {
  const known = verbs.get(open);
  if (known) return known;
  const found = new Map<string, Vow[]>();
  for (const vow of open.map(vowOf)) {
    const same = found.get(vow.verb);
    if (same) same.push(vow);
    else found.set(vow.verb, [vow]);
  }
  verbs.set(open, found);
  return found;
}
/** Promises stay open over hundreds of memos: while none is made or kept, the list that memory holds is the same one. */
const verbs = new WeakMap<readonly PromiseRow[], ReadonlyMap<string, readonly Vow[]>>();

/** "Showed Ruth the moisture meter" keeps "show Ruth how the moisture meter works": the same verb, told as past. */
function keepByDeed(
  work: Working,
  vowed: ReadonlyMap<string, readonly Vow[]>,
  told: string,
  quote: string,
): void {
  const words = wordsOf(told);
  let stems: ReadonlySet<string> | undefined;
  for (let at = 0; at <= FIRST_WORDS && at < words.length; at++) {
    const word = words[at] as string;
    // "Will", "to", "need" look ahead, and so does all behind them.
    if (AHEAD.test(word)) return;
    const verb = stemOf(word);
    // A bare form is an order or a plan.
    const meant = (vowed.get(verb) ?? []).filter(
      ({ promise }) => isEarlier(work, promise) && wordsOf(promise.gist)[0] !== word && isPast(word),
    );
    if (meant.length === 0) continue;
    stems ??= new Set(words.map(stemOf));
    const said = stems;
    const kept = meant.find(({ promise, things }) => {
      const shared = things.filter((stem) => said.has(stem)).length;
      const isMost = shared > 0 && shared * 2 >= things.length;
      return isMost && work.draft.openPromises().some((one) => one.id === promise.id);
    });
    if (!kept) continue;
    const keptBy = work.source({ quote });
    work.draft.put({ table: 'promises', row: { ...kept.promise, status: 'kept', keptBy } });
    return;
  }
}
/** How far into its sentence the verb of a deed may stand. */
const FIRST_WORDS = 4;
const isPast = (word: string) => !/(?:ing|s)$/.test(word);
const AHEAD =
  /^(?:will|would|should|need|needs|must|to|can|could|might|may|not|never|haven't|didn't|going|gonna|gotta|ll|if|once|when)$/;

export function openPromise(work: Working, note: Kept<PromiseNote>): void {
  const due = note.due === undefined ? {} : { due: note.due };
  const row = { id: note.id, gist: note.gist, ...due, source: work.source(note), status: 'open' } as const;
  work.draft.put({ table: 'promises', row });
}

/** Words that say that something promised has been shown. */
const KEPT =
  /\b(?:as promised|like i promised|i promised|promised you|is up|went up|goes up|'s up|have (?:all )?seen|you've (?:all )?seen|out now|posted|published|uploaded|here (?:it|they) (?:is|are)|half edited|edited|(?:did|have) show(?:n|ed)? you|showed you|promises? kept|kept (?:that|my|the) (?:promise|word))\b/i;
/** A promise is answered by less than a task is: the words of a film are few. */
const KEEPS = 0.5;

const isEarlier = (work: Working, { source }: PromiseRow): boolean => source.memoId !== work.memo.id;

/** Marks promises that this memo says are kept. `earlier` are those that were open before it. */
export function keepPromises(work: Working): void {
  const all = work.draft.openPromises();
  if (all.length === 0) return;
  const vowed = byVerb(all);
  for (const sentence of work.sentences) {
    const vow = work.memo.notes.promises.find(
      (note) => note.span.start >= sentence.start && note.span.start < sentence.end,
    );
    // "That's one promise kept, and I'll show you the next": only what comes before the new promise.
    const told = vow ? sentence.text.slice(0, vow.span.start - sentence.start) : sentence.text;
    if (!KEPT.test(told)) {
      keepByDeed(work, vowed, told, sentence.text);
      continue;
    }
    const deed = describe(told, told, '');
    const left = work.draft.openPromises().filter((promise) => isEarlier(work, promise));
    const described = left.map((promise) => describe(promise.gist, promise.source.quote, ''));
    const holders = holdersOf(described);
    const scores = described.map((promise) => answers(deed, promise, holders));
    const best = scores.indexOf(Math.max(...scores, KEEPS));
    const kept = left[best];
    if (!kept) continue;
    const keptBy = work.source({ quote: sentence.text });
    work.draft.put({ table: 'promises', row: { ...kept, status: 'kept', keptBy } });
  }
}
