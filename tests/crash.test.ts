/** A short form of `npm run bench:crash`: a few calls of each kind are killed, and nothing of what was said is lost. */
import { existsSync } from 'node:fs';
import { expect, test } from 'vitest';
import { PHASES } from './kit/crash/phases.ts';
import { runPhases } from './kit/crash/run-phases.ts';

const canHear = existsSync('models');
const KILLS: Readonly<Record<string, number>> = { reviewing: 3, 'writing pages and journals': 2 };
const NEEDS_EARS = new Set(['recording', 'taking a recording', 'transcribing']);

test.for(PHASES)(
  'killed while $name: the project is whole, and the next call goes on',
  { timeout: 180_000 },
  async (phase, context) => {
    if (!canHear && NEEDS_EARS.has(phase.name)) return context.skip('the recogniser is not here');
    // Other moments at every run; the whole run has a seed.
    const [count] = await runPhases([phase], { killsOf: () => KILLS[phase.name] ?? 1, seed: Date.now() });
    expect(count?.faults).toEqual([]);
    expect(count?.kills).toBeGreaterThan(0);
  },
);
