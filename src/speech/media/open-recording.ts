/** Opens a sound or video file by its content, whatever its name ends in. */
import { open, stat } from 'node:fs/promises';
import {
  ADTS,
  type AudioCodec,
  EncodedPacketSink,
  FilePathSource,
  FLAC,
  Input,
  type InputAudioTrack,
  Logging,
  LogLevel,
  MATROSKA,
  MP3,
  MP4,
  MPEG_TS,
  OGG,
  QTFF,
  WAVE,
  WEBM,
} from 'mediabunny';
import { plainText } from '../../plain-text.ts';
import type { Problem, Result } from '../../problem.ts';
import type { MediaFacts } from '../transcript.ts';
import { type ContainerOutline, readOutline, timeFromTag } from './container-outline.ts';
import { codecName, containerName, formatBySignature } from './known-formats.ts';
import { formatProblem, mediaProblem } from './media-problems.ts';
import { outsideFacts } from './outside-decoder.ts';

Logging.level = LogLevel.Silent;

/** Play lists are left out: they name other files. */
const FORMATS = [MP4, QTFF, MATROSKA, WEBM, MP3, WAVE, OGG, FLAC, ADTS, MPEG_TS];

export interface BundledRecording {
  readonly decoder: 'bundled';
  readonly facts: MediaFacts;
  readonly track: InputAudioTrack;
  readonly codec: AudioCodec;
  close(): void;
}

/** Only the system's ffmpeg reads it. */
export interface OutsideRecording {
  readonly decoder: 'outside';
  readonly facts: MediaFacts;
  close(): void;
}

export type OpenRecording = BundledRecording | OutsideRecording;

/** Opens `file` and says what it is. Close the recording when done. Every fault of the file is a problem. */
export async function openRecording(file: string): Promise<Result<OpenRecording>> {
  const fault = await ordinaryFileFault(file);
  if (fault) return { ok: false, problem: fault };
  const outline = await readOutline(file);
  const input = new Input({
    source: new FilePathSource(file, { handleUnhandledError: () => {} }),
    formats: FORMATS,
  });
  try {
    const result = await recognise(file, input, outline);
    if (!result.ok || result.value.decoder === 'outside') input.dispose();
    return result;
  } catch (cause) {
    input.dispose();
    if (outline.lacksIndex || outline.endsEarly) {
      return { ok: false, problem: mediaProblem(file, 'file-cut-off', cause) };
    }
    return { ok: false, problem: mediaProblem(file, 'sound-damaged', cause) };
  }
}

async function ordinaryFileFault(file: string): Promise<Problem | undefined> {
  try {
    const found = await stat(file);
    if (found.isDirectory()) return mediaProblem(file, 'file-folder');
    if (!found.isFile()) return mediaProblem(file, 'file-special');
    if (found.size === 0) return mediaProblem(file, 'file-empty');
    return isText(await firstBytes(file, TEXT_SAMPLE)) ? mediaProblem(file, 'file-text') : undefined;
  } catch (cause) {
    const { code } = cause as NodeJS.ErrnoException;
    const missing = code === 'ENOENT' || code === 'ENOTDIR';
    return mediaProblem(file, missing ? 'file-missing' : 'file-unreadable', cause);
  }
}

async function recognise(
  file: string,
  input: Input,
  outline: ContainerOutline,
): Promise<Result<OpenRecording>> {
  if (!(await input.canRead())) return await unreadContainer(file);
  if (outline.lacksIndex) return { ok: false, problem: mediaProblem(file, 'file-cut-off') };
  const track = await input.getPrimaryAudioTrack();
  if (!track) return { ok: false, problem: mediaProblem(file, 'no-audio') };
  const container = containerName((await input.getFormat()).name);
  const codec = await track.getCodec();
  if (!codec || !isBundled(codec)) {
    const name = codecName(codec ?? String((await track.getInternalCodecId()) ?? ''));
    return await outside(file, name, formatWords(container, name));
  }
  if (!(await hasPackets(track))) return { ok: false, problem: mediaProblem(file, 'sound-empty') };
  const duration = await durationSeconds(input, track);
  const facts: MediaFacts = {
    format: formatWords(container, codecName(codec)),
    durationSeconds: duration ?? 0,
    ...(await fromTags(input, outline)),
    ...(outline.endsEarly || duration === undefined ? { endsEarly: true } : {}),
  };
  return { ok: true, value: { decoder: 'bundled', facts, track, codec, close: () => input.dispose() } };
}

