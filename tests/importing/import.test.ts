/** What `export --json` prints becomes an equal project again, and nothing else becomes one. */
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import * as fc from 'fast-check';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { importProject } from '../../src/importing/import-project.ts';
import { readDocument } from '../../src/importing/read-document.ts';
import { EXIT, Problem } from '../../src/problem.ts';
import { makeProject, openNearestProject } from '../../src/project.ts';
import type { HandChange } from '../../src/project-api.ts';
import { openWorkplace, type Workplace } from '../kit/command-line.ts';

const SAMPLE = resolve('samples/03-friday-morning.mp3');
const canHear = existsSync('models') && existsSync(SAMPLE);
const IN = ['--project', 'barn'];

let place: Workplace;
let exported: string;
beforeAll(async () => {
  place = openWorkplace();
  place.file(
    'one.txt',
    'The loft hatch is 610 wide. We decided on ash for the ladder because it bends. Tomorrow I need to order the hinges.',
  );
  place.file(
    'two.txt',
    '\ufeffI measured again, the loft hatch is 605 wide.\r\nBehind the gable lining runs a cable.\n',
  );
  place.file('three.txt', 'The ladder is 2.4 m long. The hinges arrived. Mixed 5 to 1 epoxy for the rungs.');
  await makeProject(inside('barn'), { name: 'Barn "loft" \u202e', units: 'mixed', region: 'GB' });
  const project = await openNearestProject(inside('barn'));
  for (const file of ['one.txt', 'two.txt', 'three.txt'])
    expect(await project.take(inside(file), { at: '2026-03-02T10:00:00+01:00' })).toMatchObject({ ok: true });
  const set = (change: HandChange) => project.setByHand(change);
  const ladder = { item: 'ladder', attribute: 'width' } as const;
  set({ kind: 'figure-set', ...ladder, quantity: { value: 410, unit: 'mm' }, reason: 'taped' });
  set({ kind: 'formula-set', item: 'rung', attribute: 'length', formula: 'ladder width - 60 mm' });
  set({
    kind: 'limit-set',
    ...ladder,
    about: 'ladder',
    bound: 'at-most',
    quantity: { value: 450, unit: 'mm' },
  });
  set({ kind: 'tolerance-set', dimension: 'length', quantity: { value: 2, unit: 'mm' } });
  set({ kind: 'items-merged', from: 'steps', into: 'ladder' });
  set({ kind: 'task-added', gist: 'oil the ash', due: '2026-04-01' });
  set({ kind: 'note-amended', noteId: 'm1.f1', fields: { value: 612 } });
  set({ kind: 'task-added', gist: 'never mind' });
  project.undo();
  set({
    kind: 'check-added',
    check: 'clearance',
    inputs: [
      { input: 'opening', expression: 'loft hatch width' },
      { input: 'part', expression: 'ladder width' },
      { input: 'gap', expression: '5 mm' },
    ],
  });
  project.close();
  exported = place.call([...IN, 'export', '--json']).out;
}, 60_000);
afterAll(() => place.remove());

const inside = (...parts: readonly string[]) => join(place.folder, ...parts);

/** Runs `work` with a new folder's path, which need not be there yet. */
let folders = 0;
const newFolder = () => inside(`into-${++folders}`);

test('an export becomes an equal project: the same export to the byte, and verify finds it whole', () => {
  place.file('barn.json', exported);
  expect(place.call(['import', 'barn.json', '--into', 'again'])).toEqual({
    out: 'Imported into again: 20 events, 3 memos, 3 originals.\n',
    err: '',
    code: 0,
  });
  expect(place.call(['--project', 'again', 'export', '--json']).out).toBe(exported);
  expect(place.call(['--project', 'again', 'verify'])).toMatchObject({
    out: 'Whole: 20 events, 3 originals.\n',
    code: 0,
  });
  const originals = (project: string) =>
    readdirSync(inside(project, '.hearwright', 'originals')).map((name) => [
      name,
      readFileSync(inside(project, '.hearwright', 'originals', name), 'latin1'),
    ]);
  expect(originals('again')).toEqual(originals('barn'));
  // Undo goes on where it was.
  const undone = (project: string) => place.call(['--project', project, 'undo']).out;
  expect(undone('again')).toBe('Undone: the check "clearance".\n');
});

