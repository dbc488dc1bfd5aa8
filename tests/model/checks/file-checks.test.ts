/** Checks that run by themselves: when one is said anew, when it is found broken, and what settles it. */
import { describe, expect, test } from 'vitest';
import { checkViews } from '../../../src/model/checks/check-views.ts';
import { findingViews } from '../../../src/model/project-views.ts';
import { figure, NotedStory, type NoteToTell } from '../../kit/noted-story.ts';

const wall = () =>
  new NotedStory().memo('Talk of the wall.', figure('bay', 'width', 1850), figure('shelf', 'length', 1840));
type Inputs = Readonly<Record<string, string>>;
const listOf = (inputs: Inputs) =>
  Object.entries(inputs).map(([input, expression]) => ({ input, expression }));
const add = (told: NotedStory, inputs: Inputs, more = {}) =>
  told.hand({ kind: 'check-added', check: 'clearance', inputs: listOf(inputs), ...more });
const spoken = (inputs: Inputs): NoteToTell => ({
  kind: 'check',
  check: 'clearance',
  inputs: listOf(inputs),
});
const FITS = { opening: 'bay width', part: 'shelf length', gap: '4 mm' };
const TIGHT = { ...FITS, gap: '6 mm' };

/** `s5 holds: 2 mm left` of each check that stands. */
const checks = (told: NotedStory) =>
  checkViews(told.project.rows).map(({ id, state, why }) => `${id} ${state}: ${why}`);
/** `m2.c1 open clearance (bay, shelf): 2 mm short` */
const found = (told: NotedStory) =>
  findingViews(told.project.rows)
    .filter(({ kind }) => kind === 'check')
    .map(
      ({ item, why, status, settledBy }) =>
        `${item}: ${why} (${settledBy ? `${settledBy.choice}: ${settledBy.reason}` : status})`,
    );

describe('a check', () => {
  test('that holds finds nothing', () => {
    const told = add(wall(), FITS);
    expect(checks(told)).toEqual(['s5 holds: 2 mm left at worst']);
    expect(found(told)).toEqual([]);
  });

  test('that does not is a finding about what its figures are of', () => {
    const told = add(wall(), TIGHT);
    expect(checks(told)).toEqual(['s5 broken: 2 mm short at worst']);
    expect(found(told)).toEqual(['clearance (bay, shelf): 2 mm short at worst (open)']);
    expect(findingViews(told.project.rows)).toMatchObject([
      {
        kind: 'check',
        checkId: 's5',
        attribute: 'other',
        cost: 5,
        was: { value: 0, unit: '' },
        now: { value: 0, unit: '' },
      },
    ]);
  });

  test.each([
    ['no figures', { opening: '100 mm', part: '99 mm', gap: '4 mm' }, {}, 'clearance'],
    [
      'no figures, by the words that a person put to it',
      { opening: '100 mm', part: '99 mm', gap: '4 mm' },
      { note: 'it slides' },
      'clearance (it slides)',
    ],
    ['figures, whatever words were put to it', TIGHT, { note: 'it slides' }, 'clearance (bay, shelf)'],
  ] as const)('of %s is called', (_what, inputs, more, name) => {
    expect(found(add(wall(), inputs, more))[0]?.split(':')[0]).toBe(name);
  });

  test('of more than four things is called by four', () => {
    const names = ['gate', 'rail', 'loft', 'sink', 'lamp', 'step'];
    const told = new NotedStory().memo('Talk.', ...names.map((name) => figure(name, 'length', 100)));
    const sum = (count: number) =>
      names
        .slice(0, count)
        .map((name) => `${name} length`)
        .join(' + ');
    const name = (count: number) =>
      found(add(told, { opening: '10 mm', part: sum(count) }))
        .at(-1)
        ?.split(':')[0];
    expect(name(4)).toBe('clearance (gate, rail, loft, sink)');
    expect(name(5)).toBe('clearance (gate, rail, loft, sink, 1 more)');
    expect(name(6)).toBe('clearance (gate, rail, loft, sink, 2 more)');
  });
});

