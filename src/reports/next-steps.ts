/** What to do next, and where one was: made for the start of a day or the return after weeks. */
import type { CheckView } from '../model/checks/check-views.ts';
import type { NextView, ProjectInfo, TaskView } from '../model/views.ts';
import { boxEntry } from './boxes.ts';
import { keptNextSections } from './kept-entries.ts';
import { bullet, escapeMarkdown, page, section } from './markdown.ts';
import {
  arrivalEntry,
  cautionEntry,
  checkQuestion,
  findingEntry,
  NO_CAUTION_IS_NOT_SAFE,
  oldestFirst,
  promiseEntry,
  snagEntry,
  statement,
} from './page-notes.ts';
import { counted, dayName, dayOf, daysBetween, placeOf } from './source-text.ts';
import { windowEnds } from './window-words.ts';
import { oneLine } from './words.ts';

/** "Buy a sheet of ply", "get two more clamps"; not "get the heater going". Common practice, no source. */
const BUYING =
  /^(?:(?:need|have|want|remember|still|go|just|and|to|must|should)\s+)*(?:re-?order|order|buy|purchase|pick up|collect|fetch|source|get (?:hold of|(?:some|more|another|a|an|two|three|four|five|six|\d+|new|the) (?!.*\b(?:going|done|in|out|off|up|down|on|finished|sorted|ready|working|running|fixed|fitted|cut|made|right|straight|level|dry)\b)))\b/i;

/** Whether a task is an errand: something to buy, order or fetch. */
export const isErrand = ({ gist }: Pick<TaskView, 'gist'>): boolean => BUYING.test(oneLine(gist));

/** What must be done before something is closed in or covered up, by what that is, in the order of the tasks. */
export function gatesOf(
  tasks: readonly TaskView[],
): readonly (readonly [before: string, tasks: readonly TaskView[]])[] {
  const groups = new Map<string, [string, TaskView[]]>();
  for (const task of tasks) {
    if (task.before === undefined) continue;
    const words = oneLine(task.before);
    const group = groups.get(words.toLowerCase()) ?? [words, []];
    group[1].push(task);
    groups.set(words.toLowerCase(), group);
  }
  return [...groups.values()];
}

function gates(tasks: readonly TaskView[]): string[] {
  return gatesOf(tasks).map(([before, some]) =>
    bullet(
      `before ${escapeMarkdown(before)}:`,
      ...some.map(
        ({ id, gist, source }) => `${statement(gist, placeOf(source))} ${escapeMarkdown(`[${oneLine(id)}]`)}`,
      ),
    ),
  );
}

/** Questions a day: more would not be answered. Common practice, no source. */
const MOST_QUESTIONS = 5;

interface Dated {
  readonly date: string;
  readonly text: string;
}

/** When the times of a product begin and end, from a date on. */
const windowDates =
  (from: string) =>
  (check: CheckView): Dated[] =>
    windowEnds(check)
      .filter(({ at }) => dayOf(at) >= from)
      .map(({ at, words, source }) => ({
        date: dayOf(at),
        text: `${at.slice(11, 16)}, ${escapeMarkdown(words)} (${placeOf(source)})`,
      }));

/** Everything with a date, nearest first; what is past is said to be. */
function dates(next: NextView): string[] {
  const task = (entry: TaskView): Dated[] =>
    entry.due ? [{ date: entry.due, text: statement(entry.gist, placeOf(entry.source)) }] : [];
  const all: Dated[] = [
    ...(next.windows ?? []).flatMap(windowDates(next.date)),
    ...next.ready.flatMap(task),
    ...next.waiting.flatMap(task),
    ...next.arrivals.flatMap((arrival) =>
      arrival.expected && arrival.status === 'expected'
        ? [{ date: arrival.expected, text: `arrival: ${statement(arrival.item, placeOf(arrival.source))}` }]
        : [],
    ),
    ...next.promises.flatMap((promise) =>
      promise.due && promise.status === 'open'
        ? [{ date: promise.due, text: `promise: ${statement(promise.gist, placeOf(promise.source))}` }]
        : [],
    ),
  ];
  return all
    .sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0))
    .map(({ date, text }) => {
      const away = daysBetween(next.date, date);
      const days = counted(Math.abs(away), 'day');
      const late = away < 0 ? `, ${days} ago` : away === 0 ? ', today' : `, in ${days}`;
      return bullet(`${dayName(date)}${late}: ${text}`);
    });
}

/** So many snags are shown; older ones are counted. Common practice, no source. */
const MOST_PROBLEMS = 12;

function problems({ problems: open = [] }: NextView): readonly string[] {
  const older = open.length - MOST_PROBLEMS;
  return [
    ...open.slice(0, MOST_PROBLEMS).map(snagEntry),
    ...(older > 0 ? [bullet(`and ${counted(older, 'older one')}: see \`hearwright tasks\``)] : []),
  ];
}

/** Returns the next steps as CommonMark, each task with a box to tick; says so where nothing is open. */
export function nextStepsPage(next: NextView, project: ProjectInfo): string {
  const open = next.promises.filter((promise) => promise.status === 'open');
  const work = next.ready.filter((task) => !isErrand(task));
  const numbered = work.map((task, index) => boxEntry(task).replace(/^- /, `${index + 1}. `));
  const tasks = [...next.ready, ...next.waiting];
  const body = [
    ...section(2, 'Ready, in working order', numbered),
    ...section(2, 'To buy or order', next.ready.filter(isErrand).map(boxEntry)),
    ...section(2, 'Waiting', next.waiting.map(boxEntry)),
    ...section(2, 'Before it is closed in', gates(tasks)),
    ...keptNextSections(next.kept),
    ...section(2, 'Problems still open', problems(next)),
    ...section(2, 'Dates', dates(next)),
    ...section(
      2,
      'Expected',
      next.arrivals.filter((arrival) => arrival.status === 'expected').map(arrivalEntry),
    ),
    ...section(2, 'Promised to viewers', oldestFirst(open).map(promiseEntry)),
    ...section(
      2,
      'Questions',
      [
        ...next.questions.map((finding) => findingEntry(finding, project.units)),
        ...(next.checks ?? []).map(checkQuestion),
      ].slice(0, MOST_QUESTIONS),
    ),
    ...section(
      2,
      'Cautions',
      next.cautions.length > 0 ? [NO_CAUTION_IS_NOT_SAFE, '', ...next.cautions.map(cautionEntry)] : [],
    ),
  ];
  return page([
    `# Next steps for ${dayName(next.date)}: ${escapeMarkdown(project.name)}`,
    '',
    ...(body.length > 0 ? body : ['Nothing is open.']),
  ]);
}
