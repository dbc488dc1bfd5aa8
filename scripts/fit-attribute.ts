// Fits the weights by which a length's size is chosen: npx tsx scripts/fit-attribute.ts [--check] STORY ...
// With --check the stories that no rule was written on are dealt to six folds; each is left out in turn and judged by
// weights fitted without it, --verbose tells what was got wrong and why. Without, the table is written. Stories whose
// file begins with "work-" or "story-dev" are those that the rules of wording were written on: they count in two ways,
// once as they are and once without the rules.
import { writeFileSync } from 'node:fs';
import { basename } from 'node:path';
import { chooseSize, type SizeWeights } from '../src/language/items/size-choice.ts';
import { writeSizes } from '../src/language/items/size-table.ts';
import { withoutStops } from '../tests/kit/figure-at.ts';
import type { Story } from '../tests/kit/story.ts';
import { readStoryFile } from '../tests/kit/story-file.ts';
import { casesOf, exampleCases, type SizeCase, untuned } from './attribute-cases.ts';
import { fitSizes } from './attribute-fit.ts';

const FOLDS = 6;
/** How much a case counts: of a worked story with the rules and without them, of talk without stops, of an example. */
const COUNTS = { trusted: 1, worked: 0.1, bare: 0.3, example: 3 };
/** What the stories are read with to be learned from: the size that the rules alone would take. */
const RULES: SizeWeights = { votes: { likely: 1 }, signs: {} };

interface Told {
  readonly story: Story;
  readonly isWorked: boolean;
}

function learned({ story, isWorked }: Told): SizeCase[] {
  const cases = [...casesOf(story, RULES, 1), ...casesOf(withoutStops(story), RULES, COUNTS.bare)];
  if (!isWorked) return cases;
  const counted = (one: SizeCase, count: number) => ({ ...one, weight: one.weight * count });
  return cases.flatMap((one) => [counted(one, COUNTS.trusted), counted(untuned(one), COUNTS.worked)]);
}

interface Hits {
  readonly all: number;
  readonly right: number;
  /** Right by the rules alone. */
  readonly byRules: number;
}
const plus = (a: Hits, b: Hits): Hits => ({
  all: a.all + b.all,
  right: a.right + b.right,
  byRules: a.byRules + b.byRules,
});

function hits(cases: readonly SizeCase[], weights: SizeWeights, verbose: boolean): Hits {
  let right = 0;
  let byRules = 0;
  for (const { evidence, right: wanted, told, isItemRight } of cases) {
    const chosen = chooseSize(evidence, weights);
    if (chosen.size === wanted) right++;
    const isByRules = evidence.votes.some(([source, size]) => source === 'likely' && size === wanted);
    if (isByRules) byRules++;
    if (verbose && chosen.size !== wanted)
      console.log(
        `${wanted} <- ${chosen.size}${isItemRight ? '' : ' ITEM'}${isByRules ? ' LOST' : ''} ${told}\n     ${chosen.reasons().join(', ')}`,
      );
  }
  return { all: cases.length, right, byRules };
}

const share = ({ all, right, byRules }: Hits): string =>
  `rules ${(byRules / all).toFixed(3)} weighed ${(right / all).toFixed(3)} of ${all}`;

function check(told: readonly Told[], verbose: boolean): void {
  const sets = told.map(learned);
  const examples = exampleCases(RULES, COUNTS.example);
  const unseen = told.filter(({ isWorked }) => !isWorked);
  let sum: Hits = { all: 0, right: 0, byRules: 0 };
  for (let fold = 0; fold < FOLDS; fold++) {
    const out = unseen.filter((_, k) => k % FOLDS === fold);
    const weights = fitSizes(
      sets.flatMap((set, k) => (out.includes(told[k] as Told) ? [] : set)).concat(examples),
    );
    const here = hits(
      out.flatMap(({ story }) => casesOf(story, weights, 1)),
      weights,
      verbose,
    );
    console.log(`${out.map(({ story }) => story.story).join(' ')}: ${share(here)}`);
    sum = plus(sum, here);
  }
  console.log(`all: ${share(sum)}`);
}

/** The table as a module: its lines stand in template texts, so that they can be read and compared. */
function tableText(weights: SizeWeights): string {
  const { votes, signs } = writeSizes(weights);
  const text = (lines: string) => `\`\n${lines.replace(/[\\`$]/g, '\\$&')}\n\``;
  return `/** What the evidence of \`size-evidence.ts\` weighs. Written by scripts/fit-attribute.ts; do not edit by hand. */
import { readSizes } from './size-table.ts';

const VOTES = ${text(votes)};

const SIGNS = ${text(signs)};

export const SIZE_WEIGHTS = readSizes({ votes: VOTES, signs: SIGNS });
`;
}

function writeTable(told: readonly Told[]): void {
  const weights = fitSizes(told.flatMap(learned).concat(exampleCases(RULES, COUNTS.example)));
  writeFileSync('src/language/items/size-weights.ts', tableText(weights));
  console.log(`${Object.keys(weights.votes).length} votes, ${Object.keys(weights.signs).length} signs`);
}

const args = process.argv.slice(2);
const told = args
  .filter((arg) => !arg.startsWith('--'))
  .map((file) => ({ story: readStoryFile(file), isWorked: /^(?:work-|story-dev)/.test(basename(file)) }));
if (args.includes('--check')) check(told, args.includes('--verbose'));
else writeTable(told);
