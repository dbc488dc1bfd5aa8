/** Takes memos in: the original is kept first, then heard, then read and worked into the model. */
import { createHash } from 'node:crypto';
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import { type Candidate, examine } from './examine-file.ts';
import { loadHearing } from './hearing.ts';
import { now } from './instant.ts';
import { whatIsKnown } from './known.ts';
import { doubtsInText, type HeardDoubt } from './language/heard/heard-doubts.ts';
import type { WordCorrection } from './language/notes.ts';
import { wordsTakenBack } from './language/taken-back.ts';
import type { LookAhead, NoteHeard } from './listening/what-is-new.ts';
import { correctionsIn } from './model/corrections.ts';
import { deviceViews } from './model/devices.ts';
import type { NewEvent, NotesRead, SpokenText } from './model/events.ts';
import { keptOfDay } from './model/kept/kept-of.ts';
import { findingViews, memoView, projectInfo } from './model/project-views.ts';
import { notesAfter, reworded, type Said, type Wording } from './model/reword.ts';
import type { MemoRow, ProjectRows, TaskRow } from './model/rows.ts';
import { transcriptViews } from './model/transcripts.ts';
import type { MemoSource, MemoView, Utterance } from './model/views.ts';
import { hashFile, type KeptOriginal, keepOriginal, originalPath } from './originals.ts';
import { EXIT, Problem, type Result } from './problem.ts';
import type {
  HeardMemo,
  OvertakenTask,
  TakeManyOptions,
  Taken,
  TakenFile,
  TakeOptions,
} from './project-api.ts';
import { leftRecordings } from './speech/microphone/recordings-folder.ts';
import type { ProjectStore } from './store/store.ts';
import {
  changedMeanwhile,
  keptButNotHeard,
  notReadYet,
  notRecorded,
  standsAsItWas,
} from './taking-problems.ts';
import { decodeText, readProblem } from './text-file.ts';
import { VERSION } from './version.ts';

/** Goes with every reading, so that a later reader can tell which memos an older one read. */
const READER = `reader ${VERSION}`;

/** As the log keeps it. */
export type MemoReading = Pick<NotesRead, 'notes' | 'repairs' | 'reader'>;

type Watch = Pick<TakeOptions, 'onProgress' | 'signal' | 'engine' | 'silences'>;

interface KeptFile {
  readonly memo: MemoRow;
  /** The same bytes were kept before. */
  readonly already: boolean;
  /** The kept original was missing or damaged, and was put back. */
  readonly originalBack?: boolean;
}

interface Fault {
  readonly fault: unknown;
}

/** A file that is kept, and perhaps being heard. */
interface Begun {
  readonly file: string;
  readonly options: TakeOptions;
  readonly kept: Result<KeptFile> | Fault;
  readonly spoken?: Promise<Result<SpokenText> | Fault>;
}

/** Recognisers that run beside each other: each holds some 300 MB and keeps one core busy. */
const HEARD_AT_ONCE = Math.min(2, availableParallelism());

export class MemoTaking {
  readonly #home: string;
  readonly #store: ProjectStore;

  /** `home` is the project's own folder. */
  constructor(home: string, store: ProjectStore) {
    this.#home = home;
    this.#store = store;
  }

