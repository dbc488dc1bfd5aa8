import { expect, test } from 'vitest';
import { openRawCommand } from '../../../src/speech/microphone/raw-command.ts';

const SECONDS = 1;
/** Gives its sound at once, less than a pipe holds, and is gone. */
const GIVES_AND_GOES = `
const bytes = Buffer.alloc(${SECONDS} * 32000);
for (let at = 0; at < bytes.length / 2; at++) bytes.writeInt16LE(at % 30000, at * 2);
process.stdout.write(bytes, () => {
  console.error('read error: No such device');
  process.exit(1);
});`;

test('what a microphone gave before it was gone is there, however late it is asked for', async () => {
  const opened = await openRawCommand(
    { program: process.execPath, words: ['-e', GIVES_AND_GOES] },
    'the stand-in',
  );
  if (!opened.ok) throw opened.problem;
  const { sound, ended } = opened.value;
  await new Promise((resolve) => setTimeout(resolve, 1_500));
  const parts: number[] = [];
  for await (const part of sound) for (const sample of part) parts.push(sample);
  expect(parts.length).toBe(SECONDS * 16_000);
  expect(parts.every((sample, at) => sample === at % 30_000)).toBe(true);
  expect(await ended).toEqual({ kind: 'lost', reason: 'read error: No such device' });
});
