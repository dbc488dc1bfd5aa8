/** Gathers a track's packets into pieces that a decoder takes whole, each with the packets before it as lead-in. */
import { type EncodedPacket, EncodedPacketSink, type InputAudioTrack } from 'mediabunny';

export interface PacketPiece {
  /** The last packets of the piece before: decoded again to warm the decoder up, their samples dropped. */
  readonly leadIn: readonly EncodedPacket[];
  readonly packets: readonly EncodedPacket[];
}

/** Long enough to be quick, short enough to bound memory: 30 s of 48 kHz stereo are 11.5 MB. */
const PIECE_SECONDS = 5;
/** A pause of the recorder ends a piece. */
const GAP_SECONDS = 0.25;
/** MP3 frames reach back into up to 511 bytes of earlier frames. Source: ISO/IEC 11172-3, main_data_begin. */
const LEAD_IN_BYTES = 1024;
const LEAD_IN_PACKETS = 4;

/** Throws when the file breaks off in the middle, but only after the packets before the break were given out. */
export async function* packetPieces(track: InputAudioTrack): AsyncGenerator<PacketPiece> {
  let fault: unknown;
  let leadIn: EncodedPacket[] = [];
  let packets: EncodedPacket[] = [];
  for await (const packet of packetsUntilFault(track, (error) => {
    fault = error;
  })) {
    const first = packets[0];
    const last = packets.at(-1);
    const gap = last ? packet.timestamp - (last.timestamp + last.duration) : 0;
    if (first && (packet.timestamp - first.timestamp >= PIECE_SECONDS || gap > GAP_SECONDS)) {
      yield { leadIn, packets };
      leadIn = gap > GAP_SECONDS ? [] : lastPackets(packets);
      packets = [];
    }
    packets.push(packet);
  }
  if (packets.length > 0) yield { leadIn, packets };
  if (fault) throw fault;
}

async function* packetsUntilFault(track: InputAudioTrack, onFault: (error: unknown) => void) {
  try {
    yield* new EncodedPacketSink(track).packets();
  } catch (error) {
    onFault(error);
  }
}

function lastPackets(packets: readonly EncodedPacket[]): EncodedPacket[] {
  let bytes = 0;
  let from = packets.length;
  while (from > 0 && (bytes < LEAD_IN_BYTES || packets.length - from < LEAD_IN_PACKETS)) {
    from--;
    bytes += packets[from]?.data.length ?? 0;
  }
  return packets.slice(from);
}
