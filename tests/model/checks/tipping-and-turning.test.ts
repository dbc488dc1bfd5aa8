/** Standing something up, carrying a rod round a corner, and turning a box about a pivot. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { ROD_ROUND_CORNER } from '../../../src/model/checks/rod-round-corner.ts';
import { STANDING_UP } from '../../../src/model/checks/standing-up.ts';
import { SWING_CLEARANCE } from '../../../src/model/checks/swing-clearance.ts';
import { ran, resultOf } from '../../kit/given.ts';

test('6 ft by 2.5 ft needs 6.5 ft (published: https://calculator.academy/ceiling-height-clearance-calculator/)', () => {
  const worked = ran(STANDING_UP, { height: '6 ft', depth: '2.5 ft', ceiling: '6.5 ft' });
  expect(resultOf(worked, 'diagonal').mid / 0.3048).toBeCloseTo(6.5, 9);
  // It needs all of it, and touches.
  expect(worked.verdict).toBe('holds');
  expect(ran(STANDING_UP, { height: '6 ft', depth: '2.5 ft', ceiling: '6.49 ft' }).verdict).toBe('broken');
});

test('under 96 in, 24 in deep, at most 92.95 in stands up (computed: the same formula turned round)', () => {
  const worked = ran(STANDING_UP, { depth: '24 in', ceiling: '96 in' });
  expect(worked.verdict).toBe('told');
  expect(Math.abs(resultOf(worked, 'tallest that stands up').mid / 0.0254 - 92.95)).toBeLessThanOrEqual(0.01);
});

test.each([
  [
    '2100 mm',
    '600 mm',
    '2200 mm',
    'holds',
    'its diagonal is 2184 mm: 16 mm left at worst; the tallest that stands up is 2116.6 mm',
  ],
  [
    '2150 mm',
    '600 mm',
    '2200 mm',
    'broken',
    'its diagonal is 2232.2 mm: 32.2 mm short at worst; the tallest that stands up is 2116.6 mm',
  ],
  [
    '2100 mm ± 20 mm',
    '600 mm',
    '2200 mm',
    'broken',
    'its diagonal is 2164.8 mm to 2203.3 mm: 3.3 mm short at worst (16 mm left as said); the tallest that stands up is 2116.6 mm',
  ],
])('%s tall, %s deep under %s: %s', (height, depth, ceiling, verdict, why) => {
  expect(ran(STANDING_UP, { height, depth, ceiling })).toMatchObject({ verdict, why });
});

test('what stands up has a diagonal at every angle below the ceiling: a dense sweep', () => {
  const size = fc.double({ min: 0.2, max: 3, noNaN: true });
  fc.assert(
    fc.property(size, size, size, (height, depth, ceiling) => {
      const worked = ran(STANDING_UP, {
        height: `${height} m`,
        depth: `${depth} m`,
        ceiling: `${ceiling} m`,
      });
      // Lying on its back it is turned up: a corner is at height x sin + depth x cos.
      let highest = 0;
      for (let step = 0; step <= 9000; step++) {
        const angle = (step * Math.PI) / 18_000;
        highest = Math.max(highest, height * Math.sin(angle) + depth * Math.cos(angle));
      }
      if (worked.verdict === 'holds') expect(highest).toBeLessThanOrEqual(ceiling + 1e-9);
      else expect(highest).toBeGreaterThan(ceiling - 1e-6);
    }),
    { numRuns: 100, seed: 2 },
  );
});

test('round a corner of 600 and 700 a rod goes up to 1836.7 mm (computed: the classic result)', () => {
  const worked = ran(ROD_ROUND_CORNER, { 'first passage': '600 mm', 'second passage': '700 mm' });
  expect(Math.abs(resultOf(worked, 'longest rod').mid * 1000 - 1836.7)).toBeLessThanOrEqual(0.1);
  expect(worked).toMatchObject({ verdict: 'told', notes: [expect.stringContaining('a bound only')] });
});

test.each([
  ['1800 mm', 'told', /may go, its own thickness decides$/],
  ['1900 mm', 'broken', /does not go round level$/],
  ['1850 mm ± 20 mm', 'told', /may go/],
])('a rod of %s round that corner is %s', (length, verdict, why) => {
  const worked = ran(ROD_ROUND_CORNER, { 'first passage': '600 mm', 'second passage': '700 mm', length });
  expect(worked.verdict).toBe(verdict);
  expect(worked.why).toMatch(why);
});

test('the bound for a rod is the shortest that touches both walls and the corner: a dense sweep', () => {
  const passage = fc.double({ min: 0.4, max: 3, noNaN: true });
  fc.assert(
    fc.property(passage, passage, (a, b) => {
      let shortest = Number.POSITIVE_INFINITY;
      for (let step = 1; step < 9000; step++) {
        const angle = (step * Math.PI) / 18_000;
        shortest = Math.min(shortest, a / Math.sin(angle) + b / Math.cos(angle));
      }
      const worked = ran(ROD_ROUND_CORNER, { 'first passage': `${a} m`, 'second passage': `${b} m` });
      const told = resultOf(worked, 'longest rod').mid;
      expect(told).toBeLessThanOrEqual(shortest + 1e-9);
      expect(shortest - told).toBeLessThan(1e-5);
    }),
    { numRuns: 60, seed: 2 },
  );
});

/** An engine cover hinged at its back edge, half a metre over the floor: 1 m long, 200 mm deep. */
const COVER = {
  'box length': '1 m',
  'box depth': '200 mm',
  'pivot from back': '0 mm',
  'pivot from bottom': '0 mm',
  'from angle': '0 deg',
  'to angle': '90 deg',
};

