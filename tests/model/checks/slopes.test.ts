/** Slopes, tapers, falls, and frames that are square. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { DIAGONAL_FOR_SQUARE } from '../../../src/model/checks/diagonal-for-square.ts';
import { FALL_OVER_RUN } from '../../../src/model/checks/fall-over-run.ts';
import { RISE_AND_RUN } from '../../../src/model/checks/rise-and-run.ts';
import { SLOPE } from '../../../src/model/checks/slope.ts';
import { TAPER } from '../../../src/model/checks/taper.ts';
import { ran, resultOf } from '../../kit/given.ts';

const PITCHES = 'published: https://zenkankakufes.com/picts/412-roof-pitch-in-degrees.html';
test.each([
  [1, 4.76, 1.0035, PITCHES],
  [2, 9.46, 1.0138, PITCHES],
  [3, 14.04, 1.0308, PITCHES],
  [4, 18.43, 1.0541, PITCHES],
  [5, 22.62, 1.0833, PITCHES],
])('%d in 12 is %d degrees, slope factor %d (%s)', (rise, degrees, factor) => {
  const worked = ran(SLOPE, { rise: `${rise} in`, run: '12 in' });
  expect(Math.abs(resultOf(worked, 'angle').mid - degrees)).toBeLessThanOrEqual(0.01);
  expect(Math.abs(resultOf(worked, 'slope factor').mid - factor)).toBeLessThanOrEqual(0.0001);
});

test('7 in 12 is 30.25 degrees (published: roof pitch table at snippets.com)', () => {
  const worked = ran(SLOPE, { rise: '7 in', run: '12 in' });
  expect(Math.abs(resultOf(worked, 'angle').mid - 30.25)).toBeLessThanOrEqual(0.01);
});

const RAMP = 'published: https://learn.ssgcinc.com/lessons/4512be62-c6f1-4d1e-8147-7a671e25b972';
test(`a ramp of 24 in over 240 in is 10 %, steeper than 1 in 12 (${RAMP})`, () => {
  const worked = ran(SLOPE, { rise: '24 in', run: '240 in', steepest: `${1 / 12}` });
  expect(resultOf(worked, 'percent').mid).toBeCloseTo(0.1, 12);
  expect(worked).toMatchObject({ verdict: 'broken', why: '5.7, 1 in 10: steeper than 1 in 12' });
});

test.each([
  ['1 m', '12 m', 'holds', '4.8, 1 in 12: no steeper than 1 in 12'],
  ['1 m ± 10 mm', '12 m', 'broken', '4.7 to 4.8, 1 in 11.9 to 12.1: steeper than 1 in 12'],
])('%s over %s against 1 in 12: %s', (rise, run, verdict, why) => {
  expect(ran(SLOPE, { rise, run, steepest: `${1 / 12}` })).toMatchObject({ verdict, why });
});

test('rise and run, worked back from the angle and one of them, are the same again', () => {
  const size = fc.double({ min: 0.05, max: 9, noNaN: true });
  fc.assert(
    fc.property(size, size, (rise, run) => {
      const slope = ran(SLOPE, { rise: `${rise} m`, run: `${run} m` });
      const [angle, length] = [resultOf(slope, 'angle').mid, resultOf(slope, 'slope length').mid];
      for (const known of [{ run: `${run} m` }, { rise: `${rise} m` }, { 'slope length': `${length} m` }]) {
        const back = ran(RISE_AND_RUN, { angle: `${angle} deg`, ...known });
        if (back.verdict === 'refused') continue;
        expect(resultOf(back, 'rise').mid / rise).toBeCloseTo(1, 6);
        expect(resultOf(back, 'run').mid / run).toBeCloseTo(1, 6);
        expect(resultOf(back, 'slope length').mid / length).toBeCloseTo(1, 6);
      }
    }),
    { numRuns: 200, seed: 6 },
  );
});

test.each([
  [
    { angle: '30 deg', 'slope length': '2 m' },
    'told',
    'rises 1000 mm over 1732.1 mm, 2000 mm along the slope',
  ],
  [{ angle: '45 deg', run: '2 m' }, 'told', 'rises 2000 mm over 2000 mm, 2828.4 mm along the slope'],
  [{ angle: '90 deg', run: '2 m' }, 'refused', 'at 90 a run says nothing of the rise'],
  [
    { angle: '30 deg', run: '2 m', rise: '1 m' },
    'refused',
    'run and rise were both given: one of them and the angle are enough',
  ],
  [{ angle: '30 deg' }, 'not-run', 'missing: one of slope length, run, rise'],
  [
    { angle: '120 deg', run: '2 m' },
    'refused',
    'angle: 120 is more than the 90 that makes sense: 12, 1.2, or 0.1?',
  ],
])('%o: %s, %s', (inputs, verdict, why) => {
  expect(ran(RISE_AND_RUN, inputs)).toMatchObject({ verdict, why });
});

test.each([
  [{ 'large end': '60 mm', 'small end': '40 mm', length: '600 mm' }, {}, '1 on each side'],
  [{ 'large end': '60 mm', 'small end': '40 mm', length: '600 mm' }, { 'tapered on': 'one side' }, '1.9'],
  // A scribe strip that runs out to nothing.
  [
    { 'large end': '12 mm', 'small end': '0 mm', length: '1200 mm', at: '300 mm' },
    { 'tapered on': 'one side' },
    '0.6; 9 mm at 300 mm',
  ],
])('a taper of %o %o is %s', (inputs, options, why) => {
  expect(ran(TAPER, inputs, options)).toMatchObject({ verdict: 'told', why });
});

test.each([
  [
    { 'large end': '40 mm', 'small end': '60 mm', length: '600 mm' },
    'the small end is larger than the large end: the other way about?',
  ],
  [
    { 'large end': '60 mm', 'small end': '40 mm', length: '600 mm', at: '700 mm' },
    'that is beyond the small end',
  ],
  [
    { 'large end': '60 mm', 'small end': '-40 mm', length: '600 mm' },
    'small end: -40 mm is less than nothing: 40 mm?',
  ],
])('a taper of %o is refused: %s', (inputs, why) => {
  expect(ran(TAPER, inputs)).toEqual({ verdict: 'refused', why });
});

test.each([
  // 3, 4, 5; from memory, as everybody who sets out a corner has it.
  [{ length: '4 m', width: '3 m' }, 'told', 'square at 5000 mm'],
  [
    { length: '4 m', width: '3 m', 'first diagonal': '5 m' },
    'told',
    '0 mm out over the width, 0; square at 5000 mm',
  ],
  // Computed: (5.004^2 - 4.996^2) / (4 x 4) m.
  [
    { length: '4 m', width: '3 m', 'first diagonal': '5004 mm', 'second diagonal': '4996 mm' },
    'told',
    '5 mm out over the width, 0.1; square at 5000 mm',
  ],
  [
    {
      length: '4 m',
      width: '3 m',
      'first diagonal': '5004 mm',
      'second diagonal': '4996 mm',
      allowed: '3 mm',
    },
    'broken',
    '5 mm out over the width, 0.1; square at 5000 mm',
  ],
  [
    {
      length: '4 m',
      width: '3 m',
      'first diagonal': '5001 mm',
      'second diagonal': '4999 mm',
      allowed: '3 mm',
    },
    'holds',
    '1.3 mm out over the width, 0; square at 5000 mm',
  ],
  [
    { length: '4 m', width: '3 m', 'first diagonal': '7.5 m' },
    'refused',
    'these sides have no such diagonal: square at 5000 mm',
  ],
  [
    { length: '4 m', width: '3 m', allowed: '3 mm' },
    'not-run',
    'missing: first diagonal (a diagonal as measured)',
  ],
])('%o: %s, %s', (inputs, verdict, why) => {
  expect(ran(DIAGONAL_FOR_SQUARE, inputs)).toMatchObject({ verdict, why });
});

test('diagonals that belong to other sides are told apart', () => {
  const inputs = { length: '4 m', width: '3 m', 'first diagonal': '5304 mm', 'second diagonal': '5296 mm' };
  expect(ran(DIAGONAL_FOR_SQUARE, inputs)).toMatchObject({
    notes: ['the diagonals do not belong to these sides: those would have 5000 mm between them'],
  });
});

test('how far a frame is out of square comes back from its diagonals: made by leaning it', () => {
  const size = fc.double({ min: 0.4, max: 4, noNaN: true });
  const lean = fc.double({ min: -20, max: 20, noNaN: true });
  fc.assert(
    fc.property(size, size, lean, (length, width, degrees) => {
      const [across, along] = [Math.cos, Math.sin].map((of) => width * of((degrees * Math.PI) / 180)) as [
        number,
        number,
      ];
      const [first, second] = [Math.hypot(length + along, across), Math.hypot(length - along, across)];
      const exact = (value: number) => ({ low: value, mid: value, high: value });
      for (const more of [
        { 'first diagonal': exact(first), 'second diagonal': exact(second) },
        { 'first diagonal': exact(first) },
      ]) {
        const worked = ran(DIAGONAL_FOR_SQUARE, { length: exact(length), width: exact(width), ...more });
        expect(resultOf(worked, 'out of square angle').mid).toBeCloseTo(Math.abs(degrees), 5);
        expect(resultOf(worked, 'out of square').mid).toBeCloseTo(Math.abs(along), 7);
      }
    }),
    { numRuns: 200, seed: 8 },
  );
});

test.each([
  [{ run: '900 mm', fall: '2.5 %' }, 'told', '1 in 40 comes to 22.5 mm'],
  [
    { run: '900 mm', fall: '2.5 %', drop: '25 mm' },
    'holds',
    '1 in 40 comes to 22.5 mm; 2.5 mm left at worst',
  ],
  [
    { run: '900 mm', fall: '2.5 %', drop: '23 mm ± 1 mm' },
    'broken',
    '1 in 40 comes to 22.5 mm; 0.5 mm short at worst (0.5 mm left as said)',
  ],
])('a fall of %o: %s, %s', (inputs, verdict, why) => {
  expect(ran(FALL_OVER_RUN, inputs)).toMatchObject({ verdict, why });
});
