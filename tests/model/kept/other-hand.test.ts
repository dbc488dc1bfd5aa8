/** When a figure of one hand asks about the other, what the other is held to have, and what a person may answer. */
import { describe, expect, test } from 'vitest';
import type { FigureNote } from '../../../src/language/notes.ts';
import { isPart } from '../../../src/model/kept/other-hand.ts';
import { findingViews, standingFigures } from '../../../src/model/project-views.ts';
import { figure, NotedStory, type NoteToTell } from '../../kit/noted-story.ts';

const PAIR: NoteToTell = { kind: 'hand', part: 'locker lid', sides: ['port', 'starboard'] };
const port = (value: number, more: Partial<FigureNote> = {}) =>
  figure('port locker lid', 'width', value, more);
const starboard = (value: number, more: Partial<FigureNote> = {}) =>
  figure('starboard locker lid', 'width', value, more);
const both = (value: number) => figure('locker lid', 'width', value);

/** Said as changed: the new figure holds. */
const NOW = { change: 'decided' } as const;

const story = (...memos: readonly (readonly NoteToTell[])[]) =>
  memos.reduce<NotedStory>(
    (told, notes, day) => told.memo(`Talk of day ${day + 1}.`, ...notes),
    new NotedStory(),
  );

const asked = (side: string, was: string, now: string, why: string, end = 'open') =>
  `hand ${side} locker lid width ${was} -> ${now}: locker lid: said to be one for each hand, and ${why} (${end})`;
const CHANGED = 'only one of the two has the new width';
const DIFFER = 'the two differ in width';
const ANSWERED = 'settled: take-new, the other side has it as well';

describe('a figure of one side is held against', () => {
  test.each([
    [
      'the figure of the other side',
      [[PAIR, port(420)], [starboard(430)]],
      [asked('port', '420 mm', '430 mm', DIFFER)],
    ],
    [
      'that figure where this side was changed',
      [[PAIR, port(420), starboard(420)], [starboard(440, NOW)]],
      [asked('port', '420 mm', '440 mm', CHANGED)],
    ],
    [
      'the figure of the part where the other side has none',
      [[PAIR, both(420), starboard(440)]],
      [asked('port', '420 mm', '440 mm', DIFFER)],
    ],
    [
      'the other side before the part',
      [[PAIR, both(420), starboard(440), port(425)]],
      [asked('port', '425 mm', '440 mm', DIFFER)],
    ],
    [
      'what this side had before it was changed, where neither has one',
      [[PAIR, starboard(420)], [starboard(440, NOW)]],
      [asked('port', '420 mm', '440 mm', CHANGED)],
    ],
    ['nothing, where nothing is known', [[PAIR], [starboard(440)]], []],
    ['nothing that is no more than the tolerance apart', [[PAIR, port(420)], [starboard(421.05)]], []],
    [
      'what is a little more apart',
      [[PAIR, port(420)], [starboard(421.1)]],
      [asked('port', '420 mm', '421.1 mm', DIFFER)],
    ],
    [
      'less as well as more',
      [[PAIR, port(420)], [starboard(418.9)]],
      [asked('port', '420 mm', '418.9 mm', DIFFER)],
    ],
    ['no figure that is told roughly', [[PAIR, port(420)], [starboard(480, { bound: 'about' })]], []],
    ['no figure that was told roughly', [[PAIR, port(420, { bound: 'about' })], [starboard(480)]], []],
    ['no limit', [[PAIR, port(420)], [starboard(480, { bound: 'at-most', limit: { about: '' } })]], []],
    [
      'an angle of the other side',
      [
        [PAIR, figure('port locker lid', 'angle', 30, { dimension: 'angle', unit: 'deg' })],
        [figure('starboard locker lid', 'angle', 40, { dimension: 'angle', unit: 'deg' })],
      ],
      [
        'hand port locker lid angle 30 deg -> 40 deg: locker lid: said to be one for each hand, and the two differ in angle (open)',
      ],
    ],
    [
      'an area of the other side',
      [
        [PAIR, figure('port locker lid', 'area', 2, { dimension: 'area', unit: 'm2' })],
        [figure('starboard locker lid', 'area', 3, { dimension: 'area', unit: 'm2' })],
      ],
      [
        'hand port locker lid area 2 m2 -> 3 m2: locker lid: said to be one for each hand, and the two differ in area (open)',
      ],
    ],
    [
      'no weight',
      [
        [PAIR, figure('port locker lid', 'weight', 3, { dimension: 'mass', unit: 'kg' })],
        [figure('starboard locker lid', 'weight', 4, { dimension: 'mass', unit: 'kg' })],
      ],
      [],
    ],
    ['no other measure', [[PAIR, port(420)], [figure('starboard locker lid', 'depth', 30)]], []],
    ['nothing of a thing without a side', [[PAIR, both(420)], [both(480)]], []],
    ['nothing without a pair', [[port(420)], [starboard(480)]], []],
    [
      'nothing of another part of that side',
      [[PAIR, figure('port shelf', 'width', 420)], [figure('starboard shelf', 'width', 480)]],
      [],
    ],
    [
      'one of both in one talk: a single question',
      [[PAIR], [port(420), starboard(480)]],
      [asked('starboard', '480 mm', '420 mm', DIFFER)],
    ],
  ] as const)('%s', (_what, memos, findings) => {
    expect(story(...memos).findings('hand')).toEqual(findings);
  });

  test('the question names both talks and the side that is asked about', () => {
    const told = story([PAIR, port(420)], [starboard(440)]);
    expect(findingViews(told.project.rows)).toMatchObject([
      {
        kind: 'hand',
        item: 'port locker lid',
        attribute: 'width',
        was: { value: 420, unit: 'mm', source: { memoId: 'm1' } },
        now: { value: 440, unit: 'mm', source: { memoId: 'm2' } },
        next: 'say whether the other side is to be changed as well',
        difference: { value: 20, unit: 'mm' },
        cost: 4,
      },
    ]);
    expect(standingFigures(told.project.rows, 'port locker lid')).toMatchObject([{ value: 420 }]);
  });
});

