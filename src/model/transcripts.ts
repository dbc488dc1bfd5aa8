/** The transcripts that stand beside each other for one memo. Pure. */
import type { SpokenText } from './events.ts';
import type { ProjectRows } from './rows.ts';
import type { DroppedSpeech, Utterance } from './views.ts';

/** What one engine heard in a recording. */
export interface TranscriptView {
  /** From 1, in the order in which they were made. */
  readonly version: number;
  readonly engine: string;
  readonly words: number;
  /** Whether the memo's notes come from this one. */
  readonly counts: boolean;
  /** Where it counts and another one could: who chose it. */
  readonly chosenBy?: 'person' | 'newest';
  readonly text: string;
  readonly utterances: readonly Utterance[];
  readonly dropped: readonly DroppedSpeech[];
}

/** Of a recording that was heard, oldest first; empty for a memo that was written, or not heard yet. */
export function transcriptViews(rows: ProjectRows, memoId: string): readonly TranscriptView[] {
  const memo = rows.get('memos', memoId);
  if (memo?.source.kind !== 'recording' || memo.text === undefined) return [];
  const first: SpokenText = memo.first ?? { ...memo, text: memo.text };
  const chosen = rows.get('choices', memoId);
  const hearings = rows.where('hearings', 'memoId', memoId);
  const all = [{ version: 1, transcript: first }, ...hearings].sort((a, b) => a.version - b.version);
  return all.map(({ version, transcript: { text, engine, utterances, dropped } }) => {
    const counts = version === (memo.version ?? 1);
    return {
      version,
      engine: engine ?? 'unnamed engine',
      words: text.split(/\s+/).filter((word) => word !== '').length,
      counts,
      ...(counts && chosen && hearings.length > 0 ? { chosenBy: chosen.by } : {}),
      text,
      utterances: utterances ?? [],
      dropped: dropped ?? [],
    };
  });
}
