/**
 * What the evidence knows of one word: itself, its part in the grammar, the verb it is a form of, the kinds of thing it
 * names, its ending. Each is an atom: a text with a number, so that clauses are scored without building any text.
 */
import {
  ABSTRACT,
  EVERYDAY_ADJECTIVES,
  EVERYDAY_ADVERBS,
  NOUN_OR_VERB,
  PEOPLE,
  TIMES,
  VERB_BASES,
} from '../../lexicon/everyday-words.ts';
import { kindsOf, singular } from '../../lexicon/trade-nouns.ts';
import { workBase, workIng, workParticiple, workPast, workThird } from '../../lexicon/work-verbs.ts';
import type { Word } from '../words.ts';

export interface Atom {
  readonly text: string;
  /** 32 bits of the text. */
  readonly hash: number;
}

export interface Traits {
  readonly classes: string;
  readonly word: Atom;
  /** The word itself where it is one of grammar, else what sort of word it is: "the", "doing", "thing part". */
  readonly sort: Atom;
  /** Coarser: "be", "have", "work", "thing". */
  readonly part: Atom;
  /** The work verb that it is a form of, the kinds that it names, classes of meaning, its ending. */
  readonly more: readonly Atom[];
  /** Whether it says anything of the matter: no word of grammar. */
  readonly isContent: boolean;
}

/** 32 bits of a text (FNV-1a, mixed). */
export function hashOf(text: string): number {
  let h = 0x811c9dc5;
  for (let k = 0; k < text.length; k++) h = Math.imul(h ^ text.charCodeAt(k), 0x01000193);
  h ^= h >>> 15;
  h = Math.imul(h, 0x2c1b3c6d);
  return (h ^ (h >>> 13)) | 0;
}

const atoms = new Map<string, Atom>();

/** The atom of one of a fixed set of texts: kept for good. */
export function atom(text: string): Atom {
  const known = atoms.get(text);
  if (known) return known;
  const made = { text, hash: hashOf(text) };
  atoms.set(text, made);
  return made;
}

/** Classes of vocabulary.ts whose words are few and say more than their class. */
const GRAMMAR = /[SHMVTORCNLKA]/;
const PARTS: readonly (readonly [string, string])[] = [
  ['S', 'be'],
  ['H', 'have'],
  ['M', 'modal'],
  ['N', 'not'],
  ['I', 'we'],
  ['Q', 'number'],
  ['U', 'unit'],
  ['T', 'the'],
  ['O', 'it'],
  ['D', 'day'],
  ['J', 'person'],
  ['E', 'media'],
  ['F', 'faulty'],
  ['f', 'fault'],
  ['X', 'fails'],
  ['x', 'fail'],
  ['Z', 'ordered'],
  ['C', 'up'],
  ['R', 'of'],
  ['V', 'verb'],
  ['A', 'adverb'],
  ['L', 'so'],
];

function workForm(classes: string): string {
  let form = '';
  if (classes.includes('P')) form += 'ed';
  else if (classes.includes('b')) form += 'past';
  if (classes.includes('B')) form += 'do';
  if (classes.includes('G')) form += 'ing';
  if (classes.includes('g')) form += 's';
  return form;
}

/** What sort of plain word it is, by the lists and else by its ending. */
function plainSort(lower: string, meanings: string): string {
  if (/\d/.test(lower)) return 'code';
  const [kind] = kindsOf([lower]);
  if (kind) return `thing ${kind}`;
  if (EVERYDAY_ADJECTIVES.has(lower)) return 'adjective';
  if (EVERYDAY_ADVERBS.has(lower)) return 'adverb';
  if (VERB_BASES.has(lower)) return 'act';
  if (NOUN_OR_VERB.has(lower)) return 'noun or act';
  const one = singular(lower);
  if (ABSTRACT.has(one)) return 'matter';
  if (PEOPLE.has(one)) return 'people';
  if (TIMES.has(one)) return 'time';
  if (meanings !== '') return `meaning ${meanings}`;
  const ending = /(?:ing|ed|ly|er|est|ness|tion|able|ful|less|ous|ish|y|s)$/.exec(lower)?.[0];
  return ending ? `-${ending}` : 'word';
}

function traitsFrom(lower: string, classes: string, meanings: string): Traits {
  const form = workForm(classes);
  const number = classes.includes('Q');
  const part =
    (number ? 'number' : undefined) ??
    PARTS.find(([letter]) => classes.includes(letter))?.[1] ??
    (form === '' ? undefined : form);
  const plain = part === undefined ? plainSort(lower, meanings) : undefined;
  const isGrammar = GRAMMAR.test(classes) && !number;
  const isLoose = classes === 'A' && /ly$/.test(lower);
  const sort = isLoose
    ? 'adverb'
    : isGrammar
      ? lower
      : (plain ?? `${part}${form && part !== form ? ` ${form}` : ''}`);
  const more: Atom[] = [];
  const base =
    workPast(lower) ?? workParticiple(lower) ?? workIng(lower) ?? workThird(lower) ?? workBase(lower);
  if (base && base !== lower) more.push(atom(`verb ${base}`));
  else if (base) more.push(atom(`verb ${lower}`));
  if (!isGrammar) for (const kind of kindsOf([lower])) more.push(atom(`kind ${kind}`));
  for (const letter of meanings) more.push(atom(`meaning ${letter}`));
  if (form !== '') more.push(atom(`form ${form}`));
  if (!isGrammar && !number) {
    if (EVERYDAY_ADJECTIVES.has(lower)) more.push(atom('adjective'));
    const one = singular(lower);
    if (one !== lower) more.push({ text: `one ${one}`, hash: hashOf(`one ${one}`) });
    if (plain !== undefined && lower.length > 5) {
      const ending = `-${lower.slice(-3)}`;
      more.push({ text: ending, hash: hashOf(ending) });
    }
    if (plain !== undefined && /^(?:un|re|over|under|mis|dis)[a-z]{4}/.test(lower))
      more.push(atom(`${/^(?:un|re|over|under|mis|dis)/.exec(lower)?.[0]}-`));
  }
  const word = number && /\d/.test(lower) ? atom('#') : { text: lower, hash: hashOf(lower) };
  return {
    classes,
    word,
    sort: isGrammar && !isLoose ? word : atom(sort),
    part: atom(part ?? plain?.replace(/^(?:thing|meaning) .*$/, 'thing') ?? 'word'),
    more,
    isContent: !isGrammar && !number && lower.length > 2,
  };
}

const traits = new Map<string, Traits>();
/** More words than any memo has; keeps a long run within bounds. */
const MOST = 20_000;

/** What is known of a word; words are looked up once. */
export function traitsOf({ lower, classes, meanings }: Word): Traits {
  const known = traits.get(lower);
  // "done" that stands for "have", words of a preamble: other classes than the word has by itself.
  if (known?.classes === classes) return known;
  const made = traitsFrom(lower, classes, meanings);
  if (known) return made;
  if (traits.size >= MOST) traits.clear();
  traits.set(lower, made);
  return made;
}
