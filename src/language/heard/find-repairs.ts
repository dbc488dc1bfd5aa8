import type { ReadContext } from '../notes.ts';
import { dialectSpellings } from './dialect-spellings.ts';
import { lostApostrophes } from './lost-apostrophes.ts';
import { namesBySound } from './names-by-sound.ts';
import { heardWords, type Repair, type RepairRule } from './repair.ts';
import { unitSounds } from './unit-sounds.ts';

/** In order: of two repairs of one word the first holds. */
const RULES: readonly (readonly [name: string, rule: RepairRule])[] = [
  ['a unit by its sound', unitSounds],
  ['a dialect spelt by ear', dialectSpellings],
  ['a lost apostrophe', lostApostrophes],
  ['a thing by its sound', namesBySound],
];

/** What was misheard in a text, in order of speech, no two on one word. */
export function findRepairs(text: string, context: ReadContext): readonly Repair[] {
  const words = heardWords(text);
  const found = new Map<number, Repair>();
  for (const [name, rule] of RULES) {
    for (const repair of rule(words, context)) {
      if (!found.has(repair.start)) found.set(repair.start, { ...repair, rule: name });
    }
  }
  const inOrder = [...found.values()].sort((a, b) => a.start - b.start);
  return inOrder.filter((repair, at) => repair.start >= (inOrder[at - 1]?.end ?? 0));
}
