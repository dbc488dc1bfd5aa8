/** How many pictures a second a recording has. */
import { FilePathSource, Input, MATROSKA, MP4, MPEG_TS, QTFF, WEBM } from 'mediabunny';

/** So many pictures tell the rate; some containers have to be read through to count them. */
const PICTURES = 2000;

/** Frames a second of a recording's picture, as its container times them; nothing where it has none or cannot be read. */
export async function framesPerSecond(file: string): Promise<number | undefined> {
  const input = new Input({
    source: new FilePathSource(file, { handleUnhandledError: () => {} }),
    formats: [MP4, QTFF, MATROSKA, WEBM, MPEG_TS],
  });
  try {
    const track = await input.getPrimaryVideoTrack();
    if (!track) return undefined;
    const { averagePacketRate } = await track.computePacketStats(PICTURES);
    return averagePacketRate > 0 && Number.isFinite(averagePacketRate) ? averagePacketRate : undefined;
  } catch {
    // A still in a sound file, or a container that is none of these.
    return undefined;
  } finally {
    input.dispose();
  }
}
