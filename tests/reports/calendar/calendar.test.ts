import fc from 'fast-check';
import ICAL from 'ical.js';
import { expect, test } from 'vitest';
import type { CheckView } from '../../../src/model/checks/check-views.ts';
import type { TaskView } from '../../../src/model/views.ts';
import { type CalendarContents, calendarOf } from '../../../src/reports/calendar/calendar.ts';
import { folded } from '../../../src/reports/calendar/content-lines.ts';
import { oneLine, sentence } from '../../../src/reports/words.ts';
import { NEXT, PROJECT, READY_TASK, TASK, WEEK } from '../../kit/bakery-wagon.ts';
import { hostileWords } from '../../kit/hostile-words.ts';

const SOURCE = READY_TASK.source;
const DONE: TaskView = {
  ...TASK,
  id: 'm1.t2',
  gist: 'fit the flue',
  status: 'done',
  closedBy: { ...SOURCE, recordedAt: '2026-02-04T18:05:00+01:00' },
};
const GLUED: TaskView = {
  ...TASK,
  id: 'm2.t2',
  gist: 'take the clamps off the step',
  waits: [
    {
      kind: 'hours',
      words: 'the glue is hard',
      isMet: false,
      hours: 12,
      until: '2026-02-05T06:05:00+01:00',
      source: SOURCE,
    },
    { kind: 'task', words: 'strip the step', isMet: false, on: 'm2.t1' },
    { kind: 'date', words: 'from Thursday on', isMet: false, until: '2026-02-05' },
  ],
  due: '2026-02-08',
};
const window = (check: string, opens: string | undefined, closes: string | undefined) =>
  ({
    id: `s-${check}`,
    check,
    why: 'by the clock that the talk started',
    inputs: [],
    window: {
      product: 'hull primer',
      act: 'applied',
      startedAt: SOURCE.recordedAt,
      source: SOURCE,
      ...(opens ? { opens } : {}),
      ...(closes ? { closes } : {}),
    },
  }) as unknown as CheckView;

const CONTENTS: CalendarContents = {
  project: { ...PROJECT, madeAt: '2026-01-05T09:00:00+01:00' },
  next: {
    promises: WEEK.promises,
    arrivals: NEXT.arrivals.map((arrival) => ({ ...arrival, id: 'm1.a1' })),
    windows: [
      window('recoat window', '2026-02-05T00:30:00+01:00', '2026-02-07T00:30:00+01:00'),
      window('cure time', '2026-02-11T18:00:00+01:00', undefined),
    ],
  },
  tasks: [READY_TASK, TASK, GLUED, DONE],
};

/** What ical.js reads: the entries of one kind, by their id without what tells the project. */
function read(text: string, kind: 'vtodo' | 'vevent') {
  const calendar = new ICAL.Component(ICAL.parse(text));
  expect(calendar.getFirstPropertyValue('version')).toBe('2.0');
  return new Map(
    calendar
      .getAllSubcomponents(kind)
      .map((one) => [String(one.getFirstPropertyValue('uid')).split('-2026')[0] as string, one]),
  );
}
const value = (one: ICAL.Component | undefined, name: string) =>
  one?.getFirstPropertyValue(name)?.toString() ?? undefined;

test('tasks are to-dos with their day, their state and what they wait for', () => {
  const todos = read(calendarOf(CONTENTS), 'vtodo');
  expect([...todos.keys()]).toEqual(['m2.t1', 'm1.t1', 'm2.t2', 'm1.t2', 'm1.v1', 'm2.v1']);
  const ready = todos.get('m2.t1');
  expect(['summary', 'due', 'status', 'dtstamp', 'categories'].map((name) => value(ready, name))).toEqual([
    'Strip the step',
    '2026-02-06',
    'NEEDS-ACTION',
    '2026-02-04T17:05:00Z',
    'ready',
  ]);
  expect(value(todos.get('m1.t1'), 'description')).toContain('waits for primer is dry');
  expect(value(todos.get('m1.t1'), 'due')).toBeUndefined();
  const done = todos.get('m1.t2');
  expect(['status', 'completed', 'percent-complete'].map((name) => value(done, name))).toEqual([
    'COMPLETED',
    '2026-02-04T17:05:00Z',
    '100',
  ]);
  const glued = todos.get('m2.t2');
  expect(value(glued, 'dtstart')).toBe('2026-02-05');
  expect(value(glued, 'related-to')).toBe(value(ready, 'uid'));
  expect(glued?.getFirstProperty('related-to')?.getParameter('reltype')).toBe('DEPENDS-ON');
});

