/** Hears a stream of samples: voice activity, pieces, words, times. Runs in the recogniser's own process. */
import type { Vad } from 'sherpa-onnx-node';
import type { Utterance } from '../../model/views.ts';
import { backgroundLevel, level, whyNoSpeech } from './evidence.ts';
import { type HeardPart, hearPiece, later } from './hear-piece.ts';
import { type HeardBefore, openHeardBefore } from './heard-before.ts';
import { InHand } from './in-hand.ts';
import type { RecogniserSetup } from './messages.ts';
import { loadMoonshine } from './moonshine/moonshine-recogniser.ts';
import { placeUtterances, withDoubts } from './place-utterances.ts';
import type { SoundRecogniser } from './recognised.ts';
import { SAMPLE_RATE } from './sample-rate.ts';
import { loadSherpaRecogniser } from './sherpa-recogniser.ts';
import { SoundWindow } from './sound-window.ts';
import { type Piece, type Stretch, StretchJoiner, spoken, within } from './stretches.ts';
import { whisperRecogniser } from './whisper-recogniser.ts';

export interface Heard {
  readonly utterances: readonly Utterance[];
  readonly dropped: readonly (Utterance & { readonly why: string })[];
}

/** What was understood of a piece; `early` where the same words come again in a longer piece. */
export type Understood = { readonly heard: Heard } | { readonly early: Heard };

const VAD_WINDOW = 512;
/** Voice activity cuts tight: the sound around a stretch still belongs to its words. */
const PAD = 0.2 * SAMPLE_RATE;
const LONGEST_GAP = 3 * SAMPLE_RATE;
/** Live, a pause of this length ends a stretch that is told early; longer stretches are told in parts. */
const LIVE_GAP = 0.35 * SAMPLE_RATE;
const LIVE_LONGEST = 10 * SAMPLE_RATE;
/** Speech is known as such only after a while: no pause is sure of the newest sound. */
const UNSURE = SAMPLE_RATE;
const LIVE_UNSURE = 0.35 * SAMPLE_RATE;
/** Sound kept for stretches that voice activity has not finished. */
const KEPT_BACK = 60 * SAMPLE_RATE;
const BACKGROUND_SPAN = 20 * SAMPLE_RATE;

export class Listener {
  readonly #load: () => Promise<SoundRecogniser>;
  #recogniser: SoundRecogniser | undefined;
  readonly #before: HeardBefore;
  readonly #vad: Vad;
  readonly #window = new SoundWindow();
  readonly #joiner: StretchJoiner;
  readonly #early: StretchJoiner | undefined;
  #rest = new Float32Array();
  #lastEnd: number | undefined;
  /** Pieces that are to be heard when nobody waits for the end of a stretch. */
  readonly #whole: Piece[] = [];
  readonly #inHand = new InHand<Heard>();
  /** The piece that was heard last: alone in a pause it comes early and again. */
  #last: { readonly piece: Piece; readonly heard: Heard } | undefined;

  private constructor(load: () => Promise<SoundRecogniser>, vad: Vad, setup: RecogniserSetup) {
    this.#load = load;
    this.#vad = vad;
    this.#before = openHeardBefore(setup);
    const longestPiece = setup.longestPieceSeconds * SAMPLE_RATE;
    this.#joiner = new StretchJoiner({ longestGap: LONGEST_GAP, longestPiece });
    if (setup.live) this.#early = new StretchJoiner({ longestGap: LIVE_GAP, longestPiece: LIVE_LONGEST });
  }

  /** True where what the recogniser used is freed by garbage collection only. */
  get leavesMemory(): boolean {
    return this.#recogniser?.leavesMemory === true;
  }

  /** Where the last talk ends, in samples; undefined while there was none. */
  get spokenUntil(): number | undefined {
    return this.#vad.isDetected() ? this.#window.end : this.#lastEnd;
  }

