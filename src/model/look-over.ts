/**
 * What was made or ordered to a figure that holds no more is a task, "look over: cut the board (to 615 mm, now 650 mm)",
 * until a person closes it or talk tells that the part was looked over or done anew. Other work on it ends no such task.
 */
import type { ArrivalNote, DoneNote, Quantity } from '../language/notes.ts';
import { patternText } from '../pattern-text.ts';
import { actsOn } from './finding.ts';
import { nameStems, shapeOf, wordsOf } from './names.ts';
import { tellingStems } from './open-tasks.ts';
import { quantityText } from './quantity-words.ts';
import type { FindingRow, TaskRow } from './rows.ts';
import { stemOf } from './stems.ts';
import { difference } from './units.ts';
import type { Consequence, Kept } from './views.ts';
import type { Working } from './working.ts';

/** Findings in which one figure gave way to another. */
const GIVES_WAY: ReadonlySet<FindingRow['kind']> = new Set(['decided', 'remeasured', 'slip']);
const TO_A_FIGURE: ReadonlySet<Consequence['act']> = new Set(['made', 'ordered']);

/** Somebody went and saw to it. */
const SEEN_TO =
  /\bre-?(?:cut|made|make|making|built|did|done|drilled|bored|turned|milled|welded|sawn|planed|ordered|fitted|glued|laminated|measured|checked|trimmed|sized|sent)\b|\b(?:again|anew|afresh|over again|from scratch|trimmed|shortened|lengthened|widened|packed out|replaced|scrapped|binned|returned|cancelled|sent back|swapped|exchanged|changed the order)\b|\b(?:cut|made|sawed|sawn|bought|ordered|built|turned|fitted|milled) (?:up |out )?(?:me |us )?(?:a|an|the|another|two|three|four|some)? ?(?:new|fresh|another|replacement|second)\b|\b(?:looked|gone|went|been) (?:it |them |that |the \S+ (?:\S+ )?)?over\b|\b(?:checked|inspected|had a look at|tried|offered up)\b/i;
/** In units of the figure: no tool shows less. */
const SAME = 1e-9;

/** The figure that a settled finding leaves in place of the older one; none where the older one goes on holding. */
function nowHolds(
  { was, now }: FindingRow,
  choice: string,
  value: Quantity | undefined,
): Quantity | undefined {
  const holds = choice === 'take-new' ? now : choice === 'correct' ? value : undefined;
  const apart = holds && difference(holds, was);
  return holds && (apart === undefined || Math.abs(apart) > SAME)
    ? { value: holds.value, unit: holds.unit }
    : undefined;
}

interface Settled {
  readonly choice: string;
  /** The right value, where neither side was it. */
  readonly value?: Quantity;
  readonly reason?: string;
}

/**
 * Opens a task for each part that hangs on the figure that gave way. What was told as seen to since, or is in the reason,
 * opens none. Settled anew, the finding takes the tasks of its earlier settling with it.
 */
export function lookOver(work: Working, finding: FindingRow, settled: Settled): void {
  takeBack(work, finding.id);
  const holds = GIVES_WAY.has(finding.kind) && nowHolds(finding, settled.choice, settled.value);
  if (!holds || SEEN_TO.test(settled.reason ?? '')) return;
  const all = finding.consequences.filter(
    (part) => TO_A_FIGURE.has(part.act) && !hasOwnSize(work, part, finding.was),
  );
  const seenTo = seenToSince(work, finding, all);
  const parts = all.filter((part) => !seenTo.has(part));
  for (const [index, part] of parts.entries()) {
    const gist = gistOf(part, finding.was, holds);
    const row: TaskRow = {
      id: parts.length === 1 ? work.memo.id : `${work.memo.id}.t${index + 1}`,
      gist,
      quote: gist,
      around: finding.item,
      waitsFor: [],
      looksOver: { findingId: finding.id, item: finding.item, holds },
      source: { memoId: work.memo.id, recordedAt: work.memo.recordedAt, quote: '' },
      status: 'open',
    };
    work.draft.put({ table: 'tasks', row });
  }
}

