/** In which order open tasks can be worked: a graph of what needs what, and nothing about where it comes from. */

/** One open task as far as its place goes. */
export interface Step {
  readonly id: string;
  /** YYYY-MM-DD */
  readonly due?: string;
  /** Whether anything that it waits for has not happened. */
  readonly waits: boolean;
  /** Steps that must come first. Ids that are no step, and its own, count for nothing. */
  readonly needs: readonly string[];
  /** Steps that a person put this one before; what must come first is stronger. */
  readonly ahead?: readonly string[];
}

export interface WorkingOrder {
  /** Every step once: nothing stands before what it needs, save where steps need each other. */
  readonly order: readonly string[];
  /** Circles of steps that need each other, one for each knot: each needs the next, the last the first. */
  readonly cycles: readonly (readonly string[])[];
  /** By when a step must be done for its own sake or for the sake of what needs it, with whose date it is. */
  readonly dueBy: ReadonlyMap<string, { readonly due: string; readonly of: string }>;
  /** Steps that cannot be worked before this one, near and far, in the order given. */
  readonly unblocks: ReadonlyMap<string, readonly string[]>;
}

/**
 * Puts steps in working order: what another needs comes first; of those that are free, ready before waiting, then the
 * earlier date (its own or that of what needs it), then what unblocks most, then the order given. Steps in a circle
 * come by the same rank. Costs by the steps and their edges.
 */
export function workingOrder(steps: readonly Step[]): WorkingOrder {
  const place = new Map(steps.map((step, index) => [step.id, index]));
  const needs = steps.map((step, index) => edges(step.needs, place, index));
  const opens = reversed(needs);
  const knotted = knots(needs);
  const cycles = circles(knotted, needs).map((circle) => circle.map((index) => (steps[index] as Step).id));
  const due = datesOf(steps, needs);
  const after = opens.map((_, index) => reach(index, opens));
  const rank = ranks(steps, due, after);
  const order = inOrder(untied(withHand(steps, place, needs), knotted), rank);
  const id = (index: number) => (steps[index] as Step).id;
  return {
    order: order.map(id),
    cycles,
    dueBy: new Map(
      due.flatMap((one, index) => (one ? [[id(index), { due: one.due, of: id(one.of) }] as const] : [])),
    ),
    unblocks: new Map(
      after.flatMap((those, index) => (those.length > 0 ? [[id(index), those.map(id)] as const] : [])),
    ),
  };
}

type Edges = readonly (readonly number[])[];

function edges(ids: readonly string[], place: ReadonlyMap<string, number>, own: number): number[] {
  const found = ids.flatMap((id) => place.get(id) ?? []);
  return [...new Set(found)].filter((index) => index !== own);
}

function reversed(needs: Edges): Edges {
  const back: number[][] = needs.map(() => []);
  needs.forEach((those, index) => {
    for (const need of those) back[need]?.push(index);
  });
  return back;
}

/** Everything that can be reached from here, without the start, ascending. */
function reach(start: number, next: Edges): readonly number[] {
  if ((next[start] ?? []).length === 0) return [];
  const seen = new Set<number>();
  const left = [start];
  for (let at = left.pop(); at !== undefined; at = left.pop()) {
    for (const to of next[at] ?? []) {
      if (seen.has(to)) continue;
      seen.add(to);
      left.push(to);
    }
  }
  seen.delete(start);
  return [...seen].sort((a, b) => a - b);
}

/** Carries each date to everything that it hangs on; the earliest wins. */
function datesOf(steps: readonly Step[], needs: Edges) {
  const due: ({ readonly due: string; readonly of: number } | undefined)[] = steps.map(() => undefined);
  const dated = steps
    .map((step, index) => ({ index, due: step.due }))
    .filter((one): one is { index: number; due: string } => one.due !== undefined)
    .sort((a, b) => a.due.localeCompare(b.due) || a.index - b.index);
  for (const one of dated) {
    const left = [one.index];
    for (let at = left.pop(); at !== undefined; at = left.pop()) {
      if (due[at]) continue;
      due[at] = { due: one.due, of: one.index };
      left.push(...(needs[at] ?? []));
    }
  }
  return due;
}

/** Position of each step when nothing stood in its way. */
function ranks(
  steps: readonly Step[],
  due: readonly ({ readonly due: string } | undefined)[],
  after: Edges,
): readonly number[] {
  const LAST = '9999';
  const sorted = steps
    .map((step, index) => ({ index, waits: step.waits ? 1 : 0, due: due[index]?.due ?? LAST }))
    .sort(
      (a, b) =>
        a.waits - b.waits ||
        a.due.localeCompare(b.due) ||
        (after[b.index] ?? []).length - (after[a.index] ?? []).length ||
        a.index - b.index,
    );
  const rank = steps.map(() => 0);
  sorted.forEach(({ index }, at) => {
    rank[index] = at;
  });
  return rank;
}

/** A person's order as further edges, each left out where it would contradict what must come first. */
function withHand(steps: readonly Step[], place: ReadonlyMap<string, number>, needs: Edges): Edges {
  const all = needs.map((those) => [...those]);
  steps.forEach((step, index) => {
    for (const behind of edges(step.ahead ?? [], place, index)) {
      if (!reach(index, all).includes(behind)) all[behind]?.push(index);
    }
  });
  return all;
}

/**
 * Without the edges inside knots: their steps come by rank, after all that any of them needs and before all that needs
 * any of them.
 */
