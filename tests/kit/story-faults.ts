/**
 * Looks for what cannot be right in a story file, whoever annotated it: quotes that were never said, words outside
 * the contract, ids that lead nowhere, conflicts that do not follow from the figures. Format: docs/stories.md.
 */
import { ATTRIBUTES, BOUNDS, DIMENSIONS, type Dimension } from '../../src/language/notes.ts';
import type { GoldConflict, GoldFigure, GoldMemo, Story } from './story.ts';

const UNITS: Readonly<Partial<Record<Dimension, string>>> = {
  length: 'mm cm m km in ft yd thou',
  angle: 'deg',
  temperature: 'degC degF',
  mass: 'g kg t oz lb',
  volume: 'mL L gal qt floz m3',
  area: 'mm2 cm2 m2 ft2',
  voltage: 'mV V kV',
  current: 'mA A',
  charge: 'Ah',
  power: 'W kW VA kVA hp',
  energy: 'Wh kWh',
  pressure: 'Pa kPa bar psi',
  torque: 'N.m ft.lbf',
  time: 's min h d',
  ratio: '% 1',
  speed: 'rpm kn m/s km/h mph',
  count: '1',
};

/** Exact factors to millimetres and to grams, for comparing within one conflict. Other units compare as written. */
const SAME_KIND: Readonly<Record<string, readonly [string, number]>> = {
  mm: ['length', 1],
  cm: ['length', 10],
  m: ['length', 1000],
  in: ['length', 25.4],
  ft: ['length', 304.8],
  yd: ['length', 914.4],
  thou: ['length', 0.0254],
  g: ['mass', 1],
  kg: ['mass', 1000],
  t: ['mass', 1e6],
  oz: ['mass', 28.349523125],
  lb: ['mass', 453.59237],
};

const CONFLICT_KINDS = ['decided', 'remeasured', 'slip', 'stale', 'limit'];
const WORDS_LEAST = 190;
const WORDS_MOST = 260;
const DATE = /^\d{4}-\d{2}-\d{2}$/;
const STAMP = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}[+-]\d{2}:\d{2}$/;

interface Amount {
  readonly value: number;
  readonly unit: string;
}

function measure({ value, unit }: Amount): readonly [string, number] {
  const [kind, factor] = SAME_KIND[unit] ?? [unit, 1];
  return [kind, value * factor];
}

function same(a: Amount, b: Amount): boolean {
  const [kindA, sizeA] = measure(a);
  const [kindB, sizeB] = measure(b);
  return kindA === kindB && Math.abs(sizeA - sizeB) <= 1e-6 * Math.max(Math.abs(sizeA), Math.abs(sizeB));
}

/** Both ends of a figure: the value, and the upper end of a range. */
const ends = ({ value, high, unit }: GoldFigure): readonly Amount[] =>
  high === undefined
    ? [{ value, unit }]
    : [
        { value, unit },
        { value: high, unit },
      ];

function figureFaults(figure: GoldFigure): string[] {
  const faults: string[] = [];
  const known: boolean =
    figure.dimension === 'money'
      ? /^[A-Z]{3}$/.test(figure.unit)
      : (UNITS[figure.dimension] ?? '').split(' ').includes(figure.unit);
  if (!known) faults.push(`unit ${figure.unit} is none of ${figure.dimension}`);
  if (!ATTRIBUTES.includes(figure.attribute)) faults.push(`attribute ${figure.attribute}`);
  if (!BOUNDS.includes(figure.bound)) faults.push(`bound ${figure.bound}`);
  if (!DIMENSIONS.includes(figure.dimension)) faults.push(`dimension ${figure.dimension}`);
  if ((figure.bound === 'between') !== (figure.high !== undefined)) faults.push('between and high part ways');
  if (figure.high !== undefined && figure.high <= figure.value) faults.push('high is not above the value');
  if ((figure.plusMinus === undefined) !== (figure.plusMinusUnit === undefined))
    faults.push('plusMinus without its unit');
  return faults.map((fault) => `${JSON.stringify(figure.quote)}: ${fault}`);
}

function breaks(limit: GoldFigure, now: Amount): boolean {
  const [kind, size] = measure(now);
  const [low, high] = ends(limit).map(measure);
  if (!low || kind !== low[0]) return false;
  if (limit.bound === 'at-least') return size < low[1];
  if (limit.bound === 'at-most') return size > low[1];
  return high !== undefined && (size < low[1] || size > high[1]);
}

