/** What something hangs from, stands on or is lifted by: how much it carries is a weight, and the most that it may. */
import { backOverFillers } from '../phrases.ts';
import { type Amount, type Room, wordAt } from './rule.ts';

const CARRIER =
  /^(?:cranes?|hoists?|jacks?|lift|lifts|winch|winches|trailer|trailers|floor|shelf|shelves|beams?|ropes?|straps?|slings?|chains?|tackle|gantry|forklift|telehandler|ramps?|axles?|davits?|racks?|brackets?|hooks?|trolley|barrow|castors?|casters?|ladder|planks?|cradle|staging|scaffold|trestles?|stands?|runners|hinges?|cord|cords|wire)$/;
const CARRIES =
  /^(?:carry|carries|hold|holds|take|takes|bear|bears|support|supports|lift|lifts|stand|stands|handle|handles|do|does)$/;
const MAY = /^(?:may|can|will|'ll|should|only|each|just|could|safely|happily)$/;
const RATED = /^(?:rated|good|certified|stamped|plated|tested|passed)$/;
/** Words between a carrier and what it is rated for: "the shelf it sits on is rated for". */
const REACH = 6;

/** Whether something that carries things is told to carry this much: "each jack may take eight tonnes". */
export function isCarriedBy(room: Room, amount: Amount): boolean {
  let at = backOverFillers(room.tokens, amount.quoteFrom) - 1;
  // "A shelf takes 12 kilos each, that makes 36": what is put on it.
  if (/^(?:each|apiece)$/.test(wordAt(room, amount.to)) && /^(?:take|do)/.test(wordAt(room, at)))
    return false;
  if (!CARRIES.test(wordAt(room, at))) return false;
  at--;
  for (let steps = 0; steps < 3 && MAY.test(wordAt(room, at)); steps++) at--;
  return CARRIER.test(wordAt(room, at)) && isSameSentence(room, at, amount);
}

/** Whether something that carries things is rated for this much: "the winch is good for 450". */
export function isCarrierRatedFor(room: Room, amount: Amount): boolean {
  const rated = [1, 2, 3].map((back) => amount.from - back).find((at) => RATED.test(wordAt(room, at)));
  if (rated === undefined || !/^(?:for|at|to|up)$/.test(wordAt(room, rated + 1))) return false;
  for (let at = rated - 1; at >= rated - REACH && isSameSentence(room, at, amount); at--) {
    if (/^[,;:]$/.test(wordAt(room, at))) return false;
    if (CARRIER.test(wordAt(room, at))) return true;
  }
  return false;
}

const isSameSentence = (room: Room, at: number, amount: Amount): boolean =>
  room.tokens[at] !== undefined && room.tokens[at]?.sentence === room.tokens[amount.from]?.sentence;
