// Mutation testing on a seeded sample: would the tests of a folder notice if its code were wrong?
// npm run mutation -- FOLDER [--count N] [--seed N] [--static N] [--match TEXT] [--again]
//   [--minutes N] [--seconds N] [--tests FOLDER,...] [--from FILE] [--out FILE]
//
// FOLDER is a folder of src/ with its tests in tests/ (language, model); --tests names other folders of tests. With --from,
// the --out of an earlier run with the same sample, only what no test noticed then is tried again. The mutants are those of StrykerJS: its
// instrumenter finds them and puts them behind switches. Its own runner starts a worker and loads every module anew for
// each mutant, which is seconds; here all tests of the folder are loaded once and each mutant is a switch, which is
// milliseconds, so that several hundred are had in the time of a few dozen. How it is counted: docs/testing.md.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, relative, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { parseArgs } from 'node:util';
import { bundleTests } from './bundle-tests.mjs';
import { Evaluator } from './evaluator.mjs';
import { sampleOf } from './sample.mjs';

const INSTRUMENTER = '@stryker-mutator/instrumenter';
const VERSION = '9.6.1';
const root = resolve(import.meta.dirname, '../..');
const cache = join(root, 'node_modules/.cache/hearwright-mutation');

const { values, positionals } = parseArgs({
  options: {
    count: { type: 'string', default: '300' },
    static: { type: 'string', default: '0' },
    seed: { type: 'string', default: '20261126' },
    match: { type: 'string', default: '' },
    again: { type: 'boolean', default: false },
    minutes: { type: 'string', default: 'Infinity' },
    seconds: { type: 'string', default: 'Infinity' },
    tests: { type: 'string' },
    from: { type: 'string' },
    out: { type: 'string' },
  },
  allowPositionals: true,
});
const [folder] = positionals;
if (!folder || !existsSync(join(root, 'src', folder))) {
  console.error(
    'usage: npm run mutation -- FOLDER [--count N] [--seed N] [--static N] [--match TEXT] [--again] [--minutes N] [--seconds N] [--out FILE]',
  );
  process.exit(2);
}

/** The instrumenter, installed beside the project: its hundred and fifty packages serve nothing else. */
async function loadInstrumenter() {
  const home = join(cache, VERSION);
  const entry = join(home, 'node_modules', INSTRUMENTER, 'dist/src/index.js');
  if (!existsSync(entry)) {
    mkdirSync(home, { recursive: true });
    writeFileSync(join(home, 'package.json'), '{ "private": true }\n');
    const args = ['install', '--ignore-scripts', '--no-audit', '--no-fund', `${INSTRUMENTER}@${VERSION}`];
    if (spawnSync('npm', args, { cwd: home, stdio: 'inherit' }).status !== 0) process.exit(1);
  }
  const { Instrumenter } = await import(pathToFileURL(entry).href);
  const silent = { debug() {}, info() {}, warn() {}, isDebugEnabled: () => false };
  return new Instrumenter(silent);
}

/** Tables that a script writes are data: no test is asked to know every weight. */
const isGenerated = (text) => /Written by scripts\/|do not edit by hand/.test(text.slice(0, 600));

function sourcesOf(name) {
  return readdirSync(join(root, 'src', name), { recursive: true })
    .filter((file) => file.endsWith('.ts'))
    .map((file) => join(root, 'src', name, file))
    .sort()
    .map((file) => ({ name: file, content: readFileSync(file, 'utf8') }))
    .filter(({ content }) => !isGenerated(content));
}

const OPTIONS = { excludedMutations: [], ignorers: [], plugins: null, noHeader: false };

/** Every mutant of these files, with its place and what stands there. */
async function mutantsOf(instrumenter, sources) {
  const all = [];
  for (const source of sources) {
    const { mutants } = await instrumenter.instrument([{ ...source, mutate: true }], OPTIONS);
    for (const { location, mutatorName, replacement } of mutants) {
      all.push({ file: source.name, location, mutatorName, replacement });
    }
  }
  return all;
}

const placeOf = ({ file, location: { start, end }, mutatorName, replacement }) =>
  [file, start.line, start.column, end.line, end.column, mutatorName, replacement].join(' ');

