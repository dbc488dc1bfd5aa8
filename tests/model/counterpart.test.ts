/** Which figure of a thing an arriving one is held against: the one that agrees, the old value, the other side, or none. */
import { describe, expect, test } from 'vitest';
import type { FigureNote } from '../../src/language/notes.ts';
import { standingFigures } from '../../src/model/project-views.ts';
import { figure, NotedStory, type NoteToTell } from '../kit/noted-story.ts';

type Attribute = FigureNote['attribute'];
const door = (attribute: Attribute, value: number, more: Partial<FigureNote> = {}) =>
  figure('door', attribute, value, more);
const size = (value: number, quote: string) => door('size', value, { quote });
const pair = (a: number, b: number) => [size(a, `${a}`), size(b, `${b}`)];
/** A pair is said as "610 by 1830". */
const said = (notes: readonly NoteToTell[]) =>
  notes.length === 2 && notes.every(({ quote }) => quote)
    ? `It is ${notes.map(({ quote }) => quote).join(' by ')}.`
    : 'It is so.';
const stands = (...memos: readonly (readonly NoteToTell[])[]) =>
  standingFigures(
    memos.reduce((told, notes) => told.memo(said(notes), ...notes), new NotedStory()).project.rows,
  )
    .map(
      ({ attribute, value, unit, history }) =>
        `${attribute} ${value} ${unit}${history.length > 1 ? ` of ${history.length}` : ''}`,
    )
    .sort();

/** What is said last stands, by the name that it was said by. */
describe('two figures of one measure are one', () => {
  test.each([
    ['of one attribute', [[door('width', 700)], [door('width', 720)]], ['width 720 mm of 2']],
    ['of width and diameter', [[door('width', 700)], [door('diameter', 720)]], ['diameter 720 mm of 2']],
    ['of clearance and gap', [[door('clearance', 10)], [door('gap', 11)]], ['clearance 10 mm of 2']],
    [
      'not of width and height',
      [[door('width', 700)], [door('height', 720)]],
      ['height 720 mm', 'width 700 mm'],
    ],
    ['not of gap and width', [[door('gap', 10)], [door('width', 11)]], ['gap 10 mm', 'width 11 mm']],
    [
      'a size without a side is the only one there is',
      [[door('width', 700)], [door('size', 720)]],
      ['size 720 mm of 2'],
    ],
    ['and the other way round', [[door('size', 700)], [door('width', 720)]], ['width 720 mm of 2']],
    [
      'of two it is none of them',
      [[door('width', 700), door('height', 1900)], [door('size', 1200)]],
      ['height 1900 mm', 'size 1200 mm', 'width 700 mm'],
    ],
    [
      'a side that was only guessed is the only size of about that',
      [[door('width', 200)], [door('height', 200.4, { assumed: ['attribute'] })]],
      ['width 200 mm of 2'],
    ],
    [
      'one that was told is another',
      [[door('width', 200)], [door('height', 200.4)]],
      ['height 200.4 mm', 'width 200 mm'],
    ],
    [
      'not of more than a quarter more',
      [[door('width', 200)], [door('height', 270, { assumed: ['attribute'] })]],
      ['height 270 mm', 'width 200 mm'],
    ],
    [
      'a weight is one, whatever it was called',
      [
        [door('weight', 30, { dimension: 'mass', unit: 'kg' })],
        [door('other', 32, { dimension: 'mass', unit: 'kg' })],
      ],
      ['other 32 kg of 2'],
    ],
    [
      'a count is not',
      [
        [door('count', 3, { dimension: 'count', unit: '1' })],
        [door('other', 4, { dimension: 'count', unit: '1' })],
      ],
      ['count 3 1', 'other 4 1'],
    ],
  ] as const)('%s', (_what, memos, expected) => {
    expect(stands(...memos)).toEqual(expected);
  });
});

describe('a pair of sizes', () => {
  test.each([
    ['the same again', [pair(610, 1830), pair(610, 1830)], ['size 1830 mm of 2', 'size 610 mm of 2']],
    ['the other way round', [pair(610, 1830), pair(1830, 610)], ['size 1830 mm of 2', 'size 610 mm of 2']],
    [
      'one side as before: the other is held against the other',
      [pair(610, 1830), pair(610, 1900)],
      ['size 1900 mm of 2', 'size 610 mm of 2'],
    ],
    [
      'the first side is another, the second as before',
      [pair(610, 1830), pair(650, 1830)],
      ['size 1830 mm of 2', 'size 650 mm of 2'],
    ],
    [
      'one side as before, the other more than a quarter off: another thing of the name',
      [pair(610, 450), pair(610, 300)],
      ['size 300 mm', 'size 450 mm', 'size 610 mm of 2'],
    ],
    [
      'a side told by its name is the one that is near',
      [pair(610, 1830), [door('height', 1900)]],
      ['height 1900 mm of 2', 'size 610 mm'],
    ],
    [
      'and none where both are near',
      [pair(610, 650), [door('width', 630)]],
      ['size 610 mm', 'size 650 mm', 'width 630 mm'],
    ],
    [
      'and none where neither is',
      [pair(610, 1830), [door('width', 1000)]],
      ['size 1830 mm', 'size 610 mm', 'width 1000 mm'],
    ],
  ] as const)('%s', (_what, memos, expected) => {
    expect(stands(...memos)).toEqual(expected);
  });
});

test('the old value that is told says which of several is meant', () => {
  const told = stands(
    [door('width', 700), figure('door', 'width', 900, { quote: 'It' })],
    [door('width', 910, { replaces: { value: 900, unit: 'mm' }, change: 'decided' })],
  );
  expect(told).toContain('width 910 mm of 2');
  expect(told).toContain('width 700 mm');
});
