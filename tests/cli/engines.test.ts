/**
 * Engines of the person's own through the built command: a Whisper model by a whisper.cpp program that is built here, and
 * a folder of the sherpa-onnx runtime. The models carry no trained weights (see `tests/kit`): everything else is real.
 */
import { spawn, spawnSync } from 'node:child_process';
import {
  chmodSync,
  cpSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  realpathSync,
  writeFileSync,
} from 'node:fs';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openWorkplace, type Workplace } from '../kit/command-line.ts';
import { scriptedCtc, tokenList } from '../kit/onnx-file.ts';
import { scriptedWhisper } from '../kit/whisper-file.ts';

const MEMO = resolve('tests/speech/fixtures/memo.m4a');
const HAS_BUILD_TOOLS = ['make', 'g++'].every((tool) => spawnSync(tool, ['--version']).status === 0);
const SAID = 'The shelf is 742 millimetres wide.';

let place: Workplace;
const json = (words: readonly string[]) => JSON.parse(place.call([...words, '--json']).out);

/** A program in the place of whisper.cpp that does what the script says after telling that it fits. */
function standIn(name: string, script: string): string {
  const path = join(place.folder, name);
  const help = `if (process.argv[2] === '--help') { console.log('--output-json-full'); process.exit(0); }`;
  writeFileSync(
    path,
    `#!${process.execPath}\n${help}\nconst args = process.argv.slice(2);\nconst fs = require('node:fs');\n${script}\n`,
  );
  chmodSync(path, 0o755);
  return path;
}

beforeAll(() => {
  place = openWorkplace();
  place.call(['init', '--name', 'Jetty shed']);
  place.call(['take', MEMO, '--at', '2026-03-02T17:00:00Z']);
  place.file('chain.bin', scriptedWhisper(SAID));
  mkdirSync(join(place.folder, 'small ctc'));
  const tokens = ['▁the', '▁shel', 'f', '▁is', '▁742', '▁millimetres', '▁wide'];
  place.file('small ctc/model.onnx', scriptedCtc(tokens.length));
  place.file('small ctc/tokens.txt', tokenList(tokens));
}, 60_000);
afterAll(() => place.remove());

test('without any of your own there is the bundled engine, and it is the default', () => {
  expect(json(['engines'])).toEqual({
    engines: [
      {
        name: 'moonshine-tiny-en',
        runtime: 'bundled',
        family: 'Moonshine',
        wordTimes: false,
        isDefault: true,
      },
    ],
  });
});

test('a folder of the sherpa-onnx runtime hears a memo, with word times, beside the bundled one', () => {
  expect(place.call(['engines', 'add', 'small ctc', '--name', 'ctc'])).toMatchObject({ err: '', code: 0 });
  const heard = place.call(['hear', '1', '--engine', 'ctc']);
  expect(heard.err).toBe('');
  expect(heard.out).toContain('transcript 2 of memo 1, by ctc');
  const [first, second] = json(['transcripts', '1']);
  expect(first).toMatchObject({ version: 1, engine: 'moonshine-tiny-en', counts: false });
  expect(second).toMatchObject({ version: 2, engine: 'ctc', counts: true, chosenBy: 'newest' });
  const [utterance] = second.utterances;
  expect(utterance.text).toContain('the shelf is 742 millimetres wide');
  // A token each 0.4 s, as the model is made; the figure has the time of its own words.
  const at = utterance.words.map(
    ({ startSeconds }: { startSeconds: number }) => startSeconds - utterance.startSeconds,
  );
  [0, 0.4, 1.2, 1.6, 2, 2.4].forEach((seconds, word) => {
    expect(at[word]).toBeCloseTo(seconds, 1);
  });
  const [figure] = json(['memos', '1']).notes.figures;
  expect(figure.startSeconds - utterance.startSeconds).toBeCloseTo(1.6, 1);
});

