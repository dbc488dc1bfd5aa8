/** Stated limits by their edges: which figure breaks which, what a later limit does to an earlier one, and what is let pass. */
import { describe, expect, test } from 'vitest';
import type { FigureNote } from '../../src/language/notes.ts';
import { isLimiting } from '../../src/model/limits.ts';
import { findingViews, limitViews } from '../../src/model/project-views.ts';
import { figure, NotedStory, type NoteToTell } from '../kit/noted-story.ts';

type Attribute = FigureNote['attribute'];
type More = Partial<FigureNote>;
const limit = (
  item: string,
  attribute: Attribute,
  bound: FigureNote['bound'],
  value: number,
  more: More = {},
) => figure(item, attribute, value, { bound, limit: { about: '' }, ...more });
const heavy = (item: string, value: number, more: More = {}) =>
  figure(item, 'weight', value, { dimension: 'mass', unit: 'kg', ...more });

const story = (...memos: readonly (readonly [text: string, ...notes: NoteToTell[]])[]) =>
  memos.reduce<NotedStory>((told, [text, ...notes]) => told.memo(text, ...notes), new NotedStory());
/** What talk without a word of its own says: a limit in one memo, a figure in the next. */
const held = (bound: NoteToTell, told: NoteToTell) => story(['Talk one.', bound], ['Talk two.', told]);

const limits = (told: NotedStory) =>
  limitViews(told.project.rows).map(
    ({ item, attribute, bound, value, high, unit, about }) =>
      `${item} ${attribute} ${bound} ${value}${high === undefined ? '' : ` to ${high}`} ${unit}${about ? ` for ${about}` : ''}`,
  );

test.each([
  [{ bound: 'exact' }, false],
  [{ bound: 'about' }, false],
  [{ bound: 'at-most' }, true],
  [{ bound: 'at-least' }, true],
  [{ bound: 'between' }, true],
  [{ bound: 'exact', limit: { about: 'lorry' } }, true],
] as const)('%j is a limit: %s', (note, answer) => {
  expect(isLimiting(note)).toBe(answer);
});

