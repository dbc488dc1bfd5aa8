import { expect, test } from 'vitest';
import type { ReadContext, WordCorrection } from '../../../src/language/notes.ts';
import { readMemo } from '../../../src/language/pipeline.ts';

const CONTEXT: ReadContext = { units: 'metric', region: 'GB', recordedAt: '2026-03-02T18:00:00Z' };
const readAs = (text: string, corrections: readonly WordCorrection[], isHeard = true) =>
  readMemo(text, { ...CONTEXT, isHeard, corrections }).repairs?.map(
    ({ quote, means }) => `${quote}: ${means}`,
  ) ?? [];

test.each([
  ['The king cap is 40 mm thick.', 'king cap', 'kingpost'],
  ["The Morris's top is 40 mm thick.", "morris's top", 'mortise top'],
])('"%s": "%s" is read as "%s", and the quote stays', (text, heard, means) => {
  const { notes, repairs } = readMemo(text, { ...CONTEXT, isHeard: true, corrections: [{ heard, means }] });
  expect(notes.figures[0]).toMatchObject({ value: 40, unit: 'mm' });
  expect(notes.figures[0]?.item).toContain(means.split(' ')[0]);
  expect(repairs).toMatchObject([{ means, why: `you said that "${heard}" is "${means}"` }]);
  expect(text.slice(repairs?.[0]?.start, repairs?.[0]?.end)).toBe(repairs?.[0]?.quote);
});

test('the later word of a person on the same words holds', () => {
  const learned = [
    { heard: 'wick', means: 'brick' },
    { heard: 'wick', means: 'wick' },
  ];
  expect(readAs('The wick is 40 mm thick.', learned)).toEqual([]);
  expect(readAs('The wick is 40 mm thick.', learned.slice(0, 1))).toEqual(['wick: brick']);
});

test('words that the person calls right are not repaired', () => {
  const text = 'The furing strips are fifteen mil.';
  expect(readAs(text, [])).toEqual(['furing: furring']);
  expect(readAs(text, [{ heard: 'furing', means: 'furing' }])).toEqual([]);
});

test('typed talk is never changed by what was learned of heard talk', () => {
  expect(readAs('The wick is 40 mm thick.', [{ heard: 'wick', means: 'brick' }], false)).toEqual([]);
});
