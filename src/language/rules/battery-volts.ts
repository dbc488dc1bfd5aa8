import { readUnit } from '../units/read-unit.ts';
import { bareParts, isBatteryItself } from './feet-and-inches.ts';
import type { AmountRule, Room } from './rule.ts';
import { amountOf, tidy, wordAt } from './rule.ts';
import { SIZE_AFTER } from './size-words.ts';

const VOLTS = { key: 'V', dimension: 'voltage' } as const;
const READS = /^(?:'s|is|was|are|at|reads|reading|read|shows|showing|says|to|down|up|still)$/;

/** Banks of twelve, twenty-four and forty-eight volts, from flat to charging. Common practice, no source. */
const isOfABank = (volts: number) =>
  (volts >= 10 && volts < 16) || (volts >= 20 && volts < 31) || (volts >= 40 && volts < 61);

function saysBattery(room: Room, at: number): boolean {
  for (let index = at - 1; index >= at - 6; index--) {
    if (room.tokens[index]?.sentence !== room.tokens[at]?.sentence) return false;
    if (isBatteryItself(room, index)) return true;
  }
  return false;
}

/** "The battery's reading thirteen two", "batteries are at twelve six": volts and tenths without the point. */
export const batteryVolts: AmountRule = {
  name: '<volts> <tenths>',
  read(room, at) {
    if (!READS.test(wordAt(room, at - 1)) || !saysBattery(room, at)) return undefined;
    const parts = bareParts(room, at);
    if (!parts || !Number.isInteger(parts.inches) || parts.inches < 1 || parts.inches > 9) return undefined;
    if (!isOfABank(parts.feet) || readUnit(room.tokens, parts.to)) return undefined;
    if (SIZE_AFTER.startingAt(room.tokens, parts.to)) return undefined;
    const value = tidy(parts.feet + parts.inches / 10);
    const number = { from: at, to: parts.to, value, form: 'words' as const, decimals: 1 };
    return { amount: amountOf(this.name, number, { from: at, to: parts.to }, value, VOLTS) };
  },
};
