/** Open tasks that were to come before work that is done now: the wall is boarded, and the sockets are not in. */
import { answersGate, gateWords } from './gate-words.ts';
import { nameStems } from './names.ts';
import { withMore } from './with-more.ts';
import type { Working } from './working.ts';

/** "Before they cut it": of the thing that the task is about, and not of whatever is cut. */
const OF_IT = /^(?:(?:they|i|we|he|she|you) )?\S+ (?:it|them|that|those|these|this)$/i;

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
    const thing = OF_IT.test(task.before) ? nameStems(task.gist) : [];
    const note = done.find(({ gist, quote }) => {
      const said = gateWords(`${gist} ${quote}`);
      return answersGate(said, held) && (thing.length === 0 || thing.some((stem) => said.stems.has(stem)));
    });
    if (note) work.draft.put({ table: 'tasks', row: withMore(task, { overtakenBy: work.source(note) }) });
  }
}
