/** The part of the recogniser's runtime that is used here; the package brings no declarations of its own. */
declare module 'sherpa-onnx-node' {
  interface Waveform {
    readonly samples: Float32Array;
    readonly sampleRate: number;
  }

  interface OfflineStream {
    acceptWaveform(waveform: Waveform): void;
  }

  /** Which model, by its files: exactly one family is given. */
  interface SherpaModel {
    readonly tokens: string;
    /** Where the runtime does not tell it from the family. */
    readonly modelType?: string;
    readonly moonshine?:
      | { readonly encoder: string; readonly mergedDecoder: string }
      | {
          readonly preprocessor: string;
          readonly encoder: string;
          readonly uncachedDecoder: string;
          readonly cachedDecoder: string;
        };
    readonly whisper?: {
      readonly encoder: string;
      readonly decoder: string;
      readonly language: string;
      readonly task: 'transcribe';
      readonly enableTokenTimestamps: 0 | 1;
    };
    readonly transducer?: { readonly encoder: string; readonly decoder: string; readonly joiner: string };
    readonly canary?: {
      readonly encoder: string;
      readonly decoder: string;
      readonly srcLang: string;
      readonly tgtLang: string;
      readonly usePnc: 0 | 1;
    };
    readonly fireRedAsr?: { readonly encoder: string; readonly decoder: string };
    readonly senseVoice?: {
      readonly model: string;
      readonly language: string;
      readonly useInverseTextNormalization: 0 | 1;
    };
    readonly paraformer?: { readonly model: string };
    readonly nemoCtc?: { readonly model: string };
    readonly zipformerCtc?: { readonly model: string };
    readonly wenetCtc?: { readonly model: string };
    readonly dolphin?: { readonly model: string };
    readonly omnilingual?: { readonly model: string };
    readonly medasr?: { readonly model: string };
    readonly telespeechCtc?: string;
  }

  interface OfflineResult {
    readonly text: string;
    readonly tokens?: readonly string[];
    readonly timestamps?: readonly number[];
    readonly durations?: readonly number[];
  }

  class OfflineRecognizer {
    constructor(config: {
      featConfig: { sampleRate: number; featureDim: number };
      modelConfig: SherpaModel & { numThreads: number; provider: 'cpu'; debug: 0 | 1 };
    });
    createStream(): OfflineStream;
    decodeAsync(stream: OfflineStream): Promise<unknown>;
    getResult(stream: OfflineStream): OfflineResult;
  }

  class Vad {
    constructor(
      config: {
        sileroVad: {
          model: string;
          threshold: number;
          minSilenceDuration: number;
          minSpeechDuration: number;
          maxSpeechDuration: number;
          windowSize: number;
        };
        sampleRate: number;
        numThreads: number;
        provider: 'cpu';
        debug: 0 | 1;
      },
      bufferSeconds: number,
    );
    acceptWaveform(samples: Float32Array): void;
    isEmpty(): boolean;
    isDetected(): boolean;
    /** The earliest stretch; `start` counts samples from the beginning of the sound. */
    front(externalBuffer: boolean): { readonly start: number; readonly samples: Float32Array };
    pop(): void;
    flush(): void;
  }

  class LinearResampler {
    constructor(from: number, to: number);
    resample(samples: Float32Array): Float32Array;
    flush(samples: Float32Array): Float32Array;
  }

  const sherpa: {
    OfflineRecognizer: typeof OfflineRecognizer;
    Vad: typeof Vad;
    LinearResampler: typeof LinearResampler;
  };
  export default sherpa;
  export type { LinearResampler, OfflineRecognizer, OfflineResult, OfflineStream, SherpaModel, Vad };
}
