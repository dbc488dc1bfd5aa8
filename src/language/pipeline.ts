import { readItems } from './items/assign-items.ts';
import type { ReadContext, Reading } from './notes.ts';
import { readQuantities } from './quantities.ts';
import { splitSentences } from './sentences.ts';
import { readStatements } from './statements/read-statements.ts';
import { tokenise } from './tokens.ts';

/**
 * Reads every note in one memo's text. Pure: the same text and context give the same reading.
 * Quotes are verbatim substrings; offsets count UTF-16 units of `text`.
 */
export function readMemo(text: string, context: ReadContext): Reading {
  const tokens = tokenise(text);
  // Quantities first: items hang on them, and statements may lean on figures.
  const { quantities, trace: quantityTrace } = readQuantities(text, tokens, context);
  const { figures, trace: itemTrace } = readItems(text, quantities, context);
  const { notes: statements, trace: statementTrace } = readStatements(text, splitSentences(text), context);
  return {
    notes: { figures, ...statements },
    trace: [...quantityTrace, ...itemTrace, ...statementTrace],
  };
}
