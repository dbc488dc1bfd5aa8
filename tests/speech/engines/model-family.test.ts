import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { familyOf, filesOf, isFault } from '../../../src/speech/engines/model-family.ts';
import { onnxOutline } from '../../../src/speech/engines/onnx-outline.ts';
import { emptyOnnx, scriptedCtc } from '../../kit/onnx-file.ts';

let home: string;
beforeAll(() => {
  home = mkdtempSync(join(tmpdir(), 'hearwright-models-'));
});
afterAll(() => rmSync(home, { recursive: true, force: true }));

type Metadata = Readonly<Record<string, string>>;

/** A folder of these files; the metadata stands in every .onnx file. */
function folderOf(name: string, files: readonly string[], metadata: Metadata = {}): string {
  const folder = join(home, name);
  mkdirSync(folder);
  for (const file of files)
    writeFileSync(join(folder, file), /\.onnx$/.test(file) ? emptyOnnx(metadata) : 'a 0\n');
  return folder;
}

// Names as the runtime's own documentation of published models gives them, from memory.
test.each([
  [
    'Moonshine',
    [
      'preprocess.onnx',
      'encode.int8.onnx',
      'uncached_decode.int8.onnx',
      'cached_decode.int8.onnx',
      'tokens.txt',
    ],
    {},
    {
      moonshine: [
        'preprocess.onnx',
        'encode.int8.onnx',
        'uncached_decode.int8.onnx',
        'cached_decode.int8.onnx',
      ],
    },
  ],
  [
    'Moonshine',
    ['encoder_model.onnx', 'decoder_model_merged.onnx', 'tokens.txt'],
    {},
    { moonshine: ['encoder_model.onnx', 'decoder_model_merged.onnx'] },
  ],
  [
    'Whisper',
    [
      'base.en-encoder.int8.onnx',
      'base.en-decoder.int8.onnx',
      'base.en-encoder.onnx',
      'base.en-decoder.onnx',
      'base.en-tokens.txt',
    ],
    { model_type: 'whisper-base.en', n_mels: '80' },
    { whisper: ['base.en-encoder.int8.onnx', 'base.en-decoder.int8.onnx'] },
  ],
  [
    'NeMo transducer',
    ['encoder.int8.onnx', 'decoder.int8.onnx', 'joiner.int8.onnx', 'tokens.txt'],
    { model_type: 'EncDecRNNTBPEModel' },
    {
      transducer: ['encoder.int8.onnx', 'decoder.int8.onnx', 'joiner.int8.onnx'],
      modelType: 'nemo_transducer',
    },
  ],
  [
    'Zipformer transducer',
    [
      'encoder-epoch-99-avg-1.onnx',
      'decoder-epoch-99-avg-1.onnx',
      'joiner-epoch-99-avg-1.onnx',
      'tokens.txt',
      'bpe.model',
    ],
    { model_type: 'zipformer2' },
    {
      transducer: [
        'encoder-epoch-99-avg-1.onnx',
        'decoder-epoch-99-avg-1.onnx',
        'joiner-epoch-99-avg-1.onnx',
      ],
      modelType: 'transducer',
    },
  ],
  [
    'NeMo Canary',
    ['encoder.int8.onnx', 'decoder.int8.onnx', 'tokens.txt'],
    { model_type: 'EncDecMultiTaskModel' },
    { canary: ['encoder.int8.onnx', 'decoder.int8.onnx'] },
  ],
  [
    'SenseVoice',
    ['model.int8.onnx', 'model.onnx', 'tokens.txt'],
    { model_type: 'sense_voice_ctc' },
    { senseVoice: ['model.int8.onnx'] },
  ],
  [
    'Paraformer',
    ['model.onnx', 'tokens.txt', 'am.mvn'],
    { model_type: 'paraformer' },
    { paraformer: ['model.onnx'] },
  ],
  [
    'NeMo CTC',
    ['model.int8.onnx', 'tokens.txt'],
    { model_type: 'EncDecHybridRNNTCTCBPEModel' },
    { nemoCtc: ['model.int8.onnx'] },
  ],
  [
    'Zipformer CTC',
    ['ctc-epoch-30.onnx', 'tokens.txt'],
    { model_type: 'zipformer2_ctc' },
    { zipformerCtc: ['ctc-epoch-30.onnx'] },
  ],
  ['WeNet CTC', ['model.onnx', 'tokens.txt'], { model_type: 'wenet_ctc' }, { wenetCtc: ['model.onnx'] }],
] as const)('%s is told by %j', async (family, files, metadata, expected) => {
  const folder = folderOf(`${family}-${files.length}-${files[0]}`, files, metadata);
  const found = await familyOf(folder);
  if (isFault(found)) throw new Error(found.reason);
  expect(found.family).toBe(family);
  const said = Object.fromEntries(
    Object.keys(expected).map((key) => {
      const part = found.model[key as keyof typeof found.model];
      const names =
        typeof part === 'object' ? Object.values(part).filter((one) => /onnx$/.test(String(one))) : part;
      return [key, Array.isArray(names) ? names.map((one) => basename(String(one))) : names];
    }),
  );
  expect(said).toEqual(expected);
  expect(filesOf(found.model)).toContain(found.model.tokens);
});

