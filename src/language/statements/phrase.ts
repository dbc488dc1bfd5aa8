import type { Said, Word } from './words.ts';

/** Names of word classes in phrases, and their letters in vocabulary.ts. */
const CLASS: Readonly<Record<string, string>> = {
  be: 'S',
  is: 's',
  have: 'H',
  has: 'h',
  modal: 'M',
  verb: 'V',
  det: 'T',
  pronoun: 'O',
  we: 'I',
  prep: 'R',
  particle: 'C',
  settled: 'c',
  adverb: 'A',
  partly: 'K',
  not: 'N',
  lead: 'L',
  day: 'D',
  person: 'J',
  media: 'E',
  gauge: 'Y',
  faulty: 'F',
  fault: 'f',
  fails: 'X',
  fail: 'x',
  number: 'Q',
  ordered: 'Z',
  do: 'B',
  did: 'b',
  done: 'P',
  doing: 'G',
  does: 'g',
};

/**
 * Compiles a phrase to a pattern over coded words. Plain words stand for themselves, `<class>` for a word of a class,
 * `<any>` for any word, `<plain>` for one that is no finite verb; `( | )`, `?`, `*`, `+`, `{m,n}`, `^`, `$` and
 * `(?<name> )` work as in regular expressions, over whole words. `!<class>` and `!word` look ahead: "not this here".
 */
export function phrase(source: string): RegExp {
  const pattern = source.replace(
    /(!?)<([a-z]+)>|(!?)([a-z0-9'’_&-]+(?:-[a-z]+)*)|\s+|(\(\?<[a-z]+>)|\{\d*,?\d*\}/gi,
    (token, no1, name, no2, word, group) => {
      if (group) return group;
      if (token.startsWith('{')) return token;
      if (name) return negate(no1, atom(name));
      if (word) return negate(no2, `(?: ${word}/[A-Za-z]*)`);
      return '';
    },
  );
  return new RegExp(pattern, 'd');
}

const negate = (mark: string, pattern: string) => (mark ? `(?!${pattern})` : pattern);

function atom(name: string): string {
  if (name === 'any') return '(?: [^ ]+)';
  if (name === 'plain') return '(?: [^ /]+/(?![A-Za-z]*[SHMV])[A-Za-z]*)';
  const letter = CLASS[name];
  if (!letter) throw new Error(`no such word class: <${name}>`);
  return `(?: [^ /]+/[A-Za-z]*${letter}[A-Za-z]*)`;
}

/** Words of a clause that a phrase matched. */
export interface Found {
  readonly words: readonly Word[];
  readonly from: number;
  /** Exclusive. */
  readonly to: number;
  /** Words of a named group; empty when it took no part. */
  readonly part: (name: string) => readonly Word[];
}

const NONE: readonly Word[] = [];

/** Where a phrase matches in a clause, or undefined. */
export function find(pattern: RegExp, said: Said): Found | undefined {
  const match = pattern.exec(said.code);
  if (!match?.indices) return undefined;
  const at = (offset: number) => {
    // Binary search: clauses of unpunctuated text may be long.
    let low = 0;
    let high = said.codeStarts.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((said.codeStarts[middle] as number) < offset) low = middle + 1;
      else high = middle;
    }
    return low;
  };
  const [start, end] = match.indices[0] as [number, number];
  const groups = match.indices.groups;
  return {
    words: said.words.slice(at(start), at(end)),
    from: at(start),
    to: at(end),
    part: (name) => {
      const range = groups?.[name];
      return range ? said.words.slice(at(range[0]), at(range[1])) : NONE;
    },
  };
}

export const matches = (pattern: RegExp, said: Said): boolean => pattern.test(said.code);
export const textOf = (words: readonly Word[]): string =>
  words
    .map((word) => word.lower)
    .join(' ')
    .replace(/ ('|not\b)/g, (_, tail) => (tail === 'not' ? ' not' : tail));