function isBundled(codec: AudioCodec): boolean {
  return !['ac3', 'eac3', 'dts'].includes(codec);
}

const TEXT_SAMPLE = 4096;

async function firstBytes(file: string, count: number): Promise<Buffer> {
  const handle = await open(file, 'r');
  const head = Buffer.alloc(count);
  const { bytesRead } = await handle.read(head, 0, count, 0).finally(() => handle.close());
  return head.subarray(0, bytesRead);
}

/** Whether bytes are words: UTF-8 (cut anywhere) without the control characters that every container has. */
function isText(head: Uint8Array): boolean {
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(head, { stream: true });
    return !/[^\P{Cc}\t\n\f\r]/u.test(text);
  } catch {
    return false;
  }
}

async function unreadContainer(file: string): Promise<Result<OpenRecording>> {
  const name = formatBySignature(await firstBytes(file, 64));
  // Anything else is kept from the outside program: it would try to read text and play lists too.
  if (!name) return { ok: false, problem: mediaProblem(file, 'not-media') };
  return await outside(file, name, name);
}

async function outside(file: string, name: string, format: string): Promise<Result<OpenRecording>> {
  const found = await outsideFacts(file);
  if (!found) return { ok: false, problem: formatProblem(file, name) };
  const facts = { ...found, format };
  return { ok: true, value: { decoder: 'outside', facts, close: () => {} } };
}

/** A recorder that lost power leaves a header alone. */
async function hasPackets(track: InputAudioTrack): Promise<boolean> {
  return (await new EncodedPacketSink(track).getFirstPacket()) !== null;
}

/** Undefined when the file breaks off before the packet that would tell. */
async function durationSeconds(input: Input, track: InputAudioTrack): Promise<number | undefined> {
  try {
    const end = (await input.getDurationFromMetadata([track])) ?? (await input.computeDuration([track]));
    return Math.max(0, end - Math.max(0, await input.getFirstTimestamp()));
  } catch {
    return undefined;
  }
}

function formatWords(container: string, codec: string): string {
  return container === codec ? codec : `${container}, ${codec}`;
}

const DATE_TAGS = ['com.apple.quicktime.creationdate', 'creation_time', 'DATE', 'TDRC', '©day', 'ICRD'];

/** Tags of QuickTime, of Android's recorders, and the atoms of older files; maker and model. */
const MAKER_TAGS = ['com.apple.quicktime.make', 'com.android.manufacturer', '©mak'];
const MODEL_TAGS = ['com.apple.quicktime.model', 'com.android.model', '©mod'];
const LONGEST_DEVICE = 80;

type Tags = Readonly<Record<string, unknown>>;

async function fromTags(
  input: Input,
  outline: ContainerOutline,
): Promise<Pick<MediaFacts, 'createdAt' | 'device'>> {
  const raw: Tags = (await input.getMetadataTags()).raw ?? {};
  const device = deviceIn(raw);
  return { ...createdAt(raw, outline), ...(device ? { device } : {}) };
}

function deviceIn(raw: Tags): string | undefined {
  const first = (names: readonly string[]) =>
    names.map((name) => raw[name]).find((value): value is string => typeof value === 'string') ?? '';
  const [maker, model] = [plainText(first(MAKER_TAGS)).trim(), plainText(first(MODEL_TAGS)).trim()];
  // Some models bear the maker's name already.
  const named = model.toLowerCase().startsWith(maker.toLowerCase()) ? model : `${maker} ${model}`;
  return named.trim().slice(0, LONGEST_DEVICE) || undefined;
}

/** A tag that states its own zone says more than the container's clock in UTC. */
function createdAt(raw: Tags, outline: ContainerOutline): { createdAt?: string } {
  const tagged = DATE_TAGS.map((name) => raw[name])
    .map((value) => (typeof value === 'string' ? timeFromTag(value) : undefined))
    .filter((time) => time !== undefined);
  const zoned = tagged.find((time) => /[+-]\d\d:\d\d$/.test(time));
  const time = zoned ?? outline.createdAt ?? tagged[0];
  return time ? { createdAt: time } : {};
}
