/**
 * Reads the outer shell of a recording by itself: whether the file ends before it should, and the time of
 * recording, which the container library does not give.
 */
import type { FileHandle } from 'node:fs/promises';
import { open } from 'node:fs/promises';

export interface ContainerOutline {
  /** ISO 8601, with `Z` where the container counts in UTC and without zone where it states wall time. */
  readonly createdAt?: string;
  /** The file stops before the end that its own structure states. */
  readonly endsEarly: boolean;
  /** An MP4 or QuickTime file without the index that its packets are found by. */
  readonly lacksIndex: boolean;
}

const NOTHING: ContainerOutline = { endsEarly: false, lacksIndex: false };

/** Outline of the file by its first bytes; formats without an outer structure give the empty outline. */
export async function readOutline(path: string): Promise<ContainerOutline> {
  const file = await open(path, 'r');
  try {
    const { size } = await file.stat();
    const head = await bytesAt(file, 0, 12);
    const mark = head.toString('latin1', 0, 4);
    if (head.toString('latin1', 4, 8) === 'ftyp' || isQuickTimeAtom(head))
      return await boxOutline(file, size);
    if (mark === 'RIFF' && head.toString('latin1', 8, 12) === 'WAVE') return await waveOutline(file, size);
    if (head.length >= 4 && head.readUInt32BE(0) === 0x1a45dfa3) return await matroskaOutline(file, size);
    return NOTHING;
  } finally {
    await file.close();
  }
}

async function bytesAt(file: FileHandle, position: number, length: number): Promise<Buffer> {
  const buffer = Buffer.alloc(length);
  const { bytesRead } = await file.read(buffer, 0, length, position);
  return buffer.subarray(0, bytesRead);
}

// --- MP4 and QuickTime. Source: ISO/IEC 14496-12, box structure and MovieHeaderBox. -----------------------------

interface Box {
  readonly type: string;
  readonly body: number;
  readonly end: number;
}

function isQuickTimeAtom(head: Buffer): boolean {
  return ['moov', 'mdat', 'wide', 'free', 'skip'].includes(head.toString('latin1', 4, 8));
}

async function boxOutline(file: FileHandle, size: number): Promise<ContainerOutline> {
  let endsEarly = false;
  let index: Box | undefined;
  for (let at = 0; at + 8 <= size; ) {
    const box = await boxAt(file, at, size);
    if (!box) break;
    if (box.type === 'moov') index = box;
    if (box.end > size) endsEarly = true;
    at = box.end;
  }
  const createdAt = index && (await movieCreationTime(file, index));
  return {
    endsEarly,
    lacksIndex: index === undefined || index.end > size,
    ...(createdAt ? { createdAt } : {}),
  };
}

async function boxAt(file: FileHandle, at: number, limit: number): Promise<Box | undefined> {
  const head = await bytesAt(file, at, 16);
  if (head.length < 8) return undefined;
  const type = head.toString('latin1', 4, 8);
  const short = head.readUInt32BE(0);
  // 0: to the end of the file; 1: a 64-bit length follows.
  if (short === 0) return { type, body: at + 8, end: limit };
  if (short === 1 && head.length >= 16)
    return { type, body: at + 16, end: at + Number(head.readBigUInt64BE(8)) };
  return short < 8 ? undefined : { type, body: at + 8, end: at + short };
}

async function movieCreationTime(file: FileHandle, index: Box): Promise<string | undefined> {
  for (let at = index.body; at < index.end; ) {
    const box = await boxAt(file, at, index.end);
    if (!box) return undefined;
    if (box.type === 'mvhd') {
      const body = await bytesAt(file, box.body, 12);
      if (body.length < 12) return undefined;
      const seconds = body[0] === 1 ? Number(body.readBigUInt64BE(4)) : body.readUInt32BE(4);
      // Counted in UTC from 1904-01-01.
      return isoFromMilliseconds(Date.UTC(1904, 0, 1) + seconds * 1000);
    }
    at = box.end;
  }
  return undefined;
}

// --- WAV. Source: EBU Tech 3285, broadcast audio extension chunk. -------------------------------------------------

