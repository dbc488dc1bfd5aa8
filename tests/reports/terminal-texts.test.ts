import { expect, test } from 'vitest';
import { answerText } from '../../src/reports/answer-text.ts';
import { figuresOfItem, figureTable, limitTable } from '../../src/reports/figure-table.ts';
import { findingLine, findingsText, findingText } from '../../src/reports/finding-text.ts';
import { memoLine, memoTable, notesText } from '../../src/reports/memo-list.ts';
import { overviewText } from '../../src/reports/overview-text.ts';
import { taskList } from '../../src/reports/task-list.ts';
import {
  DAY_2,
  DECIDED,
  FIGURES,
  MEMO_1,
  MEMO_2,
  NEXT,
  PROJECT,
  READY_TASK,
  STALE,
  TASK,
} from '../kit/bakery-wagon.ts';
import { FINDING } from '../kit/views.ts';

test('a slip is told with both quotes, their age, the difference, the reason and what to do', () => {
  expect(findingText({ ...FINDING, consequences: [] })).toBe(
    `hoist beam length: a slip is likely   [m2.k1]
  said     2115 mm   memo 2, 00:21   "2115 for the beam"
  stands   2150 mm   memo 1, 00:02   measured   2 days earlier   "2150 long"
  differs  35 mm   tolerance 1 mm (project)
  why      fifty and fifteen sound alike; nothing said of a change
  next     Measure again, or say which one holds.`,
  );
});

test('a stale size tells what was ordered and derived on the old value', () => {
  expect(findingText(STALE)).toBe(
    `oven glass width: no longer agrees with what it came from   [m2.k2]
  should   570 mm   worked out
  was      560 mm   memo 1, 00:08   ordered   "the oven glass at 560 wide"
  differs  10 mm   tolerance 1 mm (said)
  why      the oven ledge, which it was worked out from, has changed
  on it    ordered: oven glass (memo 1, 00:08)
  on it    derived: oven frame width 600 mm → 610 mm
  next     Ring the maker before it is cut.`,
  );
});

test('a settled change names the choice, the day and the reason in place of what to do', () => {
  const lines = findingText(DECIDED).split('\n');
  expect(lines.at(-1)).toBe('  settled  take-new, 2026-02-04: said so');
  expect(findingLine(DECIDED)).toBe('oven ledge height 905 mm → 915 mm: changed on purpose [m2.k1]');
});

test('open findings come before settled ones, the dearest first', () => {
  const text = findingsText([DECIDED, { ...FINDING, cost: 20 }, STALE]);
  expect([...text.matchAll(/\[(.*)\]$/gm)].map((match) => match[1])).toEqual(['m2.k1', 'm2.k2', 'm2.k1']);
  expect(text.indexOf('hoist beam')).toBeLessThan(text.indexOf('oven glass'));
});

test('no finding is not called safe', () => {
  expect(findingsText([])).toBe('No clash is on record. That means only that nothing was found.\n');
});

test('figures in a table, with the second system where the units are mixed', () => {
  expect(figureTable(FIGURES, 'mixed')).toBe(
    `oven ledge height  915 mm (≈ 36 in)  decided  memo 2, 2026-02-04
oven frame width   610 mm (≈ 24 in)           worked out          stale
`,
  );
  expect(figureTable([], 'metric')).toBe('No figure stands yet.\n');
});

test('one figure at length: rule, tolerance, dependents, history', () => {
  expect(figuresOfItem(FIGURES, 'metric')).toBe(
    `oven ledge height: 915 mm
  rule      a decision beats a target
  tolerance 1 mm (project)
  feeds     oven frame width
  history
    2026-02-02  memo 1, 00:02  905 mm  superseded  "the oven ledge is at 905"  [m1.f2]
    2026-02-04  memo 2  915 mm  standing  "The oven ledge is 915 now"  [m2.f1]

oven frame width: 610 mm
  rule      worked out (stale)
  formula   oven glass width + 50 mm
`,
  );
});

test('limits in a table', () => {
  const source = {
    memoId: 'm1',
    recordedAt: '2026-02-02T17:30:00+01:00',
    quote: 'nothing over 740',
    startSeconds: 4,
  };
  expect(
    limitTable(
      [
        {
          id: 'l1',
          item: 'door',
          attribute: 'width',
          about: 'machine',
          bound: 'at-most',
          value: 740,
          unit: 'mm',
          source,
        },
      ],
      'metric',
    ),
  ).toBe('door width  at most 740 mm  machine  memo 1, 00:04, 2026-02-02  [l1]\n');
  expect(limitTable([], 'metric')).toBe('No limit has been stated yet.\n');
});

