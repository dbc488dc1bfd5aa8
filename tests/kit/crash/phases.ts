/** What a call is struck down in, and what must hold afterwards. Every strike is one call killed at a random moment. */
import {
  copyFileSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { join, resolve } from 'node:path';
import { gunzipSync } from 'node:zlib';
import { HEADER_BYTES } from '../../../src/speech/microphone/wave-header.ts';
import { whiteNoise } from '../sound.ts';
import { microphoneSound, standInMicrophone } from '../stand-in-microphone.ts';
import { waveFile } from '../wave-file.ts';
import {
  call,
  callWell,
  eventsIn,
  filesBelow,
  hashOf,
  memosOf,
  mustBeWhole,
  mustHold,
  pause,
  type Scene,
  strike,
  unfinishedIn,
} from './struck-call.ts';

export type Chance = () => number;

/** One kind of work. `strike` kills one call and checks; it answers whether the kill came while the call was at work. */
export interface Phase {
  readonly name: string;
  /** Share of all kills. */
  readonly share: number;
  /** Strikes between two new folders. */
  readonly perFolder: number;
  prepare(folder: string): Promise<ReadyPhase>;
}

export interface ReadyPhase {
  strike(chance: Chance): Promise<boolean>;
}

const TALK = resolve('tests/speech/fixtures/memo.flac');
const OLDER = resolve('tests/store/older');
const SPOKEN_SECONDS = 8;

const sceneIn = (folder: string, env: Record<string, string> = {}): Scene => ({ folder, env });

function begin(folder: string): Scene {
  const scene = sceneIn(folder);
  callWell(scene, ['init', '--name', 'Barge', '--units', 'metric']);
  return scene;
}

/**
 * Moments for calls that are soon over: half of them anywhere in the time that such a call takes, half just after its
 * first sign of writing.
 */
class Moments {
  readonly #tookMs = new Map<string, number>();

  at(chance: Chance, what: string, isWriting: () => boolean, writesMs: number) {
    return async (isOver: () => boolean): Promise<void> => {
      const began = performance.now();
      const took = this.#tookMs.get(what) ?? 800;
      if (chance() < 0.5) await waited(chance() * took, isOver);
      else {
        await untilThere(isWriting, isOver);
        await waited(chance() * writesMs, isOver);
      }
      const passed = performance.now() - began;
      // A call that is not over takes longer than that.
      if (isOver() || passed > took) this.#tookMs.set(what, passed);
    };
  }
}

/** Whether the database is being written to: its log beside it is there and not empty. */
const isInLog = ({ folder }: Scene) => {
  const log = join(folder, '.hearwright', 'project.db-wal');
  return () => (statSync(log, { throwIfNoEntry: false })?.size ?? 0) > 0;
};

const hasUnfinished = (folder: string) => () => {
  try {
    return readdirSync(folder, { recursive: true, encoding: 'utf8' }).some((name) => name.endsWith('.part'));
  } catch {
    // A folder that went while it was looked through.
    return true;
  }
};

async function waited(ms: number, isOver: () => boolean): Promise<void> {
  const until = performance.now() + ms;
  while (!isOver() && performance.now() < until)
    await pause(Math.min(20, Math.max(0, until - performance.now())));
}

async function untilThere(found: () => boolean, isOver: () => boolean): Promise<void> {
  while (!isOver() && !found()) await pause(5);
}

const recordingsOf = ({ folder }: Scene) => join(folder, '.hearwright', 'recordings');
const originalsOf = ({ folder }: Scene) => join(folder, '.hearwright', 'originals');
const namesIn = (folder: string) => (existsSync(folder) ? readdirSync(folder) : []);

/** Samples of a WAV file of ours, whatever its header says of its length. */
function samplesOf(file: string): Int16Array {
  const bytes = readFileSync(file).subarray(HEADER_BYTES);
  const whole = bytes.subarray(0, bytes.length - (bytes.length % 2));
  return new Int16Array(Uint8Array.from(whole).buffer);
}

/** Whether `part` is the beginning of `whole`, which goes on in silence. */
function isBeginningOf(part: Int16Array, whole: Int16Array): boolean {
  return part.every((sample, at) => sample === (whole[at] ?? 0));
}

let foldersRecorded = 0;

const noise = () => Int16Array.from(whiteNoise(20, 16_000, 0.05), (sample) => Math.round(sample * 32_767));

/** A microphone in use: the sound that was on the disk at the kill becomes a memo, sample by sample. */
const recording: Phase = {
  name: 'recording',
  share: 30,
  perFolder: 5,
  async prepare(folder) {
    const scene = begin(folder);
    // Every third folder hears talk, which takes long; the others a noise of which no sample is like the next.
    const sound =
      foldersRecorded++ % 3 === 0 ? await microphoneSound(TALK, { before: 0.3, behind: 20 }) : noise();
    const listening = sceneIn(folder, { PATH: standInMicrophone(folder, { sound, pace: 5 }) });
    return {
      async strike(chance) {
        const before = (await memosOf(scene)).length;
        let onDisk = 0;
        // One in three ends by itself, so that the kill may fall into the hearing and taking in of what was recorded.
        const endsItself = chance() < 1 / 3;
        const words = endsItself ? ['listen', '--for', '3'] : ['listen'];
        const { wasOver } = await strike(listening, words, async (isOver) => {
          await untilThere(() => namesIn(recordingsOf(scene)).length > 0, isOver);
          await waited(chance() * (endsItself ? 4000 : 2500), isOver);
          for (const name of namesIn(recordingsOf(scene)))
            onDisk = Math.max(
              onDisk,
              statSync(join(recordingsOf(scene), name), { throwIfNoEntry: false })?.size ?? 0,
            );
        });
        const flushed = Math.max(0, Math.floor((onDisk - HEADER_BYTES) / 2));
        await mustBeWhole(scene);
        const { err, code } = call(scene, ['resume']);
        mustHold(code === 0, `resume ended with ${code}: ${err}`);
        const memos = await memosOf(scene);
        mustHold(memos.length <= before + 1, 'one recording became two memos');
        mustHold(
          memos.every(({ status }) => status === 'read'),
          'a memo was left unread by resume',
        );
        mustHold(namesIn(recordingsOf(scene)).length === 0, 'a recording was left behind by resume');
        if (flushed > 0 || memos.length > before) {
          const last = memos.at(-1);
          mustHold(
            last !== undefined && memos.length === before + 1,
            `${flushed} samples on the disk became no memo`,
          );
          const samples = samplesOf(join(originalsOf(scene), `${last?.source.sha256}.wav`));
          mustHold(
            samples.length >= flushed,
            `${flushed} samples were on the disk, ${samples.length} are in the memo`,
          );
          mustHold(isBeginningOf(samples, sound), 'samples of the memo are not those that were recorded');
        }
        await mustBeWhole(scene);
        return !wasOver;
      },
    };
  },
};

let made = 0;
/** A recording that was never made before: words, and a silence of a length of its own. */
async function newTalk(folder: string, silence: number): Promise<string> {
  const spoken = await microphoneSound(TALK);
  const number = ++made;
  const samples = new Float32Array(Math.round((SPOKEN_SECONDS / 4 + silence) * 16_000) + number);
  for (let at = 0; at < (SPOKEN_SECONDS / 4) * 16_000; at++) samples[at] = (spoken[at] ?? 0) / 32_768;
  const name = `talk-${number}.wav`;
  writeFileSync(join(folder, name), waveFile(samples, { form: 's16', sampleRate: 16_000, channels: 1 }));
  return name;
}

/** After a kill, the file is taken again: it is one memo, read, with the bytes of the file, which is as it was. */
async function mustBeTakenOnce(scene: Scene, name: string): Promise<void> {
  const bytes = readFileSync(join(scene.folder, name));
  const sha256 = hashOf(bytes);
  const memos = (await memosOf(scene)).filter(({ source }) => source.sha256 === sha256);
  mustHold(memos.length === 1, `${name} is ${memos.length} memos`);
  mustHold(memos[0]?.status === 'read', `${name} was left unread`);
  const original = join(originalsOf(scene), `${sha256}.wav`);
  mustHold(readFileSync(original).equals(bytes), `the original of ${name} has other bytes`);
}

/** `take` of a recording, from the first look at it to the last word: no memo is half in. */
const taking: Phase = {
  name: 'taking a recording',
  share: 26,
  perFolder: 15,
  async prepare(folder) {
    const scene = begin(folder);
    const moments = new Moments();
    return {
      async strike(chance) {
        const name = await newTalk(folder, 1 + Math.round(chance() * 20));
        const before = hashOf(readFileSync(join(folder, name)));
        const hurry = moments.at(chance, 'take', hasUnfinished(originalsOf(scene)), 400);
        const { wasOver } = await strike(scene, ['take', name], hurry);
        await mustBeWhole(scene);
        const mine = (await memosOf(scene)).filter(({ source }) => source.sha256 === before);
        mustHold(mine.length <= 1, `${name} is in twice`);
        mustHold(hashOf(readFileSync(join(folder, name))) === before, `${name} was changed`);
        const { err, code } = call(scene, ['take', name]);
        mustHold(code === 0, `take again ended with ${code}: ${err}`);
        await mustBeTakenOnce(scene, name);
        mustHold(unfinishedIn(originalsOf(scene)).length === 0, 'an unfinished copy was left behind');
        await mustBeWhole(scene);
        return !wasOver;
      },
    };
  },
};

/** The recogniser at work on a memo that is kept: the next call that takes anything goes on with it by itself. */
const transcribing: Phase = {
  name: 'transcribing',
  share: 24,
  perFolder: 15,
  async prepare(folder) {
    const scene = begin(folder);
    return {
      async strike(chance) {
        const name = await newTalk(folder, 10 + Math.round(chance() * 20));
        const sha256 = hashOf(readFileSync(join(folder, name)));
        const isKept = () => namesIn(originalsOf(scene)).some((file) => file.startsWith(sha256));
        const { wasOver } = await strike(scene, ['take', name], async (isOver) => {
          await untilThere(isKept, isOver);
          await waited(chance() * 1500, isOver);
        });
        mustHold(isKept(), 'the original is gone');
        await mustBeWhole(scene);
        const wasFiled = (await memosOf(scene)).some(({ source }) => source.sha256 === sha256);
        const note = `note-${made}.txt`;
        writeFileSync(join(folder, note), `Number ${made}: the berth is ${1800 + made} long.`);
        const { err, code } = call(scene, ['take', ...(wasFiled ? [] : [name]), note]);
        mustHold(code === 0, `the next take ended with ${code}: ${err}`);
        await mustBeTakenOnce(scene, name);
        const names = (await memosOf(scene)).map(({ source }) => source.name);
        mustHold(names.at(-1) === note && names.at(-2) === name, 'memos are not in the order of taking');
        await mustBeWhole(scene);
        return !wasOver;
      },
    };
  },
};

/** Everything that a person says by hand: it is in the log whole, or it is not in it. */
const reviewing: Phase = {
  name: 'reviewing',
  share: 110,
  perFolder: 30,
  async prepare(folder) {
    const scene = begin(folder);
    const talk = (day: number) =>
      `${Array.from(
        { length: 12 },
        (_, at) => `The frame ${at + 1} is ${400 + at * 7 + day * 11} high. `,
      ).join('')}I need to order the hinges. We decided on larch for the sole.`;
    for (const day of [1, 2, 3]) {
      writeFileSync(join(folder, `day-${day}.txt`), talk(day));
      callWell(scene, ['take', `day-${day}.txt`, '--at', `2026-03-0${day}T10:00:00Z`]);
    }
    const findings = JSON.parse(callWell(scene, ['findings', '--json'])) as readonly { id: string }[];
    const acts: readonly ((chance: Chance) => readonly string[])[] = [
      (chance) => [
        'set',
        `frame ${1 + Math.floor(chance() * 12)}`,
        'height',
        `${400 + Math.round(chance() * 99)} mm`,
      ],
      (chance) => [
        'settle',
        findings[Math.floor(chance() * findings.length)]?.id ?? '',
        'take-new',
        '--reason',
        'taped',
      ],
      (chance) => ['settle', findings[Math.floor(chance() * findings.length)]?.id ?? '', 'keep-old'],
      (chance) => [
        'note',
        `m1.f${1 + Math.floor(chance() * 12)}`,
        'amend',
        '--value',
        `${300 + Math.round(chance() * 99)} mm`,
      ],
      (chance) => ['note', `m2.f${1 + Math.floor(chance() * 12)}`, 'accept'],
      (chance) => ['note', `m3.f${1 + Math.floor(chance() * 12)}`, 'reject'],
      (chance) => ['tolerance', 'length', `${1 + Math.floor(chance() * 9)} mm`],
      (chance) => ['merge', `frame ${1 + Math.floor(chance() * 12)}`, `rib ${1 + Math.floor(chance() * 12)}`],
      (chance) => ['todo', `oil the frame ${Math.round(chance() * 999)}`],
      () => ['undo'],
    ];
    const moments = new Moments();
    return {
      async strike(chance) {
        const before = eventsIn(scene);
        const act = acts[Math.floor(chance() * acts.length)] ?? (() => ['undo']);
        const words = act(chance);
        const when = moments.at(chance, words[0] ?? '', isInLog(scene), 40);
        const { wasOver } = await strike(scene, words, when);
        const after = eventsIn(scene);
        mustHold(after === before || after === before + 1, `${after - before} events came of one change`);
        await mustBeWhole(scene);
        return !wasOver;
      },
    };
  },
};

/** Pages and journals: each file is what it was, or what it becomes, and nothing in between. */
const writing: Phase = {
  name: 'writing pages and journals',
  share: 46,
  perFolder: 10,
  async prepare(folder) {
    const scene = begin(folder);
    for (let day = 1; day <= 9; day++) {
      const talk = Array.from(
        { length: 20 },
        (_, at) => `The shelf ${at + day} is ${500 + at * 3 + day} wide. `,
      ).join('');
      writeFileSync(join(folder, `day-${day}.txt`), `${talk}Tomorrow I need to order the hinges.`);
      callWell(scene, ['take', `day-${day}.txt`, '--at', `2026-03-0${day}T10:00:00Z`]);
    }
    const on = ['--on', '2026-03-10'];
    const jobs: readonly (readonly string[])[] = [
      ['journal', '2026-03-09', '--out', 'out/journal.md'],
      ['next', ...on, '--out', 'out/next.md'],
      ['episode', '2026-03-01', '2026-03-09', '--out', 'out/episode.md'],
      ['calendar', ...on, '--out', 'out/build.ics'],
      ['sheet', ...on, '--out', 'out/sheet.md'],
      ['pages', ...on, '--out', 'out/site'],
      ['pages', ...on, '--out', 'out/site'],
      ['pages', ...on, '--out', 'out/site'],
    ];
    for (const job of jobs) callWell(scene, job);
    let changes = 0;
    const moments = new Moments();
    return {
      async strike(chance) {
        callWell(scene, ['set', `shelf ${1 + Math.floor(chance() * 20)}`, 'width', `${700 + ++changes} mm`]);
        const job = jobs[Math.floor(chance() * jobs.length)] ?? [];
        const before = filesBelow(join(folder, 'out'));
        const when = moments.at(chance, job[0] ?? '', hasUnfinished(join(folder, 'out')), 60);
        const { wasOver } = await strike(scene, job, when);
        const struck = filesBelow(join(folder, 'out'));
        await mustBeWhole(scene);
        callWell(scene, job);
        const after = filesBelow(join(folder, 'out'));
        for (const [name, hash] of struck) {
          if (name.endsWith('.part')) continue;
          mustHold(hash === before.get(name) || hash === after.get(name), `${name} is torn`);
        }
        mustHold(unfinishedIn(join(folder, 'out')).length === 0, 'unfinished pages were left behind');
        mustHold(
          [...after.keys()].every((name) => !/\.1\.[a-z]+$/.test(name)),
          'a page of ours was taken for a stranger`s',
        );
        return !wasOver;
      },
    };
  },
};

const olderMoments = new Moments();

/** A project that an older program wrote, brought up to date: it is the old one or the new one. */
const upgrading: Phase = {
  name: 'bringing an older project up to date',
  share: 40,
  perFolder: 1,
  async prepare(folder) {
    const scene = sceneIn(folder);
    const home = join(folder, '.hearwright');
    return {
      async strike(chance) {
        const format = 1 + Math.floor(chance() * 6);
        mkdirSync(originalsOf(scene), { recursive: true });
        writeFileSync(
          join(home, 'project.db'),
          gunzipSync(readFileSync(join(OLDER, `format-${format}.db.gz`))),
        );
        for (const name of ['first.txt', 'second.txt'])
          copyFileSync(
            join(OLDER, name),
            join(originalsOf(scene), `${hashOf(readFileSync(join(OLDER, name)))}.txt`),
          );
        const when = olderMoments.at(chance, 'figures', hasUnfinished(home), 150);
        const { wasOver } = await strike(scene, ['figures'], when);
        mustHold(eventsIn(scene) === 15, 'the log has other events');
        callWell(scene, ['verify']);
        await mustBeWhole(scene);
        mustHold(
          existsSync(join(home, `project.format-${format}.db`)),
          'there is no copy of what was before',
        );
        mustHold(unfinishedIn(home).length === 0, 'an unfinished copy was left behind');
        return !wasOver;
      },
    };
  },
};

/** Backups, restores and imports: whole or not at all, and the same call again does it. */
const moving: Phase = {
  name: 'backing up, restoring, importing',
  share: 30,
  perFolder: 30,
  async prepare(folder) {
    const scene = begin(folder);
    for (const day of [1, 2, 3, 4]) {
      writeFileSync(
        join(folder, `day-${day}.txt`),
        `The locker is ${600 + day} deep. I need to buy ${day} hinges.`,
      );
      callWell(scene, ['take', `day-${day}.txt`, '--at', `2026-03-0${day}T10:00:00Z`]);
    }
    const document = callWell(scene, ['export', '--json']);
    writeFileSync(join(folder, 'barge.json'), document);
    const moments = new Moments();
    const isUnfinished = (name: string) => name.endsWith('.part');
    callWell(scene, ['backup', 'barge.backup']);
    return {
      async strike(chance) {
        rmSync(join(folder, 'again'), { recursive: true, force: true });
        const which = Math.floor(chance() * 3);
        const words = [
          ['backup', 'barge.backup', '--replace'],
          ['restore', 'barge.backup', '--into', 'again'],
          ['import', 'barge.json', '--into', 'again'],
        ][which] as readonly string[];
        const when = moments.at(chance, words[0] ?? '', hasUnfinished(folder), 150);
        const { wasOver } = await strike(scene, words, when);
        const isThere = existsSync(join(folder, 'again', '.hearwright'));
        if (which === 0) callWell(scene, ['restore', 'barge.backup', '--into', 'again']);
        else if (!isThere) callWell(scene, words);
        mustHold(
          callWell(scene, ['--project', 'again', 'export', '--json']) === document,
          'it came back otherwise',
        );
        await mustBeWhole({ folder: join(folder, 'again'), env: {} });
        callWell(scene, ['backup', 'barge.backup', '--replace']);
        mustHold(!readdirSync(folder).some(isUnfinished), 'something unfinished was left behind');
        return !wasOver;
      },
    };
  },
};

export const PHASES: readonly Phase[] = [
  reviewing,
  upgrading,
  writing,
  moving,
  recording,
  taking,
  transcribing,
];
