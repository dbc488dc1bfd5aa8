// All tests of a folder in one file, with chosen sources put in the place of those on the disk.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';

const FRAME = join(import.meta.dirname, 'test-frame.mjs');

/** Writes `outfile`; `texts` maps the paths of sources to what stands in for them. */
export async function bundleTests(root, folder, texts, outfile) {
  const tests = readdirSync(join(root, 'tests', folder), { recursive: true })
    .filter((file) => /\.test\.tsx?$/.test(file))
    .sort()
    .map((file) => join(root, 'tests', folder, file));
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
