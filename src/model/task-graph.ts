/** Open tasks as steps: which waits for which, by the words of gates, by "before" and by hand. */
import { answersGate, gateWords } from './gate-words.ts';
import { thingOf } from './gates.ts';
import { isMeant } from './gates-met.ts';
import type { Gate, TaskRow } from './rows.ts';
import type { Step } from './working-order.ts';

/** A gate that has not happened by `now` (ISO day or instant), as far as the row itself can tell. */
export function isOpenGate(gate: Gate, now: string, isOpen: (taskId: string) => boolean): boolean {
  const { met } = gate;
  // Opened again by hand: what its closing had met is to be waited for again.
  if (
    met &&
    !(met.taskId !== undefined && isOpen(met.taskId)) &&
    met.recordedAt.slice(0, 10) <= now.slice(0, 10)
  )
    return false;
  return true;
}

/** Which open tasks each gate of each open task means: the only one named, else the one that answers its words. */
export class TaskLinks {
  readonly #open: readonly TaskRow[];
  readonly #byStem = new Map<string, TaskRow[]>();
  readonly #byId: ReadonlyMap<string, TaskRow>;

  constructor(open: readonly TaskRow[]) {
    this.#open = open;
    this.#byId = new Map(open.map((task) => [task.id, task]));
    for (const task of open) {
      for (const stem of gateWords(task.gist).stems) {
        const those = this.#byStem.get(stem) ?? [];
        those.push(task);
        this.#byStem.set(stem, those);
      }
    }
  }

  isOpen(taskId: string): boolean {
    return this.#byId.has(taskId);
  }

  /** The open task that a gate means; of several the one said last. */
  meantBy(gate: Gate, own: TaskRow): TaskRow | undefined {
    if (gate.taskId !== undefined) return this.#byId.get(gate.taskId);
    if (gate.kind !== 'event' && gate.kind !== 'hours') return undefined;
    const words = gate.kind === 'hours' ? thingOf(gate.words) : gate.words;
    return this.#sharing(words).findLast((task) => task.id !== own.id && isMeant(gate, task));
  }

  /** Open tasks that must not be done until this one is. */
  heldBackBy(task: TaskRow): readonly TaskRow[] {
    const { before } = task;
    if (before === undefined) return [];
    const clause = gateWords(before);
    return this.#sharing(before).filter(
      (other) => other.id !== task.id && answersGate(gateWords(other.gist), clause),
    );
  }

  #sharing(words: string): readonly TaskRow[] {
    const found = new Set<TaskRow>();
    for (const stem of gateWords(words).stems)
      for (const task of this.#byStem.get(stem) ?? []) found.add(task);
    return this.#open.filter((task) => found.has(task));
  }
}

/** The open tasks as steps of a graph. `waits` says which have something to wait for, when it is known better. */
export function graphOf(
  open: readonly TaskRow[],
  now: string,
  links: TaskLinks = new TaskLinks(open),
  waits?: ReadonlySet<string>,
): readonly Step[] {
  const isOpen = (id: string) => links.isOpen(id);
  const needs = new Map<string, string[]>(open.map((task) => [task.id, []]));
  for (const task of open) {
    for (const gate of task.gates ?? []) {
      const meant = isOpenGate(gate, now, isOpen) ? links.meantBy(gate, task) : undefined;
      if (meant) needs.get(task.id)?.push(meant.id);
    }
    for (const behind of links.heldBackBy(task)) needs.get(behind.id)?.push(task.id);
  }
  return open.map((task) => {
    const own = needs.get(task.id) ?? [];
    return {
      id: task.id,
      ...(task.due === undefined ? {} : { due: task.due }),
      needs: own,
      waits: waits
        ? waits.has(task.id)
        : own.length > 0 || (task.gates?.some((gate) => isOpenGate(gate, now, isOpen)) ?? false),
      ...(task.ahead === undefined ? {} : { ahead: task.ahead }),
    };
  });
}
