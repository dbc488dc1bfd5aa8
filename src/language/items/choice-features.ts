/**
 * What speaks for and against a thing being the one that a quantity belongs to: grammar, distance, what the thing can
 * carry, what is known of it. `choice-weights.ts` holds what each feature weighs.
 */
import { isPlural, kindsOf, singular } from '../lexicon/trade-nouns.ts';
import { isReporter } from './anchor.ts';
import type { Candidate } from './candidates.ts';
import type { Around, Context } from './choice-context.ts';
import type { Role } from './discourse.ts';
import { fitness, isNoThing, sizeFit } from './fitness.ts';
import type { Phrase } from './noun-phrases.ts';
import { hostOf, phraseAt, tagAt, wordAt } from './parse.ts';
import type { Site } from './site.ts';
import type { Tally } from './tally.ts';
import type { Tag } from './words.ts';

interface Path {
  commas: number;
  verbs: number;
  quantities: number;
}

/** Commas, verbs and other quantities between a mention and the quantity. */
function pathOf(site: Site, phrase: Phrase): Path {
  const { parse, at } = site;
  const [from, to] = phrase.last < at ? [phrase.last + 1, at] : [at + 1, phrase.first];
  const path = { commas: 0, verbs: 0, quantities: 0 };
  for (let k = from; k < to; k++) {
    const tag = tagAt(parse, k);
    if (tag === 'comma') path.commas++;
    else if (tag === 'quantity') path.quantities++;
    else if (tag === 'be' || tag === 'verb' || tag === 'participle' || tag === 'modal') path.verbs++;
  }
  return path;
}

const UP_TO_3 = ['0', '1', '2', '3+'] as const;
const UP_TO_5 = ['0', '1', '2', '3', '4', '5+'] as const;
const upTo3 = (n: number): string => UP_TO_3[Math.min(n, 3)] as string;

/** Names of features that are told apart by what stands in the subject's place. */
const inContext = (feature: string): Readonly<Record<Context, string>> => {
  const contexts = ['noun', 'one', 'it', 'that', 'they', 'speaker', 'none', 'direct'] as const;
  return Object.fromEntries(contexts.map((context) => [context, `${feature} at ${context}`])) as Record<
    Context,
    string
  >;
};
const ROLE_AT = inContext('role');

type Where = 'inside' | 'ahead' | 'here' | '1' | '2' | '3+';

function whereOf(site: Site, phrase: Phrase): Where {
  const { parse, at } = site;
  if (phrase.first <= at && phrase.last >= at) return 'inside';
  if (phrase.first > at) return 'ahead';
  const away = (parse.sentenceOf[at] as number) - (parse.sentenceOf[phrase.first] as number);
  return away === 0 ? 'here' : away === 1 ? '1' : away === 2 ? '2' : '3+';
}

const PATH_BEFORE = ['commas before', 'verbs before', 'quantities before'] as const;
const PATH_AFTER = ['commas after', 'verbs after', 'quantities after'] as const;

function addPath(site: Site, phrase: Phrase, path: Path, tally: Tally): void {
  const { parse, at } = site;
  const isAhead = phrase.first > at;
  const [commas, verbs, quantities] = isAhead ? PATH_AFTER : PATH_BEFORE;
  tally.two(commas, upTo3(path.commas));
  tally.two(verbs, upTo3(path.verbs));
  tally.two(quantities, upTo3(path.quantities));
  if (!isAhead) {
    tally.one('words between', -Math.min(40, at - phrase.last) / 10);
    const next = tagAt(parse, phrase.last + 1);
    tally.two('next', next === 'quantity' && phrase.last + 1 === at ? 'this' : (next ?? 'end'));
  } else {
    tally.two('link', wordAt(parse, phrase.first - 1));
    tally.two('gap', UP_TO_5[Math.min(5, phrase.first - at)] as string);
  }
  const left = tagAt(parse, phrase.first - 1);
  if (left === 'preposition') tally.two('after', wordAt(parse, phrase.first - 1));
  tally.two('left', left ?? 'start');
}

const opensPredicate = (tag: Tag | undefined): boolean =>
  tag === 'be' || tag === 'verb' || tag === 'modal' || tag === 'auxiliary' || tag === 'participle';

