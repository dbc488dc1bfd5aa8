/** A small project as its views show it, for tests of screens and pages. Invented: a mill loft. */
import type { FindingView, MemoSummary, MemoView, NextView } from '../../src/model/views.ts';

const summary = (id: string, day: string, name: string, findingCount: number): MemoSummary => ({
  id,
  recordedAt: `${day}T17:30:00+01:00`,
  recordedAtFrom: 'given',
  source: { name, kind: 'recording', sha256: id.repeat(32), bytes: 1000, durationSeconds: 61.5 },
  status: 'read',
  words: 120,
  noteCount: 3,
  findingCount,
  openFindingCount: findingCount,
});

export const MEMOS: readonly MemoSummary[] = [
  summary('m1', '2026-03-09', 'hoist-beam.m4a', 0),
  summary('m2', '2026-03-11', 'hoist-beam-again.m4a', 1),
];

const TEXT =
  "The hoist beam is 2150 long. I've decided on oak, because it stays put. I need to oil it by Friday.";
const place = (quote: string) => ({
  quote,
  span: { start: TEXT.indexOf(quote), end: TEXT.indexOf(quote) + quote.length },
});

export const MEMO: MemoView = {
  ...(MEMOS[0] as MemoSummary),
  text: TEXT,
  notes: {
    figures: [
      {
        kind: 'figure',
        id: 'm1.f1',
        ...place('2150 long'),
        item: 'hoist beam',
        attribute: 'length',
        bound: 'exact',
        value: 2150,
        unit: 'mm',
        dimension: 'length',
        startSeconds: 2,
      },
    ],
    decisions: [
      {
        kind: 'decision',
        id: 'm1.d1',
        ...place("I've decided on oak"),
        gist: 'Oak beam',
        reason: 'it stays put',
        startSeconds: 8,
      },
    ],
    tasks: [
      {
        kind: 'task',
        id: 'm1.t1',
        ...place('I need to oil it by Friday'),
        gist: 'Oil the hoist beam',
        due: '2026-03-13',
        waitsFor: [],
        startSeconds: 14,
      },
    ],
    done: [],
    arrivals: [],
    problems: [],
    promises: [],
    corrections: [],
    records: [],
  },
};

export const FINDING: FindingView = {
  id: 'm2.k1',
  kind: 'slip',
  memoId: 'm2',
  foundAt: '2026-03-11T17:30:00+01:00',
  item: 'hoist beam',
  attribute: 'length',
  was: {
    value: 2150,
    unit: 'mm',
    state: 'measured',
    source: { memoId: 'm1', recordedAt: '2026-03-09T17:30:00+01:00', quote: '2150 long', startSeconds: 2 },
  },
  now: {
    value: 2115,
    unit: 'mm',
    source: {
      memoId: 'm2',
      recordedAt: '2026-03-11T17:30:00+01:00',
      quote: '2115 for the beam',
      startSeconds: 21,
    },
  },
  difference: { value: 35, unit: 'mm' },
  tolerance: { value: 1, unit: 'mm', from: 'project' },
  likeness: 'fifty and fifteen sound alike',
  why: 'fifty and fifteen sound alike; nothing said of a change',
  next: 'Measure again, or say which one holds.',
  consequences: [{ act: 'ordered', what: 'hoist beam' }],
  status: 'open',
  cost: 10,
};

export const NEXT: NextView = {
  date: '2026-03-12',
  ready: [
    {
      id: 'm1.t1',
      gist: 'Oil the hoist beam',
      status: 'ready',
      due: '2026-03-13',
      waitsFor: [],
      carriedDays: 3,
      source: {
        memoId: 'm1',
        recordedAt: '2026-03-09T17:30:00+01:00',
        quote: 'I need to oil it by Friday',
        startSeconds: 14,
      },
    },
  ],
  waiting: [
    {
      id: 'm2.t1',
      gist: 'Hang the hoist',
      status: 'waiting',
      waitsFor: ['bolts arrive'],
      carriedDays: 1,
      source: {
        memoId: 'm2',
        recordedAt: '2026-03-11T17:30:00+01:00',
        quote: "can't hang it until the bolts are here",
        startSeconds: 30,
      },
    },
  ],
  arrivals: [],
  promises: [],
  questions: [FINDING],
  cautions: [],
};
