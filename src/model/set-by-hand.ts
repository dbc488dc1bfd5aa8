import type { ProjectEvent } from './events.ts';
import type { ModelSettings } from './reconcile.ts';
import type { ModelChange, ProjectRows } from './rows.ts';

/** What a person's own word changes: figures, formulas, limits and tasks set by hand, findings settled. */
export function changesOfHand(
  _rows: ProjectRows,
  _event: ProjectEvent,
  _settings: ModelSettings,
): readonly ModelChange[] {
  return [];
}
