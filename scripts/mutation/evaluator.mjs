// Tries mutants in a process of their own, and says of each whether a test noticed it.
import { fork } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

const CHILD = join(import.meta.dirname, 'tests-child.mjs');
const LOOK_EVERY_MS = 2000;
/** Processor seconds beyond what its tests need without a mutant: then it runs in circles. */
const SPARE_SECONDS = 30;

/** Processor seconds of a process so far; on a busy machine the clock would tell how busy it is. Linux only. */
function spentBy(pid) {
  try {
    // Fields 14 and 15, counted after the name in brackets; a hundred ticks to the second.
    const fields = readFileSync(`/proc/${pid}/stat`, 'utf8')
      .replace(/^.*\) /, '')
      .split(' ');
    return (Number(fields[11]) + Number(fields[12])) / 100;
  } catch {
    return 0;
  }
}

class Child {
  constructor(bundle, mutant) {
    const env = { ...process.env, ...(mutant === undefined ? {} : { MUTANT: mutant }) };
    this.process = fork(CHILD, [bundle], { env, stdio: ['ignore', 'ignore', 'ignore', 'ipc'] });
    this.ready = this.#answer(SPARE_SECONDS);
  }
  /** What it says next; `circles` when it takes too long, `died` when it ends. */
  #answer(seconds) {
    return new Promise((resolve) => {
      const until = spentBy(this.process.pid) + seconds;
      const watch = setInterval(() => {
        if (spentBy(this.process.pid) > until) done({ circles: true });
      }, LOOK_EVERY_MS);
      const done = (answer) => {
        clearInterval(watch);
        this.process.off('message', done);
        this.process.off('exit', died);
        resolve(answer);
      };
      const died = () => done({ died: true });
      this.process.on('message', done);
      this.process.on('exit', died);
    });
  }
  ask(message, seconds) {
    const answer = this.#answer(seconds);
    this.process.send(message, () => {});
    return answer;
  }
  end() {
    this.process.kill('SIGKILL');
  }
}

/** What an answer says of a mutant. */
function verdictOf({ circles, died, broken, failed }) {
  if (circles) return { status: 'killed', by: 'runs in circles' };
  if (died) return { status: 'killed', by: 'the process ended' };
  if (broken) return { status: 'killed', by: `does not load: ${broken}` };
  return failed
    ? { status: 'killed', by: failed.test, test: failed.id, why: failed.why }
    : { status: 'survived' };
}

/** Of a test that was never tried: how likely it is to notice a mutant that it runs through. */
const NOTICES_AT_FIRST = 0.02;
const TRIES_THAT_IT_WEIGHS = 10;
/** So much likelier where the test is named like the mutant's file. */
const OF_ITS_FILE = 5;

/**
 * The order in which tests are tried: those first that are likeliest to notice a mutant for their time, by how often they
 * did so far. What survives takes as long in any order; what is noticed is noticed sooner.
 */
class TestOrder {
  #times;
  #files;
  #longest;
  #tried = new Map();
  #noticed = new Map();

