// Bundles the command line into dist/. One bundle with lazy chunks starts several times faster than a folder
// of small modules: `--help` must cost little more than Node itself.
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'esbuild';
import { mendedPackages } from './mended-packages.mjs';
import { mergeChunks } from './merge-chunks.mjs';

/** Native parts and packages that find their own files at run time stay outside the bundle. */
const external = [
  'better-sqlite3',
  'better-sqlite3-node-api',
  'sherpa-onnx-node',
  'koffi',
  '@picovoice/pvrecorder-node',
  'node-web-audio-api',
  'react-devtools-core',
];

/** Ink would connect to a debugger where DEV=true is in the surroundings: nothing in the bundle can reach a network. */
const withoutDebugger = {
  name: 'without-debugger',
  setup({ onLoad }) {
    onLoad({ filter: /[\\/]ink[\\/]build[\\/]devtools\.js$/ }, () => ({ contents: '' }));
  },
};

/** A hash over everything that decides what model comes of a log; see src/store/made-by.ts. */
function modelPrint() {
  const hash = createHash('sha256');
  const folders = ['src/language', 'src/model', 'src/store'];
  const files = folders.flatMap((folder) =>
    readdirSync(folder, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => join(entry.parentPath ?? entry.path, entry.name)),
  );
  for (const file of [...files.sort(), 'src/plain-text.ts', 'src/remembered.ts'])
    hash
      .update(`${file.replaceAll('\\', '/')}\0`)
      .update(readFileSync(file))
      .update('\0');
  hash.update(JSON.stringify(JSON.parse(readFileSync('package.json', 'utf8')).dependencies));
  return hash.digest('hex').slice(0, 16);
}

/** Half the bytes, and V8 reads all of them at every start. Names stay: a stack must tell where it was. */
const smaller = { minifyWhitespace: true, minifySyntax: true };

rmSync('dist', { recursive: true, force: true });
const { metafile } = await build({
  entryPoints: {
    cli: 'src/cli/main.ts',
    'screen-worker': 'src/cli/screen-worker.ts',
    'recogniser-child': 'src/speech/recogniser-child.ts',
    'voice-child': 'src/speech/voice-child.ts',
    'microphone-child': 'src/speech/microphone-child.ts',
  },
  outdir: 'dist',
  bundle: true,
  splitting: true,
  format: 'esm',
  platform: 'node',
  target: 'node20',
  external,
  sourcemap: false,
  // React without its development half: the screen opens sooner.
  define: {
    'process.env.NODE_ENV': '"production"',
    HEARWRIGHT_MODEL_PRINT: JSON.stringify(modelPrint()),
  },
  plugins: [withoutDebugger, mendedPackages],
  legalComments: 'none',
  logLevel: 'warning',
  ...smaller,
  metafile: true,
  // CommonJS packages inside an ES module bundle still ask for `require`. Made once: each making costs a tenth of a
  // millisecond, and a call loads some fifty pieces.
  banner: { js: "import { require } from './require.js';" },
});
writeFileSync(
  'dist/require.js',
  "import { createRequire } from 'node:module';\nexport const require = createRequire(import.meta.url);\n",
);

/** What comes with every call is one file, and what comes with every call that opens a project another. */
const { outputs } = metafile;
const projectChunk = Object.keys(outputs).find((path) => outputs[path].entryPoint === 'src/project.ts');
const options = { format: 'esm', platform: 'node', target: 'node20', external, ...smaller };
const merging = { folder: 'dist', outputs, options };
await mergeChunks({ ...merging, start: projectChunk, without: 'dist/cli.js', into: 'with-a-project.js' });
await mergeChunks({ ...merging, start: 'dist/cli.js', into: 'with-every-call.js' });
