import { isTradeNoun, kindsOf } from '../lexicon/trade-nouns.ts';
import { each, PhraseTable } from '../phrases.ts';
import type { Amount, Refiner, Room } from '../rules/rule.ts';
import { wordAt } from '../rules/rule.ts';
import { afterSizeWord, withUnitOf } from './lists.ts';

/** "strong": the words repair whatever stands before them; "weak": only what follows at once is the repair. */
type Strength = 'strong' | 'weak';

const CUES = new PhraseTable<Strength>([
  ...each<Strength>(
    'strong',
    "naw, no, nope, nah, sorry, no sorry, sorry no, scratch that, strike that, make that, make it, i mean, i meant, correction, tell a lie, i tell a lie, i lie, i 'm lying, wrong, that 's wrong, start again, try again, listen to me, beg your pardon, i beg your pardon, pardon me, oops, whoops, my mistake, or rather, not that, let me start again, forget that, ignore that, as you were, what am i saying, hark at me",
  ),
  ...each<Strength>(
    'weak',
    'hang on, hold on, wait, actually, rather, well, excuse me, apologies, er no, um no',
  ),
]);

/** What may follow a repairing "no": a pause, another cue or the new value; anything else is a plain "no". */
const AFTER_NO =
  /^(?:,|\.+|…|-|it|it's|its|that|about|call|more|say|a|an|the|at|to|only|just|not|don't|every|\d.*|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\p{L}+teen|\p{L}+ty|half)$/u;

const LONGEST_GAP = 16;

const PLACE =
  /^(?:between|across|above|below|over|under|behind|along|round|around|inside|from|off|at|in|on|to|of)$/;
const LONGEST_PLACE = 4;

/** "880 wide between the stringers, no, 860": behind the words that tell where, at the pause; undefined where none are. */
function afterPlace(room: Room, amount: Amount): number | undefined {
  const from = afterSizeWord(room, amount);
  if (!PLACE.test(wordAt(room, from))) return undefined;
  for (let at = from + 2; at <= from + LONGEST_PLACE; at++) {
    if (/^[,–—-]$/.test(wordAt(room, at))) return at;
    if (room.tokens[at]?.kind !== 'word') return undefined;
  }
  return undefined;
}

const LONGEST_CLAUSE = 10;
const TOLD_BEFORE = /^(?:was|were|said|told|used|had|wrote|thought|meant)$/;

/**
 * "1100 off the floor with the new floor in, no, hang on, 1060": at the pause behind whatever else the clause says, when
 * what follows it is sure to put a number right and the new number comes at once.
 */
function afterClause(room: Room, amount: Amount, next: Amount): number | undefined {
  // "It was going to be at 1800 from the doors, make it 1830" was told before, and is no slip.
  if ([1, 2, 3, 4, 5, 6].some((back) => TOLD_BEFORE.test(wordAt(room, amount.from - back)))) return undefined;
  for (let at = amount.to; at < Math.min(next.from, amount.to + LONGEST_CLAUSE); at++) {
    if (/^[,–—-]$/.test(wordAt(room, at)))
      return at > amount.to && isPutRightAt(room, at + 1, next.from) ? at : undefined;
    if (room.tokens[at]?.kind !== 'word') return undefined;
  }
  return undefined;
}

/** Only words that put right, and pauses, stand from here to the new number. */
function isPutRightAt(room: Room, from: number, to: number): boolean {
  let at = from;
  let isSaid = false;
  while (at < to) {
    const hit = CUES.startingAt(room.tokens, at);
    if (hit) isSaid ||= hit.meaning === 'strong';
    else if (!/^(?:,|it|'s|it's|oh|er|um)$/.test(wordAt(room, at))) return false;
    at = hit?.to ?? at + 1;
  }
  return isSaid && at === to;
}

interface Cue {
  /** Where the words that put right begin. */
  readonly at: number;
  readonly strength: Strength;
  /** More of what was said of the slip stands between. */
  readonly isApart: boolean;
}

