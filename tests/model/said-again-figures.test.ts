/** A figure that is said again: which of the two stands, how much is let pass, and what doubts it ends. */
import { describe, expect, test } from 'vitest';
import type { FigureNote } from '../../src/language/notes.ts';
import { standingFigures } from '../../src/model/project-views.ts';
import { figure, NotedStory, type NoteToTell } from '../kit/noted-story.ts';

type More = Partial<FigureNote>;
const shelf = (value: number, more: More = {}) => figure('shelf', 'depth', value, more);
const story = (...memos: readonly (NoteToTell | readonly NoteToTell[])[]) =>
  memos.reduce<NotedStory>(
    (told, notes, day) => told.memo(`Talk of day ${day + 1}.`, ...([notes].flat() as NoteToTell[])),
    new NotedStory(),
  );

/** `300 mm of m1, first said, ± 1 mm precision`, and what became of each claim. */
function stands(told: NotedStory, item = 'shelf') {
  const [row] = standingFigures(told.project.rows, item);
  if (!row) return [];
  const { value, unit, status, rule, tolerance, source, history } = row;
  const let_ = tolerance
    ? `, ± ${Math.round(tolerance.value * 1000) / 1000} ${tolerance.unit} ${tolerance.from}`
    : '';
  return [
    `${value} ${unit} of ${source?.memoId ?? 'nobody'}${status === 'stands' ? '' : ` (${status})`}, ${rule}${let_}`,
    history.map((claim) => `${claim.value} ${claim.status}`).join(', '),
  ];
}

describe('of two that agree', () => {
  test.each([
    [
      'the first stands',
      [shelf(300), shelf(300)],
      ['300 mm of m1, first said, ± 1 mm precision', '300 standing, 300 agrees'],
    ],
    [
      'also up to the tolerance',
      [shelf(300), shelf(301)],
      ['300 mm of m1, first said, ± 1 mm precision', '300 standing, 301 agrees'],
    ],
    [
      'a measured one stands before one only said',
      [shelf(300), shelf(301, { state: 'measured' })],
      ['301 mm of m2, measured beats said, ± 1 mm precision', '300 agrees, 301 standing'],
    ],
    [
      'and before one that was planned',
      [shelf(300, { state: 'target' }), shelf(301, { state: 'measured' })],
      ['301 mm of m2, measured beats target, ± 1 mm precision', '300 agrees, 301 standing'],
    ],
    [
      'and before one that was assumed',
      [shelf(300, { state: 'assumed' }), shelf(301, { state: 'measured' })],
      ['301 mm of m2, measured beats assumed, ± 1 mm precision', '300 agrees, 301 standing'],
    ],
    [
      'one only said gives way to none that was assumed',
      [shelf(300), shelf(301, { state: 'assumed' })],
      ['300 mm of m1, first said, ± 1 mm precision', '300 standing, 301 agrees'],
    ],
    [
      'measured twice the first stands',
      [shelf(300, { state: 'measured' }), shelf(301, { state: 'measured' })],
      ['300 mm of m1, first said, ± 1 mm precision', '300 standing, 301 agrees'],
    ],
    [
      'one told exactly stands before one told roughly, and is held to its own fineness',
      [shelf(300, { bound: 'about' }), shelf(310)],
      ['310 mm of m2, said again, more exactly, ± 1 mm precision', '300 superseded, 310 standing'],
    ],
    [
      'one told roughly does not stand before one told exactly',
      [shelf(300), shelf(310, { bound: 'about' })],
      ['300 mm of m1, first said, ± 1 mm precision', '300 standing, 310 superseded'],
    ],
  ] as const)('%s', (_what, memos, expected) => {
    const told = story(...memos);
    expect(stands(told)).toEqual(expected);
    expect(told.findings()).toEqual([]);
  });

  test('one only said stands before one that was assumed', () => {
    expect(stands(story(shelf(300, { state: 'assumed' }), shelf(301)))).toEqual([
      expect.stringMatching(/^301 mm of m2, said beats assumed, ± 1 mm precision$/),
      '300 agrees, 301 standing',
    ]);
  });

  test('a tolerance that is told later holds from then on', () => {
    const told = story(shelf(300), shelf(300, { plusMinus: 3 }));
    expect(stands(told)).toEqual(['300 mm of m1, first said, ± 3 mm said', '300 standing, 300 agrees']);
    expect(told.memo('Talk of day 3.', shelf(303)).findings()).toEqual([]);
    expect(told.memo('Talk of day 4.', shelf(304)).findings()).toHaveLength(1);
  });

  test('a tolerance that was told first stays', () => {
    expect(stands(story(shelf(300, { plusMinus: 3 }), shelf(300, { plusMinus: 5 })))[0]).toBe(
      '300 mm of m1, first said, ± 3 mm said',
    );
  });
});

