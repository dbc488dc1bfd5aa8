/** Sizes told by a word that is easily taken for another: inwards and inches, over as a way to go, a beam. */
import { describe, expect, test } from 'vitest';
import { readMemo } from '../../../src/language/pipeline.ts';

const told = (text: string) =>
  readMemo(text, {
    units: 'metric',
    region: 'GB',
    recordedAt: '2026-06-10T12:00:00+01:00',
  }).notes.figures.map(({ attribute, value, unit, bound }) =>
    `${attribute} ${value} ${unit}${bound === 'exact' ? '' : ` ${bound}`}`.trim(),
  );

describe('sizes said loosely', () => {
  test.each([
    ['40 in from the edge.', ['offset 40 mm']],
    ['The hole is 12 inches from the door.', ['offset 12 in']],
    ['The door is 30 inches. The hole is 40 in from it.', ['40 in']],
    ['Eight running feet of skirting.', ['length 8 ft']],
    ['Move the stove over 40.', ['offset 40 mm']],
    ['Shift the cupboards over 25.', ['25 mm']],
    ['No cupboard over 40.', ['at-most']],
    ['The ramp is 300 up over 3600.', ['300 mm', '3600 mm']],
    ['The wall leans 20 mil over two metres.', ['20 mm', '2 m']],
    ["Below five degrees I can't glue.", ['temperature 5 degC at-least']],
    ["Over thirty degrees the resin won't cure.", ['temperature 30 degC at-most']],
    ['Keep it below five degrees.', ['temperature 5 degC at-most']],
    ['The float switch cuts in at 120.', ['120 mm']],
    ['The pump switch cuts in at 30.', ['pressure 30 psi']],
    ['The rent was 17 thousand 2 40.', ['money 17240 GBP']],
    ['The hull is 2100 beam.', ['width 2100 mm']],
    ["Each board's ninety five cover.", ['width 95 mm']],
    ['The hull is 5400 stem-to-stern.', ['length 5400 mm']],
    ['The van is 5400 bumper to bumper.', ['length 5400 mm']],
    ['The room is 2350 floor-to-ceiling.', ['height 2350 mm']],
    ['The shed is 2100 wall-to-wall.', ['width 2100 mm']],
    ['The cupboard is 600 front-to-back.', ['depth 600 mm']],
    ['The shelf sits about 900 up.', ['height 900 mm about']],
    ['The lid is 4 shy.', ['offset 4 mm']],
    ['The door is 3 shy of the frame.', ['offset 3 mm']],
    ['The lid is too wide by 4.', ['offset 4 mm']],
    ['The post is out of plumb by 7.', ['offset 7 mm']],
    ['I bought a 200 beam.', ['200 mm']],
    ['The tiles start at fourteen thirty.', ['1430 mm']],
  ])('%s', (text, parts) => {
    const read = told(text);
    expect(read.slice(-parts.length)).toEqual(parts.map((part) => expect.stringContaining(part)));
  });

  test.each(["The inspector's booked at ten.", 'I started at fourteen thirty.'])('no figure: %s', (text) =>
    expect(told(text)).toEqual([]),
  );
});
