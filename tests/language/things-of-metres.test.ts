/** Bare numbers of a millimetre house that the thing itself makes metres or millimetres. */
import { describe, expect, test } from 'vitest';
import { readMemo } from '../../src/language/pipeline.ts';

const sizes = (text: string) =>
  readMemo(text, {
    units: 'metric',
    region: 'GB',
    recordedAt: '2026-06-10T12:00:00+01:00',
  }).notes.figures.map(({ value, unit }) => `${value} ${unit}`);

describe('long things and room for a body are told in metres', () => {
  test.each([
    ["There's 0.7 to squeeze past the range.", '0.7 m'],
    ['I dug 0.9 deep.', '0.9 m'],
    ['The post holes are 0.8 deep.', '0.8 m'],
    ['The hedge is 22.5 long.', '22.5 m'],
    ['The towpath is 0.9 wide.', '0.9 m'],
    ['The workbench is 0.9 high.', '0.9 m'],
    ['The parlour is four wide.', '4 m'],
  ])('%s', (text, size) => expect(sizes(text)).toEqual([size]));
});

describe('small things, thicknesses and what is out by little are told in millimetres', () => {
  test.each([
    ['The keyway is six wide.', '6 mm'],
    ['The groove is 4.5 wide.', '4.5 mm'],
    ['The pins in the wall are 8.5 long.', '8.5 mm'],
    ['The crack is 2.5 wide.', '2.5 mm'],
    ['The wall is 13.5 thick.', '13.5 mm'],
    ['The lathe bed is 0.5 high at the tailstock end.', '0.5 mm'],
    ['The step is 0.2 high.', '0.2 mm'],
    ['The hedge is 450 wide.', '450 mm'],
  ])('%s', (text, size) => expect(sizes(text)).toEqual([size]));
});
