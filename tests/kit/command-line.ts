/** Runs the built command line as a person's shell would. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const CLI = join(dirname(fileURLToPath(import.meta.url)), '..', '..', 'dist', 'cli.js');

export interface CallResult {
  readonly out: string;
  readonly err: string;
  readonly code: number | null;
}

export interface CallOptions {
  readonly input?: string;
  readonly env?: Readonly<Record<string, string>>;
}

export interface Workplace {
  readonly folder: string;
  /** Writes a file into the folder and gives its name back. */
  file(name: string, bytes: string | Uint8Array): string;
  /** Runs one call with the folder as the current one, in UTC. */
  call(words: readonly string[], options?: CallOptions): CallResult;
  /** Runs a line in the system's shell, in which `hearwright` is the command. The line is written as bytes of `encoding`. */
  shell(line: string, encoding: BufferEncoding): CallResult;
  remove(): void;
}

/** A folder of its own in the system's temporary folder. */
export function openWorkplace(): Workplace {
  const folder = mkdtempSync(join(tmpdir(), 'hearwright-'));
  return {
    folder,
    file(name, bytes) {
      writeFileSync(join(folder, name), bytes);
      return name;
    },
    call(words, { input, env } = {}) {
      const done = spawnSync(process.execPath, [CLI, ...words], {
        cwd: folder,
        encoding: 'utf8',
        env: { PATH: process.env.PATH ?? '', HOME: folder, TZ: 'UTC', ...env },
        ...(input === undefined ? {} : { input }),
      });
      // The folder's name differs from run to run: it stands as DIR in what is compared.
      const plain = (text: string) => text.replaceAll(folder, 'DIR');
      return { out: plain(done.stdout), err: plain(done.stderr), code: done.status };
    },
    shell(line, encoding) {
      const script = join(folder, 'line.sh');
      writeFileSync(
        script,
        Buffer.from(`hearwright() { "${process.execPath}" "${CLI}" "$@"; }\n${line}\n`, encoding),
      );
      const done = spawnSync('sh', [script], {
        cwd: folder,
        encoding: 'utf8',
        env: { PATH: process.env.PATH ?? '', HOME: folder, TZ: 'UTC' },
      });
      return { out: done.stdout, err: done.stderr, code: done.status };
    },
    remove: () => rmSync(folder, { recursive: true, force: true }),
  };
}
