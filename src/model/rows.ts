/**
 * The model as rows: every projection of the log is a set of these, and the pure core reads them through
 * `ModelReader`, so that the cost of a memo grows with the memo and not with the project.
 */
import type {
  Attribute,
  Bound,
  Dimension,
  EachOfMany,
  FigureState,
  HeardRepair,
  MemoNotes,
  Quantity,
  SizeKind,
  UnitName,
} from '../language/notes.ts';
import type { CheckRow } from './checks/check-rows.ts';
import type { SpokenText } from './events.ts';
import type { NoteIds, NoteReview, NumberedNotes } from './keep-notes.ts';
import type { RecordKind, RecordOf, RecordRow } from './kept/record-rows.ts';
import type {
  ClaimView,
  ClockPutRight,
  DeviceClock,
  DroppedSpeech,
  FindingView,
  MemoSource,
  MemoSummary,
  ProjectInfo,
  Source,
  Tolerance,
  Utterance,
  WaitKind,
} from './views.ts';

/** The project itself; its one row has the key `project`. */
export interface ProjectRow extends ProjectInfo {
  readonly id: 'project';
  readonly madeAt: string;
}

/** A memo: its original, its words, and its notes as read. */
export interface MemoRow {
  readonly id: string;
  readonly recordedAt: string;
  readonly recordedAtFrom: MemoSummary['recordedAtFrom'];
  readonly putRight?: ClockPutRight;
  readonly source: MemoSource;
  /** Path of the kept original, relative to the project folder. */
  readonly file: string;
  readonly text?: string;
  readonly engine?: string;
  readonly utterances?: readonly Utterance[];
  readonly dropped?: readonly DroppedSpeech[];
  /** Absent until the memo was read. */
  readonly notes?: NumberedNotes;
  /** A person put its words right; what was heard at first stands in the log. */
  readonly isReworded?: true;
  /** What was read otherwise than it was written down. */
  readonly repairs?: readonly HeardRepair[];
  readonly reader?: string;
  /** Which transcript this is, where it is not the first. */
  readonly version?: number;
  /** The first transcript, where another one counts. */
  readonly first?: SpokenText;
  /** Ids of the notes, where another transcript than the first counts. */
  readonly noteIds?: NoteIds;
}

/** A recorder whose clock was told of; one that was forgotten has no clock. */
export interface DeviceRow {
  /** The name in small letters. */
  readonly id: string;
  readonly name: string;
  readonly clock?: DeviceClock;
}

/** A transcript by another engine, which stands beside the first one of its memo. */
export interface HearingRow {
  /** `m1/2`: the memo's id and the transcript's number, from 2 on. */
  readonly id: string;
  readonly memoId: string;
  readonly version: number;
  readonly at: string;
  readonly transcript: SpokenText;
  readonly notes: MemoNotes;
  readonly repairs?: readonly HeardRepair[];
  readonly reader: string;
}

/** Which transcript of a memo counts; without a row it is the first. */
export interface ChoiceRow {
  /** The memo's id. */
  readonly id: string;
  readonly version: number;
  readonly by: 'person' | 'newest';
}

/** What a person said of a name: another name of something, or a thing of its own. */
export interface NameRow {
  /** The name's stems, sorted, joined by a space. */
  readonly id: string;
  readonly name: string;
  /** The name it stands for; absent when the name is a thing of its own. */
  readonly into?: string;
}

/** What a person said of a note. */
export interface ReviewRow extends NoteReview {
  readonly id: string;
}

/** A transcript as a person put its words right: in the place of what was heard and read. */
export interface RewordingRow {
  /** `m1/2`: the memo's id and the transcript's number, from 1 on. */
  readonly id: string;
  readonly text: string;
  readonly utterances?: readonly Utterance[];
  readonly repairs?: readonly HeardRepair[];
  readonly notes: NumberedNotes;
}

/** A thing that figures are said of. */
export interface ItemRow {
  /** `i1`, `i2`... in order of first mention. */
  readonly id: string;
  /** As first said. */
  readonly name: string;
  /** Stems that make its identity, sorted. */
  readonly words: readonly string[];
  /** Other names, joined by a person or by the talk. */
  readonly aliases: readonly string[];
  /** Set by a person: shares no figures with things of similar name. */
  readonly apart?: boolean;
}

