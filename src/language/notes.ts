/**
 * The notes that can be read from one memo. These are the words the whole project shares: the language
 * pipeline makes them, the model reconciles them, the reports print them.
 */

import type { HeardDoubt } from './heard/heard-doubts.ts';

/** Character offsets into the memo's text, end exclusive. `text.slice(start, end)` is the quote. */
export interface Span {
  readonly start: number;
  readonly end: number;
}

export const BOUNDS = ['exact', 'about', 'at-least', 'at-most', 'between'] as const;
export type Bound = (typeof BOUNDS)[number];

export const DIMENSIONS = [
  'length',
  'angle',
  'temperature',
  'mass',
  'volume',
  'area',
  'voltage',
  'current',
  'charge',
  'power',
  'energy',
  'pressure',
  'torque',
  'time',
  'ratio',
  'frequency',
  'speed',
  'money',
  'count',
] as const;
export type Dimension = (typeof DIMENSIONS)[number];

export const ATTRIBUTES = [
  'height',
  'width',
  'length',
  'depth',
  'thickness',
  'diameter',
  'radius',
  'clearance',
  'gap',
  'offset',
  'size',
  'angle',
  'temperature',
  'weight',
  'volume',
  'area',
  'voltage',
  'current',
  'power',
  'pressure',
  'torque',
  'time',
  'ratio',
  'speed',
  'money',
  'count',
  'other',
] as const;
export type Attribute = (typeof ATTRIBUTES)[number];

/** What the speaker was doing when the figure was said. */
export const STATES = [
  'measured',
  'calculated',
  'target',
  'assumed',
  'quoted',
  'copied',
  'decided',
  'made',
  'ordered',
  'received',
] as const;
export type FigureState = (typeof STATES)[number];

export const SIZE_KINDS = ['finished', 'oversize', 'clear', 'nominal', 'envelope'] as const;
export type SizeKind = (typeof SIZE_KINDS)[number];

/**
 * Spelling of a unit: mm cm m km in ft yd thou deg degC degF g kg t oz lb mL L gal qt floz m3 mm2 cm2 m2 ft2
 * mV V kV mA A Ah W kW VA kVA hp Wh kWh Pa kPa bar psi N.m ft.lbf s min h d % rpm kn m/s km/h mph, ISO 4217
 * codes for money, `1` for counts and plain ratios.
 */
export type UnitName = string;

/** A value in a unit. Never pass one without the other across a function border. */
export interface Quantity {
  readonly value: number;
  readonly unit: UnitName;
}

/** Why a figure differs from what was said before, when the speaker says so in the same breath. */
export type ChangeCue = 'decided' | 'remeasured' | 'corrected';

interface NoteBase {
  /** Verbatim substring of the memo's text. */
  readonly quote: string;
  readonly span: Span;
}

/** A quantity said of an item. */
export interface FigureNote extends NoteBase, Quantity {
  readonly kind: 'figure';
  readonly item: string;
  readonly attribute: Attribute;
  readonly bound: Bound;
  readonly dimension: Dimension;
  /** Upper end, in `unit`, when `bound` is `between`. */
  readonly high?: number;
  readonly plusMinus?: number;
  readonly plusMinusUnit?: UnitName;
  readonly state?: FigureState;
  /** Circumstance that the figure holds in: "bare floor, no lining". */
  readonly condition?: string;
  /** What it is measured from: "above the finished floor". */
  readonly datum?: string;
  readonly sizeKind?: SizeKind;
  /** Expression over item names, as in "bench top height - 18 mm". */
  readonly formula?: string;
  /** True when the figure binds other things ("nothing wider than 740 comes in"). */
  readonly limit?: LimitScope;
  /** The speaker's own word that this replaces an older figure. */
  readonly change?: ChangeCue;
  /** The old value when it is spoken beside the new one ("not 905, 915"; "it was 70, now it's 75"). */
  readonly replaces?: Quantity;
  /** Names of fields that were filled in and not said: `unit`, `item`, `attribute`. */
  readonly assumed?: readonly string[];
  /** The weight is that of one of several ("26 kilos each"), with how many there are where that was said. */
  readonly each?: EachOfMany;
  /** Of a weight: where the thing was said to be, "aft locker". */
  readonly place?: string;
  /** Other readings that fit the words, best first ("mil" as mm or 0.001 in). */
  readonly alternatives?: readonly Quantity[];
}

/**
 * How many things a figure of one of them is said of; without a count nobody said how many there are. A count of one is
 * a figure that was said of them all together.
 */
export interface EachOfMany {
  readonly count?: number;
  /** A weight by measure, and of no whole thing: "two kilos per metre". */
  readonly per?: string;
}

/** What a stated limit binds. */
export interface LimitScope {
  /** Words for what must respect it: "machine", "anything through the door"; empty means the item itself. */
  readonly about: string;
}

export interface DecisionNote extends NoteBase {
  readonly kind: 'decision';
  readonly gist: string;
  readonly reason?: string;
  /** What was turned down ("not the acrylic"). */
  readonly turnedDown?: string;
}

