/** What speaks for or against a clause stating something: its words, their order, its grammar and its neighbours. */
import { grammarOf } from '../clause-grammar.ts';
import type { Scene } from '../draft.ts';
import type { Said } from '../words.ts';
import { type Atom, atom, hashOf, type Traits, traitsOf } from './atoms.ts';

/** Takes one feature: where it stands, and up to three atoms. */
export type Sink = (place: Place, a: Atom, b: Atom, c: Atom) => void;

/** Where in and about the clause a feature stands; the trace shows it before its words. */
export const PLACES = [
  '',
  'sort',
  'of',
  'pair',
  'sorts',
  'sorts',
  'first',
  'first',
  'first',
  'last',
  'last',
  'opener',
  'opener',
  'length',
  'place',
  'before',
  'before sort',
  'before first',
  'after',
  'after sort',
  'after first',
  'grammar',
  'grammar verb',
  'earlier',
  'later',
  'open work',
  'parts',
  'apart',
  'subject',
] as const;
export type Place = number;

export const NOTHING = atom('');
const START = atom('^');
const END = atom('$');
const LENGTHS = [1, 2, 3, 4, 5, 6, 8, 10, 13, 17, 22, 30, 1e9].map(
  (most) => [most, atom(`${most}`)] as const,
);
const lengthAtom = (n: number): Atom => (LENGTHS.find(([most]) => n <= most) ?? LENGTHS[0])?.[1] as Atom;

/** Atoms of openers and the like: few in number. */
const known = new Map<string, Atom>();
function few(text: string): Atom {
  const found = known.get(text);
  if (found) return found;
  const made = { text, hash: hashOf(text) };
  if (known.size < 2000) known.set(text, made);
  return made;
}

const lastTraits = new WeakMap<Said, readonly Traits[]>();
function traitsIn(said: Said): readonly Traits[] {
  const kept = lastTraits.get(said);
  if (kept) return kept;
  const made = said.words.map(traitsOf);
  lastTraits.set(said, made);
  return made;
}

/** First word that is no filler. */
function firstAt(said: Said): number {
  let k = 0;
  while (k < said.words.length - 1 && said.words[k]?.classes.includes('L')) k++;
  return k;
}

function ownWords(traits: readonly Traits[], first: number, add: Sink): void {
  const n = traits.length;
  for (let k = 0; k < n; k++) {
    const here = traits[k] as Traits;
    add(0, here.word, NOTHING, NOTHING);
    if (here.sort !== here.word) add(1, here.sort, NOTHING, NOTHING);
    for (const one of here.more) add(2, one, NOTHING, NOTHING);
    const next = traits[k + 1];
    const after = traits[k + 2];
    if (next) {
      add(3, here.word, next.word, NOTHING);
      if (here.sort !== here.word || next.sort !== next.word) add(4, here.sort, next.sort, NOTHING);
    }
    add(5, here.sort, next?.sort ?? END, after?.sort ?? END);
    if (after && next) add(27, here.sort, after.sort, NOTHING);
    add(26, here.part, next?.part ?? END, after?.part ?? END);
  }
  const [a, b, c] = [traits[first], traits[first + 1], traits[first + 2]];
  if (a) {
    add(6, a.word, NOTHING, NOTHING);
    add(7, a.sort, b?.sort ?? END, NOTHING);
    add(8, a.sort, b?.sort ?? END, c?.sort ?? END);
  }
  const [z, y] = [traits[n - 1], traits[n - 2]];
  if (z) {
    add(9, z.word, NOTHING, NOTHING);
    add(10, y?.sort ?? START, z.sort, NOTHING);
  }
}

function placeInMemo(said: Said, scene: Scene, first: Traits | undefined, add: Sink): void {
  add(11, few(said.opener), NOTHING, NOTHING);
  add(12, few(said.opener), first?.sort ?? END, NOTHING);
  add(13, lengthAtom(said.words.length), NOTHING, NOTHING);
  const before = scene.said[said.index - 1];
  const after = scene.said[said.index + 1];
  const opens = before?.sentence !== said.sentence;
  const closes = after?.sentence !== said.sentence;
  add(14, few(`${opens ? 'first' : 'later'} ${closes ? 'last' : 'goes on'}`), NOTHING, NOTHING);
  if (said.afterPause && !opens) add(14, few('after a pause'), NOTHING, NOTHING);
  if (said.asks) add(14, few('asks'), NOTHING, NOTHING);
  if (scene.unreal.has(said.index)) add(14, few('unreal'), NOTHING, NOTHING);
  if (scene.listed.has(said.index)) add(14, few('listed'), NOTHING, NOTHING);
  // In a short text every clause is near the end.
  if (scene.said.length < 24) return;
  const left = scene.said.length - said.index;
  if (left <= 8) add(14, few(left <= 3 ? 'end of memo' : 'near the end'), NOTHING, NOTHING);
  if (said.index <= 2) add(14, few('start of memo'), NOTHING, NOTHING);
}

