/**
 * All that a project tells in plain lines, for a person to look over: each begins with its kind and holds every field that
 * is there, so that nothing of a view can change unseen. Times of memos are left out: their ids tell them.
 */
import { answerOf, namingWords, tellingWords } from '../../src/model/answer.ts';
import { checkViews } from '../../src/model/checks/check-views.ts';
import { daysWithTalk, dayView, nextView } from '../../src/model/day-views.ts';
import { batchViews, hiddenViews, orderViews, pairViews } from '../../src/model/kept/kept-views.ts';
import {
  arrivalViews,
  closings,
  findingViews,
  limitViews,
  problemViews,
  promiseViews,
  standingFigures,
} from '../../src/model/project-views.ts';
import type { ProjectRows } from '../../src/model/rows.ts';
import { taskViews } from '../../src/model/task-views.ts';
import { whereView } from '../../src/model/where-view.ts';

type Fields = Readonly<Record<string, unknown>>;

/** Told by other fields, or the same in every line. */
const LEFT_OUT: ReadonlySet<string> = new Set(['recordedAt', 'span', 'formulaSource', 'asOf', 'carriedDays']);

/** What most have: only what is otherwise is told. */
const USUAL: ReadonlySet<string> = new Set([
  'bound: exact',
  'status: stands',
  'status: open',
  'rule: first said',
  'dimension: length',
  'isMet: false',
]);

const number = (value: number) => String(Number(value.toPrecision(10)));
const isFields = (value: unknown): value is Fields =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** A value in one line: `900 mm`, `m1 "nine hundred high"`, `[first | second]`, `name: value, name: value`. */
export function inLine(value: unknown): string {
  if (typeof value === 'number') return number(value);
  if (Array.isArray(value)) return `[${value.map(inLine).join(' | ')}]`;
  if (!isFields(value)) return String(value);
  const { value: amount, unit, memoId, quote, ...rest } = value;
  const start = [
    ...(typeof amount === 'number' ? [`${number(amount)} ${unit ?? ''}`] : []),
    ...(typeof amount === 'number' || amount === undefined ? [] : [`value: ${inLine(amount)}`]),
    ...(typeof amount !== 'number' && unit !== undefined ? [`unit: ${unit}`] : []),
    ...(memoId === undefined ? [] : [String(memoId)]),
    ...(quote === undefined ? [] : [`"${quote}"`]),
  ].join(' ');
  const more = Object.entries(rest)
    .filter(([name, one]) => one !== undefined && one !== '' && !LEFT_OUT.has(name))
    .filter(([, one]) => !Array.isArray(one) || one.length > 0)
    .map(([name, one]) => `${name}: ${isFields(one) ? `(${inLine(one)})` : inLine(one)}`)
    .filter((part) => !USUAL.has(part));
  return [...(start === '' ? [] : [start]), ...more].join(', ');
}

const lines = (kind: string, list: readonly object[]) => list.map((one) => `${kind} ${inLine(one)}`);

/** What stands now. A finding's consequences and a figure's claims have lines of their own. */
export function stateLines(rows: ProjectRows, now: string): readonly string[] {
  return [
    ...standingFigures(rows).flatMap(({ item, attribute, history, ...figure }) => [
      `figure ${item} ${attribute} ${inLine(figure)}`,
      ...history
        .filter(({ status, item: said }) => status !== 'standing' || said !== item)
        .map(
          ({ item: said, attribute: _same, source: _told, ...claim }) =>
            `  claim of ${item}: ${said} ${inLine(claim)}`,
        ),
    ]),
    ...lines('limit', limitViews(rows)),
    ...findingViews(rows).flatMap(({ consequences, ...finding }) => [
      `finding ${inLine(finding)}`,
      ...consequences.map((one) => `  consequence of ${finding.id}: ${inLine(one)}`),
    ]),
    ...lines(
      'task',
      taskViews(rows, now).map(({ waitsFor: _told, ...task }) => task),
    ),
    ...[...closings(rows)].map(([done, task]) => `closing ${done} of ${task}`),
    ...lines('snag', problemViews(rows)),
    ...lines('vow', promiseViews(rows)),
    ...lines('coming', arrivalViews(rows)),
    ...lines('batch', batchViews(rows)),
    ...lines('hidden', hiddenViews(rows)),
    ...lines('pair', pairViews(rows)),
    ...lines('order', orderViews(rows)),
    ...lines('check', checkViews(rows)),
  ];
}

