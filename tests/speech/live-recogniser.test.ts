import { resolve } from 'node:path';
import { expect, test } from 'vitest';
import { startLiveRecogniser } from '../../src/speech/live-recogniser.ts';
import { checkedModelFiles } from '../../src/speech/model-folder.ts';
import { bundledSetup } from '../../src/speech/moonshine-engine.ts';
import type { Heard } from '../../src/speech/recogniser/listener.ts';
import type { RecogniserMessage } from '../../src/speech/recogniser/messages.ts';
import { startRecogniser } from '../../src/speech/recogniser/recogniser-process.ts';
import { SAMPLE_RATE } from '../../src/speech/recogniser/sample-rate.ts';
import { microphoneSound } from '../kit/stand-in-microphone.ts';

const TALK = resolve('tests/speech/fixtures/memo.flac');
const TENTH = SAMPLE_RATE / 10;

type Progress = Extract<RecogniserMessage, { kind: 'progress' }>;

/** Feeds sound a tenth of a second at a time, each only when the one before was heard. */
async function hearInStep(sound: Int16Array): Promise<readonly Progress[]> {
  const models = await checkedModelFiles();
  if (!models.ok) throw models.problem;
  const messages: Progress[] = [];
  let heardAll = () => {};
  const child = startRecogniser(
    { ...bundledSetup(models.value), live: true },
    {
      onMessage(message) {
        if (message.kind !== 'progress') return;
        messages.push(message);
        if (!message.early && !message.heard) heardAll();
      },
    },
  );
  for (let at = 0; at < sound.length; at += TENTH) {
    const heard = new Promise<void>((done) => {
      heardAll = done;
    });
    await child.write(Float32Array.from(sound.subarray(at, at + TENTH), (sample) => sample / 32_768));
    await heard;
  }
  child.end();
  await child.finished;
  return messages;
}

const textOf = (all: readonly (Heard | undefined)[]) =>
  all.flatMap((heard) => heard?.utterances.map(({ text }) => text) ?? []).join(' ');

test('a stretch is told within 0.9 s of sound after its last word, and again with its neighbours', async () => {
  const twice = [await microphoneSound(TALK, { behind: 1 }), await microphoneSound(TALK, { behind: 6 })];
  const messages = await hearInStep(Int16Array.from(twice.flatMap((sound) => [...sound])));
  const early = messages.filter((message) => message.early?.utterances.length);
  expect(early.length).toBeGreaterThan(1);
  for (const { secondsHeard, early: heard } of early) {
    expect(secondsHeard - (heard?.utterances.at(-1)?.endSeconds ?? 0)).toBeLessThan(0.9);
  }
  const whole = messages.filter((message) => message.heard?.utterances.length);
  const HIGH = /three inches too high/g;
  expect(textOf(whole.map(({ heard }) => heard)).match(HIGH)).toHaveLength(2);
  expect(textOf(early.map(({ early: heard }) => heard)).match(HIGH)).toHaveLength(2);
  // Talk lasts until its end, and silence behind it does not move that.
  expect(messages.at(-1)?.spokenUntil).toBeGreaterThan(17);
  expect(messages.at(-1)?.spokenUntil).toBeLessThan(18.5);
}, 40_000);

test('sound that waits while the models are loaded is heard, and the end tells that all of it was', async () => {
  const heard: Heard[] = [];
  const recogniser = startLiveRecogniser({
    onEarly: () => {},
    onHeard: (one) => heard.push(one),
    onProgress: () => {},
    onLost: (reason) => {
      throw new Error(reason);
    },
  });
  const sound = await microphoneSound(TALK);
  for (let at = 0; at < sound.length; at += TENTH) recogniser.write(sound.subarray(at, at + TENTH));
  expect(await recogniser.end()).toBe(true);
  expect(textOf(heard)).toContain('three inches too high');
});

test('a recogniser that cannot keep up gives up, and says so once', async () => {
  const reasons: string[] = [];
  const recogniser = startLiveRecogniser({
    onEarly: () => {},
    onHeard: () => {},
    onProgress: () => {},
    onLost: (reason) => reasons.push(reason),
  });
  const minute = new Int16Array(60 * SAMPLE_RATE);
  for (let count = 0; count < 5; count++) recogniser.write(minute);
  expect(await recogniser.end()).toBe(false);
  expect(reasons).toEqual(['it cannot keep up with the talk']);
});
