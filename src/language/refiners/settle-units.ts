import type { Dimension } from '../notes.ts';
import { localDollar, localMoney } from '../rules/money.ts';
import type { Amount, Refiner, Room } from '../rules/rule.ts';
import { tidy, wordAt } from '../rules/rule.ts';
import { CONDUCTOR_SIZES } from '../units/conductor-sizes.ts';
import { nearestOf } from '../units/surroundings.ts';
import { type DegreesTold, degreesTold, settleDegrees } from './degrees.ts';
import type { Settled } from './settled.ts';

const imperialHouse = (room: Room) => room.house === 'us' || (room.house === 'mixed' && room.region === 'US');

function settleMil(room: Room, amount: Amount): Settled {
  const { from, to, value } = amount;
  const cable = nearestOf(room, 'cable', from, to, 12);
  const liquid = nearestOf(room, 'liquid', from, to, 5);
  const film = nearestOf(room, 'film', from, to, 12);
  const ofLiquid = wordAt(room, to) === 'of' && liquid !== undefined;
  if (ofLiquid) return { unit: 'mL', dimension: 'volume', why: 'mil of a liquid' };
  if (/^squared?$/.test(wordAt(room, to)) && cable !== undefined) {
    return { unit: 'mm2', dimension: 'area', why: 'square millimetres of a cable', quoteTo: to + 1 };
  }
  // "Sixty mil tails": the section of what is named behind it, whatever sizes are sold.
  if (/^(?:cable|cables|tails|flex|twin|armoured)$/.test(wordAt(room, to)) && value >= 1 && value <= 240)
    return { unit: 'mm2', dimension: 'area', why: 'the section of a cable behind it' };
  const cableSized = CONDUCTOR_SIZES.has(value) && amount.bound === 'exact' && !amount.sizeWords;
  if (cable !== undefined && cableSized && (cable <= 3 || !sized(room, amount))) {
    return {
      unit: 'mm2',
      dimension: 'area',
      why: 'a cable size beside a word of wiring',
      alternatives: [{ value, unit: 'mm' }],
    };
  }
  if (imperialHouse(room) || room.region === 'US') {
    if (film !== undefined || (value < 40 && nearestOf(room, 'machining', from, to, 8) !== undefined)) {
      return {
        unit: 'thou',
        dimension: 'length',
        why: 'mil is a thousandth of an inch here',
        alternatives: [{ value, unit: 'mm' }],
      };
    }
  }
  return { unit: 'mm', dimension: 'length', why: 'mil is a millimetre here' };
}

const SIZED =
  /^(?:wide|high|long|deep|thick|tall|across|gap|clear|clearance|proud|hole|holes|ply|bolt|bolts|board|boards|off|from|above|below|apart|centres|centers|bit|drill|pipe|copper|glass|birch|oak|toughened|laminated|tempered|plate|steel|sheet|perspex|canvas|rope)$/;
const sized = (room: Room, amount: Amount) => SIZED.test(wordAt(room, amount.to));

/** Words of how hard something is pumped: "50 pounds on the tube", "thirty pounds in the tyres". */
const PUMPED =
  /^(?:tyre|tyres|tire|tires|tube|tubes|gauge|needle|pressure|pumped|compressor|air|regulator|boiler|accumulator|manifold)$/;

function pumped(room: Room, amount: Amount): boolean {
  if (!/^(?:on|in|of|at|per)$/.test(wordAt(room, amount.to))) return false;
  return [1, 2, 3].some((step) => PUMPED.test(wordAt(room, amount.to + step)));
}

/** Two countries pay in pounds or once did; in the others pounds are a weight. */
function settlePounds(room: Room, amount: Amount, alsoInKilos: boolean): Settled {
  const mass: Settled = { unit: 'lb', dimension: 'mass', why: 'pounds are a weight here' };
  const money: Settled = { unit: localMoney(room.region), dimension: 'money', why: 'pounds are money here' };
  if (alsoInKilos) return { ...mass, why: 'the same weight in pounds' };
  if (pumped(room, amount)) return { unit: 'psi', dimension: 'pressure', why: 'pounds of pressure' };
  const { from, to } = amount;
  const weight = nearestOf(room, 'weight', from, to);
  const price = nearestOf(room, 'money', from, to);
  if (room.region === 'IE') return price !== undefined && (weight ?? 99) > price ? money : mass;
  if (room.region !== 'GB') return mass;
  if (weight !== undefined && (price === undefined || weight < price)) return mass;
  if (price !== undefined) return money;
  if (/^(?:a|per|each|for|an)$/.test(wordAt(room, to))) return money;
  const other = { value: amount.value, unit: 'lb' };
  return { ...money, alternatives: [other], why: 'pounds without a word of weight are money here' };
}

function settleTon(room: Room, amount: Amount): Settled {
  if (room.region === 'US') {
    const alternatives = [{ value: amount.value, unit: 't' }];
    return { unit: 'lb', dimension: 'mass', factor: 2000, alternatives, why: 'a short ton of 2000 lb here' };
  }
  return { unit: 't', dimension: 'mass', why: 'a ton is taken as a tonne here' };
}

/** "190 kilos, which is 419 pounds": one weight in two units, said in one sentence. */
function inKilos(room: Room, amount: Amount, amounts: readonly Amount[]): boolean {
  return amounts.some(
    (other) =>
      other.unit === 'kg' &&
      room.tokens[other.from]?.sentence === room.tokens[amount.from]?.sentence &&
      Math.abs(other.value * 2.2046 - amount.value) < amount.value * 0.02,
  );
}

