import { expect, test } from 'vitest';
import { type FigureBranch, figureAround } from '../../src/model/figure-around.ts';
import { ToldStory } from '../kit/told-story.ts';

const place = (item: string, attribute: 'height' | 'length' | 'width') =>
  ({ item, attribute, dimension: 'length' }) as const;

/** `legs length (seat height (stool height))`: a tree in one line. */
const inLine = (branches: readonly FigureBranch[]): string =>
  branches
    .map(
      ({ figure, next }) =>
        `${figure.item} ${figure.attribute}${next.length > 0 ? ` (${inLine(next)})` : ''}`,
    )
    .join(', ');

const bench = () =>
  new ToldStory()
    .set('bench top', 'height', 900)
    .set('bench top', 'length', 1800)
    .formula('legs', 'length', 'bench top height - 38 mm')
    .formula('rail', 'height', 'legs length - 120 mm')
    .formula('apron', 'length', 'bench top length - 2 * rail height');

test('a figure stands between what it comes of and what hangs on it, as deep as they go', () => {
  const { rows } = bench().project;
  const legs = figureAround(rows, place('legs', 'length'));
  expect(legs?.figure).toMatchObject({
    item: 'legs',
    value: 862,
    unit: 'mm',
    formula: 'bench top height - 38 mm',
  });
  expect(inLine(legs?.from ?? [])).toBe('bench top height');
  expect(inLine(legs?.onIt ?? [])).toBe('rail height (apron length)');
  const apron = figureAround(rows, place('apron', 'length'));
  expect(inLine(apron?.from ?? [])).toBe('bench top length, rail height (legs length (bench top height))');
  expect(apron?.onIt).toEqual([]);
});

test('what two ways lead to is followed once', () => {
  const story = bench().formula('brace', 'length', 'legs length + rail height');
  const brace = figureAround(story.project.rows, place('brace', 'length'));
  expect(inLine(brace?.from ?? [])).toBe('legs length (bench top height), rail height');
});

test('five steps are shown, and the sixth is opened from the fifth', () => {
  const story = new ToldStory().set('post 1', 'height', 1000);
  for (let k = 2; k <= 8; k++) story.formula(`post ${k}`, 'height', `post ${k - 1} height + 10 mm`);
  const first = figureAround(story.project.rows, place('post 1', 'height'));
  expect(inLine(first?.onIt ?? [])).toBe(
    'post 2 height (post 3 height (post 4 height (post 5 height (post 6 height))))',
  );
});

test('the checks that read it are there, and no others', () => {
  const story = new ToldStory().hear(
    'The north wall is 3000 long and 2400 high, the diagonal is 3842. The shelf is 900 long.',
  );
  const { rows } = story.project;
  const wall = figureAround(rows, place('north wall', 'length'));
  const shelf = figureAround(rows, place('shelf', 'length'));
  expect(wall?.figure.value).toBe(3000);
  expect(shelf?.checks).toEqual([]);
});

test('a figure that does not stand is not there: another thing, another measure, another kind of quantity', () => {
  const { rows } = bench().project;
  expect(figureAround(rows, place('bench', 'height'))).toBeUndefined();
  expect(figureAround(rows, place('legs', 'width'))).toBeUndefined();
  expect(figureAround(rows, { ...place('legs', 'length'), dimension: 'mass' })).toBeUndefined();
});
