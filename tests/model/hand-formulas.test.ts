/** Formulas that a person sets: what the names in them stand for, what is not kept, and what they leave standing. */
import { describe, expect, test } from 'vitest';
import type { FigureNote } from '../../src/language/notes.ts';
import { findingViews, standingFigures } from '../../src/model/project-views.ts';
import { figure, NotedStory, type NoteToTell } from '../kit/noted-story.ts';

const room = (...notes: readonly NoteToTell[]) =>
  new NotedStory().memo(
    'Talk of the room.',
    figure('room', 'length', 4100),
    figure('room', 'width', 3000),
    figure('bench top', 'length', 2000),
    figure('bench top', 'weight', 40, { dimension: 'mass', unit: 'kg' }),
    ...notes,
  );
const set = (told: NotedStory, item: string, attribute: FigureNote['attribute'], formula: string) =>
  told.hand({ kind: 'formula-set', item, attribute, formula });
/** `shelf length 4088 mm = room length - 12 mm` */
const figures = (told: NotedStory, item: string) =>
  standingFigures(told.project.rows, item).map(
    ({ attribute, value, unit, formula, status }) =>
      `${attribute} ${Math.round(value * 1000) / 1000} ${unit}${formula ? ` = ${formula}` : ''}${status === 'stands' ? '' : ` (${status})`}`,
  );
const open = (told: NotedStory) =>
  findingViews(told.project.rows, { status: 'open' }).map(
    ({ kind, item, attribute, was, now, why }) =>
      `${kind} ${item} ${attribute} ${was.value} ${was.unit} -> ${now.value} ${now.unit}: ${why}`,
  );

describe('a name stands for', () => {
  test.each([
    [
      'the figure of its thing and measure',
      'length',
      'room length - 12 mm',
      'length 4088 mm = room length - 12 mm',
    ],
    [
      'of a thing alone, the measure of the result',
      'length',
      'room - 12 mm',
      'length 4088 mm = room length - 12 mm',
    ],
    [
      'of a thing alone, the measure of another result',
      'width',
      'room - 12 mm',
      'width 2988 mm = room width - 12 mm',
    ],
    [
      'of a thing that lacks that measure, its only figure of the kind',
      'depth',
      'bench top / 4',
      'depth 500 mm = bench top length / 4',
    ],
    [
      'a shorter name, where one thing goes by it',
      'length',
      'top + 5 mm',
      'length 2005 mm = bench top length + 5 mm',
    ],
    [
      'several, each its own',
      'length',
      'room length - room width',
      'length 1100 mm = room length - room width',
    ],
    ['nothing but numbers', 'length', '2 * 18 mm', 'length 36 mm = 2 * 18 mm'],
  ] as const)('%s', (_what, attribute, formula, line) => {
    const told = set(room(), 'shelf', attribute, formula);
    expect(figures(told, 'shelf')).toEqual([line]);
    expect(open(told)).toEqual([]);
  });

  test.each([
    ['a thing nobody spoke of', 'niche length + 5 mm', 'niche length'],
    ['a measure nobody told', 'room height + 5 mm', 'room height'],
    ['two of them', 'niche length + lip width', 'niche length, lip width'],
    ['a thing alone, by the measure of the result', 'niche + 5 mm', 'niche length'],
  ])('%s: it waits', (_what, formula, names) => {
    const told = set(room(), 'shelf', 'length', formula);
    expect(figures(told, 'shelf')).toEqual([]);
    expect(open(told)).toEqual([
      `not-run shelf length 0  -> 0 : it waits for figures that were never said: ${names}`,
    ]);
  });
});

describe('a formula that does not fit is not kept, and the figure stays', () => {
  const shelf = () => room(figure('shelf', 'length', 900));
  test.each([
    ['words that are none', 'room length -', 'not-run', /^"room length -" is no formula: ./],
    [
      'kinds that do not add',
      'room length + bench top weight',
      'unit-clash',
      /cannot be worked out: length and mass do not add$/,
    ],
    [
      'another kind',
      'bench top weight',
      'unit-clash',
      /^"bench top weight" gives a quantity of mass, and length is none$/,
    ],
    ['an area', 'room length * room width', 'unit-clash', /gives a quantity of area, and length is none$/],
    ['a plain number', '5', 'unit-clash', /^"5" gives a quantity of ratio, and length is none$/],
    ['a division by nought', 'room length / 0', 'not-run', /cannot be worked out: ./],
    [
      'itself',
      'shelf length + 5 mm',
      'cycle',
      /^it would follow from itself: shelf length, which follows from shelf length$/,
    ],
    [
      'itself by its bare name',
      'shelf + 5 mm',
      'cycle',
      /^it would follow from itself: shelf length, which follows from shelf length$/,
    ],
  ] as const)('%s', (_what, formula, kind, why) => {
    const told = set(shelf(), 'shelf', 'length', formula);
    expect(figures(told, 'shelf')).toEqual(['length 900 mm']);
    const found = findingViews(told.project.rows, { status: 'open' });
    expect(found.map((one) => [one.kind, one.item, one.attribute, one.was.value, one.now.value])).toEqual([
      [kind, 'shelf', 'length', 900, 900],
    ]);
    expect(found[0]?.why).toMatch(why);
  });

  test('the next one settles it', () => {
    const told = set(set(shelf(), 'shelf', 'length', 'shelf + 5 mm'), 'shelf', 'length', 'room - 12 mm');
    expect(open(told)).toEqual([]);
    expect(findingViews(told.project.rows)[0]?.settledBy).toMatchObject({ reason: 'a new formula was set' });
    expect(figures(told, 'shelf')).toEqual(['length 4088 mm = room length - 12 mm']);
  });
});