test('undo gives the first transcript the word back, and a choice of your own stays whatever is heard later', () => {
  expect(place.call(['undo']).out).toBe('Undone: transcript 2 as the one that counts for memo 1.\n');
  expect(json(['transcripts', '1'])[0]).toMatchObject({ counts: true });
  const chosen = place.call(['transcripts', '1', '1', '--use']);
  expect(chosen.out).toContain('your choice');
  const again = place.call(['hear', '1', '--engine', 'ctc']);
  expect(again.out).toBe(
    'ctc heard memo 1 before: it is transcript 2.\nAnother one counts. To let this one count: hearwright transcripts 1 2 --use\n',
  );
  expect(place.call(['verify'])).toMatchObject({ code: 0 });
});

test('the model that the package brings is known as a folder too', () => {
  mkdirSync(join(place.folder, 'moonshine'));
  const models = realpathSync('models');
  for (const [from, to] of [
    ['moonshine-tiny-encoder.onnx', 'encoder_model.onnx'],
    ['moonshine-tiny-decoder.onnx', 'decoder_model_merged.onnx'],
    ['moonshine-tiny-tokens.txt', 'tokens.txt'],
  ] as const)
    cpSync(join(models, from), join(place.folder, 'moonshine', to));
  const heard = place.call(['hear', '1', '--engine', './moonshine', '--json']);
  const { transcript } = JSON.parse(heard.out);
  const [bundled] = json(['transcripts', '1']);
  expect(transcript).toMatchObject({ engine: 'moonshine', text: bundled.text });
});

describe.skipIf(!HAS_BUILD_TOOLS)('a Whisper model (skipped without make and g++)', () => {
  test('is heard by the program that is built from the source the package brings', () => {
    expect(place.call(['engines', 'add', 'chain.bin']).out).toContain('the Whisper program is missing');
    expect(place.call(['hear', '1', '--engine', 'chain'])).toMatchObject({ code: 3 });
    const built = place.call(['engines', 'set-up', 'whisper']);
    expect(built.err).toBe(
      'Building the Whisper program from the source that came with this package. It takes a minute or two.\n',
    );
    expect(built.out).toContain('(built here)');
    expect(readdirSync(join(place.folder, '.cache/hearwright/whisper'))).toEqual(['whisper-program']);
    const heard = JSON.parse(place.call(['hear', '1', '--engine', 'chain', '--json']).out);
    expect(heard.transcript).toMatchObject({ engine: 'chain', counts: false });
    expect(heard.transcript.text).toMatch(new RegExp(`^(${SAID} ?)+$`));
    const words = heard.transcript.utterances.flatMap((one: { words: unknown[] }) => one.words);
    expect(words.length).toBe(heard.transcript.words);
    const times = words.flatMap((one: { startSeconds: number; endSeconds: number }) => [
      one.startSeconds,
      one.endSeconds,
    ]);
    expect(times).toEqual([...times].sort((a, b) => a - b));
  }, 600_000);

  test('takes a memo in when it is the default', () => {
    place.call(['engines', 'use', 'chain']);
    const other = resolve('tests/speech/fixtures/memo.opus');
    const taken = place.call(['take', other]);
    expect(taken).toMatchObject({ err: '', code: 0 });
    expect(json(['memos', '2']).text).toContain(SAID);
    expect(json(['transcripts', '2'])).toMatchObject([{ engine: 'chain', counts: true }]);
    place.call(['engines', 'use', 'bundled']);
    expect(json(['engines']).engines[0]).toMatchObject({ isDefault: true });
  }, 120_000);

  test('is refused where its file was cut off, and the memo stays as it was', () => {
    place.file('cut.bin', scriptedWhisper(SAID).subarray(0, 3_000_000));
    const heard = place.call(['hear', '2', '--engine', './cut.bin']);
    expect(heard.code).toBe(3);
    expect(heard.err).toMatch(/the recogniser stopped \(cut\): .*the Whisper program ended with \d+/);
    expect(heard.err).toContain('memo 2 stands as it was');
    expect(json(['transcripts', '2'])).toHaveLength(1);
  }, 120_000);
});

/** Writes a transcript of one word where the program is told to, as whisper.cpp would. */
const ANSWER = `fs.writeFileSync(args[args.indexOf('-of') + 1] + '.json', '{"transcription": [{"text": " jetty"}]}');`;

function useStandIn(name: string, script: string): void {
  const set = place.call(['engines', 'set-up', 'whisper', '--program', standIn(name, script)]);
  expect(set).toMatchObject({ err: '', code: 0 });
}

