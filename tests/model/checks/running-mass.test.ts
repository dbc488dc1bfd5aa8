import { expect, test } from 'vitest';
import { exactRange, rangeAbout } from '../../../src/model/checks/ranges.ts';
import { runCheck } from '../../../src/model/checks/run-check.ts';
import { RUNNING_MASS } from '../../../src/model/checks/running-mass.ts';
import { holdsWhatLiesWithin, isMonotone } from '../../kit/check-properties.ts';
import { given, ran, resultOf } from '../../kit/given.ts';

const PARTS = ['120 kg', '80 kg', '22 kg', '60 kg'];

test('parts are summed and held against the limit, with how much is left', () => {
  expect(ran(RUNNING_MASS, { part: PARTS, limit: '400 kg' })).toMatchObject({
    verdict: 'holds',
    why: '282 of 400: 118 left at worst; heaviest: part 1 120, part 2 80, part 4 60',
  });
});

test('without a limit the sum is only told', () => {
  const worked = ran(RUNNING_MASS, { part: PARTS });
  expect(worked.verdict).toBe('told');
  expect(resultOf(worked, 'mass')).toEqual(exactRange(282));
  expect(() => resultOf(worked, 'left to the limit')).toThrow();
});

test('it is broken when only the worst of the ranges goes over, and both are said', () => {
  const worked = ran(RUNNING_MASS, { part: [rangeAbout(390, 15)], limit: '400 kg' });
  expect(worked.verdict).toBe('broken');
  expect(worked.why).toMatch(/^375 to 405 of 400: 5 over at worst, 10 left as said; /);
});

test('exactly the limit holds', () => {
  expect(ran(RUNNING_MASS, { part: ['250 kg', '150 kg'], limit: '400 kg' }).verdict).toBe('holds');
});

test('the heaviest are named, those of one name together', () => {
  const labels = new Map([['part', ['sheet', 'stove', 'sheet', 'sink']]]);
  const worked = runCheck(RUNNING_MASS, {
    ...given({ part: ['40 kg', '70 kg', '35 kg', '9 kg'] }),
    labels,
  });
  expect(worked.why).toBe('154 in all; heaviest: sheet 75, stove 70, sink 9');
  expect(resultOf(worked, 'heaviest: sheet').mid).toBe(75);
});

test('pounds and kilograms come to the same', () => {
  const [pounds, kilograms] = [
    ran(RUNNING_MASS, { part: ['100 lb', '2000 lb'] }),
    ran(RUNNING_MASS, { part: ['45.359237 kg', '907.18474 kg'] }),
  ].map((worked) => resultOf(worked, 'mass').mid);
  // Short ton 907.18474 kg: https://quicksilvertranslate.com/821/differencebetweentheusandukton/
  expect(pounds).toBeCloseTo(kilograms ?? 0, 9);
});

test.each(['0 kg', '-5 kg', '90000 kg'])('a part of %s is refused and nothing is summed', (part) => {
  const worked = ran(RUNNING_MASS, { part: ['40 kg', part] });
  expect(worked).toMatchObject({ verdict: 'refused', why: expect.stringMatching(/^part 2: /) });
  expect(worked).not.toHaveProperty('results');
});

test('the range holds every sum that the parts allow; parts add and a limit leaves more', () => {
  const draws = { part: { least: 1, most: 300, times: 5 }, limit: { least: 300, most: 900 } };
  holdsWhatLiesWithin(RUNNING_MASS, draws, ['mass', 'left to the limit']);
  isMonotone(RUNNING_MASS, { ...draws, part: { least: 1, most: 300 } }, 'left to the limit', {
    rises: ['limit'],
    falls: ['part'],
  });
});
