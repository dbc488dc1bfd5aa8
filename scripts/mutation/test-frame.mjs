// Stands in for Vitest while mutants are tried: tests are gathered once and run again and again in one process. What a
// test expects is judged by Vitest's own matchers. Only what the tests in question use is here; anything else throws.
import { readFileSync } from 'node:fs';
import {
  ASYMMETRIC_MATCHERS_OBJECT,
  chai,
  JestAsymmetricMatchers,
  JestChaiExpect,
  JestExtend,
} from '@vitest/expect';

chai.use(JestExtend);
chai.use(JestChaiExpect);
chai.use(JestAsymmetricMatchers);
// Nothing is written anew here: a file that tells otherwise is what notices a mutant.
chai.use(({ Assertion }, { addMethod, flag }) => {
  addMethod(Assertion.prototype, 'toMatchFileSnapshot', function (file) {
    chai.expect(flag(this, 'object')).toBe(readFileSync(file, 'utf8'));
  });
});
export const expect = Object.assign((value, message) => chai.expect(value, message), chai.expect);
// `expect.any` and its like are found there.
Object.defineProperties(
  expect,
  Object.getOwnPropertyDescriptors(globalThis[ASYMMETRIC_MATCHERS_OBJECT] ?? {}),
);

/** Every test in the order in which it was met. */
export const tests = [];
globalThis.gatheredTests = tests;
let file = newFile('');
const within = [];

function newFile(name) {
  return { name, beforeAll: [], beforeEach: [], afterEach: [], isReady: false };
}

export function startFile(name) {
  file = newFile(name);
}

export const beforeAll = (work) => void file.beforeAll.push(work);
export const beforeEach = (work) => void file.beforeEach.push(work);
export const afterEach = (work) => void file.afterEach.push(work);
/** Nothing ends here: the tests run again for the next mutant. */
export const afterAll = () => {};

const SKIPPED = new Error('skipped');
const context = {
  skip() {
    throw SKIPPED;
  },
};

/** A busy machine fails a test of speed, which is no sign that it noticed a mutant. */
const OF_SPEED = /performance\.now|cpuUsage|hrtime|Date\.now/;
const SPEED_IN_NAME = /\b(?:quick|quickly|fast|as long|time it takes|in time|linear)\b/i;

function gather(name, work, words = [context]) {
  if (typeof work !== 'function') throw new Error(`a test without a function: ${name}`);
  if (OF_SPEED.test(String(work)) || SPEED_IN_NAME.test(name)) return;
  const own = file;
  const run = async () => {
    if (!own.isReady) for (const prepare of own.beforeAll) await prepare();
    own.isReady = true;
    try {
      for (const prepare of own.beforeEach) await prepare();
      await work(...words);
    } catch (error) {
      if (error !== SKIPPED) throw error;
    } finally {
      for (const tidy of own.afterEach) await tidy();
    }
  };
  tests.push({ id: String(tests.length), file: own.name, name: [...within, name].join(' > '), run });
}

const casesOf = (rows, name, given) =>
  rows.forEach((row, place) => {
    given(`${name} [${place}]`, Array.isArray(row) ? row : [row]);
  });

const functionOf = (words) => words.find((word) => typeof word === 'function');

export function test(name, ...words) {
  gather(name, functionOf(words));
}
test.each =
  (rows) =>
  (name, ...words) =>
    casesOf(rows, name, (named, row) => gather(named, functionOf(words), row));
const left = Object.assign(() => {}, { each: () => () => {} });
test.skip = left;
test.skipIf = (isSkipped) => (isSkipped ? left : test);
test.runIf = (isRun) => (isRun ? test : left);

export function describe(name, ...words) {
  within.push(name);
  functionOf(words)();
  within.pop();
}
describe.each =
  (rows) =>
  (name, ...words) =>
    casesOf(rows, name, (named, row) => describe(named, () => functionOf(words)(...row)));
describe.skipIf = (isSkipped) => (isSkipped ? () => {} : describe);
