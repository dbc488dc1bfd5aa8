import type { Story, StoryReading } from './story.ts';

/**
 * Takes a second annotation of a story as if a reader had made it, so that the two can be compared.
 * Throws when the texts differ: quotes of one would mean nothing in the other.
 */
export function readingOf(first: Story, second: Story): StoryReading {
  return {
    memos: first.memos.map((memo, index) => {
      const other = second.memos[index];
      if (!other || other.id !== memo.id || other.text !== memo.text)
        throw new Error(`${first.story} ${memo.id}: the two annotations are of different texts`);
      return {
        figures: other.figures ?? [],
        decisions: other.decisions ?? [],
        tasks: (other.tasks ?? []).map((task) => ({ ...task, waitsFor: task.waitsFor ?? [] })),
        done: other.done ?? [],
        arrivals: other.arrivals ?? [],
        problems: other.problems ?? [],
        promises: other.promises ?? [],
        conflicts: other.conflicts ?? [],
      };
    }),
    open: second.openAtEnd,
  };
}
