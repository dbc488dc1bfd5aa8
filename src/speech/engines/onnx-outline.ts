/**
 * The outline of an ONNX file: whether it is one, whether it is whole, and what it says of itself. The graph in the
 * middle, which is nearly all of it, is stepped over.
 * Source: ONNX's `onnx.proto` (ModelProto: fields 1 ir_version, 7 graph, 14 metadata_props with key 1 and value 2).
 */
import { type FileHandle, open } from 'node:fs/promises';
import { Cursor, textIn } from '../protobuf.ts';

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
    const length = head.lengthOf(tag % 8);
    if (field === 0 || length === undefined) return undefined;
    const from = at + head.at;
    if (from + length > size) return undefined;
    if (field === GRAPH) hasGraph = true;
    if (field === METADATA && length <= LONGEST_METADATA) {
      const entry = await bytesAt(file, from, length);
      metadata[textIn(entry, 1)] = textIn(entry, 2);
    }
    at = from + length;
  }
  return hasGraph ? { metadata } : undefined;
}

async function bytesAt(file: FileHandle, at: number, length: number): Promise<Uint8Array> {
  const bytes = new Uint8Array(length);
  const { bytesRead } = await file.read(bytes, 0, length, at);
  return bytes.subarray(0, bytesRead);
}
