/** Wires the shells to the core: one project on disk, its memos taken in, its views given out. */

import { existsSync, mkdirSync, rmSync, statSync } from 'node:fs';
import { basename, join, resolve } from 'node:path';
import { databaseOf, findProject, HOME, linkIn } from './find-project.ts';
import { now } from './instant.ts';
import { type HouseUnits, type MemoNotes, NO_NOTES, type WordCorrection } from './language/notes.ts';
import { answerOf, namingWords, tellingWords } from './model/answer.ts';
import type { AskedCheck } from './model/checks/check-rows.ts';
import { checkViews, workOutCheck } from './model/checks/check-views.ts';
import { correctionsIn, idsNamedByHand } from './model/corrections.ts';
import { daysWithTalk, dayView, nextView, spanView } from './model/day-views.ts';
import { deviceViews } from './model/devices.ts';
import { exportDocument } from './model/export.ts';
import { type FigurePlace, figureAround } from './model/figure-around.ts';
import { heldRows } from './model/held-rows.ts';
import { keepNotes } from './model/keep-notes.ts';
import { batchViews, hiddenViews, orderViews, pairViews } from './model/kept/kept-views.ts';
import {
  figuresToldIn,
  findingViews,
  latestMemoSummaries,
  limitViews,
  listedFigures,
  memoSummaries,
  memoView,
  problemViews,
  projectInfo,
  promiseViews,
  standingFigures,
} from './model/project-views.ts';
import type { Wording } from './model/reword.ts';
import { wordsOfFinding } from './model/settling.ts';
import { currentTaskViews, taskViews } from './model/task-views.ts';
import { transcriptViews } from './model/transcripts.ts';
import type { MemoView, ProjectInfo } from './model/views.ts';
import { whereView } from './model/where-view.ts';
import { originalPath } from './originals.ts';
import { EXIT, Problem, type Result } from './problem.ts';
import type {
  HandChange,
  ListenOptions,
  ManyViews,
  OpenListening,
  ProjectApi,
  ProjectCheck,
  SettleChoice,
  Stretch,
  Taken,
  TakeOptions,
} from './project-api.ts';
import { checkOriginals } from './project-check.ts';
import { countLeft } from './speech/microphone/recordings-folder.ts';
import { createStore, openStore, type ProjectStore } from './store/store.ts';
import { type MemoReading, MemoTaking } from './taking.ts';
import { lastByHand, lastTakenBack, setByHandWith } from './undo.ts';
import { whyUnwritten } from './unwritten.ts';
import { VERSION } from './version.ts';
import type { WatchOptions } from './watching/folder-watch.ts';

function isFolder(path: string): boolean {
  try {
    return statSync(path).isDirectory();
  } catch {
    return false;
  }
}

/** Opens the project in `folder`, or the nearest one upward when none is named. Throws a Problem, exit code 4. */
export async function openNearestProject(folder: string | undefined): Promise<ProjectApi> {
  if (folder !== undefined && !isFolder(folder)) {
    throw new Problem(`cannot open ${folder}: there is no such folder`, {
      code: 'folder-missing',
      exitCode: EXIT.damaged,
      next: `make a project there: hearwright --project ${folder} init`,
    });
  }
  const found = folder === undefined ? findProject('.') : resolve(folder);
  if (found === undefined || !existsSync(databaseOf(found))) {
    throw new Problem(
      folder === undefined
        ? 'no project is in this folder or above it'
        : `cannot open ${folder}: no project is in it`,
      {
        code: 'project-missing',
        exitCode: EXIT.damaged,
        next:
          folder === undefined
            ? 'make one: hearwright init'
            : `make one: hearwright --project ${folder} init`,
      },
    );
  }
  refuseLinks(found);
  return new Project(found, openStore(databaseOf(found)));
}

function noSoundKept(memoId: string): Problem {
  return new Problem(`memo ${memoId.slice(1)} holds no sound: it was taken as text`, {
    code: 'sound-missing',
    exitCode: EXIT.partly,
    next: 'its words stand in: hearwright memos',
  });
}

