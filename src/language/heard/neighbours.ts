/** How likely a word is beside its neighbours in talk of builds. */
import { CLASS_PAIR_COUNTS, PAIR_COUNTS, WORD_COUNTS } from './talk-counts.ts';
import { classOf } from './word-classes.ts';

type Row = ReadonlyMap<string, number>;
interface Followers {
  readonly counts: Row;
  readonly all: number;
}

interface Counts {
  readonly words: Row;
  readonly all: number;
  readonly pairs: ReadonlyMap<string, Followers>;
  readonly classes: ReadonlyMap<string, Followers>;
  /** How often each class was said. */
  readonly inClass: Row;
}

/** A word that was never said in the counted talk: as if it had been said this often. */
const NEVER_SAID = 0.3;
/** How much of a word's chance comes from its class, and how much from the word alone. */
const CLASS_SHARE = 0.65;
/** What is taken off each count of a pair, for the pairs that were not seen: absolute discounting. */
const DISCOUNT = 0.5;

const lines = (table: string) => table.trim().split('\n');

function followers(table: string): ReadonlyMap<string, Followers> {
  return new Map(
    lines(table).map((line) => {
      const cut = line.indexOf(':');
      const counts = new Map(
        line
          .slice(cut + 1)
          .split(',')
          .map((one) => {
            const [word = '', count] = one.split(' ');
            return [word, Number(count)] as const;
          }),
      );
      let all = 0;
      for (const count of counts.values()) all += count;
      return [line.slice(0, cut), { counts, all }] as const;
    }),
  );
}

/** Three tables in the form of `talk-counts.ts`. */
export interface TalkTables {
  readonly words: string;
  readonly pairs: string;
  readonly classes: string;
}

const OWN_TABLES: TalkTables = { words: WORD_COUNTS, pairs: PAIR_COUNTS, classes: CLASS_PAIR_COUNTS };

function unpack(tables: TalkTables): Counts {
  const words = new Map<string, number>();
  const inClass = new Map<string, number>();
  let all = 0;
  for (const line of lines(tables.words)) {
    const cut = line.indexOf(':');
    const count = Number(line.slice(0, cut));
    for (const word of line.slice(cut + 1).split(' ')) {
      words.set(word, count);
      all += count;
      const kind = classOf(word);
      inClass.set(kind, (inClass.get(kind) ?? 0) + count);
    }
  }
  return { words, all, pairs: followers(tables.pairs), classes: followers(tables.classes), inClass };
}

let unpacked: Counts | undefined;
function counts(): Counts {
  unpacked ??= unpack(OWN_TABLES);
  return unpacked;
}

/** Counts by other tables from now on, so that a story can be judged by talk that does not hold it; without, by the own ones. */
export function countTalkBy(tables: TalkTables = OWN_TABLES): void {
  unpacked = unpack(tables);
}

/** How often a word was said in the counted talk; 0 for never. */
export const timesSaid = (word: string): number => counts().words.get(word) ?? 0;

/** The share of a word in all talk. */
function share(word: string): number {
  const { words, all } = counts();
  return (words.get(word) ?? NEVER_SAID) / all;
}

/** Logarithm of the chance that `word` follows `left`: from the pair, the pair of their classes, and the word alone. */
export function logChanceAfter(left: string, word: string): number {
  const { pairs, classes, inClass, words, all } = counts();
  const [leftClass, wordClass] = [classOf(left), classOf(word)];
  const alone = share(word);
  const kin = classes.get(leftClass);
  const inKind = Math.min(1, (words.get(word) ?? NEVER_SAID) / Math.max(1, inClass.get(wordClass) ?? 1));
  const byClass = kin
    ? (((kin.counts.get(wordClass) ?? 0) + 0.5 * ((inClass.get(wordClass) ?? 1) / all)) / (kin.all + 0.5)) *
      inKind
    : alone;
  const backed = CLASS_SHARE * byClass + (1 - CLASS_SHARE) * alone;
  const own = pairs.get(left);
  if (!own) return Math.log(backed);
  // Pairs said once are not in the table: what is missing from the word's own count is theirs, and goes to the unseen.
  const said = Math.max(own.all, words.get(left) ?? 0) + DISCOUNT;
  const seen = Math.max(0, (own.counts.get(word) ?? 0) - DISCOUNT) / said;
  const unseen = 1 - (own.all - DISCOUNT * own.counts.size) / said;
  return Math.log(seen + unseen * backed);
}

/** Logarithm of the chance of a word alone. */
export const logChance = (word: string): number => Math.log(share(word));
