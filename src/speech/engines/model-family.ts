/** Tells by its files which model a folder holds, and how the sherpa-onnx runtime is to load it. */
import { readdir } from 'node:fs/promises';
import { basename, join } from 'node:path';
import type { SherpaModel } from 'sherpa-onnx-node';
import { type OnnxOutline, onnxOutline } from './onnx-outline.ts';

export interface FoundModel {
  /** As people call the family: "Whisper", "NeMo transducer". */
  readonly family: string;
  readonly model: SherpaModel;
  readonly givesWordTimes: boolean;
  readonly longestPieceSeconds: number;
}

/** What is wrong with a model's files, as one clause behind the path. */
export interface ModelFault {
  readonly code: 'model-unknown' | 'model-incomplete' | 'model-damaged';
  readonly reason: string;
}

export type ModelSought = FoundModel | ModelFault;

export const isFault = (sought: ModelSought): sought is ModelFault => 'reason' in sought;

/** Models that hear in windows, or loop on long sound, get what they take; the others as much as is heard quickly. */
const MOONSHINE_SECONDS = 15;
const WINDOW_SECONDS = 28;

/** The parts of a model by the words in their files' names; a quantised file goes before its larger twin. */
interface Parts {
  readonly tokens: string | undefined;
  readonly part: (words: RegExp, except?: RegExp) => string | undefined;
  readonly models: readonly string[];
}

/** Looks a folder over. Throws when it cannot be read. */
export async function familyOf(folder: string): Promise<ModelSought> {
  const names = (await readdir(folder)).sort();
  const models = quantisedFirst(names.filter((name) => /\.(?:onnx|ort)$/i.test(name)));
  if (models.length === 0) return fault('model-unknown', 'it holds no .onnx files');
  const tokens = names.find((name) => /tokens\.txt$/i.test(name));
  const place = (name: string) => join(folder, name);
  const parts: Parts = {
    tokens: tokens && place(tokens),
    models: models.map(place),
    part(words, except) {
      const name = models.find((one) => words.test(one) && !except?.test(one));
      return name && place(name);
    },
  };
  const found = await byParts(parts);
  if (isFault(found)) return found;
  for (const path of filesOf(found.model)) {
    if (/\.onnx$/i.test(path) && !(await onnxOutline(path)))
      return fault('model-damaged', `${basename(path)} is damaged or was cut off`);
  }
  return found;
}

/** Every file that the runtime is told to load. */
export function filesOf(model: SherpaModel): readonly string[] {
  const parts = Object.values(model).flatMap((value) =>
    typeof value === 'object' ? Object.values(value as Readonly<Record<string, unknown>>) : [value],
  );
  return parts.filter(
    (part): part is string => typeof part === 'string' && /\.(?:onnx|ort|txt)$/i.test(part),
  );
}

async function byParts(parts: Parts): Promise<ModelSought> {
  const { part } = parts;
  const encoder = part(/encode/i, /preprocess/i);
  const decoder = part(/decode/i, /cached|merged/i);
  const merged = part(/decode.*merged|merged.*decode/i);
  const joiner = part(/join/i);
  const [preprocessor, cached] = [part(/preprocess/i), part(/(?<!un)cached_?decode/i)];
  const uncached = part(/uncached_?decode/i);
  const { tokens } = parts;
  if (!tokens) return fault('model-incomplete', 'it lacks its list of tokens, tokens.txt');
  if (encoder && merged)
    return model('Moonshine', { tokens, moonshine: { encoder, mergedDecoder: merged } }, MOONSHINE_SECONDS);
  if (preprocessor || cached || uncached) {
    if (!(preprocessor && encoder && uncached && cached))
      return fault('model-incomplete', 'of a Moonshine model it lacks a preprocess, encode or decode file');
    const moonshine = { preprocessor, encoder, uncachedDecoder: uncached, cachedDecoder: cached };
    return model('Moonshine', { tokens, moonshine }, MOONSHINE_SECONDS);
  }
  if (joiner) {
    if (!encoder || !decoder)
      return fault('model-incomplete', `of a transducer it lacks the ${encoder ? 'decoder' : 'encoder'}`);
    return transducer({ encoder, decoder, joiner }, tokens);
  }
  if (encoder && decoder) return encoderDecoder(encoder, decoder, tokens);
  if (encoder || decoder)
    return fault(
      'model-incomplete',
      `it lacks the ${encoder ? 'decoder' : 'encoder'} beside the ${encoder ? 'encoder' : 'decoder'}`,
    );
  const [only, ...others] = parts.models.filter((path, _, all) => !isTwin(path, all));
  if (!only || others.length > 0)
    return fault('model-unknown', 'it holds several models; put each into a folder of its own');
  return wholeModel(only, tokens);
}

async function transducer(
  files: NonNullable<SherpaModel['transducer']>,
  tokens: string,
): Promise<ModelSought> {
  const outline = await onnxOutline(files.encoder);
  if (!outline) return fault('model-damaged', `${basename(files.encoder)} is damaged or was cut off`);
  const streaming = streamingFault(outline);
  if (streaming) return streaming;
  const isNemo = /^EncDec/.test(typeOf(outline)) || (typeOf(outline) === '' && isNamedNemo(files.encoder));
  const modelType = isNemo ? 'nemo_transducer' : 'transducer';
  const family = isNemo ? 'NeMo transducer' : 'Zipformer transducer';
  return model(family, { tokens, transducer: files, modelType }, WINDOW_SECONDS, true);
}

