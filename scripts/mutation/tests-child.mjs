// The process that tries mutants: loads the bundled tests, then runs what it is told and answers.
// A mutant named at the start is there while everything loads; one named later is a switch thrown while tests run.
import { pathToFileURL } from 'node:url';

const state = { activeMutant: process.env.MUTANT };
globalThis.__stryker__ = state;

/** Runs tests until one fails; gives back what failed, and why. */
async function firstFailing(ids) {
  for (const id of ids) {
    const test = globalThis.gatheredTests[Number(id)];
    if (!test) return { test: 'a test that is not there', why: 'it was not gathered' };
    state.currentTestId = id;
    try {
      await test.run();
    } catch (error) {
      return { test: `${test.file}: ${test.name}`, id, why: String(error?.message ?? error).slice(0, 200) };
    } finally {
      state.currentTestId = undefined;
    }
  }
  return undefined;
}

const milliseconds = () => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
};

/** Each test alone, with its time and with the mutants that it runs through, or with why it failed without any. */
async function lookAround() {
  const times = [];
  const failures = [];
  for (const { id } of globalThis.gatheredTests) {
    const before = milliseconds();
    const failed = await firstFailing([id]);
    if (failed) failures.push(failed);
    times.push(failed ? undefined : milliseconds() - before);
  }
  const { static: whileLoading = {}, perTest = {} } = state.mutantCoverage ?? {};
  const files = globalThis.gatheredTests.map(({ file }) => file);
  return { times, files, failures, whileLoading, perTest };
}

// Whoever asked is gone.
process.on('disconnect', () => process.exit());
process.on('message', async ({ look, mutant, tests, hitLimit }) => {
  if (look) return process.send(await lookAround());
  if (mutant !== undefined) Object.assign(state, { activeMutant: mutant, hitCount: 0, hitLimit });
  const failed = await firstFailing(tests);
  if (mutant !== undefined) Object.assign(state, { activeMutant: undefined, hitCount: undefined });
  process.send({ failed });
});

try {
  await import(pathToFileURL(process.argv[2]).href);
  process.send({ loaded: globalThis.gatheredTests.length });
} catch (error) {
  process.send({ broken: String(error?.message ?? error).slice(0, 200) });
}