export interface NewProjectOptions {
  readonly units?: HouseUnits;
  readonly region?: string;
  readonly name?: string;
}

export interface MadeProject {
  /** False when a project was there already: nothing was changed. */
  readonly made: boolean;
  readonly info: ProjectInfo;
  readonly memos: number;
}

/** Makes a project in `folder`, which is made too where it is missing. */
export async function makeProject(folder: string, options: NewProjectOptions): Promise<MadeProject> {
  const database = databaseOf(folder);
  // An empty file is what is left of a making that was cut off.
  if (existsSync(database) && statSync(database).size === 0) rmSync(database);
  if (existsSync(database)) {
    const project = await openNearestProject(folder);
    try {
      return { made: false, info: project.info, memos: project.memos().length };
    } finally {
      project.close();
    }
  }
  refuseLinks(folder);
  try {
    mkdirSync(join(folder, HOME), { recursive: true, mode: 0o700 });
  } catch (error) {
    throw cannotMake(folder, error);
  }
  const store = createStore(database, {
    name: options.name ?? basename(resolve(folder)),
    units: options.units ?? 'metric',
    ...(options.region ? { region: options.region } : {}),
    at: now(),
  });
  try {
    return { made: true, info: projectInfo(store.rows), memos: 0 };
  } finally {
    store.close();
  }
}

/** What is written into a project stays in its own folder, whoever made the folder. */
function refuseLinks(folder: string): void {
  const link = linkIn(folder);
  if (link === undefined) return;
  throw new Problem(`cannot open ${folder}: ${link} in it is a link to another place`, {
    code: 'project-linked',
    exitCode: EXIT.damaged,
    kept: 'nothing was changed',
    next: 'put the folder or file itself there; to have it elsewhere, move the whole project and name it with --project',
  });
}

function cannotMake(folder: string, error: unknown): Problem {
  return new Problem(`cannot make a project in ${folder}: ${whyUnwritten(error)}`, {
    code: 'project-not-made',
    exitCode: EXIT.damaged,
    kept: 'nothing was changed',
    next: 'choose another folder with --project, or see its rights',
    cause: error,
  });
}

function notesWouldMove(memoId: string, ids: readonly string[]): Problem {
  return new Problem(`cannot read ${memoId} again: ${ids.join(', ')} would be another note`, {
    code: 'notes-would-move',
    exitCode: EXIT.usage,
    kept: 'the memo was left as it was read',
    next: 'undo what was done to that note first, or leave the memo out: then the words hold for later memos',
  });
}

/** A project on disk. Close it when done. */
class Project implements ProjectApi {
  readonly folder: string;
  readonly #home: string;
  readonly #store: ProjectStore;
  readonly #taking: MemoTaking;

  constructor(folder: string, store: ProjectStore) {
    this.folder = folder;
    this.#home = join(folder, HOME);
    this.#store = store;
    this.#taking = new MemoTaking(this.#home, store);
  }

