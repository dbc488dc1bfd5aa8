import type { PromiseNote } from '../language/notes.ts';
import { answers, holdersOf } from './closing.ts';
import { describe } from './described.ts';
import { wordsOf } from './names.ts';
import type { PromiseRow } from './rows.ts';
import { stemOf } from './stems.ts';
import { EMPTY } from './telling-words.ts';
import type { Kept } from './views.ts';
import type { Working } from './working.ts';

/** "Showed Ruth the moisture meter" keeps "show Ruth how the moisture meter works": the same verb, told as past. */
function keepByDeed(work: Working, open: readonly PromiseRow[], told: string, quote: string): void {
  const words = wordsOf(told);
  const stems = new Set(words.map(stemOf));
  const kept = open.find(({ id, gist }) => {
    const [verb = '', ...rest] = wordsOf(gist);
    const stem = stemOf(verb);
    const at = words.findIndex((word) => stemOf(word) === stem);
    // A bare form is an order or a plan, and "will", "to", "need" before it look ahead.
    if (at < 0 || at > FIRST_WORDS || words[at] === verb || !isPast(words[at] as string)) return false;
    if (words.slice(0, at).some((word) => AHEAD.test(word))) return false;
    const things = [...new Set(rest.map(stemOf))].filter((one) => !EMPTY.has(one));
    const shared = things.filter((one) => stems.has(one)).length;
    return (
      shared > 0 && shared * 2 >= things.length && work.draft.openPromises().some((one) => one.id === id)
    );
  });
  if (kept) {
    const keptBy = work.source({ quote });
    work.draft.put({ table: 'promises', row: { ...kept, status: 'kept', keptBy } });
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

/** Marks promises that this memo says are kept. `earlier` are those that were open before it. */
export function keepPromises(work: Working): void {
  const open = work.draft.openPromises().filter((promise) => promise.source.memoId !== work.memo.id);
  for (const sentence of work.sentences) {
    const vow = work.memo.notes.promises.find(
      (note) => note.span.start >= sentence.start && note.span.start < sentence.end,
    );
    // "That's one promise kept, and I'll show you the next": only what comes before the new promise.
    const told = vow ? sentence.text.slice(0, vow.span.start - sentence.start) : sentence.text;
    if (!KEPT.test(told)) {
      keepByDeed(work, open, told, sentence.text);
      continue;
    }
    const deed = describe(told, told, '');
    const left = open.filter((promise) => work.draft.openPromises().some((one) => one.id === promise.id));
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
