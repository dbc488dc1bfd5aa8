/** Metres and their parts said figure by figure: "five six wide", "two three six between". Common practice, no source. */
import type { Amount, Room } from '../../rules/rule.ts';
import { tidy, wordAt } from '../../rules/rule.ts';
import { SIZE_AFTER } from '../../rules/size-words.ts';
import { placeOf } from './lengths.ts';

/** Where no one has feet and inches in mind with two digits. */
const TELLS_METRES = /^(?:AU|NZ|ZA)$/;
const DIGITS = ['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine'];

const digitAt = (room: Room, at: number) => DIGITS.indexOf(wordAt(room, at)) + 1;

/** "Five six": 5.6 where each figure is said alone. */
export function asPair(room: Room, amount: Amount): number | undefined {
  if (amount.to - amount.from !== 2) return undefined;
  const [metre, tenth] = [digitAt(room, amount.from), digitAt(room, amount.from + 1)];
  if (!metre || !tenth || amount.value !== metre * 10 + tenth) return undefined;
  return metre + tenth / 10;
}

/** "Two three six": 2.36 where each of three figures is said alone, none of them a nought. */
function asThree(room: Room, amount: Amount): number | undefined {
  if (amount.to - amount.from !== 3 || amount.value < 100 || amount.value > 999) return undefined;
  const isEach = [0, 1, 2].every((step) => digitAt(room, amount.from + step) > 0);
  return isEach ? tidy(amount.value / 100) : undefined;
}

/** "Four fifteen": 4.15, metres and hundredths. */
function asMetreAndHundredths(amount: Amount): number | undefined {
  const isSplit = amount.number.splitAfter === 1 && amount.number.form === 'words';
  return isSplit && amount.value >= 100 && amount.value <= 999 ? tidy(amount.value / 100) : undefined;
}

const APART = 6;
const like = (a: number, b: number) => a / b <= APART && b / a <= APART;

/** The length told last before this one, in its sentence or the one before. */
function lastLength(room: Room, amount: Amount, amounts: readonly Amount[]): Amount | undefined {
  const place = placeOf(amounts, amount.from);
  const sentence = room.tokens[amount.from]?.sentence ?? 0;
  for (let at = place - 1; at >= Math.max(0, place - 4); at--) {
    const other = amounts[at];
    if (!other || sentence - (room.tokens[other.from]?.sentence ?? 0) > 1) return undefined;
    if (other.role !== 'count' && (other.dimension === 'length' || !other.unit)) return other;
  }
  return undefined;
}

/** "6.1 long and two oh eight wide": sizes of one thing in one breath. */
function isNextSize(room: Room, last: Amount, amount: Amount): boolean {
  const behind = SIZE_AFTER.startingAt(room.tokens, last.to)?.to;
  if (behind === undefined || amount.from - behind > 2) return false;
  return room.tokens.slice(behind, amount.from).every(({ word }) => /^(?:,|and|by)$/.test(word));
}

/** "12.4 long", "two point three": a bare number that its decimals make one of metres, or one with its unit. */
function toldInMetres(other: Amount): boolean {
  if (other.unit === 'm') return true;
  return !other.unit && (other.number.decimals ?? 0) > 0 && other.value >= 1.2 && other.value < 40;
}

/**
 * The metres of a number that is said figure by figure: in countries that tell rooms so, for the long sizes of a thing;
 * elsewhere beside a like length that was told in metres.
 */
export function metresByDigits(
  room: Room,
  amount: Amount,
  amounts: readonly Amount[],
  isLong: boolean,
): number | undefined {
  if (!isLong || amount.number.fraction) return undefined;
  const [pair, three] = [asPair(room, amount), asThree(room, amount)];
  if (TELLS_METRES.test(room.region) && pair) return pair;
  const value = pair ?? three ?? asMetreAndHundredths(amount);
  const last = value === undefined ? undefined : lastLength(room, amount, amounts);
  if (!last || value === undefined || !toldInMetres(last) || !like(last.value, value)) return undefined;
  return pair ?? three ?? (isNextSize(room, last, amount) ? value : undefined);
}
