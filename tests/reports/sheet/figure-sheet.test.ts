import { type Node, Parser } from 'commonmark';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Quantity } from '../../../src/language/notes.ts';
import type { LimitView, StandingFigure } from '../../../src/model/views.ts';
import { figureSheet, type SheetContents } from '../../../src/reports/sheet/figure-sheet.ts';
import { offText, tapeReading } from '../../../src/reports/sheet/length-words.ts';
import { FIGURES, PROJECT, STALE } from '../../kit/bakery-wagon.ts';
import { hostileWords } from '../../kit/hostile-words.ts';

const LIMIT: LimitView = {
  id: 'm1.l1',
  item: 'side door',
  attribute: 'width',
  about: 'trays',
  bound: 'at-most',
  value: 690,
  unit: 'mm',
  source: {
    memoId: 'm1',
    recordedAt: '2026-02-02T17:30:00+01:00',
    quote: 'nothing over 690',
    startSeconds: 40,
  },
};
const DOUGH: StandingFigure = {
  item: 'dough trough',
  attribute: 'length',
  dimension: 'length',
  value: 93.3125,
  unit: 'in',
  bound: 'exact',
  state: 'measured',
  tolerance: { value: 0.0625, unit: 'in', from: 'said' },
  status: 'in-doubt',
  rule: 'first said',
  source: {
    memoId: 'm1',
    recordedAt: '2026-02-02T17:30:00+01:00',
    quote: 'ninety-three and five sixteenths',
    startSeconds: 50,
  },
  history: [],
  dependents: [],
};
const CONTENTS: SheetContents = {
  project: PROJECT,
  figures: [...FIGURES, DOUGH],
  findings: [STALE],
  limits: [LIMIT],
  date: '2026-02-07',
};

test('what is not settled comes first and is marked again at its size', async () => {
  await expect(figureSheet(CONTENTS)).toMatchFileSnapshot('../pages/figure-sheet.md');
  expect(figureSheet(CONTENTS)).toBe(figureSheet(CONTENTS));
});

test('a size that an open clash tells of is marked, whatever its own state', () => {
  const [ledge] = FIGURES as [StandingFigure];
  const finding = { ...STALE, item: 'oven ledge', attribute: 'height' } as const;
  expect(figureSheet({ ...CONTENTS, figures: [ledge], findings: [finding] })).toContain(
    '- **NOT SETTLED** height **915 mm**',
  );
  expect(
    figureSheet({ ...CONTENTS, figures: [ledge], findings: [{ ...finding, status: 'settled' }] }),
  ).toContain('1 figure of 1 thing; no clash is on record.');
});

test('counts and series of readings are no sizes; without any the sheet says so', () => {
  const [ledge] = FIGURES as [StandingFigure];
  const none = figureSheet({
    ...CONTENTS,
    figures: [
      { ...ledge, dimension: 'count' },
      { ...ledge, status: 'series' },
    ],
    findings: [],
    limits: [],
  });
  expect(none).toBe('# Figures: Bakery wagon, Saturday 2026-02-07\n\nNo figure stands yet.\n');
});

// 1 in is 25.4 mm exactly: international yard and pound agreement, 1959. Worked by hand.
test.each<[Quantity & { bound?: StandingFigure['bound'] }, string, string, string]>([
  [{ value: 915, unit: 'mm' }, '915 mm', '36 in (3 ft 0 in)', '0.6 mm under'],
  [{ value: 36, unit: 'in' }, '914.4 mm', '36 in (3 ft 0 in)', 'exact'],
  [{ value: 18, unit: 'mm' }, '18 mm', '11/16 in', '0.54 mm under'],
  [{ value: 1 / 3, unit: 'in' }, '≈ 8.5 mm', '5/16 in', '0.53 mm under'],
  [{ value: 690, unit: 'mm', bound: 'exact' }, '690 mm', '27 3/16 in (2 ft 3 3/16 in)', '0.56 mm over'],
  [{ value: 690, unit: 'mm', bound: 'at-most' }, '690 mm', '27 1/8 in (2 ft 3 1/8 in)', '1.02 mm under'],
  [{ value: 690, unit: 'mm', bound: 'at-least' }, '690 mm', '27 3/16 in (2 ft 3 3/16 in)', '0.56 mm over'],
])('%j reads %s, %s, %s', (length, metric, inches, off) => {
  const reading = tapeReading(length);
  expect([reading?.metric, reading?.inches, reading && offText(reading)]).toEqual([metric, inches, off]);
});

test('the mark is never more than half a sixteenth off, and a limit is never read past itself', () => {
  const inches = (text: string) => {
    const [, whole = '0', top = '0', under = '1'] = /^(?:(\d+)(?: |$))?(?:(\d+)\/(\d+))?/.exec(text) ?? [];
    return Number(whole) + Number(top) / Number(under);
  };
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 200_000 }), (tenths) => {
      const value = tenths / 10;
      const mark = (bound: 'exact' | 'at-most' | 'at-least') =>
        inches((tapeReading({ value, unit: 'mm', bound })?.inches ?? '').replace(/ in.*$/, '')) * 25.4;
      expect(Math.abs(mark('exact') - value)).toBeLessThanOrEqual(25.4 / 32 + 1e-9);
      expect(mark('at-most')).toBeLessThanOrEqual(value + 1e-9);
      expect(mark('at-least')).toBeGreaterThanOrEqual(value - 1e-9);
    }),
  );
});

function shapeOf(markdown: string): string {
  const walker = new Parser().parse(markdown).walker();
  const shape: string[] = [];
  for (let step = walker.next(); step; step = walker.next()) {
    const node: Node = step.node;
    if (node.type !== 'text' && node.type !== 'softbreak')
      shape.push(`${step.entering ? '+' : '-'}${node.type}`);
  }
  return shape.join(' ');
}

test('no hostile word changes the structure of the sheet', () => {
  const sheet = (words: string) => {
    const source = { ...LIMIT.source, quote: words };
    return figureSheet({
      project: { ...PROJECT, name: words },
      figures: [{ ...DOUGH, item: words, source, formula: words }],
      findings: [{ ...STALE, id: words, item: words, why: words, was: { ...STALE.was, source } }],
      limits: [{ ...LIMIT, item: words, about: words, source }],
      date: '2026-02-07',
    });
  };
  const plain = shapeOf(sheet('plain'));
  fc.assert(
    fc.property(hostileWords, (words) => {
      expect(shapeOf(sheet(words))).toBe(plain);
      expect(sheet(words)).not.toMatch(/[^\P{Cc}\n]|[\u202a-\u202e]/u);
    }),
    { numRuns: 200 },
  );
});
