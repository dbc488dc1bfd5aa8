/** Reads a check from the words of a call, and says what is wrong with it. */
import type { AskedCheck, CheckRun } from '../model/checks/check-rows.ts';
import { EXIT, Problem } from '../problem.ts';

type Verb = 'work out' | 'checks add';

/** The check that the words ask for. Throws a Problem with an example when they cannot be read. */
export async function askedCheck(words: readonly string[], verb: Verb): Promise<AskedCheck> {
  const { readWrittenCheck } = await import('../model/checks/written-check.ts');
  const read = readWrittenCheck(words.join(' '));
  if (read.ok) return read.value;
  throw new Problem(read.why, {
    code: 'check-unread',
    exitCode: EXIT.usage,
    ...(verb === 'checks add' ? { kept: 'nothing was set' } : {}),
    next: await exampleFor(words.join(' '), verb),
  });
}

async function exampleFor(text: string, verb: Verb): Promise<string> {
  const { CHECKS } = await import('../model/checks/all-checks.ts');
  const { exampleCall } = await import('../model/checks/written-check.ts');
  const named = CHECKS.find(({ name }) => text.trim().toLowerCase().startsWith(name));
  return named ? exampleCall(named, verb) : 'see what there is with: hearwright checks kinds';
}

/** Why a check cannot be asked for this way: what is missing, or makes no sense, with a call that shows how. */
export async function cannotAsk(run: CheckRun, verb: Verb): Promise<Problem> {
  return new Problem(`${run.check}: ${run.why}`, {
    code: run.state === 'refused' ? 'check-refused' : 'check-unrun',
    exitCode: EXIT.usage,
    ...(verb === 'checks add' ? { kept: 'nothing was set' } : {}),
    next: await exampleFor(run.check, verb),
  });
}
