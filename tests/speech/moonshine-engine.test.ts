import {
  cpSync,
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  realpathSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { decode } from '../../src/speech/decode.ts';
import type { HeardRecording } from '../../src/speech/engine.ts';
import { checkedModelFiles, modelFolder } from '../../src/speech/model-folder.ts';
import { bundledSetup, moonshineEngine, transcribe } from '../../src/speech/moonshine-engine.ts';
import { startRecogniser } from '../../src/speech/recogniser/recogniser-process.ts';
import type { TakeProgress } from '../../src/speech/transcript.ts';
import { foldSpeech } from '../kit/fold-speech.ts';
import { hammering, joined, motor, whiteNoise } from '../kit/sound.ts';
import { waveFile } from '../kit/wave-file.ts';
import { wordErrors } from '../kit/word-error-rate.ts';

const fixtures = join(import.meta.dirname, 'fixtures');
const memoText = readFileSync(join(fixtures, 'memo.txt'), 'utf8');
const RATE = 16_000;

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'hear-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function putSound(name: string, samples: Float32Array): string {
  const path = join(folder, name);
  writeFileSync(path, waveFile(samples, { form: 's16', sampleRate: RATE, channels: 1 }));
  return path;
}

async function hear(path: string): Promise<HeardRecording> {
  const heard = await transcribe(path);
  if (!heard.ok) throw heard.problem;
  return heard.value;
}

function textOf({ utterances }: HeardRecording): string {
  return utterances.map(({ text }) => text).join(' ');
}

describe('a spoken memo', () => {
  test.each(['memo.m4a', 'memo.opus'])('%s is heard nearly word for word, in its place', async (name) => {
    const progress: TakeProgress[] = [];
    const heard = await moonshineEngine.transcribe(join(fixtures, name), {
      onProgress: (now) => progress.push(now),
    });
    if (!heard.ok) throw heard.problem;
    const { engine, utterances, dropped, durationSeconds } = heard.value;
    expect(engine).toBe('moonshine-tiny-en');
    // The voice is synthetic and not heard as well as a person: one word in ten may be off.
    expect(wordErrors(foldSpeech(memoText), foldSpeech(textOf(heard.value))).rate).toBeLessThan(0.1);
    expect(dropped).toEqual([]);
    // Half a second of quiet at both ends.
    expect(utterances[0]?.startSeconds).toBeGreaterThan(0.3);
    expect(utterances.at(-1)?.endSeconds).toBeLessThan(durationSeconds - 0.3);
    expect(progress[0]).toEqual({ stage: 'decoding', fraction: 0 });
    expect(progress.at(-1)).toMatchObject({
      stage: 'transcribing',
      fraction: 1,
      words: utterances.at(-1)?.text,
    });
  });

  test('stands at its own time after a minute of noise and silence, and nothing else is heard', async () => {
    const parts: Float32Array[] = [];
    for await (const part of decode(join(fixtures, 'memo.flac'))) parts.push(part);
    const quiet = whiteNoise(40, RATE, 0.003);
    const path = putSound(
      'late.wav',
      joined([new Float32Array(20 * RATE), quiet, ...parts, new Float32Array(10 * RATE)]),
    );
    const heard = await hear(path);
    expect(heard.utterances[0]?.startSeconds).toBeGreaterThan(60.3);
    expect(heard.utterances[0]?.startSeconds).toBeLessThan(61);
    expect(wordErrors(foldSpeech(memoText), foldSpeech(textOf(heard))).rate).toBeLessThan(0.1);
  });
});

test('silence, noise, hammering and a motor give no utterance', async () => {
  const sounds = [
    new Float32Array(20 * RATE),
    whiteNoise(20, RATE),
    hammering(20, RATE),
    motor(20, RATE),
    new Float32Array(5 * RATE),
  ];
  const { utterances, durationSeconds } = await hear(putSound('workshop.wav', joined(sounds)));
  expect(utterances).toEqual([]);
  expect(durationSeconds).toBe(85);
});

test('half a second of noise gives no utterance', async () => {
  expect((await hear(putSound('short.wav', whiteNoise(0.5, RATE)))).utterances).toEqual([]);
});

describe('when hearing fails', () => {
  test('a stop ends it at once and leaves no work behind', async () => {
    const stop = new AbortController();
    const path = putSound('long.wav', whiteNoise(120, RATE));
    const heard = transcribe(path, {
      signal: stop.signal,
      onProgress: ({ fraction }) => fraction > 0 && stop.abort(),
    });
    expect(await heard).toMatchObject({
      ok: false,
      problem: { code: 'cancelled', message: 'stopped while hearing long.wav' },
    });
  });

  test('a stop before the start starts nothing', async () => {
    const heard = await transcribe(join(fixtures, 'memo.m4a'), { signal: AbortSignal.abort() });
    expect(heard).toMatchObject({ ok: false, problem: { code: 'cancelled' } });
  });

  test('a fault of the file is the same problem as without hearing', async () => {
    expect(await transcribe(join(folder, 'nowhere.wav'))).toMatchObject({
      ok: false,
      problem: { code: 'file-missing' },
    });
  });

  test('a damaged model ends the child, not this process, and what the child said is told', async () => {
    const broken = join(folder, 'models');
    cpSync(realpathSync(modelFolder()), broken, { recursive: true });
    writeFileSync(join(broken, 'moonshine-tiny-encoder.onnx'), 'not a model');
    const files = await checkedModelFiles();
    if (!files.ok) throw files.problem;
    const lines: string[] = [];
    const models = { ...files.value, encoder: join(broken, 'moonshine-tiny-encoder.onnx') };
    const child = startRecogniser(bundledSetup(models), {
      onMessage: () => {},
      onLine: (line) => lines.push(line),
    });
    // The model is loaded when there is talk.
    for await (const part of decode(join(fixtures, 'memo.flac'))) await child.write(part);
    child.end();
    expect((await child.finished).failure).toMatch(/it ended with|rror/);
  });

  test('a child that is killed midway is an end, and feeding it on does no harm', async () => {
    const files = await checkedModelFiles();
    if (!files.ok) throw files.problem;
    const child = startRecogniser(bundledSetup(files.value), { onMessage: () => child.stop() });
    for (let second = 0; second < 200; second++) await child.write(new Float32Array(RATE));
    child.end();
    expect(await child.finished).toEqual({ failure: 'it ended with SIGKILL' });
  });
});

const librivox = '/usr/share/pocketsphinx/test/data/librivox';

describe.skipIf(!existsSync(librivox))(
  'real speech (skipped without the Debian package pocketsphinx-testdata)',
  () => {
    // Outside check: LibriVox recordings with their transcriptions, from Debian's pocketsphinx-testdata.
    test('is heard with less than 8 % word error', async () => {
      const lines = readFileSync(join(librivox, 'transcription'), 'utf8').split('\n');
      const clips = readdirSync(librivox).filter((name) => name.endsWith('.wav'));
      const parts: Float32Array[] = [];
      const spoken: string[] = [];
      for (const clip of clips) {
        const line = lines.find((found) => found.includes(`(${clip.slice(0, -4)})`)) ?? '';
        spoken.push(line.replace(/<\/?s>|\(.*\)/g, ''));
        for await (const part of decode(join(librivox, clip))) parts.push(part);
        parts.push(new Float32Array(4 * RATE));
      }
      expect(clips.length).toBe(5);
      const heard = await hear(putSound('librivox.wav', joined(parts)));
      const { rate } = wordErrors(foldSpeech(spoken.join(' ')), foldSpeech(textOf(heard)));
      expect(rate).toBeLessThan(0.08);
    }, 60_000);
  },
);