export interface TaskNote extends NoteBase {
  readonly kind: 'task';
  readonly gist: string;
  /** ISO date in the memo's own zone. */
  readonly due?: string;
  /** What must come first, in short phrases: "flashing arrives". */
  readonly waitsFor: readonly string[];
}

export interface DoneNote extends NoteBase {
  readonly kind: 'done';
  readonly gist: string;
}

export interface ArrivalNote extends NoteBase {
  readonly kind: 'arrival';
  readonly item: string;
  /** ISO date when it is expected; absent once received. */
  readonly expected?: string;
  readonly received: boolean;
}

export interface ProblemNote extends NoteBase {
  readonly kind: 'problem';
  readonly gist: string;
  readonly cause?: string;
}

export interface PromiseNote extends NoteBase {
  readonly kind: 'promise';
  readonly gist: string;
  /** ISO date when the speaker named one. */
  readonly due?: string;
}

/** "Last week I said 905; it's 915": a correction of something viewers were told. */
export interface CorrectionNote extends NoteBase {
  readonly kind: 'correction';
  readonly gist: string;
}

/** What may be told of a batch: how it was mixed, in what air, on what surface, and where it went. */
export const BATCH_FACTS = [
  'ratio',
  'metered',
  'amount',
  'air',
  'surface',
  'material',
  'humidity',
  'used',
  'when',
] as const;
export type BatchFactKind = (typeof BATCH_FACTS)[number];

/** One fact of a batch in the speaker's words; with its amount where it is one. */
export interface BatchFact {
  readonly what: BatchFactKind;
  /** Verbatim substring of the memo's text. */
  readonly quote: string;
  readonly span: Span;
  readonly value?: number;
  readonly unit?: UnitName;
}

/** A batch of resin, paint, glue, filler, concrete that was mixed or put on. */
export interface BatchNote extends NoteBase {
  readonly kind: 'batch';
  readonly product: string;
  readonly facts: readonly BatchFact[];
}

export const SERVICES = ['cable', 'pipe', 'fixing', 'timber', 'other'] as const;
export type Service = (typeof SERVICES)[number];

/** What is behind a panel, a lining, a floor. */
export interface HiddenNote extends NoteBase {
  readonly kind: 'hidden';
  readonly panel: string;
  /** What is there, in the speaker's words. */
  readonly what: string;
  readonly service: Service;
  /** Words for the photo or clip that shows it. */
  readonly shot?: string;
}

/** A part that is made once for each hand. */
export interface HandNote extends NoteBase {
  readonly kind: 'hand';
  /** The part without its side: "locker lid". */
  readonly part: string;
  /** The words for the two sides; absent when none were said. */
  readonly sides?: readonly [string, string];
}

/** A size of goods, as ordered or as they came. */
export interface DeliverySize extends Quantity {
  readonly attribute: Attribute;
  readonly dimension: Dimension;
  /** Verbatim words. */
  readonly quote: string;
  /** What it should have been, when that is said beside it ("18 not 21"). */
  readonly shouldBe?: number;
}

/** What was ordered, or what came of it: count, sizes, and goods that are not the ones ordered. */
export interface DeliveryNote extends NoteBase {
  readonly kind: 'delivery';
  /** Name of the goods; empty when only their number is said ("six of the eight"). */
  readonly item: string;
  readonly act: 'ordered' | 'received';
  readonly count?: number;
  /** How many there should have been, when that is said beside it ("six of the eight"). */
  readonly outOf?: number;
  /** How many were missing, when only that is said ("two short"). */
  readonly short?: number;
  /** What was missing, when that is said with the number: "two sheets short". */
  readonly shortOf?: string;
  readonly sizes: readonly DeliverySize[];
  /** Other goods than those ordered: "gloss instead of matt". */
  readonly instead?: { readonly came: string; readonly ordered: string };
}

/**
 * One input of a check, in the words of the formula language: a number with its unit ("2440 mm"), a thing with what is
 * measured of it ("side hatch width", also before anyone has said how wide it is), or a sum of such. An input that
 * takes many figures stands once for each.
 */
export interface SpokenInput {
  /** As the check names it (src/model/checks/all-checks.ts): "panel length". */
  readonly input: string;
  readonly expression: string;
  /** What a plain size or time is of, where that was said: "side hatch", "epoxy". */
  readonly of?: string;
}

/** A sum that has to hold from now on: "the aft panel has to go through the side hatch". */
export interface CheckNote extends NoteBase {
  readonly kind: 'check';
  /** Name of the check, as in all-checks.ts. */
  readonly check: string;
  /** What was said of them; an input that was not said is left out, and the check asks for it. */
  readonly inputs: readonly SpokenInput[];
  /** Conventions that were said, by the name of the option: "there and back". */
  readonly options?: Readonly<Record<string, string>>;
}

/** Mixed in a pot, laid as a coat or a joint, a mix that is still in use, or what held it till it was hard taken off. */
export const CLOCK_ACTS = ['mixed', 'laid', 'used', 'freed'] as const;
export type ClockAct = (typeof CLOCK_ACTS)[number];

