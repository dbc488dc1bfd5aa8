import type { Token } from '../tokens.ts';
import {
  DENOMINATORS,
  DIGIT_WORDS,
  LONG_DENOMINATORS,
  OH_WORDS,
  ORDINAL_TAILS,
  ORDINAL_WORDS,
  REPEAT_WORDS,
  SCALE_WORDS,
  TEEN_WORDS,
  TENS_WORDS,
} from './number-words.ts';

/** Whole numbers in words: "seven hundred and forty two", "eleven ninety", "nine oh five", "double five". */
export interface WholeReading {
  readonly to: number;
  readonly value: number;
  /** Decimal digits of the first spoken group when the number was said in groups: 1 in "three sixty five". */
  readonly splitAfter?: number;
  readonly decimals?: number;
  readonly alternatives?: readonly number[];
}

/** Index of the next part of a hyphenated or spaced run: skips one unspaced hyphen. */
export function afterHyphen(tokens: readonly Token[], index: number): number {
  const token = tokens[index];
  if (token?.word === '-' && !token.spaced && tokens[index + 1]?.spaced === false) return index + 1;
  return index;
}

/** Denominator word or words at `index`: its value and where it ends. */
export function readDenominator(
  tokens: readonly Token[],
  index: number,
): { readonly value: number; readonly to: number; readonly plural: boolean } | undefined {
  const word = tokens[index]?.word ?? '';
  const long = LONG_DENOMINATORS.get(word);
  if (long) {
    const next = afterHyphen(tokens, index + 1);
    const tail = tokens[next]?.word ?? '';
    const value = long.get(tail);
    if (value) return { value, to: next + 1, plural: tail.endsWith('s') };
  }
  const value = DENOMINATORS.get(word);
  return value ? { value, to: index + 1, plural: word.endsWith('s') } : undefined;
}

interface Atom {
  readonly digits: string;
  readonly kind: 'digit' | 'pair' | 'oh';
  readonly to: number;
  /** Said as words, written as digits: "5 25", "eleven 90". */
  readonly written?: boolean;
}

/** True when an ordinal follows, so that the words before it are a date or a place in a row: "twenty second". */
function ordinalFollows(tokens: readonly Token[], index: number): boolean {
  const next = afterHyphen(tokens, index);
  return ORDINAL_TAILS.has(tokens[next]?.word ?? '');
}

