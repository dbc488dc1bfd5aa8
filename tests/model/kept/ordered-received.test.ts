/** Which order a delivery answers, how many and what sizes are held against it, and what hangs on what came. */
import { describe, expect, test } from 'vitest';
import { orderViews } from '../../../src/model/kept/kept-views.ts';
import { findingViews } from '../../../src/model/project-views.ts';
import { came, figure, NotedStory, type NoteToTell, ordered, size } from '../../kit/noted-story.ts';

type Memo = NoteToTell | readonly NoteToTell[];

/** Each memo holds one list of notes, on a day of its own. */
const story = (...memos: readonly Memo[]) =>
  memos.reduce<NotedStory>(
    (told, notes, day) => told.memo(`Talk of day ${day + 1}.`, ...([notes].flat() as NoteToTell[])),
    new NotedStory(),
  );

/** `larch boards: short, m1.r1 = m2.r1 + m3.r1`; without an order nothing stands before what came. */
const orders = (told: NotedStory) =>
  orderViews(told.project.rows).map(({ item, status, order, received }) => {
    const all = received.map(({ id }) => id).join(' + ');
    return `${item}: ${status}, ${order ? `${order.id} = ` : ''}${all}`;
  });

/** How many each delivery was taken to bring. */
const counts = (told: NotedStory) =>
  orderViews(told.project.rows).flatMap(({ received }) => received.map(({ count }) => count));

describe('which order a delivery answers', () => {
  const answered = (...memos: readonly Memo[]) =>
    orderViews(story(...memos).project.rows).flatMap(({ order, received }) =>
      received.map(({ id }) => `${id} answers ${order?.id ?? 'none'}`),
    );

  test.each([
    ['the only one of the number out of which they came', [ordered('pegs', { count: 8 })], 8, 'm1.r1'],
    [
      'none where two are of that number',
      [ordered('pegs', { count: 8 }), ordered('slats', { count: 8 })],
      8,
      'none',
    ],
    [
      'the one of that number beside one of another',
      [ordered('pegs', { count: 9 }), ordered('slats', { count: 8 })],
      8,
      'm1.r2',
    ],
    ['none of another number', [ordered('pegs', { count: 7 })], 8, 'none'],
    ['none that nobody counted', [ordered('pegs')], undefined, 'none'],
  ] as const)('where only their number is said: %s', (_which, memo, outOf, answer) => {
    const now = came('', { count: 6, ...(outOf === undefined ? {} : { outOf }) });
    expect(answered([...memo], now)).toEqual([`m2.r1 answers ${answer}`]);
  });

  test.each([
    ['of the goods by name', [ordered('ash pegs')], came('ash pegs'), 'm1.r1'],
    ['none of other goods', [ordered('oak slats')], came('ash pegs'), 'none'],
    ['the latest', [ordered('ash pegs'), ordered('ash pegs')], came('ash pegs'), 'm2.r1'],
    [
      'the one of the number that came before a later one',
      [ordered('ash pegs', { count: 6 }), ordered('ash pegs', { count: 8 })],
      came('ash pegs', { count: 6 }),
      'm1.r1',
    ],
    [
      'the latest of two of that number',
      [ordered('ash pegs', { count: 6 }), ordered('ash pegs', { count: 6 })],
      came('ash pegs', { count: 6 }),
      'm2.r1',
    ],
    [
      'the latest where none is of that number',
      [ordered('ash pegs', { count: 6 }), ordered('ash pegs', { count: 8 })],
      came('ash pegs', { count: 5 }),
      'm2.r1',
    ],
    [
      'the one out of whose number they came, before one of the number that came',
      [ordered('ash pegs', { count: 8 }), ordered('ash pegs', { count: 6 })],
      came('ash pegs', { count: 6, outOf: 8 }),
      'm1.r1',
    ],
    [
      'the latest of two out of whose number they came',
      [ordered('ash pegs', { count: 8 }), ordered('ash pegs', { count: 8 })],
      came('ash pegs', { count: 6, outOf: 8 }),
      'm2.r1',
    ],
    [
      'none where the goods could be of either name',
      [ordered('ash pegs', { count: 6 }), ordered('oak pegs', { count: 8 })],
      came('pegs', { count: 5 }),
      'none',
    ],
    [
      'of two names the one of that number',
      [ordered('ash pegs', { count: 6 }), ordered('oak pegs', { count: 8 })],
      came('pegs', { count: 6 }),
      'm1.r1',
    ],
    [
      'one that was not counted is not one of the number that nobody said',
      [ordered('ash pegs'), ordered('oak pegs')],
      came('pegs'),
      'none',
    ],
  ] as const)('%s', (_which, memos, now, answer) => {
    expect(answered(...memos, now)).toEqual([`m${memos.length + 1}.r1 answers ${answer}`]);
  });

  test('an order is open until as many came as were ordered', () => {
    const two = [ordered('ash pegs', { count: 6 }), came('ash pegs', { count: 5 })] as const;
    expect(orders(story(...two, came('ash pegs', { count: 1 }), came('ash pegs', { count: 1 })))).toEqual([
      'ash pegs: complete, m1.r1 = m2.r1 + m3.r1',
      'ash pegs: came, m4.r1',
    ]);
  });

  test('an order of which some came uncounted is over, but for the rest of the same talk', () => {
    const first = ordered('ash pegs', { count: 6 });
    expect(orders(story(first, came('ash pegs'), came('ash pegs', { count: 2 })))).toEqual([
      'ash pegs: came, m1.r1 = m2.r1',
      'ash pegs: came, m3.r1',
    ]);
    expect(orders(story(first, [came('ash pegs'), came('ash pegs', { count: 2 })]))).toEqual([
      'ash pegs: short, m1.r1 = m2.r1 + m2.r2',
    ]);
  });

  test('an order that was not counted stays open for what comes counted', () => {
    expect(
      orders(story(ordered('ash pegs'), came('ash pegs', { count: 2 }), came('ash pegs', { count: 3 }))),
    ).toEqual(['ash pegs: came, m1.r1 = m2.r1 + m3.r1']);
  });
});

