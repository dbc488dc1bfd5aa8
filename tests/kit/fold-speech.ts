/**
 * Folds a transcript to bare words, so that only what was heard is compared and not how it was spelled: case,
 * punctuation, British and American spelling, unit signs, and numbers in words or digits.
 */
const UNITS =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(
    ' ',
  );
const TENS = 'twenty thirty forty fifty sixty seventy eighty ninety'.split(' ');
const SCALES: Record<string, number> = { hundred: 100, thousand: 1000, million: 1_000_000 };

const SPELLINGS: readonly (readonly [RegExp, string])[] = [
  [/\b(\w*)(met|lit|cent)re(s?)\b/g, '$1$2er$3'],
  [/\bmm\b/g, ' millimeters '],
  [/\bcm\b/g, ' centimeters '],
  [/\bkg\b/g, ' kilograms '],
  [/%/g, ' percent '],
  [/\bok\b/g, 'okay'],
  [/\bmister\b/g, 'mr'],
  [/\bgrey\b/g, 'gray'],
  [/\b(col|harb|lab|fav)our/g, '$1or'],
  [/\bplough/g, 'plow'],
  [/\baluminium\b/g, 'aluminum'],
];

/** Words of a transcript, folded. Each number is one word in digits. */
export function foldSpeech(text: string): string[] {
  let folded = text
    .toLowerCase()
    .replace(/[’']/g, "'")
    .replace(/(\d),(?=\d{3}(?!\d))/g, '$1')
    .replace(/(\d)([a-z%])/g, '$1 $2')
    .replace(/\$(\d+(?:\.\d+)?)/g, '$1 dollars');
  for (const [pattern, plain] of SPELLINGS) folded = folded.replace(pattern, plain);
  const words = folded
    .replace(/[-–—/]/g, ' ')
    .replace(/(?<!\d)\.|\.(?!\d)/g, ' ')
    .replace(/[^\p{L}\p{N}.' ]/gu, ' ')
    .split(/\s+/)
    .map((word) => word.replace(/^'+|'+$/g, ''))
    .filter((word) => word !== '');
  return foldNumbers(words);
}

/** The numbers alone, in order. */
export function numbersIn(words: readonly string[]): string[] {
  return words.filter((word) => /^\d/.test(word));
}

function foldNumbers(words: readonly string[]): string[] {
  const folded: string[] = [];
  for (let at = 0; at < words.length; ) {
    const run = numberAt(words, at);
    folded.push(run ? run.digits : (words[at] ?? ''));
    at += run ? run.length : 1;
  }
  return folded;
}

function numberAt(words: readonly string[], from: number): { digits: string; length: number } | undefined {
  const whole = wholeAt(words, from);
  if (!whole) return undefined;
  let { length } = whole;
  let digits = String(whole.value);
  if (words[from + length] === 'point') {
    let decimals = '';
    let at = from + length + 1;
    for (
      let digit = smallNumber(words[at]);
      digit !== undefined && digit < 10;
      digit = smallNumber(words[++at])
    ) {
      decimals += digit;
    }
    if (decimals !== '') {
      digits += `.${decimals}`;
      length = at - from;
    }
  }
  return { digits, length };
}

function wholeAt(words: readonly string[], from: number): { value: number; length: number } | undefined {
  let total = 0;
  let group = 0;
  let at = from;
  // The greatest number that may still be added: after "forty" only 1 to 9, after "hundred" up to 99.
  let room = Number.POSITIVE_INFINITY;
  for (; at < words.length; at++) {
    const word = words[at] ?? '';
    const small = smallNumber(word);
    const scale = SCALES[word];
    if (word === 'and' && room >= 99 && room < 1_000_000 && smallNumber(words[at + 1]) !== undefined)
      continue;
    if (small !== undefined && (at === from || (small > 0 && small <= room))) {
      group += small;
      room = small >= 20 ? 9 : 0;
    } else if (scale !== undefined && at > from && group > 0) {
      if (scale === 100) group *= 100;
      else total += group * scale;
      if (scale > 100) group = 0;
      room = scale - 1;
    } else break;
  }
  return at === from ? undefined : { value: total + group, length: at - from };
}

function smallNumber(word: string | undefined): number | undefined {
  if (word === undefined) return undefined;
  const unit = UNITS.indexOf(word);
  if (unit >= 0) return unit;
  const ten = TENS.indexOf(word);
  return ten >= 0 ? 20 + ten * 10 : undefined;
}
