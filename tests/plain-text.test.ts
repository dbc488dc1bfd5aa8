import fc from 'fast-check';
import { expect, test } from 'vitest';
import { blankedSequences, escapeSequences, plainText } from '../src/plain-text.ts';

test.each([
  ['the shelf is 742', 'the shelf is 742'],
  ['\u001b[31mred\u001b[0m', 'red'],
  ['\u001b]52;c;cm0gLXJmIH4=\u0007after', 'after'],
  ['\u001b]0;title\u001b\\after', 'after'],
  ['\u009b2Jgone', 'gone'],
  ['\u001b]0;title\nafter', ' after'],
  ['\u001bPpicture\u001b\\after', 'after'],
  ['\u009d0;title\u009cafter', 'after'],
  ['one\r\ntwo\tthree', 'one two three'],
  ['bell\u0007 back\u0008space', 'bell backspace'],
  ['\u202e907\u202c mm', '907 mm'],
  ['Größe 15 ㎜ 👷🏽', 'Größe 15 ㎜ 👷🏽'],
  ['\ud800', '\ufffd'],
])('%j shows as %j', (said, shown) => {
  expect(plainText(said)).toBe(shown);
});

test('no control character is left, whatever comes in', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary' }), (text) => {
      expect(plainText(text)).not.toMatch(/\p{Cc}/u);
    }),
  );
});

test('sequences are found whole and blanked without moving anything', () => {
  const said = 'a\u001b]0;evil\u0007b\u001b[1mc';
  expect(escapeSequences(said).map(({ start, end }) => said.slice(start, end))).toEqual([
    '\u001b]0;evil\u0007',
    '\u001b[1m',
  ]);
  expect(blankedSequences(said)).toBe(`a${' '.repeat(9)}b    c`);
});
