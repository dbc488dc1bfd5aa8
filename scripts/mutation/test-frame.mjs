// Stands in for Vitest while mutants are tried: tests are gathered once and run again and again in one process. What a
// test expects is judged by Vitest's own matchers. Only what the tests of the core use is here; anything else throws.
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
export const expect = Object.assign((value, message) => chai.expect(value, message), chai.expect);
// `expect.any` and its like are found there.
Object.defineProperties(
  expect,
  Object.getOwnPropertyDescriptors(globalThis[ASYMMETRIC_MATCHERS_OBJECT] ?? {}),
);

/** Every test in the order in which it was met. */
export const tests = [];
globalThis.gatheredTests = tests;
let file = '';
const within = [];

export function startFile(name) {
  file = name;
}

function gather(name, run) {
  if (typeof run !== 'function') throw new Error(`a test without a function: ${name}`);
  tests.push({ id: String(tests.length), file, name: [...within, name].join(' > '), run });
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
    casesOf(rows, name, (named, row) => gather(named, () => functionOf(words)(...row)));

export function describe(name, ...words) {
  within.push(name);
  functionOf(words)();
  within.pop();
}
describe.each =
  (rows) =>
  (name, ...words) =>
    casesOf(rows, name, (named, row) => describe(named, () => functionOf(words)(...row)));

/** Nothing ends here: the tests run again for the next mutant. */
export function afterAll() {}
