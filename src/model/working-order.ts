import { nameStems } from './names.ts';
import type { TaskRow } from './rows.ts';

export interface WorkingOrder {
  /** Ready before waiting, dated before undated, then as they were said. */
  readonly order: readonly TaskRow[];
  /** Ids of tasks that wait for something. */
  readonly waiting: ReadonlySet<string>;
  /** Groups of tasks that wait for each other. */
  readonly cycles: readonly (readonly string[])[];
}

/**
 * Puts open tasks in the order in which they can be worked: whatever another one waits for comes first, earlier due
 * dates before later ones, then the order of speech. Tasks that wait for each other are found and named, and come
 * in order of speech.
 */
export function workingOrder(tasks: readonly TaskRow[]): WorkingOrder {
  const needs = new Map(tasks.map((task) => [task.id, neededBy(task, tasks)]));
  const waiting = new Set(tasks.filter((task) => task.waitsFor.length > 0).map((task) => task.id));
  const order: TaskRow[] = [];
  const placed = new Set<string>();
  const cycles: string[][] = [];
  let left = [...tasks].sort(byUrgency(waiting));
  while (left.length > 0) {
    const free = left.find((task) => [...(needs.get(task.id) ?? [])].every((id) => placed.has(id)));
    const next = free ?? left[0];
    if (!next) break;
    if (!free) cycles.push(cycleFrom(next.id, needs, placed));
    order.push(next);
    placed.add(next.id);
    left = left.filter((task) => task !== next);
  }
  return { order, waiting, cycles };
}

function byUrgency(waiting: ReadonlySet<string>) {
  const rank = (task: TaskRow) => (waiting.has(task.id) ? 1 : 0);
  return (a: TaskRow, b: TaskRow) => rank(a) - rank(b) || (a.due ?? '9999').localeCompare(b.due ?? '9999');
}

/** Open tasks that this one waits for: a gate shares most of its words with their gist. */
function neededBy(task: TaskRow, tasks: readonly TaskRow[]): ReadonlySet<string> {
  const needed = new Set<string>();
  for (const gate of task.waitsFor) {
    const words = nameStems(gate);
    for (const other of tasks) {
      if (other.id === task.id) continue;
      const shared = words.filter((word) => nameStems(other.gist).includes(word)).length;
      if (shared > 0 && shared >= words.length / 2) needed.add(other.id);
    }
  }
  return needed;
}

function cycleFrom(
  start: string,
  needs: ReadonlyMap<string, ReadonlySet<string>>,
  placed: ReadonlySet<string>,
): string[] {
  const path: string[] = [];
  let at: string | undefined = start;
  while (at !== undefined && !path.includes(at)) {
    path.push(at);
    at = [...(needs.get(at) ?? [])].find((id) => !placed.has(id));
  }
  return at === undefined ? path : path.slice(path.indexOf(at));
}
