/** The part of media-captions 1.0 that the tests use; its own types do not resolve from a module of ours. */
declare module 'media-captions' {
  export interface ReadCue {
    readonly startTime: number;
    readonly endTime: number;
    readonly text: string;
  }
  export function parseText(
    text: string,
    options: { readonly type: 'srt' | 'vtt'; readonly strict?: boolean; readonly errors?: boolean },
  ): Promise<{ readonly cues: readonly ReadCue[]; readonly errors: readonly unknown[] }>;
}
