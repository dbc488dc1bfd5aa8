/**
 * The outline of an ONNX file: whether it is one, whether it is whole, and what it says of itself. The graph in the
 * middle, which is nearly all of it, is stepped over.
 * Sources: ONNX's `onnx.proto` (ModelProto: fields 1 ir_version, 7 graph, 14 metadata_props with key 1 and value 2);
 * Protocol Buffers encoding, wire types 0, 1, 2 and 5.
 */
import { type FileHandle, open } from 'node:fs/promises';

export interface OnnxOutline {
  /** What the exporter wrote of the model: `model_type`, `vocab_size` ... */
  readonly metadata: Readonly<Record<string, string>>;
}

const GRAPH = 7;
const METADATA = 14;
const LONGEST_METADATA = 1 << 20;
/** Fields of a whole model beside its metadata are few: more of them is another kind of file. */
const MOST_FIELDS = 10_000;

/** Undefined for a file that is no ONNX model, or one that was cut off. Throws when it cannot be read. */
export async function onnxOutline(path: string): Promise<OnnxOutline | undefined> {
  const file = await open(path, 'r');
  try {
    return await outlineOf(file, (await file.stat()).size);
  } finally {
    await file.close();
  }
}

async function outlineOf(file: FileHandle, size: number): Promise<OnnxOutline | undefined> {
  const metadata: Record<string, string> = {};
  let hasGraph = false;
  let at = 0;
  for (let fields = 0; at < size; fields++) {
    const head = new Cursor(await bytesAt(file, at, Math.min(20, size - at)));
    const tag = head.varint();
    if (tag === undefined || fields === MOST_FIELDS) return undefined;
    const field = Math.floor(tag / 8);
    const length = lengthOf(tag % 8, head);
    if (field === 0 || length === undefined) return undefined;
    const from = at + head.at;
    if (from + length > size) return undefined;
    if (field === GRAPH) hasGraph = true;
    if (field === METADATA && length <= LONGEST_METADATA) {
      const [key, value] = entryOf(await bytesAt(file, from, length));
      metadata[key] = value;
    }
    at = from + length;
  }
  return hasGraph ? { metadata } : undefined;
}

/** How many bytes a value takes; the cursor stands at its first one afterwards. */
function lengthOf(wireType: number, head: Cursor): number | undefined {
  if (wireType === 0) return head.varint() === undefined ? undefined : 0;
  if (wireType === 1) return 8;
  if (wireType === 2) return head.varint();
  return wireType === 5 ? 4 : undefined;
}

function entryOf(bytes: Uint8Array): readonly [string, string] {
  const cursor = new Cursor(bytes);
  const texts = ['', ''];
  while (cursor.at < bytes.length) {
    const tag = cursor.varint();
    const length = cursor.varint();
    if (tag === undefined || length === undefined) break;
    texts[Math.floor(tag / 8) - 1] = Buffer.from(bytes.subarray(cursor.at, cursor.at + length)).toString(
      'utf8',
    );
    cursor.at += length;
  }
  return [texts[0] ?? '', texts[1] ?? ''];
}

async function bytesAt(file: FileHandle, at: number, length: number): Promise<Uint8Array> {
  const bytes = new Uint8Array(length);
  const { bytesRead } = await file.read(bytes, 0, length, at);
  return bytes.subarray(0, bytesRead);
}

class Cursor {
  at = 0;
  readonly #bytes: Uint8Array;
  constructor(bytes: Uint8Array) {
    this.#bytes = bytes;
  }

  /** A number in groups of seven bits, lowest first; undefined where the bytes end before it does. */
  varint(): number | undefined {
    let value = 0;
    for (let shift = 0; shift < 70; shift += 7) {
      const byte = this.#bytes[this.at++];
      if (byte === undefined) return undefined;
      value += (byte & 127) * 2 ** shift;
      if (byte < 128) return value;
    }
    return undefined;
  }
}