/** "The saddle on the ridge is": the saddle carries a place, the ridge is no more than one. */
function addHost(site: Site, phrase: Phrase, tally: Tally): void {
  const { parse } = site;
  const host = hostOf(parse, phrase);
  if (host && host.name.length > 0 && !isNoThing(host.kinds))
    tally.two('hangs on', opensPredicate(tagAt(parse, phrase.last + 1)) ? 'subject' : 'other');
  if (tagAt(parse, phrase.last + 1) !== 'preposition') return;
  const place = phraseAt(parse, phrase.last + 2);
  if (place) tally.two('carries', opensPredicate(tagAt(parse, place.last + 1)) ? 'subject' : 'other');
}

function addGrammar(site: Site, around: Around, phrase: Phrase, role: Role, path: Path, tally: Tally): void {
  const { parse, at } = site;
  const { anchor } = around;
  if (phrase === anchor.subject) {
    tally.one('subject of verb');
    const verb = anchor.verb;
    if (verb !== undefined && at - verb <= 3 && path.quantities === 0) {
      tally.two('close subject', tagAt(parse, verb) ?? 'none');
      tally.one('close subject');
    }
  }
  if (phrase === anchor.direct) {
    tally.one('direct');
    tally.three('direct', role, anchor.comma ? 'comma' : 'none');
    tally.two('direct by', anchor.preposition ?? 'none');
  }
  if (phrase === around.clause) tally.one('subject of clause');
  if (phrase === around.sentence) tally.one('subject of sentence');
  if (isReporter(phrase)) tally.one('reporter');
  addHost(site, phrase, tally);
  const last = site.discourse.last;
  // A thing named since the last figure is what the talk went on to.
  if (last && phrase.first > last.word && phrase.last < at) tally.two('new since', around.chain);
}

function addPlace(site: Site, around: Around, candidate: Candidate, phrase: Phrase, tally: Tally): void {
  const { context } = around;
  // "the gap behind the bench is": what stands between does not make it less of a subject.
  const role: Role =
    phrase === around.anchor.subject || phrase === around.clause ? 'subject' : site.discourse.roleOf(phrase);
  const where = whereOf(site, phrase);
  tally.two('where', where);
  tally.three('where', where, context);
  tally.three('role', role, where);
  const place = where === 'here' || where === 'ahead' || where === 'inside' ? where : 'before';
  tally.three(ROLE_AT[context], role, place);
  const path = pathOf(site, phrase);
  addPath(site, phrase, path, tally);
  tally.two('det', phrase.determiner ?? 'none');
  // "the clearance above the joist is 35", but "weight, 68 kilos".
  if (phrase.kinds.has('measure'))
    tally.three('measure', role, candidate.name.length > 1 ? 'of a thing' : 'alone');
  if (phrase.plural) tally.one('plural');
  if (around.plural !== undefined && where !== 'ahead') {
    const agreement = around.plural === phrase.plural ? 'agrees' : 'disagrees';
    tally.one(agreement);
    tally.two(agreement, context);
  }
  const opening = around.opens ? 'opens' : 'goes on';
  tally.three(opening, role, where);
  if (around.announced.has(phrase)) {
    const isLatest = around.latest === phrase;
    tally.three('announced', isLatest ? 'last' : 'before', where);
    if (isLatest) tally.three('announced', context, opening);
  }
  if (phrase === around.anchor.subject && around.verb) tally.two('subject of', around.verb);
  if (phrase === around.anchor.direct && around.anchor.preposition)
    tally.three('direct', around.anchor.preposition, site.dimension);
  addGrammar(site, around, phrase, role, path, tally);
}

/** What things of this kind and name carry. */
function addKind(site: Site, around: Around, candidate: Candidate, tally: Tally): void {
  const { dimension } = site;
  const isLength = dimension === 'length';
  const kinds = kindsOf(candidate.name);
  const { millimetres } = around;
  tally.one('fitness', fitness(kinds, dimension));
  if (kinds.size === 0) tally.two('kind unknown', isLength ? 'length' : 'other');
  const share = 1 / kinds.size;
  for (const kind of kinds) {
    tally.three('kind', kind, dimension, share);
    if (isLength) tally.three('kind', kind, site.said ?? 'bare', share);
    if (millimetres > 0) tally.three('size', kind, around.magnitude, share);
  }
  if (millimetres > 0) tally.one('size fit', sizeFit(kinds, millimetres));
  const head = singular(candidate.name.at(-1) ?? '');
  tally.two('head', head);
  tally.three('head', head, dimension);
  if (site.said) tally.three('head said', head, site.said);
}

