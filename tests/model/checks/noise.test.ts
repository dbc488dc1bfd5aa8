import { expect, test } from 'vitest';
import { BATTERY } from '../../../src/model/checks/battery.ts';
import { CURE_TIME } from '../../../src/model/checks/cure-time.ts';
import { isAtLeast } from '../../../src/model/checks/noise.ts';
import { countPieces } from '../../../src/model/checks/pieces-from-stock.ts';
import { exactRange } from '../../../src/model/checks/ranges.ts';
import { RUNNING_MASS } from '../../../src/model/checks/running-mass.ts';
import { ran } from '../../kit/given.ts';

test('what fits exactly fits, though floats leave a trace', () => {
  expect(0.562 - 0.558 - 0.004).not.toBe(0);
  expect(isAtLeast(0.562 - 0.558, 0.004)).toBe(true);
  expect(isAtLeast(0.562 - 0.5581, 0.004)).toBe(false);
});

test('a tenth and two tenths of a kilogram are three tenths', () => {
  expect(0.1 + 0.2).toBeGreaterThan(0.3);
  expect(ran(RUNNING_MASS, { part: ['0.1 kg', '0.2 kg'], limit: '0.3 kg' }).verdict).toBe('holds');
});

test('exactly the time and exactly the bank hold', () => {
  const third = exactRange(0.1 + 0.2);
  expect(ran(CURE_TIME, { time: third, elapsed: exactRange(0.3) }).verdict).toBe('holds');
  expect(ran(BATTERY, { energy: third, voltage: '1 V', bank: '0.3 Ah' }).verdict).toBe('holds');
});

test('stock that was worked out gives what stock that was said gives', () => {
  expect(countPieces(2.448 - 0.008, 0.608 - 0.00025, 0.003)).toBe(4);
});