/** What is measured of what: one attribute and dimension of one item. See `slotOf`. */
export type Slot = string;

export interface ClaimRow extends Quantity {
  /** The note's id (`m1.f3`), or `s<seq>` for a figure set by hand. */
  readonly id: string;
  readonly memoId: string;
  readonly itemId: string;
  readonly slot: Slot;
  /** The item in the speaker's words. */
  readonly said: string;
  readonly attribute: Attribute;
  readonly dimension: Dimension;
  readonly bound: Bound;
  readonly high?: number;
  readonly plusMinus?: number;
  readonly plusMinusUnit?: UnitName;
  readonly state?: FigureState;
  readonly condition?: string;
  readonly datum?: string;
  readonly sizeKind?: SizeKind;
  readonly formula?: string;
  /** A weight of one of several. */
  readonly each?: EachOfMany;
  /** Where a thing that weighs this was said to be: "aft locker". */
  readonly place?: string;
  readonly source: Source;
  readonly status: Exclude<ClaimView['status'], 'agrees'>;
}

/** The figure that holds now. Worked-out figures have no claim. */
export interface StandingRow extends Quantity {
  readonly slot: Slot;
  readonly itemId: string;
  readonly attribute: Attribute;
  readonly dimension: Dimension;
  readonly bound: Bound;
  readonly high?: number;
  readonly claimId?: string;
  readonly state?: FigureState;
  readonly tolerance?: Tolerance;
  /** Other values that a person found right beside this one. */
  readonly also?: readonly Quantity[];
  readonly status: 'stands' | 'in-doubt' | 'stale' | 'series';
  readonly rule: string;
  /** Stems of the talk that it was told in: of its sentence, a bar, and of the sentence before. */
  readonly told?: string;
}

export interface LimitRow {
  readonly id: string;
  readonly itemId: string;
  readonly slot: Slot;
  /** The item in the speaker's words. */
  readonly said: string;
  readonly attribute: Attribute;
  readonly dimension: Dimension;
  /** Words for what must respect it; empty means the item itself. */
  readonly about: string;
  /** Sentence that stated it. */
  readonly sentence: string;
  readonly bound: 'at-least' | 'at-most' | 'between';
  readonly value: number;
  readonly high?: number;
  readonly unit: UnitName;
  readonly source: Source;
  /** False once a later limit took its place. */
  readonly active: boolean;
  /** Things that a person lets pass at this size. */
  readonly letPass?: readonly (Quantity & { readonly itemId: string })[];
}

/** How a figure follows from others. */
export interface FormulaRow {
  /** The slot it gives. */
  readonly slot: Slot;
  readonly itemId: string;
  readonly attribute: Attribute;
  readonly dimension: Dimension;
  /** The expression over slots in brackets: `[i1|width|length] + 2 * 30 mm`. */
  readonly expression: string;
  /** The expression in words, for people. */
  readonly text: string;
  readonly inputs: readonly Slot[];
  /** The size as made or worked out, which later values are held against. */
  readonly was: Quantity;
  readonly source: Source;
  readonly from: 'said' | 'arithmetic' | 'set';
}

/** Something that must come before a task, and what was heard of it. */
export interface Gate {
  readonly kind: WaitKind;
  readonly words: string;
  /** The task that is meant, where a person or the talk named it. */
  readonly taskId?: string;
  /** YYYY-MM-DD: ready from that day on. */
  readonly date?: string;
  readonly hours?: number;
  /** Where the hours began. */
  readonly since?: Source;
  readonly reading?: {
    readonly dimension: Dimension;
    readonly bound: 'at-least' | 'at-most';
    readonly value: number;
    readonly unit: UnitName;
    readonly latest?: Quantity & { readonly item: string; readonly source: Source };
  };
  /** Where it was said to have happened; with the task whose closing it was. */
  readonly met?: Source & { readonly taskId?: string; readonly came?: boolean };
}

/** A snag. */
export interface ProblemRow {
  readonly id: string;
  readonly gist: string;
  readonly cause?: string;
  readonly source: Source;
  readonly status: 'open' | 'solved';
  /** Id of the note that says it is put right, or `s<seq>` for a person's own word. */
  readonly solvedById?: string;
  readonly solvedBy?: Source;
}

