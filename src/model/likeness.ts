/**
 * Likenesses of two figures that point to a slip: of the tongue, of the unit, of the tape or of the recogniser.
 * Each test answers with plain words, or undefined.
 */
import type { Quantity } from '../language/notes.ts';
import { exactQuantity } from './units.ts';

export interface Likeness {
  readonly kind: 'sounds' | 'digits' | 'decimal' | 'unit' | 'tape';
  /** "fifteen and fifty sound alike" */
  readonly words: string;
  /** 0 to 1: how much this likeness alone says for a slip. */
  readonly weight: number;
}

type Test = (was: Quantity, now: Quantity, pair: Pair) => Likeness | undefined;

/** Two figures of one kind as plain numbers: most tests are ruled out by these before a digit is looked at. */
interface Pair {
  readonly kind: string;
  /** In the kind's base unit. */
  readonly was: number;
  readonly now: number;
  /** How many times the newer one is the older; undefined where one is nothing. */
  readonly ratio: number | undefined;
  /**
   * Of two whole numbers in one unit what is left of their difference divided by nine, 0 to 8: a digit that moves keeps
   * its worth there. Undefined of other pairs.
   */
  readonly byNine: number | undefined;
}

/** The strongest likeness of two figures, if they are alike at all. */
export function likenessOf(was: Quantity, now: Quantity, region?: string): Likeness | undefined {
  const [left, right] = [exactQuantity(was, region), exactQuantity(now, region)];
  if (!left || !right || left.kind !== right.kind) return undefined;
  const ratio = left.size === 0 || right.size === 0 ? undefined : right.size / left.size;
  const isWhole = was.unit === now.unit && Number.isSafeInteger(was.value) && Number.isSafeInteger(now.value);
  const byNine = isWhole ? Math.abs(Math.abs(was.value) - Math.abs(now.value)) % 9 : undefined;
  const pair = { kind: left.kind, was: left.size, now: right.size, ratio, byNine };
  let strongest: Likeness | undefined;
  // Of equals the first one is told.
  for (const test of TESTS) {
    const found = test(was, now, pair);
    if (found && (!strongest || found.weight > strongest.weight)) strongest = found;
  }
  return strongest;
}

const SMALL =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(
    ' ',
  );
const TENS = ['', '', 'twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety'];

/** A number below a hundred in words, for messages. */
function inWords(value: number): string {
  if (value < 20) return SMALL[value] ?? String(value);
  const unit = value % 10;
  return `${TENS[Math.floor(value / 10)]}${unit === 0 ? '' : ` ${SMALL[unit]}`}`;
}

/** 13 and 30, 1400 and 4000 (fourteen hundred, forty hundred): the ending decides, and endings get lost. */
const teenOrTy: Test = (was, now, { byNine = 8 }) => {
  // 17 of 13 and 30, 26 of 14 and 40: always eight more than nines.
  if (was.unit !== now.unit || byNine !== 8) return undefined;
  for (const scale of scales(was.value, now.value)) {
    const [a, b] = [was.value / scale, now.value / scale];
    const [low, high] = a < b ? [a, b] : [b, a];
    if (!Number.isInteger(low) || !Number.isInteger(high)) continue;
    if (low >= 13 && low <= 19 && high === (low - 10) * 10) {
      return { kind: 'sounds', words: `"${inWords(low)}" and "${inWords(high)}" sound alike`, weight: 0.9 };
    }
    // "a hundred and fifteen" and "a hundred and fifty".
    const [lowRest, highRest] = [low % 100, high % 100];
    const sameHundred = Math.floor(low / 100) === Math.floor(high / 100);
    if (sameHundred && low > 100 && lowRest >= 13 && lowRest <= 19 && highRest === (lowRest - 10) * 10) {
      return {
        kind: 'sounds',
        words: `"${inWords(lowRest)}" and "${inWords(highRest)}" sound alike`,
        weight: 0.9,
      };
    }
  }
  return undefined;
};

