import type { DoneNote, TaskNote } from '../language/notes.ts';
import { closedBy, describeDeed } from './closing.ts';
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

/** Closes the task that a deed answers. `open` are the tasks that were open before this memo. */
export function closeTask(
  work: Working,
  note: Kept<DoneNote>,
  open: readonly TaskRow[],
): TaskRow | undefined {
  const stillOpen = new Set(work.draft.openTasks().map(({ id }) => id));
  const left = open.filter((task) => stillOpen.has(task.id));
  const place = work.place(note.span);
  const closed = closedBy(describeDeed(note.gist, note.quote, place.sentence), left);
  if (!closed) return undefined;
  const source = work.source(note);
  work.draft.put({
    table: 'tasks',
    row: { ...closed, status: 'done', closedById: note.id, closedBy: source },
  });
  work.draft.put({ table: 'closings', row: { id: note.id, taskId: closed.id } });
  return closed;
}
