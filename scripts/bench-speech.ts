/**
 * Measures hearing: words, numbers and notes by voice and noise, before and after repair; speed and peak memory of the
 * built command. Needs Debian's flite, festival with festvox-us-slt-hts and festvox-kdlpc16k, espeak-ng and ffmpeg; what
 * is absent is named and left out.
 * Usage: npm run build && npm run bench:speech -- [--words | --samples | --speed] [--corpus FOLDER] [--stories N]
 * [--memos N] [--heard] [--processor]. What was heard is kept in the system's temporary folder: only the first run takes
 * hours. With --processor the promise of speed is held to the processor's time, of both processes and all their threads:
 * on a busy machine the clock tells how busy it is.
 */
import { execFileSync, spawn, spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { foldSpeech, numbersIn } from '../tests/kit/fold-speech.ts';
import { sumErrors, type WordErrors, wordErrors } from '../tests/kit/word-error-rate.ts';
import { atMost, type Promised, tellPromises } from './bench/promises.ts';
import { measureWords } from './hearing/bench-words.ts';
import { speak, VOICES, type Voice, whyNoVoice } from './hearing/voices.ts';

const root = join(import.meta.dirname, '..');
const work = mkdtempSync(join(tmpdir(), 'bench-speech-'));
const texts = readdirSync(join(root, 'samples/texts')).map((name) => join(root, 'samples/texts', name));
const librivox = '/usr/share/pocketsphinx/test/data/librivox';

interface Run {
  readonly text: string;
  readonly wallSeconds: number;
  readonly soundSeconds: number;
  /** Processor time of both processes: on a busy machine it tells more than the clock. */
  readonly processorSeconds: number;
  /** Highest resident memory of the command and of the recogniser, each at its own peak, in MB. */
  readonly commandMb: number;
  readonly recogniserMb: number;
  /** The most that both held at one time, in MB. */
  readonly togetherMb: number;
}

/** What was seen of a process and its children. */
interface Seen {
  readonly peaks: Map<number, number>;
  readonly spent: Map<number, number>;
  together: number;
}

/** Takes one file into a fresh project and looks at the processes meanwhile. */
async function take(file: string): Promise<Run> {
  const project = mkdtempSync(join(work, 'project-'));
  const cli = (...args: string[]) => [join(root, 'dist/cli.js'), '--project', project, ...args];
  execFileSync('node', cli('init'));
  const started = performance.now();
  const child = spawn('node', cli('take', file), { stdio: 'ignore' });
  const seen: Seen = { peaks: new Map(), spent: new Map(), together: 0 };
  const { peaks, spent } = seen;
  const watch = setInterval(() => watchTree(child.pid ?? 0, seen), 50);
  const exitCode = await new Promise((resolve) => child.on('close', resolve));
  clearInterval(watch);
  if (exitCode !== 0) throw new Error(`take ${file} ended with ${exitCode}`);
  const wallSeconds = (performance.now() - started) / 1000;
  const { memos } = JSON.parse(execFileSync('node', cli('export', '--json'), { maxBuffer: 1e9 }).toString());
  const commandMb = peaks.get(child.pid ?? 0) ?? 0;
  peaks.delete(child.pid ?? 0);
  rmSync(project, { recursive: true, force: true });
  return {
    text: memos[0].text,
    wallSeconds,
    soundSeconds: soundSeconds(file),
    processorSeconds: [...spent.values()].reduce((sum, seconds) => sum + seconds, 0),
    commandMb,
    recogniserMb: Math.max(0, ...peaks.values()),
    togetherMb: seen.together,
  };
}

function watchTree(pid: number, seen: Seen): void {
  const { peaks, spent } = seen;
  try {
    let now = 0;
    const children = readFileSync(`/proc/${pid}/task/${pid}/children`, 'utf8').split(' ').filter(Boolean);
    for (const one of [pid, ...children.map(Number)]) {
      const status = readFileSync(`/proc/${one}/status`, 'utf8');
      const peak = /VmHWM:\s+(\d+)/.exec(status);
      if (peak) peaks.set(one, Number(peak[1]) / 1024);
      now += Number(/VmRSS:\s+(\d+)/.exec(status)?.[1] ?? 0) / 1024;
      // Fields 14 and 15, counted after the name in brackets; a hundred ticks to the second.
      const fields = readFileSync(`/proc/${one}/stat`, 'utf8')
        .replace(/^.*\) /, '')
        .split(' ');
      spent.set(one, (Number(fields[11]) + Number(fields[12])) / 100);
    }
    seen.together = Math.max(seen.together, now);
  } catch {
    // The process ended between two looks.
  }
}

function soundSeconds(file: string): number {
  const args = ['-v', 'error', '-show_entries', 'format=duration', '-of', 'csv=p=0', file];
  return Number(execFileSync('ffprobe', args).toString());
}

async function voiceErrors(voice: Voice): Promise<void> {
  const { name } = voice;
  const why = whyNoVoice(voice);
  if (why) return console.log(`${name.padEnd(22)} skipped: ${why}`);
  const words: WordErrors[] = [];
  const numbers: WordErrors[] = [];
  for (const text of texts.slice(0, 4)) {
    const out = join(work, 'voice.wav');
    speak(voice, text, out);
    addErrors(readFileSync(text, 'utf8'), (await take(out)).text, words, numbers);
  }
  report(name, words, numbers);
}

