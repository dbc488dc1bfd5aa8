// Runs a script as the command line runs: bundled by esbuild, as dist/ is. Measured module by module through a loader,
// every call across files would cost a detour that nobody who uses the program pays.
// node scripts/run-bundled.mjs SCRIPT.ts [ARGUMENT...]
import { spawnSync } from 'node:child_process';
import { mkdirSync } from 'node:fs';
import { basename, dirname, resolve } from 'node:path';
import { build } from 'esbuild';

const [script, ...args] = process.argv.slice(2);
if (!script) {
  console.error('usage: node scripts/run-bundled.mjs SCRIPT.ts [ARGUMENT...]');
  process.exit(2);
}
const entry = resolve(script);
// Under node_modules, so that packages that stay outside the bundle are found from there.
const folder = resolve(import.meta.dirname, '../node_modules/.cache/hearwright-bench');
mkdirSync(folder, { recursive: true });
const outfile = resolve(folder, `${basename(script, '.ts')}-${process.pid}.mjs`);
await build({
  entryPoints: [entry],
  outfile,
  bundle: true,
  format: 'esm',
  platform: 'node',
  target: 'node20',
  packages: 'external',
  define: { 'import.meta.dirname': JSON.stringify(dirname(entry)) },
  logLevel: 'warning',
});
const { status } = spawnSync(process.execPath, ['--enable-source-maps', outfile, ...args], {
  stdio: 'inherit',
  // As dist/ has it: React without its development half.
  env: { NODE_ENV: 'production', ...process.env },
});
process.exit(status ?? 1);