async function waveOutline(file: FileHandle, size: number): Promise<ContainerOutline> {
  let createdAt: string | undefined;
  for (let at = 12; at + 8 <= size; ) {
    const head = await bytesAt(file, at, 8);
    const name = head.toString('latin1', 0, 4);
    const length = head.readUInt32LE(4);
    if (name === 'bext') createdAt = originationTime(await bytesAt(file, at + 8, 338));
    if (name === 'data') {
      // 0 and the highest values mean that the recorder did not know the length.
      const stated = length > 0 && length < 0xffff_f000;
      return {
        endsEarly: stated && at + 8 + length > size,
        lacksIndex: false,
        ...(createdAt ? { createdAt } : {}),
      };
    }
    at += 8 + length + (length % 2);
  }
  return { ...NOTHING, ...(createdAt ? { createdAt } : {}) };
}

function originationTime(chunk: Buffer): string | undefined {
  const date = /^(\d{4})[^\d](\d\d)[^\d](\d\d)$/.exec(chunk.toString('latin1', 320, 330));
  const time = /^(\d\d)[^\d](\d\d)[^\d](\d\d)$/.exec(chunk.toString('latin1', 330, 338));
  if (!date || !time) return undefined;
  return plausibleTime(`${date.slice(1).join('-')}T${time.slice(1).join(':')}`);
}

// --- Matroska and WebM. Source: RFC 9559 (DateUTC, 0x4461) and RFC 8794 (variable-length integers). -------------

const SEGMENT = 0x18538067;
const INFO = 0x1549a966;
const DATE_UTC = 0x4461;
const CLUSTER = 0x1f43b675;

async function matroskaOutline(file: FileHandle, size: number): Promise<ContainerOutline> {
  // Info stands before the first cluster; 256 KiB hold it in every file that a recorder writes.
  const head = await bytesAt(file, 0, 262_144);
  let endsEarly = false;
  let createdAt: string | undefined;
  for (let at = 0; at < head.length; ) {
    const element = elementAt(head, at);
    if (!element || element.id === CLUSTER) break;
    if (element.id === SEGMENT) endsEarly = element.end > size;
    if (element.id === DATE_UTC && element.body + 8 <= head.length) {
      // Nanoseconds from 2001-01-01 UTC.
      const milliseconds = Number(head.readBigInt64BE(element.body) / 1_000_000n);
      createdAt = isoFromMilliseconds(Date.UTC(2001, 0, 1) + milliseconds);
    }
    at = element.id === SEGMENT || element.id === INFO ? element.body : element.end;
  }
  return { endsEarly, lacksIndex: false, ...(createdAt ? { createdAt } : {}) };
}

function elementAt(head: Buffer, at: number): { id: number; body: number; end: number } | undefined {
  const first = head[at];
  if (!first) return undefined;
  const idLength = Math.clz32(first) - 23;
  const sizeByte = head[at + idLength];
  if (idLength > 4 || !sizeByte) return undefined;
  const sizeLength = Math.clz32(sizeByte) - 23;
  const body = at + idLength + sizeLength;
  if (body > head.length) return undefined;
  const id = head.readUIntBE(at, idLength);
  let length = sizeByte & (0xff >> sizeLength);
  let unknown = length === 0xff >> sizeLength;
  for (const byte of head.subarray(at + idLength + 1, body)) {
    unknown &&= byte === 0xff;
    length = length * 256 + byte;
  }
  return { id, body, end: unknown ? body : body + length };
}

// --- Times ------------------------------------------------------------------------------------------------------------

/** A date in a tag, when it states a time of day too: a bare year says nothing of the memo. */
export function timeFromTag(text: string): string | undefined {
  const found = /^(\d{4}-\d\d-\d\d)[T ](\d\d:\d\d)(:\d\d)?(?:\.\d+)?(Z|[+-]\d\d:?\d\d)?$/.exec(text.trim());
  if (!found) return undefined;
  const zone = found[4]?.replace(/^([+-]\d\d):?(\d\d)$/, '$1:$2') ?? '';
  return plausibleTime(`${found[1]}T${found[2]}${found[3] ?? ':00'}${zone}`);
}

function isoFromMilliseconds(milliseconds: number): string | undefined {
  if (!Number.isFinite(milliseconds) || Math.abs(milliseconds) > 8e15) return undefined;
  return plausibleTime(new Date(milliseconds).toISOString().replace('.000Z', 'Z'));
}

/** Recorders without a set clock write their zero; nothing before 1990 was recorded on one. */
function plausibleTime(iso: string): string | undefined {
  const time = Date.parse(iso);
  return Number.isFinite(time) && time > Date.UTC(1990, 0, 1) ? iso : undefined;
}
