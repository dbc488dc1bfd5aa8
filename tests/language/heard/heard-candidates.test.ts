import { expect, test } from 'vitest';
import { candidatesIn } from '../../../src/language/heard/heard-candidates.ts';
import type { HeardDoubt } from '../../../src/language/heard/heard-doubts.ts';
import { heardWords } from '../../../src/language/heard/repair.ts';
import { SoundIndex, tradeBySound } from '../../../src/language/heard/sound-index.ts';

const NONE = new SoundIndex([]);
const candidates = (text: string, doubts: readonly HeardDoubt[] = []) => {
  const words = heardWords(text);
  return candidatesIn(words, tradeBySound(), NONE, doubts).map(
    ({ from, to, means }) =>
      `${words
        .slice(from, to)
        .map(({ lower }) => lower)
        .join(' ')} > ${means}`,
  );
};

test.each([
  // One consonant of a short word.
  ['I greased the mutt.', 'mutt > nut'],
  ['It drives the ran home.', 'ran > ram'],
  // A sound that went over to the small word.
  ['Put it in than itch.', 'than itch > the niche'],
  // A name in two words, or in three.
  ['It leans on the bull cad there.', 'bull cad > bulkhead'],
  ['The skirt in bored is split.', 'skirt in bored > skirting board'],
  // One and many.
  ['It has two tank now.', 'tank > tanks'],
  ['The tanks is full.', 'tanks > tank'],
])('"%s" may be "%s"', (text, candidate) => expect(candidates(text)).toContain(candidate));

test('a number, and a word that holds a sentence together, is never taken for another one', () => {
  for (const one of candidates('It is forty of them and the other forty.')) expect(one).not.toMatch(/^forty/);
  expect(candidates('than the and then')).toEqual([]);
});

test('what only the recogniser thought of is a candidate, once', () => {
  const text = 'The heterum is tight.';
  const doubt = (means: string): HeardDoubt => ({
    start: 4,
    end: 11,
    chance: 0.2,
    others: [{ means, odds: -1 }],
  });
  expect(candidates(text)).not.toContain('heterum > headlining');
  expect(candidates(text, [doubt('headlining')])).toContain('heterum > headlining');
  const text2 = 'Grease the mutt now.';
  const known: HeardDoubt = { start: 11, end: 15, chance: 0.5, others: [{ means: 'nut', odds: -1 }] };
  expect(candidates(text2, [known]).filter((one) => one === 'mutt > nut')).toHaveLength(1);
});
