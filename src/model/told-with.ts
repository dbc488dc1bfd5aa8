/** Finds figures of earlier memos by the words that they were told with, whatever name they go by. */

import type { Dimension } from '../language/notes.ts';
import { remembered } from '../remembered.ts';
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

/** Texts whose telling stems are kept: a sentence is asked for with each of its figures, and with those behind it. */
const MOST_KEPT = 2000;

/** The stems of a text that tell one thing from another: no fillers, no numbers, no units. */
const tellingOf = remembered(MOST_KEPT, (text): readonly string[] => {
  const words = wordsOf(text).filter((word) => !/\d/.test(word));
  const isTelling = (stem: string) => stem.length > 1 && !EMPTY.has(stem) && !AMOUNTS.has(stem);
  return [...new Set(words.map(stemOf).filter(isTelling))];
});

/** The words that a figure is told with, as a standing figure keeps them: those of its sentence, then of the one before. */
export function toldWith(place: ToldPlace): string {
  const { own, before } = toldAround(place);
  return `${own.join(' ')}|${before.join(' ')}`;
}
type ToldPlace = Pick<Place, 'sentence' | 'until' | 'before'>;

type WordsAround = Pick<Told, 'own' | 'before'>;

function toldAround(place: ToldPlace): WordsAround {
  const known = around.get(place);
  if (known) return known;
  const own = tellingOf(nearWords(place));
  const before = tellingOf(place.before).filter((stem) => !own.includes(stem));
  const found = { own: own.slice(0, MOST_WORDS), before: before.slice(-MOST_WORDS) };
  around.set(place, found);
  return found;
}
/** A figure's place is asked for its words when it is held against others, and when it is filed. */
const around = new WeakMap<ToldPlace, WordsAround>();
const MOST_WORDS = 16;

/** The words of a standing figure's own sentence, and of the one before. */
interface Told {
  readonly own: readonly string[];
  readonly before: readonly string[];
  readonly all: ReadonlySet<string>;
  /** Whether a later figure may be held against it: no limit and no series. */
  readonly isShelved: boolean;
}

/** Taken apart once for each row: a figure is held against those of many memos. */
const told = new WeakMap<StandingRow, Told>();

function toldOf(row: StandingRow): Told {
  const known = told.get(row);
  if (known) return known;
  const [own = [], before = []] = row.told?.split('|').map(wordsIn) ?? [];
  const isShelved = row.status !== 'series' && !row.slot.includes(LIMIT_MARK);
  const apart = { own, before, all: new Set([...own, ...before]), isShelved };
  told.set(row, apart);
  return apart;
}
const wordsIn = (words: string): readonly string[] => words.split(' ').filter((word) => word !== '');

/** Every word that a standing figure was told with. */
export const wordsToldWith = (row: StandingRow): ReadonlySet<string> => toldOf(row).all;

/** Some figures of a dimension by the words they were told with. */
interface Shelf {
  readonly rows: readonly StandingRow[];
  /** Twice the place of each figure on the shelf that has the stem, and one more where its own sentence has it. */
  readonly byStem: ReadonlyMap<string, readonly number[]>;
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
    .filter((row) => toldOf(row).isShelved && !row.claimId?.startsWith(own));
  const shelf = { rows, byStem: indexOf(rows) };
  known.set(dimension, shelf);
  return shelf;
}

function indexOf(rows: readonly StandingRow[]): ReadonlyMap<string, readonly number[]> {
  const byStem = new Map<string, number[]>();
  const hold = (stem: string, holder: number) => {
    const holders = byStem.get(stem);
    if (holders) holders.push(holder);
    else byStem.set(stem, [holder]);
  };
  rows.forEach((row, place) => {
    const { own, before } = toldOf(row);
    for (const stem of before) hold(stem, 2 * place);
    for (const stem of own) hold(stem, 2 * place + 1);
  });
  return byStem;
}

/** The figures of earlier memos that were told in words like those around an arriving one. */
export function toldBefore(work: Working, { note, place }: Arriving): ToldBefore {
  const { rows, byStem } = shelfOf(work, note.dimension);
  const { own, before } = toldAround(place);
  const shared = new Float64Array(rows.length);
  const sharing: number[] = [];
  const add = (stems: readonly string[], worth: number) => {
    for (const stem of stems) {
      const holders = byStem.get(stem) ?? [];
      const rarity = Math.sqrt(holders.length);
      for (const holder of holders) {
        const at = holder >> 1;
        const sum = shared[at] ?? 0;
        if (sum === 0) sharing.push(at);
        shared[at] = sum + (worth * (holder & 1 ? 1 : BESIDE)) / rarity;
      }
    }
  };
  add(own, 1);
  add(before, BESIDE);
  const ranked = highestOf(sharing, shared, MOST_ALIKE);
  const most = shared[ranked[0] ?? -1] ?? 1;
  return {
    alike: ranked.map((at) => {
      const sum = shared[at] ?? 0;
      return { slot: rows[at]?.slot ?? '', shared: sum, ofBest: sum / most };
    }),
    few: rows.length <= FEW ? rows : [],
    rows,
  };
}

/** The places of the highest sums, highest first; of equals the one that was met first. */
function highestOf(places: readonly number[], sums: Float64Array, most: number): readonly number[] {
  const best: number[] = [];
  for (const place of places) {
    const sum = sums[place] ?? 0;
    let at = best.length;
    while (at > 0 && (sums[best[at - 1] as number] ?? 0) < sum) at--;
    if (at >= most) continue;
    best.splice(at, 0, place);
    if (best.length > most) best.pop();
  }
  return best;
}
