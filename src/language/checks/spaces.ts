/** Room that is left for something, what things are put into, and what is fitted into either. */
import type { Phrase } from '../items/noun-phrases.ts';
import { type NounKind, singular } from '../lexicon/trade-nouns.ts';
import { wordSet } from '../word-table.ts';
import { isThing } from './spoken-check.ts';

/** Room that is left for something. */
const VOIDS = wordSet(
  'opening gap space hole frame bay niche recess alcove aperture housing reveal slot cut-out cutout surround void nook rebate',
);
/** What things are put into. A van or a room is no fit. */
const BOXES = wordSet('locker cupboard unit carcass casing box compartment shelf cabinet case crate');
/** Fitted into something, though people go through them. */
const FITTED = wordSet('door hatch window lid drawer sash pane gate flap');
const NO_PART: ReadonlySet<NounKind> = new Set(['fastener', 'cable', 'pipe']);
/** "50 clear of timber all round": what it is kept from, and not what has the gap. */
const KEPT_FROM = wordSet(
  'timber wood woodwork plywood ply cladding lining panelling insulation foam combustible fabric curtain anything everything',
);
/** Where a gap is, the gap itself, what takes it up, and what stays where it is. */
const NO_THING = wordSet(
  'side end way round gap clearance air room space diameter play top back rear front edge floor sole deck ground wall ceiling bulkhead roof runner slide hinge caliper tape rule book sheet manual label',
);

export const headOf = (name: string): string => singular(name.split(' ').at(-1) ?? '');
export const isVoid = (name: string): boolean => VOIDS.has(headOf(name));
export const isBox = (name: string): boolean => BOXES.has(headOf(name));

/** Whether a phrase names something that is fitted into a space. */
export const isFitted = (phrase: Phrase): boolean =>
  phrase.pronoun === undefined &&
  phrase.name.length > 0 &&
  !NO_THING.has(singular(phrase.head)) &&
  (isThing(phrase) || FITTED.has(singular(phrase.head))) &&
  [...phrase.kinds].every((kind) => !NO_PART.has(kind));

/** A flue, an exhaust or a waste keeps clear of what it goes through, though it is fitted into nothing. */
export const isPipe = (phrase: Phrase): boolean =>
  phrase.pronoun === undefined && phrase.name.length > 0 && phrase.kinds.has('pipe');

/** Whether a phrase names something that may have to keep clear of what is round it. */
export const keepsClear = (phrase: Phrase): boolean =>
  !KEPT_FROM.has(singular(phrase.head)) && (isFitted(phrase) || isPipe(phrase));
