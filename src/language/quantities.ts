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
import { mayBegin, writesDecimalComma } from './numbers/read-number.ts';
import { foreignSentences } from './other-languages.ts';
import { REFINERS } from './refiners/index.ts';
import { AMOUNT_RULES } from './rules/index.ts';
import { type Amount, type AmountRule, type Room, tidy } from './rules/rule.ts';
import { SIZE_AFTER } from './rules/size-words.ts';
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
  /** The slip that this puts right, where more of what was said of it stands between: "1100 off the floor, no, 1060". */
  readonly saidAt?: Span;
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

/** Amounts as the rules read them, left to right; every token is looked at once. */
function readAmounts(room: Room): readonly Amount[] {
  const amounts: Amount[] = [];
  const foreign = foreignSentences(room.tokens);
  for (let at = 0; at < room.tokens.length; ) {
    at = foreign.has(room.tokens[at]?.sentence ?? 0) ? at + 1 : readAt(room, at, amounts);
  }
  return amounts;
}

const RULES_AT_WORDS = AMOUNT_RULES.filter(({ atNumber }) => !atNumber);

/** Reads what starts at one token and returns where to go on. */
function readAt(room: Room, at: number, amounts: Amount[]): number {
  const rules = mayBegin(room.tokens[at] as Token) ? AMOUNT_RULES : RULES_AT_WORDS;
  for (let place = 0; place < rules.length; place++) {
    const rule = rules[place] as AmountRule;
    const read = rule.read(room, at);
    if (!read) continue;
    if (room.context.explain) traceLosers(room, at, rule, rules.slice(place + 1));
    if ('amount' in read) {
      amounts.push(read.amount);
      room.note({
        ...read.amount,
        stage: 'amounts',
        rule: read.amount.rule,
        outcome: 'read',
        why: 'as spoken',
      });
      return Math.max(read.amount.to, at + 1);
    }
    const to = Math.max(read.skip.to, at + 1);
    room.note({ from: at, to, stage: 'amounts', rule: rule.name, outcome: 'dropped', why: read.skip.why });
    return to;
  }
  return at + 1;
}

/** Traces the rules behind the winner that would have read something at the same token. */
function traceLosers(room: Room, at: number, winner: AmountRule, others: readonly AmountRule[]): void {
  const why = `"${winner.name}" comes first`;
  for (const rule of others) {
    const read = rule.read(room, at);
    if (!read) continue;
    const step = { stage: 'amounts', outcome: 'lost', why } as const;
    if ('amount' in read) room.note({ ...read.amount, ...step, rule: read.amount.rule });
    else room.note({ ...step, from: at, to: Math.max(read.skip.to, at + 1), rule: rule.name });
  }
}

function spanOf(tokens: readonly Token[], from: number, to: number): Span {
  const [first, last] = [tokens[from], tokens[Math.max(from, to - 1)]];
  return { start: first?.start ?? 0, end: last?.end ?? first?.end ?? 0 };
}

function readingOf(amount: Amount, room: Room): QuantityReading | undefined {
  const { text, tokens } = room;
  if (!amount.unit || !amount.dimension || !Number.isFinite(amount.value)) return undefined;
  const own = SIZE_AFTER.startingAt(tokens, amount.to);
  // "900 high, no, 915": the size was said of the slip.
  const size = own ?? (amount.standsFor && SIZE_AFTER.startingAt(tokens, amount.standsFor.to));
  const quoteTo = Math.max(amount.quoteTo, own?.to ?? 0);
  const span = spanOf(tokens, amount.quoteFrom, quoteTo);
  return {
    span,
    quote: text.slice(span.start, span.end),
    core: spanOf(tokens, amount.from, amount.to),
    ...(amount.saidAt ? { saidAt: spanOf(tokens, amount.saidAt.from, amount.saidAt.to) } : {}),
    tokens: { from: amount.quoteFrom, to: quoteTo },
    value: tidy(amount.value),
    unit: amount.unit,
    dimension: amount.dimension,
    bound: amount.bound,
    role: amount.role,
    ...(amount.high === undefined ? {} : { high: tidy(amount.high) }),
    ...(amount.plusMinus === undefined ? {} : { plusMinus: amount.plusMinus }),
    ...(amount.plusMinusUnit ? { plusMinusUnit: amount.plusMinusUnit } : {}),
    ...(amount.unitAssumed ? { assumed: ['unit'] } : {}),
    ...(amount.alternatives ? { alternatives: amount.alternatives } : {}),
    ...(size ? { sizeWords: [{ attribute: size.meaning, span: spanOf(tokens, size.from, size.to) }] } : {}),
    ...(amount.group
      ? { partOf: { group: amount.group.id, position: amount.group.position, size: amount.group.size } }
      : {}),
    ...(amount.change ? { change: amount.change } : {}),
    ...(amount.replaces
      ? { replaces: { ...amount.replaces, unit: amount.replaces.unit || amount.unit } }
      : {}),
    ...(amount.rough ? { rough: true } : {}),
  };
}

/** Reads the quantities of one text, in the order of speech. */
export function readQuantities(text: string, tokens: readonly Token[], context: ReadContext): QuantitiesRead {
  const trace: TraceStep[] = [];
  const region = (context.region ?? '').toUpperCase();
  const room: Room = {
    text,
    tokens,
    context,
    house: context.units,
    region,
    decimalComma: writesDecimalComma(region),
    note: ({ from, to, stage, rule, outcome, why, value, unit }) => {
      trace.push({
        stage,
        rule,
        outcome,
        why,
        span: spanOf(tokens, from, to),
        ...(value === undefined ? {} : { value }),
        ...(unit ? { unit } : {}),
      });
    },
  };
  let amounts = readAmounts(room);
  for (const refiner of REFINERS) amounts = refiner.refine(amounts, room);
  const quantities = amounts.flatMap((amount) => readingOf(amount, room) ?? []);
  return { quantities, trace };
}
