import { expect, test } from 'vitest';
import type { NewEvent, ProjectEvent } from '../../src/model/events.ts';
import { MemoryProject } from '../../src/model/memory.ts';
import { TABLES as TABLE_NAMES } from '../../src/store/schema.ts';
import { createStore, type ProjectStore } from '../../src/store/store.ts';
import { tenYearBuild } from '../kit/ten-year-build.ts';

const AT = '2017-03-01T08:00:00Z';
const made = { name: 'barge', units: 'metric', at: AT } as const;

/** About thirty memos with clashes in them, and between them everything that a person can do by hand. */
function eventsOfABuild(store: ProjectStore, put: (events: readonly NewEvent[]) => void): void {
  let number = 0;
  for (const { events } of tenYearBuild(0.008)) {
    put(events);
    number++;
    for (const event of byHand(store, number)) put([event]);
  }
}

function byHand(store: ProjectStore, number: number): readonly NewEvent[] {
  const finding = store.rows.all('findings').find((one) => one.status === 'open');
  const task = store.rows.openTasks()[0];
  const item = store.rows.all('items')[0]?.name ?? 'bench';
  const at = AT;
  switch (number) {
    case 5:
      return [
        { kind: 'note-accepted', at, noteId: 'm1.f1' },
        { kind: 'note-rejected', at, noteId: 'm2.f1' },
      ];
    case 8:
      return [
        { kind: 'note-amended', at, noteId: 'm3.f2', fields: { value: 77 } },
        { kind: 'note-accepted', at, noteId: 'm3.f2' },
      ];
    case 11:
      return [{ kind: 'items-merged', at, from: 'big bench', into: item }];
    case 13:
      return [
        { kind: 'figure-set', at, item: 'sole', attribute: 'height', quantity: { value: 120, unit: 'mm' } },
      ];
    case 15:
      return task ? [{ kind: 'task-closed', at, taskId: task.id }] : [];
    case 17:
      return [
        { kind: 'tolerance-set', at, dimension: 'length', quantity: { value: 3, unit: 'mm' } },
        { kind: 'task-added', at, gist: 'buy a new plane iron' },
      ];
    case 20:
      return finding
        ? [
            {
              kind: 'finding-settled',
              at,
              findingId: finding.id,
              choice: 'keep-old',
              reason: 'measured twice',
            },
          ]
        : [];
    case 22:
      return [{ kind: 'undone', at, undoes: store.log().length }];
    case 24:
      return [{ kind: 'items-split', at, name: item }];
    case 26:
      return [
        { kind: 'record-kept', at, record: { kind: 'hidden', panel: 'sole', what: 'hose', service: 'pipe' } },
        { kind: 'record-kept', at, record: { kind: 'pair', part: 'knee', sides: ['port', 'starboard'] } },
        { kind: 'record-kept', at, record: { kind: 'batch', product: 'primer', facts: [] } },
        {
          kind: 'record-kept',
          at,
          record: { kind: 'delivery', act: 'ordered', item: 'boards', count: 8, sizes: [] },
        },
        {
          kind: 'record-kept',
          at,
          record: { kind: 'delivery', act: 'received', item: 'boards', count: 6, sizes: [] },
        },
      ];
    default:
      return [];
  }
}

function builtStore(): ProjectStore {
  const store = createStore(':memory:', made);
  eventsOfABuild(store, (events) => store.append(events));
  return store;
}

test('the model rebuilt from the log equals the one that grew with it, row by row', () => {
  const store = builtStore();
  expect(store.rows.all('findings').length).toBeGreaterThan(5);
  expect(store.rows.all('reviews')).toHaveLength(3);
  expect(store.rows.all('records').length).toBeGreaterThanOrEqual(5);
  expect(store.verify()).toMatchObject({ ok: true, faults: [] });
  const before = TABLE_NAMES.map((table) => [table, store.rows.all(table)]);
  store.rebuild();
  expect(TABLE_NAMES.map((table) => [table, store.rows.all(table)])).toEqual(before);
  expect(store.verify()).toMatchObject({ ok: true, faults: [] });
  store.close();
});

test('a project in memory and one on disk hold the same model after the same events', () => {
  const store = builtStore();
  const memory = new MemoryProject();
  memory.append(store.log().map(({ seq: _seq, ...event }: ProjectEvent) => event as NewEvent));
  for (const table of TABLE_NAMES) {
    expect([table, memory.rows.all(table)]).toEqual([table, store.rows.all(table)]);
  }
  store.close();
});

test('to agree with an untouched note changes what is known of the note and nothing else', () => {
  const store = builtStore();
  const before = TABLE_NAMES.map((table) => store.rows.all(table));
  store.append([{ kind: 'note-accepted', at: AT, noteId: 'm20.f3' }]);
  const changed = TABLE_NAMES.filter(
    (table, index) => JSON.stringify(store.rows.all(table)) !== JSON.stringify(before[index]),
  );
  expect(changed).toEqual(['reviews']);
  expect(store.verify()).toMatchObject({ ok: true });
  store.close();
});

test('what fails half-way leaves no trace, neither in the file nor in what is remembered of it', () => {
  const store = builtStore();
  const events = store.log().length;
  const items = store.rows.all('items');
  const last = [...tenYearBuild(0.009)].at(-1);
  const [kept, transcript, notes] = last?.events ?? [];
  const broken = {
    ...notes,
    notes: { ...(notes as { notes: object }).notes, figures: [{ kind: 'figure' }] },
  };
  expect(() => store.append([kept, transcript, broken] as readonly NewEvent[])).toThrow();
  expect(store.log()).toHaveLength(events);
  expect(store.rows.all('items')).toEqual(items);
  store.append([kept, transcript, notes] as readonly NewEvent[]);
  expect(store.verify()).toMatchObject({ ok: true, faults: [] });
  store.close();
});
