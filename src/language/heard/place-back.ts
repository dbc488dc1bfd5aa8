import type { BatchFact, MemoNotes, Note, Reading, TraceStep } from '../notes.ts';
import type { MendedText } from './mended-text.ts';
import type { Repair } from './repair.ts';

/** A reading of mended words, set on the words as they stand: quotes and spans are those of the memo's own text. */
export function placeBack(
  reading: Reading,
  text: string,
  mended: MendedText,
  repairs: readonly Repair[],
): Reading {
  const fact = (one: BatchFact): BatchFact => {
    const span = mended.original(one.span);
    return { ...one, span, quote: text.slice(span.start, span.end) };
  };
  const note = <N extends Note>(one: N): N => {
    const span = mended.original(one.span);
    const placed = { ...one, span, quote: text.slice(span.start, span.end) };
    return placed.kind === 'batch' ? { ...placed, facts: placed.facts.map(fact) } : placed;
  };
  const notes = Object.fromEntries(
    Object.entries(reading.notes).map(([kind, list]) => [kind, (list as readonly Note[]).map(note)]),
  ) as unknown as MemoNotes;
  const steps = reading.trace.map((step) => ({ ...step, span: mended.original(step.span) }));
  const placed = reading.repairs?.map((repair) => {
    const span = mended.original(repair);
    return { ...repair, ...span, quote: text.slice(span.start, span.end) };
  });
  return { notes, ...(placed ? { repairs: placed } : {}), trace: [...repairs.map(stepOf), ...steps] };
}

function stepOf({ start, end, means, rule, why }: Repair): TraceStep {
  return { stage: 'heard', rule, span: { start, end }, outcome: 'merged', why: `read as "${means}": ${why}` };
}
