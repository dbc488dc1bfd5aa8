/** What is kept on record of a text, read in a metric project. */
import type { RecordNote } from '../../src/language/notes.ts';
import { readMemo } from '../../src/language/pipeline.ts';

export function recordsIn(text: string): readonly RecordNote[] {
  return readMemo(text, { units: 'metric', recordedAt: '2026-03-02T18:00:00+00:00' }).notes.records;
}
