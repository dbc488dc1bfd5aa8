/** The two halves of the decoder against the whole of it, as sherpa-onnx runs it. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, expect, test } from 'vitest';
import { decode } from '../../../src/speech/decode.ts';
import { checkedModelFiles, type ModelFiles } from '../../../src/speech/model-folder.ts';
import { MoonshineModel } from '../../../src/speech/recogniser/moonshine/moonshine-model.ts';
import { OnnxRuntime } from '../../../src/speech/recogniser/moonshine/onnx-runtime.ts';
import { splitDecoder } from '../../../src/speech/recogniser/moonshine/split-decoder.ts';
import { WordPieces } from '../../../src/speech/recogniser/moonshine/word-pieces.ts';
import { tidy } from '../../../src/speech/recogniser/recognised.ts';
import { loadSherpaRecogniser } from '../../../src/speech/recogniser/sherpa-recogniser.ts';
import { emptyOnnx } from '../../kit/onnx-file.ts';

const RATE = 16_000;
let files: ModelFiles;
let talk: Float32Array;
let model: MoonshineModel;

beforeAll(async () => {
  const checked = await checkedModelFiles();
  if (!checked.ok) throw checked.problem;
  files = checked.value;
  const parts: number[] = [];
  const memo = join(import.meta.dirname, '../fixtures/memo.flac');
  for await (const part of decode(memo)) parts.push(...part);
  talk = Float32Array.from(parts);
  model = new MoonshineModel(await OnnxRuntime.load(), files.encoder, files.decoder, 1);
});

test('writes what the whole decoder writes', async () => {
  const { encoder, decoder, tokens } = files;
  const whole = await loadSherpaRecogniser(
    { kind: 'sherpa', model: { tokens, moonshine: { encoder, mergedDecoder: decoder } } },
    1,
  );
  const pieces = new WordPieces(readFileSync(tokens, 'utf8'));
  for (const [from, to] of [
    [0, 3],
    [0, 11],
    [3, 9],
  ] as const) {
    const sound = talk.slice(from * RATE, to * RATE);
    const ids = await model.hear(sound, (heard) => heard.ids);
    expect(ids.length).toBeGreaterThan(5);
    expect(tidy(ids.map((id) => pieces.textOf(id)).join(''))).toBe((await whole.recognise(sound)).text);
  }
});

test('what was heard, weighed against itself in any place, has even odds', async () => {
  await model.hear(talk.slice(0, 7 * RATE), async ({ ids }, weighing) => {
    for (const from of [0, 1, 5, ids.length - 3]) {
      const same = { from, to: from + 2, ids: ids.slice(from, from + 2) };
      // Several words at a time are rounded together, one at a time each by itself.
      expect(Math.abs(await weighing.oddsOf(same))).toBeLessThan(0.2);
      expect(weighing.atMost(same)).toBeGreaterThanOrEqual((await weighing.oddsOf(same)) - 0.2);
    }
  });
});

test('the habit of talk, without the sound, holds what was heard for no likelier than itself', async () => {
  await model.hear(talk.slice(0, 11 * RATE), async ({ ids }, weighing) => {
    // Beyond the room for one run as well.
    expect(ids.length).toBeGreaterThan(22);
    for (const from of [0, 5, 21]) {
      const same = { from, to: from + 2, ids: ids.slice(from, from + 2) };
      expect(Math.abs(await weighing.habitOf(same))).toBeLessThan(0.3);
    }
  });
});

test('a word that is often said is likelier by habit than by the sound of another', async () => {
  const pieces = new WordPieces(readFileSync(files.tokens, 'utf8'));
  await model.hear(talk.slice(0, 3 * RATE), async ({ ids }, weighing) => {
    const written = ids.map((id) => pieces.textOf(id));
    const from = written.indexOf(' window');
    expect(from).toBeGreaterThan(0);
    const house = { from, to: from + 1, ids: pieces.idsOf('house') ?? [] };
    expect(await weighing.habitOf(house)).toBeGreaterThan((await weighing.oddsOf(house)) + 3);
  });
});

test('more other pieces than there is room for are weighed all the same', async () => {
  await model.hear(talk.slice(0, 7 * RATE), async ({ ids }, weighing) => {
    const many = Array.from({ length: 30 }, (_, k) => ids[k % ids.length] as number);
    const odds = await weighing.oddsOf({ from: 2, to: 4, ids: many });
    expect(odds).toBeLessThan(-20);
    expect(Number.isFinite(odds)).toBe(true);
  });
});

test('two pieces at once are heard as one after the other', async () => {
  const parts = [talk.slice(0, 5 * RATE), talk.slice(4 * RATE, 10 * RATE)];
  const hear = (sound: Float32Array) => model.hear(sound, ({ ids, chances }) => ({ ids, chances }));
  const alone = [];
  for (const part of parts) alone.push(await hear(part));
  expect(await Promise.all(parts.map(hear))).toEqual(alone);
});

test('a file without the switch is none of this model', () => {
  expect(() => splitDecoder(emptyOnnx({}))).toThrow('the decoder has no else_branch');
  expect(() => splitDecoder(Buffer.from('not a model'))).toThrow('the decoder has no else_branch');
});
