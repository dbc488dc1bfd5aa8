import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readingOf } from './annotation.ts';
import { StoryScore } from './score-story.ts';
import type { Story } from './story.ts';

const story = JSON.parse(readFileSync(new URL('../stories/work-1.json', import.meta.url), 'utf8')) as Story;

test('a story agrees with itself in everything', () => {
  const score = new StoryScore();
  score.add(story, readingOf(story, story));
  expect(score.rows().length).toBeGreaterThan(12);
  expect(score.rows().filter((row) => row.f1 < 1)).toEqual([]);
});

test('a note that only one annotation has is counted', () => {
  const without: Story = {
    ...story,
    memos: story.memos.map((memo) => (memo.id === 'm1' ? { ...memo, decisions: [] } : memo)),
  };
  const differences: string[] = [];
  const score = new StoryScore((line) => differences.push(line));
  score.add(story, readingOf(story, without));
  expect(differences).toHaveLength(2);
  expect(differences[0]).toContain('work-1 m1 MISSED decisions "Floor\'s getting 25 mil foam');
});

test('annotations of different texts cannot be compared', () => {
  const other: Story = {
    ...story,
    memos: story.memos.map((memo) => ({ ...memo, text: `${memo.text} Bye.` })),
  };
  expect(() => readingOf(story, other)).toThrow('work-1 m1: the two annotations are of different texts');
});
