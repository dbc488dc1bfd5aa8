import { readFraction } from '../numbers/fraction.ts';
import type { NumberReading } from '../numbers/number.ts';
import { readNumber } from '../numbers/read-number.ts';
import { readUnit, type UnitMention } from '../units/read-unit.ts';
import { localMoney } from './money.ts';
import type { AmountRule, Room } from './rule.ts';
import { amountOf, tidy, wordAt } from './rule.ts';

interface Head {
  readonly number: NumberReading;
  readonly unit: UnitMention;
  readonly article: boolean;
}

/** Units that an article may stand before for one of them: "an inch and a half", "a metre ten". */
const ONE_OF =
  /^(?:inch|foot|metre|meter|millimetre|millimeter|centimetre|centimeter|mil|mill|thou|kilo|kilogram|gram|litre|liter|gallon|pint|quart|tonne|kilometre|yard|hour|day|week|fortnight|minute|degree|volt|amp|kilowatt|watt|pound|ton|hundredweight|bar|fluid|square|cubic|newton)$/;

/** A number with its unit, or an article that stands for one. */
export function headAt(room: Room, at: number): Head | undefined {
  const { tokens } = room;
  if (/^an?$/.test(wordAt(room, at))) {
    const whole = WHOLE.test(wordAt(room, at + 1)) ? 1 : 0;
    const unit = ONE_OF.test(wordAt(room, at + 1 + whole)) ? readUnit(tokens, at + 1 + whole) : undefined;
    if (!unit?.singular || (whole === 1 && unit.dimension !== 'time')) return articleNumber(room, at);
    const number = { from: at, to: at + 1, value: 1, form: 'words' as const, article: true };
    return { number, unit, article: true };
  }
  return articleNumber(room, at);
}

/** "a full day", "a good hour": all of it. */
const WHOLE = /^(?:full|good|whole|clear|solid|long|bare|further|straight)$/;

/** A number with its unit; "a hundred millimetres" and "a solid two days" begin with an article too. */
function articleNumber(room: Room, at: number): Head | undefined {
  const number = readNumber(room.tokens, at, room.decimalComma);
  const unit = number && readUnit(room.tokens, number.to);
  return number && unit ? { number, unit, article: false } : undefined;
}

/** "inch and a half", "metre twenty": the unit alone stands for one, its article swallowed. */
function unitAloneAt(room: Room, at: number): Head | undefined {
  if (!ONE_OF.test(wordAt(room, at)) || /^(?:square|cubic|fluid|per|a|an)$/.test(wordAt(room, at - 1)))
    return undefined;
  const unit = readUnit(room.tokens, at);
  if (!unit?.singular || readUnit(room.tokens, at - 1)?.to === unit.to) return undefined;
  const number = { from: at, to: at, value: 1, form: 'words' as const, article: true };
  return { number, unit, article: true };
}

/** "an inch and three sixteenths", "a kilo and a half", "two metres and a half", "an hour and a quarter". */
export const unitAndFraction: AmountRule = {
  name: '<amount> and a <fraction>',
  read(room, at) {
    const head = headAt(room, at) ?? unitAloneAt(room, at);
    if (!head) return undefined;
    const fraction =
      wordAt(room, head.unit.to) === 'and'
        ? readFraction(room.tokens, head.unit.to + 1)
        : fractionAtOnce(room, head);
    if (!fraction) return undefined;
    // "two metres and three quarters of an inch": the fraction has a unit of its own.
    if (ownUnit(room, fraction.to) !== undefined) return undefined;
    const value = tidy(head.number.value + fraction.value);
    const number = {
      ...head.number,
      to: fraction.to,
      value,
      fraction: true,
      denominator: fraction.denominator,
    };
    return { amount: amountOf(this.name, number, { from: at, to: fraction.to }, value, head.unit) };
  },
};

/** "one inch three sixteenths": parts of an inch tape right behind whole inches, where nothing is counted by them. */
function fractionAtOnce(room: Room, head: Head) {
  if (head.unit.key !== 'in' || head.number.fraction || head.number.decimals) return undefined;
  const fraction = readFraction(room.tokens, head.unit.to);
  if (!fraction || !/^(?:4|8|16|32|64)$/.test(String(fraction.denominator))) return undefined;
  return CLOSES_REST.test(wordAt(room, fraction.to)) ? fraction : undefined;
}

function ownUnit(room: Room, at: number): number | undefined {
  if (wordAt(room, at) === 'of' && /^an?$/.test(wordAt(room, at + 1)))
    return readUnit(room.tokens, at + 2)?.to;
  if (/^an?$/.test(wordAt(room, at))) return readUnit(room.tokens, at + 1)?.to;
  return readUnit(room.tokens, at)?.to;
}

/** Words behind "two metre four" that leave the four to the metres: an end, a size, a place. */
const CLOSES_REST =
  /^(?:|[.,;:!?]|and|so|but|or|wide|high|long|deep|thick|tall|across|in|from|off|at|by|to|for|is|it|with|on|over|under)$/;

