/** Finds figures of earlier memos by the words that they were told with, whatever name they go by. */
import type { Dimension } from '../language/notes.ts';
import type { Arriving } from './claims.ts';
import { LIMIT_MARK } from './counterpart.ts';
import { wordsOf } from './names.ts';
import type { StandingRow } from './rows.ts';
import { stemOf } from './stems.ts';
import { nearWords, type Place } from './talk.ts';
import { EMPTY } from './telling-words.ts';
import type { Working } from './working.ts';

/** Figures of one dimension that are looked at, the latest ones: talk goes on from what was told of late. */
const MOST_ROWS = 120;
/** Of those that share words, as many are looked at more closely. */
const MOST_ALIKE = 6;
/** What sharing a word with the sentence before is worth, beside one of the same sentence. */
const BESIDE = 0.5;
/** A dimension with so few figures leaves little doubt which one is meant. */
const FEW = 3;

/** Words that say how much and in what: they are in every figure's sentence. */
const AMOUNTS: ReadonlySet<string> = new Set(
  `zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen
  eighteen nineteen twenty thirty forty fifty sixty seventy eighty ninety hundred thousand million half quarter quarters
  eighth eighths sixteenth sixteenths thirds point nought oh mm mil mils millimetre millimetres millimeter millimeters
  cm centimetre centimetres metre metres meter meters inch inches foot feet yard yards kilo kilos kg gram grams tonne
  tonnes ton tons pound pounds ounce ounces litre litres liter liters gallon gallons quart quarts pint pints degree
  degrees celsius fahrenheit bar psi volt volts amp amps watt watts kilowatt hour hours minute minutes per cent percent
  square cubic about around roughly say exactly said told wide high long deep thick across tall now`
    .split(/\s+/)
    .map(stemOf),
);

/** The stems of a text that tell one thing from another: no fillers, no numbers, no units. */
const tellingOf = (text: string): readonly string[] => [
  ...new Set(
    wordsOf(text)
      .filter((word) => !/\d/.test(word))
      .map(stemOf)
      .filter((stem) => stem.length > 1 && !EMPTY.has(stem) && !AMOUNTS.has(stem)),
  ),
];

/** The words that a figure is told with, as a standing figure keeps them: those of its sentence, then of the one before. */
export function toldWith(place: Pick<Place, 'sentence' | 'until' | 'before'>): string {
  const own = tellingOf(nearWords(place));
  const before = tellingOf(place.before).filter((stem) => !own.includes(stem));
  return `${own.slice(0, MOST_WORDS).join(' ')}|${before.slice(-MOST_WORDS).join(' ')}`;
}
const MOST_WORDS = 16;

/** Some figures of a dimension by the words they were told with. */
interface Shelf {
  readonly rows: readonly StandingRow[];
  readonly byStem: ReadonlyMap<string, ReadonlyMap<string, number>>;
}

/** A figure that was told in like words. */
export interface ToldAlike {
  readonly slot: string;
  /** Shared words by their rarity: a word that only these two have is worth 1. */
  readonly shared: number;
  /** Its share of what the likest one comes to. */
  readonly ofBest: number;
}

export interface ToldBefore {
  /** Likest first. */
  readonly alike: readonly ToldAlike[];
  /** The figures of the dimension, where there are few of them. */
  readonly few: readonly StandingRow[];
  readonly rows: readonly StandingRow[];
}

const shelves = new WeakMap<Working, Map<Dimension, Shelf>>();

/** The earlier figures of a dimension, laid out once for each memo. */
function shelfOf(work: Working, dimension: Dimension): Shelf {
  const known = shelves.get(work) ?? new Map<Dimension, Shelf>();
  shelves.set(work, known);
  const before = known.get(dimension);
  if (before) return before;
  const own = `${work.memo.id}.`;
  const rows = work.draft
    .latestIn(dimension, MOST_ROWS)
    .filter(
      ({ slot, status, claimId }) =>
        status !== 'series' && !slot.includes(LIMIT_MARK) && !claimId?.startsWith(own),
    );
  const shelf = { rows, byStem: indexOf(rows) };
  known.set(dimension, shelf);
  return shelf;
}

function indexOf(rows: readonly StandingRow[]): Map<string, Map<string, number>> {
  const byStem = new Map<string, Map<string, number>>();
  for (const { slot, told } of rows) {
    const [own = '', before = ''] = told?.split('|') ?? [];
    for (const [words, worth] of [
      [before, BESIDE],
      [own, 1],
    ] as const) {
      for (const stem of words.split(' ')) {
        if (stem === '') continue;
        const holders = byStem.get(stem) ?? new Map<string, number>();
        byStem.set(stem, holders.set(slot, worth));
      }
    }
  }
  return byStem;
}

/** The figures of earlier memos that were told in words like those around an arriving one. */
export function toldBefore(work: Working, { note, place }: Arriving): ToldBefore {
  const { rows, byStem } = shelfOf(work, note.dimension);
  const shared = new Map<string, number>();
  const [own = '', before = ''] = toldWith(place).split('|');
  const add = (stems: string, worth: number) => {
    for (const stem of stems.split(' ')) {
      const holders = byStem.get(stem);
      for (const [slot, other] of holders ?? [])
        shared.set(slot, (shared.get(slot) ?? 0) + (worth * other) / Math.sqrt(holders?.size ?? 1));
    }
  };
  add(own, 1);
  add(before, BESIDE);
  const ranked = [...shared].sort(([, a], [, b]) => b - a).slice(0, MOST_ALIKE);
  const most = ranked[0]?.[1] ?? 1;
  return {
    alike: ranked.map(([slot, sum]) => ({ slot, shared: sum, ofBest: sum / most })),
    few: rows.length <= FEW ? rows : [],
    rows,
  };
}
