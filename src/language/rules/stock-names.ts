import { PLURAL_NUMBERS } from '../numbers/number-words.ts';
import { readNumber } from '../numbers/read-number.ts';
import { readUnit } from '../units/read-unit.ts';
import type { AmountRule, Room } from './rule.ts';
import { wordAt } from './rule.ts';

const SIZE_AFTER =
  /^(?:wide|high|long|deep|thick|tall|across|square|metres|meters|centimetres|overall|clear|each)$/;

interface Side {
  readonly value: number;
  readonly to: number;
  readonly plural: boolean;
}

function sideAt(room: Room, at: number): Side | undefined {
  const plural = PLURAL_NUMBERS.get(wordAt(room, at));
  if (plural) return { value: plural, to: at + 1, plural: true };
  const number = readNumber(room.tokens, at);
  if (!number || !Number.isInteger(number.value) || number.value < 1 || number.value > 12) return undefined;
  const tail = room.tokens[number.to];
  const glued = tail?.word === 's' && !tail.spaced;
  return { value: number.value, to: glued ? number.to + 1 : number.to, plural: glued };
}

/** "Six by six | by twelve foot": a piece of timber and how long it is. */
function isLengthBehind(room: Room, at: number): boolean {
  const length = /^(?:by|x|×)$/.test(wordAt(room, at)) ? readNumber(room.tokens, at + 1) : undefined;
  if (!length) return false;
  const unit = wordAt(room, length.to);
  return (
    (/^(?:foot|feet|ft)$/.test(unit) && length.value >= 8) ||
    (/^met(?:re|er)s?$/.test(unit) && length.value >= 2)
  );
}

/**
 * "two by fours", "four by two", "eight by four sheet", "2x6": names of timber and sheet, not sizes.
 * Both sides are whole, at most twelve and without a unit; a unit or a word of size makes it a size again.
 * Known gap: "the hatch is two by four" in feet, without the word.
 */
export const stockNames: AmountRule = {
  name: 'a name of timber or sheet',
  read(room, at) {
    const first = sideAt(room, at);
    if (!first || first.plural) return undefined;
    const joint = wordAt(room, first.to) === '-' ? first.to + 1 : first.to;
    if (!/^(?:by|be|x|×)$/.test(wordAt(room, joint))) return undefined;
    const second = sideAt(room, wordAt(room, joint + 1) === '-' ? joint + 2 : joint + 1);
    if (!second) return undefined;
    if (!second.plural && (readUnit(room.tokens, second.to) || SIZE_AFTER.test(wordAt(room, second.to))))
      return undefined;
    const isPiece = isLengthBehind(room, second.to);
    if (!isPiece && /^(?:by|be|x|×)$/.test(wordAt(room, second.to))) return undefined;
    if (wordAt(room, second.to) === 'point') return undefined;
    return { skip: { to: second.to, why: 'two small numbers without a unit name a timber or a sheet' } };
  },
};
