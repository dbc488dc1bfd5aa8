/** Decodes Opus straight to 16 kHz, the one codec that the general decoder lacks. */
import type { EncodedPacket, InputAudioTrack } from 'mediabunny';
import { OpusDecoder } from 'opus-decoder';
import { mixToMono, type NativeSound } from './native-sound.ts';
import { packetPieces } from './packet-pieces.ts';

const RATE = 16_000;
/** The decoder works on the calling thread: short batches leave it room for the screen. */
const BATCH_PACKETS = 250;

export async function* opusSound(track: InputAudioTrack): AsyncGenerator<NativeSound> {
  const config = await track.getDecoderConfig();
  const header = headerOf(config?.description);
  const decoder = new OpusDecoder({ sampleRate: RATE, ...header.layout });
  await decoder.ready;
  try {
    const origin = Math.max(0, await track.input.getFirstTimestamp());
    // Samples of the encoder's run-in, counted at 48 kHz. Source: RFC 7845, pre-skip.
    let skip = Math.round((header.preSkip / 48_000) * RATE);
    for await (const { packets } of packetPieces(track)) {
      for (const batch of batches(packets)) {
        const { channelData } = quietly(() => decoder.decodeFrames(batch.map((packet) => packet.data)));
        const mono = mixToMono(channelData);
        const samples = mono.subarray(Math.min(skip, mono.length));
        skip -= mono.length - samples.length;
        const startSeconds = Math.max(0, (batch[0]?.timestamp ?? 0) - origin);
        yield { samples, sampleRate: RATE, startSeconds };
        await new Promise(setImmediate);
      }
    }
  } finally {
    decoder.free();
  }
}

/** The decoder prints each damaged packet; those lines would land in the middle of the screen. */
function quietly<T>(work: () => T): T {
  const print = console.error;
  console.error = () => {};
  try {
    return work();
  } finally {
    console.error = print;
  }
}

function* batches(packets: readonly EncodedPacket[]): Generator<readonly EncodedPacket[]> {
  for (let from = 0; from < packets.length; from += BATCH_PACKETS)
    yield packets.slice(from, from + BATCH_PACKETS);
}

interface OpusHeader {
  readonly preSkip: number;
  readonly layout: {
    channels?: number;
    streamCount?: number;
    coupledStreamCount?: number;
    channelMappingTable?: number[];
  };
}

/** Source: RFC 7845, section 5.1 (identification header). */
function headerOf(description: AllowSharedBufferSource | undefined): OpusHeader {
  if (!description) return { preSkip: 0, layout: {} };
  const bytes = ArrayBuffer.isView(description)
    ? Buffer.from(description.buffer, description.byteOffset, description.byteLength)
    : Buffer.from(description);
  if (bytes.length < 19 || bytes.toString('latin1', 0, 8) !== 'OpusHead') return { preSkip: 0, layout: {} };
  const preSkip = bytes.readUInt16LE(10);
  const channels = bytes.readUInt8(9);
  if (bytes.readUInt8(18) === 0 || bytes.length < 21 + channels) return { preSkip, layout: { channels } };
  const channelMappingTable = [...bytes.subarray(21, 21 + channels)];
  return {
    preSkip,
    layout: {
      channels,
      streamCount: bytes.readUInt8(19),
      coupledStreamCount: bytes.readUInt8(20),
      channelMappingTable,
    },
  };
}
