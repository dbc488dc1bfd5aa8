/**
 * Moonshine (Jeffries and others 2024) as a model of chances: what it hears in a piece of sound, and how likely it holds
 * other words in a place of that. Encoder and decoder as exported for caching keys and values of what was said before.
 */
import type { OnnxRuntime, Session, Tensor } from './onnx-runtime.ts';

/** Shape of the tiny model. */
const LAYERS = 6;
const HEADS = 8;
const HEAD_SIZE = 36;
const BEGIN = 1;
const END = 2;
/** The model was trained on no faster speech; what is written faster is a loop. */
const PIECES_PER_SECOND = 6;
const SAMPLES_PER_SECOND = 16_000;
/** So many pieces after other words show whether the sound goes on from there. */
const GOES_ON = 3;

const NAMES = Array.from({ length: LAYERS }, (_, layer) => layer).flatMap((layer) =>
  ['decoder', 'encoder'].flatMap((side) => ['key', 'value'].map((what) => `${layer}.${side}.${what}`)),
);
const OF_SPEECH = (name: string) => name.includes('encoder');
/** What was said grows with each step; what was heard stays as the first step worked it out. */
const GROWING = NAMES.filter((name) => !OF_SPEECH(name));

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

export class MoonshineModel {
  readonly #runtime: OnnxRuntime;
  readonly #encoder: Session;
  readonly #decoder: Session;

  constructor(runtime: OnnxRuntime, encoder: string, decoder: string, threads: number) {
    this.#runtime = runtime;
    this.#encoder = runtime.session(encoder, threads);
    this.#decoder = runtime.session(decoder, threads);
  }

  /**
   * Hears a piece of sound and hands what was heard to `look`, which may weigh other pieces against it. Samples at
   * 16 kHz, one channel.
   */
  async hear<T>(samples: Float32Array, look: (heard: HeardPieces, weighed: Weighing) => T): Promise<T> {
    const sound = this.#runtime.tensor(samples, [1, samples.length]);
    const [hidden] = this.#encoder.run({ input_values: sound }, ['last_hidden_state']) as [Tensor];
    this.#runtime.release([sound]);
    const past = emptyPast(this.#runtime);
    const rows: Row[] = [];
    const heard = { ids: [] as number[], chances: [] as number[] };
    try {
      const most = Math.floor((samples.length / SAMPLES_PER_SECOND) * PIECES_PER_SECOND);
      for (let last = BEGIN; heard.ids.length <= most; ) {
        const row = this.#step(last, hidden, past, heard.ids.length > 0);
        last = row.likeliest;
        if (last === END) break;
        rows.push(row);
        heard.ids.push(last);
        heard.chances.push(row.chanceOf(last));
        await later(heard.ids.length);
      }
      return look(heard, new Weighing(heard, rows, (other) => this.#follow(other, heard, hidden, past)));
    } finally {
      this.#runtime.release([hidden, ...past.values()]);
    }
  }

  /** Takes one more piece; gives back what may come next, and keeps the past. */
  #step(id: number, hidden: Tensor, past: Past, hasPast: boolean): Row {
    const names = hasPast ? GROWING : NAMES;
    const [logits, ...present] = this.#run([id], hidden, past, hasPast, names) as [Tensor, ...Tensor[]];
    const row = new Row(this.#runtime.floats(logits).slice());
    const gone: Tensor[] = [logits];
    names.forEach((name, k) => {
      gone.push(past.get(name) as Tensor);
      past.set(name, present[k] as Tensor);
    });
    this.#runtime.release(gone);
    return row;
  }

  /** Runs the decoder; gives back the scores and the keys and values of these names. */
  #run(
    ids: readonly number[],
    hidden: Tensor,
    past: Past,
    hasPast: boolean,
    names: readonly string[] = [],
  ): readonly Tensor[] {
    const given = [
      this.#runtime.tensor(BigInt64Array.from(ids, BigInt), [1, ids.length]),
      this.#runtime.tensor(Uint8Array.of(hasPast ? 1 : 0), [1]),
    ] as const;
    const named = NAMES.map((name) => [`past_key_values.${name}`, past.get(name) as Tensor] as const);
    const inputs = {
      input_ids: given[0],
      encoder_hidden_states: hidden,
      ...Object.fromEntries(named),
      use_cache_branch: given[1],
    };
    const results = this.#decoder.run(inputs, ['logits', ...names.map((name) => `present.${name}`)]);
    this.#runtime.release(given);
    return results;
  }

  /** Logarithms of the chances of pieces that follow what was heard up to a place. */
  #follow({ from, ids }: OtherPieces, heard: HeardPieces, hidden: Tensor, past: Past): readonly number[] {
    // What the model takes in begins with the mark of the beginning: before piece `from` it took in `from` pieces.
    const cut = new Map<string, Tensor>();
    const lent: Tensor[] = [];
    for (const name of NAMES) {
      const whole = past.get(name) as Tensor;
      if (OF_SPEECH(name)) cut.set(name, whole);
      else {
        const part = this.#runtime.tensor(firstOf(this.#runtime.floats(whole), from), [
          1,
          HEADS,
          from,
          HEAD_SIZE,
        ]);
        lent.push(part);
        cut.set(name, part);
      }
    }
    const before = from === 0 ? BEGIN : (heard.ids[from - 1] as number);
    const results = this.#run([before, ...ids.slice(0, -1)], hidden, cut, from > 0);
    const scores = this.#runtime.floats(results[0] as Tensor);
    const size = scores.length / ids.length;
    const chances = ids.map((id, k) => new Row(scores.subarray(k * size, (k + 1) * size)).chanceOf(id));
    this.#runtime.release([...results, ...lent]);
    return chances;
  }
}

