import type { NumberReading } from '../numbers/number.ts';
import { readNumber } from '../numbers/read-number.ts';
import { readUnit } from '../units/read-unit.ts';
import type { AmountRead, AmountRule, Room } from './rule.ts';
import { amountOf, tidy, wordAt } from './rule.ts';

const PLAIN = { key: '1', dimension: 'ratio' } as const;

const ratio = (rule: string, number: NumberReading, from: number, to: number, value: number): AmountRead => ({
  amount: amountOf(rule, number, { from, to }, tidy(value), PLAIN),
});

/** "five to one", "3:1", "two parts sand to one of cement". A chance of rain is none. */
export const mixes: AmountRule = {
  name: '<number> to one',
  atNumber: true,
  read(room, at) {
    const first = readNumber(room.tokens, at);
    if (!first || readUnit(room.tokens, first.to)) return undefined;
    return (
      written(room, at, first) ??
      spoken(room, at, first) ??
      stuffs(room, at, first) ??
      oneTo(room, at, first) ??
      parts(room, at, first)
    );
  },
};

function written(room: Room, at: number, first: NumberReading): AmountRead | undefined {
  const [colon, second, more] = room.tokens.slice(first.to, first.to + 3);
  if (colon?.word !== ':' || colon.spaced || second?.kind !== 'number' || second.spaced) return undefined;
  if (more?.word === ':' && !more.spaced)
    return { skip: { to: first.to + 4, why: 'a time or a mix of three' } };
  const under = Number(second.text);
  if (!(under > 0) || !Number.isFinite(under)) return undefined;
  // "1:3" is told by its greater term, as "one to three" is.
  const value = first.value === 1 && under > 1 ? under : first.value / under;
  return ratio('<number>:<number>', first, at, first.to + 2, value);
}

function spoken(room: Room, at: number, first: NumberReading): AmountRead | undefined {
  if (wordAt(room, first.to) !== 'to') return undefined;
  const one = wordAt(room, first.to + 1);
  if (one !== 'one' && one !== '1') return undefined;
  // "The pressure's dropped from one point five to one": what it was and what it is.
  if (wordAt(room, at - 1) === 'from') return undefined;
  const second = readNumber(room.tokens, first.to + 1);
  if (second?.value !== 1 || readUnit(room.tokens, second.to)) return undefined;
  return ratio('<number> to one', first, at, second.to, first.value);
}

/** "Three of sand to one of lime", "three sand to one lime": the stuffs of a mix are named. */
function stuffs(room: Room, at: number, first: NumberReading): AmountRead | undefined {
  if (first.value < 2 || first.value > 40) return undefined;
  const stuff = wordAt(room, first.to) === 'of' ? first.to + 1 : first.to;
  const part = HOW_IT_IS.test(wordAt(room, stuff)) ? stuff + 1 : stuff;
  if (!MIX.test(wordAt(room, part)) || wordAt(room, part + 1) !== 'to') return undefined;
  const one = readNumber(room.tokens, part + 2);
  if (one?.value !== 1 || readUnit(room.tokens, one.to)) return undefined;
  const other = wordAt(room, one.to) === 'of' ? one.to + 1 : one.to;
  const to = MIX.test(wordAt(room, other)) ? other + 1 : one.to;
  return ratio('<number> of <stuff> to one', first, at, to, first.value);
}
const HOW_IT_IS = /^(?:sharp|soft|washed|wet|dry|hot|fine|coarse|building|quick|slaked|hydraulic)$/;

const MIX =
  /^(?:mix|mixed|mortar|cement|sand|lime|putty|gravel|stone|chippings|aggregate|pozzolan|clay|plaster|render|ballast|concrete|hardener|resin|epoxy|glue|water|thinner|thinners|grout|ratio|two-stroke|oil|gear|gearing|reduction)$/;

/** "one to three with sand": the larger over the smaller, beside a word of mixing. */
function oneTo(room: Room, at: number, first: NumberReading): AmountRead | undefined {
  if (first.value !== 1 || wordAt(room, first.to) !== 'to') return undefined;
  const second = readNumber(room.tokens, first.to + 1);
  if (!second || second.value < 2 || second.value > 100 || readUnit(room.tokens, second.to)) return undefined;
  for (let index = at - 8; index < second.to + 5; index++) {
    const token = room.tokens[index];
    if (token?.sentence === room.tokens[at]?.sentence && token && MIX.test(token.word)) {
      return ratio('one to <number>', first, at, second.to, second.value);
    }
  }
  return undefined;
}