test('from standard input, for the owner only, and nothing is left beside it', () => {
  expect(place.call(['import', '-', '--into', 'piped'], { input: exported }).code).toBe(0);
  const mode = (...path: readonly string[]) => statSync(inside('piped', ...path)).mode & 0o777;
  expect([mode(), mode('.hearwright'), mode('.hearwright', 'originals')]).toEqual([0o700, 0o700, 0o700]);
  expect(mode('.hearwright', 'project.db')).toBe(0o600);
  for (const name of readdirSync(inside('piped', '.hearwright', 'originals')))
    expect(mode('.hearwright', 'originals', name)).toBe(0o600);
  expect(readdirSync(inside('piped'))).toEqual(['.hearwright']);
});

test.skipIf(!canHear)(
  'sound stays behind, is said to, is no fault, and comes back by being taken again',
  () => {
    place.call(['--project', 'spoken', 'init']);
    const whole = readFileSync(SAMPLE);
    place.file('talk.mp3', whole.subarray(0, whole.length / 4));
    place.call(['--project', 'spoken', 'take', 'talk.mp3', 'one.txt', '--at', '2026-03-02T10:00:00Z']);
    const document = place.call(['--project', 'spoken', 'export', '--json']).out;
    const absent =
      'Not here, since an export holds no sound: 1 original.\n  talk.mp3\nWhere you have them: hearwright take FILE... keeps them again.\n';
    expect(place.call(['import', '-', '--into', 'heard'], { input: document })).toEqual({
      out: `Imported into heard: 7 events, 2 memos, 1 original.\n${absent}`,
      err: '',
      code: 0,
    });
    const heard = (...words: readonly string[]) => place.call(['--project', 'heard', ...words]);
    expect(heard('export', '--json').out).toBe(document);
    expect(heard('verify')).toEqual({ out: `Whole: 7 events, 1 original.\n${absent}`, err: '', code: 0 });
    expect(heard('backup', 'heard.backup')).toMatchObject({ err: '', code: 0 });
    expect(place.call(['restore', 'heard.backup', '--into', 'back'])).toMatchObject({ err: '', code: 0 });
    expect(heard('take', 'talk.mp3').out).toBe(
      'memo 1  talk.mp3 was taken already: its original was missing and is kept again\n',
    );
    expect(heard('verify').out).toBe('Whole: 7 events, 2 originals.\n');
    expect(heard('export', '--json').out).toBe(document);
  },
  60_000,
);

test('a part that was changed by hand in the document is told: the log is what counts', () => {
  const changed = JSON.parse(exported);
  changed.figures[0].value = 7;
  const imported = importProject(JSON.stringify(changed), 'changed.json', newFolder());
  expect(imported.differs).toEqual(['figures']);
  expect(importProject(exported, 'barn.json', newFolder()).differs).toEqual([]);
});

interface Line {
  seq: number;
  kind: string;
  [field: string]: unknown;
}
interface Document {
  format: number;
  log: Line[];
  [part: string]: unknown;
}

/** The event of a kind, to be spoilt. */
function event(document: Document, kind: string): Line {
  const found = document.log.find((line) => line.kind === kind);
  if (!found) throw new Error(`the export has no ${kind}`);
  return found;
}

const UNREAD = 'import-unread';
const NEWER = 'import-too-new';

/** Changes an export where it stands. */
const change = (spoil: (document: Document) => unknown) => (document: Document) => {
  spoil(document);
  return document as unknown;
};
/** Puts other fields into the first event of a kind. */
const changeEvent = (kind: string, fields: object) =>
  change((document) => Object.assign(event(document, kind), fields));
const changeLine = (seq: number, fields: object) =>
  change(({ log }) => Object.assign(log[seq - 1] as Line, fields));

const ELSEWHERE = 'event 2 names an original outside of the project';

