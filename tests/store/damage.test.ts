import { spawnSync } from 'node:child_process';
import {
  closeSync,
  copyFileSync,
  mkdirSync,
  mkdtempSync,
  openSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  truncateSync,
  writeSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { Problem } from '../../src/problem.ts';
import { bindingFor, Sqlite } from '../../src/store/sqlite.ts';
import { createStore, openStore } from '../../src/store/store.ts';
import { tenYearBuild } from '../kit/ten-year-build.ts';

let folder: string;
let file: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'store-damage-'));
  file = join(folder, 'project.db');
  const store = createStore(file, { name: 'kiln', units: 'metric', at: '2026-03-01T08:00:00Z' });
  for (const { events } of tenYearBuild(0.005)) store.append(events);
  store.close();
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

/** Opens the file, looks through it, and gives back what it says: nothing, faults, or a problem's code. */
function lookThrough(path: string): readonly string[] {
  try {
    const store = openStore(path);
    try {
      store.rows.all('memos');
      return store.verify().faults;
    } finally {
      store.close();
    }
  } catch (error) {
    if (error instanceof Problem) {
      expect(error.exitCode).toBe(4);
      return [error.code];
    }
    throw error;
  }
}

test('a file cut off anywhere is called damaged, with exit code 4, and is left as it was', () => {
  const { size } = statSync(file);
  for (const part of [0.9, 0.5, 0.1, 0.01]) {
    const cut = join(folder, `cut-${part}.db`);
    copyFileSync(file, cut);
    truncateSync(cut, Math.floor(size * part));
    const before = readFileSync(cut);
    expect([part, lookThrough(cut)]).toEqual([part, ['project-damaged']]);
    expect(readFileSync(cut).equals(before)).toBe(true);
  }
});

test('bytes overwritten anywhere are found: by opening, or by looking through', () => {
  const { size } = statSync(file);
  const pageBytes = 4096;
  for (let page = 1; page * pageBytes < size; page += 7) {
    const spoilt = join(folder, 'spoilt.db');
    copyFileSync(file, spoilt);
    const handle = openSync(spoilt, 'r+');
    writeSync(handle, Buffer.alloc(pageBytes, 0xa5), 0, pageBytes, page * pageBytes);
    expect([page, lookThrough(spoilt).length]).not.toEqual([page, 0]);
  }
});

test('a figure changed behind the program`s back is found, and rebuilding puts it right', () => {
  const db = new Sqlite(file);
  db.exec("UPDATE standing SET body = json_set(body, '$.value', 1) WHERE ord = 3");
  db.close();
  const [kept, rebuilt] = lookThrough(file);
  expect(kept).toMatch(/^only in the file: standing /);
  expect(rebuilt).toMatch(/^only in the rebuilt model: standing /);
  const store = openStore(file);
  store.rebuild();
  expect(store.verify().faults).toEqual([]);
  store.close();
});

test('a process killed while it writes leaves the project as it was before', () => {
  const before = openStore(file);
  const events = before.log().length;
  before.close();
  // Holds a transaction open with half of its rows written, then dies without a word.
  const killed = spawnSync(process.execPath, [
    '--input-type=module',
    '-e',
    `import Sqlite from '${bindingFor(process.versions.napi)}';
     const db = new Sqlite(${JSON.stringify(file)});
     db.pragma('cache_size = 2');
     db.exec('BEGIN IMMEDIATE');
     const add = db.prepare("INSERT INTO log (seq, at, kind, body) VALUES (?, '2026', 'task-added', '{}')");
     for (let seq = ${events + 1}; seq < ${events + 2000}; seq++) add.run(seq);
     process.kill(process.pid, 'SIGKILL');`,
  ]);
  expect(killed.signal).toBe('SIGKILL');
  expect(lookThrough(file)).toEqual([]);
  const after = openStore(file);
  expect(after.log()).toHaveLength(events);
  after.close();
});

/** A disk of one megabyte in `folder`, where this machine lets us make one. */
function mountSmallDisk(): string | undefined {
  const disk = join(folder, 'disk');
  mkdirSync(disk);
  const made = spawnSync('mount', ['-t', 'tmpfs', '-o', 'size=1m', 'tmpfs', disk]);
  return made.status === 0 ? disk : undefined;
}

test('a project on a disk without any room is not opened, and the reason is said', (context) => {
  const disk = mountSmallDisk();
  if (disk === undefined) return context.skip('no right to make a small disk');
  try {
    const small = join(disk, 'project.db');
    createStore(small, { name: 'kiln', units: 'metric', at: '2026-03-01T08:00:00Z' }).close();
    const ballast = openSync(join(disk, 'ballast'), 'w');
    expect(() => {
      for (;;) writeSync(ballast, Buffer.alloc(4096, 1));
    }).toThrow('ENOSPC');
    closeSync(ballast);
    expect(() => openStore(small)).toThrow(`cannot write to ${small}: the disk is full`);
    rmSync(join(disk, 'ballast'));
    openStore(small).close();
  } finally {
    spawnSync('umount', [disk]);
  }
});

test('a full disk is said, and what was written before is whole', (context) => {
  const disk = mountSmallDisk();
  if (disk === undefined) return context.skip('no right to make a small disk');
  try {
    const small = join(disk, 'project.db');
    const store = createStore(small, { name: 'kiln', units: 'metric', at: '2026-03-01T08:00:00Z' });
    let written = 1;
    const fill = () => {
      for (const { events } of tenYearBuild(0.1)) {
        store.append(events);
        written += events.length;
      }
    };
    expect(fill).toThrow(
      expect.objectContaining({ code: 'project-unwritable', kept: 'everything written before' }),
    );
    expect(store.log()).toHaveLength(written);
    store.close();
    // On a full disk the last writing may still stand in the file beside it.
    for (const name of readdirSync(disk)) copyFileSync(join(disk, name), join(folder, `moved-${name}`));
  } finally {
    spawnSync('umount', [disk]);
  }
  expect(lookThrough(join(folder, 'moved-project.db'))).toEqual([]);
});