/** "Cut the bunk slats to 710" hangs on that, and not on how long the bunk was. */
function hasOwnSize(work: Working, { what, source }: Consequence, was: Quantity): boolean {
  const told = work.draft
    .itemsSharing(wordsOf(what).map(stemOf))
    .flatMap(({ id }) => work.draft.claimsOf(id))
    .filter((claim) => claim.memoId === source?.memoId && what.includes(claim.source.quote));
  const apart = told.flatMap((claim) => difference(claim, was) ?? []);
  return apart.length > 0 && apart.every((by) => Math.abs(by) > SAME);
}

/** The older figure is told where the words of the part do not hold it. */
function gistOf({ what }: Consequence, was: Quantity, holds: Quantity): string {
  const words = what.replace(/^\p{Lu}(?=\p{Ll})/u, (first) => first.toLowerCase());
  const isTold = new RegExp(`(?<![\\d.])${patternText(String(was.value))}(?![\\d.]\\d)`).test(words);
  return `look over: ${words} (${isTold ? '' : `to ${quantityText(was)}, `}now ${quantityText(holds)})`;
}

function takeBack(work: Working, findingId: string): void {
  for (const task of work.draft.openTasks()) {
    if (task.looksOver?.findingId !== findingId) continue;
    const closedBy = { memoId: work.memo.id, recordedAt: work.memo.recordedAt, quote: '' };
    work.draft.put({
      table: 'tasks',
      row: { ...task, status: 'done', closedById: work.memo.id, closedBy },
    });
  }
}

/** Parts that were told as done anew between the finding and its settling. */
function seenToSince(
  work: Working,
  { item, foundAt }: FindingRow,
  parts: readonly Consequence[],
): ReadonlySet<Consequence> {
  const since = actsOn(work.draft, item).filter(
    ({ source, what }) =>
      Date.parse(source.recordedAt) > Date.parse(foundAt) && SEEN_TO.test(`${what} ${source.quote}`),
  );
  return new Set(since.flatMap(({ words }) => meant(parts, words, ({ what }) => [what, item])));
}

/** Closes the tasks of looking over whose part a memo tells of as looked over, done anew, or made to what holds now. */
export function closeLookedOver(
  work: Working,
  notes: readonly (Kept<DoneNote> | Kept<ArrivalNote>)[],
): readonly TaskRow[] {
  return notes.flatMap((note) => {
    const place = work.place(note.span);
    const stems = wordsOf(`${note.quote} ${place.sentence}`).map(stemOf);
    const named = work.draft
      .openTasksSharing(stems)
      .filter(({ looksOver }) => looksOver && names(stems, looksOver.item));
    return meant(named, stems, ({ gist, looksOver }) => [gist, looksOver?.item ?? ''])
      .filter((task) => SEEN_TO.test(`${note.quote} ${place.clause}`) || isToNew(work, note, task))
      .map((task): TaskRow => {
        const row: TaskRow = { ...task, status: 'done', closedById: note.id, closedBy: work.source(note) };
        work.draft.put({ table: 'tasks', row });
        work.draft.put({ table: 'closings', row: { id: note.id, taskId: task.id } });
        return row;
      });
  });
}

/** Of several parts of one thing those that the words tell apart: "the glass for the hearth" is not its board. */
function meant<P>(
  parts: readonly P[],
  stems: readonly string[],
  of: (part: P) => readonly [words: string, item: string],
): readonly P[] {
  const shared = parts.map((part) => {
    const [words, item] = of(part);
    const ofItem = new Set(nameStems(item));
    return tellingStems(words).filter((stem) => !ofItem.has(stem) && stems.includes(stem)).length;
  });
  const most = Math.max(...shared);
  return parts.filter((_, index) => shared[index] === most);
}

/** Its last word, and half of what tells it apart: as for the acts that hang on a figure. */
function names(stems: readonly string[], item: string): boolean {
  const shape = shapeOf(item);
  if (!stems.includes(shape.head)) return false;
  const own = nameStems(item).filter((stem) => stems.includes(stem));
  return own.length >= Math.ceil(nameStems(item).length / 2);
}

/** "Cut the board at 650": told with the figure that holds now. */
function isToNew(work: Working, note: Kept<DoneNote> | Kept<ArrivalNote>, { looksOver }: TaskRow): boolean {
  const { index } = work.place(note.span);
  return work.memo.notes.figures.some((figure) => {
    if (!looksOver || work.place(figure.span).index !== index) return false;
    const apart = difference(figure, looksOver.holds, work.settings.region);
    return apart !== undefined && Math.abs(apart) <= SAME;
  });
}
