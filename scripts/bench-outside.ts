/**
 * Reads published test sets and prints how far we agree, by set and kind: value and unit must both be right.
 * Usage: npm run bench:outside -- [--verbose] [--sample FILE] [FOLDER]. --sample writes every third sentence with
 * whether we agree on it, as tests/outside/sample.json holds them. The sets are not part of this project; docs/outside-sets.md
 * says where each comes from. Without FOLDER they are looked for in ../shared/outside.
 */
import { writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import {
  agreementOn,
  agrees,
  type KindScore,
  ratesOf,
  scoreOutside,
} from '../tests/kit/outside/agreement.ts';
import { outsideCases } from '../tests/kit/outside/sets.ts';

const { values, positionals } = parseArgs({
  options: { verbose: { type: 'boolean', default: false }, sample: { type: 'string' } },
  allowPositionals: true,
});
const folder = positionals[0] ?? '../shared/outside';
const cases = outsideCases(folder);
if (cases.length === 0) {
  console.error(`bench:outside: no published sets in ${folder}
  kept   nothing was changed; the sample in tests/outside/ is tested by: npm test
  next   fetch the sets (docs/outside-sets.md names them), then: npm run bench:outside -- FOLDER`);
  process.exit(2);
}

const KEY = (score: KindScore) => `${score.set}\n${score.kind === 'all' ? '~' : score.kind}`;
const rate = (value: number) => value.toFixed(3);
console.log('set                    kind         gold right extra  kept      P      R     F1');
for (const score of [...scoreOutside(cases)].sort((a, b) => (KEY(a) < KEY(b) ? -1 : 1))) {
  const { precision, recall, f1 } = ratesOf(score);
  const counts = [score.gold, score.right, score.extra, score.kept]
    .map((n) => String(n).padStart(5))
    .join(' ');
  console.log(
    `${score.set.padEnd(22)} ${score.kind.padEnd(11)} ${counts}  ${rate(precision)}  ${rate(recall)}  ${rate(f1)}`,
  );
}
if (values.sample) {
  const sampled = cases.filter((_, k) => k % 3 === 0);
  const lines = sampled.map((one) => JSON.stringify({ ...one, read: agrees(one) }));
  writeFileSync(values.sample, `[\n${lines.join(',\n')}\n]\n`);
  console.log(`\n${sampled.length} sentences in ${values.sample}`);
}
if (values.verbose) {
  for (const one of cases) {
    const { missed, extra } = agreementOn(one);
    if (missed.length + extra.length === 0) continue;
    console.log(`\n${one.set} ${one.id}: ${JSON.stringify(one.text)}`);
    for (const gold of missed) console.log(`  missed  ${gold.kind} ${gold.keys.join(' or ')}`);
    for (const found of extra) console.log(`  extra   ${found.kind} ${found.key}`);
  }
}
