/** Entries that several pages share: a note with its place, a finding, a task, a promise, a caution. */
import type { HouseUnits } from '../language/notes.ts';
import type { CheckView } from '../model/checks/check-views.ts';
import type {
  Caution,
  ExpectedArrival,
  FigureChange,
  FindingView,
  MemoView,
  ProblemView,
  PromiseView,
  Source,
  SourcedQuantity,
  TaskView,
} from '../model/views.ts';
import { stateText } from './check-words.ts';
import { consequenceText, findingHeadline, measureOf, sideLabels, subjectOf } from './finding-text.ts';
import { bullet, escapeMarkdown, quoted } from './markdown.ts';
import { amountText, figureText, ofThing, quantityText } from './quantity-text.ts';
import { settledText } from './settled-words.ts';
import { age, dayOf, daysBetween, placeOf } from './source-text.ts';
import { taskDetails } from './task-list.ts';
import { worstCaseText } from './tolerance-text.ts';
import { oneLine, sentence } from './words.ts';

/** A note as a page shows it: escaped gist, then where it was said. */
export function statement(gist: string, place: string): string {
  return `${escapeMarkdown(sentence(gist))} (${escapeMarkdown(place)})`;
}

/** Every note of one kind over several memos, each with its place. */
export function notesOf<K extends keyof MemoView['notes']>(memos: readonly MemoView[], kind: K) {
  return memos.flatMap((memo) =>
    (memo.notes[kind] as readonly (MemoView['notes'][K][number] & { readonly startSeconds?: number })[])
      .filter((note) => note.review !== 'rejected')
      .map((note) => ({ memo, note, place: placeOf({ memoId: memo.id, ...startOf(note) }) })),
  );
}

const startOf = (note: { readonly startSeconds?: number }) =>
  note.startSeconds === undefined ? {} : { startSeconds: note.startSeconds };

/** Whether the gist has these words already: they are not said twice. */
export function tells(gist: string, words: string): boolean {
  return oneLine(gist).toLowerCase().includes(oneLine(words).toLowerCase());
}

/** A decision with its reason and what was turned down. */
export function decisionEntry({ note, place }: ReturnType<typeof notesOf<'decisions'>>[number]): string {
  return bullet(
    statement(note.gist, place),
    note.reason && !tells(note.gist, note.reason) && `because ${escapeMarkdown(note.reason)}`,
    note.turnedDown && `turned down: ${escapeMarkdown(note.turnedDown)}`,
  );
}

/** A problem with its cause, where one was said. */
export function problemEntry({ note, place }: ReturnType<typeof notesOf<'problems'>>[number]): string {
  return bullet(statement(note.gist, place), note.cause && `cause: ${escapeMarkdown(note.cause)}`);
}

/** "905 mm, measured, memo 3, 00:12, “nine oh five”". */
function sourcedText(quantity: SourcedQuantity, units: HouseUnits): string {
  const { source, state } = quantity;
  return [
    figureText(quantity, units),
    ...(state ? [state] : []),
    source ? `${escapeMarkdown(placeOf(source))} on ${dayOf(source.recordedAt)}` : 'worked out',
    ...(source?.quote ? [quoted(source.quote)] : []),
  ].join(', ');
}

/** “they sent gloss”, memo 3 on 2026-03-02 */
function placedQuote(source: Source): string {
  return `${quoted(source.quote)}, ${escapeMarkdown(placeOf(source))} on ${dayOf(source.recordedAt)}`;
}

/**
 * What a day did to one figure: old and new value, state, circumstance, place and words. `why` is escaped: why it
 * changed, where the clash is not told by itself.
 */
export function changeEntry(change: FigureChange, units: HouseUnits, why?: string): string {
  const { figure, old } = change;
  const arrow = change.kind === 'changed' && old ? `${quantityText(ofThing(old, figure))} → ` : '';
  const details = [figure.state, figure.condition, figure.datum, figure.sizeKind].filter(Boolean) as string[];
  const place = escapeMarkdown(placeOf({ memoId: change.memoId, ...startOf(figure) }));
  return bullet(
    `${escapeMarkdown(subjectOf(figure))}: ${arrow}${figureText(figure, units)}${details.map((detail) => `, ${escapeMarkdown(detail)}`).join('')}; ${quoted(figure.quote)} (${place})`,
    change.kind === 'changed' && old?.source && `before: ${sourcedText(ofThing(old, figure), units)}`,
    why,
  );
}

