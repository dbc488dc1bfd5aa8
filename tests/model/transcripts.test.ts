/** Several transcripts of one memo: which counts, what a person said of notes, and the way back. */
import { afterEach, beforeEach, expect, test } from 'vitest';
import { readMemo } from '../../src/language/pipeline.ts';
import type { NewEvent } from '../../src/model/events.ts';
import { findingViews, memoView, standingFigures } from '../../src/model/project-views.ts';
import { transcriptViews } from '../../src/model/transcripts.ts';
import { createStore, type ProjectStore } from '../../src/store/store.ts';

const AT = '2026-03-02T17:00:00Z';
let store: ProjectStore;
beforeEach(() => {
  store = createStore(':memory:', { name: 'Jetty shed', units: 'metric', at: AT });
});
afterEach(() => store.close());

const notesOf = (text: string) => readMemo(text, { units: 'metric', recordedAt: AT }).notes;
const source = (name: string) => ({ name, kind: 'recording', sha256: name, bytes: 1 }) as const;

function take(memoId: string, text: string): void {
  store.append([
    {
      kind: 'recording-kept',
      at: AT,
      memoId,
      source: source(memoId),
      file: memoId,
      recordedAt: AT,
      recordedAtFrom: 'given',
    },
    { kind: 'transcript-made', at: AT, memoId, transcript: { text, engine: 'small' } },
    { kind: 'notes-read', at: AT, memoId, notes: notesOf(text), reader: 'r' },
  ]);
}

function hear(memoId: string, text: string, engine: string): void {
  const version = store.rows.where('hearings', 'memoId', memoId).length + 2;
  const transcript = { text, engine };
  store.append([
    { kind: 'heard-again', at: AT, memoId, version, transcript, notes: notesOf(text), reader: 'r' },
    { kind: 'transcript-chosen', at: AT, memoId, version, by: 'newest' },
  ]);
}

const choose = (memoId: string, version: number) =>
  store.append([{ kind: 'transcript-chosen', at: AT, memoId, version, by: 'person' }]);
const undo = () => store.append([{ kind: 'undone', at: AT, undoes: store.lastSeq() }]);
const figure = (name: string) =>
  standingFigures(store.rows, name).map(({ value, unit }) => `${value} ${unit}`);
const ids = (memoId: string) =>
  memoView(store.rows, memoId)?.notes.figures.map(({ id, value }) => `${id} ${value}`);

const HEARD = 'The bench is 1515 millimetres wide. The shelf is 300 millimetres deep.';
const BETTER =
  'The bench is 1550 millimetres wide. The shelf is 300 millimetres deep. The door is 700 millimetres wide.';

test('the newest transcript counts, the first one stays, and undo gives it the word back', () => {
  take('m1', HEARD);
  hear('m1', BETTER, 'large');
  expect(figure('bench')).toEqual(['1550 mm']);
  expect(transcriptViews(store.rows, 'm1')).toMatchObject([
    { version: 1, engine: 'small', counts: false, text: HEARD },
    { version: 2, engine: 'large', counts: true, chosenBy: 'newest', text: BETTER },
  ]);
  undo();
  expect(figure('bench')).toEqual(['1515 mm']);
  expect(transcriptViews(store.rows, 'm1').map(({ counts }) => counts)).toEqual([true, false]);
  expect(store.verify()).toMatchObject({ ok: true, faults: [] });
});

test('later memos are held against the transcript that counts', () => {
  take('m1', HEARD);
  take('m2', 'The bench is 1550 millimetres wide.');
  expect(findingViews(store.rows).map(({ item }) => item)).toEqual(['bench']);
  hear('m1', BETTER, 'large');
  expect(findingViews(store.rows)).toEqual([]);
  choose('m1', 1);
  expect(findingViews(store.rows)).toHaveLength(1);
  expect(store.verify().faults).toEqual([]);
});

test('a note that both transcripts give keeps its id, and what a person said of it', () => {
  take('m1', HEARD);
  expect(ids('m1')).toEqual(['m1.f1 1515', 'm1.f2 300']);
  store.append([
    { kind: 'note-rejected', at: AT, noteId: 'm1.f1' },
    { kind: 'note-amended', at: AT, noteId: 'm1.f2', fields: { value: 310 } },
  ]);
  hear('m1', BETTER, 'large');
  // The wrong 1515 was turned down; the 1550 in its place is another note, and nobody turned that down.
  expect(ids('m1')).toEqual(['m1.f3 1550', 'm1.f2 310', 'm1.f4 700']);
  expect(figure('bench')).toEqual(['1550 mm']);
  expect(figure('shelf')).toEqual(['310 mm']);
  hear('m1', 'The door is 700 millimetres wide. The bench is 1500 millimetres wide.', 'third');
  expect(ids('m1')).toEqual(['m1.f4 700', 'm1.f5 1500']);
  choose('m1', 2);
  expect(ids('m1')).toEqual(['m1.f3 1550', 'm1.f2 310', 'm1.f4 700']);
  expect(store.verify().faults).toEqual([]);
});

test('talk is found by the words of the transcript that counts', () => {
  take('m1', HEARD);
  hear('m1', BETTER, 'large');
  expect(store.search(['1515'])).toEqual([]);
  expect(store.search(['door'])).toHaveLength(1);
  choose('m1', 1);
  expect(store.search(['1515'])).toHaveLength(1);
});

test('a choice of a transcript that is not there is the first one', () => {
  take('m1', HEARD);
  choose('m1', 9);
  expect(figure('bench')).toEqual(['1515 mm']);
  const late: NewEvent = {
    ...{ kind: 'heard-again', at: AT, memoId: 'm1', version: 9 },
    ...{ transcript: { text: BETTER }, notes: notesOf(BETTER), reader: 'r' },
  };
  store.append([late]);
  expect(figure('bench')).toEqual(['1550 mm']);
  expect(store.verify().faults).toEqual([]);
});

test('memos that were written have no transcripts', () => {
  store.append([
    {
      ...{
        kind: 'recording-kept',
        at: AT,
        memoId: 'm1',
        file: 'm1',
        recordedAt: AT,
        recordedAtFrom: 'given',
      },
      source: { ...source('m1'), kind: 'text' },
    },
    { kind: 'transcript-made', at: AT, memoId: 'm1', transcript: { text: HEARD } },
  ]);
  expect(transcriptViews(store.rows, 'm1')).toEqual([]);
});
