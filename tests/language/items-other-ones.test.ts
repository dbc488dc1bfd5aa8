/** Figures of a fellow of the thing before, and of the air that an "it" at the head of a talk means. */
import { describe, expect, test } from 'vitest';
import { readMemo } from '../../src/language/pipeline.ts';

const told = (text: string) =>
  readMemo(text, {
    units: 'metric',
    region: 'GB',
    recordedAt: '2026-06-10T12:00:00+01:00',
  }).notes.figures.map(({ item, attribute, value }) => `${item} ${attribute} ${value}`);

describe('the other one, and the one at another place', () => {
  test.each([
    [
      'The east window is 900 wide. The other one is 1200.',
      ['east window width 900', 'west window width 1200'],
    ],
    ['The shelf is 300 deep. The other is 340.', ['shelf depth 300', 'other shelf depth 340']],
    [
      'The locker under the berth is 400 deep. The one over it is 300.',
      ['locker depth 400', 'locker over berth depth 300'],
    ],
    [
      'The gate by the yard is 3600 wide. The one by the lane is 3000.',
      ['yard gate width 3600', 'lane gate width 3000'],
    ],
    // Two sides of one thing.
    ['The shelf is 300 deep on one side and the other is 310.', ['shelf depth 300']],
    [
      "It's minus four and the lime won't go off below five.",
      ['outside temperature -4', 'lime temperature 5'],
    ],
    ["It's eight degrees and the paint is thick.", ['inside temperature 8']],
    ["The glue's mixed. It's fourteen degrees and the tin is full.", ['glue temperature 14']],
  ])('%s', (text, figures) => expect(told(text).slice(0, figures.length)).toEqual(figures));
});
