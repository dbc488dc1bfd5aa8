/** Plays a file, or has a text spoken, by the first program that can. */
import { spawn } from 'node:child_process';
import { EXIT, Problem, type Result } from '../../problem.ts';
import { isInstalled, type SoundProgram } from './programs.ts';

/** Nothing that is played here lasts longer; a player that hangs is ended. */
const LONGEST_MS = 120_000;

/** Runs programs until one of them ends well. Stopped by the signal it is no failure. */
export async function runSound(
  programs: readonly SoundProgram[],
  what: string,
  signal?: AbortSignal,
): Promise<Result<SoundProgram>> {
  const reasons: string[] = [];
  for (const one of programs) {
    if (!isInstalled(one.program)) continue;
    const reason = await run(one, what, signal);
    if (reason === undefined || signal?.aborted) return { ok: true, value: one };
    reasons.push(`${one.program}: ${reason}`);
  }
  return { ok: false, problem: noSound(programs, reasons) };
}

/** Why it failed; nothing when it did not. */
function run(
  { program, words }: SoundProgram,
  what: string,
  signal: AbortSignal | undefined,
): Promise<string | undefined> {
  return new Promise((resolve) => {
    const child = spawn(program, [...words(what)], {
      stdio: ['ignore', 'ignore', 'pipe'],
      timeout: LONGEST_MS,
      ...(signal ? { signal } : {}),
    });
    let said = '';
    child.stderr.setEncoding('utf8').on('data', (text: string) => {
      said = (said + text).slice(-2_000);
    });
    child.on('error', (error) => resolve(error.message));
    child.on('close', (code, by) => {
      if (code === 0) resolve(undefined);
      else resolve(said.trim().split('\n').at(-1) || `it ended with ${by ?? code}`);
    });
  });
}

function noSound(programs: readonly SoundProgram[], reasons: readonly string[]): Problem {
  const names = programs.map(({ program }) => program).join(', ');
  return new Problem(
    reasons.length === 0
      ? `nothing that plays sound is installed: none of ${names}`
      : `no sound can be played: ${reasons.join('; ')}`,
    {
      code: 'sound-unplayed',
      exitCode: EXIT.partly,
      kept: 'the recording, as it was',
      next: reasons.length === 0 ? 'install one of them' : 'see whether a loudspeaker is connected',
    },
  );
}
