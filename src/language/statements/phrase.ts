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
  unit: 'U',
  ordered: 'Z',
  do: 'B',
  did: 'b',
  done: 'P',
  doing: 'G',
  does: 'g',
  harmer: 'w',
  ruler: 'r',
  size: 'z',
  ill: 'i',
  mishap: 't',
  material: 'm',
  daily: 'd',
};

/** A phrase ready to be looked for. */
export interface Phrase {
  /** Compiled when a clause first has all that it needs: most memos use a part of the phrases. */
  readonly pattern: () => RegExp;
  /** What must stand in the clause, by the numbers of `needNumber`: spares most clauses the pattern. */
  readonly needs: readonly number[];
}

/**
 * Compiles a phrase to a pattern over coded words. Plain words stand for themselves, `<class>` for a word of a class,
 * `<any>` for any word, `<plain>` for one that is no finite verb; `( | )`, `?`, `*`, `+`, `{m,n}`, `^`, `$` and
 * `(?<name> )` work as in regular expressions, over whole words. `!<class>` and `!word` look ahead: "not this here".
 */
export function phrase(source: string): Phrase {
  const parts = source.match(TOKENS) ?? [];
  let made: RegExp | undefined;
  return {
    pattern: () => {
      made ??= new RegExp(patternOf(parts), 'd');
      return made;
    },
    needs: [...needsOf(parts)].sort((a, b) => commonness(a) - commonness(b)).map(needNumber),
  };
}

/** Rough guess how often one of a set stands in a clause: the rarest need is asked first. */
function commonness(need: readonly string[]): number {
  return need.reduce((sum, one) => sum + (one.startsWith('<') ? 20 : EVERYDAY.has(one) ? 10 : 1), 0);
}

const EVERYDAY = new Set("i we it 's the a is and to of that in on".split(' '));

