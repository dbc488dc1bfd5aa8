import fc from 'fast-check';
import { expect, test } from 'vitest';
import { PANEL_THROUGH_OPENING } from '../../../src/model/checks/panel-through-opening.ts';
import { fitsInto, largest, type Rectangle } from '../../../src/model/checks/rectangles.ts';
import { runCheck } from '../../../src/model/checks/run-check.ts';
import { given, ran, resultOf, type Written } from '../../kit/given.ts';

const WETZEL =
  'Wetzel, Rectangles in Rectangles, Mathematics Magazine 73(3), 2000, DOI 10.2307/2691523, Carver 1957 therein';

const rectangle = (width: number, height: number): Rectangle => ({ width, height });

test.each([
  [
    9,
    4,
    8,
    6,
    false,
    `published: passes area, diagonal, perimeter and thickness and does not fit; ${WETZEL}`,
  ],
  [
    10,
    10,
    8,
    8,
    false,
    'published: https://newbetuts.com/190410-find-if-one-rectangle-can-fit-inside-the-other',
  ],
  [
    1220,
    18,
    1000,
    700,
    false,
    'computed, checked by a sweep of angles; its diagonal would say yes by 0.7 mm',
  ],
  [8, 6, 8, 6, true, 'as large as its opening'],
  [6, 8, 8, 6, true, 'a quarter turn'],
  [10.001, 0, 8, 6, false, 'a line beyond the diagonal'],
  [10, 0, 8, 6, true, 'a line as long as the diagonal'],
])('%d x %d into %d x %d: %s (%s)', (p, q, a, b, fits) => {
  expect(fitsInto(rectangle(p, q), rectangle(a, b))).toBe(fits);
});

test('9 x 4 fits into 8 x b for no b up to 8: the condition asks for 9.7876 (computed from Wetzel 2000)', () => {
  const sides = [1, 3.9, 4, 5, 6, 7, 7.9, 8];
  expect(sides.filter((b) => fitsInto(rectangle(9, 4), rectangle(8, b)))).toEqual([]);
  // Beyond 9 it goes in upright; the same opening with its sides named the other way about.
  expect([8.99, 9].map((b) => fitsInto(rectangle(9, 4), rectangle(8, b)))).toEqual([false, true]);
});

/** Whether a rectangle fits at one of many angles: turned, it takes p cos + q sin by p sin + q cos. */
function fitsAtSomeAngle(part: Rectangle, opening: Rectangle): boolean {
  const [p, q] = [part.width, part.height];
  for (let step = 0; step <= 9000; step++) {
    const angle = (step * Math.PI) / 18_000;
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    if (p * cos + q * sin <= opening.width && p * sin + q * cos <= opening.height) return true;
  }
  return false;
}

const side = fc.double({ min: 0.01, max: 3, noNaN: true });
const anyRectangle = fc.record({ width: side, height: side });

test('the condition agrees with a sweep of angles: never no where one fits, never yes where none does by a margin', () => {
  const seen = { yes: 0, no: 0, turned: 0 };
  fc.assert(
    fc.property(anyRectangle, anyRectangle, (part, opening) => {
      const fits = fitsInto(part, opening);
      // A hundredth of a degree apart, angles miss a fit by less than this.
      const wider = rectangle(opening.width + 0.001, opening.height + 0.001);
      if (fits) expect(fitsAtSomeAngle(part, wider)).toBe(true);
      else expect(fitsAtSomeAngle(part, opening)).toBe(false);
      seen[fits ? 'yes' : 'no']++;
    }),
    { numRuns: 1500, seed: 11 },
  );
  // Thin parts about as long as the opening's diagonal: the case for which the condition is there.
  fc.assert(
    fc.property(
      side,
      side,
      fc.double({ min: 0.001, max: 0.3, noNaN: true }),
      fc.double({ min: 0.8, max: 1.02, noNaN: true }),
      (a, b, thin, share) => {
        const [part, opening] = [rectangle(Math.hypot(a, b) * share, thin * Math.min(a, b)), rectangle(a, b)];
        const fits = fitsInto(part, opening);
        if (fits) expect(fitsAtSomeAngle(part, rectangle(a + 0.001, b + 0.001))).toBe(true);
        else expect(fitsAtSomeAngle(part, opening)).toBe(false);
        if (fits && part.width > Math.max(a, b)) seen.turned++;
      },
    ),
    { numRuns: 600, seed: 11 },
  );
  expect(Math.min(seen.yes, seen.no, seen.turned)).toBeGreaterThan(60);
});

test('a smaller part or a larger opening never turns yes into no', () => {
  const less = fc.double({ min: 0.5, max: 1, noNaN: true });
  fc.assert(
    fc.property(anyRectangle, anyRectangle, less, less, less, less, (part, opening, p, q, a, b) => {
      if (!fitsInto(part, opening)) return;
      expect(fitsInto(rectangle(part.width * p, part.height * q), opening)).toBe(true);
      expect(fitsInto(part, rectangle(opening.width / a, opening.height / b))).toBe(true);
    }),
    { numRuns: 1000, seed: 3 },
  );
});

test('halving finds the largest that passes, and nothing where nothing passes', () => {
  expect(largest((size) => size <= 0.7, 10)).toBeCloseTo(0.7, 7);
  expect(largest(() => true, 10)).toBe(10);
  expect(largest(() => false, 10)).toBeCloseTo(0, 7);
});

