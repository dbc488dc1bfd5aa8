import type { FindingView } from './views.ts';

/**
 * Whether a clash is worth asking about: what was changed on purpose or measured anew is one only when something was
 * done on the old value, or was made to the new one without a word about the old.
 */
export function isQuestion({ status, kind, now, consequences }: FindingView): boolean {
  if (status !== 'open') return false;
  if (isMadeOtherwise({ kind, now })) return true;
  return (kind !== 'decided' && kind !== 'remeasured') || consequences.some(({ act }) => act !== 'derived');
}

/** Whether something was made to another size than the one that stood. */
export const isMadeOtherwise = ({ kind, now }: Pick<FindingView, 'kind' | 'now'>): boolean =>
  kind === 'remeasured' && now.state === 'made';