function conflictFaults(conflict: GoldConflict, before: readonly GoldFigure[], memo: GoldMemo): string[] {
  const faults: string[] = [];
  const { was, now, kind } = conflict;
  const figures = memo.figures ?? [];
  const earlier = [...before, ...figures].filter((figure) => ends(figure).some((end) => same(end, was)));
  if (!CONFLICT_KINDS.includes(kind)) faults.push(`kind ${kind}`);
  if (!ATTRIBUTES.includes(conflict.attribute)) faults.push(`attribute ${conflict.attribute}`);
  if (same(was, now)) faults.push('was and now are the same');
  if (earlier.length === 0) faults.push(`nobody said ${was.value} ${was.unit} before`);
  if (kind !== 'stale' && !figures.some((figure) => same(figure, now)))
    faults.push(`${now.value} ${now.unit} is no figure of this memo`);
  if (kind === 'limit' && !earlier.some((figure) => breaks(figure, now))) faults.push('no limit is broken');
  return faults.map((fault) => `conflict over ${conflict.item}: ${fault}`);
}

function quoteFaults(memo: GoldMemo): string[] {
  const lists = [
    memo.figures,
    memo.decisions,
    memo.tasks,
    memo.done,
    memo.arrivals,
    memo.problems,
    memo.promises,
  ];
  const quotes = lists.flatMap((list) => (list ?? []).map((note) => note.quote));
  return quotes.flatMap((quote) => {
    const first = memo.text.indexOf(quote);
    if (!quote || first < 0) return [`not in the text: ${JSON.stringify(quote)}`];
    // A quote that stands twice would be scored at the wrong place.
    return memo.text.indexOf(quote, first + 1) < 0 ? [] : [`stands twice: ${JSON.stringify(quote)}`];
  });
}

function dateFaults(memo: GoldMemo): string[] {
  const day = memo.recordedAt.slice(0, 10);
  const dates = [
    ...(memo.tasks ?? []).map((task) => task.due),
    ...(memo.arrivals ?? []).map((arrival) => arrival.expected),
  ];
  const faults = dates
    .filter((date) => typeof date === 'string')
    .filter((date) => !DATE.test(date) || Number.isNaN(Date.parse(date)) || date < day)
    .map((date) => `date ${date} is no day from ${day} on`);
  return STAMP.test(memo.recordedAt) ? faults : [...faults, `recordedAt ${memo.recordedAt}`];
}

/** Every fault found, each with its memo; empty when the story can stand. */
export function storyFaults(story: Story): string[] {
  const faults: string[] = [];
  const taskIds: string[] = [];
  const closed = new Set<string>();
  const before: GoldFigure[] = [];
  let last = 0;
  for (const memo of story.memos) {
    const add = (more: readonly string[]) => faults.push(...more.map((fault) => `${memo.id} ${fault}`));
    const words = memo.text.split(/\s+/).length;
    if (words < WORDS_LEAST || words > WORDS_MOST) add([`has ${words} words`]);
    if (Date.parse(memo.recordedAt) <= last) add(['was recorded before the memo ahead of it']);
    last = Date.parse(memo.recordedAt);
    add(quoteFaults(memo));
    add(dateFaults(memo));
    add((memo.figures ?? []).flatMap(figureFaults));
    for (const note of memo.done ?? []) {
      if (!note.closes) continue;
      if (!taskIds.includes(note.closes)) add([`closes ${note.closes}, which no earlier memo opened`]);
      if (closed.has(note.closes)) add([`closes ${note.closes} again`]);
      closed.add(note.closes);
    }
    (memo.tasks ?? []).forEach((task, index) => {
      if (task.id !== `${memo.id}.t${index + 1}`) add([`task id ${task.id} is out of order`]);
      taskIds.push(task.id);
    });
    add((memo.conflicts ?? []).flatMap((conflict) => conflictFaults(conflict, before, memo)));
    before.push(...(memo.figures ?? []));
  }
  const open = taskIds.filter((id) => !closed.has(id));
  if (open.join() !== story.openAtEnd.join()) faults.push(`open at the end: ${open.join(' ')}`);
  return faults;
}