/** How an amount is put right by the next one; undefined when what follows it is no repair. */
function cueAfter(room: Room, amount: Amount, next: Amount): Cue | undefined {
  const near = afterPlace(room, amount);
  const far = near === undefined ? afterClause(room, amount, next) : undefined;
  const place = near ?? far;
  for (const start of new Set([amount.to, afterSizeWord(room, amount), place ?? amount.to])) {
    let at = start;
    // A broken-off beginning: "an inch and a, hang on".
    if (wordAt(room, at) === 'and') at = /^an?$/.test(wordAt(room, at + 1)) ? at + 2 : at + 1;
    let marks = 0;
    while (/^(?:,|\.+|;|:|-|…|\?|er|um|uh|erm|oh|ah)$/.test(wordAt(room, at)) && marks++ < 4) at++;
    const hit = CUES.startingAt(room.tokens, at);
    if (!hit) continue;
    const plainNo = /^(?:no|naw|nope|nah|wrong)$/.test(wordAt(room, hit.to - 1));
    const word = wordAt(room, hit.to);
    if (plainNo && !AFTER_NO.test(word) && !CUES.startingAt(room.tokens, hit.to)) continue;
    if (plainNo && word === 'more' && wordAt(room, hit.to + 1) !== 'like') continue;
    if (marks === 0 && hit.meaning === 'weak') continue;
    // Behind more words only what is sure to put right does: "..., wait, no, 860".
    if (start === place && hit.meaning === 'weak' && !isSure(room, hit.to)) continue;
    return { at, strength: hit.meaning, isApart: far !== undefined };
  }
  return undefined;
}

function isSure(room: Room, to: number): boolean {
  const at = wordAt(room, to) === ',' ? to + 1 : to;
  return CUES.startingAt(room.tokens, at)?.meaning === 'strong';
}

function fits(first: Amount, second: Amount): boolean {
  if (!first.unit || !second.unit) return true;
  if (first.unit === second.unit) return true;
  return first.dimension !== undefined && first.dimension === second.dimension;
}

function repairOf(room: Room, first: Amount, second: Amount): Cue | undefined {
  const gap = second.from - first.to;
  if (gap < 1 || gap > LONGEST_GAP || (first.group?.id !== undefined && first.group.id === second.group?.id))
    return undefined;
  // "I cut it 1100, no, four of them at 900": so many of them.
  if (wordAt(room, second.to) === 'of') return undefined;
  const cue = cueAfter(room, first, second);
  if (!cue || cue.at >= second.from) return undefined;
  const sentences = (room.tokens[second.from]?.sentence ?? 0) - (room.tokens[cue.at]?.sentence ?? 0);
  if (sentences > 0) return undefined;
  const straight = second.from - cue.at <= 6 && !(cue.strength === 'weak' && tellsOfAnother(room, second));
  return fits(first, second) && (cue.strength === 'strong' || straight) ? cue : undefined;
}

/** "18 deep. Hang on, the lid is 20": of the next thing, where "hang on, the width's 910" puts right. */
function tellsOfAnother(room: Room, { from }: Amount): boolean {
  if (!/^(?:is|'s|are|was|were)$/.test(wordAt(room, from - 1))) return false;
  const noun = wordAt(room, from - 2);
  const kinds = kindsOf([noun]);
  return (
    /^(?:the|my|our|that|this|its)$/.test(wordAt(room, from - 3)) &&
    isTradeNoun(noun) &&
    !kinds.has('measure')
  );
}

/** "eleven eighty, no, tell a lie, eleven ninety": the last value holds, the first was never meant. */
export const selfRepair: Refiner = {
  name: 'a slip put right in the same breath',
  refine(amounts, room) {
    const out: Amount[] = [];
    // Where the first of a chain of slips stood: "900, no, 910, no, 915".
    let place: Amount['standsFor'];
    amounts.forEach((amount, index) => {
      const next = amounts[index + 1];
      if (next && repairOf(room, amount, next)) {
        place ??= { from: amount.from, to: amount.to };
        room.note({
          ...amount,
          stage: 'refine',
          rule: selfRepair.name,
          outcome: 'dropped',
          why: 'put right by what follows',
        });
        return;
      }
      const before = amounts[index - 1];
      const repaired = before && repairOf(room, before, amount);
      // "two and a half metres, no, three": the unit stands.
      const keepsUnit = repaired && !amount.unit && before.unit && !afterHasSize(room, amount);
      const isApart = repaired?.isApart && !afterHasSize(room, amount);
      const stands =
        repaired && place ? { ...amount, standsFor: place, ...(isApart ? { saidAt: place } : {}) } : amount;
      place = undefined;
      out.push(keepsUnit && before.unit ? withUnitOf(stands, before) : stands);
    });
    return out;
  },
};

function afterHasSize(room: Room, amount: Amount): boolean {
  return afterSizeWord(room, amount) !== amount.to;
}
