/** Tasks as they are seen: what each waits for, whether that has happened, and why it stands where it does. */
import { answersGate, gateWords } from './gate-words.ts';
import { saysCured, thingOf } from './gates.ts';
import { isSameGoods } from './goods.ts';
import { nameStems } from './names.ts';
import type { ArrivalRow, Gate, ProjectRows, TaskRow } from './rows.ts';
import { graphOf, isOpenGate, TaskLinks } from './task-graph.ts';
import { convert } from './units.ts';
import type { FirstTask, Source, TaskView, WaitView } from './views.ts';
import { workingOrder } from './working-order.ts';

/** Open tasks in working order, then the done ones. `now` is an ISO day or instant: days and hours count to it. */
export function taskViews(rows: ProjectRows, now: string): readonly TaskView[] {
  return viewsOf(rows, [...rows.openTasks(), ...rows.where('tasks', 'status', 'done')], now);
}

/** Open tasks alone, in working order; done ones are not read for them. */
export function openTaskViews(rows: ProjectRows, now: string): readonly TaskView[] {
  return viewsOf(rows, rows.openTasks(), now);
}

/** Open tasks in working order, then those that were done on the day of `now`. */
export function currentTaskViews(rows: ProjectRows, now: string): readonly TaskView[] {
  const day = now.slice(0, 10);
  const done = rows
    .where('tasks', 'status', 'done')
    .filter(({ closedBy }) => closedBy?.recordedAt.startsWith(day));
  return viewsOf(rows, [...rows.openTasks(), ...done], now);
}

/**
 * Tasks as they stood at the end of a day: the open ones in working order, then what the day itself opened or closed.
 * What was done before the day is left out.
 */
export function tasksOfDay(rows: ProjectRows, day: string): readonly TaskView[] {
  const isOf = (source: Source | undefined) => source?.recordedAt.startsWith(day);
  return viewsOf(rows, tasksThen(rows, day), day, ({ source, closedBy }) =>
    Boolean(isOf(source) || isOf(closedBy)),
  );
}

/** Tasks that were open at the end of a day, in working order. */
export function openTasksAsOf(rows: ProjectRows, day: string): readonly TaskView[] {
  return viewsOf(rows, tasksThen(rows, day), day, () => false);
}

/** Tasks at the end of a day: what was said later is left out, what was closed later is open. */
function tasksThen(rows: ProjectRows, day: string): readonly TaskRow[] {
  // After every instant of the day, in any zone: nothing is cut to its date, of which there may be very many.
  const end = `${day}~`;
  const isLater = (source: Source | undefined) => source !== undefined && source.recordedAt > end;
  return tasksOfMonth(rows.all('tasks'), day.slice(0, MONTH))
    .filter((task) => !isLater(task.source))
    .map((task): TaskRow => (isLater(task.overtakenBy) ? notOvertaken(task) : task))
    .map((task): TaskRow => (isLater(task.closedBy) ? { ...task, status: 'open' } : task));
}

const notOvertaken = ({ overtakenBy: _later, ...task }: TaskRow): TaskRow => task;

/** Characters of "2026-03". */
const MONTH = 7;
const monthOf = (source: Source) => source.recordedAt.slice(0, MONTH);
const months = new WeakMap<readonly TaskRow[], Map<string, readonly TaskRow[]>>();

/**
 * The tasks that a day of a month may tell of: what was open in it, was said or closed in it, or comes before other work.
 * Found once for all days of the month: a site of ten years asks for each of its days.
 */
function tasksOfMonth(tasks: readonly TaskRow[], month: string): readonly TaskRow[] {
  const known = months.get(tasks) ?? new Map<string, readonly TaskRow[]>();
  months.set(tasks, known);
  const kept = known.get(month);
  if (kept) return kept;
  const found = tasks.filter(({ source, closedBy, status, before }) => {
    const said = monthOf(source);
    if (said > month) return false;
    if (status === 'open' || said === month || before !== undefined) return true;
    return closedBy !== undefined && monthOf(closedBy) >= month;
  });
  known.set(month, found);
  return found;
}