/** What was said of the thing before. */
function addKnown(site: Site, around: Around, candidate: Candidate, tally: Tally): void {
  const { discourse } = site;
  const isLength = site.dimension === 'length';
  const { millimetres } = around;
  if (around.equal.has(candidate.key)) {
    tally.one('has this value');
    tally.two('has this value', around.context);
    if (around.equal.size === 1) tally.one('only one with this value');
  }
  if (discourse.known.has(candidate.key)) tally.one('known');
  if (site.said && discourse.known.attributesOf(candidate.key).has(site.said))
    tally.two('known', isLength ? 'size' : 'figure');
  if (!(millimetres > 0)) return;
  let off = Number.POSITIVE_INFINITY;
  for (const length of discourse.known.lengthsOf(candidate.key))
    if (!site.said || length.attribute === site.said)
      off = Math.min(off, Math.abs(Math.log(length.millimetres / millimetres)));
  if (off === Number.POSITIVE_INFINITY) return;
  tally.two('size before', off < 0.05 ? 'like' : off < 0.25 ? 'near' : off < 1 ? 'other' : 'far');
}

/** Whether the talk is about the thing already. */
function addTalk(site: Site, around: Around, candidate: Candidate, tally: Tally): void {
  const { parse, at, discourse } = site;
  const sentence = parse.sentenceOf[at] as number;
  tally.two('words', UP_TO_5[Math.min(4, candidate.name.length)] as string);
  if (candidate.isWhole) {
    tally.two('whole', around.context);
    tally.three('whole', around.context, around.opens ? 'opens' : 'goes on');
    tally.three('whole', site.dimension, site.said ?? 'bare');
  }
  if (candidate.rank !== undefined) {
    const rank = UP_TO_5[Math.min(5, candidate.rank)] as string;
    tally.two('rank', rank);
    tally.three('rank', rank, around.context);
  }
  if (candidate.mentions > 1) tally.one('mentions', Math.min(3, candidate.mentions - 1));
  const last = discourse.last;
  if (last && around.lastKey === candidate.key) {
    const away = sentence - last.sentence;
    tally.two('last', upTo3(away));
    tally.three('last', away === 0 ? '0' : '1+', around.context);
    tally.two('chain', around.chain);
    if (site.said && last.attribute === site.said)
      tally.two('last has', site.dimension === 'length' ? 'size' : 'figure');
  }
  if (around.topic && around.topicKey === candidate.key) {
    const away = sentence - around.topic.sentence;
    tally.two('topic', upTo3(away));
    tally.three('topic', away < 2 ? upTo3(away) : '2+', around.context);
  }
  if (!candidate.phrase && around.plural !== undefined)
    tally.one(around.plural === isPlural(candidate.name.at(-1) ?? '') ? 'agrees' : 'disagrees');
}

/** Tallies all that speaks for or against one candidate. */
export function tallyCandidate(site: Site, around: Around, candidate: Candidate, tally: Tally): void {
  const { first } = around.said;
  if (first && candidate.proposals.includes(first)) {
    tally.one('first');
    tally.two('first', first.frame);
    tally.two('first', around.context);
  }
  const frames = new Set<string>();
  let isNamed = false;
  for (const { frame, claim } of candidate.proposals) {
    if (claim.isNamed) isNamed = true;
    if (frames.has(frame)) continue;
    frames.add(frame);
    tally.two('frame', frame);
  }
  if (frames.size === 0) tally.one('no frame');
  if (isNamed) tally.one('named');
  if (candidate.phrase) addPlace(site, around, candidate, candidate.phrase, tally);
  else tally.two('unseen', around.context);
  addKind(site, around, candidate, tally);
  addKnown(site, around, candidate, tally);
  addTalk(site, around, candidate, tally);
}
