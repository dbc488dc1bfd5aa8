/** Bare numbers that are how steep a roof or a stair is. */
import { type Amount, type Room, wordAt } from '../../rules/rule.ts';
import type { Meaning } from './lengths.ts';

/** Roofs and stairs that people walk on or tile; flatter ones are told as a fall, steeper ones are walls. */
const [FLATTEST, STEEPEST] = [8, 75];
/** Where a pitch is no distance between threads, rivets or blades. */
const SLOPED =
  /^(?:roofs?|rafters?|ridge|purlins?|stairs?|staircase|treads?|risers?|going|strings?|stringers?|tiles?|slates?|shingles|thatch|gables?|dormers?|eaves|hips?|valley)$/;
const STEPPED =
  /^(?:propeller|prop|stitch|stitches|stitched|stitching|sewn|thread|threads|rivets?|chain|teeth|tooth|leadscrew|blades?|holes?|nails?|screws?)$/;
/** Tokens to either side that are looked at: a memo is about one roof for a while. */
const AROUND = 60;

const SAYS = /^(?:'s|is|was|of|at|to|comes|came|about|around|roughly|just|now|only|works|out|be)$/;

/** "The roof pitch is 35", "pitch comes to 39 and a bit" where stairs are spoken of: degrees. */
export function asPitch(room: Room, amount: Amount): Meaning | undefined {
  const { value, number, from } = amount;
  if (value < FLATTEST || value > STEEPEST || number.fraction || amount.high !== undefined) return undefined;
  let at = from - 1;
  while (from - at < 6 && SAYS.test(wordAt(room, at))) at--;
  if (wordAt(room, at) !== 'pitch' || at === from - 1 || /^(?:in|on|to|by)$/.test(wordAt(room, amount.to)))
    return undefined;
  const words = room.tokens.slice(Math.max(0, from - AROUND), from + AROUND).map(({ word }) => word);
  if (!words.some((word) => SLOPED.test(word)) || words.some((word) => STEPPED.test(word))) return undefined;
  return { value, unit: 'deg', dimension: 'angle', why: 'the pitch of a roof or a stair' };
}
