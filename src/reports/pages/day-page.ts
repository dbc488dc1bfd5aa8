/** The page of one day: what the journal tells, and the words it was told in. */
import type {
  ActOfDay,
  DayView,
  FigureChange,
  MemoView,
  Source,
  TaskView,
  Utterance,
} from '../../model/views.ts';
import { actWords, MOST_CARRIED, toldWithChange, whyChanged } from '../journal-sections.ts';
import { keptSections } from '../kept-entries.ts';
import { notesOf, tells } from '../page-notes.ts';
import { ofThing, quantityText } from '../quantity-text.ts';
import { age, clipTime, clock, counted, dayName, dayOf, duration, memoName } from '../source-text.ts';
import { sentence } from '../words.ts';
import { anchorOf } from './file-names.ts';
import {
  block,
  bothSystems,
  cautionBlock,
  clash,
  type Desk,
  linked,
  listOf,
  place,
  quote,
  said,
  subject,
  taskLine,
} from './fragments.ts';
import { type Html, html, joinedBy, type Part } from './html.ts';
import { mentionsLinked } from './mentions.ts';
import { outlineHtml } from './outline-html.ts';

type NoteOf<K extends keyof MemoView['notes']> = ReturnType<typeof notesOf<K>>[number];

/** Where a note of a memo was said. */
function sourceOf(memo: MemoView, note: { readonly quote: string; readonly startSeconds?: number }): Source {
  const at = note.startSeconds === undefined ? {} : { startSeconds: note.startSeconds };
  return { memoId: memo.id, recordedAt: memo.recordedAt, quote: note.quote, ...at };
}

/** The main part of a day's page, from what was done to the words of its memos. */
export function dayMain(desk: Desk, day: DayView): Part {
  const { memos } = day;
  const words = mentionsLinked(desk.links);
  const told = [
    block(2, 'Done', [listOf(notesOf(memos, 'done').map((one) => doneLine(desk, day, one)))]),
    block(2, 'Decided', [listOf(notesOf(memos, 'decisions').map((one) => decisionLine(desk, one)))]),
    measured(desk, day),
    clashes(desk, day),
    checks(desk, day),
    block(2, 'Made, ordered and received', [listOf([...actsAgainst(desk, day), ...acts(desk, day)])]),
    outlineHtml(keptSections(day.kept), words),
    block(2, 'Problems', [listOf(notesOf(memos, 'problems').map((one) => problemOf(desk, one)))]),
    block(2, 'Arrivals', [listOf(notesOf(memos, 'arrivals').map((one) => arrivalOf(desk, one)))]),
    tasks(desk, day),
    block(2, 'Promises', [
      listOf(
        notesOf(memos, 'promises').map(({ note, memo }) =>
          said(desk, note.gist, sourceOf(memo, note), note.due !== undefined && `due ${note.due}`),
        ),
      ),
    ]),
    block(2, 'Corrections', [
      listOf(
        notesOf(memos, 'corrections').map(({ note, memo }) => said(desk, note.gist, sourceOf(memo, note))),
      ),
    ]),
    cautionBlock(day.cautions),
  ].filter((part) => part !== undefined && !(Array.isArray(part) && part.length === 0));
  return [
    told.length > 0 ? told : html`<p>Nothing to note was read.</p>\n`,
    block(
      2,
      'What was said',
      memos.map((memo) => memoWords(memo)),
    ),
  ];
}

/** "2 memos, 2 min 14 s of talk". */
export function dayLead({ memos }: Pick<DayView, 'memos'>): string {
  const seconds = memos.reduce((sum, memo) => sum + (memo.source.durationSeconds ?? 0), 0);
  return `${counted(memos.length, 'memo')}${seconds > 0 ? `, ${duration(seconds)} of talk` : ''}`;
}

/** What a list of days says of this one: the first thing that was done, decided, or went wrong. */
export function dayGist({ memos }: DayView): string {
  const kinds = ['done', 'decisions', 'problems', 'tasks'] as const;
  for (const kind of kinds) {
    const [first] = notesOf(memos, kind);
    if (first) return first.note.gist;
  }
  return '';
}

