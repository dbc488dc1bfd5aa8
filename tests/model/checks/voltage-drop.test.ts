import { expect, test } from 'vitest';
import { VOLTAGE_DROP } from '../../../src/model/checks/voltage-drop.ts';
import { CIRCULAR_MIL, gaugeArea, SAE_AREAS } from '../../../src/model/checks/wire-areas.ts';
import { holdsWhatLiesWithin, isMonotone } from '../../kit/check-properties.ts';
import { ran, resultOf } from '../../kit/given.ts';

const dropOf = (...of: Parameters<typeof ran>) => resultOf(ran(...of), 'drop').mid;

test('the ISO form: 10 A over 6.4 m there and back in 4 mm2 lose 0.2624 V', () => {
  // Formula published, number computed: http://www.energy-solutions.co.uk/voltdrop-calc.html
  expect(dropOf(VOLTAGE_DROP, { current: '10 A', length: '6.4 m', area: '4 mm2' })).toBeCloseTo(0.2624, 9);
});

test.each([
  // Gauges published, circular mils computed: http://hollandmarine.com/hmp-flipbook-2022/flipbook/inc/html/52.html
  ['3 %', 6271, '10 AWG (SAE)'],
  ['10 %', 1881, '16 AWG (SAE)'],
])('the US marine form: 10 A over 21 ft at 12 V and %s take %d circular mils, %s', (allowed, mils, gauge) => {
  const inputs = { current: '10 A', length: '21 ft', voltage: '12 V', allowed };
  const worked = ran(VOLTAGE_DROP, inputs, { form: 'us marine' });
  const least = resultOf(worked, 'least area in circular mils').mid / CIRCULAR_MIL;
  expect(Math.abs(least - mils)).toBeLessThan(1);
  expect(worked.why).toContain(`${gauge} is the first with that area`);
});

test('the plain areas would pick 12 AWG where the SAE areas pick 10', () => {
  // Source: https://sportsmensmarine.com/archives/1034 (6,271 circular mils: 12 AWG has 6,500, SAE 12 only 5,833).
  const inputs = { current: '10 A', length: '21 ft', voltage: '12 V', allowed: '3 %' };
  const at = (wire: string) => ran(VOLTAGE_DROP, inputs, { form: 'us marine', wire }).verdict;
  expect([at('12 AWG (plain)'), at('12 AWG (SAE)'), at('10 AWG (SAE)')]).toEqual([
    'holds',
    'broken',
    'holds',
  ]);
});

test('the US building form: 15 A over 100 ft one way in 6530 circular mils lose 5.93 V of 120', () => {
  // Published as 5.94 V and 4.95 %: https://calculators9.com/free-calculators/usa/general-utility-calculators/engineering-construction/voltage-drop-calculator-168
  const inputs = { current: '15 A', length: '100 ft', area: '6530 cmil', voltage: '120 V' };
  const worked = ran(VOLTAGE_DROP, inputs, { form: 'us building', 'length is': 'one way' });
  expect(Math.abs(resultOf(worked, 'drop').mid - 5.93)).toBeLessThan(0.02);
  expect(Math.abs(resultOf(worked, 'share of the voltage').mid * 100 - 4.94)).toBeLessThan(0.02);
});

test('the convention is counted and said: one way loses what twice the length does there and back', () => {
  const area = '4 mm2';
  const way = (length: string, is: string) =>
    ran(VOLTAGE_DROP, { current: '10 A', length, area }, { 'length is': is });
  const [oneWay, both] = [way('3.2 m', 'one way'), way('6.4 m', 'there and back')];
  expect(resultOf(oneWay, 'drop').mid).toBeCloseTo(resultOf(both, 'drop').mid, 12);
  expect('notes' in oneWay && oneWay.notes).toContain('length taken as one way');
  expect('notes' in both && both.notes).toContain('length taken as there and back');
});

test('each form says its constant', () => {
  const at = (form: string) => {
    const worked = ran(VOLTAGE_DROP, { current: '10 A', length: '6 m', area: '4 mm2' }, { form });
    return 'notes' in worked ? worked.notes[0] : '';
  };
  expect(at('iso')).toContain('0.0164');
  expect(at('us marine')).toContain('K = 10.75');
  expect(at('us building')).toContain('K = 12.9');
});

