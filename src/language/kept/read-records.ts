/** Reads what is kept on record beside figures and statements: batches, what is behind panels, hands, deliveries, checks. */
import { readChecks } from '../checks/read-checks.ts';
import type { ReadContext, RecordNote, TraceStep } from '../notes.ts';
import { readBatches } from './batches.ts';
import { readClocks } from './clocks.ts';
import { readDeliveries } from './deliveries.ts';
import { readHands } from './hands.ts';
import { readHidden } from './hidden.ts';
import type { RecordScene } from './scene.ts';

export interface RecordReading {
  readonly records: readonly RecordNote[];
  readonly trace: readonly TraceStep[];
}

/** Each with the rule's name, as the trace shows it. */
const READERS = [
  ['a batch', readBatches],
  ['behind a panel', readHidden],
  ['handed parts', readHands],
  ['ordered and received', readDeliveries],
] as const;

/** Records in the order of speech. Every quote is a verbatim stretch of the scene's text. Pure. */
export function readRecords(scene: RecordScene, context: ReadContext): RecordReading {
  const found = [
    ...READERS.flatMap(([rule, read]) => read(scene).map((note: RecordNote) => ({ rule, note }))),
    ...readClocks(scene, context.recordedAt).map((note) => ({ rule: 'a clock', note })),
    ...readChecks(scene, context).map((note) => ({ rule: 'a check', note })),
  ];
  found.sort((a, b) => a.note.span.start - b.note.span.start);
  return {
    records: found.map(({ note }) => note),
    trace: found.map(({ rule, note }) => ({
      stage: 'statements',
      rule,
      span: note.span,
      outcome: 'read',
      why: note.kind,
    })),
  };
}
