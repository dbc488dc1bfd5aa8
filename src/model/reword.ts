/** Words of a memo put right by a person: the sentence is read again, and every note keeps its id. Pure. */
import type { MemoNotes, Span } from '../language/notes.ts';
import { splitSentences } from '../language/sentences.ts';
import { keepNotes, NOTE_LETTERS, type NoteIds, type NumberedNotes } from './keep-notes.ts';
import type { Utterance } from './views.ts';

/** What a memo says. `text` is the texts of the utterances joined by one blank. */
export interface Said {
  readonly text: string;
  readonly utterances?: readonly Utterance[] | undefined;
}

/** A stretch of the talk with what it was to say. */
export interface Wording {
  readonly span: Span;
  readonly words: string;
}

/** The talk with these words in place of those at `span`. Utterances that they reach over become one. */
export function reworded({ text, utterances }: Said, { span, words }: Wording): Said {
  const now = text.slice(0, span.start) + words + text.slice(span.end);
  if (!utterances) return { text: now };
  let at = 0;
  const places = utterances.map((utterance) => {
    const start = at;
    at += utterance.text.length + 1;
    return { start, end: at - 1, utterance };
  });
  const touched = places.filter(({ start, end }) => start <= span.end && end >= span.start);
  const [first, last] = [touched[0], touched.at(-1)];
  if (!first || !last) return { text: now, utterances };
  // What the recogniser was unsure of is settled.
  const { doubts: _, ...spoken } = first.utterance;
  const one: Utterance = {
    ...spoken,
    endSeconds: last.utterance.endSeconds,
    text: now.slice(first.start, last.end + now.length - text.length),
  };
  const all = places.flatMap((place) =>
    place === first ? [one] : touched.includes(place) ? [] : [place.utterance],
  );
  return { text: now, utterances: all };
}

/** The sentences that a stretch of a text lies in. */
export function sentencesAround(text: string, { start, end }: Span): Span {
  const touched = splitSentences(text).filter(
    (one) => one.start < Math.max(end, start + 1) && one.end > start,
  );
  return {
    start: Math.min(start, ...touched.map((one) => one.start)),
    end: Math.max(end, ...touched.map((one) => one.end)),
  };
}

type Lists = Readonly<Record<keyof MemoNotes, readonly Numbered[]>>;
type Numbered = { readonly id: string; readonly quote: string; readonly span: Span };

const overlaps = (a: Span, b: Span) => a.start < b.end && a.end > b.start;

/**
 * The notes of a memo after `wording`: those of its sentence as they are read now, the others as they were, moved along.
 * One that leaned on the talk around it for its thing is taken as it is read now. A note that was there before keeps its
 * id; one that is new gets the next number.
 */
export function notesAfter(
  memoId: string,
  before: { readonly text: string; readonly notes: NumberedNotes; readonly ids?: NoteIds | undefined },
  wording: Wording,
  read: MemoNotes,
): NumberedNotes {
  const { span, words } = wording;
  const grown = words.length - (span.end - span.start);
  const old = sentencesAround(before.text, span);
  const now = before.text.slice(0, span.start) + words + before.text.slice(span.end);
  const anew = sentencesAround(now, { start: span.start, end: span.start + words.length });
  const moved = (one: Span): Span =>
    one.start >= span.end ? { start: one.start + grown, end: one.end + grown } : one;
  const lists = keepNotes(memoId, before.notes, undefined, undefined, before.ids) as unknown as Lists;
  const result = Object.entries(NOTE_LETTERS).map(([kind, letter]) => {
    const was = lists[kind as keyof MemoNotes];
    const fresh = (read[kind as keyof MemoNotes] ?? []) as readonly Omit<Numbered, 'id'>[];
    const inside = was.filter((note) => overlaps(note.span, old));
    const outside = was
      .filter((note) => !inside.includes(note))
      .map((note) => {
        const here = { ...note, span: moved(note.span) };
        const again = fresh.find((one) => one.span.start === here.span.start && one.quote === note.quote);
        return leansOnTalk(note) && again ? { ...again, id: note.id } : here;
      });
    let last = Math.max(0, ...was.map(({ id }) => Number(id.slice(id.indexOf('.') + 1 + letter.length))));
    const left = [...inside];
    const ids = new Map<unknown, string>();
    const heard = fresh.filter((note) => overlaps(note.span, anew));
    // Those that say the same come first: what is left over is paired in the order of speech.
    for (const note of heard) {
      const same = left.findIndex(({ quote }) => quote === note.quote);
      if (same >= 0) ids.set(note, left.splice(same, 1)[0]?.id ?? '');
    }
    const inOrder = heard.map((note) => ({
      ...note,
      id: ids.get(note) ?? left.shift()?.id ?? `${memoId}.${letter}${++last}`,
    }));
    const all = [...outside, ...inOrder].sort((a, b) => a.span.start - b.span.start);
    return [kind, all] as const;
  });
  return Object.fromEntries(result) as unknown as NumberedNotes;
}

const leansOnTalk = (note: Numbered & { readonly assumed?: readonly string[] }) =>
  note.assumed?.includes('item') ?? false;