function doneLine(desk: Desk, day: DayView, { note, memo }: NoteOf<'done'>): Html {
  const task = day.tasksClosed.find(
    ({ closedBy }) => closedBy?.memoId === memo.id && closedBy.quote === note.quote,
  );
  return said(
    desk,
    note.gist,
    sourceOf(memo, note),
    task && html`closes: ${linked(task.gist, desk.links.task(task.id))}`,
  );
}

function decisionLine(desk: Desk, { note, memo }: NoteOf<'decisions'>): Html {
  return said(
    desk,
    note.gist,
    sourceOf(memo, note),
    note.reason !== undefined && !tells(note.gist, note.reason) && `because ${note.reason}`,
    note.turnedDown !== undefined && `turned down: ${note.turnedDown}`,
  );
}

function problemOf(desk: Desk, { note, memo }: NoteOf<'problems'>): Html {
  return said(desk, note.gist, sourceOf(memo, note), note.cause !== undefined && `cause: ${note.cause}`);
}

function arrivalOf(desk: Desk, { note, memo }: NoteOf<'arrivals'>): Html {
  const when = note.received
    ? 'received'
    : `expected${note.expected === undefined ? ', no date said' : ` ${note.expected}`}`;
  return said(desk, note.item, sourceOf(memo, note), when);
}

function changeLine(desk: Desk, change: FigureChange, memo: MemoView | undefined, why?: Part): Html {
  const { figure, old, kind } = change;
  const details = [figure.state, figure.condition, figure.datum, figure.sizeKind].filter(Boolean);
  const source = memo && sourceOf(memo, figure);
  const before = kind === 'changed' ? old?.source : undefined;
  return html`${subject(desk, figure)}: ${kind === 'changed' && old && `${quantityText(ofThing(old, figure))} → `}${bothSystems(
    figure,
  )}${details.map((detail) => `, ${detail}`)} ${quote(figure.quote)}${
    source && html` <span class="where">${place(desk, source)}</span>`
  }${
    before !== undefined &&
    html`<br><span class="detail">before: ${old?.state !== undefined && `${old.state}, `}${place(desk, before)} on ${dayOf(before.recordedAt)} ${quote(before.quote)}</span>`
  }${why !== undefined && html`<br><span class="detail">${why}</span>`}`;
}

/** Counts of things are no measure. */
function measured(desk: Desk, day: DayView): Part {
  const { changes, memos } = day;
  const settled = toldWithChange(day);
  const byId = new Map(memos.map((memo) => [memo.id, memo]));
  const of = (kind: FigureChange['kind']) =>
    listOf(
      changes
        .filter((change) => change.kind === kind && change.figure.dimension !== 'count')
        .map((change) => {
          const clash = settled.get(change.findingId ?? '');
          const why = clash && linked(whyChanged(clash), desk.links.finding(clash.id));
          return changeLine(desk, change, byId.get(change.memoId), why);
        }),
    );
  return block(2, 'Measured', [
    block(3, 'Changed', [of('changed')]),
    block(3, 'New', [of('new')]),
    block(3, 'Confirmed', [of('confirmed')]),
  ]);
}

function clashes(desk: Desk, day: DayView): Part {
  const told = toldWithChange(day);
  const of = (status: 'open' | 'settled') =>
    day.findings
      // Checks have a section of their own.
      .filter((finding) => finding.status === status && finding.kind !== 'check' && !told.has(finding.id))
      .map((finding) => clash(desk, finding, 3));
  return block(2, 'Clashes', [...of('open'), ...of('settled')]);
}

function checks(desk: Desk, { checks: of }: DayView): Part {
  if (!of) return undefined;
  const again = of.holdAgain.map(
    (finding) => html`${subject(desk, finding)} holds again: ${finding.settledBy?.reason ?? ''}`,
  );
  return block(2, 'Checks', [...of.broke.map((finding) => clash(desk, finding, 3)), listOf(again)]);
}

const ACTS = new Set(['made', 'ordered', 'received']);

/** What was ordered, made or closed in, with the figures that stood for it. */
function actsAgainst(desk: Desk, day: DayView): readonly Html[] {
  return (day.acts ?? []).map((act) =>
    said(
      desk,
      actWords(act),
      act.source,
      html`at ${joinedBy(
        act.against.map((figure) => stoodWords(desk, figure, act.source)),
        '; ',
      )}`,
    ),
  );
}

