import type { Attribute, Dimension, FigureNote, ReadContext, Reading, TraceStep } from './notes.ts';
import { type QuantityReading, readQuantities } from './quantities.ts';
import { splitSentences } from './sentences.ts';
import { readStatements } from './statements/read-statements.ts';
import { type Token, tokenise } from './tokens.ts';

const ATTRIBUTE_OF: Readonly<Partial<Record<Dimension, Attribute>>> = {
  angle: 'angle',
  temperature: 'temperature',
  mass: 'weight',
  volume: 'volume',
  area: 'area',
  voltage: 'voltage',
  current: 'current',
  power: 'power',
  pressure: 'pressure',
  torque: 'torque',
  time: 'time',
  ratio: 'ratio',
  frequency: 'speed',
  speed: 'speed',
  money: 'money',
  count: 'count',
};

/** Turns quantities into figures; the item stays empty until a reader of items names it. */
function assignItems(
  _text: string,
  _tokens: readonly Token[],
  quantities: readonly QuantityReading[],
  _context: ReadContext,
): { readonly figures: readonly FigureNote[]; readonly trace: readonly TraceStep[] } {
  const figures = quantities.map((quantity): FigureNote => {
    const { span, quote, value, unit, dimension, bound, high, plusMinus, plusMinusUnit, assumed } = quantity;
    return {
      kind: 'figure',
      span,
      quote,
      value,
      unit,
      dimension,
      bound,
      item: '',
      attribute: quantity.sizeWords?.[0]?.attribute ?? ATTRIBUTE_OF[dimension] ?? 'other',
      ...(high === undefined ? {} : { high }),
      ...(plusMinus === undefined ? {} : { plusMinus }),
      ...(plusMinusUnit === undefined ? {} : { plusMinusUnit }),
      ...(assumed ? { assumed } : {}),
      ...(quantity.alternatives ? { alternatives: quantity.alternatives } : {}),
      ...(quantity.change ? { change: quantity.change } : {}),
      ...(quantity.replaces ? { replaces: quantity.replaces } : {}),
    };
  });
  return { figures, trace: [] };
}

/**
 * Reads every note in one memo's text. Pure: the same text and context give the same reading.
 * Quotes are verbatim substrings; offsets count UTF-16 units of `text`.
 */
export function readMemo(text: string, context: ReadContext): Reading {
  const tokens = tokenise(text);
  // Quantities first: items hang on them, and statements may lean on figures.
  const { quantities, trace: quantityTrace } = readQuantities(text, tokens, context);
  const { figures, trace: itemTrace } = assignItems(text, tokens, quantities, context);
  const { notes: statements, trace: statementTrace } = readStatements(text, splitSentences(text), context);
  return {
    notes: { figures, ...statements },
    trace: [...quantityTrace, ...itemTrace, ...statementTrace],
  };
}
