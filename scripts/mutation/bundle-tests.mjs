// All tests of some folders in one file, with chosen sources put in the place of those on the disk.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';

const FRAME = join(import.meta.dirname, 'test-frame.mjs');

/**
 * Tests that start the built command, a terminal or a browser, where no mutant is; and those that use a package that Node
 * loads only by way of Vitest.
 */
const OUTSIDE = /kit\/(?:command-line|browser|pseudo-terminal|script-terminal)\.ts|\bdist\/|webvtt-parser/;

function testsIn(root, folder) {
  return readdirSync(join(root, 'tests', folder), { recursive: true })
    .filter((file) => /\.test\.ts$/.test(file))
    .sort()
    .map((file) => join(root, 'tests', folder, file))
    .filter((file) => !OUTSIDE.test(readFileSync(file, 'utf8')));
}

/** Writes `outfile`; `texts` maps the paths of sources to what stands in for them. */
export async function bundleTests(root, folders, texts, outfile) {
  const tests = folders.flatMap((folder) => testsIn(root, folder));
  const lines = tests.map(
    (file) =>
      `startFile(${JSON.stringify(file.slice(root.length + 1))});\nawait import(${JSON.stringify(file)});`,
  );
  const standIn = {
    name: 'stand-in',
    setup({ onLoad, onResolve }) {
      onResolve({ filter: /^vitest$/ }, () => ({ path: FRAME }));
      onLoad({ filter: /\.tsx?$/ }, ({ path }) => {
        const text = texts.get(path) ?? readFileSync(path, 'utf8');
        // Tests read what lies beside them.
        const contents = text.replaceAll('import.meta.url', JSON.stringify(pathToFileURL(path).href));
        return { contents, loader: path.endsWith('x') ? 'tsx' : 'ts' };
      });
    },
  };
  await build({
    stdin: {
      contents: `import { startFile } from ${JSON.stringify(FRAME)};\n${lines.join('\n')}`,
      resolveDir: root,
    },
    outfile,
    bundle: true,
    format: 'esm',
    platform: 'node',
    target: 'node20',
    packages: 'external',
    plugins: [standIn],
    logLevel: 'error',
  });
}
