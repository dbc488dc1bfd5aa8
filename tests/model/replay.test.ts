/** The log as changes: what is taken back, what reaches back, and what must stand before the first memo is replayed. */
import { describe, expect, test } from 'vitest';
import type { ProjectEvent } from '../../src/model/events.ts';
import {
  eventsThatCount,
  foundations,
  isUndoable,
  reachesBack,
  tolerancesOf,
} from '../../src/model/replay.ts';

const event = (seq: number, kind: ProjectEvent['kind'], more: object = {}) =>
  ({ seq, at: '2026-02-01T10:00:00+01:00', kind, ...more }) as unknown as ProjectEvent;
const undo = (seq: number, undoes: number) => event(seq, 'undone', { undoes });
const set = (seq: number) => event(seq, 'figure-set');

describe('events that count', () => {
  const counted = (...events: readonly ProjectEvent[]) => eventsThatCount(events).map(({ seq }) => seq);
  test.each([
    ['all, where nothing was taken back', [set(1), set(2)], [1, 2]],
    ['without what was taken back', [set(1), set(2), undo(3, 1)], [2]],
    ['with what was taken back and put back', [set(1), undo(2, 1), undo(3, 2)], [1]],
    ['and taken back once more', [set(1), undo(2, 1), undo(3, 2), undo(4, 3)], []],
    ['two taken back one after the other', [set(1), set(2), undo(3, 2), undo(4, 1)], []],
    ['undo of what is not there', [set(1), undo(2, 9)], [1]],
    ['none', [], []],
  ] as const)('%s', (_what, events, expected) => {
    expect(counted(...events)).toEqual(expected);
  });
});

describe('what a person may take back', () => {
  test.each([
    'transcript-chosen',
    'note-accepted',
    'note-amended',
    'note-rejected',
    'notes-accepted',
    'words-corrected',
    'words-learned',
    'items-merged',
    'items-split',
    'figure-set',
    'formula-set',
    'limit-set',
    'task-added',
    'task-closed',
    'task-reopened',
    'task-due-set',
    'task-waits-set',
    'task-placed',
    'problem-solved',
    'problem-reopened',
    'finding-settled',
    'tolerance-set',
    'record-kept',
    'check-added',
    'check-removed',
    'device-set',
    'undone',
  ] as const)('%s', (kind) => {
    expect(isUndoable({ kind })).toBe(true);
  });
  test.each(['project-made', 'recording-kept', 'transcript-made', 'notes-read', 'heard-again'] as const)(
    'not %s: what was said and kept stays',
    (kind) => {
      expect(isUndoable({ kind })).toBe(false);
    },
  );
});

describe('what changes what earlier events gave', () => {
  const rows = (known: Readonly<Record<string, unknown>> = {}) =>
    ({ get: (table: string, id: string) => known[`${table} ${id}`] }) as never;

  test.each([
    ['note-amended', { noteId: 'm1.f1' }, true],
    ['note-rejected', { noteId: 'm1.f1' }, true],
    ['words-corrected', {}, true],
    ['items-merged', {}, true],
    ['items-split', {}, true],
    ['transcript-chosen', {}, true],
    ['tolerance-set', {}, true],
    ['undone', {}, true],
    ['figure-set', {}, false],
    ['finding-settled', {}, false],
    ['task-added', {}, false],
    ['notes-read', {}, false],
    ['words-learned', {}, false],
    ['words-learned', { reading: { value: 15 } }, true],
    ['note-accepted', { noteId: 'm1.f1' }, false],
    ['notes-accepted', { noteIds: ['m1.f1', 'm1.f2'] }, false],
    ['notes-accepted', { noteIds: [] }, false],
    ['heard-again', { memoId: 'm1', version: 2 }, false],
  ] as const)('%s %j: %s', (kind, more, answer) => {
    expect(reachesBack(rows(), event(9, kind, more))).toBe(answer);
  });

  test('to agree with a note that was touched already', () => {
    const touched = rows({ 'reviews m1.f2': { review: 'rejected' } });
    expect(reachesBack(touched, event(9, 'note-accepted', { noteId: 'm1.f2' }))).toBe(true);
    expect(reachesBack(touched, event(9, 'note-accepted', { noteId: 'm1.f1' }))).toBe(false);
    expect(reachesBack(touched, event(9, 'notes-accepted', { noteIds: ['m1.f1', 'm1.f2'] }))).toBe(true);
    expect(reachesBack(touched, event(9, 'notes-accepted', { noteIds: ['m1.f1'] }))).toBe(false);
  });

  test('another hearing where it was chosen', () => {
    const chosen = rows({ 'choices m1': { version: 2 } });
    expect(reachesBack(chosen, event(9, 'heard-again', { memoId: 'm1', version: 2 }))).toBe(true);
    expect(reachesBack(chosen, event(9, 'heard-again', { memoId: 'm1', version: 3 }))).toBe(false);
    expect(reachesBack(chosen, event(9, 'heard-again', { memoId: 'm2', version: 2 }))).toBe(false);
  });
});

