/** A recording in progress: written as it goes, heard as it goes, cut into memos in long silences, taken in. */
import { rmSync } from 'node:fs';
import { localInstant } from '../instant.ts';
import type { Utterance } from '../model/views.ts';
import { EXIT, Problem, type Result } from '../problem.ts';
import type { ListenEvent, Listened, Stretch, Taken, TakeOptions } from '../project-api.ts';
import { replaceFile } from '../replacing.ts';
import { clipTime } from '../reports/source-text.ts';
import { spokenWords } from '../reports/spoken-words.ts';
import {
  ENGINE_NAME,
  type LiveListeners,
  type LiveRecogniser,
  startLiveRecogniser,
} from '../speech/live-recogniser.ts';
import { levelOf } from '../speech/microphone/level.ts';
import { placeToCut } from '../speech/microphone/long-silence.ts';
import type { Microphone } from '../speech/microphone/microphone.ts';
import { microphoneLost, recordingUnwritten } from '../speech/microphone/microphone-problems.ts';
import { RecordingFile } from '../speech/microphone/recording-file.ts';
import { newRecording, SILENT_ENDING } from '../speech/microphone/recordings-folder.ts';
import { SAMPLE_RATE } from '../speech/recogniser/sample-rate.ts';
import { openVoice, type Voice, type VoiceListeners } from '../speech/voice/voice.ts';
import { HeardTalk } from './heard-talk.ts';
import { type LookAhead, NOTHING_TOLD, type Told, whatIsNew } from './what-is-new.ts';

/** What a recording needs of the project. */
export interface ListeningProject {
  /** The project's own folder. */
  readonly home: string;
  take(file: string, options: TakeOptions): Promise<Result<Taken>>;
  /** Reads talk and holds it against the project; nothing is kept of it. */
  lookAhead(talk: readonly Utterance[], recordedAt: string): Promise<LookAhead>;
}

export interface ListeningSetup {
  readonly microphone: Microphone;
  readonly onEvent: (event: ListenEvent) => void;
  /** Ends by itself after so much sound. */
  readonly seconds?: number;
  /** Figures are read aloud from the beginning. */
  readonly readBack?: boolean;
  /** Another one than the bundled voice. */
  readonly openVoice?: (listeners: VoiceListeners) => Voice;
  /** Another one than the bundled recogniser. */
  readonly startRecogniser?: (listeners: LiveListeners) => LiveRecogniser;
}

/** The project could not take a part in: it is busy, damaged, or something nobody foresaw. */
function notTaken(error: unknown, { name }: Part): Problem {
  const known = error instanceof Problem ? error : undefined;
  return new Problem(`cannot take ${name} in: ${known?.message ?? String((error as Error).message)}`, {
    code: known?.code ?? 'unexpected',
    exitCode: known?.exitCode ?? EXIT.unexpected,
    kept: `${name}, in the project's folder`,
    next: 'hearwright resume',
    cause: error,
  });
}

/** One memo to be. */
interface Part {
  readonly file: RecordingFile;
  readonly name: string;
  readonly startedAt: string;
  /** Sample of the whole recording that it begins with. */
  readonly from: number;
  told: Told;
}

/** Talk that goes into a look ahead: what lies further back has been shown. */
const LOOK_BACK = 24;
const WARMING_UP: readonly Utterance[] = [
  { startSeconds: 0, endSeconds: 1, text: 'The bench top is 900 millimetres high, so cut the legs at 860.' },
];

/** Sound that is on its way through the microphone, and what the room gives back, when the voice has ended. */
const TAIL_SECONDS = 0.4;
/** Of figures that come at once the last are read aloud: more would keep one waiting. */
const MOST_READ = 2;

export class Listening {
  readonly #project: ListeningProject;
  readonly #setup: ListeningSetup;
  readonly #recogniser: LiveRecogniser;
  readonly #begun = Date.now();
  readonly #talk = new HeardTalk();
  readonly #taken: Taken[] = [];
  readonly #problems: Problem[] = [];
  #part: Part | undefined;
  #samples = 0;
  #heardUntil = 0;
  #spokenUntil: number | undefined;
  #isHeard = true;
  #cutAt: number | undefined;
  #looking: Promise<void> | undefined;
  #lookAgain = false;
  #taking: Promise<void> = Promise.resolve();
  #silentRest: Listened['silentRest'];
  #voice: Voice | undefined;
  #readsBack: boolean;
  /** Since which sample the voice sounds; undefined while it is still. */
  #speakingFrom: number | undefined;
  /** Where the voice sounded, in samples of the whole recording. */
  readonly #spoken: { readonly from: number; readonly to: number }[] = [];
  readonly finished: Promise<Listened>;

