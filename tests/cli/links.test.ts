/** What the program writes stays in the project's own folder, and what it reads is the project's own. */
import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { Sqlite } from '../../src/store/sqlite.ts';
import { isThere, unfinishedName } from '../../src/unfinished.ts';
import { openWorkplace, type Workplace } from '../kit/command-line.ts';

let place: Workplace;
beforeEach(() => {
  place = openWorkplace();
  place.call(['init', '--name', 'Shed']);
  place.file('a.txt', 'The gate is 910 wide.');
  place.call(['take', 'a.txt', '--at', '2026-03-02T10:00:00Z']);
});
afterEach(() => place.remove());

const inside = (...parts: readonly string[]) => join(place.folder, ...parts);
const home = (...parts: readonly string[]) => inside('.hearwright', ...parts);

test.each(['', 'originals', 'project.db', 'recordings'])(
  'project-linked: a project whose .hearwright/%s is a link is refused, and nothing is written through it',
  (part) => {
    if (part === 'recordings') mkdirSync(home('recordings'));
    renameSync(home(part), inside('elsewhere'));
    symlinkSync(inside('elsewhere'), home(part));
    const isFolder = statSync(inside('elsewhere')).isDirectory();
    const there = () => (isFolder ? readdirSync(inside('elsewhere')) : readFileSync(inside('elsewhere')));
    const before = there();
    place.file('b.txt', 'The gate is 905 wide.');
    const link = join('.hearwright', part);
    for (const words of [['take', 'b.txt'], ['verify'], ['set', 'gate', 'height', '2 m'], ['init']])
      expect(place.call(words)).toEqual({
        out: '',
        err: `hearwright: cannot open DIR: ${link} in it is a link to another place\n  kept   nothing was changed\n  next   put the folder or file itself there; to have it elsewhere, move the whole project and name it with --project\n`,
        code: 4,
      });
    expect(there()).toEqual(before);
  },
);

test('a project folder that is reached by a link opens', () => {
  symlinkSync(place.folder, inside('by-link'));
  expect(place.call(['--project', 'by-link', 'verify']).out).toBe('Whole: 4 events, 1 original.\n');
});

test('a page that is a link is replaced, and what it leads to is as it was', () => {
  place.file('mine.txt', 'My own words.');
  symlinkSync(inside('mine.txt'), inside('day.md'));
  const { code } = place.call(['journal', '--out', 'day.md']);
  expect(code).toBe(0);
  expect(readFileSync(inside('mine.txt'), 'utf8')).toBe('My own words.');
  // What the person has there by that name is theirs: the page stands beside it.
  expect(readFileSync(inside('day.1.md'), 'utf8')).toContain('gate');
});

test.each(['../../a.txt', '/etc/hostname', 'originals/../../a.txt'])(
  'a database that was edited to name %s as an original has nothing read from there',
  (path) => {
    const db = new Sqlite(home('project.db'));
    db.exec('DROP TRIGGER log_is_kept; DELETE FROM log WHERE seq > 2;');
    db.prepare("UPDATE memos SET body = json_remove(json_set(body, '$.file', ?), '$.text', '$.notes')").run(
      path,
    );
    db.close();
    const { out, err, code } = place.call(['resume']);
    expect([out, code]).toEqual(['', 4]);
    expect(err).toBe(
      'hearwright: the project is damaged: memo 1 names an original outside of it\n  kept   everything was left as it was\n  next   put the project folder back from a copy\n',
    );
    expect(place.call(['verify']).out).toContain('original of m1 (a.txt): it is not in the project');
  },
);

test('names of memos never become paths', () => {
  const names = [
    '..',
    '.. ..',
    '-rf',
    '--out',
    '$(touch owned)',
    '`touch owned`',
    'a;touch owned',
    "it's",
    '"',
    'a\nb',
    '\u202egnp',
    '%2e%2e%2fx',
  ];
  const files = names.map((name, at) => place.file(`${name}.txt`, `Post ${at} is ${300 + at} high.`));
  expect(place.call(['take', '--at', '2026-03-03T10:00:00Z', '--', ...files])).toMatchObject({
    err: '',
    code: 0,
  });
  expect(place.call(['pages', '--out', 'site']).code).toBe(0);
  const before = new Set([...files, 'a.txt', '.hearwright', 'site']);
  expect(readdirSync(place.folder).filter((name) => !before.has(name))).toEqual([]);
  for (const name of readdirSync(home('originals'))) expect(name).toMatch(/^[0-9a-f]{64}\.txt$/);
  for (const name of readdirSync(inside('site'), { recursive: true, encoding: 'utf8' }))
    expect(name).toMatch(/^[A-Za-z0-9./-]+$/);
  const memos = JSON.parse(place.call(['memos', '--json']).out) as { source: { name: string } }[];
  expect(memos.map(({ source }) => source.name)).toEqual(['a.txt', ...files]);
});

test('a name that is no UTF-8 is refused for that, and nothing is made of it', () => {
  const name = Buffer.from([0x63, 0x61, 0x66, 0xe9, 0x2e, 0x74, 0x78, 0x74]);
  writeFileSync(Buffer.concat([Buffer.from(`${place.folder}/`), name]), 'The rail is 40 thick.');
  const asGiven = Buffer.concat([Buffer.from('take '), name]).toString('latin1');
  const { err, code } = place.shell(`hearwright ${asGiven}`, 'latin1');
  expect(code).toBe(3);
  expect(err).toMatch(
    /^hearwright: cannot take caf.\.txt: its name holds bytes that are no UTF-8\n {2}next {3}give the file another name, then name that\n/,
  );
});

test('what a killed call left is taken away by the next one; what another is at is left alone', () => {
  // No process has the highest number that Linux gives.
  expect(isThere(4_194_304)).toBe(false);
  const gone = home('originals', 'copy.4194304-00000000.part');
  const atWork = unfinishedName(home('originals', 'copy'));
  const page = inside('day.md.4194304-00000000.part');
  const other = inside('other.md.4194304-00000000.part');
  for (const file of [gone, atWork, page, other]) writeFileSync(file, 'half');
  place.file('b.txt', 'The gate is 905 wide.');
  place.call(['take', 'b.txt']);
  place.call(['journal', '--out', 'day.md']);
  expect([gone, atWork, page, other].map((file) => existsSync(file))).toEqual([false, true, false, true]);
});

test('every call tells of memos that are not read yet, and resume reads them', () => {
  const db = new Sqlite(home('project.db'));
  const log = db.prepare('SELECT * FROM log ORDER BY seq').all() as readonly object[];
  expect(log).toHaveLength(4);
  // As a kill leaves it: the words are there, the notes are not.
  db.exec('DROP TRIGGER log_is_kept; DELETE FROM log WHERE seq = 4');
  db.exec("UPDATE made_by SET print = 'as after a kill'");
  db.close();
  const told =
    '1 memo is kept and not read yet, and nothing here is of it. If no other call is at it: hearwright resume\n';
  for (const words of [['next'], ['figures'], ['export', '--json']])
    expect(place.call(words)).toMatchObject({ err: told, code: 0 });
  expect(place.call(['resume'])).toMatchObject({ err: '', code: 0 });
  expect(place.call(['figures'])).toMatchObject({ err: '', out: expect.stringContaining('910 mm') });
  expect(place.call(['verify']).code).toBe(0);
});
