/** Words for the two sides of a thing. Common practice, no source. */
import { wordTable } from '../word-table.ts';

const PAIRS: readonly (readonly [string, string])[] = [
  ['port', 'starboard'],
  ['left', 'right'],
  ['left-hand', 'right-hand'],
  ['lh', 'rh'],
  ['nearside', 'offside'],
  ['driver', 'passenger'],
];

const OTHERS = wordTable<string>(
  Object.fromEntries(
    PAIRS.flatMap(([a, b]) => [
      [a, b],
      [b, a],
    ]),
  ),
);

/** The word for the other side: "starboard" for "port"; nothing when the word is no side. */
export const otherSide = (word: string): string | undefined => OTHERS[word.toLowerCase()];

/** The two sides, the one that is usually said first in front. */
export function sidesOf(word: string): readonly [string, string] | undefined {
  return PAIRS.find((pair) => pair.includes(word.toLowerCase()));
}

/** The name with its side taken for the other one: "starboard knee" for "port knee"; nothing when it names no side. */
export function mirroredName(name: string): string | undefined {
  let found = false;
  const words = name.split(/\s+/).map((word) => {
    const bare = word.replace(/['’]s?$/, '');
    const other = otherSide(bare);
    if (other === undefined) return word;
    found = true;
    return other + word.slice(bare.length);
  });
  return found ? words.join(' ') : undefined;
}

/** The name without its side: "knee" for "port knee", "locker lid" for "left-hand locker lid". */
export function withoutSide(name: string): string {
  return name
    .split(/\s+/)
    .filter((word, k, all) => {
      const bare = word.replace(/['’]s?$/, '');
      if (otherSide(bare) !== undefined) return false;
      return !(/^(?:hand|side)$/.test(bare) && k > 0 && otherSide(all[k - 1] ?? '') !== undefined);
    })
    .join(' ');
}