  constructor(project: ListeningProject, setup: ListeningSetup) {
    this.#project = project;
    this.#setup = setup;
    this.#readsBack = setup.readBack ?? false;
    this.#recogniser = (setup.startRecogniser ?? startLiveRecogniser)({
      onEarly: (heard) => {
        this.#talk.addEarly(heard);
        this.#lookSoon();
      },
      onHeard: (heard) => {
        this.#talk.add(heard);
        this.#lookSoon();
      },
      onProgress: (heardUntil, spokenUntil) => this.#follow(heardUntil, spokenUntil),
      onLost: (reason) => {
        this.#isHeard = false;
        if (this.#part) setup.onEvent({ kind: 'not-heard', reason });
      },
    });
    this.finished = this.#run();
  }

  /** Stops recording; what was recorded is taken in. */
  stop(): void {
    this.#setup.microphone.stop();
  }

  /** From now on figures are read aloud, or are not. */
  readBack(isOn: boolean): void {
    this.#readsBack = isOn;
    if (isOn) return;
    this.#voice?.close();
    this.#voice = undefined;
  }

  async #run(): Promise<Listened> {
    // Whatever is read first takes longest: something is read before the first word is spoken.
    void this.#project.lookAhead(WARMING_UP, localInstant(new Date(this.#begun))).catch(() => {});
    this.#setup.onEvent({ kind: 'started', microphone: this.#setup.microphone.name });
    try {
      this.#part = await this.#newPart(0);
      await this.#record();
      const end = await this.#setup.microphone.ended;
      if (end.kind === 'lost') {
        this.#fail(microphoneLost(this.#setup.microphone.name, end.reason, this.#kept));
      }
    } catch (error) {
      this.#setup.microphone.stop();
      this.#fail(recordingUnwritten(error, this.#kept));
    }
    this.readBack(false);
    this.#setup.onEvent({ kind: 'stopped', seconds: this.#seconds });
    this.#isHeard = (await this.#recogniser.end()) && this.#isHeard;
    await this.#looking;
    if (this.#part) this.#finishPart(this.#part, this.#samples);
    this.#part = undefined;
    await this.#taking;
    return {
      seconds: this.#seconds,
      taken: this.#taken,
      problems: this.#problems,
      ...(this.#silentRest ? { silentRest: this.#silentRest } : {}),
    };
  }

  get #seconds(): number {
    return this.#samples / SAMPLE_RATE;
  }

  get #kept(): string {
    return `the ${clipTime(this.#seconds)} recorded until then`;
  }

  #fail(problem: Problem): void {
    this.#problems.push(problem);
    this.#setup.onEvent({ kind: 'failed', problem });
  }

  async #record(): Promise<void> {
    const most = (this.#setup.seconds ?? Number.POSITIVE_INFINITY) * SAMPLE_RATE;
    for await (const piece of this.#setup.microphone.sound) {
      const sound = piece.subarray(0, Math.max(0, most - this.#samples));
      await this.#part?.file.append(sound);
      const isSpoken = this.#isSpokenAt(this.#samples);
      this.#samples += sound.length;
      // What the voice says is no talk: the file keeps it, the recogniser hears silence in its place.
      this.#recogniser.write(isSpoken ? new Int16Array(sound.length) : sound);
      this.#setup.onEvent({
        kind: 'level',
        seconds: this.#seconds,
        heardSeconds: this.#heardUntil,
        level: levelOf(sound),
      });
      if (this.#cutAt !== undefined) await this.#cut(this.#cutAt);
      if (this.#samples >= most) return this.stop();
    }
  }

  /** Reads aloud what was just heard, and minds where that sounds. */
  #readAloud(words: string): void {
    if (!this.#readsBack || words === '') return;
    this.#voice ??= (this.#setup.openVoice ?? openVoice)({
      onSpeaking: () => {
        this.#speakingFrom = this.#samples;
      },
      onSilent: () => {
        const from = this.#speakingFrom;
        if (from !== undefined) this.#spoken.push({ from, to: this.#samples + TAIL_SECONDS * SAMPLE_RATE });
        this.#speakingFrom = undefined;
      },
      onLost: (problem) => {
        this.#readsBack = false;
        this.#setup.onEvent({ kind: 'not-read-back', problem });
      },
    });
    this.#setup.onEvent({ kind: 'read-back', words });
    this.#voice.say(words);
  }

  /** Whether the voice sounds at this sample, or has just sounded. */
  #isSpokenAt(sample: number): boolean {
    return this.#speakingFrom !== undefined || (this.#spoken.at(-1)?.to ?? -1) >= sample;
  }

  /** Where the voice sounded in a part, in seconds of its own. */
  #silencesOf({ from }: Part): readonly Stretch[] {
    return this.#spoken
      .filter(({ to }) => to > from)
      .map((one) => ({ from: (one.from - from) / SAMPLE_RATE, to: (one.to - from) / SAMPLE_RATE }));
  }

  async #newPart(from: number): Promise<Part> {
    const startedAt = this.#startOf(from);
    const { path, name } = newRecording(this.#project.home, startedAt);
    return this.#partOf(await RecordingFile.create(path, startedAt), name, from);
  }

  #partOf(file: RecordingFile, name: string, from: number): Part {
    return { file, name, from, startedAt: this.#startOf(from), told: NOTHING_TOLD };
  }

  #startOf(sample: number): string {
    return localInstant(new Date(this.#begun + (sample / SAMPLE_RATE) * 1000));
  }

  /** Notes where voice activity has come to; between two pieces of sound the recording is cut there. */
  #follow(heardUntil: number, spokenUntil: number | undefined): void {
    this.#heardUntil = heardUntil;
    this.#spokenUntil = spokenUntil;
    if (!this.#part) return;
    const place = placeToCut({ partFrom: this.#part.from / SAMPLE_RATE, heardUntil, spokenUntil });
    if (place !== undefined) this.#cutAt = Math.round(place * SAMPLE_RATE);
  }

  async #cut(sample: number): Promise<void> {
    this.#cutAt = undefined;
    const ended = this.#part;
    if (!ended || sample <= ended.from) return;
    const startedAt = this.#startOf(sample);
    const { path, name } = newRecording(this.#project.home, startedAt);
    const file = await ended.file.cutAt(sample - ended.from, path, startedAt);
    this.#part = this.#partOf(file, name, sample);
    // What was said of the old part meanwhile does not hold for the new one.
    this.#cutAt = undefined;
    this.#finishPart(ended, sample);
  }

  /** Closes a part and takes it in, behind those before it. Recording goes on meanwhile. */
  #finishPart(part: Part, to: number): void {
    const heard = this.#isHeard
      ? { engine: ENGINE_NAME, ...this.#talk.between(part.from / SAMPLE_RATE, to / SAMPLE_RATE) }
      : undefined;
    const isSilent = heard !== undefined && (this.#spokenUntil ?? 0) * SAMPLE_RATE <= part.from;
    this.#taking = this.#taking.then(async () => {
      try {
        await part.file.close();
      } catch (error) {
        this.#fail(recordingUnwritten(error, `${part.name}, as far as it was written`));
      }
      try {
        if (part.file.samples === 0) rmSync(part.file.path, { force: true });
        else if (isSilent && part.from > 0) this.#putAside(part);
        else await this.#take(part, heard);
      } catch (error) {
        // What is wrong with the project is told, and recording goes on: the next call takes the file in.
        this.#fail(notTaken(error, part));
      }
    });
  }

  /** Sound without talk behind a cut is no memo of its own. It stays all the same. */
  #putAside({ file }: Part): void {
    const aside = file.path.replace(/\.wav$/, SILENT_ENDING);
    replaceFile(file.path, aside);
    this.#silentRest = { file: aside, seconds: file.samples / SAMPLE_RATE };
  }

  async #take(part: Part, heard: TakeOptions['heard'] | undefined): Promise<void> {
    const { onEvent } = this.#setup;
    const silences = this.#silencesOf(part);
    const result = await this.#project.take(part.file.path, {
      name: part.name,
      // Heard from the file, the voice is silenced there as well.
      ...(heard ? { heard } : silences.length > 0 ? { silences } : {}),
      onProgress: (progress) => onEvent({ kind: 'progress', name: part.name, progress }),
    });
    if (!result.ok) return this.#fail(result.problem);
    // The project holds the same bytes now.
    rmSync(part.file.path, { force: true });
    this.#taken.push(result.value);
    onEvent({ kind: 'taken', taken: result.value });
  }

  #lookSoon(): void {
    if (!this.#part) return;
    this.#lookAgain = true;
    this.#looking ??= this.#look().finally(() => {
      this.#looking = undefined;
    });
  }

  /** Reads what was said so far, and again while more has come. */
  async #look(): Promise<void> {
    while (this.#lookAgain && this.#part) {
      this.#lookAgain = false;
      const part = this.#part;
      const talk = this.#talk.latest(part.from / SAMPLE_RATE, LOOK_BACK);
      // A project that another program is writing to is looked at again with the next words.
      const ahead = await this.#project.lookAhead(talk, part.startedAt).catch(() => undefined);
      if (!ahead) continue;
      const { figures, notes, findings, takenBack, told } = whatIsNew(ahead, part.told);
      const { takenBackNow } = ahead;
      part.told = told;
      this.#setup.onEvent({
        kind: 'heard',
        words: talk.at(-1)?.text ?? '',
        figures,
        notes,
        takenBack,
        ...(takenBackNow === undefined ? {} : { takenBackNow }),
        clashes: findings,
        soFar: ahead.figures,
        notesSoFar: ahead.notes,
        open: ahead.findings.filter(({ status }) => status === 'open'),
      });
      // Who asked for nothing but ears hears that it is gone.
      if (takenBack.length > 0) this.#readAloud('Taken back.');
      this.#readAloud(spokenWords(figures.slice(-MOST_READ), findings));
    }
  }
}
