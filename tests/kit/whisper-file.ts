/**
 * Writes a Whisper model in ggml form without any trained weights. Attention is zero; the decoder's first inner layer maps
 * each word of a text to the next one, so that the model says this text in every window, whatever it hears: loading, mel
 * spectrum, encoder, decoder, sampling, times and output run for real. Sources: the loader of whisper.cpp 1.5.0
 * (`whisper_model_load`) for the form of the file; tensor names as there; mel filters as triangles on the mel scale, from
 * memory.
 */

const STATE = 64;
const LAYERS = 4;
/** Fewer than two crash old programs. */
const HEADS = 2;
const VOCABULARY = 51_864;
const AUDIO_CONTEXT = 1500;
const TEXT_CONTEXT = 448;
const MELS = 80;
const SPECTRUM = 201;
/** Tokens of the English models: end and beginning of a transcript, no timestamps, first timestamp. */
const [END_OF_TEXT, START, NO_TIMES, FIRST_TIME] = [50_256, 50_257, 50_362, 50_363];
const MAGIC = 0x67676d6c;
const [FLOAT, HALF] = [0, 1];

/** Each word of `text` must stand in it once only. `endSeconds` is the time that the model gives for its end. */
export function scriptedWhisper(text: string, endSeconds = 4): Uint8Array {
  const words = text.split(' ').map((word) => ` ${word}`);
  if (new Set(words).size !== words.length) throw new Error('each word may stand in the text once only');
  const parts: Uint8Array[] = [];
  const int32 = (...values: readonly number[]) => parts.push(new Uint8Array(Int32Array.from(values).buffer));
  int32(
    MAGIC,
    VOCABULARY,
    AUDIO_CONTEXT,
    STATE,
    HEADS,
    LAYERS,
    TEXT_CONTEXT,
    STATE,
    HEADS,
    LAYERS,
    MELS,
    HALF,
  );
  int32(MELS, SPECTRUM);
  parts.push(new Uint8Array(melFilters().buffer));
  const tokens = [
    ...Array.from({ length: 256 }, (_, byte) => Buffer.from([byte])),
    ...words.map((word) => Buffer.from(word)),
  ];
  int32(tokens.length);
  for (const token of tokens) {
    int32(token.length);
    parts.push(token);
  }
  const tensor = (name: string, dims: readonly number[], type: number, fill: (at: number) => number) => {
    const bytes = Buffer.from(name);
    const length = dims.reduce((product, dim) => product * dim, 1);
    int32(dims.length, bytes.length, type, ...[...dims].reverse());
    parts.push(bytes);
    const values = Float32Array.from({ length }, (_, at) => fill(at));
    parts.push(new Uint8Array(type === FLOAT ? values.buffer : Uint16Array.from(values, half).buffer));
  };
  writeLayers(tensor, chainOf(words.length, endSeconds));
  return Buffer.concat(parts);
}

type Tensor = (name: string, dims: readonly number[], type: number, fill: (at: number) => number) => void;

/** From which token to which one the model goes. */
function chainOf(words: number, endSeconds: number): readonly (readonly [number, number])[] {
  const said = Array.from({ length: words }, (_, at) => 256 + at);
  const end = FIRST_TIME + Math.round(endSeconds * 50);
  const first = said[0] ?? end;
  return [
    [START, FIRST_TIME],
    [FIRST_TIME, first],
    [NO_TIMES, first],
    ...said.map((token, at) => [token, said[at + 1] ?? end] as const),
    [end, END_OF_TEXT],
  ];
}

