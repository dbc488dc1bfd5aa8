/** The built command in a real terminal, with a microphone that plays a recording. */
import { existsSync, readdirSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { afterEach, expect, type TestContext, test } from 'vitest';
import { NO_TERMINAL, openPseudoTerminal, type PseudoTerminal } from '../kit/pseudo-terminal.ts';
import { microphoneSound, standInMicrophone } from '../kit/stand-in-microphone.ts';

/** "... The window is six hundred and twenty millimeters wide, and it is three inches too high." */
const TALK = resolve('tests/speech/fixtures/memo.flac');
/** A figure, a task that "No, scratch that." takes back, another task, with pauses: its words stand beside it. */
const TAKEN_BACK = resolve('tests/speech/fixtures/taken-back.opus');
/** As many times as fast as it was said. */
const PACE = 2;

let terminal: PseudoTerminal | undefined;
afterEach(() => {
  terminal?.close();
  terminal = undefined;
});

/** A shell that has a microphone, in a project that holds a limit for what is going to be said. */
async function open({ skip }: TestContext, talk = TALK): Promise<PseudoTerminal> {
  if (NO_TERMINAL) skip(NO_TERMINAL);
  if (!existsSync('models')) skip('the recogniser is not here');
  const shell = await openPseudoTerminal(80, 30);
  terminal = shell;
  const sound = await microphoneSound(talk, { behind: 60 });
  const path = standInMicrophone(shell.folder, { sound, pace: PACE });
  shell.type(`PATH='${path}'; clear`);
  shell.press('Enter');
  await shell.untilReady();
  writeFileSync(join(shell.folder, 'limit.txt'), 'The window must be at most 600 mm wide.');
  expect(await shell.run("init --name 'Mill loft'")).toBe(0);
  expect(await shell.run('take limit.txt')).toBe(0);
  return shell;
}

const recordings = (shell: PseudoTerminal) => readdirSync(join(shell.folder, '.hearwright', 'recordings'));

test('r records: the figure stands large with its clash, r stops, and it is a memo', {
  timeout: 120_000,
}, async (context) => {
  const shell = await open(context);
  shell.call('');
  await shell.until('m1');
  shell.type('r');
  await shell.until(/^RECORDING 00:0\d .*dB/m);
  const rows = await shell.until('CLASH  window width: breaks a stated limit');
  expect(rows[3]).toMatch(/^window (width|offset)$/);
  expect(rows.join('\n')).toContain('██████');
  // In another view the recording goes on and is told of in the head.
  shell.type('m');
  await shell.until(/^Memos$/m);
  await shell.until(/^RECORDING 00:\d\d/m);
  shell.type('v');
  await shell.until(/^At the bench$/m);
  shell.type('r');
  await shell.until('m2 is taken in, 1 to settle: press c');
  shell.type('c');
  await shell.until('> limit      window width');
  shell.type('q');
  await shell.untilReady();
  expect(recordings(shell)).toEqual([]);
  expect(await shell.run('verify')).toBe(0);
});

test('what "scratch that" takes back is shown as gone while it is recorded, and is no task afterwards', {
  timeout: 120_000,
}, async (context) => {
  const shell = await open(context, TAKEN_BACK);
  shell.call('');
  await shell.until('m1');
  shell.type('r');
  await shell.until(/^to do +Order more screws$/m);
  const rows = await shell.until(/^taken back: "I need to order more screws\.?"$/m);
  expect(rows.join('\n')).not.toContain('Order more screws');
  expect(rows[3]).toBe('window width');
  const after = (await shell.until(/^to do +Oil the hinges$/m)).join('\n');
  expect(after).not.toMatch(/taken back|Order more screws/);
  shell.type('r');
  await shell.until('m2 is taken in');
  shell.type('w');
  await shell.until('Oil the hinges');
  expect(shell.rows().join('\n')).not.toContain('screws');
  shell.type('q');
  await shell.untilReady();
});

test('listen shows time and level on the terminal, and Enter stops it', {
  timeout: 120_000,
}, async (context) => {
  const shell = await open(context);
  shell.call('listen');
  await shell.until(/^RECORDING 00:0[1-9] .*(dB|sound)/m);
  await shell.until('window width: breaks a stated limit   [just said]');
  shell.press('Enter');
  const rows = await shell.until(/^memo 2 {2}talk-[-\d]+\.wav/m);
  expect(rows.join('\n')).toContain('Stopped. The last words are being heard.');
  await shell.untilReady();
  expect(recordings(shell)).toEqual([]);
});

test('q while recording keeps what was said', { timeout: 120_000 }, async (context) => {
  const shell = await open(context);
  shell.call('');
  await shell.until('m1');
  shell.type('r');
  await shell.until(/^RECORDING 00:0[5-9]/m);
  shell.type('q');
  await shell.untilReady();
  expect(recordings(shell)).toEqual([]);
  shell.call('memos');
  await shell.until(/memo 2 .* talk-[-\d]+\.wav/);
});
