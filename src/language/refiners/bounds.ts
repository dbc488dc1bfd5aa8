import { kindsOf } from '../lexicon/trade-nouns.ts';
import type { Bound } from '../notes.ts';
import { readNumber } from '../numbers/read-number.ts';
import { backOverFillers, onOverFillers } from '../phrases.ts';
import {
  AFTER_BOUND,
  BEFORE_BOUND,
  type BoundCue,
  DENIAL,
  directionOf,
  WHATEVER,
} from '../rules/bound-words.ts';
import { isCarriedBy } from '../rules/carriers.ts';
import type { Amount, Refiner, Room } from '../rules/rule.ts';
import { wordAt } from '../rules/rule.ts';
import { EACH_AFTER, SIZE_AFTER } from '../rules/size-words.ts';
import { readUnit } from '../units/read-unit.ts';

/** Words of hedging that are walked over before a number. More than this and it is another phrase. */
const MOST_HEDGES = 6;
/** Tokens searched behind an amount for "as a minimum" or ", nothing less". */
const TAIL = 14;

interface Found {
  readonly bound: Bound;
  readonly from: number;
  readonly rough?: boolean;
}

function denied(room: Room, at: number): boolean {
  const sentence = room.tokens[at]?.sentence;
  for (let index = at - 1; index >= Math.max(0, at - 9); index--) {
    const token = room.tokens[index];
    if (token?.sentence !== sentence) return false;
    if (/^[,;:]$/.test(token?.word ?? '')) return false;
    if (token && DENIAL.test(token.word)) return true;
    if (/^(?:but|so|because|until|till|unless|once|when|if|and)$/.test(token?.word ?? '')) return false;
  }
  return false;
}

/** "Below five degrees I can't glue", "over 30 it won't cure": at the head of its sentence, and what is denied behind it. */
function deniedBehind(room: Room, at: number): boolean {
  const sentence = room.tokens[at]?.sentence;
  if (room.tokens[at - 1]?.sentence === sentence) return false;
  for (let index = at + 2; index < at + 10; index++) {
    const token = room.tokens[index];
    if (token?.sentence !== sentence || !token) return false;
    if (/^(?:and|but|so|because|until|unless|once|when|if|or)$/.test(token.word)) return false;
    if (NOT_DONE.test(token.word)) return true;
  }
  return false;
}
const NOT_DONE =
  /^(?:can't|cannot|won't|doesn't|don't|mustn't|shouldn't|never|not|nothing|cant|wont|doesnt|dont)$/;

/** "Anything under ten is scrap" sets the least; "keep everything under ten" the most. */
function whateverBefore(room: Room, at: number): boolean {
  const back = [1, 2, 3].find((step) => WHATEVER.test(wordAt(room, at - step)));
  return back !== undefined && !KEPT.test(wordAt(room, at - back - 1));
}
const KEPT = /^(?:keep|keeps|keeping|kept|hold|holding|get|getting|want|wants|need|needs)$/;

function settle(room: Room, cue: BoundCue, at: number): Bound {
  switch (cue) {
    case 'above':
      return denied(room, at) || deniedBehind(room, at) || whateverBefore(room, at) ? 'at-most' : 'at-least';
    case 'below':
      return denied(room, at) || deniedBehind(room, at) || whateverBefore(room, at) ? 'at-least' : 'at-most';
    case 'reaching':
      return reachesBy(room, at) ? 'exact' : 'at-most';
    case 'rough':
      return 'about';
    case 'neutral':
      return 'exact';
    case 'at-most':
      // "no flame within three metres".
      return /^(?:within|inside)$/.test(wordAt(room, at)) && denied(room, at) ? 'at-least' : 'at-most';
    default:
      return cue;
  }
}

