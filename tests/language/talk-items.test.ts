import { describe, expect, test } from 'vitest';
import type { ReadContext } from '../../src/language/notes.ts';
import { readMemo } from '../../src/language/pipeline.ts';

const CONTEXT: ReadContext = { units: 'metric', region: 'GB', recordedAt: '2026-06-09T10:00:00+01:00' };
const figuresOf = (text: string) =>
  readMemo(text, CONTEXT).notes.figures.map(({ item, value, unit }) => [item, value, unit]);

describe('what a figure is of, where a common word is in the way', () => {
  test.each([
    ['The ceiling is 2380 high and the case stands 2510.', 'case', 2510],
    ['The pallet springs are new and they all want to be 130 grams.', 'pallet springs', 130],
    ["Meantime the floor's 230 deep.", 'floor', 230],
  ])('"%s"', (text, item, value) =>
    expect(figuresOf(text)).toContainEqual([item, value, expect.any(String)]),
  );

  test.each(['In that case the lid is 40 thick.', 'In case of rain the lid is 40 thick.'])(
    '"%s" is of no case',
    (text) => expect(figuresOf(text)).toEqual([['lid', 40, 'mm']]),
  );
});

test.each([
  'The sketch of it is in photo 214.',
  'The noise is down from 62 to 41 decibels.',
  'I kept the old plinth, it might be wanted one day.',
])('"%s" gives no figure', (text) => expect(figuresOf(text)).toEqual([]));

test.each([
  ['The glue has to cure for one day.', 1, 'd'],
  ['The vent is 214 by 60.', 214, 'mm'],
])('"%s" does', (text, value, unit) =>
  expect(figuresOf(text)).toContainEqual([expect.any(String), value, unit]),
);

describe('pieces and their size', () => {
  test.each([
    ['I want six 90 mm screws.', 6, 90],
    ['Cut four 600 mm battens.', 4, 600],
  ])('"%s"', (text, count, size) => expect(figuresOf(text).map(([, value]) => value)).toEqual([count, size]));

  test('a size that is said in words and figures is one number', () =>
    expect(figuresOf('The rail is six 90 mm long.')).toEqual([['rail', 690, 'mm']]));
});
