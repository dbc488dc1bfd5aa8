/** What was heard for words of the trade: lines "heard>meant count,meant count". */
import { heardWords } from '../../src/language/heard/repair.ts';
import { soundDistance, soundsOf } from '../../src/language/heard/sounds.ts';
import { align, isOfTrade, plainWord } from './aligned.ts';

/** What sounds like nothing near the word was heard of its neighbours. */
const FARTHEST = 0.42;

export interface Confusion {
  readonly heard: string;
  readonly meant: string;
}

/** Words of the trade that were heard as others, where their neighbours were heard right. */
export function confusionsOf(said: string, heard: string): readonly Confusion[] {
  const words = heardWords(said).map(({ lower }) => plainWord(lower));
  const others = heardWords(heard).map(({ lower }) => plainWord(lower));
  const pairing = align(words, others);
  return words.flatMap((word, at) => {
    const place = pairing[at] as number;
    if (!isOfTrade(word) || (place >= 0 && others[place] === word)) return [];
    // All that was heard between the neighbours that were heard right.
    const left = at === 0 ? -1 : (pairing[at - 1] as number);
    const right = at + 1 === words.length ? others.length : (pairing[at + 1] as number);
    if (at > 0 && (left < 0 || others[left] !== words[at - 1])) return [];
    if (at + 1 < words.length && (right < 0 || others[right] !== words[at + 1])) return [];
    const between = others.slice(left + 1, right);
    if (between.length === 0 || between.length > 2 || between.some((one) => /\d/.test(one))) return [];
    const whole = between.join('');
    if (whole === word || whole === `${word}s` || `${whole}s` === word) return [];
    if (soundDistance(soundsOf(whole), soundsOf(word)) > FARTHEST) return [];
    return [{ heard: between.join(' '), meant: word }];
  });
}

/** The table of what was heard. */
export function confusionTable(confusions: Iterable<Confusion>): string {
  const counts = new Map<string, Map<string, number>>();
  for (const { heard, meant } of confusions) {
    const row = counts.get(heard) ?? new Map<string, number>();
    row.set(meant, (row.get(meant) ?? 0) + 1);
    counts.set(heard, row);
  }
  return [...counts]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([heard, meant]) => `${heard}>${[...meant].map(([word, count]) => `${word} ${count}`).join(',')}`)
    .join('\n');
}