describe('a figure of the thing itself', () => {
  const over = (edge: string, value: string, attribute = 'width') =>
    `limit hatch ${attribute} ${edge} -> ${value}: it is over the stated limit (open)`;
  const under = (edge: string, value: string, attribute = 'width') =>
    `limit hatch ${attribute} ${edge} -> ${value}: it is under the stated limit (open)`;
  const most = limit('hatch', 'width', 'at-most', 740);
  const least = limit('hatch', 'width', 'at-least', 740);
  const between = limit('hatch', 'width', 'between', 700, { high: 740 });
  const wide = (value: number, more: More = {}) => figure('hatch', 'width', value, more);

  test.each([
    ['at the most', most, wide(740), []],
    ['past the most', most, wide(740.1), [over('740 mm', '740.1 mm')]],
    ['far below the most', most, wide(500), []],
    ['at the least', least, wide(740), []],
    ['below the least', least, wide(739.9), [under('740 mm', '739.9 mm')]],
    ['far above the least', least, wide(900), []],
    ['at the lower end', between, wide(700), []],
    ['at the upper end', between, wide(740), []],
    ['below the lower end', between, wide(699), [under('700 mm', '699 mm')]],
    ['past the upper end', between, wide(741), [over('740 mm', '741 mm')]],
    ['at a limit that names no side: it is the most', limit('hatch', 'width', 'exact', 740), wide(740), []],
    [
      'past one that names no side',
      limit('hatch', 'width', 'exact', 740),
      wide(741),
      [over('740 mm', '741 mm')],
    ],
    ['in another unit within the noise of saying it', most, wide(29.16, { unit: 'in' }), []],
    ['in another unit past it', most, wide(29.3, { unit: 'in' }), [over('740 mm', '29.3 in')]],
    ['of another measure', most, figure('hatch', 'height', 900), []],
    [
      'of a measure that goes for it',
      most,
      figure('hatch', 'diameter', 741),
      [over('740 mm', '741 mm', 'diameter')],
    ],
    ['a size of no side', most, figure('hatch', 'size', 741), [over('740 mm', '741 mm', 'size')]],
    ['told roughly', most, wide(745, { bound: 'about' }), [over('740 mm', '745 mm')]],
    ['of another kind', most, heavy('hatch', 900), []],
    ['more than three times past it: another measure', most, wide(2221), []],
    ['three times past it', most, wide(2220), [over('740 mm', '2220 mm')]],
    ['of another thing', most, figure('shelf', 'width', 900), []],
    [
      'of a thing said more closely',
      most,
      figure('rear hatch', 'width', 741),
      ['limit rear hatch width 740 mm -> 741 mm: it is over the stated limit (open)'],
    ],
  ] as const)('%s', (_what, bound, told, expected) => {
    expect(held(bound, told).findings()).toEqual(expected);
  });

  test.each([
    ['height and length', 'height', 'length'],
    ['height and clearance', 'height', 'clearance'],
    ['gap and offset', 'offset', 'gap'],
  ] as const)('%s go for each other', (_what, said, own) => {
    expect(held(limit('hatch', said, 'at-most', 740), figure('hatch', own, 741)).findings()).toHaveLength(1);
  });

  test.each([
    ['width and height', 'width', 'height'],
    ['width and gap', 'width', 'gap'],
    ['room that must stay free, and a size', 'clearance', 'size'],
    ['a gap, and anything else', 'gap', 'other'],
  ] as const)('%s do not', (_what, said, own) => {
    expect(held(limit('hatch', said, 'at-most', 740), figure('hatch', own, 741)).findings()).toEqual([]);
  });

  test.each([
    ['temperature', 'degC'],
    ['ratio', '%'],
    ['time', 'h'],
  ] as const)('readings of %s pass limits all day long', (dimension, unit) => {
    const told = held(
      limit('hatch', 'other', 'at-most', 10, { dimension, unit }),
      figure('hatch', 'other', 11, { dimension, unit }),
    );
    expect(told.findings('limit')).toEqual([]);
  });

  test('the finding names the limit and the figure with their talk', () => {
    expect(findingViews(held(most, wide(760)).project.rows)).toMatchObject([
      {
        kind: 'limit',
        item: 'hatch',
        attribute: 'width',
        was: { value: 740, unit: 'mm', bound: 'at-most', source: { memoId: 'm1' } },
        now: { value: 760, unit: 'mm', bound: 'exact', source: { memoId: 'm2' } },
        difference: { value: 20, unit: 'mm' },
        why: 'it is over the stated limit',
        next: 'change the thing, change the limit, or say that it may stay',
        cost: 6,
      },
    ]);
  });

  test('said again it is not found again; another size is', () => {
    const told = held(most, wide(760));
    expect(told.memo('Talk three.', wide(760)).findings('limit')).toHaveLength(1);
    expect(told.memo('Talk four.', wide(770, { change: 'remeasured' })).findings('limit')).toEqual([
      over('740 mm', '760 mm'),
      over('740 mm', '770 mm'),
    ]);
  });

  test('a person lets it pass at that size, and at no other', () => {
    const told = held(most, wide(760));
    const findingId = findingViews(told.project.rows)[0]?.id ?? '';
    told.hand({ kind: 'finding-settled', findingId, choice: 'both-right' });
    told.memo('Talk three.', wide(760));
    expect(told.findings('limit')).toHaveLength(1);
    told.memo('Talk four.', wide(765, { change: 'remeasured' }));
    expect(told.findings('limit')).toHaveLength(2);
  });

  test('ten times a weight is a slip, a thousand times a length is one of the unit', () => {
    const mast = limit('mast', 'weight', 'at-most', 120, { dimension: 'mass', unit: 'kg' });
    expect(held(mast, heavy('mast', 1200)).findings()).toEqual([
      expect.stringMatching(
        /^slip mast weight 120 kg -> 1200 kg: .+, and nothing was said of a change \(open\)$/,
      ),
    ]);
    expect(held(limit('hatch', 'width', 'at-most', 740), wide(740, { unit: 'm' })).findings()).toEqual([
      expect.stringMatching(
        /^slip hatch width 740 mm -> 740 m: .+, and nothing was said of a change \(open\)$/,
      ),
    ]);
  });
});

describe('a later limit', () => {
  const most = (value: number, more: More = {}) => limit('hatch', 'width', 'at-most', value, more);

  test.each([
    ['the same again changes nothing', most(740), ['hatch width at-most 740 mm'], []],
    ['within the tolerance it is the same', most(741), ['hatch width at-most 740 mm'], []],
    [
      'another takes its place',
      most(760),
      ['hatch width at-most 760 mm'],
      [
        'decided hatch width 740 mm -> 760 mm: the later figure was said without a word about the earlier one (settled: take-new, said so)',
      ],
    ],
    [
      'told to be changed, it says so',
      most(760, { change: 'decided' }),
      ['hatch width at-most 760 mm'],
      ['decided hatch width 740 mm -> 760 mm: it was changed on purpose (settled: take-new, said so)'],
    ],
    [
      'on the other side it stands beside it',
      limit('hatch', 'width', 'at-least', 600),
      ['hatch width at-most 740 mm', 'hatch width at-least 600 mm'],
      [],
    ],
    [
      'of another measure too',
      limit('hatch', 'height', 'at-most', 600),
      ['hatch width at-most 740 mm', 'hatch height at-most 600 mm'],
      [],
    ],
    [
      'of another thing too',
      limit('stair', 'width', 'at-most', 600),
      ['hatch width at-most 740 mm', 'stair width at-most 600 mm'],
      [],
    ],
  ] as const)('%s', (_what, later, standing, findings) => {
    const told = held(most(740), later);
    expect(limits(told)).toEqual(standing);
    expect(told.findings()).toEqual(findings);
  });

  test('alike enough to be a slip leaves the earlier one in force', () => {
    const told = held(most(740), most(470));
    expect(limits(told)).toEqual(['hatch width at-most 740 mm']);
    expect(told.findings()).toEqual([
      expect.stringMatching(/^slip hatch width 740 mm -> 470 mm: .+ \(open\)$/),
    ]);
  });

  test('a figure is held to the later one alone', () => {
    const told = held(most(740), most(760));
    told.memo('Talk three.', figure('hatch', 'width', 750));
    expect(told.findings('limit')).toEqual([]);
    told.memo('Talk four.', figure('hatch', 'width', 765, { change: 'remeasured' }));
    expect(told.findings('limit')).toEqual([
      'limit hatch width 760 mm -> 765 mm: it is over the stated limit (open)',
    ]);
  });
});