describe('goods that came without a word of their number', () => {
  const arrived = (item: string): NoteToTell => ({ kind: 'arrival', item, received: true });
  const first = ordered('ash pegs', { count: 6 });

  test.each([
    ['their order is over', [first, arrived('ash pegs')], ['ash pegs: came, m1.r1 = ']],
    ['each of their orders is', [first, first, arrived('ash pegs')], 'came twice'],
    ['not one of other goods', [first, arrived('oak slats')], ['ash pegs: expected, m1.r1 = ']],
    ['not one of the same talk', [[first, arrived('ash pegs')]], ['ash pegs: expected, m1.r1 = ']],
    [
      'not one that some came of',
      [first, came('ash pegs', { count: 5 }), arrived('ash pegs')],
      ['ash pegs: short, m1.r1 = m2.r1'],
    ],
    [
      'goods that are still to come end nothing',
      [first, { kind: 'arrival', item: 'ash pegs', received: false }],
      ['ash pegs: expected, m1.r1 = '],
    ],
    [
      'what came later is of no order',
      [first, arrived('ash pegs'), came('ash pegs', { count: 4 })],
      ['ash pegs: came, m1.r1 = ', 'ash pegs: came, m3.r1'],
    ],
  ] as const)('%s', (_what, memos, told) => {
    const lines = told === 'came twice' ? ['ash pegs: came, m1.r1 = ', 'ash pegs: came, m2.r1 = '] : told;
    const found = story(...memos);
    expect(orders(found)).toEqual(lines);
    expect(found.findings('received').filter((line) => !line.includes('6 were ordered and 5 came'))).toEqual(
      [],
    );
  });
});

