/** Going over an ordinary day's notes with real keys, counted. */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, expect, test } from 'vitest';
import { NO_TERMINAL, openPseudoTerminal, type PseudoTerminal } from '../kit/pseudo-terminal.ts';

const MORNING = `Right, Tuesday in the smokehouse. The smoke chamber is 1240 wide and 860 deep, I measured it twice. The door
opening is 715 by 1480. The firebox lid is 12 mm steel, I think. I decided on cedar for the racks because it does not
sweat. I need to cut six rack rails at 1180. I've got to order the hinges by Friday. The chimney pipe is 150 diameter. The
damper sticks. I glued up the door this morning and left it in clamps. Eight bags of firebrick come next Wednesday. The
floor falls 20 mm over the whole length. I must seal the flue collar before the cladding goes on. I'll show you how the
damper works next week, promise. The rack spacing is 95. The lintel is about four foot. The chamber door is 22 thick.`;
const EVENING = `Evening. The smoke chamber is 1420 wide. We've started on the cladding, four of the eleven boards are up. The
hinges came today. The door opening is still 715 wide. I need to drill it. The ember tray is 640 long and 380 wide. Maybe
the tray wants to be 3 mm thick. The bearers are 45 by 70. I can't fit the tray until the firebricks arrive. The drip
channel leaks at the corner. The rail gap is an eighth. I decided to keep the old vent. First coat of limewash went on at
three. Buy more screws. The shelf self is 320 deep. The skirt board is 7 ft 6 long.`;

/** What a person may take for the unsure ones, in two minutes less the sure ones. */
const MOST_KEYS = 40;

let terminal: PseudoTerminal | undefined;
afterEach(() => {
  terminal?.close();
  terminal = undefined;
});

test('forty notes of a day are gone over with a few keys; one is put right, one taken out, one undone', {
  timeout: 180_000,
}, async ({ skip }) => {
  if (NO_TERMINAL) skip(NO_TERMINAL);
  const shell = await openPseudoTerminal(80, 24);
  terminal = shell;
  await shell.run('init --name Smokehouse --region GB');
  writeFileSync(join(shell.folder, 'a.txt'), MORNING.replace(/\n/g, ' '));
  writeFileSync(join(shell.folder, 'b.txt'), EVENING.replace(/\n/g, ' '));
  await shell.run('take a.txt b.txt --at 2026-11-24T18:00:00Z');
  let keys = 0;
  /** Presses a key as a person does: once the screen shows what the one before gave. */
  const press = async (key: string, wanted: string | RegExp) => {
    keys += key.length > 1 && !/^[A-Z]/.test(key) ? [...key].length : 1;
    if (/^[A-Z]/.test(key)) shell.press(key);
    else shell.type(key);
    return (await shell.until(wanted)).join('\n');
  };
  shell.call('screen');
  await shell.until('? keys');
  let notes = 0;
  let seen = await press('m', /^Memos$/m);
  seen = await press('Enter', 'to go over');
  for (const memo of ['m2', 'm1']) {
    notes += Number(/ of (\d+) to go over/.exec(seen)?.[1]);
    seen = await press('a', 'agreed with');
    for (let left = count(seen); left > 0; left--) {
      const rest = left === 1 ? /No note is unsure any more/ : new RegExp(`${left - 1} unsure$`, 'm');
      // The last one of the first memo was never said; every other is right.
      seen = await press(memo === 'm2' && left === 1 ? '-' : '1', rest);
    }
    if (memo === 'm2') {
      seen = await press('u', 'undone: the word on note');
      seen = await press('1', /No note is unsure any more/);
      seen = await press('Left', /^m1 /m);
    }
  }
  await shell.until('all gone over');
  expect(notes).toBeGreaterThanOrEqual(40);
  expect(keys).toBeLessThanOrEqual(MOST_KEYS);
  // Misheard words are put right, the sentence is read again, and what it clashed with clashes no more.
  shell.press('Right');
  await shell.until(/^m2 .*all gone over$/m);
  shell.type('h');
  await shell.until('it was said: The smoke chamber is 1420 wide._');
  for (let at = 0; at < 'wide. '.length; at++) shell.press('Left');
  for (let at = 0; at < '420'.length; at++) shell.press('BSpace');
  shell.type('240');
  await shell.until('The smoke chamber is 1240_ wide.');
  shell.press('Enter');
  await shell.until('read again with "1240"');
  await shell.until('nothing clashes');
  shell.type('q');
  await shell.untilReady();
  expect(await shell.run("words 2 'The shelf self is' 'The wall shelf is'")).toBe(0);
  expect(await shell.run('memos 2 --unsure')).toBe(0);
  expect(await shell.run('verify')).toBe(0);
});

/** How many unsure notes are left, as the head says. */
const count = (seen: string) => Number(/, (\d+) unsure/.exec(seen)?.[1] ?? 0);
