/** Whether the words behind a bare number make it a length. */
import type { Amount, Room } from '../../rules/rule.ts';
import { evidenceAfter, ON_A_MEASURE, SO_MUCH_EACH } from './evidence.ts';

/** Words behind a number that make it a length; "each" and "a side" say nothing of what it measures. */
export function sizedAfter(room: Room, amount: Amount): boolean {
  const after = evidenceAfter(room, amount);
  return after !== undefined && after.why !== SO_MUCH_EACH && after.why !== ON_A_MEASURE;
}