describe('the number that came', () => {
  const eight = ordered('ash pegs', { count: 8 });
  const isShort = (now: number) =>
    `received ash pegs count 8 1 -> ${now} 1: 8 were ordered and ${now} came (open)`;

  test.each([
    ['as many as ordered', [eight, came('ash pegs', { count: 8 })], [8], []],
    ['one too few', [eight, came('ash pegs', { count: 7 })], [7], [isShort(7)]],
    ['one too many', [eight, came('ash pegs', { count: 9 })], [9], [isShort(9)]],
    ['nobody counted', [eight, came('ash pegs')], [undefined], []],
    ['told by what was missing', [eight, came('ash pegs', { short: 2 })], [6], [isShort(6)]],
    ['none missing', [eight, came('ash pegs', { short: 0 })], [8], []],
    ['all missing', [eight, came('ash pegs', { short: 8 })], [0], [isShort(0)]],
    ['more missing than ordered tells no number', [eight, came('ash pegs', { short: 9 })], [undefined], []],
    [
      'missing pieces of the goods',
      [eight, came('ash pegs', { short: 1, shortOf: 'peg' })],
      [7],
      [isShort(7)],
    ],
    ['missing boxes are no pieces', [eight, came('ash pegs', { short: 1, shortOf: 'box' })], [undefined], []],
    [
      'a number said goes before what was missing',
      [eight, came('ash pegs', { count: 5, short: 1 })],
      [5],
      [isShort(5)],
    ],
    ['without an order, out of what was said', [came('ash pegs', { count: 6, outOf: 8 })], [6], [isShort(6)]],
    ['without an order, all of what was said', [came('ash pegs', { count: 8, outOf: 8 })], [8], []],
    ['without an order and a number', [came('ash pegs', { count: 6 })], [6], []],
    [
      'the order goes before the number said beside it',
      [eight, came('ash pegs', { count: 6, outOf: 9 })],
      [6],
      [isShort(6)],
    ],
  ] as const)('%s', (_what, memos, taken, findings) => {
    const told = story(...memos);
    expect(counts(told)).toEqual(taken);
    expect(told.findings()).toEqual(findings);
  });

  test.each([
    [
      'the rest came',
      [eight, came('ash pegs', { count: 5 }), came('ash pegs', { count: 3 })],
      [5, 3],
      ['received ash pegs count 8 1 -> 5 1: 8 were ordered and 5 came (settled: take-new, the rest came)'],
    ],
    [
      'some more came',
      [eight, came('ash pegs', { count: 5 }), came('ash pegs', { count: 2 })],
      [5, 2],
      [
        'received ash pegs count 8 1 -> 5 1: 8 were ordered and 5 came (settled: take-new, counted again)',
        'received ash pegs count 8 1 -> 7 1: 8 were ordered and 7 in all came (open)',
      ],
    ],
    [
      'more than were left are those of before once more',
      [eight, came('ash pegs', { count: 5 }), came('ash pegs', { count: 4 })],
      [5, 0],
      [isShort(5)],
    ],
    [
      'the state of the whole order said again',
      [eight, came('ash pegs', { count: 6, outOf: 8 }), came('ash pegs', { count: 6, outOf: 8 })],
      [6, 0],
      [isShort(6)],
    ],
    [
      'the state of the whole order, grown',
      [eight, came('ash pegs', { count: 6, outOf: 8 }), came('ash pegs', { count: 8, outOf: 8 })],
      [6, 2],
      ['received ash pegs count 8 1 -> 6 1: 8 were ordered and 6 came (settled: take-new, the rest came)'],
    ],
    [
      'the state of the whole order, told as less',
      [eight, came('ash pegs', { count: 6, outOf: 8 }), came('ash pegs', { count: 5, outOf: 8 })],
      [6, 0],
      [
        'received ash pegs count 8 1 -> 6 1: 8 were ordered and 6 came (settled: take-new, counted again)',
        'received ash pegs count 8 1 -> 5 1: 8 were ordered and 5 in all came (open)',
      ],
    ],
  ] as const)('in two goes: %s', (_what, memos, taken, findings) => {
    const told = story(...memos);
    expect(counts(told)).toEqual(taken);
    expect(told.findings()).toEqual(findings);
  });

  test('the finding names both talks, how dear it is, and what to do', () => {
    const [finding] = findingViews(story(eight, came('ash pegs', { count: 7 })).project.rows);
    expect(finding).toMatchObject({
      id: 'm2.c1',
      item: 'ash pegs',
      attribute: 'count',
      was: { value: 8, unit: '1', state: 'ordered', source: { memoId: 'm1', quote: 'Talk of day 1.' } },
      now: { value: 7, unit: '1', state: 'received', source: { memoId: 'm2', quote: 'Talk of day 2.' } },
      next: 'claim it from the supplier, or make what hangs on it to what came',
      cost: 5,
      consequences: [],
    });
    expect(finding?.tolerance).toBeUndefined();
  });

  test('goods without a name are a delivery', () => {
    expect(story(came('', { count: 6, outOf: 8 })).findings()).toEqual([
      'received delivery count 8 1 -> 6 1: 8 were ordered and 6 came (open)',
    ]);
  });
});