describe('a Whisper program in the place of a real one', () => {
  test('gets the words of the project, and names of files never meet a shell', () => {
    place.call(['set', 'winch bed', 'width', '640 mm']);
    const name = `it's $(touch hacked) "x"; touch hacked.bin`;
    place.file(name, scriptedWhisper(SAID));
    const seen = join(place.folder, 'seen.json');
    useStandIn('telling', `fs.writeFileSync(${JSON.stringify(seen)}, JSON.stringify(args)); ${ANSWER}`);
    expect(place.call(['hear', '1', '--engine', `./${name}`])).toMatchObject({ err: '', code: 0 });
    const args: readonly string[] = JSON.parse(readFileSync(seen, 'utf8'));
    expect(args[args.indexOf('-m') + 1]).toBe(join(realpathSync(place.folder), name));
    expect(args[args.indexOf('--prompt') + 1]).toMatch(/\bwinch bed\b.*\.$/);
    expect(args[args.indexOf('-l') + 1]).toBe('en');
    expect(readdirSync(place.folder)).not.toContain('hacked');
  });

  test.each([
    ['crashes', `process.kill(process.pid, 'SIGSEGV'); setTimeout(() => {}, 5000);`, /ended with SIGSEGV/],
    [
      'gives no result',
      `console.error('error: unknown argument');`,
      /wrote no result: error: unknown argument/,
    ],
    [
      'gives another result',
      `fs.writeFileSync(args[args.indexOf('-of') + 1] + '.json', '{"a": 1}');`,
      /wrote something else than a transcript/,
    ],
    [
      'gives half a result',
      `fs.writeFileSync(args[args.indexOf('-of') + 1] + '.json', '{"transcription": [');`,
      /JSON/,
    ],
  ])('that %s is a problem that says so', (name, script, said) => {
    place.file('other.bin', scriptedWhisper(SAID));
    useStandIn(name.replaceAll(' ', '-'), script);
    const before = place.call(['transcripts', '1', '--json']).out;
    const heard = place.call(['hear', '1', '--engine', './other.bin']);
    expect(heard).toMatchObject({ out: '', code: 3 });
    expect(heard.err).toMatch(said);
    expect(heard.err).toContain('memo 1 stands as it was');
    expect(place.call(['transcripts', '1', '--json']).out).toBe(before);
  });

  test('ends when the hearing is stopped, and leaves nothing behind', async () => {
    const seen = join(place.folder, 'pid');
    useStandIn(
      'endless',
      `fs.writeFileSync(${JSON.stringify(seen)}, String(process.pid)); setInterval(() => {}, 1000);`,
    );
    const temporary = join(place.folder, 'temporary');
    mkdirSync(temporary);
    const child = spawn(process.execPath, [resolve('dist/cli.js'), 'hear', '1', '--engine', './other.bin'], {
      cwd: place.folder,
      env: { PATH: process.env.PATH ?? '', HOME: place.folder, TMPDIR: temporary },
    });
    let err = '';
    child.stderr.setEncoding('utf8').on('data', (text: string) => {
      err += text;
    });
    await expect.poll(() => existsSync(seen), { timeout: 60_000, interval: 200 }).toBe(true);
    expect(readdirSync(temporary)).toHaveLength(1);
    child.kill('SIGINT');
    expect(await new Promise((done) => child.on('close', done))).toBe(3);
    expect(err).toContain('stopped while hearing memo.m4a');
    expect(readdirSync(temporary)).toEqual([]);
    // Where nobody collects it, a process that has ended stays listed as a Z.
    const state = () =>
      spawnSync('ps', ['-o', 'stat=', '-p', readFileSync(seen, 'utf8')], { encoding: 'utf8' }).stdout;
    await expect.poll(state, { timeout: 10_000 }).toMatch(/^(?:Z.*)?\s*$/);
  }, 90_000);

  test('is refused where it cannot write words with their times', () => {
    const refused = place.call(['engines', 'set-up', 'whisper', '--program', process.execPath]);
    expect(refused).toMatchObject({ code: 2 });
    expect(refused.err).toContain('it is no whisper.cpp program that writes JSON');
  });
});
