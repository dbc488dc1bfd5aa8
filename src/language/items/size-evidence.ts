/**
 * What speaks for each of the sizes that a length may be: words beside the number and their places, what the thing is
 * and how big the number, what its fellows in a list got, what was said of it before. `size-weights.ts` holds what
 * each piece of evidence weighs.
 */
import { kindsOf, singular } from '../lexicon/trade-nouns.ts';
import type { Attribute, Bound } from '../notes.ts';
import type { Anchor } from './anchor.ts';
import { type KnownLength, pairedWith } from './attributes.ts';
import type { Name } from './discourse.ts';
import { inMillimetres, usualSize } from './fitness.ts';
import { headOf } from './naming.ts';
import { phraseAt, tagAt, wordAt } from './parse.ts';
import type { Site } from './site.ts';
import { SIZES_OF_WORD } from './size-words.ts';
import { likelySize } from './usual-sizes.ts';

/** A source that names a size itself: a rule of wording, the usual size of the thing, a figure given before. */
export type Vote = readonly [source: string, size: Attribute];

export interface Evidence {
  readonly votes: readonly Vote[];
  /** What is seen, without a say of its own: the weights tell which sizes it goes with. */
  readonly signs: readonly string[];
}

/** A length as it is known when its thing has been found. */
export interface SizeSite {
  readonly site: Site;
  readonly name: Name;
  readonly anchor: Anchor;
  /** Votes of the rules, the frame and the fillers, in their order. */
  readonly told: readonly Vote[];
  readonly known: readonly KnownLength[];
  /** Lengths of whatever thing that had this very value before. */
  readonly sameValue: readonly KnownLength[];
  readonly bound: Bound;
  readonly isRange: boolean;
  readonly isToleranced: boolean;
  readonly replaces?: number;
  /** The figure before this one. */
  readonly last?: {
    readonly name: Name;
    readonly attribute: Attribute;
    readonly sentence: number;
    readonly word: number;
  };
}

const FINE = [1, 4, 10, 20, 35, 60, 100, 180, 300, 450, 700, 1000, 1500, 2200, 4000, 10_000];
const COARSE = [10, 40, 120, 400, 1200, 3000];
const step = (edges: readonly number[], value: number): number => {
  let k = 0;
  while (k < edges.length && value >= (edges[k] as number)) k++;
  return k;
};

const stemOf = (verb: string): string => (verb.length > 4 ? verb.replace(/(?:ing|ed|es|s|e)$/, '') : verb);

type Add = (sign: string) => void;
type Say = (source: string, size: Attribute | undefined) => void;

/** How far words are looked at on each side of the number. */
const REACH = 7;

function wordsAfter(site: Site, add: Add, say: Say): void {
  const { parse, at } = site;
  const sentence = parse.sentenceOf[at];
  let steps = 0;
  let passed = false;
  for (let k = at + 1; k < parse.words.length && steps < REACH; k++) {
    if (parse.sentenceOf[k] !== sentence) break;
    const tag = tagAt(parse, k);
    const word = wordAt(parse, k);
    if (tag === 'filler' || tag === 'adverb') {
      if (tag === 'adverb') add(`after ${word}`);
      continue;
    }
    steps++;
    if (steps === 1) add(`next ${tag === 'quantity' || tag === 'comma' || tag === 'stop' ? tag : word}`);
    if (steps === 1) add(`next tag ${tag}`);
    if (tag === 'stop' || tag === 'quantity') break;
    if (tag === 'comma' || tag === 'conjunction') passed = true;
    if (steps === 2) add(`second ${word}`);
    if (steps === 2) add(`pair ${wordAt(parse, k - 1)} ${word}`);
    const place = passed ? 'past' : steps <= 2 ? 'next' : 'after';
    // "by 480 wide": the size word of the next quantity is no more than a fellow's.
    if (!(passed && tagAt(parse, k - 1) === 'quantity'))
      for (const size of SIZES_OF_WORD[word] ?? []) say(`word ${place}`, size);
    if (!passed) {
      add(`after ${word}`);
      if (tag === 'noun') for (const kind of kindsOf([word])) add(`after kind ${kind}`);
    }
  }
  if (steps === 0) add('next end');
}

/** "Turned up", "turned out": nothing was turned on a lathe. */
const sizesOf = (word: string, next: string): readonly Attribute[] =>
  word === 'turned' && /^(?:up|out|in|over|round|away)$/.test(next) ? [] : (SIZES_OF_WORD[word] ?? []);

