/** Runs a check on what is given: not at all where something is missing, and with no number where something is absurd. */
import type { Check, CheckInput, Given, Worked } from './check.ts';
import { nonsense } from './sensible.ts';

/** A check that could not be run, with what is missing. It is shown, and never taken for a pass. */
export interface NotRun {
  readonly verdict: 'not-run';
  readonly why: string;
  readonly missing: readonly CheckInput[];
}

export type Ran = Exclude<Worked, { readonly verdict: 'missing' }> | NotRun;

/** The inputs that a check needs and was not given. */
export const missingInputs = (check: Check, given: Pick<Given, 'inputs'>): readonly CheckInput[] =>
  check.inputs.filter(({ name, optional }) => !optional && (given.inputs.get(name)?.length ?? 0) === 0);

/** Runs a check. An input that was never given comes first, then one that makes no sense. Never throws on figures. */
export function runCheck(check: Check, given: Given): Ran {
  const missing = missingInputs(check, given);
  if (missing.length > 0) {
    const names = missing.map(({ name, says }) => `${name} (${says})`).join(', ');
    return { verdict: 'not-run', why: `missing: ${names}`, missing };
  }
  const why = firstNonsense(check, given);
  if (why !== undefined) return { verdict: 'refused', why };
  const worked = check.run(withOptions(check, given));
  if (worked.verdict === 'missing') return { verdict: 'not-run', why: worked.why, missing: [] };
  return isWhole(worked) ? worked : { verdict: 'refused', why: 'these figures come to no number' };
}

function firstNonsense(check: Check, given: Given): string | undefined {
  for (const input of check.inputs) {
    const ranges = given.inputs.get(input.name) ?? [];
    for (const [index, range] of ranges.entries()) {
      const why = nonsense(input, range, given.say);
      const which = ranges.length > 1 ? `${input.name} ${index + 1}` : input.name;
      if (why !== undefined) return `${which}: ${why}`;
    }
  }
  return undefined;
}

/** The first convention where none was chosen. */
function withOptions(check: Check, given: Given): Given {
  const usual = (check.options ?? []).map(({ name, of }) => [name, of[0] ?? ''] as const);
  return { ...given, options: new Map([...usual, ...given.options]) };
}

const isWhole = (worked: Exclude<Worked, { readonly verdict: 'missing' }>): boolean =>
  worked.verdict === 'refused' ||
  worked.results.every(({ range }) => [range.low, range.mid, range.high].every(Number.isFinite));