  /**
   * Loads the models. The files must have been checked: a damaged one ends the process. A live listener tells each
   * stretch as soon as it ends, and again when it is heard together with its neighbours.
   */
  static async load(setup: RecogniserSetup, loaded?: SoundRecogniser): Promise<Listener> {
    const { default: sherpa } = await import('sherpa-onnx-node');
    const vad = new sherpa.Vad(
      {
        sileroVad: {
          model: setup.voiceActivity,
          threshold: 0.5,
          minSilenceDuration: 0.25,
          minSpeechDuration: 0.25,
          maxSpeechDuration: 15,
          windowSize: VAD_WINDOW,
        },
        sampleRate: SAMPLE_RATE,
        numThreads: 1,
        provider: 'cpu',
        debug: 0,
      },
      60,
    );
    const listener = new Listener(async () => loaded ?? loadRecogniser(setup), vad, setup);
    // Whether a model that a person brought can be loaded shows at once.
    if (setup.recogniser.kind !== 'moonshine') await listener.#ready();
    // At the bench somebody waits for the first words; a file is done no sooner for it.
    if (setup.live) await (await listener.#ready()).warmUp?.();
    return listener;
  }

  /** The recogniser. The bundled one is loaded when the first talk comes: hours without any need none. */
  async #ready(): Promise<SoundRecogniser> {
    this.#recogniser ??= await this.#load();
    return this.#recogniser;
  }

