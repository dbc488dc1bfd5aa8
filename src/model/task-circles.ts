/** Tasks that wait for each other: found once, and settled when the circle is broken. */

import type { TaskRow } from './rows.ts';
import { graphOf } from './task-graph.ts';
import type { Working } from './working.ts';
import { workingOrder } from './working-order.ts';

/** What the findings of circles go by. */
const SLOT = 'tasks';

/** Looks for circles among the open tasks. Call when a task was opened, closed or given something to wait for. */
export function checkCircles(work: Working): void {
  const open = work.draft.openTasks();
  const found = work.draft.findingsOn(SLOT);
  const marked = open.some((task) => task.circle !== undefined);
  if (found.length === 0 && !marked && !open.some(canLeadBack)) return;
  const byId = new Map(open.map((task) => [task.id, task]));
  const cycles = workingOrder(graphOf(open, work.memo.recordedAt)).cycles;
  const keys = new Set(cycles.map(keyOfCircle));
  for (const finding of found) {
    if (!finding.path || keys.has(keyOfCircle(finding.path))) continue;
    const settledBy = {
      choice: 'take-new',
      at: work.memo.recordedAt,
      reason: 'they wait for each other no longer',
    };
    work.amend({ ...finding, status: 'settled', settledBy });
  }
  for (const task of open) {
    if (task.circle === undefined || keys.has(task.circle)) continue;
    const { circle: _gone, ...row } = task;
    work.draft.put({ table: 'tasks', row });
  }
  for (const path of cycles) findCircle(work, path, byId);
}

const canLeadBack = (task: TaskRow) => task.gates !== undefined || task.before !== undefined;

const keyOfCircle = (path: readonly string[]) => [...path].sort().join(' ');

function findCircle(work: Working, path: readonly string[], byId: ReadonlyMap<string, TaskRow>): void {
  const circle = keyOfCircle(path);
  const tasks = path.flatMap((id) => byId.get(id) ?? []);
  const [first] = tasks;
  if (!first || first.circle === circle) return;
  work.draft.put({ table: 'tasks', row: { ...first, circle } });
  const told = [...tasks, first].map((task) => `"${task.gist}"`);
  const nothing = { value: 0, unit: '' };
  work.find({
    kind: 'task-cycle',
    item: first.gist,
    itemId: '',
    attribute: 'other',
    slot: SLOT,
    was: { ...nothing, source: first.source },
    now: { ...nothing, source: (tasks.at(-1) ?? first).source },
    why: `each waits for the next: ${told.join(', ')}`,
    path,
  });
}