/** What is gone was told in full when it came. */
const SHORT = 70;

/** What is different of two states: lines that are gone begin with `-` and are cut short, new ones begin with `+`. */
export function changedLines(before: readonly string[], after: readonly string[]): readonly string[] {
  const had = new Set(before);
  const has = new Set(after);
  return [
    ...before.filter((line) => !has.has(line)).map((line) => `- ${line.slice(0, SHORT)}`),
    ...after.filter((line) => !had.has(line)).map((line) => `+ ${line}`),
  ];
}

const idOf = (one: unknown) => (isFields(one) && 'id' in one ? one.id : inLine(one));
const ids = (list: readonly unknown[]) => list.map(idOf).join('; ');

/** What has no id is told in full: what is begun, filmed, not timed. */
const inShort = (part: unknown) => (Array.isArray(part) ? ids(part) : inLine(part));

/** What the days, next steps and "where was I" tell beside what stands: things that have a line already by their ids. */
export function viewLines(rows: ProjectRows, now: string): readonly string[] {
  const days = daysWithTalk(rows).flatMap((date) => {
    const day = dayView(rows, date);
    if (!day) return [`day ${date} is not there`];
    const { changes, acts = [], kept, checks, cautions, findings } = day;
    return [
      `day ${date}: opened ${ids(day.tasksOpened)}; closed ${ids(day.tasksClosed)}; before ${ids(day.openTasksBefore)}; found ${ids(findings)}; cautions ${ids(cautions)}`,
      `  new ${changes.flatMap(({ kind, figure }) => (kind === 'new' ? [figure.id] : [])).join(' ')}`,
      ...changes
        .filter(({ kind }) => kind !== 'new')
        .map(
          ({ kind, figure, old, findingId }) =>
            `  ${kind} ${figure.id}${old ? ` from ${inLine(old)}` : ''}${findingId ? ` by ${findingId}` : ''}`,
        ),
      ...lines('  act', acts),
      ...(kept?.behindWork.length ? lines('  behind', kept.behindWork) : []),
      ...(checks ? [`  checks ${inLine(checks)}`] : []),
    ];
  });
  const next = nextView(rows, now);
  const where = whereView(rows, now);
  return [
    ...days,
    `next ${next.date}: ready ${ids(next.ready)}; waiting ${ids(next.waiting)}; snags ${ids(next.problems ?? [])}; asks ${ids(next.questions)}; comes ${ids(next.arrivals)}; vows ${ids(next.promises)}; cautions ${ids(next.cautions)}; checks ${ids(next.checks ?? [])}; windows ${ids(next.windows ?? [])}`,
    ...(next.kept ? [`next kept ${inLine(next.kept)}`] : []),
    ...Object.entries(where).map(([name, part]) => `where ${name}: ${inShort(part)}`),
  ];
}

/** The answer to a question, with what it is made of by ids and names. */
export function answerLines(rows: ProjectRows, question: string): readonly string[] {
  const { kept, figures, findings, checks = [], onIt = [], isUnknown } = answerOf(rows, question, []);
  return [
    `? ${question} (telling ${tellingWords(question).join(' ')}; naming ${namingWords(question).join(' ')})`,
    ...figures.map(({ item, attribute, value, unit }) => `  ${item} ${attribute} ${number(value)} ${unit}`),
    ...(findings.length > 0 ? [`  findings ${ids(findings)}`] : []),
    ...(checks.length > 0 ? [`  checks ${ids(checks)}`] : []),
    ...onIt.map((one) => `  on it: ${inLine(one)}`),
    ...(kept
      ? Object.entries(kept).flatMap(([kind, list]: [string, readonly unknown[]]) =>
          list.map((one) => `  ${kind}: ${idOf(one)}`),
        )
      : []),
    ...(isUnknown ? ['  not known'] : []),
  ];
}
