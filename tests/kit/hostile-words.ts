/** Words from a memo that would act on a page, a terminal or a file if they got through as they are. */
import fc from 'fast-check';
import { oneLine } from '../../src/reports/words.ts';

const MARKS = [
  '<script>alert(1)</script>',
  '<b>',
  '</i>',
  '{\\an8}',
  '\\N',
  '-->',
  '00:00:01.000 --> 00:00:02.000',
  'NOTE x',
  'STYLE',
  'WEBVTT',
  '&lt;',
  '&',
  '=1+1',
  '+2',
  '-3',
  '@cmd',
  '"',
  '""',
  "'",
  ',',
  ';',
  '\\',
  ':',
  'END:VCALENDAR',
  'BEGIN:VEVENT',
  '\r\n',
  '\n\n',
  '\t',
  '../../etc',
  'C:\\x',
  '\u0000',
  '\u001b[31m',
  '\u001b]52;c;aGk=\u0007',
  '\u202e',
  '\u2028',
  '**bold**',
  '[x](javascript:1)',
  '- [x]',
  '[m9.t9]',
  'é',
  '漢字',
  '😀',
  'x'.repeat(90),
];

/** Hostile words that are not empty once control characters are gone. */
export const hostileWords: fc.Arbitrary<string> = fc
  .array(fc.oneof(fc.constantFrom(...MARKS), fc.string({ unit: 'binary' }), fc.string()), {
    minLength: 1,
    maxLength: 6,
  })
  .map((parts) => parts.join(' '))
  .filter((words) => /[\p{L}\p{N}]/u.test(oneLine(words)));
