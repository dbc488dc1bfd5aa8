/** Findings about formulas themselves: circles, units that do not fit, figures that are missing. */

import type { Slot } from './rows.ts';
import type { FindingKind } from './views.ts';
import type { Working } from './working.ts';

const TROUBLES: ReadonlySet<FindingKind> = new Set(['cycle', 'unit-clash', 'not-run']);

/** Settles what was open about a formula, once it runs or another one is set. */
export function settleTroubles(work: Working, slot: Slot, reason: string): void {
  for (const finding of work.draft.findingsOn(slot)) {
    if (!TROUBLES.has(finding.kind)) continue;
    const settledBy = { choice: 'take-new', at: work.memo.recordedAt, reason };
    work.amend({ ...finding, status: 'settled', settledBy });
  }
}
