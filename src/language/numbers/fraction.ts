import type { Token } from '../tokens.ts';
import { DIGIT_WORDS, FRACTION_SIGNS, TEEN_WORDS, TENS_WORDS, WRITTEN_DENOMINATORS } from './number-words.ts';
import { afterHyphen, readDenominator } from './spoken.ts';

export interface FractionReading {
  readonly to: number;
  readonly value: number;
  readonly denominator: number;
}

/** Denominators as a recogniser may write them. */
const MISHEARD: ReadonlyMap<string, number> = new Map([
  ['eights', 8],
  ['sixteens', 16],
]);

const WHOLE_DIGITS = /^\d{1,2}$/;

/** "3/8": a number, a stroke and a number without spaces, below one, with a denominator that tapes have. */
function readWritten(tokens: readonly Token[], from: number): FractionReading | undefined {
  const [over, stroke, under, after] = [tokens[from], tokens[from + 1], tokens[from + 2], tokens[from + 3]];
  if (!over || !under || over.kind !== 'number' || under.kind !== 'number') return undefined;
  if (!stroke || !/^[/⁄]$/.test(stroke.word) || stroke.spaced || under.spaced) return undefined;
  if (!WHOLE_DIGITS.test(over.text) || !WHOLE_DIGITS.test(under.text)) return undefined;
  // A second stroke makes it a date.
  if (after?.word === '/' && !after.spaced) return undefined;
  const [top, bottom] = [Number(over.text), Number(under.text)];
  if (top === 0 || top >= bottom || !WRITTEN_DENOMINATORS.has(bottom)) return undefined;
  return { to: from + 3, value: top / bottom, denominator: bottom };
}

function readSign(token: Token | undefined, from: number): FractionReading | undefined {
  const value = FRACTION_SIGNS.get(token?.text ?? '');
  if (!token || value === undefined) return undefined;
  const denominator = [2, 3, 4, 8].find((size) => Number.isInteger(value * size)) ?? 8;
  return { to: from + 1, value, denominator };
}

function numeratorAt(tokens: readonly Token[], from: number): { value: number; to: number } | undefined {
  const token = tokens[from];
  if (!token) return undefined;
  if (token.kind === 'number' && WHOLE_DIGITS.test(token.text))
    return { value: Number(token.text), to: from + 1 };
  const tens = TENS_WORDS.get(token.word);
  if (tens) {
    const next = afterHyphen(tokens, from + 1);
    const unit = DIGIT_WORDS.get(tokens[next]?.word ?? '');
    return unit ? { value: tens + unit, to: next + 1 } : { value: tens, to: from + 1 };
  }
  const small = DIGIT_WORDS.get(token.word) ?? TEEN_WORDS.get(token.word);
  return small ? { value: small, to: from + 1 } : undefined;
}

/** "seven, sixteenths": a pause that a recogniser wrote down. */
function afterPause(tokens: readonly Token[], at: number) {
  const denominator = tokens[at]?.word === ',' ? readDenominator(tokens, at + 1) : undefined;
  return denominator?.plural && denominator.value >= 8 ? denominator : undefined;
}

const inchFollows = (tokens: readonly Token[], at: number) =>
  /^inch(?:es)?$/.test(tokens[tokens[at]?.word === 'of' ? at + 2 : at]?.word ?? '');

/** "five eights of an inch", "three sixteens inch": the recogniser heard the number and not the part. */
function misheard(tokens: readonly Token[], numerator: { readonly value: number; readonly to: number }) {
  const value = MISHEARD.get(tokens[numerator.to]?.word ?? '');
  if (!value || numerator.value % 2 === 0 || !inchFollows(tokens, numerator.to + 1)) return undefined;
  return { value, to: numerator.to + 1, plural: true };
}

