/** Stack-ups, heights over floors and clearances. */
import { expect, test } from 'vitest';
import { CLEARANCE } from '../../../src/model/checks/clearance.ts';
import { HEIGHT_OVER_FLOOR } from '../../../src/model/checks/height-over-floor.ts';
import { runCheck } from '../../../src/model/checks/run-check.ts';
import { STACK_UP } from '../../../src/model/checks/stack-up.ts';
import { given, ran, resultOf, type Written } from '../../kit/given.ts';

const METHODS =
  'Tolerance Stack Analysis Methods, December 1995, https://wixlib.com/document/6dda5_tolerance-stack-analysis-methods-university-of-washington.html';

test.each<[readonly string[], string, number, number, number, number, string]>([
  [
    Array.from({ length: 10 }, () => '10 mm ± 0.1 mm'),
    'mm',
    100,
    1,
    0.316,
    0.001,
    `published, a common textbook case; ${METHODS}`,
  ],
  [
    ['10 mm ± 0.2 mm', '10 mm ± 0.1 mm', '10 mm ± 0.15 mm'],
    'mm',
    30,
    0.45,
    0.269,
    0.001,
    'published, the same family of pages',
  ],
  [
    ['4.02 in ± 0.005 in', '-2 in ± 0.005 in', '-1.5 in ± 0.003 in', '-0.5 in ± 0.002 in'],
    'in',
    0.02,
    0.015,
    0.00794,
    0.00001,
    'published, ficientdesign.com/tolerance-stack-up-analysis',
  ],
  [
    ['40 mm ± 0.1 mm', '-25 mm ± 0.05 mm', '-2 mm ± 0.03 mm', '-10 mm ± 0.05 mm'],
    'mm',
    3,
    0.23,
    0.126095,
    0.00001,
    'nominal published at metricmech.com/articles/tolerance-stackup-worked-example, spreads computed',
  ],
])(
  '%o in %s: %d, ± %d at worst, ± %d by root-sum-square, within %d (%s)',
  (layers, unit, nominal, worst, likely, within) => {
    const worked = ran(STACK_UP, { layers });
    const scale = unit === 'in' ? 0.0254 : 0.001;
    const total = resultOf(worked, 'total');
    expect(total.mid / scale).toBeCloseTo(nominal, 9);
    expect((total.high - total.low) / 2 / scale).toBeCloseTo(worst, 9);
    const rss = resultOf(worked, 'total by root-sum-square');
    expect(Math.abs((rss.high - rss.low) / 2 / scale - likely)).toBeLessThanOrEqual(within);
    expect(rss.mid / scale).toBeCloseTo(nominal, 9);
  },
);

test.each<[Readonly<Record<string, Written>>, string, string]>([
  [{ layers: ['900 mm', '40 mm', '-3 mm'] }, 'told', '937 mm in all'],
  [
    { layers: ['900 mm ± 2 mm', '40 mm ± 1 mm'], limit: '942 mm' },
    'broken',
    '937 mm to 943 mm in all; 1 mm short at worst (2 mm left as said) to the limit',
  ],
  [
    { layers: ['900 mm ± 2 mm', '40 mm ± 1 mm'], opening: '943 mm' },
    'holds',
    '937 mm to 943 mm in all; 0 mm left at worst (3 mm left as said) to the opening',
  ],
  [
    { layers: ['600 mm'], limit: '650 mm', opening: '590 mm' },
    'broken',
    '600 mm in all; 10 mm short at worst to the opening',
  ],
])('a stack of %o is %s: %s', (inputs, verdict, why) => {
  expect(ran(STACK_UP, inputs)).toMatchObject({ verdict, why });
});

test('two parts have no statistics: root-sum-square is told from three on, and never held against anything', () => {
  const two = ran(STACK_UP, { layers: ['10 mm ± 1 mm', '10 mm ± 1 mm', '5 mm'] });
  expect('notes' in two && two.notes).toEqual([]);
  const three = ran(STACK_UP, { layers: ['10 mm ± 1 mm', '10 mm ± 1 mm', '5 mm ± 1 mm'], limit: '27 mm' });
  expect(three).toMatchObject({
    // By root-sum-square it would be 26.7 mm at most.
    verdict: 'broken',
    notes: ['root-sum-square, if the parts are independent of each other: 23.3 mm to 26.7 mm'],
  });
});

const FLOORING = 'https://woodweb.com/knowledge_base/Accomodating_Flooring_Thickness.html';
test.each([
  ['35 in base and 1 in top', { layers: ['35 in', '1 in'] }, 36, `published: ${FLOORING}`],
  [
    'a unit made to the old opening, a half-inch panel later',
    { layers: ['-0.5 in'] },
    -0.5,
    'published case: https://www.woodshopnews.com/columns-blogs/a-lesson-learned',
  ],
])('%s comes to %o: %d in (%s)', (_what, inputs, inches) => {
  expect(resultOf(ran(STACK_UP, inputs), 'total').mid / 0.0254).toBeCloseTo(inches, 9);
});

test(`36 in over the bare floor is 35 3/16 in once 13/16 in of hardwood is laid (computed from ${FLOORING})`, () => {
  const worked = ran(HEIGHT_OVER_FLOOR, { height: '36 in', layers: '0.8125 in' });
  expect(resultOf(worked, 'height over finished floor').mid / 0.0254).toBeCloseTo(35.1875, 9);
});

