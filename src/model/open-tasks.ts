/** The open tasks by the words in them: what a memo says is held only against tasks that share a word with it. */
import { isToMeasure } from './measured-tasks.ts';
import type { TaskRow } from './rows.ts';
import { LONGEST_WORD } from './stems.ts';
import { talkStems } from './talk-stems.ts';
import { EMPTY, PART, STEM, undoubled } from './telling-words.ts';

interface Held {
  readonly ord: number;
  readonly row: TaskRow;
  readonly stems: readonly string[];
}

const byOrd = (a: Held, b: Held) => a.ord - b.ord;

/** The telling stems of texts, each once. */
export function tellingStems(...texts: readonly string[]): readonly string[] {
  const telling = new Set<string>();
  for (const text of texts) for (const stem of talkStems(text)) if (!EMPTY.has(stem)) telling.add(stem);
  return [...telling];
}

/** Keeps the open tasks of a project in the order of first writing; put every task in as it changes. */
export class OpenTasks {
  readonly #held = new Map<string, Held>();
  readonly #byStem = new Map<string, Set<Held>>();
  readonly #gated = new Set<Held>();
  readonly #measuring = new Set<Held>();
  readonly #words = new Vocabulary();
  #last = 0;
  #isSorted = true;

  /** Files a task as it stands now; without its place it is the last one, or stays where it was. */
  put(row: TaskRow, place?: number): void {
    const before = this.#held.get(row.id);
    if (before) this.#drop(before);
    const ord = place ?? before?.ord ?? this.#last + 1;
    this.#last = Math.max(this.#last, ord);
    if (row.status !== 'open') {
      this.#held.delete(row.id);
      return;
    }
    const held = { ord, row, stems: tellingStems(row.gist, row.quote, row.around) };
    if (!before && ord < this.#last) this.#isSorted = false;
    this.#held.set(row.id, held);
    for (const stem of held.stems) {
      const bucket = this.#byStem.get(stem);
      if (bucket) bucket.add(held);
      else {
        this.#byStem.set(stem, new Set([held]));
        this.#words.add(stem);
      }
    }
    if (row.gates || row.before !== undefined) this.#gated.add(held);
    if (isToMeasure(row)) this.#measuring.add(held);
  }

  all(): readonly TaskRow[] {
    if (!this.#isSorted) {
      const sorted = [...this.#held.values()].sort(byOrd);
      this.#held.clear();
      for (const held of sorted) this.#held.set(held.row.id, held);
      this.#isSorted = true;
    }
    return [...this.#held.values()].map(({ row }) => row);
  }

  /** Those that hold one of these stems, or a compound that a stem ends or begins. */
  sharing(stems: readonly string[]): readonly TaskRow[] {
    const found = new Set<Held>();
    for (const stem of new Set(stems.flatMap((one) => this.#words.related(one))))
      for (const held of this.#byStem.get(stem) ?? []) found.add(held);
    return [...found].sort(byOrd).map(({ row }) => row);
  }

  /** Those that wait for something, or that something waits for. */
  gated(): readonly TaskRow[] {
    return [...this.#gated].sort(byOrd).map(({ row }) => row);
  }

  /** Those of measuring something. */
  measuring(): readonly TaskRow[] {
    return [...this.#measuring].sort(byOrd).map(({ row }) => row);
  }

  #drop(held: Held): void {
    for (const stem of held.stems) this.#byStem.get(stem)?.delete(held);
    this.#gated.delete(held);
    this.#measuring.delete(held);
  }
}

/** Finds the stems that are compounds of one another without going over all of them: see `isCompound`. */
export class Vocabulary {
  readonly #stems = new Set<string>();
  readonly #ending = new Map<string, string[]>();
  readonly #beginning = new Map<string, string[]>();

  add(stem: string): void {
    if (this.#stems.has(stem)) return;
    this.#stems.add(stem);
    if (stem.length > LONGEST_WORD) return;
    for (let length = PART - 1; length < stem.length; length++) put(this.#ending, stem.slice(-length), stem);
    for (let length = STEM; length < stem.length; length++) put(this.#beginning, stem.slice(0, length), stem);
  }

  /** The stem itself where it is known, and every known one that is a compound with it. */
  related(stem: string): readonly string[] {
    const found = new Set<string>(this.#stems.has(stem) ? [stem] : []);
    if (stem.length > LONGEST_WORD) return [...found];
    if (stem.length >= PART) {
      for (const longer of this.#ending.get(stem) ?? []) found.add(longer);
      for (const longer of this.#ending.get(undoubled(stem)) ?? [])
        if (longer.length > stem.length) found.add(longer);
      for (const longer of stem.length >= STEM ? (this.#beginning.get(stem) ?? []) : []) found.add(longer);
    }
    for (let length = PART - 1; length < stem.length; length++) {
      const end = stem.slice(-length);
      for (const shorter of [end, `${end}${end.at(-1)}`])
        if (shorter.length >= PART && shorter.length < stem.length && this.#stems.has(shorter))
          found.add(shorter);
    }
    for (let length = STEM; length < stem.length; length++)
      if (this.#stems.has(stem.slice(0, length))) found.add(stem.slice(0, length));
    return [...found];
  }
}

function put(map: Map<string, string[]>, key: string, stem: string): void {
  const known = map.get(key);
  if (known) known.push(stem);
  else map.set(key, [stem]);
}
