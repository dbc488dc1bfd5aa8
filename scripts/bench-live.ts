/**
 * Measures how soon a figure that was said stands on the screen, and a clash with it: the built command in a real terminal,
 * with a microphone that plays the bundled voice as fast as it speaks. Needs tmux; npm run build first.
 * Usage: npm run bench:live -- [--keep FOLDER] [SIZE]   SIZE is a multiple of the made-up build of ten years; without: 1
 * With --keep the build is made in that folder once, and found there again. The clock alone can tell this: on a busy
 * machine it tells how busy it is.
 */
import { execFileSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { decode, SAMPLE_RATE } from '../src/speech/decode.ts';
import { startBundledVoice } from '../src/speech/voice/voice.ts';
import { NO_TERMINAL, openPseudoTerminal, type PseudoTerminal } from '../tests/kit/pseudo-terminal.ts';
import { joined } from '../tests/kit/sound.ts';
import { beganFile, standInMicrophone } from '../tests/kit/stand-in-microphone.ts';
import { makeBuild } from './bench/made-builds.ts';
import { atMost, type Promised, tellPromises } from './bench/promises.ts';

const CLI = join(import.meta.dirname, '../dist/cli.js');

/** Promised from the end of the last word until the figure stands there, in seconds. */
const LIMIT = 1.5;

/** What stands in the project before, and clashes with the last that is said. */
const BOUND = 'The hatch must be at most 600 mm wide.';

/** Each tells of a thing of its own: its name above the large figure is another then. The recogniser knows these words. */
const SAID: readonly string[] = [
  'The window is sixty two centimeters wide.',
  'The table is seventy four centimeters high.',
  'The beam is eleven feet long.',
  'The drawer is sixteen inches wide.',
  'The cupboard is fifty five centimeters deep.',
  'The mast is nine feet long.',
  'The locker is seven hundred and thirty five millimeters wide.',
  'The hatch is six hundred and forty millimeters wide.',
];
const BEFORE_SECONDS = 4;
const BETWEEN_SECONDS = 4;
/** The row of the recording screen that names the thing of the large figure. */
const NAME_ROW = 3;
/** Below this a sample is no word: the voice falls silent by steps. */
const SILENT = 0.01;

interface Talk {
  readonly sound: Int16Array;
  /** Where the last word of each sentence ends, in seconds. */
  readonly ends: readonly number[];
}

async function talk(): Promise<Talk> {
  const voice = startBundledVoice();
  try {
    const parts: Float32Array[] = [new Float32Array(BEFORE_SECONDS * SAMPLE_RATE)];
    const ends: number[] = [];
    let at = BEFORE_SECONDS * SAMPLE_RATE;
    for (const text of SAID) {
      const file = await voice.speak(text);
      if (file === undefined) throw new Error('the bundled voice does not speak');
      const spoken: Float32Array[] = [];
      for await (const part of decode(file)) spoken.push(part);
      const whole = joined(spoken);
      ends.push((at + whole.findLastIndex((sample) => Math.abs(sample) > SILENT)) / SAMPLE_RATE);
      parts.push(whole, new Float32Array(BETWEEN_SECONDS * SAMPLE_RATE));
      at += whole.length + BETWEEN_SECONDS * SAMPLE_RATE;
    }
    return { sound: Int16Array.from(joined(parts), (sample) => Math.round(sample * 32_767)), ends };
  } finally {
    voice.stop();
  }
}

/** A shell with the talking microphone, in a copy of the made-up build. */
async function openShell(build: string, sound: Int16Array): Promise<PseudoTerminal> {
  const shell = await openPseudoTerminal(80, 30);
  cpSync(build, shell.folder, { recursive: true });
  shell.type(`PATH='${standInMicrophone(shell.folder, { sound })}'; clear`);
  shell.press('Enter');
  await shell.untilReady();
  writeFileSync(join(shell.folder, 'bound.txt'), BOUND);
  if ((await shell.run('take bound.txt')) !== 0) throw new Error('the bound was not taken in');
  return shell;
}

interface Seen {
  /** Seconds from the last word until its figure stood there; absent where nothing new ever stood. */
  readonly figures: readonly (number | undefined)[];
  readonly clash: number | undefined;
  readonly names: readonly string[];
}

/** Records, and looks at the screen until the talk is over. */
async function record(shell: PseudoTerminal, { sound, ends }: Talk): Promise<Seen> {
  shell.call('');
  await shell.until(/^Memos$/m);
  shell.type('r');
  await shell.until(/^RECORDING/m);
  const began = Number(readFileSync(beganFile(shell.folder), 'utf8'));
  const seconds = () => (Date.now() - began) / 1000;
  const figures: (number | undefined)[] = ends.map(() => undefined);
  const names: string[] = [];
  let clash: number | undefined;
  let before = shell.rows()[NAME_ROW] ?? '';
  while (seconds() < sound.length / SAMPLE_RATE) {
    const rows = shell.rows();
    const name = rows[NAME_ROW] ?? '';
    const now = seconds();
    // What was said last of all that is over: a figure that comes in the middle of the next belongs to the one before.
    const said = ends.findLastIndex((end) => end <= now);
    if (name !== before && said >= 0) {
      before = name;
      names.push(name);
      figures[said] ??= now - (ends[said] ?? 0);
    }
    if (clash === undefined && rows.some((row) => row.startsWith('CLASH')) && said >= 0)
      clash = now - (ends[said] ?? 0);
    await new Promise((resolve) => setTimeout(resolve, 10));
  }
  shell.type('q');
  await shell.untilReady();
  return { figures, clash, names };
}

async function measure(build: string, size: number): Promise<readonly Promised[]> {
  const said = await talk();
  const shell = await openShell(build, said.sound);
  try {
    const { figures, clash, names } = await record(shell, said);
    for (const [index, text] of SAID.entries())
      console.log(`${(figures[index]?.toFixed(2) ?? 'never').padStart(6)} s  ${text}`);
    console.log(`names that stood there: ${names.join(', ')}`);
    const heard = figures.filter((took) => took !== undefined).sort((a, b) => a - b);
    const middle = heard[Math.floor(heard.length / 2)] ?? Number.NaN;
    const count = `the slowest of ${SAID.length}, ${heard.length} heard; in the middle ${middle.toFixed(2)} s`;
    const slowest = heard.length < SAID.length ? Number.POSITIVE_INFINITY : Math.max(...heard);
    const project = size === 1 ? 'ten years' : `${size} of ten years`;
    return [
      atMost(`last word to large figure, ${project}`, slowest, LIMIT, 's', count),
      atMost(`last word to clash, ${project}`, clash ?? Number.POSITIVE_INFINITY, LIMIT, 's'),
    ];
  } finally {
    shell.close();
  }
}

const words = process.argv.slice(2);
const keep = words.includes('--keep') ? words[words.indexOf('--keep') + 1] : undefined;
const size = Number(
  words.find((word, index) => !word.startsWith('--') && words[index - 1] !== '--keep') ?? 1,
);
if (NO_TERMINAL) console.log(NO_TERMINAL);
else {
  const folder = keep ?? mkdtempSync(join(tmpdir(), 'bench-live-'));
  try {
    const build = join(folder, String(size));
    mkdirSync(folder, { recursive: true });
    makeBuild(build, size);
    // A build that was never opened is worked through by the first call: longer than a recording waits.
    execFileSync(process.execPath, [CLI, '--project', build, 'next'], { stdio: 'ignore' });
    tellPromises(await measure(build, size));
  } finally {
    if (keep === undefined) rmSync(folder, { recursive: true, force: true });
  }
}
