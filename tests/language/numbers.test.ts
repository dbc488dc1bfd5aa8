import { expect, test } from 'vitest';
import { readNumber } from '../../src/language/numbers/read-number.ts';
import { tokenise } from '../../src/language/tokens.ts';

function numberIn(text: string, decimalComma = false) {
  const tokens = tokenise(text);
  const reading = readNumber(tokens, 0, decimalComma);
  if (!reading) return undefined;
  const last = tokens[reading.to - 1];
  return { value: reading.value, said: text.slice(0, last?.end) };
}

test.each([
  ['seven hundred and forty two', 742],
  ['eleven ninety', 1190],
  ['nine oh five', 905],
  ['nine-oh-five', 905],
  ['thirty six hundred', 3600],
  ['thirty-six hundred', 3600],
  ['twelve hundred and twenty', 1220],
  ['eight five seven three', 8573],
  ['eight five seventy-three', 8573],
  ['thirteen eight eighty-five', 13885],
  ['twenty four forty', 2440],
  ['ten ten', 1010],
  ['one twenty', 120],
  ['three sixty five', 365],
  ['eight eight five', 885],
  ['eleven oh five', 1105],
  ['five oh', 50],
  ['two point four', 2.4],
  ['three point six five', 3.65],
  ['two point twenty five', 2.25],
  ['nought point five', 0.5],
  ['point five', 0.5],
  ['2 point 4', 2.4],
  ['1,220', 1220],
  ['9,640', 9640],
  ['2,137.5', 2137.5],
  ['double five', 55],
  ['treble eight', 888],
  ['a couple of', 2],
  ['a hundred and ninety', 190],
  ['a hundred', 100],
  ['fourteen thousand', 14000],
  ['two thousand four hundred and seventy', 2470],
  ['a thousand and fifty', 1050],
  ['two and a half thousand', 2500],
  ['3 thousand', 3000],
  ['1.5 million', 1500000],
  ['twenty-five', 25],
  ['half', undefined],
  ['a half', 0.5],
  ['an eighth', 0.125],
  ['a sixteenth', 0.0625],
  ['three quarters', 0.75],
  ['three-quarter', 0.75],
  ['seven sixteenths', 0.4375],
  ['eleven sixteenths', 0.6875],
  ['five thirty seconds', 0.15625],
  ['seventeen thirty-seconds', 0.53125],
  ['eighteen and a half', 18.5],
  ['twenty five and a half', 25.5],
  ['thirty-five five eighths', 35.625],
  ['thirty-five and five eighths', 35.625],
  ['two and three eighths', 2.375],
  ['2 3/8', 2.375],
  ['2-3/8', 2.375],
  ['2 and 5/8', 2.625],
  ['5/8', 0.625],
  ['½', 0.5],
  ['2½', 2.5],
  ['2 ¾', 2.75],
  ['⅝', 0.625],
  ['1 and a half', 1.5],
  ['two and half', 2.5],
  ['9 oh 5', 905],
  ['5 25', 525],
  ['18 18', 1818],
  ['9 0 5', 905],
  ['eleven 90', 1190],
  ['.5', 0.5],
  ['two comma five', 2.5],
  ['hundred and eighteen', 118],
  ['a couple of hundred', 200],
  ['one and a half', 1.5],
])('"%s" is %d', (text, value) => {
  expect(numberIn(text)).toEqual(value === undefined ? undefined : { value, said: text });
});

test.each([
  ['4,5 Meter', 4.5, '4,5'],
  ['1.200 mm', 1200, '1.200'],
  ['0.200 mm', 0.2, '0.200'],
  ['2 komma 5 m', 2.5, '2 komma 5'],
  ['1 200 mm', 1200, '1 200'],
  ['1.234,5 kg', 1234.5, '1.234,5'],
])('"%s" with a decimal comma is %d', (text, value, said) => {
  expect(numberIn(text, true)).toEqual({ value, said });
});

test.each([
  ['nine hundred, five of them', 900, 'nine hundred'],
  ['twenty second of May', 20, undefined],
  ['5/8/2026', 5, '5'],
  ['sixty years', 60, 'sixty'],
  ['4 5 day gaps', 4, '4'],
  ['2 3/8 bolts', 2.375, '2 3/8'],
  ['5 25th of May', 5, '5'],
])('"%s" stops in time', (text, value, said) => {
  expect(numberIn(text)).toEqual(said === undefined ? undefined : { value, said });
});
