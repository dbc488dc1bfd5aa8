import { expect, test } from 'vitest';
import { PRODUCT_TEMPERATURE } from '../../../src/model/checks/product-temperature.ts';
import { rangeAbout } from '../../../src/model/checks/ranges.ts';
import { holdsWhatLiesWithin, isMonotone } from '../../kit/check-properties.ts';
import { ran } from '../../kit/given.ts';

test.each([
  ['8 degC', { least: '10 degC' }, 'broken'],
  ['10 degC', { least: '10 degC' }, 'holds'],
  ['48 degF', { least: '10 degC' }, 'broken'],
  ['32 degC', { least: '10 degC', most: '30 degC' }, 'broken'],
  ['20 degC', { least: '10 degC', most: '30 degC' }, 'holds'],
  ['20 degC', {}, 'not-run'],
])('%s with %o is %s', (temperature, bounds, verdict) => {
  expect(ran(PRODUCT_TEMPERATURE, { temperature, ...bounds }).verdict).toBe(verdict);
});

test('it is broken at the worst of what was said, and says by how much', () => {
  const worked = ran(PRODUCT_TEMPERATURE, { temperature: rangeAbout(284.15, 2), least: '10 degC' });
  expect(worked).toMatchObject({
    verdict: 'broken',
    why: expect.stringContaining('1 under the least of 283.2'),
  });
});

test('a temperature beyond anything is refused', () => {
  const worked = ran(PRODUCT_TEMPERATURE, { temperature: '-200 degC', least: '10 degC' });
  expect(worked).toMatchObject({ verdict: 'refused', why: expect.stringMatching(/^temperature: /) });
});

test('the ranges hold every distance that the inputs allow', () => {
  const draws = {
    temperature: { least: 270, most: 320 },
    least: { least: 275, most: 285 },
    most: { least: 295, most: 310 },
  };
  holdsWhatLiesWithin(PRODUCT_TEMPERATURE, draws, ['above the least', 'below the most']);
  isMonotone(PRODUCT_TEMPERATURE, draws, 'above the least', { rises: ['temperature'], falls: ['least'] });
  isMonotone(PRODUCT_TEMPERATURE, draws, 'below the most', { rises: ['most'], falls: ['temperature'] });
});
