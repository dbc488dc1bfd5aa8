import type { Token } from '../tokens.ts';
import { countBeforeSize } from './count-before-size.ts';
import { readFraction, readFractionAfterWhole } from './fraction.ts';
import type { NumberReading } from './number.ts';
import {
  DIGIT_WORDS,
  FRACTION_SIGNS,
  OH_WORDS,
  REPEAT_WORDS,
  SCALE_WORDS,
  TEEN_WORDS,
  TENS_WORDS,
} from './number-words.ts';
import { addRest, afterHyphen, readDenominator, readRun, readSmall, readSpokenWhole } from './spoken.ts';

/** Region codes whose people write a comma for the decimal point. Common practice, no source. */
const COMMA_REGIONS: ReadonlySet<string> = new Set(
  'AT BE BG BR CZ DE DK EE ES FI FR GR HR HU IS IT LT LU LV NL NO PL PT RO RS SE SI SK TR UA'.split(' '),
);

/** True where "4,5" is four and a half and "1.200" may be twelve hundred. */
export function writesDecimalComma(region: string | undefined): boolean {
  return COMMA_REGIONS.has((region ?? '').toUpperCase());
}

interface Written {
  readonly value: number;
  readonly decimals: number;
  readonly alternatives?: readonly number[];
}

const decimalsOf = (text: string) => text.length - text.search(/[.,]/) - 1;

/** Value of digits as written: "1,220", "4,5", "2.4", "1.200". */
export function readDigits(text: string, decimalComma: boolean): Written | undefined {
  if (text.length > 24) return undefined;
  if (/^\d+$/.test(text)) return { value: Number(text), decimals: 0 };
  if (/^\d{1,3}(?:,\d{3})+(?:\.\d+)?$/.test(text)) {
    const value = Number(text.replaceAll(',', ''));
    const decimal = Number(text.replace(',', '.'));
    const lone = /^\d{1,3},\d{3}$/.test(text);
    return { value, decimals: 0, ...(lone && decimalComma ? { alternatives: [decimal] } : {}) };
  }
  if (/^\d{1,3}(?:\.\d{3})+,\d+$/.test(text)) {
    return {
      value: Number(text.replaceAll('.', '').replace(',', '.')),
      decimals: decimalsOf(text.replaceAll('.', '')),
    };
  }
  if (/^\d*\.\d+$/.test(text)) {
    // Where the comma marks decimals, a point before three digits marks thousands.
    if (decimalComma && /^[1-9]\d{0,2}\.\d{3}$/.test(text)) {
      return { value: Number(text.replace('.', '')), decimals: 0, alternatives: [Number(text)] };
    }
    return { value: Number(text), decimals: decimalsOf(text) };
  }
  if (/^\d+,\d+$/.test(text)) return { value: Number(text.replace(',', '.')), decimals: decimalsOf(text) };
  return undefined;
}

const UNIT_LIKE = /^(?:\p{L}*met(?:re|er)s?|mils?|mills?|lit(?:re|er|ter)s?|kilos?|amps?|volts?|bar)$/u;

/** What stands behind a number that was cut in two by a comma: a unit, a word of size, an end. */
const CLOSES_DECIMALS =
  /^(?:|[.;:]|\p{L}*met(?:re|er)s?|matters|mils?|mills?|lit(?:re|er)s?|kilos?|kilowatts?|amps?|volts?|bar|wide|high|long|deep|thick|tall|across|clear|now)$/u;

/** Digits after "point": "four", "two five", "twenty five", "04". */
function readDecimals(tokens: readonly Token[], from: number): { digits: string; to: number } | undefined {
  let digits = '';
  let index = from;
  while (digits.length < 6) {
    const token = tokens[index];
    if (!token) break;
    if (token.kind === 'number' && /^\d+$/.test(token.text) && digits === '') {
      return { digits: token.text, to: index + 1 };
    }
    const digit = DIGIT_WORDS.get(token.word) ?? (OH_WORDS.has(token.word) ? 0 : undefined);
    const pair = TEEN_WORDS.get(token.word);
    // "five point to metres": a recogniser's "two".
    if (digits === '' && /^(?:to|too)$/.test(token.word) && UNIT_LIKE.test(tokens[index + 1]?.word ?? '')) {
      return { digits: '2', to: index + 1 };
    }
    const tens = TENS_WORDS.get(token.word);
    // "four point seven, four long".
    if (token.word === ',' && digits.length === 1) {
      const more = DIGIT_WORDS.get(tokens[index + 1]?.word ?? '');
      if (more === undefined || !CLOSES_DECIMALS.test(tokens[index + 2]?.word ?? '')) break;
      return { digits: digits + String(more), to: index + 2 };
    }
    if (tens !== undefined) {
      const next = afterHyphen(tokens, index + 1);
      const unit = DIGIT_WORDS.get(tokens[next]?.word ?? '');
      digits += String(tens + (unit ?? 0));
      index = unit ? next + 1 : index + 1;
      break;
    }
    if (digit === undefined && pair === undefined) break;
    digits += String(digit ?? pair);
    index++;
    if (pair !== undefined) break;
  }
  return digits ? { digits, to: index } : undefined;
}

