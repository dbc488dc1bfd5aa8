/** What a recogniser gives back for one recording. */
import type { Utterance } from '../model/views.ts';

export interface Transcript {
  /** Engine and model that heard it, as in `moonshine-tiny-en`. */
  readonly engine: string;
  readonly durationSeconds: number;
  /** In order, not overlapping. The memo's text is their texts joined by a single space. */
  readonly utterances: readonly Utterance[];
  /** Recogniser output dropped for want of speech evidence, with the reason. */
  readonly dropped: readonly (Utterance & { readonly why: string })[];
}

export interface MediaFacts {
  /** Container and codec in words: "MP4, AAC". */
  readonly format: string;
  readonly durationSeconds: number;
  /** From the container, when it says so. ISO 8601; `Z` when the container counts in UTC. */
  readonly createdAt?: string;
  /** Maker and model of the recorder, when it says so. */
  readonly device?: string;
  /** True when the file stops before the end that it states: what is there can be heard, the rest is lost. */
  readonly endsEarly?: boolean;
}

/** Where a long job stands. `fraction` runs from 0 to 1. */
export interface TakeProgress {
  readonly stage: 'decoding' | 'listening' | 'transcribing' | 'reading';
  readonly fraction: number;
  readonly remainingSeconds?: number;
  /** Words of the latest utterance. */
  readonly words?: string;
}
