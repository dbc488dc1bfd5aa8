/** The grammar of one clause, as far as the rules of work need it: who, how (past, passive, verbless ...), which verb. */

import { wordSet } from '../word-table.ts';
import type { Said, Word } from './words.ts';

/** Who or what the clause is about. `none` is a dropped subject ("Cut the legs this morning"). */
export type Doer = 'speaker' | 'viewer' | 'person' | 'thing' | 'pronoun' | 'none';

/** How the verb stands. `verbless` clauses have no finite verb at all ("Panels cut", "First coat on"). */
export type Form = 'past' | 'perfect' | 'passive' | 'copula' | 'present' | 'other' | 'verbless';

export interface Grammar {
  readonly form: Form;
  readonly doer: Doer;
  readonly subject: readonly Word[];
  /** The lexical verb or participle; of a copula the word after it; undefined where there is none. */
  readonly verb: Word | undefined;
  /** The words after the verb, or all words of a verbless clause. */
  readonly rest: readonly Word[];
  readonly negated: boolean;
}

const is = (word: Word | undefined, letters: RegExp) => word !== undefined && letters.test(word.classes);

const LEAD_ADVERBS = wordSet(
  'now already finally also just actually probably really still then eventually luckily meanwhile basically literally today yesterday tonight',
);
const MOMENTS = wordSet(
  'morning afternoon evening night week month weekend lunch tea breakfast dinner supper work dark that this meantime end monday tuesday wednesday thursday friday saturday sunday',
);
const TIME_PREPOSITIONS = wordSet('this last on in before after over at by since');

/** Index of the first word that is no filler, adverb or time ("so", "this morning", "after lunch"). */
export function leadLength(words: readonly Word[]): number {
  let k = 0;
  while (k < words.length - 1) {
    const length = adjunctLength(words, k);
    if (length === 0) break;
    k += length;
  }
  return Math.min(k, words.length - 1);
}

function adjunctLength(words: readonly Word[], k: number): number {
  const [a, b, c] = [words[k], words[k + 1], words[k + 2]];
  if (!a) return 0;
  if (a.classes.includes('L') || LEAD_ADVERBS.has(a.lower)) return 1;
  if (/^(?:monday|tuesday|wednesday|thursday|friday|saturday|sunday)$/.test(a.lower))
    return b && MOMENTS.has(b.lower) ? 2 : 1;
  if (a.lower === 'first' && b?.lower === 'thing') return 2;
  if (a.lower === 'all' && b && /^(?:day|morning|afternoon|weekend|night|week)$/.test(b.lower)) return 2;
  if (!TIME_PREPOSITIONS.has(a.lower) || !b) return 0;
  if (MOMENTS.has(b.lower)) return c && /^(?:morning|afternoon|evening|night)$/.test(c.lower) ? 3 : 2;
  return b.lower === 'the' && c && /^(?:weekend|morning|afternoon|evening|meantime|end)$/.test(c.lower)
    ? 3
    : 0;
}

const SPEAKER = /^(?:i|we|me|us|myself|ourselves)$/;
const PRONOUN = /^(?:it|that|this|they|them|these|those|she|he|which|everything|one)$/;

function doerOf(subject: readonly Word[]): Doer {
  const last = subject.at(-1);
  if (!last) return 'none';
  if (subject.some(({ lower }) => lower === 'you')) return 'viewer';
  if (SPEAKER.test(last.lower) || (subject.length <= 6 && subject.some(({ lower }) => SPEAKER.test(lower))))
    return 'speaker';
  if (subject.length === 1 && PRONOUN.test(last.lower)) return last.lower === 'he' ? 'person' : 'pronoun';
  // "my brother in law", "the lad from the yard", but not "the crew bench".
  const place = subject.findIndex((word, k) => k > 0 && is(word, /R/));
  const head = place < 0 ? last : subject[place - 1];
  const person = is(head, /J/);
  return person ? 'person' : 'thing';
}

/** Several rules ask for the grammar of the same clause; a clause never changes, so it is read once. */
const readBefore = new WeakMap<Said, Grammar>();

/** Reads the grammar of a clause; undefined for one without words. */
export function grammarOf(said: Said): Grammar | undefined {
  const known = readBefore.get(said);
  if (known) return known;
  const grammar = readGrammar(said);
  if (grammar) readBefore.set(said, grammar);
  return grammar;
}

