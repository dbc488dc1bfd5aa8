import { spawn, spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { mkdirSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { buildProgram } from '../../src/cli/program.ts';
import { VERSION } from '../../src/version.ts';
import { openWorkplace, type Workplace } from '../kit/command-line.ts';

let place: Workplace;
beforeAll(() => {
  place = openWorkplace();
});
afterAll(() => place.remove());

const names = buildProgram().commands.map((command) => command.name());

test('every command has help of its own, and the docs tell of it and of each of its options', () => {
  const docs = readFileSync('docs/commands.md', 'utf8');
  expect(names.length).toBeGreaterThan(15);
  for (const command of buildProgram().commands) {
    expect(command.description(), command.name()).not.toBe('');
    const from = docs.indexOf(`## ${command.name()}`);
    expect(from, `docs/commands.md has no section on ${command.name()}`).toBeGreaterThanOrEqual(0);
    const end = docs.indexOf('\n## ', from + 1);
    const part = docs.slice(from, end < 0 ? undefined : end);
    for (const option of command.options) expect(part, command.name()).toContain(`\`${option.flags}\``);
  }
});

test('the docs tell of no command that is not there', () => {
  const docs = readFileSync('docs/commands.md', 'utf8');
  expect([...docs.matchAll(/^## ([a-z]+)$/gm)].map((match) => match[1])).toEqual(names);
});

test('help goes to standard output and is no failure', () => {
  const help = place.call(['--help']);
  expect(help).toMatchObject({ err: '', code: 0 });
  for (const name of names) expect(help.out).toContain(`\n  ${name} `);
  expect(place.call(['help', 'take'])).toEqual(place.call(['take', '--help']));
});

test('the version is the one of package.json', () => {
  expect(VERSION).toBe(JSON.parse(readFileSync('package.json', 'utf8')).version);
  expect(place.call(['--version'])).toEqual({ out: `${VERSION}\n`, err: '', code: 0 });
});

test('a project from its making to its pages', () => {
  const home = openWorkplace();
  try {
    expect(home.call(['init', '--units', 'mixed', '--region', 'gb', '--name', 'Bakery wagon'])).toEqual({
      out: 'Made a project in DIR: Bakery wagon, mixed units, region GB.\n',
      err: '',
      code: 0,
    });
    expect(home.call(['init', '--units', 'us'])).toEqual({
      out: 'A project is here already: Bakery wagon, mixed units, region GB, 0 memos. Nothing was changed.\n',
      err: '',
      code: 0,
    });
    home.file('monday.txt', 'Good morning from the old barn.');
    const taken = home.call(['take', 'monday.txt', '--at', '2026-02-02T17:30:00+01:00']);
    expect(taken).toEqual({ out: 'memo 1  monday.txt  6 words: nothing to note\n', err: '', code: 0 });
    expect(home.call(['take', 'monday.txt'])).toEqual({
      out: 'memo 1  monday.txt was taken already: nothing was added\n',
      err: '',
      code: 0,
    });
    expect(home.call(['memos'])).toMatchObject({
      out: 'memo 1  2026-02-02 17:30  monday.txt  text  0 notes\n',
      code: 0,
    });
    const journal = `# Monday 2026-02-02: Bakery wagon

1 memo.

Nothing to note was read.

## Memos

- memo 1: monday.txt, 17:30, text, 6 words
`;
    for (const words of [['journal'], ['journal', '2026-02-02']])
      expect(home.call(words)).toEqual({ out: journal, err: '', code: 0 });
    expect(home.call(['next', '--on', '2026-02-03']).out).toBe(
      '# Next steps for Tuesday 2026-02-03: Bakery wagon\n\nNothing is open.\n',
    );
    expect(home.call(['episode']).out).toContain('# Episode outline: Bakery wagon, Monday 2026-02-02\n');
    expect(home.call(['findings']).out).toBe(
      'No clash is on record. That means only that nothing was found.\n',
    );
    expect(home.call(['figures']).out).toBe('No figure stands yet.\n');
    expect(home.call(['limits']).out).toBe('No limit has been stated yet.\n');
    expect(home.call(['tasks']).out).toBe('No task has been heard yet.\n');
    expect(home.call(['resume']).out).toBe('Nothing is left to read.\n');
    expect(home.call(['undo']).out).toBe('Nothing was set by hand: nothing to undo.\n');
    expect(home.call(['verify'])).toEqual({ out: 'Whole: 4 events, 1 original.\n', err: '', code: 0 });
    expect(home.call(['ask', 'the', 'barn']).out).toBe(
      'Said\n  2026-02-02  memo 1  "Good morning from the old barn."\n',
    );
    expect(home.call([]).out).toBe('Bakery wagon: 1 memo, 0 notes\n0 tasks waiting, 0 promises open\n');
  } finally {
    home.remove();
  }
});

test('--project stands before or after the command', () => {
  place.call(['--project', 'boat', 'init', '--name', 'Skiff']);
  expect(place.call(['--project', 'boat', 'memos'])).toEqual(place.call(['memos', '--project', 'boat']));
  expect(place.call(['memos', '--project', 'boat']).out).toBe('No memo has been taken yet.\n');
});

test('the nearest project upward is taken', () => {
  place.call(['--project', 'van', 'init', '--name', 'Van']);
  place.file('van/note.txt', 'Nothing today.');
  const inside = place.call(['--project', 'van/.hearwright', 'memos']);
  expect(inside.code).toBe(4);
  expect(place.call(['--project', 'van', 'take', 'van/note.txt', '--at', '2026-03-01']).out).toBe(
    'memo 1  note.txt  2 words: nothing to note\n',
  );
});

test('export --json is one document in the shape of the contract', () => {
  place.call(['--project', 'barn', 'init', '--units', 'us', '--region', 'US', '--name', 'Barn']);
  place.file('say.txt', 'Hello \u001b[31mthere.');
  place.call(['--project', 'barn', 'take', 'say.txt', '--at', '2026-03-01T08:00:00-05:00']);
  const { out, err, code } = place.call(['--project', 'barn', 'export', '--json']);
  expect([err, code]).toEqual(['', 0]);
  expect(out).not.toContain('\u001b');
  expect(JSON.parse(out)).toMatchObject({
    format: 1,
    project: { name: 'Barn', units: 'us', tolerances: {} },
    memos: [
      {
        id: 'm1',
        recordedAt: '2026-03-01T08:00:00-05:00',
        source: 'say.txt',
        text: 'Hello \u001b[31mthere.',
        figures: [],
        decisions: [],
        tasks: [],
        done: [],
        arrivals: [],
        problems: [],
        promises: [],
        conflicts: [],
      },
    ],
    figures: [],
    limits: [],
    open: [],
  });
});

test('read prints one memo object without a project, from a file or from standard input', () => {
  const bare = openWorkplace();
  try {
    bare.file('say.txt', 'Nothing to see.');
    const words = ['--units', 'metric', '--region', 'DE', '--at', '2026-03-01T08:00:00+01:00', '--json'];
    const fromFile = bare.call(['read', 'say.txt', ...words]);
    expect(fromFile.code).toBe(0);
    const memo = JSON.parse(fromFile.out);
    expect(memo).toMatchObject({
      id: 'm1',
      source: 'say.txt',
      text: 'Nothing to see.',
      figures: [],
      conflicts: [],
    });
    const fromInput = bare.call(['read', '-', ...words], { input: 'Nothing to see.' });
    expect(JSON.parse(fromInput.out)).toEqual({ ...memo, source: 'standard input' });
    expect(bare.call(['read', 'say.txt']).out).toBe('Nothing to note was read.\n');
    expect(JSON.parse(bare.call(['read', 'say.txt', '--json', '--trace']).out).trace).toBeInstanceOf(Array);
  } finally {
    bare.remove();
  }
});

test('nothing hostile in a memo or its name acts on a terminal, whatever is asked', () => {
  const home = openWorkplace();
  try {
    home.call(['init', '--name', 'Barn\u001b]0;mine\u0007', '--units', 'mixed']);
    const nasty = '\u001b[31m<script>\u001b]52;c;aGk=\u0007 **so** \u202e\u009b2J';
    const name = home.file(
      'a\u001b[2Jb.txt',
      `I need to paint the ${nasty} door tomorrow. The ${nasty} door is 905 mm wide. We went for ${nasty} oak because it is ${nasty} hard. The ${nasty} hinge broke. I promise to show the ${nasty} latch next week.`,
    );
    home.call(['take', name, '--at', '2026-02-02T08:00Z']);
    const calls = [
      ['take', name],
      ['memos'],
      ['memos', '1'],
      ['memos', '--json'],
      ['journal'],
      ['next'],
      ['next', '--json'],
      ['episode'],
      ['findings'],
      ['figures'],
      ['figures', 'door'],
      ['tasks'],
      ['ask', 'door'],
      ['export'],
      ['read', name],
      ['read', name, '--json', '--trace'],
      ['subtitles', '1'],
      ['calendar'],
      ['sheet'],
      ['table', 'figures'],
      ['table', 'tasks'],
      ['table', 'tasks', '--json'],
      ['markers'],
      ['figures', nasty],
      [],
    ];
    for (const words of calls) {
      const { out, err } = home.call(words);
      // Lines of a calendar and of a table end in CRLF.
      const shown = (out + err).replaceAll('\r\n', '\n');
      expect(shown, words.join(' ')).not.toMatch(/[^\P{Cc}\n]|[\u202a-\u202e]/u);
      expect(out.length + err.length).toBeGreaterThan(10);
    }
    expect(home.call(['memos', '1']).out).toMatch(/m1\.[a-z]1 /);
  } finally {
    home.remove();
  }
}, 120_000);

test('several takers at once give every memo its own number and no bytes two', async () => {
  const home = openWorkplace();
  try {
    home.call(['init']);
    for (const name of ['a', 'b', 'c', 'd']) home.file(`${name}.txt`, `Hello from ${name}.`);
    home.file('same.txt', 'Hello from a.');
    const files = ['a.txt', 'b.txt', 'c.txt', 'd.txt', 'same.txt'];
    const codes = await Promise.all(
      files.map(
        (file) =>
          new Promise((done) => {
            spawn(
              process.execPath,
              [join(process.cwd(), 'dist', 'cli.js'), 'take', file, '--at', '2026-02-02'],
              {
                cwd: home.folder,
              },
            ).on('close', done);
          }),
      ),
    );
    expect(codes).toEqual([0, 0, 0, 0, 0]);
    const memos: { id: string; source: { sha256: string } }[] = JSON.parse(
      home.call(['memos', '--json']).out,
    );
    expect(memos.map((memo) => memo.id)).toEqual(['m1', 'm2', 'm3', 'm4']);
    expect(new Set(memos.map((memo) => memo.source.sha256)).size).toBe(4);
    expect(home.call(['verify'])).toMatchObject({ code: 0 });
  } finally {
    home.remove();
  }
});

test('an original is kept by the hash of its bytes, for its owner only, whatever the file is called', () => {
  const home = openWorkplace();
  try {
    home.call(['init']);
    const text = 'Hello hello.\r\n';
    const name = home.file('..weird name;$(x).TXT', text);
    home.call(['take', name, '--at', '2026-02-02']);
    const own = join(home.folder, '.hearwright');
    const sha256 = createHash('sha256').update(text).digest('hex');
    expect(readdirSync(join(own, 'originals'))).toEqual([`${sha256}.txt`]);
    expect(readFileSync(join(own, 'originals', `${sha256}.txt`), 'utf8')).toBe(text);
    const modeOf = (file: string) => statSync(join(own, file)).mode & 0o777;
    expect([
      modeOf(`originals/${sha256}.txt`),
      modeOf('originals'),
      modeOf('project.db'),
      modeOf('.'),
    ]).toEqual([0o600, 0o700, 0o600, 0o700]);
    expect(JSON.parse(home.call(['memos', '1', '--json']).out).text).toBe(text);
  } finally {
    home.remove();
  }
});

test('a making that was cut off can be made good', () => {
  mkdirSync(join(place.folder, 'cut', '.hearwright'), { recursive: true });
  place.file('cut/.hearwright/project.db', '');
  expect(place.call(['--project', 'cut', 'init']).out).toBe(
    'Made a project in DIR/cut: cut, metric units.\n',
  );
});

test('the time of a recording keeps its own offset; without one it is the time of the file', () => {
  place.call(['--project', 'times', 'init']);
  place.file('one.txt', 'One.');
  place.file('two.txt', 'Two.');
  place.call(['--project', 'times', 'take', 'one.txt', '--at', '2026-05-03T23:30-05:00']);
  place.call(['--project', 'times', 'take', 'two.txt']);
  const [one, two] = JSON.parse(place.call(['--project', 'times', 'memos', '--json']).out);
  expect(one).toMatchObject({ recordedAt: '2026-05-03T23:30:00-05:00', recordedAtFrom: 'given' });
  expect(two.recordedAt).toMatch(/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\+00:00$/);
  expect(two.recordedAtFrom).toBe('file');
  expect(place.call(['--project', 'times', 'journal', '2026-05-03']).out).toContain(
    '# Sunday 2026-05-03: times\n',
  );
});

test('a reader that stops early is no failure', () => {
  const cli = join(process.cwd(), 'dist', 'cli.js');
  // `head` closes the pipe after one line while the help is still being written.
  const words = `for i in 1 2 3; do "${process.execPath}" "${cli}" --help; done 2>&1 | head -n 1`;
  const done = spawnSync('sh', ['-c', words], { encoding: 'utf8' });
  expect([done.stdout, done.stderr, done.status]).toEqual(['Usage: hearwright [options] [command]\n', '', 0]);
});
