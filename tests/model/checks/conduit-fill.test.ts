import { expect, test } from 'vitest';
import { CONDUIT_FILL, fillLimit } from '../../../src/model/checks/conduit-fill.ts';
import { holdsWhatLiesWithin, isMonotone } from '../../kit/check-properties.ts';
import { ran, resultOf } from '../../kit/given.ts';

const NIPPLE = { piece: 'nipple up to 24 in' };

test.each([
  // Source: NEC chapter 9 table 1 and notes, https://expertce.com/learn-articles/nec-chapter-9-table-1-conduit-fill,
  // https://conduitbending.com/insights/conduit-fill-chart
  [1, false, 0.53],
  [2, false, 0.31],
  [3, false, 0.4],
  [9, false, 0.4],
  [2, true, 0.6],
])('%d cables (nipple: %s) may fill %d', (cables, isNipple, limit) => {
  expect(fillLimit(cables, isNipple)).toBe(limit);
});

test('two 8 mm cables in a 20 mm bore fill 32 %, over the 31 % for two', () => {
  // Computed: 2 x 64 / 400.
  const worked = ran(CONDUIT_FILL, { cable: ['8 mm', '8 mm'], bore: '20 mm' });
  expect(worked.verdict).toBe('broken');
  expect(resultOf(worked, 'fill').mid).toBeCloseTo(0.32, 12);
  expect(worked.why).toBe(
    '32 % filled by 2 cables, over the 31 % published for it. Arithmetic only; local code and a licensed person decide',
  );
});

test('a third cable of the same size may be within where two are not: the limit is another', () => {
  const at = (count: number) =>
    ran(CONDUIT_FILL, { cable: Array.from({ length: count }, () => '7.2 mm'), bore: '20 mm' }).verdict;
  expect([at(1), at(2), at(3), at(4)]).toEqual(['holds', 'holds', 'holds', 'broken']);
});

test('a nipple takes more', () => {
  const cable = ['8 mm', '8 mm', '8 mm', '8 mm'];
  // The default first: 64 %, over both limits; then 48 % of it.
  expect(ran(CONDUIT_FILL, { cable, bore: '20 mm' }, NIPPLE).verdict).toBe('broken');
  expect(ran(CONDUIT_FILL, { cable: cable.slice(1), bore: '20 mm' }, NIPPLE).verdict).toBe('holds');
  expect(ran(CONDUIT_FILL, { cable: cable.slice(1), bore: '20 mm' }).verdict).toBe('broken');
});

test('three areas of 0.0507 square inches are 0.1521', () => {
  // Source: http://43.201.36.122/electrical-design-calculations-needed-for-projects-pdf (arithmetic only).
  const cable = `${Math.sqrt((4 * 0.0507) / Math.PI)} in`;
  const worked = ran(CONDUIT_FILL, { cable: [cable, cable, cable], bore: '1 in' });
  expect(resultOf(worked, 'cable area').mid / 0.0254 ** 2).toBeCloseTo(0.1521, 9);
});

test.each([
  [{ cable: ['8 mm', '0 mm'], bore: '20 mm' }, 'cable 2: '],
  [{ cable: '8 mm', bore: '-20 mm' }, 'bore: '],
  [{ cable: '8 m', bore: '20 mm' }, 'cable: '],
])('%o is refused', (inputs, start) => {
  const worked = ran(CONDUIT_FILL, inputs);
  expect(worked.verdict).toBe('refused');
  expect(worked.why.startsWith(start)).toBe(true);
});

test('the range holds every fill that the sizes allow, and inches fill as millimetres do', () => {
  const draws = { cable: { least: 0.003, most: 0.03, times: 4 }, bore: { least: 0.015, most: 0.1 } };
  holdsWhatLiesWithin(CONDUIT_FILL, draws, ['fill']);
  isMonotone(CONDUIT_FILL, { ...draws, cable: { least: 0.003, most: 0.03 } }, 'fill', {
    rises: ['cable'],
    falls: ['bore'],
  });
  const [inches, millimetres] = [
    ran(CONDUIT_FILL, { cable: '0.25 in', bore: '0.75 in' }),
    ran(CONDUIT_FILL, { cable: '6.35 mm', bore: '19.05 mm' }),
  ].map((worked) => resultOf(worked, 'fill').mid);
  expect(inches).toBeCloseTo(millimetres ?? 0, 12);
});
