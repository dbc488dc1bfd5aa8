/** Lists the things that a quantity may belong to, each with the frames that name it and its place in the talk. */
import { kindsOf, singular } from '../lexicon/trade-nouns.ts';
import type { Name } from './discourse.ts';
import { fitness, isNoThing } from './fitness.ts';
import { FRAMES } from './frames/index.ts';
import type { Phrase } from './noun-phrases.ts';
import { isSpeaker, lastPhraseBefore } from './parse.ts';
import type { Claim, Site } from './site.ts';

export interface Proposal {
  readonly frame: string;
  readonly claim: Claim;
  readonly isGuess: boolean;
}

export interface Candidate {
  readonly name: Name;
  readonly key: string;
  /** Claims of frames on this thing, in the order of the frames. */
  readonly proposals: readonly Proposal[];
  /** Its mention nearest to the quantity; absent for a thing that only a frame or the project names. */
  readonly phrase?: Phrase;
  readonly mentions: number;
  /** How many other things were named between it and the quantity. */
  readonly rank?: number;
  /** What is being built as a whole. */
  readonly isWhole?: boolean;
}

/** What the frames say in turn, and which of them is answer enough when nothing is weighed. */
export interface FramesSay {
  readonly proposals: readonly Proposal[];
  readonly first: Proposal | undefined;
}

/** Asks every frame. The first claim on a thing that can carry the figure stands; an unlikely one waits for a better. */
export function askFrames(site: Site): FramesSay {
  const proposals: Proposal[] = [];
  let first: Proposal | undefined;
  let second: Proposal | undefined;
  let secondFit = Number.NEGATIVE_INFINITY;
  for (const frame of FRAMES) {
    const claim = frame.read(site);
    if (!claim) continue;
    const proposal = { frame: frame.name, claim, isGuess: frame.isGuess ?? false };
    proposals.push(proposal);
    if (first) continue;
    const fit = claim.binds === undefined ? fitness(kindsOf(claim.name), site.dimension) : 1;
    // An unlikely thing that was named beats a guess.
    if (second && proposal.isGuess) first = second;
    else if (fit >= -0.5 || (claim.isNamed && fit > -1.5)) first = proposal;
    else if (fit > secondFit) {
      second = proposal;
      secondFit = fit;
    }
  }
  return { proposals, first: first ?? second };
}

/** How many phrases back and ahead are looked at, and how many sentences. */
const BACK = 26;
const AHEAD = 6;
const SENTENCES_BACK = 4;

function nearbyPhrases(site: Site): Phrase[] {
  const { parse, at } = site;
  const sentence = parse.sentenceOf[at] as number;
  const found: Phrase[] = [];
  const takes = (phrase: Phrase) =>
    phrase.name.length > 0 && !phrase.pronoun && !isSpeaker(phrase) && !isNoThing(phrase.kinds);
  const start = lastPhraseBefore(parse, at + 1);
  for (let index = start, back = 0; index >= 0 && back < BACK; index--, back++) {
    const phrase = parse.phrases[index] as Phrase;
    if (sentence - (parse.sentenceOf[phrase.first] as number) > SENTENCES_BACK) break;
    if (takes(phrase)) found.push(phrase);
  }
  for (let index = start + 1; index <= start + AHEAD; index++) {
    const phrase = parse.phrases[index];
    if (!phrase || parse.sentenceOf[phrase.first] !== sentence) break;
    if (takes(phrase)) found.push(phrase);
  }
  return found;
}

/**
 * Every thing that the figure may be of: what frames claim, what is named near by, what the talk is about, and what is
 * known to have been `changed`.
 */
export function candidatesOf(
  site: Site,
  said: FramesSay,
  nameOf: (name: Name) => Name,
  changed?: Name,
): readonly Candidate[] {
  const byKey = new Map<
    string,
    { -readonly [K in keyof Candidate]: Candidate[K] } & { proposals: Proposal[] }
  >();
  const at = (name: Name) => {
    const bare = nameOf(name);
    const key = bare.join(' ');
    let found = byKey.get(key);
    if (!found) {
      found = { name: bare, key, proposals: [], mentions: 0 };
      byKey.set(key, found);
    }
    return found;
  };
  for (const proposal of said.proposals) at(proposal.claim.name).proposals.push(proposal);
  let rank = 0;
  for (const phrase of nearbyPhrases(site)) {
    const name = site.discourse.meaningOf(phrase);
    if (!name || name.length === 0) continue;
    const candidate = at(name);
    if (!candidate.phrase && phrase.first < site.at) candidate.rank = rank++;
    candidate.phrase ??= phrase;
    candidate.mentions++;
  }
  const { discourse } = site;
  const topic = discourse.topicAt(site.at);
  if (topic) at(topic.name);
  if (discourse.last) at(discourse.last.name);
  const whole = discourse.wholeAt(site.at);
  if (whole) at([whole]).isWhole = true;
  if (changed) at(changed);
  const all = [...byKey.values()];
  // "Six lengths of 100 by 75": stock that the figure before was of is no size.
  const isStock = ({ key }: Candidate) => key === 'lengths' && discourse.last?.name.join(' ') === key;
  const things = all.filter((candidate) => isStock(candidate) || !isBareSize(candidate.name));
  return things.length > 0 ? things : all;
}

/** "Five mil under on the depth": a size alone is no thing to carry a figure. */
const isBareSize = (name: Name): boolean => name.length === 1 && BARE_SIZES.has(singular(name[0] ?? ''));
const BARE_SIZES = new Set(
  (
    'height width breadth length depth thickness size spacing distance offset count measurement ' +
    'weight temperature pressure voltage current power speed angle'
  ).split(' '),
);
