import type { Span } from '../language/notes.ts';
import type { NewEvent, NotesRead, ProjectEvent, SpokenText } from './events.ts';
import type { NoteReview } from './keep-notes.ts';
import { idsOfTranscripts, keepNotes } from './keep-notes.ts';
import { nameKey } from './names.ts';
import type { ModelSettings } from './reconcile.ts';
import { reconcileMemo } from './reconcile.ts';
import type { HearingRow, MemoRow, ModelChange, ProjectRow, ProjectRows, RewordingRow } from './rows.ts';
import { changesOfHand } from './set-by-hand.ts';
import { withMore } from './with-more.ts';

/** Kinds of event that reach back into what earlier memos gave: the projections are built anew for them. */
const REACHING_BACK: ReadonlySet<ProjectEvent['kind']> = new Set([
  'note-accepted',
  'note-amended',
  'note-rejected',
  'notes-accepted',
  'words-corrected',
  'words-learned',
  'items-merged',
  'items-split',
  'transcript-chosen',
  'tolerance-set',
  'undone',
]);

/** Kinds that a person may take back. What was said and kept stays. */
const UNDOABLE: ReadonlySet<ProjectEvent['kind']> = new Set([
  'transcript-chosen',
  'note-accepted',
  'note-amended',
  'note-rejected',
  'notes-accepted',
  'words-corrected',
  'words-learned',
  'items-merged',
  'items-split',
  'figure-set',
  'formula-set',
  'limit-set',
  'task-added',
  'task-closed',
  'task-reopened',
  'task-due-set',
  'task-waits-set',
  'task-placed',
  'problem-solved',
  'problem-reopened',
  'finding-settled',
  'tolerance-set',
  'record-kept',
  'check-added',
  'check-removed',
  'device-set',
  'undone',
]);

/**
 * Whether this event changes what earlier ones gave. To agree with a note that nobody touched yet changes nothing but
 * what is known of the note: a day's forty notes are gone through without building the model forty times.
 */
export function reachesBack(rows: ProjectRows, event: ProjectEvent): boolean {
  // Learned for what is heard later: nothing that was read comes out another way.
  if (event.kind === 'words-learned') return event.reading !== undefined;
  if (event.kind === 'note-accepted') return rows.get('reviews', event.noteId) !== undefined;
  if (event.kind === 'heard-again') return rows.get('choices', event.memoId)?.version === event.version;
  if (event.kind === 'notes-accepted')
    return event.noteIds.some((id) => rows.get('reviews', id) !== undefined);
  return REACHING_BACK.has(event.kind);
}

/** What an event that does not reach back changes when it is written. */
export function changesNow(rows: ProjectRows, event: ProjectEvent): readonly ModelChange[] {
  const isFoundation =
    event.kind === 'note-accepted' || event.kind === 'notes-accepted' || event.kind === 'heard-again';
  return isFoundation ? foundations([event]) : changesOf(rows, event);
}

/** Whether undo may take this event out of the replay. */
export function isUndoable(event: Pick<NewEvent, 'kind'>): boolean {
  return UNDOABLE.has(event.kind);
}

/** Events that count: undo, and the undo of an undo, are worked out. */
export function eventsThatCount(events: readonly ProjectEvent[]): readonly ProjectEvent[] {
  const out = new Set<number>();
  for (let index = events.length - 1; index >= 0; index--) {
    const event = events[index] as ProjectEvent;
    if (event.kind === 'undone' && !out.has(event.seq)) out.add(event.undoes);
  }
  return events.filter((event) => event.kind !== 'undone' && !out.has(event.seq));
}

/**
 * Rows that must stand before the first memo is replayed: what a person said of names and notes, and which of several
 * transcripts count.
 */
