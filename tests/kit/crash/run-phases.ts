/** Runs the phases until so many kills have come while a call was at work, and counts what held and what did not. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chance as chanceOf } from '../sound.ts';
import type { Phase, ReadyPhase } from './phases.ts';
import { Broken } from './struck-call.ts';

export interface PhaseCount {
  readonly name: string;
  /** Calls that were killed at work. */
  readonly kills: number;
  /** Calls that had ended before the kill: checked all the same, and not counted. */
  readonly late: number;
  /** What did not hold, each with the folder that was left for looking into it. */
  readonly faults: readonly string[];
  readonly seconds: number;
}

export interface RunOptions {
  /** Kills of a phase. */
  readonly killsOf: (phase: Phase) => number;
  readonly seed: number;
  readonly onDone?: (count: PhaseCount) => void;
  readonly onStrike?: (phase: Phase, kills: number, faults: number) => void;
}

export async function runPhases(
  phases: readonly Phase[],
  { killsOf, seed, onDone, onStrike }: RunOptions,
): Promise<readonly PhaseCount[]> {
  const counts: PhaseCount[] = [];
  for (const phase of phases) {
    const began = performance.now();
    const chance = chanceOf(seed + counts.length * 7919);
    const wanted = killsOf(phase);
    const faults: string[] = [];
    let kills = 0;
    let late = 0;
    // A call that is mostly over before the kill must not keep this going for ever.
    while (kills < wanted && late <= wanted * 3 + 10) {
      const folder = mkdtempSync(join(tmpdir(), 'hearwright-crash-'));
      let isKept = false;
      try {
        const ready = await phase.prepare(folder);
        const here = kills + late;
        while (kills < wanted && kills + late - here < phase.perFolder) {
          if (await landed(ready, chance)) kills++;
          else late++;
          onStrike?.(phase, kills, faults.length);
        }
      } catch (error) {
        if (!(error instanceof Broken)) throw error;
        kills++;
        isKept = true;
        faults.push(`${error.message} (${folder})`);
        onStrike?.(phase, kills, faults.length);
      } finally {
        if (!isKept) rmSync(folder, { recursive: true, force: true });
      }
    }
    const count = { name: phase.name, kills, late, faults, seconds: (performance.now() - began) / 1000 };
    counts.push(count);
    onDone?.(count);
  }
  return counts;
}

const landed = ({ strike }: ReadyPhase, chance: () => number) => strike(chance);
