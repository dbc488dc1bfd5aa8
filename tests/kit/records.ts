/** What is kept on record of a text, read in a metric project. */
import type { KnownFigure, RecordNote } from '../../src/language/notes.ts';
import { readMemo } from '../../src/language/pipeline.ts';

export function recordsIn(text: string): readonly RecordNote[] {
  return readMemo(text, { units: 'metric', recordedAt: '2026-03-02T18:00:00+00:00' }).notes.records;
}

/** The checks that a text attaches, each in one line: "pieces from stock: stock=2440 mm; wanted=4". */
export function checksIn(text: string, known: readonly KnownFigure[] = []): readonly string[] {
  const context = { units: 'metric', recordedAt: '2026-03-02T18:00:00+00:00', knownFigures: known } as const;
  return readMemo(text, context).notes.records.flatMap((note) => {
    if (note.kind !== 'check') return [];
    return [
      `${note.check}: ${note.inputs.map(({ input, expression }) => `${input}=${expression}`).join('; ')}`,
    ];
  });
}