test.each([
  ['nothing at all', [], {}, 'it holds no .onnx files'],
  ['no tokens', ['model.onnx'], { model_type: 'paraformer' }, 'it lacks its list of tokens, tokens.txt'],
  ['no decoder', ['encoder.onnx', 'tokens.txt'], {}, 'it lacks the decoder beside the encoder'],
  ['no encoder', ['decoder.onnx', 'joiner.onnx', 'tokens.txt'], {}, 'of a transducer it lacks the encoder'],
  [
    'half a Moonshine',
    ['preprocess.onnx', 'encode.onnx', 'tokens.txt'],
    {},
    'of a Moonshine model it lacks a preprocess, encode or decode file',
  ],
  [
    'a model for streams',
    ['encoder.onnx', 'decoder.onnx', 'joiner.onnx', 'tokens.txt'],
    { model_type: 'zipformer2', decode_chunk_len: '32' },
    'the model is made for streams; its edition for whole recordings is needed',
  ],
  [
    'a voice, no ears',
    ['model.onnx', 'tokens.txt'],
    { model_type: 'vits' },
    'it is a "vits", which is not known here',
  ],
  [
    'no word of itself',
    ['model.onnx', 'tokens.txt'],
    {},
    'it does not say which model it is, which is not known here',
  ],
  [
    'two models',
    ['one.onnx', 'two.onnx', 'tokens.txt'],
    {},
    'it holds several models; put each into a folder of its own',
  ],
] as const)('a folder with %s is refused', async (name, files, metadata, reason) => {
  expect(await familyOf(folderOf(name, files, metadata))).toMatchObject({ reason });
});

test('a model that was cut off is refused before the runtime sees it, wherever the cut is', async () => {
  const whole = scriptedCtc(3);
  const folder = join(home, 'cut');
  mkdirSync(folder);
  writeFileSync(join(folder, 'tokens.txt'), 'a 0\n');
  for (const bytes of [0, 1, 9, 40, 1000, whole.length - 200, whole.length - 1]) {
    writeFileSync(join(folder, 'model.onnx'), whole.subarray(0, bytes));
    expect(await familyOf(folder), `${bytes} bytes`).toMatchObject({ code: 'model-damaged' });
  }
  writeFileSync(join(folder, 'model.onnx'), whole);
  expect(await familyOf(folder)).toMatchObject({ family: 'Zipformer CTC' });
});

test('other files are no ONNX models', async () => {
  for (const bytes of ['', 'a letter to the yard', '\u0089PNG\r\n\u001a\n', '{"model": true}']) {
    const path = join(home, 'other.bin');
    writeFileSync(path, bytes, 'latin1');
    expect(await onnxOutline(path)).toBeUndefined();
  }
});

test('the bundled files are seen as what they are', async () => {
  const outline = await onnxOutline('models/moonshine-tiny-encoder.onnx');
  expect(outline).toBeDefined();
});