describe('a limit said in the same breath as what passes it', () => {
  const play = (value: number, more: More = {}) =>
    figure('spindle', 'gap', value, { quote: 'The play is twelve', ...more });
  const wornOut = limit('spindle', 'gap', 'at-most', 10, { quote: 'anything over ten is worn out' });
  const SAID = 'The play is twelve, anything over ten is worn out.';
  const broken = ['limit spindle gap 10 mm -> 12 mm: it is over the stated limit (open)'];

  test.each([
    ['is broken by it', SAID, play(12), broken],
    ['is kept by what is within', SAID, play(10), []],
    ['is not broken by what was only meant to be', SAID, play(12, { state: 'target' }), []],
    ['nor by what was only guessed', SAID, play(12, { state: 'assumed' }), []],
    ['but by what was measured', SAID, play(12, { state: 'measured' }), broken],
    [
      'not where it follows from the figure',
      'The play is twelve, so anything over ten is worn out.',
      play(12),
      [],
    ],
    ['not where the figure is told roughly', SAID, play(12, { bound: 'about' }), []],
    ['not where the two are far apart', SAID, play(21), []],
    [
      'by what is half of it apart',
      SAID,
      play(20),
      ['limit spindle gap 10 mm -> 20 mm: it is over the stated limit (open)'],
    ],
    ['not by another measure', SAID, figure('spindle', 'length', 12, { quote: 'The play is twelve' }), []],
    ['not in another sentence', 'The play is twelve. Well, anything over ten is worn out.', play(12), []],
  ] as const)('%s', (_what, text, told, expected) => {
    expect(story([text, told, wornOut]).findings()).toEqual(expected);
  });

  test('older figures are not looked at until they are said again', () => {
    const told = story(['The play is twelve.', play(12)], ['So anything over ten is worn out.', wornOut]);
    expect(told.findings()).toEqual([]);
    told.memo('The play is twelve.', play(12));
    expect(told.findings()).toEqual(broken);
  });
});

describe('a limit that a person sets', () => {
  const set = (told: NotedStory, value: number, more = {}) =>
    told.hand({
      kind: 'limit-set',
      item: 'hatch',
      attribute: 'width',
      about: '',
      bound: 'at-most',
      quantity: { value, unit: 'mm' },
      ...more,
    });

  test('is held against what stands already', () => {
    const told = set(story(['Talk one.', figure('hatch', 'width', 760), figure('shelf', 'width', 900)]), 740);
    expect(limits(told)).toEqual(['hatch width at-most 740 mm']);
    expect(told.findings()).toEqual([
      'limit hatch width 740 mm -> 760 mm: it is over the stated limit (open)',
    ]);
  });

  test.each([
    ['what is within it', [figure('hatch', 'width', 740)]],
    ['a limit', [limit('hatch', 'width', 'at-least', 760)]],
    ['another measure', [figure('hatch', 'height', 760)]],
  ] as const)('finds nothing in %s', (_what, notes) => {
    expect(set(story(['Talk one.', ...notes]), 740).findings()).toEqual([]);
  });

  test('is held against what was worked out', () => {
    const told = story(['Talk one.', figure('frame', 'width', 800)]).hand({
      kind: 'formula-set',
      item: 'hatch',
      attribute: 'width',
      formula: 'frame width - 40 mm',
    });
    expect(set(told, 740).findings()).toEqual([
      'limit hatch width 740 mm -> 760 mm: it is over the stated limit (open)',
    ]);
  });
});

describe('what is stated for all that meets it', () => {
  const door = limit('doorway', 'width', 'at-most', 740, {
    limit: { about: 'machine' },
    quote: 'no machine wider than 740 comes in',
  });
  const bound = (text: string, told: NoteToTell) =>
    story(['Remember, no machine wider than 740 comes in through the doorway.', door], [text, told]).findings(
      'limit',
    );

  test.each([
    ['a machine by its name', 'The lathe is 750 wide.', figure('lathe', 'width', 750), 1],
    ['a machine that fits', 'The lathe is 740 wide.', figure('lathe', 'width', 740), 0],
    ['the machine itself', 'The machine is 750 wide.', figure('machine', 'width', 750), 1],
    ['no way through', 'The gate is 750 wide.', figure('gate', 'width', 750), 0],
    ['no other measure of it', 'The lathe is 750 long.', figure('lathe', 'length', 750), 0],
    ['not far past it', 'The lathe is 2300 wide.', figure('lathe', 'width', 2300), 0],
  ] as const)('binds %s', (_what, text, told, found) => {
    expect(bound(text, told)).toHaveLength(found);
  });
});
