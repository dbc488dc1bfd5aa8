import { spawn } from 'node:child_process';
import { resolve } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { openWorkplace, type Workplace } from '../kit/command-line.ts';

const CLI = resolve('dist/cli.js');

let place: Workplace;
beforeEach(() => {
  place = openWorkplace();
  place.call(['init', '--name', 'Mill']);
});
afterEach(() => place.remove());

function take(files: readonly string[]): Promise<number | null> {
  const child = spawn(process.execPath, [CLI, 'take', ...files, '--at', '2026-03-02T10:00:00Z'], {
    cwd: place.folder,
    env: { PATH: process.env.PATH ?? '', HOME: place.folder, TZ: 'UTC' },
    stdio: 'ignore',
  });
  return new Promise((done) => {
    child.on('close', done);
  });
}

test('three processes take memos at once: every memo is in once, numbered without gaps', async () => {
  const shared = place.file('shared.txt', 'The hopper is 640 wide.');
  const own = [0, 1, 2].map((who) =>
    [0, 1, 2, 3].map((each) => place.file(`p${who}-${each}.txt`, `Bin ${who}${each} is ${300 + each} high.`)),
  );
  const codes = await Promise.all(own.map((files) => take([...files, shared])));
  expect(codes).toEqual([0, 0, 0]);
  const memos = JSON.parse(place.call(['memos', '--json']).out) as { id: string; source: { name: string } }[];
  expect(memos.map(({ id }) => id)).toEqual(Array.from({ length: 13 }, (_, at) => `m${at + 1}`));
  expect(memos.map(({ source }) => source.name).sort()).toEqual([...own.flat(), shared].sort());
  expect(place.call(['verify'])).toMatchObject({ code: 0, err: '' });
});
