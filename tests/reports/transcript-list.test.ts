import { expect, test } from 'vitest';
import { NO_NOTES } from '../../src/language/notes.ts';
import type { TranscriptView } from '../../src/model/transcripts.ts';
import type { MemoView } from '../../src/model/views.ts';
import { memoText } from '../../src/reports/memo-list.ts';
import { transcriptTable, transcriptText } from '../../src/reports/transcript-list.ts';

const ONE: TranscriptView = {
  version: 1,
  engine: 'small',
  words: 4,
  counts: false,
  text: 'The sluice is oak.',
  utterances: [{ startSeconds: 62.4, endSeconds: 64, text: 'The sluice is oak.' }],
  dropped: [
    { startSeconds: 70, endSeconds: 72.5, text: 'Okay, okay.', why: 'no louder than the background' },
  ],
};
const TWO: TranscriptView = {
  ...ONE,
  version: 2,
  engine: 'large \u001b[31m',
  counts: true,
  chosenBy: 'person',
  dropped: [],
};

test('the transcripts of a memo are a row each, the one that counts marked', () => {
  expect(transcriptTable('m3', [ONE, TWO])).toBe(
    "   1  small  4 words  1 part left out               The sluice is oak.\n*  2  large  4 words                   your choice  The sluice is oak.\n\n* counts: the memo's notes are read from it\n",
  );
  expect(transcriptTable('m3', [])).toBe('memo 3 was written, or is not heard yet: it has no transcript.\n');
});

test('one transcript is its words with their times, and what was left out with the reason', () => {
  expect(transcriptText(ONE)).toBe(
    '01:02  The sluice is oak.\n\nLeft out for want of speech:\n01:10  Okay, okay.  no louder than the background\n',
  );
});

test('a memo names its transcript where there are several, and lists what was left out', () => {
  const memo = {
    id: 'm3',
    source: { name: 'sluice.m4a', kind: 'recording', sha256: '', bytes: 1, durationSeconds: 80 },
    words: 4,
    notes: NO_NOTES,
    text: ONE.text,
    heard: { engine: 'small', version: 1, of: 2 },
    droppedSpeech: ONE.dropped,
  } as unknown as MemoView;
  expect(memoText(memo)).toBe(
    'memo 3  sluice.m4a  1 min 20 s, 4 words: nothing to note\nheard by small: transcript 1 of 2\n\nNothing to note was read.\n\nLeft out for want of speech:\n01:10 to 01:12  "Okay, okay."  no louder than the background\n',
  );
});
