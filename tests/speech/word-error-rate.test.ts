import { describe, expect, test } from 'vitest';
import { foldSpeech, numbersIn } from '../kit/fold-speech.ts';
import { sumErrors, wordErrors } from '../kit/word-error-rate.ts';

const words = (text: string) => text.toLowerCase().split(' ');

// Source: NIST SCTK, doc/outputs.htm, report "pralign", utterances 4t0c0202 and 4t0c0203, and "snt" for the rates.
const documented = [
  {
    reference:
      'for a two trillion dollar business built on public confidence this trend is disheartening at best and downright dangerous at worst',
    heard:
      'freed to trying to lure business built on public confidence this trend is this tightening and best and downright dangerous at worst',
    counts: { correct: 14, substitutions: 7, deletions: 0, insertions: 1 },
    rate: 0.381,
  },
  {
    reference:
      'so far this year the industry slide has been apparent in allegations of insider trading by fund managers unsavory fund sales practices at banks and the use of high risk derivative securities in normally conservative money market funds',
    heard:
      'so far this year the industry slide has been apparent in allegations of insider trading by fund managers and save refund sales practices at banks and use of high risk derivative securities in early conservative money market funds',
    counts: { correct: 34, substitutions: 3, deletions: 1, insertions: 1 },
    rate: 0.132,
  },
];

describe('word errors', () => {
  test.each(documented)(
    'are counted as the documentation counts them: $counts',
    ({ reference, heard, counts, rate }) => {
      const errors = wordErrors(words(reference), words(heard));
      expect(errors).toMatchObject(counts);
      expect(errors.rate).toBeCloseTo(rate, 3);
    },
  );

  test('of several texts are those of the whole', () => {
    const parts = documented.map(({ reference, heard }) => wordErrors(words(reference), words(heard)));
    expect(sumErrors(parts)).toMatchObject({ correct: 48, substitutions: 10, deletions: 1, insertions: 2 });
    expect(sumErrors(parts).rate).toBeCloseTo(13 / 59, 10);
  });

  test('nothing heard is all deletions, nothing said is all insertions', () => {
    expect(wordErrors(['a', 'b'], [])).toMatchObject({ deletions: 2, rate: 1 });
    expect(wordErrors([], ['a', 'b'])).toMatchObject({ insertions: 2, rate: 2 });
  });
});

describe('folding', () => {
  test.each([
    ['The bench, 1,950mm long!', 'the bench 1950 millimeters long'],
    ['one thousand nine hundred and fifty millimetres', '1950 millimeters'],
    ['two point four metres', '2.4 meters'],
    ['eighty-five percent, 85%', '85 percent 85 percent'],
    ['nine ten', '9 10'],
    ['twenty one twenty two', '21 22'],
    ['bread and butter', 'bread and butter'],
  ])('"%s" becomes "%s"', (text, folded) => {
    expect(foldSpeech(text).join(' ')).toBe(folded);
  });

  test('numbers are kept in order', () => {
    expect(numbersIn(foldSpeech('forty by twenty, then 2.5'))).toEqual(['40', '20', '2.5']);
  });
});