/** What is wrong, how a whole export is spoilt, its code and what is said of it. */
const SPOILT: readonly (readonly [string, (document: Document) => unknown, string, string])[] = [
  [
    'a later format',
    change((one) => Object.assign(one, { format: 2 })),
    NEWER,
    'it has format 2, and this program reads up to 1',
  ],
  [
    'no log',
    ({ log: _log, ...rest }) => rest,
    UNREAD,
    'it holds no log: an older version exported it, or it is a part only',
  ],
  ['no format', ({ format: _format, ...rest }) => rest, UNREAD, 'it is no export of this program'],
  ['a list', (one) => [one], UNREAD, 'it is no export of this program'],
  [
    'a log that is no list',
    (one) => ({ ...one, log: { length: 3 } }),
    UNREAD,
    'it is no export of this program',
  ],
  ['an empty log', (one) => ({ ...one, log: [] }), UNREAD, 'its log does not begin with a project'],
  ['an event missing', change(({ log }) => log.splice(3, 1)), UNREAD, 'event 4 is numbered 5'],
  [
    'an event that is none',
    change(({ log }) => log.splice(3, 1, null as unknown as Line)),
    UNREAD,
    'event 4 is none',
  ],
  [
    'a kind of a later version',
    changeLine(5, { kind: 'task-sung' }),
    NEWER,
    'event 5 is of a kind that this program does not know',
  ],
  ['an absurd time', changeLine(5, { at: 'soon' }), UNREAD, 'event 5 is none: at'],
  [
    'the project made twice',
    change(({ log }) => log.push({ ...(log[0] as Line), seq: log.length + 1 })),
    UNREAD,
    'event 21 makes the project again',
  ],
  ['an original elsewhere', changeEvent('recording-kept', { file: '../../../one.txt' }), UNREAD, ELSEWHERE],
  ['an original at the root', changeEvent('recording-kept', { file: '/etc/hostname' }), UNREAD, ELSEWHERE],
  [
    'an original with the name of another',
    changeEvent('recording-kept', { file: `originals/${'0'.repeat(64)}.txt` }),
    UNREAD,
    ELSEWHERE,
  ],
  [
    'a hash that is none',
    change((one) => Object.assign(event(one, 'recording-kept').source as Line, { sha256: '../x' })),
    UNREAD,
    'event 2 (recording-kept) is not as such an event is: source.sha256',
  ],
  [
    'a memo with the number of another',
    changeEvent('recording-kept', { memoId: 'm2' }),
    UNREAD,
    'event 2 gives a memo the number of another',
  ],
  ['words of no memo', changeEvent('transcript-made', { memoId: 'm9' }), UNREAD, 'event 3 is about no memo'],
  [
    'notes of a memo without words',
    changeEvent('notes-read', { memoId: 'm3' }),
    UNREAD,
    'event 4 reads a memo that has no words yet',
  ],
  [
    'a quote that nobody said',
    change((one) => {
      const { figures } = event(one, 'notes-read').notes as { figures: { quote: string }[] };
      Object.assign(figures[0] as object, { quote: '999 wide' });
    }),
    UNREAD,
    'event 4 quotes what was not said',
  ],
  [
    'a figure of nothing',
    changeEvent('figure-set', { item: 5 }),
    UNREAD,
    'event 11 (figure-set) is not as such an event is: item',
  ],
  [
    'a figure of no measure',
    changeEvent('figure-set', { attribute: 'charm' }),
    UNREAD,
    'event 11 (figure-set) is not as such an event is: attribute',
  ],
  [
    'an undo of what comes later',
    changeEvent('undone', { undoes: 99 }),
    UNREAD,
    'event 19 takes back what comes later',
  ],
];

function problemOf(work: () => unknown): Problem {
  try {
    work();
  } catch (error) {
    if (error instanceof Problem) return error;
    throw error;
  }
  throw new Error('nothing was refused');
}

test.each(SPOILT)('not imported: %s', (_what, spoil, code, message) => {
  const into = newFolder();
  const text = JSON.stringify(spoil(JSON.parse(exported) as Document));
  const problem = problemOf(() => importProject(text, 'spoilt.json', into));
  expect([problem.code, problem.message]).toEqual([code, `cannot import spoilt.json: ${message}`]);
  expect(problem.exitCode).toBe(EXIT.partly);
  expect(existsSync(into)).toBe(false);
});