/** Words before "point five" that make it a point in time or space and no decimal mark. */
const NOT_BEFORE_POINT =
  /^(?:this|that|the|a|some|one|which|what|each|every|any|no|my|focal|starting|high|low)$/;

function readPoint(tokens: readonly Token[], at: number, whole: number): NumberReading | undefined {
  if (!/^(?:point|komma|comma)$/.test(tokens[at]?.word ?? '')) return undefined;
  // "two point, one metre": a recogniser hears a pause there.
  const paused = tokens[at + 1]?.word === ',' && at > 0 && DIGIT_WORDS.has(tokens[at + 2]?.word ?? '');
  const decimals = readDecimals(tokens, paused ? at + 2 : at + 1);
  if (!decimals || (paused && !CLOSES_DECIMALS.test(tokens[decimals.to]?.word ?? ''))) return undefined;
  const value = Number(`${whole}.${decimals.digits}`);
  return { from: at, to: decimals.to, value, form: 'words', decimals: decimals.digits.length };
}

interface Whole {
  readonly to: number;
  readonly value: number;
  readonly form: 'digits' | 'words';
  readonly decimals?: number;
  readonly splitAfter?: number;
  readonly alternatives?: readonly number[];
}

function readWhole(tokens: readonly Token[], from: number, decimalComma: boolean): Whole | undefined {
  const token = tokens[from];
  if (token?.kind !== 'number') {
    const counted = countBeforeSize(tokens, from);
    if (counted) return { to: counted.to, value: counted.value, form: 'words' };
    const spoken = readSpokenWhole(tokens, from);
    return spoken ? { ...spoken, form: 'words' } : undefined;
  }
  const written = readDigits(token.text, decimalComma);
  if (!written) return undefined;
  const { value, decimals, alternatives } = written;
  const next = tokens[from + 1];
  const scale = scaleAt(tokens, from + 1);
  if (scale === 100 && decimals === 0 && value < 100) {
    // "7 hundred and fifty".
    const { to, value: all } = addRest(tokens, from + 2, value * scale, readSmall);
    return { to, value: all, form: 'digits' };
  }
  if (scale) {
    // "17 thousand 2 40": hundreds said in groups behind it.
    const rest = scale === 1000 && decimals === 0 ? readRun(tokens, from + 2) : undefined;
    const grouped = rest?.splitAfter === 1 && rest.value >= 100 && rest.value < 1000;
    return grouped
      ? { to: rest.to, value: value * scale + rest.value, form: 'digits' }
      : { to: from + 2, value: value * scale, form: 'digits' };
  }
  if (next && !next.spaced && next.word === 'k') return { to: from + 2, value: value * 1000, form: 'digits' };
  // "9 oh 5", as a recogniser may write "nine oh five".
  if (next && /^(?:oh|o)$/.test(next.word) && decimals === 0 && value < 100) {
    const tail = tokens[from + 2];
    const digit =
      tail?.kind === 'number' && /^\d$/.test(tail.text)
        ? Number(tail.text)
        : DIGIT_WORDS.get(tail?.word ?? '');
    if (digit !== undefined) {
      return { to: from + 3, value: value * 100 + digit, form: 'digits', splitAfter: String(value).length };
    }
  }
  // "1 200 mm": a space for the thousands, three digits after it and none touching.
  if (
    next?.kind === 'number' &&
    next.spaced &&
    /^\d{1,3}$/.test(token.text) &&
    /^\d{3}$/.test(next.text) &&
    decimalComma
  ) {
    return { to: from + 2, value: value * 1000 + Number(next.text), form: 'digits' };
  }
  const run = decimals === 0 ? readRun(tokens, from) : undefined;
  if (run?.splitAfter) return { ...run, form: 'digits' };
  return {
    to: from + 1,
    value,
    form: 'digits',
    ...(decimals ? { decimals } : {}),
    ...(alternatives ? { alternatives } : {}),
  };
}

const scaleAt = (tokens: readonly Token[], at: number) =>
  tokens[at]?.word === 'hundred' ? 100 : SCALE_WORDS.get(tokens[at]?.word ?? '');

/** "a couple of mil", "a couple mil". */
function readCouple(tokens: readonly Token[], from: number): NumberReading | undefined {
  const at = tokens[from]?.word === 'a' ? from + 1 : from;
  if (tokens[at]?.word !== 'couple') return undefined;
  const to = tokens[at + 1]?.word === 'of' ? at + 2 : at + 1;
  const scale = scaleAt(tokens, to);
  if (scale) return { from, to: to + 1, value: 2 * scale, form: 'words', loose: true };
  return { from, to, value: 2, form: 'words', loose: true };
}