function viewsOf(
  rows: ProjectRows,
  tasks: readonly TaskRow[],
  now: string,
  isShownDone: (task: TaskRow) => boolean = () => true,
): readonly TaskView[] {
  const open = tasks.filter((task) => task.status === 'open');
  const look = new Look(rows, tasks, open, now);
  const waits = new Map(open.map((task) => [task.id, look.waitsOf(task)]));
  const waiting = new Set(
    open.filter((task) => waits.get(task.id)?.some((wait) => !wait.isMet)).map(({ id }) => id),
  );
  const steps = graphOf(open, now, look.links, waiting);
  const graph = workingOrder(steps);
  const byId = new Map(open.map((task) => [task.id, task]));
  const inOrder = graph.order.flatMap((id) => byId.get(id) ?? []);
  const openViews = inOrder.map((task): TaskView => {
    const own = waits.get(task.id) ?? [];
    return {
      ...common(task, now),
      status: waiting.has(task.id) ? 'waiting' : 'ready',
      ...(own.length > 0 ? { waits: own } : {}),
      ...firstOf(look.firstOf(task)),
      why: reasons(task, own, graph, byId),
    };
  });
  const done = tasks.filter((task) => task.status === 'done' && isShownDone(task));
  return [
    ...openViews,
    ...done.map(
      (task): TaskView => ({
        ...common(task, now),
        status: 'done',
        ...(task.closedBy === undefined ? {} : { closedBy: task.closedBy }),
      }),
    ),
  ];
}

function common(task: TaskRow, now: string) {
  return {
    id: task.id,
    gist: task.gist,
    ...(task.due === undefined ? {} : { due: task.due }),
    waitsFor: task.waitsFor,
    ...(task.before === undefined ? {} : { before: task.before }),
    ...(task.overtakenBy && task.status === 'open' ? { overtakenBy: task.overtakenBy } : {}),
    ...(task.again === undefined ? {} : { again: task.again }),
    source: task.source,
    carriedDays: Math.max(0, daysBetween(task.source.recordedAt, now)),
  };
}

const firstOf = (first: readonly FirstTask[]) => (first.length > 0 ? { first } : {});

/** Looks things up for the waits of one moment. */
class Look {
  readonly links: TaskLinks;
  readonly #rows: ProjectRows;
  readonly #now: string;
  readonly #heldBack = new Map<string, TaskRow[]>();
  readonly #done: readonly TaskRow[];
  #arrivals: readonly ArrivalRow[] | undefined;

  constructor(rows: ProjectRows, tasks: readonly TaskRow[], open: readonly TaskRow[], now: string) {
    this.#rows = rows;
    this.#now = now;
    this.links = new TaskLinks(open);
    for (const task of open) {
      for (const behind of this.links.heldBackBy(task)) {
        this.#heldBack.set(behind.id, [...(this.#heldBack.get(behind.id) ?? []), task]);
      }
    }
    this.#done = tasks.filter((task) => task.status === 'done' && task.before !== undefined);
  }

