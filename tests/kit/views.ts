/** A small project as its views show it, for tests of screens and pages. Invented: a mill loft. */
import type { CheckView } from '../../src/model/checks/check-views.ts';
import type { FigureAround, FigureBranch } from '../../src/model/figure-around.ts';
import type {
  DayView,
  FindingView,
  LimitView,
  MemoSummary,
  MemoView,
  NextView,
  SpanView,
  StandingFigure,
  TaskView,
  WhereView,
} from '../../src/model/views.ts';

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

const said = (memoId: 'm1' | 'm2', quote: string, startSeconds: number) => ({
  memoId,
  recordedAt: memoId === 'm1' ? '2026-03-09T17:30:00+01:00' : '2026-03-11T17:30:00+01:00',
  quote,
  startSeconds,
});

const lengthOf = (item: string, value: number) =>
  ({
    item,
    attribute: 'length',
    dimension: 'length',
    value,
    unit: 'mm',
    bound: 'exact',
    status: 'stands',
    rule: 'first said',
    history: [],
    dependents: [],
  }) as const satisfies StandingFigure;

const claim = { item: 'hoist beam', attribute: 'length', bound: 'exact', unit: 'mm' } as const;

/** The beam was said twice; the brace follows from it, the peg from the brace. Treads are counted. */
export const FIGURES: readonly StandingFigure[] = [
  {
    ...lengthOf('hoist beam', 2150),
    state: 'measured',
    status: 'in-doubt',
    source: said('m1', '2150 long', 2),
    tolerance: { value: 1, unit: 'mm', from: 'project' },
    history: [
      { ...claim, id: 'm1.f1', value: 2150, status: 'standing', source: said('m1', '2150 long', 2) },
      { ...claim, id: 'm2.f1', value: 2115, status: 'doubted', source: said('m2', '2115 for the beam', 21) },
    ],
    dependents: ['brace length'],
  },
  { ...lengthOf('brace', 1075), formula: 'hoist beam length / 2', dependents: ['peg length'] },
  { ...lengthOf('peg', 75), formula: 'brace length - 1000 mm' },
  {
    ...lengthOf('stair tread', 12),
    attribute: 'count',
    dimension: 'count',
    unit: '1',
    source: said('m2', 'twelve treads', 40),
  },
];

export const LIMITS: readonly LimitView[] = [
  {
    id: 'm1.f4',
    item: 'hoist beam',
    attribute: 'length',
    about: '',
    bound: 'at-most',
    value: 2160,
    unit: 'mm',
    source: said('m1', 'no longer than 2160', 30),
  },
];

export const CHECKS: readonly CheckView[] = [
  {
    id: 's9',
    check: 'clearance',
    state: 'broken',
    why: '14 mm short at worst',
    results: [],
    notes: [],
    inputs: [
      {
        name: 'part',
        expression: 'hoist beam length',
        reads: [{ name: 'hoist beam length', value: 2150, unit: 'mm', bound: 'exact' }],
      },
    ],
    options: {},
    ask: [],
    subject: 'clearance (loft, hoist beam)',
    source: said('m2', '', 0),
    since: '2026-03-11T17:30:00+01:00',
    formula: '',
    formulaSource: '',
  },
];

/** One that is ready, one that waits, one closed on the day of `NEXT` and one before. */
export const TASKS: readonly TaskView[] = [
  ...NEXT.ready,
  ...NEXT.waiting,
  {
    id: 'm1.t2',
    gist: 'Sweep the loft',
    status: 'done',
    waitsFor: [],
    carriedDays: 3,
    source: said('m1', 'sweep the loft', 50),
    closedBy: { memoId: 's7', recordedAt: '2026-03-12T07:00:00+01:00', quote: '' },
  },
  {
    id: 'm1.t3',
    gist: 'Buy rope',
    status: 'done',
    waitsFor: [],
    carriedDays: 3,
    source: said('m1', 'buy rope', 55),
    closedBy: said('m2', 'I bought the rope', 50),
  },
];

export const DAY: DayView = {
  date: '2026-03-09',
  memos: [MEMO],
  findings: [],
  tasksOpened: NEXT.ready,
  tasksClosed: [],
  openTasksBefore: [],
  changes: [],
  cautions: [],
};

export const SPAN: SpanView = {
  from: '2026-03-09',
  to: '2026-03-09',
  days: [DAY],
  promises: [],
  next: NEXT,
};

/** Six days after the last talk: glue without a time, a bolt that is late, a clash, a promise. */
export const WHERE: WhereView = {
  now: '2026-03-17T08:00:00+01:00',
  lastTalk: { date: '2026-03-11', daysAgo: 6, memoIds: ['m2'] },
  begun: [{ gist: '', source: said('m2', "I've left the brace in clamps", 50) }],
  done: [{ gist: 'brace glued up', source: said('m2', 'glued up the brace', 48) }],
  decided: [],
  filmed: [{ gist: 'filmed the glue-up', source: said('m2', 'filmed the glue-up', 55) }],
  windows: [],
  untimed: [
    { product: 'glue', act: 'laid', at: '2026-03-11T16:00:00+01:00', source: said('m2', 'glued up', 50) },
  ],
  hours: [],
  arrivals: [
    { item: 'bolts', expected: '2026-03-13', status: 'expected', source: said('m2', 'bolts on Friday', 33) },
  ],
  dated: NEXT.ready,
  promises: [
    {
      id: 'm1.v1',
      gist: 'show the hoist',
      due: '2026-03-20',
      status: 'open',
      source: said('m1', 'I will show you the hoist', 58),
    },
  ],
  findings: [FINDING],
  openFindings: 1,
  problems: [],
  ready: NEXT.ready,
  waiting: 1,
};

/** Each figure with what it comes from and what hangs on it: the brace on the beam, the peg on the brace. */
export const AROUND: readonly FigureAround[] = FIGURES.map((figure, index) => {
  const leaf = (at: number, next: readonly FigureBranch[] = []): readonly FigureBranch[] => {
    const one = FIGURES[at];
    return one ? [{ figure: one, next }] : [];
  };
  const from = [[], leaf(0), leaf(1, leaf(0)), []][index] ?? [];
  const onIt = [leaf(1, leaf(2)), leaf(2), [], []][index] ?? [];
  return { figure, from, onIt, checks: index === 0 ? CHECKS : [] };
});
