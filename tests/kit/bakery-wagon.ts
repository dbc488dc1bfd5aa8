/** Two days of a build as their views show them, for tests of pages. Invented: a goods wagon becomes a bakery. */
import { NO_NOTES } from '../../src/language/notes.ts';
import type {
  Caution,
  DayView,
  FindingView,
  MemoView,
  NextView,
  ProjectInfo,
  PromiseView,
  Source,
  SpanView,
  StandingFigure,
  TaskView,
} from '../../src/model/views.ts';

export const PROJECT: ProjectInfo = { name: 'Bakery wagon', units: 'mixed', region: 'GB', tolerances: {} };

const MONDAY = '2026-02-02T17:30:00+01:00';
const WEDNESDAY = '2026-02-04T18:05:00+01:00';

const UTTERANCES = [
  { startSeconds: 2, endSeconds: 7.5, text: 'The proving shelf is 640 deep, and the oven ledge is at 905.' },
  { startSeconds: 8, endSeconds: 13, text: "I've ordered the oven glass at 560 wide." },
  { startSeconds: 14, endSeconds: 19, text: 'The old floor is out and I am so proud of that.' },
  { startSeconds: 20, endSeconds: 26, text: 'Next week I will show you the flue, promise.' },
  { startSeconds: 27, endSeconds: 31, text: 'I need to seal the roof once the primer is dry.' },
];
const TEXT = UTTERANCES.map(({ text }) => text).join(' ');

const at = (quote: string) => {
  const start = TEXT.indexOf(quote);
  const utterance = UTTERANCES.find(({ text }) => text.includes(quote));
  return {
    quote,
    span: { start, end: start + quote.length },
    ...(utterance ? { startSeconds: utterance.startSeconds, endSeconds: utterance.endSeconds } : {}),
  };
};

export const MEMO_1: MemoView = {
  id: 'm1',
  recordedAt: MONDAY,
  recordedAtFrom: 'container',
  source: {
    name: 'wagon-1.m4a',
    kind: 'recording',
    sha256: 'a'.repeat(64),
    bytes: 5000,
    durationSeconds: 134,
  },
  status: 'read',
  words: 55,
  noteCount: 6,
  findingCount: 0,
  openFindingCount: 0,
  text: TEXT,
  utterances: UTTERANCES,
  droppedSpeech: [{ startSeconds: 61, endSeconds: 64, text: 'thank you' }],
  notes: {
    ...NO_NOTES,
    figures: [
      {
        kind: 'figure',
        id: 'm1.f1',
        ...at('640 deep'),
        item: 'proving shelf',
        attribute: 'depth',
        bound: 'exact',
        value: 640,
        unit: 'mm',
        dimension: 'length',
        state: 'measured',
        condition: 'bare frame',
      },
      {
        kind: 'figure',
        id: 'm1.f2',
        ...at('the oven ledge is at 905'),
        item: 'oven ledge',
        attribute: 'height',
        bound: 'exact',
        value: 905,
        unit: 'mm',
        dimension: 'length',
        state: 'target',
      },
      {
        kind: 'figure',
        id: 'm1.f3',
        ...at('the oven glass at 560 wide'),
        item: 'oven glass',
        attribute: 'width',
        bound: 'exact',
        value: 560,
        unit: 'mm',
        dimension: 'length',
        state: 'ordered',
      },
    ],
    done: [{ kind: 'done', id: 'm1.x1', ...at('The old floor is out'), gist: 'old floor taken out' }],
    promises: [
      {
        kind: 'promise',
        id: 'm1.v1',
        ...at('I will show you the flue'),
        gist: 'show the flue',
        due: '2026-02-09',
      },
    ],
    tasks: [
      {
        kind: 'task',
        id: 'm1.t1',
        ...at('I need to seal the roof once the primer is dry'),
        gist: 'seal the roof',
        waitsFor: ['primer is dry'],
      },
    ],
  },
};

const TEXT_2 =
  "The oven ledge is 915 now, because the floor is thicker. We went for larch, not the pine, because it weathers. The primer blistered on the step. The flour bin came. Flue's in, here it is. Last week I said 905 for the ledge.";
const on = (quote: string) => {
  const start = TEXT_2.indexOf(quote);
  return { quote, span: { start, end: start + quote.length } };
};