test('the US marine form loses 9 % more than the ISO one', () => {
  // Computed from the two published constants.
  const inputs = { current: '10 A', length: '6 m', area: '4 mm2' };
  const share = dropOf(VOLTAGE_DROP, inputs, { form: 'us marine' }) / dropOf(VOLTAGE_DROP, inputs);
  expect(share).toBeCloseTo(1.09, 2);
});

test('no answer says that a wire will do, and each says who decides', () => {
  for (const allowed of ['1 %', '50 %']) {
    const worked = ran(VOLTAGE_DROP, {
      current: '5 A',
      length: '6 m',
      area: '4 mm2',
      voltage: '12 V',
      allowed,
    });
    expect(worked.why).toMatch(/Arithmetic only; local code and a licensed person decide$/);
    expect(worked.why).not.toMatch(/\b(safe|ok|fine|will do|suitable|approved)\b/i);
  }
});

test.each([
  [{ current: '10 A', length: '6 m' }, 'not-run'],
  [{ current: '10 A', length: '6 m', voltage: '12 V' }, 'not-run'],
  [{ current: '0 A', length: '6 m', area: '4 mm2' }, 'refused'],
  [{ current: '10 A', length: '-6 m', area: '4 mm2' }, 'refused'],
  [{ current: '10 A', length: '6 m', area: '4 m2' }, 'refused'],
  [{ current: '10 A', length: '6 m', voltage: '12 V', allowed: '300 %' }, 'refused'],
])('%o is %s, with no number', (inputs, verdict) => {
  const worked = ran(VOLTAGE_DROP, inputs);
  expect(worked.verdict).toBe(verdict);
  expect(worked).not.toHaveProperty('results');
});

test.each([
  // Source: ASTM B258 formula as on bit1024.com and superglobalcalculator.com, areas in mm2.
  [0, 53.475121],
  [2, 33.630834],
  [4, 21.150639],
  [8, 8.365564],
  [10, 5.261155],
  [12, 3.308773],
  [14, 2.080908],
  [16, 1.308696],
  [18, 0.823047],
])('%d AWG has %d mm2', (awg, area) => {
  expect(gaugeArea(awg) * 1e6).toBeCloseTo(area, 5);
});

test('SAE areas are smaller than the plain ones, and grow', () => {
  const areas = SAE_AREAS.map(({ area }) => area);
  expect(areas).toEqual(areas.toSorted((left, right) => left - right));
  for (const { name, area } of SAE_AREAS) expect(area).toBeLessThan(gaugeArea(Number.parseInt(name, 10)));
});

test('feet and circular mils lose what metres and square millimetres lose', () => {
  // A circular mil is 0.0005067075 mm2: NIST SP 811 through the CRAN package NISTunits 1.0.1, to 6e-7.
  const metric = { current: '10 A', length: '6.4008 m', area: `${5000 * 0.0005067075} mm2` };
  const imperial = { current: '10 A', length: '21 ft', area: '5000 cmil' };
  const [left, right] = [metric, imperial].map((inputs) => dropOf(VOLTAGE_DROP, inputs)) as [number, number];
  expect(left / right).toBeCloseTo(1, 6);
});

test('the ranges hold every loss that the inputs allow; current and length raise it, copper lowers it', () => {
  const draws = {
    current: { least: 1, most: 200 },
    length: { least: 0.5, most: 60 },
    area: { least: 0.000001, most: 0.0001 },
    voltage: { least: 11, most: 250 },
    allowed: { least: 0.01, most: 0.1 },
  };
  holdsWhatLiesWithin(VOLTAGE_DROP, draws, ['drop', 'share of the voltage', 'least area']);
  isMonotone(VOLTAGE_DROP, draws, 'drop', { rises: ['current', 'length'], falls: ['area'] });
  isMonotone(VOLTAGE_DROP, draws, 'least area', {
    rises: ['current', 'length'],
    falls: ['voltage', 'allowed'],
  });
});
