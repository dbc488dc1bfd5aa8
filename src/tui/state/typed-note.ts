/** What is typed of a note: its right fields, its kind, the words of its sentence. */

import { kindFields, noteAsWritten } from '../../model/note-as-written.ts';
import { sentencesAround } from '../../model/reword.ts';
import type { MemoView } from '../../model/views.ts';
import { readWrittenNote } from '../../model/written-note.ts';
import { oneLine } from '../../reports/words.ts';
import { chosenNote } from './rows.ts';
import type { ScreenState, Step, Typing } from './screen-state.ts';

const stay = (state: ScreenState): Step => ({ state, effects: [] });

/** Asks again, with the words as they were typed and what is wrong with them. */
export function askAgain(state: ScreenState, typing: Typing, why: string): Step {
  return stay({ ...state, typing, message: { tone: 'bad', lines: [oneLine(why)] } });
}

/** Opens the line that a note is put right in. */
export function askNote(state: ScreenState, what: 'amend' | 'kind' | 'reword'): Step {
  const { memo } = state;
  const line = chosenNote(state);
  if (!memo || !line) return stay(state);
  const { note } = line;
  const written = noteAsWritten(note);
  if (written === undefined && what !== 'reword') {
    const lines = ['what is on record is put right by its words: h'];
    return stay({ ...state, message: { tone: 'bad', lines } });
  }
  const text =
    what === 'amend'
      ? (written ?? '')
      : what === 'kind'
        ? ''
        : sentenceOf(memo, note.span).replace(/\s+/g, ' ');
  return stay({ ...state, typing: { what, text, about: note.id }, message: undefined });
}

/** The sentence that a note was said in, without the blanks around it. */
function sentenceOf(memo: MemoView, span: { readonly start: number; readonly end: number }): string {
  const { start, end } = sentencesAround(memo.text, span);
  return memo.text.slice(start, end).trim();
}

/** Does what was typed of a note. One that is gone meanwhile is left alone. */
export function finishNote(state: ScreenState, typing: Typing, text: string): Step {
  const { memo, data } = state;
  const line = memo && chosenNoteWith(state, typing.about);
  if (!memo || !line) return stay(state);
  if (typing.what === 'reword') return reword(state, memo, line.note.span, text);
  const read =
    typing.what === 'kind' ? kindFields(line.note, text) : readWrittenNote(line.note.kind, text, data.region);
  if (!read.ok) return askAgain(state, typing, read.why);
  const change = { kind: 'note-amended', noteId: line.id, fields: read.value } as const;
  return { state, effects: [{ do: 'by-hand', change, line: `put right: ${oneLine(text)}` }] };
}

function chosenNoteWith(state: ScreenState, id: string | undefined) {
  const line = chosenNote(state);
  return line?.id === id ? line : undefined;
}

function reword(
  state: ScreenState,
  memo: MemoView,
  near: { readonly start: number; readonly end: number },
  text: string,
): Step {
  const sentence = sentencesAround(memo.text, near);
  const was = memo.text.slice(sentence.start, sentence.end);
  const start = sentence.start + (was.length - was.trimStart().length);
  const end = sentence.end - (was.length - was.trimEnd().length);
  if (memo.text.slice(start, end).replace(/\s+/g, ' ') === text) return stay(state);
  const wording = changedPart(memo.text.slice(start, end), text, start);
  return { state, effects: [{ do: 'reword', memoId: memo.id, wording }] };
}

/** Only what differs, in whole words: the rest keeps its place in the recording. */
function changedPart(was: string, now: string, offset: number) {
  let front = 0;
  while (front < Math.min(was.length, now.length) && was[front] === now[front]) front++;
  let back = 0;
  while (back < Math.min(was.length, now.length) - front && was.at(-1 - back) === now.at(-1 - back)) back++;
  while (front > 0 && /\S/.test(was[front - 1] ?? '')) front--;
  while (back > 0 && /\S/.test(was[was.length - back] ?? '')) back--;
  return {
    span: { start: offset + front, end: offset + was.length - back },
    words: now.slice(front, now.length - back),
  };
}