/** "three eighths", "one quarter", "seven thirty-seconds", "3 quarters". */
function readSpoken(tokens: readonly Token[], from: number): FractionReading | undefined {
  const numerator = numeratorAt(tokens, from);
  if (!numerator) return undefined;
  const denominator =
    readDenominator(tokens, afterHyphen(tokens, numerator.to)) ??
    afterPause(tokens, numerator.to) ??
    misheard(tokens, numerator);
  if (!denominator || numerator.value >= denominator.value) return undefined;
  // "one second coat", "three quarter inch": only quarters go without their plural.
  const long = denominator.value >= 32 && inchFollows(tokens, denominator.to);
  const singular = numerator.value === 1 || denominator.value === 4 || long;
  if (!denominator.plural && !singular) return undefined;
  return { to: denominator.to, value: numerator.value / denominator.value, denominator: denominator.value };
}

/** "a half", "an eighth", "a sixteenth": the article is the numerator. */
function readWithArticle(tokens: readonly Token[], from: number): FractionReading | undefined {
  if (!/^an?$/.test(tokens[from]?.word ?? '')) return undefined;
  const denominator = readDenominator(tokens, from + 1);
  if (!denominator || denominator.plural) return undefined;
  return { to: denominator.to, value: 1 / denominator.value, denominator: denominator.value };
}

/** Reads a fraction below one that starts at `from`. */
export function readFraction(tokens: readonly Token[], from: number): FractionReading | undefined {
  return (
    readSign(tokens[from], from) ??
    readWritten(tokens, from) ??
    readWithArticle(tokens, from) ??
    readSpoken(tokens, from)
  );
}

/** The fraction behind a whole number: "and a half", "-3/8", "½", "five eighths"; undefined when none follows. */
export function readFractionAfterWhole(tokens: readonly Token[], at: number): FractionReading | undefined {
  const token = tokens[at];
  if (!token) return undefined;
  if (token.word === 'and' || token.word === '&') {
    return readFraction(tokens, at + 1) ?? readBareHalf(tokens, at + 1) ?? readStrokeless(tokens, at + 1);
  }
  if (token.word === '-') {
    const next = tokens[at + 1];
    if (token.spaced || !next || next.spaced) return undefined;
    if (next.word === 'and') return readHyphened(tokens, afterHyphen(tokens, at + 2));
    return readWritten(tokens, at + 1) ?? readSign(next, at + 1) ?? readSpoken(tokens, at + 1);
  }
  return readSign(token, at) ?? readWritten(tokens, at) ?? readSpoken(tokens, at);
}

/** "nine-and-a-half", "two-and-three-quarter": the part behind "-and-". */
function readHyphened(tokens: readonly Token[], at: number): FractionReading | undefined {
  const article = /^an?$/.test(tokens[at]?.word ?? '');
  const denominator = article ? readDenominator(tokens, afterHyphen(tokens, at + 1)) : undefined;
  if (denominator && !denominator.plural) {
    return { to: denominator.to, value: 1 / denominator.value, denominator: denominator.value };
  }
  return readFraction(tokens, at) ?? readBareHalf(tokens, at);
}

/** "24 and 3 8": a recogniser lost the stroke. Only parts of an inch tape, behind a whole number and "and". */
function readStrokeless(tokens: readonly Token[], at: number): FractionReading | undefined {
  const [over, under, before] = [tokens[at], tokens[at + 1], tokens[at - 2]];
  if (before?.kind !== 'number' || !over?.spaced || !under?.spaced) return undefined;
  if (!/^\d{1,2}$/.test(over.text) || !/^(?:4|8|16|32)$/.test(under.text)) return undefined;
  const [top, bottom] = [Number(over.text), Number(under.text)];
  if (top % 2 === 0 || top >= bottom) return undefined;
  return { to: at + 2, value: top / bottom, denominator: bottom };
}

/** "two and half". */
function readBareHalf(tokens: readonly Token[], at: number): FractionReading | undefined {
  return tokens[at]?.word === 'half' ? { to: at + 1, value: 0.5, denominator: 2 } : undefined;
}