export function foundations(events: readonly ProjectEvent[]): readonly ModelChange[] {
  const rows = new Map<string, ModelChange>();
  for (const event of events) {
    switch (event.kind) {
      case 'items-merged':
      case 'items-split': {
        const name = event.kind === 'items-merged' ? event.from : event.name;
        const into = event.kind === 'items-merged' ? { into: event.into } : {};
        const id = nameKey(name);
        rows.set(`name ${id}`, { table: 'names', row: { id, name, ...into } });
        break;
      }
      case 'words-learned':
        if (event.memoId !== undefined && event.reading !== undefined) {
          const row = { id: event.memoId, review: 'amended', fields: { ...event.reading } } as const;
          rows.set(`note ${event.memoId}`, { table: 'reviews', row });
        }
        break;
      case 'note-accepted':
      case 'note-amended':
      case 'note-rejected': {
        const review = event.kind.slice('note-'.length) as NoteReview['review'];
        const fields = event.kind === 'note-amended' ? { fields: event.fields } : {};
        rows.set(`note ${event.noteId}`, { table: 'reviews', row: { id: event.noteId, review, ...fields } });
        break;
      }
      case 'heard-again': {
        const { kind: _kind, seq: _seq, ...hearing } = event;
        const id = hearingId(event.memoId, event.version);
        rows.set(`hearing ${id}`, { table: 'hearings', row: { id, ...hearing } });
        break;
      }
      case 'transcript-chosen': {
        const { memoId: id, version, by } = event;
        rows.set(`choice ${id}`, { table: 'choices', row: { id, version, by } });
        break;
      }
      case 'notes-accepted':
        for (const id of event.noteIds)
          rows.set(`note ${id}`, { table: 'reviews', row: { id, review: 'accepted' } });
        break;
      case 'words-corrected': {
        const { memoId, version, text, utterances, notes, repairs } = event;
        const id = hearingId(memoId, version ?? 1);
        const more = { ...(utterances ? { utterances } : {}), ...(repairs ? { repairs } : {}) };
        const row = { id, text, ...more, notes };
        rows.set(`words ${id}`, { table: 'rewordings', row });
        // It was made on what was read again before it, and holds that.
        rows.delete(`note ${memoId}`);
        break;
      }
    }
  }
  return [...rows.values()];
}

/** Tolerances as the log leaves them: one holds for the whole project, also for what was said before it was set. */
export function tolerancesOf(events: readonly ProjectEvent[]): ProjectRow['tolerances'] {
  const tolerances: Record<string, ProjectRow['tolerances'][string]> = {};
  for (const event of events)
    if (event.kind === 'tolerance-set') tolerances[event.dimension] = event.quantity;
  return tolerances;
}

/** Takes the changes of a replay, each as soon as it is known, because later events read them. */
export interface ReplayInto {
  /** The changes that follow come from the event at this place in the log; 0 is before the first one. */
  begin(seq: number): void;
  put(change: ModelChange): void;
}

/** The whole log as changes: what reaches back first, then event by event. */
export function replay(rows: ProjectRows, events: readonly ProjectEvent[], into: ReplayInto): void {
  const counted = eventsThatCount(events);
  into.begin(0);
  for (const change of foundations(counted)) into.put(change);
  replayFrom(rows, counted, into);
}

/**
 * Events that count, on rows that hold what came before them. What was said of names and notes must stand already,
 * also where it was said later.
 */
export function replayFrom(rows: ProjectRows, counted: readonly ProjectEvent[], into: ReplayInto): void {
  const tolerances = tolerancesOf(counted);
  for (const event of counted) {
    into.begin(event.seq);
    for (const change of changesOf(rows, event, tolerances)) into.put(change);
  }
}

/** What one event changes, given the rows before it. */
export function changesOf(
  rows: ProjectRows,
  event: ProjectEvent,
  tolerances?: ProjectRow['tolerances'],
): readonly ModelChange[] {
  switch (event.kind) {
    case 'project-made': {
      const region = event.region === undefined ? {} : { region: event.region };
      const row = {
        id: 'project',
        name: event.name,
        units: event.units,
        ...region,
        madeAt: event.at,
      } as const;
      return [{ table: 'project', row: { ...row, tolerances: tolerances ?? {} } }];
    }
    case 'recording-kept': {
      const { memoId: id, recordedAt, recordedAtFrom, source, file, putRight } = event;
      const row = { id, recordedAt, recordedAtFrom, source, file, ...(putRight ? { putRight } : {}) };
      return [{ table: 'memos', row }];
    }
    case 'transcript-made':
      return withMemo(rows, event.memoId, (memo) => [
        { table: 'memos', row: heardAs(rows, memo, event.transcript) },
      ]);
    case 'notes-read':
      return withMemo(rows, event.memoId, (memo) => changesOfNotes(rows, readAs(rows, memo, event)));
    case 'device-set': {
      const { name, clock } = event;
      return [{ table: 'devices', row: { id: name.toLowerCase(), name, ...(clock ? { clock } : {}) } }];
    }
    case 'heard-again':
    case 'transcript-chosen':
    case 'note-accepted':
    case 'note-amended':
    case 'note-rejected':
    case 'notes-accepted':
    case 'words-learned':
    case 'words-corrected':
    case 'items-merged':
    case 'items-split':
    case 'tolerance-set':
    case 'undone':
      return [];
    default:
      return changesOfHand(rows, event, settingsOf(rows));
  }
}