export interface TaskRow {
  readonly id: string;
  readonly gist: string;
  readonly quote: string;
  /** Sentence around the quote, and the thing the talk was about: helps to match what is said done later. */
  readonly around: string;
  readonly due?: string;
  readonly waitsFor: readonly string[];
  /** What it waits for, by kind, in the order of `waitsFor`. */
  readonly gates?: readonly Gate[];
  /** What must not be done until this is: "the wall is closed in". */
  readonly before?: string;
  /** Where that was said to be done, while this was still open. */
  readonly overtakenBy?: Source;
  /** Ids of tasks that a person put this one before. */
  readonly ahead?: readonly string[];
  /** Where the same task was said again. */
  readonly again?: readonly (Source & { readonly noteId: string })[];
  /** Of a part that was made or ordered to a figure that holds no more: whose figure, what holds now, and the finding. */
  readonly looksOver?: { readonly findingId: string; readonly item: string; readonly holds: Quantity };
  /** Id of the snag that this is to put right. */
  readonly mends?: string;
  /** The circle of tasks that was found from here, as sorted ids: it is found once. */
  readonly circle?: string;
  readonly source: Source;
  readonly status: 'open' | 'done';
  /** Id of the note that closed it, or `s<seq>` for a person's own word. */
  readonly closedById?: string;
  readonly closedBy?: Source;
}

export interface PromiseRow {
  readonly id: string;
  readonly gist: string;
  readonly due?: string;
  readonly source: Source;
  readonly status: 'open' | 'kept';
  readonly keptBy?: Source;
}

export interface ArrivalRow {
  readonly id: string;
  readonly item: string;
  readonly expected?: string;
  readonly source: Source;
  readonly status: 'expected' | 'received';
  readonly receivedBy?: Source;
}

/** What an act (ordered, made, closed in) was done on the strength of. */
export interface ActRow {
  /** Id of the note that says it. */
  readonly id: string;
  /** `layered`: a layer went on or came off, and nothing else hangs on it but what was measured before. */
  readonly act: 'ordered' | 'made' | 'closed-in' | 'filmed' | 'promised' | 'layered';
  readonly what: string;
  readonly words: readonly string[];
  readonly itemIds: readonly string[];
  readonly source: Source;
}

/** Which task a `done` note closed. */
export interface ClosingRow {
  /** The done note's id. */
  readonly id: string;
  readonly taskId: string;
}

/** A finding as the project keeps it. `settledBy` comes from a later event. */
export interface FindingRow extends FindingView {
  readonly slot?: Slot;
}

export interface ModelRows {
  readonly project: ProjectRow;
  readonly memos: MemoRow;
  readonly names: NameRow;
  readonly reviews: ReviewRow;
  readonly hearings: HearingRow;
  readonly choices: ChoiceRow;
  readonly rewordings: RewordingRow;
  readonly items: ItemRow;
  readonly claims: ClaimRow;
  readonly standing: StandingRow;
  readonly limits: LimitRow;
  readonly formulas: FormulaRow;
  readonly tasks: TaskRow;
  readonly problems: ProblemRow;
  readonly promises: PromiseRow;
  readonly arrivals: ArrivalRow;
  readonly acts: ActRow;
  readonly closings: ClosingRow;
  readonly findings: FindingRow;
  readonly records: RecordRow;
  readonly checks: CheckRow;
  readonly devices: DeviceRow;
}
export type TableName = keyof ModelRows;

/**
 * What holds from the beginning of the log, whenever it was said: what a person said of names, notes and words, and what
 * other engines heard. No event brings it, and none takes it back.
 */
export const FOUNDATIONS = [
  'names',
  'reviews',
  'hearings',
  'choices',
  'rewordings',
] as const satisfies readonly TableName[];
export const isFoundation = (table: TableName) => (FOUNDATIONS as readonly TableName[]).includes(table);

/** Puts one row: a row with the same key gives way to it. Nothing is ever deleted by reconciling. */
export type ModelChange = {
  readonly [T in TableName]: { readonly table: T; readonly row: ModelRows[T] };
}[TableName];

/** A row's key in its table. */
export function keyOf({ table, row }: ModelChange): string {
  return keyIn(table)(row);
}

/** How the rows of a table are told apart. */
export function keyIn(table: TableName): (row: ModelRows[TableName]) => string {
  return table === 'standing' || table === 'formulas' ? slotKey : idKey;
}
const slotKey = (row: ModelRows[TableName]): string => (row as StandingRow | FormulaRow).slot;
const idKey = (row: ModelRows[TableName]): string => (row as { readonly id: string }).id;

