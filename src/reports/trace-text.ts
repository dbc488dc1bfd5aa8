/** How one text was read, for the terminal: each note with the steps that made it, then what became no note. */
import type { MemoNotes, Note, Span, TraceStep } from '../language/notes.ts';
import { noteRows } from './memo-list.ts';
import { textTable } from './text-table.ts';
import { oneLine } from './words.ts';

/** Steps about the same words, under the note they led to, if any. */
interface Block {
  readonly heading: string;
  readonly span: Span;
  readonly steps: readonly TraceStep[];
}

/**
 * Blocks in the order of speech: a heading at the margin, then a row a step with outcome, rule, the value as it stood
 * before the step, and why. Figures are told from the number to the thing, statements by their rule.
 */
export function traceText(notes: MemoNotes, trace: readonly TraceStep[], text: string): string {
  if (trace.length === 0) return 'No rule left a trace.\n';
  const left = new Set(trace);
  const blocks = noteRows(notes).map(([note, words]): Block => {
    const steps = [...left].filter((step) => belongs(step, note));
    for (const step of steps) left.delete(step);
    return { heading: `${note.kind}: ${words}, from ${quoted(note.quote)}`, span: note.span, steps };
  });
  return [...blocks, ...notNotes(left, text)]
    .sort((a, b) => a.span.start - b.span.start || a.span.end - b.span.end)
    .map(blockText)
    .join('\n');
}

const quoted = (words: string) => `"${words}"`;
const isStatement = ({ stage }: TraceStep) => stage.startsWith('statements');

/** Steps inside a figure's words made it; a statement is known by its exact words, since others may overlap it. */
function belongs(step: TraceStep, note: Note): boolean {
  const { start, end } = step.span;
  if (note.kind !== 'figure')
    return isStatement(step) && start === note.span.start && end === note.span.end && step.why === note.kind;
  return !isStatement(step) && start >= note.span.start && end <= note.span.end;
}

/** What is left: words that were read and are no note, one block for each stretch of words. */
function notNotes(left: ReadonlySet<TraceStep>, text: string): readonly Block[] {
  const order = new Map([...left].map((step, k) => [step, k]));
  const groups: { span: Span; steps: TraceStep[] }[] = [];
  const inOrder = [...left].sort((a, b) => a.span.start - b.span.start);
  for (const step of inOrder) {
    const last = groups.at(-1);
    const joins =
      last &&
      step.span.start < last.span.end &&
      isStatement(step) === isStatement(last.steps[0] as TraceStep);
    if (!joins) groups.push({ span: step.span, steps: [step] });
    else {
      last.steps.push(step);
      last.span = { start: last.span.start, end: Math.max(last.span.end, step.span.end) };
    }
  }
  return groups.map(({ span, steps }) => ({
    heading: `no note: ${quoted(text.slice(span.start, span.end))}`,
    span,
    // Groups were made by place; the steps themselves are told in the order in which they were taken.
    steps: [...steps].sort((a, b) => (order.get(a) ?? 0) - (order.get(b) ?? 0)),
  }));
}

function blockText({ heading, steps }: Block): string {
  const rows = steps.map((step) => ['', step.outcome, step.rule, valueText(step), step.why]);
  return `${oneLine(heading)}\n${textTable(rows)}`;
}

function valueText({ value, unit }: TraceStep): string {
  if (value === undefined) return '';
  return unit ? `${value} ${unit}` : String(value);
}
