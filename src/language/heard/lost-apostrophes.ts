import { isPlural, isTradeNoun, singular } from '../lexicon/trade-nouns.ts';
import { workIng, workParticiple, workThird } from '../lexicon/work-verbs.ts';
import { classesOf } from '../statements/vocabulary.ts';
import type { Heard, RepairRule } from './repair.ts';

const words = (list: string) => new Set(list.trim().split(/\s+/));

/** What may stand before a thing and belongs to it. */
const BEFORE_THING = words(
  `the that this my our his her its their new old other first second third last next whole`,
);
/** After these a new clause begins. */
const JOINS =
  words(`and but so because cos cause that now then right okay ok well yeah yes oh also anyway today
  yesterday tonight until till when if once while after before first finally great good sorry meanwhile since though`);
/** What is said of one thing without a verb of its own: "the drain's out", "the sill's gone". */
const STATES =
  words(`in on off up down out done back gone ready dry dead finished here there home wet loose soft square
  level plumb true flush tight straight clean full empty short proud wrong right fine perfect rotten cracked broken
  worn bent split been got getting going coming staying leaking sitting holding not too still all now being never
  looking working running waiting just nearly almost fully actually finally already definitely pretty very so gorgeous
  lovely beautiful toast shot scrap mine yours ours better worse fresh solid sound safe bare flat round hollow stuck
  seized missing late early due sorted settled`);
/** A verb that agrees with many, or with what came before: then the word before is no "is" swallowed. */
const FINITE =
  words(`is are was were am be has have had do does did will would can could should must may might need needs want
  wants go goes come comes came went look looks looked sit sits stand stands run runs take takes took fit fits make
  makes made get gets 's 're 've 'll`);

/** Third persons of verbs that are things too. */
const FALLS = /^(?:falls|drops|kicks|lifts|stands|runs|turns|clicks|swings|feels|looks|smells|sounds)$/;

/** Said of many, of work and of sums, hardly ever of one thing that is in a state. */
const NEVER =
  words(`works sums nuts biscuits people lots times days weeks hours minutes seconds years months lines figures
  brothers sisters neighbours neighbors others things bits`);

/**
 * Reads "the drains out" as "the drain's out": recognisers drop the apostrophe, and with it the verb. Only where the
 * words stand at the head of a clause, nothing else in it is a verb, and what follows is said of one thing.
 */
export const lostApostrophes: RepairRule = (heard) =>
  heard.flatMap((word, at) => {
    if (!looksPlural(word) || !opensClause(heard, at)) return [];
    const next = heard[at + 1];
    if (!next || next.opens || !isState(next) || hasVerb(heard, at + 1)) return [];
    // "Drops in with room": without a word before it that names things, it is the verb.
    if (workThird(word.lower) !== undefined && !isDetermined(heard, at)) return [];
    if (isActive(next, heard[at + 2]) || FALLS.test(word.lower)) return [];
    const one = word.lower.slice(0, -1);
    return [
      {
        start: word.start,
        end: word.end,
        means: `${one}'s`,
        why: `nothing else in the clause is a verb: "${one} is"`,
      },
    ];
  });

const isDetermined = (heard: readonly Heard[], at: number) =>
  heard[at]?.opens === false && BEFORE_THING.has(heard[at - 1]?.lower ?? '');

/** "The nephews hauled it", "legs in sixty by sixty": done by many, or a place, and no state of one. */
function isActive(state: Heard, next: Heard | undefined): boolean {
  if (/^(?:showed|run|come|stand|hang|lie)$/.test(state.lower)) return true;
  // "Balusters worked out at 104": what came of them.
  if (/^(?:worked|turned|measured|ended|weighed|averaged)$/.test(state.lower))
    return next !== undefined && /^(?:out|up|at)$/.test(next.lower);
  // "Lintels now.": what the talk turns to.
  if (next === undefined || next.opens) return state.lower === 'now';
  if (/^(?:in|on|off|up|down|over|round)$/.test(state.lower))
    return !/^(?:and|but|so|now|at|with|already|finally|again|too|its|it|properly|tight|there)$/.test(
      next.lower,
    );
  // "The pipes passed the test": what they did something to. "The roofs got a leak" is of one.
  return (
    /^(?:it|them|me|us|him|her|the|my|our|its|their)$/.test(next.lower) ||
    (/^an?$/.test(next.lower) && !/^(?:got|been)$/.test(state.lower))
  );
}

function looksPlural({ lower }: Heard): boolean {
  return (
    /^[a-z]{2,}[^s'u]s$/.test(lower) &&
    !NEVER.has(lower) &&
    isPlural(lower) &&
    lower.slice(0, -1) === singular(lower) &&
    isTradeNoun(lower)
  );
}

/** Whether the thing that ends here begins its clause: at most four words back there is a mark or a joining word. */
function opensClause(heard: readonly Heard[], at: number): boolean {
  let k = at;
  let isComplete = false;
  while (k > 0 && at - k < 4 && !heard[k]?.opens) {
    const before = heard[k - 1] as Heard;
    if (JOINS.has(before.lower) && !(before.lower === 'that' && k === at)) return true;
    // "Nail the shakes on": before its "the" a thing has nothing of its own.
    if (isComplete || !(BEFORE_THING.has(before.lower) || isNounLike(before))) return false;
    isComplete = /^(?:the|this|that|my|our|his|her|its|their)$/.test(before.lower);
    k--;
  }
  return heard[k]?.opens === true;
}

const isNounLike = ({ lower }: Heard) =>
  isTradeNoun(lower) ||
  /^(?:top|side|end|back|front|left|right|upper|lower|inner|outer|east|west|north|south|main|big|little|small|long|short)$/.test(
    lower,
  );

const isState = ({ lower }: Heard) =>
  STATES.has(lower) ||
  workParticiple(lower) !== undefined ||
  workIng(lower) !== undefined ||
  classesOf(lower).includes('F');

/** Whether a verb follows in the clause; the state itself does not count. */
function hasVerb(heard: readonly Heard[], from: number): boolean {
  for (let k = from + 1; k < heard.length && k < from + 12; k++) {
    const word = heard[k] as Heard;
    if (word.opens || /^(?:and|but|so|because|which|who)$/.test(word.lower)) return false;
    if (FINITE.has(word.lower) || /'(?:s|re|ve|ll)$/.test(word.lower)) return true;
  }
  return false;
}
