import { each, PhraseTable } from '../phrases.ts';
import type { Amount, Refiner, Room } from '../rules/rule.ts';
import { wordAt } from '../rules/rule.ts';
import { speaksOf } from '../units/surroundings.ts';

/** Words directly before a stretch of time that place it in the calendar. */
const CALENDAR_BEFORE = new PhraseTable<true>(
  each(
    true,
    "in, in about, in another, in the next, in the last, in just, in under, for the last, for the past, over the last, over the next, the last, the next, the past, last, next, past, took, takes me, took me, took us, taken, taken me, spent, spend, spending, wasted, lost, all, every, this, that, some, within the, after, another, been, first, give it, a good, the other, of the, one of those, wait, waited, waiting, be, and then, lead time, lead time is, lead time 's, delivery, delivery 's, delivery is, they said, saying, they say, they reckon, ready in, here in, back in, due in",
  ),
);
/** Words directly behind it that do. */
const CALENDAR_AFTER = new PhraseTable<true>(
  each(
    true,
    'ago, later, late, early, ahead, behind, away, old, off, from now, from today, from tomorrow, time, today, today only, in a row, straight, before i, since, of my life, of work, of your life, on the trot, of sanding, of this, of that, of it, work, drive, lead, delivery, wait, notice, to go, left, over, running, and much, on my knees, to get here, to find, to get, to make, to do, to fit, too long, too late, too early, well spent, to kill, to spare, out of, max drive, each way',
  ),
);
/** Words that make it a process even there: "in ten minutes it's gone off". */
const SURE_PROCESS =
  /^(?:cure|cures|cured|curing|dry|dries|drying|dried|recoat|recoated|recoating|overcoated|overcoating|coats|coat|sit|sits|rest|rests|remain|remains|between|pot|kick|kicks|set|sets|setting|harden|hardens|tack|tacky|soak|soaks|soaked|clamp|clamped|clamps|go|goes|gone|walk|sandable|touch|held|hold|holds|overcoat|proof|rinse|bake|steam|steamed|boil|charge|charged|charging|run|runs|duty|flood|flooded|ran|cycle|wet|turned|trip|trips|tripped|cooks|cook|warm|warms|skin|skins|skinned|skinning|firms)$/;

/** What a test of tightness is told by. */
const TIGHT =
  /^(?:drip|drips|dripped|leak|leaks|leaked|needle|bubble|bubbles|bar|psi|kilopascals|kilopascal|kpa|millibar|pascals|soapy|lick)$/;
const SAYS_SO = /^(?:tube|tin|can|label|sheet|bag|bottle|tub|packet|cartridge)$/;

/** "Not one drip in thirty minutes", "48 hours, says the tube", "seven days at the very least": no calendar. */
function toldOfProcess(room: Room, amount: Amount): boolean {
  if (/^(?:year|month)$/.test(amount.unit ?? '') || amount.article) return false;
  if (/^(?:from|ago)$/.test(wordAt(room, amount.to))) return false;
  const sentence = room.tokens[amount.from]?.sentence;
  const near = (from: number, to: number, words: RegExp) =>
    room.tokens
      .slice(Math.max(0, from), to)
      .some(({ word, sentence: own }) => own === sentence && words.test(word));
  if (/^(?:min|h|s)$/.test(amount.unit ?? '') && near(amount.from - 9, amount.to + 9, TIGHT)) return true;
  const says = [amount.to, amount.to + 1].find((at) => /^(?:says|say|said)$/.test(wordAt(room, at)));
  if (says !== undefined && [1, 2, 3].some((step) => SAYS_SO.test(wordAt(room, says + step)))) return true;
  if (amount.boundSaid && amount.bound === 'at-least' && !ordering(room, amount)) return true;
  if (hasBeenOn(room, amount)) return true;
  return (
    /^(?:before|afore)$/.test(wordAt(room, amount.to)) &&
    /^(?:the|any|anything|anybody|anyone|you|a|it|its|sanding|painting|loading|walking)$/.test(
      wordAt(room, amount.to + 1),
    ) &&
    !ordering(room, amount)
  );
}

const LAID_ON =
  /^(?:membrane|paint|primer|coat|glue|resin|epoxy|varnish|oil|stain|sealer|sealant|tanking|plaster|render|mortar|screed|grout|filler|clamps?|adhesive|undercoat|skim|concrete|antifoul|bitumen|lacquer|putty)$/;

/** "Till the membrane's been on 48 hours", "once the clamps have been on a day": so long it is left. */
function hasBeenOn(room: Room, amount: Amount): boolean {
  const back = wordAt(room, amount.from - 1) === 'for' ? 2 : 1;
  if (
    !/^(?:on|in|down)$/.test(wordAt(room, amount.from - back)) ||
    wordAt(room, amount.from - back - 1) !== 'been'
  )
    return false;
  return [3, 4, 5].some((step) => LAID_ON.test(wordAt(room, amount.from - back - step + 1)));
}