/** "sixteen and a half", "sixteen point five" and "sixty five": the same ending lost, with tenths behind it. */
const teenWithTenths: Test = (was, now) => {
  if (was.unit !== now.unit) return undefined;
  const [low, high] = was.value < now.value ? [was.value, now.value] : [now.value, was.value];
  const teen = Math.floor(low);
  const tenth = Math.round((low - teen) * 10);
  if (teen < 13 || teen > 19 || tenth === 0 || Math.abs(low - teen - tenth / 10) > 1e-9) return undefined;
  if (high !== (teen - 10) * 10 + tenth) return undefined;
  return { kind: 'sounds', words: `"${low}" and "${inWords(high)}" sound alike`, weight: 0.9 };
};

/** "fourteen thousand" and "four thousand": a syllable got lost. */
const lostTeen: Test = (was, now, { byNine = 1 }) => {
  if (was.unit !== now.unit || byNine !== 1) return undefined;
  for (const scale of scales(was.value, now.value)) {
    const [a, b] = [was.value / scale, now.value / scale];
    const [low, high] = a < b ? [a, b] : [b, a];
    if (!Number.isInteger(low) || !Number.isInteger(high)) continue;
    if (low >= 3 && low <= 9 && high === low + 10) {
      return { kind: 'sounds', words: `"${inWords(low)}" and "${inWords(high)}" sound alike`, weight: 0.6 };
    }
  }
  return undefined;
};

/** Pairs whose sounds recognisers and tired ears mix up. */
const SOUND_ALIKE: readonly (readonly [number, number])[] = [
  [5, 9],
  [2, 10],
  [6, 16],
  [7, 11],
];

const soundAlike: Test = (was, now) => {
  if (was.unit !== now.unit) return undefined;
  for (const [a, b] of SOUND_ALIKE) {
    if ((was.value === a && now.value === b) || (was.value === b && now.value === a)) {
      return {
        kind: 'sounds',
        words: `"${inWords(a)}" and "${inWords(b)}" are easily mixed up`,
        weight: 0.35,
      };
    }
  }
  return undefined;
};

/** 1102 and 1012: two neighbouring digits changed places. */
const swappedDigits: Test = (was, now, { byNine = 0 }) => {
  // The same digits in another order are whole nines apart.
  if (was.unit !== now.unit || byNine !== 0) return undefined;
  const [a, b] = [digitsOf(was.value), digitsOf(now.value)];
  if (a.length !== b.length || a.length < 2 || a === b) return undefined;
  const at = [...a].findIndex((digit, index) => digit !== b[index]);
  const swapped = a.slice(0, at) + (a[at + 1] ?? '') + (a[at] ?? '') + a.slice(at + 2);
  if (swapped !== b) return undefined;
  // Two digits alone swap by chance often: 12 and 21 say less than 1102 and 1012.
  return {
    kind: 'digits',
    words: `two neighbouring digits changed places: ${a} and ${b}`,
    weight: a.length > 2 ? 0.85 : 0.55,
  };
};

/** 26 1/4 and 29 1/4: a tape read upside down. */
const upsideDown: Test = (was, now, { byNine = 3 }) => {
  // 6 for 9 at any place: three, thirty, three hundred apart.
  if (was.unit !== now.unit || byNine !== 3) return undefined;
  const [a, b] = [String(was.value), String(now.value)];
  if (a.length !== b.length || a.length < 2 || a === b) return undefined;
  const differs = [...a].flatMap((digit, index) => (digit === b[index] ? [] : [`${digit}${b[index]}`]));
  if (differs.length !== 1 || (differs[0] !== '69' && differs[0] !== '96')) return undefined;
  return { kind: 'tape', words: 'a tape read upside down shows 6 for 9', weight: 0.6 };
};

/** The figure is the same and the unit another: 4 ft and 4 in, 1385 mm and 1385 cm. */
const sameNumber: Test = (was, now) => {
  if (was.unit === now.unit || was.value !== now.value) return undefined;
  return { kind: 'unit', words: `the same number in ${now.unit} and in ${was.unit}`, weight: 0.95 };
};

