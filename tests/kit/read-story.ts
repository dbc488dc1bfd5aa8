import { readMemo } from '../../src/language/pipeline.ts';
import type { Story, StoryReading } from './story.ts';

/** Reads every memo of a story by itself, without a project model: no conflicts, nothing open at the end. */
export function readStory(story: Story): StoryReading {
  return {
    memos: story.memos.map((memo) => {
      const { notes } = readMemo(memo.text, {
        units: story.units,
        ...(story.region ? { region: story.region } : {}),
        recordedAt: memo.recordedAt,
      });
      const tasks = notes.tasks.map((task, index) => ({ ...task, id: `${memo.id}.t${index + 1}` }));
      return { ...notes, tasks, conflicts: [] };
    }),
    open: [],
  };
}
