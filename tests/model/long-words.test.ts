/** Words of hundreds of thousands of letters, as a torn file may hold them: each step takes time by their length, not its square. */
import { expect, test } from 'vitest';
import { Vocabulary } from '../../src/model/open-tasks.ts';
import { LONGEST_WORD, stemOf } from '../../src/model/stems.ts';
import { ToldStory } from '../kit/told-story.ts';

const LETTERS = 200_000;
const long = (letter: string) => letter.repeat(LETTERS);

function secondsOf(work: () => void): number {
  const started = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(started);
  return (user + system) / 1e6;
}

test('a memo of such words in each kind of sentence is worked in, twice', { timeout: 120_000 }, () => {
  const story = new ToldStory();
  const told = (height: number) =>
    `The bench is ${height} mm high. I need to cut the ${long('x')}ing shelf before Friday. ` +
    `The ${long('y')} is 20 mm high. I cut the ${long('z')} to 30 mm. The ${long('w')} isn't straight.`;
  const seconds = secondsOf(() => {
    story.hear(told(840));
    story.hear(told(870));
  });
  expect(story.project.rows.openTasks().length).toBeGreaterThan(0);
  expect(story.findings()).toHaveLength(1);
  // Quadratic work on so many letters takes minutes.
  expect(seconds).toBeLessThan(30);
});

test('such a word is known by itself, and is no compound of any other', () => {
  const vocabulary = new Vocabulary();
  const seconds = secondsOf(() => {
    vocabulary.add('shelf');
    vocabulary.add(`${long('x')}shelf`);
    expect(vocabulary.related(`${long('x')}shelf`)).toEqual([`${long('x')}shelf`]);
    expect(vocabulary.related('shelf')).toEqual(['shelf']);
  });
  expect(seconds).toBeLessThan(5);
});

test.each([
  ['bookshelf', ['bookshelf', 'shelf']],
  [`${'x'.repeat(LONGEST_WORD - 5)}shelf`, [`${'x'.repeat(LONGEST_WORD - 5)}shelf`, 'shelf']],
  [`${'x'.repeat(LONGEST_WORD - 4)}shelf`, [`${'x'.repeat(LONGEST_WORD - 4)}shelf`]],
])('%s is related to %j', (word, related) => {
  const vocabulary = new Vocabulary();
  vocabulary.add('shelf');
  vocabulary.add(word);
  expect(vocabulary.related(word)).toEqual(related);
});

test('a word of more letters than any has is its own stem', () => {
  expect(stemOf('unbolted')).toBe('unbolt');
  expect(secondsOf(() => expect(stemOf(long('y'))).toBe(long('y')))).toBeLessThan(5);
  const most = `${'a'.repeat(LONGEST_WORD - 2)}ed`;
  expect(stemOf(most)).toBe('a'.repeat(LONGEST_WORD - 2));
  expect(stemOf(`a${most}`)).toBe(`a${most}`);
});