interface Beside {
  readonly amounts: readonly Amount[];
  /** What the words about each figure in degrees say that they are. */
  readonly degrees: DegreesTold;
}

function settleOne(room: Room, amount: Amount, { amounts, degrees }: Beside): Settled | undefined {
  switch (amount.unit) {
    case 'mil':
      return settleMil(room, amount);
    case 'pounds':
      return settlePounds(room, amount, inKilos(room, amount, amounts));
    case 'degrees':
      return settleDegrees(room, amount, degrees);
    case 'ton':
      return settleTon(room, amount);
    case 'local-money':
      return { unit: localMoney(room.region), dimension: 'money', why: 'the money of the region' };
    case 'quid':
      return {
        unit: room.region === 'IE' ? 'EUR' : 'GBP',
        dimension: 'money',
        why: 'pounds, or euros where they replaced them',
      };
    case 'dollars':
      return { unit: localDollar(room.region), dimension: 'money', why: 'the dollar of the region' };
    case 'cents': {
      const unit = localMoney(room.region) === 'EUR' ? 'EUR' : localDollar(room.region);
      return { unit, dimension: 'money', factor: 0.01, why: 'hundredths of the money of the region' };
    }
    default:
      return undefined;
  }
}

/** Two pints are a quart in both measures; how much a quart holds is the region's, and the model knows it. */
function settlePint(amount: Amount): Settled | undefined {
  return amount.unit === 'pt'
    ? { unit: 'qt', dimension: 'volume', factor: 0.5, why: 'two pints to the quart' }
    : undefined;
}

/** "Fifteen hundred pounds, not two thousand": what is replaced is settled as well, with the figure or by itself. */
function settleReplaced(
  room: Room,
  amount: Amount,
  settled: Settled | undefined,
  beside: Beside,
): Pick<Amount, 'replaces'> | undefined {
  const { replaces } = amount;
  if (!replaces) return undefined;
  const same = settled && replaces.unit === amount.unit ? settled : undefined;
  const own =
    same ?? settleOne(room, { ...amount, ...replaces }, beside) ?? settlePint({ ...amount, ...replaces });
  return own && { replaces: { value: tidy(replaces.value * (own.factor ?? 1)), unit: own.unit } };
}

/** What a word of several meanings is where the dimension is known. Degrees of heat are those of the figure. */
const BY_DIMENSION: Readonly<Record<string, Readonly<Partial<Record<Dimension, string>>>>> = {
  mil: { length: 'mm', volume: 'mL', area: 'mm2' },
  pounds: { mass: 'lb', pressure: 'psi', torque: 'ft.lbf' },
  degrees: { angle: 'deg' },
};

/**
 * "Two and a half inches, give or take half a mil": the unit of a spread is settled by itself, as far as it is of the
 * figure's dimension; with the figure where both were said in the same word. A bare figure with a spread in mils is a
 * length.
 */
function settleSpread(
  room: Room,
  amount: Amount,
  settled: Settled | undefined,
  beside: Beside,
): Pick<Amount, 'plusMinus' | 'plusMinusUnit'> | undefined {
  const { plusMinus: value, plusMinusUnit: unit } = amount;
  if (value === undefined || unit === undefined) return undefined;
  if (settled && unit === amount.unit)
    return { plusMinus: tidy(value * (settled.factor ?? 1)), plusMinusUnit: settled.unit };
  const spread: Amount = { ...amount, value, unit };
  const own = settleOne(room, spread, beside) ?? settlePint(spread);
  if (!own) return undefined;
  const dimension = settled?.dimension ?? amount.dimension ?? (unit === 'mil' ? 'length' : own.dimension);
  if (own.dimension === dimension)
    return { plusMinus: tidy(value * (own.factor ?? 1)), plusMinusUnit: own.unit };
  const figure = settled?.unit ?? amount.unit;
  const known = BY_DIMENSION[unit]?.[dimension] ?? (unit === 'degrees' ? figure : undefined);
  return known === undefined ? undefined : { plusMinusUnit: known };
}

/** Settles mil, pounds, degrees, tons, dollars, pints by the words about them, then by house and region. */
export const settleUnits: Refiner = {
  name: 'a unit of several meanings',
  refine(amounts, room) {
    const beside: Beside = { amounts, degrees: degreesTold(room, amounts) };
    return amounts.map((amount) => {
      const settled = settleOne(room, amount, beside) ?? settlePint(amount);
      const replaced = settleReplaced(room, amount, settled, beside);
      const spread = settleSpread(room, amount, settled, beside);
      if (!settled) return replaced || spread ? { ...amount, ...replaced, ...spread } : amount;
      room.note({
        ...amount,
        stage: 'units',
        rule: settleUnits.name,
        outcome: 'merged',
        why: `${settled.unit}: ${settled.why}`,
      });
      const { factor = 1 } = settled;
      return {
        ...amount,
        quoteTo: Math.max(amount.quoteTo, settled.quoteTo ?? 0),
        unit: settled.unit,
        dimension: settled.dimension,
        value: tidy(amount.value * factor),
        ...(amount.high === undefined ? {} : { high: tidy(amount.high * factor) }),
        ...(settled.alternatives ? { alternatives: settled.alternatives } : {}),
        ...spread,
        ...replaced,
      };
    });
  },
};
