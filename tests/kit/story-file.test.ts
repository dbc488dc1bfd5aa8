import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, expect, test } from 'vitest';
import { readStoryFile } from './story-file.ts';

const folder = mkdtempSync(join(tmpdir(), 'hearwright-story-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const fileOf = (text: string) => {
  const file = join(folder, 'story.json');
  writeFileSync(file, text);
  return file;
};

test.each([1, 2, 3, 4])('work-%d.json is a story', (number) => {
  const file = fileURLToPath(new URL(`../stories/work-${number}.json`, import.meta.url));
  expect(readStoryFile(file).memos.length).toBeGreaterThan(3);
});

test('every fault of a story file is named by its place', () => {
  const memo = {
    id: 'm1',
    recordedAt: 'x',
    text: 'x',
    figures: [{ quote: 7 }],
    tasks: [{ quote: 'x', gist: 'x' }],
  };
  const told = JSON.stringify({ story: 'x', units: 'feet', memos: [memo] });
  expect(() => readStoryFile(fileOf(told))).toThrow(
    /is no story:\n {2}units: [^\n]*\n.*memos\.0\.figures\.0\.quote: [^\n]*string.*memos\.0\.tasks\.0\.id: /s,
  );
});

test.each([
  ['[]', 'the file: '],
  ['null', 'the file: '],
])('%s is no story', (text, place) => {
  expect(() => readStoryFile(fileOf(text))).toThrow(place);
});

test('a file that is no JSON says so', () => {
  expect(() => readStoryFile(fileOf('{'))).toThrow(/cannot be read as a story/);
});
