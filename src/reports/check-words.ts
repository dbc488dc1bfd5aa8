/** What checks are called by their state. */
import type { CheckState } from '../model/checks/check-rows.ts';

const STATES: Readonly<Record<CheckState, string>> = {
  holds: 'holds',
  broken: 'breaks',
  told: 'worked out',
  refused: 'refused',
  'not-run': 'not run',
  stale: 'stale',
};

/** What a check came to, in a word or two. */
export const stateText = (state: CheckState): string => STATES[state];
