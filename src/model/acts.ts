import type { ArrivalNote, DoneNote } from '../language/notes.ts';
import { floorMeant, isLayerWork, LAYER_MARK } from './checks/layer-words.ts';
import type { Filed } from './formulas.ts';
import { wordsOf } from './names.ts';
import type { ActRow } from './rows.ts';
import { stemOf } from './stems.ts';
import type { Kept } from './views.ts';
import type { Working } from './working.ts';

const ORDERED = /\b(?:order(?:ed)?|bought|paid for|booked|sent (?:off|away) for|gone off|on order)\b/i;

/** Verbs of acts that a figure can hang on; the dearest one first. */
const ACTS: readonly (readonly [ActRow['act'], RegExp])[] = [
  ['ordered', ORDERED],
  [
    'closed-in',
    /\b(?:clos(?:ed|e) (?:in|up)|board(?:ed) (?:in|over|up)|plaster(?:ed)?|cover(?:ed)? (?:up|over)|boxed in|skimmed)\b/i,
  ],
  ['filmed', /\b(?:film(?:ed)?|shot|episode|video)\b/i],
  [
    'made',
    /\b(?:re-?)?(?:cut|cuts|made|built|sawn|sawed|planed|turned|milled|welded|bent|bored|drilled|routed|glued|framed|trimmed|shaped|machined|laminated|cast|forged|fitted|installed|hung|set|poured|bolted|laid|sewn|formed|rolled|folded)\b/i,
  ],
];

/** An act that points at sizes said just before it: "ordered the glass to those sizes", "cut the lining to suit". */
const TO_SIZES =
  /\b(?:to|at|off|from) (?:that|those|these|this|the same|them)(?: (?:size|sizes|figures?|dimensions?|measurements?|numbers?|height|width|length))?\b|\bto (?:suit|match|fit)\b|\baccordingly\b/i;

/** Stems of what was measured in this sentence and the one before, for an act that points at it. */
function pointedAt(work: Working, index: number, filed: readonly Filed[]): readonly string[] {
  return filed
    .filter(({ note }) => index - work.sentenceOf(note.span) <= 1)
    .flatMap(({ claim, note }) =>
      wordsOf(`${note.item} ${work.draft.item(claim.itemId)?.name ?? ''}`).map(stemOf),
    );
}

/** "Drilled it at 32 because that was the hole saw I had": what stands in the reason was not worked on. */
const withoutReason = (clause: string) =>
  clause.replace(/\b(?:because|'?cause|cos|since|so that|as)\b.*$/i, '');

/**
 * Keeps an act that figures may hang on: something ordered, made or closed in. `filed` are the memo's figures said
 * before it.
 */
export function fileAct(
  work: Working,
  note: Kept<DoneNote> | Kept<ArrivalNote>,
  filed: readonly Filed[] = [],
): void {
  const gist = note.kind === 'done' ? note.gist : note.item;
  const place = work.place(note.span);
  const said = `${withoutReason(note.quote)} ${withoutReason(gist)}`;
  const isLayer = isLayerWork(said);
  const act =
    note.kind === 'arrival'
      ? note.received
        ? undefined
        : 'ordered'
      : (ACTS.find(([, verbs]) => verbs.test(said))?.[0] ?? (isLayer ? 'layered' : undefined));
  if (!act || (note.kind === 'arrival' && isToldAsWork(work, note))) return;
  const own = wordsOf(`${said} ${withoutReason(place.clause)}`).map(stemOf);
  const pointed = TO_SIZES.test(`${said} ${place.clause}`) ? pointedAt(work, place.index, filed) : [];
  const mark =
    isLayer && act !== 'ordered' && act !== 'filmed' ? [LAYER_MARK, ...floorMeant(note.quote)] : [];
  const words = [...new Set([...own, ...pointed, ...mark])].sort();
  work.draft.put({
    table: 'acts',
    row: { id: note.id, act, what: gist, words, itemIds: [], source: work.source(note) },
  });
}

/** "I ordered the top from the sawmill" is work done and goods to come: one act. */
const isToldAsWork = (work: Working, { span }: Kept<ArrivalNote>): boolean =>
  work.memo.notes.done.some(
    (deed) => ORDERED.test(deed.quote) && deed.span.start < span.end && deed.span.end > span.start,
  );

/** Whether an act names the thing itself, and enough of what tells it apart. */
export function namesAtLeast(act: ActRow, head: string, stems: readonly string[], least: number): boolean {
  if (!act.words.includes(head)) return false;
  return stems.filter((stem) => act.words.includes(stem)).length >= least;
}
