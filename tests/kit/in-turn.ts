import type { KnownFigure, MemoNotes } from '../../src/language/notes.ts';
import { readMemo } from '../../src/language/pipeline.ts';
import type { Story } from './story.ts';

/**
 * The notes of a story's memos, each read with what those before it told. No model is asked what still stands: a change of
 * the model changes nothing here.
 */
export function readInTurn({ memos, units, region }: Story): readonly MemoNotes[] {
  const known: KnownFigure[] = [];
  const openTasks: string[] = [];
  return memos.map(({ text, recordedAt }) => {
    const { notes } = readMemo(text, {
      units,
      ...(region ? { region } : {}),
      recordedAt,
      knownItems: [...new Set(known.map(({ item }) => item))],
      knownFigures: [...known],
      openTasks: [...openTasks],
    });
    for (const { item, attribute, value, unit } of notes.figures)
      known.push({ item, attribute, value, unit });
    openTasks.push(...notes.tasks.map(({ gist }) => gist));
    return notes;
  });
}