function wordsBefore(site: Site, add: Add, say: Say): void {
  const { parse, at } = site;
  const sentence = parse.sentenceOf[at] as number;
  let steps = 0;
  let fellow = false;
  let comma = false;
  for (let k = at - 1; k >= 0; k--) {
    const same = parse.sentenceOf[k] === sentence;
    if (!same && (parse.sentenceOf[k] as number) < sentence - 1) break;
    const tag = tagAt(parse, k);
    const word = wordAt(parse, k);
    if (tag === 'filler') continue;
    steps++;
    if (steps > 24) break;
    if (same && steps === 1) {
      add(`prev ${tag === 'quantity' || tag === 'comma' ? tag : word}`);
      add(`prev tag ${tag}`);
    }
    if (same && steps === 2) add(`prev pair ${word} ${wordAt(parse, k + 1)}`);
    const place = !same
      ? 'earlier'
      : fellow
        ? 'fellow'
        : comma || steps > REACH
          ? 'far'
          : steps <= 2
            ? 'prev'
            : 'before';
    // What follows another number is said of that one.
    const ofOther = tagAt(parse, k - 1) === 'quantity' && k - 1 >= 0;
    for (const size of sizesOf(word, wordAt(parse, k + 1)))
      say(ofOther ? 'word of fellow' : `word ${place}`, size);
    if (tag === 'quantity') fellow = true;
    if (tag === 'comma') comma = true;
    if (same && !fellow && !comma && steps <= REACH) add(`before ${word}`);
  }
  if (steps === 0 || parse.sentenceOf[at - 1] !== sentence) add('prev start');
}

/** Nothing but a coat, a fit or an error is as small as this. */
const LEAST_MILLIMETRES = 0.4;
const plausible = (usual: Attribute | undefined, millimetres: number): Attribute | undefined =>
  usual === 'thickness' || millimetres >= LEAST_MILLIMETRES ? usual : undefined;

/** The thing itself, its kinds with the value, its usual size. */
function thingEvidence(size: SizeSite, millimetres: number, add: Add, say: Say): void {
  const { name } = size;
  const kinds = kindsOf(name);
  const head = headOf(name);
  const coarse = step(COARSE, millimetres);
  const fine = step(FINE, millimetres);
  add(`value ${fine}`);
  if (kinds.size === 0) add(`kind unknown ${coarse}`);
  for (const kind of kinds) {
    add(`kind ${kind}`);
    add(`kind ${kind} ${coarse}`);
  }
  add(`head ${head}`);
  add(`head ${head} ${coarse}`);
  for (const word of name) if (word !== head) add(`name ${word}`);
  for (const word of name) for (const of of SIZES_OF_WORD[word] ?? []) say('word in name', of);
  if (name.at(-1)?.endsWith('s')) add(`plural ${coarse}`);
  const usual = plausible(usualSize(name, singular(head), kinds, millimetres), millimetres);
  say('usual', usual);
  say('band', plausible(likelySize(head, millimetres), millimetres));
  add(`usual ${usual ?? 'none'}`);
}

/** The subject of the clause and the noun right after, which are not always the thing. */
function nearEvidence(size: SizeSite, millimetres: number, add: Add, say: Say): void {
  const { site, anchor } = size;
  const subject = anchor.subject ?? anchor.direct;
  if (subject && subject.name.length > 0) {
    const head = headOf(subject.name);
    add(`near ${head}`);
    for (const kind of subject.kinds) add(`near kind ${kind}`);
    say('band of near', likelySize(head, millimetres));
    say('usual of near', usualSize(subject.name, singular(head), subject.kinds, millimetres));
    for (const word of subject.name) for (const of of SIZES_OF_WORD[word] ?? []) say('word in near', of);
  } else add(`near ${subject?.pronoun ?? (subject ? 'speaker' : 'nothing')}`);
  if (anchor.verb !== undefined) {
    const verb = wordAt(site.parse, anchor.verb);
    add(`verb ${stemOf(verb)}`);
    if (anchor.preposition) add(`verb ${stemOf(verb)} ${anchor.preposition}`);
  } else add('no verb');
  if (anchor.preposition) add(`by ${anchor.preposition}`);
  const next = phraseAt(site.parse, site.at + 1) ?? phraseAt(site.parse, site.at);
  if (next && next.last > site.at && next.name.length > 0) {
    add(`of ${headOf(next.name)}`);
    for (const kind of next.kinds) add(`of kind ${kind}`);
    say('band of next', likelySize(singular(headOf(next.name)), millimetres));
    say('usual of next', usualSize(next.name, singular(headOf(next.name)), next.kinds, millimetres));
  }
}

