/** Open tasks that were to come before work that is done now: the wall is boarded, and the sockets are not in. */
import { answersGate, gateWords } from './gate-words.ts';
import { tellingStems } from './open-tasks.ts';
import type { Working } from './working.ts';

/**
 * Marks the open tasks of earlier memos that this memo's finished work overtook. Call when what the memo closes is closed.
 * What was overtaken once stays so until it is done.
 */
export function markOvertaken(work: Working): void {
  for (const note of work.memo.notes.done) {
    const text = `${note.gist} ${note.quote}`;
    const words = gateWords(text);
    for (const task of work.draft.openTasksSharing(tellingStems(text))) {
      if (task.before === undefined || task.overtakenBy || task.source.memoId === work.memo.id) continue;
      if (!answersGate(words, gateWords(task.before))) continue;
      work.draft.put({ table: 'tasks', row: { ...task, overtakenBy: work.source(note) } });
    }
  }
}