function writeLayers(tensor: Tensor, chain: readonly (readonly [number, number])[]): void {
  if (chain.length > 4 * STATE) throw new Error('the text is too long');
  const directions = directionsOf(new Set(chain.flat()));
  const towards = (token: number, at: number) => directions.get(token)?.[at] ?? 0;
  const nothing = () => 0;
  const linear = (name: string, out: number, into: number, hasBias = true) => {
    tensor(`${name}.weight`, [out, into], HALF, nothing);
    if (hasBias) tensor(`${name}.bias`, [out], FLOAT, nothing);
  };
  const norm = (name: string) => {
    tensor(`${name}.weight`, [STATE], FLOAT, () => 1);
    tensor(`${name}.bias`, [STATE], FLOAT, nothing);
  };
  const attention = (name: string) => {
    linear(`${name}.query`, STATE, STATE);
    linear(`${name}.key`, STATE, STATE, false);
    linear(`${name}.value`, STATE, STATE);
    linear(`${name}.out`, STATE, STATE);
  };
  // One unit for each step of the chain: it wakes at its token and points to the next one.
  const [gain, threshold, step] = [4, 0.7 * Math.sqrt(STATE), 5];
  const speaking = (name: string) => {
    tensor(`${name}.mlp.0.weight`, [4 * STATE, STATE], HALF, (at) => {
      const from = chain[Math.floor(at / STATE)]?.[0];
      return from === undefined ? 0 : gain * towards(from, at % STATE);
    });
    tensor(`${name}.mlp.0.bias`, [4 * STATE], FLOAT, (at) => (at < chain.length ? -gain * threshold : 0));
    tensor(`${name}.mlp.2.weight`, [STATE, 4 * STATE], HALF, (at) => {
      const to = chain[at % (4 * STATE)]?.[1];
      return to === undefined ? 0 : step * towards(to, Math.floor(at / (4 * STATE)));
    });
    tensor(`${name}.mlp.2.bias`, [STATE], FLOAT, nothing);
  };
  const block = (name: string, isDecoder: boolean, speaks: boolean) => {
    norm(`${name}.attn_ln`);
    attention(`${name}.attn`);
    if (isDecoder) {
      norm(`${name}.cross_attn_ln`);
      attention(`${name}.cross_attn`);
    }
    norm(`${name}.mlp_ln`);
    if (speaks) return speaking(name);
    linear(`${name}.mlp.0`, 4 * STATE, STATE);
    linear(`${name}.mlp.2`, STATE, 4 * STATE);
  };
  tensor('encoder.positional_embedding', [AUDIO_CONTEXT, STATE], FLOAT, nothing);
  tensor('encoder.conv1.weight', [STATE, MELS, 3], HALF, nothing);
  tensor('encoder.conv1.bias', [STATE, 1], FLOAT, nothing);
  tensor('encoder.conv2.weight', [STATE, STATE, 3], HALF, nothing);
  tensor('encoder.conv2.bias', [STATE, 1], FLOAT, nothing);
  for (let layer = 0; layer < LAYERS; layer++) block(`encoder.blocks.${layer}`, false, false);
  norm('encoder.ln_post');
  tensor('decoder.positional_embedding', [TEXT_CONTEXT, STATE], FLOAT, nothing);
  tensor(
    'decoder.token_embedding.weight',
    [VOCABULARY, STATE],
    HALF,
    (at) => 4 * towards(Math.floor(at / STATE), at % STATE),
  );
  for (let layer = 0; layer < LAYERS; layer++) block(`decoder.blocks.${layer}`, true, layer === 0);
  norm('decoder.ln');
}

/** A direction of its own for each token: random, without mean, of length 1. */
function directionsOf(tokens: ReadonlySet<number>): ReadonlyMap<number, readonly number[]> {
  let seed = 1;
  const uniform = () => {
    seed = (Math.imul(seed, 1_664_525) + 1_013_904_223) >>> 0;
    return seed / 2 ** 32;
  };
  const normal = () => Math.sqrt(-2 * Math.log(uniform() + 1e-12)) * Math.cos(2 * Math.PI * uniform());
  const directions = new Map<number, readonly number[]>();
  for (const token of tokens) {
    const values = Array.from({ length: STATE }, normal);
    const mean = values.reduce((sum, value) => sum + value, 0) / STATE;
    const length = Math.hypot(...values.map((value) => value - mean));
    directions.set(
      token,
      values.map((value) => (value - mean) / length),
    );
  }
  return directions;
}

function melFilters(): Float32Array {
  const mel = (hertz: number) => 2595 * Math.log10(1 + hertz / 700);
  const hertz = (mels: number) => 700 * (10 ** (mels / 2595) - 1);
  const borders = Array.from({ length: MELS + 2 }, (_, at) => hertz((mel(8000) * at) / (MELS + 1)));
  const filters = new Float32Array(MELS * SPECTRUM);
  for (let filter = 0; filter < MELS; filter++) {
    const [low = 0, peak = 0, high = 0] = borders.slice(filter, filter + 3);
    for (let bin = 0; bin < SPECTRUM; bin++) {
      const height = Math.min((40 * bin - low) / (peak - low), (high - 40 * bin) / (high - peak));
      filters[filter * SPECTRUM + bin] = (Math.max(0, height) * 2) / (high - low);
    }
  }
  return filters;
}

const single = new Float32Array(1);
const bits = new Uint32Array(single.buffer);

/** A number as a 16-bit float of IEEE 754; too small ones become 0. */
function half(value: number): number {
  single[0] = value;
  const [word = 0] = bits;
  const sign = (word >>> 16) & 0x80_00;
  const exponent = ((word >>> 23) & 255) - 112;
  if (exponent <= 0) return sign;
  return exponent >= 31 ? sign | 0x7c_00 : sign | (exponent << 10) | ((word >>> 13) & 0x3_ff);
}
