/** How many of what size, what a piece costs, and frost: numbers that stand beside one another or have no unit. */
import { describe, expect, test } from 'vitest';
import { readMemo } from '../../src/language/pipeline.ts';

const figures = (text: string, region = 'GB') =>
  readMemo(text, { units: 'metric', region, recordedAt: '2026-06-10T12:00:00+01:00' }).notes.figures;
const told = (text: string, region?: string) =>
  figures(text, region).map(({ value, unit }) => `${value} ${unit}`);

describe('how many, and then the size of each', () => {
  test.each([
    ['I need twenty five 90 mm screws.', ['25 1', '90 mm']],
    ['Bought two 12 mm ply sheets.', ['2 1', '12 mm']],
    ['Bought three eighteen mil boards.', ['3 1', '18 mm']],
    ['Bought two eighteen ply sheets.', ['2 1', '18 mm']],
    ['I need four 90 by 45 rails.', ['4 1', '90 mm', '45 mm']],
    ['I want six 2440 by 1220 mm sheets.', ['6 1', '2440 mm', '1220 mm']],
    ['I need twenty five 90 mm boards.', ['25 1', '90 mm']],
    ['Twenty four 12 volt lamps.', ['12 V']],
    ['Eight twelve volt pumps and a fan.', ['12 V']],
    ['A hundred twelve mil bolts.', ['100 1', '12 mm']],
    ['Two hundred six mil screws.', ['200 1', '6 mm']],
    ['One twenty kilo bag of plaster.', ['20 kg']],
    ['I need one eighteen mil board.', ['18 mm']],
    // One number, where no pieces of that size follow.
    ["It's two twelve wide.", ['212 mm']],
    ['Eleven 90 mm boards.', ['11 1', '90 mm']],
    ['Eleven 90 mm lengths.', ['1190 mm']],
    ['Cut the opening four 90 by 300.', ['490 mm', '300 mm']],
    ['Cut them into twenty four 40 mm lengths.', ['2440 mm']],
    ['A hundred and twelve mil bolts.', ['112 mm']],
    ['A hundred fifty mil screws.', ['150 mm']],
    ['The motor is one twenty kilos.', ['120 kg']],
    ["It's a one eighteen mil board.", ['118 mm']],
    ['I left a one twenty mil gap.', ['120 mm']],
    ['It puts out two thirty volts.', ['230 V']],
    ['Hundred eighteen mil to the headstock.', ['118 mm']],
    ['Hundred and eighteen mil to the headstock.', ['118 mm']],
  ])('%s', (text, sizes) => expect(told(text)).toEqual(sizes));
});

describe('what a piece costs', () => {
  test.each([
    ['The hinges were twelve fifty apiece.', 'GB', ['12.5 GBP']],
    ['The hinges were 4.20 apiece.', 'GB', ['4.2 GBP']],
    ['The sheets were twelve fifty a piece.', 'KE', ['1250 KES']],
    ['The rails are 900 apiece.', 'GB', ['900 mm']],
  ])('%s (%s)', (text, region, sizes) => expect(told(text, region)).toEqual(sizes));
});

describe('below nought, and nothing is taken from anything', () => {
  test.each([
    ['Minus six this morning.', ['-6 degC']],
    ['It went down to minus six.', ['-6 degC']],
    ['Minus six, and the pipes froze.', ['-6 degC']],
    ['Cut it to the opening minus six.', ['6 mm']],
    ["The rail's 620, minus six for the gap.", ['620 mm', '6 mm']],
  ])('%s', (text, sizes) => expect(told(text)).toEqual(sizes));
});

test('how warm it is outside is told of outside, and inside of inside', () => {
  expect(figures('It was 14 degrees outside and 19 inside.').map(({ item }) => item)).toEqual([
    'outside',
    'inside',
  ]);
});