/** A clash with both values, their words and ages, and what was done on the older one. */
export function findingEntry(finding: FindingView, units: HouseUnits): string {
  const { was, now, difference, tolerance, settledBy } = finding;
  const days =
    was.source && now.source ? daysBetween(was.source.recordedAt, now.source.recordedAt) : undefined;
  const older = days !== undefined && days > 0 ? `, ${age(days)} earlier` : '';
  const allowed = tolerance ? `, tolerance ${worstCaseText(tolerance)}` : '';
  const label = sideLabels(finding);
  return bullet(
    `**${escapeMarkdown(subjectOf(finding))}**: ${findingHeadline(finding)} (${escapeMarkdown(finding.id)})`,
    now.unit !== '' && `${label.now}: ${sourcedText(ofThing(now, finding), units)}`,
    was.unit !== '' && `${label.was}: ${sourcedText(ofThing(was, finding), units)}${older}`,
    finding.standsNow && `stands now: ${sourcedText(ofThing(finding.standsNow, finding), units)}`,
    // Other goods than those ordered have no number, and are told by their words.
    now.unit === '' && now.source?.quote && `${label.now}: ${placedQuote(now.source)}`,
    was.unit === '' &&
      was.source?.quote &&
      was.source.quote !== now.source?.quote &&
      `${label.was}: ${placedQuote(was.source)}`,
    now.unit !== '' && difference && `differs by ${amountText(difference)}${allowed}`,
    `why: ${escapeMarkdown(finding.why)}`,
    ...finding.consequences.map((consequence) => escapeMarkdown(consequenceText(consequence))),
    settledBy
      ? `settled on ${escapeMarkdown(settledText(finding))}`
      : `next: ${escapeMarkdown(finding.next)}`,
  );
}

/** A check that says nothing now, why, and what to say or measure. */
export function checkQuestion(check: CheckView): string {
  return bullet(
    `**${escapeMarkdown(oneLine(check.subject))}**: ${stateText(check.state)} (${escapeMarkdown(check.id)})`,
    `why: ${escapeMarkdown(check.why)}`,
    ...check.ask.map((line) => `next: ${escapeMarkdown(line)}`),
  );
}

/** A snag that is open, with the day it was said and its cause. */
export function snagEntry(problem: ProblemView): string {
  return bullet(
    `${statement(problem.gist, placeOf(problem.source))}, said on ${dayOf(problem.source.recordedAt)}`,
    problem.cause && `cause: ${escapeMarkdown(problem.cause)}`,
  );
}

/** A task with what it waits for, when it is due and how long it has been carried. */
export function taskEntry(task: TaskView): string {
  const details = taskDetails(task).map((detail) => `; ${escapeMarkdown(detail)}`);
  return bullet(`${statement(task.gist, placeOf(task.source))}${details.join('')}`);
}

/** A promise with the day it was made, when it was due, and where it was kept. */
export function promiseEntry(promise: PromiseView): string {
  const due = promise.due ? `; due ${promise.due}` : '';
  const kept = promise.keptBy
    ? `; kept on ${dayOf(promise.keptBy.recordedAt)} (${placeOf(promise.keptBy)})`
    : '';
  return bullet(
    `${statement(promise.gist, placeOf(promise.source))}, said on ${dayOf(promise.source.recordedAt)}${due}${kept}`,
  );
}

/** Promises, those made longest ago first. */
export function oldestFirst(promises: readonly PromiseView[]): readonly PromiseView[] {
  return [...promises].sort((a, b) => {
    const [x, y] = [Date.parse(a.source.recordedAt), Date.parse(b.source.recordedAt)];
    return x === y ? (a.source.startSeconds ?? 0) - (b.source.startSeconds ?? 0) : x - y;
  });
}

/** A delivery that is looked for, or has come. */
export function arrivalEntry(arrival: ExpectedArrival): string {
  const when = arrival.expected ? `expected ${arrival.expected}` : 'no date said';
  const come = arrival.receivedBy
    ? `received on ${dayOf(arrival.receivedBy.recordedAt)} (${placeOf(arrival.receivedBy)})`
    : when;
  return bullet(`${statement(arrival.item, placeOf(arrival.source))}: ${come}`);
}

/** A caution as it stands, with whoever decides after it. */
export function cautionEntry(caution: Caution): string {
  return bullet(`${escapeMarkdown(caution.caution)} Who decides: ${escapeMarkdown(caution.defer)}`);
}

/** Said wherever cautions could stand, so that silence is not read as safety. */
export const NO_CAUTION_IS_NOT_SAFE =
  'Picked by words alone: a hazard that is not listed here is not thereby safe.';

/**
 * What one memo says was made, ordered or received of one thing: each size, and what stood for it till then. `before`
 * are the older values by the id of the figure.
 */
export function actEntry(
  figures: readonly ReturnType<typeof notesOf<'figures'>>[number][],
  units: HouseUnits,
  before: ReadonlyMap<string, SourcedQuantity | undefined>,
): string {
  const [first] = figures;
  if (!first) return '';
  const sizes = figures.map(({ note }) => {
    const told = figures.length > 1 ? `${measureOf(note)} ` : '';
    return `${told}${figureText(note, units)}`;
  });
  const places = [...new Set(figures.map(({ place }) => place))].join('; ');
  const name = figures.length > 1 ? oneLine(first.note.item) : subjectOf(first.note);
  return bullet(
    `${escapeMarkdown(name)}: ${first.note.state} at ${sizes.join(', ')} (${escapeMarkdown(places)})`,
    ...figures.map(({ note }) => {
      const stood = before.get(note.id);
      return stood && `${measureOf(note)} stood at ${sourcedText(ofThing(stood, note), units)}`;
    }),
  );
}
