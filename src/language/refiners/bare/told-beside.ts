/** Bare numbers told by the word right beside them: a fuse, a switch of a compressor, a bend. */
import { type Amount, type Room, wordAt } from '../../rules/rule.ts';
import { evidenceAfter } from './evidence.ts';
import type { Meaning } from './lengths.ts';
import { nearWord } from './neighbours.ts';
import { SWITCHES } from './pressures.ts';

const ANGLES: ReadonlySet<number> = new Set([11.25, 15, 22, 22.5, 30, 45, 60, 67.5, 87.5, 90, 135]);

/** "A two fifty fuse", "the compressor cuts out at 120", "no bend over 45": told by the word beside the number. */
export function asBeside(room: Room, amount: Amount): Meaning | undefined {
  const { value } = amount;
  if (
    /^(?:fuse|fuses|breaker|breakers|mcb|rcd)$/.test(wordAt(room, amount.to)) &&
    value >= 3 &&
    value <= 800 &&
    Number.isInteger(value) &&
    !isFewOf(room, amount)
  )
    return { value, unit: 'A', dimension: 'current', why: 'a fuse behind it' };
  const compressed = ['compressor', 'accumulator'].some((word) => nearWord(room, amount, word));
  if (
    compressed &&
    SWITCHES.endingAt(room.tokens, amount.from) &&
    value >= 2 &&
    value <= 200 &&
    !evidenceAfter(room, amount)
  )
    return {
      value,
      unit: value > 15 ? 'psi' : 'bar',
      dimension: 'pressure',
      why: 'where a compressor cuts in or out',
    };
  const bent = [1, 2, 3, 4].some(
    (back) =>
      room.tokens[amount.from - back]?.sentence === room.tokens[amount.from]?.sentence &&
      /^(?:bend|bends|elbow|elbows|mitre|mitres|miter|miters|bevel|bevels|crank)$/.test(
        wordAt(room, amount.from - back),
      ),
  );
  const bounded = /^(?:over|under|above|below|at|of|to|than)$/.test(wordAt(room, amount.from - 1));
  if (
    bent &&
    bounded &&
    ANGLES.has(value) &&
    !evidenceAfter(room, amount) &&
    /^(?:|[.,;!?]|and|or|so|but)$/.test(wordAt(room, amount.to))
  )
    return { value, unit: 'deg', dimension: 'angle', why: 'how far something is bent' };
  return undefined;
}

/** "Three fuses", "ten breakers" count. */
const isFewOf = (room: Room, amount: Amount): boolean =>
  /s$/.test(wordAt(room, amount.to)) && amount.value < 13;
