/** Looks a file over before it is taken: what it is, and when it was recorded. */
import { readFileSync } from 'node:fs';
import { stat } from 'node:fs/promises';
import { basename, extname } from 'node:path';
import { trueTime } from './device-clock.ts';
import { loadHearing } from './hearing.ts';
import { localInstant, withOffset } from './instant.ts';
import { deviceOf } from './model/devices.ts';
import type { ClockPutRight, DeviceClock, DeviceView, MemoSource, MemoSummary } from './model/views.ts';
import { EXIT, Problem } from './problem.ts';
import type { TakeOptions } from './project-api.ts';
import type { MediaFacts } from './speech/transcript.ts';
import { decodeText, readProblem, refuseLongText } from './text-file.ts';

const TEXT_ENDINGS = new Set(['.txt', '.md']);

/** A file that may be taken: what it is, and when it was recorded. */
export interface Candidate {
  readonly name: string;
  readonly kind: MemoSource['kind'];
  readonly media?: MediaFacts;
  readonly recordedAt: string;
  readonly recordedAtFrom: MemoSummary['recordedAtFrom'];
  readonly putRight?: ClockPutRight;
}

/** What the file is and when it was recorded; throws a Problem when it is no memo. */
export async function examine(
  file: string,
  { at, name = basename(file), device }: Pick<TakeOptions, 'at' | 'name' | 'device'>,
  devices: readonly DeviceView[],
): Promise<Candidate> {
  const named = device === undefined ? undefined : deviceNamed(devices, device);
  const facts = await stat(file).catch((error) => {
    throw readProblem(error, file);
  });
  if (!facts.isFile()) throw readProblem(Object.assign(new Error('it is no file'), { code: 'EISDIR' }), file);
  const given =
    at === undefined ? undefined : { recordedAt: withOffset(at), recordedAtFrom: 'given' as const };
  if (TEXT_ENDINGS.has(extname(name).toLowerCase())) {
    refuseLongText(facts.size, file);
    decodeText(readText(file), file);
    return { name, kind: 'text', ...(given ?? fromFile(facts.mtime, undefined)) };
  }
  if (facts.size === 0) throw emptyFile(file);
  const media = await (await loadHearing()).probe(file);
  if (!media.ok) throw media.problem;
  const maker = named ?? deviceOf(devices, { fileName: name, ...media.value });
  return {
    name,
    kind: 'recording',
    media: media.value,
    ...(given ?? fromContainer(media.value, maker) ?? fromFile(facts.mtime, maker)),
  };
}

function readText(file: string): Uint8Array {
  try {
    return readFileSync(file);
  } catch (error) {
    throw readProblem(error, file);
  }
}

function deviceNamed(devices: readonly DeviceView[], wanted: string): DeviceView {
  const found = devices.find(({ name }) => name.toLowerCase() === wanted.toLowerCase());
  if (found) return found;
  throw new Problem(`no device is called "${wanted}"`, {
    code: 'device-unknown',
    exitCode: EXIT.usage,
    next: `tell how its clock goes: hearwright device "${wanted}" --offset +00:00:00`,
  });
}

/** The container's own time, put right where its recorder's clock is known. */
function fromContainer({ createdAt }: MediaFacts, device: DeviceView | undefined) {
  if (createdAt === undefined || Number.isNaN(Date.parse(createdAt))) return undefined;
  return { ...timed(createdAt, device), recordedAtFrom: 'container' as const };
}

/** The file's time: a copy keeps what the recorder's clock said; a file system counts in UTC, whatever that clock did. */
function fromFile(changed: Date, device: DeviceView | undefined) {
  const clock = device && { name: device.name, offsetSeconds: device.offsetSeconds };
  return { ...timed(localInstant(changed), clock), recordedAtFrom: 'file' as const };
}

function timed(stated: string, device: (DeviceClock & { readonly name: string }) | undefined) {
  const recordedAt = trueTime(stated, device);
  if (!device) return { recordedAt };
  const { name, offsetSeconds, counts } = device;
  const putRight: ClockPutRight = { device: name, stated, offsetSeconds, ...(counts ? { counts } : {}) };
  return { recordedAt, putRight };
}

function emptyFile(file: string): Problem {
  return new Problem(`cannot take ${file}: it is empty`, {
    code: 'file-empty',
    exitCode: EXIT.partly,
    kept: 'the file was left as it was',
    next: 'copy it again from the recorder',
  });
}