describe('the sizes that came', () => {
  const WHY = 'what came has another size than what was ordered';
  const wrong = (attribute: string, was: number, now: number) =>
    `received ash pegs ${attribute} ${was} mm -> ${now} mm: ${WHY} (open)`;
  const pegs = (...sizes: readonly ReturnType<typeof size>[]) => ordered('ash pegs', { sizes });
  const got = (...sizes: readonly ReturnType<typeof size>[]) => came('ash pegs', { sizes });

  test.each([
    ['as ordered', pegs(size('thickness', 21)), got(size('thickness', 21)), []],
    ['a millimetre more is let pass', pegs(size('thickness', 21)), got(size('thickness', 22)), []],
    ['a millimetre less is let pass', pegs(size('thickness', 21)), got(size('thickness', 20)), []],
    [
      'more than that is not',
      pegs(size('thickness', 21)),
      got(size('thickness', 22.1)),
      [wrong('thickness', 21, 22.1)],
    ],
    ['nor less', pegs(size('thickness', 21)), got(size('thickness', 19.9)), [wrong('thickness', 21, 19.9)]],
    ['another side of it', pegs(size('thickness', 21)), got(size('length', 900)), []],
    [
      'a size of another kind',
      pegs(size('other', 2)),
      got(size('other', 5, { dimension: 'mass', unit: 'kg' })),
      [],
    ],
    [
      'without a side, the only size of the order',
      pegs(size('size', 21)),
      got(size('thickness', 18)),
      [wrong('thickness', 21, 18)],
    ],
    [
      'ordered by its side, came without one',
      pegs(size('thickness', 21)),
      got(size('size', 18)),
      [wrong('size', 21, 18)],
    ],
    [
      'without a side and of two that were ordered, no one knows which',
      pegs(size('thickness', 21), size('width', 95)),
      got(size('size', 18)),
      [],
    ],
    [
      'of two that came without a side, neither is the only one',
      pegs(size('size', 21)),
      got(size('thickness', 18), size('width', 95)),
      [],
    ],
    [
      'both sides, the other way round',
      pegs(size('size', 600), size('size', 1000)),
      got(size('size', 1000), size('size', 600)),
      [],
    ],
    [
      'of two without a side the one that is left is meant',
      pegs(size('size', 600), size('size', 1000)),
      got(size('size', 1000), size('size', 640)),
      [wrong('size', 600, 640)],
    ],
    [
      'and the other one',
      pegs(size('size', 600), size('size', 1000)),
      got(size('size', 600), size('size', 940)),
      [wrong('size', 1000, 940)],
    ],
    [
      'of two sides the one of that side',
      pegs(size('width', 600), size('length', 1000)),
      got(size('length', 940), size('width', 600)),
      [wrong('length', 1000, 940)],
    ],
    [
      'both sides wrong',
      pegs(size('width', 600), size('length', 1000)),
      got(size('length', 940), size('width', 660)),
      [wrong('length', 1000, 940), wrong('width', 600, 660)],
    ],
    [
      'a size that says no side and is within the tolerance of one that is ordered',
      pegs(size('size', 600), size('size', 1000)),
      got(size('size', 601)),
      [],
    ],
  ] as const)('%s', (_what, order, now, findings) => {
    expect(story(order, now).findings()).toEqual(findings);
  });

  test.each([
    [
      'what it should have been',
      [got(size('thickness', 18, { shouldBe: 21 }))],
      [wrong('thickness', 21, 18)],
    ],
    ['what it should have been, within the tolerance', [got(size('thickness', 21.5, { shouldBe: 21 }))], []],
    ['nothing to hold it against', [got(size('thickness', 18))], []],
    [
      'the order before what is said beside it',
      [pegs(size('thickness', 25)), got(size('thickness', 18, { shouldBe: 21 }))],
      [wrong('thickness', 25, 18)],
    ],
  ] as const)('held against %s', (_what, memos, findings) => {
    expect(story(...memos).findings()).toEqual(findings);
  });

  test.each([
    ['up to it', 24, []],
    ['and not past it', 24.1, [wrong('thickness', 21, 24.1)]],
  ] as const)('a project may let more pass, %s', (_what, thickness, findings) => {
    const wide = new NotedStory()
      .hand({ kind: 'tolerance-set', dimension: 'length', quantity: { value: 3, unit: 'mm' } })
      .memo('Ordered.', pegs(size('thickness', 21)))
      .memo('Came.', got(size('thickness', thickness)));
    expect(wide.findings()).toEqual(findings);
  });

  test('the tolerance and both values stand in the finding', () => {
    const [finding] = findingViews(
      story(pegs(size('thickness', 21)), got(size('thickness', 18))).project.rows,
    );
    expect(finding).toMatchObject({
      attribute: 'thickness',
      was: { value: 21, unit: 'mm', state: 'ordered', source: { memoId: 'm1' } },
      now: { value: 18, unit: 'mm', state: 'received', source: { memoId: 'm2' } },
      difference: { value: -3, unit: 'mm' },
      tolerance: { value: 1, unit: 'mm', from: 'precision' },
    });
  });

  describe('where a figure was said to be ordered', () => {
    const said = (...figures: readonly (readonly [string, number])[]) =>
      figures.map(([attribute, value]) =>
        figure('ash pegs', attribute as 'width', value, { state: 'ordered' }),
      );

    test.each([
      ['another size', [said(['width', 800]), got(size('width', 760))], [wrong('width', 800, 760)]],
      ['the same', [said(['width', 800]), got(size('width', 800))], []],
      ['another side', [said(['width', 800]), got(size('length', 760))], []],
      [
        'the latest',
        [said(['width', 800]), said(['width', 790]), got(size('width', 760))],
        [wrong('width', 790, 760)],
      ],
      [
        'a figure of it that was no order',
        [figure('ash pegs', 'width', 800, { state: 'measured' }), got(size('width', 760))],
        [],
      ],
    ] as const)('%s', (_what, memos, findings) => {
      expect(story(...memos).findings('received')).toEqual(findings);
    });
  });
});