  /** Everything that a task waits for or waited for. */
  waitsOf(task: TaskRow): readonly WaitView[] {
    const said = (task.gates ?? []).map((gate) => this.#wait(gate, task));
    const linked = new Set(said.map((wait) => wait.on));
    const held = (this.#heldBack.get(task.id) ?? []).filter((one) => !linked.has(one.id));
    return [
      ...said,
      ...held.map(
        ({ id, gist, source }): WaitView => ({ kind: 'task', words: gist, on: id, isMet: false, source }),
      ),
    ];
  }

  /** What has to be done before a task covers it up, open ones first. */
  firstOf(task: TaskRow): readonly FirstTask[] {
    const open = this.#heldBack.get(task.id) ?? [];
    const words = gateWords(task.gist);
    const done = this.#done.filter((one) => answersGate(words, gateWords(one.before ?? '')));
    const view =
      (isDone: boolean) =>
      ({ id, gist, source }: TaskRow): FirstTask => ({ id, gist, isDone, source });
    return [...open.map(view(false)), ...done.map(view(true))];
  }

  #wait(gate: Gate, task: TaskRow): WaitView {
    const isMet = !isOpenGate(gate, this.#now, (id) => this.links.isOpen(id));
    if (isMet && gate.met) return this.#met(gate, gate.met);
    switch (gate.kind) {
      case 'date':
        return this.#date(gate);
      case 'reading':
        return this.#reading(gate);
      case 'hours':
        return this.#hours(gate) ?? this.#linked(gate, task);
      default:
        return this.#linked(gate, task);
    }
  }

  #met({ words, kind }: Gate, met: NonNullable<Gate['met']>): WaitView {
    const { taskId, came, ...source } = met;
    const task = taskId === undefined ? undefined : this.#rows.get('tasks', taskId);
    const why = task
      ? `done: ${task.gist}`
      : came
        ? 'it has come'
        : source.quote === ''
          ? 'said by hand'
          : 'said to be done';
    return {
      kind: task ? 'task' : came ? 'arrival' : kind === 'hours' ? 'event' : kind,
      words,
      isMet: true,
      why,
      ...(task ? { on: task.id } : {}),
      source,
    };
  }

  #date({ words, date = '' }: Gate): WaitView {
    const isMet = this.#now.slice(0, 10) >= date;
    return { kind: 'date', words, until: date, isMet, ...(isMet ? { why: 'the day has come' } : {}) };
  }

  #reading({ words, reading }: Gate): WaitView {
    const { bound = 'at-least', value = 0, unit = '1', latest } = reading ?? {};
    const reach = { value, unit };
    const known =
      latest && latest.source.recordedAt.slice(0, 10) <= this.#now.slice(0, 10) ? latest : undefined;
    if (!known) return { kind: 'reading', words, bound, reach, isMet: false, why: 'nothing was read since' };
    const read = convert(known, unit);
    const isMet = read !== undefined && (bound === 'at-least' ? read.value >= value : read.value <= value);
    const { source, item, ...amount } = known;
    return { kind: 'reading', words, bound, reach, latest: amount, on: item, isMet, source };
  }

  /** Hours that were said with the gate, or of the thing at any time; nothing when nobody said how long. */
  #hours(gate: Gate): WaitView | undefined {
    const { words, since } = gate;
    const hours = gate.hours ?? this.#hoursOf(words);
    if (hours === undefined) return undefined;
    const base = { kind: 'hours', words, hours } as const;
    if (!since || since.recordedAt.slice(0, 10) > this.#now.slice(0, 10))
      return { ...base, isMet: false, why: 'the time has not begun' };
    const until = laterBy(since.recordedAt, hours);
    return { ...base, until, isMet: isPast(until, this.#now), source: since };
  }

  #hoursOf(words: string): number | undefined {
    if (!saysCured(words)) return undefined;
    const thing = nameStems(thingOf(words));
    const figures = this.#rows
      .itemsSharing(thing)
      .flatMap((item) => this.#rows.standingOf(item.id))
      .filter((row) => row.dimension === 'time' && !this.#isTimeOfUse(row));
    const last = figures.at(-1);
    return last && convert(last, 'h')?.value;
  }

  /** A pot life and a time for the next coat say nothing of when a product is hard. */
  #isTimeOfUse(row: { readonly value: number; readonly unit: string }): boolean {
    const told = ['pot life', 'recoat window'].flatMap((check) => this.#rows.checksWatching([`=${check}`]));
    return told.some(({ inputs }) =>
      inputs.some(({ expression }) => expression.replace(/\s/g, '') === `${row.value}${row.unit}`),
    );
  }

  #linked(gate: Gate, task: TaskRow): WaitView {
    const { words } = gate;
    const meant = this.links.meantBy(gate, task);
    if (meant)
      return {
        kind: 'task',
        words,
        on: meant.id,
        isMet: false,
        why: `open: ${meant.gist}`,
        source: meant.source,
      };
    const named = gate.taskId === undefined ? undefined : this.#rows.get('tasks', gate.taskId);
    if (named?.status === 'done')
      return this.#met(gate, { ...(named.closedBy ?? named.source), taskId: named.id });
    if (gate.kind === 'arrival' || gate.kind === 'event') {
      const thing = thingOf(words);
      const arrival =
        thing === '' ? undefined : this.#expected().find(({ item }) => isSameGoods(item, thing));
      if (arrival) {
        const why = arrival.expected ? `expected ${arrival.expected}` : 'expected, no date said';
        return { kind: 'arrival', words, on: arrival.id, isMet: false, why, source: arrival.source };
      }
    }
    return { kind: gate.kind === 'hours' ? 'event' : gate.kind, words, isMet: false };
  }

  #expected(): readonly ArrivalRow[] {
    this.#arrivals ??= this.#rows.expectedArrivals();
    return this.#arrivals;
  }
}

