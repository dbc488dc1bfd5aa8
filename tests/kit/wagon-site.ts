/** The bakery wagon as the source of a site, with every word from outside as it is or changed. */
import type { LimitView } from '../../src/model/views.ts';
import type { SiteSource } from '../../src/reports/pages/site-source.ts';
import { CAUTION, DECIDED, FIGURES, NEXT, PROJECT, READY_TASK, STALE, TASK, WEEK } from './bakery-wagon.ts';
import { CHECKS } from './views.ts';

const LIMIT: LimitView = {
  id: 'm1.f9',
  item: 'proving shelf',
  attribute: 'depth',
  about: 'trays',
  bound: 'at-most',
  value: 650,
  unit: 'mm',
  source: { memoId: 'm1', recordedAt: '2026-02-02T17:30:00+01:00', quote: 'no deeper than 650' },
};

const TOLD = { memoId: 'm1', recordedAt: '2026-02-02T17:30:00+01:00', quote: 'as it was told' };
const GLASS = {
  id: 'm1.r4',
  item: 'oven glass',
  count: 2,
  sizes: [{ attribute: 'width', dimension: 'length', value: 560, unit: 'mm' }],
  source: TOLD,
} as const;

const RECORDS: SiteSource['records'] = {
  behind: [
    {
      id: 'm1.r1',
      panel: 'oven wall',
      what: 'feed for the lamp',
      service: 'cable',
      shot: 'photo 3',
      source: TOLD,
    },
  ],
  batches: [
    { id: 'm1.r2', product: 'lime plaster', facts: [{ what: 'ratio', words: 'three to one' }], source: TOLD },
  ],
  orders: [
    {
      item: 'oven glass',
      order: { ...GLASS, act: 'ordered' },
      received: [{ ...GLASS, id: 'm2.r1', act: 'received' }],
      status: 'complete',
    },
  ],
  hands: [
    {
      id: 'm1.r3',
      part: 'tray rail',
      sides: ['left', 'right'],
      figures: [{ side: 'left', attribute: 'length', value: 600, unit: 'mm' }],
      source: TOLD,
    },
  ],
};

export const WAGON_SITE: SiteSource = {
  info: PROJECT,
  asOf: '2026-02-04T18:05:00+01:00',
  memos: WEEK.days.flatMap(({ memos }) => memos),
  days: WEEK.days.map(({ date }) => date),
  // The second one goes by the same name as the first: clear, and as built.
  figures: FIGURES.flatMap((figure, index) =>
    index === 0 ? [figure, { ...figure, value: 905, history: [], dependents: [] }] : [figure],
  ),
  limits: [LIMIT],
  tasks: [
    TASK,
    READY_TASK,
    { ...TASK, id: 'm1.t9', status: 'done', closedBy: { ...TASK.source, memoId: 'm2' } },
  ],
  problems: [
    { id: 'm2.p1', gist: 'The flue leaks', cause: 'a split seam', status: 'open', source: TASK.source },
  ],
  promises: WEEK.promises,
  findings: [STALE, DECIDED],
  checks: CHECKS,
  records: RECORDS,
  next: { ...NEXT, cautions: [CAUTION] },
  span: () => WEEK,
};

/** Every string that comes from talk, names or files, at any depth. Ids, dates, units and kinds are the program's own. */
const FROM_OUTSIDE = new Set(
  'panel product shot part item gist quote reason turnedDown cause text name about condition datum why next what likeness words waitsFor before note subject'.split(
    ' ',
  ),
);

function changed(value: unknown, key: string, words: string): unknown {
  if (typeof value === 'string') return FROM_OUTSIDE.has(key) ? words : value;
  if (Array.isArray(value)) return value.map((one) => changed(one, key, words));
  if (value === null || typeof value !== 'object') return value;
  return Object.fromEntries(Object.entries(value).map(([name, one]) => [name, changed(one, name, words)]));
}

/** The same site, in which everything that was said is `words`. */
export function wagonSiteSaying(words: string): SiteSource {
  const { span: _span, ...views } = WAGON_SITE;
  const source = changed(views, '', words) as Omit<SiteSource, 'span'>;
  const week = changed(WEEK, '', words) as typeof WEEK;
  return { ...source, span: () => week };
}
