/**
 * Kills the built command at random moments of its work and checks that nothing that was said is lost; then the
 * hardships that are no kill. Writes what came of it into docs/trust.md.
 *
 *   npm run bench:crash                 300 kills and more, some half an hour
 *   npm run bench:crash -- --kills 40   fewer, in the same proportions
 *   npm run bench:crash -- --only recording --seed 7
 *
 * Counts are printed as each kind is done, so that a run which is stopped is not for nothing.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { VERSION } from '../src/version.ts';
import { HARDSHIPS, runHardships } from '../tests/kit/crash/hardships.ts';
import { PHASES } from '../tests/kit/crash/phases.ts';
import { type PhaseCount, runPhases } from '../tests/kit/crash/run-phases.ts';

const { values } = parseArgs({
  options: { kills: { type: 'string' }, seed: { type: 'string' }, only: { type: 'string' } },
});
const seed = Number(values.seed ?? '1');
const all = PHASES.reduce((sum, { share }) => sum + share, 0);
const kills = Number(values.kills ?? all);
const phases = PHASES.filter(({ name }) => values.only === undefined || name.includes(values.only));

const say = (text: string) => process.stdout.write(`${text}\n`);
const counts = await runPhases(phases, {
  seed,
  killsOf: ({ share }) => Math.max(1, Math.round((share / all) * kills)),
  onDone: ({ name, kills: done, faults }) => say(`${name}: ${done} kills, ${faults.length} faults`),
  onStrike: ({ name }, done, faults) =>
    process.stderr.write(`\r\u001b[K${name}: ${done} kills, ${faults} faults`),
});
process.stderr.write('\n');
const hardships = await runHardships(
  HARDSHIPS.filter(({ name }) => values.only === undefined || name.includes(values.only)),
);

const faulty = (count: PhaseCount) => count.faults.length;
const rows = [
  '| killed while           | kills | faults |',
  '| ---------------------- | ----- | ------ |',
  ...counts.map((count) => `| ${count.name} | ${count.kills} | ${faulty(count)} |`),
  `| **all** | ${counts.reduce((sum, count) => sum + count.kills, 0)} | ${counts.reduce((sum, count) => sum + faulty(count), 0)} |`,
  '',
  '| hardship | came of it |',
  '| -------- | ---------- |',
  ...hardships.map(({ name, came }) => `| ${name} | ${came} |`),
];
say(rows.join('\n'));
for (const { name, faults } of counts) for (const fault of faults) say(`${name}: ${fault}`);
for (const { late, name, seconds } of counts)
  say(`${name}: ${late} calls were over before the kill; ${seconds.toFixed(0)} s`);

const PAGE = 'docs/trust.md';
const BEGIN = '<!-- measured -->';
const END = '<!-- /measured -->';
if (values.only === undefined) {
  const page = readFileSync(PAGE, 'utf8');
  const before = page.slice(0, page.indexOf(BEGIN) + BEGIN.length);
  const behind = page.slice(page.indexOf(END));
  const run = `Version ${VERSION}, Node ${process.version}, ${process.platform}, seed ${seed}.`;
  writeFileSync(PAGE, `${before}\n\n${run}\n\n${rows.join('\n')}\n\n${behind}`);
}
const failed = counts.some((count) => faulty(count) > 0) || hardships.some(({ holds }) => !holds);
process.exit(failed ? 1 : 0);
