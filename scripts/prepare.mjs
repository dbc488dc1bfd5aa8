// Runs after `npm ci`: puts the recogniser's files into models/, then builds the command line.
// Without development packages (`npm ci --omit=dev`) both steps are satisfied by what is already there.
import { existsSync } from 'node:fs';
import { prepareWeights } from './weights.mjs';

try {
  await prepareWeights();
} catch (error) {
  // Text memos work without the recogniser: the build goes on, and taking a recording says what is missing.
  console.error(`hearwright: the speech recogniser is not complete: ${error.message}`);
}

try {
  await import('esbuild');
} catch (error) {
  if (!existsSync('dist/cli.js')) throw error;
  console.error('hearwright: development packages are absent; dist/ is left as it is');
  process.exit(0);
}
await import('./build.mjs');