test.each([
  ['nothing', ''],
  ['a letter', 'Dear all,'],
  ['half of it', undefined],
  ['null', 'null'],
  ['a number without end', '{"format":1,"log":[1e999]}'],
  ['brackets without end', '['.repeat(200_000)],
  ['brackets far in each other', `{"format":1,"log":[${'['.repeat(500)}${']'.repeat(500)}]}`],
  ['a field that every object has', '{"format":1,"log":[{"__proto__":{"seq":1},"kind":"constructor"}]}'],
])('import-unread: %s is no export', (_what, text = exported.slice(0, exported.length / 2)) => {
  const into = newFolder();
  mkdirSync(into);
  expect(problemOf(() => importProject(text, 'x.json', into)).code).toBe('import-unread');
  expect(readdirSync(into)).toEqual([]);
  expect(({} as { seq?: number }).seq).toBeUndefined();
});

test('import-occupied: only into an empty folder', () => {
  place.file('barn.json', exported);
  expect(place.call(['import', 'barn.json', '--into', 'barn'])).toEqual({
    out: '',
    err: 'hearwright: cannot import into barn: it is not empty\n  kept   what is there was left as it was\n  next   name a folder that is empty or not there yet\n',
    code: 2,
  });
  expect(place.call(['import', 'barn.json', '--into', 'one.txt']).err).toContain('one.txt: it is no folder');
  expect(place.call(['import', 'gone.json', '--into', 'x'])).toMatchObject({
    err: 'hearwright: cannot import gone.json: there is no such file\n  next   see the name and the rights of the file\n',
    code: 3,
  });
  place.file('bytes.json', new Uint8Array([0xff, 0xfe]));
  expect(place.call(['import', 'bytes.json', '--into', 'x'])).toMatchObject({ code: 3 });
  expect(existsSync(inside('x'))).toBe(false);
});

test('import-unwritten: a file stands where a folder would be made', () => {
  const problem = problemOf(() => importProject(exported, 'barn.json', inside('one.txt', 'under')));
  expect([problem.code, problem.exitCode]).toEqual(['import-unwritten', 1]);
  expect(problem.message).toMatch(/^cannot import into .*: a file is in the way$/);
});

/** Where a value stands in a document. */
type Path = readonly (string | number)[];

function pathsIn(value: unknown, path: Path = []): readonly Path[] {
  if (typeof value !== 'object' || value === null) return [path];
  return [path, ...Object.entries(value).flatMap(([key, part]) => pathsIn(part, [...path, key]))];
}

function withValue(value: unknown, [key, ...rest]: Path, put: unknown): unknown {
  if (key === undefined) return put;
  if (Array.isArray(value))
    return value.map((part, index) => (String(index) === String(key) ? withValue(part, rest, put) : part));
  const object = value as Readonly<Record<string, unknown>>;
  return { ...object, [key]: withValue(object[key], rest, put) };
}

test('a log with any value replaced is refused, or gives a project that is whole', {
  timeout: 120_000,
}, async () => {
  const document = JSON.parse(exported) as Document;
  const { log } = document;
  const paths = pathsIn(log).filter((path) => path.length > 0);
  const oddValue = fc.oneof(
    fc.constantFrom<unknown>(
      null,
      '',
      -1,
      1e300,
      [],
      {},
      true,
      '\u001b[31m',
      '../../x',
      'constructor',
      '__proto__',
    ),
    fc.string(),
  );
  let whole = 0;
  await fc.assert(
    fc.asyncProperty(fc.constantFrom(...paths), oddValue, async (path, odd) => {
      const text = JSON.stringify({ ...document, log: withValue(log, path, odd) });
      const into = newFolder();
      try {
        importProject(text, 'odd.json', into);
      } catch (error) {
        expect(error).toBeInstanceOf(Problem);
        expect(['import-unread', 'import-too-new']).toContain((error as Problem).code);
        expect(existsSync(into)).toBe(false);
        return;
      }
      const project = await openNearestProject(into);
      try {
        const { faults } = await project.verify();
        expect(faults.filter((fault) => !fault.startsWith('original of'))).toEqual([]);
        project.next('2026-04-01T08:00:00Z');
        project.span('2026-03-01', '2026-03-31');
        whole++;
      } finally {
        project.close();
        rmSync(into, { recursive: true });
      }
    }),
    { numRuns: 80 },
  );
  expect(whole).toBeGreaterThan(5);
});

test('what is read of a document is its log, word for word', () => {
  writeFileSync(inside('whole.json'), exported);
  expect(readDocument(exported).log).toEqual(JSON.parse(exported).log);
});
