/** A recording that is written as it goes: at every moment the file on the disk is a whole WAV. */
import { type FileHandle, open } from 'node:fs/promises';
import { SAMPLE_RATE } from '../recogniser/sample-rate.ts';
import { HEADER_BYTES, isOwnHeader, lengthFields, waveHeader } from './wave-header.ts';

const BYTES = 2;
/** Sound that a killed process, or one cut off from power, may lose. */
const FLUSH_SAMPLES = SAMPLE_RATE / 2;

export class RecordingFile {
  readonly path: string;
  readonly #handle: FileHandle;
  #samples = 0;
  #stated = 0;
  #synced: Promise<void> | undefined;

  private constructor(path: string, handle: FileHandle) {
    this.path = path;
    this.#handle = handle;
  }

  /** Makes a new file that only its owner reads. `startedAt` is wall time without zone. Throws when it cannot. */
  static async create(path: string, startedAt: string): Promise<RecordingFile> {
    const handle = await open(path, 'wx+', 0o600);
    try {
      await writeAll(handle, waveHeader(startedAt, 0), 0);
    } catch (error) {
      await handle.close();
      throw error;
    }
    return new RecordingFile(path, handle);
  }

  get samples(): number {
    return this.#samples;
  }

  /** Writes sound behind what is there; one call at a time. Throws when the disk takes no more. */
  async append(sound: Int16Array): Promise<void> {
    await writeAll(this.#handle, asBytes(sound), this.#end);
    this.#samples += sound.length;
    if (this.#samples - this.#stated < FLUSH_SAMPLES) return;
    await this.#stateLength();
    // The disk's own cache is flushed beside the recording, never in its way.
    this.#synced ??= this.#handle
      .datasync()
      .catch(() => {})
      .finally(() => {
        this.#synced = undefined;
      });
  }

  /**
   * Moves everything from `sample` on into a new file and goes on there. The new file is written before this one is cut
   * short: a kill in between leaves sound twice, never less.
   */
  async cutAt(sample: number, path: string, startedAt: string): Promise<RecordingFile> {
    const next = await RecordingFile.create(path, startedAt);
    const tail = Buffer.alloc((this.#samples - sample) * BYTES);
    const { bytesRead } = await this.#handle.read(tail, 0, tail.length, HEADER_BYTES + sample * BYTES);
    if (bytesRead > 0) {
      await next.append(new Int16Array(Uint8Array.from(tail.subarray(0, bytesRead)).buffer));
      await next.#stateLength();
    }
    this.#samples = sample;
    await this.#stateLength();
    await this.#handle.truncate(this.#end);
    return next;
  }

  /** States the last length, flushes the disk and closes. */
  async close(): Promise<void> {
    try {
      await this.#stateLength();
      await this.#synced;
      await this.#handle.sync();
    } finally {
      await this.#handle.close();
    }
  }

  get #end(): number {
    return HEADER_BYTES + this.#samples * BYTES;
  }

  async #stateLength(): Promise<void> {
    await stateLength(this.#handle, this.#samples);
    this.#stated = this.#samples;
  }
}

/**
 * Puts the length of a recording right that a killed process left behind, and answers how many samples it holds;
 * undefined when the file is no recording of this program.
 */
export async function repairRecording(path: string): Promise<number | undefined> {
  const handle = await open(path, 'r+');
  try {
    const head = Buffer.alloc(HEADER_BYTES);
    const { bytesRead } = await handle.read(head, 0, HEADER_BYTES, 0);
    // Killed between the making of the file and its first bytes.
    if (bytesRead === 0) return 0;
    if (!isOwnHeader(head.subarray(0, bytesRead))) return undefined;
    const { size } = await handle.stat();
    const samples = Math.floor((size - HEADER_BYTES) / BYTES);
    await stateLength(handle, samples);
    await handle.truncate(HEADER_BYTES + samples * BYTES);
    await handle.sync();
    return samples;
  } finally {
    await handle.close();
  }
}

async function stateLength(handle: FileHandle, samples: number): Promise<void> {
  for (const { at, value } of lengthFields(samples)) {
    const bytes = Buffer.alloc(4);
    bytes.writeUInt32LE(value);
    await writeAll(handle, bytes, at);
  }
}

/** A disk that is nearly full may take a part only; the next write then says why. */
async function writeAll(handle: FileHandle, bytes: Uint8Array, position: number): Promise<void> {
  for (let done = 0; done < bytes.length; ) {
    const { bytesWritten } = await handle.write(bytes, done, bytes.length - done, position + done);
    done += bytesWritten;
  }
}

function asBytes(sound: Int16Array): Uint8Array {
  // Every system that Node runs on keeps the low byte first, as WAV does.
  return new Uint8Array(sound.buffer, sound.byteOffset, sound.byteLength);
}