/** Every word that a number can begin with. */
const BEGINS: ReadonlySet<string> = new Set([
  ...DIGIT_WORDS.keys(),
  ...TEEN_WORDS.keys(),
  ...TENS_WORDS.keys(),
  ...REPEAT_WORDS.keys(),
  ...['into', 'for', 'a', 'an', 'couple', 'half', 'hundred', 'point', 'to', 'too'],
]);

/** Whether a number may begin with a token: most words of any talk begin none. */
export function mayBegin(token: Token): boolean {
  if (token.kind === 'word') return BEGINS.has(token.word);
  return token.kind === 'number' || FRACTION_SIGNS.has(token.text);
}

/** Readings by token, kept for as long as the tokens are: every rule asks again at the same place. */
const KEPT = new WeakMap<readonly Token[], Map<number, NumberReading | null>>();

/**
 * Reads the number that starts at token `from`, the longest that people say as one.
 * @returns undefined when none starts there. "One" alone is a number here; whether it counts is for the rules.
 */
export function readNumber(
  tokens: readonly Token[],
  from: number,
  decimalComma = false,
): NumberReading | undefined {
  const token = tokens[from];
  if (!token || !mayBegin(token)) return undefined;
  let kept = KEPT.get(tokens);
  if (!kept) {
    kept = new Map();
    KEPT.set(tokens, kept);
  }
  const key = decimalComma ? -1 - from : from;
  const known = kept.get(key);
  if (known !== undefined) return known ?? undefined;
  const reading = readAnew(tokens, from, decimalComma);
  kept.set(key, reading ?? null);
  return reading;
}

/** Words before "one" that make it stand for a thing: "the top one seven fifty". */
const TELLS_WHICH =
  /^(?:top|bottom|other|front|rear|old|big|small|little|first|second|third|middle|inner|outer|upper|lower|long|short|wide|narrow|tall|spare|far|larger|smaller|bigger|longer|shorter|wider|narrower|taller)$/;

/** "The upper one nine hundred": the number begins behind it. "A hundred" and "a thousand" are said with one. */
function isPronoun(tokens: readonly Token[], at: number): boolean {
  if (tokens[at]?.word !== 'one' || !TELLS_WHICH.test(tokens[at - 1]?.word ?? '')) return false;
  const next = tokens[at + 1];
  return next !== undefined && !/^(?:hundred|thousand|point|and|million)$/.test(next.word) && mayBegin(next);
}

function readAnew(tokens: readonly Token[], from: number, decimalComma: boolean): NumberReading | undefined {
  if (isPronoun(tokens, from)) return undefined;
  const couple = readCouple(tokens, from);
  if (couple) return couple;
  const lost =
    tokens[from]?.word === 'for' && tokens[from + 1]?.word === 'point'
      ? readPoint(tokens, from + 1, 4)
      : undefined;
  // "for point eight metres long": four, when a unit follows.
  if (lost)
    return CLOSES_DECIMALS.test(tokens[lost.to]?.word ?? '.') && !/^[.;:]?$/.test(tokens[lost.to]?.word ?? '')
      ? { ...lost, from }
      : undefined;
  if (tokens[from]?.word === 'point') {
    const blocked = NOT_BEFORE_POINT.test(tokens[from - 1]?.word ?? '');
    return blocked ? undefined : readPoint(tokens, from, 0);
  }
  const fraction = readFraction(tokens, from);
  if (fraction) {
    return {
      from,
      to: fraction.to,
      value: fraction.value,
      form: tokens[from]?.kind === 'number' ? 'digits' : 'words',
      fraction: true,
      denominator: fraction.denominator,
    };
  }
  const whole = readWhole(tokens, from, decimalComma);
  if (!whole) return undefined;
  // "Twelve-point eight", as a recogniser writes it.
  const behind = afterHyphen(tokens, whole.to);
  const point = whole.decimals || whole.splitAfter ? undefined : readPoint(tokens, behind, whole.value);
  if (point) return { ...point, from, form: whole.form };
  return { ...withFraction(tokens, whole), from };
}

function withFraction(tokens: readonly Token[], whole: Whole): Omit<NumberReading, 'from'> {
  const rest = whole.decimals ? undefined : readFractionAfterWhole(tokens, whole.to);
  if (!rest) return whole;
  const value = whole.value + rest.value;
  const part = readDenominator(tokens, rest.to);
  // "two and a half hundredths".
  if (part?.plural && part.value >= 10) {
    return {
      to: part.to,
      value: value / part.value,
      form: whole.form,
      fraction: true,
      denominator: part.value,
    };
  }
  const scale = SCALE_WORDS.get(tokens[rest.to]?.word ?? '');
  // "two and a half thousand".
  if (scale) return { to: rest.to + 1, value: value * scale, form: whole.form };
  return {
    to: rest.to,
    value,
    form: whole.form,
    fraction: true,
    denominator: rest.denominator,
    ...(whole.splitAfter ? { splitAfter: whole.splitAfter } : {}),
  };
}
