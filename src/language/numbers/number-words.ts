/** Words that make numbers. Spellings only; how they combine is in `spoken.ts`. */

export const DIGIT_WORDS: ReadonlyMap<string, number> = new Map([
  ['zero', 0],
  ['nought', 0],
  ['naught', 0],
  ['one', 1],
  ['two', 2],
  ['three', 3],
  ['four', 4],
  ['five', 5],
  ['six', 6],
  ['seven', 7],
  ['eight', 8],
  ['nine', 9],
]);

export const TEEN_WORDS: ReadonlyMap<string, number> = new Map([
  ['ten', 10],
  ['eleven', 11],
  ['twelve', 12],
  ['thirteen', 13],
  ['fourteen', 14],
  ['fifteen', 15],
  ['sixteen', 16],
  ['seventeen', 17],
  ['eighteen', 18],
  ['nineteen', 19],
]);

export const TENS_WORDS: ReadonlyMap<string, number> = new Map([
  ['twenty', 20],
  ['thirty', 30],
  ['forty', 40],
  ['fourty', 40],
  ['fifty', 50],
  ['sixty', 60],
  ['seventy', 70],
  ['eighty', 80],
  ['ninety', 90],
]);

/** "oh" is a zero only inside a run of digits: "nine oh five". */
export const OH_WORDS: ReadonlySet<string> = new Set(['oh', 'o', 'zero', 'nought', 'naught']);

export const REPEAT_WORDS: ReadonlyMap<string, number> = new Map([
  ['double', 2],
  ['treble', 3],
  ['triple', 3],
]);

export const SCALE_WORDS: ReadonlyMap<string, number> = new Map([
  ['thousand', 1e3],
  ['million', 1e6],
  ['billion', 1e9],
]);

const ORDINAL_UNITS = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth', 'seventh', 'eighth', 'ninth'];

/** Ordinals from first to thirtieth, as single words. */
export const ORDINAL_WORDS: ReadonlySet<string> = new Set([
  ...ORDINAL_UNITS,
  'tenth',
  'eleventh',
  'twelfth',
  'thirteenth',
  'fourteenth',
  'fifteenth',
  'sixteenth',
  'seventeenth',
  'eighteenth',
  'nineteenth',
  'twentieth',
  'thirtieth',
]);

/** Ordinals that follow a ten: "twenty second". */
export const ORDINAL_TAILS: ReadonlySet<string> = new Set(ORDINAL_UNITS);

/** Denominators as they are spoken, singular and plural. */
export const DENOMINATORS: ReadonlyMap<string, number> = new Map([
  ['half', 2],
  ['halves', 2],
  ['third', 3],
  ['thirds', 3],
  ['quarter', 4],
  ['quarters', 4],
  ['fourth', 4],
  ['fourths', 4],
  ['fifth', 5],
  ['fifths', 5],
  ['sixth', 6],
  ['sixths', 6],
  ['eighth', 8],
  ['eighths', 8],
  ['tenth', 10],
  ['tenths', 10],
  ['twelfth', 12],
  ['twelfths', 12],
  ['sixteenth', 16],
  ['sixteenths', 16],
  ['thirtysecond', 32],
  ['thirtyseconds', 32],
  ['hundredth', 100],
  ['hundredths', 100],
  ['sixtyfourth', 64],
  ['sixtyfourths', 64],
]);

/** Denominators of two words: "thirty seconds" and "sixty fourths". */
export const LONG_DENOMINATORS: ReadonlyMap<string, ReadonlyMap<string, number>> = new Map([
  [
    'thirty',
    new Map([
      ['second', 32],
      ['seconds', 32],
    ]),
  ],
  [
    'sixty',
    new Map([
      ['fourth', 64],
      ['fourths', 64],
    ]),
  ],
]);

/** Denominators that a written fraction may have; anything else is a date, a ratio or a slip. */
export const WRITTEN_DENOMINATORS: ReadonlySet<number> = new Set([2, 3, 4, 5, 8, 10, 16, 32, 64]);

export const FRACTION_SIGNS: ReadonlyMap<string, number> = new Map([
  ['½', 1 / 2],
  ['⅓', 1 / 3],
  ['⅔', 2 / 3],
  ['¼', 1 / 4],
  ['¾', 3 / 4],
  ['⅛', 1 / 8],
  ['⅜', 3 / 8],
  ['⅝', 5 / 8],
  ['⅞', 7 / 8],
]);

/** Numbers said as things: "two eighteens", "not the tens". */
export const PLURAL_NUMBERS: ReadonlyMap<string, number> = new Map(
  [...DIGIT_WORDS, ...TEEN_WORDS, ...TENS_WORDS].flatMap(([word, value]): [string, number][] =>
    value === 0
      ? []
      : [
          [
            word.endsWith('y') ? `${word.slice(0, -1)}ies` : `${word}${/[sx]$/.test(word) ? 'es' : 's'}`,
            value,
          ],
        ],
  ),
);