function sureProcess(room: Room, amount: Amount): boolean {
  // "it went off in forty minutes".
  for (let index = amount.from - 1; index > amount.from - 6; index--) {
    if (wordAt(room, index) === 'off' && /^(?:went|goes|going|gone|go)$/.test(wordAt(room, index - 1)))
      return true;
  }
  for (let index = amount.to; index < amount.to + 5; index++) {
    const token = room.tokens[index];
    if (token?.sentence !== room.tokens[amount.from]?.sentence) break;
    if (token && SURE_PROCESS.test(token.word)) return true;
  }
  for (let index = amount.from - 1; index > amount.from - 5; index--) {
    const token = room.tokens[index];
    if (token?.sentence !== room.tokens[amount.from]?.sentence) break;
    if (token && SURE_PROCESS.test(token.word)) return true;
  }
  return false;
}

/** Deliveries and orders: "Windows are ordered, eight weeks". */
const ORDERING =
  /^(?:ordered|order|orders|delivery|delivered|deliver|arrive|arrives|arriving|coming|comes|shipping|ships|shipped|lead|reckon|reckons|waiting|quoted|backorder|courier|due|booked|promised|away|late|early|supplier)$/;

function ordering(room: Room, amount: Amount): boolean {
  const sentence = room.tokens[amount.from]?.sentence;
  for (let index = amount.from - 12; index < amount.to + 6; index++) {
    const token = room.tokens[index];
    if (token && token.sentence === sentence && ORDERING.test(token.word) && !comesAway(room, index))
      return true;
  }
  return false;
}

/** "before the mould comes off": nothing arrives. */
const comesAway = (room: Room, at: number): boolean =>
  (wordAt(room, at) === 'away' && /^(?:come|comes|came|coming|taken|put)$/.test(wordAt(room, at - 1))) ||
  (/^com(?:es?|ing)$/.test(wordAt(room, at)) &&
    /^(?:out|off|away|down|apart|undone)$/.test(wordAt(room, at + 1)));

/** Behind a verb that only may or will be, with nothing that a day could be the length of. */
function saysSomeDay(room: Room, amount: Amount): boolean {
  for (let at = amount.from - 1; at > amount.from - 8; at--) {
    const word = wordAt(room, at);
    if (/^(?:for|in|takes?|took|within|after|least|about|only|needs?|wants?)$/.test(word)) return false;
    if (/^(?:might|may|will|'ll|could|would|'d|should)$/.test(word)) return true;
  }
  return false;
}

function whyCalendar(room: Room, amount: Amount): string | undefined {
  if (/^(?:year|month)$/.test(amount.unit ?? '')) return 'years and months are no working times';
  // "Turned up a day late", whatever it was that turned.
  if (/^(?:late|early|overdue)$/.test(wordAt(room, amount.to))) return 'a stretch of the calendar';
  if (sureProcess(room, amount) || toldOfProcess(room, amount)) return undefined;
  if (CALENDAR_BEFORE.endingAt(room.tokens, amount.from) && !processVerbBehind(room, amount))
    return 'a stretch of the calendar';
  // "It might be wanted one day": some time or other.
  if (amount.unit === 'd' && wordAt(room, amount.from) === 'one' && saysSomeDay(room, amount))
    return 'some day or other';
  if (CALENDAR_AFTER.startingAt(room.tokens, amount.to)) return 'a stretch of the calendar';
  if (ordering(room, amount)) return 'a time of delivery';
  if (wordAt(room, amount.from - 1) === 'for' && !speaksOf(room, 'process', amount.from, amount.to, 12))
    return 'how long something went on';
  if (!speaksOf(room, 'process', amount.from, amount.to))
    return 'no word of curing, drying, testing or running';
  return undefined;
}

function processVerbBehind(room: Room, amount: Amount): boolean {
  const bound = /^(?:minimum|min|maximum|max)$/.test(wordAt(room, amount.to)) ? 1 : 0;
  const next = wordAt(room, amount.to + bound);
  return /^(?:between|before|per|a)$/.test(next) && speaksOf(room, 'process', amount.from, amount.to, 6);
}

/** Curing, drying, pot life, tests and running times are figures; "in two weeks" and "took me an hour" are not. */
export const times: Refiner = {
  name: 'times of a process, not of the calendar',
  refine(amounts, room) {
    return amounts.filter((amount) => {
      if (amount.dimension !== 'time') return true;
      const why = whyCalendar(room, amount);
      if (!why) return true;
      room.note({ ...amount, stage: 'refine', rule: times.name, outcome: 'dropped', why });
      return false;
    });
  },
};
