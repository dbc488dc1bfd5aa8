/** Findings about formulas themselves: circles, units that do not fit, figures that are missing. */

import { FORMULA_KINDS } from './finding.ts';
import type { Slot } from './rows.ts';
import type { Working } from './working.ts';

/** Settles what was open about a formula, once it runs or another one is set. */
export function settleTroubles(work: Working, slot: Slot, reason: string): void {
  for (const finding of work.draft.findingsOn(slot)) {
    if (!FORMULA_KINDS.has(finding.kind)) continue;
    const settledBy = { choice: 'take-new', at: work.memo.recordedAt, reason };
    work.amend({ ...finding, status: 'settled', settledBy });
  }
}
