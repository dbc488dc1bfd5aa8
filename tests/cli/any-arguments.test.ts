/** Any words behind any command: a clear answer, an exit code of the contract, and a project that is whole. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Command } from 'commander';
import fc from 'fast-check';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { buildProgram } from '../../src/cli/program.ts';
import { runCommandLine } from '../../src/cli/run.ts';

/** They wait for keys, sound or files, or build a program. */
const WAITING = new Set(['screen', 'listen', 'watch', 'play', 'hear', 'set-up']);
/** No word is a path out of the folder: calls may write where they are told to. */
const WORDS = [
  ...[
    '',
    ' ',
    '-',
    '--',
    '---',
    '-1',
    '0',
    '1e999',
    'NaN',
    '-0.5',
    '9'.repeat(40),
    'm1',
    'm1.f1',
    'm1.t1',
    'm9.x',
  ],
  ...[
    'a.txt',
    'm1.c1',
    'b.part',
    '915 mm',
    '1/0 mm',
    '0 mm',
    '5 furlongs',
    'bench height = 915 mm',
    'x = x + 1',
    '=',
  ],
  ...[
    '2026-02-30',
    '2026-05-03',
    'Friday',
    '0000-00-00',
    '2026-W99',
    '2026-05-03T25:00',
    '+99:99:99',
    'keep-old',
  ],
  ...[
    'bench',
    'the bench top',
    'done',
    'metric',
    'GB',
    'ZZ',
    'constructor',
    '__proto__',
    'toString',
    'hasOwnProperty',
  ],
  ...[
    '\u001b[31mred',
    '\u0007',
    '\u202egnp',
    'a\nb',
    '\ud800',
    '🪚',
    'ß'.repeat(300),
    '$(touch owned)',
    '`id`',
    ';',
    "'",
  ],
];
const CONTROLS = /[^\P{Cc}\n\t]|[\u202a-\u202e\u2066-\u2069]/u;

interface Callable {
  readonly path: readonly string[];
  readonly options: readonly string[];
}

/** Every command and what belongs to it, as the program itself lists them. */
function callables(command: Command, path: readonly string[] = []): readonly Callable[] {
  return command.commands
    .filter((one) => !WAITING.has(one.name()))
    .flatMap((one) => {
      const here = [...path, one.name()];
      return [
        { path: here, options: one.options.flatMap(({ long }) => (long ? [long] : [])) },
        ...callables(one, here),
      ];
    });
}

let folder = '';
const before = process.cwd();
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'hearwright-'));
  process.chdir(folder);
  writeFileSync('a.txt', 'The bench is 900 mm high. I need to sand the lid by Friday. The oak came.');
  await call(['init']);
  await call(['take', 'a.txt', '--at', '2026-05-01T10:00:00Z']);
}, 120_000);
afterAll(() => {
  process.chdir(before);
  process.exitCode = 0;
  rmSync(folder, { recursive: true, force: true });
});

interface Answer {
  readonly out: string;
  readonly err: string;
  readonly code: unknown;
}

/** One call in this process, with what it prints. */
async function call(words: readonly string[]): Promise<Answer> {
  const said = { out: '', err: '' };
  const catching = (stream: NodeJS.WriteStream, into: 'out' | 'err') => {
    const listening = stream.listeners('error');
    const spy = vi.spyOn(stream, 'write').mockImplementation((text) => {
      said[into] += String(text);
      return true;
    });
    return () => {
      spy.mockRestore();
      for (const one of stream.listeners('error'))
        if (!listening.includes(one)) stream.off('error', one as () => void);
    };
  };
  const free = [catching(process.stdout, 'out'), catching(process.stderr, 'err')];
  try {
    await runCommandLine(words);
  } finally {
    for (const one of free) one();
  }
  return { ...said, code: process.exitCode };
}

const word = fc.oneof(
  fc.constantFrom(...WORDS),
  fc.string({ maxLength: 12 }).filter((one) => !/[\\/.~]/.test(one)),
);
const words = fc.constantFrom(...callables(buildProgram())).chain(({ path, options }) =>
  fc
    .array(options.length === 0 ? word : fc.oneof(word, fc.constantFrom(...options, '--json')), {
      maxLength: 5,
    })
    .map((more) => [...path, ...more]),
);

test('any words get a plain answer with an exit code of the contract, and the project stays whole', async () => {
  await fc.assert(
    fc.asyncProperty(words, async (asked) => {
      const { out, err, code } = await call(asked);
      expect([0, 1, 2, 3, 4], err).toContain(code);
      expect(err).not.toContain('something unexpected went wrong');
      expect(CONTROLS.test(err), JSON.stringify(err)).toBe(false);
      // A calendar's lines end as RFC 5545 has them.
      expect(CONTROLS.test(out.replaceAll('\r\n', '\n')), JSON.stringify(out)).toBe(false);
      if (code !== 0) expect(err + out).not.toBe('');
    }),
    { numRuns: 300 },
  );
  const { out, code } = await call(['verify']);
  expect([out, code]).toEqual([expect.stringMatching(/^Whole: \d+ events/), 0]);
}, 120_000);
