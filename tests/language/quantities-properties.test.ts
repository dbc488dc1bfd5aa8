import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readQuantities } from '../../src/language/quantities.ts';
import { tokenise } from '../../src/language/tokens.ts';

const HOUSES = ['metric', 'us', 'mixed'] as const;
const REGIONS = ['GB', 'US', 'NL', 'AU', ''] as const;

const read = (text: string, units: (typeof HOUSES)[number] = 'metric', region = 'GB') =>
  readQuantities(text, tokenise(text), { units, region, recordedAt: '2026-03-07T18:40:00+00:00' });

/** Talk with numbers, units, marks, emoji, other scripts and control characters thrown together. */
const talk = fc
  .array(
    fc.oneof(
      fc.constantFrom(
        ...'a an one two to for five eight nine oh point hundred thousand twenty forty-five and half quarter eighths by'.split(
          ' ',
        ),
        ...'mil metre metres foot inch inches in litres kilos pounds degrees square squared % £ " \' / : - , . … × 5 25 4,5 1.200 9:05 3/8 ½ .5'.split(
          ' ',
        ),
        ...'wide high no sorry not instead of about at least over under between give or take the it is was fuse tyres weighs'.split(
          ' ',
        ),
        '🪚',
        '锯子',
        'доска',
        '\u0007',
        '\u001b[31m',
        '\u202e',
        '\n\n',
      ),
      fc.string({ unit: 'binary', maxLength: 6 }),
    ),
    { maxLength: 30 },
  )
  .chain((words) => fc.constantFrom(' ', '').map((joint) => words.join(joint)));

test('every quote is the text at its place, and every value is a number', () => {
  fc.assert(
    fc.property(talk, fc.constantFrom(...HOUSES), fc.constantFrom(...REGIONS), (text, units, region) => {
      for (const quantity of read(text, units, region).quantities) {
        expect(text.slice(quantity.span.start, quantity.span.end)).toBe(quantity.quote);
        expect(quantity.quote.length).toBeGreaterThan(0);
        expect(Number.isFinite(quantity.value)).toBe(true);
        expect(quantity.core.start).toBeGreaterThanOrEqual(quantity.span.start);
        expect(quantity.core.end).toBeLessThanOrEqual(quantity.span.end);
      }
    }),
    { numRuns: 3000 },
  );
});

/** Words that no number is made of; "inch and a half" and "hundred mil" state one without a digit. */
const plainWord = fc.constantFrom(
  ...'plane sand glue oak ash the my it is was on off wide high proud door sill bench paint dries slowly and but then we she said nothing metres inches kilos'.split(
    ' ',
  ),
);

test('text without digits or number words states no figure', () => {
  fc.assert(
    fc.property(fc.array(plainWord, { maxLength: 25 }), fc.constantFrom(...HOUSES), (words, units) => {
      expect(read(words.join(' '), units).quantities).toEqual([]);
    }),
    { numRuns: 2000 },
  );
});

test('any text at all is taken', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary', maxLength: 300 }), (text) => {
      expect(() => read(text)).not.toThrow();
    }),
    { numRuns: 2000 },
  );
});

test('reading the same text twice gives the same', () => {
  fc.assert(
    fc.property(talk, (text) => {
      expect(read(text)).toEqual(read(text));
    }),
    { numRuns: 300 },
  );
});
