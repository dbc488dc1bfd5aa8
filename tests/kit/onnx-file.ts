/**
 * Writes small ONNX models without any trained weights. Source: ONNX's `onnx.proto` (field numbers) and the encoding of
 * Protocol Buffers.
 */

type Field = readonly [number: number, value: number | string | Uint8Array];

const FLOAT = 1;
const INT64 = 7;

function varint(value: number): number[] {
  const bytes: number[] = [];
  let left = value;
  for (; left > 127; left = Math.floor(left / 128)) bytes.push((left % 128) + 128);
  return [...bytes, left];
}

function message(...fields: readonly Field[]): Uint8Array {
  return Buffer.concat(
    fields.map(([number, value]) => {
      if (typeof value === 'number') return Buffer.from([...varint(number * 8), ...varint(value)]);
      const bytes = typeof value === 'string' ? Buffer.from(value) : value;
      return Buffer.concat([Buffer.from([...varint(number * 8 + 2), ...varint(bytes.length)]), bytes]);
    }),
  );
}

const model = (graph: Uint8Array, metadata: Readonly<Record<string, string>>): Uint8Array =>
  message(
    [1, 8],
    [2, 'hearwright tests'],
    [7, graph],
    [8, message([2, 13])],
    ...Object.entries(metadata).map(([key, value]): Field => [14, message([1, key], [2, value])]),
  );

/** A model with metadata and an empty graph: it can be looked at, not run. */
export function emptyOnnx(metadata: Readonly<Record<string, string>>): Uint8Array {
  return model(message([2, 'nothing']), metadata);
}

/** Frames of a Zipformer CTC model count 40 ms each: four frames of 10 ms. */
const FRAMES = 700;
const FRAMES_PER_TOKEN = 10;

/**
 * A Zipformer CTC model that says the same tokens whatever it hears, one each 0.4 s, as far as the sound is long: loading,
 * features, decoding and times run for real. Token 0 is the blank.
 */
export function scriptedCtc(tokens: number): Uint8Array {
  const vocabulary = tokens + 1;
  const script = new Float32Array(FRAMES * vocabulary).fill(-20);
  for (let frame = 0; frame < FRAMES; frame++) {
    const says = frame / FRAMES_PER_TOKEN;
    script[frame * vocabulary + (Number.isInteger(says) && says <= tokens ? says : 0)] = 0;
  }
  const int64 = (value: number) => new Uint8Array(BigInt64Array.of(BigInt(value)).buffer);
  const tensor = (name: string, type: number, dims: readonly number[], raw: Uint8Array) =>
    message(...dims.map((dim): Field => [1, dim]), [2, type], [8, name], [9, raw]);
  const node = (op: string, inputs: readonly string[], output: string) =>
    message(...inputs.map((name): Field => [1, name]), [2, output], [3, output], [4, op]);
  const value = (name: string, type: number, dims: readonly (number | string)[]) => {
    const shape = dims.map((dim): Field => [1, message(typeof dim === 'number' ? [1, dim] : [2, dim])]);
    return message([1, name], [2, message([1, message([1, type], [2, message(...shape)])])]);
  };
  const graph = message(
    [1, node('Div', ['x_lens', 'four'], 'log_probs_len')],
    [1, node('Slice', ['script', 'zero', 'log_probs_len', 'one'], 'log_probs')],
    [2, 'scripted'],
    [5, tensor('four', INT64, [1], int64(4))],
    [5, tensor('zero', INT64, [1], int64(0))],
    [5, tensor('one', INT64, [1], int64(1))],
    [5, tensor('script', FLOAT, [1, FRAMES, vocabulary], new Uint8Array(script.buffer))],
    [11, value('x', FLOAT, ['N', 'T', 80])],
    [11, value('x_lens', INT64, ['N'])],
    [12, value('log_probs', FLOAT, ['N', 'F', vocabulary])],
    [12, value('log_probs_len', INT64, ['N'])],
  );
  return model(graph, { model_type: 'zipformer2_ctc' });
}

/** The list of tokens that goes with it. */
export function tokenList(tokens: readonly string[]): string {
  return ['<blk>', ...tokens].map((token, id) => `${token} ${id}\n`).join('');
}
