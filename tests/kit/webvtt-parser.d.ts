/** The part of webvtt-parser 2.2 that the tests use; the package brings no types. */
declare module 'webvtt-parser' {
  export interface ParsedCue {
    readonly startTime: number;
    readonly endTime: number;
    readonly text: string;
    readonly tree: { readonly children: readonly { readonly type: string; readonly value?: string }[] };
  }
  export class WebVTTParser {
    constructor(entities?: Readonly<Record<string, string>>);
    parse(
      text: string,
      mode?: 'metadata' | 'chapters',
    ): {
      readonly cues: readonly ParsedCue[];
      readonly errors: readonly { readonly message: string; readonly line: number }[];
    };
  }
}

declare module 'webvtt-parser/html-entities.json' {
  const entities: Readonly<Record<string, string>>;
  export default entities;
}
