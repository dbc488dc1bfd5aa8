/** Reads what is kept on record beside figures and statements: batches, what is behind panels, hands, deliveries, checks. */
import { readChecks } from '../checks/read-checks.ts';
import type { ReadContext, RecordNote, TraceStep } from '../notes.ts';
import { type TakenBack, withoutTakenBack } from '../taken-back.ts';
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

/** Records in the order of speech, without what was taken back. Every quote is a verbatim stretch of the text. Pure. */
export function readRecords(
  scene: RecordScene,
  context: ReadContext,
  takenBack: readonly TakenBack[] = [],
): RecordReading {
  const dropped: TraceStep[] = [];
  const all = [
    ...READERS.flatMap(([rule, read]) => read(scene).map((note: RecordNote) => ({ rule, note }))),
    ...readClocks(scene, context.recordedAt).map((note) => ({ rule: 'a clock', note })),
    ...readChecks(scene, context).map((note) => ({ rule: 'a check', note })),
  ];
  const found = withoutTakenBack(
    all.map((one) => ({ ...one, ...one.note.span })),
    takenBack,
    dropped,
  ).toSorted((a, b) => a.start - b.start);
  return {
    records: found.map(({ note }) => note),
    trace: [
      ...dropped,
      ...found.map(
        ({ rule, note }): TraceStep => ({
          stage: 'statements',
          rule,
          span: note.span,
          outcome: 'read',
          why: note.kind,
        }),
      ),
    ],
  };
}