describe('other goods than those ordered', () => {
  const instead = { came: 'oak pegs', ordered: 'ash pegs' };

  test('are told in words, without a number', () => {
    const told = story(ordered('pegs', { count: 8 }), came('pegs', { count: 8, instead }));
    expect(told.findings()).toEqual([
      'received pegs other 0  -> 0 : ash pegs was ordered and oak pegs came (open)',
    ]);
    expect(findingViews(told.project.rows)[0]).toMatchObject({
      was: { source: { memoId: 'm1' } },
      now: { source: { memoId: 'm2' } },
    });
  });

  test('without an order, both are as said in the talk of what came', () => {
    const told = story(came('pegs', { instead }));
    expect(findingViews(told.project.rows)[0]).toMatchObject({
      was: { source: { memoId: 'm1' } },
      now: { source: { memoId: 'm1' } },
    });
  });

  test('may be too few as well: each is a finding', () => {
    expect(story(ordered('pegs', { count: 8 }), came('pegs', { count: 7, instead })).findings()).toEqual([
      'received pegs count 8 1 -> 7 1: 8 were ordered and 7 came (open)',
      'received pegs other 0  -> 0 : ash pegs was ordered and oak pegs came (open)',
    ]);
  });
});

describe('what hangs on goods that came otherwise', () => {
  const task = (gist: string): NoteToTell => ({ kind: 'task', gist, waitsFor: [] });
  const done = (gist: string): NoteToTell => ({ kind: 'done', gist });
  const hangs = (...notes: readonly NoteToTell[]) =>
    findingViews(
      story(ordered('ash pegs', { count: 8 }), notes, came('ash pegs', { count: 7 })).project.rows,
    )[0]?.consequences.map(({ act, what }) => `${act}: ${what}`);

  test.each([
    [
      'work on the goods by their whole name',
      [task('Whittle the ash pegs')],
      ['planned: Whittle the ash pegs'],
    ],
    [
      'work that names the thing and half of the name',
      [task('Whittle the pegs')],
      ['planned: Whittle the pegs'],
    ],
    ['not work on another thing of that wood', [task('Whittle the ash handle')], []],
    [
      'each of several',
      [task('Whittle the ash pegs'), task('Sweep the loft'), task('Oil the pegs')],
      ['planned: Whittle the ash pegs', 'planned: Oil the pegs'],
    ],
    ['what was made of them', [done('Made the ash pegs')], ['made: Made the ash pegs']],
    ['what was ordered of them does not hang on them', [done('Ordered the ash pegs')], []],
  ] as const)('%s', (_what, notes, expected) => {
    expect(hangs(...notes)).toEqual(expected);
  });
});

