import type { MemoNotes, Span } from '../language/notes.ts';
import type { Kept, MemoView, Utterance } from './views.ts';
import { withMore } from './with-more.ts';

/** Letter of each kind of note in its id: the second figure of memo `m1` is `m1.f2`. */
export const NOTE_LETTERS = {
  figures: 'f',
  decisions: 'd',
  tasks: 't',
  done: 'x',
  arrivals: 'a',
  problems: 'p',
  promises: 'v',
  corrections: 'c',
  records: 'r',
} as const satisfies Readonly<Record<keyof MemoNotes, string>>;

/** Notes of which some have ids of their own: those of a memo whose words were put right. Others go by their place. */
export type NumberedNotes = {
  readonly [K in keyof MemoNotes]: readonly (MemoNotes[K][number] & { readonly id?: string })[];
};

/** What a person said of a note, by note id. */
export interface NoteReview {
  readonly review: 'accepted' | 'amended' | 'rejected';
  readonly fields?: Readonly<Record<string, unknown>>;
}

/** By the letter of their kind: the ids of a memo's notes, in order of speech. */
export type NoteIds = Readonly<Record<string, readonly string[]>>;

/**
 * Ids for the notes of the last of several transcripts of one memo, oldest first. A note that an earlier transcript gave
 * too keeps its id, and with it what a person said of it; others are counted on from there, so that no id ever means two
 * notes.
 */
export function idsOfTranscripts(memoId: string, transcripts: readonly MemoNotes[]): NoteIds {
  const ids: Record<string, readonly string[]> = {};
  for (const [kind, letter] of Object.entries(NOTE_LETTERS)) {
    const known: { readonly id: string; readonly says: string }[] = [];
    for (const notes of transcripts) {
      const free = [...known];
      ids[letter] = (notes[kind as keyof MemoNotes] ?? []).map((note) => {
        const says = whatItSays(note);
        const at = free.findIndex((one) => one.says === says);
        if (at >= 0) return (free.splice(at, 1)[0] as (typeof known)[number]).id;
        const id = `${memoId}.${letter}${known.length + 1}`;
        known.push({ id, says });
        return id;
      });
    }
  }
  return ids;
}

/** A note without the words that it was said in. */
function whatItSays(note: unknown): string {
  const words = (key: string, value: unknown) => (key === 'span' || key === 'quote' ? undefined : value);
  return JSON.stringify(note, words).toLowerCase();
}

/**
 * Gives each note its id, its place in the recording and what became of it. Rejected notes stay, marked; one that a person
 * said to be of another kind stands among those, under the id that it had.
 */
export function keepNotes(
  memoId: string,
  notes: NumberedNotes,
  utterances: readonly Utterance[] | undefined,
  reviews: ReadonlyMap<string, NoteReview> = new Map(),
  ids?: NoteIds,
): MemoView['notes'] {
  const place = utterances ? placer(utterances) : () => ({});
  const keep = <
    N extends { readonly span: Span; readonly id?: string; readonly assumed?: readonly string[] },
  >(
    list: readonly N[],
    letter: string,
  ): Kept<N>[] =>
    list.map((note, index) => {
      const id = note.id ?? ids?.[letter]?.[index] ?? `${memoId}.${letter}${index + 1}`;
      const said = reviews.get(id);
      const own = { id, ...place(note.span), ...(said ? { review: said.review } : {}) };
      return withMore(said?.fields ? putRight(note, said.fields) : note, own) as Kept<N>;
    });
  return byKind({
    figures: keep(notes.figures, NOTE_LETTERS.figures),
    decisions: keep(notes.decisions, NOTE_LETTERS.decisions),
    tasks: keep(notes.tasks, NOTE_LETTERS.tasks),
    done: keep(notes.done, NOTE_LETTERS.done),
    arrivals: keep(notes.arrivals, NOTE_LETTERS.arrivals),
    problems: keep(notes.problems, NOTE_LETTERS.problems),
    promises: keep(notes.promises, NOTE_LETTERS.promises),
    corrections: keep(notes.corrections, NOTE_LETTERS.corrections),
    // Readers before this one kept none.
    records: keep(notes.records ?? [], NOTE_LETTERS.records),
  });
}

/** A note with what a person said of it. What they said is guessed no longer. */
function putRight<N extends { readonly assumed?: readonly string[] }>(
  note: N,
  fields: Readonly<Record<string, unknown>>,
): N {
  const assumed = note.assumed?.filter((name) => !(name in fields));
  return { ...note, ...(assumed ? { assumed } : {}), ...fields };
}

/** Where notes of each kind stand; records are several kinds and are not changed into others. */
const LIST_OF: Readonly<Record<string, keyof MemoNotes>> = {
  figure: 'figures',
  decision: 'decisions',
  task: 'tasks',
  done: 'done',
  arrival: 'arrivals',
  problem: 'problems',
  promise: 'promises',
  correction: 'corrections',
};

/** Puts notes of which a person said that they are of another kind among those, in the order of speech. */
function byKind(notes: MemoView['notes']): MemoView['notes'] {
  type Any = MemoView['notes'][keyof MemoNotes][number];
  const lists = notes as Readonly<Record<keyof MemoNotes, readonly Any[]>>;
  const isAstray = (note: Any, list: string) => {
    const own = LIST_OF[note.kind];
    return note.review === 'amended' && own !== undefined && own !== list;
  };
  const astray = Object.entries(lists).flatMap(([list, all]) => all.filter((note) => isAstray(note, list)));
  if (astray.length === 0) return notes;
  const put = Object.entries(lists).map(([list, all]) => [
    list,
    [
      ...all.filter((note) => !isAstray(note, list)),
      ...astray.filter((note) => LIST_OF[note.kind] === list),
    ].sort((a, b) => a.span.start - b.span.start),
  ]);
  return Object.fromEntries(put) as MemoView['notes'];
}

/** Finds the seconds of a span. The memo's text is the utterances' texts joined by one space. */
function placer(utterances: readonly Utterance[]) {
  let offset = 0;
  const placed = utterances.map((utterance) => {
    const start = offset;
    offset += utterance.text.length + 1;
    return { start, end: offset - 1, utterance };
  });
  return (span: Span): { startSeconds?: number; endSeconds?: number } => {
    const touched = placed.filter((one) => one.start < span.end && one.end > span.start);
    const first = touched[0];
    const last = touched[touched.length - 1];
    if (!first || !last) return {};
    const { startSeconds } = wordAt(first.utterance, span.start - first.start);
    const { endSeconds } = wordAt(last.utterance, span.end - 1 - last.start);
    return { startSeconds, endSeconds };
  };
}

/** The word at this place of an utterance's text, or the utterance itself where its words have no times. */
function wordAt(utterance: Utterance, offset: number): Pick<Utterance, 'startSeconds' | 'endSeconds'> {
  if (!utterance.words || offset < 0) return utterance;
  let end = 0;
  for (const word of utterance.words) {
    end += word.text.length + 1;
    if (offset < end) return word;
  }
  return utterance;
}