/** Weighs other pieces against those that were heard. */
export class Weighing {
  readonly #heard: HeardPieces;
  readonly #rows: readonly Row[];
  readonly #follow: (other: OtherPieces) => readonly number[];

  constructor(heard: HeardPieces, rows: readonly Row[], follow: (other: OtherPieces) => readonly number[]) {
    this.#heard = heard;
    this.#rows = rows;
    this.#follow = follow;
  }

  /** Logarithm of the chance of heard pieces. */
  chanceOf(from: number, to: number): number {
    return this.#heard.chances.slice(from, to).reduce((sum, chance) => sum + chance, 0);
  }

  /** Logarithm of the chance of a piece in place of a heard one. */
  chanceAt(place: number, id: number): number {
    return this.#rows[place]?.chanceOf(id) ?? Number.NEGATIVE_INFINITY;
  }

  /** What the odds of other pieces are at most: from what was worked out while hearing, at no cost. */
  atMost({ from, to, ids }: OtherPieces): number {
    let sum = 0;
    for (let k = 0; k < ids.length && from + k < this.#rows.length; k++) {
      sum += (this.#rows[from + k] as Row).chanceOf(ids[k] as number);
      if (ids[k] !== this.#heard.ids[from + k]) break;
    }
    return sum - this.chanceOf(from, Math.min(this.#heard.ids.length, to + GOES_ON));
  }

  /** Logarithm of the odds of other pieces against those that were heard, with what follows on both. */
  oddsOf({ from, to, ids }: OtherPieces): number {
    const after = this.#heard.ids.slice(to, to + GOES_ON);
    const chances = this.#follow({ from, to, ids: [...ids, ...after] });
    return (
      chances.reduce((sum, chance) => sum + chance, 0) -
      this.chanceOf(from, Math.min(this.#heard.ids.length, to + GOES_ON))
    );
  }
}

function emptyPast(runtime: OnnxRuntime): Past {
  return new Map(
    NAMES.map((name) => [name, runtime.tensor(new Float32Array(0), [1, HEADS, 0, HEAD_SIZE])] as const),
  );
}

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
}

/** Lets the process see to its input now and then. */
const later = (count: number): Promise<void> | undefined =>
  count % 8 === 0 ? new Promise((done) => setImmediate(done)) : undefined;
