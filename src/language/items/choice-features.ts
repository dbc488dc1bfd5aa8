/**
 * What speaks for and against a thing being the one that a quantity belongs to: grammar, distance, what the thing can
 * carry, what is known of it. Every feature has a name; `choice-weights.ts` holds what each of them weighs.
 */
import { isPlural, kindsOf } from '../lexicon/trade-nouns.ts';
import { type Anchor, anchorOf, clauseSubject, isReporter, sentenceSubject } from './anchor.ts';
import type { Candidate, FramesSay } from './candidates.ts';
import { fitness, inMillimetres, sizeFit } from './fitness.ts';
import type { Phrase } from './noun-phrases.ts';
import { isSpeaker, tagAt, wordAt } from './parse.ts';
import type { Site } from './site.ts';

/** Name and size of a feature. */
export type Feature = readonly [string, number];

/** What stands in the subject's place of the figure's clause. */
type Context = 'noun' | 'one' | 'it' | 'that' | 'they' | 'speaker' | 'none' | 'direct';

export interface Around {
  readonly anchor: Anchor;
  readonly context: Context;
  readonly plural: boolean | undefined;
  readonly clause: Phrase | undefined;
  readonly sentence: Phrase | undefined;
  readonly equal: ReadonlySet<string>;
  readonly said: FramesSay;
  readonly topicKey: string | undefined;
  readonly lastKey: string | undefined;
}

