/** Degrees, pounds, mils and pints by the words about them; bare metres and millimetres by the thing. */
import { describe, expect, test } from 'vitest';
import { figuresTold as figuresOf } from '../../kit/told.ts';

describe('degrees', () => {
  test.each([
    ["It's 45 degrees.", ['45 deg']],
    ["It's 14 degrees.", ['14 degC']],
    ["It's 22.5 degrees.", ['22.5 deg']],
    ["It's 44 degrees.", ['44 degC']],
    ['92 degrees to port.', ['92 deg']],
    ['12 degrees to the vertical.', ['12 deg']],
    ['12 degrees bend.', ['12 deg']],
    ['12 degrees outside.', ['12 degC']],
    ['12 degrees in here.', ['12 degC']],
    ['12 degrees in oak.', ['12 degC']],
    ['12 degrees off.', ['12 deg']],
    ['The epoxy at 12 degrees.', ['12 degC']],
  ])('"%s" is read', (text, read) => expect(figuresOf(text)).toEqual(read));
});

describe('pounds and money', () => {
  test.each([
    ['Thirty pounds in the tyres.', ['30 psi']],
    ['Thirty pounds at the pump.', ['30 GBP']],
    ['Thirty pounds a sheet.', ['30 GBP']],
    ['It weighs thirty pounds.', ['30 lb']],
    ['I paid thirty pounds.', ['30 GBP']],
    ["It's thirty pounds.", ['30 GBP']],
    ['190 kilos, which is 419 pounds.', ['190 kg', '419 lb']],
    ['190 kilos, which is 300 pounds.', ['190 kg', '300 lb']],
    ['Fifty quid.', ['50 GBP']],
    ['Fifty dollars.', ['50 USD']],
    ['Three pints of oil.', ['1.5 qt']],
    ['Fifteen hundred pounds, not two thousand.', ['1500 GBP']],
  ])('"%s" is read', (text, read) => expect(figuresOf(text)).toEqual(read));
});

describe('spreads', () => {
  test.each([
    ['Two and a half inches, give or take half a mil.', ['2.5 in']],
    ['Sixteen thou, plus or minus two mil.', ['16 thou']],
  ])('"%s" is read', (text, read) => expect(figuresOf(text)).toEqual(read));
});

describe('metres or millimetres', () => {
  test.each([
    ['4.74 long.', ['4.74 m']],
    ['Trimmed it to 3.04.', ['3.04 m']],
    ['The shed is 6.5 wide.', ['6.5 m']],
    ['The key is six square.', ['6 mm']],
    ["The skin's one point six ally.", ['1.6 mm']],
    ["It's 6.4 laminated.", ['6.4 mm']],
    ["It's 8.4 laminated.", ['8.4 m']],
    ['The posts are 2.4 apart.', ['2.4 m']],
    ['The bolts are 2.4 apart.', ['2.4 m']],
    ['The room is nine wide.', ['9 m']],
    ['The room is 2.0 wide.', ['2 m']],
    ['The wall is 12.5 long.', ['12.5 m']],
  ])('"%s" is read', (text, read) => expect(figuresOf(text)).toEqual(read));
});
