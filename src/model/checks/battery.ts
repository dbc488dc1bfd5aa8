import type { Check, Given, Worked } from './check.ts';
import { ARITHMETIC_ONLY } from './deferral.ts';
import { isAtLeast } from './noise.ts';
import { less, maybe, one, rangeOf } from './ranges.ts';
import { saidRange } from './said-range.ts';

/**
 * The bank that an energy takes at a voltage, with only a share of it drawn.
 * Formula: charge = energy / voltage; bank = charge / usable share. Source: E = V Q, from memory; the sum with both shares
 * as on https://usecalcpro.com/marine/marine-battery-calculator
 */
export const BATTERY: Check = {
  name: 'battery',
  says: 'amp hours that an energy takes at a voltage, and the bank for it where only a share is drawn',
  formula: 'charge = energy / voltage; bank = charge / usable share',
  source:
    "E = V Q; shares as on https://usecalcpro.com/marine/marine-battery-calculator are the person's to give",
  inputs: [
    { name: 'energy', kind: 'energy', says: 'energy drawn between charges' },
    { name: 'voltage', kind: 'voltage', says: 'nominal voltage of the bank' },
    {
      name: 'usable share',
      kind: 'ratio',
      says: 'share of the bank that is drawn, from its data sheet',
      optional: true,
      most: 1,
      unit: '%',
    },
    { name: 'bank', kind: 'charge', says: 'rated charge of the bank there is', optional: true },
  ],
  gives: 'bank needed',
  touches: ['lithium', 'lead acid'],
  run: batteryOf,
};

function batteryOf(given: Given): Worked {
  const { say } = given;
  const charge = rangeOf((energy, voltage) => energy / voltage, one(given, 'energy'), one(given, 'voltage'));
  const share = maybe(given, 'usable share');
  const needed = share ? rangeOf((drawn, part) => drawn / part, charge, share) : charge;
  const bank = maybe(given, 'bank');
  const left = bank && less(bank, needed);
  const told = `${saidRange(say, charge, 'charge', 'Ah')} drawn, a bank of ${saidRange(say, needed, 'charge', 'Ah')}`;
  const holds = left && isAtLeast(left.low, 0);
  const judged = left
    ? `; ${say(Math.abs(left.low), 'charge', 'Ah')} ${holds ? 'left' : 'short'} at worst`
    : '';
  return {
    verdict: left ? (holds ? 'holds' : 'broken') : 'told',
    why: `${told}${judged}`,
    results: [
      { name: 'charge', kind: 'charge', range: charge, unit: 'Ah' },
      { name: 'bank needed', kind: 'charge', range: needed, unit: 'Ah' },
      ...(left ? [{ name: 'left of the bank', kind: 'charge', range: left, unit: 'Ah' }] : []),
    ],
    notes: [
      share ? 'the usable share is as given' : 'no usable share was given: all of the bank is counted',
      'inverter and cable losses, age and cold are not counted',
      ARITHMETIC_ONLY,
    ],
  };
}
