/** Words that make an interval of an expression, taken apart, worked out, and written again. */
import { describe, expect, test } from 'vitest';
import { intervalWords, rangeOfParts, writeInterval } from '../../../src/model/checks/interval-words.ts';

type Part = Parameters<typeof rangeOfParts>[1][number];

describe('an expression', () => {
  test.each([
    ['706 mm', 'plain', ['706 mm']],
    ['  706 mm ', 'plain', ['706 mm']],
    ['about 900 mm', 'about', ['900 mm']],
    ['Roughly 900 mm', 'about', ['900 mm']],
    ['~900 mm', 'about', ['900 mm']],
    ['about', 'plain', ['about']],
    ['at least 560 mm', 'at-least', ['560 mm']],
    ['no less than 560 mm', 'at-least', ['560 mm']],
    ['>= 560 mm', 'at-least', ['560 mm']],
    ['at most 560 mm', 'at-most', ['560 mm']],
    ['up to 560 mm', 'at-most', ['560 mm']],
    ['≤560 mm', 'at-most', ['560 mm']],
    ['706 mm +- 1 mm', 'spread', ['706 mm', '1 mm']],
    ['706 mm ± 1 %', 'spread', ['706 mm', '1 %']],
    ['706 mm+/-1 mm', 'spread', ['706 mm', '1 mm']],
    ['706 mm give or take 1 mm', 'spread', ['706 mm', '1 mm']],
    ['706 mm plus or minus 1 mm', 'spread', ['706 mm', '1 mm']],
    ['+- 1 mm', 'plain', ['+- 1 mm']],
    ['706 mm +-', 'plain', ['706 mm +-']],
    ['7 mm +- 1 mm +- 2 mm', 'plain', ['7 mm +- 1 mm +- 2 mm']],
    ['between 3 mm and 5 mm', 'between', ['3 mm', '5 mm']],
    ['3 mm to 5 mm', 'between', ['3 mm', '5 mm']],
    ['600 to 700 kg/m3', 'between', ['600 kg/m3', '700 kg/m3']],
    ['between 3 and 5 %', 'between', ['3 %', '5 %']],
    ['1/2 to 3 in', 'between', ['1/2 in', '3 in']],
    ['3 cm to 50 mm', 'between', ['3 cm', '50 mm']],
    ['3 to 5', 'between', ['3', '5']],
    ['3 to 5 wickets', 'between', ['3', '5 wickets']],
    ['rail height to 900 mm', 'between', ['rail height', '900 mm']],
  ])('"%s" is %s of %j', (text, shape, parts) => {
    expect(intervalWords(text)).toEqual({ shape, parts });
  });

  test.each([
    '706 mm',
    'about 900 mm',
    'at least 560 mm',
    'at most 560 mm',
    '706 mm +- 1 mm',
    'between 3 mm and 5 mm',
  ])('"%s" is written as it was', (text) => {
    const { shape, parts } = intervalWords(text);
    expect(writeInterval(shape, parts)).toBe(text);
  });
});

const part = (low: number, mid: number, high: number, kind = 'length', unit = 'm'): Part => ({
  range: { low, mid, high },
  kind,
  unit,
});
const size = (mid: number, kind?: string, unit?: string) => part(mid, mid, mid, kind, unit);

/** A range rounded as far as floating point goes. */
function rangeOf(...args: Parameters<typeof rangeOfParts>) {
  const found = rangeOfParts(...args);
  if (typeof found === 'string') return found;
  return [found.low, found.mid, found.high].map((one) => Number(one.toFixed(6)));
}

describe('the interval of', () => {
  test('one figure alone is what is known of it', () => {
    for (const shape of ['plain', 'at-least', 'at-most'] as const)
      expect(rangeOf(shape, [part(1, 2, 4)])).toEqual([1, 2, 4]);
  });

  test('what is about reaches a twentieth further to both sides, of what is below nought too', () => {
    expect(rangeOf('about', [part(1.9, 2, 2.2)])).toEqual([1.8, 2, 2.3]);
    expect(rangeOf('about', [size(-2)])).toEqual([-2.1, -2, -1.9]);
    expect(rangeOf('about', [size(293.15, 'temperature', 'degC')])).toEqual([292.15, 293.15, 294.15]);
  });

  test('two ends holds both, whichever is said first', () => {
    expect(rangeOf('between', [part(2, 3, 4), part(5, 6, 8)])).toEqual([2, 4.5, 8]);
    expect(rangeOf('between', [part(5, 6, 8), part(2, 3, 4)])).toEqual([2, 4.5, 8]);
    expect(rangeOf('between', [part(1, 3, 9), part(2, 5, 6)])).toEqual([1, 4, 9]);
  });

  test('a tolerance reaches as far as its most', () => {
    expect(rangeOf('spread', [part(9, 10, 12), part(1, 2, 3)])).toEqual([6, 10, 15]);
    expect(rangeOf('spread', [size(10), size(-2)])).toEqual([8, 10, 12]);
  });

  test('a share is one of the middle', () => {
    expect(rangeOf('spread', [part(9, 10, 12), size(0.1, 'ratio', '%')])).toEqual([8, 10, 13]);
    expect(rangeOf('spread', [size(-10), size(0.1, 'ratio', '%')])).toEqual([-11, -10, -9]);
    expect(rangeOf('spread', [size(293.15, 'temperature', 'degC'), size(0.1, 'ratio', '%')])).toEqual([
      291.15, 293.15, 295.15,
    ]);
  });

  test('a temperature takes a difference, and degrees of its own scale', () => {
    const warm = size(293.15, 'temperature', 'degC');
    expect(rangeOf('spread', [warm, size(2, 'temperature difference', 'K')])).toEqual([
      291.15, 293.15, 295.15,
    ]);
    expect(rangeOf('spread', [warm, size(275.15, 'temperature', 'degC')])).toEqual([291.15, 293.15, 295.15]);
  });

  test.each([
    ['between', [size(1), size(2, 'mass', 'kg')], 'length and mass are no two ends'],
    ['spread', [size(1), size(2, 'mass', 'kg')], 'a tolerance of mass on a quantity of length'],
    ['spread', [size(1), size(0.1, 'ratio', '1')], 'a tolerance of ratio on a quantity of length'],
    [
      'spread',
      [size(1), size(2, 'temperature difference', 'K')],
      'a tolerance of temperature difference on a quantity of length',
    ],
    ['plain', [], 'nothing is given'],
  ] as const)('%s of what does not go together is none, with the reason', (shape, parts, why) => {
    expect(rangeOfParts(shape, parts)).toBe(why);
  });
});
