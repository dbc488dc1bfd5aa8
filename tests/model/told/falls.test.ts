/** Falls told as one in so many, in checks and formulas. */
import { expect, test } from 'vitest';
import { checkViews } from '../../../src/model/checks/check-views.ts';
import { isFall, shareOfFall, sharesOfFall } from '../../../src/model/falls.ts';
import { standingFigures } from '../../../src/model/project-views.ts';
import { figureHistory, figureTable } from '../../../src/reports/figure-table.ts';
import { findingLine } from '../../../src/reports/finding-text.ts';
import { ToldStory } from '../../kit/told-story.ts';

const asked = (fall: string) =>
  ({
    kind: 'check-added',
    check: 'fall over a run',
    inputs: [
      { input: 'run', expression: 'drain length' },
      { input: 'fall', expression: fall },
    ],
  }) as const;
const ratio = (item: string, value: number, unit = '1') =>
  ({ kind: 'figure-set', item, attribute: 'ratio', quantity: { value, unit } }) as const;

test.each(['drain fall ratio', '1/40', '40', '2.5 %'])('a fall over a run takes "%s"', (fall) => {
  const story = new ToldStory()
    .set('drain', 'length', 6, 'm')
    .hand(ratio('drain fall', 40))
    .hand(asked(fall));
  expect(checkViews(story.project.rows).map(({ why }) => why)).toEqual(['1 in 40 comes to 150 mm']);
});

test('a fall that was heard is reckoned with as a share', () => {
  const story = new ToldStory()
    .set('drain', 'length', 6, 'm')
    .hear('The fall of the drain is one in sixty.')
    .hand(asked('drain fall ratio'));
  expect(checkViews(story.project.rows).map(({ why }) => why)).toEqual(['1 in 60 comes to 100 mm']);
});

test('a fall that was heard is printed as it was said, before and after it changes', () => {
  const story = new ToldStory().hear('The fall of the drain is one in forty.');
  expect(figureTable(standingFigures(story.project.rows), 'metric')).toContain('1 in 40');
  story.hear('I changed the fall of the drain, it is one in sixty now.');
  const [figure] = standingFigures(story.project.rows);
  expect(figure && figureHistory(figure, 'metric')).toMatch(
    /^drain fall ratio: 1 in 60\n.*1 in 40.*superseded/s,
  );
  expect(story.findings().map(findingLine)).toEqual([expect.stringContaining('1 in 40 → 1 in 60')]);
});

test('a formula multiplies a run by the share', () => {
  const story = new ToldStory()
    .set('drain', 'length', 6000)
    .hand(ratio('drain fall', 40))
    .formula('drain drop', 'height', 'drain length * drain fall ratio');
  expect(story.figures('drain drop')).toEqual(['drain drop height 150 mm = drain length * drain fall ratio']);
});

test('a mix in a formula is left as it is', () => {
  const story = new ToldStory()
    .set('sand', 'weight', 30, 'kg')
    .hand(ratio('mortar mix', 3))
    .formula('lime', 'weight', 'sand weight / mortar mix ratio');
  expect(story.figures('lime')).toEqual(['lime weight 10 kg = sand weight / mortar mix ratio']);
});

test.each([
  ['drain fall', '1', true],
  ['shower tray slope', '1', true],
  ['access ramp', '1', true],
  ['mortar mix', '1', false],
  ['drain fall', '%', false],
])('a plain number of "%s" in %s is a fall: %s', (name, unit, fall) => {
  expect(isFall(name, { unit, attribute: 'ratio' })).toBe(fall);
});

test('a number above one is one in so many; at least so steep stays at least so steep', () => {
  expect([40, 1, 0.025].map(shareOfFall)).toEqual([0.025, 1, 0.025]);
  expect(sharesOfFall({ low: 40, mid: 50, high: 80 })).toEqual({ low: 0.0125, mid: 0.02, high: 0.025 });
});