/** The sources with the sampled mutants behind switches; each mutant learns its switch. */
async function withSwitches(instrumenter, sources, sampled) {
  const byPlace = new Map(sampled.map((mutant) => [placeOf(mutant), mutant]));
  const texts = new Map();
  let before = 0;
  for (const source of sources) {
    const ranges = sampled.filter(({ file }) => file === source.name).map(({ location }) => location);
    if (ranges.length === 0) continue;
    const { files, mutants } = await instrumenter.instrument([{ ...source, mutate: ranges }], OPTIONS);
    // Each file counts its switches from nought: put behind those of the files before it.
    for (const mutant of mutants) {
      const known = byPlace.get(placeOf({ ...mutant, file: source.name }));
      if (known) known.id = String(before + Number(mutant.id));
    }
    const renumbered = files[0].content.replace(
      /((?:stryMutAct|stryCov)_9fa48\()((?:"\d+"(?:, )?)+)/g,
      (_, call, ids) => call + ids.replace(/\d+/g, (id) => String(before + Number(id))),
    );
    texts.set(source.name, renumbered);
    before += mutants.length;
  }
  const lost = sampled.find(({ id }) => id === undefined);
  if (lost) throw new Error(`no switch for ${placeOf(lost)}`);
  return texts;
}

const instrumenter = await loadInstrumenter();
const sources = sourcesOf(folder);
const all = await mutantsOf(instrumenter, sources);
const wanted = all.filter(({ file }) => relative(root, file).includes(values.match));
const drawn = sampleOf(wanted, Number(values.count), Number(values.seed));
/** Of an earlier run only what no test noticed is tried again. */
const nameOf = ({ file, line, mutatorName, replacement }) => [file, line, mutatorName, replacement].join(' ');
const unnoticed =
  values.from &&
  new Set(
    JSON.parse(readFileSync(values.from, 'utf8'))
      .filter(({ status }) => status === 'survived' || status === 'not-covered')
      .map(nameOf),
  );
const sampled = drawn.filter(
  (one) =>
    !unnoticed ||
    unnoticed.has(nameOf({ ...one, file: relative(root, one.file), line: one.location.start.line + 1 })),
);
console.log(
  `src/${folder}: ${sources.length} files, ${all.length} mutants; ${sampled.length} sampled, seed ${values.seed}`,
);
mkdirSync(cache, { recursive: true });
const bundle = join(cache, `${folder}-${process.pid}.mjs`);
await bundleTests(
  root,
  (values.tests ?? folder).split(','),
  await withSwitches(instrumenter, sources, sampled),
  bundle,
);
const evaluator = new Evaluator(bundle, { again: values.again, seconds: Number(values.seconds) });
const results = await evaluator.evaluate(sampled, Number(values.static), onProgress, Number(values.minutes));
function onProgress(done, count) {
  if (done.length % 10 > 0) return;
  console.log(`... ${done.length} of ${count}`);
  write(done.map(shownAs));
}

const shown = results.map(shownAs);
function shownAs({ file, location, ...rest }) {
  return { file: relative(root, file), line: location.start.line + 1, ...rest, was: textAt(file, location) };
}
function textAt(file, { start, end }) {
  const lines = readFileSync(file, 'utf8')
    .split('\n')
    .slice(start.line, end.line + 1);
  lines.push(lines.pop().slice(0, end.column));
  return [lines[0].slice(start.column), ...lines.slice(1)].join('\n');
}
function write(list) {
  if (values.out) writeFileSync(values.out, `${JSON.stringify(list, null, 1)}\n`);
}
write(shown);
for (const one of shown.filter(({ status }) => status === 'survived' || status === 'not-covered')) {
  const short = (text) => text.replace(/\s+/g, ' ').slice(0, 90);
  console.log(
    `${one.status} ${one.file}:${one.line} ${one.mutatorName}: ${short(one.was)} -> ${short(one.replacement)}`,
  );
}
const counts = new Map();
for (const { kind, status } of shown) {
  counts.set(`${kind} ${status}`, (counts.get(`${kind} ${status}`) ?? 0) + 1);
}
for (const [name, count] of [...counts].sort()) console.log(`${name}: ${count}`);