/** When a product was mixed, laid or used: its pot life, recoat window and cure are counted from there. */
export interface ClockNote extends NoteBase {
  readonly kind: 'clock';
  readonly act: ClockAct;
  /** In the speaker's words; empty where none was named ("the first coat"). */
  readonly product: string;
  /** ISO 8601 with the offset of the memo; when the memo was recorded, where no time was said. */
  readonly at: string;
  /** Whether the time was said ("at two", "just now"). */
  readonly isSaid: boolean;
  /** The coat was said to go on one that is on already: "the second coat", "recoated it". */
  readonly isNext?: true;
  /** What it was put on, or what came off: "hull", "rib"; absent where nobody said. */
  readonly on?: string;
}

/** What is kept on record beside figures and statements. */
export type RecordNote = BatchNote | HiddenNote | HandNote | DeliveryNote | CheckNote | ClockNote;

export type Note =
  | RecordNote
  | FigureNote
  | DecisionNote
  | TaskNote
  | DoneNote
  | ArrivalNote
  | ProblemNote
  | PromiseNote
  | CorrectionNote;

/** Everything read from one memo, each list in the order of speech. */
export interface MemoNotes {
  readonly figures: readonly FigureNote[];
  readonly decisions: readonly DecisionNote[];
  readonly tasks: readonly TaskNote[];
  readonly done: readonly DoneNote[];
  readonly arrivals: readonly ArrivalNote[];
  readonly problems: readonly ProblemNote[];
  readonly promises: readonly PromiseNote[];
  readonly corrections: readonly CorrectionNote[];
  /** Batches, what is behind panels, hands, deliveries, sums that have to hold, and when clocks were started. */
  readonly records: readonly RecordNote[];
}

/** What a memo holds in which nothing was read. */
export const NO_NOTES = {
  figures: [],
  decisions: [],
  tasks: [],
  done: [],
  arrivals: [],
  problems: [],
  promises: [],
  corrections: [],
  records: [],
} as const satisfies MemoNotes;

/** One step of the pipeline, for `hearwright read --trace`. */
export interface TraceStep {
  readonly stage: string;
  readonly rule: string;
  readonly span: Span;
  readonly outcome: 'read' | 'merged' | 'dropped' | 'lost';
  readonly why: string;
  /** Number and unit as they stood before this step; a bare number has no unit yet. */
  readonly value?: number;
  readonly unit?: UnitName;
}

/** A stretch of the memo that was read as other words than those written, because a recogniser misheard it. */
export interface HeardRepair extends Span {
  /** Verbatim substring of the memo's text; the memo keeps it. */
  readonly quote: string;
  /** What it was read as. */
  readonly means: string;
  readonly why: string;
}

/** A person's word on what a recogniser writes: `means` is what was said. The same words mean that they were right. */
export interface WordCorrection {
  /** As heard, in lower case. */
  readonly heard: string;
  readonly means: string;
}

export interface Reading {
  readonly notes: MemoNotes;
  /** What was read otherwise than it stands, in order; absent when nothing was. */
  readonly repairs?: readonly HeardRepair[];
  readonly trace: readonly TraceStep[];
}

/** House convention of a project: which system bare numbers belong to. */
export type HouseUnits = 'metric' | 'us' | 'mixed';

/** A figure that stands already: what was said of which thing. */
export interface KnownFigure extends Quantity {
  readonly item: string;
  readonly attribute: Attribute;
}

/** A limit that stands: what must not be passed, as it was said. */
export interface KnownLimit extends Quantity {
  readonly item: string;
  readonly attribute: Attribute;
  readonly dimension: Dimension;
  /** `at-least` or `at-most`; others bind nothing. */
  readonly bound: Bound;
}

/** What the reader may lean on beside the text. */
export interface ReadContext {
  readonly units: HouseUnits;
  /** ISO 3166 country code; settles gallon, pint, ton, dollar, date order and mil where the words do not. */
  readonly region?: string;
  /** When the memo was recorded: ISO 8601 with its own offset. Relative dates count from here. */
  readonly recordedAt: string;
  /** Names of items that the project knows already. Helps only to name things, never to invent a figure. */
  readonly knownItems?: readonly string[];
  /** Gists of the tasks still open, oldest first. Helps only to see that one of them is done. */
  readonly openTasks?: readonly string[];
  /** Figures that stand, oldest first. Helps only to settle which thing a short mention means. */
  readonly knownFigures?: readonly KnownFigure[];
  /** Limits that stand. Helps only to hear that a figure of this memo is told as breaking one. */
  readonly knownLimits?: readonly KnownLimit[];
  /** The words come from a recogniser and not from a keyboard: words of the trade may have been misheard. */
  readonly isHeard?: boolean;
  /** What the recogniser held to be nearly as likely, by its place in the text; absent where it did not tell. */
  readonly doubts?: readonly HeardDoubt[];
  /** What the person said of words that were misheard before; later ones win. Used on heard words only. */
  readonly corrections?: readonly WordCorrection[];
  /** Also trace the rules that fit the same words and came later in the order. Slower; changes no note. */
  readonly explain?: boolean;
}
