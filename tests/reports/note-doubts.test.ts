import { expect, test } from 'vitest';
import { readMemo } from '../../src/language/pipeline.ts';
import { keepNotes } from '../../src/model/keep-notes.ts';
import type { MemoSummary, MemoView } from '../../src/model/views.ts';
import { doubtsOf, everyNote, sureNotes } from '../../src/reports/note-doubts.ts';
import { FINDING, MEMOS } from '../kit/views.ts';

function memoOf(text: string): MemoView {
  const { notes } = readMemo(text, { units: 'metric', recordedAt: '2026-03-09T18:00:00Z' });
  return { ...(MEMOS[0] as MemoSummary), text, notes: keepNotes('m1', notes, undefined) };
}
const doubts = (text: string) => {
  const memo = memoOf(text);
  return everyNote(memo).flatMap((note) => doubtsOf(note, text, []));
};

test.each([
  ['The vat lid is 640 mm wide.'],
  ['The bee boxes are 372 wide.'],
  ['I need to grease the mill shaft.'],
  ['We decided on ash for the oars.'],
  ['The pump impeller cracked.'],
])('"%s" can be agreed with as it is', (text) => {
  expect(everyNote(memoOf(text))).not.toEqual([]);
  expect(doubts(text)).toEqual([]);
});

test.each([
  ['The vat lid is 640 mm wide, I think.', 'said with a doubt: "I think"'],
  ['Maybe the vat lid is 640 mm wide.', 'said with a doubt: "Maybe"'],
  ['The glass is 4 thick.', 'the unit was not said'],
  ['I need to grease it.', 'it points at something and does not name it'],
  ['We must probably move the post.', 'said with a doubt: "probably"'],
])('"%s" is to be looked at: %s', (text, why) => {
  expect(doubts(text)).toContain(why);
});

test('a doubt in another sentence is none of this one', () => {
  expect(doubts('I think it rains. The vat lid is 640 mm wide.')).toEqual([]);
});

test('what clashes is not sure, what a person has gone over is not doubted', () => {
  const memo = memoOf('The hoist beam is 2115 mm long. I need to grease the mill shaft.');
  const [figure] = memo.notes.figures;
  if (!figure) throw new Error('no figure was read');
  const source = { memoId: 'm1', recordedAt: memo.recordedAt, quote: figure.quote };
  const clash = { ...FINDING, now: { value: 2115, unit: 'mm', source } };
  expect(doubtsOf(figure, memo.text, [clash])[0]).toMatch(/^clashes with 2150 mm/);
  expect(sureNotes(memo, [clash])).toEqual(['m1.t1']);
  expect(doubtsOf({ ...figure, review: 'accepted' }, memo.text, [clash])).toEqual([]);
});
