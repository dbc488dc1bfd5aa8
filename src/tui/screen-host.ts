/**
 * Does for the screen what its reducer asks for, on an open project, and tells what came of it as events. It runs beside
 * the screen, in a thread of its own, so that keys are answered whatever a reading or a writing takes.
 */
import { statSync } from 'node:fs';
import { basename, dirname } from 'node:path';
import { Problem } from '../problem.ts';
import type { HandChange, ListenEvent, ProjectApi, Taken } from '../project-api.ts';
import { daysBetween } from '../reports/source-text.ts';
import { isToldOf } from '../watching/told-of.ts';
import { dayPages } from './day-pages.ts';
import { screenListening } from './listen-on-screen.ts';
import type {
  DayPage,
  Effect,
  FigureBook,
  ScreenData,
  ScreenEvent,
  ScreenOpening,
} from './state/screen-state.ts';

/** Writes a page into the project's folder and says where it went. Throws a Problem when it cannot. */
export type SavePage = (file: string, text: string) => { readonly file: string; readonly beside: boolean };

export interface HostSetup {
  readonly project: ProjectApi;
  readonly save: SavePage;
  /** ISO 8601, asked anew whenever the data is read. */
  readonly now: () => string;
  readonly emit: (event: ScreenEvent) => void;
}

/** Longer than this without talk, and the screen opens with where one was. */
const GAP_DAYS = 7;
/** More than any terminal shows: the rest follows. */
const FIRST_SOON = 150;

/** What the screen opens with: the newest and dearest; after a gap also where one was. */
export function openingOf(project: ProjectApi, now: string): ScreenOpening {
  const findings = openFindings(project);
  const last = project.days().at(-1);
  const isBack = last !== undefined && daysBetween(last, now) > GAP_DAYS;
  return {
    data: {
      ...nameOf(project),
      memos: newestFirst(project.latestMemos(FIRST_SOON)),
      findings: findings.slice(0, FIRST_SOON),
      counts: { memos: project.memoCount(), findings: findings.length },
      next: project.next(now),
    },
    ...(isBack ? { where: project.where(now) } : {}),
  };
}

/** What the screen shows of a project at a moment. */
export function readData(project: ProjectApi, now: string): ScreenData {
  const [memos, findings] = [newestFirst(project.memos()), openFindings(project)];
  return {
    ...nameOf(project),
    memos,
    findings,
    next: project.next(now),
  };
}

function nameOf({ info }: ProjectApi): Pick<ScreenData, 'projectName' | 'region'> {
  return { projectName: info.name, ...(info.region ? { region: info.region } : {}) };
}

const newestFirst = <T>(list: readonly T[]): readonly T[] => [...list].reverse();
const openFindings = (project: ProjectApi) =>
  [...project.findings({ status: 'open' })].sort((a, b) => b.cost - a.cost);

export class ScreenHost {
  readonly #setup: HostSetup;
  readonly #recording: ReturnType<typeof screenListening>;
  #taking: AbortController | undefined;
  #playing: AbortController | undefined;
  #watching: AbortController | undefined;
  #isLeaving = false;

