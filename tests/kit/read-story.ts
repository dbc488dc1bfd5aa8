import { limitsKnown } from '../../src/known.ts';
import type { FigureNote, KnownFigure, KnownLimit, MemoNotes, Span } from '../../src/language/notes.ts';
import { readMemo } from '../../src/language/pipeline.ts';
import { MemoryProject } from '../../src/model/memory.ts';
import { closings, findingViews, memoView } from '../../src/model/project-views.ts';
import { taskViews } from '../../src/model/task-views.ts';
import type { GoldConflict, GoldFigure, GoldMemo, Story, StoryReading } from './story.ts';

const SCORED_KINDS: ReadonlySet<string> = new Set(['decided', 'remeasured', 'slip', 'stale', 'limit']);

/** Tells a story to a project in memory, memo by memo, as it would be dictated. */
export function readStory(story: Story): StoryReading {
  return tell(story, (memo, before) => readOne(story, memo, before));
}

/** As `readStory`, for memos whose text was written by a recogniser. */
export function readHeardStory(story: Story): StoryReading {
  return tell(story, (memo, before) => readOne(story, memo, before, true));
}

/**
 * Tells a story by its gold notes, so that reconciling is scored apart from reading. What the gold does not hold
 * (cues of change, states, formulas, limits) is taken from the reader where it read the same figure.
 */
export function readGoldNotes(story: Story): StoryReading {
  return tell(story, (memo, before) => goldNotes(memo, readOne(story, memo, before)));
}

/** What the memos before have left. */
interface Before {
  readonly known: readonly KnownFigure[];
  readonly knownLimits: readonly KnownLimit[];
  readonly openTasks: readonly string[];
}

/** Reads one memo with what the memos before it left: it settles short names and tells what is done. */
function readOne(
  story: Story,
  memo: GoldMemo,
  { known, knownLimits, openTasks }: Before,
  isHeard = false,
): MemoNotes {
  return readMemo(memo.text, {
    ...(isHeard ? { isHeard, ...(memo.doubts ? { doubts: memo.doubts } : {}) } : {}),
    units: story.units,
    ...(story.region ? { region: story.region } : {}),
    recordedAt: memo.recordedAt,
    knownItems: [...new Set(known.map((figure) => figure.item))],
    knownFigures: known,
    knownLimits,
    openTasks,
  }).notes;
}

/** What is done before and after each memo of a story, with the project as it is then. */
interface Listener {
  readonly before: (project: MemoryProject, memo: GoldMemo, notes: MemoNotes) => void;
  readonly after: (project: MemoryProject, memo: GoldMemo) => void;
}

/** Tells a story as it would be dictated, and lets somebody look in between. */
export function tellStory(story: Story, listener: Listener): void {
  tell(story, (memo, before) => readOne(story, memo, before), listener);
}

function tell(
  story: Story,
  notesOf: (memo: GoldMemo, before: Before) => MemoNotes,
  listener?: Listener,
): StoryReading {
  const project = new MemoryProject();
  const known: KnownFigure[] = [];
  const at = story.memos[0]?.recordedAt ?? '2026-01-01T00:00:00Z';
  const region = story.region ? { region: story.region } : {};
  project.append([{ kind: 'project-made', name: story.story, units: story.units, ...region, at }]);
  for (const memo of story.memos) {
    const { id: memoId, recordedAt, text } = memo;
    const openTasks = taskViews(project.rows, memo.recordedAt)
      .filter((task) => task.status !== 'done')
      .map((task) => task.gist);
    const notes = notesOf(memo, { known: [...known], knownLimits: limitsKnown(project.rows), openTasks });
    listener?.before(project, memo, notes);
    for (const { item, attribute, value, unit, limit } of notes.figures)
      if (!limit?.about) known.push({ item, attribute, value, unit });
    const source = { name: `${memoId}.txt`, kind: 'text', sha256: memoId, bytes: text.length } as const;
    project.append([
      {
        kind: 'recording-kept',
        at: recordedAt,
        memoId,
        source,
        file: source.name,
        recordedAt,
        recordedAtFrom: 'given',
      },
      { kind: 'transcript-made', at: recordedAt, memoId, transcript: { text } },
      { kind: 'notes-read', at: recordedAt, memoId, notes, reader: 'test' },
    ]);
    listener?.after(project, memo);
  }
  return readingOf(story, project);
}

function readingOf(story: Story, project: MemoryProject): StoryReading {
  const closed = closings(project.rows);
  const last = story.memos.at(-1)?.recordedAt ?? '2026-01-01T00:00:00Z';
  return {
    memos: story.memos.map(({ id }) => {
      const view = memoView(project.rows, id);
      if (!view) throw new Error(`memo ${id} was not kept`);
      return {
        ...view.notes,
        done: view.notes.done.map((note) => ({ ...note, closes: closed.get(note.id) })),
        conflicts: findingViews(project.rows, { memoId: id })
          .filter((finding) => SCORED_KINDS.has(finding.kind))
          .map(({ item, attribute, was, now, kind }): GoldConflict => ({ item, attribute, was, now, kind })),
      };
    }),
    open: taskViews(project.rows, last)
      .filter((task) => task.status !== 'done')
      .map((task) => task.id),
  };
}

function goldNotes(memo: GoldMemo, read: MemoNotes): MemoNotes {
  const span = (quote: string): Span => {
    const start = Math.max(0, memo.text.indexOf(quote));
    return { start, end: start + quote.length };
  };
  const placed = <N extends { readonly quote: string }>(list: readonly N[] | undefined) =>
    (list ?? []).map((note) => ({ ...note, span: span(note.quote) }));
  const inOrder = <N extends { readonly span: Span }>(list: readonly N[]): readonly N[] =>
    [...list].sort((a, b) => a.span.start - b.span.start);
  return {
    figures: inOrder(placed(memo.figures).map((figure) => withCues(figure, read.figures))),
    decisions: inOrder(placed(memo.decisions).map((note) => ({ kind: 'decision' as const, ...note }))),
    tasks: placed(memo.tasks).map(({ id: _id, due, waitsFor, ...note }) => ({
      kind: 'task' as const,
      ...note,
      ...(due ? { due } : {}),
      waitsFor: waitsFor ?? [],
    })),
    done: placed(memo.done).map(({ closes: _closes, ...note }) => ({ kind: 'done' as const, ...note })),
    arrivals: placed(memo.arrivals).map(({ expected, ...note }) => ({
      kind: 'arrival' as const,
      ...note,
      ...(expected ? { expected } : {}),
      received: !expected && /arrived/.test(note.item),
    })),
    problems: placed(memo.problems).map((note) => ({ kind: 'problem' as const, ...note })),
    promises: placed(memo.promises).map((note) => ({ kind: 'promise' as const, ...note })),
    corrections: [],
    records: read.records,
  };
}

const CUES = ['state', 'change', 'replaces', 'formula', 'limit', 'condition', 'datum', 'sizeKind'] as const;

function withCues(gold: GoldFigure & { readonly span: Span }, read: readonly FigureNote[]): FigureNote {
  const same = read.find((note) => note.span.start < gold.span.end && note.span.end > gold.span.start);
  const cues = Object.fromEntries(
    CUES.flatMap((cue) => (same?.[cue] === undefined ? [] : [[cue, same[cue]]])),
  );
  const { plusMinusUnit, ...rest } = gold;
  return { kind: 'figure', ...rest, ...(plusMinusUnit ? { plusMinusUnit } : {}), ...cues } as FigureNote;
}
