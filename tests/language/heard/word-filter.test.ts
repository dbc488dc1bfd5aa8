import { expect, test } from 'vitest';
import { isKnownWord } from '../../../src/language/heard/known-words.ts';
import { packedWords, packWords } from '../../../src/language/heard/word-filter.ts';

test('a packed set finds every word that is in it, and few others', () => {
  const words = Array.from({ length: 5000 }, (_, at) => `word${at}`);
  const has = packedWords(packWords(words, 7.3));
  expect(words.every(has)).toBe(true);
  const strangers = Array.from({ length: 5000 }, (_, at) => `stranger${at}`).filter(has);
  expect(strangers.length / 5000).toBeLessThan(0.05);
});

test.each(['kitchen', 'joists', 'thursday', 'rabbets', 'welding', 'photographs'])('"%s" is a word', (word) =>
  expect(isKnownWord(word)).toBe(true),
);
test.each(['exals', 'bumktops', 'furing', 'calmters', 'miggles'])('"%s" is none', (word) =>
  expect(isKnownWord(word)).toBe(false),
);