describe('a formula that is kept', () => {
  test('takes the place of what was said, in its unit', () => {
    const told = set(room(figure('shelf', 'length', 90, { unit: 'cm' })), 'shelf', 'length', 'room - 12 mm');
    expect(figures(told, 'shelf')).toEqual(['length 408.8 cm = room length - 12 mm']);
    expect(
      standingFigures(told.project.rows, 'shelf')[0]?.history.map(
        ({ value, status }) => `${value} ${status}`,
      ),
    ).toEqual(['90 superseded']);
  });

  test('moves what follows from it', () => {
    const told = set(set(room(), 'shelf', 'length', 'room - 12 mm'), 'rail', 'length', 'shelf length / 2');
    expect(figures(told, 'rail')).toEqual(['length 2044 mm = shelf length / 2']);
    set(told, 'shelf', 'length', 'room - 100 mm');
    expect(figures(told, 'rail')).toEqual(['length 2000 mm = shelf length / 2 (stale)']);
  });

  test('is taken away by an empty one, and the figure goes on standing', () => {
    const told = set(set(room(), 'shelf', 'length', 'room - 12 mm'), 'shelf', 'length', '  ');
    expect(figures(told, 'shelf')).toEqual(['length 4088 mm']);
    told.memo('Talk of day 2.', figure('room', 'length', 4000, { change: 'decided' }));
    expect(figures(told, 'shelf')).toEqual(['length 4088 mm']);
  });

  test('that waits runs when its figure is said', () => {
    const told = set(room(), 'shelf', 'length', 'niche length + 5 mm');
    told.memo('Talk of day 2.', figure('niche', 'length', 800));
    expect(figures(told, 'shelf')).toEqual(['length 805 mm = niche length + 5 mm']);
    expect(open(told)).toEqual([]);
  });

  test('has the worst case of its parts, and tells which have none', () => {
    const told = new NotedStory().memo(
      'Talk of the pack.',
      figure('side', 'width', 40, { plusMinus: 0.2 }),
      figure('core', 'width', 25, { plusMinus: 0.1 }),
      figure('lip', 'width', 10),
    );
    set(told, 'pack', 'width', 'side width + 2 * core width');
    set(told, 'stack', 'width', 'side width - lip width');
    const tolerance = (item: string) => standingFigures(told.project.rows, item)[0]?.tolerance;
    expect(tolerance('pack')).toEqual({ value: expect.closeTo(0.4, 9), unit: 'mm', from: 'formula' });
    expect(tolerance('stack')).toEqual({
      value: expect.closeTo(0.2, 9),
      unit: 'mm',
      from: 'formula',
      leftOut: ['lip width'],
    });
  });
});

describe('a figure set by hand', () => {
  const by = (told: NotedStory, attribute: FigureNote['attribute'], value: number, unit: string, more = {}) =>
    told.hand({ kind: 'figure-set', item: 'shelf', attribute, quantity: { value, unit }, ...more });

  test.each([
    ['of a thing nobody spoke of', room(), 'length', 900, 'mm', ['length 900 mm']],
    ['in place of what was said', room(figure('shelf', 'length', 800)), 'length', 90, 'cm', ['length 90 cm']],
    [
      'beside another measure',
      room(figure('shelf', 'depth', 300)),
      'length',
      900,
      'mm',
      ['depth 300 mm', 'length 900 mm'],
    ],
  ] as const)('%s', (_what, told, attribute, value, unit, expected) => {
    expect(figures(by(told, attribute, value, unit), 'shelf')).toEqual(expected);
    expect(open(told)).toEqual([]);
  });

  test('beside a limit of the same measure', () => {
    const told = room(figure('shelf', 'length', 950, { bound: 'at-most', limit: { about: '' } }));
    expect(figures(by(told, 'length', 900, 'mm'), 'shelf')).toContain('length 900 mm');
    expect(open(told)).toEqual([]);
    by(told, 'length', 960, 'mm');
    expect(open(told)).toEqual(['limit shelf length 950 mm -> 960 mm: it is over the stated limit']);
  });

  test.each([
    ['a unit that is none', 'length', 'spans', '"spans" is no unit that is known'],
    ['a unit of another kind', 'length', 'kg', 'kg is a unit of mass, and length is none'],
  ] as const)('in %s sets nothing', (_what, attribute, unit, why) => {
    const told = by(room(figure('shelf', 'length', 800)), attribute, 900, unit);
    expect(figures(told, 'shelf')).toEqual(['length 800 mm']);
    expect(open(told)).toEqual([`unit-clash shelf length 800 mm -> 900 ${unit}: ${why}`]);
  });

  test('has its own tolerance', () => {
    const told = by(room(), 'length', 900, 'mm', { plusMinus: { value: 1, unit: 'cm' } });
    expect(standingFigures(told.project.rows, 'shelf')[0]?.tolerance).toEqual({
      value: 10,
      unit: 'mm',
      from: 'said',
    });
    expect(told.memo('Talk of day 2.', figure('shelf', 'length', 910)).findings()).toEqual([]);
  });
});
