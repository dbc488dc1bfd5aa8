/** Chapters of one recording, in the time of its own clip: where what was told turns to something else. */
import type { MemoView } from '../../model/views.ts';
import { shortLine } from '../columns.ts';
import { sentence } from '../words.ts';
import type { Chapter } from './webvtt.ts';

/** Longer titles are cut where viewers hover. From a platform's help pages, from memory. */
const TITLE_LENGTH = 49;
/** Shorter ones cannot be jumped to with sense. Common practice, no source. */
const LEAST_MS = 10_000;

interface Told {
  readonly gist: string;
  readonly startSeconds?: number;
  readonly review?: string;
}

/** What was told, in the order of speech; the start of the utterance that tells it. */
function toldIn({ notes }: MemoView): readonly { readonly startMs: number; readonly title: string }[] {
  const all: readonly Told[] = [
    ...notes.done,
    ...notes.problems,
    ...notes.decisions,
    ...notes.tasks,
    ...notes.promises,
    ...notes.arrivals.map((note) => ({
      ...note,
      gist: note.received ? `${note.item} arrived` : `${note.item} is to come`,
    })),
  ];
  return all
    .filter((note) => note.review !== 'rejected' && note.startSeconds !== undefined)
    .map(({ gist, startSeconds = 0 }) => ({ startMs: Math.round(startSeconds * 1000), title: gist }))
    .sort((a, b) => a.startMs - b.startMs);
}

/** Returns the chapters of a recording, from its start to its end without a gap; none where nothing was told. */
export function clipChaptersOf(memo: MemoView): readonly Chapter[] {
  const told = toldIn(memo);
  const lastWord = memo.utterances?.at(-1)?.endSeconds ?? 0;
  const end = Math.round(Math.max(memo.source.durationSeconds ?? 0, lastWord) * 1000);
  const kept: { startMs: number; title: string }[] = [];
  for (const { startMs, title } of told) {
    const last = kept.at(-1);
    if (last === undefined) kept.push({ startMs: 0, title });
    else if (startMs - last.startMs >= LEAST_MS && end - startMs >= LEAST_MS) kept.push({ startMs, title });
  }
  return kept.flatMap(({ startMs, title }, index) => {
    const endMs = kept[index + 1]?.startMs ?? end;
    return endMs > startMs ? [{ startMs, endMs, title: shortLine(sentence(title), TITLE_LENGTH) }] : [];
  });
}
