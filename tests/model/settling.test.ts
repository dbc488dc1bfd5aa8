/** What each choice of a person does to the figures and limits behind each kind of finding. */
import { describe, expect, test } from 'vitest';
import type { FindingSettled } from '../../src/model/events.ts';
import { findingViews, limitViews, standingFigures } from '../../src/model/project-views.ts';
import type { FindingView } from '../../src/model/views.ts';
import { came, figure, NotedStory, type NoteToTell, ordered } from '../kit/noted-story.ts';
import { AT } from '../kit/told-story.ts';

type Choice = FindingSettled['choice'];
const CHOICES: readonly Choice[] = ['keep-old', 'take-new', 'both-right', 'correct'];
const story = (...memos: readonly (NoteToTell | readonly NoteToTell[])[]) =>
  memos.reduce<NotedStory>(
    (told, notes, day) => told.memo(`Talk of day ${day + 1}.`, ...([notes].flat() as NoteToTell[])),
    new NotedStory(),
  );
const shelf = (value: number, more = {}) => figure('shelf', 'depth', value, more);
const most = (value: number, more = {}) =>
  figure('hatch', 'width', value, { bound: 'at-most', limit: { about: '' }, ...more });

/** Settles the finding of a kind; a right value of 333 mm goes with `correct`. */
function settled(told: NotedStory, kind: FindingView['kind'], choice: Choice): NotedStory {
  const finding = findingViews(told.project.rows).find((one) => one.kind === kind);
  if (!finding) throw new Error(`no ${kind} was found`);
  const value = choice === 'correct' ? { value: { value: 333, unit: 'mm' } } : {};
  return told.hand({ kind: 'finding-settled', findingId: finding.id, choice, ...value });
}
/** What stands with its rule, and what became of each claim. */
const stands = (told: NotedStory, item: string) =>
  standingFigures(told.project.rows, item)
    .filter(({ bound }) => bound === 'exact')
    .flatMap(({ value, status, rule, history }) => [
      `${value} ${status}: ${rule}`,
      history.map((claim) => `${claim.value} ${claim.status}`).join(', '),
    ]);
const limits = (told: NotedStory) =>
  limitViews(told.project.rows).map(
    ({ item, bound, value, high, unit }) =>
      `${item} ${bound} ${value}${high === undefined ? '' : `-${high}`} ${unit}`,
  );

describe('a likely slip', () => {
  const SETTLED = 'settled by a person';
  test.each([
    ['keep-old', [`915 stands: ${SETTLED}`, '915 standing, 951 rejected']],
    ['take-new', [`951 stands: ${SETTLED}`, '915 superseded, 951 standing']],
    ['both-right', [`915 stands: ${SETTLED}`, '915 standing, 951 standing']],
    ['correct', ['333 stands: set by hand', '915 superseded, 951 rejected, 333 standing']],
  ] as const)('%s', (choice, expected) => {
    const told = settled(story(shelf(915), shelf(951)), 'slip', choice);
    expect(stands(told, 'shelf')).toEqual(expected);
    const [finding] = findingViews(told.project.rows);
    expect([finding?.status, finding?.settledBy]).toEqual([
      'settled',
      { choice, at: AT, ...(choice === 'correct' ? { value: { value: 333, unit: 'mm' } } : {}) },
    ]);
  });

  test('after both were right neither clashes when it is said again; a third does', () => {
    const told = () => settled(story(shelf(915), shelf(951)), 'slip', 'both-right');
    expect(told().memo('Talk.', shelf(951)).findings()).toHaveLength(1);
    expect(told().memo('Talk.', shelf(915)).findings()).toHaveLength(1);
    expect(told().memo('Talk.', shelf(980)).findings()).toHaveLength(2);
  });

  test('settled as it was found, also where its id has come to mean another', () => {
    const told = story(shelf(915), shelf(951));
    const finding = (more = {}) => ({
      item: 'shelf',
      attribute: 'depth' as const,
      was: { value: 915, unit: 'mm' },
      now: { value: 951, unit: 'mm' },
      ...more,
    });
    const by = (findingId: string, one: ReturnType<typeof finding>) =>
      told.hand({ kind: 'finding-settled', findingId, choice: 'take-new', finding: one });
    const open = () => findingViews(told.project.rows, { status: 'open' }).length;
    by('m2.c1', finding({ now: { value: 950, unit: 'mm' } }));
    by('m2.c1', finding({ was: { value: 915, unit: 'cm' } }));
    by('m2.c1', finding({ attribute: 'width' }));
    by('m2.c1', finding({ item: 'rail' }));
    expect(open()).toBe(1);
    by('m9.c9', finding({ item: 'the shelf' }));
    expect(open()).toBe(0);
  });
});