  constructor(setup: HostSetup) {
    this.#setup = setup;
    const { project, emit } = setup;
    this.#recording = screenListening(project, {
      onEvent: (event) => emit({ kind: 'bench', event, ...benchLines(event) }),
      onRead: () => this.#emitData(),
      onOver: (trouble) => emit({ kind: 'bench-over', ...(trouble ? { lines: troubleLines(trouble) } : {}) }),
    });
  }

  /** Does it; what goes wrong is told as an event too. */
  perform(effect: Effect): void {
    this.#orTellWhy(() => this.#perform(effect));
    if (effect.do !== 'reword') this.#setup.emit({ kind: 'performed', effect: effect.do });
  }

  #orTellWhy(work: () => void): void {
    try {
      work();
    } catch (error) {
      // Another program may hold the project, or the disk be full: the screen stays, and says so.
      this.#setup.emit({ kind: 'refused', lines: troubleLines(error) });
    }
  }

  async #reword({ do: what, memoId, wording }: Extract<Effect, { do: 'reword' }>): Promise<void> {
    const { project, emit } = this.#setup;
    try {
      const { findings } = await project.reword(memoId, wording);
      const clash = findings.some(({ status }) => status === 'open')
        ? ', and something clashes: press c'
        : '';
      this.#done(`read again with "${wording.words}"${clash}`);
    } catch (error) {
      emit({ kind: 'refused', lines: troubleLines(error) });
    }
    emit({ kind: 'performed', effect: what });
  }

  #perform(effect: Effect): void {
    const { project, emit } = this.#setup;
    const now = this.#setup.now();
    switch (effect.do) {
      case 'read-data':
        this.#emitData();
        break;
      case 'open-memo': {
        const memo = project.memo(effect.id);
        if (memo) emit({ kind: 'memo', memo });
        break;
      }
      case 'read-transcripts': {
        const { memoId } = effect;
        emit({ kind: 'transcripts', memoId, transcripts: project.transcripts(memoId) });
        break;
      }
      case 'read-book':
        this.#readBook(effect.firstSoon);
        break;
      case 'read-figure': {
        const around = project.figureAround(effect.place, now) ?? null;
        emit({ kind: 'figure', place: effect.place, around, limits: project.limits() });
        break;
      }
      case 'read-rules':
        emit({ kind: 'rules', rules: { limits: project.limits(), checks: project.checks(now) } });
        break;
      case 'read-tasks':
        emit({ kind: 'tasks', tasks: project.currentTasks(now) });
        break;
      case 'read-pages':
        emit({ kind: 'pages', pages: dayPages(project, now, effect.day), days: project.days() });
        break;
      case 'read-where':
        emit({ kind: 'where', where: project.where(now) });
        break;
      case 'settle':
        project.settle(effect.id, effect.choice, effect.value ? { value: effect.value } : {});
        this.#done(`settled: ${SETTLED[effect.choice]}`);
        break;
      case 'withdraw':
        this.#done(project.withdraw(effect.id) === undefined ? 'it is not there any more' : effect.line);
        break;
      case 'undo':
        this.#undo();
        break;
      case 'redo':
        this.#redo();
        break;
      case 'by-hand':
        project.setByHand(effect.change);
        this.#done(placeKept(project, effect.change, now) ?? effect.line);
        break;
      case 'reword':
        void this.#reword(effect);
        break;
      case 'write': {
        const written = effect.pages.map((page) => [page, this.#setup.save(page.file, page.text)] as const);
        emit({ kind: 'settled', lines: writtenLines(written) });
        break;
      }
      case 'take':
        void this.#take(effect.file, effect.isFound ?? false);
        break;
      case 'unwatch':
        this.#watching?.abort();
        break;
      case 'cancel':
        this.#taking?.abort();
        break;
      case 'record':
        void this.#recording.start(effect.readBack);
        break;
      case 'read-back':
        this.#recording.readBack(effect.isOn);
        break;
      case 'play':
        void this.#play(effect);
        break;
      case 'stop-recording':
        this.#recording.stop();
        break;
      case 'leave':
        this.#leave();
    }
  }

  #undo(): void {
    const undone = this.#setup.project.undo();
    this.#done(
      undone === undefined
        ? 'nothing was set by hand: nothing to undo'
        : `undone: ${undone} (z does it again)`,
    );
  }

  #redo(): void {
    const done = this.#setup.project.redo();
    this.#done(done === undefined ? 'nothing was undone last: nothing to do again' : `done again: ${done}`);
  }

  /** Says what was done, and gives what the project holds now. */
  #done(line: string): void {
    this.#setup.emit({ kind: 'settled', lines: [line] });
    this.#emitData();
  }

  #emitData(): void {
    const { project, now, emit } = this.#setup;
    emit({ kind: 'data', data: readData(project, now()) });
  }

  #readBook(firstSoon: boolean): void {
    const { project, emit } = this.#setup;
    const figures: FigureBook['figures'][number][] = [];
    for (const figure of project.figureList()) {
      figures.push(figure);
      if (firstSoon && figures.length === FIRST_SOON)
        emit({ kind: 'book', book: { figures: [...figures], isPart: true } });
    }
    emit({ kind: 'book', book: { figures } });
  }

  /** A second time, while it sounds, ends it. */
  async #play({ memoId, stretch }: Extract<Effect, { do: 'play' }>): Promise<void> {
    const { project, emit } = this.#setup;
    if (this.#playing) {
      this.#playing.abort();
      return;
    }
    this.#playing = new AbortController();
    try {
      const played = await project.playClip(memoId, stretch, this.#playing.signal);
      emit(played.ok ? { kind: 'played' } : { kind: 'refused', lines: problemLines(played.problem) });
    } catch (error) {
      emit({ kind: 'refused', lines: troubleLines(error) });
    }
    this.#playing = undefined;
  }

  async #take(file: string, isFound: boolean): Promise<void> {
    const { project, emit } = this.#setup;
    if (!isFound && isFolder(file)) {
      emit({ kind: 'taken' });
      await this.#watch(file);
      return;
    }
    this.#taking = new AbortController();
    try {
      const result = await project.take(file, {
        onProgress: (progress) => emit({ kind: 'progress', progress }),
        signal: this.#taking.signal,
      });
      if (result.ok) {
        // At every start the folder still holds what was taken before.
        const isOld = isFound && result.value.already;
        emit({ kind: 'taken', ...(isOld ? {} : { lines: takenLines(result.value) }) });
      } else {
        const isSaid = !isFound || isToldOf(file, result.problem);
        emit({ kind: 'failed', ...(isSaid ? { lines: problemLines(result.problem) } : {}) });
      }
    } catch (error) {
      emit({ kind: 'failed', lines: troubleLines(error) });
    }
    this.#orTellWhy(() => this.#emitData());
  }

  /** Offers the files of a folder as they come, until it is stopped or another one is watched. */
  async #watch(folder: string): Promise<void> {
    const { project, emit } = this.#setup;
    this.#watching?.abort();
    const watching = new AbortController();
    this.#watching = watching;
    const name = basename(folder) || folder;
    try {
      const onGone = (isGone: boolean) =>
        emit({ kind: 'watching', folder, lines: [isGone ? `${name} is gone` : `${name} is back`] });
      const files = await project.watch(folder, { signal: watching.signal, onGone });
      emit({ kind: 'watching', folder, lines: [`what comes into ${name} is taken in`] });
      for await (const file of files) emit({ kind: 'found', file });
    } catch (error) {
      emit({ kind: 'refused', lines: troubleLines(error) });
    }
    if (this.#watching !== watching) return;
    this.#watching = undefined;
    emit({ kind: 'watching', lines: [`${name} is not watched any more`] });
  }

  #leave(): void {
    const { emit } = this.#setup;
    this.#taking?.abort();
    this.#playing?.abort();
    this.#watching?.abort();
    // A second time it does not wait: what was recorded is found again by the next call.
    if (this.#isLeaving) {
      emit({ kind: 'gone' });
      return;
    }
    this.#isLeaving = true;
    void this.#recording.settle().then(() => emit({ kind: 'gone' }));
  }
}

