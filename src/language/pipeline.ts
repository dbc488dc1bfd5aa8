import type { ReadContext, Reading } from './notes.ts';

/**
 * Reads every note in one memo's text. Pure: the same text and context give the same reading.
 * Quotes are verbatim substrings; offsets count UTF-16 units of `text`.
 */
export function readMemo(_text: string, _context: ReadContext): Reading {
  return {
    notes: {
      figures: [],
      decisions: [],
      tasks: [],
      done: [],
      arrivals: [],
      problems: [],
      promises: [],
      corrections: [],
    },
    trace: [],
  };
}