  /** `longest`: how many milliseconds of the processor the tests of one mutant may take in all. */
  constructor({ times, files }, longest) {
    this.#times = times;
    this.#files = files;
    this.#longest = longest;
  }
  /** Of the tests that run through a mutant of this file, those that are tried, in their order. */
  of(tests, file) {
    const name = file.split('/').at(-1).replace(/\.ts$/, '');
    const isOfIt = (test) => this.#files[test].includes(`/${name}.test.`);
    const worth = new Map(tests.map((test) => [test, this.#worth(test) * (isOfIt(test) ? OF_ITS_FILE : 1)]));
    let left = this.#longest;
    return [...tests]
      .sort((a, b) => worth.get(b) - worth.get(a))
      .filter((test) => {
        const fits = this.#times[test] <= left;
        if (fits) left -= this.#times[test];
        return fits;
      });
  }
  #worth(test) {
    const noticed = (this.#noticed.get(test) ?? 0) + NOTICES_AT_FIRST * TRIES_THAT_IT_WEIGHS;
    const tried = (this.#tried.get(test) ?? 0) + TRIES_THAT_IT_WEIGHS;
    // A test that takes no time at all is not worth everything.
    return noticed / tried / (this.#times[test] + 1);
  }
  /** `noticed` is the test that failed, of those tried in this order; without it all of them were, in vain. */
  learn(tests, noticed) {
    const count = (of, test) => of.set(test, (of.get(test) ?? 0) + 1);
    for (const test of tests) {
      count(this.#tried, test);
      if (test !== noticed) continue;
      count(this.#noticed, test);
      break;
    }
  }
}

export class Evaluator {
  #bundle;
  #again;
  #longest;
  #child;
  #seen;
  #order;

  /**
   * An answer remembered from before may hide a mutant that was switched on later. With `again` what survived is tried
   * from a fresh start too; without, it counts as survived, so the share that is killed is told too low, never too high.
   * Likewise with `seconds`: what the tests of one mutant may take of the processor; those least likely to notice it are
   * left untried.
   */
  constructor(bundle, { again, seconds }) {
    this.#bundle = bundle;
    this.#again = again;
    this.#longest = seconds * 1000;
  }

  async #start() {
    this.#child?.end();
    this.#child = new Child(this.#bundle);
    const { loaded, broken } = await this.#child.ready;
    if (loaded === undefined) throw new Error(`the tests do not load: ${broken}`);
  }

  /**
   * Tries each of `sampled` that runs while tests run, and the first `staticCount` of those that run only while
   * modules load, for so many minutes at most: the first ones of a draw are a draw too. Each comes back with `kind` (run or load) and `status` (killed, survived, not-covered, not-tried).
   */
  async evaluate(sampled, staticCount, onProgress, minutes = Number.POSITIVE_INFINITY) {
    const until = performance.now() + minutes * 60_000;
    await this.#start();
    this.#seen = await this.#child.ask({ look: true }, 1200);
    if (!this.#seen.times) throw new Error(`the tests do not run: ${JSON.stringify(this.#seen)}`);
    const { times, failures, perTest, whileLoading } = this.#seen;
    // What fails without a mutant tells nothing of one: it needs what is not here.
    for (const { test, why } of failures) console.log(`left out: ${test}: ${why}`);
    const total = times.reduce((sum, ms = 0) => sum + ms, 0) / 1000;
    console.log(`${times.length} tests, ${total.toFixed(1)} s of processor time`);
    const covering = new Map();
    for (const [test, hits] of Object.entries(perTest)) {
      if (times[test] == null) continue;
      for (const [id, count] of Object.entries(hits)) {
        const known = covering.get(id) ?? { tests: [], hits: 0 };
        known.tests.push(test);
        known.hits += count;
        covering.set(id, known);
      }
    }
    this.#order = new TestOrder(this.#seen, this.#longest);
    const results = [];
    let loading = 0;
    for (const mutant of sampled) {
      const known = covering.get(mutant.id);
      if (known) {
        const tests = this.#order.of(known.tests, mutant.file);
        const verdict = await this.#tryRunning(mutant.id, { ...known, tests });
        this.#order.learn(tests, verdict.test);
        results.push({ ...mutant, kind: 'run', tests: tests.length, ...verdict });
      } else if (whileLoading[mutant.id] === undefined) {
        results.push({ ...mutant, kind: 'run', status: 'not-covered' });
      } else if (loading++ < staticCount) {
        results.push({
          ...mutant,
          kind: 'load',
          ...(await this.#tryAlone(mutant.id, this.#allTests(mutant))),
        });
      } else results.push({ ...mutant, kind: 'load', status: 'not-tried' });
      onProgress(results, sampled.length);
      if (performance.now() > until) break;
    }
    this.#child.end();
    return results;
  }

  async #tryRunning(id, { tests, hits }) {
    const answer = await this.#child.ask({ mutant: id, tests, hitLimit: hits * 100 }, this.#secondsOf(tests));
    if (answer.circles || answer.died) {
      await this.#start();
      return verdictOf(answer);
    }
    const verdict = verdictOf(answer);
    if (verdict.status === 'survived') return this.#again ? this.#tryFresh(id, tests) : verdict;
    // What a mutant leaves in a memory of answers may fail a test that would pass: it must pass without it.
    const without = await this.#child.ask({ tests: [answer.failed.id] }, this.#secondsOf(tests));
    if (!without.failed) return verdict;
    await this.#start();
    return this.#tryAlone(id, tests);
  }

  /** What survived where answers were remembered, without them. */
  async #tryFresh(id, tests) {
    return { ...(await this.#tryAlone(id, tests)), isFresh: true };
  }

  /** In a process of its own, there from the first line on. */
  async #tryAlone(id, tests) {
    const child = new Child(this.#bundle, id);
    const ready = await child.ready;
    const answer =
      ready.loaded === this.#seen.times.length
        ? await child.ask({ tests }, this.#secondsOf(tests))
        : { broken: ready.broken ?? 'other tests were gathered', ...ready };
    child.end();
    return verdictOf(answer);
  }

  /** Every test, those first whose file is named like the mutant's. */
  #allTests({ file }) {
    const { times, files } = this.#seen;
    const name = file.split('/').at(-1).replace(/\.ts$/, '');
    const rank = (test) => (files[test].includes(name) ? 0 : 1e6) + times[test];
    return times.flatMap((ms, test) => (ms == null ? [] : [String(test)])).sort((a, b) => rank(a) - rank(b));
  }

  #secondsOf(tests) {
    return SPARE_SECONDS + (5 * tests.reduce((sum, test) => sum + this.#seen.times[test], 0)) / 1000;
  }
}