/** "ten" in "a metre ten": metres where two figures are hundredths and three are thousandths. */
function restOfMetre(room: Room, head: Head): { readonly to: number; readonly metres: number } | undefined {
  const rest = readNumber(room.tokens, head.unit.to);
  if (!rest || rest.fraction || rest.decimals || rest.loose || readUnit(room.tokens, rest.to))
    return undefined;
  if (!Number.isInteger(rest.value) || rest.value < 1 || rest.value > 999) return undefined;
  const next = wordAt(room, rest.to);
  if (/^(?:x|to|percent|per|of|times)$/.test(next)) return undefined;
  if (next === 'by' && rest.value < 10) return undefined;
  // "two metre four" is 2.04 on the mainland; "two metres five boards" is none.
  if (rest.value < 10 && !CLOSES_REST.test(next)) return undefined;
  return { to: rest.to, metres: rest.value < 100 ? rest.value / 100 : rest.value / 1000 };
}

/** "a metre ten" is 1.10, "two metres four hundred" 2.4, "one metre sixty five" 1.65, "1m80" 1.8. */
export const metresAndRest: AmountRule = {
  name: '<metres> metre <rest>',
  read(room, at) {
    const head = headAt(room, at) ?? unitAloneAt(room, at);
    if (head?.unit.key !== 'm' || head.number.decimals || head.number.fraction) return undefined;
    const short = room.tokens[head.unit.from]?.word === 'm';
    if (short && room.tokens[head.unit.to]?.spaced !== false) return undefined;
    const rest = restOfMetre(room, head) ?? (room.decimalComma ? joinedRest(room, head.unit.to) : undefined);
    if (!rest || (head.number.to === at && rest.metres < 0.1)) return undefined;
    const value = tidy(head.number.value + rest.metres);
    const number = { ...head.number, to: rest.to, value };
    return { amount: amountOf(this.name, number, { from: at, to: rest.to }, value, head.unit) };
  },
};

/** "four metres and twenty", "one metre and eight": hundredths, as speakers of Italian, French and Spanish join them. */
function joinedRest(room: Room, at: number): { readonly to: number; readonly metres: number } | undefined {
  if (wordAt(room, at) !== 'and') return undefined;
  const rest = readNumber(room.tokens, at + 1);
  if (
    !rest ||
    !Number.isInteger(rest.value) ||
    rest.value < 1 ||
    rest.value > 99 ||
    rest.fraction ||
    rest.loose
  )
    return undefined;
  const unit = readUnit(room.tokens, rest.to);
  if (
    unit ||
    !/^(?:|[.,;:!?]|of|wide|high|long|deep|from|at|in|and|because|so|but)$/.test(wordAt(room, rest.to))
  )
    return undefined;
  return { to: rest.to, metres: rest.value / 100 };
}

/** "four pound fifty", "twelve euro fifty": the rest is hundredths. Pounds with a rest are money. */
export const moneyAndRest: AmountRule = {
  name: '<money> <hundredths>',
  atNumber: true,
  read(room, at) {
    const head = headAt(room, at);
    if (!head) return undefined;
    const money = head.unit.dimension === 'money' || /^(?:pounds|dollars)$/.test(head.unit.key ?? '');
    if (!money || head.number.decimals || head.number.fraction) return undefined;
    const rest = readNumber(room.tokens, head.unit.to);
    const whole = rest && Number.isInteger(rest.value) && !rest.fraction && !rest.loose;
    if (!whole || rest.value < 10 || rest.value > 99 || readUnit(room.tokens, rest.to)) return undefined;
    if (
      !CLOSES_REST.test(wordAt(room, rest.to)) &&
      !/^(?:each|a|the|per|apiece|all)$/.test(wordAt(room, rest.to))
    )
      return undefined;
    if (/^(?:by|to)$/.test(wordAt(room, rest.to))) return undefined;
    const value = tidy(head.number.value + rest.value / 100);
    const key = head.unit.key === 'pounds' ? localMoney(room.region) : head.unit.key;
    const number = { ...head.number, to: rest.to, value };
    return {
      amount: amountOf(this.name, number, { from: at, to: rest.to }, value, { key, dimension: 'money' }),
    };
  },
};

/** Pairs of units that are said as one: the larger, the smaller, and how many of the smaller make one larger. */
const PAIRS: readonly (readonly [string, string, number])[] = [
  ['m', 'mm', 1000],
  ['m', 'mil', 1000],
  ['m', 'cm', 100],
  ['cm', 'mm', 10],
  ['pounds', 'oz', 16],
  ['lb', 'oz', 16],
  ['kg', 'g', 1000],
  ['h', 'min', 60],
  ['min', 's', 60],
  ['d', 'h', 24],
  ['yd', 'ft', 3],
  ['dollars', 'cents', 100],
  ['EUR', 'cents', 100],
  ['GBP', 'GBP', 100],
];

