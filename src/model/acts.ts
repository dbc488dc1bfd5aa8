import type { ArrivalNote, DoneNote } from '../language/notes.ts';
import { wordsOf } from './names.ts';
import type { ActRow } from './rows.ts';
import { stemOf } from './stems.ts';
import type { Kept } from './views.ts';
import type { Working } from './working.ts';

/** Verbs of acts that a figure can hang on; the dearest one first. */
const ACTS: readonly (readonly [ActRow['act'], RegExp])[] = [
  ['ordered', /\b(?:order(?:ed)?|bought|paid for|booked|sent (?:off|away) for|gone off|on order)\b/i],
  [
    'closed-in',
    /\b(?:clos(?:ed|e) (?:in|up)|board(?:ed) (?:in|over|up)|plaster(?:ed)?|cover(?:ed)? (?:up|over)|boxed in|skimmed)\b/i,
  ],
  ['filmed', /\b(?:film(?:ed)?|shot|episode|video)\b/i],
  [
    'made',
    /\b(?:cut|cuts|made|built|rebuilt|sawn|sawed|planed|turned|milled|welded|bent|bored|drilled|routed|glued|framed|trimmed|shaped|machined|laminated|cast|forged|fitted|installed|hung|set|poured|bolted|laid|sewn|formed|rolled|folded)\b/i,
  ],
];

/** Keeps an act that figures may hang on: something ordered, made or closed in. */
export function fileAct(work: Working, note: Kept<DoneNote> | Kept<ArrivalNote>): void {
  const gist = note.kind === 'done' ? note.gist : note.item;
  const place = work.place(note.span);
  const said = `${note.quote} ${gist}`;
  const act =
    note.kind === 'arrival'
      ? note.received
        ? undefined
        : 'ordered'
      : ACTS.find(([, verbs]) => verbs.test(said))?.[0];
  if (!act) return;
  const words = [...new Set(wordsOf(`${said} ${place.clause}`).map(stemOf))].sort();
  work.draft.put({
    table: 'acts',
    row: { id: note.id, act, what: gist, words, itemIds: [], source: work.source(note) },
  });
}

/** Whether an act names the thing itself, and enough of what tells it apart. */
export function namesAtLeast(act: ActRow, head: string, stems: readonly string[], least: number): boolean {
  if (!act.words.includes(head)) return false;
  return stems.filter((stem) => act.words.includes(stem)).length >= least;
}
