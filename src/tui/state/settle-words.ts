/** What the settling keys do to the marked clash, in words: which size holds, or that a thing may stay as it is. */
import { ofThing, quantityText } from '../../reports/quantity-text.ts';
import type { Intent } from '../keys.ts';
import type { ScreenState } from './screen-state.ts';

type Settling = Extract<Intent, 'old-holds' | 'new-holds' | 'both-right' | 'right-size'>;

/** Instead of the words of the key table; none where no clash is marked. */
export function settleWords({ data, chosen }: ScreenState): Partial<Readonly<Record<Intent, string>>> {
  const finding = data.findings[chosen.clashes];
  if (!finding) return {};
  const size = (side: 'was' | 'now') => quantityText(ofThing(finding[side], finding));
  const all = (words: string): Partial<Record<Settling, string>> => ({
    'old-holds': words,
    'new-holds': words,
    'both-right': words,
  });
  if (finding.now.unit === '' || finding.kind === 'check' || finding.kind === 'received')
    return all('let it be');
  switch (finding.kind) {
    case 'limit':
      return {
        'old-holds': 'limit holds',
        'new-holds': `limit to ${size('now')}`,
        'both-right': 'let it pass',
      };
    case 'hand':
      return { ...all('let them differ'), 'new-holds': `both ${size('now')}` };
    default:
      return { 'old-holds': `${size('was')} holds`, 'new-holds': `${size('now')} holds` };
  }
}