  /** Takes one file in. A file that is no memo is refused before anything is written. */
  take(file: string, options: TakeOptions): Promise<Result<Taken>> {
    return asResult(async () => {
      const { memo, already, originalBack } = await this.#keep(file, options);
      if (!memo.notes) await this.#finish(memo, options);
      return { ...this.#taken(memo.id), already, ...(originalBack ? { originalBack } : {}) };
    });
  }

  /** Keeps the original of a memo again where it is missing or is not what was taken; says whether it had to. */
  async #putBack(memo: MemoRow, file: string): Promise<boolean> {
    const { source } = memo;
    const there = await hashFile(originalPath(this.#home, memo)).catch(() => undefined);
    if (there?.sha256 === source.sha256) return false;
    await keepOriginal(this.#home, file, source.name);
    this.#store.noteOriginalBack(source.sha256);
    return true;
  }

  /**
   * Takes many files in, in their order. While one is heard the next is heard beside it, each in a process of its own; they
   * are read and worked into the model one after the other, as if each had been taken by itself.
   */
  async *takeMany(files: readonly string[], options: TakeManyOptions): AsyncGenerator<TakenFile> {
    const begun: Begun[] = [];
    let next = 0;
    const begin = async () => {
      const file = files[next++] as string;
      const { onProgress } = options;
      const watch = { ...options, ...(onProgress ? { onProgress: onProgress.bind(undefined, file) } : {}) };
      begun.push(await this.#begin(file, watch as TakeOptions, begun));
    };
    const isOver = () => options.signal?.aborted === true;
    for (;;) {
      while (begun.length < HEARD_AT_ONCE && next < files.length && !isOver()) await begin();
      const first = begun.shift();
      if (!first) return;
      yield { file: first.file, result: await this.#complete(first) };
    }
  }

  /** Keeps a file and begins to hear it. Nothing is thrown: what fails shows when it is completed. */
  async #begin(file: string, options: TakeOptions, others: readonly Begun[]): Promise<Begun> {
    const kept = await asResult(() => this.#keep(file, options)).catch((fault: unknown) => ({ fault }));
    const memoOf = (one: Begun['kept']) => ('ok' in one && one.ok ? one.value.memo : undefined);
    const memo = memoOf(kept);
    const isHeard = others.some((other) => memoOf(other.kept)?.id === memo?.id);
    if (!memo || memo.text !== undefined || isHeard) return { file, options, kept };
    const spoken = asResult(() => this.#hear(memo, options)).catch((fault: unknown) => ({ fault }));
    return { file, options, kept, spoken };
  }

  async #complete({ kept, spoken, options }: Begun): Promise<Result<Taken>> {
    const heard = await spoken;
    if ('fault' in kept) throw kept.fault;
    if (!kept.ok) return kept;
    if (heard && 'fault' in heard) throw heard.fault;
    if (heard && !heard.ok) return heard;
    const { memo, already, originalBack } = kept.value;
    return asResult(async () => {
      // Another taker may have heard it meanwhile.
      const now = this.#row(memo.id);
      if (!now.notes) await this.#finish(now, options, heard?.value);
      return { ...this.#taken(memo.id), already, ...(originalBack ? { originalBack } : {}) };
    });
  }

  /** Looks the file over and keeps its bytes; a memo of the same bytes is found again. */
  async #keep(file: string, options: TakeOptions): Promise<KeptFile> {
    const candidate = await examine(file, options, deviceViews(this.#store.rows));
    const { sha256 } = await hashFile(file).catch((error) => {
      throw readProblem(error, file);
    });
    const known = this.#store.memoWithHash(sha256);
    if (known) {
      const originalBack = await this.#putBack(known, file);
      return { memo: known, already: true, ...(originalBack ? { originalBack } : {}) };
    }
    return this.#file(candidate, await keepOriginal(this.#home, file, candidate.name));
  }

  /**
   * Finishes memos that were kept but not read, in the order in which they were taken, then takes in recordings that
   * were cut off.
   */
  async resume(watch: Watch): Promise<readonly Result<Taken>[]> {
    const results: Result<Taken>[] = [];
    for (const memo of this.#store.unreadMemos()) {
      results.push(
        await asResult(async () => {
          await this.#finish(memo, watch);
          return this.#taken(memo.id);
        }),
      );
      if (watch.signal?.aborted) return results;
    }
    for (const { path, name } of await leftRecordings(this.#home)) {
      const result = await this.take(path, { ...watch, name });
      if (result.ok) rmSync(path, { force: true });
      results.push(result);
      if (watch.signal?.aborted) break;
    }
    return results;
  }

  /** Puts words of a memo right and reads their sentence again: see `ProjectApi.reword`. */
  async reword(memoId: string, wording: Wording): Promise<Taken> {
    const memo = this.#store.rows.get('memos', memoId);
    const { text: before } = memo ?? {};
    if (!memo?.notes || before === undefined) throw notReadYet(memoId);
    const said = reworded({ text: before, utterances: memo.utterances }, wording);
    const read = await this.#read(wordsOf({ ...memo, ...said }));
    const { span, words } = wording;
    const was = before.slice(span.start, span.end);
    this.#store.append((rows) => {
      const current = rows.get('memos', memoId);
      // Another program may have put other words right meanwhile.
      if (!current?.notes || current.text !== before) throw changedMeanwhile(memoId);
      const notes = notesAfter(
        memoId,
        { text: before, notes: current.notes, ids: current.noteIds },
        wording,
        read.notes,
      );
      const { text, utterances } = said;
      const version = current.version === undefined ? {} : { version: current.version };
      const { repairs, reader } = read;
      const more = { ...(utterances ? { utterances } : {}), ...(repairs ? { repairs } : {}) };
      const whole = { ...version, text, ...more, notes, reader };
      return [{ kind: 'words-corrected', at: now(), memoId, was, now: words, ...whole }];
    });
    return this.#taken(memoId);
  }

  /**
   * Reads talk and holds it against the project, as taking would. Nothing is kept: what would be written is taken back
   * before it counts.
   */
  async lookAhead(talk: readonly Utterance[], recordedAt: string): Promise<LookAhead> {
    const text = talk.map((utterance) => utterance.text).join(' ');
    const reading = await this.#read({ text, recordedAt, isHeard: true, ...doubtsOf(talk) });
    const at = now();
    const memoId = `m${this.#store.memoCount() + 1}`;
    const source: MemoSource = { name: 'the talk so far', kind: 'recording', sha256: '', bytes: 0 };
    const events: readonly NewEvent[] = [
      { kind: 'recording-kept', at, memoId, source, file: '', recordedAt, recordedAtFrom: 'given' },
      { kind: 'transcript-made', at, memoId, transcript: { text, utterances: talk } },
      { kind: 'notes-read', at, memoId, ...reading },
    ];
    return this.#store.lookAhead(events, (rows) => {
      const notes = memoView(rows, memoId)?.notes;
      return {
        figures: notes?.figures ?? [],
        notes: notes ? besideFigures(notes) : [],
        findings: findingViews(rows, { memoId }),
        ...wordsTakenBack(text),
      };
    });
  }

  /**
   * Writes the memo into the log. Its number is given inside the transaction, so that two takers never share one and
   * the same bytes never become two memos.
   */
  #file(candidate: Candidate, original: KeptOriginal): KeptFile {
    const { media, ...facts } = candidate;
    const source: MemoSource = {
      name: facts.name,
      kind: facts.kind,
      sha256: original.sha256,
      bytes: original.bytes,
      ...(media ? { durationSeconds: media.durationSeconds } : {}),
      ...(media?.device ? { device: media.device } : {}),
    };
    let memoId = '';
    const events = this.#store.append(() => {
      const known = this.#store.memoWithHash(original.sha256);
      memoId = known?.id ?? `m${this.#store.memoCount() + 1}`;
      if (known) return [];
      const { recordedAt, recordedAtFrom, putRight } = facts;
      const { file } = original;
      const kept: NewEvent = {
        ...{ kind: 'recording-kept', at: now(), memoId, source, file, recordedAt, recordedAtFrom },
        ...(putRight ? { putRight } : {}),
      };
      return [kept];
    });
    return { memo: this.#row(memoId), already: events.length === 0 };
  }

  #row(memoId: string): MemoRow {
    const row = this.#store.rows.get('memos', memoId);
    if (!row) throw new Error(`memo ${memoId} is not in the model`);
    return row;
  }

  /** Hears the memo if need be, then reads it. Each step is in the log before the next begins. */
  async #finish(
    memo: MemoRow,
    watch: Watch & Pick<TakeOptions, 'heard'>,
    spoken?: SpokenText,
  ): Promise<void> {
    let { text, utterances } = memo;
    if (text === undefined) {
      const heard = spoken ?? (watch.heard && spokenText(watch.heard));
      const transcript = heard ?? (await this.#hear(memo, watch));
      this.#store.append([{ kind: 'transcript-made', at: now(), memoId: memo.id, transcript }]);
      this.#forgetHeard(memo, watch.engine);
      ({ text, utterances } = transcript);
    }
    watch.onProgress?.({ stage: 'reading', fraction: 0 });
    const reading = await this.#read(wordsOf({ ...memo, text, utterances }));
    const event: NewEvent = { kind: 'notes-read', at: now(), memoId: memo.id, ...reading };
    // Another taker may have read it meanwhile: a memo is read once.
    this.#store.append((rows) => (rows.get('memos', memo.id)?.notes ? [] : [event]));
  }

  async #hear(memo: MemoRow, watch: Watch): Promise<SpokenText> {
    const file = originalPath(this.#home, memo);
    if (memo.source.kind === 'text') return { text: decodeText(readFileSync(file), memo.source.name) };
    const heardFile = this.#heardFile(memo, watch.engine);
    const hearing = await loadHearing();
    const heard = await hearing.transcribe(file, {
      ...watch,
      words: namesOfThings(this.#store.rows),
      ...(heardFile === undefined ? {} : { heardFile }),
    });
    if (!heard.ok)
      throw memo.notes ? standsAsItWas(heard.problem, memo) : keptButNotHeard(heard.problem, memo);
    return spokenText(heard.value);
  }

  /** Where pieces that were heard wait for the rest; undefined where nothing can be written. */
  #heardFile(memo: MemoRow, engine = ''): string | undefined {
    const folder = join(this.#home, 'hearing');
    try {
      mkdirSync(folder, { recursive: true, mode: 0o700 });
      return join(folder, `${memo.source.sha256.slice(0, 32)}-${shortHash(engine)}.jsonl`);
    } catch {
      return undefined;
    }
  }

  /** The transcript is in the log: its pieces are not needed any more. */
  #forgetHeard(memo: MemoRow, engine: string | undefined): void {
    const file = this.#heardFile(memo, engine);
    if (file !== undefined) rmSync(file, { force: true });
  }

  /** Hears a memo by another engine, reads that, and lets it count unless a person chose a transcript. */
  hearAgain(memoId: string, watch: Watch): Promise<Result<HeardMemo>> {
    return asResult(async () => {
      const memo = this.#row(memoId);
      if (memo.source.kind !== 'recording') throw notRecorded(memo);
      const engine = await (await loadHearing()).engineName(watch.engine);
      if (!engine.ok) throw engine.problem;
      const before = transcriptViews(this.#store.rows, memoId).find((one) => one.engine === engine.value);
      if (before) return this.#heardMemo(memoId, before.version, true);
      if (memo.text === undefined) {
        await this.#finish(memo, watch);
        return this.#heardMemo(memoId, 1, false);
      }
      const transcript = await this.#hear(memo, watch);
      watch.onProgress?.({ stage: 'reading', fraction: 0 });
      const reading = await this.#read(wordsOf({ ...memo, ...transcript }));
      let version = 0;
      this.#store.append((rows) => {
        version = rows.where('hearings', 'memoId', memoId).length + 2;
        // Whoever put words right chose the transcript that they stand in.
        const isChosen =
          rows.get('choices', memoId)?.by === 'person' || rows.get('memos', memoId)?.isReworded;
        const heard: NewEvent = {
          ...{ kind: 'heard-again', at: now(), memoId, version },
          ...{ transcript, ...reading },
        };
        if (isChosen) return [heard];
        return [heard, { kind: 'transcript-chosen', at: now(), memoId, version, by: 'newest' }];
      });
      this.#forgetHeard(memo, watch.engine);
      return this.#heardMemo(memoId, version, false);
    });
  }