/** Ratios that a wrong unit or a lost decimal point gives. */
const RATIOS: readonly (readonly [
  factor: number,
  words: string,
  kind: Likeness['kind'],
  weight: number,
  /** What is measured in both of the units; absent where a point or a nought is lost in any. */
  of?: string,
])[] = [
  [10, 'a factor of ten: a lost point or nought, or millimetres for centimetres', 'decimal', 0.9],
  [100, 'a factor of a hundred: a lost point, or centimetres for metres', 'decimal', 0.9],
  [1000, 'a factor of a thousand: millimetres for metres, grams for kilos', 'decimal', 0.9],
  [25.4, 'a factor of 25.4: inches for millimetres', 'unit', 0.9, 'length'],
  [2.54, 'a factor of 2.54: inches for centimetres', 'unit', 0.85, 'length'],
  [12, 'a factor of twelve: feet for inches', 'unit', 0.6, 'length'],
  [304.8, 'a factor of 304.8: feet for millimetres', 'unit', 0.9, 'length'],
  [2.20462, 'a factor of 2.2: pounds for kilos', 'unit', 0.7, 'mass'],
  [1.35582, 'a factor of 1.36: foot pounds for newton metres', 'unit', 0.7, 'torque'],
  [3.78541, 'a factor of 3.79: US gallons for litres', 'unit', 0.6, 'volume'],
  [4.54609, 'a factor of 4.55: imperial gallons for litres', 'unit', 0.6, 'volume'],
  [6.89476, 'a factor of 6.89: kilopascals for pounds per square inch', 'unit', 0.6, 'pressure'],
  [14.5038, 'a factor of 14.5: bar for pounds per square inch', 'unit', 0.6, 'pressure'],
];
const FACTOR_SLACK = 0.003;
/** The same by name: every pair of figures goes through them. */
const FACTORS = RATIOS.map(([value, words, kind, weight, of]) => ({
  value,
  of,
  likeness: { kind, words, weight } satisfies Likeness,
}));
const [LEAST_FACTOR, MOST_FACTOR] = [1.3, 1100];

const factor: Test = (_was, _now, { kind, ratio }) => {
  if (ratio === undefined || ratio <= 0) return undefined;
  const size = ratio > 1 ? ratio : 1 / ratio;
  if (size < LEAST_FACTOR || size > MOST_FACTOR) return undefined;
  for (const { value, of, likeness } of FACTORS)
    if (Math.abs(size / value - 1) < FACTOR_SLACK && (of === undefined || of === kind)) return likeness;
  return undefined;
};

const MARKS = [
  { mm: 25.4, words: 'an inch' },
  { mm: 10, words: '10 mm' },
  { mm: 100, words: '100 mm' },
];

/** Exactly an inch, ten or a hundred millimetres off: a tape read at the wrong mark, or burnt an inch and forgot. */
const wrongMark: Test = (_was, _now, { kind, was, now }) => {
  if (kind !== 'length') return undefined;
  const mm = Math.abs(now - was) * 1000;
  const size = Math.max(Math.abs(was), Math.abs(now)) * 1000;
  for (const mark of MARKS) {
    if (Math.abs(mm - mark.mm) >= 0.01 || size <= mark.mm * 4) continue;
    // Said of measurements alone; a size chosen anew is often a round step away.
    return {
      kind: 'tape',
      words: `exactly ${mark.words} apart: a tape read at the wrong mark`,
      weight: 0.25,
    };
  }
  return undefined;
};

const TESTS: readonly Test[] = [
  teenOrTy,
  teenWithTenths,
  lostTeen,
  soundAlike,
  swappedDigits,
  upsideDown,
  sameNumber,
  factor,
  wrongMark,
];

/** Powers of ten that both numbers are whole multiples of, from one up. */
function scales(a: number, b: number): readonly number[] {
  const found = [1];
  for (let scale = 10; scale <= 1000; scale *= 10) if (a % scale === 0 && b % scale === 0) found.push(scale);
  for (const scale of [0.1, 0.01]) {
    if (!Number.isInteger(a) || !Number.isInteger(b)) found.push(scale);
  }
  return found;
}

const digitsOf = (value: number): string => String(Math.abs(value)).replace('.', '');
