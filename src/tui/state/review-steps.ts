/** Steps of going over what was heard: note by note, the sure ones at once, the unsure ones alone. */
import { subjectOf } from '../../reports/finding-text.ts';
import { otherReadings, sureNotes } from '../../reports/note-doubts.ts';
import { quantityText } from '../../reports/quantity-text.ts';
import { clipTime, counted } from '../../reports/source-text.ts';
import { oneLine } from '../../reports/words.ts';
import { isRunning } from './bench.ts';
import { chosenNote, noteLines, shownNotes } from './rows.ts';
import type { ScreenState, Step } from './screen-state.ts';

const stay = (state: ScreenState): Step => ({ state, effects: [] });

/** Agrees with the marked note, or says that it is none, and goes on to the next. */
export function judge(state: ScreenState, verdict: 'accepted' | 'rejected'): Step {
  const line = chosenNote(state);
  if (!line) return stay(state);
  const change = { kind: `note-${verdict}`, noteId: line.id } as const;
  const said = verdict === 'accepted' ? 'right' : 'taken out';
  return {
    state: onward(state),
    effects: [{ do: 'by-hand', change, line: `${said}: ${oneLine(line.what)}` }],
  };
}

/** Of a number that may have been another one the other is right: the first that the list names. */
export function takeOther(state: ScreenState): Step {
  const line = chosenNote(state);
  if (line?.note.kind !== 'figure' || otherReadings(line.note) === '') return stay(state);
  const [other] = line.note.alternatives ?? [];
  if (!other) return stay(state);
  const { value, unit } = other;
  const change = { kind: 'note-amended', noteId: line.id, fields: { value, unit } } as const;
  return {
    state: onward(state),
    effects: [{ do: 'by-hand', change, line: `put right: ${subjectOf(line.note)} ${quantityText(other)}` }],
  };
}

/** The mark on the next row. Where unsure notes stand alone, the row itself goes, and the next comes to its place. */
function onward(state: ScreenState): ScreenState {
  if (state.unsureAlone) return state;
  const last = Math.max(0, shownNotes(state).length - 1);
  return { ...state, chosen: { ...state.chosen, heard: Math.min(last, state.chosen.heard + 1) } };
}

/** Agrees with every note that nothing speaks against, and lists the others alone. */
export function acceptSure(state: ScreenState): Step {
  const { memo, data } = state;
  if (!memo) return stay(state);
  const noteIds = sureNotes(memo, data.findings);
  const unsure = noteLines(memo, data.findings).filter((line) => line.state === 'UNSURE').length;
  const rest = unsure === 0 ? 'none is unsure' : `${unsure} unsure: they stand here alone`;
  const next = { ...state, unsureAlone: unsure > 0, chosen: { ...state.chosen, heard: 0 } };
  if (noteIds.length === 0)
    return stay({ ...next, message: { tone: 'good', lines: [`no sure note is left, ${rest}`] } });
  const line = `${counted(noteIds.length, 'sure note')} agreed with, ${rest}`;
  return { state: next, effects: [{ do: 'by-hand', change: { kind: 'notes-accepted', noteIds }, line }] };
}

/** Plays where the marked note was said. */
export function play(state: ScreenState): Step {
  const line = chosenNote(state);
  const { memo } = state;
  if (!line || !memo) return stay(state);
  const { startSeconds: from, endSeconds: to } = line.note;
  if (from === undefined || to === undefined)
    return stay({
      ...state,
      message: { tone: 'bad', lines: ['this memo was taken as text: nothing can be played'] },
    });
  if (isRunning(state.bench))
    return stay({
      ...state,
      message: { tone: 'bad', lines: ['the microphone would hear it: stop the recording first'] },
    });
  return {
    state: {
      ...state,
      message: { tone: 'good', lines: [`${PLAYING} ${clipTime(from)} to ${clipTime(to)}: p ends it`] },
    },
    effects: [{ do: 'play', memoId: memo.id, stretch: { from, to } }],
  };
}
const PLAYING = 'playing';

/** The clip is over: that it plays is said no longer. */
export function played(state: ScreenState): ScreenState {
  return state.message?.lines[0]?.startsWith(PLAYING) ? { ...state, message: undefined } : state;
}

/** All notes, or the unsure ones alone. */
export function turnUnsure(state: ScreenState): Step {
  const next = { ...state, unsureAlone: !state.unsureAlone, message: undefined };
  return stay({ ...next, chosen: { ...state.chosen, heard: 0 } });
}

/** The memo before, or the one after, by the time of recording as the list has them. */
export function turnMemo(state: ScreenState, by: -1 | 1): Step {
  const { memos } = state.data;
  const at = memos.findIndex(({ id }) => id === state.memo?.id);
  // Newest first: what comes after stands before.
  const memo = at < 0 ? undefined : memos[at - by];
  if (!memo) return stay(state);
  return {
    state: { ...state, chosen: { ...state.chosen, heard: 0, memos: at - by }, message: undefined },
    effects: [{ do: 'open-memo', id: memo.id }],
  };
}

/** How far one has come: "3 of 10 to go over, 1 unsure"; "all gone over". */
export function reviewWords({ memo, data }: ScreenState): string {
  if (!memo) return '';
  const lines = noteLines(memo, data.findings);
  const open = lines.filter(({ state }) => state === '' || state === 'UNSURE');
  const unsure = lines.filter(({ state }) => state === 'UNSURE').length;
  if (lines.length === 0) return '';
  if (open.length === 0) return 'all gone over';
  return `${open.length} of ${lines.length} to go over, ${unsure} unsure`;
}