describe('talk that comes later', () => {
  const first = [[PAIR, port(420), starboard(420)], [starboard(440, NOW)]] as const;

  test.each([
    [
      'the same said of the other side answers it',
      [port(440, NOW)],
      [asked('port', '420 mm', '440 mm', CHANGED, ANSWERED)],
    ],
    [
      'within the tolerance as well',
      [port(441, NOW)],
      [asked('port', '420 mm', '440 mm', CHANGED, ANSWERED)],
    ],
    [
      'another size of the other side does not, and asks about this one',
      [port(450, NOW)],
      [asked('port', '420 mm', '440 mm', CHANGED), asked('starboard', '440 mm', '450 mm', CHANGED)],
    ],
    [
      'another measure of it does not',
      [figure('port locker lid', 'depth', 440)],
      [asked('port', '420 mm', '440 mm', CHANGED)],
    ],
    [
      'this side changed again is asked about anew',
      [starboard(460, NOW)],
      [
        asked('port', '420 mm', '440 mm', CHANGED, 'settled: take-new, asked again'),
        asked('port', '420 mm', '460 mm', CHANGED),
      ],
    ],
    [
      'this side changed back leaves nothing to differ, but the question open',
      [starboard(420, { ...NOW, change: 'remeasured' })],
      [asked('port', '420 mm', '440 mm', CHANGED)],
    ],
  ] as const)('%s', (_what, notes, findings) => {
    expect(story(...first, notes).findings('hand')).toEqual(findings);
  });

  test('an answer for a side that never had a figure of its own counts too', () => {
    const told = story([PAIR, starboard(420)], [starboard(440, NOW)], [port(440)]);
    expect(told.findings('hand')).toEqual([asked('port', '420 mm', '440 mm', CHANGED, ANSWERED)]);
  });
});

describe('a person settles it', () => {
  const open = () => story([PAIR, port(420), starboard(420)], [starboard(440, NOW)]);
  const settled = (choice: 'take-new' | 'keep-old' | 'both-right' | 'correct', value?: number) => {
    const told = open();
    const findingId = findingViews(told.project.rows).find(({ kind }) => kind === 'hand')?.id ?? '';
    const more = value === undefined ? {} : { value: { value, unit: 'mm' } };
    return told.hand({ kind: 'finding-settled', findingId, choice, ...more });
  };
  const sizes = (told: NotedStory) =>
    standingFigures(told.project.rows).map(({ item, value, rule }) => `${item} ${value} ${rule}`);

  test.each([
    ['take-new', undefined, 'port locker lid 440 set by hand'],
    ['correct', 435, 'port locker lid 435 set by hand'],
    ['keep-old', undefined, 'port locker lid 420 first said'],
    ['both-right', undefined, 'port locker lid 420 first said'],
  ] as const)('with %s: the other side has %s', (choice, value, line) => {
    const told = settled(choice, value);
    expect(sizes(told)[0]).toBe(line);
    expect(sizes(told)).toHaveLength(2);
    expect(told.findings('hand')).toEqual([
      asked('port', '420 mm', '440 mm', CHANGED, `settled: ${choice}, `),
    ]);
  });

  test.each(['keep-old', 'both-right'] as const)(
    'with %s: that measure is never asked about again',
    (choice) => {
      const told = settled(choice).memo('Talk of day 3.', starboard(470, NOW));
      expect(told.findings('hand')).toHaveLength(1);
      told.memo('Talk of day 4.', figure('port locker lid', 'depth', 30));
      told.memo('Talk of day 5.', figure('starboard locker lid', 'depth', 40));
      expect(told.findings('hand').slice(1)).toEqual([
        'hand port locker lid depth 30 mm -> 40 mm: locker lid: said to be one for each hand, and the two differ in depth (open)',
      ]);
    },
  );

  test('with take-new: it is asked about again when one side changes', () => {
    expect(settled('take-new').memo('Talk of day 3.', starboard(470, NOW)).findings('hand')).toEqual([
      asked('port', '420 mm', '440 mm', CHANGED, 'settled: take-new, '),
      asked('port', '440 mm', '470 mm', CHANGED),
    ]);
  });
});

test.each([
  ['lid', 'lid', true],
  ['lids', 'lid', true],
  ['galley locker lid', 'locker lid', true],
  ['lid', 'locker lid', false],
  ['locker lid', 'galley locker lid', true],
  ['kitchen door', 'door', false],
  ['door', 'kitchen door', false],
  ['locker shelf', 'locker lid', false],
])('"%s" is the part "%s": %s', (bare, part, answer) => {
  expect(isPart(bare, part)).toBe(answer);
});