const hearingId = (memoId: string, version: number): string => `${memoId}/${version}`;

/** The transcript that counts, where it is not the first one. */
function chosenHearing(rows: ProjectRows, memoId: string): HearingRow | undefined {
  const choice = rows.get('choices', memoId);
  return choice && rows.get('hearings', hearingId(memoId, choice.version));
}

/** The words of the transcript that counts, as a person put them right. */
const rewordingOf = (rows: ProjectRows, { id, version }: MemoRow): RewordingRow | undefined =>
  rows.get('rewordings', hearingId(id, version ?? 1));

function heardAs(rows: ProjectRows, memo: MemoRow, first: SpokenText): MemoRow {
  const chosen = chosenHearing(rows, memo.id);
  const heard = chosen
    ? { ...memo, ...chosen.transcript, version: chosen.version, first }
    : withMore(memo, first);
  const said = rewordingOf(rows, heard);
  if (!said) return heard;
  const { text, utterances } = said;
  return { ...heard, text, ...(utterances ? { utterances } : {}), isReworded: true, first };
}

function readAs(rows: ProjectRows, memo: MemoRow, event: NotesRead): MemoRow {
  const chosen = chosenHearing(rows, memo.id);
  const read = { ...(chosen ?? event), ...rewordingOf(rows, memo) };
  const { notes, repairs } = { ...read, ...readAgainOf(rows, memo) };
  const { reader } = chosen ?? event;
  const whole = withMore(memo, { notes, ...(repairs ? { repairs } : {}), reader });
  if (!chosen) return whole;
  const hearings = rows.where('hearings', 'memoId', memo.id);
  const before = hearings.filter(({ version }) => version < chosen.version);
  const transcripts = [event.notes, ...before.map((hearing) => hearing.notes), notes];
  return { ...whole, noteIds: idsOfTranscripts(memo.id, transcripts) };
}

type Reading = Pick<NotesRead, 'notes' | 'repairs' | 'reader'>;

/** A memo as it was read again when a person put its words right, where it still holds these words. */
function readAgainOf(rows: ProjectRows, { id, text = '' }: MemoRow): Reading | undefined {
  const again = rows.get('reviews', id)?.fields as Reading | undefined;
  const lists = Object.values(again?.notes ?? {}) as readonly (readonly { quote: string; span: Span }[])[];
  const isOfText = lists.flat().every(({ quote, span }) => text.slice(span.start, span.end) === quote);
  return isOfText ? again : undefined;
}

function withMemo(
  rows: ProjectRows,
  memoId: string,
  changes: (memo: MemoRow) => readonly ModelChange[],
): readonly ModelChange[] {
  const memo = rows.get('memos', memoId);
  return memo ? changes(memo) : [];
}

function changesOfNotes(rows: ProjectRows, memo: MemoRow): readonly ModelChange[] {
  const filed: ModelChange = { table: 'memos', row: memo };
  // A second reading of a memo keeps its notes and leaves the model: what was reconciled once stands.
  if (rows.get('memos', memo.id)?.notes || !memo.notes) return [filed];
  const notes = keepNotes(memo.id, memo.notes, memo.utterances, reviewsOf(rows, memo), memo.noteIds);
  const text = memo.text ?? '';
  return [
    filed,
    ...reconcileMemo(rows, { id: memo.id, recordedAt: memo.recordedAt, text, notes }, settingsOf(rows)),
  ];
}

/** What a person said of one memo's notes. */
export function reviewsOf(rows: ProjectRows, memo: MemoRow): ReadonlyMap<string, NoteReview> {
  const reviews = new Map<string, NoteReview>();
  for (const id of noteIds(memo)) {
    const row = rows.get('reviews', id);
    if (row) reviews.set(id, row);
  }
  return reviews;
}

function noteIds(memo: MemoRow): readonly string[] {
  if (!memo.notes) return [];
  const kept = keepNotes(memo.id, memo.notes, undefined, undefined, memo.noteIds);
  return Object.values(kept).flatMap((list: readonly { readonly id: string }[]) =>
    list.map((note) => note.id),
  );
}

/** The project's settings, as reconciling wants them. */
export function settingsOf(rows: ProjectRows): ModelSettings {
  const project = rows.get('project', 'project');
  return {
    units: project?.units ?? 'metric',
    ...(project?.region ? { region: project.region } : {}),
    tolerances: project?.tolerances ?? {},
  };
}