describe('a figure that was changed', () => {
  test.each([
    ['keep-old', ['300 stands: settled by a person', '300 standing, 350 superseded']],
    ['take-new', ['350 stands: settled by a person', '300 superseded, 350 standing']],
    ['both-right', ['350 stands: settled by a person', '300 superseded, 350 standing']],
    ['correct', ['333 stands: set by hand', '300 superseded, 350 superseded, 333 standing']],
  ] as const)('%s', (choice, expected) => {
    expect(stands(settled(story(shelf(300), shelf(350)), 'decided', choice), 'shelf')).toEqual(expected);
  });

  test('what follows from it follows the side that holds', () => {
    const told = () =>
      story([shelf(300), figure('lip', 'depth', 280)])
        .hand({ kind: 'formula-set', item: 'lip', attribute: 'depth', formula: 'shelf depth - 20 mm' })
        .memo('Talk of day 2.', shelf(350));
    expect(stands(told(), 'lip')[0]).toBe('330 stale: worked out: shelf depth - 20 mm');
    expect(stands(settled(told(), 'decided', 'keep-old'), 'lip')[0]).toMatch(/^280 stands: worked out/);
    expect(stands(settled(told(), 'decided', 'correct'), 'lip')[0]).toMatch(/^313 stale: worked out/);
  });

  test('what a formula set by hand gave: the old one, the new one, both, and another', () => {
    const told = (choice: Choice, ...own: readonly NoteToTell[]) =>
      stands(
        settled(
          story([shelf(300), ...own])
            .hand({ kind: 'formula-set', item: 'lip', attribute: 'depth', formula: 'shelf depth - 20 mm' })
            .memo('Talk of day 2.', shelf(350)),
          'stale',
          choice,
        ),
        'lip',
      )[0];
    const expected = [
      '280 stands: settled by a person',
      '330 stands: settled by a person',
      '330 stands: settled by a person',
      '333 stands: set by hand',
    ];
    expect(CHOICES.map((choice) => told(choice, figure('lip', 'depth', 280)))).toEqual(expected);
    expect(CHOICES.map((choice) => told(choice))).toEqual(expected);
  });

  test('what was worked out anew: the old one, the new one, both', () => {
    const told = (choice: Choice) =>
      stands(
        settled(
          story([shelf(300), figure('lip', 'depth', 280, { formula: 'shelf depth - 20 mm' })], shelf(350)),
          'stale',
          choice,
        ),
        'lip',
      )[0];
    expect(CHOICES.map(told)).toEqual([
      '280 stands: settled by a person',
      '330 stands: settled by a person',
      '330 stands: settled by a person',
      '333 stands: set by hand',
    ]);
  });
});

describe('a broken limit', () => {
  const told = () => story(most(740), figure('hatch', 'width', 760));
  test.each([
    ['keep-old', ['hatch at-most 740 mm'], '760 stands: first said'],
    ['take-new', ['hatch at-most 760 mm'], '760 stands: first said'],
    ['both-right', ['hatch at-most 740 mm'], '760 stands: first said'],
    ['correct', ['hatch at-most 740 mm'], '333 stands: set by hand'],
  ] as const)('%s', (choice, standing, size) => {
    const one = settled(told(), 'limit', choice);
    expect(limits(one)).toEqual(standing);
    expect(stands(one, 'hatch')[0]).toBe(size);
  });

  test.each([
    ['keep-old', 760, 2],
    ['take-new', 760, 1],
    ['take-new', 765, 2],
    ['both-right', 760, 1],
    ['both-right', 765, 2],
  ] as const)('%s, and then %d', (choice, value, count) => {
    const one = settled(told(), 'limit', choice);
    one.memo('Talk of day 3.', figure('hatch', 'width', value, { change: 'remeasured' }));
    expect(one.findings('limit')).toHaveLength(count);
  });

  test.each([
    ['past its upper end', 745, 'hatch between 700-745 mm'],
    ['past its lower end', 690, 'hatch between 690-740 mm'],
  ])('of two ends the one that was passed gives way: %s', (_what, value, line) => {
    const both = most(700, { bound: 'between', high: 740 });
    expect(limits(settled(story(both, figure('hatch', 'width', value)), 'limit', 'take-new'))).toEqual([
      line,
    ]);
  });
});

describe('two statements of a limit', () => {
  const decided = () => story(most(740), most(760));
  const slip = () => story(most(740), most(470));
  test.each([
    ['changed', decided, 'decided', ['740', '760', '740 760', '333']],
    ['a slip', slip, 'slip', ['740', '470', '740 470', '333']],
  ] as const)('%s: old, new, both, another', (_what, told, kind, expected) => {
    const values = CHOICES.map((choice) =>
      limitViews(settled(told(), kind, choice).project.rows)
        .map(({ value }) => value)
        .join(' '),
    );
    expect(values.map((one) => one.split(' ').sort().reverse().join(' '))).toEqual(
      expected.map((one) => one.split(' ').sort().reverse().join(' ')),
    );
  });
});

test.each(CHOICES)('what came is what came, and %s moves no figure', (choice) => {
  const told = story(ordered('ash pegs', { count: 8 }), came('ash pegs', { count: 6 }));
  const before = standingFigures(told.project.rows);
  const one = settled(told, 'received', choice);
  expect(standingFigures(one.project.rows)).toEqual(before);
  expect(findingViews(one.project.rows)).toMatchObject([{ status: 'settled', settledBy: { choice } }]);
});
