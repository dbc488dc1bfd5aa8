/** What every way to a microphone offers: a stream of 16 kHz mono samples. */
import type { Result } from '../../problem.ts';

export interface MicrophoneDevice {
  /** What `open` takes. */
  readonly name: string;
  /** Words of the system about it. */
  readonly about?: string;
}

/** How a recording came to its end: asked to, or by itself, with what the system said. */
export type MicrophoneEnd = { readonly kind: 'stopped' } | { readonly kind: 'lost'; readonly reason: string };

/** An open microphone. Sound that is not read waits in a short buffer and is then lost: read it at once. */
export interface Microphone {
  /** Words for the person: the device, or that it is the system's own choice. */
  readonly name: string;
  /** Signed 16-bit, 16 kHz, one channel, in pieces of any length; ends when the microphone does. */
  readonly sound: AsyncIterable<Int16Array>;
  /** Known once `sound` has ended. */
  readonly ended: Promise<MicrophoneEnd>;
  stop(): void;
}

/** One way to microphones: a program of the system, or the bundled library. */
export interface MicrophoneSource {
  readonly name: string;
  /** The devices it knows; none when there are none or the source is not on this machine. */
  devices(): Promise<readonly MicrophoneDevice[]>;
  /** Opens a device, or the system's own choice. The problem says why it could not. */
  open(device?: string): Promise<Result<Microphone>>;
}
