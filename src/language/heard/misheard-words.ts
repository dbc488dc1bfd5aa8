/**
 * Words of the trade as the bundled recogniser was seen to write them when stories were spoken by synthetic voices
 * (flite rms, festival slt-hts). Written on the left, said on the right. A list of what was seen, not a rule: a pair
 * by sound alone (Double Metaphone, few letters apart) was tried, and changed more right words than wrong ones.
 */

/** What was written is no word, or none that a builder says of his work. */
const NO_WORDS = `
axel axle
axels axles
exal axle
exals axles
exel axle
leno lino
furing furring
furings furrings
beton batten
betons battens
bumktop bunk top
bumktops bunk tops
fomes foams
hambers hangers
specc spec
`;

/** What was written is a word: read as the other only where the talk is of that. */
const REAL_WORDS = `
beach beech
pain pane
pains panes
joyce joists
bats batts
hall hull
hell hull
bowl bolt
bowls bolts
sale sill
sales sills
sail sill
sails sills
trend tread
trends treads
citing siding
brain drain
brains drains
basil bezel
lath lathe
`;

/** Words so common that they are read as the other only straight after a thickness or a sort. */
const AFTER_A_SORT = `
play ply
fly ply
`;

export interface Misheard {
  readonly meant: string;
  /** Whether what was written is a word that may be meant. */
  readonly isWord: boolean;
  /** Whether it must stand after a thickness or a sort of sheet. */
  readonly afterSort: boolean;
}

function pairsOf(
  list: string,
  isWord: boolean,
  afterSort: boolean,
): readonly (readonly [string, Misheard])[] {
  return list
    .trim()
    .split('\n')
    .map((line) => {
      const [written = '', ...meant] = line.split(' ');
      return [written, { meant: meant.join(' '), isWord, afterSort }] as const;
    });
}

export const MISHEARD: ReadonlyMap<string, Misheard> = new Map([
  ...pairsOf(NO_WORDS, false, false),
  ...pairsOf(REAL_WORDS, true, false),
  ...pairsOf(AFTER_A_SORT, true, true),
]);
