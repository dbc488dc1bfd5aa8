import { expect, test } from 'vitest';
import { LOAD_SUM } from '../../../src/model/checks/load-sum.ts';
import { runCheck } from '../../../src/model/checks/run-check.ts';
import { holdsWhatLiesWithin, isMonotone } from '../../kit/check-properties.ts';
import { given, ran, resultOf } from '../../kit/given.ts';

const LOADS = { load: ['45 W', '60 W', '20 W'], 'time on': ['24 h', '2 h', '30 min'] };

test('loads take power x time, the largest first by name', () => {
  const labels = new Map([['load', ['fridge', 'laptop', 'pump']]]);
  const worked = runCheck(LOAD_SUM, { ...given({ ...LOADS, supply: '1.5 kWh' }), labels });
  // Computed: 1080 + 120 + 10 Wh.
  expect(worked).toMatchObject({
    verdict: 'holds',
    why: '1210 of 1500: 290 left at worst; most: fridge 1080, laptop 120, pump 10',
  });
});

test('without a supply the sum is only told; with too little it is broken', () => {
  expect(ran(LOAD_SUM, LOADS).verdict).toBe('told');
  expect(ran(LOAD_SUM, { ...LOADS, supply: '1200 Wh' }).verdict).toBe('broken');
});

test('13 A at 230 V for an hour take 2990 Wh (P = V I, from memory)', () => {
  expect(resultOf(ran(LOAD_SUM, { load: '2990 W', 'time on': '1 h' }), 'energy').mid).toBe(2990);
});

test('a load without its time is refused, and nothing is summed', () => {
  const worked = ran(LOAD_SUM, { load: ['45 W', '60 W'], 'time on': ['24 h'] });
  expect(worked).toEqual({ verdict: 'refused', why: 'each load takes a time on: 2 loads, 1 of time on' });
});

test.each([
  [{ load: ['45 W', '0 W'], 'time on': ['24 h', '1 h'] }, 'load 2: '],
  [{ load: '-45 W', 'time on': '24 h' }, 'load: '],
  [{ load: '45 W', 'time on': '24000 d' }, 'time on: '],
])('%o is refused', (inputs, start) => {
  const worked = ran(LOAD_SUM, inputs);
  expect(worked.verdict).toBe('refused');
  expect(worked.why.startsWith(start)).toBe(true);
});

test('the ranges hold every energy that the loads allow', () => {
  const draws = {
    load: { least: 1, most: 3000, times: 4 },
    'time on': { least: 60, most: 86_400, times: 4 },
    supply: { least: 100, most: 50_000 },
  };
  holdsWhatLiesWithin(LOAD_SUM, draws, ['energy', 'left to the limit']);
  const single = { load: { least: 1, most: 3000 }, 'time on': { least: 60, most: 86_400 } };
  isMonotone(LOAD_SUM, single, 'energy', { rises: ['load', 'time on'] });
});