function parts(room: Room, at: number, first: NumberReading): AmountRead | undefined {
  if (!/^parts?$/.test(wordAt(room, first.to))) return undefined;
  for (let to = first.to + 1; to < first.to + 5; to++) {
    if (wordAt(room, to) !== 'to') continue;
    const second = readNumber(room.tokens, to + 1);
    if (!second?.value || second.fraction) return undefined;
    const tail = /^parts?$/.test(wordAt(room, second.to)) ? second.to + 1 : second.to;
    return ratio('<number> parts to <number>', first, at, tail, first.value / second.value);
  }
  return undefined;
}

const SLOPE =
  /^(?:fall|falls|falling|fell|slope|slopes|sloped|sloping|gradient|pitch|pitched|ramp|ramps|rise|rises|rising|grade|incline|run|drop|drops|dropping|taper|tapers|tapered|scarf|scarfs|batter|crossfall|firring|firrings|gradients|slopes)$/;
/** Tokens before and behind a slope in which its word is looked for. */
const BEFORE = 8;
const BEHIND = 5;
/** A slope that closes its part of the sentence may stand farther from its word. */
const FAR_BEFORE = 18;

function slopeWithin(room: Room, from: number, to: number, sentence: number | undefined): boolean {
  for (let index = Math.max(0, from); index < to; index++) {
    const token = room.tokens[index];
    if (token?.sentence === sentence && token && SLOPE.test(token.word)) return true;
  }
  return false;
}

/** "What's your fall? One in sixty", "I'm giving it more fall than the book says, one in fifty": told from farther off. */
function slopeBefore(room: Room, at: number, to: number): boolean {
  if (!/^(?:|[.,;:!?]|so|and|but|to|from|with|for|all)$/.test(wordAt(room, to))) return false;
  const sentence = room.tokens[at]?.sentence ?? 0;
  if (slopeWithin(room, at - FAR_BEFORE, at, sentence)) return true;
  const opens = room.tokens[at - 1]?.sentence !== sentence;
  return opens && slopeWithin(room, at - FAR_BEFORE, at, sentence - 1);
}

const GOES_AWAY =
  /^(?:drains?|drained|draining|runs?|running|ran|climbs?|climbed|climbing|leans?|leaning|leant|leaned|sheds?)$/;

/** "The slab drains one in fifty", "it sheds water at 1 in 80": a slope by its verb, right before the number. */
function goesAway(room: Room, at: number): boolean {
  const sentence = room.tokens[at]?.sentence;
  for (let index = at - 1; index >= at - 4 && room.tokens[index]?.sentence === sentence; index--)
    if (GOES_AWAY.test(wordAt(room, index))) return true;
  return false;
}

/** "That gives one in fifty five", "the book says one in forty": worked out or printed; what happens so often does not follow. */
const saidToBe = (room: Room, at: number): boolean =>
  /^(?:gives|says|said|makes|wants|recommends?|minimum)$/.test(wordAt(room, at - 1)) &&
  wordAt(room, at + 1) === 'in';

/**
 * "one in forty fall", "four in twelve pitch": rise over run, beside a word of slope. One in so many is told by its
 * greater term, as "one to three" is: 40.
 */
export const slopes: AmountRule = {
  name: '<rise> in <run>',
  atNumber: true,
  read(room, at) {
    const rise = readNumber(room.tokens, at);
    if (!rise || rise.splitAfter) return undefined;
    const over = wordAt(room, rise.to);
    if (!/^(?:in|over|on)$/.test(over)) return undefined;
    const run = readNumber(room.tokens, rise.to + 1);
    if (!run || !(run.value > rise.value) || readUnit(room.tokens, run.to)) return undefined;
    const isOneIn = rise.value === 1 && !rise.fraction;
    // "It wants redoing at one in forty."
    const redone =
      isOneIn &&
      run.value >= 8 &&
      (/^(?:at|to)$/.test(wordAt(room, at - 1)) || saidToBe(room, at)) &&
      !/^(?:of|'s|is|are|was|were|goes|fails?|comes)$/.test(wordAt(room, run.to));
    const sentence = room.tokens[at]?.sentence;
    const isSlope =
      redone ||
      (isOneIn && run.value >= 8 && goesAway(room, at)) ||
      slopeWithin(room, at - BEFORE, run.to + BEHIND, sentence) ||
      (isOneIn && over === 'in' && run.value >= 4 && slopeBefore(room, at, run.to));
    if (!isSlope) return undefined;
    return ratio(this.name, rise, at, run.to, isOneIn ? run.value : rise.value / run.value);
  },
};
