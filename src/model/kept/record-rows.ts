/** What is kept on record beside figures and statements, as rows of the model. */
import type {
  Attribute,
  BatchFactKind,
  ClockAct,
  Dimension,
  Quantity,
  Service,
  UnitName,
} from '../../language/notes.ts';
import type { Source } from '../views.ts';

interface RecordBase {
  /** The note's id (`m1.r2`), or `s<seq>` for what a person kept by hand. */
  readonly id: string;
  readonly source: Source;
}

/** One fact of a batch: the words, with the amount where it is one. */
export interface BatchFactRow {
  readonly what: BatchFactKind;
  readonly words: string;
  readonly value?: number;
  readonly unit?: UnitName;
}

/** A batch that was mixed or put on. */
export interface BatchRow extends RecordBase {
  readonly kind: 'batch';
  readonly product: string;
  readonly facts: readonly BatchFactRow[];
}

/** What is behind a panel. */
export interface HiddenRow extends RecordBase {
  readonly kind: 'hidden';
  readonly panel: string;
  readonly what: string;
  readonly service: Service;
  readonly shot?: string;
}

/** Two parts, one for each hand. */
export interface PairRow extends RecordBase {
  readonly kind: 'pair';
  /** The part without its side. */
  readonly part: string;
  readonly sides?: readonly [string, string];
  /** Attributes in which a person lets the two differ. */
  readonly letDiffer?: readonly Attribute[];
}

export interface DeliverySizeRow extends Quantity {
  readonly attribute: Attribute;
  readonly dimension: Dimension;
  readonly shouldBe?: number;
}

/** What was ordered, or what came of it. */
export interface DeliveryRow extends RecordBase {
  readonly kind: 'delivery';
  readonly act: 'ordered' | 'received';
  /** Empty when only the number of the goods was said. */
  readonly item: string;
  readonly count?: number;
  readonly outOf?: number;
  readonly short?: number;
  readonly shortOf?: string;
  readonly sizes: readonly DeliverySizeRow[];
  readonly instead?: { readonly came: string; readonly ordered: string };
  /** Of what came: the row of the order that it answers. */
  readonly answers?: string;
  /** Of an order: it came, and nobody said how many. */
  readonly cameUncounted?: true;
}

/** When a product was mixed, laid or used: from then on its times are counted. */
export interface ClockRow extends RecordBase {
  readonly kind: 'clock';
  readonly act: ClockAct;
  readonly product: string;
  /** ISO 8601. */
  readonly at: string;
  readonly isSaid: boolean;
  /** A coat that was said to go on one that is on already. */
  readonly isNext?: true;
  /** What it was put on, or what came off, where that was said. */
  readonly on?: string;
}

export type RecordRow = BatchRow | HiddenRow | PairRow | DeliveryRow | ClockRow;
export type RecordKind = RecordRow['kind'];
export type RecordOf<K extends RecordKind> = Extract<RecordRow, { readonly kind: K }>;

type WithoutPlace<R> = R extends RecordRow
  ? Omit<R, 'id' | 'source' | 'letDiffer' | 'answers' | 'cameUncounted'>
  : never;
/** What a person keeps by hand: a record before it has its id and its source. */
export type RecordByHand = WithoutPlace<RecordRow>;