describe('what stands before the first memo', () => {
  test.each([
    [
      'a name that means another',
      [event(1, 'items-merged', { from: 'the porch', into: 'front porch' })],
      [{ table: 'names', row: { id: 'porch', name: 'the porch', into: 'front porch' } }],
    ],
    [
      'a name that means itself alone',
      [event(1, 'items-split', { name: 'the porch' })],
      [{ table: 'names', row: { id: 'porch', name: 'the porch' } }],
    ],
    [
      'the last word on a name',
      [
        event(1, 'items-merged', { from: 'porch', into: 'front porch' }),
        event(2, 'items-split', { name: 'the porch' }),
      ],
      [{ table: 'names', row: { id: 'porch', name: 'the porch' } }],
    ],
    [
      'what a person said of notes',
      [
        event(1, 'note-accepted', { noteId: 'm1.f1' }),
        event(2, 'note-amended', { noteId: 'm1.f2', fields: { value: 15 } }),
        event(3, 'note-rejected', { noteId: 'm1.f3' }),
        event(4, 'notes-accepted', { noteIds: ['m1.f4', 'm1.f5'] }),
      ],
      [
        { table: 'reviews', row: { id: 'm1.f1', review: 'accepted' } },
        { table: 'reviews', row: { id: 'm1.f2', review: 'amended', fields: { value: 15 } } },
        { table: 'reviews', row: { id: 'm1.f3', review: 'rejected' } },
        { table: 'reviews', row: { id: 'm1.f4', review: 'accepted' } },
        { table: 'reviews', row: { id: 'm1.f5', review: 'accepted' } },
      ],
    ],
    [
      'the last word on a note',
      [event(1, 'note-rejected', { noteId: 'm1.f1' }), event(2, 'note-accepted', { noteId: 'm1.f1' })],
      [{ table: 'reviews', row: { id: 'm1.f1', review: 'accepted' } }],
    ],
    [
      'which of several transcripts counts',
      [
        event(1, 'transcript-chosen', { memoId: 'm1', version: 1, by: 'person' }),
        event(2, 'transcript-chosen', { memoId: 'm1', version: 2, by: 'person' }),
      ],
      [{ table: 'choices', row: { id: 'm1', version: 2, by: 'person' } }],
    ],
    [
      'words that were learned with a reading',
      [event(1, 'words-learned', { memoId: 'm1', reading: { text: 'fifteen' } })],
      [{ table: 'reviews', row: { id: 'm1', review: 'amended', fields: { text: 'fifteen' } } }],
    ],
    ['no words that were learned for later', [event(1, 'words-learned', { memoId: 'm1' })], []],
    ['nothing else', [set(1), event(2, 'task-added'), event(3, 'tolerance-set')], []],
  ] as const)('%s', (_what, events, expected) => {
    expect(foundations(events)).toEqual(expected);
  });

  test('words put right go before what was learned of them before, and not before what is learned after', () => {
    const learned = (seq: number) =>
      event(seq, 'words-learned', { memoId: 'm1', reading: { text: 'fifteen' } });
    const corrected = (seq: number) =>
      event(seq, 'words-corrected', { memoId: 'm1', text: 'It is 15.', notes: {} });
    const tables = (...events: readonly ProjectEvent[]) => foundations(events).map(({ table }) => table);
    expect(tables(learned(1), corrected(2))).toEqual(['rewordings']);
    expect(tables(corrected(1), learned(2))).toEqual(['rewordings', 'reviews']);
  });
});

test('the last tolerance of each kind holds', () => {
  const tolerance = (seq: number, dimension: string, value: number) =>
    event(seq, 'tolerance-set', { dimension, quantity: { value, unit: 'mm' } });
  expect(
    tolerancesOf([tolerance(1, 'length', 2), tolerance(2, 'angle', 1), tolerance(3, 'length', 5), set(4)]),
  ).toEqual({
    length: { value: 5, unit: 'mm' },
    angle: { value: 1, unit: 'mm' },
  });
  expect(tolerancesOf([])).toEqual({});
});
