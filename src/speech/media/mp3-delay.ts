/** The encoder's run-in at the head of an MP3 file, which its first frame states and no packet carries. */
import { open } from 'node:fs/promises';

/** Samples that every decoder adds before the first of the sound. */
const DECODER_DELAY = 529;

/** Samples to drop at the head; 0 when the file states none. Source: the Xing/Info frame with encoder delays. */
export async function mp3DelaySamples(path: string): Promise<number> {
  const file = await open(path, 'r');
  try {
    const tagHead = Buffer.alloc(10);
    await file.read(tagHead, 0, 10, 0);
    const frame = Buffer.alloc(4096);
    await file.read(frame, 0, frame.length, tagLength(tagHead));
    const at = ['Xing', 'Info'].map((mark) => frame.indexOf(mark)).find((place) => place >= 0 && place < 64);
    return at === undefined ? 0 : delayAfter(frame, at);
  } finally {
    await file.close();
  }
}

/** ID3v2 tags stand before the first frame; their length has seven bits to the byte. */
function tagLength(head: Buffer): number {
  if (head.toString('latin1', 0, 3) !== 'ID3') return 0;
  return 10 + head.subarray(6, 10).reduce((length, byte) => length * 128 + (byte & 127), 0);
}

function delayAfter(frame: Buffer, at: number): number {
  const flags = frame.readUInt32BE(at + 4);
  // Optional fields by flag: frames, bytes, seek table, quality.
  const fields = [4, 4, 100, 4].reduce((sum, size, bit) => sum + (flags & (1 << bit) ? size : 0), 0);
  const encoder = at + 8 + fields;
  // Nine bytes name the encoder; the delay stands at 21, in the upper twelve of 24 bits.
  if (!/^[\x20-\x7e]{4}/.test(frame.toString('latin1', encoder, encoder + 4))) return 0;
  const delay = frame.readUIntBE(encoder + 21, 3) >> 12;
  return delay > 0 && delay < 4000 ? delay + DECODER_DELAY : 0;
}
