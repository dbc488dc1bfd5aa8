// Fits the weights by which a quantity's thing is chosen: npx tsx scripts/fit-choice.ts [--check] STORY ...
// A candidate is right when its name is the annotated one's by the scoring rule. With --check the stories are dealt to
// six folds; each is left out in turn and the others fitted, which tells how well the weights carry over. Without, the
// table is written, in two rounds. --verbose tells what was got wrong and why.
import { writeFileSync } from 'node:fs';
import type { Weights } from '../src/language/items/choice.ts';
import { withoutStops } from '../tests/kit/figure-at.ts';
import { readStoryFile } from '../tests/kit/story-file.ts';
import { type Case, casesOf, exampleCases } from './choice-cases.ts';
import { fitWeights } from './choice-fit.ts';

const FOLDS = 6;
/**
 * What the stories are read with to be learned from: the first frame's word. Read with weights that know them already,
 * each figure would find the one before it named right, and would learn to trust it more than new talk bears out.
 */
const FRAMES_ALONE: Weights = { first: 5 };

interface Hits {
  readonly right: number;
  /** Cases whose right thing was among those weighed. */
  readonly possible: number;
  readonly all: number;
}

type Scored = Case['candidates'][number] & { readonly score: number };

const scored = (weights: Weights, { candidates }: Case): Scored[] =>
  candidates
    .map((c) => ({ ...c, score: c.features.reduce((sum, [n, x]) => sum + (weights[n] ?? 0) * x, 0) }))
    .sort((a, b) => b.score - a.score);

/** What told the wrong thing from the right one, the strongest first. */
function reasons(weights: Weights, wrong: Scored, best: Scored): string {
  const net = new Map<string, number>();
  for (const [n, x] of wrong.features) net.set(n, (net.get(n) ?? 0) + (weights[n] ?? 0) * x);
  for (const [n, x] of best.features) net.set(n, (net.get(n) ?? 0) - (weights[n] ?? 0) * x);
  return [...net]
    .filter(([, d]) => Math.abs(d) > 0.25)
    .sort((a, b) => b[1] - a[1])
    .map(([n, d]) => `${n} ${d.toFixed(1)}`)
    .join(', ');
}

function tellMiss(weights: Weights, told: string, order: readonly Scored[]): void {
  const [wrong] = order;
  const best = order.find((c) => c.isRight);
  const name = (c: Scored | undefined) => (c ? `${c.key} ${c.score.toFixed(2)}` : '- none -');
  console.log(`\n${told}\n   SAID ${name(wrong)} | RIGHT ${name(best)}`);
  if (wrong && best) console.log(`   ${reasons(weights, wrong, best)}`);
}

function hits(cases: readonly Case[], weights: Weights, verbose = false): Hits {
  let right = 0;
  let possible = 0;
  for (const one of cases) {
    const order = scored(weights, one);
    if (order[0]?.isRight) right++;
    else if (verbose) tellMiss(weights, one.told, order);
    if (order.some((c) => c.isRight)) possible++;
  }
  return { right, possible, all: cases.length };
}

const share = ({ right, possible, all }: Hits): string =>
  `${(right / all).toFixed(3)} of ${(possible / all).toFixed(3)} possible`;
const plus = (a: Hits, b: Hits): Hits => ({
  right: a.right + b.right,
  possible: a.possible + b.possible,
  all: a.all + b.all,
});

const args = process.argv.slice(2);
const verbose = args.includes('--verbose');
const stories = args.filter((arg) => !arg.startsWith('--')).map(readStoryFile);
const sets = (weights: Weights) =>
  stories.map((story) => [...casesOf(story, weights), ...casesOf(withoutStops(story), weights)]);

/** Weights for each fold, fitted on the stories of the others as read with the frames alone. */
function foldWeights(examples: readonly Case[]): readonly Weights[] {
  const base = sets(FRAMES_ALONE);
  return Array.from({ length: Math.min(FOLDS, stories.length) }, (_, fold) =>
    fitWeights(base.flatMap((set, k) => (k % FOLDS === fold ? [] : set)).concat(examples)),
  );
}

function check(): void {
  const fits = foldWeights(exampleCases(FRAMES_ALONE));
  let plain: Hits = { right: 0, possible: 0, all: 0 };
  let bare = plain;
  stories.forEach((story, k) => {
    const weights = fits[k % FOLDS] as Weights;
    const told = hits(casesOf(story, weights), weights, verbose);
    const stripped = hits(casesOf(withoutStops(story), weights), weights);
    console.log(`${story.story.padEnd(14)} ${share(told)}; without stops ${share(stripped)}`);
    plain = plus(plain, told);
    bare = plus(bare, stripped);
  });
  console.log(`all: ${share(plain)} (${plain.all}); without stops ${share(bare)} (${bare.all})`);
}

/**
 * Fits in two rounds. What was named just before is evidence itself, so that each story is read for the second round by
 * weights that were fitted on the others: as right and as wrong as new talk will be.
 */
function writeTable(): void {
  const examples = exampleCases(FRAMES_ALONE);
  const fits = foldWeights(examples);
  const cases = stories.flatMap((story, k) => {
    const weights = fits[k % FOLDS] as Weights;
    return [...casesOf(story, weights), ...casesOf(withoutStops(story), weights)];
  });
  const weights = fitWeights(cases.concat(examples));
  const lines = Object.entries(weights)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([name, weight]) => `  ${JSON.stringify(name)}: ${weight},`);
  writeFileSync(
    'src/language/items/choice-weights.ts',
    `/** What each feature of \`choice-features.ts\` weighs. Written by scripts/fit-choice.ts; do not edit by hand. */\nexport const CHOICE_WEIGHTS: Readonly<Record<string, number>> = {\n${lines.join('\n')}\n};\n`,
  );
  console.log(`${lines.length} weights`);
}

if (args.includes('--check')) check();
else writeTable();
