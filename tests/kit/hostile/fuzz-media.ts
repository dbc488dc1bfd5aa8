/**
 * Decodes recordings whose bytes were spoilt at random, in a process of its own: what hangs, crashes or grows does so here.
 * Prints what came of it as JSON. Arguments: a seed, how many, and the folder with the whole recordings.
 */
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Problem } from '../../../src/problem.ts';
import { decode, probe } from '../../../src/speech/decode.ts';
import { chance as chanceOf } from '../sound.ts';
import { spoilt } from './spoilt-bytes.ts';

export interface FuzzedMedia {
  /** How often each code came; `ok` is a file that was decoded to its end. */
  readonly codes: Readonly<Record<string, number>>;
  /** What was thrown that is no Problem, by file and way of spoiling. */
  readonly thrown: readonly string[];
  readonly worstMs: number;
  readonly mostSeconds: number;
  readonly peakMegabytes: number;
}

const [seed = '1', count = '50', whole = ''] = process.argv.slice(2);
const RATE = 16_000;
const chance = chanceOf(Number(seed));
const folder = mkdtempSync(join(tmpdir(), 'hearwright-fuzz-'));
const names = readdirSync(whole).filter((name) => /^(?:memo|picture-25)[.-].*(?<!\.txt)$/.test(name));
const codes: Record<string, number> = {};
const thrown: string[] = [];
let worstMs = 0;
let mostSeconds = 0;

for (let run = 0; run < Number(count); run++) {
  const name = names[Math.floor(chance() * names.length)] ?? '';
  const { how, bytes } = spoilt(readFileSync(join(whole, name)), chance);
  const file = join(folder, name);
  writeFileSync(file, bytes);
  // The one who looks on knows by it which file the process was at when it hung.
  process.stderr.write(`${run} ${name}: ${how}\n`);
  const began = performance.now();
  const code = await heard(file).catch((error: Error) => {
    if (error instanceof Problem) return error.code;
    thrown.push(`${run} ${name}: ${how}: ${error.name}: ${error.message}`);
    return 'thrown';
  });
  codes[code] = (codes[code] ?? 0) + 1;
  worstMs = Math.max(worstMs, performance.now() - began);
}
rmSync(folder, { recursive: true, force: true });
const peakMegabytes = process.resourceUsage().maxRSS / 1024;
console.log(JSON.stringify({ codes, thrown, worstMs, mostSeconds, peakMegabytes } satisfies FuzzedMedia));

async function heard(file: string): Promise<string> {
  const facts = await probe(file);
  if (!facts.ok) throw facts.problem;
  let samples = 0;
  for await (const piece of decode(file)) samples += piece.length;
  mostSeconds = Math.max(mostSeconds, samples / RATE);
  return 'ok';
}
