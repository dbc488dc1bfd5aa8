import { expect, test } from 'vitest';
import { readMemo } from '../../src/language/pipeline.ts';
import { keepNotes, type NumberedNotes } from '../../src/model/keep-notes.ts';
import { notesAfter, reworded, sentencesAround } from '../../src/model/reword.ts';
import type { Utterance } from '../../src/model/views.ts';

const CONTEXT = { units: 'metric', recordedAt: '2026-03-09T18:00:00Z' } as const;
const UTTERANCES: readonly Utterance[] = [
  { startSeconds: 0, endSeconds: 4, text: 'The hatch is 640 wide.' },
  { startSeconds: 5, endSeconds: 9, text: 'The self is 320 deep.' },
  { startSeconds: 10, endSeconds: 14, text: 'I need to oil the hinges.' },
];
const TEXT = UTTERANCES.map(({ text }) => text).join(' ');

/** The stretch of `words` in a text. */
function place(text: string, words: string) {
  const start = text.indexOf(words);
  if (start < 0) throw new Error(`"${words}" is not in the text`);
  return { start, end: start + words.length };
}

/** What the memo says and holds after `heard` was put right into `said`. */
function afterWords(text: string, heard: string, said: string, before?: NumberedNotes) {
  const notes = before ?? readMemo(text, CONTEXT).notes;
  const wording = { span: place(text, heard), words: said };
  const now = reworded({ text }, wording).text;
  const after = notesAfter('m1', { text, notes }, wording, readMemo(now, CONTEXT).notes);
  return { text: now, notes: after, kept: keepNotes('m1', after, undefined) };
}

const rows = (notes: NumberedNotes) =>
  Object.values(keepNotes('m1', notes, undefined)).flatMap((list) =>
    list.map((note) => [
      note.id,
      'item' in note ? note.item : '',
      'value' in note ? note.value : '',
      note.quote,
    ]),
  );

test('the utterance that holds the words says them; the others stay', () => {
  const { text, utterances } = reworded(
    { text: TEXT, utterances: UTTERANCES },
    { span: place(TEXT, 'self'), words: 'shelf' },
  );
  expect(utterances?.map((one) => one.text)).toEqual([
    'The hatch is 640 wide.',
    'The shelf is 320 deep.',
    'I need to oil the hinges.',
  ]);
  expect(utterances?.map((one) => one.text).join(' ')).toBe(text);
});

test('words over two utterances make one of them', () => {
  const wording = { span: place(TEXT, '640 wide. The self'), words: '640 wide, the shelf' };
  const { text, utterances } = reworded({ text: TEXT, utterances: UTTERANCES }, wording);
  expect(utterances).toEqual([
    { startSeconds: 0, endSeconds: 9, text: 'The hatch is 640 wide, the shelf is 320 deep.' },
    UTTERANCES[2],
  ]);
  expect(utterances?.map((one) => one.text).join(' ')).toBe(text);
});

test('the sentences around a stretch', () => {
  expect(TEXT.slice(...(Object.values(sentencesAround(TEXT, place(TEXT, 'self'))) as [number, number]))).toBe(
    'The self is 320 deep.',
  );
});

test.each([
  ['self', 'shelf', 'shelf', 320],
  ['The self is 320', 'The shelf is 230', 'shelf', 230],
])(
  '"%s" put right into "%s": the sentence is read again, ids stay, quotes are in the text',
  (heard, said, item, value) => {
    const { text, notes, kept } = afterWords(TEXT, heard, said);
    expect(kept.figures.map((figure) => [figure.id, figure.item, figure.value])).toEqual([
      ['m1.f1', 'hatch', 640],
      ['m1.f2', item, value],
    ]);
    for (const list of Object.values(kept))
      for (const { quote, span } of list) expect(text.slice(span.start, span.end)).toBe(quote);
    expect(notes.tasks).toHaveLength(1);
  },
);

test('a figure that comes with the words gets the next number, one that goes takes its id along', () => {
  const text = 'The hatch is wide. The shelf is 320 deep.';
  const more = afterWords(text, 'wide', '640 wide');
  expect(more.kept.figures.map(({ id, value }) => [id, value])).toEqual([
    ['m1.f2', 640],
    ['m1.f1', 320],
  ]);
  const less = afterWords(more.text, '640 wide', 'wide', more.notes);
  expect(less.kept.figures.map(({ id, value }) => [id, value])).toEqual([['m1.f1', 320]]);
});

test('putting words right and back again leaves every note as it was', () => {
  const before = readMemo(TEXT, CONTEXT).notes;
  const there = afterWords(TEXT, 'self', 'shelf');
  const back = afterWords(there.text, 'shelf', 'self', there.notes);
  expect(back.text).toBe(TEXT);
  expect(rows(back.notes)).toEqual(rows(before));
});
