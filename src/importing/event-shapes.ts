/**
 * The shape that each event of a log must have to be taken from outside. Fields that are not named here stay as they
 * are: a later version may have written them.
 */
import {
  array,
  type core,
  enum as enumOf,
  int,
  literal,
  looseObject,
  minimum,
  number,
  optional,
  record,
  refine,
  regex,
  string,
  unknown,
} from 'zod/mini';
import { isInstant } from '../instant.ts';
import { ATTRIBUTES, DIMENSIONS } from '../language/notes.ts';
import type { ProjectEvent } from '../model/events.ts';

const count = () => number().check(int(), minimum(0));
const instant = () => string().check(refine(isInstant, 'expected an ISO 8601 instant'));
const memoId = () => string().check(regex(/^m[1-9]\d{0,8}$/));
const noteId = () => string().check(regex(/^[ms][1-9]\d{0,8}(?:\.[a-z]+[1-9]\d{0,8})?$/));
const quantity = () => looseObject({ value: number(), unit: string() });

const utterances = () => array(looseObject({ startSeconds: number(), endSeconds: number(), text: string() }));

/** A note of any kind: what every one has. Whether the quote was said is looked at beside the text. */
const notes = () =>
  array(
    looseObject({
      kind: string(),
      quote: string(),
      span: looseObject({ start: count(), end: count() }),
    }),
  );

const spoken = () => array(looseObject({ input: string(), expression: string() }));

const transcript = () =>
  looseObject({
    text: string(),
    engine: optional(string()),
    utterances: optional(utterances()),
    dropped: optional(utterances()),
  });

const byKind = {
  'project-made': { name: string(), units: enumOf(['metric', 'us', 'mixed']), region: optional(string()) },
  'recording-kept': {
    memoId: memoId(),
    source: looseObject({
      name: string(),
      kind: enumOf(['text', 'recording']),
      sha256: string().check(regex(/^[0-9a-f]{64}$/)),
      bytes: count(),
      durationSeconds: optional(number()),
    }),
    file: string(),
    recordedAt: instant(),
    recordedAtFrom: string(),
  },
  'transcript-made': {
    memoId: memoId(),
    transcript: transcript(),
  },
  'heard-again': {
    memoId: memoId(),
    version: count(),
    transcript: transcript(),
    notes: record(string(), notes()),
    reader: string(),
  },
  'transcript-chosen': { memoId: memoId(), version: count(), by: enumOf(['person', 'newest']) },
  'notes-read': { memoId: memoId(), notes: record(string(), notes()), reader: string() },
  'note-accepted': { noteId: noteId() },
  'note-amended': { noteId: noteId(), fields: record(string(), unknown()) },
  'note-rejected': { noteId: noteId() },
  'notes-accepted': { noteIds: array(noteId()) },
  'words-learned': {
    heard: string(),
    means: string(),
    memoId: optional(memoId()),
    reading: optional(looseObject({ notes: record(string(), notes()), reader: string() })),
  },
  'words-corrected': {
    memoId: memoId(),
    version: optional(count()),
    was: string(),
    now: string(),
    text: string(),
    utterances: optional(utterances()),
    notes: record(string(), notes()),
    reader: string(),
  },
  'items-merged': { from: string(), into: string() },
  'items-split': { name: string() },
  'figure-set': {
    item: string(),
    attribute: enumOf(ATTRIBUTES),
    quantity: quantity(),
    reason: optional(string()),
  },
  'formula-set': { item: string(), attribute: enumOf(ATTRIBUTES), formula: string() },
  'limit-set': {
    item: string(),
    attribute: enumOf(ATTRIBUTES),
    about: string(),
    bound: enumOf(['at-least', 'at-most', 'between']),
    quantity: quantity(),
    high: optional(number()),
  },
  'task-added': { gist: string(), due: optional(string()), waitsFor: optional(array(string())) },
  'task-closed': { taskId: noteId() },
  'task-reopened': { taskId: noteId() },
  'task-due-set': { taskId: noteId(), due: optional(string()) },
  'task-waits-set': { taskId: noteId(), waits: array(looseObject({ words: string() })) },
  'task-placed': { taskId: noteId(), before: noteId() },
  'problem-solved': { problemId: noteId() },
  'problem-reopened': { problemId: noteId() },
  'finding-settled': {
    findingId: string(),
    choice: enumOf(['keep-old', 'take-new', 'both-right', 'correct']),
    reason: optional(string()),
    value: optional(quantity()),
  },
  'tolerance-set': { dimension: enumOf(DIMENSIONS), quantity: quantity() },
  'record-kept': { record: looseObject({ kind: enumOf(['batch', 'hidden', 'pair', 'delivery', 'clock']) }) },
  'check-added': {
    check: string(),
    inputs: spoken(),
    options: optional(record(string(), string())),
    note: optional(string()),
  },
  'device-set': { name: string(), clock: optional(looseObject({})) },
  'check-removed': { checkId: string() },
  undone: { undoes: count() },
} satisfies Readonly<Record<ProjectEvent['kind'], core.$ZodLooseShape>>;

/** What every event has. */
export const anyEvent = looseObject({ seq: count(), at: instant(), kind: string() });

const shapes = new Map(
  Object.entries(byKind).map(([kind, shape]) => [kind, looseObject({ kind: literal(kind), ...shape })]),
);

/** The shape of one kind of event; nothing where this program knows no such kind. */
export const shapeOf = (kind: string) => shapes.get(kind);
