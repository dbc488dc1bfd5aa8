import { spawnSync } from 'node:child_process';
import { resolve } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { progressLine } from '../../src/cli/progress.ts';
import { openWorkplace, type Workplace } from '../kit/command-line.ts';

const CLI = resolve('dist/cli.js');
// Debian's bsdutils; elsewhere the tests that need a terminal are skipped.
const hasScript = spawnSync('script', ['--version']).status === 0;

let place: Workplace;
beforeAll(() => {
  place = openWorkplace();
  place.call(['init', '--name', 'Barn']);
});
afterAll(() => place.remove());

/** Runs one call with a terminal as its output. */
function onTerminal(words: string, env: Readonly<Record<string, string>>): string {
  const { stdout } = spawnSync('script', ['-qec', `"${process.execPath}" "${CLI}" ${words}`, '/dev/null'], {
    cwd: place.folder,
    encoding: 'utf8',
    env: { PATH: process.env.PATH ?? '', TERM: 'xterm', ...env },
  });
  return stdout;
}

test.skipIf(!hasScript)('lines stand out on a terminal, and not where NO_COLOR is set or nothing can', () => {
  place.file('a.txt', 'Hello hello.');
  place.call(['take', 'a.txt', '--at', '2026-02-02T08:00Z']);
  expect(onTerminal('ask hello', {})).toContain('\u001b[1mSaid\u001b[22m');
  expect(onTerminal('ask hello', { NO_COLOR: '1' })).not.toContain('\u001b');
  expect(onTerminal('ask hello', { TERM: 'dumb' })).not.toContain('\u001b');
  expect(place.call(['ask', 'hello']).out).not.toContain('\u001b');
});

test('the progress line has stage, share, time left and words, and never more than the columns', () => {
  const progress = {
    stage: 'transcribing',
    fraction: 0.5,
    remainingSeconds: 11.2,
    words: 'the\u001b[2J keel',
  } as const;
  expect(progressLine('a.m4a', progress, 100)).toBe(
    'a.m4a  transcribing  ██████████░░░░░░░░░░ 50 %  12 s left  the keel'.replace(/ {2}/g, ' '),
  );
  expect([...progressLine('a.m4a', progress, 30)].length).toBeLessThanOrEqual(30);
  expect(progressLine('a.m4a', { stage: 'decoding', fraction: 7 }, 100)).toContain(' 100 %');
});

/** Processor time of one call in microseconds, told by the call itself: a busy machine does not lengthen it much. */
function effortOf(words: readonly string[]): number {
  const telling = `process.on('exit', () => { const { user, system } = process.cpuUsage(); process.stderr.write('effort ' + (user + system)); });`;
  const { stderr } = spawnSync(
    process.execPath,
    ['--import', `data:text/javascript,${encodeURIComponent(telling)}`, ...words],
    { encoding: 'utf8' },
  );
  return Number(/effort (\d+)/.exec(stderr)?.[1]);
}

test('--help costs little more than Node itself', () => {
  const least = (words: readonly string[]) => Math.min(...Array.from({ length: 7 }, () => effortOf(words)));
  const ratio = least([CLI, '--help']) / least(['-e', '0']);
  expect(ratio).toBeGreaterThan(1);
  expect(ratio).toBeLessThanOrEqual(2.5);
});
