import type { Bound, Dimension, HouseUnits, ReadContext, TraceStep } from '../notes.ts';
import type { NumberReading } from '../numbers/number.ts';
import type { SizeWord } from '../quantities.ts';
import type { Token } from '../tokens.ts';
import type { UnitKey } from '../units/unit-table.ts';

/** Where rules and refiners work: the text, its tokens, the house and the place for trace steps. */
export interface Room {
  readonly text: string;
  readonly tokens: readonly Token[];
  readonly context: ReadContext;
  readonly house: HouseUnits;
  readonly region: string;
  readonly decimalComma: boolean;
  note(step: Omit<TraceStep, 'span'> & { readonly from: number; readonly to: number }): void;
}

/** A number with or without its unit, before and while it is settled what it means. */
export interface Amount {
  /** Tokens of number and unit, end exclusive. */
  readonly from: number;
  readonly to: number;
  /** Tokens of the quote: number and unit with the words that belong to it. */
  readonly quoteFrom: number;
  readonly quoteTo: number;
  readonly value: number;
  readonly number: NumberReading;
  /** Rule that read it. */
  readonly rule: string;
  /** Unit as spoken, or as taken from a neighbour or the house; absent while the number is bare. */
  readonly unit?: UnitKey;
  readonly dimension?: Dimension;
  /** From the said unit to `unit`, where they differ: 0.001 for a micron. A neighbour without a unit takes it too. */
  readonly factor?: number;
  /** True when the unit was not said with the number or its list. */
  readonly unitAssumed?: boolean;
  /** "an inch", "a metre": the article was the number. */
  readonly article?: boolean;
  readonly high?: number;
  readonly bound: Bound;
  readonly boundSaid?: boolean;
  readonly plusMinus?: number;
  readonly plusMinusUnit?: UnitKey;
  readonly alternatives?: readonly { readonly value: number; readonly unit: string }[];
  readonly sizeWords?: readonly SizeWord[];
  readonly group?: { readonly id: number; readonly position: number; readonly size: number };
  readonly change?: 'decided' | 'remeasured' | 'corrected';
  readonly replaces?: { readonly value: number; readonly unit: string };
  readonly rough?: boolean;
  /** Tokens of the slip that it puts right: what stood about the slip was said of this value. */
  readonly standsFor?: { readonly from: number; readonly to: number };
  /** Those tokens too, where words of the slip stand between it and this value: its thing is the slip's. */
  readonly saidAt?: { readonly from: number; readonly to: number };
  readonly role: 'figure' | 'count';
}

/** Words that look like a quantity and are none. */
export interface NotQuantity {
  readonly to: number;
  readonly why: string;
}

export type AmountRead = { readonly amount: Amount } | { readonly skip: NotQuantity };

/** Reads one way of speaking at one token. Rules stand in a list; the first that answers wins. */
export interface AmountRule {
  readonly name: string;
  /** It reads nothing but what begins with a number, or with the article of one. */
  readonly atNumber?: true;
  read(room: Room, at: number): AmountRead | undefined;
}

/** Merges, completes or drops amounts and says why through `room.note`. */
export interface Refiner {
  readonly name: string;
  refine(amounts: readonly Amount[], room: Room): readonly Amount[];
}

export interface UnitPart {
  readonly key: UnitKey;
  readonly dimension?: Dimension;
  /** From the said unit to the one that is kept: a micron is 0.001 mm. */
  readonly factor?: number;
}

/** An amount as first read: exact, its quote no longer than number and unit. */
export function amountOf(
  rule: string,
  number: NumberReading,
  span: { readonly from: number; readonly to: number },
  value: number,
  unit?: UnitPart,
): Amount {
  return {
    from: span.from,
    to: span.to,
    quoteFrom: span.from,
    quoteTo: span.to,
    value: tidy(value * (unit?.factor ?? 1)),
    number,
    rule,
    bound: 'exact',
    role: 'figure',
    ...(unit ? { unit: unit.key } : {}),
    ...(unit?.factor === undefined ? {} : { factor: unit.factor }),
    ...(unit?.dimension ? { dimension: unit.dimension } : {}),
  };
}

/** Lower-cased word at an index, or the empty string outside the text. */
export function wordAt(room: { readonly tokens: readonly Token[] }, index: number): string {
  return room.tokens[index]?.word ?? '';
}

/** Rounds away the noise of binary fractions: 0.1 + 0.2 is 0.3. */
export function tidy(value: number): number {
  if (Number.isInteger(value) && Math.abs(value) < 1e12) return value === 0 ? 0 : value;
  return Number(value.toPrecision(12));
}