function contextOf(anchor: Anchor): Context {
  const phrase = anchor.subject ?? anchor.direct;
  if (!phrase) return 'none';
  if (isSpeaker(phrase)) return 'speaker';
  const pronoun = phrase.pronoun;
  if (!pronoun) return anchor.subject ? 'noun' : 'direct';
  if (pronoun === 'one' || pronoun === 'ones') return 'one';
  if (/^(?:it|she)$/.test(pronoun)) return 'it';
  if (/^(?:they|them|those|these|'em)$/.test(pronoun)) return 'they';
  return 'that';
}

export function aroundOf(site: Site, said: FramesSay): Around {
  const anchor = anchorOf(site);
  const context = contextOf(anchor);
  const topic = site.discourse.topicAt(site.at);
  const { value, unit } = site.quantity;
  return {
    anchor,
    context,
    plural: context === 'they' ? true : context === 'it' ? false : undefined,
    clause: anchor.direct ? clauseSubject(site, anchor.direct) : undefined,
    sentence: sentenceSubject(site),
    equal: site.discourse.known.withValue(site.dimension, value, unit, site.said),
    said,
    topicKey: topic?.name.join(' '),
    lastKey: site.discourse.last?.name.join(' '),
  };
}

/** Words, commas and verbs between a mention and the quantity. */
function pathOf(
  site: Site,
  phrase: Phrase,
): { commas: number; verbs: number; quantities: number; stops: number } {
  const { parse, at } = site;
  const [from, to] = phrase.last < at ? [phrase.last + 1, at] : [at + 1, phrase.first];
  let commas = 0;
  let verbs = 0;
  let quantities = 0;
  let stops = 0;
  for (let k = from; k < to; k++) {
    const tag = tagAt(parse, k);
    if (tag === 'comma') commas++;
    else if (tag === 'stop') stops++;
    else if (tag === 'quantity') quantities++;
    else if (tag === 'be' || tag === 'verb' || tag === 'participle' || tag === 'modal') verbs++;
  }
  return { commas, verbs, quantities, stops };
}

const upTo = (n: number, most: number): string => (n >= most ? `${most}+` : String(n));

function placeFeatures(
  site: Site,
  around: Around,
  phrase: Phrase,
  add: (name: string, size?: number) => void,
) {
  const { parse, at, discourse } = site;
  // "the gap behind the bench is": what stands between does not make it less of a subject.
  const role =
    phrase === around.anchor.subject || phrase === around.clause ? 'subject' : discourse.roleOf(phrase);
  const away = (parse.sentenceOf[at] as number) - (parse.sentenceOf[phrase.first] as number);
  const inside = phrase.first <= at && phrase.last >= at;
  const where = inside ? 'inside' : phrase.first > at ? 'ahead' : away === 0 ? 'here' : upTo(away, 3);
  add(`where ${where}`);
  add(`where ${where} ${around.context}`);
  add(`role ${role} ${where}`);
  add(
    `role ${role} ${around.context} ${where === 'here' || where === 'ahead' || where === 'inside' ? where : 'before'}`,
  );
  const path = pathOf(site, phrase);
  const side = phrase.first > at ? 'after' : 'before';
  add(`commas ${side} ${upTo(path.commas, 3)}`);
  add(`verbs ${side} ${upTo(path.verbs, 3)}`);
  add(`quantities ${side} ${upTo(path.quantities, 3)}`);
  if (side === 'before') {
    add('words between', -Math.min(40, at - phrase.last) / 10);
    const next = tagAt(parse, phrase.last + 1);
    add(`next ${next === 'quantity' && phrase.last + 1 === at ? 'this' : (next ?? 'end')}`);
  } else if (!inside) {
    add(`link ${wordAt(parse, phrase.first - 1)}`);
    add(`gap ${upTo(phrase.first - at, 5)}`);
  }
  const left = tagAt(parse, phrase.first - 1);
  if (left === 'preposition') add(`after ${wordAt(parse, phrase.first - 1)}`);
  add(`left ${left ?? 'start'}`);
  add(`det ${phrase.determiner ?? 'none'}`);
  if (phrase.plural) add('plural');
  if (around.plural !== undefined && where !== 'ahead')
    add(around.plural === phrase.plural ? 'agrees' : 'disagrees');
  if (phrase === around.anchor.subject) {
    add('subject of verb');
    const verb = around.anchor.verb;
    if (verb !== undefined && at - verb <= 3 && path.quantities === 0) {
      add(`close subject ${tagAt(parse, verb)}`);
      add('close subject');
    }
  }
  if (phrase === around.anchor.direct) {
    add('direct');
    add(`direct ${role}${around.anchor.comma ? ' comma' : ''}`);
    add(`direct by ${around.anchor.preposition ?? 'none'}`);
  }
  if (phrase === around.clause) add('subject of clause');
  if (phrase === around.sentence) add('subject of sentence');
  if (isReporter(phrase)) add('reporter');
}

function thingFeatures(
  site: Site,
  around: Around,
  candidate: Candidate,
  add: (name: string, size?: number) => void,
) {
  const { discourse, dimension, quantity } = site;
  const kinds = kindsOf(candidate.name);
  add('fitness', fitness(kinds, dimension));
  const of = dimension === 'length' ? (site.said ?? 'bare') : dimension;
  if (kinds.size === 0) add(`kind unknown ${dimension === 'length' ? 'length' : 'other'}`);
  for (const kind of kinds) {
    add(`kind ${kind} ${dimension}`, 1 / kinds.size);
    if (dimension === 'length') add(`kind ${kind} ${of}`, 1 / kinds.size);
  }
  const millimetres = dimension === 'length' ? inMillimetres(quantity.value, quantity.unit) : 0;
  if (millimetres > 0) add('size fit', sizeFit(kinds, millimetres));
  if (around.equal.has(candidate.key)) {
    add('has this value');
    add(`has this value ${around.context}`);
    if (around.equal.size === 1) add('only one with this value');
  }
  if (discourse.known.has(candidate.key)) add('known');
  const attributes = discourse.known.attributesOf(candidate.key);
  if (site.said && attributes.has(site.said)) add(`known ${dimension === 'length' ? 'size' : 'figure'}`);
  if (millimetres > 0) {
    const lengths = discourse.known
      .lengthsOf(candidate.key)
      .filter((length) => !site.said || length.attribute === site.said);
    if (lengths.length > 0) {
      const off = Math.min(...lengths.map((length) => Math.abs(Math.log(length.millimetres / millimetres))));
      add(off < 0.05 ? 'like size' : off < 0.25 ? 'near size' : off < 1 ? 'other size' : 'far size');
    }
  }
  add(`words ${upTo(candidate.name.length, 4)}`);
  if (candidate.mentions > 1) add('mentions', Math.min(3, candidate.mentions - 1));
  const last = discourse.last;
  if (last && around.lastKey === candidate.key) {
    const away = (site.parse.sentenceOf[site.at] as number) - last.sentence;
    add(`last ${upTo(away, 3)}`);
    add(`last ${upTo(away, 1)} ${around.context}`);
    if (site.said && last.attribute === site.said)
      add(`last has ${dimension === 'length' ? 'size' : 'figure'}`);
  }
  if (around.topicKey === candidate.key) {
    const topic = discourse.topicAt(site.at);
    const away = topic ? (site.parse.sentenceOf[site.at] as number) - topic.sentence : 9;
    add(`topic ${upTo(away, 3)}`);
    add(`topic ${upTo(away, 2)} ${around.context}`);
  }
  if (!candidate.phrase && around.plural !== undefined)
    add(around.plural === isPlural(candidate.name.at(-1) ?? '') ? 'agrees' : 'disagrees');
}

/** All that speaks for or against one candidate. */
export function featuresOf(site: Site, around: Around, candidate: Candidate): readonly Feature[] {
  const features: Feature[] = [];
  const add = (name: string, size = 1) => {
    features.push([name, size]);
  };
  const first = around.said.first;
  if (first && candidate.proposals.includes(first)) {
    add('first');
    add(`first ${first.frame}`);
    add(`first ${around.context}`);
  }
  const frames = new Set(candidate.proposals.map(({ frame }) => frame));
  for (const frame of frames) add(`frame ${frame}`);
  if (candidate.proposals.length === 0) add('no frame');
  if (candidate.proposals.some(({ claim }) => claim.isNamed)) add('named');
  if (candidate.phrase) placeFeatures(site, around, candidate.phrase, add);
  else add(`unseen ${around.context}`);
  thingFeatures(site, around, candidate, add);
  return features;
}
