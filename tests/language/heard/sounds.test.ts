import fc from 'fast-check';
import { expect, test } from 'vitest';
import { soundDistance, soundsOf } from '../../../src/language/heard/sounds.ts';

const apart = (a: string, b: string) => soundDistance(soundsOf(a), soundsOf(b));

// Nearer, in each row, is what a recogniser was seen to write, or what rhymes; farther is another word of the trade.
test.each([
  ['axles', 'exals', 'anvils'],
  ['furring', 'furing', 'flooring'],
  ['headroom', 'heterum', 'header'],
  ['battens', 'betons', 'bottles'],
  ['sills', 'sales', 'sockets'],
  ['ply', 'play', 'pole'],
  ['joists', 'joyce', 'jacks'],
  ['bunk tops', 'bumktops', 'bench tops'],
])('"%s" sounds more like "%s" than like "%s"', (word, near, far) => {
  expect(apart(word, near)).toBeLessThan(apart(word, far));
  expect(apart(word, near)).toBeLessThan(0.3);
});

test.each([
  ['pane', 'pain'],
  ['beech', 'beach'],
  ['batts', 'bats'],
  ['plane', 'plain'],
  ['foams', 'fomes'],
])('"%s" and "%s" sound the same', (a, b) => expect(apart(a, b)).toBe(0));

test('a distance is the same both ways, from 0 to 1.2, and 0 from a word to itself', () => {
  const word = fc.stringMatching(/^[a-z]{1,12}$/);
  fc.assert(
    fc.property(word, word, (a, b) => {
      expect(apart(a, a)).toBe(0);
      expect(apart(a, b)).toBeCloseTo(apart(b, a), 5);
      expect(apart(a, b)).toBeGreaterThanOrEqual(0);
      expect(apart(a, b)).toBeLessThanOrEqual(1.2001);
    }),
  );
});
