/**
 * A Whisper model as whisper.cpp keeps it. Source: the loader in whisper.cpp 1.5.0 (`whisper_model_load`): a magic
 * number, then eleven 32-bit numbers of which the first is the size of the vocabulary.
 */
import { open } from 'node:fs/promises';

const MAGIC = 0x67676d6c;
/** `GGUF`, a newer container of other programs. */
const OTHER_MAGIC = 0x46554747;
const HEAD = 4 + 11 * 4;
/** Of the smallest and the largest model that there is, with room. */
const LAYERS = { least: 1, most: 64 };

export type GgmlVerdict = 'whisper' | 'gguf' | 'other' | 'damaged';

/** Looks at the head alone. Throws when the file cannot be read. */
export async function ggmlVerdict(path: string): Promise<GgmlVerdict> {
  const file = await open(path, 'r');
  try {
    const { bytesRead, buffer } = await file.read(Buffer.alloc(HEAD), 0, HEAD, 0);
    if (bytesRead < 4) return 'other';
    const magic = buffer.readUInt32LE(0);
    if (magic === OTHER_MAGIC) return 'gguf';
    if (magic !== MAGIC) return 'other';
    if (bytesRead < HEAD) return 'damaged';
    const [vocabulary, , , , layers = 0] = Array.from({ length: 11 }, (_, at) =>
      buffer.readInt32LE(4 + 4 * at),
    );
    const isSensible = vocabulary !== undefined && vocabulary > 50_000 && vocabulary < 60_000;
    return isSensible && layers >= LAYERS.least && layers <= LAYERS.most ? 'whisper' : 'damaged';
  } finally {
    await file.close();
  }
}