async function publicErrors(): Promise<void> {
  if (!existsSync(librivox)) return console.log('LibriVox clips          skipped: no pocketsphinx-testdata');
  const words: WordErrors[] = [];
  const lines = readFileSync(join(librivox, 'transcription'), 'utf8').split('\n');
  for (const clip of readdirSync(librivox).filter((name) => name.endsWith('.wav'))) {
    const line = lines.find((found) => found.includes(`(${clip.slice(0, -4)})`)) ?? '';
    addErrors(line.replace(/<\/?s>|\(.*\)/g, ''), (await take(join(librivox, clip))).text, words, []);
  }
  report('LibriVox, five clips', words, []);
}

function addErrors(spoken: string, heard: string, words: WordErrors[], numbers: WordErrors[]): void {
  const [reference, folded] = [foldSpeech(spoken), foldSpeech(heard)];
  words.push(wordErrors(reference, folded));
  numbers.push(wordErrors(numbersIn(reference), numbersIn(folded)));
}

function report(name: string, words: readonly WordErrors[], numbers: readonly WordErrors[]): void {
  const percent = (parts: readonly WordErrors[]) => `${(sumErrors(parts).rate * 100).toFixed(1)} %`;
  const count = numbers.length > 0 ? `, numbers ${percent(numbers)}` : '';
  console.log(`${name.padEnd(22)} words ${percent(words)}${count}`);
}

/** All samples' talk by one voice, one after the other, as one long phone recording. */
async function speed(name: string, repeats: number): Promise<void> {
  const parts: string[] = [];
  for (const [place, text] of texts.entries()) {
    const out = join(work, `part-${place}.wav`);
    execFileSync('flite', ['-voice', 'rms', '-f', text, '-o', out]);
    parts.push(out);
  }
  const list = join(work, 'parts.txt');
  writeFileSync(
    list,
    Array.from({ length: repeats }, () => parts.map((part) => `file '${part}'\n`).join('')).join(''),
  );
  const file = join(work, 'long.m4a');
  const encode = ['-c:a', 'aac', '-ar', '44100', '-b:a', '64k', file];
  execFileSync('ffmpeg', [
    '-nostdin',
    '-v',
    'error',
    '-y',
    '-f',
    'concat',
    '-safe',
    '0',
    '-i',
    list,
    ...encode,
  ]);
  const run = await take(file);
  reportSpeed(name, run);
  promiseOf(name, run);
}

/** Promised of talk: seconds for each second of sound on two cores, and MB at the peak. */
const LIMITS = { perSecond: 0.05, mb: 450 } as const;
const promised: Promised[] = [];

function promiseOf(name: string, run: Run): void {
  const [clock, processor] = [run.wallSeconds, run.processorSeconds].map((s) => s / run.soundSeconds);
  const byProcessor = process.argv.includes('--processor');
  const [taken = 0, other = 0] = byProcessor ? [processor, clock] : [clock, processor];
  promised.push({
    what: `hearing, ${name}`,
    limit: `<= ${LIMITS.perSecond} of real time`,
    measured: `${taken.toFixed(3)} (${other.toFixed(3)} ${byProcessor ? 'by the clock' : 'of the processor'})`,
    kept: taken <= LIMITS.perSecond,
  });
  const parts = `at their own peaks command ${run.commandMb.toFixed(0)}, recogniser ${run.recogniserMb.toFixed(0)}`;
  promised.push(atMost(`memory, ${name}`, run.togetherMb, LIMITS.mb, 'MB', parts));
}

async function quietSpeed(minutes: number): Promise<void> {
  const file = join(work, 'quiet.flac');
  const source = `anoisesrc=a=0.002:c=pink:r=16000:d=${minutes * 60}`;
  execFileSync('ffmpeg', ['-nostdin', '-v', 'error', '-y', '-f', 'lavfi', '-i', source, file]);
  reportSpeed(`${minutes} min without talk`, await take(file));
}

function reportSpeed(name: string, run: Run): void {
  const perSecond = (seconds: number) => (seconds / run.soundSeconds).toFixed(4);
  const memory = `${run.togetherMb.toFixed(0)} MB (${run.commandMb.toFixed(0)} + ${run.recogniserMb.toFixed(0)})`;
  const clock = `${run.soundSeconds.toFixed(0)} s in ${run.wallSeconds.toFixed(1)} s: ${perSecond(run.wallSeconds)}`;
  console.log(`${name.padEnd(22)} ${clock}, processor ${perSecond(run.processorSeconds)}, ${memory}`);
}

const after = (name: string) => {
  const at = process.argv.indexOf(name);
  return at < 0 ? undefined : process.argv[at + 1];
};
const parts = ['--words', '--samples', '--speed'].filter((part) => process.argv.includes(part));
const isAsked = (part: string) => parts.length === 0 || parts.includes(part);
const corpus = after('--corpus');
try {
  if (isAsked('--words'))
    await measureWords({
      ...(corpus === undefined ? {} : { corpus }),
      stories: Number(after('--stories') ?? 2),
      memos: Number(after('--memos') ?? 6),
      heardOnly: process.argv.includes('--heard'),
    });
  if (isAsked('--samples')) {
    for (const voice of VOICES) await voiceErrors(voice);
    await publicErrors();
  }
  if (!isAsked('--speed')) console.log('speed: not asked for');
  else if (spawnSync('which', ['ffmpeg']).status === 0 && spawnSync('which', ['flite']).status === 0) {
    await speed('8 min of talk', 1);
    await speed('a long recording', 4);
    await speed('two hours of talk', 16);
    await quietSpeed(60);
    tellPromises(promised);
  } else console.log('speed: skipped, needs flite and ffmpeg');
} finally {
  rmSync(work, { recursive: true, force: true });
}
