/** What has become of an order, and what is told of batches and of pairs, from what is on record. */
import { describe, expect, test } from 'vitest';
import {
  batchViews,
  hiddenViews,
  orderViews,
  pairViews,
  quantityOf,
} from '../../../src/model/kept/kept-views.ts';
import { came, figure, NotedStory, type NoteToTell, ordered } from '../../kit/noted-story.ts';

const story = (...memos: readonly (NoteToTell | readonly NoteToTell[])[]) =>
  memos.reduce<NotedStory>(
    (told, notes, day) => told.memo(`Talk of day ${day + 1}.`, ...([notes].flat() as NoteToTell[])),
    new NotedStory(),
  );

describe('an order is', () => {
  const eight = ordered('ash pegs', { count: 8 });
  test.each([
    ['expected', [eight]],
    ['short', [eight, came('ash pegs', { count: 7 })]],
    ['complete', [eight, came('ash pegs', { count: 8 })]],
    ['complete', [eight, came('ash pegs', { count: 5 }), came('ash pegs', { count: 3 })]],
    ['more than ordered', [eight, came('ash pegs', { count: 9 })]],
    ['short', [eight, came('ash pegs', { short: 1 })]],
    ['complete', [eight, came('ash pegs', { short: 0 })]],
    ['short', [eight, came('ash pegs', { short: 2, shortOf: 'box' })]],
    ['came', [eight, came('ash pegs')]],
    ['came', [ordered('ash pegs'), came('ash pegs', { count: 3 })]],
    ['came', [came('ash pegs', { count: 3 })]],
    ['short', [came('ash pegs', { count: 3, outOf: 4 })]],
  ] as const)('%s: %j', (status, memos) => {
    expect(orderViews(story(...memos).project.rows).map((one) => one.status)).toEqual([status]);
  });

  test('told with all that was said of it; what came without one stands behind the orders', () => {
    const source = (day: number) => ({
      memoId: `m${day}`,
      recordedAt: `2026-02-0${day}T17:00:00+01:00`,
      quote: `Talk of day ${day}.`,
    });
    expect(orderViews(story(came('oak slats', { count: 2 }), eight).project.rows)).toEqual([
      {
        item: 'ash pegs',
        order: { id: 'm2.r1', act: 'ordered', item: 'ash pegs', count: 8, sizes: [], source: source(2) },
        received: [],
        status: 'expected',
      },
      {
        item: 'oak slats',
        received: [
          { id: 'm1.r1', act: 'received', item: 'oak slats', count: 2, sizes: [], source: source(1) },
        ],
        status: 'came',
      },
    ]);
  });
});

test('a pair shows the lengths, angles and areas of both sides and of the part, and no others', () => {
  const told = story([
    { kind: 'hand', part: 'locker lid', sides: ['port', 'starboard'] },
    figure('locker lid', 'thickness', 18),
    figure('port locker lid', 'width', 420),
    figure('starboard locker lid', 'angle', 30, { dimension: 'angle', unit: 'deg' }),
    figure('starboard locker lid', 'area', 2, { dimension: 'area', unit: 'm2' }),
    figure('port locker lid', 'weight', 3, { dimension: 'mass', unit: 'kg' }),
    figure('port shelf', 'width', 300),
  ]);
  const [pair] = pairViews(told.project.rows);
  expect([pair?.part, pair?.sides]).toEqual(['locker lid', ['port', 'starboard']]);
  expect(
    pair?.figures.map(({ side, attribute, value, unit }) => `${side} ${attribute} ${value} ${unit}`).sort(),
  ).toEqual(['both thickness 18 mm', 'port width 420 mm', 'starboard angle 30 deg', 'starboard area 2 m2']);
});

test('a batch has a dew point where air and humidity were told in numbers', () => {
  const batch = (
    ...facts: readonly (readonly ['air' | 'humidity' | 'surface', number, string])[]
  ): NoteToTell => ({
    kind: 'batch',
    product: 'epoxy',
    facts: facts.map(([what, value, unit]) => ({
      what,
      value,
      unit,
      quote: `${value}`,
      span: { start: 0, end: 1 },
    })),
  });
  const dew = (note: NoteToTell) => batchViews(story(note).project.rows)[0]?.dewPoint;
  // Magnus: ln(0.6) + 17.62 x 20 / (243.12 + 20), and back.
  expect(dew(batch(['air', 20, 'degC'], ['humidity', 60, '%']))?.value).toBeCloseTo(12, 1);
  expect(dew(batch(['air', 20, 'degC']))).toBeUndefined();
  expect(dew(batch(['humidity', 60, '%']))).toBeUndefined();
  expect(dew(batch(['air', 20, 'degC'], ['humidity', 0, '%']))).toBeUndefined();
  expect(dew(batch(['air', 20, 'degC'], ['humidity', 100.1, '%']))).toBeUndefined();
  expect(dew(batch(['air', 20, 'degC'], ['humidity', 100, '%']))?.value).toBeCloseTo(20, 6);
  expect(dew(batch(['air', 20, 'degC'], ['humidity', 60, '%'], ['surface', 14, 'degC']))).toMatchObject({
    isClose: true,
  });
  expect(dew(batch(['air', 20, 'degC'], ['humidity', 60, '%'], ['surface', 16, 'degC']))?.isClose).not.toBe(
    true,
  );
});

describe('what is behind panels', () => {
  const behind = (panel: string, what: string, quote: string): NoteToTell => ({
    kind: 'hidden',
    panel,
    what,
    service: 'pipe',
    quote,
  });
  const told = () =>
    new NotedStory().memo(
      'Behind the galley panel is the feed. Behind the boards by the pantry is a drain.',
      behind('galley panel', 'feed', 'Behind the galley panel is the feed'),
      behind('boards', 'drain', 'Behind the boards by the pantry is a drain'),
    );
  const found = (words?: string) => hiddenViews(told().project.rows, words).map(({ what }) => what);
  test.each([
    [undefined, ['feed', 'drain']],
    ['galley panel', ['feed']],
    ['galley', ['feed']],
    ['what is behind the galley panel', ['feed']],
    ['boards', ['drain']],
    ['pantry', ['drain']],
    ['pantry boards', ['drain']],
    ['pantry panel', []],
    ['loft', []],
  ])('%s: %j', (words, expected) => {
    expect(found(words)).toEqual(expected);
  });
});

test.each([
  [
    { value: 3, unit: 'kg' },
    { value: 3, unit: 'kg' },
  ],
  [{ value: 3 }, undefined],
  [{ unit: 'kg' }, undefined],
  [{}, undefined],
])('the quantity of %j is %j', (fact, quantity) => {
  expect(quantityOf(fact)).toEqual(quantity);
});
