/** A sum held against the most that it may come to. */
import type { Range, Result, Say, Worked } from './check.ts';
import { isAtLeast } from './noise.ts';
import { less } from './ranges.ts';
import { saidRange } from './said-range.ts';

export interface AgainstLimit {
  readonly verdict: Exclude<Worked['verdict'], 'refused' | 'missing'>;
  readonly why: string;
  readonly results: readonly Result[];
}

/**
 * Judges a sum against a limit at the worst of both: `88 kg left at worst`, `12 kg over at worst`. Without a limit it
 * only tells the sum.
 */
export function againstLimit(say: Say, sum: Range, limit: Range | undefined, kind: string): AgainstLimit {
  const said = saidRange(say, sum, kind);
  if (!limit) return { verdict: 'told', why: `${said} in all`, results: [] };
  const room = less(limit, sum);
  const holds = isAtLeast(room.low, 0);
  const of = `${said} of ${saidRange(say, limit, kind)}`;
  const worst = `${say(Math.abs(room.low), kind)} ${holds ? 'left' : 'over'} at worst`;
  const asSaid = !holds && room.mid >= 0 ? `, ${say(room.mid, kind)} left as said` : '';
  return {
    verdict: holds ? 'holds' : 'broken',
    why: `${of}: ${worst}${asSaid}`,
    results: [{ name: 'left to the limit', kind, range: room }],
  };
}