const TOKENS = /\(\?(?::|!|=|<[a-z]+>)|\(|\)|\||\^|\$|\{\d*,?\d*\}|[?*+]|!?<[a-z]+>|!?[a-z0-9'’_&-]+/g;

/** Whether a part stands for a word; TOKENS makes nothing else but brackets and marks. */
const isWord = (part: string) => !'()|^${?*+'.includes(part.charAt(0));

/**
 * The pattern of a phrase. Plain words that may stand for one another become one word of many spellings, which is quicker
 * to compile and to match.
 */
function patternOf(parts: readonly string[]): string {
  const rest = parts.some((part) => part.startsWith('!') || part === '(?!') ? TO_END : LETTERS;
  let pattern = '';
  for (let at = 0; at < parts.length; at++) {
    const words = [parts[at] as string];
    while (isChoice(parts, at) && parts[at + 1] === '|' && isChoice(parts, at + 2)) {
      at += 2;
      words.push(parts[at] as string);
    }
    pattern += words.length > 1 ? anyOf(words, rest) : compiled(words[0] as string, rest);
  }
  return pattern;
}

/** The rest of a word's classes. Nothing that comes behind can match inside of a word, so that none of them is given back. */
const LETTERS = '[A-Za-z]*';
/** But what must not come behind is not there inside of a word either: then the word has to be taken to its last letter. */
const TO_END = `${LETTERS}(?![A-Za-z])`;

/** Whether a plain word is all of what stands between two strokes, or between one and its bracket. */
function isChoice(parts: readonly string[], at: number): boolean {
  const part = parts[at] ?? '(';
  const isAlone = /^(?:\(.*|\|)$/.test(parts[at - 1] ?? '|') && /^[|)]$/.test(parts[at + 1] ?? '|');
  return isAlone && isWord(part) && !/^[!<]/.test(part);
}

const anyOf = (words: readonly string[], rest: string): string => `(?: (?:${words.join('|')})/${rest})`;

function compiled(part: string, rest: string): string {
  if (!isWord(part)) return part;
  const bare = part.replace(/^!/, '');
  const pattern = bare.startsWith('<') ? atom(bare.slice(1, -1), rest) : `(?: ${bare}/${rest})`;
  return part.startsWith('!') ? `(?!${pattern})` : pattern;
}

function atom(name: string, rest: string): string {
  if (name === 'any') return '(?: [^ ]+)';
  if (name === 'plain') return '(?: [^ /]+/(?![A-Za-z]*[SHMV])[A-Za-z]*)';
  const letter = letterOf(name);
  // Up to the letter itself: where what follows fails, nothing is left to try over.
  return `(?: [^ /]+/[^ ${letter}]*${letter}${rest})`;
}

function letterOf(name: string): string {
  const letter = CLASS[name];
  if (!letter) throw new Error(`no such word class: <${name}>`);
  return letter;
}

/** What must stand in a clause for the phrase to match at all: one set of words and classes for each needed part. */
function needsOf(parts: readonly string[]): readonly (readonly string[])[] {
  let at = 0;
  /** Reads alternatives up to a closing bracket: the needs of each. */
  const alternatives = (): string[][][] => {
    const branches: string[][][] = [[]];
    while (at < parts.length && parts[at] !== ')') {
      const part = parts[at++] as string;
      if (part === '|') branches.push([]);
      else {
        const needs = item(part);
        if (!optional()) branches.at(-1)?.push(...needs);
      }
    }
    at++;
    return branches;
  };
  const item = (part: string): string[][] => {
    if (part.startsWith('(')) {
      const branches = alternatives();
      if (part === '(?!' || part === '(?=') return [];
      if (branches.length === 1) return branches[0] as string[][];
      if (branches.some((branch) => branch.length === 0)) return [];
      return [branches.flatMap((branch) => branch.reduce((a, b) => (b.length < a.length ? b : a)))];
    }
    if (part.startsWith('!<')) atom(part.slice(2, -1), LETTERS);
    if (!isWord(part) || part.startsWith('!') || part === '<any>' || part === '<plain>') return [];
    return [[part.startsWith('<') ? `<${letterOf(part.slice(1, -1))}` : part]];
  };
  /** Consumes a quantifier; true when the item may be missing. */
  const optional = (): boolean => {
    const mark = parts[at] ?? ' ';
    if (!'?*+{'.includes(mark.charAt(0))) return false;
    at++;
    // A second "?" only makes the first mark lazy.
    if (parts[at] === '?') at++;
    return mark === '?' || mark === '*' || mark.startsWith('{0');
  };
  const branches = alternatives();
  // Told when the phrase is written and not when it is first used.
  if (at !== parts.length + 1) throw new Error(`unbalanced brackets: ${parts.join(' ')}`);
  return branches.length === 1 ? (branches[0] ?? []) : [];
}

/** Numbers of all needs, and for each word or class the needs that it meets: a clause is held against all at once. */
const NUMBERS = new Map<string, number>();
const MEETS = new Map<string, number[]>();
let needCount = 0;
/** Needs met by the classes of a word, by their letters; forgotten when a phrase is made. */
const metByLetters = new Map<string, Needs>();

/** The number of a need: any one of these words and classes. Phrases that need the same share it. */
function needNumber(any: readonly string[]): number {
  const members = [...new Set(any)].sort();
  const key = members.join(' ');
  const known = NUMBERS.get(key);
  if (known !== undefined) return known;
  const number = needCount++;
  NUMBERS.set(key, number);
  metByLetters.clear();
  for (const member of members) {
    const needs = MEETS.get(member);
    if (needs) needs.push(number);
    else MEETS.set(member, [number]);
  }
  return number;
}

/** A set of needs: one bit for the number of each. */
type Needs = Uint32Array;

function needsOfAny(members: readonly string[]): Needs {
  const met = new Uint32Array((needCount >>> 5) + 1);
  for (const member of members) addNeeds(met, MEETS.get(member));
  return met;
}

function addNeeds(met: Needs, numbers: readonly number[] | undefined): void {
  if (!numbers) return;
  for (const number of numbers) addBit(met, number);
}

function addBit(bits: Uint32Array, number: number): void {
  const at = number >>> 5;
  bits[at] = (bits[at] as number) | (1 << (number & 31));
}

/** What words of some classes meet: there are few sets of classes, and each of them meets many needs. */
function needsOfLetters(letters: string): Needs {
  let needs = metByLetters.get(letters);
  if (!needs) {
    needs = needsOfAny([...letters].map((letter) => `<${letter}`));
    metByLetters.set(letters, needs);
  }
  return needs;
}

function addLetters(met: Needs, letters: string): void {
  if (letters === '') return;
  const needs = needsOfLetters(letters);
  for (let at = 0; at < met.length; at++) met[at] = (met[at] as number) | (needs[at] as number);
}

const NONE_MET: Needs = new Uint32Array(0);

/** Which needs the words of a clause meet: found out when a phrase first asks, and again where one was made since. */
export class NeedsMet {
  readonly #words: readonly Word[];
  #bits: Needs = NONE_MET;
  #known = 0;

  constructor(words: readonly Word[]) {
    this.#words = words;
  }

  bits(): Needs {
    if (this.#known !== needCount) this.#meet();
    return this.#bits;
  }

  #meet(): void {
    const met = needsOfAny([]);
    for (const { lower, classes, meanings } of this.#words) {
      addNeeds(met, MEETS.get(lower));
      addLetters(met, classes);
      addLetters(met, meanings);
    }
    this.#bits = met;
    this.#known = needCount;
  }
}

const has = (met: Needs, number: number): boolean =>
  ((met[number >>> 5] as number) & (1 << (number & 31))) !== 0;

function hasAll(met: Needs, numbers: readonly number[]): boolean {
  for (let k = 0; k < numbers.length; k++) if (!has(met, numbers[k] as number)) return false;
  return true;
}

/** Whether a clause has all that a phrase needs: a quick look that spares most clauses the pattern. */
const mayMatch = ({ needs }: Phrase, { met }: Said): boolean => hasAll(met.bits(), needs);

/**
 * Finds those of some rules that may read a clause, in their order: of the rules that look for a phrase most are left out.
 * They are found from the needs that the clause meets, as there are far fewer of those than rules.
 */
export function rulesByNeed<R extends { readonly pattern?: Phrase }>(
  rules: readonly R[],
): (said: Said) => readonly R[] {
  const size = (rules.length >>> 5) + 1;
  const always = new Uint32Array(size);
  const byFirst = new Map<number, number[]>();
  rules.forEach(({ pattern }, place) => {
    const first = pattern?.needs[0];
    if (first === undefined) addBit(always, place);
    else byFirst.set(first, [...(byFirst.get(first) ?? []), place]);
  });
  const firsts = new Uint32Array((needCount >>> 5) + 1);
  for (const need of byFirst.keys()) addBit(firsts, need);
  // One bit for each rule: in this way they come out in their order.
  const asked = new Uint32Array(size);
  return ({ met }) => {
    const bits = met.bits();
    asked.set(always);
    for (let at = 0; at < firsts.length; at++) {
      for (let both = (firsts[at] as number) & (bits[at] as number); both !== 0; both &= both - 1)
        for (const place of byFirst.get((at << 5) | lowestBit(both)) as number[])
          if (hasAll(bits, rules[place]?.pattern?.needs ?? NO_NEEDS)) addBit(asked, place);
    }
    const found: R[] = [];
    for (let at = 0; at < size; at++)
      for (let left = asked[at] as number; left !== 0; left &= left - 1)
        found.push(rules[(at << 5) | lowestBit(left)] as R);
    return found;
  };
}

const NO_NEEDS: readonly number[] = [];

const lowestBit = (word: number): number => 31 - Math.clz32(word & -word);

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
export function find(phrase: Phrase, said: Said): Found | undefined {
  if (!mayMatch(phrase, said)) return undefined;
  const match = phrase.pattern().exec(said.code);
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

export const matches = (phrase: Phrase, said: Said): boolean =>
  mayMatch(phrase, said) && phrase.pattern().test(said.code);