/** What the pure core may ask while it reconciles one memo. Every answer is in order of first writing. */
export interface ModelReader {
  /** What a person said of a name with these stems. */
  nameRule(key: string): NameRow | undefined;
  item(id: string): ItemRow | undefined;
  /** Items whose name or another name shares at least one of these stems. */
  itemsSharing(stems: readonly string[]): readonly ItemRow[];
  /** Of those, the items that a name of these stems may stand for: see `isLike`. */
  itemsLike(stems: readonly string[]): readonly ItemRow[];
  /** Items that go by this very name, a window and its opening by one; others of like names may be among them. */
  itemsNamed(name: string): readonly ItemRow[];
  /** The items whose names share most words with these, of equals the latest, in order of first mention. */
  itemsNear(stems: readonly string[], limit: number): readonly ItemRow[];
  itemCount(): number;
  claim(id: string): ClaimRow | undefined;
  claimsOf(itemId: string): readonly ClaimRow[];
  standing(slot: Slot): StandingRow | undefined;
  standingOf(itemId: string): readonly StandingRow[];
  /** Every figure of this dimension: it costs by their number. */
  standingIn(dimension: Dimension): readonly StandingRow[];
  /** The figures of this dimension that were first told last, at most so many, in order of first writing. */
  latestIn(dimension: Dimension, limit: number): readonly StandingRow[];
  /** Active limits of this dimension. */
  limitsIn(dimension: Dimension): readonly LimitRow[];
  formula(slot: Slot): FormulaRow | undefined;
  formulasReading(slot: Slot): readonly FormulaRow[];
  openTasks(): readonly TaskRow[];
  /** Open tasks that hold one of these stems or a compound of it; others may be among them. */
  openTasksSharing(stems: readonly string[]): readonly TaskRow[];
  /** Open tasks that wait or waited for something, or that something has to wait for. */
  gatedTasks(): readonly TaskRow[];
  /** Open tasks of measuring something: few, where every figure asks whether it answers one. */
  measuringTasks(): readonly TaskRow[];
  openProblems(): readonly ProblemRow[];
  openPromises(): readonly PromiseRow[];
  expectedArrivals(): readonly ArrivalRow[];
  /** Acts whose words hold the stem of the thing itself, and at least so many of the stems of its name. */
  actsNaming(head: string, stems: readonly string[], least: number): readonly ActRow[];
  /** Open findings on this slot. */
  findingsOn(slot: Slot): readonly FindingRow[];
  /** Everything of one kind that is kept on record: batches, what is behind panels, pairs, deliveries. */
  records<K extends RecordKind>(kind: K): readonly RecordOf<K>[];
  check(id: string): CheckRow | undefined;
  /** Active checks that have at least one of these keys: see `checkKeys`. */
  checksWatching(keys: readonly string[]): readonly CheckRow[];
}

/** Columns that rows can be asked for by, without reading the whole table. */
export interface AskedBy {
  readonly memos: 'day';
  readonly hearings: 'memoId';
  readonly claims: 'memoId' | 'slot';
  readonly tasks: 'status';
  readonly problems: 'status';
  readonly findings: 'slot' | 'status' | 'memoId';
  readonly records: 'kind';
}

/** All rows, for views and exports. */
export interface ProjectRows extends ModelReader {
  /** Rows whose column holds this value, in order of first writing. */
  where<T extends keyof AskedBy>(table: T, column: AskedBy[T], value: string): readonly ModelRows[T][];
  /** Dates of memos, ascending. */
  daysWithTalk(): readonly string[];
  /** The open findings that are dearest to get wrong, of those worth asking about: see `isQuestion`. */
  questions(limit: number): readonly FindingRow[];
  all<T extends TableName>(table: T): readonly ModelRows[T][];
  get<T extends TableName>(table: T, key: string): ModelRows[T] | undefined;
}

/** The slot of an attribute. The dimension is part of it: "voltage" of a battery is no "current". */
export function slotOf(itemId: string, attribute: Attribute, dimension: Dimension): Slot {
  return `${itemId}|${attribute}|${dimension}`;
}

/** The date of an instant, in its own zone. */
export const dayOf = (instant: string): string => instant.slice(0, 10);
