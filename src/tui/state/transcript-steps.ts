/** Choosing between what several engines heard in a memo: the rows of the list, and the steps. */
import type { TranscriptView } from '../../model/transcripts.ts';
import { plainText } from '../../plain-text.ts';
import { counted } from '../../reports/source-text.ts';
import type { ScreenState, Step } from './screen-state.ts';

/** `* 2  COUNTS, your choice  tiny-en  148 words`; the one that counts is marked by a sign and told in words. */
export function transcriptRow({ version, engine, words, dropped, counts, chosenBy }: TranscriptView): string {
  const why = chosenBy === 'person' ? ', your choice' : chosenBy === 'newest' ? ', the newest' : '';
  return [
    `${counts ? '*' : ' '} ${version}`,
    ...(counts ? [`COUNTS${why}`] : []),
    plainText(engine),
    counted(words, 'word'),
    ...(dropped.length > 0 ? [`${counted(dropped.length, 'part')} left out`] : []),
  ].join('  ');
}

/** What the marked one heard, or why there is nothing to choose. */
export function transcriptWords({ memo, transcripts, chosen }: ScreenState): string {
  if (!transcripts) return '';
  if (transcripts.length === 0) return 'This memo was written, or is not heard yet: there is no transcript.';
  const text = plainText(transcripts[chosen.transcripts]?.text ?? '') || 'No speech was heard in it.';
  const only = `Only one engine heard it. Another one: hearwright hear ${memo?.id.slice(1) ?? ''} --engine NAME`;
  return transcripts.length === 1 ? `${text}\n${only}` : text;
}

/** Lets the marked transcript count, whose notes are then those of the memo. */
export function chooseTranscript(state: ScreenState): Step {
  const { memo, transcripts = [], chosen } = state;
  const one = transcripts[chosen.transcripts];
  if (!memo || !one || one.counts) return { state, effects: [] };
  const change = {
    kind: 'transcript-chosen',
    memoId: memo.id,
    version: one.version,
    by: 'person',
  } as const;
  const line = `transcript ${one.version} counts now, by ${plainText(one.engine)}`;
  return { state, effects: [{ do: 'by-hand', change, line }] };
}

/** The list opens with the mark on the transcript that counts; when it is read again the mark stays. */
export function withTranscripts(
  state: ScreenState,
  memoId: string,
  transcripts: readonly TranscriptView[],
): ScreenState {
  // An answer for a memo that was left meanwhile is not wanted any more.
  if (state.memo?.id !== memoId) return state;
  const counting = Math.max(
    0,
    transcripts.findIndex(({ counts }) => counts),
  );
  const row = state.transcripts ? Math.min(state.chosen.transcripts, transcripts.length - 1) : counting;
  return { ...state, transcripts, chosen: { ...state.chosen, transcripts: Math.max(0, row) } };
}
