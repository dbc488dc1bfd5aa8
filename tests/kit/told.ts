import type { MemoNotes } from '../../src/language/notes.ts';
import { readMemo } from '../../src/language/pipeline.ts';

/** A Wednesday evening in Britain, in a house of millimetres. */
const CONTEXT = { units: 'metric', region: 'GB', recordedAt: '2026-06-10T18:00:00+01:00' } as const;

/** The notes of one short memo. */
export const notesTold = (text: string): MemoNotes => readMemo(text, CONTEXT).notes;

/** Its figures as short lines: "905 mm", "50 mm at-least". */
export const figuresTold = (text: string): readonly string[] =>
  notesTold(text).figures.map(
    ({ value, unit, bound }) => `${value} ${unit}${bound === 'exact' ? '' : ` ${bound}`}`,
  );