/** Place in "a by b by c", and what the figure before got. */
function fellowEvidence(size: SizeSite, millimetres: number, add: Add): void {
  const { site, last } = size;
  const pair = pairedWith(site.parse, site.at);
  if (pair) {
    const place = pair.isFirst ? 'first' : 'second';
    add(`pair ${place}`);
    add(`pair ${place} ${step(COARSE, millimetres)}`);
    for (const kind of kindsOf(size.name)) {
      add(`pair ${place} ${kind}`);
      add(`pair ${place} ${kind} ${step(COARSE, millimetres)}`);
    }
    add(`pair ${place} ${headOf(size.name)}`);
  } else if (tagAt(site.parse, site.at - 1) === 'comma' && tagAt(site.parse, site.at - 2) === 'quantity')
    add('listed');
  if (!last) return;
  const away = Math.min(2, (site.parse.sentenceOf[site.at] as number) - last.sentence);
  const same = last.name.join(' ') === size.name.join(' ') ? 'same' : 'other';
  add(`last ${last.attribute} ${same} ${away}`);
  if (pair && !pair.isFirst && same === 'same') add(`pair after ${last.attribute}`);
  if (away === 0 && site.at - last.word <= 3) add(`close after ${last.attribute} ${same}`);
}

/** What the thing had before, by how near the values are. */
function knownEvidence(size: SizeSite, millimetres: number, add: Add, say: Say): void {
  const { known } = size;
  const seen = new Set<Attribute>();
  let nearest: KnownLength | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const length of known) {
    const off = Math.abs(Math.log(length.millimetres / millimetres));
    if (off < least) {
      least = off;
      nearest = length;
    }
    if (seen.has(length.attribute)) continue;
    seen.add(length.attribute);
    say('known', length.attribute);
  }
  if (nearest) {
    const how =
      least < 0.001 ? 'same' : least < 0.06 ? 'near' : least < 0.25 ? 'like' : least < 0.7 ? 'off' : 'far';
    say(`known ${how}`, nearest.attribute);
    if (seen.size === 1) say(`known only ${how}`, nearest.attribute);
    add(`known ${how} ${nearest.attribute}`);
  } else add('known none');
  const equal = new Set(size.sameValue.map(({ attribute }) => attribute));
  for (const attribute of equal) say(equal.size === 1 ? 'value only' : 'value', attribute);
  if (size.replaces !== undefined)
    for (const length of [...known, ...size.sameValue])
      if (Math.abs(length.millimetres / size.replaces - 1) < 0.001) say('replaced', length.attribute);
}

/** All that speaks for one size or another. */
export function sizeEvidence(size: SizeSite): Evidence {
  const votes: Vote[] = [...size.told];
  const signs: string[] = ['any'];
  const seen = new Set<string>();
  const add: Add = (sign) => {
    if (seen.has(sign)) return;
    seen.add(sign);
    signs.push(sign);
  };
  const said = new Set<string>();
  const say: Say = (source, attribute) => {
    if (!attribute || said.has(`${source} ${attribute}`)) return;
    said.add(`${source} ${attribute}`);
    votes.push([source, attribute]);
  };
  const { value, unit } = size.site.quantity;
  const millimetres = inMillimetres(value, unit);
  for (const [source, attribute] of size.told) add(`${source.split(' ')[0]} ${attribute}`);
  if (!size.told.some(([source]) => source.startsWith('rule '))) add('no rule');
  add(`bound ${size.bound}`);
  if (size.isRange) add('range');
  if (size.isToleranced) add('toleranced');
  if (unit === 'thou') add('unit thou');
  wordsAfter(size.site, add, say);
  wordsBefore(size.site, add, say);
  thingEvidence(size, millimetres, add, say);
  nearEvidence(size, millimetres, add, say);
  fellowEvidence(size, millimetres, add);
  knownEvidence(size, millimetres, add, say);
  return { votes, signs };
}
