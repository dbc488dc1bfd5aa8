import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readingOf } from '../kit/annotation.ts';
import { StoryScore } from '../kit/score-story.ts';
import type { GoldMemo, Story } from '../kit/story.ts';
import { storyFaults } from '../kit/story-faults.ts';

const folder = new URL('.', import.meta.url);
const read = (name: string) => JSON.parse(readFileSync(new URL(name, folder), 'utf8')) as Story;
const names = readdirSync(folder).filter((name) => name.endsWith('.json'));
const twice = readdirSync(new URL('second/', folder));

describe.each(names)('%s', (name) => {
  const story = read(name);

  test('can stand as it is written', () => {
    expect(storyFaults(story)).toEqual([]);
  });

  test('is as long and as varied as a story should be', () => {
    const kinds = story.memos.flatMap((memo) => (memo.conflicts ?? []).map((conflict) => conflict.kind));
    expect(`${story.story}.json`).toBe(name);
    expect(story.memos.map((memo) => memo.id)).toEqual(['m1', 'm2', 'm3', 'm4', 'm5', 'm6']);
    expect([...new Set(kinds)].sort()).toEqual(['decided', 'limit', 'remeasured', 'slip', 'stale']);
    expect(story.openAtEnd.length).toBeGreaterThan(0);
  });
});

describe.each(twice)('the second annotation of %s', (name) => {
  const second = read(`second/${name}`);

  test('can stand by itself', () => {
    expect(storyFaults(second)).toEqual([]);
  });

  test('agrees with the first on figures, tasks and conflicts, seven of eight and more', () => {
    const score = new StoryScore();
    const first = read(name);
    score.add(first, readingOf(first, second));
    const agreed = new Map(score.rows().map((row) => [row.name, row.f1]));
    for (const what of ['figures', 'figure item', 'figure attribute', 'tasks', 'done', 'conflicts'])
      expect(agreed.get(what), what).toBeGreaterThan(7 / 8);
  });
});

describe('a fault is found', () => {
  const story = read('work-1.json');
  const spoil = (memoId: string, change: (memo: GoldMemo) => Partial<GoldMemo>): string[] =>
    storyFaults({
      ...story,
      memos: story.memos.map((memo) => (memo.id === memoId ? { ...memo, ...change(memo) } : memo)),
    });

  test('in a quote that was never said', () => {
    const faults = spoil('m1', () => ({ promises: [{ quote: 'cross my heart', gist: 'none' }] }));
    expect(faults).toEqual(['m1 not in the text: "cross my heart"']);
  });

  test('in a unit of another dimension', () => {
    const faults = spoil('m1', (memo) => ({
      figures: memo.figures?.map((figure, index) => (index === 0 ? { ...figure, unit: 'kg' } : figure)) ?? [],
    }));
    expect(faults).toEqual(['m1 "eleven point two metres": unit kg is none of length']);
  });

  test('in a task that is closed before it was opened', () => {
    const faults = spoil('m1', (memo) => ({
      done: [...(memo.done ?? []).slice(0, 1).map((note) => ({ ...note, closes: 'm2.t1' }))],
    }));
    expect(faults).toContain('m1 closes m2.t1, which no earlier memo opened');
    expect(faults).toContain('m4 closes m2.t1 again');
  });

  test('in a conflict with a figure that nobody said', () => {
    const faults = spoil('m2', (memo) => ({
      conflicts: memo.conflicts?.map((conflict) => ({ ...conflict, was: { value: 2311, unit: 'mm' } })) ?? [],
    }));
    expect(faults).toHaveLength(2);
    expect(faults[0]).toBe('m2 conflict over inside of the bus, wall to wall: nobody said 2311 mm before');
  });

  test('in a limit that holds', () => {
    const faults = spoil('m6', (memo) => ({
      conflicts: (memo.conflicts ?? []).map((conflict) =>
        conflict.kind === 'limit' ? { ...conflict, was: { value: 3.3, unit: 'm' } } : conflict,
      ),
    }));
    expect(faults).toEqual(['m6 conflict over bus all up, with what is on the roof: no limit is broken']);
  });

  test('in an open task that is left off the list', () => {
    expect(storyFaults({ ...story, openAtEnd: [] })).toHaveLength(1);
  });
});