describe('a likely slip', () => {
  const slip = () => story(shelf(915), shelf(951));

  test('takes nothing over, and leaves the figure in doubt', () => {
    const told = slip();
    expect(stands(told)).toEqual([
      '915 mm of m1 (in-doubt), first said, ± 2.288 mm precision',
      '915 standing, 951 doubted',
    ]);
    expect(told.findings()).toEqual([
      expect.stringMatching(/^slip shelf depth 915 mm -> 951 mm: .+ \(open\)$/),
    ]);
  });

  test('is asked about once, however often it is said', () => {
    expect(story(shelf(915), shelf(951), shelf(951)).findings()).toHaveLength(1);
  });

  test('is settled when the first one is said again in other talk', () => {
    const told = slip().memo('Talk of day 3.', shelf(915));
    expect(stands(told)[0]).toBe('915 mm of m1, first said, ± 2.288 mm precision');
    expect(told.findings()).toEqual([
      expect.stringMatching(/^slip .+ \(settled: keep-old, said again in m3\)$/),
    ]);
  });

  test('is not settled in the same breath', () => {
    const told = story(shelf(915), [shelf(951), shelf(915)]);
    expect(told.findings()).toEqual([expect.stringMatching(/^slip .+ \(open\)$/)]);
    expect(stands(told)[0]).toContain('(in-doubt)');
  });
});

describe('what follows from another figure', () => {
  const derived = () =>
    story(figure('frame', 'depth', 400), shelf(380)).hand({
      kind: 'formula-set',
      item: 'shelf',
      attribute: 'depth',
      formula: 'frame depth - 20 mm',
    });
  const moved = () => derived().memo('Talk of day 3.', figure('frame', 'depth', 420, { change: 'decided' }));

  test('stands as worked out, and says so when it is said too', () => {
    expect(stands(derived())[0]).toBe('380 mm of nobody, worked out: frame depth - 20 mm');
    expect(stands(derived().memo('Talk of day 3.', shelf(380)))[0]).toBe(
      '380 mm of m3, said as worked out, ± 1 mm precision',
    );
  });

  test('is stale when that changes, and worked out anew', () => {
    const told = moved();
    expect(stands(told)[0]).toMatch(/^400 mm of nobody \(stale\), worked out: frame depth - 20 mm/);
    expect(told.findings('stale')).toEqual([
      'stale shelf depth 380 mm -> 400 mm: it was worked out as frame depth - 20 mm, and a figure in that has changed (open)',
    ]);
  });

  test.each([
    ['measured so', shelf(400, { state: 'measured' }), 'settled: take-new, made anew in m4'],
    ['made so', shelf(400, { state: 'made' }), 'settled: take-new, made anew in m4'],
    ['came so', shelf(400, { state: 'received' }), 'settled: take-new, made anew in m4'],
    ['only said so', shelf(400), 'open'],
    ['meant so', shelf(400, { state: 'target' }), 'open'],
  ] as const)('is made anew where it was %s', (_what, told, end) => {
    expect(moved().memo('Talk of day 4.', told).findings('stale')).toEqual([
      expect.stringContaining(`(${end})`),
    ]);
  });

  test('is made anew where a deed is told with it', () => {
    const done: NoteToTell = { kind: 'done', gist: 'Cut the shelf', quote: 'Cut the shelf' };
    const told = moved().memo('Cut the shelf to 400.', { ...shelf(400), quote: '400' }, done);
    expect(told.findings('stale')).toEqual([expect.stringContaining('(settled: take-new, made anew in m4)')]);
    const apart = moved().memo('Cut the shelf. It is 400 now.', { ...shelf(400), quote: '400' }, done);
    expect(apart.findings('stale')).toEqual([expect.stringContaining('(open)')]);
  });

  test('stands as before where what it follows from is put back', () => {
    const told = moved().memo('Talk of day 4.', figure('frame', 'depth', 400, { change: 'decided' }));
    expect(stands(told)[0]).toMatch(/^380 mm of \w+, worked out: frame depth - 20 mm/);
    expect(told.findings('stale')).toEqual([
      expect.stringContaining('(settled: keep-old, what it follows from was put back)'),
    ]);
  });

  test('changed once more it is found once more', () => {
    const told = moved().memo('Talk of day 4.', figure('frame', 'depth', 450, { change: 'decided' }));
    expect(told.findings('stale')).toEqual([
      expect.stringMatching(/380 mm -> 400 mm.*\(settled: take-new, it has changed again since\)/),
      expect.stringMatching(/400 mm -> 430 mm.*\(open\)/),
    ]);
  });

  test('has the tolerance of its parts, also where that is told later', () => {
    const told = derived().memo('Talk of day 3.', figure('frame', 'depth', 400, { plusMinus: 2 }));
    expect(stands(told)[0]).toBe('380 mm of nobody, worked out: frame depth - 20 mm, ± 2 mm formula');
  });
});

describe('readings that change by themselves', () => {
  const warm = (value: number, more: More = {}) =>
    figure('shed', 'temperature', value, { dimension: 'temperature', unit: 'degC', ...more });

  test('the latest stands, and nothing clashes', () => {
    const told = story(warm(8), warm(14), warm(3));
    expect(told.findings()).toEqual([]);
    expect(stands(told, 'shed')).toEqual([
      '3 degC of m3 (series), latest of a series',
      '8 series, 14 series, 3 series',
    ]);
  });
});