const MOVED =
  /^(?:step|steps|stepped|stepping|size|sized|sizing|jump|jumped|jumping|done|do|nipped|tightened|pulled|opened|opening|open|close|closed|closing|widened|widening|go|goes|going|gone|went|come|comes|came|coming|bump|bumps|bumped|bring|brings|bringing|brought|got|gets|get|getting|moved|move|moving|raise|raises|raised|raising|upped|up|taking|take|takes|took|put|puts|putting|pushed|pushes|push|pushing|jack|jacked|jacking|lift|lifted|lifting|heat|heated|warmed|warm|set|build|built|fill|filled|charged|pump|pumped|torque|torqued|wound|planed|sanded|dressed|cleaned|polished|machined|finished|all)$/;

const BE = /^(?:'s|is|am|are|'re|'m|was|were)$/;

/**
 * "gone up to 63 amps", "bumps the trailer up to three thousand", "the wall's up to nine courses": where it arrives, no
 * limit.
 */
function reachesBy(room: Room, at: number): boolean {
  const sentence = room.tokens[at]?.sentence;
  const adverb = /^(?:now|already|only|back|nearly|still|about)$/.test(wordAt(room, at - 1)) ? at - 1 : at;
  if (wordAt(room, at) === 'up' && BE.test(wordAt(room, adverb - 1))) return true;
  // "The controller takes up to a hundred volts": what it stands.
  if (/^takes?$/.test(wordAt(room, at - 1))) return false;
  for (let index = at - 1; index >= at - 5; index--) {
    const token = room.tokens[index];
    if (!token || token.sentence !== sentence) return false;
    if (MOVED.test(token.word)) return true;
  }
  return false;
}

const RANK: Readonly<Record<Bound, number>> = { exact: 0, about: 1, 'at-least': 2, 'at-most': 2, between: 3 };

function boundBefore(room: Room, amount: Amount): Found {
  let at = amount.quoteFrom;
  let found: Found = { bound: 'exact', from: at };
  for (let steps = 0; steps < MOST_HEDGES; steps++) {
    const end = backOverFillers(room.tokens, at);
    const hit = BEFORE_BOUND.endingAt(room.tokens, end);
    if (!hit) break;
    // "My brother-in-law says six" sets no limit.
    if (wordAt(room, hit.from) === 'law' && /^(?:in|-)$/.test(wordAt(room, hit.from - 1))) break;
    if (room.tokens[hit.from]?.sentence !== room.tokens[amount.from]?.sentence) break;
    // "The width inside is six foot two": where, and the verb between.
    const inside = /^(?:inside|within)$/.test(wordAt(room, hit.from)) && at !== amount.quoteFrom;
    if (inside) break;
    const bound =
      hit.to === hit.from + 1 && isDatum(room, hit.from, hit.meaning)
        ? 'exact'
        : hit.to === hit.from + 1 && (coveredBy(room, hit.from, amount) || isLayer(room, hit.from, amount))
          ? 'exact'
          : settle(room, hit.meaning, hit.from);
    if (RANK[bound] > RANK[found.bound]) {
      found = { bound, from: hit.from, ...(hit.meaning === 'rough' ? { rough: true } : {}) };
    }
    at = hit.from;
  }
  return found;
}

/** "40 mil over 900": "over" says by how much the number before it is more. */
function isDatum(room: Room, at: number, cue: BoundCue): boolean {
  if (cue !== 'above' && cue !== 'below') return false;
  // "ticks over at 650", "over to 12 volts".
  if (wordAt(room, at) === 'over' && /^(?:at|to)$/.test(wordAt(room, at + 1))) return true;
  if (wordAt(room, at) === 'over' && (movedOver(room, at) || risesOver(room, at))) return true;
  // "The lid over it is 12 thick": where the thing is.
  if (/^(?:it|them|that|this|these|those|there|him|her)$/.test(wordAt(room, at + 1))) return true;
  // "It drops 40 over two metres": along how much.
  // "No loop can run over 300 feet": how long.
  const isLong = /^(?:run|runs|running|go|goes)$/.test(wordAt(room, at - 1)) && denied(room, at);
  if (wordAt(room, at) === 'over' && !isLong && runsAlong(room, at)) return true;
  const before = wordAt(room, at - 1);
  return /^(?:left|hanging|turned|went|handed|bent|put|bridge|all|start|roll|rolled|came|come)$/.test(before);
}

/** "Move the stove over 40": by how much, and no limit. */
function movedOver(room: Room, at: number): boolean {
  const verb = [2, 3, 4, 5].find((back) => MOVES_THING.test(wordAt(room, at - back)));
  if (verb === undefined) return false;
  return room.tokens
    .slice(at - verb + 1, at)
    .every(({ kind, sentence }) => kind === 'word' && sentence === room.tokens[at]?.sentence);
}
const MOVES_THING =
  /^(?:move|moved|moving|shift|shifted|shifting|slide|slid|sliding|nudge|nudged|push|pushed|shove|shoved|pull|pulled|bring|brought|scoot|scooted)$/;

/** "The ramp is 300 up over 3600", "it's 20 down over the length": along how much it rises. */
const risesOver = (room: Room, at: number): boolean =>
  /^(?:up|down|out)$/.test(wordAt(room, at - 1)) &&
  (room.tokens[at - 2]?.kind === 'number' ||
    [2, 3, 4, 5].some((back) => readNumber(room.tokens, at - back)?.to === at - 1) ||
    [2, 3].some((back) => readUnit(room.tokens, at - back)?.to === at - 1));

const LIES =
  /^(?:sit|sits|sat|sitting|lie|lies|lay|lying|run|runs|ran|running|go|goes|went|buried|bury|hidden|hide|hides|laid|is|are|'s|'re|was|were)$/;
const ROOM_OF =
  /^(?:headroom|clearance|air|fall|space|gap|water|travel|play|movement|slack|lift|pressure|run|length|cable|pipe|weight|load|wear|rise|drop)$/;

/** "The cables sit under 270 of wool": what lies over them. */
function coveredBy(room: Room, at: number, amount: Amount): boolean {
  if (!/^(?:under|beneath|below|over)$/.test(wordAt(room, at)) || wordAt(room, amount.to) !== 'of')
    return false;
  const stuff = wordAt(room, amount.to + 1);
  if (!LIES.test(wordAt(room, at - 1)) || ROOM_OF.test(stuff)) return false;
  return room.tokens[amount.to + 1]?.kind === 'word' && !/^(?:the|it|them|that|my|our|its)$/.test(stuff);
}

const STUFF = ['sheet', 'material', 'coating', 'joist', 'timber'] as const;

/** "Half inch ply over one inch foam": one stuff and what lies under it. */
function isLayer(room: Room, at: number, { to }: Amount): boolean {
  if (!/^(?:over|under|beneath|below)$/.test(wordAt(room, at))) return false;
  return [wordAt(room, at - 1), wordAt(room, to)].every((word) => {
    const kinds = kindsOf([word]);
    return STUFF.some((kind) => kinds.has(kind));
  });
}

const RUNS =
  /^(?:lean|leans|leaned|leant|leaning|fall|falls|fell|falling|drop|drops|dropped|dropping|rise|rises|rose|slope|slopes|sloping|run|runs|sag|sags|sagged|bow|bows|bowed|out|difference|taper|tapers|dips|dip)$/;

/** Whether a fall or a sag was said shortly before "over", which then tells along how much. */
function runsAlong(room: Room, at: number): boolean {
  const sentence = room.tokens[at]?.sentence;
  for (let index = at - 1; index >= at - 7; index--) {
    const token = room.tokens[index];
    if (!token || token.sentence !== sentence || token.word === ',') return false;
    if (RUNS.test(token.word))
      return [1, 2, 3].some(
        (on) =>
          room.tokens[index + on]?.kind === 'number' ||
          readNumber(room.tokens, index + on) ||
          /^(?:half|quarter)$/.test(wordAt(room, index + on)) ||
          (/^an?$/.test(wordAt(room, index + on)) && readUnit(room.tokens, index + on + 1)),
      );
  }
  return false;
}

interface Tail {
  readonly bound: Bound;
  readonly to: number;
}

const CEILING = /^(?:ceiling|limit|max|maximum|most|top|cap|lot)$/;
const FLOOR = /^(?:minimum|least|min|floor)$/;

/** ", no lower", "and not an ounce over", "is the ceiling", "that's the limit". */
function noFurther(room: Room, amount: Amount, start: number): Tail | undefined {
  let at = /^(?:and|but)$/.test(wordAt(room, start)) ? start + 1 : start;
  if (/^(?:no|not|never)$/.test(wordAt(room, at))) {
    at++;
    if (/^(?:an?|one|any)$/.test(wordAt(room, at))) at++;
    // "not an ounce more", "no gram more"
    if (!directionOf(wordAt(room, at)) && directionOf(wordAt(room, at + 1))) at++;
    const direction = directionOf(wordAt(room, at));
    if (!direction || /^(?:than|then)$/.test(wordAt(room, at + 1)) || startsAmount(room, at + 1))
      return undefined;
    return { bound: direction === 'up' ? 'at-most' : 'at-least', to: at + 1 };
  }
  if (wordAt(room, at) === 'that') at++;
  if (!/^(?:'s|is)$/.test(wordAt(room, at)) || !/^(?:the|my|its|your|their|our)$/.test(wordAt(room, at + 1)))
    return undefined;
  const word = wordAt(room, at + 2);
  // "Eight foot wide is the most the state'll let you be"
  const isFew = amount.unit === undefined && amount.value <= MOST_COUNTED;
  if (word === 'most' && MOST_OF.test(wordAt(room, at + 3)) && !isFew)
    return { bound: 'at-most', to: at + 3 };
  if (word !== 'most' && isBiggestThatGoes(room, at + 2)) return { bound: 'at-most', to: at + 3 };
  if (!closes(room, at + 3)) return undefined;
  if (CEILING.test(word)) return { bound: 'at-most', to: at + 3 };
  return FLOOR.test(word) ? { bound: 'at-least', to: at + 3 } : undefined;
}

/** "Four's the most I've ever seen": without a unit so few are a count. */
const MOST_COUNTED = 12;
const MOST_OF = /^(?:it|he|she|they|you|we|i|that|the|any|anything|this|these|those|my|its)$/;

const BIGGEST =
  /^(?:most|biggest|widest|tallest|longest|heaviest|thickest|deepest|largest|highest|broadest|fattest)$/;
const WHATEVER_IT_IS = /^(?:thing|things|piece|pieces|one|ones|load|weight|bit|lump|sheet|panel|board|item)$/;
const MAY_GO = /^(?:can|could|'ll|will|may|'d|would|should|must|'m|'re|is|are|am|it|that|which)$/;
const GOES =
  /^(?:get|gets|fit|fits|take|takes|lift|lifts|carry|carries|bring|come|comes|go|goes|pass|passes|allow|allows|allowed|swing|swings|turn|hold|holds|bear|stand|put|use|have|plane|cut)$/;

/** "The biggest thing I can get through the door", "the widest that'll come up": from `at` on, at the superlative. */
function isBiggestThatGoes(room: Room, at: number): boolean {
  if (!BIGGEST.test(wordAt(room, at))) return false;
  let next = WHATEVER_IT_IS.test(wordAt(room, at + 1)) ? at + 2 : at + 1;
  if (/^(?:that|which)$/.test(wordAt(room, next))) next++;
  if (/^(?:i|we|you|it|they|he|she|one)$/.test(wordAt(room, next))) next++;
  let isMay = false;
  for (; MAY_GO.test(wordAt(room, next)); next++) isMay = true;
  return GOES.test(wordAt(room, next)) && (isMay || /s$/.test(wordAt(room, next)));
}

/** Words between "the biggest thing ..." and its figure. */
const BETWEEN = 14;

/** "The biggest thing I can get through the door is 740", "the rating on that winch is 450 kilos". */
function mostToldBefore(room: Room, amount: Amount): boolean {
  const is = backOverFillers(room.tokens, amount.quoteFrom) - 1;
  if (!/^(?:is|'s)$/.test(wordAt(room, is))) return false;
  const sentence = room.tokens[is]?.sentence;
  for (let at = is - 1; at >= is - BETWEEN && room.tokens[at]?.sentence === sentence; at--) {
    if (/^[,;:]$/.test(wordAt(room, at))) return false;
    if (wordAt(room, at) === 'rating') return /^(?:on|of|for)$/.test(wordAt(room, at + 1));
    if (isBiggestThatGoes(room, at)) return wordAt(room, at - 1) === 'the';
  }
  return false;
}

function tailAt(room: Room, amount: Amount, at: number): Tail | undefined {
  const paused = wordAt(room, at) === ',' ? at + 1 : at;
  const further = noFurther(room, amount, paused);
  if (further) return further;
  // "1.2 tonnes of them roughly".
  const them =
    wordAt(room, at) === 'of' && /^(?:them|it|that|those)$/.test(wordAt(room, at + 1)) ? at + 2 : paused;
  const start = onOverFillers(room.tokens, them);
  const hit = AFTER_BOUND.startingAt(room.tokens, start);
  if (!hit || hit.meaning === 'above' || hit.meaning === 'below') return undefined;
  const next = wordAt(room, hit.to);
  // "no more than 40" and "at least 40" belong to the number behind them.
  if (/^(?:than|then)$/.test(next) || startsAmount(room, hit.to)) return undefined;
  // "The lid is 4 shy": so much is missing.
  if (wordAt(room, hit.from) === 'shy' && !amount.unit && amount.value < MOST_SHY) return undefined;
  if (hit.meaning === 'about' && /^(?:full|light|heavy|strong|bare|plus)$/.test(wordAt(room, hit.from))) {
    // "40 amp light circuit", "six mil bare wire": only at the end of the phrase is it a hedge.
    if (next !== '' && !/^[,.;:!?]$/.test(next)) return undefined;
  }
  // "The jug's 23 kilos full": with what is in it.
  if (wordAt(room, hit.from) === 'full' && /^(?:mass|volume)$/.test(amount.dimension ?? '')) return undefined;
  if (wordAt(room, hit.from) === 'plus' && !/^[,.;:!?]?$/.test(next)) return undefined;
  return { bound: settle(room, hit.meaning, hit.from), to: hit.to };
}

/** So few millimetres are what is missing, where the size itself would be hedged. */
const MOST_SHY = 50;

function startsAmount(room: Room, at: number): boolean {
  const token = room.tokens[at];
  return (
    token?.kind === 'number' ||
    /^(?:an?|one|two|three|four|five|six|seven|eight|nine|ten|half)$/.test(token?.word ?? '')
  );
}

function boundAfter(room: Room, amount: Amount, limit: number): Tail | undefined {
  const size = SIZE_AFTER.startingAt(room.tokens, amount.quoteTo)?.to ?? amount.quoteTo;
  const each = EACH_AFTER.startingAt(room.tokens, size)?.to ?? size;
  for (const at of new Set([amount.quoteTo, size, each])) {
    const near = tailAt(room, amount, at);
    if (near) return near;
  }
  const sentence = room.tokens[amount.from]?.sentence;
  for (let at = amount.quoteTo; at < Math.min(limit, amount.quoteTo + TAIL); at++) {
    if (room.tokens[at]?.sentence !== sentence) break;
    const word = wordAt(room, at);
    const opens = word === ',' || (word === 'as' && wordAt(room, at + 1) === 'a') || word === 'is';
    // "Three and a half ton fully loaded and that's your lot"
    const tail = opens ? tailAt(room, amount, at) : word === 'and' ? noFurther(room, amount, at) : undefined;
    if (tail && tail.bound !== 'about' && closes(room, tail.to)) return tail;
  }
  return undefined;
}

/** A far tail counts only at the end of its part of the sentence. */
function closes(room: Room, at: number): boolean {
  const token = room.tokens[at];
  return !token || token.kind === 'mark' || /^(?:and|but|so|because|or)$/.test(token.word);
}

const CARRIES =
  /^(?:carry|carries|hold|holds|take|takes|bear|bears|support|supports|lift|lifts|stand|stands|handle|handles)$/;

/** "two thousand pounds, boat, motor, gas, and that's all it'll carry": a limit said behind. */
function allItCarries(room: Room, amount: Amount, limit: number): boolean {
  const sentence = room.tokens[amount.from]?.sentence;
  for (let at = amount.to; at < Math.min(limit, amount.to + 16); at++) {
    if (room.tokens[at]?.sentence !== sentence) return false;
    if (wordAt(room, at) !== 'all' || !/^(?:'s|is|was|be)$/.test(wordAt(room, at - 1))) continue;
    for (let verb = at + 1; verb < at + 6; verb++) {
      if (
        CARRIES.test(wordAt(room, verb)) ||
        (wordAt(room, verb) === 'good' && wordAt(room, verb + 1) === 'for')
      )
        return true;
    }
  }
  return false;
}

/** "Each jack may take eight tonnes", "the crane does 800"; "the floor takes 400 kilos of tiles" uses them up. */
function carriesSoMuch(room: Room, amount: Amount): boolean {
  const after = /^(?:each|apiece)$/.test(wordAt(room, amount.to)) ? amount.to + 1 : amount.to;
  const isBare = amount.unit === undefined && closes(room, after);
  if ((amount.dimension !== 'mass' && !isBare) || wordAt(room, amount.to) === 'of') return false;
  return isCarriedBy(room, amount);
}

const CALLS_FOR = /^(?:needs|need|require|requires|insist|insists|demand|demands|specify|specifies)$/;
const CLEAR_AFTER = /^(?:clear|clearance|headroom)$/;

/** "it needs twelve inches clear": room that is asked for may be more, never less. */
function clearanceAskedFor(room: Room, amount: Amount): boolean {
  const near = [0, 1, 2].some((step) => CLEAR_AFTER.test(wordAt(room, amount.to + step)));
  if (!near) return false;
  // "I want two inches clear all round"; "the book wants two hundredths of clearance" is a fit.
  const isKeptClear = [0, 1, 2].some((step) => wordAt(room, amount.to + step) === 'clear');
  for (let index = amount.from - 1; index >= amount.from - 4; index--) {
    if (CALLS_FOR.test(wordAt(room, index))) return true;
    if (isKeptClear && /^wants?$/.test(wordAt(room, index))) return true;
    if (
      wordAt(room, index) === 'have' &&
      /^(?:to|must)$/.test(wordAt(room, index - 1) || wordAt(room, index + 1))
    )
      return true;
  }
  return false;
}

/** "The flue has to clear the beam by 50": what must stay free may be more, never less. */
function clearsBy(room: Room, amount: Amount): boolean {
  const by = backOverFillers(room.tokens, amount.quoteFrom) - 1;
  if (wordAt(room, by) !== 'by') return false;
  const sentence = room.tokens[by]?.sentence;
  for (let index = by - 1; index > by - 8 && room.tokens[index]?.sentence === sentence; index--) {
    if (!/^(?:clear|miss)$/.test(wordAt(room, index))) continue;
    return /^(?:to|must|should|gotta)$/.test(wordAt(room, index - 1));
  }
  return false;
}

const LEAVES_ROOM = /^(?:leave|leaves|allow|allows)$/;
const BIDS =
  /^(?:to|you|we|i|must|should|please|always|and|says|say|said|'ll|would|'d|wants|want|need|needs|[.,;:])$/;
const ROOM_AT =
  /^(?:clear|clearance|air|behind|above|below|beneath|under|underneath|over|around|round|between|beside|either|each|both|all|at|for|of|in|on)$/;

/**
 * "The maker says leave fifty behind it", "you have to allow 25 at the bottom for the draught": room that is bidden may
 * be more. "I left ten" and "that leaves 640" only tell.
 */
function roomBidden(room: Room, amount: Amount): boolean {
  const verb = backOverFillers(room.tokens, amount.quoteFrom) - 1;
  if (!LEAVES_ROOM.test(wordAt(room, verb))) return false;
  const third = /s$/.test(wordAt(room, verb));
  const before = wordAt(room, verb - 1);
  const isFirst = room.tokens[verb - 1]?.sentence !== room.tokens[verb]?.sentence;
  if (third || !(isFirst || BIDS.test(before))) return false;
  // "I leave 20 on for planing": what is left on the stuff.
  const next = wordAt(room, amount.to);
  if (next === 'on' && /^(?:|[.,;]|for|to|it|them)$/.test(wordAt(room, amount.to + 1))) return false;
  return ROOM_AT.test(next);
}

const ASKS = /^(?:needs|need|wants|want|requires|require|demands|asks|calls|takes)$/;
const HAS =
  /^(?:have|'ve|has|got|had|there's|gives|give|gave|giving|gets|getting|only|find|found|leaves|leave|left)$/;

/**
 * "The stove wants eighteen and a half between the uprights and I have got eighteen": what is asked for beside what
 * there is may be more, never less.
 */
function askedBesideHad(room: Room, amount: Amount, next: Amount | undefined): boolean {
  const sentence = room.tokens[amount.from]?.sentence;
  if (!next || next.role !== amount.role || room.tokens[next.from]?.sentence !== sentence) return false;
  if (amount.dimension && next.dimension && amount.dimension !== next.dimension) return false;
  if (next.from - amount.to > 14 || Math.max(next.value / amount.value, amount.value / next.value) > 4)
    return false;
  const start = backOverFillers(room.tokens, amount.quoteFrom);
  const verb = /^(?:for|a|an|about|at|least|all|the)$/.test(wordAt(room, start - 1)) ? start - 2 : start - 1;
  if (!ASKS.test(wordAt(room, verb)) || /^(?:i|we|you|he|she|they|to)$/.test(wordAt(room, verb - 1)))
    return false;
  // "It needs 40 off": work, no room.
  if (/^(?:off|more|less|taking|trimming|cutting)$/.test(wordAt(room, amount.to))) return false;
  const between = room.tokens.slice(amount.to, next.from);
  const there = between.some(
    ({ word }, at) => word === 'there' && /^(?:'s|is|was|are)$/.test(between[at + 1]?.word ?? ''),
  );
  return there || between.some(({ word }) => HAS.test(word));
}

/** "The glue needs ten degrees", "epoxy wants fifteen degrees": warmth that is asked for may be more, never less. */
function warmthAskedFor(room: Room, amount: Amount): boolean {
  const warmth = amount.dimension === 'temperature' || amount.unit === 'degrees';
  const verb = backOverFillers(room.tokens, amount.quoteFrom) - 1;
  return warmth && /^(?:needs|need|wants|want|requires|require)$/.test(wordAt(room, verb));
}

/** "keep eighteen inches off the woodwork": what is kept free may be more, never less. */
function keptOff(room: Room, amount: Amount): boolean {
  const verb = backOverFillers(room.tokens, amount.quoteFrom) - 1;
  const it = /^(?:it|them|him|her|anything|everything)$/.test(wordAt(room, verb)) ? verb - 1 : verb;
  return (
    /^(?:keep|keeps|kept|stay|stays)$/.test(wordAt(room, it)) &&
    /^(?:off|from|away|clear|between)$/.test(wordAt(room, amount.to))
  );
}

/** A bound that a whole way of speaking gives, where no word beside the number does. */
function boundInPassing(room: Room, amount: Amount, limit: number, next: Amount | undefined): Bound {
  if (allItCarries(room, amount, limit) || carriesSoMuch(room, amount) || mostToldBefore(room, amount))
    return 'at-most';
  return clearanceAskedFor(room, amount) ||
    roomBidden(room, amount) ||
    askedBesideHad(room, amount, next) ||
    clearsBy(room, amount) ||
    keptOff(room, amount) ||
    warmthAskedFor(room, amount)
    ? 'at-least'
    : 'exact';
}

/** "at least", "nothing wider than", "three psi tops", "just shy of": what the words say of the number. */
export const bounds: Refiner = {
  name: 'bounds and hedges',
  refine(amounts, room) {
    const out: Amount[] = [];
    amounts.forEach((amount, index) => {
      const limit = amounts[index + 1]?.from ?? room.tokens.length;
      const bounded = withBound(room, amount, limit, amounts[index + 1]);
      out.push(orElse(out.at(-1), bounded, room));
      if (bounded.boundSaid && bounded.quoteTo > amount.quoteTo) shareBackwards(out, room);
    });
    return out;
  },
};

function withBound(room: Room, amount: Amount, limit: number, next: Amount | undefined): Amount {
  const before = boundBefore(room, amount);
  const after = boundAfter(room, amount, limit);
  const stronger = after && RANK[after.bound] > RANK[before.bound] ? after : undefined;
  let bound = stronger?.bound ?? before.bound;
  if (bound === 'exact' && amount.number.loose) bound = 'about';
  if (bound === 'exact') bound = boundInPassing(room, amount, limit, next);
  const quoteFrom = Math.min(amount.quoteFrom, before.bound === 'exact' ? amount.quoteFrom : before.from);
  const settled = amount.bound === 'between' || amount.plusMinus !== undefined;
  const kept = settled || RANK[amount.bound] > RANK[bound] ? amount.bound : bound;
  return {
    ...amount,
    bound: kept,
    quoteFrom,
    quoteTo: Math.max(amount.quoteTo, stronger ? stronger.to : amount.quoteTo),
    ...(kept === 'exact' ? {} : { boundSaid: true }),
    ...(before.rough && bound === 'about' ? { rough: true } : {}),
  };
}

/** "It needs at least 300 clear, or 150 with a shield": a lesser demand under a condition is a demand as well. */
function orElse(before: Amount | undefined, amount: Amount, room: Room): Amount {
  if (!before || amount.bound !== 'exact' || (before.bound !== 'at-least' && before.bound !== 'at-most'))
    return amount;
  if (wordAt(room, amount.from - 1) !== 'or' || amount.from - before.to > 10) return amount;
  if (room.tokens[before.from]?.sentence !== room.tokens[amount.from]?.sentence) return amount;
  const next = SIZE_AFTER.startingAt(room.tokens, amount.to)?.to ?? amount.to;
  if (!/^(?:with|without|if|when|where|behind|once|on)$/.test(wordAt(room, next))) return amount;
  return { ...amount, bound: before.bound, boundSaid: true };
}

/** "8 foot 6 wide and 13 foot 6 tall, no more": the tail bounds both. */
function shareBackwards(out: Amount[], room: Room): void {
  const last = out[out.length - 1];
  const before = out[out.length - 2];
  if (!last || !before || before.bound !== 'exact' || before.dimension !== last.dimension) return;
  if (last.bound !== 'at-least' && last.bound !== 'at-most') return;
  const size = SIZE_AFTER.startingAt(room.tokens, before.to);
  const and = size?.to ?? before.to;
  if (!size || wordAt(room, and) !== 'and' || and + 1 !== last.from) return;
  out[out.length - 2] = { ...before, bound: last.bound, boundSaid: true };
}