describe('a figure of it changes', () => {
  const wider = (value: number) => figure('bay', 'width', value, { change: 'decided' });

  test('it breaks, and the words are those that broke it', () => {
    const told = add(wall(), FITS).memo('Talk of the bay.', wider(1845));
    expect(found(told)).toEqual(['clearance (bay, shelf): 3 mm short at worst (open)']);
    expect(findingViews(told.project.rows).find(({ kind }) => kind === 'check')?.now.source).toMatchObject({
      memoId: 'm2',
      quote: 'Talk of the bay.',
    });
  });

  test('it holds again', () => {
    const told = add(wall(), TIGHT).memo('Talk of the bay.', wider(1860));
    expect(checks(told)).toEqual(['s5 holds: 8 mm left at worst']);
    expect(found(told)).toEqual([
      'clearance (bay, shelf): 2 mm short at worst (holds-again: it holds again: 8 mm left at worst)',
    ]);
  });

  test('it is broken otherwise', () => {
    const told = add(wall(), TIGHT).memo('Talk of the bay.', wider(1845));
    expect(found(told)).toEqual([
      'clearance (bay, shelf): 2 mm short at worst (changed-again: its figures have changed since)',
      'clearance (bay, shelf): 7 mm short at worst (open)',
    ]);
  });

  test('it is as it was: said again or of another thing it is found once', () => {
    const told = add(wall(), TIGHT)
      .memo('Talk again.', figure('bay', 'width', 1850))
      .memo('Talk of more.', figure('rail', 'width', 70));
    expect(found(told)).toEqual(['clearance (bay, shelf): 2 mm short at worst (open)']);
  });

  test('since when it is so stands beside it', () => {
    const told = add(wall(), FITS);
    const since = () => checkViews(told.project.rows)[0]?.since.slice(0, 10);
    expect(since()).toBe('2026-02-28');
    told.memo('Talk of the bay.', wider(1856));
    expect([checks(told), since()]).toEqual([['s5 holds: 8 mm left at worst'], '2026-02-28']);
    told.memo('Talk of the bay.', wider(1845));
    expect([checks(told), since()]).toEqual([['s5 broken: 3 mm short at worst'], '2026-02-03']);
  });
});

describe('asked for again', () => {
  const ids = (told: NotedStory) => checkViews(told.project.rows).map(({ id }) => id);

  test.each([
    ['in the same words it is one', FITS, ['s5']],
    ['with another number it takes the place of the old one', TIGHT, ['s6']],
    ['of another figure it is another', { ...FITS, part: 'rail length' }, ['s5', 's6']],
    [
      'with two other numbers it is another',
      { opening: 'bay width + 1 mm', part: 'shelf length', gap: '5 mm' },
      ['s5', 's6'],
    ],
    ['with one input less it is another', { opening: 'bay width', part: 'shelf length' }, ['s5', 's6']],
    ['by other names of its figures it is one', { ...FITS, part: 'shelf' }, ['s5']],
  ] as const)('%s', (_what, inputs, expected) => {
    expect(ids(add(add(wall(), FITS), inputs))).toEqual(expected);
  });

  test('of plain numbers, with another one, it is another', () => {
    const plain = { opening: '100 mm', part: '90 mm', gap: '4 mm' };
    expect(ids(add(add(wall(), plain), { ...plain, gap: '5 mm' }))).toEqual(['s5', 's6']);
  });

  test('with another convention it is another', () => {
    expect(ids(add(add(wall(), FITS), FITS, { options: { 'gap on': 'one side' } }))).toEqual(['s5', 's6']);
  });

  test('what the old one found is settled', () => {
    expect(found(add(add(wall(), TIGHT), FITS))).toEqual([
      'clearance (bay, shelf): 2 mm short at worst (taken-away: it was said anew)',
    ]);
  });

  test('in talk it is the same as by hand', () => {
    expect(
      ids(wall().memo('It has to go in with 4 to spare.', spoken(FITS)).memo('Again.', spoken(TIGHT))),
    ).toEqual(['m3.r1']);
    expect(ids(add(wall(), FITS).memo('It has to go in with 4 to spare.', spoken(FITS)))).toEqual(['s5']);
  });
});

describe('taken away', () => {
  test('it is gone, and so is what it found', () => {
    const told = add(wall(), TIGHT).hand({ kind: 'check-removed', checkId: 's5' });
    expect(checks(told)).toEqual([]);
    expect(found(told)).toEqual([
      'clearance (bay, shelf): 2 mm short at worst (taken-away: the check was taken away)',
    ]);
    told.memo('Talk of the bay.', figure('bay', 'width', 1800, { change: 'decided' }));
    expect(found(told)).toHaveLength(1);
  });

  test('it may be asked for again', () => {
    const told = add(add(wall(), FITS).hand({ kind: 'check-removed', checkId: 's5' }), FITS);
    expect(checks(told)).toEqual(['s7 holds: 2 mm left at worst']);
  });

  test('an id that is none changes nothing', () => {
    expect(checks(add(wall(), FITS).hand({ kind: 'check-removed', checkId: 's9' }))).toEqual([
      's5 holds: 2 mm left at worst',
    ]);
  });
});

test.each([
  ['clearances', FITS, 'no check is called "clearances"'],
  ['clearance', { ...FITS, slack: '4 mm' }, /slack/],
] as const)('"%s" with %j says what is wrong', (check, inputs, why) => {
  const told = wall().hand({ kind: 'check-added', check, inputs: listOf(inputs) });
  const [view] = checkViews(told.project.rows);
  expect(view?.state).not.toBe('holds');
  if (typeof why === 'string') expect(view?.why).toBe(why);
  else expect(view?.why).toMatch(why);
});
