/**
 * Whatever is said and taken back, in whatever order: the model that was kept along the way is the one that the log
 * gives, row by row and place by place.
 */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { NewEvent } from '../../src/model/events.ts';
import { keepNotes } from '../../src/model/keep-notes.ts';
import { isUndoable } from '../../src/model/replay.ts';
import { createDatabase } from '../../src/store/open.ts';
import { projectionLines, rebuild } from '../../src/store/rebuild.ts';
import { SqliteRows } from '../../src/store/rows.ts';
import { ProjectStore } from '../../src/store/store.ts';
import { tenYearBuild } from '../kit/ten-year-build.ts';

const AT = '2017-03-01T08:00:00Z';
const MEMOS = [...tenYearBuild(0.005)];

/** What a person does next, told by two numbers that choose among what there is. */
type Doing = (store: ProjectStore, a: number, b: number) => readonly NewEvent[];

const pick = <T>(list: readonly T[], at: number): T | undefined => list[at % Math.max(1, list.length)];
const itemName = (store: ProjectStore, at: number) => pick(store.rows.all('items'), at)?.name ?? 'bench';
const noteId = (store: ProjectStore, a: number, b: number) => {
  const memo = pick(store.rows.all('memos'), a)?.id ?? 'm1';
  return `${memo}.${pick(['f1', 'f2', 'f7', 'f14', 't1', 'x1', 'x2', 'a1'], b)}`;
};
const size = (a: number) => ({ value: 20 + (a % 900), unit: 'mm' }) as const;

const DOINGS: Readonly<Record<string, Doing>> = {
  take: (store) => MEMOS[store.memoCount()]?.events ?? [],
  accept: (store, a, b) => [{ kind: 'note-accepted', at: AT, noteId: noteId(store, a, b) }],
  amend: (store, a, b) => [
    { kind: 'note-amended', at: AT, noteId: noteId(store, a, b), fields: { value: 20 + (a % 50) } },
  ],
  rename: (store, a, b) => [
    { kind: 'note-amended', at: AT, noteId: noteId(store, a, b), fields: { item: itemName(store, b) } },
  ],
  acceptSeveral: (store, a, b) => [
    { kind: 'notes-accepted', at: AT, noteIds: [noteId(store, a, b), noteId(store, a, b + 1)] },
  ],
  kind: (store, a, b) => [
    {
      kind: 'note-amended',
      at: AT,
      noteId: noteId(store, a, b),
      fields: { kind: b % 2 === 0 ? 'problem' : 'decision', gist: 'The lid sticks' },
    },
  ],
  reword: (store, a, b) => {
    const memo = pick(store.rows.all('memos'), a);
    if (!memo?.notes || memo.text === undefined) return [];
    // As a person would: a size in the words and in the figure read from them.
    const [first, ...others] = keepNotes(memo.id, memo.notes, undefined).figures;
    const figures = first ? [{ ...first, value: 20 + (b % 900) }, ...others] : [];
    const notes = { ...keepNotes(memo.id, memo.notes, undefined), figures };
    return [
      {
        kind: 'words-corrected',
        at: AT,
        memoId: memo.id,
        was: '',
        now: `${b} `,
        text: `${memo.text} ${b}`,
        notes,
        reader: 'test',
      },
    ];
  },
  reject: (store, a, b) => [{ kind: 'note-rejected', at: AT, noteId: noteId(store, a, b) }],
  join: (store, a, b) => [
    { kind: 'items-merged', at: AT, from: itemName(store, a), into: itemName(store, b) },
  ],
  split: (store, a) => [{ kind: 'items-split', at: AT, name: itemName(store, a) }],
  tolerance: (_store, a) => [
    { kind: 'tolerance-set', at: AT, dimension: 'length', quantity: { value: 1 + (a % 60), unit: 'mm' } },
  ],
  set: (store, a, b) => [
    { kind: 'figure-set', at: AT, item: itemName(store, a), attribute: 'width', quantity: size(b) },
  ],
  formula: (store, a, b) => [
    {
      kind: 'formula-set',
      at: AT,
      item: itemName(store, a),
      attribute: 'width',
      formula: `${itemName(store, b)} width + 2 mm`,
    },
  ],
  limit: (store, a, b) => [
    {
      kind: 'limit-set',
      at: AT,
      item: itemName(store, a),
      attribute: 'width',
      about: '',
      bound: 'at-most',
      quantity: size(b),
    },
  ],
  settle: (store, a, b) => {
    const finding = pick(store.rows.all('findings'), a);
    const choice = pick(['keep-old', 'take-new', 'both-right'] as const, b) ?? 'keep-old';
    return finding ? [{ kind: 'finding-settled', at: AT, findingId: finding.id, choice }] : [];
  },
  close: (store, a) => {
    const task = pick(store.rows.openTasks(), a);
    return task ? [{ kind: 'task-closed', at: AT, taskId: task.id }] : [];
  },
  keep: (_store, a) => [
    {
      kind: 'record-kept',
      at: AT,
      record: { kind: 'hidden', panel: 'sole', what: `hose ${a}`, service: 'pipe' },
    },
  ],
  check: (store, a, b) => [
    {
      kind: 'check-added',
      at: AT,
      check: 'clearance',
      inputs: [
        { input: 'opening', expression: `${itemName(store, a)} width` },
        { input: 'part', expression: b % 3 === 0 ? `${20 + b} mm` : `${itemName(store, b)} width - 1 mm` },
      ],
    },
  ],
  uncheck: (store, a) => {
    const check = pick(store.rows.all('checks'), a);
    return check ? [{ kind: 'check-removed', at: AT, checkId: check.id }] : [];
  },
  hearAgain: (store, a) => {
    const memo = pick(store.rows.all('memos'), a);
    const transcript = { text: `Said once more. ${memo?.text ?? ''}` };
    return memo ? [{ kind: 'transcript-made', at: AT, memoId: memo.id, transcript }] : [];
  },
  device: (_store, a, b) => [
    {
      kind: 'device-set',
      at: AT,
      name: `camera ${a % 2}`,
      ...(b % 3 === 0 ? {} : { clock: { offsetSeconds: b } }),
    },
  ],
  hearing: (store, a, b) => {
    const memo = pick(store.rows.all('memos'), a);
    if (!memo?.notes) return [];
    const version = store.rows.where('hearings', 'memoId', memo.id).length + 2;
    const figures = memo.notes.figures
      .slice(b % 2)
      .map((note, at) => ({ ...note, value: note.value + (at === 1 ? b : 0) }));
    const transcript = { text: `Heard once more. ${memo.text ?? ''}`, engine: `engine ${b}` };
    return [
      {
        kind: 'heard-again',
        at: AT,
        memoId: memo.id,
        version,
        transcript,
        notes: { ...memo.notes, figures },
        reader: 'r',
      },
    ];
  },
  choose: (store, a, b) => {
    const hearings = store.rows.all('hearings');
    const memoId = pick(hearings, a)?.memoId ?? pick(store.rows.all('memos'), a)?.id;
    return memoId ? [{ kind: 'transcript-chosen', at: AT, memoId, version: 1 + (b % 3), by: 'person' }] : [];
  },
  readAgain: (store, a, b) => {
    const memo = pick(store.rows.all('memos'), a);
    if (!memo?.notes) return [];
    const notes = { ...memo.notes, figures: memo.notes.figures.slice(b % 3) };
    const reading = { notes, reader: `reader ${b}` };
    return [{ kind: 'words-learned', at: AT, heard: 'play', means: 'ply', memoId: memo.id, reading }];
  },
  learn: () => [{ kind: 'words-learned', at: AT, heard: 'sales', means: 'sills' }],
  undo: (store, a) => {
    const undoable = store.log().filter(isUndoable);
    // Mostly the latest: an undo of an undo is among them.
    const event = undoable.at(-1 - (a % Math.min(8, Math.max(1, undoable.length))));
    return event ? [{ kind: 'undone', at: AT, undoes: event.seq }] : [];
  },
};
const NAMES = Object.keys(DOINGS);

