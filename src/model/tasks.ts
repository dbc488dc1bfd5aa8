import type { DoneNote, TaskNote } from '../language/notes.ts';
import { closedBy } from './closing.ts';
import type { TaskRow } from './rows.ts';
import type { Kept } from './views.ts';
import type { Working } from './working.ts';

/** Opens a task. */
export function openTask(work: Working, note: Kept<TaskNote>): void {
  const place = work.place(note.span);
  work.draft.put({
    table: 'tasks',
    row: {
      id: note.id,
      gist: note.gist,
      quote: note.quote,
      around: `${place.before} ${place.sentence}`.trim(),
      ...(note.due === undefined ? {} : { due: note.due }),
      waitsFor: note.waitsFor,
      source: work.source(note),
      status: 'open',
    },
  });
}

/** Closes the tasks that the memo's deeds answer. `open` are the tasks that were open before this memo. */
export function closeTasks(work: Working, notes: readonly Kept<DoneNote>[], open: readonly TaskRow[]): void {
  const deeds = notes.map(({ gist, quote, span }) => ({ gist, quote, around: work.place(span).sentence }));
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
