import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { findRepairs } from '../../../src/language/heard/find-repairs.ts';
import { mendText } from '../../../src/language/heard/mended-text.ts';
import type { ReadContext } from '../../../src/language/notes.ts';
import { readMemo } from '../../../src/language/pipeline.ts';

const CONTEXT: ReadContext = { units: 'metric', region: 'GB', recordedAt: '2026-03-02T18:00:00Z' };

function mended(text: string, knownItems: readonly string[] = [], isHeard = true): string {
  return mendText(text, findRepairs(text, { ...CONTEXT, knownItems, isHeard })).text;
}

describe('a word of the trade by its sound', () => {
  test.each([
    ['I bolted the silk plates down today', [], 'I bolted the sill plates down today'],
    ['the furing strips are fifteen mil', [], 'the furring strips are fifteen mil'],
    ['the half inch furing is cut', [], 'the half inch furring is cut'],
    ['cracked the west pain again', ['window pane'], 'cracked the west pane again'],
    ['the sink brain is blocked', ['sink drain'], 'the sink drain is blocked'],
    ['both exals need new bearings', ['axles'], 'both axles need new bearings'],
    ['the lintle is in place', ['lintel'], 'the lintel is in place'],
    ['eighteen mil play them for the lining', [], 'eighteen mil ply them for the lining'],
  ])('"%s", the project knows %j', (heard, known, meant) => expect(mended(heard, known)).toBe(meant));

  // Words that sound like others of the trade and are right where they stand.
  test.each([
    'we had a pain in the back from lifting',
    'the kids want to play on the beach',
    'I hung the door and the sale is on Friday',
    'the bench is 915 high and 600 deep',
    'the plane needs sharpening before I plane the top',
    'the floor drain is fine and the sole is dry',
    'I need to wait for the paint to dry before I weigh it',
    'we met at the yard and had a pint after',
    'order the beech by Wednesday',
    'fifteen or fifty, I never heard which',
  ])('"%s" is left alone', (heard) => expect(mended(heard)).toBe(heard));

  test('typed talk is left alone', () => {
    const text = 'I bolted the silk plates down today';
    expect(mended(text, [], false)).toBe(text);
  });

  test('quotes are the words as heard, and the repair stands beside them', () => {
    const text = 'The furing strips are fifteen mil thick.';
    const { notes, repairs } = readMemo(text, { ...CONTEXT, isHeard: true });
    expect(notes.figures[0]).toMatchObject({
      item: 'furring strips',
      value: 15,
      quote: expect.stringMatching(/fifteen mil/),
    });
    expect(repairs).toMatchObject([{ start: 4, end: 10, quote: 'furing', means: 'furring' }]);
  });

  test('numbers and units are never taken for other words', () => {
    const number = fc.constantFrom(
      'fifteen',
      'fifty',
      '915',
      'two and three eighths',
      'nine oh five',
      'eighty eight',
    );
    const unit = fc.constantFrom('mil', 'metres', 'inches', 'amps', 'litres');
    fc.assert(
      fc.property(number, unit, fc.constantFrom('sill', 'furing', 'exals', 'plank'), (value, of, thing) => {
        const text = `the ${thing} is ${value} ${of}`;
        expect(mended(text)).toContain(`${value} ${of}`);
      }),
    );
  });

  test('whatever is heard, repairs are in order, apart, and true to the text', () => {
    const words = fc.array(
      fc.oneof(fc.constantFrom('the', 'furing', 'silk', 'plates', 'pains', 'of', '905'), fc.string()),
      {
        maxLength: 30,
      },
    );
    fc.assert(
      fc.property(words, (list) => {
        const text = list.join(' ');
        let last = 0;
        for (const { start, end, means } of findRepairs(text, { ...CONTEXT, isHeard: true })) {
          expect(start).toBeGreaterThanOrEqual(last);
          expect(end).toBeGreaterThan(start);
          expect(means).not.toBe('');
          last = end;
        }
      }),
      { numRuns: 50 },
    );
  });
});
