/**
 * Moonshine (Jeffries and others 2024) as a model of chances: what it hears in a piece of sound, and how likely it holds
 * other words in a place of that. Encoder and decoder as exported for caching keys and values of what was said before.
 */
import { readFileSync } from 'node:fs';
import type { OnnxRuntime, Session, Tensor } from './onnx-runtime.ts';
import { type SplitDecoder, splitDecoder } from './split-decoder.ts';

/** Shape of the tiny model. */
const LAYERS = 6;
const HEADS = 8;
const HEAD_SIZE = 36;
const WIDTH = HEADS * HEAD_SIZE;
/** Pieces of words that it knows. */
const PIECES = 32_768;
const BEGIN = 1;
const END = 2;
/** The model was trained on no faster speech; what is written faster is a loop. */
const PIECES_PER_SECOND = 6;
const SAMPLES_PER_SECOND = 16_000;
/** There is room for the scores of so many pieces at once. */
const ROOM = 20;
/** So many pieces after other words show whether the sound goes on from there. */
const GOES_ON = 3;

/** Keys and values of what was said, as the steps take them in and give them back. */
const SAID = Array.from({ length: LAYERS }, (_, layer) => layer).flatMap((layer) =>
  ['key', 'value'].map((what) => `past_key_values.${layer}.decoder.${what}`),
);
const present = (name: string) => name.replace('past_key_values', 'present');

/** What was heard, piece by piece. */
export interface HeardPieces {
  readonly ids: readonly number[];
  /** Natural logarithm of the chance of each piece. */
  readonly chances: readonly number[];
}

/** Pieces `from` to `to` (end exclusive) of what was heard, read as others. */
export interface OtherPieces {
  readonly from: number;
  readonly to: number;
  readonly ids: readonly number[];
}

/** Keys and values of what was said and heard, by name. */
type Past = Map<string, Tensor>;

/** What the scores of one piece of sound are written on. */
interface Sheet {
  /** Those of each step, as they are kept. */
  readonly kept: Int16Array;
  /** Those that were just worked out. */
  readonly room: Float32Array;
}

/** One way of telling how likely pieces are: with the sound, or by the habit of talk alone. */
interface Telling {
  /** Logarithms of the chances of what was heard. */
  readonly heard: readonly number[];
  /** The same of other pieces in its place. */
  chancesOf(other: OtherPieces): Promise<readonly number[]>;
}

export class MoonshineModel {
  readonly #runtime: OnnxRuntime;
  readonly #encoder: Session;
  readonly #keys: Session;
  readonly #steps: Session;
  readonly #heard: SplitDecoder['heard'];
  /** Sheets of scores that lie free: pieces of memory this large are better kept than made anew. */
  readonly #sheets: Sheet[] = [];

  /** `encoder` and `decoder` are files. Throws where one cannot be loaded. */
  constructor(runtime: OnnxRuntime, encoder: string, decoder: string, threads: number) {
    this.#runtime = runtime;
    this.#encoder = runtime.session(readFileSync(encoder), threads);
    const { keys, steps, heard } = splitDecoder(readFileSync(decoder));
    this.#heard = heard;
    this.#keys = runtime.session(keys, threads);
    this.#steps = runtime.session(steps, threads);
  }

  /**
   * Hears a piece of sound and hands what was heard to `look`, which may weigh other pieces against it. Samples at
   * 16 kHz, one channel. Several pieces may be heard at once.
   */
  async hear<T>(
    samples: Float32Array,
    look: (heard: HeardPieces, weighed: Weighing) => T | Promise<T>,
  ): Promise<T> {
    const hidden = await this.#encode(samples);
    const past = await this.#pastOf(hidden);
    const pasts = [past];
    const rows: KeptRow[] = [];
    const heard = { ids: [] as number[], chances: [] as number[] };
    const most = Math.floor((samples.length / SAMPLES_PER_SECOND) * PIECES_PER_SECOND);
    const sheet = this.#sheetFor(most + 1);
    const { room } = sheet;
    try {
      for (let last = BEGIN; heard.ids.length <= most; ) {
        await this.#take([last], past, scoresIn(room, 0));
        const row = new Row(scoresIn(room, 0));
        last = row.likeliest;
        if (last === END) break;
        rows.push(row.keepIn(sheet.kept.subarray(rows.length * PIECES, (rows.length + 1) * PIECES)));
        heard.ids.push(last);
        heard.chances.push(row.chanceOf(last));
      }
      const chancesOf = (other: OtherPieces) => this.#follow(other, heard, past, room);
      const byHabit = async (): Promise<Telling> => {
        const mean = await this.#pastOf(meanOf(hidden));
        pasts.push(mean);
        return {
          heard: await this.#chancesOf(heard.ids, BEGIN, mean, room),
          chancesOf: (other) => this.#follow(other, heard, mean, room),
        };
      };
      return await look(heard, new Weighing(heard, rows, { heard: heard.chances, chancesOf }, byHabit));
    } finally {
      this.#runtime.release(pasts.flatMap((one) => [...one.values()]));
      this.#sheets.push(sheet);
    }
  }

