import type { DoneNote, Span, TaskNote } from '../language/notes.ts';
import { closedBy } from './closing.ts';
import type { TaskRow } from './rows.ts';
import type { Kept } from './views.ts';
import type { Working } from './working.ts';

/** Characters of a sentence of any length; talk without full stops runs on and on. */
const LONGEST = 240;
/** What of a longer one is about the words themselves. */
const NEAR = 80;

/** The sentence around a note, or only the words near it where no full stop ends it. */
function sentenceAt(work: Working, span: Span): string {
  const { sentence } = work.place(span);
  if (sentence.length <= LONGEST) return sentence;
  return work.memo.text.slice(Math.max(0, span.start - NEAR), span.end + NEAR / 2);
}

/** Opens a task. */
export function openTask(work: Working, note: Kept<TaskNote>): void {
  const place = work.place(note.span);
  work.draft.put({
    table: 'tasks',
    row: {
      id: note.id,
      gist: note.gist,
      quote: note.quote,
      around: `${place.before.slice(-LONGEST)} ${sentenceAt(work, note.span)}`.trim(),
      ...(note.due === undefined ? {} : { due: note.due }),
      waitsFor: note.waitsFor,
      source: work.source(note),
      status: 'open',
    },
  });
}

/** Closes the tasks that the memo's deeds answer. `open` are the tasks that were open before this memo. */
export function closeTasks(work: Working, notes: readonly Kept<DoneNote>[], open: readonly TaskRow[]): void {
  const deeds = notes.map(({ gist, quote, span }) => ({ gist, quote, around: sentenceAt(work, span) }));
  closedBy(deeds, open).forEach((closed, at) => {
    const note = notes[at];
    if (!closed || !note) return;
    const source = work.source(note);
    work.draft.put({
      table: 'tasks',
      row: { ...closed, status: 'done', closedById: note.id, closedBy: source },
    });
    work.draft.put({ table: 'closings', row: { id: note.id, taskId: closed.id } });
  });
}