const sheet = (more: Readonly<Record<string, Written>> = {}) => ({
  'panel length': '2440 mm',
  'panel width': '1220 mm',
  thickness: '18 mm',
  'opening width': '1000 mm',
  'opening height': '700 mm',
  ...more,
});

test.each([
  ['12 mm', 1209.4],
  ['18 mm', 1203.8],
  ['25 mm', 1197.3],
])(
  'a sheet %s thick passes 1000 x 700 up to %d mm wide (computed by bisection on the condition)',
  (thickness, widest) => {
    const worked = ran(PANEL_THROUGH_OPENING, sheet({ thickness }));
    expect(worked.verdict).toBe('broken');
    expect(Math.abs(resultOf(worked, 'widest that passes').mid * 1000 - widest)).toBeLessThanOrEqual(0.1);
  },
);

test.each<[string, Readonly<Record<string, Written>>, 'holds' | 'broken', RegExp]>([
  [
    'as it is',
    {},
    'broken',
    /^it does not go through opening 1 \(1000 mm x 700 mm\); the widest that passes is 1203\.\d mm, 16\.\d mm less$/,
  ],
  [
    'cut to 1200',
    { 'panel width': '1200 mm' },
    'holds',
    /^it goes lengthways through opening 1 .*; the widest .* 3\.\d mm more$/,
  ],
  [
    'cut to 1200, with handles',
    { 'panel width': '1200 mm', fittings: ['30 mm', '10 mm'] },
    'broken',
    /less$/,
  ],
  ['cut to 1200, hands round it', { 'panel width': '1200 mm', gap: '30 mm' }, 'broken', /less$/],
  ['1200 or a little more', { 'panel width': '1200 mm ± 5 mm' }, 'broken', /1\.\d mm less$/],
  [
    'short enough to go sideways',
    { 'panel length': '650 mm', 'panel width': '1900 mm' },
    'holds',
    /^it goes sideways through opening 1 \(1000 mm x 700 mm\)$/,
  ],
  [
    'a thick box, flat ahead',
    { 'panel length': '900 mm', 'panel width': '600 mm', thickness: '3000 mm' },
    'holds',
    /^it goes face first/,
  ],
  [
    'wider than thick in no way',
    { thickness: '1300 mm' },
    'broken',
    /no width of this length and thickness does$/,
  ],
])('a sheet of 2440 x 1220 x 18, %s', (_how, more, verdict, why) => {
  const worked = ran(PANEL_THROUGH_OPENING, sheet(more));
  expect(worked.verdict).toBe(verdict);
  expect(worked.why).toMatch(why);
});

test('every opening on the way counts, and the one that it fails at is named', () => {
  const way = {
    'panel width': '1190 mm',
    'opening width': ['1000 mm', '760 mm', '2000 mm'],
    'opening height': ['700 mm', '600 mm', '1200 mm'],
  };
  const inputs = given(sheet(way));
  const labels = new Map([['opening width', ['companionway width', 'loft hatch width', '2000 mm']]]);
  expect(runCheck(PANEL_THROUGH_OPENING, { ...inputs, labels }).why).toMatch(
    /^it does not go through loft hatch \(760 mm x 600 mm\); the widest that passes is/,
  );
  expect(runCheck(PANEL_THROUGH_OPENING, inputs).why).toMatch(/^it does not go through opening 2 /);
  const wide = ran(PANEL_THROUGH_OPENING, sheet({ ...way, 'opening width': ['1000 mm', '1800 mm', '2 m'] }));
  expect(wide.why).toMatch(/^it goes lengthways through opening 1 .*, lengthways through opening 2 /);
});

test('openings without their heights are asked for', () => {
  expect(ran(PANEL_THROUGH_OPENING, sheet({ 'opening width': ['1 m', '2 m'] }))).toMatchObject({
    verdict: 'not-run',
    why: '2 for opening width and 1 for opening height: give as many of each',
  });
});

test('fittings add to the size that they stand on', () => {
  const on = (where: string) =>
    ran(
      PANEL_THROUGH_OPENING,
      {
        'panel length': '3 m',
        'panel width': '500 mm',
        thickness: '400 mm',
        'opening width': '540 mm',
        'opening height': '420 mm',
        fittings: '50 mm',
      },
      { 'fittings add to': where },
    ).verdict;
  // 20 mm are to spare in the thickness, 40 in the width, any in the length.
  expect(['thickness', 'width', 'length', 'all three'].map(on)).toEqual([
    'broken',
    'broken',
    'holds',
    'broken',
  ]);
});

test('the widest that passes does pass, and a millimetre more does not', () => {
  const size = (min: number, max: number) => fc.integer({ min, max }).map((mm) => `${mm} mm`);
  const panels = fc.record({
    'panel length': size(800, 3000),
    'panel width': size(100, 1500),
    thickness: size(3, 60),
    'opening width': size(400, 1200),
    'opening height': size(400, 1200),
    fittings: size(1, 60),
  });
  let found = 0;
  fc.assert(
    fc.property(panels, (inputs) => {
      const worked = ran(PANEL_THROUGH_OPENING, inputs);
      const widest = 'results' in worked ? worked.results[0]?.range.mid : undefined;
      if (widest === undefined) return;
      found++;
      const at = (metres: number) =>
        ran(PANEL_THROUGH_OPENING, { ...inputs, 'panel width': `${metres} m` }).verdict;
      expect(at(widest - 1e-6)).toBe('holds');
      expect(at(widest + 0.001)).toBe('broken');
    }),
    { numRuns: 80, seed: 5 },
  );
  expect(found).toBeGreaterThan(30);
});
