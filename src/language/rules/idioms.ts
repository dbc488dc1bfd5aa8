import { readNumber } from '../numbers/read-number.ts';
import { each, PhraseTable } from '../phrases.ts';
import { readUnit } from '../units/read-unit.ts';
import type { AmountRule } from './rule.ts';
import { wordAt } from './rule.ts';

/** Sayings that hold a number and state no quantity. */
const SAYINGS = new PhraseTable<string>([
  ...each(
    'chances, not a size',
    'fifty percent of the time, 50 percent of the time, 50 % of the time, half the time, fifty per cent of the time, fifty - fifty, fifty fifty, 50 - 50, 50 / 50, fifty/fifty',
  ),
  ...each('always, not a size', '24 / 7, twenty four seven, twenty - four seven, nine to five'),
  ...each(
    'a saying',
    'a million miles, a million times, a thousand times, a hundred times, a thousand words, one in a million, a million dollars, at sixes and sevens, second to none, on cloud nine, the whole nine yards, six of one, half a dozen of the other, back to square one, square one, ten a penny, two a penny, an inch of his life, an inch of its life, an inch of my life,  nine times out of ten, one hundred percent sure, a hundred percent sure, hundred per cent, hundred percent, a hundred per cent, a hundred percent, one hundred percent, one hundred per cent, 100 % sure, scale of one to ten, scale of 1 to 10, in two minds, two minds, for two pins, forty winks, the eleventh hour, day one, take five, high five, catch 22',
  ),
  ...each(
    'a joke of scale',
    'a ton of, a tonne of, tons of, tonnes of, weighs a ton, weighs a tonne, weigh a ton, weigh a tonne, weighed a ton, weighed a tonne, weighing a ton, a mile off, by a mile, miles out, a mile out, a million, a bit of a mile, a country mile, an arm and a leg, a kilo more, a gram more, a gram over, a mil over, an inch more, a second more, a penny more, a minute more',
  ),
]);

export const sayings: AmountRule = {
  name: 'a saying',
  read(room, at) {
    const hit = SAYINGS.startingAt(room.tokens, at);
    if (!hit) return undefined;
    // "give or take five" is a spread.
    if (wordAt(room, at) === 'take' && wordAt(room, at - 1) === 'or') return undefined;
    // "a million" of money or of things is rarely meant; with a unit it is.
    if (readUnit(room.tokens, hit.to) && !/^(?:of|off)$/.test(wordAt(room, hit.to - 1))) return undefined;
    return { skip: { to: hit.to, why: hit.meaning } };
  },
};

const TIMES = /^(?:times|time|x)$/;
const PARTITIVE = /^(?:em|the|my|our|his|her|their|its|it|them|these|those|us|you|that|this|what)$/;

/** "three times", "two thirds of the wall", "five of the nine joists", "half the boards". */
export const partsAndTimes: AmountRule = {
  name: 'parts of a whole, and how often',
  read(room, at) {
    const { tokens } = room;
    if (/^(?:half|quarter)$/.test(wordAt(room, at)) && PARTITIVE.test(wordAt(room, at + 1))) {
      return { skip: { to: at + 1, why: 'a part of the whole' } };
    }
    const number = readNumber(tokens, at);
    if (!number || number.loose) return undefined;
    const next = wordAt(room, number.to);
    const section = room.decimalComma && next === 'times' && readNumber(tokens, number.to + 1);
    if (TIMES.test(next) && !section && !(next === 'x' && tokens[number.to + 1]?.kind === 'number')) {
      return { skip: { to: number.to + 1, why: 'how often, not how much' } };
    }
    // "three out of five", "10 out of 10".
    const whole = next === 'out' && wordAt(room, number.to + 1) === 'of' && readNumber(tokens, number.to + 2);
    if (whole && whole.value >= number.value && !readUnit(tokens, whole.to)) {
      return { skip: { to: whole.to, why: 'so many of a number' } };
    }
    // "four left out of twenty".
    const rest = number.to + 1;
    const all =
      /^(?:left|gone|done)$/.test(next) && wordAt(room, rest) === 'out' && readNumber(tokens, rest + 2);
    if (all && wordAt(room, rest + 1) === 'of' && !readUnit(tokens, all.to)) {
      return { skip: { to: all.to, why: 'so many of a number' } };
    }
    // "One point two of it", "a hundred and fifty of that": so much of some stuff.
    const ofStuff =
      /^(?:it|that)$/.test(wordAt(room, number.to + 1)) && (number.decimals || number.value >= 100);
    if (next === 'of' && !ofStuff && PARTITIVE.test(wordAt(room, number.to + 1))) {
      // "thirty-two of the thirty-eight are on": so many of how many.
      const all = Number.isInteger(number.value) ? readNumber(tokens, number.to + 2) : undefined;
      if (all && all.value >= number.value && !number.fraction && !readUnit(tokens, all.to)) {
        return { skip: { to: all.to, why: 'so many of a number' } };
      }
      return { skip: { to: number.to + 1, why: 'so many of them, or a part of the whole' } };
    }
    return undefined;
  },
};
