/** How often words stand in talk, and which side by side: the tables of `src/language/heard/talk-counts.ts`. */
import type { TalkTables } from '../../src/language/heard/neighbours.ts';
import { heardWords } from '../../src/language/heard/repair.ts';
import { classOf, countedAs, STOP } from '../../src/language/heard/word-classes.ts';

/** Pairs said once tell little of the two words; of their classes they still tell. */
const LEAST = 2;

type Counts = Map<string, number>;

export class TalkCounting {
  readonly #words: Counts = new Map();
  readonly #pairs: Counts = new Map();
  readonly #classes: Counts = new Map();

  /** Counts the texts, or takes them off again. */
  add(texts: readonly string[], times: 1 | -1 = 1): void {
    for (const text of texts) {
      let left = STOP;
      for (const { lower, opens } of heardWords(text)) {
        const word = countedAs(lower);
        if (opens) left = STOP;
        bump(this.#words, word, times);
        bump(this.#pairs, `${left} ${word}`, times);
        bump(this.#classes, `${classOf(left)} ${classOf(word)}`, times);
        left = word;
      }
    }
  }

  tables(): TalkTables {
    return {
      words: wordTable(this.#words),
      pairs: pairTable(this.#pairs, LEAST),
      classes: pairTable(this.#classes, 1),
    };
  }

  /** For the report of what was counted. */
  get sizes(): { readonly words: number; readonly pairs: number; readonly classes: number } {
    return { words: this.#words.size, pairs: this.#pairs.size, classes: this.#classes.size };
  }
}

function bump(counts: Counts, key: string, by: number): void {
  const count = (counts.get(key) ?? 0) + by;
  if (count > 0) counts.set(key, count);
  else counts.delete(key);
}

const byName = ([a]: readonly [string, number], [b]: readonly [string, number]) => (a < b ? -1 : 1);

/** "count:words" lines, the commonest first. */
function wordTable(words: Counts): string {
  const byCount = new Map<number, string[]>();
  for (const [word, count] of [...words].sort(byName)) {
    const list = byCount.get(count);
    if (list) list.push(word);
    else byCount.set(count, [word]);
  }
  return [...byCount]
    .sort(([a], [b]) => b - a)
    .map(([count, list]) => `${count}:${list.join(' ')}`)
    .join('\n');
}

/** "a:b 3,c 2" lines: what follows each word. */
function pairTable(counts: Counts, least: number): string {
  const rows = new Map<string, string[]>();
  for (const [pair, count] of [...counts].filter(([, count]) => count >= least).sort(byName)) {
    const [left = '', right = ''] = pair.split(' ');
    const row = rows.get(left);
    if (row) row.push(`${right} ${count}`);
    else rows.set(left, [`${right} ${count}`]);
  }
  return [...rows].map(([left, right]) => `${left}:${right.join(',')}`).join('\n');
}
