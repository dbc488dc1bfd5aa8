import { expect, test } from 'vitest';
import { standingFigures } from '../../../src/model/project-views.ts';
import type { StandingFigure } from '../../../src/model/views.ts';
import { figureHistory } from '../../../src/reports/figure-table.ts';
import { ToldStory } from '../../kit/told-story.ts';

test('a formula set by hand waits for a figure that nobody said yet', () => {
  const story = new ToldStory().formula('bench top', 'length', 'room length - 1700 mm');
  expect(story.found(story.open())).toEqual(['not-run: bench top length 0  -> 0 ']);
  expect(story.open()[0]?.why).toBe('it waits for figures that were never said: room length');
  story.hear('The room is 4100 millimetres long.');
  expect(story.open()).toEqual([]);
  expect(story.figures('bench top')).toEqual(['bench top length 2400 mm = room length - 1700 mm']);
  story.hear('I measured again, the room is 4050 millimetres long.');
  expect(story.found(story.open())).toEqual(['stale: bench top length 2400 mm -> 2350 mm']);
});

test.each([
  ['at once', [], 'shelf height', 'shelf height + 20 mm', ['shelf height', 'shelf height']],
  [
    'through another',
    [['rail', 'shelf height + 20 mm']],
    'shelf height',
    'rail height - 20 mm',
    ['shelf height', 'rail height', 'shelf height'],
  ],
  [
    'through two others',
    [
      ['rail', 'shelf height + 20 mm'],
      ['lamp', 'rail height + 300 mm'],
    ],
    'shelf height',
    'lamp height - 320 mm',
    ['shelf height', 'lamp height', 'rail height', 'shelf height'],
  ],
] as const)('a circle of formulas, %s, is found and its way shown', (_name, before, _target, circle, way) => {
  const story = new ToldStory().set('shelf', 'height', 1200);
  for (const [item, formula] of before) story.formula(item, 'height', formula);
  const stood = story.figures();
  story.formula('shelf', 'height', circle);
  expect(story.open()).toMatchObject([
    { kind: 'cycle', why: `it would follow from itself: ${way.join(', which follows from ')}` },
  ]);
  expect(story.figures()).toEqual(stood);
});

test.each([
  ['bench height + bench weight', 'length and mass do not add'],
  ['bench weight', 'gives a quantity of mass, and height is none'],
  ['bench height * bench height', 'gives a quantity of area, and height is none'],
])('"%s" mixes kinds: a unit clash, and the figure stays', (formula, why) => {
  const story = new ToldStory()
    .set('bench', 'height', 900)
    .set('bench', 'weight', 40, 'kg')
    .set('shelf', 'height', 1200)
    .formula('shelf', 'height', formula);
  expect(story.open()).toMatchObject([
    { kind: 'unit-clash', item: 'shelf', was: { value: 1200, unit: 'mm' } },
  ]);
  expect(story.open()[0]?.why).toContain(why);
  expect(story.figures('shelf')).toEqual(['shelf height 1200 mm']);
});

test.each([
  ['furlong', '"furlong" is no unit that is known'],
  ['kg', 'kg is a unit of mass, and height is none'],
])('a height set in %s is a unit clash, and what stood stands', (unit, why) => {
  const story = new ToldStory().set('bench', 'height', 900).set('bench', 'height', 3, unit);
  expect(story.open()).toMatchObject([{ kind: 'unit-clash', item: 'bench', why }]);
  expect(story.figures()).toEqual(['bench height 900 mm']);
});

test('a division by nought does not run', () => {
  const story = new ToldStory().set('shelf', 'height', 1200).formula('shelf', 'height', '1200 mm / 0');
  expect(story.open()).toMatchObject([{ kind: 'not-run', was: { value: 1200 } }]);
  expect(story.figures()).toEqual(['shelf height 1200 mm']);
});

test('another formula settles what was wrong with the one before it', () => {
  const story = new ToldStory()
    .set('bench', 'height', 900)
    .set('shelf', 'height', 1200)
    .formula('shelf', 'height', 'shelf height * 2')
    .formula('shelf', 'height', 'bench height + 350 mm');
  expect(story.open()).toEqual([]);
  expect(story.figures('shelf')).toEqual(['shelf height 1250 mm = bench height + 350 mm']);
});

test('tolerances go through a formula: the worst case, and root-sum-square for three parts or more', () => {
  const story = new ToldStory().hear(
    'The side is 40 millimetres wide give or take 0.2 millimetres. The core is 25 millimetres wide give or take 0.1 millimetres. The lip is 10 millimetres wide give or take 0.15 millimetres.',
  );
  story.formula('pack', 'width', 'side width + core width');
  // Source: "RSS method tolerance analysis", 0.20, 0.10 and 0.15 give 0.45 and 0.269; see tests/outside/check-values.jsonl.
  story.formula('stack', 'width', 'side width + core width + lip width');
  const toleranceOf = (item: string) => standingFigures(story.project.rows, item)[0]?.tolerance;
  expect(toleranceOf('pack')).toEqual({ value: expect.closeTo(0.3, 9), unit: 'mm', from: 'formula' });
  expect(toleranceOf('stack')).toEqual({
    value: expect.closeTo(0.45, 9),
    unit: 'mm',
    from: 'formula',
    rootSumSquare: expect.closeTo(0.269, 3),
  });
});