/** One or two digits with a space about them, no half of a fraction, a time or a range: "5" and "25" in "5 25". */
function readWrittenAtom(tokens: readonly Token[], index: number, first: boolean): Atom | undefined {
  const [token, next, after] = [tokens[index], tokens[index + 1], tokens[index + 2]];
  if (!token || !/^\d{1,2}$/.test(token.text) || (!first && !token.spaced)) return undefined;
  if (first && /^0/.test(token.text)) return undefined;
  const glued = next && !next.spaced && /^[/⁄:×x'"%°-]$/.test(next.word);
  const ordinal = next && !next.spaced && /^(?:st|nd|rd|th)$/.test(next.word);
  const fraction = next?.word === '/' || (after?.word === '/' && next?.kind === 'number');
  const scaled = next?.word === 'hundred' || SCALE_WORDS.has(next?.word ?? '');
  if (glued || ordinal || fraction || scaled) return undefined;
  return {
    digits: token.text,
    kind: token.text.length === 1 ? 'digit' : 'pair',
    to: index + 1,
    written: true,
  };
}

/** Words that a recogniser writes for a number that sounds like them. */
const SOUNDS_LIKE: ReadonlyMap<string, number> = new Map([
  ['to', 2],
  ['too', 2],
  ['into', 2],
  ['for', 4],
]);

const UNIT_LIKE =
  /^(?:\p{L}*met(?:re|er)s|mils?|mills?|lit(?:re|er|ter)s|kilos|amps|volts|watts|bar|inches|thou)$/u;

/** Words before "to mil" that leave it a preposition: "convert to inches", "down to mil". */
const GOES_TO =
  /^(?:convert\p{L}*|switch\p{L}*|go|goes|going|went|gone|chang\p{L}*|down|up|close|back|over|turn\p{L}*|from)$/u;

/** "for mil plate", "to inches a side", "twenty to and a half": only where a number must stand. */
export function soundsLike(tokens: readonly Token[], index: number): number | undefined {
  const value = SOUNDS_LIKE.get(tokens[index]?.word ?? '');
  if (value === undefined || tokens[index]?.kind !== 'word') return undefined;
  const [next, after] = [tokens[index + 1]?.word ?? '', tokens[index + 2]?.word ?? ''];
  if (next === 'and') {
    const part = readDenominator(tokens, /^an?$/.test(after) ? index + 3 : index + 2);
    return part && !part.plural ? value : undefined;
  }
  const before = tokens[index - 1];
  if (before?.kind === 'number' || GOES_TO.test(before?.word ?? '')) return undefined;
  return UNIT_LIKE.test(next) ? value : undefined;
}

function readAtom(tokens: readonly Token[], index: number, first: boolean): Atom | undefined {
  const token = tokens[index];
  if (!token) return undefined;
  if (token.kind === 'number') return readWrittenAtom(tokens, index, first);
  const repeat = REPEAT_WORDS.get(token.word);
  if (repeat) {
    const next = afterHyphen(tokens, index + 1);
    const digit = DIGIT_WORDS.get(tokens[next]?.word ?? '');
    if (digit === undefined) return undefined;
    return { digits: String(digit).repeat(repeat), kind: 'pair', to: next + 1 };
  }
  if (!first && OH_WORDS.has(token.word)) return { digits: '0', kind: 'oh', to: index + 1 };
  const digit = DIGIT_WORDS.get(token.word) ?? (first ? soundsLike(tokens, index) : undefined);
  if (digit !== undefined) return { digits: String(digit), kind: 'digit', to: index + 1 };
  const teen = TEEN_WORDS.get(token.word);
  if (teen !== undefined) return { digits: String(teen), kind: 'pair', to: index + 1 };
  const tens = TENS_WORDS.get(token.word);
  if (tens === undefined) return undefined;
  const next = afterHyphen(tokens, index + 1);
  const heard = tokens[next]?.word === 'to' ? soundsLike(tokens, next) : undefined;
  const unit =
    DIGIT_WORDS.get(tokens[next]?.word ?? '') ?? (tokens[next + 1]?.word === 'and' ? heard : undefined);
  // "four metres twenty one way, three sixty the other": the one is no part of the number.
  const aside = /^(?:way|side|end|each|per|a)$/.test(tokens[next + 1]?.word ?? '');
  if (unit === 1 && aside && tokens[next + 2]?.word !== 'cent') {
    return { digits: String(tens), kind: 'pair', to: index + 1 };
  }
  // "twenty five eighths" is twenty and five eighths, not twenty-five of them.
  if (unit && !readDenominatorAfterNumerator(tokens, next)) {
    return { digits: String(tens + unit), kind: 'pair', to: next + 1 };
  }
  return { digits: String(tens), kind: 'pair', to: index + 1 };
}

/** A numerator's denominator: plural, so that "five second coats" and "one half" stay apart. */
function readDenominatorAfterNumerator(tokens: readonly Token[], numerator: number): boolean {
  const denominator = readDenominator(tokens, afterHyphen(tokens, numerator + 1));
  return denominator?.plural === true;
}

/** Runs of groups that people say for one number; d a digit, p a pair from 10 to 99, o an oh. */
const RUNS: readonly string[] = [
  'ddp',
  'pdp',
  'dpd',
  'dodo',
  'dddd',
  'dodd',
  'ddod',
  'pdd',
  'ddo',
  'ddd',
  'dod',
  'doo',
  'pod',
  'pop',
  'poo',
  'ppo',
  'pp',
  'dp',
  'dd',
  'do',
  'po',
  'p',
  'd',
];
const LETTER = { digit: 'd', pair: 'p', oh: 'o' } as const;

/** Two written digits in a row are mostly two numbers: "coats 4 5 days apart". */
const NOT_WRITTEN: ReadonlySet<string> = new Set(['dd', 'do', 'po', 'ddo']);

/** Reads groups of digits that are said as one number: "nine oh five", "eleven ninety", "5 25". */
export function readRun(tokens: readonly Token[], from: number): WholeReading | undefined {
  const atoms: Atom[] = [];
  for (let index = from; atoms.length < 5; ) {
    const atom = readAtom(tokens, index, atoms.length === 0);
    if (!atom) break;
    // "two and one 12 mil plate": a recogniser writes 112 in one.
    if (atom.written && atoms.length === 1 && tokens[from]?.word === 'one') break;
    const numerates = atom.kind !== 'oh' && readDenominatorAfterNumerator(tokens, atom.to - 1);
    if (numerates && atoms.length > 0) break;
    if (ordinalFollows(tokens, atom.to) && !readDenominatorAfterNumerator(tokens, atom.to - 1)) {
      if (TENS_WORDS.has(tokens[atom.to - 1]?.word ?? '')) break;
    }
    atoms.push(atom);
    const next = afterHyphen(tokens, atom.to);
    // "one twenty" may be hyphenated or not; a comma ends the run.
    index = next;
  }
  if (atoms.length === 0) return undefined;
  const shape = atoms.map((atom) => LETTER[atom.kind]).join('');
  const run = RUNS.find(
    (candidate) =>
      shape.startsWith(candidate) &&
      !(NOT_WRITTEN.has(candidate) && atoms.slice(0, candidate.length).some((atom) => atom.written)),
  );
  if (!run) return undefined;
  const used = atoms.slice(0, run.length);
  const last = used[used.length - 1];
  const first = used[0];
  if (!last || !first) return undefined;
  const digits = used.map((atom) => atom.digits).join('');
  // A micrometer is read so: "fifty seven one eight" is 57.18.
  if (run === 'pdd') {
    return { to: last.to, value: Number(digits) / 100, decimals: 2, alternatives: [Number(digits)] };
  }
  return {
    to: last.to,
    value: Number(digits),
    ...(used.length > 1 ? { splitAfter: first.digits.length } : {}),
  };
}

/** The number of one word or two at `index`: "five", "forty two", "double five". */
export function readSmall(tokens: readonly Token[], index: number): WholeReading | undefined {
  const atom = readAtom(tokens, index, true);
  if (!atom || readDenominatorAfterNumerator(tokens, atom.to - 1)) return undefined;
  return { to: atom.to, value: Number(atom.digits) };
}

const isHundred = (token: Token | undefined) => token?.word === 'hundred';

/** "two eight hundred": thousands and hundreds, as metres are read off in millimetres. */
function readThousandsAndHundreds(tokens: readonly Token[], from: number): WholeReading | undefined {
  const [first, second] = [tokens[from]?.word ?? '', tokens[from + 1]?.word ?? ''];
  const [thousands, hundreds] = [DIGIT_WORDS.get(first), DIGIT_WORDS.get(second)];
  if (!thousands || !hundreds || !isHundred(tokens[from + 2])) return undefined;
  const rest = addRest(tokens, from + 3, thousands * 1000 + hundreds * 100, readSmall);
  return { ...rest, splitAfter: 1 };
}

/** "to hundred litres": a recogniser's "two". */
function mistaken(tokens: readonly Token[], from: number): WholeReading | undefined {
  const lost = /^(?:to|too)$/.test(tokens[from]?.word ?? '') && isHundred(tokens[from + 1]);
  return lost && !/^(?:close|up|down|back)$/.test(tokens[from - 1]?.word ?? '')
    ? { to: from + 1, value: 2 }
    : undefined;
}

/** "seven hundred and forty two", "thirty six hundred", "a hundred": undefined when no "hundred" is said. */
function readHundreds(tokens: readonly Token[], from: number): WholeReading | undefined {
  const thousands = readThousandsAndHundreds(tokens, from);
  if (thousands) return thousands;
  const lead = readSmall(tokens, from) ?? mistaken(tokens, from);
  const article = tokens[from]?.word === 'a' && isHundred(tokens[from + 1]);
  const at = article ? from + 1 : lead ? afterHyphen(tokens, lead.to) : from;
  if (!article && !lead) return readBareHundred(tokens, from);
  if (!isHundred(tokens[at])) return undefined;
  const hundreds = (article ? 1 : (lead?.value ?? 1)) * 100;
  return addRest(tokens, at + 1, hundreds, readSmall);
}

/** "hundred and eighteen", "hundred eighteen mil": its article swallowed. "A few hundred and two more" is none. */
function readBareHundred(tokens: readonly Token[], from: number): WholeReading | undefined {
  if (!isHundred(tokens[from])) return undefined;
  if (/^(?:few|several|many|odd|couple|of)$/.test(tokens[from - 1]?.word ?? '')) return undefined;
  const joined = tokens[from + 1]?.word === 'and';
  const rest = readSmall(tokens, joined ? from + 2 : from + 1);
  // "A hundred twelve mil bolts" counts them; only what begins its clause has lost its article.
  if (!rest || (!joined && !opensClause(tokens, from))) return undefined;
  return { to: rest.to, value: 100 + rest.value };
}

/** Whether nothing, or a mark, stands before a token in its sentence. */
function opensClause(tokens: readonly Token[], at: number): boolean {
  const before = tokens[at - 1];
  return !before || before.kind === 'mark' || before.sentence !== tokens[at]?.sentence;
}

/** Adds what follows a hundred or a thousand: "and five", "forty two". */
export function addRest(
  tokens: readonly Token[],
  at: number,
  base: number,
  read: (tokens: readonly Token[], index: number) => WholeReading | undefined,
): WholeReading {
  const joined = tokens[at]?.word === 'and';
  const rest = read(tokens, joined ? at + 1 : at);
  // "nine hundred and two by fours": the rest belongs to what follows it.
  if (!rest || (joined && rest.value <= 12 && tokens[rest.to]?.word === 'by')) return { to: at, value: base };
  return { to: rest.to, value: base + rest.value };
}

const readBelowThousand = (tokens: readonly Token[], index: number) =>
  readHundreds(tokens, index) ?? readSmall(tokens, index);

/** Adds what follows a thousand. Recognisers hear a pause there: "two thousand, two hundred" is one number. */
function addThousands(tokens: readonly Token[], at: number, base: number): WholeReading {
  const paused = tokens[at]?.word === ',' ? readHundreds(tokens, at + 1) : undefined;
  if (paused) {
    // "one thousand, two hundred, ten wide": the pause goes on.
    const rest =
      paused.value % 100 === 0 && tokens[paused.to]?.word === ','
        ? readSmall(tokens, paused.to + 1)
        : undefined;
    const value = base + paused.value;
    return rest && rest.value >= 10 ? { to: rest.to, value: value + rest.value } : { to: paused.to, value };
  }
  return addRest(tokens, at, base, readBelowThousand);
}

/** Reads a whole number in words at `from`. "a" counts as one before hundred, thousand and million only. */
export function readSpokenWhole(tokens: readonly Token[], from: number): WholeReading | undefined {
  const article = tokens[from]?.word === 'a' && SCALE_WORDS.has(tokens[from + 1]?.word ?? '');
  const lead = article ? { to: from + 1, value: 1 } : readBelowThousand(tokens, from);
  if (lead) {
    const scale = SCALE_WORDS.get(tokens[lead.to]?.word ?? '');
    if (scale) return addThousands(tokens, lead.to + 1, lead.value * scale);
  }
  const hundreds = readHundreds(tokens, from);
  return hundreds ?? readRun(tokens, from);
}

/** An ordinal in words or digits at `from`, which is no quantity: "the twenty second", "15th". */
export function readOrdinal(tokens: readonly Token[], from: number): number | undefined {
  const token = tokens[from];
  if (!token) return undefined;
  if (token.kind === 'number') {
    const tail = tokens[from + 1];
    return tail && !tail.spaced && /^(?:st|nd|rd|th)$/.test(tail.word) ? from + 2 : undefined;
  }
  if (TENS_WORDS.has(token.word)) {
    const next = afterHyphen(tokens, from + 1);
    return ORDINAL_TAILS.has(tokens[next]?.word ?? '') ? next + 1 : undefined;
  }
  return ORDINAL_WORDS.has(token.word) ? from + 1 : undefined;
}
