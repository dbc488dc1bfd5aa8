/**
 * Talk as the bundled recogniser heard it from a voice, kept in a folder: hearing takes minutes, and what comes after
 * it is tried many times.
 */
import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Utterance } from '../../src/model/views.ts';
import { checkedModelFiles, type ModelFiles } from '../../src/speech/model-folder.ts';
import { bundledSetup } from '../../src/speech/moonshine-engine.ts';
import { Listener, loadRecogniser } from '../../src/speech/recogniser/listener.ts';
import type { RecogniserSetup } from '../../src/speech/recogniser/messages.ts';
import type { SoundRecogniser } from '../../src/speech/recogniser/recognised.ts';
import { type NoiseLevel, withNoise } from './noise.ts';
import { asSaid, speak, type Voice } from './voices.ts';

export interface HeardTalk {
  readonly utterances: readonly Utterance[];
  readonly soundSeconds: number;
  readonly hearingSeconds: number;
}

export const textOf = ({ utterances }: HeardTalk): string => utterances.map(({ text }) => text).join(' ');

const RATE = 16_000;
/** As the engine gets it from the decoders. */
const STEP = RATE;

export class HearingCache {
  readonly #folder: string;

  constructor(folder = join(tmpdir(), 'hearwright-heard-3')) {
    this.#folder = folder;
    mkdirSync(folder, { recursive: true });
  }

  #place(text: string, voice: string, noise: NoiseLevel | undefined): string {
    const key = JSON.stringify([voice, noise?.noise, noise?.decibels, text]);
    return join(this.#folder, `${createHash('sha256').update(key).digest('hex').slice(0, 24)}.json`);
  }

  /** What was heard of it before; undefined when it was not. */
  find(text: string, voice: string, noise?: NoiseLevel): HeardTalk | undefined {
    const place = this.#place(text, voice, noise);
    return existsSync(place) ? (JSON.parse(readFileSync(place, 'utf8')) as HeardTalk) : undefined;
  }

  /** Speaks the text, puts the noise over it and hears it. */
  async hear(text: string, voice: Voice, noise?: NoiseLevel): Promise<HeardTalk> {
    const known = this.find(text, voice.name, noise);
    if (known) return known;
    const speech = this.#spoken(text, voice);
    const heard = await hearSound(noise ? withNoise(speech, noise) : speech);
    writeFileSync(this.#place(text, voice.name, noise), JSON.stringify(heard));
    return heard;
  }

  /** What is said in a sound file. */
  async hearFile(file: string, noise?: NoiseLevel): Promise<HeardTalk> {
    const known = this.find(file, 'file', noise);
    if (known) return known;
    const speech = readSound(file);
    const heard = await hearSound(noise ? withNoise(speech, noise) : speech);
    writeFileSync(this.#place(file, 'file', noise), JSON.stringify(heard));
    return heard;
  }

  #spoken(text: string, voice: Voice): Float32Array {
    const [words, sound] = ['txt', 'wav'].map((ending) => join(this.#folder, `${process.pid}.${ending}`)) as [
      string,
      string,
    ];
    writeFileSync(words, asSaid(text));
    speak(voice, words, sound);
    const samples = readSound(sound);
    rmSync(words);
    rmSync(sound);
    return samples;
  }
}

/** A sound file as 16 kHz mono. */
export function readSound(file: string): Float32Array {
  const ask = [
    '-nostdin',
    '-v',
    'error',
    '-i',
    file,
    '-ac',
    '1',
    '-ar',
    String(RATE),
    '-f',
    'f32le',
    'pipe:1',
  ];
  const bytes = execFileSync('ffmpeg', ask, { maxBuffer: 1 << 30 });
  return new Float32Array(bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength));
}

/** More than the program weighs: which words are worth it is found out from what is kept. */
const WEIGHED_PER_SECOND = 2;

let models: ModelFiles | undefined;
let recogniser: SoundRecogniser | undefined;

/** The files, checked once, and one recogniser for every listener: loading it takes longer than hearing a short talk. */
async function loadOnce(): Promise<{
  readonly setup: RecogniserSetup;
  readonly recogniser: SoundRecogniser;
}> {
  if (!models) {
    const checked = await checkedModelFiles();
    if (!checked.ok) throw checked.problem;
    models = checked.value;
  }
  const bundled = bundledSetup(models);
  const setup = { ...bundled, recogniser: { ...bundled.recogniser, weighedPerSecond: WEIGHED_PER_SECOND } };
  recogniser ??= await loadRecogniser(setup);
  return { setup, recogniser };
}

/** Hears samples in this process. A listener for each: its voice activity starts afresh, as for a file. */
export async function hearSound(samples: Float32Array): Promise<HeardTalk> {
  const { setup, recogniser } = await loadOnce();
  const started = process.cpuUsage();
  const listener = await Listener.load(setup, recogniser);
  const utterances: Utterance[] = [];
  for (let at = 0; at < samples.length; at += STEP) {
    for await (const told of listener.accept(samples.subarray(at, at + STEP)))
      if ('heard' in told) utterances.push(...told.heard.utterances);
    globalThis.gc?.();
  }
  for await (const told of listener.finish()) if ('heard' in told) utterances.push(...told.heard.utterances);
  const { user, system } = process.cpuUsage(started);
  globalThis.gc?.();
  return {
    utterances,
    soundSeconds: samples.length / RATE,
    hearingSeconds: (user + system) / 1e6,
  };
}