test('tasks under their headings', () => {
  expect(taskList([READY_TASK, TASK, ...DAY_2.tasksClosed])).toBe(
    `Ready
  strip the step; due 2026-02-06  (memo 2) [m2.t1]

Waiting
  seal the roof; waits for primer is dry; carried over 2 days  (memo 1, 00:27) [m1.t1]

Done
  fit the flue  (memo 1, 00:20; done memo 2) [m1.t2]
`,
  );
  expect(taskList([])).toBe('No task has been heard yet.\n');
});

test('an answer: what holds, what is in doubt, what was said', () => {
  const source = FIGURES[0]?.source;
  const said = source ? [{ ...source, rank: 1 }] : [];
  const answer = {
    question: 'how high is the ledge',
    figures: FIGURES.slice(1),
    findings: [STALE, DECIDED],
    said,
  };
  const ordered = { act: 'ordered', what: 'Ordered the oven glass', ...(source ? { source } : {}) } as const;
  expect(answerText({ ...answer, onIt: [ordered] })).toBe(
    `oven frame width: 610 mm (≈ 24 in)
  rule      worked out (stale)
  formula   oven glass width + 50 mm

On it
  ordered: Ordered the oven glass (memo 2)

In doubt
  oven glass width 560 mm → 570 mm: no longer agrees with what it came from [m2.k2]

Said
  2026-02-04  memo 2  "The oven ledge is 915 now"
`,
  );
  expect(answerText({ question: 'mast', figures: [], findings: [], said: [] })).toBe(
    'Nothing in the memos matches "mast".\n',
  );
  const unknown = { question: 'how tall is the mast', figures: [], findings: [], said, isUnknown: true };
  expect(answerText(unknown)).toBe(`No figure is on record for "how tall is the mast".

Said
  2026-02-04  memo 2  "The oven ledge is 915 now"
`);
});

test('memos, in a line and in a table', () => {
  expect(memoLine(MEMO_1)).toBe(
    'memo 1  wagon-1.m4a  2 min 14 s, 55 words: 3 figures, 1 task, 1 thing done, 1 promise',
  );
  expect(memoLine({ ...MEMO_1, words: 0 })).toBe(
    'memo 1  wagon-1.m4a  2 min 14 s, no speech was heard in it',
  );
  expect(memoTable([MEMO_1, { ...MEMO_2, status: 'kept' }])).toBe(
    `memo 1  2026-02-02 17:30  wagon-1.m4a    2 min 14 s  6 notes
memo 2  2026-02-04 18:05  wednesday.txt  text        kept, not read yet  2 clashes
`,
  );
  expect(memoTable([])).toBe('No memo has been taken yet.\n');
});

test.each([
  [2, '2 clashes'],
  [1, '2 clashes, 1 open'],
  [0, '2 clashes, settled'],
])('of two clashes %d are open: "%s"', (openFindingCount, words) => {
  expect(memoTable([{ ...MEMO_2, openFindingCount }])).toMatch(new RegExp(`  ${words}\\n$`));
});

test('the notes of one reading, a line each with their words', () => {
  const notes = {
    ...MEMO_2.notes,
    figures: MEMO_2.notes.figures.map((note) => ({ ...note, review: 'accepted' as const })),
  };
  expect(notesText(notes)).toBe(
    `m2.f1  figure      oven ledge height: 915 mm, decided (accepted)  "The oven ledge is 915 now"
m2.d1  decision    larch cladding, because it weathers            "We went for larch, not the pine, because it weathers"
m2.x1  done        flue fitted                                    "Flue's in"
m2.a1  arrival     flour bin: received                            "The flour bin came"
m2.p1  problem     primer blistered on the step                   "The primer blistered on the step"
m2.c1  correction  oven ledge is 915, not 905                     "Last week I said 905 for the ledge"
`,
  );
});

test('the overview: counts, clashes, what is ready', () => {
  expect(overviewText(PROJECT, [MEMO_1, { ...MEMO_2, status: 'kept' }], NEXT)).toBe(
    `Bakery wagon: 2 memos, 12 notes
1 memo kept and not read yet: hearwright resume
Clashes
  oven glass width 560 mm → 570 mm: no longer agrees with what it came from [m2.k2]
Ready
  Strip the step
1 task waiting, 1 promise open
`,
  );
});
