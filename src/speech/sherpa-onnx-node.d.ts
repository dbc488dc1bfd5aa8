/** The part of the recogniser's runtime that is used here; the package brings no declarations of its own. */
declare module 'sherpa-onnx-node' {
  interface Waveform {
    readonly samples: Float32Array;
    readonly sampleRate: number;
  }

  interface OfflineStream {
    acceptWaveform(waveform: Waveform): void;
  }

  class OfflineRecognizer {
    constructor(config: {
      featConfig: { sampleRate: number; featureDim: number };
      modelConfig: {
        moonshine: { encoder: string; mergedDecoder: string };
        tokens: string;
        numThreads: number;
        provider: 'cpu';
        debug: 0 | 1;
      };
    });
    createStream(): OfflineStream;
    decodeAsync(stream: OfflineStream): Promise<unknown>;
    getResult(stream: OfflineStream): { readonly text: string };
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
  export type { LinearResampler, OfflineRecognizer, OfflineStream, Vad };
}