type Graph = ReturnType<typeof workingOrder>;

/** Why a task stands where it does, in short phrases. */
function reasons(
  task: TaskRow,
  waits: readonly WaitView[],
  { dueBy, unblocks, cycles }: Graph,
  byId: ReadonlyMap<string, TaskRow>,
): readonly string[] {
  const due = dueBy.get(task.id);
  const behind = (unblocks.get(task.id) ?? []).flatMap((id) => byId.get(id)?.gist ?? []);
  const isWaiting = waits.some((wait) => !wait.isMet);
  return [
    ...(cycles.some((path) => path.includes(task.id)) ? ['it waits for itself in a circle'] : []),
    ...(isWaiting ? ['after what is ready: it waits'] : []),
    ...(due
      ? [due.of === task.id ? `due ${due.due}` : `needed by ${due.due} for: ${byId.get(due.of)?.gist ?? ''}`]
      : []),
    ...(behind.length > 0 ? [`unblocks ${behind.length}: ${listed(behind)}`] : []),
    ...(task.ahead ?? []).flatMap((id) =>
      byId.has(id) ? [`put before by hand: ${byId.get(id)?.gist ?? ''}`] : [],
    ),
  ];
}

/** Names of tasks, so many that a line holds them. */
function listed(gists: readonly string[]): string {
  const SHOWN = 3;
  const more = gists.length - SHOWN;
  return `${gists.slice(0, SHOWN).join('; ')}${more > 0 ? `; and ${more} more` : ''}`;
}

const MS_PER_DAY = 86_400_000;
const MS_PER_HOUR = 3_600_000;

/** Whole days between the calendar dates of two instants, each in its own zone. */
export function daysBetween(from: string, to: string): number {
  return Math.round(
    (Date.parse(`${to.slice(0, 10)}T00:00:00Z`) - Date.parse(`${from.slice(0, 10)}T00:00:00Z`)) / MS_PER_DAY,
  );
}

/** An instant so many hours later, with the same offset. */
function laterBy(instant: string, hours: number): string {
  const offset = /(?:Z|[+-]\d\d:?\d\d)$/.exec(instant)?.[0] ?? 'Z';
  const shift = offset === 'Z' ? 0 : minutesOf(offset) * 60_000;
  const local = new Date(Date.parse(instant) + hours * MS_PER_HOUR + shift).toISOString();
  return `${local.slice(0, 19)}${offset}`;
}

function minutesOf(offset: string): number {
  const [, sign, hours, minutes] = /^([+-])(\d\d):?(\d\d)$/.exec(offset) ?? [];
  return (sign === '-' ? -1 : 1) * (Number(hours ?? 0) * 60 + Number(minutes ?? 0));
}

/** Whether an instant has come. A day counts up to its end. */
function isPast(until: string, now: string): boolean {
  return now.length > 10 ? Date.parse(until) <= Date.parse(now) : until.slice(0, 10) <= now;
}
