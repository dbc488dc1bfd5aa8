/**
 * No call reaches a network: the chain from sound to pages runs in a network namespace without a single route, and the
 * system is asked which sockets were opened meanwhile. tests/dependencies.test.ts looks at the code for the same.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync, statSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { expect, test } from 'vitest';
import { openWorkplace } from './kit/command-line.ts';
import { microphoneSound, standInMicrophone } from './kit/stand-in-microphone.ts';

const CLI = resolve('dist/cli.js');
const SAMPLE = resolve('samples/03-friday-morning.mp3');
const TALK = resolve('tests/speech/fixtures/memo.flac');

/** Without a network of its own nothing is shown by nothing being reached. */
const APART = ['unshare', '--net', '--map-root-user'] as const;

function whyNot(): string | undefined {
  if (process.platform !== 'linux') return 'network namespaces are of Linux';
  if (!existsSync('models')) return 'the recogniser is not here';
  if (spawnSync(APART[0], [...APART.slice(1), 'true']).status !== 0)
    return 'no right to make a network namespace here';
  if (spawnSync('strace', ['-o', '/dev/null', 'true']).status !== 0)
    return 'strace is not installed, or may not trace here';
  return undefined;
}

/** Everything that uses sound, a project, or the time; the screen draws what these read. */
const CHAIN = [
  ['init', '--name', 'Barge', '--region', 'GB'],
  ['take', 'talk.mp3', 'note.txt', '--at', '2026-03-02T10:00:00Z'],
  ['listen', '--for', '4'],
  ['figures'],
  ['findings'],
  ['tasks'],
  ['ask', 'how', 'wide', 'is', 'the', 'hatch'],
  ['work', 'out', 'clearance', 'opening=706 mm', 'part=700 mm', 'gap=2 mm'],
  ['journal', '2026-03-02', '--out', 'day.md'],
  ['next', '--out', 'next.md'],
  ['episode', '--out', 'episode.md'],
  ['calendar', '--out', 'build.ics'],
  ['pages', '--out', 'site'],
  ['subtitles', '1', '--out', 'talk.vtt'],
  ['backup', 'barge.backup'],
  ['restore', 'barge.backup', '--into', 'again'],
  ['export', '--json'],
  ['verify'],
] as const;

const REASON = whyNot();
const IS_NETWORK = /AF_INET|AF_PACKET|AF_NETLINK|sin6?_port/;

/** Runs a program apart from every network; gives what it printed, and the calls about sockets of a network. */
function apart(folder: string, env: Readonly<Record<string, string>>, words: readonly string[]) {
  const trace = join(folder, 'trace.txt');
  const watching = ['strace', '-f', '--seccomp-bpf', '-qq', '-e', 'trace=socket,connect,sendto,bind'];
  const { stdout, stderr, status } = spawnSync(
    APART[0],
    [...APART.slice(1), ...watching, '-o', trace, ...words],
    { cwd: folder, encoding: 'utf8', env: { HOME: folder, TZ: 'UTC', ...env }, maxBuffer: 1 << 26 },
  );
  const network = readFileSync(trace, 'utf8')
    .split('\n')
    .filter((line) => IS_NETWORK.test(line));
  return { stdout, stderr, status, network };
}

test('the chain from sound to pages opens no socket of a network, and needs none', {
  timeout: 300_000,
}, async (context) => {
  if (REASON !== undefined) return context.skip(REASON);
  const place = openWorkplace();
  try {
    const whole = readFileSync(SAMPLE);
    place.file('talk.mp3', whole.subarray(0, whole.length / 4));
    place.file('note.txt', 'The hatch is 710 wide. Tomorrow I need to order the hinges.');
    const PATH = standInMicrophone(place.folder, { sound: await microphoneSound(TALK), pace: 2 });
    const lines = CHAIN.map(
      (words) => `"$NODE" "$CLI" ${words.map((word) => `'${word}'`).join(' ')} || exit 1`,
    );
    place.file('chain.sh', `${lines.join('\n')}\n`);
    const run = apart(place.folder, { PATH, NODE: process.execPath, CLI }, ['sh', 'chain.sh']);
    expect([run.stderr, run.status]).toEqual([expect.not.stringContaining('hearwright:'), 0]);
    expect(run.stdout).toContain('Whole: ');
    expect(run.network).toEqual([]);
  } finally {
    place.remove();
  }
});

test('a connection that a child of a child tries would be seen', (context) => {
  if (REASON !== undefined) return context.skip(REASON);
  const place = openWorkplace();
  try {
    place.file('reach.cjs', "require('net').connect(9, '127.0.0.1').on('error', () => {});");
    place.file('start.cjs', "require('child_process').fork('./reach.cjs');");
    const env = { PATH: process.env.PATH ?? '' };
    const { network } = apart(place.folder, env, [process.execPath, 'start.cjs']);
    expect(network.join('\n')).toMatch(/connect\(.*127\.0\.0\.1/);
  } finally {
    place.remove();
  }
});

test('the project is its owner`s alone: folders 0700, database, recordings and originals 0600', async (context) => {
  if (process.platform === 'win32') return context.skip('Windows has no such rights');
  const place = openWorkplace();
  try {
    const modes: Record<string, number> = {};
    const look = (...path: readonly string[]) => {
      const file = join(place.folder, '.hearwright', ...path);
      if (existsSync(file)) modes[path.join('/')] = statSync(file).mode & 0o777;
    };
    // A person whose files everybody may write.
    const call = (words: string) => place.shell(`umask 000; hearwright ${words}`, 'utf8');
    expect(call('init --name Barge').code).toBe(0);
    place.file('note.txt', 'The hatch is 710 wide.');
    expect(call('take note.txt').code).toBe(0);
    expect(call('journal --out day.md').code).toBe(0);
    expect(call('pages --out site').code).toBe(0);
    for (const name of ['', 'originals', 'project.db', 'pages.json', 'sites.json']) look(name);
    expect(modes).toEqual({
      '': 0o700,
      originals: 0o700,
      'project.db': 0o600,
      'pages.json': 0o600,
      'sites.json': 0o600,
    });
  } finally {
    place.remove();
  }
});
