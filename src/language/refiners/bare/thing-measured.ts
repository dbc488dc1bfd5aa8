/**
 * How big the thing is that a bare number is told of: no key is six metres wide, no wall thirteen millimetres long.
 * Common practice, no source.
 */
import { isTradeNoun, kindsOf, type NounKind, singular } from '../../lexicon/trade-nouns.ts';
import type { Attribute } from '../../notes.ts';
import type { Amount, Room } from '../../rules/rule.ts';
import { wordAt } from '../../rules/rule.ts';
import { wordSet } from '../../word-table.ts';

export type Reach = 'small' | 'middling' | 'large';

/** Nothing that a hand does not close over. */
const SMALL = wordSet(`
key keyway keyseat slot groove notch rebate rabbet dado mortise mortice tenon tongue dowel peg pin cotter bolt screw nail rivet staple tack
brad washer nut circlip bead chamfer fillet kerf bearing bush bushing collar ring o-ring grommet gland ferrule lug shim wedge spline tooth
blade chisel bit drill cutter jaw journal spigot gib seal gasket hook eye clip hinge latch catch hasp knob button biscuit domino fuse spring
lip scratch burr score pit blister nick dent jet nozzle thread bracket cleat trenail treenail eyelet rebate bevel dovetail finger slit
stud-bolt anchor plug terminal connector tab lens`);
/** As long as a room, and never as wide; a gap and a hole may be. */
const THIN = wordSet(`
crack joint seam weld wire cable cord flex rope hose lath strip slat lipping edging bead split shake`);
/** Lengths and widths of many metres. */
const LARGE = wordSet(`
wall fence hedge path drive driveway roof gable slab trench pontoon jetty quay plot garden bridge lock ridge gutter guttering run span tower mast
hull boat barge deck site yard lane road bank field ditch wharf dock slipway terrace facade elevation frontage boundary building foundation footing
verge eave eaves ridge-beam viaduct aqueduct towpath culvert drain railing balustrade scaffold keel bulwark platform`);

const LARGE_KINDS: readonly NounKind[] = ['vessel', 'space'];
const MIDDLING_KINDS: readonly NounKind[] = [
  'opening',
  'assembly',
  'joist',
  'appliance',
  'container',
  'ground',
  'sheet',
  'timber',
];
/** Names of no thing: what is measured of it, who and when. */
const NO_THING: readonly NounKind[] = ['measure', 'abstract', 'person', 'time', 'region', 'air', 'tool'];

const NAMES_BACK = 9;
const PREPOSITION =
  /^(?:in|on|at|of|by|from|to|into|onto|through|behind|under|over|above|below|between|beside|near|past|with|for|along|round|around|across|against)$/;

const isOf = (kinds: ReadonlySet<NounKind>, list: readonly NounKind[]): boolean =>
  list.some((kind) => kinds.has(kind));

/** "The screws in the wall are": whether a noun only tells where another one is. */
const tellsWhere = (room: Room, at: number): boolean =>
  [1, 2, 3].some((back) => PREPOSITION.test(wordAt(room, at - back)));

const isThing = (noun: string): boolean =>
  SMALL.has(noun) ||
  THIN.has(noun) ||
  LARGE.has(noun) ||
  (isTradeNoun(noun) && !isOf(kindsOf([noun]), NO_THING));

/** The thing that a number is told of: the noun before it in its sentence, one that only tells a place coming last. */
function thingBefore(room: Room, { from }: Amount): string | undefined {
  const sentence = room.tokens[from]?.sentence;
  let place: string | undefined;
  for (let at = from - 1; at >= Math.max(0, from - NAMES_BACK); at--) {
    const token = room.tokens[at];
    if (!token || token.sentence !== sentence) break;
    if (token.kind !== 'word') continue;
    const noun = singular(token.word);
    if (!isThing(noun)) continue;
    if (!tellsWhere(room, at)) return noun;
    place ??= noun;
  }
  return place;
}

/** How big the thing of a bare number is in that size; `undefined` where none is named. */
export function reachOfThing(
  room: Room,
  amount: Amount,
  attribute: Attribute | undefined,
): Reach | undefined {
  const noun = thingBefore(room, amount);
  if (!noun) return undefined;
  if (SMALL.has(noun)) return 'small';
  const kinds = kindsOf([noun]);
  if (THIN.has(noun)) return attribute === 'length' || attribute === undefined ? undefined : 'small';
  if (LARGE.has(noun) || isOf(kinds, LARGE_KINDS)) return 'large';
  if (kinds.has('fastener') || kinds.has('hole')) return 'small';
  return isOf(kinds, MIDDLING_KINDS) ? 'middling' : undefined;
}

const BODY_MOVES = /^(?:walk|squeeze|crawl|climb|duck|sit|kneel|lie|sleep|stand|pass|step|shuffle|wriggle)$/;

/** "0.9 to walk through", "0.7 to squeeze past": room for a body, which no part of a millimetre gives. */
export const roomForBody = (room: Room, { to }: Amount): boolean =>
  wordAt(room, to) === 'to' && BODY_MOVES.test(wordAt(room, to + 1));
