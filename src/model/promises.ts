import type { ArrivalNote, PromiseNote } from '../language/notes.ts';
import { answers, holdersOf } from './closing.ts';
import { describe } from './described.ts';
import { kinship, wordsOf } from './names.ts';
import { stemOf } from './stems.ts';
import type { Kept } from './views.ts';
import type { Working } from './working.ts';

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
    if (!KEPT.test(told)) continue;
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

/** Files an arrival: what came meets what was expected, and what is expected is expected once. */
export function fileArrival(work: Working, note: Kept<ArrivalNote>): void {
  const item = note.item.replace(/\s*\(arrived\)\s*$/, '');
  const expected = work.draft.expectedArrivals().find((arrival) => isSameGoods(item, arrival.item));
  const source = work.source(note);
  const due = note.expected === undefined ? {} : { expected: note.expected };
  if (note.received && expected) {
    work.draft.put({ table: 'arrivals', row: { ...expected, status: 'received', receivedBy: source } });
    return;
  }
  if (!note.received && expected) {
    // "Coming tomorrow" of something expected already: only the date is new.
    work.draft.put({ table: 'arrivals', row: { ...expected, ...due } });
    return;
  }
  const status = note.received
    ? ({ status: 'received', receivedBy: source } as const)
    : ({ status: 'expected' } as const);
  work.draft.put({ table: 'arrivals', row: { id: note.id, item, ...due, source, ...status } });
}

/** Whether two names of goods mean the same ones. */
export function isSameGoods(a: string, b: string): boolean {
  const kin = kinship(a, b);
  if (kin === 'same' || kin === 'shorter' || kin === 'longer' || kin === 'sort') return true;
  const [left, right] = [a, b].map((name) => new Set(wordsOf(name).map(stemOf))) as [
    Set<string>,
    Set<string>,
  ];
  const shared = [...left].filter((stem) => right.has(stem)).length;
  return shared > 0 && shared * 2 > Math.min(left.size, right.size);
}
