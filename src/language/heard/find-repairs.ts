import type { ReadContext, Span } from '../notes.ts';
import { correctedByPerson, isSaidRight } from './corrected-by-person.ts';
import { dialectSpellings } from './dialect-spellings.ts';
import { hundredsBySound } from './hundreds-by-sound.ts';
import { lostApostrophes } from './lost-apostrophes.ts';
import { namesBySound } from './names-by-sound.ts';
import { numberForms } from './number-forms.ts';
import { numberSounds } from './number-sounds.ts';
import { numberSpellings } from './number-spellings.ts';
import { type Heard, heardWords, type Repair, type RepairRule } from './repair.ts';
import { sizeSounds } from './size-sounds.ts';
import { splitNames } from './split-names.ts';
import { tradeWordsBySound } from './trade-by-sound.ts';
import { unitSounds } from './unit-sounds.ts';

/** In order: of two repairs of one word the first holds. */
const RULES: readonly (readonly [name: string, rule: RepairRule])[] = [
  ['corrected by the person', correctedByPerson],
  ['a number in pieces', numberForms],
  ['a number by its sound', numberSounds],
  ['a number a letter off', numberSpellings],
  ['hundreds by their sound', hundredsBySound],
  ['a unit by its sound', unitSounds],
  ['a size by its sound', sizeSounds],
  ['a dialect spelt by ear', dialectSpellings],
  ['a lost apostrophe', lostApostrophes],
  ['a thing by its sound', namesBySound],
  ['a word of the trade by its sound', tradeWordsBySound],
  ['names run together', splitNames],
];

/** What was misheard in a text, in order of speech, no two on one word. */
export function findRepairs(text: string, context: ReadContext): readonly Repair[] {
  const words = heardWords(text);
  const found: Repair[] = [];
  const taken = new Set<number>();
  for (const [name, rule] of RULES) {
    for (const repair of rule(words, context)) {
      const covered = wordsIn(words, repair);
      if (covered.some(({ start }) => taken.has(start))) continue;
      if (rule !== correctedByPerson && isSaidRight(covered, context)) continue;
      for (const { start } of covered) taken.add(start);
      found.push({ ...repair, rule: name });
    }
  }
  return found.sort((a, b) => a.start - b.start);
}

/** The words that a span covers. */
function wordsIn(words: readonly Heard[], { start, end }: Span): readonly Heard[] {
  let low = 0;
  let high = words.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((words[middle] as Heard).end <= start) low = middle + 1;
    else high = middle;
  }
  let last = low;
  while (last < words.length && (words[last] as Heard).start < end) last++;
  return words.slice(low, last);
}
