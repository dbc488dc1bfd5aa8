import { expect, test } from 'vitest';
import { readMemo } from '../../src/language/pipeline.ts';
import { correctionsIn, idsNamedByHand } from '../../src/model/corrections.ts';
import { memoView } from '../../src/model/project-views.ts';
import { createStore } from '../../src/store/store.ts';

const AT = '2026-03-02T18:00:00Z';
const TEXT = 'The campin is 2400 mm long.';
const read = (means?: string) => {
  const corrections = means === undefined ? [] : [{ heard: 'campin', means }];
  const { notes, repairs } = readMemo(TEXT, { units: 'metric', recordedAt: AT, isHeard: true, corrections });
  return { notes, ...(repairs ? { repairs } : {}), reader: 'test' };
};

function heardStore() {
  const store = createStore(':memory:', { name: 'boat', units: 'metric', at: AT });
  const source = { name: 'a.m4a', kind: 'recording', sha256: 'a', bytes: 9 } as const;
  store.append([
    {
      kind: 'recording-kept',
      at: AT,
      memoId: 'm1',
      source,
      file: 'a',
      recordedAt: AT,
      recordedAtFrom: 'given',
    },
    { kind: 'transcript-made', at: AT, memoId: 'm1', transcript: { text: TEXT } },
    { kind: 'notes-read', at: AT, memoId: 'm1', ...read('campin') },
  ]);
  return store;
}

test('a memo read again gives its new notes, keeps its words, and undo brings the first reading back', () => {
  const store = heardStore();
  const itemOf = () => memoView(store.rows, 'm1')?.notes.figures[0]?.item;
  expect(itemOf()).toContain('campin');
  const [event] = store.append([
    {
      kind: 'words-learned',
      at: AT,
      heard: 'campin',
      means: 'cabin',
      memoId: 'm1',
      reading: read('cabin'),
    },
  ]);
  expect(itemOf()).toContain('cabin');
  expect(memoView(store.rows, 'm1')).toMatchObject({
    text: TEXT,
    repairs: [{ id: 'm1.h1', quote: 'campin' }],
  });
  expect(correctionsIn(store.handLog())).toEqual([{ heard: 'campin', means: 'cabin' }]);
  store.rebuild();
  expect(itemOf()).toContain('cabin');
  store.append([{ kind: 'undone', at: AT, undoes: event?.seq ?? 0 }]);
  expect(itemOf()).toContain('campin');
  expect(correctionsIn(store.handLog())).toEqual([]);
  expect(store.verify().faults).toEqual([]);
});

test('what a person said of notes of a memo is known by their ids', () => {
  const store = heardStore();
  store.append([{ kind: 'note-accepted', at: AT, noteId: 'm1.f1' }]);
  expect([...idsNamedByHand(store.handLog(), 'm1')]).toEqual(['m1.f1']);
  expect([...idsNamedByHand(store.handLog(), 'm2')]).toEqual([]);
});
