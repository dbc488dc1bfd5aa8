/** The bundled voice, with a stand-in player: what it says is heard again by the bundled recogniser. */
import {
  chmodSync,
  copyFileSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, dirname, join, resolve } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { transcribe } from '../../src/speech/moonshine-engine.ts';
import { silencing } from '../../src/speech/silencing.ts';
import { cutOut, playClip } from '../../src/speech/voice/play-clip.ts';
import { isInstalled, SPEAKERS } from '../../src/speech/voice/programs.ts';
import { runSound } from '../../src/speech/voice/run-sound.ts';
import { openVoice, startBundledVoice } from '../../src/speech/voice/voice.ts';

const TALK = resolve('tests/speech/fixtures/memo.flac');

let folder: string;
const path = process.env.PATH;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'hearwright-'));
});
afterEach(() => {
  process.env.PATH = path;
  rmSync(folder, { recursive: true, force: true });
});

/** Puts a program in front of the path that keeps what it is called with, and ends with `code`. */
function standIn(program: string, code = 0): void {
  const bin = join(folder, 'bin');
  mkdirSync(bin, { recursive: true });
  const file = join(bin, program);
  writeFileSync(
    file,
    `#!${process.execPath}
const { appendFileSync, copyFileSync, existsSync } = require('node:fs');
const words = process.argv.slice(2);
appendFileSync(${JSON.stringify(join(folder, 'calls'))}, JSON.stringify([${JSON.stringify(program)}, ...words]) + '\\n');
const sound = words.at(-1);
if (existsSync(sound)) copyFileSync(sound, ${JSON.stringify(join(folder, 'played.wav'))});
if (${code} !== 0) console.error('no device');
process.exit(${code});
`,
  );
  chmodSync(file, 0o755);
  process.env.PATH = bin;
}

const calls = () =>
  existsSync(join(folder, 'calls'))
    ? readFileSync(join(folder, 'calls'), 'utf8')
        .trim()
        .split('\n')
        .map((line) => JSON.parse(line) as string[])
    : [];

/** Says the texts and waits until it is still. */
async function say(texts: readonly string[]) {
  const told: string[] = [];
  let quiet = () => {};
  const still = new Promise<void>((done) => {
    quiet = done;
  });
  const voice = openVoice({
    onSpeaking: () => told.push('speaking'),
    onSilent: () => {
      told.push('silent');
      quiet();
    },
    onLost: (problem) => told.push(problem.message),
  });
  for (const text of texts) voice.say(text);
  await still;
  await new Promise((done) => setTimeout(done, 50));
  voice.close();
  return told;
}

test('a figure is spoken so that it can be understood', { timeout: 60_000 }, async ({ skip }) => {
  if (!existsSync('models')) skip('the recogniser is not here');
  standIn('aplay');
  expect(await say(['stair opening width, 820 millimetres. Clash with 280 millimetres.'])).toEqual([
    'speaking',
    'silent',
  ]);
  expect(calls()).toEqual([['aplay', '-q', expect.stringMatching(/1\.wav$/)]]);
  process.env.PATH = path;
  const heard = await transcribe(join(folder, 'played.wav'));
  const words = heard.ok ? heard.value.utterances.map(({ text }) => text).join(' ') : '';
  expect(words).toMatch(/820 (?:mm|millim\w+),?\W+clash with 280 (?:mm|millim\w+)/i);
});

test('what waits behind a text is spoken only if it is the newest', { timeout: 60_000 }, async () => {
  standIn('aplay');
  const told = await say(['one', 'two', 'three']);
  expect(told.filter((one) => one === 'speaking').length).toBeLessThanOrEqual(2);
});

test('a player that fails gives way to the next; when none can, that is told once', {
  timeout: 60_000,
}, async () => {
  standIn('aplay', 1);
  expect(await say(['one'])).toEqual(['speaking', 'no sound can be played: aplay: no device', 'silent']);
  standIn('ffplay');
  expect(
    (
      await runSound(
        [
          { program: 'aplay', words: (file) => [file] },
          { program: 'ffplay', words: (file) => [file] },
        ],
        '/x.wav',
      )
    ).ok,
  ).toBe(true);
});

test('without a player the system speaks itself, with the text as one word that no shell reads', {
  timeout: 60_000,
}, async () => {
  standIn('espeak-ng');
  expect(await say(['$(touch nothing); 820 millimetres'])).toEqual(['speaking', 'silent']);
  expect(calls()).toEqual([['espeak-ng', '--', '$(touch nothing); 820 millimetres']]);
});

