// Bundles the command line into dist/. One bundle with lazy chunks starts several times faster than a folder
// of small modules: `--help` must cost little more than Node itself.
import { rmSync } from 'node:fs';
import { build } from 'esbuild';

/** Native parts and packages that find their own files at run time stay outside the bundle. */
const external = ['better-sqlite3', 'sherpa-onnx-node', 'node-web-audio-api', 'react-devtools-core'];

/** Ink would connect to a debugger where DEV=true is in the surroundings: nothing in the bundle can reach a network. */
const withoutDebugger = {
  name: 'without-debugger',
  setup({ onLoad }) {
    onLoad({ filter: /[\\/]ink[\\/]build[\\/]devtools\.js$/ }, () => ({ contents: '' }));
  },
};

rmSync('dist', { recursive: true, force: true });
await build({
  entryPoints: {
    cli: 'src/cli/main.ts',
    'recogniser-child': 'src/speech/recogniser-child.ts',
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
  define: { 'process.env.NODE_ENV': '"production"' },
  plugins: [withoutDebugger],
  legalComments: 'none',
  logLevel: 'warning',
  // CommonJS packages inside an ES module bundle still ask for `require`.
  banner: {
    js: "import { createRequire as __createRequire } from 'node:module'; const require = __createRequire(import.meta.url);",
  },
});
