/** The steps of one reading, for the terminal. */
import type { TraceStep } from '../language/notes.ts';
import { textTable } from './text-table.ts';

/** One row a step: stage, rule, outcome, the words it was about, why. */
export function traceText(trace: readonly TraceStep[], text: string): string {
  if (trace.length === 0) return 'No rule left a trace.\n';
  return textTable(
    trace.map((step) => [
      step.stage,
      step.outcome,
      step.rule,
      `"${text.slice(step.span.start, step.span.end)}"`,
      step.why,
    ]),
  );
}