function isFolder(path: string): boolean {
  return statSync(path, { throwIfNoEntry: false })?.isDirectory() ?? false;
}

/** What to say where a task could not be put before another: what it needs comes first all the same. */
function placeKept(project: ProjectApi, change: HandChange, now: string): string | undefined {
  if (change.kind !== 'task-placed') return undefined;
  const ids = project.currentTasks(now).map(({ id }) => id);
  if (ids.indexOf(change.taskId) < ids.indexOf(change.before)) return undefined;
  return 'the order stays: what has to come first is stronger';
}

const problemLines = (problem: Problem) =>
  [problem.message, problem.kept && `kept  ${problem.kept}`, problem.next && `next  ${problem.next}`].filter(
    (line): line is string => Boolean(line),
  );

const takenLines = ({ memoId, already, findings }: Taken) => {
  if (already) return [`${memoId} holds these same bytes: nothing was added`];
  const clash = findings.length === 0 ? 'nothing clashes' : `${findings.length} to settle: press c`;
  return [`${memoId} is taken in, ${clash}`];
};

/** What an event of the recording has to say beside what the bench shows. */
function benchLines(event: ListenEvent): { readonly lines?: readonly string[] } {
  if (event.kind === 'taken') return { lines: takenLines(event.taken) };
  if (event.kind === 'failed' || event.kind === 'not-read-back')
    return { lines: problemLines(event.problem) };
  return event.kind === 'not-heard'
    ? { lines: [`words are heard only after the recording: ${event.reason}`] }
    : {};
}

/** Names first, the folder last: on a narrow screen its end is cut off. */
function writtenLines(written: readonly (readonly [DayPage, ReturnType<SavePage>])[]): readonly string[] {
  const lines = written.map(([page, { file, beside }]) =>
    beside
      ? `written: ${basename(file)}, because ${page.file} was changed since`
      : `written: ${basename(file)}`,
  );
  const [first] = written;
  return first ? [...lines, `in ${dirname(first[1].file)}`] : lines;
}

const troubleLines = (error: unknown) =>
  error instanceof Problem ? problemLines(error) : [error instanceof Error ? error.message : String(error)];

const SETTLED = {
  'keep-old': 'the old figure holds',
  'take-new': 'the new figure holds',
  'both-right': 'both are right',
  correct: 'the figure is put right',
} as const;
