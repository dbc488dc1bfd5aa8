/** How a clash was settled, in words. Plain text; pages escape it. */
import type { FindingView } from '../model/views.ts';
import { amountText, ofThing } from './quantity-text.ts';
import { dayOf } from './source-text.ts';
import { oneLine } from './words.ts';

const CHOICES: Readonly<Record<string, string>> = {
  'keep-old': 'the older one was kept',
  'take-new': 'the newer one was taken',
  'both-right': 'both are right',
  correct: 'put right',
};

/** Whether the talk itself settled it, when it told the new figure. */
export function isSettledByTalk({ settledBy, foundAt }: FindingView): boolean {
  return settledBy !== undefined && settledBy.choice === 'take-new' && settledBy.at === foundAt;
}

/** "2026-03-21: the newer one was taken, taped it twice"; empty while it is open. */
export function settledText(finding: FindingView): string {
  const { settledBy } = finding;
  if (!settledBy) return '';
  const { choice, at, reason, value } = settledBy;
  const chosen = CHOICES[choice] ?? oneLine(choice);
  const to = value ? ` to ${amountText(ofThing(value, finding))}` : '';
  const why = isSettledByTalk(finding) ? 'as it was told' : reason && oneLine(reason);
  return `${dayOf(at)}: ${chosen}${to}${why ? `, ${why}` : ''}`;
}