test('promises are to-dos, kept ones completed', () => {
  const todos = read(calendarOf(CONTENTS), 'vtodo');
  expect(['summary', 'due', 'status'].map((name) => value(todos.get('m1.v1'), name))).toEqual([
    'Promised: show the flue',
    '2026-02-09',
    'COMPLETED',
  ]);
  expect(value(todos.get('m2.v1'), 'status')).toBe('NEEDS-ACTION');
});

test('a delivery is a day, what a product allows is a span or a moment in UTC', () => {
  const events = read(calendarOf(CONTENTS), 'vevent');
  const shown = [...events].map(([id, one]) =>
    [id, ...['summary', 'dtstart', 'dtend'].map((name) => value(one, name))].join(' | '),
  );
  expect(shown).toEqual([
    'm1.a1 | Delivery: oven glass | 2026-02-11 | ',
    's-recoat window | Hull primer: window for the next coat | 2026-02-04T23:30:00Z | 2026-02-06T23:30:00Z',
    "s-cure time | Hull primer: the data sheet's cure time is over | 2026-02-11T17:00:00Z | ",
    'm2.t2.h1 | The glue is hard: over; then take the clamps off the step | 2026-02-05T05:05:00Z | ',
  ]);
});

test('the same project gives the same bytes; another one shares no id with it', () => {
  expect(calendarOf(CONTENTS)).toBe(calendarOf(CONTENTS));
  const ids = (text: string) => [...text.matchAll(/^UID:(.*)$/gm)].map((match) => match[1]);
  const other = { ...CONTENTS, project: { ...CONTENTS.project, madeAt: '2026-01-06T09:00:00+01:00' } };
  expect(ids(calendarOf(CONTENTS)).filter((id) => ids(calendarOf(other)).includes(id))).toEqual([]);
  expect(new Set(ids(calendarOf(CONTENTS))).size).toBe(10);
});

// RFC 5545, section 3.1: lines end in CRLF and have at most 75 octets; a reader joins what was folded.
test('long lines are folded at 75 octets, never inside a character', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme', maxLength: 200 }), (words) => {
      const line = folded(`SUMMARY:${oneLine(words)}`);
      for (const piece of line.split('\r\n')) {
        expect(Buffer.byteLength(piece)).toBeLessThanOrEqual(75);
        expect(piece).not.toContain('\uFFFD');
      }
      expect(line.replaceAll('\r\n ', '')).toBe(`SUMMARY:${oneLine(words)}`);
    }),
  );
});

test('hostile words come out of another reader as the plain text they were, and add no entry', () => {
  fc.assert(
    fc.property(hostileWords, (words) => {
      const source = { ...SOURCE, quote: words };
      const text = calendarOf({
        project: { ...CONTENTS.project, name: words },
        next: {
          promises: [],
          arrivals: NEXT.arrivals.map((arrival) => ({ ...arrival, id: 'a', item: words, source })),
        },
        tasks: [{ ...READY_TASK, gist: words, waitsFor: [words], source }],
      });
      expect(text).not.toMatch(/[^\P{Cc}\r\n]|\r(?!\n)|(?<!\r)\n/u);
      const todos = [...read(text, 'vtodo').values()];
      const events = [...read(text, 'vevent').values()];
      expect([todos.length, events.length]).toEqual([1, 1]);
      expect(value(todos[0], 'summary')).toBe(sentence(oneLine(words)));
      expect(value(events[0], 'summary')).toBe(`Delivery: ${oneLine(words)}`);
      expect(value(events[0], 'description')).toContain(`“${oneLine(words)}”`);
    }),
    { numRuns: 300 },
  );
});
