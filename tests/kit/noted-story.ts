/**
 * A project that is given its notes outright, as if they had been read: for the borders of a rule, where talk could not say
 * a value to the last place, or would say more than is looked at.
 */
import type { DeliveryNote, DeliverySize, FigureNote, MemoNotes, Note } from '../../src/language/notes.ts';
import { NO_NOTES } from '../../src/language/notes.ts';
import type { NOTE_LETTERS } from '../../src/model/keep-notes.ts';
import { MemoryProject } from '../../src/model/memory.ts';
import { findingViews } from '../../src/model/project-views.ts';
import type { FindingView } from '../../src/model/views.ts';
import { AT, type ByHand } from './told-story.ts';

type Untold<N> = N extends Note ? Omit<N, 'quote' | 'span'> & { readonly quote?: string } : never;
/** A note; its words are the whole memo's where none are given. */
export type NoteToTell = Untold<Note>;

const LIST_OF = {
  figure: 'figures',
  decision: 'decisions',
  task: 'tasks',
  done: 'done',
  arrival: 'arrivals',
  problem: 'problems',
  promise: 'promises',
  correction: 'corrections',
} as const satisfies Partial<Record<Note['kind'], keyof typeof NOTE_LETTERS>>;

const listOf = (kind: Note['kind']): keyof MemoNotes => LIST_OF[kind as keyof typeof LIST_OF] ?? 'records';

function notesIn(text: string, told: readonly NoteToTell[]): MemoNotes {
  const lists: Record<string, unknown[]> = {};
  for (const note of told) {
    const quote = note.quote ?? text;
    const start = text.indexOf(quote);
    if (start < 0) throw new Error(`"${quote}" is not said in "${text}"`);
    const list = listOf(note.kind);
    lists[list] = [...(lists[list] ?? []), { ...note, quote, span: { start, end: start + quote.length } }];
  }
  return { ...NO_NOTES, ...lists } as MemoNotes;
}

export class NotedStory {
  readonly project = new MemoryProject();
  #days = 0;

  constructor() {
    this.hand({ kind: 'project-made', name: 'Shed', units: 'metric', region: 'GB' });
  }

  /** One memo with its notes, on the day after the one before it: `m1`, `m2`. */
  memo(text: string, ...told: readonly NoteToTell[]): this {
    this.#days++;
    const memoId = `m${this.#days}`;
    const recordedAt = `2026-02-${String(this.#days).padStart(2, '0')}T17:00:00+01:00`;
    const source = { name: `${memoId}.txt`, kind: 'text', sha256: memoId, bytes: text.length } as const;
    return this.hand(
      { kind: 'recording-kept', memoId, source, file: 'x', recordedAt, recordedAtFrom: 'given' },
      { kind: 'transcript-made', memoId, transcript: { text } },
      { kind: 'notes-read', memoId, notes: notesIn(text, told), reader: 'test' },
    );
  }

  hand(...events: readonly ByHand[]): this {
    this.project.append(events.map((event) => ({ ...event, at: AT })));
    return this;
  }

  /** `received larch boards count 8 1 -> 6 1: 8 were ordered and 6 came (open)`, in the order in which they were found. */
  findings(kind?: FindingView['kind']): readonly string[] {
    return findingViews(this.project.rows)
      .filter((one) => kind === undefined || one.kind === kind)
      .sort((a, b) => (a.id < b.id ? -1 : 1))
      .map((one) => {
        const { item, attribute, was, now, why, status, settledBy } = one;
        const end = settledBy ? `${status}: ${settledBy.choice}, ${settledBy.reason ?? ''}` : status;
        return `${one.kind} ${item} ${attribute} ${was.value} ${was.unit} -> ${now.value} ${now.unit}: ${why} (${end})`;
      });
  }
}

/** A length of a thing, exact, unless more is told. */
export const figure = (
  item: string,
  attribute: FigureNote['attribute'],
  value: number,
  more: Partial<FigureNote> = {},
): NoteToTell => ({
  kind: 'figure',
  item,
  attribute,
  dimension: 'length',
  bound: 'exact',
  value,
  unit: 'mm',
  ...more,
});

type More = Partial<Omit<DeliveryNote, 'kind' | 'act' | 'item'>>;
const delivery =
  (act: DeliveryNote['act']) =>
  (item: string, more: More = {}): NoteToTell => ({ kind: 'delivery', act, item, sizes: [], ...more });

export const ordered = delivery('ordered');
export const came = delivery('received');

/** A size of goods in millimetres. */
export const size = (
  attribute: DeliverySize['attribute'],
  value: number,
  more: Partial<DeliverySize> = {},
): DeliverySize => ({ attribute, dimension: 'length', value, unit: 'mm', quote: String(value), ...more });
