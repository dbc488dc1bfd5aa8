/** Weighs the things that a quantity may belong to and takes the likeliest. */
import { askFrames, type Candidate, candidatesOf, type FramesSay, type Proposal } from './candidates.ts';
import { aroundOf, type Feature, featuresOf } from './choice-features.ts';
import type { Name } from './discourse.ts';
import type { Site } from './site.ts';

export type Weights = Readonly<Record<string, number>>;

export interface Weighed {
  readonly candidate: Candidate;
  readonly features: readonly Feature[];
  readonly score: number;
}

export interface Chosen {
  readonly name: Name;
  /** The frame's claim on this thing, when one made any. */
  readonly proposal?: Proposal;
  /** What was weighed, the likeliest first. */
  readonly weighed: readonly Weighed[];
}

const scoreOf = (features: readonly Feature[], weights: Weights): number => {
  let sum = 0;
  for (const [name, size] of features) sum += (weights[name] ?? 0) * size;
  return sum;
};

const proposalFor = (candidate: Candidate, said: FramesSay): Proposal | undefined =>
  said.first && candidate.proposals.includes(said.first) ? said.first : candidate.proposals[0];

/** The thing that a quantity most likely belongs to; `nameOf` takes off what is no part of a name. */
export function chooseThing(site: Site, weights: Weights, nameOf: (name: Name) => Name): Chosen | undefined {
  const said = askFrames(site);
  // A sum, or a bound on whatever meets it, is no figure of the things near by.
  if (said.first?.claim.isSettled || said.first?.claim.binds)
    return { name: nameOf(said.first.claim.name), proposal: said.first, weighed: [] };
  const around = aroundOf(site, said);
  const weighed = candidatesOf(site, said, nameOf)
    .map((candidate) => {
      const features = featuresOf(site, around, candidate);
      return { candidate, features, score: scoreOf(features, weights) };
    })
    .sort((a, b) => b.score - a.score);
  const [best] = weighed;
  if (!best) return undefined;
  const pronoun = around.anchor.subject ?? around.anchor.direct;
  if (pronoun?.pronoun) site.discourse.rename(pronoun, best.candidate.name);
  const proposal = proposalFor(best.candidate, said);
  return { name: best.candidate.name, ...(proposal ? { proposal } : {}), weighed };
}