function begun(): { readonly store: ProjectStore; readonly db: ReturnType<typeof createDatabase> } {
  const db = createDatabase(':memory:');
  const store = new ProjectStore(db, ':memory:');
  store.append([{ kind: 'project-made', name: 'barge', units: 'metric', at: AT }]);
  for (const { events } of MEMOS.slice(0, 4)) store.append(events);
  return { store, db };
}

/** The projections as the log gives them, worked through in memory or on the disk. */
function rebuiltLines(store: ProjectStore, mostInMemory: number): readonly string[] {
  const scratch = createDatabase(':memory:');
  try {
    const rows = new SqliteRows(scratch);
    scratch.transaction(() => rebuild(scratch, rows, store.log(), mostInMemory))();
    return [...projectionLines(scratch)];
  } finally {
    scratch.close();
  }
}

const doings = fc.array(
  fc.record({
    // Taking a memo is what is done most.
    name: fc.constantFrom('take', 'take', 'undo', 'hearing', 'choose', ...NAMES),
    a: fc.nat(500),
    b: fc.nat(500),
  }),
  { minLength: 6, maxLength: 28 },
);

test('after any takes, amends, joins, settings and undos the model is the one that the log gives', () => {
  fc.assert(
    fc.property(doings, (sequence) => {
      const { store, db } = begun();
      for (const { name, a, b } of sequence)
        for (const event of DOINGS[name]?.(store, a, b) ?? []) store.append([event]);
      const kept = [...projectionLines(db)];
      expect(kept).toEqual(rebuiltLines(store, Number.POSITIVE_INFINITY));
      store.close();
    }),
    { numRuns: 40 },
  );
}, 120_000);

test('a log worked through on the disk gives the same rows as one worked through in memory', () => {
  const { store } = begun();
  for (const name of NAMES.filter((one) => one !== 'take'))
    for (const event of DOINGS[name]?.(store, 7, 3) ?? []) store.append([event]);
  for (const { events } of MEMOS.slice(4)) store.append(events);
  expect(rebuiltLines(store, 0)).toEqual(rebuiltLines(store, Number.POSITIVE_INFINITY));
  store.close();
});

test.each(NAMES)('"%s" far back and its undo leave no trace but in the log', (name) => {
  const { store, db } = begun();
  for (const { events } of MEMOS.slice(4, 9)) store.append(events);
  const before = [...projectionLines(db)];
  const events = DOINGS[name]?.(store, 2, 3) ?? [];
  if (name === 'take' || name === 'undo' || name === 'hearAgain' || name === 'hearing') {
    store.append(events);
    expect([...projectionLines(db)]).toEqual(rebuiltLines(store, Number.POSITIVE_INFINITY));
  } else {
    const [event] = store.append(events);
    if (event) store.append([{ kind: 'undone', at: AT, undoes: event.seq }]);
    expect([...projectionLines(db)]).toEqual(before);
  }
  store.close();
});
