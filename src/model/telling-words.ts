/** Which words tell one piece of work from another, and which ones contradict each other. */
import { stemOf } from './stems.ts';

/** Words that say nothing about which task is meant. */
export const EMPTY: ReadonlySet<string> = new Set(
  `a an the this that these those it its i i'm i've we you he she they them him her my our your his their and or but so
  to of for in on at by with from into onto up down is are was were be been being am do did done does have has had having
  get got gotten getting gotta go goes going gone went will would can could should must need needs needed want wants
  wanted not no till until before after once when while as if then than there here now today tomorrow yesterday morning
  tonight night week day days monday tuesday wednesday thursday friday saturday sunday just only also too all both each
  one two some any bit lot thing things stuff really actually finally already yet still ever never next last new more
  much very quite well right okay yeah oh s t re ll ve d m whole every who what which where how why because since though
  about over under again back off out somebody someone anybody everybody nobody time first second third job jobs`
    .split(/\s+/)
    .map(stemOf),
);

/** Words of rank and side: when both sides have one of a set, it must be the same. */
const RIVALS: readonly (readonly string[])[] = [
  ['first', 'second', 'third', 'fourth', 'final', 'last'],
  ['east', 'west', 'north', 'south'],
  ['left', 'right'],
  ['port', 'starboard'],
  ['front', 'back', 'rear'],
  ['upper', 'lower'],
  ['top', 'bottom'],
  ['inner', 'outer'],
  ['inside', 'outside'],
  ['hot', 'cold'],
];

/** The row or pair that a word is one of. */
const RIVALS_OF = new Map(RIVALS.flatMap((group) => group.map((word) => [word, group] as const)));

/** Whether two sets of words name different ones of a row or a pair: first and second, left and right. */
export function areRivalWords(a: ReadonlySet<string>, b: ReadonlySet<string>): boolean {
  // Most texts hold no such word at all.
  for (const word of a) {
    const group = RIVALS_OF.get(word);
    if (group && areRivals(group, a, b)) return true;
  }
  return false;
}

function areRivals(group: readonly string[], a: ReadonlySet<string>, b: ReadonlySet<string>): boolean {
  let [isLeft, isRight] = [false, false];
  for (const word of group) {
    const [left, right] = [a.has(word), b.has(word)];
    if (left && right) return false;
    isLeft ||= left;
    isRight ||= right;
  }
  return isLeft && isRight;
}

const RANKS: readonly string[] = RIVALS[0] ?? [];
/** Whether both name the same one of a row: "do the second tomorrow", "second coat's on". */
export const sharesRank = (a: ReadonlySet<string>, b: ReadonlySet<string>) =>
  RANKS.some((rank) => a.has(rank) && b.has(rank));

/** Shortest part by which a compound is known: the "mill" of "sawmill". */
export const PART = 4;

/** "Mill" as it may be written within a word: "mil". */
export const undoubled = (stem: string) => (stem.at(-1) === stem.at(-2) ? stem.slice(0, -1) : stem);

/** "Mill" and "sawmill", "compact" and "compactor": one ends in the other, or begins with it at some length. */
export function isCompound(a: string, b: string): boolean {
  const [short, long] = a.length < b.length ? [a, b] : [b, a];
  if (short.length < PART || short.length === long.length) return false;
  return (
    long.endsWith(short) ||
    long.endsWith(undoubled(short)) ||
    (short.length >= STEM && long.startsWith(short))
  );
}
/** Shortest beginning by which two words of one root are known. */
export const STEM = 6;
