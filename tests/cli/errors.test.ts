import { chmodSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { ATTRIBUTES } from '../../src/language/notes.ts';
import { CLEARANCE } from '../../src/model/checks/clearance.ts';
import { RUNNING_MASS } from '../../src/model/checks/running-mass.ts';
import { exampleCall } from '../../src/model/checks/written-check.ts';
import { openWorkplace, type Workplace } from '../kit/command-line.ts';

let place: Workplace;
beforeAll(() => {
  place = openWorkplace();
  place.call(['--project', 'wagon', 'init', '--name', 'Wagon']);
  place.file('ok.txt', 'Nothing today.');
  place.call(['--project', 'wagon', 'take', 'ok.txt', '--at', '2026-02-02T17:30:00+01:00']);
  place.file('bad-cut.csv', 'clip,in,out\nwagon.mp4,0:12,0:05\n');
  place.file('empty.txt', '');
  place.file('empty.wav', '');
  place.file('latin.txt', new Uint8Array([0x63, 0x61, 0x66, 0xe9]));
  place.file('binary.txt', 'a\0b');
  place.file('long.txt', 'word '.repeat(900_000));
  place.file('not-sound.wav', 'this is a letter');
  mkdirSync(join(place.folder, 'folder.txt'));
  mkdirSync(join(place.folder, 'broken', '.hearwright'), { recursive: true });
  writeFileSync(join(place.folder, 'broken', '.hearwright', 'project.db'), 'no database at all');
});
afterAll(() => place.remove());

const FORMULA_EXAMPLE = 'figures set "bench top length = room length - 1700 mm"';
const LIMIT_EXAMPLE = 'limits set "doorway width at most 740 mm"';
const IN = ['--project', 'wagon'];

const CLEARANCE_CALL = exampleCall(CLEARANCE, 'work out');
const MASS_CALL = exampleCall(RUNNING_MASS, 'work out');

/** Code in docs/errors.md, the words of the call, what is printed, the exit code. */
const TABLE: readonly (readonly [string, readonly string[], string, number])[] = [
  ['command-unknown', ['jurnal'], 'unknown command "jurnal"\n  next   did you mean journal?', 2],
  ['command-unknown', ['zzz'], 'unknown command "zzz"\n  next   see: hearwright --help', 2],
  ['option-unknown', [...IN, 'tasks', '--jsn'], 'unknown option "--jsn"\n  next   did you mean --json?', 2],
  [
    'argument-missing',
    ['work'],
    'a word is missing behind "hearwright work"\n  next   hearwright work out …; see: hearwright work --help',
    2,
  ],
  [
    'argument-missing',
    ['work', 'out'],
    'missing required argument "check"\n  next   see: hearwright work out --help',
    2,
  ],
  [
    'arguments-excess',
    [...IN, 'checks', 'twice'],
    '"hearwright checks" takes no such word behind it\n  next   it goes alone, or: hearwright checks add …, hearwright checks remove …, hearwright checks kinds …; see: hearwright checks --help',
    2,
  ],
  [
    'argument-missing',
    [...IN, 'take'],
    'missing required argument "file"\n  next   see: hearwright take --help',
    2,
  ],
  [
    'option-value-missing',
    [...IN, 'take', 'ok.txt', '--at'],
    'option "--at <instant>" argument missing\n  next   see: hearwright take --help',
    2,
  ],
  [
    'arguments-excess',
    [...IN, 'verify', 'twice'],
    'too many arguments for "verify". Expected 0 arguments but got 1\n  next   see: hearwright verify --help',
    2,
  ],
  [
    'memo-not-recorded',
    [...IN, 'hear', '1', '--engine', 'bundled'],
    'memo 1 was written: there is nothing to hear\n  next   see which memos are recordings with: hearwright memos',
    2,
  ],
  [
    'transcript-unknown',
    [...IN, 'transcripts', '1', '2', '--use'],
    'the memo has no transcript 2\n  next   it was written, or is not heard yet',
    2,
  ],
  [
    'engine-unknown',
    [...IN, 'take', 'ok.txt', '--engine', 'large'],
    'no engine is called "large"\n  next   there are: moonshine-tiny-en; more with: hearwright engines add PATH',
    2,
  ],
  [
    'engine-name',
    ['engines', 'add', 'ok.txt', '--name', 'bundled'],
    'an engine cannot be called "bundled"\n  next   give it another name with --name',
    2,
  ],
  [
    'model-unknown',
    ['engines', 'add', 'ok.txt'],
    'cannot use the engine ok.txt: DIR/ok.txt is no model that is known here\n  kept   nothing was changed; the bundled engine hears as before\n  next   put the files right, or choose another engine: hearwright engines',
    3,
  ],
  [
    'model-missing',
    ['engines', 'add', 'nowhere'],
    'cannot use the engine nowhere: DIR/nowhere is not there\n  kept   nothing was changed; the bundled engine hears as before\n  next   put the files right, or choose another engine: hearwright engines',
    3,
  ],
  [
    'whisper-unfit',
    ['engines', 'set-up', 'whisper', '--program', 'ok.txt'],
    'cannot use DIR/ok.txt: it is no whisper.cpp program that writes JSON\n  kept   the setting is as it was\n  next   name the program that whisper.cpp calls whisper-cli, or main in older versions',
    2,
  ],
  ['value-invalid', ['init', '--units', 'feet'], '--units: expected metric, us or mixed, got "feet"', 2],
  [
    'value-invalid',
    ['init', '--region', 'England'],
    '--region: expected an ISO 3166 country code such as GB, got "England"',
    2,
  ],
  [
    'value-invalid',
    [...IN, 'take', 'ok.txt', '--at', '2026-02-30T10:00Z'],
    '--at: expected ISO 8601 such as 2026-05-03T16:00:00+02:00, got "2026-02-30T10:00Z"',
    2,
  ],
  [
    'value-invalid',
    [...IN, 'journal', 'yesterday'],
    'date: expected a day such as 2026-05-03, got "yesterday"',
    2,
  ],
  [
    'value-invalid',
    [...IN, 'settle', 'm1.k1', 'keep'],
    'choice: expected keep-old, take-new, both-right, correct, got "keep"\n  next   both-right lets a thing stay as it is; what each does: hearwright settle --help',
    2,
  ],
  [
    'value-invalid',
    [...IN, 'settle', 'm1.k1', 'correct', '--value', 'wide'],
    '--value: expected a number and a unit such as "915 mm", got "wide"',
    2,
  ],
  [
    'finding-unknown',
    [...IN, 'settle', 'm9.k9', 'keep-old'],
    'no clash has the id "m9.k9"\n  next   see the ids with: hearwright findings',
    2,
  ],
  [
    'item-unknown',
    [...IN, 'figures', 'mast', 'head'],
    'no figure stands for "mast head"\n  next   see the names with: hearwright figures',
    2,
  ],
  [
    'heard-words-off',
    [...IN, 'heard', 'play them', '--is', 'ply', '--right'],
    'heard takes words, or the id of a repair, with either --is or --right\n  next   for example: hearwright heard "play them" --is ply, or: hearwright heard m3.h1 --right',
    2,
  ],
  [
    'repair-unknown',
    [...IN, 'heard', 'm1.h9', '--right'],
    'no words of memo 1 were read otherwise under the id "m1.h9"\n  next   see the ids with: hearwright heard 1',
    2,
  ],
  [
    'note-unknown',
    [...IN, 'note', 'm9.f1', 'reject'],
    'no note has the id "m9.f1"\n  next   see the ids of memo 3 with: hearwright memos 3',
    2,
  ],
  [
    'note-unknown',
    [...IN, 'play', 'm9.f1'],
    'no note has the id "m9.f1"\n  next   see the ids of memo 3 with: hearwright memos 3',
    2,
  ],
  [
    'words-not-found',
    [...IN, 'words', '1', 'no such words', 'others'],
    'the words "no such words" are not in memo 1\n  kept   nothing was changed\n  next   take them as they stand there, with the words around them',
    2,
  ],
  [
    'value-mismatch',
    [...IN, 'words', '1', 'the', ' '],
    'no words were given for what was said\n  kept   nothing was changed\n  next   hearwright words 3 "heard wrong" "as it was said"',
    2,
  ],
  [
    'task-unknown',
    [...IN, 'close', 'm9.t1'],
    'no task has the id "m9.t1"\n  next   see the ids with: hearwright tasks',
    2,
  ],
  [
    'value-invalid',
    [...IN, 'set', 'bench top', 'hight', '915 mm'],
    `attribute: expected ${ATTRIBUTES.join(', ')}, got "hight"`,
    2,
  ],
  [
    'value-invalid',
    [...IN, 'tolerance', 'length', '2 furlongs'],
    'quantity: expected a known unit such as mm, in, kg, L or V, got "furlongs"',
    2,
  ],
  [
    'check-unknown',
    [...IN, 'checks', 'remove', 's99'],
    'no check has the id "s99"\n  kept   nothing was changed\n  next   see the ids with: hearwright checks',
    2,
  ],
  ...(
    [
      ['clearence opening=7 mm', 'no check is called "clearence": did you mean clearance?', undefined],
      ['clearance opning=7 mm', '"opning" is no input of clearance: did you mean opening?', CLEARANCE_CALL],
      [
        'clearance opening=7 mm prt=6 mm',
        '"prt" is no input of clearance: did you mean part?',
        CLEARANCE_CALL,
      ],
      ['clearance opening= part=6 mm', 'opening has no value', CLEARANCE_CALL],
      [
        'running mass part=1,200 kg',
        'part: "1,200" may be 1200 or 1.200: write it without the comma',
        MASS_CALL,
      ],
    ] as const
  ).map(
    ([words, why, example]) =>
      [
        'check-unread',
        ['work', 'out', ...words.split(' ')],
        `${why}\n  next   ${example ?? 'see what there is with: hearwright checks kinds'}`,
        2,
      ] as const,
  ),
  [
    'check-unread',
    [...IN, 'checks', 'add', 'clearance', 'opening 7 mm'],
    `"opening 7 mm" is no input of clearance: did you mean opening?\n  kept   nothing was set\n  next   ${CLEARANCE_CALL.replace('work out', 'checks add')}`,
    2,
  ],
  [
    'check-unrun',
    ['work', 'out', 'clearance', 'opening=706 mm'],
    `clearance: part was not given (${CLEARANCE.inputs[1]?.says})\n  next   ${CLEARANCE_CALL}`,
    2,
  ],
  [
    'check-unrun',
    ['work', 'out', 'clearance', 'opening=706', 'part=7 kg'],
    `clearance: opening: a number alone has no unit; part: it is a mass, and a length is wanted: ${CLEARANCE.inputs[1]?.says}\n  next   ${CLEARANCE_CALL}`,
    2,
  ],
  [
    'check-unrun',
    ['work', 'out', 'clearance', 'opening=side hatch width', 'part=7 mm'],
    `clearance: the side hatch width was never said\n  next   ${CLEARANCE_CALL}`,
    2,
  ],
  [
    'check-refused',
    ['work', 'out', 'clearance', 'opening=0 mm', 'part=7 mm'],
    `clearance: opening: 0 mm is nothing: give its size\n  next   ${CLEARANCE_CALL}`,
    2,
  ],
  [
    'check-refused',
    [...IN, 'checks', 'add', 'clearance', 'opening=706 m', 'part=7 mm'],
    `clearance: opening: 706 m is more than anything in a build: 7060 mm, or 706 mm?\n  kept   nothing was set\n  next   ${CLEARANCE_CALL.replace('work out', 'checks add')}`,
    2,
  ],
  [
    'fact-unknown',
    [...IN, 'withdraw', 's99'],
    'no fact that counts has the id "s99"\n  next   see ids with: hearwright memos MEMO, hearwright figures ITEM, hearwright limits',
    2,
  ],
  ...(
    [
      [['figures', 'set', 'bench top height'], 'expected one equals sign, as in "bench top height = 915 mm"'],
      [['figures', 'set', 'bench top height = (3 mm'], '"(3 mm" is no formula: a bracket is not closed'],
      [
        ['figures', 'set', 'bench top hight = 3 mm'],
        `"bench top hight" does not end in what is measured: ${ATTRIBUTES.join(', ')}`,
      ],
      [
        ['limits', 'set', 'doorway width 740 mm'],
        'expected "at most", "at least" or "between", as in "doorway width at most 740 mm"',
      ],
      [
        ['limits', 'set', 'doorway width at most 740 furlongs'],
        '"740 furlongs" is no quantity: "furlongs" is left over',
      ],
    ] as const
  ).map(
    ([words, why]) =>
      [
        'statement-unread',
        [...IN, ...words],
        `statement: ${why}\n  kept   nothing was set\n  next   hearwright ${words[0] === 'limits' ? LIMIT_EXAMPLE : FORMULA_EXAMPLE}`,
        2,
      ] as const,
  ),
  [
    'memo-unknown',
    [...IN, 'subtitles', '7'],
    'no memo has the number "7"\n  next   see the numbers with: hearwright memos',
    2,
  ],
  [
    'memo-without-times',
    [...IN, 'subtitles', '1'],
    'memo 1 has no times: it was written, or not heard yet\n  next   name a memo that was heard; see: hearwright memos',
    2,
  ],
  [
    'chapters-as-srt',
    [...IN, 'subtitles', '1', '--chapters', '--as', 'srt'],
    'SubRip has no chapters\n  next   leave --as srt out: chapters are written as WebVTT',
    2,
  ],
  [
    'day-empty',
    [...IN, 'journal', '2026-02-03'],
    'no memo was recorded on 2026-02-03\n  next   days with talk run from 2026-02-02 to 2026-02-02',
    2,
  ],
  [
    'value-invalid',
    [...IN, 'markers', '--rate', 'fast'],
    '--rate: expected frames a second such as 25, 29.97 or 24000/1001, got "fast"',
    2,
  ],
  [
    'option-missing',
    [...IN, 'episode', 'chapters'],
    'required option "--cut <file>" not specified\n  next   see: hearwright episode chapters --help',
    2,
  ],
  [
    'cut-list-unread',
    [...IN, 'episode', 'chapters', '--cut', 'bad-cut.csv'],
    'the cut list bad-cut.csv cannot be followed:\n  line 2: out is not after in\n  next   put these lines right; the format stands in docs/outputs.md',
    2,
  ],
  [
    'no-recordings',
    [...IN, 'markers'],
    'no recording was made from 2026-02-02 to 2026-02-02: there is nothing to mark\n  next   name other days: hearwright markers FROM TO',
    2,
  ],
  [
    'days-reversed',
    [...IN, 'episode', '2026-02-03', '2026-02-01'],
    'the last day would come before the first: 2026-02-03 is after 2026-02-01\n  next   hearwright episode 2026-02-01 2026-02-03',
    2,
  ],
  [
    'page-inside-project',
    [...IN, 'journal', '--out', 'wagon/.hearwright/x.md'],
    "cannot write wagon/.hearwright/x.md: that folder is the project's own\n  next   name a file outside of it",
    2,
  ],
  [
    'page-unwritable',
    [...IN, 'journal', '--out', 'ok.txt/x.md'],
    'cannot write ok.txt/x.md: a file is in the way\n  kept   the project, and any file of that name\n  next   name another file with --out',
    1,
  ],
  [
    'file-missing',
    [...IN, 'take', 'gone.txt'],
    'cannot take gone.txt: there is no such file\n  next   see the name and the rights of the file',
    3,
  ],
  [
    'file-missing',
    ['read', 'gone.txt'],
    'cannot read gone.txt: there is no such file\n  next   see the name and the rights of the file',
    3,
  ],
  [
    'file-folder',
    [...IN, 'take', 'folder.txt'],
    'cannot take folder.txt: it is a folder\n  next   name the files in it',
    3,
  ],
  [
    'file-empty',
    [...IN, 'take', 'empty.txt'],
    'cannot take empty.txt: it is empty\n  kept   the file was left as it was\n  next   write or record something first',
    3,
  ],
  [
    'file-empty',
    [...IN, 'take', 'empty.wav'],
    'cannot take empty.wav: it is empty\n  kept   the file was left as it was\n  next   copy it again from the recorder',
    3,
  ],
  [
    'text-not-utf8',
    [...IN, 'take', 'latin.txt'],
    'cannot take latin.txt: it is not UTF-8 text\n  kept   the file was left as it was\n  next   save it as UTF-8, then: hearwright take latin.txt',
    3,
  ],
  [
    'text-binary',
    [...IN, 'take', 'binary.txt'],
    'cannot take binary.txt: it holds binary data\n  kept   the file was left as it was\n  next   give a recording its own file ending',
    3,
  ],
  [
    'text-too-long',
    [...IN, 'take', 'long.txt'],
    'cannot take long.txt: 4500000 bytes are too many for a memo\n  kept   the file was left as it was\n  next   cut it into parts',
    3,
  ],
  [
    'folder-missing',
    ['--project', 'nowhere', 'memos'],
    'cannot open nowhere: there is no such folder\n  next   make a project there: hearwright --project nowhere init',
    4,
  ],
  [
    'project-missing',
    ['--project', 'folder.txt', 'memos'],
    'cannot open folder.txt: no project is in it\n  next   make one: hearwright --project folder.txt init',
    4,
  ],
  [
    'project-missing',
    ['memos'],
    'no project is in this folder or above it\n  next   make one: hearwright init',
    4,
  ],
  [
    'not-a-project',
    ['--project', 'broken', 'memos'],
    'DIR/broken/.hearwright/project.db is not a project of this program\n  kept   the file was left as it was\n  next   name the project folder with --project',
    4,
  ],
  [
    'project-not-made',
    ['--project', 'ok.txt', 'init'],
    'cannot make a project in DIR/ok.txt: a file is in the way\n  kept   nothing was changed\n  next   choose another folder with --project, or see its rights',
    4,
  ],
];

test.each(TABLE)('%s: hearwright %j', (_code, words, printed, code) => {
  expect(place.call(words)).toEqual({ out: '', err: `hearwright: ${printed}\n`, code });
});

test('a text named as sound is refused, and nothing of it is kept', () => {
  const { out, err, code } = place.call([...IN, 'take', 'not-sound.wav']);
  expect([out, code]).toEqual(['', 3]);
  expect(err).toMatch(/^hearwright: cannot take not-sound\.wav: .+\n {2}kept {3}.+\n {2}next {3}.+\n$/);
  expect(place.call([...IN, 'memos']).out.split('\n')).toHaveLength(2);
});

test('each file that cannot be taken is named with its reason, and the others are taken', () => {
  place.call(['--project', 'several', 'init']);
  place.file('a.txt', 'First.');
  place.file('b.txt', 'Second.');
  const { out, err, code } = place.call([
    '--project',
    'several',
    'take',
    'a.txt',
    'gone.txt',
    'b.txt',
    'empty.txt',
    '--at',
    '2026-02-02T08:00Z',
  ]);
  expect(out).toBe('memo 1  a.txt  1 word: nothing to note\nmemo 2  b.txt  1 word: nothing to note\n');
  expect(err.match(/^hearwright: cannot take .*$/gm)).toEqual([
    'hearwright: cannot take gone.txt: there is no such file',
    'hearwright: cannot take empty.txt: it is empty',
  ]);
  expect(code).toBe(3);
});

test('value-mismatch: a value goes with correct, and correct with a value', () => {
  place.call(['--project', 'bench', 'init']);
  place.file('one.txt', 'The bench top is 915 millimetres high, I measured it.');
  place.file('two.txt', 'The bench top is 951 millimetres high.');
  place.call(['--project', 'bench', 'take', 'one.txt', 'two.txt', '--at', '2026-02-02']);
  const [{ id }] = JSON.parse(place.call(['--project', 'bench', 'findings', '--json']).out);
  const settle = (...words: readonly string[]) => place.call(['--project', 'bench', 'settle', id, ...words]);
  const next = '  next   hearwright settle FINDING correct --value "915 mm"\n';
  expect(settle('correct')).toEqual({
    out: '',
    err: `hearwright: correct: no value was given\n${next}`,
    code: 2,
  });
  expect(settle('keep-old', '--value', '9 mm')).toEqual({
    out: '',
    err: `hearwright: keep-old: a value goes with correct only\n${next}`,
    code: 2,
  });
  const note = (...words: readonly string[]) => place.call(['--project', 'bench', 'note', 'm1.f1', ...words]);
  expect(note('amend').err).toContain('hearwright: amend: nothing to put right was given\n');
  expect(note('reject', '--item', 'x').err).toContain('hearwright: reject: fields go with amend only\n');
});

test('an empty project has no day: day-empty', () => {
  place.call(['--project', 'fresh', 'init']);
  for (const command of ['journal', 'episode'])
    expect(place.call(['--project', 'fresh', command])).toEqual({
      out: '',
      err: 'hearwright: nothing has been taken yet\n  next   take a memo in: hearwright take FILE\n',
      code: 2,
    });
});

test('project-damaged: verify names what was changed', () => {
  place.call(['--project', 'hurt', 'init']);
  place.file('c.txt', 'Third.');
  place.call(['--project', 'hurt', 'take', 'c.txt', '--at', '2026-02-02T08:00Z']);
  const originals = join(place.folder, 'hurt', '.hearwright', 'originals');
  const [kept = ''] = readdirSync(originals);
  writeFileSync(join(originals, kept), 'Changed.');
  expect(place.call(['--project', 'hurt', 'verify'])).toEqual({
    out: '  original of m1 (c.txt): its bytes were changed\n',
    err: 'hearwright: the project has 1 fault\n  kept   everything was left as it was\n  next   put the project folder back from a copy\n',
    code: 4,
  });
});

test.skipIf(process.getuid?.() === 0)('original-not-kept: a folder without the right to write', () => {
  place.call(['--project', 'locked', 'init']);
  place.file('d.txt', 'Fourth.');
  const home = join(place.folder, 'locked', '.hearwright');
  mkdirSync(join(home, 'originals'));
  chmodSync(join(home, 'originals'), 0o500);
  const { err, code } = place.call(['--project', 'locked', 'take', 'd.txt']);
  expect(err).toBe(
    'hearwright: cannot keep d.txt: the project folder may not be written to\n  kept   the file was left as it was; the project is unchanged\n  next   see the room on the disk and the rights of the folder, then take it again\n',
  );
  expect(code).toBe(3);
});

test('engines-unread and engines-unwritten: the list of engines is damaged, or cannot be written', () => {
  const settings = join(place.folder, 'settings');
  mkdirSync(join(settings, 'hearwright'), { recursive: true });
  writeFileSync(join(settings, 'hearwright', 'engines.json'), '{"format": 1, "engines": [{"name": 4}]}');
  const unread = place.call(['engines'], { env: { XDG_CONFIG_HOME: settings } });
  expect(unread).toMatchObject({ out: '', code: 2 });
  expect(unread.err).toBe(
    'hearwright: cannot read the engines in DIR/settings/hearwright/engines.json: it is damaged or may not be read\n  kept   the file was left as it was\n  next   put it right, or delete it and add the engines again\n',
  );
  place.file('settings-file', 'a file where a folder should be');
  const unwritten = place.call(['engines', 'use', 'bundled'], {
    env: { XDG_CONFIG_HOME: join(place.folder, 'settings-file') },
  });
  expect(unwritten).toMatchObject({ out: '', code: 1 });
  expect(unwritten.err).toContain('cannot write DIR/settings-file/hearwright/engines.json: ');
  expect(unwritten.err).toContain('the engines are as they were');
});

test('hostile file names act on no terminal', () => {
  const { err } = place.call([...IN, 'take', '\u001b]52;c;aGk=\u0007x\u001b[31m.txt']);
  expect(err).toMatch(/^hearwright: cannot take x\.txt: /);
});

test('docs/errors.md lists every code of the program, and no other', () => {
  const listed = [...readFileSync('docs/errors.md', 'utf8').matchAll(/^\| `([a-z0-9-]+)`\s*\|/gm)].map(
    ([, code]) => code,
  );
  const sources = readdirSync('src', { recursive: true, encoding: 'utf8' }).filter((file) =>
    /\.tsx?$/.test(file),
  );
  const text = sources.map((file) => readFileSync(join('src', file), 'utf8')).join('\n');
  const used = [...text.matchAll(/code: '([a-z0-9-]+)'/g)].map(([, code]) => code);
  const unlisted = used.filter((code) => !listed.includes(code));
  expect(unlisted, 'codes that docs/errors.md lacks').toEqual([]);
  const unused = listed.filter((code) => !text.includes(`'${code}'`));
  expect(unused, 'codes in docs/errors.md that no source has').toEqual([]);
  expect(new Set(listed).size).toBe(listed.length);
});
