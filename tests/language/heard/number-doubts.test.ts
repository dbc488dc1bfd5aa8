import { describe, expect, test } from 'vitest';
import { soundsLikeNumber } from '../../../src/language/heard/number-doubts.ts';
import type { ReadContext } from '../../../src/language/notes.ts';
import { readMemo } from '../../../src/language/pipeline.ts';

const CONTEXT: ReadContext = { units: 'metric', region: 'GB', recordedAt: '2026-03-02T18:00:00Z' };
const figuresOf = (text: string, isHeard: boolean) => readMemo(text, { ...CONTEXT, isHeard }).notes.figures;

describe('numbers that sound alike', () => {
  test.each([
    [13, 30],
    [50, 15],
    [118, 180],
    [1940, 1914],
  ])('%d and %d', (value, other) => {
    expect(soundsLikeNumber(value)).toBe(other);
    expect(soundsLikeNumber(other)).toBe(value);
  });
  test.each([0, 7, 10, 12, 20, 25, 100, 905, 15.5, -15])('%d has no such other', (value) =>
    expect(soundsLikeNumber(value)).toBeUndefined(),
  );
});

describe('a heard figure', () => {
  test.each([
    ['The batten is fifteen mil thick.', 15, { value: 50, unit: 'mm' }],
    ['The batten is 50 mm thick.', 50, { value: 15, unit: 'mm' }],
    ['The fuse for the pump is eighty amps.', 80, { value: 18, unit: 'A' }],
  ])('"%s" keeps its number and gets the other one as an alternative', (text, value, other) => {
    const [figure] = figuresOf(text, true);
    expect(figure?.value).toBe(value);
    expect(figure?.alternatives).toContainEqual(other);
    expect(figuresOf(text, false)[0]?.alternatives ?? []).not.toContainEqual(other);
  });

  test('of a number with no such other is in no doubt', () => {
    expect(figuresOf('The batten is twenty two mil thick.', true)[0]).not.toHaveProperty('alternatives');
  });
});
