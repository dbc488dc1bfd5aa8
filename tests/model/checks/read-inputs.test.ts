/** An input of a check as it was asked for: its range, what it reads, what it is called; or why it has no value. */
import { describe, expect, test } from 'vitest';
import type { CheckView } from '../../../src/model/checks/check-views.ts';
import { checkViews } from '../../../src/model/checks/check-views.ts';
import { figure, NotedStory } from '../../kit/noted-story.ts';

/** A bay with several sizes, a shelf with one, and what bounds they were told with. */
const wall = () =>
  new NotedStory().memo(
    'Talk of the wall.',
    figure('bay', 'width', 1850, { plusMinus: 2 }),
    figure('bay', 'height', 2000, { bound: 'about' }),
    figure('shelf', 'length', 1840),
    figure('rail', 'length', 900, { bound: 'at-least', limit: { about: '' } }),
    figure('hook', 'weight', 3, { dimension: 'mass', unit: 'kg' }),
    figure('roof', 'angle', 30, { dimension: 'angle', unit: 'deg' }),
    figure('post', 'width', 45, { state: 'measured' }),
    figure('post', 'width', 70, { state: 'target' }),
  );

const added = (told: NotedStory, check: string, inputs: Readonly<Record<string, string>>): CheckView => {
  const list = Object.entries(inputs).map(([input, expression]) => ({ input, expression }));
  told.hand({ kind: 'check-added', check, inputs: list });
  return checkViews(told.project.rows).at(-1) as CheckView;
};

/** The opening of a clearance, asked for in these words. */
function opening(expression: string) {
  const view = added(wall(), 'clearance', { opening: expression, part: '100 mm', gap: '1 mm' });
  return {
    ...(view.inputs.find(({ name }) => name === 'opening') as CheckView['inputs'][number]),
    ask: view.ask,
  };
}

/** `1848 1850 1852 mm`; two ends that are one are told once. */
const rangeOf = ({ range }: { readonly range?: { low: number; mid: number; high: number; unit: string } }) =>
  range && `${[...new Set([range.low, range.mid, range.high])].join(' ')} ${range.unit}`;

describe('an input is', () => {
  test.each([
    ['a quantity', '560 mm', '560 mm', '560 mm'],
    ['a quantity in another unit', '56 cm', '56 cm', '56 cm'],
    ['a sum of quantities', '560 mm + 2 cm', '560 mm + 2 cm', '580 mm'],
    ['a figure by its thing and measure', 'bay width', 'bay width', '1848 1850 1852 mm'],
    ['the only figure of a thing by its name', 'shelf', 'shelf length', '1840 mm'],
    ['a figure less a quantity', 'bay width - 50 mm', 'bay width - 50 mm', '1798 1800 1802 mm'],
    ['twice a figure', '2 * shelf length', '2 * shelf length', '3680 mm'],
    ['the difference of two figures', 'bay width - shelf', 'bay width - shelf length', '8 10 12 mm'],
    ['between two ends', 'between 3 mm and 5 mm', 'between 3 mm and 5 mm', '3 4 5 mm'],
    ['from one end to the other', '3 mm to 5 mm', 'between 3 mm and 5 mm', '3 4 5 mm'],
    ['with a tolerance', '500 mm give or take 2 mm', '500 mm +- 2 mm', '498 500 502 mm'],
    ['with a bare tolerance in its own unit', '500 mm give or take 2', '500 mm +- 2 mm', '498 500 502 mm'],
    ['with a tolerance in another unit', '500 mm ± 1 cm', '500 mm +- 1 cm', '490 500 510 mm'],
    [
      'a figure with a wider tolerance of its own',
      'shelf ± 3 mm',
      'shelf length +- 3 mm',
      '1837 1840 1843 mm',
    ],
  ])('%s', (_what, expression, words, range) => {
    const read = opening(expression);
    expect({ words: read.expression, range: rangeOf(read) }).toEqual({ words, range });
    expect(read.missing).toBeUndefined();
    expect(read.open).toBeUndefined();
  });

  test.each([
    ['at least 1900 mm', 'at least 1900 mm', '1900 mm', 'above'],
    ['at most 1900 mm', 'at most 1900 mm', '1900 mm', 'below'],
    ['rail length', 'rail length', '900 mm', 'above'],
    ['rail length + 10 mm', 'rail length + 10 mm', '910 mm', 'above'],
  ])('open at an end: %s', (expression, words, range, open) => {
    const read = opening(expression);
    expect({ words: read.expression, range: rangeOf(read), open: read.open }).toEqual({ words, range, open });
  });

  test('a figure with what it was told with and where', () => {
    const source = { memoId: 'm1', recordedAt: '2026-02-01T17:00:00+01:00', quote: 'Talk of the wall.' };
    expect(opening('bay width').reads).toEqual([
      { name: 'bay width', value: 1850, unit: 'mm', bound: 'exact', tolerance: 2, source },
    ]);
    expect(opening('2 * bay width - shelf').reads.map(({ name }) => name)).toEqual([
      'bay width',
      'shelf length',
    ]);
    expect(opening('560 mm').reads).toEqual([]);
  });
});

