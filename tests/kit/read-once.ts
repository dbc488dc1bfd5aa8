import type { ReadContext, Reading } from '../../src/language/notes.ts';
import { readMemo } from '../../src/language/pipeline.ts';

const read = new Map<string, Reading>();

/**
 * As `readMemo`, remembering what was read: for tests of the model, which tell the same words again and again where
 * mutants are tried. Tests of reading must not lean on it.
 */
export function readOnce(text: string, context: ReadContext): Reading {
  const key = JSON.stringify([text, context]);
  const known = read.get(key) ?? readMemo(text, context);
  read.set(key, known);
  return known;
}
