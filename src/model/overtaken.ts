/** Open tasks that were to come before work that is done now: the wall is boarded, and the sockets are not in. */
import { answersGate, gateWords } from './gate-words.ts';
import { withMore } from './with-more.ts';
import type { Working } from './working.ts';

/**
 * Marks the open tasks of earlier memos that this memo's finished work overtook. Call when what the memo closes is closed.
 * What was overtaken once stays so until it is done.
 */
export function markOvertaken(work: Working): void {
  const { done } = work.memo.notes;
  if (done.length === 0) return;
  for (const task of work.draft.gatedTasks()) {
    if (task.before === undefined || task.overtakenBy || task.source.memoId === work.memo.id) continue;
    const held = gateWords(task.before);
    const note = done.find(({ gist, quote }) => answersGate(gateWords(`${gist} ${quote}`), held));
    if (note) work.draft.put({ table: 'tasks', row: withMore(task, { overtakenBy: work.source(note) }) });
  }
}