  /** Takes the next samples and yields what was understood meanwhile. */
  async *accept(samples: Float32Array): AsyncGenerator<Understood> {
    this.#window.append(samples);
    const early: Piece[] = [];
    for (const frame of this.#frames(samples)) {
      this.#vad.acceptWaveform(frame);
      early.push(...this.#drain());
    }
    const isQuiet = !this.#vad.isDetected();
    if (isQuiet) {
      this.#whole.push(...this.#joiner.silentUntil(this.#window.end - UNSURE));
      early.push(...(this.#early?.silentUntil(this.#window.end - LIVE_UNSURE) ?? []));
    }
    // Hearing a long piece takes as long as somebody waits for a short one: it is done when that was just told, or in
    // a pause.
    const isWaitedFor = this.#early !== undefined && !(isQuiet && this.#early.openFrom === undefined);
    yield* this.#hearEarly(early);
    if (early.length > 0 || !isWaitedFor) yield* this.#hearWhole();
    const needed =
      this.#inHand.from ?? this.#whole[0]?.[0]?.start ?? this.#joiner.openFrom ?? this.#window.end;
    this.#window.forgetBefore(Math.min(needed, this.#window.end - KEPT_BACK) - PAD);
  }

  /** Ends the stream and yields the rest. */
  async *finish(): AsyncGenerator<Understood> {
    if (this.#rest.length > 0) {
      const frame = new Float32Array(VAD_WINDOW);
      frame.set(this.#rest);
      this.#vad.acceptWaveform(frame);
    }
    this.#vad.flush();
    const early = this.#drain();
    this.#whole.push(...this.#joiner.finish());
    yield* this.#hearEarly([...early, ...(this.#early?.finish() ?? [])]);
    yield* this.#hearWhole();
    while (this.#inHand.count > 0) yield { heard: await this.#inHand.next() };
  }

  *#frames(samples: Float32Array): Generator<Float32Array> {
    const all = new Float32Array(this.#rest.length + samples.length);
    all.set(this.#rest);
    all.set(samples, this.#rest.length);
    let at = 0;
    for (; at + VAD_WINDOW <= all.length; at += VAD_WINDOW) yield all.subarray(at, at + VAD_WINDOW);
    this.#rest = all.slice(at);
  }

  /** Takes the stretches that have ended; gives back the pieces that are to be told early. */
  #drain(): Piece[] {
    const early: Piece[] = [];
    while (!this.#vad.isEmpty()) {
      const { start, samples } = this.#vad.front(false);
      this.#vad.pop();
      const stretch = { start, end: start + samples.length };
      this.#lastEnd = stretch.end;
      this.#whole.push(...this.#joiner.add(stretch));
      early.push(...(this.#early?.add(stretch) ?? []));
    }
    return early;
  }

  async *#hearEarly(pieces: readonly Piece[]): AsyncGenerator<Understood> {
    for (const piece of pieces) yield { early: await this.#hearOnce(piece) };
  }

  async *#hearWhole(): AsyncGenerator<Understood> {
    for (const piece of this.#whole.splice(0)) {
      const { atOnce = 1 } = await this.#ready();
      while (this.#inHand.count >= atOnce) yield { heard: await this.#inHand.next() };
      this.#inHand.start(piece[0]?.start ?? 0, () => this.#hearOnce(piece));
    }
    // Live, somebody waits for what comes next: a piece is heard to its end.
    const isAwaited = this.#early !== undefined;
    while (this.#inHand.isNextDone || (isAwaited && this.#inHand.count > 0))
      yield { heard: await this.#inHand.next() };
  }

  async #hearOnce(piece: Piece): Promise<Heard> {
    if (this.#last && isSamePiece(this.#last.piece, piece)) return this.#last.heard;
    const before = this.#before.find(piece);
    const heard = before ?? (await this.#hear(piece));
    if (!before) this.#before.keep(piece, heard);
    this.#last = { piece, heard };
    return heard;
  }

  async #hear(piece: Piece): Promise<Heard> {
    const start = Math.max(0, (piece[0]?.start ?? 0) - PAD);
    const samples = this.#window.slice(start, (piece.at(-1)?.end ?? 0) + PAD);
    const background = backgroundLevel(this.#window.slice(start - BACKGROUND_SPAN, start + samples.length));
    const utterances: Utterance[] = [];
    const dropped: (Utterance & { why: string })[] = [];
    const recogniser = await this.#ready();
    for (const part of await hearPiece(samples, (sound) => recogniser.recognise(sound))) {
      if (part.text === '') continue;
      const stretches = partStretches(piece, part, start);
      const why = whyNoSpeech({
        text: part.text,
        seconds: (part.end - part.start) / SAMPLE_RATE,
        spokenSeconds: spoken(stretches) / SAMPLE_RATE,
        rise: level(joinedSound(this.#window, stretches)) - background,
      });
      const words = part.words && later(part.words, start / SAMPLE_RATE);
      const placed = withDoubts(placeUtterances(part.text, stretches, words), part);
      if (why) dropped.push(...placed.map((said) => ({ ...said, why })));
      else utterances.push(...placed);
    }
    return { utterances, dropped };
  }
}

/** Loads the model of a setup. */
export async function loadRecogniser({ recogniser, threads }: RecogniserSetup): Promise<SoundRecogniser> {
  if (recogniser.kind === 'moonshine') return loadMoonshine(recogniser, threads);
  if (recogniser.kind === 'sherpa') return loadSherpaRecogniser(recogniser, threads);
  return whisperRecogniser(recogniser, threads);
}

function isSamePiece(a: Piece, b: Piece): boolean {
  return a[0]?.start === b[0]?.start && a.at(-1)?.end === b.at(-1)?.end;
}

/** The stretches that a part was heard from; a part between two of them stands for itself. */
function partStretches(piece: Piece, part: HeardPart, start: number): Piece {
  const whole: Stretch = { start: start + part.start, end: start + part.end };
  const found = within(piece, whole.start, whole.end);
  return found.length > 0 ? found : [whole];
}

function joinedSound(window: SoundWindow, stretches: Piece): Float32Array {
  const sound = new Float32Array(spoken(stretches));
  let at = 0;
  for (const { start, end } of stretches) {
    const part = window.slice(start, end);
    sound.set(part, at);
    at += part.length;
  }
  return sound;
}