/** "two metres and ten mil", "four pounds six ounces", "an hour and twenty minutes". */
export const largerAndSmaller: AmountRule = {
  name: '<larger unit> and <smaller unit>',
  atNumber: true,
  read(room, at) {
    const head = headAt(room, at);
    if (!head) return undefined;
    const next = wordAt(room, head.unit.to) === 'and' ? head.unit.to + 1 : head.unit.to;
    const tail = headAt(room, next);
    if (!tail) return undefined;
    const pair = PAIRS.find(([large, small]) => large === head.unit.key && small === tail.unit.key);
    if (!pair || tail.number.value >= pair[2]) return undefined;
    if (pair[0] === pair[1] && tail.unit.factor === undefined) return undefined;
    const value = tidy(head.number.value + tail.number.value / pair[2]);
    // Ounces beside pounds settle that pounds are a mass.
    const unit = pair[0] === 'pounds' ? ({ key: 'lb', dimension: 'mass' } as const) : head.unit;
    return {
      amount: amountOf(this.name, { ...head.number, value }, { from: at, to: tail.unit.to }, value, unit),
    };
  },
};

/** "half an inch", "half a mil", "three quarters of an inch", "0.75 of a kilowatt", "half inch", "quarter inch". */
export const partOfUnit: AmountRule = {
  name: '<part> of a <unit>',
  read(room, at) {
    const { tokens } = room;
    const word = wordAt(room, at);
    const bare = word === 'half' ? 0.5 : word === 'quarter' ? 0.25 : undefined;
    const number = bare
      ? { from: at, to: at + 1, value: bare, form: 'words' as const, fraction: true, denominator: 1 / bare }
      : readNumber(tokens, at, room.decimalComma);
    if (!number || number.value >= 100) return undefined;
    let next = number.to;
    const of = wordAt(room, next) === 'of';
    if (of) next++;
    const article = /^an?$/.test(wordAt(room, next));
    if (article) next++;
    if (!bare && !of && !(article && number.fraction && number.value < 1)) return undefined;
    if (of && !article && !/^one$/.test(wordAt(room, next))) return undefined;
    if (of && wordAt(room, next) === 'one') next++;
    const unit = readUnit(tokens, next);
    if (!unit) return undefined;
    if (article && !unit.singular) return undefined;
    return { amount: amountOf(this.name, number, { from: at, to: unit.to }, number.value, unit) };
  },
};

/** A word before an article that makes it a rate or a refusal: "18 mil a metre", "not a millimetre". */
const NEVER_ONE = /^bar$/;

const NOT_BEFORE_ONE = /^(?:not|nor|never|n't|every|such|what|many|side|once|twice|half|quarter|fancy)$/;

/** What work is kept in for a time: "an hour in the clamps". */
const WORKED_IN =
  /^(?:clamps?|cramps?|steamer|steam|box|oven|kiln|press|sun|shade|mould|mold|jig|bath|tank|vice|vise|bag|warm|heat)$/;

/** "an inch", "a metre", "a kilo": one of them. */
export const oneOfUnit: AmountRule = {
  name: 'a <unit>',
  atNumber: true,
  read(room, at) {
    const head = headAt(room, at);
    if (!head?.article) return undefined;
    const before = wordAt(room, at - 1);
    // "with a bar" is a tool.
    if (NEVER_ONE.test(wordAt(room, at + 1)) && !/^of$/.test(wordAt(room, head.unit.to))) return undefined;
    if (NOT_BEFORE_ONE.test(before) || before.endsWith("n't")) return undefined;
    if (followsAmount(room, at))
      return { skip: { to: head.unit.to, why: 'per unit, said of the amount before it' } };
    if (
      /^(?:of|in|or)$/.test(wordAt(room, head.unit.to)) &&
      /^(?:his|her|its|my|the|so|two)$/.test(wordAt(room, head.unit.to + 1)) &&
      !WORKED_IN.test(wordAt(room, head.unit.to + 2))
    ) {
      return { skip: { to: head.unit.to, why: 'a manner of speaking' } };
    }
    const amount = amountOf(this.name, head.number, { from: at, to: head.unit.to }, 1, head.unit);
    return { amount: { ...amount, article: true } };
  },
};

/** True when a unit, a number or a plural noun that is counted stands directly before the article. */
function followsAmount(room: Room, at: number): boolean {
  for (const from of [at - 1, at - 2, at - 3]) {
    if (from < 1) break;
    if (readUnit(room.tokens, from)?.to === at) return true;
    if (readNumber(room.tokens, from)?.to === at && !/^(?:one|a)$/.test(wordAt(room, at - 1))) return true;
  }
  return /^(?:coats?|times|cycles|strokes|turns)$/.test(wordAt(room, at - 1));
}
