import { describe, expect, test } from 'vitest';
import { KIND_WORDS, kindFields, noteAsWritten } from '../../src/model/note-as-written.ts';
import type { MemoView } from '../../src/model/views.ts';
import { readWrittenNote } from '../../src/model/written-note.ts';

type Note = MemoView['notes'][keyof MemoView['notes']][number];

/** A note of a memo with what matters here; the rest is as in any other. */
const note = (fields: Readonly<Record<string, unknown>>) =>
  ({ id: 'm1.x1', quote: 'as it was said', span: { start: 0, end: 14 }, ...fields }) as unknown as Note;

const figure = (fields: Readonly<Record<string, unknown>>) =>
  note({
    kind: 'figure',
    item: 'bench top',
    attribute: 'height',
    dimension: 'length',
    bound: 'exact',
    value: 915,
    unit: 'mm',
    ...fields,
  });

/** Notes, and each in the words in which it is put right. */
const WRITTEN: readonly (readonly [string, Note])[] = [
  ['bench top height = 915 mm', figure({})],
  ['bench top height = at most 915 mm', figure({ bound: 'at-most' })],
  ['bench top height = at least 915 mm', figure({ bound: 'at-least' })],
  ['bench top height = about 915 mm', figure({ bound: 'about' })],
  [
    'gap width = between 3 mm and 5 mm',
    figure({ item: 'gap', attribute: 'width', bound: 'between', value: 3, high: 5 }),
  ],
  ['Oil the hinges', note({ kind: 'task', gist: 'Oil the hinges', waitsFor: [] })],
  [
    'Oil the hinges; due 2026-05-02',
    note({ kind: 'task', gist: 'Oil the hinges', due: '2026-05-02', waitsFor: [] }),
  ],
  ['Show the engine; due 2026-05-09', note({ kind: 'promise', gist: 'Show the engine', due: '2026-05-09' })],
  ['oak; due 2026-05-04', note({ kind: 'arrival', item: 'oak', expected: '2026-05-04', received: false })],
  ['oak', note({ kind: 'arrival', item: 'oak', received: true })],
  ['Larch, not oak', note({ kind: 'decision', gist: 'Larch, not oak' })],
  ['Hinges oiled', note({ kind: 'done', gist: 'Hinges oiled' })],
  ['The pump leaks', note({ kind: 'problem', gist: 'The pump leaks' })],
  ['The gap was 5, not 3', note({ kind: 'correction', gist: 'The gap was 5, not 3' })],
];

describe('a note', () => {
  test.each(WRITTEN)('is written as "%s"', (written, one) => {
    expect(noteAsWritten(one)).toBe(written);
  });

  test.each(WRITTEN)('comes back from "%s" as it was', (written, one) => {
    const read = readWrittenNote(one.kind, written);
    expect(read.ok && one).toMatchObject(read.ok ? read.value : {});
    expect(read).toMatchObject({ ok: true });
    if (read.ok) expect(Object.keys(read.value).length).toBeGreaterThan(0);
  });

  test('that is a count has no unit', () => {
    const count = figure({ item: 'screws', attribute: 'count', dimension: 'count', value: 24, unit: '1' });
    expect(noteAsWritten(count)).toBe('screws count = 24');
  });

  test('on record is not written', () => {
    expect(noteAsWritten(note({ kind: 'batch', product: 'epoxy' }))).toBeUndefined();
  });
});

describe('what is written', () => {
  test.each([
    ['at most 915 mm', { bound: 'at-most', value: 915 }],
    ['no more than 915 mm', { bound: 'at-most', value: 915 }],
    ['up to 915 mm', { bound: 'at-most', value: 915 }],
    ['No less than 915 mm', { bound: 'at-least', value: 915 }],
    ['915 mm', { bound: 'exact', value: 915 }],
    ['36 in', { bound: 'exact', value: 36, unit: 'in' }],
    ['between 3 mm and 5 mm', { bound: 'between', value: 3, high: 5, unit: 'mm' }],
  ])('"bench top height = %s" is read', (amount, fields) => {
    expect(readWrittenNote('figure', `bench top height = ${amount}`)).toMatchObject({
      ok: true,
      value: { item: 'bench top', attribute: 'height', ...fields },
    });
  });

  test.each([
    ['task', '', 'expected words'],
    ['task', '   ', 'expected words'],
    ['task', '; due 2026-05-02', 'expected words, and after them "; due" and a day'],
    ['task', 'Oil it; due 2026-05-02; due 2026-05-03', 'expected words, and after them "; due" and a day'],
    ['task', 'Oil it; due soon', 'expected a day such as 2026-05-03; got "soon"'],
    ['decision', 'Larch; due 2026-05-02', 'a day goes with what is to come'],
    ['done', 'Oiled; due 2026-05-02', 'a day goes with what is to come'],
    ['figure', 'bench top height = between 3 mm and 5 in', 'both ends of a range have one unit'],
  ] as const)('of a %s, "%s" is refused with the reason', (kind, text, why) => {
    expect(readWrittenNote(kind, text)).toEqual({ ok: false, why });
  });

  test.each([
    'bench top height',
    'bench top height =',
    'bench top height = tall',
    'bench top height = between 3 mm and tall',
  ])('as a figure, "%s" is refused', (text) => {
    expect(readWrittenNote('figure', text).ok).toBe(false);
  });
});

describe('another kind', () => {
  const snag = note({ kind: 'problem', gist: 'The pump leaks' });

  test('is told by its word or the beginning of it', () => {
    expect(kindFields(snag, 'to do')).toEqual({
      ok: true,
      value: { kind: 'task', gist: 'The pump leaks', waitsFor: [] },
    });
    expect(kindFields(snag, ' DEC ')).toEqual({
      ok: true,
      value: { kind: 'decision', gist: 'The pump leaks' },
    });
    expect(kindFields(snag, 'coming')).toEqual({
      ok: true,
      value: { kind: 'arrival', item: 'The pump leaks', received: false },
    });
    expect(kindFields(snag, 'here')).toEqual({
      ok: true,
      value: { kind: 'arrival', item: 'The pump leaks', received: true },
    });
  });

  test('is given the words that the note has: gist, goods or quote', () => {
    const goods = note({ kind: 'arrival', item: 'oak', received: false });
    expect(kindFields(goods, 'done')).toEqual({ ok: true, value: { kind: 'done', gist: 'oak' } });
    expect(kindFields(figure({}), 'done')).toEqual({
      ok: true,
      value: { kind: 'done', gist: 'as it was said' },
    });
  });

  test.each(['', 'd', 'x', 'p'])('"%s" names none, or more than one', (word) => {
    expect(kindFields(snag, word)).toEqual({
      ok: false,
      why: `expected one of: ${Object.keys(KIND_WORDS).join(', ')}`,
    });
  });

  test('of what is on record there is none', () => {
    expect(kindFields(note({ kind: 'batch', product: 'epoxy' }), 'done')).toEqual({
      ok: false,
      why: 'what is on record stays what it is',
    });
  });
});
