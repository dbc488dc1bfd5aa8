/** The figure that a changed one takes the place of where the two go by other names, and where they are of two things. */
import { describe, expect, test } from 'vitest';
import type { FigureNote } from '../../src/language/notes.ts';
import { standingFigures } from '../../src/model/project-views.ts';
import { figure, NotedStory, type NoteToTell } from '../kit/noted-story.ts';
import { ToldStory } from '../kit/told-story.ts';

type More = Partial<FigureNote>;
const told = (first: readonly NoteToTell[], text: string, ...notes: readonly NoteToTell[]) =>
  new NotedStory().memo('Talk of before.', ...first).memo(text, ...notes);
/** `bench leg length 700 mm` of all that stands. */
const stands = (story: NotedStory) =>
  standingFigures(story.project.rows)
    .map(({ item, attribute, value, unit }) => `${item} ${attribute} ${value} ${unit}`)
    .sort();

describe('an old value told with the new one says which figure is meant', () => {
  const floor = [
    figure('floor', 'thickness', 22),
    figure('kitchen', 'width', 2310),
    figure('loft', 'width', 1900),
  ];
  const across = (value: number, old: number, more: More = {}) =>
    figure('floor', 'width', value, {
      change: 'corrected',
      replaces: { value: old, unit: 'mm' },
      ...more,
    });

  test.each([
    [
      'by whatever name the new one goes',
      across(2296, 2310),
      ['floor thickness 22 mm', 'kitchen width 2296 mm', 'loft width 1900 mm'],
    ],
    [
      'in another unit',
      across(2296, 231, { replaces: { value: 231, unit: 'cm' } }),
      ['floor thickness 22 mm', 'kitchen width 2296 mm', 'loft width 1900 mm'],
    ],
    [
      'and not one that is nearly so large',
      across(2296, 2311),
      ['floor thickness 22 mm', 'floor width 2296 mm', 'kitchen width 2310 mm', 'loft width 1900 mm'],
    ],
    [
      'up to three times as much',
      across(770, 2310),
      ['floor thickness 22 mm', 'kitchen width 770 mm', 'loft width 1900 mm'],
    ],
    [
      'and no more',
      across(769, 2310),
      ['floor thickness 22 mm', 'floor width 769 mm', 'kitchen width 2310 mm', 'loft width 1900 mm'],
    ],
  ] as const)('%s', (_what, note, expected) => {
    expect(stands(told(floor, 'Across it is so.', note))).toEqual(expected);
  });

  test('of several of that value none is meant, unless one is nearer by its name', () => {
    const two = [figure('kitchen', 'width', 2310), figure('loft', 'width', 2310)];
    expect(stands(told(two, 'Across it is so.', across(2296, 2310)))).toEqual([
      'floor width 2296 mm',
      'kitchen width 2310 mm',
      'loft width 2310 mm',
    ]);
    expect(
      stands(
        told(
          two,
          'The loft is so.',
          figure('loft floor', 'width', 2296, { replaces: { value: 2310, unit: 'mm' } }),
        ),
      ),
    ).toContain('kitchen width 2310 mm');
  });

  test('not of what it goes into', () => {
    const first = [figure('fridge', 'width', 600)];
    const cavity = figure('fridge cavity', 'width', 610, { replaces: { value: 600, unit: 'mm' } });
    expect(stands(told(first, 'The cavity is so.', cavity))).toEqual([
      'fridge cavity width 610 mm',
      'fridge width 600 mm',
    ]);
  });

  test('not of another kind of quantity, nor of a limit', () => {
    const first = [
      figure('hook', 'weight', 2310, { dimension: 'mass', unit: 'kg' }),
      figure('stair', 'width', 2310, { bound: 'at-most', limit: { about: '' } }),
    ];
    expect(stands(told(first, 'Across it is so.', across(2296, 2310)))).toContain('floor width 2296 mm');
  });

  test('not of the same talk', () => {
    const story = new NotedStory().memo(
      'The kitchen is 2310. Across it is so.',
      figure('kitchen', 'width', 2310, { quote: 'The kitchen is 2310' }),
      figure('floor', 'width', 2296, { replaces: { value: 2310, unit: 'mm' }, quote: 'Across it is so' }),
    );
    expect(stands(story)).toEqual(['floor width 2296 mm', 'kitchen width 2310 mm']);
  });
});

describe('the figure that goes by the name gives way where it is far from the old value', () => {
  const first = (own: number) => [figure('floor', 'width', own), figure('kitchen', 'width', 2310)];
  const note = figure('floor', 'width', 2296, { replaces: { value: 2310, unit: 'mm' } });

  test.each([
    ['further than 1.12 times: another figure is meant', 2310 * 1.13, 'kitchen width 2296 mm'],
    ['nearer than that: its own is meant', 2310 * 1.11, 'floor width 2296 mm'],
    ['less than it, and further', 2310 / 1.13, 'kitchen width 2296 mm'],
    ['less than it, and nearer', 2310 / 1.11, 'floor width 2296 mm'],
  ])('%s', (_what, own, line) => {
    expect(stands(told(first(Math.round(own)), 'Across it is so.', note))).toContain(line);
  });
});

describe('a word of change and a shared name', () => {
  const legs = [figure('bench leg', 'length', 700), figure('shelf', 'length', 900)];
  const LEG = 'Change of plan for the leg.';
  const ash = (value: number, more: More = {}) =>
    figure('ash leg', 'length', value, { change: 'decided', ...more });

  test.each([
    ['a near value takes its place', LEG, ash(720), ['bench leg length 720 mm', 'shelf length 900 mm']],
    [
      'without a word of change they are of two things',
      'The rail is so.',
      figure('ash rail', 'length', 720),
      ['ash rail length 720 mm', 'bench leg length 700 mm', 'shelf length 900 mm'],
    ],
    [
      'another head is another thing',
      'Change of plan for the seat.',
      figure('bench seat', 'length', 720, { change: 'decided' }),
      ['bench leg length 700 mm', 'bench seat length 720 mm', 'shelf length 900 mm'],
    ],
    [
      'another measure is another figure',
      LEG,
      figure('ash leg', 'thickness', 70, { change: 'decided' }),
      ['ash leg thickness 70 mm', 'bench leg length 700 mm', 'shelf length 900 mm'],
    ],
  ] as const)('%s', (_what, text, note, expected) => {
    expect(stands(told(legs, text, note))).toEqual(expected);
  });
});

describe('a whole and its part', () => {
  test('how high a bench is says nothing of how long its legs are', () => {
    const story = new ToldStory().hear('The bench legs are 905 long.', 'The bench is 940 high.');
    const told = standingFigures(story.project.rows).map(
      ({ item, attribute, value }) => `${item} ${attribute} ${value}`,
    );
    expect(told.sort()).toEqual(['bench height 940', 'bench legs length 905']);
    expect(story.findings()).toEqual([]);
  });
});
