import type { KnownFigure } from '../../src/language/notes.ts';
import { readMemo } from '../../src/language/pipeline.ts';
import type { Story, StoryReading } from './story.ts';

/**
 * Reads every memo of a story, each with the figures of the memos before it to settle short names. Without a project
 * model: no conflicts, nothing open at the end.
 */
export function readStory(story: Story): StoryReading {
  const known: KnownFigure[] = [];
  return {
    memos: story.memos.map((memo) => {
      const { notes } = readMemo(memo.text, {
        units: story.units,
        ...(story.region ? { region: story.region } : {}),
        recordedAt: memo.recordedAt,
        knownItems: [...new Set(known.map((figure) => figure.item))],
        knownFigures: [...known],
      });
      for (const { item, attribute, value, unit, limit } of notes.figures)
        if (!limit?.about) known.push({ item, attribute, value, unit });
      const tasks = notes.tasks.map((task, index) => ({ ...task, id: `${memo.id}.t${index + 1}` }));
      return { ...notes, tasks, conflicts: [] };
    }),
    open: [],
  };
}