test.each<[Readonly<Record<string, Written>>, Readonly<Record<string, string>>, string, string]>([
  [
    { height: '915 mm', layers: ['12 mm', '3 mm'] },
    {},
    'told',
    '900 mm over the finished floor, 915 mm over the bare one',
  ],
  [
    { height: '900 mm', layers: '15 mm' },
    { 'taken over': 'finished floor' },
    'told',
    '900 mm over the finished floor, 915 mm over the bare one',
  ],
  [
    { height: '915 mm', layers: '15 mm ± 2 mm', least: '900 mm' },
    {},
    'broken',
    '898 mm to 902 mm over the finished floor, 915 mm over the bare one; 2 mm short at worst (0 mm left as said) over the least wanted',
  ],
  [
    { height: '915 mm', layers: '12 mm', least: '900 mm' },
    {},
    'holds',
    '903 mm over the finished floor, 915 mm over the bare one; 3 mm left at worst over the least wanted',
  ],
  [{ height: '20 mm', layers: '22 mm' }, {}, 'broken', 'the layers to come are as thick as the height'],
])('%o %o: %s, %s', (inputs, options, verdict, why) => {
  expect(ran(HEIGHT_OVER_FLOOR, inputs, options)).toMatchObject({ verdict, why });
});

test.each<[Readonly<Record<string, Written>>, Readonly<Record<string, string>>, string, string]>([
  [{ opening: '560 mm', part: '550 mm' }, {}, 'holds', '10 mm left at worst'],
  [{ opening: '560 mm', part: '560 mm' }, {}, 'holds', '0 mm left at worst'],
  [
    { opening: '560 mm ± 2 mm', part: '550 mm ± 1 mm', gap: '4 mm' },
    {},
    'broken',
    '1 mm short at worst (2 mm left as said)',
  ],
  [
    { opening: '560 mm ± 2 mm', part: '550 mm ± 1 mm', gap: '7 mm' },
    { 'gap on': 'one side' },
    'holds',
    '0 mm left at worst (3 mm left as said)',
  ],
  // A drawer slide a sixteenth too fat on each side: the gap is needed twice.
  [{ opening: '600 mm', part: '574.6 mm', gap: '14.3 mm' }, {}, 'broken', '3.2 mm short at worst'],
  [
    { opening: ['560 mm', '850 mm'], part: ['550 mm', '845 mm'], gap: '4 mm' },
    {},
    'broken',
    '3 mm short at worst at opening 2',
  ],
  [
    { opening: ['560 mm', '850 mm'], part: ['550 mm', '845 mm'], gap: ['4 mm', '1 mm'] },
    {},
    'holds',
    '2 mm left at worst at opening 1',
  ],
])('%o %o: %s, %s', (inputs, options, verdict, why) => {
  expect(ran(CLEARANCE, inputs, options)).toMatchObject({ verdict, why });
});

test('each direction is judged by itself and named by its figure', () => {
  const inputs = given({ opening: ['560 mm', '850 mm', '600 mm'], part: ['570 mm', '845 mm', '605 mm'] });
  const labels = new Map([['opening', ['bay width', 'bay height', 'bay depth']]]);
  const worked = runCheck(CLEARANCE, { ...inputs, labels });
  expect(worked.why).toBe('10 mm short at worst at bay width; 5 mm short at worst at bay depth');
  expect(resultOf(worked, 'room left').mid).toBeCloseTo(-0.01, 12);
  expect(resultOf(worked, 'room left 2').mid).toBeCloseTo(0.005, 12);
});

test.each<[Readonly<Record<string, Written>>, string]>([
  [{ opening: ['560 mm', '850 mm'], part: '550 mm' }, '2 for opening and 1 for part: give as many of each'],
  [
    { opening: ['1 m', '1 m', '1 m'], part: ['1 m', '1 m', '1 m'], gap: ['1 mm', '2 mm'] },
    '2 gaps for 3 directions: one, or one for each',
  ],
])('%o has not run: %s', (inputs, why) => {
  expect(ran(CLEARANCE, inputs)).toEqual({ verdict: 'not-run', why, missing: [] });
});

test.each(['0.001', '0.01', '0.05'])(
  'a wider opening, a smaller part, a smaller gap by %s m never break what holds',
  (step) => {
    const at = (opening: number, part: number, gap: number) =>
      ran(CLEARANCE, { opening: `${opening} m ± 1 mm`, part: `${part} m ± 1 mm`, gap: `${gap} m` })
        .verdict === 'holds';
    for (let opening = 0.5; opening < 0.62; opening += 0.007) {
      for (let gap = 0.001; gap < 0.02; gap += 0.003) {
        if (!at(opening, 0.55, gap)) continue;
        expect(at(opening + Number(step), 0.55, gap)).toBe(true);
        expect(at(opening, 0.55 - Number(step), gap)).toBe(true);
        expect(at(opening, 0.55, gap / 2)).toBe(true);
      }
    }
  },
);

test.each([
  [['18 mm', '-900 mm'], 'the layers come to -882 mm in all: more is taken off than there is'],
  [['18 mm', '-18 mm'], 'the layers come to 0 mm in all: more is taken off than there is'],
])('layers of %j go into no opening: they leave nothing', (layers, why) => {
  const worked = ran(STACK_UP, { layers, opening: '30 mm' });
  expect(worked).toMatchObject({ verdict: 'refused' });
  expect(worked.why).toBe(why);
  expect(worked).not.toHaveProperty('results');
});
