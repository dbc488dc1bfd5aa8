/**
 * Measures the reader on one core and prints each promise with its limit and what was measured.
 * Usage: npm run bench:language -- [--quick]. The general reader of quantities that it is compared with
 * (@microsoft/recognizers-text-suite, MIT) is installed for this bench only.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import type { ReadContext } from '../src/language/notes.ts';
import { readMemo } from '../src/language/pipeline.ts';
import { hostileText, LONG_LINES } from '../tests/kit/hostile-text.ts';
import { type Promised, tellPromises } from './bench/promises.ts';

const quick = process.argv.includes('--quick');
const CONTEXT: ReadContext = { units: 'metric', region: 'GB', recordedAt: '2026-06-10T12:00:00+01:00' };
const samples = join(import.meta.dirname, '../samples/texts');
const memos = readdirSync(samples).map((name) => readFileSync(join(samples, name), 'utf8'));
const countWords = (text: string) => text.split(/\s+/).filter(Boolean).length;
const read = (text: string) => readMemo(text, CONTEXT);

/** Memos one after the other, over and over, up to so many words. */
function talkOf(words: number): string {
  const all = memos.join('\n\n');
  return Array.from({ length: Math.ceil(words / countWords(all)) }, () => all)
    .join('\n\n')
    .split(/(?<=\s)/)
    .slice(0, words)
    .join('');
}

/** Milliseconds of this process's own processor time: other programs on the machine do not count. */
function cost(work: () => void): number {
  const before = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}

const best = (times: number, work: () => void) =>
  Math.min(...Array.from({ length: times }, () => cost(work)));

/** Done over and over until it has got no cheaper for a while, or often enough: what is read first is read cold. */
function warm(work: () => void): number {
  let least = cost(work);
  for (let round = 0, since = 0; round < MOST_ROUNDS && since < ROUNDS_WITHOUT_GAIN; round++) {
    const now = cost(work);
    since = now < least ? 0 : since + 1;
    least = Math.min(least, now);
  }
  return least;
}
const MOST_ROUNDS = 25;
const ROUNDS_WITHOUT_GAIN = 4;

const rows: Promised[] = [];
/** Said at once as well: all of it takes a quarter of an hour, and what was measured is not to be lost with it. */
function tell(what: string, limit: string, measured: string, kept: boolean): void {
  rows.push({ what, limit, measured, kept });
  process.stderr.write(`${what}: ${measured} (${limit})\n`);
}

const short = talkOf(20_000);
const wordsPerSecond = (ms: number) => countWords(short) / (ms / 1000);
const inWords = (perSecond: number) => Math.round(perSecond).toLocaleString('en');
// 200 words: what a memo has, in a process that has read nothing yet.
const cold = 200 / (cost(() => read(talkOf(200))) / 1000);
const first = wordsPerSecond(cost(() => read(short)));
const shortMs = warm(() => read(short));
const perSecond = wordsPerSecond(shortMs);
tell(
  'words a second, whole pipeline',
  '>= 20,000',
  `${inWords(perSecond)} (the first 20,000 words ${inWords(first)}, a memo of 200 in a new process ${inWords(cold)})`,
  perSecond >= 20_000,
);

const long = talkOf(200_000);
const longMs = best(quick ? 1 : 3, () => read(long));
const growth = longMs / shortMs;
tell(
  '200,000 words against 20,000',
  '8 to 12 times',
  `${growth.toFixed(1)} times`,
  growth > 8 && growth < 12,
);

const { recognizeCurrency, recognizeDateTime, recognizeDimension, recognizeTemperature } = (
  await import('@microsoft/recognizers-text-suite')
).default;
const READERS = [recognizeDimension, recognizeTemperature, recognizeCurrency, recognizeDateTime];
const general = (texts: readonly string[]) => {
  for (const text of texts) for (const recognise of READERS) recognise(text, 'en-us');
};
const sentences = memos.flatMap((memo) => memo.split(/(?<=[.!?])\s+/));
general(sentences.slice(0, 20));
// It keeps what it read last: every text is given to it once.
const wordsOfMemos = countWords(memos.join(' '));
const byMemo = wordsOfMemos / (cost(() => general(memos)) / 1000);
const bySentence = wordsOfMemos / (cost(() => general(sentences)) / 1000);
const times = perSecond / byMemo;
tell(
  'against recognizers-text, by memo',
  '>= 30 times',
  `${times.toFixed(0)} times (${Math.round(byMemo)} words/s)`,
  times >= 30,
);
rows.push({
  what: 'against recognizers-text, by sentence',
  measured: `${(perSecond / bySentence).toFixed(0)} times (${Math.round(bySentence)} words/s)`,
});

for (const [name, text] of LONG_LINES) {
  const taken = quick ? text.slice(0, 200_000) : text;
  const ms = cost(() => read(taken));
  const seconds = (ms / 1000).toFixed(1);
  tell(`${(taken.length / 1e6).toFixed(1)} MB of ${name}`, '< 60 s', `${seconds} s`, ms < 60_000);
}

const texts = fc.sample(hostileText, { numRuns: quick ? 5000 : 100_000, seed: 20261125 });
let slowest = 0;
let slow = 0;
let thrown = 0;
for (const text of texts) {
  const once = () => {
    try {
      read(text);
    } catch {
      thrown++;
    }
  };
  let ms = cost(once);
  // A collection of garbage falls on some text or other; what is slow three times is slow itself.
  if (ms > 50) ms = Math.min(ms, cost(once), cost(once));
  if (ms > 50) slow++;
  slowest = Math.max(slowest, ms);
}
const count = texts.length.toLocaleString('en');
tell(`${count} hostile texts: thrown`, '0', String(thrown), thrown === 0);
tell(`${count} hostile texts: over 50 ms`, '0', `${slow}; slowest ${slowest.toFixed(0)} ms`, slow === 0);

tellPromises(rows);
