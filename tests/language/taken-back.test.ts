/** "Scratch that" with nothing behind it takes the figures of the sentence before it back. */
import { expect, test } from 'vitest';
import { figuresSaid } from '../kit/figures-said.ts';

test.each([
  ['The locker is 18 mm deep. No, scratch that.', 'none'],
  ['The locker is 18 mm deep. Scratch that.', 'none'],
  ['The locker is 18 mm deep. No. Scratch that, please.', 'none'],
  ['The bench top is 915 mm high, no, strike that.', 'none'],
  ['The chamber is 1240 mm wide and 860 mm deep. Sorry, forget that one.', 'none'],
  ['The shelf is 320 mm deep. The locker is 18 mm deep. No, scratch that.', '320 mm'],
  ['The locker is 18 mm deep. No, scratch that. The locker is 80 mm deep.', '80 mm'],
])('"%s" leaves %s', (said, left) => {
  expect(figuresSaid(said)).toBe(left);
});

test.each([
  ['The locker is 18 mm deep. No, scratch that, 80 mm.', '80 mm'],
  ['The locker is 18 mm deep. Scratch that panel and I am out.', '18 mm'],
  ['The locker is 18 mm deep. I scratched that twice.', '18 mm'],
  ['Scratch that. The locker is 18 mm deep.', '18 mm'],
  ['The locker is 18 mm deep. We cut the rails today. Scratch that.', '18 mm'],
  ['The locker is 18 mm deep. No.', '18 mm'],
])('"%s" still says %s', (said, left) => {
  expect(figuresSaid(said)).toBe(left);
});
