/**
 * Decodes AAC, MP3, FLAC and Vorbis. The decoder takes whole files only, so each piece of packets becomes a
 * small file in memory: a long recording stays within bounded memory, and the index may lie anywhere.
 */
import {
  type AudioCodec,
  BufferTarget,
  EncodedAudioPacketSource,
  type EncodedPacket,
  type InputAudioTrack,
  Mp4OutputFormat,
  OggOutputFormat,
  Output,
} from 'mediabunny';
import { coreOfAac } from './aac-core.ts';
import { mixToMono, type NativeSound } from './native-sound.ts';
import { packetPieces } from './packet-pieces.ts';

type DecoderConfig = NonNullable<Awaited<ReturnType<InputAudioTrack['getDecoderConfig']>>>;

/**
 * Yields the sound of a track, without the first `delaySamples`. A stretch that cannot be decoded becomes a gap; throws when
 * nothing can be.
 */
export async function* packetSound(
  track: InputAudioTrack,
  codec: AudioCodec,
  delaySamples = 0,
): AsyncGenerator<NativeSound> {
  const stated = await track.getDecoderConfig();
  if (!stated) throw new Error('the track has no decoder configuration');
  const config = codec === 'aac' ? coreOfAac(stated) : stated;
  const origin = Math.max(0, await track.input.getFirstTimestamp()) + delaySamples / config.sampleRate;
  const { OfflineAudioContext } = await import('node-web-audio-api');
  const context = new OfflineAudioContext(1, 1, config.sampleRate);

  async function decode(packets: readonly EncodedPacket[]): Promise<Float32Array> {
    if (packets.length === 0) return new Float32Array();
    const decoded = await context.decodeAudioData(await wrapped(packets, codec, config));
    // Copied: the channel data may lie in the decoder's own memory, which goes with the buffer at the next collection.
    const channels = Array.from({ length: decoded.numberOfChannels }, (_, i) =>
      decoded.getChannelData(i).slice(),
    );
    return mixToMono(channels);
  }

  /** Halves a piece that will not decode, so that one damaged packet costs about a second. */
  async function* decodePiece(
    leadIn: readonly EncodedPacket[],
    packets: readonly EncodedPacket[],
  ): AsyncGenerator<NativeSound> {
    try {
      const lead = await decode(leadIn);
      const whole = await decode([...leadIn, ...packets]);
      yield placed(whole.subarray(lead.length), packets, origin, config.sampleRate);
    } catch (error) {
      fault = error;
      if (packets.length <= SMALLEST_PIECE) return;
      const middle = packets.length >> 1;
      yield* decodePiece([], packets.slice(0, middle));
      yield* decodePiece([], packets.slice(middle));
    }
  }

  let fault: unknown;
  let heard = false;
  for await (const { leadIn, packets } of packetPieces(track)) {
    for await (const sound of decodePiece(leadIn, packets)) {
      heard ||= sound.samples.length > 0;
      yield sound;
    }
    // A codec that the decoder does not know fails at once; reading on to the end would only cost time.
    if (!heard && fault) throw fault;
  }
}

const SMALLEST_PIECE = 50;

/** Drops what lies before the start: the encoder's own run-in, which containers mark by negative times. */
function placed(
  samples: Float32Array,
  packets: readonly EncodedPacket[],
  origin: number,
  sampleRate: number,
): NativeSound {
  const start = (packets[0]?.timestamp ?? 0) - origin;
  const dropped = start < 0 ? Math.min(samples.length, Math.round(-start * sampleRate)) : 0;
  return { samples: samples.subarray(dropped), sampleRate, startSeconds: Math.max(0, start) };
}

async function wrapped(
  packets: readonly EncodedPacket[],
  codec: AudioCodec,
  config: DecoderConfig,
): Promise<ArrayBuffer> {
  const target = new BufferTarget();
  const format = codec === 'vorbis' ? new OggOutputFormat() : new Mp4OutputFormat({ fastStart: 'in-memory' });
  const output = new Output({ format, target });
  const source = new EncodedAudioPacketSource(codec);
  output.addAudioTrack(source);
  await output.start();
  const start = packets[0]?.timestamp ?? 0;
  for (const [place, packet] of packets.entries()) {
    const moved = packet.clone({ timestamp: Math.max(0, packet.timestamp - start) });
    await source.add(moved, place === 0 ? { decoderConfig: config } : undefined);
  }
  await output.finalize();
  if (!target.buffer) throw new Error('nothing was written');
  return target.buffer;
}
