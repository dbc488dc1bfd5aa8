/** Weighs the things that a quantity may belong to and takes the likeliest. */
import { plainSubject } from './anchor.ts';
import { askFrames, type Candidate, candidatesOf, type FramesSay, type Proposal } from './candidates.ts';
import { aroundOf } from './choice-context.ts';
import { tallyCandidate } from './choice-features.ts';
import type { Name } from './discourse.ts';
import type { Phrase } from './noun-phrases.ts';
import { tagAt } from './parse.ts';
import type { Site } from './site.ts';
import { type Feature, Noted, type Weights, weighingBy } from './tally.ts';

export type { Weights } from './tally.ts';

export interface Weighed {
  readonly candidate: Candidate;
  readonly score: number;
  /** What spoke for and against it; only when asked for. */
  readonly features: readonly Feature[];
}

export interface Chosen {
  readonly name: Name;
  /** The frame's claim on this thing, when one made any. */
  readonly proposal?: Proposal;
  /** What was weighed, the heaviest first. */
  readonly weighed: readonly Weighed[];
}

const NO_FEATURES: readonly Feature[] = [];

/** What it weighs that a thing alone has the value which this one replaces. */
const HAD_THE_OLD_VALUE = 2.5;

/** "It's twenty two ninety six, not twenty three ten": the one thing that was twenty three ten before. */
function changedThing(site: Site, nameOf: (name: Name) => Name): Name | undefined {
  const { replaces } = site.quantity;
  if (!replaces || site.dimension === 'count') return undefined;
  const items = site.discourse.known.withValue(site.dimension, replaces.value, replaces.unit, site.said);
  const [only] = items;
  return items.size === 1 && only ? nameOf(only.split(' ')) : undefined;
}

/** "It's ash, eighty thick": no gap is thick, however lately it was spoken of. */
const cannotBe = (site: Site, name: Name): number =>
  site.said === 'thickness' && /^(?:gap|clearance|headroom|overhang)$/.test(name.at(-1) ?? '')
    ? NO_THICKNESS
    : 0;
const NO_THICKNESS = 4;

/** "Lead's code four, soakers 175 wide": things of a plural name right before their number, as a list gives them. */
function isListedFirst({ parse, at }: Site, phrase: Phrase): boolean {
  if (phrase.last !== at - 1 || !phrase.plural || phrase.name.length === 0) return false;
  const { kinds } = phrase;
  if (kinds.has('material') || kinds.has('measure') || kinds.has('abstract') || kinds.has('time'))
    return false;
  return tagAt(parse, phrase.first - 1) === 'comma';
}
const LISTED = 2;

const proposalFor = (candidate: Candidate, said: FramesSay): Proposal | undefined =>
  said.first && candidate.proposals.includes(said.first) ? said.first : candidate.proposals[0];

/**
 * The thing that a quantity most likely belongs to; `nameOf` takes off what is no part of a name. With `notes` each
 * candidate carries its features.
 */
export function chooseThing(
  site: Site,
  weights: Weights,
  nameOf: (name: Name) => Name,
  notes = false,
): Chosen | undefined {
  const said = askFrames(site);
  // A sum, or a bound on whatever meets it, is no figure of the things near by.
  if (said.first?.claim.isSettled || said.first?.claim.binds)
    return { name: nameOf(said.first.claim.name), proposal: said.first, weighed: [] };
  const around = aroundOf(site, said);
  const changed = changedThing(site, nameOf);
  const weighing = weighingBy(weights);
  const weighed = candidatesOf(site, said, nameOf, changed)
    .map((candidate): Weighed => {
      const noted = notes ? new Noted() : undefined;
      if (noted) tallyCandidate(site, around, candidate, noted);
      weighing.sum = 0;
      tallyCandidate(site, around, candidate, weighing);
      const score =
        weighing.sum +
        (candidate.key === changed?.join(' ') ? HAD_THE_OLD_VALUE : 0) -
        cannotBe(site, candidate.name) +
        (candidate.phrase && isListedFirst(site, candidate.phrase) ? LISTED : 0);
      return { candidate, score, features: noted?.features ?? NO_FEATURES };
    })
    .sort((a, b) => b.score - a.score);
  const plain = plainSubject(site, around.anchor);
  // "The deck is 22 above the ground": the deck, or its height above the ground.
  const best =
    (plain &&
      weighed.find(({ candidate }) => candidate.phrase === plain || candidate.name.includes(plain.head))) ??
    weighed[0];
  if (!best) return undefined;
  const pronoun = around.anchor.subject ?? around.anchor.direct;
  if (pronoun?.pronoun) site.discourse.rename(pronoun, best.candidate.name);
  const proposal = proposalFor(best.candidate, said);
  return { name: best.candidate.name, ...(proposal ? { proposal } : {}), weighed };
}
