/**
 * Compares what was read from a story with its gold notes: precision, recall and F1 for each kind of note.
 * Two quantities are the same within 0.1 %; items are the same when half the words of the shorter name are shared;
 * statements match when their quotes overlap by half of the shorter one.
 */
import type { GoldMemo, Story, StoryReading } from './story.ts';

/** Factors to SI. Exact definitions, or NIST SP 811 appendix B. */
const LINEAR: Readonly<Record<string, readonly [string, number]>> = {
  mm: ['length', 1e-3],
  cm: ['length', 1e-2],
  m: ['length', 1],
  km: ['length', 1e3],
  in: ['length', 0.0254],
  ft: ['length', 0.3048],
  yd: ['length', 0.9144],
  thou: ['length', 2.54e-5],
  deg: ['angle', 1],
  g: ['mass', 1e-3],
  kg: ['mass', 1],
  t: ['mass', 1e3],
  oz: ['mass', 0.028349523125],
  lb: ['mass', 0.45359237],
  mL: ['volume', 1e-6],
  L: ['volume', 1e-3],
  gal: ['volume', 3.785411784e-3],
  qt: ['volume', 9.46352946e-4],
  floz: ['volume', 2.95735295625e-5],
  m3: ['volume', 1],
  mm2: ['area', 1e-6],
  cm2: ['area', 1e-4],
  m2: ['area', 1],
  ft2: ['area', 0.09290304],
  mV: ['voltage', 1e-3],
  V: ['voltage', 1],
  kV: ['voltage', 1e3],
  A: ['current', 1],
  mA: ['current', 1e-3],
  Ah: ['charge', 3600],
  W: ['power', 1],
  kW: ['power', 1e3],
  VA: ['power', 1],
  kVA: ['power', 1e3],
  hp: ['power', 745.699872],
  Wh: ['energy', 3600],
  kWh: ['energy', 3.6e6],
  Pa: ['pressure', 1],
  kPa: ['pressure', 1e3],
  bar: ['pressure', 1e5],
  psi: ['pressure', 6894.757293168],
  'N.m': ['torque', 1],
  'ft.lbf': ['torque', 1.3558179483314],
  s: ['time', 1],
  min: ['time', 60],
  h: ['time', 3600],
  d: ['time', 86400],
  '%': ['ratio', 0.01],
  1: ['ratio', 1],
  rpm: ['frequency', 1],
  kn: ['speed', 0.514444444],
  'm/s': ['speed', 1],
  'km/h': ['speed', 0.277777778],
  mph: ['speed', 0.44704],
};

interface Valued {
  readonly value: number;
  readonly unit: string;
  readonly high?: number | null | undefined;
}

function si(value: number, unit: string): readonly [string, number] {
  if (unit === 'degC') return ['temperature', value + 273.15];
  if (unit === 'degF') return ['temperature', (value + 459.67) / 1.8];
  const known = LINEAR[unit];
  if (known) return [known[0], value * known[1]];
  return [/^[A-Z]{3}$/.test(unit) ? `money:${unit}` : `?${unit}`, value];
}

const near = (a: number, b: number, rel: number) =>
  Math.abs(a - b) <= rel * Math.max(Math.abs(a), Math.abs(b)) + 1e-9;

export function sameQuantity(a: Valued, b: Valued, rel = 1e-3): boolean {
  const [da, va] = si(a.value, a.unit);
  const [db, vb] = si(b.value, b.unit);
  if (da !== db || !near(va, vb, rel)) return false;
  if (a.high == null || b.high == null) return true;
  return near(si(a.high, a.unit)[1], si(b.high, b.unit)[1], rel);
}

const stem = (word: string) =>
  word
    .toLowerCase()
    .replace(/[^a-z0-9]/g, '')
    .replace(/ies$/, 'y')
    .replace(/(es|s)$/, '');
const FILLER = new Set(['the', 'a', 'an', 'of', 'my', 'our', 'this', 'that', 'new', 'old']);
const wordsOf = (name: string) =>
  name
    .split(/[\s-]+/)
    .map(stem)
    .filter((word) => word && !FILLER.has(word));

export function sameItem(a: string, b: string): boolean {
  const x = wordsOf(a);
  const y = wordsOf(b);
  const shared = x.filter((word) => y.includes(word)).length;
  return shared > 0 && shared / Math.min(x.length, y.length) >= 0.5;
}

type Range = readonly [number, number];
function rangeOf(text: string, quote: string | undefined): Range | undefined {
  const start = quote ? text.indexOf(quote) : -1;
  return start < 0 || !quote ? undefined : [start, start + quote.length];
}
const overlap = (a?: Range, b?: Range) =>
  a && b ? Math.max(0, Math.min(a[1], b[1]) - Math.max(a[0], b[0])) : 0;

