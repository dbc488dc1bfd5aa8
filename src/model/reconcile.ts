import type { HouseUnits, Quantity } from '../language/notes.ts';
import type { ModelChange, ModelReader } from './rows.ts';
import type { MemoView } from './views.ts';

/** What reconciling leans on beside the model. */
export interface ModelSettings {
  readonly units: HouseUnits;
  readonly region?: string;
  /** Per dimension, set by a person. */
  readonly tolerances: Readonly<Record<string, Quantity>>;
}

/** A memo as reconciling sees it: its words and its notes with their ids. */
export type ReconcilableMemo = Pick<MemoView, 'id' | 'recordedAt' | 'text' | 'notes'>;

/**
 * Works one memo's notes into the model: names items, files claims, chooses the standing figures, works derived
 * figures out again, checks limits, closes tasks, receives arrivals, and says what clashed and why.
 * Pure; the changes are in the order in which they must be put.
 */
export function reconcileMemo(
  _reader: ModelReader,
  _memo: ReconcilableMemo,
  _settings: ModelSettings,
): readonly ModelChange[] {
  return [];
}