export const MEMO_2: MemoView = {
  id: 'm2',
  recordedAt: WEDNESDAY,
  recordedAtFrom: 'given',
  source: { name: 'wednesday.txt', kind: 'text', sha256: 'b'.repeat(64), bytes: 230 },
  status: 'read',
  words: 41,
  noteCount: 6,
  findingCount: 2,
  openFindingCount: 2,
  text: TEXT_2,
  notes: {
    ...NO_NOTES,
    figures: [
      {
        kind: 'figure',
        id: 'm2.f1',
        ...on('The oven ledge is 915 now'),
        item: 'oven ledge',
        attribute: 'height',
        bound: 'exact',
        value: 915,
        unit: 'mm',
        dimension: 'length',
        state: 'decided',
      },
    ],
    decisions: [
      {
        kind: 'decision',
        id: 'm2.d1',
        ...on('We went for larch, not the pine, because it weathers'),
        gist: 'larch cladding',
        reason: 'it weathers',
        turnedDown: 'the pine',
      },
    ],
    problems: [
      {
        kind: 'problem',
        id: 'm2.p1',
        ...on('The primer blistered on the step'),
        gist: 'primer blistered on the step',
        cause: 'put on in the rain',
      },
    ],
    arrivals: [
      { kind: 'arrival', id: 'm2.a1', ...on('The flour bin came'), item: 'flour bin', received: true },
    ],
    done: [{ kind: 'done', id: 'm2.x1', ...on("Flue's in"), gist: 'flue fitted' }],
    corrections: [
      {
        kind: 'correction',
        id: 'm2.c1',
        ...on('Last week I said 905 for the ledge'),
        gist: 'oven ledge is 915, not 905',
      },
    ],
  },
};

const source = (memoId: string, quote: string, startSeconds?: number): Source => ({
  memoId,
  recordedAt: memoId === 'm1' ? MONDAY : WEDNESDAY,
  quote,
  ...(startSeconds === undefined ? {} : { startSeconds }),
});

export const DECIDED: FindingView = {
  id: 'm2.k1',
  kind: 'decided',
  memoId: 'm2',
  foundAt: WEDNESDAY,
  item: 'oven ledge',
  attribute: 'height',
  was: { value: 905, unit: 'mm', state: 'target', source: source('m1', 'the oven ledge is at 905', 2) },
  now: { value: 915, unit: 'mm', state: 'decided', source: source('m2', 'The oven ledge is 915 now') },
  difference: { value: 10, unit: 'mm' },
  tolerance: { value: 1, unit: 'mm', from: 'project' },
  why: 'the speaker says that it was changed because the floor is thicker',
  next: 'Nothing: the new value stands.',
  consequences: [],
  status: 'settled',
  settledBy: { choice: 'take-new', at: WEDNESDAY, reason: 'said so' },
  cost: 1,
};

export const STALE: FindingView = {
  id: 'm2.k2',
  kind: 'stale',
  memoId: 'm2',
  foundAt: WEDNESDAY,
  item: 'oven glass',
  attribute: 'width',
  was: { value: 560, unit: 'mm', state: 'ordered', source: source('m1', 'the oven glass at 560 wide', 8) },
  now: { value: 570, unit: 'mm' },
  difference: { value: 10, unit: 'mm' },
  tolerance: { value: 1, unit: 'mm', from: 'said' },
  why: 'the oven ledge, which it was worked out from, has changed',
  next: 'Ring the maker before it is cut.',
  consequences: [
    { act: 'ordered', what: 'oven glass', source: source('m1', "I've ordered the oven glass", 8) },
    {
      act: 'derived',
      what: 'oven frame width',
      before: { value: 600, unit: 'mm' },
      after: { value: 610, unit: 'mm' },
    },
  ],
  status: 'open',
  cost: 9,
};

export const TASK: TaskView = {
  id: 'm1.t1',
  gist: 'seal the roof',
  status: 'waiting',
  waitsFor: ['primer is dry'],
  source: source('m1', 'I need to seal the roof once the primer is dry', 27),
  carriedDays: 2,
};
export const READY_TASK: TaskView = {
  id: 'm2.t1',
  gist: 'strip the step',
  status: 'ready',
  due: '2026-02-06',
  waitsFor: [],
  source: source('m2', 'strip the step by Friday'),
  carriedDays: 0,
};
const DONE_TASK: TaskView = {
  id: 'm1.t2',
  gist: 'fit the flue',
  status: 'done',
  waitsFor: [],
  source: source('m1', 'the flue has to go in', 20),
  carriedDays: 2,
  closedBy: source('m2', "Flue's in"),
};

