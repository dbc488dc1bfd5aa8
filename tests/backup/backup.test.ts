import { spawn } from 'node:child_process';
import { createHash } from 'node:crypto';
import {
  chmodSync,
  copyFileSync,
  cpSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { join, resolve } from 'node:path';
import type { Database } from 'better-sqlite3';
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from 'vitest';
import { restore } from '../../src/backup/restore.ts';
import { openNearestProject } from '../../src/project.ts';
import { MODEL_PRINT } from '../../src/store/made-by.ts';
import { Sqlite } from '../../src/store/sqlite.ts';
import { openWorkplace, type Workplace } from '../kit/command-line.ts';

const CLI = resolve('dist/cli.js');
const IN = ['--project', 'mill'];

let mill: Workplace;
beforeAll(() => {
  mill = openWorkplace();
  const place = mill;
  place.call([...IN, 'init', '--name', 'Mill']);
  place.file('monday.txt', 'The hopper is 640 wide. We decided to oil the shutters first.');
  place.file('tuesday.txt', 'The hopper is 610 wide. Tomorrow I need to order the hinges.');
  place.call([...IN, 'take', 'monday.txt', 'tuesday.txt', '--at', '2026-03-02T10:00:00Z']);
  place.call([...IN, 'tolerance', 'length', '2 mm']);
  place.call([...IN, 'backup', 'spare.backup']);
});
afterAll(() => mill.remove());

/** Each test has the project in a folder of its own. */
let place: Workplace;
beforeEach(() => {
  place = openWorkplace();
  for (const name of ['mill', 'monday.txt', 'tuesday.txt'])
    cpSync(join(mill.folder, name), join(place.folder, name), { recursive: true });
});
afterEach(() => place.remove());

const inside = (...parts: readonly string[]) => join(place.folder, ...parts);
const exported = (project: string) => place.call(['--project', project, 'export', '--json']).out;

/** All files below a folder with their bytes, and the folders. */
function contents(folder: string): Readonly<Record<string, string>> {
  const names = readdirSync(folder, { recursive: true, encoding: 'utf8' }).sort();
  return Object.fromEntries(
    names.map((name) => {
      const path = join(folder, name);
      return [name, statSync(path).isFile() ? readFileSync(path).toString('latin1') : 'folder'];
    }),
  );
}

test('a project comes back equal: the same export, the same originals, and verify finds it whole', () => {
  expect(place.call([...IN, 'backup', 'mill.backup'])).toEqual({
    out: expect.stringMatching(/^Backed up into mill\.backup: 8 events, 2 originals, \d+ kB\.\n$/),
    err: '',
    code: 0,
  });
  expect(place.call(['restore', 'mill.backup', '--into', 'again'])).toEqual({
    out: 'Restored into again: 8 events, 2 originals.\n',
    err: '',
    code: 0,
  });
  expect(exported('again')).toBe(exported('mill'));
  expect(JSON.parse(exported('again')).memos).toHaveLength(2);
  expect(contents(inside('again', '.hearwright', 'originals'))).toEqual(
    contents(inside('mill', '.hearwright', 'originals')),
  );
  expect(place.call(['--project', 'again', 'verify'])).toMatchObject({
    out: 'Whole: 8 events, 2 originals.\n',
    code: 0,
  });
  expect(readdirSync(inside('again'))).toEqual(['.hearwright']);
});

test('a backup and what is restored are for their owner only, and nothing is left beside them', () => {
  place.call([...IN, 'backup', 'mill.backup']);
  place.call(['restore', 'mill.backup', '--into', 'again']);
  const modes = (path: string) => statSync(path).mode & 0o777;
  expect(modes(inside('mill.backup'))).toBe(0o600);
  const home = inside('again', '.hearwright');
  expect(modes(home)).toBe(0o700);
  for (const name of readdirSync(home, { recursive: true, encoding: 'utf8' })) {
    const path = join(home, name);
    expect(modes(path), name).toBe(statSync(path).isFile() ? 0o600 : 0o700);
  }
  expect(readdirSync(place.folder).sort()).toEqual([
    'again',
    'mill',
    'mill.backup',
    'monday.txt',
    'tuesday.txt',
  ]);
});

test('a long original goes in and out in pieces, also one that is kept and no memo yet', () => {
  const bytes = Buffer.alloc(5_000_001, 'the hopper, the hinges, the shutters; ');
  const name = `${createHash('sha256').update(bytes).digest('hex')}.wav`;
  writeFileSync(inside('mill', '.hearwright', 'originals', name), bytes);
  expect(place.call([...IN, 'backup', 'mill.backup']).out).toContain(' 3 originals, 5.');
  expect(place.call(['restore', 'mill.backup', '--into', 'again']).out).toContain(' 3 originals.');
  expect(readFileSync(inside('again', '.hearwright', 'originals', name)).equals(bytes)).toBe(true);
});

test('a backup that is killed in the middle leaves the one before it as it was', async () => {
  place.call([...IN, 'backup', 'mill.backup']);
  const before = readFileSync(inside('mill.backup'));
  const bytes = Buffer.alloc(60_000_000, 'the hopper, the hinges, the shutters; ');
  const name = `${createHash('sha256').update(bytes).digest('hex')}.wav`;
  writeFileSync(inside('mill', '.hearwright', 'originals', name), bytes);
  const making = spawn(process.execPath, [CLI, ...IN, 'backup', 'mill.backup', '--replace'], {
    cwd: place.folder,
    stdio: 'ignore',
  });
  const ended = new Promise<NodeJS.Signals | null>((done) => {
    making.on('close', (_code, signal) => done(signal));
  });
  const isBegun = () => readdirSync(place.folder).some((entry) => entry.endsWith('.part'));
  while (!isBegun() && making.exitCode === null) await new Promise((done) => setTimeout(done, 2));
  making.kill('SIGKILL');
  expect(await ended).toBe('SIGKILL');
  expect(readFileSync(inside('mill.backup')).equals(before)).toBe(true);
  expect(place.call([...IN, 'verify']).code).toBe(0);
  expect(place.call([...IN, 'backup', 'mill.backup', '--replace']).out).toContain(' 3 originals, 60.');
});

test('a recording that is not taken in yet is backed up too', () => {
  const recordings = inside('mill', '.hearwright', 'recordings');
  mkdirSync(recordings);
  writeFileSync(join(recordings, 'talk-2026-03-04-101500.99999.wav'), 'sound so far');
  writeFileSync(join(recordings, 'shopping.txt'), 'not ours');
  expect(place.call([...IN, 'backup', 'mill.backup']).out).toContain(', 1 recording not taken in yet, ');
  expect(place.call(['restore', 'mill.backup', '--into', 'again']).code).toBe(0);
  expect(contents(inside('again', '.hearwright', 'recordings'))).toEqual({
    'talk-2026-03-04-101500.99999.wav': 'sound so far',
  });
});

test('backups made while another process takes memos are whole, each of one instant', async () => {
  const files = Array.from({ length: 12 }, (_, at) =>
    place.file(`bin-${at}.txt`, `Bin ${at} is ${300 + at} high.`),
  );
  const taking = spawn(process.execPath, [CLI, ...IN, 'take', ...files, '--at', '2026-03-05T10:00Z'], {
    cwd: place.folder,
    env: { PATH: process.env.PATH ?? '', HOME: place.folder, TZ: 'UTC' },
    stdio: 'ignore',
  });
  let isTaking = true;
  const ended = new Promise<number | null>((done) => {
    taking.on('close', (code) => {
      isTaking = false;
      done(code);
    });
  });
  const events: number[] = [];
  const project = await openNearestProject(inside('mill'));
  try {
    do {
      const made = await project.backUp(inside('busy.backup'), { replace: true });
      expect(made.faults).toEqual([]);
      const into = inside(`busy-${events.length}`);
      const check = await restore(inside('busy.backup'), into);
      expect(check).toMatchObject({ faults: [], events: made.events });
      events.push(made.events);
    } while (isTaking);
  } finally {
    project.close();
  }
  expect(await ended).toBe(0);
  expect(events).toEqual([...events].sort((a, b) => a - b));
  expect(events.length).toBeGreaterThan(1);
  expect(place.call([...IN, 'verify']).code).toBe(0);
});

test('backup-exists: only a backup is written over, and only when asked', () => {
  place.file('letter.txt', 'Dear all,');
  for (const more of [[], ['--replace']])
    expect(place.call([...IN, 'backup', 'letter.txt', ...more])).toEqual({
      out: '',
      err: 'hearwright: cannot write letter.txt: it is no backup\n  kept   the file there was left as it was\n  next   name another file\n',
      code: 2,
    });
  expect(readFileSync(inside('letter.txt'), 'utf8')).toBe('Dear all,');
  place.call([...IN, 'backup', 'mill.backup']);
  const before = readFileSync(inside('mill.backup'));
  expect(place.call([...IN, 'backup', 'mill.backup'])).toEqual({
    out: '',
    err: 'hearwright: cannot write mill.backup: a backup is there already\n  kept   the file there was left as it was\n  next   name another file, or add --replace\n',
    code: 2,
  });
  expect(readFileSync(inside('mill.backup')).equals(before)).toBe(true);
  place.call([...IN, 'undo']);
  expect(place.call([...IN, 'backup', 'mill.backup', '--replace']).out).toContain(' 9 events, ');
  symlinkSync('mill.backup', inside('link'));
  expect(place.call([...IN, 'backup', 'link', '--replace']).code).toBe(2);
  mkdirSync(inside('folder'));
  expect(place.call([...IN, 'backup', 'folder', '--replace']).code).toBe(2);
  expect(place.call([...IN, 'backup', 'mill/.hearwright/project.db', '--replace']).code).toBe(2);
});

test('a backup into the project itself, and one that cannot be written', () => {
  expect(place.call([...IN, 'backup', 'mill/.hearwright/b'])).toEqual({
    out: '',
    err: "hearwright: cannot write mill/.hearwright/b: that folder is the project's own\n  next   name a file outside of it, best on another disk\n",
    code: 2,
  });
  symlinkSync('mill/.hearwright', inside('way-in'));
  expect(place.call([...IN, 'backup', 'way-in/b']).code).toBe(2);
  expect(place.call([...IN, 'backup', 'nowhere/b'])).toEqual({
    out: '',
    err: 'hearwright: cannot write the backup nowhere/b: there is no such folder\n  kept   the project, and any file of that name\n  next   name a file in a folder that may be written to and has room\n',
    code: 1,
  });
});

test('restore-unwritten: a file where a folder is asked for', () => {
  place.call([...IN, 'backup', 'mill.backup']);
  expect(place.call(['restore', 'mill.backup', '--into', 'monday.txt/again'])).toEqual({
    out: '',
    err: 'hearwright: cannot restore into monday.txt/again: a file is in the way\n  kept   the backup; nothing was written\n  next   name a folder that may be written to and has room\n',
    code: 1,
  });
});

test.skipIf(process.getuid?.() === 0)('restore-unwritten: a folder that may not be written to', () => {
  place.call([...IN, 'backup', 'mill.backup']);
  mkdirSync(inside('locked'), { mode: 0o500 });
  expect(place.call(['restore', 'mill.backup', '--into', 'locked'])).toEqual({
    out: '',
    err: 'hearwright: cannot restore into locked: the folder may not be written to\n  kept   the backup; nothing was written\n  next   name a folder that may be written to and has room\n',
    code: 1,
  });
  chmodSync(inside('locked'), 0o700);
});

test('backup-of-faulty: what is wrong with the project is told, and the rest is safe', () => {
  const originals = inside('mill', '.hearwright', 'originals');
  const [first = '', second = ''] = readdirSync(originals);
  const memos = JSON.parse(place.call([...IN, 'memos', '--json']).out) as {
    id: string;
    source: { name: string; sha256: string };
  }[];
  const named = (file: string) => {
    const memo = memos.find(({ source }) => file.startsWith(source.sha256));
    return `original of ${memo?.id} (${memo?.source.name})`;
  };
  rmSync(join(originals, first));
  writeFileSync(join(originals, second), 'spoilt');
  const backedUp = place.call([...IN, 'backup', 'mill.backup']);
  const faults = [`  ${named(first)}: it is missing`, `  ${named(second)}: its bytes were changed`].sort();
  expect(backedUp.out.split('\n').slice(1, -1).sort()).toEqual(faults);
  expect(backedUp).toMatchObject({
    err: 'hearwright: the project that was backed up has 2 faults\n  kept   the backup holds the project as it is; older backups may hold what is missing\n  next   hearwright verify\n',
    code: 3,
  });
  const restored = place.call(['restore', 'mill.backup', '--into', 'again']);
  expect(restored.out.split('\n').slice(1, -1).sort()).toEqual(faults);
  expect(restored).toMatchObject({
    err: 'hearwright: the project in the backup has 2 faults\n  kept   everything that the backup holds was restored\n  next   see whether an older backup is whole\n',
    code: 4,
  });
  expect(exported('again')).toBe(exported('mill'));
});

test('restore-occupied: only into an empty folder', () => {
  place.call([...IN, 'backup', 'mill.backup']);
  const occupied = (into: string, why: string) =>
    expect(place.call(['restore', 'mill.backup', '--into', into])).toEqual({
      out: '',
      err: `hearwright: cannot restore into ${into}: ${why}\n  kept   what is there was left as it was\n  next   name a folder that is empty or not there yet\n`,
      code: 2,
    });
  const before = contents(inside('mill'));
  occupied('mill', 'it is not empty');
  occupied('monday.txt', 'it is no folder');
  expect(contents(inside('mill'))).toEqual(before);
  mkdirSync(inside('empty'));
  expect(place.call(['restore', 'mill.backup', '--into', 'empty']).code).toBe(0);
});

test('what is no backup is refused: backup-unreadable, not-a-backup', () => {
  const refused = (file: string, err: string) => {
    expect(place.call(['restore', file, '--into', 'again'])).toEqual({ out: '', err, code: 4 });
    expect(existsSync(inside('again'))).toBe(false);
  };
  const next = '  kept   nothing was written\n  next   name a file that hearwright backup wrote\n';
  refused('none.backup', `hearwright: cannot read the backup none.backup: there is no such file\n${next}`);
  refused('mill', `hearwright: cannot read the backup mill: it is no ordinary file\n${next}`);
  place.file('empty.backup', '');
  for (const file of ['monday.txt', 'empty.backup', 'mill/.hearwright/project.db'])
    refused(file, `hearwright: ${file} is not a backup of this program\n${next}`);
});

/** A backup of the mill, spoilt by `spoil`. */
function spoiltBackup(spoil: (db: Database) => void): string {
  copyFileSync(join(mill.folder, 'spare.backup'), inside('spoilt.backup'));
  const db = new Sqlite(inside('spoilt.backup'));
  spoil(db);
  db.close();
  return 'spoilt.backup';
}

/** The list's hash as a forger would make it, by the words of src/backup/container.ts. */
function reseal(db: Database): void {
  const lines = db.prepare('SELECT path, bytes, modified, sha256 FROM files ORDER BY path').raw().all();
  const hash = createHash('sha256').update(lines.map((line) => `${JSON.stringify(line)}\n`).join(''));
  db.prepare("UPDATE facts SET value = ? WHERE name = 'list-sha256'").run(hash.digest('hex'));
}

function addFile(db: Database, path: string, bytes: string): void {
  const sha256 = createHash('sha256').update(bytes).digest('hex');
  db.prepare('INSERT OR REPLACE INTO files (path, bytes, modified, sha256) VALUES (?, ?, 0, ?)').run(
    path,
    bytes.length,
    sha256,
  );
  db.prepare('DELETE FROM pieces WHERE path = ?').run(path);
  db.prepare('INSERT INTO pieces (path, part, body) VALUES (?, 0, ?)').run(path, Buffer.from(bytes));
  reseal(db);
}

/** A project as another program could have written it, with the backup's checksums put right. */
function changeProject(db: Database, change: (project: Database) => void): void {
  const body = db.prepare("SELECT body FROM pieces WHERE path = 'project.db' ORDER BY part").pluck().all();
  writeFileSync(inside('inner.db'), Buffer.concat(body as Buffer[]));
  const project = new Sqlite(inside('inner.db'));
  change(project);
  project.close();
  const bytes = readFileSync(inside('inner.db'));
  db.prepare("DELETE FROM pieces WHERE path = 'project.db'").run();
  const put = db.prepare("INSERT INTO pieces (path, part, body) VALUES ('project.db', ?, ?)");
  for (let part = 0; part << 20 < bytes.length; part++)
    put.run(part, bytes.subarray(part << 20, (part + 1) << 20));
  db.prepare("UPDATE files SET bytes = ?, sha256 = ? WHERE path = 'project.db'").run(
    bytes.length,
    createHash('sha256').update(bytes).digest('hex'),
  );
  reseal(db);
  rmSync(inside('inner.db'));
}

const HOSTILE_PATHS = [
  '../outside.txt',
  '../../outside.txt',
  'originals/../../../outside.txt',
  '/tmp/hearwright-outside.txt',
  'originals/../project.db',
  'originals',
  'originals/',
  '.',
  '',
  `originals/${'a'.repeat(64)}.txt/../../x`,
  `originals/${'a'.repeat(64)}\u0000.txt`,
  `originals/${'a'.repeat(64)}.txt\n`,
  `ORIGINALS/${'a'.repeat(64)}.txt`,
  `originals\\..\\..\\x`,
  'C:\\outside.txt',
  'recordings/talk-../../x.1.wav',
  'pages.json',
  'project.db-wal',
  'project.db-journal',
];

test.each(HOSTILE_PATHS)('a backup that names %j is refused and nothing is written', async (path) => {
  const file = spoiltBackup((db) => addFile(db, path, 'gotcha'));
  const before = contents(place.folder);
  await expect(restore(inside(file), inside('deep', 'again'))).rejects.toMatchObject({
    code: 'backup-damaged',
    message: expect.stringContaining('it names a file that no project has'),
  });
  expect(contents(place.folder)).toEqual(before);
});

const CHANGED: Readonly<Record<string, (db: Database) => void>> = {
  'the list of files was changed': (db) =>
    db.exec("UPDATE files SET bytes = bytes + 1 WHERE path = 'project.db'"),
  'a file is longer than it says': (db) => {
    db.exec("UPDATE files SET bytes = bytes - 1 WHERE path = 'project.db'");
    reseal(db);
  },
  'a piece is missing': (db) => db.exec("DELETE FROM pieces WHERE path LIKE 'originals/%'"),
  'a piece was changed': (db) => db.exec("UPDATE pieces SET body = x'00' WHERE path LIKE 'originals/%'"),
  'pieces belong to no file': (db) =>
    db.exec("INSERT INTO pieces (path, part, body) VALUES ('originals/x', 0, x'00')"),
  'a piece is far too long': (db) => {
    db.exec("UPDATE pieces SET body = zeroblob(3000000) WHERE path = 'project.db'");
  },
  'the list has no hash': (db) => db.exec('DELETE FROM facts'),
  'a time is absurd': (db) => {
    db.exec('UPDATE files SET modified = 9223372036854775807');
    reseal(db);
  },
  'a table is a view that never ends': (db) => {
    db.exec(`DROP TABLE files; CREATE VIEW files AS WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i FROM n)
      SELECT 'project.db' AS path, i AS bytes, 0 AS modified, '' AS sha256 FROM n`);
  },
  'a rule was added': (db) => db.exec('CREATE TRIGGER t AFTER INSERT ON facts BEGIN DELETE FROM files; END'),
  'a table is missing': (db) => db.exec('DROP TABLE pieces'),
  'it asks for a log beside it': (db) => db.pragma('journal_mode = WAL'),
  'no project is in it': (db) => {
    db.exec("DELETE FROM files WHERE path = 'project.db'; DELETE FROM pieces WHERE path = 'project.db'");
    reseal(db);
  },
  'the project is a letter': (db) => addFile(db, 'project.db', 'Dear all,'),
  'the project is of another program': (db) =>
    changeProject(db, (project) => project.pragma('application_id = 1')),
  'the project has no log': (db) => changeProject(db, (project) => project.exec('DROP TABLE log')),
  'a memo names an original elsewhere': (db) =>
    changeProject(db, (project) => {
      // Else the model would be built anew from the log, since another build of the program worked it out.
      project.prepare('UPDATE made_by SET print = ?').run(MODEL_PRINT);
      project.exec("UPDATE memos SET body = json_set(body, '$.file', '../../../monday.txt')");
    }),
  'an event names an original elsewhere': (db) =>
    changeProject(db, (project) => {
      project.exec(`DROP TRIGGER log_stands;
        UPDATE log SET body = json_set(body, '$.file', '/etc/hostname') WHERE kind = 'recording-kept'`);
    }),
  'an event is no event': (db) =>
    changeProject(db, (project) => project.exec("INSERT INTO log VALUES (9, '', 'recording-kept', '[]')")),
};

test.each(Object.entries(CHANGED))('backup-damaged: %s', async (_what, spoil) => {
  const file = spoiltBackup(spoil);
  const before = contents(place.folder);
  mkdirSync(inside('again'));
  await expect(restore(inside(file), inside('again'))).rejects.toMatchObject({
    code: 'backup-damaged',
    exitCode: 4,
    kept: 'the backup was left as it was, and nothing was written',
  });
  expect(readdirSync(inside('again'))).toEqual([]);
  rmSync(inside('again'), { recursive: true });
  expect(contents(place.folder)).toEqual(before);
});

test('backup-damaged: cut off at any length, or with any byte changed', async () => {
  place.call([...IN, 'backup', 'mill.backup']);
  const whole = readFileSync(inside('mill.backup'));
  const wanted = exported('mill');
  const refused = async (bytes: Buffer, what: string) => {
    writeFileSync(inside('hurt.backup'), bytes);
    const outcome = await restore(inside('hurt.backup'), inside('again')).catch((error) => error.code);
    if (typeof outcome === 'string') {
      expect(['backup-damaged', 'not-a-backup', 'backup-too-new'], what).toContain(outcome);
      expect(existsSync(inside('again')), what).toBe(false);
      return true;
    }
    // A byte of a page that is not in use, or of a fact about the making: the project came back as it was.
    expect(outcome.faults, what).toEqual([]);
    const project = await openNearestProject(inside('again'));
    expect(project.exportDocument(), what).toEqual(JSON.parse(wanted));
    project.close();
    rmSync(inside('again'), { recursive: true });
    return false;
  };
  for (let cut = 0; cut < 12; cut++) {
    const length = Math.floor((whole.length * cut) / 12);
    expect(await refused(whole.subarray(0, length), `cut at ${length}`)).toBe(true);
  }
  let count = 0;
  for (let at = 7; at < whole.length; at += Math.ceil(whole.length / 60)) {
    const bytes = Buffer.from(whole);
    bytes[at] = (bytes[at] ?? 0) ^ 0x55;
    if (await refused(bytes, `byte ${at}`)) count++;
  }
  expect(count).toBeGreaterThan(30);
});

test('backup-too-new: a newer backup, or a newer project in it', () => {
  const refused = (file: string, why: string) => {
    expect(place.call(['restore', file, '--into', 'again'])).toEqual({
      out: '',
      err: `hearwright: the backup ${file} ${why}\n  kept   nothing was written\n  next   use the newer program that wrote it\n`,
      code: 4,
    });
    expect(existsSync(inside('again'))).toBe(false);
  };
  refused(
    spoiltBackup((db) => db.pragma('user_version = 2')),
    'has format 2, and this program reads up to 1',
  );
  rmSync(inside('spoilt.backup'));
  refused(
    spoiltBackup((db) => changeProject(db, (project) => project.pragma('user_version = 999'))),
    'holds a project of a newer format',
  );
});

test('a project of an older format is brought up to date in the copy, and the backup stays as it was', () => {
  const file = spoiltBackup((db) => changeProject(db, (project) => project.pragma('user_version = 5')));
  const before = readFileSync(inside(file));
  expect(place.call(['restore', file, '--into', 'again'])).toMatchObject({ err: '', code: 0 });
  expect(readFileSync(inside(file)).equals(before)).toBe(true);
  expect(exported('again')).toBe(exported('mill'));
});

test('a copy of the project folder opens elsewhere, a copy of the backup too', () => {
  place.call([...IN, 'backup', 'mill.backup']);
  copyFileSync(inside('mill.backup'), inside('-odd "name"; $(x).backup'));
  expect(place.call(['restore', '--into', 'it', '--', '-odd "name"; $(x).backup']).code).toBe(0);
  expect(exported('it')).toBe(exported('mill'));
});
