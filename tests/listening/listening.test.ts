import { existsSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { Listening, type ListeningProject } from '../../src/listening/listening.ts';
import type { LookAhead } from '../../src/listening/what-is-new.ts';
import { EXIT, Problem } from '../../src/problem.ts';
import type { ListenEvent, Taken, TakeOptions } from '../../src/project-api.ts';
import type { LiveListeners, LiveRecogniser } from '../../src/speech/live-recogniser.ts';
import type { Microphone, MicrophoneEnd } from '../../src/speech/microphone/microphone.ts';
import { HEADER_BYTES } from '../../src/speech/microphone/wave-header.ts';
import { MEMO } from '../kit/views.ts';

const RATE = 16_000;
const NOTHING_AHEAD: LookAhead = { figures: [], notes: [], findings: [], takenBack: [] };

let home: string;
beforeEach(() => {
  home = mkdtempSync(join(tmpdir(), 'listening-'));
});
afterEach(() => rmSync(home, { recursive: true, force: true }));

const recordings = () => (existsSync(join(home, 'recordings')) ? readdirSync(join(home, 'recordings')) : []);

/** Gives a second of sound each time it is read, and calls `onSecond` before the next. */
function seconds(count: number, onSecond: (second: number) => void, end: MicrophoneEnd): Microphone {
  let isStopped = false;
  async function* sound() {
    for (let second = 1; second <= count && !isStopped; second++) {
      yield new Int16Array(RATE).fill(second);
      onSecond(second);
    }
  }
  return {
    name: 'bench',
    sound: sound(),
    ended: Promise.resolve(end),
    stop: () => {
      isStopped = true;
    },
  };
}

/** A recogniser that says what the test makes it say. */
function standIn(isWhole = true): { readonly start: (listeners: LiveListeners) => LiveRecogniser } & {
  listeners?: LiveListeners;
} {
  const made: { start: (listeners: LiveListeners) => LiveRecogniser; listeners?: LiveListeners } = {
    start(listeners) {
      made.listeners = listeners;
      return { write: () => {}, end: async () => isWhole, stop: () => {} };
    },
  };
  return made;
}

interface Told {
  readonly file: string;
  readonly seconds: number;
  readonly options: TakeOptions;
}

async function secondsOf(file: string): Promise<number> {
  const { stat } = await import('node:fs/promises');
  return ((await stat(file)).size - HEADER_BYTES) / 2 / RATE;
}

function project(take?: (file: string) => void): ListeningProject & { readonly told: Told[] } {
  const told: Told[] = [];
  return {
    home,
    told,
    async take(file, options) {
      take?.(file);
      told.push({ file, seconds: await secondsOf(file), options });
      const taken: Taken = { memoId: `m${told.length}`, already: false, memo: MEMO, findings: [] };
      return { ok: true, value: taken };
    },
    lookAhead: async () => NOTHING_AHEAD,
  };
}

const said = (startSeconds: number, endSeconds: number, text: string) => ({
  utterances: [{ startSeconds, endSeconds, text }],
  dropped: [],
});

/** Talk from 1 to 3 s and from 60 to 62 s of a hundred seconds. */
function twoTalks(listeners: LiveListeners | undefined, second: number): void {
  if (second === 4) listeners?.onHeard(said(1, 3, 'The bench.'));
  if (second === 63) listeners?.onHeard(said(60, 62, 'The hatch.'));
  const spoken = second >= 62 ? 62 : second >= 60 ? second : second >= 3 ? 3 : undefined;
  listeners?.onProgress(second, spoken);
}

test('talk between long silences becomes memos that join without a gap, each with its own words and time', async () => {
  const recogniser = standIn();
  const taking = project();
  const events: ListenEvent[] = [];
  const listening = new Listening(taking, {
    microphone: seconds(100, (second) => twoTalks(recogniser.listeners, second), { kind: 'stopped' }),
    onEvent: (event) => events.push(event),
    startRecogniser: recogniser.start,
  });
  const listened = await listening.finished;
  // Cut a second before the newest sound: at 34 - 1 and at 93 - 1.
  expect(taking.told.map((one) => one.seconds)).toEqual([33, 59]);
  expect(taking.told.map(({ options }) => options.heard?.utterances)).toEqual([
    [{ startSeconds: 1, endSeconds: 3, text: 'The bench.' }],
    [{ startSeconds: 27, endSeconds: 29, text: 'The hatch.' }],
  ]);
  expect(taking.told.map(({ options }) => options.name)).toEqual([
    expect.stringMatching(/^talk-[-\d]+\.wav$/),
    expect.stringMatching(/^talk-[-\d]+\.wav$/),
  ]);
  expect(listened).toMatchObject({ seconds: 100, problems: [], silentRest: { seconds: 8 } });
  expect(recordings()).toEqual([expect.stringMatching(/\.no-talk\.wav$/)]);
  const kinds = events.map(({ kind }) => kind).filter((kind) => kind !== 'level' && kind !== 'heard');
  // A part may still be on its way in when the recording stops.
  expect([kinds[0], ...kinds.slice(1).sort()]).toEqual(['started', 'stopped', 'taken', 'taken']);
});

test('without a recogniser nothing is cut or put aside, and the memo is heard from its file', async () => {
  const recogniser = standIn(false);
  const taking = project();
  const listening = new Listening(taking, {
    microphone: seconds(
      50,
      (second) => second === 1 && recogniser.listeners?.onLost('its files are missing'),
      { kind: 'stopped' },
    ),
    onEvent: () => {},
    startRecogniser: recogniser.start,
  });
  await listening.finished;
  expect(taking.told.map((one) => [one.seconds, one.options.heard])).toEqual([[50, undefined]]);
});

test('a project that cannot take a part in stops no recording, and the file stays for the next call', async () => {
  const recogniser = standIn();
  const busy = new Problem('another program is writing', { code: 'project-busy', exitCode: EXIT.unexpected });
  let calls = 0;
  const taking = project(() => {
    calls++;
    if (calls === 1) throw busy;
  });
  const listening = new Listening(taking, {
    microphone: seconds(70, (second) => twoTalks(recogniser.listeners, second), { kind: 'stopped' }),
    onEvent: () => {},
    startRecogniser: recogniser.start,
  });
  const { problems, taken } = await listening.finished;
  expect(problems).toMatchObject([
    { code: 'project-busy', next: 'hearwright resume', kept: expect.stringContaining('talk-') },
  ]);
  expect(taken).toHaveLength(1);
  expect(recordings()).toHaveLength(1);
});

test('a microphone that goes away leaves a memo and a problem', async () => {
  const taking = project();
  const listening = new Listening(taking, {
    microphone: seconds(5, () => {}, { kind: 'lost', reason: 'no such device' }),
    onEvent: () => {},
    startRecogniser: standIn().start,
  });
  const { problems, seconds: recorded } = await listening.finished;
  expect(recorded).toBe(5);
  expect(taking.told.map((one) => one.seconds)).toEqual([5]);
  expect(problems).toMatchObject([
    {
      code: 'microphone-lost',
      message: 'the microphone is gone: bench stopped giving sound (no such device)',
      kept: 'the 00:05 recorded until then',
    },
  ]);
});

test('so many seconds are so many samples', async () => {
  const taking = project();
  const listening = new Listening(taking, {
    microphone: seconds(100, () => {}, { kind: 'stopped' }),
    onEvent: () => {},
    seconds: 2.5,
    startRecogniser: standIn().start,
  });
  expect((await listening.finished).seconds).toBe(2.5);
  expect(taking.told.map((one) => one.seconds)).toEqual([2.5]);
});

test('a folder that may not be written to is a problem, and the microphone is let go', async () => {
  let isStopped = false;
  const microphone = { ...seconds(3, () => {}, { kind: 'stopped' }), stop: () => (isStopped = true) };
  const listening = new Listening(
    { ...project(), home: '/dev/null' },
    { microphone, onEvent: () => {}, startRecogniser: standIn().start },
  );
  const { problems, seconds: recorded } = await listening.finished;
  expect(recorded).toBe(0);
  expect(problems).toMatchObject([{ code: 'recording-unwritten', exitCode: 3 }]);
  expect(isStopped).toBe(true);
});

const FIGURE = MEMO.notes.figures[0];

/** A recording of twelve seconds in which a figure is heard at the fourth, and the voice sounds until the eighth. */
async function readAloud(isWhole: boolean, words = 'The beam.') {
  const recogniser = standIn(isWhole);
  const heardSound: number[] = [];
  const spoken: string[] = [];
  let silent = () => {};
  const taking = {
    ...project(),
    lookAhead: async (talk: readonly { readonly text: string }[]) =>
      talk.some(({ text }) => text === 'The beam.') && FIGURE
        ? { ...NOTHING_AHEAD, figures: [FIGURE] }
        : talk.some(({ text }) => text === 'Scratch that.')
          ? { ...NOTHING_AHEAD, takenBack: ['The beam.'] }
          : NOTHING_AHEAD,
  };
  async function* sound() {
    for (let second = 1; second <= 12; second++) {
      yield new Int16Array(RATE).fill(second);
      if (second === 4) recogniser.listeners?.onEarly(said(1, 3, words));
      if (second === 8) silent();
      // What was heard is read between two pieces of sound.
      await new Promise((done) => setTimeout(done, 20));
    }
  }
  const listening = new Listening(taking, {
    microphone: {
      name: 'bench',
      sound: sound(),
      ended: Promise.resolve({ kind: 'stopped' }),
      stop: () => {},
    },
    onEvent: () => {},
    readBack: true,
    startRecogniser(listeners) {
      const live = recogniser.start(listeners);
      return { ...live, write: (piece) => heardSound.push(piece[0] ?? -1) };
    },
    openVoice: ({ onSpeaking, onSilent }) => {
      silent = onSilent;
      return {
        say(words) {
          spoken.push(words);
          onSpeaking();
        },
        close: () => {},
      };
    },
  });
  await listening.finished;
  return { spoken, heardSound, options: taking.told[0]?.options };
}

test('that something is taken back is said aloud', async () => {
  const { spoken } = await readAloud(true, 'Scratch that.');
  expect(spoken).toEqual(['Taken back.']);
});

test('a figure is read aloud once, and what the voice says is not heard as talk', async () => {
  const { spoken, heardSound, options } = await readAloud(true);
  expect(spoken).toEqual(['hoist beam length, 2150 millimetres.']);
  // From the fifth second to the eighth, and a little longer: the room gives it back.
  expect(heardSound).toEqual([1, 2, 3, 4, 0, 0, 0, 0, 0, 10, 11, 12]);
  expect(options).not.toHaveProperty('silences');
});

test('heard from the file afterwards, the voice is silenced there as well', async () => {
  const { options } = await readAloud(false);
  expect(options).toMatchObject({ silences: [{ from: 4, to: 8.4 }] });
});
