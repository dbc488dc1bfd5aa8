/** Decodes the file named on the command line and prints what it took, as JSON. Run in a process of its own. */
import { readFileSync } from 'node:fs';
import { decode } from '../../src/speech/decode.ts';

const fieldOf = (file: string, name: string): number =>
  Number(new RegExp(`^${name}:\\s*(\\d+)`, 'm').exec(readFileSync(file, 'utf8'))?.[1]);

const before = fieldOf('/proc/self/io', 'rchar');
let samples = 0;
let sum = 0;
for await (const part of decode(process.argv[2] ?? '')) {
  samples += part.length;
  for (const sample of part) sum += Math.abs(sample);
}
const peakKilobytes = fieldOf('/proc/self/status', 'VmHWM');
const readBytes = fieldOf('/proc/self/io', 'rchar') - before;
console.log(JSON.stringify({ samples, loudness: sum / samples, peakKilobytes, readBytes }));