  /** Room for the scores of so many steps: a sheet that no other piece is written on. */
  #sheetFor(steps: number): Sheet {
    const free = this.#sheets.pop();
    if (free && free.kept.length >= steps * PIECES) return free;
    return { kept: new Int16Array(steps * PIECES), room: new Float32Array(ROOM * PIECES) };
  }

  /** What the encoder makes of the sound: a row of numbers for each of its moments. */
  async #encode(samples: Float32Array): Promise<Float32Array> {
    const sound = this.#runtime.tensor(samples, [1, samples.length]);
    const [hidden] = (await this.#encoder.run({ input_values: sound }, ['last_hidden_state'])) as [Tensor];
    const rows = this.#runtime.floats(hidden).slice();
    this.#runtime.release([sound, hidden]);
    return rows;
  }

  /** Keys and values of the sound, and of nothing said. */
  async #pastOf(hidden: Float32Array): Promise<Past> {
    const given = this.#runtime.tensor(hidden, [1, hidden.length / WIDTH, WIDTH]);
    const names = this.#heard.map((one) => one.given);
    const keys = await this.#keys.run({ encoder_hidden_states: given }, names);
    this.#runtime.release([given]);
    const past: Past = new Map(this.#heard.map(({ taken }, k) => [taken, keys[k] as Tensor]));
    for (const name of SAID)
      past.set(name, this.#runtime.tensor(new Float32Array(0), [1, HEADS, 0, HEAD_SIZE]));
    return past;
  }

  /**
   * Takes pieces as said after the piece `before`, some at a time, and keeps the past; gives back the logarithms of their
   * chances.
   */
  async #chancesOf(
    ids: readonly number[],
    before: number,
    past: Past,
    room: Float32Array,
  ): Promise<readonly number[]> {
    const chances: number[] = [];
    for (let from = 0; from < ids.length; from += ROOM) {
      const part = ids.slice(from, from + ROOM);
      const given = [ids[from - 1] ?? before, ...part.slice(0, -1)];
      await this.#take(given, past, room.subarray(0, part.length * PIECES));
      chances.push(...part.map((id, k) => new Row(scoresIn(room, k)).chanceOf(id)));
    }
    return chances;
  }

  /** Logarithms of the chances of pieces that follow what was heard up to a place. */
  async #follow(
    { from, ids }: OtherPieces,
    heard: HeardPieces,
    past: Past,
    room: Float32Array,
  ): Promise<readonly number[]> {
    // What the model takes in begins with the mark of the beginning: before piece `from` it took in `from` pieces.
    const cut: Past = new Map(past);
    for (const name of SAID) {
      const whole = this.#runtime.floats(past.get(name) as Tensor);
      cut.set(name, this.#runtime.tensor(firstOf(whole, from), [1, HEADS, from, HEAD_SIZE]));
    }
    try {
      return await this.#chancesOf(ids, heard.ids[from - 1] ?? BEGIN, cut, room);
    } finally {
      this.#runtime.release(SAID.map((name) => cut.get(name) as Tensor));
    }
  }

  /** Takes more pieces: writes a row of scores behind each of them, and keeps the past. */
  async #take(ids: readonly number[], past: Past, scores: Float32Array): Promise<void> {
    const given = this.#runtime.tensor(BigInt64Array.from(ids, BigInt), [1, ids.length]);
    const written = this.#runtime.tensor(scores, [1, ids.length, PIECES]);
    const inputs = { input_ids: given, ...Object.fromEntries(past) };
    const gone = [given, written];
    try {
      const grown = await this.#steps.run(inputs, ['logits', ...SAID.map(present)], [written]);
      SAID.forEach((name, k) => {
        gone.push(past.get(name) as Tensor);
        past.set(name, grown[k] as Tensor);
      });
    } finally {
      this.#runtime.release(gone);
    }
  }
}

const scoresIn = (sheet: Float32Array, step: number): Float32Array =>
  sheet.subarray(step * PIECES, (step + 1) * PIECES);

/** The mean of all moments: a sound in which there is no word. */
function meanOf(hidden: Float32Array): Float32Array {
  const mean = new Float32Array(WIDTH);
  for (let k = 0; k < hidden.length; k++)
    mean[k % WIDTH] = (mean[k % WIDTH] as number) + (hidden[k] as number);
  return mean.map((sum) => sum / (hidden.length / WIDTH));
}