describe('an input has no value', () => {
  const neverSaid = (words: string) => [
    `the ${words} was never said`,
    `say it, or: hearwright figures set "${words} = … mm"`,
  ];
  const UNIT = 'write it with its unit: "opening=560 mm"';

  test.each([
    ['where nobody said it', 'bay depth', neverSaid('bay depth')],
    ['where nobody spoke of the thing', 'niche width', neverSaid('niche width')],
    [
      'where a thing has several',
      'bay',
      ['"bay" has several figures: bay width, bay height', 'name one of them: opening=bay width'],
    ],
    ['where one part of it was never said', 'bay width - lip width', neverSaid('lip width')],
    ['as a bare number', '560', ['opening: a number alone has no unit', UNIT]],
    [
      'of another kind',
      'hook weight',
      [
        'opening: it is a mass, and a length is wanted: clear size of the opening, one for each direction',
        UNIT,
      ],
    ],
    [
      'as a share of two figures',
      'bay width / shelf length',
      [
        'opening: it is a plain number, and a length is wanted: clear size of the opening, one for each direction',
        UNIT,
      ],
    ],
    ['where kinds do not add', 'bay width + hook weight', ['opening: length and mass do not add', UNIT]],
  ] as const)('%s', (_what, expression, [why, ask]) => {
    const read = opening(expression);
    expect([read.range, read.missing]).toEqual([undefined, why]);
    expect(read.ask).toEqual([ask]);
  });

  test.each(['bay width +', '(bay width', '560 mm mm', '* 3'])(
    'as "%s", which cannot be read',
    (expression) => {
      const read = opening(expression);
      expect(read.range).toBeUndefined();
      expect(read.missing).toMatch(/^opening: ".*" cannot be read: ./);
      expect(read.ask).toEqual([UNIT]);
    },
  );

  test('where it was not given: the check asks for it, and tells what it is', () => {
    const view = added(wall(), 'clearance', { part: '100 mm' });
    expect([view.state, view.why, view.ask]).toEqual([
      'not-run',
      'opening was not given (clear size of the opening, one for each direction)',
      ['say it, or: hearwright checks add clearance … "opening=… mm"'],
    ]);
  });

  test('it gets one when the figure is said, and the check is worked out', () => {
    const told = wall();
    const before = added(told, 'clearance', { opening: 'bay depth', part: '100 mm', gap: '1 mm' });
    expect(before.state).toBe('not-run');
    told.memo('Talk of the bay.', figure('bay', 'depth', 400));
    const [after] = checkViews(told.project.rows);
    expect([after?.state, after?.inputs[0]?.reads[0]?.source?.memoId]).toEqual(['holds', 'm2']);
  });
});

describe('a fall', () => {
  const fall = (expression: string) => {
    const view = added(
      new NotedStory().memo(
        'Talk of the drain.',
        figure('drain', 'ratio', 2, { dimension: 'ratio', unit: '%' }),
        figure('gutter', 'ratio', 0.02, { dimension: 'ratio', unit: '1' }),
      ),
      'fall over a run',
      { run: '4 m', fall: expression },
    );
    return view;
  };

  test.each(['1 in 50', 'one in 50', '1/50', '50', '2 %', 'drain ratio'])(
    'of "%s" is one in fifty',
    (expression) => {
      const view = fall(expression);
      expect(view.state).not.toBe('not-run');
      const drop = view.results.find(({ unit }) => unit === 'mm' || unit === 'm');
      expect(drop && (drop.unit === 'm' ? drop.mid * 1000 : drop.mid)).toBeCloseTo(80, 6);
    },
  );
});
