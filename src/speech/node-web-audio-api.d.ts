/** What the sound library offers beside the declarations that it brings. */
import type {} from 'node-web-audio-api';

declare module 'node-web-audio-api' {
  export const mediaDevices: MediaDevices;
}

declare global {
  interface AudioContextOptions {
    /** `none`: nothing is played, and no loudspeaker is asked for. */
    sinkId?: { readonly type: 'none' };
  }
}