function readGrammar(said: Said): Grammar | undefined {
  const { words } = said;
  if (words.length === 0) return undefined;
  const from = leadLength(words);
  for (let k = from; k < words.length; k++) {
    if (is(words[k], /[SHM]/)) return withAuxiliary(words, from, k);
    if (isPastVerb(words, from, k)) return shaped('past', words, from, k, k);
    if (isPresentVerb(words, from, k)) return shaped('present', words, from, k, k);
  }
  return shaped('verbless', words, from, words.length, words.length);
}

function isPastVerb(words: readonly Word[], from: number, k: number): boolean {
  const word = words[k] as Word;
  const before = words[k - 1];
  const after = words[k + 1];
  const irregular = /^(?:got|went|came|gave|took|made|had)$/.test(word.lower);
  if (!word.classes.includes('b') && !irregular) return false;
  if (k === from) return after !== undefined;
  if (is(before, /[TR]/) && !is(before, /O/)) return false;
  if (before && SPEAKER.test(before.lower)) return true;
  // "the panel cut the draught" has an object; "the cut panel" has none.
  return after !== undefined && /[TOCRQA]/.test(after.classes) && k - from <= 6;
}

const STANDS =
  /^(?:sits?|stands?|hangs?|lies|lives?|runs?|works?|fits?|holds?|shuts?|closes?|opens?|swings?|slides?|drains?|turns?|fires?|knows?)$/;

/** "The tank stands on its base", "the scupper runs clear": how a thing now is, told by a plain present. */
function isPresentVerb(words: readonly Word[], from: number, k: number): boolean {
  const word = words[k] as Word;
  if (k === from || k - from > 6 || !STANDS.test(word.lower) || is(words[k - 1], /[TRV]/)) return false;
  const after = words[k + 1];
  return after === undefined || /[RCATO]/.test(after.classes) || after.classes === '';
}

function shaped(
  form: Form,
  words: readonly Word[],
  from: number,
  subjectEnd: number,
  verbAt: number,
): Grammar {
  const subject = form === 'verbless' ? [] : words.slice(from, subjectEnd);
  return {
    form,
    doer: doerOf(subject),
    subject,
    verb: words[verbAt],
    rest: form === 'verbless' ? words.slice(from) : words.slice(verbAt + 1),
    negated: words.slice(from, verbAt + 1).some((word) => is(word, /[NK]/)),
  };
}

const BETWEEN = /[A]/;

function withAuxiliary(words: readonly Word[], from: number, at: number): Grammar {
  let k = at;
  const chain: Word[] = [];
  while (k < words.length && (is(words[k], /[SHMN]/) || isBetween(words, k))) {
    const word = words[k] as Word;
    if (is(word, /[SHM]/)) chain.push(word);
    k++;
  }
  const verb = words[k];
  const form = formOf(chain, verb);
  const all = shaped(form, words, from, at, k);
  return { ...all, negated: all.negated || words.slice(at, k).some((word) => is(word, /[NK]/)) };
}

/** Adverbs between a helper and its verb, but not those that open a noun phrase ("is all of it"). */
const isBetween = (words: readonly Word[], k: number) => {
  const word = words[k] as Word;
  return (
    (BETWEEN.test(word.classes) && !/[P]/.test(word.classes) && k < words.length - 1) ||
    /^(?:back|well|been|being)$/.test(word.lower)
  );
};

/** Participles of verbs that are no work, and still put a clause in the perfect. */
const OTHER_PARTICIPLES =
  /^(?:got|gone|come|had|drunk|eaten|grown|become|begun|driven|flown|fallen|risen|been|lost|found|kept|seen|shown|known|sat|slept|ridden|[a-z]{3,}ed)$/;

function formOf(chain: readonly Word[], verb: Word | undefined): Form {
  if (!verb || chain.some((word) => is(word, /M/)) || verb.lower === 'to' || verb.lower === 'going')
    return 'other';
  const last = chain.at(-1) as Word;
  const participle = is(verb, /P/) || OTHER_PARTICIPLES.test(verb.lower);
  if (/^(?:have|has|'ve|had)$/.test(last.lower)) return participle ? 'perfect' : 'other';
  if (is(verb, /G/)) return 'other';
  return participle ? 'passive' : 'copula';
}
