/** The rows of each list, as plain words. Pure, so that they are tested without a terminal. */
import type { Span } from '../../language/notes.ts';
import type { FindingView, MemoSummary, MemoView, NextView } from '../../model/views.ts';
import { plainText } from '../../plain-text.ts';
import { stateText } from '../../reports/check-words.ts';
import { closed, shortLine, widthOf } from '../../reports/columns.ts';
import { subjectOf } from '../../reports/finding-text.ts';
import { behindWords, missingWords } from '../../reports/kept-words.ts';
import { doubtsOf, everyNote, type KeptNote } from '../../reports/note-doubts.ts';
import { wordsOfNote } from '../../reports/note-words.ts';
import { ofThing, quantityText } from '../../reports/quantity-text.ts';
import { clipTime, counted } from '../../reports/source-text.ts';
import { keysOf } from '../keys.ts';
import { figureLines } from './figure-lines.ts';
import { foundFigures } from './figure-rows.ts';
import { pageLines } from './page-lines.ts';
import { ruleLines } from './rule-lines.ts';
import type { ScreenState } from './screen-state.ts';
import { taskLines } from './task-rows.ts';
import { whereLines } from './where-lines.ts';
import { dayAndClock, shortDay } from './words.ts';

export interface NoteLine {
  readonly note: KeptNote;
  readonly id: string;
  /** One word for the kind of note. */
  readonly kind: string;
  readonly what: string;
  readonly quote: string;
  /** Of the quote in the memo's text, as it was said. */
  readonly span: Span;
  /** `m:ss` into the recording; empty for text memos. */
  readonly at: string;
  /** What a person has said of it, or that it is to be looked at; empty where it can be agreed with as it is. */
  readonly state: '' | 'UNSURE' | 'right' | 'amended' | 'out';
  /** Why it is unsure. */
  readonly why: readonly string[];
}

const REVIEWS = { accepted: 'right', amended: 'amended', rejected: 'out' } as const;

/** Every note of a memo in the order of speech; `findings` are the open ones. */
export function noteLines(memo: MemoView, findings: readonly FindingView[] = []): readonly NoteLine[] {
  const own = findings.filter(({ memoId }) => memoId === memo.id);
  return everyNote(memo).map((note) => {
    const why = doubtsOf(note, memo.text, own);
    const [kind, what] = wordsOfNote(note);
    return {
      note,
      id: note.id,
      kind,
      what: plainText(what),
      quote: plainText(note.quote),
      span: note.span,
      at: note.startSeconds === undefined ? '' : clipTime(note.startSeconds),
      state: note.review ? REVIEWS[note.review] : why.length > 0 ? 'UNSURE' : '',
      why,
    };
  });
}

/** The notes that are listed: all of the memo, or those alone that are unsure and nobody went over. */
export function shownNotes({ memo, data, unsureAlone }: ScreenState): readonly NoteLine[] {
  if (!memo) return [];
  const all = noteLines(memo, data.findings);
  return unsureAlone ? all.filter(({ state }) => state === 'UNSURE') : all;
}

/** The note under the mark. */
export function chosenNote(state: ScreenState): NoteLine | undefined {
  return shownNotes(state)[state.chosen.heard];
}

/** From this width on there is room for everything. */
const WIDE = 70;
/** Less of a name says nothing. */
const LEAST_NAME = 8;

/** One line for a memo in the list. Where room is scarce what is loud stands before the name, and that is cut. */
export function memoLine(memo: MemoSummary, columns = Number.POSITIVE_INFINITY): string {
  const length = memo.source.durationSeconds === undefined ? 'text' : clipTime(memo.source.durationSeconds);
  const state =
    memo.status === 'kept' ? 'kept, not heard yet' : `${counted(memo.noteCount, 'note')}${clashWords(memo)}`;
  const id = memo.id.padEnd(4);
  if (columns < WIDE) return `${id} ${shortDay(memo.recordedAt)}  ${state}  ${plainText(memo.source.name)}`;
  const ahead = `${id} ${dayAndClock(memo.recordedAt)}  `;
  const behind = `  ${length}  ${state}`;
  const room = Math.max(LEAST_NAME, columns - widthOf(ahead) - widthOf(behind));
  return ahead + closed(shortLine(memo.source.name, room)) + behind;
}

/** Loud while one is open. */
function clashWords({ findingCount, openFindingCount }: MemoSummary): string {
  if (findingCount === 0) return '';
  if (openFindingCount === 0) return ', clashes settled';
  return `, ${openFindingCount} CLASH${openFindingCount > 1 ? 'ES' : ''}`;
}

/** One line for a finding in the list. */
export function findingRow(finding: FindingView): string {
  if (finding.kind === 'check') return plainText(`check      ${subjectOf(finding)}: ${finding.why}`);
  // Tasks that wait for each other have no two sizes.
  const change =
    finding.was.unit === ''
      ? ''
      : `: ${quantityText(ofThing(finding.was, finding))} → ${quantityText(ofThing(finding.now, finding))}`;
  return `${finding.kind.padEnd(10)} ${subjectOf(finding)}${change}`;
}

/** The next steps, one line each, with a word for the state. */
export function nextLines(next: NextView): readonly string[] {
  return [
    ...next.ready.map(
      (task) => `ready    ${task.gist}${task.due ? `, by ${task.due}` : ''}${carried(task.carriedDays)}`,
    ),
    ...(next.kept?.missingSizes ?? []).map((one) => `no size  ${missingWords(one)}`),
    ...(next.kept?.behindWork ?? []).map((one) => behindWords(one)),
    ...next.waiting.map(
      (task) => `waiting  ${task.gist}: ${task.waitsFor.join('; ')}${carried(task.carriedDays)}`,
    ),
    ...(next.checks ?? []).map(
      (check) => `${stateText(check.state).padEnd(8)} ${check.subject}: ${check.why}`,
    ),
    ...(next.problems ?? []).map((problem) => `problem  ${problem.gist}`),
    ...next.arrivals
      .filter((arrival) => arrival.status === 'expected')
      .map((arrival) => `coming   ${arrival.item}${arrival.expected ? `, ${arrival.expected}` : ''}`),
    ...next.promises
      .filter((promise) => promise.status === 'open')
      .map((promise) => `promised ${promise.gist}${promise.due ? `, by ${promise.due}` : ''}`),
  ].map(plainText);
}

const carried = (days: number) => (days > 0 ? ` (open ${days} ${days === 1 ? 'day' : 'days'})` : '');

/** How many rows the list of the present view has. */
export function listLength(state: ScreenState): number {
  switch (state.view) {
    case 'memos':
      return state.data.memos.length;
    case 'heard':
      return shownNotes(state).length;
    case 'transcripts':
      return state.transcripts?.length ?? 0;
    case 'clashes':
      return state.data.findings.length;
    case 'figures':
      return foundFigures(state).length;
    case 'figure':
      return figureLines(state).length;
    case 'rules':
      return ruleLines(state).length;
    case 'tasks':
      return taskLines(state).length;
    case 'day':
      return pageLines(state).length;
    case 'next':
      return nextLines(state.data.next).length;
    case 'where':
      return whereLines(state).length;
    case 'bench':
      return 0;
    case 'keys':
      return keysOf(state.viewBefore).length;
  }
}
