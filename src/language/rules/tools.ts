import { readNumber } from '../numbers/read-number.ts';
import { readUnit } from '../units/read-unit.ts';
import type { AmountRule } from './rule.ts';
import { wordAt } from './rule.ts';

const TOOL = /^(?:spanner|spanners|wrench|wrenches|allen|chisel|chisels|gouge|gouges)$/;
const DRIVE = /^(?:drive|socket)$/;

/** "my 13 mil spanner", "a half inch chisel", "a three eighths drive": the size of a tool, no figure of the build. */
export const toolSizes: AmountRule = {
  name: 'the size of a tool',
  atNumber: true,
  read(room, at) {
    const number = readNumber(room.tokens, at, room.decimalComma);
    if (!number) return undefined;
    const unit = readUnit(room.tokens, number.to);
    const noun = unit?.to ?? number.to;
    const word = wordAt(room, noun);
    const driven = DRIVE.test(word) && number.fraction;
    if (!TOOL.test(word) && !driven) return undefined;
    // "three spanners" are counted.
    if (!unit && !number.fraction && number.value < 6) return undefined;
    return { skip: { to: noun + 1, why: 'the size of a tool' } };
  },
};