/** Words and sorts of a clause beside this one; in another sentence they say less. */
function beside(other: Said | undefined, said: Said, place: number, far: number, add: Sink): void {
  if (!other) return;
  const traits = traitsIn(other);
  const first = firstAt(other);
  if (other.sentence !== said.sentence) {
    const most = Math.min(traits.length, first + 12);
    for (let k = first; k < most; k++) add(far, (traits[k] as Traits).word, NOTHING, NOTHING);
    return;
  }
  const most = Math.min(traits.length, first + 20);
  for (let k = first; k < most; k++) {
    const { word, sort } = traits[k] as Traits;
    add(place, word, NOTHING, NOTHING);
    if (sort !== word) add(place + 1, sort, NOTHING, NOTHING);
  }
  add(place + 2, few(other.opener), traits[first]?.sort ?? END, NOTHING);
}

function grammar(said: Said, add: Sink): void {
  const read = grammarOf(said);
  if (!read) return;
  const { form, doer, negated, verb, subject, rest } = read;
  const shape = few(`${form} ${doer}${negated ? ' not' : ''}`);
  add(21, shape, NOTHING, NOTHING);
  add(21, few(form), NOTHING, NOTHING);
  add(21, few(doer), NOTHING, NOTHING);
  const end = verb ? traitsOf(verb) : undefined;
  add(22, shape, end?.word ?? END, NOTHING);
  add(22, shape, end?.sort ?? END, rest[0] ? traitsOf(rest[0]).sort : END);
  for (const one of end?.more ?? []) add(22, few(form), one, NOTHING);
  const head = subject.at(-1);
  if (head) {
    const { word, sort } = traitsOf(head);
    add(28, word, few(form), NOTHING);
    add(28, sort, few(form), end?.sort ?? END);
  }
}

/** How many words of the clause are among those of one task still open. */
function openWork(said: Said, scene: Scene, add: Sink): void {
  if (scene.open.length === 0) return;
  let most = 0;
  for (const { things, verbs } of scene.open) {
    let shared = 0;
    for (const word of said.words) {
      if (word.lower.length < 3) continue;
      const one = word.lower.replace(/(?:([sxz]|[cs]h)es|s)$/, '$1');
      if (things.has(one) || things.has(word.lower)) shared++;
      else if (/[BbPGg]/.test(word.classes) && [...verbs].some((verb) => word.lower.startsWith(verb)))
        shared++;
    }
    if (shared > most) most = shared;
  }
  add(25, few(`${Math.min(3, most)}`), NOTHING, NOTHING);
}

/** Tells the sink all that speaks for or against the clause stating something. */
export function features(said: Said, scene: Scene, add: Sink): void {
  const traits = traitsIn(said);
  const first = firstAt(said);
  ownWords(traits, first, add);
  placeInMemo(said, scene, traits[first], add);
  beside(scene.said[said.index - 1], said, 15, 23, add);
  beside(scene.said[said.index + 1], said, 18, 24, add);
  grammar(said, add);
  openWork(said, scene, add);
}

/** The number of a feature: 30 bits of its place and atoms, never 0. */
export function featureNumber(place: Place, a: Atom, b: Atom, c: Atom): number {
  let h = Math.imul(place + 1, 0x9e3779b1) ^ a.hash;
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b) + b.hash;
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35) + c.hash;
  h = Math.imul(h ^ (h >>> 16), 0x27d4eb2f);
  return (h ^ (h >>> 15)) & 0x3fffffff || 1;
}

/** How a feature is told in the trace. */
export function featureText(place: Place, a: Atom, b: Atom, c: Atom): string {
  const words = [a, b, c]
    .map(({ text }) => text)
    .filter((text) => text !== '')
    .join(' ');
  const where = PLACES[place] ?? '';
  return where === '' ? `"${words}"` : `${where} "${words}"`;
}
