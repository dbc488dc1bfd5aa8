import { describe, expect, test } from 'vitest';
import { SETTLED_MS, type SeenFile, settle, type Watching } from '../../src/watching/settling.ts';

const file = (name: string, bytes: number, changedAt = 0): SeenFile => ({ name, bytes, changedAt });

/** Looks at these folders, a second apart, and says what was ready at each. */
function looks(...folders: readonly (readonly SeenFile[])[]): readonly (readonly string[])[] {
  let known: Watching = new Map();
  return folders.map((seen, second) => {
    const settled = settle(known, seen, second * 1000);
    known = settled.known;
    return settled.ready;
  });
}

describe('a file is ready', () => {
  test('when it kept its size and time for three seconds, and once', () => {
    const seen = [file('a.m4a', 10)];
    expect(looks(seen, seen, seen, seen, seen, seen)).toEqual([[], [], [], ['a.m4a'], [], []]);
    expect(SETTLED_MS).toBe(3000);
  });

  test('not while it grows, nor while it is written over', () => {
    const grows = [1, 2, 3, 4, 5, 6].map((bytes) => [file('a.m4a', bytes)]);
    const written = [1, 2, 3, 4, 5, 6].map((changedAt) => [file('a.m4a', 9, changedAt)]);
    expect(looks(...grows).flat()).toEqual([]);
    expect(looks(...written).flat()).toEqual([]);
  });

  test('again when it changes later', () => {
    const early = [file('a.txt', 10)];
    const late = [file('a.txt', 12, 5000)];
    expect(looks(early, early, early, early, late, late, late, late)).toEqual([
      [],
      [],
      [],
      ['a.txt'],
      [],
      [],
      [],
      ['a.txt'],
    ]);
  });

  test('again when it went away and came back', () => {
    const seen = [file('a.txt', 10)];
    expect(looks(seen, seen, seen, seen, [], seen, seen, seen, seen).flat()).toEqual(['a.txt', 'a.txt']);
  });

  test('in the order of recording, whatever the names are', () => {
    const seen = [file('b.m4a', 1, 200), file('z.m4a', 1, 100), file('a.m4a', 1, 200)];
    expect(looks(seen, seen, seen, seen).at(-1)).toEqual(['z.m4a', 'a.m4a', 'b.m4a']);
  });
});

test.each([
  '.hidden.m4a',
  'memo.m4a.part',
  'memo.m4a.crdownload',
  'memo.m4a.tmp',
  'memo.txt~',
  '.memo.m4a.k3Xa',
])('%s is still on its way', (name) => {
  const seen = [file(name, 10)];
  expect(looks(seen, seen, seen, seen, seen).flat()).toEqual([]);
});

test.each(['memo.m4a', 'part 2.txt', 'a.b.c.wav', 'Ünï.mp4'])('%s is a name of its own', (name) => {
  const seen = [file(name, 10)];
  expect(looks(seen, seen, seen, seen).flat()).toEqual([name]);
});

test('an empty file waits until something is in it', () => {
  const empty = [file('a.txt', 0)];
  const full = [file('a.txt', 4, 1)];
  expect(looks(empty, empty, empty, empty, empty, full, full, full, full).flat()).toEqual(['a.txt']);
});