export interface ScoreRow {
  readonly name: string;
  readonly right: number;
  readonly gold: number;
  readonly said: number;
  readonly f1: number;
}

/** Adds up over stories; `log` gets one line per difference. */
export class StoryScore {
  readonly #tally = new Map<string, { right: number; gold: number; said: number }>();
  readonly #log: (line: string) => void;
  #words = 0;

  constructor(log: (line: string) => void = () => {}) {
    this.#log = log;
  }

  #count(name: string, right: number, gold: number, said: number): void {
    const row = this.#tally.get(name) ?? { right: 0, gold: 0, said: 0 };
    this.#tally.set(name, { right: row.right + right, gold: row.gold + gold, said: row.said + said });
  }

  add(story: Story, reading: StoryReading): void {
    const goldTaskOf = new Map<string, string>();
    story.memos.forEach((gold, index) => {
      const said = reading.memos[index];
      const where = `${story.story} ${gold.id}`;
      if (!said) throw new Error(`${where}: the memo was not read`);
      this.#words += gold.text.split(/\s+/).filter((word) => word !== '').length;
      this.#figures(where, gold, said.figures);
      const matched = new Map<unknown, { readonly closes?: string | null | undefined }>();
      for (const kind of ['decisions', 'tasks', 'done', 'arrivals', 'problems', 'promises'] as const) {
        this.#statements(where, kind, gold, said, goldTaskOf, matched);
      }
      const closing = (gold.done ?? []).filter((note) => note.closes);
      const closed = closing.filter((note) => {
        const task = matched.get(note)?.closes;
        const right = task != null && goldTaskOf.get(task) === note.closes;
        if (!right)
          this.#log(
            `${where} CLOSES ${JSON.stringify(note.quote)} gold ${note.closes} said ${task ? (goldTaskOf.get(task) ?? task) : '-'}`,
          );
        return right;
      });
      this.#count('closes', closed.length, closing.length, said.done.filter((note) => note.closes).length);
      this.#conflicts(where, gold, said.conflicts);
    });
    const open = new Set(reading.open.map((id) => goldTaskOf.get(id) ?? `extra ${id}`));
    for (const id of story.openAtEnd) if (!open.has(id)) this.#log(`${story.story} NOT OPEN ${id}`);
    for (const id of open) if (!story.openAtEnd.includes(id)) this.#log(`${story.story} STILL OPEN ${id}`);
    this.#count(
      'carried over',
      story.openAtEnd.filter((id) => open.has(id)).length,
      story.openAtEnd.length,
      open.size,
    );
  }

  #figures(where: string, gold: GoldMemo, found: StoryReading['memos'][number]['figures']): void {
    const wanted = (gold.figures ?? []).filter((figure) => figure.dimension !== 'count');
    const said = found.filter((figure) => figure.dimension !== 'count');
    const used = new Set<number>();
    let right = 0,
      item = 0,
      attribute = 0,
      bound = 0;
    for (const figure of wanted) {
      const place = rangeOf(gold.text, figure.quote);
      const [best] = said
        .map((_, k) => k)
        .filter((k) => !used.has(k) && sameQuantity(figure, said[k] as Valued))
        .sort(
          (p, q) =>
            overlap(rangeOf(gold.text, said[q]?.quote), place) -
              overlap(rangeOf(gold.text, said[p]?.quote), place) ||
            Number(sameItem(said[q]?.item ?? '', figure.item)) -
              Number(sameItem(said[p]?.item ?? '', figure.item)),
        );
      const match = best === undefined ? undefined : said[best];
      if (best === undefined || !match) {
        this.#log(
          `${where} MISSED figure ${JSON.stringify(figure.quote)} ${figure.value} ${figure.unit} (${figure.item})`,
        );
        continue;
      }
      used.add(best);
      right++;
      if (sameItem(figure.item, match.item)) item++;
      else
        this.#log(`${where} ITEM ${JSON.stringify(figure.quote)} gold: ${figure.item} | said: ${match.item}`);
      if (figure.attribute === match.attribute) attribute++;
      else
        this.#log(
          `${where} ATTRIBUTE ${JSON.stringify(figure.quote)} of ${figure.item} gold: ${figure.attribute} | said: ${match.attribute}`,
        );
      if (figure.bound === match.bound) bound++;
      else
        this.#log(
          `${where} BOUND ${JSON.stringify(figure.quote)} gold: ${figure.bound} | said: ${match.bound}`,
        );
    }
    said.forEach((figure, k) => {
      if (!used.has(k))
        this.#log(`${where} EXTRA figure ${JSON.stringify(figure.quote)} ${figure.value} ${figure.unit}`);
    });
    this.#count('figures', right, wanted.length, said.length);
    this.#count('figure item', item, right, right);
    this.#count('figure attribute', attribute, right, right);
    this.#count('figure bound', bound, right, right);
  }

  #statements(
    where: string,
    kind: 'decisions' | 'tasks' | 'done' | 'arrivals' | 'problems' | 'promises',
    gold: GoldMemo,
    memo: StoryReading['memos'][number],
    goldTaskOf: Map<string, string>,
    matched: Map<unknown, { readonly closes?: string | null | undefined }>,
  ): void {
    const wanted: readonly { readonly quote: string }[] = gold[kind] ?? [];
    const said: readonly { readonly quote: string }[] = memo[kind];
    const used = new Set<number>();
    let right = 0;
    for (const note of wanted) {
      const place = rangeOf(gold.text, note.quote);
      const k = said.findIndex((other, j) => {
        const range = rangeOf(gold.text, other.quote);
        if (used.has(j) || !place || !range) return false;
        return overlap(place, range) >= 0.5 * Math.min(place[1] - place[0], range[1] - range[0]);
      });
      if (k < 0) {
        this.#log(`${where} MISSED ${kind} ${JSON.stringify(note.quote)}`);
        continue;
      }
      used.add(k);
      right++;
      matched.set(note, said[k] as object);
      if (kind === 'tasks') this.#task(where, note as never, said[k] as never, goldTaskOf);
    }
    said.forEach((note, j) => {
      if (!used.has(j)) this.#log(`${where} EXTRA ${kind} ${JSON.stringify(note.quote)}`);
    });
    this.#count(kind, right, wanted.length, said.length);
  }

  #task(
    where: string,
    gold: NonNullable<GoldMemo['tasks']>[number],
    said: StoryReading['memos'][number]['tasks'][number],
    goldTaskOf: Map<string, string>,
  ): void {
    goldTaskOf.set(said.id, gold.id);
    const waits = (gold.waitsFor ?? []).length > 0 === said.waitsFor.length > 0;
    if (!waits)
      this.#log(
        `${where} WAITS ${JSON.stringify(gold.quote)} gold: ${gold.waitsFor} | said: ${said.waitsFor}`,
      );
    this.#count('task waits', Number(waits), 1, 1);
    if (!gold.due && !said.due) return;
    if (gold.due !== said.due)
      this.#log(`${where} DUE ${JSON.stringify(gold.quote)} gold: ${gold.due} | said: ${said.due}`);
    this.#count('task due', Number(gold.due === said.due), gold.due ? 1 : 0, said.due ? 1 : 0);
  }

  #conflicts(where: string, gold: GoldMemo, found: StoryReading['memos'][number]['conflicts']): void {
    const wanted = gold.conflicts ?? [];
    const used = new Set<number>();
    let right = 0,
      kind = 0;
    for (const conflict of wanted) {
      const k = found.findIndex(
        (other, j) =>
          !used.has(j) &&
          sameQuantity(conflict.now, other.now, 5e-3) &&
          sameQuantity(conflict.was, other.was, 5e-3),
      );
      const match = found[k];
      const told = `${conflict.item} ${conflict.attribute} ${JSON.stringify(conflict.was)} -> ${JSON.stringify(conflict.now)} ${conflict.kind}`;
      if (!match) {
        this.#log(`${where} MISSED conflict ${told}`);
        continue;
      }
      used.add(k);
      right++;
      if (match.kind === conflict.kind) kind++;
      else this.#log(`${where} KIND ${told} | said: ${match.kind}`);
    }
    found.forEach((other, j) => {
      if (!used.has(j))
        this.#log(
          `${where} EXTRA conflict ${other.item} ${other.attribute} ${JSON.stringify(other.was)} -> ${JSON.stringify(other.now)} ${other.kind}`,
        );
    });
    this.#count('conflicts', right, wanted.length, found.length);
    this.#count('conflict kind', kind, right, right);
  }

  /** Clashes found that the gold does not hold, for each thousand words of talk. */
  falseFindings(): { readonly found: number; readonly words: number; readonly perThousand: number } {
    const { said = 0, right = 0 } = this.#tally.get('conflicts') ?? {};
    const found = said - right;
    return { found, words: this.#words, perThousand: this.#words ? (found * 1000) / this.#words : 0 };
  }

  rows(): readonly ScoreRow[] {
    return [...this.#tally].map(([name, { right, gold, said }]) => {
      const precision = said ? right / said : 0;
      const recall = gold ? right / gold : 0;
      return {
        name,
        right,
        gold,
        said,
        f1: precision + recall ? (2 * precision * recall) / (precision + recall) : 0,
      };
    });
  }
}