  get info(): ProjectInfo {
    return projectInfo(this.#store.rows);
  }
  get upgraded() {
    return this.#store.upgraded;
  }
  take(file: string, options: TakeOptions = {}): Promise<Result<Taken>> {
    return this.#taking.take(file, options);
  }
  takeMany(files: readonly string[], options: Parameters<ProjectApi['takeMany']>[1] = {}) {
    return this.#taking.takeMany(files, options);
  }
  resume(
    options: Pick<TakeOptions, 'onProgress' | 'signal' | 'engine'> = {},
  ): Promise<readonly Result<Taken>[]> {
    return this.#taking.resume(options);
  }
  async listen(options: ListenOptions): Promise<Result<OpenListening>> {
    const [{ openMicrophone }, { Listening }] = await Promise.all([
      import('./speech/microphone/open-microphone.ts'),
      import('./listening/listening.ts'),
    ]);
    const opened = await openMicrophone(options.device);
    if (!opened.ok) return opened;
    const taking = this.#taking;
    const project = {
      home: this.#home,
      take: taking.take.bind(taking),
      lookAhead: taking.lookAhead.bind(taking),
    };
    return { ok: true, value: new Listening(project, { ...options, microphone: opened.value }) };
  }
  async watch(folder: string, options: WatchOptions): Promise<AsyncIterable<string>> {
    return (await import('./watching/folder-watch.ts')).filesInto(folder, options);
  }
  async microphones() {
    return (await import('./speech/microphone/open-microphone.ts')).microphones();
  }
  devices() {
    return deviceViews(this.#store.rows);
  }
  memos() {
    return memoSummaries(this.#store.rows);
  }
  latestMemos(least: number) {
    return latestMemoSummaries(this.#store.rows, least);
  }
  memoCount() {
    return this.#store.memoCount();
  }
  unreadCount() {
    return this.#store.unreadCount() + countLeft(this.#home);
  }
  memo(id: string) {
    return memoView(this.#store.rows, id);
  }
  transcripts(memoId: string) {
    return transcriptViews(this.#store.rows, memoId);
  }
  hearAgain(memoId: string, options: Parameters<ProjectApi['hearAgain']>[1]) {
    return this.#taking.hearAgain(memoId, options);
  }
  async playClip(memoId: string, stretch: Stretch, signal?: AbortSignal): Promise<Result<null>> {
    const memo = this.#store.rows.get('memos', memoId);
    if (memo?.source.kind !== 'recording') return { ok: false, problem: noSoundKept(memoId) };
    const { playClip } = await import('./speech/voice/play-clip.ts');
    try {
      return await playClip(originalPath(this.#home, memo), stretch, signal);
    } catch (error) {
      if (error instanceof Problem) return { ok: false, problem: error };
      throw error;
    }
  }
  async framesPerSecond(memoId: string): Promise<number | undefined> {
    const memo = this.#store.rows.get('memos', memoId);
    if (memo?.source.kind !== 'recording') return undefined;
    const { framesPerSecond } = await import('./speech/media/frame-rate.ts');
    return framesPerSecond(originalPath(this.#home, memo));
  }
  findings(filter: Parameters<ProjectApi['findings']>[0] = {}) {
    return findingViews(this.#store.rows, filter);
  }
  figures(item?: string) {
    return standingFigures(this.#store.rows, item);
  }
  figureList() {
    return listedFigures(this.#store.rows);
  }
  figuresToldIn(memoIds: readonly string[]) {
    return figuresToldIn(this.#store.rows, memoIds);
  }
  figureAround(place: FigurePlace, at?: string) {
    return figureAround(this.#store.rows, place, at);
  }
  limits() {
    return limitViews(this.#store.rows);
  }
  tasks(at: string) {
    return taskViews(this.#store.rows, at);
  }
  currentTasks(at: string) {
    return currentTaskViews(this.#store.rows, at);
  }
  problems() {
    return problemViews(this.#store.rows);
  }
  promises() {
    return promiseViews(this.#store.rows);
  }
  batches() {
    return batchViews(this.#store.rows);
  }
  behind(panel?: string) {
    return hiddenViews(this.#store.rows, panel);
  }
  hands() {
    return pairViews(this.#store.rows);
  }
  orders() {
    return orderViews(this.#store.rows);
  }
  checks(at?: string) {
    return checkViews(this.#store.rows, undefined, at);
  }
  workOut(asked: AskedCheck, units?: HouseUnits) {
    return workOutCheck(this.#store.rows, asked, { ...this.info, ...(units ? { units } : {}) });
  }
  days() {
    return daysWithTalk(this.#store.rows);
  }
  day(date: string) {
    return dayView(this.#store.rows, date);
  }
  next(at: string) {
    return nextView(this.#store.rows, at);
  }
  where(at: string) {
    return whereView(this.#store.rows, at);
  }
  span(from: string, to: string) {
    return spanView(this.#store.rows, from, to);
  }
  many(): ManyViews {
    const rows = heldRows(this.#store.rows);
    return {
      figures: (item) => standingFigures(rows, item),
      day: (date) => dayView(rows, date),
      span: (from, to) => spanView(rows, from, to),
    };
  }
  ask(question: string) {
    return answerOf(
      this.#store.rows,
      question,
      this.#store.search(tellingWords(question), namingWords(question)),
    );
  }

  settle(findingId: string, choice: SettleChoice, details: Parameters<ProjectApi['settle']>[2] = {}): void {
    const known = this.#store.rows.get('findings', findingId);
    const finding = known === undefined ? {} : { finding: wordsOfFinding(known) };
    this.#store.append([{ kind: 'finding-settled', at: now(), findingId, ...finding, choice, ...details }]);
  }

  setByHand(change: HandChange): void {
    this.#store.append([{ ...change, at: now() }]);
  }

  reword(memoId: string, wording: Wording) {
    return this.#taking.reword(memoId, wording);
  }

  async correctWords(correction: WordCorrection, memoId?: string): Promise<Result<MemoView | undefined>> {
    const event = { kind: 'words-learned', at: now(), ...correction } as const;
    if (memoId === undefined) {
      this.#store.append([event]);
      return { ok: true, value: undefined };
    }
    const reading = await this.#taking.readAgain(memoId, correction);
    const moved = this.#movedNotes(memoId, reading);
    if (moved.length > 0) return { ok: false, problem: notesWouldMove(memoId, moved) };
    this.#store.append([{ ...event, memoId, reading }]);
    return { ok: true, value: this.memo(memoId) };
  }

  /** Notes of a memo that a person has spoken of and that would be others in another reading. */
  #movedNotes(memoId: string, reading: MemoReading): readonly string[] {
    const named = idsNamedByHand(this.#store.handLog(), memoId);
    if (named.size === 0) return [];
    const quotes = (notes: MemoNotes) =>
      new Map(
        Object.values(keepNotes(memoId, notes, undefined)).flatMap(
          (list: readonly { readonly id: string; readonly quote: string }[]) =>
            list.map(({ id, quote }) => [id, quote] as const),
        ),
      );
    const [before, after] = [
      quotes(this.#store.rows.get('memos', memoId)?.notes ?? NO_NOTES),
      quotes(reading.notes),
    ];
    return [...named].filter((id) => before.get(id) !== after.get(id));
  }

  corrections() {
    return correctionsIn(this.#store.handLog());
  }

  withdraw(id: string): string | undefined {
    const set = setByHandWith(this.#store.log(), id);
    if (set) {
      this.#store.append([{ kind: 'undone', at: now(), undoes: set.seq }]);
      return set.words;
    }
    const notes = this.memo(id.split('.')[0] ?? '')?.notes;
    const lists: readonly (readonly { id: string; quote: string; review?: string }[])[] = notes
      ? Object.values(notes)
      : [];
    const note = lists.flat().find((one) => one.id === id && one.review !== 'rejected');
    if (note) this.setByHand({ kind: 'note-rejected', noteId: id });
    return note?.quote;
  }

  undo(): string | undefined {
    const last = lastByHand(this.#store.log());
    if (!last) return undefined;
    this.#store.append([{ kind: 'undone', at: now(), undoes: last.seq }]);
    return last.words;
  }

  redo(): string | undefined {
    const last = lastTakenBack(this.#store.log());
    if (!last) return undefined;
    this.#store.append([{ kind: 'undone', at: now(), undoes: last.seq }]);
    return last.words;
  }

  async verify(): Promise<ProjectCheck> {
    const { faults, events } = this.#store.verify();
    const memos = this.#store.rows.all('memos');
    const originals = await checkOriginals(this.#home, memos, this.#store.absentOriginals());
    const { absent, count } = originals;
    return { faults: [...faults, ...originals.faults], events, originals: count, absent };
  }

  async backUp(file: string, options: { readonly replace?: boolean } = {}) {
    const { backUp } = await import('./backup/back-up.ts');
    const source = {
      home: this.#home,
      copyDatabase: this.#store.copyTo.bind(this.#store),
      madeAt: now(),
      program: `hearwright ${VERSION}`,
    };
    return backUp(source, file, options);
  }

  exportDocument(): unknown {
    return this.#store.atOneInstant(() => exportDocument(this.#store.rows, this.#store.log()));
  }
  close(): void {
    this.#store.close();
  }
}
