/**
 * A story: one build told in dictated memos over several days, with the notes that a careful listener would take.
 * The format is described in docs/stories.md.
 */
import type { HeardDoubt } from '../../src/language/heard/heard-doubts.ts';
import type { Attribute, Bound, Dimension, HouseUnits } from '../../src/language/notes.ts';
import type { FindingKind } from '../../src/model/views.ts';

export interface GoldFigure {
  readonly quote: string;
  readonly item: string;
  readonly attribute: Attribute;
  readonly bound: Bound;
  readonly value: number;
  readonly unit: string;
  readonly dimension: Dimension;
  readonly high?: number;
  readonly plusMinus?: number;
  readonly plusMinusUnit?: string;
}

export interface GoldConflict {
  readonly item: string;
  readonly attribute: Attribute;
  readonly was: { readonly value: number; readonly unit: string };
  readonly now: { readonly value: number; readonly unit: string };
  readonly kind: FindingKind;
}

export interface GoldMemo {
  readonly id: string;
  readonly recordedAt: string;
  readonly text: string;
  /** What the recogniser was unsure of, where the text is its own. */
  readonly doubts?: readonly HeardDoubt[];
  readonly figures?: readonly GoldFigure[];
  readonly decisions?: readonly { readonly quote: string; readonly gist: string }[];
  readonly tasks?: readonly {
    readonly id: string;
    readonly quote: string;
    readonly gist: string;
    readonly due?: string | null;
    readonly waitsFor?: readonly string[];
  }[];
  readonly done?: readonly {
    readonly quote: string;
    readonly gist: string;
    readonly closes?: string | null;
  }[];
  readonly arrivals?: readonly {
    readonly quote: string;
    readonly item: string;
    readonly expected?: string | null;
  }[];
  readonly problems?: readonly { readonly quote: string; readonly gist: string }[];
  readonly promises?: readonly { readonly quote: string; readonly gist: string }[];
  readonly conflicts?: readonly GoldConflict[];
}

export interface Story {
  readonly story: string;
  readonly units: HouseUnits;
  readonly region?: string;
  readonly about: string;
  readonly memos: readonly GoldMemo[];
  readonly openAtEnd: readonly string[];
}

/** What a reader of stories gives back: the parts of the export document that are scored. */
export interface StoryReading {
  readonly memos: readonly {
    readonly figures: readonly (Omit<GoldFigure, 'item'> & { readonly item: string })[];
    readonly decisions: readonly { readonly quote: string }[];
    readonly tasks: readonly {
      readonly id: string;
      readonly quote: string;
      readonly due?: string | null | undefined;
      readonly waitsFor: readonly string[];
    }[];
    readonly done: readonly { readonly quote: string; readonly closes?: string | null | undefined }[];
    readonly arrivals: readonly { readonly quote: string }[];
    readonly problems: readonly { readonly quote: string }[];
    readonly promises: readonly { readonly quote: string }[];
    readonly conflicts: readonly GoldConflict[];
  }[];
  readonly open: readonly string[];
}