function untied(needs: Edges, knotted: Edges): Edges {
  const knotOf = new Map(knotted.flatMap((knot) => knot.map((index) => [index, knot] as const)));
  const outside = new Map(knotted.map((knot) => [knot, outsideNeeds(knot, needs, knotOf)]));
  return needs.map((_, index) => {
    const knot = knotOf.get(index);
    return (knot && outside.get(knot)) ?? outsideNeeds([index], needs, knotOf);
  });
}

/** What these steps need beside themselves; of a knot all of it. */
function outsideNeeds(
  own: readonly number[],
  needs: Edges,
  knotOf: ReadonlyMap<number, readonly number[]>,
): readonly number[] {
  const inside = new Set(own);
  const direct = new Set(own.flatMap((member) => needs[member] ?? []).filter((need) => !inside.has(need)));
  return [...new Set([...direct].flatMap((need) => knotOf.get(need) ?? [need]))];
}

/** Takes the best free step again and again. The edges hold no circle. */
function inOrder(needs: Edges, rank: readonly number[]): readonly number[] {
  const opens = reversed(needs);
  const open = needs.map((those) => those.length);
  const free = new RankedSet(rank);
  open.forEach((count, index) => {
    if (count === 0) free.add(index);
  });
  const placed: number[] = [];
  for (let next = free.take(); next !== undefined; next = free.take()) {
    placed.push(next);
    for (const behind of opens[next] ?? []) {
      open[behind] = (open[behind] as number) - 1;
      if (open[behind] === 0) free.add(behind);
    }
  }
  return placed;
}

/** Steps that are free, best rank first out: a binary heap. */
class RankedSet {
  readonly #rank: readonly number[];
  readonly #heap: number[] = [];

  constructor(rank: readonly number[]) {
    this.#rank = rank;
  }

  add(index: number): void {
    const heap = this.#heap;
    let at = heap.push(index) - 1;
    while (at > 0) {
      const up = (at - 1) >> 1;
      if (!this.#before(at, up)) break;
      this.#swap(at, up);
      at = up;
    }
  }

  take(): number | undefined {
    const heap = this.#heap;
    const first = heap[0];
    const last = heap.pop();
    if (first === undefined || last === undefined || heap.length === 0) return first;
    heap[0] = last;
    for (let at = 0; ; ) {
      const [left, right] = [2 * at + 1, 2 * at + 2];
      let least = at;
      if (left < heap.length && this.#before(left, least)) least = left;
      if (right < heap.length && this.#before(right, least)) least = right;
      if (least === at) return first;
      this.#swap(at, least);
      at = least;
    }
  }

  #before(a: number, b: number): boolean {
    const rank = (at: number) => this.#rank[this.#heap[at] as number] as number;
    return rank(a) < rank(b);
  }
  #swap(a: number, b: number): void {
    const heap = this.#heap;
    [heap[a], heap[b]] = [heap[b] as number, heap[a] as number];
  }
}

/** One shortest circle through the first member of each knot of steps that need each other. */
function circles(knotted: Edges, needs: Edges): Edges {
  return knotted
    .map((knot) => shortestCircle(Math.min(...knot), needs, new Set(knot)))
    .sort((a, b) => (a[0] as number) - (b[0] as number));
}

function shortestCircle(start: number, needs: Edges, within: ReadonlySet<number>): readonly number[] {
  const cameFrom = new Map<number, number>();
  const queue = [start];
  for (let head = 0; head < queue.length; head++) {
    const at = queue[head] as number;
    for (const to of needs[at] ?? []) {
      if (to === start) {
        const path = [at];
        for (let back = cameFrom.get(at); back !== undefined; back = cameFrom.get(back)) path.unshift(back);
        return path;
      }
      if (!within.has(to) || cameFrom.has(to)) continue;
      cameFrom.set(to, at);
      queue.push(to);
    }
  }
  return [start];
}

/**
 * Strongly connected parts of more than one step, by Tarjan's way without recursion. Source: R. Tarjan, "Depth-first
 * search and linear graph algorithms", SIAM J. Comput. 1 (1972), from memory.
 */
function knots(needs: Edges): readonly (readonly number[])[] {
  const number = needs.map(() => -1);
  const low = needs.map(() => 0);
  const stack: number[] = [];
  const onStack = new Set<number>();
  const found: number[][] = [];
  let count = 0;
  const enter = (at: number) => {
    number[at] = low[at] = count++;
    stack.push(at);
    onStack.add(at);
    return { at, next: 0 };
  };
  for (let root = 0; root < needs.length; root++) {
    if (number[root] !== -1) continue;
    const path = [enter(root)];
    for (let top = path.at(-1); top; top = path.at(-1)) {
      const { at } = top;
      const to = needs[at]?.[top.next++];
      if (to !== undefined) {
        if (number[to] === -1) path.push(enter(to));
        else if (onStack.has(to)) low[at] = Math.min(low[at] as number, number[to] as number);
        continue;
      }
      path.pop();
      const up = path.at(-1);
      if (up) low[up.at] = Math.min(low[up.at] as number, low[at] as number);
      if (low[at] !== number[at]) continue;
      const knot: number[] = [];
      for (let member = stack.pop(); member !== undefined; member = stack.pop()) {
        onStack.delete(member);
        knot.push(member);
        if (member === at) break;
      }
      if (knot.length > 1) found.push(knot);
    }
  }
  return found;
}