  #heardMemo(memoId: string, version: number, already: boolean): HeardMemo {
    const memo = memoView(this.#store.rows, memoId);
    const transcript = transcriptViews(this.#store.rows, memoId).find((one) => one.version === version);
    if (!memo || !transcript) throw new Error(`transcript ${version} of memo ${memoId} is not in the model`);
    return { transcript, already, memo, findings: findingViews(this.#store.rows, { memoId }) };
  }

  /** Reads a memo that was taken, with what the person says now of its words. Nothing is written. */
  readAgain(memoId: string, correction: WordCorrection): Promise<MemoReading> {
    return this.#read(wordsOf(this.#row(memoId)), [correction]);
  }

  async #read(
    { text, recordedAt, isHeard, doubts }: Words,
    saidNow: readonly WordCorrection[] = [],
  ): Promise<MemoReading> {
    const { readMemo } = await import('./language/pipeline.ts');
    const { units, region } = projectInfo(this.#store.rows);
    const place = region ? { region } : {};
    const heard = isHeard
      ? {
          isHeard,
          ...(doubts ? { doubts } : {}),
          corrections: [...correctionsIn(this.#store.handLog()), ...saidNow],
        }
      : {};
    const known = whatIsKnown(this.#store.rows, text);
    const { notes, repairs } = readMemo(text, { units, ...place, recordedAt, ...known, ...heard });
    return { notes, ...(repairs ? { repairs } : {}), reader: READER };
  }

  #taken(memoId: string): Taken {
    const memo = memoView(this.#store.rows, memoId);
    if (!memo) throw new Error(`memo ${memoId} is not in the model`);
    const { behindWork } = keptOfDay(this.#store.rows, [memo]);
    const findings = findingViews(this.#store.rows, { memoId });
    const overtaken = overtakenBy(this.#store.rows.openTasks(), memoId);
    return { memoId, already: false, memo, findings, behindWork, overtaken };
  }
}

const overtakenBy = (open: readonly TaskRow[], memoId: string): readonly OvertakenTask[] =>
  open.flatMap(({ id, gist, before, overtakenBy: by }) =>
    before !== undefined && by?.memoId === memoId ? [{ id, gist, before }] : [],
  );

const shortHash = (text: string): string => createHash('sha256').update(text).digest('hex').slice(0, 8);

/** How many names a recogniser is told to expect. */
const MOST_NAMES = 120;

/** What the project calls its things, latest first. */
function namesOfThings(rows: ProjectRows): readonly string[] {
  return rows
    .all('items')
    .slice(-MOST_NAMES)
    .reverse()
    .flatMap((item) => [item.name, ...item.aliases]);
}

/** A memo's words, and whether a recogniser wrote them. */
interface Words {
  readonly text: string;
  readonly recordedAt: string;
  readonly isHeard: boolean;
  /** What the recogniser held to be nearly as likely. */
  readonly doubts?: readonly HeardDoubt[];
}

const wordsOf = ({
  text = '',
  recordedAt,
  source,
  utterances,
}: Pick<MemoRow, 'recordedAt' | 'source'> & Partial<Said>): Words => ({
  text,
  recordedAt,
  isHeard: source.kind === 'recording',
  ...doubtsOf(utterances),
});

/** The doubts of a talk, by their place in its text. */
function doubtsOf(talk: readonly Utterance[] = []): Pick<Words, 'doubts'> {
  const doubts = doubtsInText(talk);
  return doubts ? { doubts } : {};
}

function spokenText({ utterances, dropped, engine }: NonNullable<TakeOptions['heard']>): SpokenText {
  return {
    text: utterances.map((utterance) => utterance.text).join(' '),
    engine,
    utterances,
    ...(dropped.length > 0 ? { dropped } : {}),
  };
}

/** A Problem about the input becomes a value; one about the project itself is thrown on. */
async function asResult<T>(work: () => Promise<T>): Promise<Result<T>> {
  try {
    return { ok: true, value: await work() };
  } catch (error) {
    if (error instanceof Problem && error.exitCode === EXIT.partly) return { ok: false, problem: error };
    throw error;
  }
}

/** In the order of speech. */
function besideFigures({ figures: _, ...others }: MemoView['notes']): readonly NoteHeard[] {
  const lists: readonly (readonly NoteHeard[])[] = Object.values(others);
  return lists.flat().sort((a, b) => a.span.start - b.span.start);
}
