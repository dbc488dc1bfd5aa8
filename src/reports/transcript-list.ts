/** The transcripts of one memo for the terminal. */
import type { TranscriptView } from '../model/transcripts.ts';
import type { HeardMemo } from '../project-api.ts';
import { memoLine } from './memo-list.ts';
import { clipTime, counted, memoName } from './source-text.ts';
import { textTable } from './text-table.ts';
import { oneLine } from './words.ts';

/** A row for each; the one that counts is marked. */
export function transcriptTable(memoId: string, all: readonly TranscriptView[]): string {
  if (all.length === 0)
    return `${memoName(memoId)} was written, or is not heard yet: it has no transcript.\n`;
  const rows = all.map((one) => [
    one.counts ? '*' : '',
    String(one.version),
    one.engine,
    counted(one.words, 'word'),
    one.dropped.length > 0 ? `${counted(one.dropped.length, 'part')} left out` : '',
    whyItCounts(one),
    opening(one.text),
  ]);
  return `${textTable(rows)}\n* counts: the memo's notes are read from it\n`;
}

function whyItCounts({ counts, chosenBy }: TranscriptView): string {
  if (!counts || !chosenBy) return '';
  return chosenBy === 'person' ? 'your choice' : 'the newest';
}

const OPENING = 60;

function opening(text: string): string {
  const line = oneLine(text);
  return line.length > OPENING ? `${line.slice(0, OPENING).trimEnd()}…` : line;
}

/** One transcript, a line for each utterance with its time; then what was left out, and why. */
export function transcriptText({ utterances, dropped, text }: TranscriptView): string {
  const said = utterances.map((one) => [clipTime(one.startSeconds), one.text]);
  const body = said.length > 0 ? textTable(said) : `${oneLine(text) || 'No speech was heard in it.'}\n`;
  if (dropped.length === 0) return body;
  const left = dropped.map((one) => [clipTime(one.startSeconds), one.text, one.why ?? '']);
  return `${body}\nLeft out for want of speech:\n${textTable(left)}`;
}

/** What came of hearing a memo again. */
export function heardText({ transcript, already, memo }: HeardMemo): string {
  const number = memo.id.slice(1);
  const { version, engine, counts } = transcript;
  const first = already
    ? `${oneLine(engine)} heard ${memoName(memo.id)} before: it is transcript ${version}.`
    : `transcript ${version} of ${memoName(memo.id)}, by ${oneLine(engine)}: ${counted(transcript.words, 'word')}`;
  const second = counts
    ? `It counts: ${memoLine(memo)}`
    : `Another one counts. To let this one count: hearwright transcripts ${number} ${version} --use`;
  return `${first}\n${second}\n`;
}
