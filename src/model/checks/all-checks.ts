/** Every check there is, by name. */
import type { Check } from './check.ts';
import { CLEARANCE } from './clearance.ts';

export const CHECKS: readonly Check[] = [CLEARANCE];

/** A check by its name, in any case; undefined when there is none. */
export const checkNamed = (name: string): Check | undefined =>
  CHECKS.find((check) => check.name === name.toLowerCase());
