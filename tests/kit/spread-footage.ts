/**
 * Makes camera footage of any size out of a small MP4: the same chunks of sound and picture, far apart, with holes between
 * them where a camera would have more picture. The index lies at the end, as cameras write it. Source: ISO/IEC 14496-12
 * (box structure, ChunkOffsetBox, ChunkLargeOffsetBox).
 */
import { closeSync, ftruncateSync, openSync, readFileSync, writeSync } from 'node:fs';

/** Boxes that hold other boxes on the way to the chunk offsets. */
const HOLDERS = new Set(['moov', 'trak', 'mdia', 'minf', 'stbl']);

interface Box {
  readonly type: string;
  readonly body: Buffer;
}

function boxesIn(bytes: Buffer): readonly Box[] {
  const boxes: Box[] = [];
  for (let at = 0; at + 8 <= bytes.length; ) {
    const length = bytes.readUInt32BE(at);
    boxes.push({ type: bytes.toString('latin1', at + 4, at + 8), body: bytes.subarray(at + 8, at + length) });
    at += length;
  }
  return boxes;
}

function boxOf(type: string, body: Buffer): Buffer {
  const head = Buffer.alloc(8);
  head.writeUInt32BE(8 + body.length, 0);
  head.write(type, 4, 'latin1');
  return Buffer.concat([head, body]);
}

function offsetsIn(boxes: readonly Box[]): readonly number[] {
  return boxes.flatMap(({ type, body }) => {
    if (HOLDERS.has(type)) return offsetsIn(boxesIn(body));
    if (type !== 'stco') return [];
    return Array.from({ length: body.readUInt32BE(4) }, (_, at) => body.readUInt32BE(8 + 4 * at));
  });
}

/** The same box with every chunk at its new place, told in 64 bit. */
function moved({ type, body }: Box, places: ReadonlyMap<number, number>): Buffer {
  if (HOLDERS.has(type)) return boxOf(type, Buffer.concat(boxesIn(body).map((box) => moved(box, places))));
  if (type !== 'stco') return boxOf(type, body);
  const count = body.readUInt32BE(4);
  const wide = Buffer.alloc(8 + 8 * count);
  body.copy(wide, 0, 0, 8);
  for (let at = 0; at < count; at++)
    wide.writeBigUInt64BE(BigInt(places.get(body.readUInt32BE(8 + 4 * at)) ?? 0), 8 + 8 * at);
  return boxOf('co64', wide);
}

/** Writes `to`, `bytes` long and mostly holes, from the MP4 file `from`. */
export function spreadFootage(from: string, to: string, bytes: number): void {
  const small = readFileSync(from);
  const boxes = boxesIn(small);
  const [type, index] = ['ftyp', 'moov'].map((name) => boxes.find((box) => box.type === name));
  if (!type || !index) throw new Error(`${from} is no MP4 file`);
  const starts = [...new Set(offsetsIn([index]))].sort((a, b) => a - b);
  const mediaEnd = small.length - 8 - index.body.length;
  const head = boxOf('ftyp', type.body);
  const first = head.length + 16;
  const apart = Math.floor((bytes - first) / starts.length);
  const places = new Map(starts.map((start, at) => [start, first + at * apart]));
  const media = Buffer.alloc(16);
  media.writeUInt32BE(1, 0);
  media.write('mdat', 4, 'latin1');
  media.writeBigUInt64BE(BigInt(16 + apart * starts.length), 8);
  const file = openSync(to, 'w');
  try {
    const put = (part: Buffer, at: number) => writeSync(file, part, 0, part.length, at);
    put(Buffer.concat([head, media]), 0);
    starts.forEach((start, at) => {
      put(small.subarray(start, starts[at + 1] ?? mediaEnd), places.get(start) ?? 0);
    });
    ftruncateSync(file, first + apart * starts.length);
    put(moved(index, places), first + apart * starts.length);
  } finally {
    closeSync(file);
  }
}
