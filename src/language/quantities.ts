import type {
  Attribute,
  Bound,
  ChangeCue,
  Dimension,
  Quantity,
  ReadContext,
  Span,
  TraceStep,
  UnitName,
} from './notes.ts';
import type { Token } from './tokens.ts';

/** A word of size that stands with the number: "920 high", "a 40 mil gap". */
export interface SizeWord {
  readonly attribute: Attribute;
  readonly span: Span;
}

/** A quantity with everything that was said of the quantity itself; the thing it belongs to is found later. */
export interface QuantityReading {
  /** The quote: number and unit with the words that hedge, bound or size it. */
  readonly span: Span;
  readonly quote: string;
  /** Number and unit alone. */
  readonly core: Span;
  /** Tokens of the quote, end exclusive. */
  readonly tokens: { readonly from: number; readonly to: number };
  readonly value: number;
  readonly unit: UnitName;
  readonly dimension: Dimension;
  readonly bound: Bound;
  /** Upper end, in `unit`, when `bound` is `between`. */
  readonly high?: number;
  readonly plusMinus?: number;
  readonly plusMinusUnit?: UnitName;
  /** `unit` when it was not spoken with the number. */
  readonly assumed?: readonly string[];
  /** Other readings that fit the words, best first. */
  readonly alternatives?: readonly Quantity[];
  readonly sizeWords?: readonly SizeWord[];
  /** A count ("five boards") is kept for the model but is no measured figure. */
  readonly role: 'figure' | 'count';
  /** Place in a list said in one breath: "85 by 120 centimetres". */
  readonly partOf?: { readonly group: number; readonly position: number; readonly size: number };
  /** The speaker's own word that this replaces an older value, and that value when it was spoken. */
  readonly change?: ChangeCue;
  readonly replaces?: Quantity;
  /** True for an assumption made to talk about it: "call it 26". */
  readonly rough?: boolean;
}

export interface QuantitiesRead {
  readonly quantities: readonly QuantityReading[];
  readonly trace: readonly TraceStep[];
}

/** Reads the quantities of one text, in the order of speech. */
export function readQuantities(
  _text: string,
  _tokens: readonly Token[],
  _context: ReadContext,
): QuantitiesRead {
  return { quantities: [], trace: [] };
}
