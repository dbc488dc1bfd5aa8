/** Which panels a stretch of talk works through, and which of them it names. */
import { describe, expect, test } from 'vitest';
import { behindWork, isNamedIn } from '../../../src/model/kept/behind-work.ts';
import type { HiddenView } from '../../../src/model/kept/kept-views.ts';

const told = (memoId: string, quote: string) => ({ memoId, recordedAt: '2026-02-01T17:00:00+01:00', quote });
const hidden = (
  panel: string,
  what: string,
  source = told('m1', `Behind the ${panel} is ${what}`),
): HiddenView => ({
  id: what,
  panel,
  what,
  service: 'cable',
  source,
});
const GALLEY = hidden('galley panel', 'the feed');
const COOKER = hidden('cooker panel', 'the gas');
const found = (all: readonly HiddenView[], text: string, memoId = 'm2') =>
  behindWork(all, [{ text, source: told(memoId, text) }]).map(
    ({ panel, there, work }) => `${panel} (${there.map(({ what }) => what).join(', ')}): ${work.quote}`,
  );

describe('work goes through a panel', () => {
  test.each([
    [
      'drilled',
      'Drill the galley panel for hooks.',
      ['galley panel (the feed): Drill the galley panel for hooks.'],
    ],
    [
      'screwed to',
      'Hooks are screwed to the galley panel.',
      ['galley panel (the feed): Hooks are screwed to the galley panel.'],
    ],
    ['with a hole', 'A hole in the galley panel.', ['galley panel (the feed): A hole in the galley panel.']],
    ['painted', 'Paint the galley panel.', []],
    ['another one', 'Drill the saloon panel.', []],
    ['in another sentence than it is named', 'Drill it. The galley panel is oak.', []],
    [
      'each sentence by itself',
      'Drill the galley panel. Nail the galley panel.',
      ['galley panel (the feed): Drill the galley panel.', 'galley panel (the feed): Nail the galley panel.'],
    ],
    [
      'two in one sentence',
      'Drill the galley panel and the cooker panel.',
      [
        'galley panel (the feed): Drill the galley panel and the cooker panel.',
        'cooker panel (the gas): Drill the galley panel and the cooker panel.',
      ],
    ],
  ] as const)('%s', (_what, text, expected) => {
    expect(found([GALLEY, COOKER], text)).toEqual(expected);
  });

  test('behind which are two things: it is told once', () => {
    expect(found([GALLEY, hidden('galley panel', 'the drain')], 'Drill the galley panel.')).toEqual([
      'galley panel (the feed, the drain): Drill the galley panel.',
    ]);
  });

  test('not in the sentence that told what is behind it', () => {
    const quote = 'Screwed a pad behind the galley panel';
    const own = hidden('galley panel', 'the pad', told('m2', quote));
    expect(found([own], `${quote}.`)).toEqual([]);
    expect(found([own], `${quote} for the rail.`)).toEqual([]);
    expect(found([own], `${quote}.`, 'm3')).toHaveLength(1);
    expect(found([own], 'Drill the galley panel.')).toHaveLength(1);
  });

  test('none where nothing is known', () => {
    expect(found([], 'Drill the galley panel.')).toEqual([]);
  });
});

test.each([
  ['by all that tells it apart', 'the galley panel', 'galley panel', [GALLEY, COOKER], true],
  ['in any order', 'the panel of the galley', 'galley panel', [GALLEY, COOKER], true],
  ['not without its own word', 'the galley', 'galley panel', [GALLEY], false],
  ['by its own word alone, where it is the only one', 'the panel', 'galley panel', [GALLEY], true],
  ['not where there are two', 'the panel', 'galley panel', [GALLEY, COOKER], false],
  [
    'where the other is the same by name',
    'the panel',
    'galley panel',
    [GALLEY, hidden('galley panel', 'a pipe')],
    true,
  ],
  [
    'where the other is no panel',
    'the panel',
    'galley panel',
    [GALLEY, hidden('saloon floor', 'a pipe')],
    true,
  ],
  ['not by another panel', 'the saloon panel', 'galley panel', [GALLEY], false],
  ['as the first word', 'panel', 'galley panel', [GALLEY], true],
  ['a panel of one word', 'the floor', 'floor', [hidden('floor', 'a pipe')], true],
  ['not another one of that word', 'the loft floor', 'floor', [hidden('floor', 'a pipe')], false],
] as const)('named %s', (_what, text, panel, all, answer) => {
  expect(isNamedIn(text, panel, all)).toBe(answer);
});
