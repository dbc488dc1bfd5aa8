import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { probe } from '../../src/speech/decode.ts';
import { spreadFootage } from '../kit/spread-footage.ts';

const GIGABYTE = 1e9;
const SMALL = 'tests/speech/fixtures/memo.mp4';
const canWeigh = existsSync('/proc/self/io');

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'hearwright-footage-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function weigh(
  file: string,
): Readonly<Record<'samples' | 'loudness' | 'peakKilobytes' | 'readBytes', number>> {
  const done = spawnSync(process.execPath, ['--import', 'tsx', 'tests/kit/weigh-decoding.ts', file], {
    encoding: 'utf8',
  });
  return JSON.parse(done.stdout);
}

test.skipIf(!canWeigh)(
  'footage of 4.3 GB gives its sound in 300 MB of memory, and only the sound is read (skipped without /proc)',
  async () => {
    const large = join(folder, 'large.mp4');
    // Beyond 4 GiB no offset fits into 32 bits.
    spreadFootage(SMALL, large, 4.3 * GIGABYTE);
    expect(statSync(large).size).toBeGreaterThan(2 ** 32);
    const facts = await probe(large);
    expect(facts).toMatchObject({
      ok: true,
      value: { format: 'MP4, AAC', createdAt: '2026-03-04T05:06:07Z' },
    });
    const small = weigh(SMALL);
    const heard = weigh(large);
    expect(heard.samples).toBe(small.samples);
    expect(heard.loudness).toBeCloseTo(small.loudness, 6);
    expect(heard.peakKilobytes).toBeLessThan(300_000);
    // All of the small file is 38 kB; loading the decoders reads some megabytes of code in both.
    expect(heard.readBytes - small.readBytes).toBeLessThan(20_000_000);
  },
  120_000,
);