/** Weighs other pieces against those that were heard. */
export class Weighing {
  readonly #heard: HeardPieces;
  readonly #rows: readonly KeptRow[];
  readonly #bySound: Telling;
  readonly #byHabit: () => Promise<Telling>;
  #habit: Promise<Telling> | undefined;

  constructor(
    heard: HeardPieces,
    rows: readonly KeptRow[],
    bySound: Telling,
    byHabit: () => Promise<Telling>,
  ) {
    this.#heard = heard;
    this.#rows = rows;
    this.#bySound = bySound;
    this.#byHabit = byHabit;
  }

  /** Logarithm of the chance of heard pieces. */
  chanceOf(from: number, to: number): number {
    return sumOf(this.#heard.chances.slice(from, to));
  }

  /** Logarithm of the chance of a piece in place of a heard one. */
  chanceAt(place: number, id: number): number {
    return this.#rows[place]?.chanceOf(id) ?? Number.NEGATIVE_INFINITY;
  }

  /** What the odds of other pieces are at most: from what was worked out while hearing, at no cost. */
  atMost({ from, to, ids }: OtherPieces): number {
    let sum = 0;
    for (let k = 0; k < ids.length && from + k < this.#rows.length; k++) {
      sum += (this.#rows[from + k] as KeptRow).chanceOf(ids[k] as number);
      if (ids[k] !== this.#heard.ids[from + k]) break;
    }
    return sum - this.chanceOf(from, Math.min(this.#heard.ids.length, to + GOES_ON));
  }

  /** Logarithm of the odds of other pieces against those that were heard, with what follows on both. */
  oddsOf(other: OtherPieces): Promise<number> {
    return this.#oddsBy(this.#bySound, other);
  }

  /**
   * The same without the sound, by the model's habit of talk: what it held for likely only because it is often said
   * (Meng and others 2021, "Internal language model estimation"; here the sound is told as its own mean).
   */
  async habitOf(other: OtherPieces): Promise<number> {
    this.#habit ??= this.#byHabit();
    return this.#oddsBy(await this.#habit, other);
  }

  async #oddsBy(telling: Telling, { from, to, ids }: OtherPieces): Promise<number> {
    const goesOn = Math.min(this.#heard.ids.length, to + GOES_ON);
    const after = this.#heard.ids.slice(to, goesOn);
    const others = await telling.chancesOf({ from, to, ids: [...ids, ...after] });
    return sumOf(others) - sumOf(telling.heard.slice(from, goesOn));
  }
}

const sumOf = (chances: readonly number[]) => chances.reduce((sum, chance) => sum + chance, 0);

/** The first places of keys or values, for each head. */
function firstOf(all: Float32Array, places: number): Float32Array {
  const perHead = all.length / HEADS;
  const part = new Float32Array(HEADS * places * HEAD_SIZE);
  for (let head = 0; head < HEADS; head++)
    part.set(all.subarray(head * perHead, head * perHead + places * HEAD_SIZE), head * places * HEAD_SIZE);
  return part;
}

/** What may come next: a score for each piece. */
class Row {
  readonly likeliest: number;
  readonly #scores: Float32Array;
  /** Logarithm of the sum of all exponentials. */
  readonly #whole: number;

  constructor(scores: Float32Array) {
    let [best, greatest] = [0, Number.NEGATIVE_INFINITY];
    for (let id = 0; id < scores.length; id++) {
      const score = scores[id] as number;
      if (score > greatest) [best, greatest] = [id, score];
    }
    let sum = 0;
    for (let id = 0; id < scores.length; id++) {
      const behind = (scores[id] as number) - greatest;
      // Less adds nothing that counts.
      if (behind > -15) sum += Math.exp(behind);
    }
    this.#scores = scores;
    this.likeliest = best;
    this.#whole = greatest + Math.log(sum);
  }

  /** Natural logarithm of the chance of a piece. */
  chanceOf(id: number): number {
    return (this.#scores[id] as number) - this.#whole;
  }

  /** Writes it down in half the room. */
  keepIn(thousandths: Int16Array): KeptRow {
    for (let id = 0; id < thousandths.length; id++)
      thousandths[id] = Math.max(LEAST_KEPT, 1000 * ((this.#scores[id] as number) - this.#whole));
    return new KeptRow(thousandths);
  }
}

/** What is less likely than one in ten to the fourteenth is kept as that. */
const LEAST_KEPT = -32_767;

/** The same, kept: logarithms of chances in thousandths. */
class KeptRow {
  readonly #thousandths: Int16Array;

  constructor(thousandths: Int16Array) {
    this.#thousandths = thousandths;
  }

  chanceOf(id: number): number {
    return (this.#thousandths[id] as number) / 1000;
  }
}
