import fc from 'fast-check';
import { expect, test } from 'vitest';
import { plainText } from '../src/plain-text.ts';

test.each([
  ['the shelf is 742', 'the shelf is 742'],
  ['\u001b[31mred\u001b[0m', 'red'],
  ['\u001b]52;c;cm0gLXJmIH4=\u0007after', 'after'],
  ['\u001b]0;title\u001b\\after', 'after'],
  ['\u009b2Jgone', 'gone'],
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