test('where nothing plays or speaks, that is said', { timeout: 60_000 }, async () => {
  process.env.PATH = folder;
  const [, told] = await say(['one']);
  expect(told).toBe('nothing that plays sound is installed: none of spd-say, espeak-ng, say');
});

test('a program is installed where the path has one that may be run', () => {
  standIn('spd-say');
  writeFileSync(join(folder, 'bin', 'espeak-ng'), 'no program');
  const found = SPEAKERS.map(({ program }) =>
    isInstalled(program, [join(folder, 'nowhere'), join(folder, 'bin')].join(delimiter)),
  );
  expect(found).toEqual([true, false, false]);
});

test('a clip holds its stretch and a little more, and its file is gone when it has sounded', async () => {
  standIn('aplay');
  expect((await playClip(TALK, { from: 1, to: 2 })).ok).toBe(true);
  copyFileSync(join(folder, 'played.wav'), join(folder, 'clip.wav'));
  expect((await cutOut(join(folder, 'clip.wav'), { from: 0, to: 60 })).length).toBe(1.8 * 16_000);
  const [call] = calls();
  expect(existsSync(call?.at(-1) ?? '')).toBe(false);
  const whole = await cutOut(TALK, { from: 0, to: 60 });
  expect(await cutOut(TALK, { from: 1, to: 2 })).toEqual(whole.slice(0.6 * 16_000, 2.4 * 16_000));
});

test('stretches become silent, whatever the pieces', async () => {
  async function* pieces() {
    for (const length of [16_000, 8_000, 24_000]) yield new Float32Array(length).fill(1);
    return 'end';
  }
  const sound: number[] = [];
  const silenced = silencing(pieces(), [
    { from: 0.5, to: 1.25 },
    { from: 2, to: 2.5 },
  ]);
  let next = await silenced.next();
  while (!next.done) {
    sound.push(...next.value);
    next = await silenced.next();
  }
  expect(next.value).toBe('end');
  const edges = [0, 7_999, 8_000, 19_999, 20_000, 31_999, 32_000, 39_999, 40_000, 47_999].map(
    (at) => sound[at],
  );
  expect(edges).toEqual([1, 1, 0, 0, 1, 1, 0, 0, 1, 1]);
});

test('nothing is left in the folder for passing files', async () => {
  const before = readdirSync(tmpdir()).filter((name) => name.startsWith('hearwright-voice-'));
  standIn('aplay');
  await say(['one']);
  await new Promise((done) => setTimeout(done, 500));
  const after = readdirSync(tmpdir()).filter((name) => name.startsWith('hearwright-voice-'));
  expect(after.filter((name) => !before.includes(name))).toEqual([]);
}, 60_000);

test('the voice speaks text upon text: no fast call into the system interface ends its process', {
  timeout: 60_000,
}, async () => {
  const voice = startBundledVoice();
  const before = voiceProcesses();
  const processes = new Set<number>();
  for (let number = 0; number < 40; number++) {
    const file = await voice.speak(`The board number ${number} is six hundred and twenty millimetres wide.`);
    expect(statSync(file ?? '').size).toBeGreaterThan(50_000);
    for (const id of voiceProcesses()) if (!before.includes(id)) processes.add(id);
  }
  voice.stop();
  expect(processes.size).toBe(existsSync('/proc/self') ? 1 : 0);
});

test('a voice whose process dies is started again, and its files go when it is stopped', {
  timeout: 60_000,
}, async ({ skip }) => {
  if (!existsSync('/proc/self')) skip('processes are found through /proc');
  const before = voiceProcesses();
  const voice = startBundledVoice();
  const first = await voice.speak('Seven hundred and forty two.');
  for (const id of voiceProcesses()) if (!before.includes(id)) process.kill(id, 'SIGKILL');
  const second = await voice.speak('Nine hundred and five.');
  expect([first, second].map((file) => existsSync(file ?? ''))).toEqual([true, true]);
  voice.stop();
  await expect.poll(() => existsSync(dirname(first ?? ''))).toBe(false);
});

/** Those that this process has started. */
function voiceProcesses(): readonly number[] {
  if (!existsSync('/proc/self')) return [];
  return readdirSync('/proc')
    .filter((name) => /^\d+$/.test(name))
    .filter((id) => {
      try {
        // Behind the name in brackets: the state, and the parent.
        const [, parent] = (readFileSync(`/proc/${id}/stat`, 'utf8').split(') ')[1] ?? '').split(' ');
        const isOurs = parent === String(process.pid);
        return isOurs && readFileSync(`/proc/${id}/cmdline`, 'utf8').includes('voice-child');
      } catch {
        return false;
      }
    })
    .map(Number);
}