describe('a clash of figures that was found in the same talk', () => {
  const first = [ordered('ash pegs', { sizes: [size('width', 95)] }), figure('ash pegs', 'width', 95)];
  const now = (width: number, more = {}, goods = 'ash pegs') => [
    came(goods, { sizes: [size('width', width)] }),
    figure('ash pegs', 'width', width, more),
  ];

  test('learns that one side is an order, where it was taken for a size measured anew', () => {
    expect(story(first, now(70, { state: 'measured', change: 'remeasured' })).findings()).toEqual([
      'remeasured ash pegs width 95 mm -> 70 mm: what came has another size than what was ordered (settled: take-new, said so)',
    ]);
  });

  test('learns it beside the doubt that it is a slip', () => {
    const [line, ...others] = story(
      [ordered('ash pegs', { sizes: [size('width', 50)] }), figure('ash pegs', 'width', 50)],
      now(15),
    ).findings();
    expect(others).toEqual([]);
    expect(line).toMatch(
      /^slip ash pegs width 50 mm -> 15 mm: .+; what came has another size than what was ordered \(open\)$/,
    );
  });

  test('stands beside that of other goods', () => {
    const told = story(
      [...first, ordered('oak slats', { sizes: [size('width', 95)] })],
      now(70, { state: 'measured', change: 'remeasured' }, 'oak slats'),
    );
    expect(told.findings()).toEqual([
      expect.stringMatching(/^remeasured ash pegs width 95 mm -> 70 mm: (?!what came)/),
      'received oak slats width 95 mm -> 70 mm: what came has another size than what was ordered (open)',
    ]);
  });
});