test.each([
  // Its far top corner is at sqrt(1 + 0.04) m, and comes by the top of its circle on the way up.
  ['0 deg', '90 deg', 'reach above', Math.hypot(1, 0.2)],
  ['0 deg', '70 deg', 'reach above', Math.sin((70 * Math.PI) / 180) + 0.2 * Math.cos((70 * Math.PI) / 180)],
  ['0 deg', '90 deg', 'reach ahead', 1],
  ['-30 deg', '90 deg', 'reach ahead', Math.hypot(1, 0.2)],
  ['0 deg', '90 deg', 'reach behind', 0.2],
  ['0 deg', '90 deg', 'reach below', 0],
  ['-90 deg', '0 deg', 'reach below', 1],
])('a cover that turns from %s to %s: its %s is %d m', (from, to, reach, metres) => {
  const worked = ran(SWING_CLEARANCE, { ...COVER, 'from angle': from, 'to angle': to });
  expect(worked.verdict).toBe('told');
  expect(resultOf(worked, reach).mid).toBeCloseTo(metres, 9);
});

test('the worst angle is within the swing and not only at its ends', () => {
  const low = { ...COVER, ceiling: '1.01 m' };
  // At both ends there is room, level 0.81 m and upright 0.01 m; in between its corner comes to 1.0198 m.
  expect(ran(SWING_CLEARANCE, low)).toMatchObject({
    verdict: 'broken',
    why: '9.8 mm short at worst to the ceiling, with the box at 78.7',
  });
  for (const angle of ['0 deg', '90 deg']) {
    expect(ran(SWING_CLEARANCE, { ...low, 'from angle': angle, 'to angle': angle }).verdict).toBe('holds');
  }
});

test.each([
  [
    { floor: '300 mm', 'from angle': '-10 deg' },
    'holds',
    '126.4 mm left at worst to the floor, with the box at -10',
  ],
  [
    { floor: '300 mm', 'from angle': '-20 deg' },
    'broken',
    '42 mm short at worst to the floor, with the box at -20',
  ],
  [
    { floor: '300 mm', 'from angle': '-10 deg', gap: '130 mm' },
    'broken',
    '3.6 mm short at worst to the floor, with the box at -10',
  ],
  [{ 'wall behind': '150 mm' }, 'broken', '50 mm short at worst to the wall behind, with the box at 90'],
  [
    { 'wall ahead': '1.1 m', 'wall behind': '150 mm' },
    'broken',
    '50 mm short at worst to the wall behind, with the box at 90',
  ],
])('a cover with %o %s', (more, verdict, why) => {
  expect(ran(SWING_CLEARANCE, { ...COVER, ...more })).toMatchObject({ verdict, why });
});

test('no corner at any angle of a dense sweep reaches beyond what the swing is told to, and one comes there', () => {
  const size = fc.double({ min: 0.1, max: 2, noNaN: true });
  const offset = fc.double({ min: -1, max: 2.5, noNaN: true });
  const angle = fc.double({ min: -360, max: 360, noNaN: true });
  fc.assert(
    fc.property(size, size, offset, offset, angle, angle, (length, depth, back, bottom, from, to) => {
      const worked = ran(SWING_CLEARANCE, {
        'box length': `${length} m`,
        'box depth': `${depth} m`,
        'pivot from back': { low: back, mid: back, high: back },
        'pivot from bottom': { low: bottom, mid: bottom, high: bottom },
        'from angle': { low: from, mid: from, high: from },
        'to angle': { low: to, mid: to, high: to },
      });
      const most = { 'reach ahead': -9, 'reach above': -9, 'reach behind': -9, 'reach below': -9 };
      const steps = 4000;
      for (let step = 0; step <= steps; step++) {
        const turned = ((from + ((to - from) * step) / steps) * Math.PI) / 180;
        for (const x of [-back, length - back]) {
          for (const y of [-bottom, depth - bottom]) {
            const ahead = x * Math.cos(turned) - y * Math.sin(turned);
            const above = x * Math.sin(turned) + y * Math.cos(turned);
            most['reach ahead'] = Math.max(most['reach ahead'], ahead);
            most['reach behind'] = Math.max(most['reach behind'], -ahead);
            most['reach above'] = Math.max(most['reach above'], above);
            most['reach below'] = Math.max(most['reach below'], -above);
          }
        }
      }
      for (const [reach, swept] of Object.entries(most)) {
        const told = resultOf(worked, reach).high;
        expect(swept, reach).toBeLessThanOrEqual(told + 1e-9);
        expect(told - swept, reach).toBeLessThan(1e-4);
      }
    }),
    { numRuns: 60, seed: 4 },
  );
});