test('a worst case names the parts that it leaves out', () => {
  const story = new ToldStory()
    .hear('The side is 40 millimetres wide give or take 0.2 millimetres.')
    .set('core', 'width', 1905)
    .set('lip', 'width', 10)
    .formula('stack', 'width', 'side width + core width + lip width');
  const figure = () => standingFigures(story.project.rows, 'stack')[0];
  expect(figure()?.tolerance?.leftOut).toEqual(['core width', 'lip width']);
  const lines = figureHistory(figure() as StandingFigure, 'metric');
  expect(lines).toContain(
    '  tolerance 0.2 mm (worst case)\n            without core width, lip width: no tolerance was stated for them\n',
  );
  // Told later, it counts from then on, though the size is the same.
  story.hear('The core is 1905 millimetres wide give or take 3 millimetres.');
  expect(figure()?.tolerance?.value).toBeCloseTo(3.2, 9);
  expect(figure()?.tolerance?.leftOut).toEqual(['lip width']);
});

test('how finely a figure was said is no tolerance of its part', () => {
  const story = new ToldStory().set('side', 'width', 40).formula('pack', 'width', 'side width * 2');
  expect(standingFigures(story.project.rows, 'pack')[0]?.tolerance).toBeUndefined();
});

test('a check in a formula waits for its figures, comes out, and is worked out anew when one changes', () => {
  const story = new ToldStory().formula('ramp', 'length', 'diagonal(ramp height; ramp width)');
  expect(story.open()[0]?.why).toBe('it waits for figures that were never said: ramp height, ramp width');
  story.set('ramp', 'height', 300).set('ramp', 'width', 400);
  expect(story.open()).toEqual([]);
  expect(story.figures('ramp')).toContain('ramp length 500 mm = diagonal(ramp height; ramp width)');
  story.set('ramp', 'height', 560, 'mm');
  expect(story.figures('ramp').join()).toMatch(/ramp length 688\.\d+ mm = diagonal/);
});

test.each([
  [
    'diagonal(bench height; bench weight)',
    'unit-clash',
    'width of diagonal for square is a quantity of length, and a quantity of mass is none',
  ],
  ['slope(bench height; shelf depth)', 'unit-clash', 'gives a quantity of angle, and height is none'],
  ['diagonal(bench height)', 'not-run', 'diagonal for square: missing: width (the side next to it)'],
  [
    'hypotenuse(bench height; shelf depth)',
    'not-run',
    'is no formula: "hypotenuse" is no check that gives a number',
  ],
  ['diagonal(bench height; bench height - 900 mm)', 'not-run', 'width: 0 mm is nothing: give its size'],
] as const)('"%s" gives no height: %s, and the figure stays', (formula, kind, why) => {
  const story = new ToldStory()
    .set('bench', 'height', 900)
    .set('bench', 'weight', 40, 'kg')
    .set('shelf', 'depth', 300)
    .set('shelf', 'height', 1200)
    .formula('shelf', 'height', formula);
  expect(story.open()).toMatchObject([{ kind, item: 'shelf', was: { value: 1200, unit: 'mm' } }]);
  expect(story.open()[0]?.why).toContain(why);
  expect(story.figures('shelf')).toContain('shelf height 1200 mm');
});

test('a check in a formula that no longer works out is a finding, settled when it does again', () => {
  const story = new ToldStory()
    .set('cupboard', 'depth', 600)
    .set('loft', 'height', 2200)
    .formula('cupboard', 'height', 'tallest that stands up(cupboard depth; loft height)');
  expect(story.figures('cupboard').join()).toMatch(/cupboard height 2116\.6\d* mm/);
  story.set('loft', 'height', 220_000);
  expect(story.open().map(({ kind }) => kind)).toContain('not-run');
  story.set('loft', 'height', 2200);
  expect(story.open().filter(({ kind }) => kind === 'not-run')).toEqual([]);
});

test('a circle through a check is found', () => {
  const story = new ToldStory()
    .set('ramp', 'height', 300)
    .set('ramp', 'width', 400)
    .formula('ramp', 'length', 'diagonal(ramp height; ramp width)')
    .formula('ramp', 'width', 'rod round corner(ramp length; ramp height)');
  expect(story.open()).toMatchObject([{ kind: 'cycle' }]);
});

test('a name alone in a check is what its input is of, whatever the result is of', () => {
  const story = new ToldStory().formula('roof', 'angle', 'slope(ridge rise; rafter run)');
  expect(story.open()[0]?.why).toBe(
    'it waits for figures that were never said: ridge rise length, rafter run length',
  );
  story.set('ridge rise', 'length', 1500).set('rafter run', 'length', 1500);
  expect(story.figures('roof')).toEqual(['roof angle 45 deg = slope(ridge rise length; rafter run length)']);
});

test('a thing with several sizes goes into a check by the one that the input names', () => {
  const story = new ToldStory()
    .set('cupboard', 'height', 2100)
    .set('cupboard', 'depth', 600)
    .set('loft', 'height', 2200)
    .formula('lining', 'height', 'tallest that stands up(cupboard; loft)');
  expect(story.figures('lining').join()).toMatch(/= tallest that stands up\(cupboard depth; loft height\)$/);
});
