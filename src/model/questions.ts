import type { FindingView } from './views.ts';

/**
 * Whether a clash is worth asking about: what was changed on purpose or measured anew is one only when something was
 * done on the old value.
 */
export function isQuestion({ status, kind, consequences }: FindingView): boolean {
  if (status !== 'open') return false;
  return (kind !== 'decided' && kind !== 'remeasured') || consequences.some(({ act }) => act !== 'derived');
}
