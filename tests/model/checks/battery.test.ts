import { expect, test } from 'vitest';
import { BATTERY } from '../../../src/model/checks/battery.ts';
import { holdsWhatLiesWithin, isMonotone } from '../../kit/check-properties.ts';
import { ran, resultOf } from '../../kit/given.ts';

test.each([
  // Source: https://usecalcpro.com/marine/marine-battery-calculator prints 155 Ah, 310 at half and 194 at 80 %.
  [undefined, 155],
  ['50 %', 310],
  ['80 %', 194],
])('1860 Wh at 12 V with %s usable take a bank of %d Ah', (share, bank) => {
  const inputs = { energy: '1860 Wh', voltage: '12 V', ...(share ? { 'usable share': share } : {}) };
  const worked = ran(BATTERY, inputs);
  expect(Math.abs(resultOf(worked, 'bank needed').mid - bank)).toBeLessThan(0.5);
  expect(resultOf(worked, 'charge').mid).toBe(155);
});

test('1200 Wh are 100 Ah at 12 V (E = V Q, from memory)', () => {
  expect(resultOf(ran(BATTERY, { energy: '1.2 kWh', voltage: '12 V' }), 'charge').mid).toBe(100);
});

test.each([
  ['320 Ah', 'holds', '155 Ah drawn, a bank of 310 Ah; 10 Ah left at worst'],
  ['200 Ah', 'broken', '155 Ah drawn, a bank of 310 Ah; 110 Ah short at worst'],
])('a bank of %s is %s', (bank, verdict, why) => {
  const inputs = { energy: '1860 Wh', voltage: '12 V', 'usable share': '50 %', bank };
  expect(ran(BATTERY, inputs)).toMatchObject({ verdict, why });
});

test.each([
  ['energy', '0 Wh'],
  ['voltage', '-12 V'],
  ['voltage', '120 kV'],
  ['usable share', '150 %'],
])('%s of %s is refused', (input, written) => {
  const worked = ran(BATTERY, { energy: '1860 Wh', voltage: '12 V', [input]: written });
  expect(worked).toMatchObject({ verdict: 'refused', why: expect.stringMatching(new RegExp(`^${input}: `)) });
});

test('no answer says that a bank is safe, and each says who decides', () => {
  const worked = ran(BATTERY, { energy: '1860 Wh', voltage: '12 V' });
  expect('notes' in worked && worked.notes).toContain(
    'arithmetic only; local code and a licensed person decide',
  );
});

test('the ranges hold every bank that the inputs allow', () => {
  const draws = {
    energy: { least: 100, most: 20_000 },
    voltage: { least: 11, most: 52 },
    'usable share': { least: 0.3, most: 1 },
    bank: { least: 50, most: 900 },
  };
  holdsWhatLiesWithin(BATTERY, draws, ['charge', 'bank needed', 'left of the bank']);
  isMonotone(BATTERY, draws, 'bank needed', { rises: ['energy'], falls: ['voltage', 'usable share'] });
});