async function encoderDecoder(encoder: string, decoder: string, tokens: string): Promise<ModelSought> {
  const outline = await onnxOutline(encoder);
  if (!outline) return fault('model-damaged', `${basename(encoder)} is damaged or was cut off`);
  const type = typeOf(outline);
  if (/multitask|canary/i.test(`${type} ${encoder}`)) {
    const canary = { encoder, decoder, srcLang: 'en', tgtLang: 'en', usePnc: 1 } as const;
    return model('NeMo Canary', { tokens, canary }, WINDOW_SECONDS);
  }
  if (/fire[-_]?red/i.test(`${type} ${encoder}`))
    return model('FireRed', { tokens, fireRedAsr: { encoder, decoder } }, WINDOW_SECONDS);
  if (/paraformer/i.test(`${type} ${encoder}`)) return MADE_FOR_STREAMS;
  const isWhisper = /whisper/i.test(`${type} ${encoder}`) || 'n_mels' in outline.metadata;
  if (!isWhisper) return unknownType(type);
  // Times of tokens come from the attention that newer exports give out; of others the runtime gives none.
  const inner = await onnxOutline(decoder);
  const givesTimes = 'n_alignment_heads' in { ...outline.metadata, ...inner?.metadata };
  const whisper = {
    encoder,
    decoder,
    language: 'en',
    task: 'transcribe',
    enableTokenTimestamps: 1,
  } as const;
  return model('Whisper', { tokens, whisper }, WINDOW_SECONDS, givesTimes);
}

/** Models in one file, by what the exporter wrote into it. */
async function wholeModel(path: string, tokens: string): Promise<ModelSought> {
  const outline = await onnxOutline(path);
  if (!outline) return fault('model-damaged', `${basename(path)} is damaged or was cut off`);
  const streaming = streamingFault(outline);
  if (streaming) return streaming;
  const type = typeOf(outline);
  const file = { model: path };
  const whole = (family: string, files: Omit<SherpaModel, 'tokens'>) =>
    model(family, { tokens, ...files }, WINDOW_SECONDS, true);
  if (/sense_?voice/i.test(type)) {
    const senseVoice = { ...file, language: 'en', useInverseTextNormalization: 1 } as const;
    return whole('SenseVoice', { senseVoice });
  }
  if (/^paraformer/i.test(type)) return whole('Paraformer', { paraformer: file });
  if (/^EncDec/.test(type)) return whole('NeMo CTC', { nemoCtc: file });
  if (/^zipformer2?_ctc/i.test(type)) return whole('Zipformer CTC', { zipformerCtc: file });
  if (/^wenet_ctc/i.test(type)) return whole('WeNet CTC', { wenetCtc: file });
  if (/^telespeech_ctc/i.test(type)) return whole('TeleSpeech CTC', { telespeechCtc: path });
  if (/^dolphin/i.test(type)) return whole('Dolphin', { dolphin: file });
  if (/^omnilingual/i.test(type)) return whole('Omnilingual CTC', { omnilingual: file });
  if (/^medasr/i.test(type)) return whole('MedASR', { medasr: file });
  return unknownType(type);
}

const MADE_FOR_STREAMS: ModelFault = {
  code: 'model-unknown',
  reason: 'the model is made for streams; its edition for whole recordings is needed',
};

/** Models for streams carry the length of their steps. */
function streamingFault({ metadata }: OnnxOutline): ModelFault | undefined {
  return 'decode_chunk_len' in metadata || 'left_context_len' in metadata ? MADE_FOR_STREAMS : undefined;
}

function unknownType(type: string): ModelFault {
  const named = type === '' ? 'does not say which model it is' : `is a "${type.slice(0, 60)}"`;
  return fault('model-unknown', `it ${named}, which is not known here`);
}

function model(
  family: string,
  files: SherpaModel,
  longestPieceSeconds: number,
  givesWordTimes = false,
): FoundModel {
  return { family, model: files, longestPieceSeconds, givesWordTimes };
}

function fault(code: ModelFault['code'], reason: string): ModelFault {
  return { code, reason };
}

const typeOf = ({ metadata }: OnnxOutline): string => metadata.model_type ?? '';

const isNamedNemo = (path: string): boolean => /nemo|parakeet/i.test(path);

const isQuantised = (name: string): boolean => /int8|quant|fp16/i.test(name);

function quantisedFirst(names: readonly string[]): readonly string[] {
  return [...names.filter(isQuantised), ...names.filter((name) => !isQuantised(name))];
}

/** Whether the same model stands earlier in the list, quantised: `model.int8.onnx` beside `model.onnx`. */
function isTwin(path: string, all: readonly string[]): boolean {
  const plain = (one: string) => basename(one).replace(/[._-](?:int8|fp16|quant(?:ized)?)(?=[._-])/i, '');
  return all.findIndex((one) => plain(one) === plain(path)) < all.indexOf(path);
}