/** A size that stood when something was made or ordered; of what the same memo said, the size alone. */
function stoodWords(desk: Desk, figure: ActOfDay['against'][number], act: Source): Html {
  const { source, state } = figure;
  const isOwn = source === undefined || source.memoId === act.memoId;
  return html`${subject(desk, figure)} ${bothSystems(figure)}${
    !isOwn &&
    html`, ${state !== undefined && `${state}, `}${place(desk, source)} on ${dayOf(source.recordedAt)} ${quote(source.quote)}`
  }`;
}

function acts(desk: Desk, day: DayView): readonly Html[] {
  const told = new Set((day.acts ?? []).flatMap(({ against }) => against.map(({ id }) => id)));
  const before = new Map(
    day.changes.map(({ figure, old, kind }) => [figure.id, kind === 'new' ? undefined : old]),
  );
  return notesOf(day.memos, 'figures')
    .filter(({ note }) => note.state !== undefined && ACTS.has(note.state) && !told.has(note.id))
    .map(({ note, memo }) => {
      const stood = before.get(note.id);
      return html`${subject(desk, note)}: ${note.state} at ${bothSystems(note)} ${quote(note.quote)} <span class="where">${place(
        desk,
        sourceOf(memo, note),
      )}</span>${
        stood?.source !== undefined &&
        html`<br><span class="detail">stood at ${quantityText(ofThing(stood, note))}, ${place(desk, stood.source)} on ${dayOf(stood.source.recordedAt)}</span>`
      }`;
    });
}

function tasks(desk: Desk, day: DayView): Part {
  const closed = new Set(day.tasksClosed.map(({ id }) => id));
  const carried = day.openTasksBefore.filter(({ id }) => !closed.has(id));
  const list = (some: readonly TaskView[]) => listOf(some.map((task) => taskLine(desk, task)));
  const rest = carried.length - MOST_CARRIED;
  return block(2, 'Tasks', [
    block(3, 'Opened', [list(day.tasksOpened)]),
    block(3, 'Closed', [list(day.tasksClosed)]),
    block(3, 'Carried over', [
      listOf([
        ...carried.slice(0, MOST_CARRIED).map((task) => carriedLine(desk, task)),
        ...(rest > 0 ? [`and ${rest} more`] : []),
      ]),
    ]),
  ]);
}

function carriedLine(desk: Desk, { gist, id, source, due, carriedDays }: TaskView): Html {
  return html`${linked(sentence(gist), desk.links.task(id))} <span class="where">${place(desk, source)}${
    due !== undefined && `; due ${due}`
  }${carriedDays > 0 && `; carried over ${age(carriedDays)}`}</span>`;
}

/** The words of a memo with the times of its stretches, where it was spoken. */
function memoWords(memo: MemoView): Html {
  const { source, utterances, text } = memo;
  const length = source.durationSeconds === undefined ? 'written' : duration(source.durationSeconds);
  const body: Part = utterances
    ? utterances.map(utteranceLine)
    : text
        .split(/\n+/)
        .filter((line) => line.trim() !== '')
        .map((line) => html`<p>${line}</p>\n`);
  return html`<article class="memo" id="${anchorOf(memo.id)}">
<h3>${memoName(memo.id)}: ${clock(memo.recordedAt).slice(11)}</h3>
<p class="where">${source.name}, ${length}, ${counted(memo.words, 'word')}${
    memo.status === 'kept' && '; kept, not read yet'
  }${
    (memo.droppedSpeech ?? []).length > 0 &&
    `; left out for want of speech: ${(memo.droppedSpeech ?? []).map(({ startSeconds, endSeconds }) => `${clipTime(startSeconds)} to ${clipTime(endSeconds)}`).join(', ')}`
  }</p>
<div class="words">
${body}</div>
</article>
`;
}

const utteranceLine = ({ startSeconds, text }: Utterance): Html =>
  html`<p><span class="time">${clipTime(startSeconds)}</span> ${text}</p>\n`;

export const dayTitle = dayName;