const KEPT: PromiseView = {
  id: 'm1.v1',
  gist: 'show the flue',
  due: '2026-02-09',
  status: 'kept',
  source: source('m1', 'I will show you the flue', 20),
  keptBy: source('m2', "Flue's in, here it is"),
};
const OPEN: PromiseView = {
  id: 'm2.v1',
  gist: 'tell what the larch cost',
  status: 'open',
  source: source('m2', "I'll tell you what it cost"),
};

export const CAUTION: Caution = {
  id: 'stove',
  caution: 'A stove in a small room can kill without smell.',
  defer: 'A licensed fitter.',
  source: 'a published standard',
};

const [shelf, ledge, glass] = MEMO_1.notes.figures as [
  MemoView['notes']['figures'][number],
  MemoView['notes']['figures'][number],
  MemoView['notes']['figures'][number],
];

export const DAY_1: DayView = {
  date: '2026-02-02',
  memos: [MEMO_1],
  findings: [],
  tasksOpened: [TASK],
  tasksClosed: [],
  openTasksBefore: [],
  changes: [shelf, ledge, glass].map((figure) => ({ kind: 'new', figure, memoId: 'm1' }) as const),
  cautions: [CAUTION],
};

export const DAY_2: DayView = {
  date: '2026-02-04',
  memos: [MEMO_2],
  findings: [DECIDED, STALE],
  tasksOpened: [READY_TASK],
  tasksClosed: [DONE_TASK],
  openTasksBefore: [TASK, DONE_TASK],
  changes: [
    {
      kind: 'changed',
      figure: MEMO_2.notes.figures[0] as MemoView['notes']['figures'][number],
      memoId: 'm2',
      old: DECIDED.was,
      findingId: DECIDED.id,
    },
  ],
  acts: [
    {
      act: 'ordered',
      what: 'ordered the flue collar',
      source: source('m2', "I've ordered the flue collar"),
      against: [
        { id: 'm2.f1', item: 'oven ledge', attribute: 'height', dimension: 'length', ...DECIDED.now },
        { id: 'm1.f3', item: 'oven glass', attribute: 'width', dimension: 'length', ...STALE.was },
      ],
    },
  ],
  cautions: [],
};

export const NEXT: NextView = {
  date: '2026-02-07',
  ready: [READY_TASK],
  waiting: [TASK],
  arrivals: [
    {
      item: 'oven glass',
      expected: '2026-02-11',
      status: 'expected',
      source: source('m1', 'the glass comes on the eleventh', 9),
    },
  ],
  promises: [OPEN],
  questions: [STALE],
  cautions: [CAUTION],
};

export const SPAN: SpanView = {
  from: '2026-02-04',
  to: '2026-02-04',
  days: [DAY_2],
  promises: [KEPT, OPEN],
  next: NEXT,
};
export const WEEK: SpanView = { ...SPAN, from: '2026-02-02', days: [DAY_1, DAY_2] };

const claim = (id: string, value: number, status: 'standing' | 'superseded', from: Source) => ({
  id,
  item: 'oven ledge',
  attribute: 'height' as const,
  bound: 'exact' as const,
  value,
  unit: 'mm',
  status,
  source: from,
});

export const FIGURES: readonly StandingFigure[] = [
  {
    item: 'oven ledge',
    attribute: 'height',
    dimension: 'length',
    value: 915,
    unit: 'mm',
    bound: 'exact',
    state: 'decided',
    tolerance: { value: 1, unit: 'mm', from: 'project' },
    status: 'stands',
    rule: 'a decision beats a target',
    source: source('m2', 'The oven ledge is 915 now'),
    history: [
      claim('m1.f2', 905, 'superseded', source('m1', 'the oven ledge is at 905', 2)),
      claim('m2.f1', 915, 'standing', source('m2', 'The oven ledge is 915 now')),
    ],
    dependents: ['oven frame width'],
  },
  {
    item: 'oven frame',
    attribute: 'width',
    dimension: 'length',
    value: 610,
    unit: 'mm',
    bound: 'exact',
    formula: 'oven glass width + 50 mm',
    status: 'stale',
    rule: 'worked out',
    history: [],
    dependents: [],
  },
];
