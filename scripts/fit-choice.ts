// Fits the weights by which a quantity's thing is chosen: npx tsx scripts/fit-choice.ts [--check] STORY.json ...
// A candidate is right when its name is the annotated one's by the scoring rule. With --check each story is left out
// in turn and the others fitted, which tells how well the weights carry over; without, the table is written.
import { readFileSync, writeFileSync } from 'node:fs';
import { readItems } from '../src/language/items/assign-items.ts';
import type { Chosen, Weights } from '../src/language/items/choice.ts';
import { completedName } from '../src/language/items/completed-names.ts';
import { FRAMES } from '../src/language/items/frames/index.ts';
import type { Site } from '../src/language/items/site.ts';
import { singular } from '../src/language/lexicon/trade-nouns.ts';
import type { KnownFigure } from '../src/language/notes.ts';
import { readQuantities } from '../src/language/quantities.ts';
import { tokenise } from '../src/language/tokens.ts';
import { bracketed } from '../tests/kit/bracketed.ts';
import { LEARNED } from '../tests/kit/said-of.ts';
import { sameItem, sameQuantity } from '../tests/kit/score-story.ts';
import type { GoldFigure, GoldMemo, Story } from '../tests/kit/story.ts';

const drop = process.argv.find((arg) => arg.startsWith('--drop='))?.slice(7);
const DROP = drop ? new RegExp(drop) : undefined;

interface Case {
  /** Memo, sentence and annotated item, to print. */
  readonly told: string;
  readonly candidates: readonly {
    readonly key: string;
    readonly features: readonly (readonly [string, number])[];
    readonly isRight: boolean;
    readonly isBest: boolean;
  }[];
}

/** The annotated figure that a read quantity is, as the scorer would match them. */
function goldOf(
  memo: GoldMemo,
  quantity: { span: { start: number; end: number }; value: number; unit: string; high?: number },
  used: Set<GoldFigure>,
) {
  const overlap = (figure: GoldFigure) => {
    const start = memo.text.indexOf(figure.quote);
    return Math.min(start + figure.quote.length, quantity.span.end) - Math.max(start, quantity.span.start);
  };
  const [best] = (memo.figures ?? [])
    .filter((figure) => figure.dimension !== 'count' && !used.has(figure) && sameQuantity(figure, quantity))
    .sort((a, b) => overlap(b) - overlap(a));
  if (best) used.add(best);
  return best;
}

const wordsOf = (name: string) =>
  new Set(
    name
      .toLowerCase()
      .split(/[\s,-]+/)
      .filter((word) => !/^(?:|the|a|an|of|its|as|they|should|be)$/.test(word))
      .map(singular),
  );

/** How alike two names are: twice the shared words by all words. */
function likeness(a: string, b: string): number {
  const x = wordsOf(a);
  const y = wordsOf(b);
  const shared = [...x].filter((word) => y.has(word)).length;
  return (2 * shared) / Math.max(1, x.size + y.size);
}

/** What was weighed for one quantity, with the right ones marked; the best are those most like the annotated name. */
function caseOf(site: Site, chosen: Chosen | undefined, item: string, where: string): Case {
  const { text } = site.parse;
  const { start, end } = site.parse.words[site.at]?.span ?? { start: 0, end: 0 };
  const flat = (from: number, to: number) => text.slice(Math.max(0, from), to).replace(/\s+/g, ' ');
  const found = (chosen?.weighed ?? []).map(({ candidate, features }) => {
    const name = completedName(site, candidate.name).join(' ');
    return { key: candidate.key, features, isRight: sameItem(item, name), alike: likeness(item, name) };
  });
  const most = Math.max(0, ...found.filter((c) => c.isRight).map((c) => c.alike));
  return {
    told: `${where} "${flat(start - 160, start)}[${flat(start, end)}]${flat(end, end + 60)}" GOLD ${item}`,
    candidates: found.map(({ key, features, isRight, alike }) => ({
      key,
      features,
      isRight,
      isBest: isRight && alike > most - 0.12,
    })),
  };
}

/** The frames' own examples and some sentences more, each with the item that it stands for. */
function exampleCases(weights: Weights): Case[] {
  const cases: Case[] = [];
  for (const [marked, items] of [...FRAMES.flatMap((frame) => frame.examples), ...LEARNED]) {
    const { text, quantities } = bracketed(marked);
    const wanted = items.split(', ');
    readItems(
      text,
      quantities,
      { units: 'metric', recordedAt: '2026-05-01T12:00:00Z' },
      {
        weights,
        observe: (site, k, chosen) => cases.push(caseOf(site, chosen, wanted[k] ?? '', 'example')),
      },
    );
  }
  // Few sentences, each for a way of speaking: they count as much as a handful of figures in a story.
  return [...cases, ...cases, ...cases, ...cases, ...cases, ...cases];
}

export function casesOf(story: Story, weights: Weights): Case[] {
  const cases: Case[] = [];
  const known: KnownFigure[] = [];
  for (const memo of story.memos) {
    const context = {
      units: story.units,
      ...(story.region ? { region: story.region } : {}),
      recordedAt: memo.recordedAt,
      knownItems: [...new Set(known.map((figure) => figure.item))],
      knownFigures: [...known],
    };
    const { quantities } = readQuantities(memo.text, tokenise(memo.text), context);
    const used = new Set<GoldFigure>();
    const { figures } = readItems(memo.text, quantities, context, {
      weights,
      observe: (site, k, chosen) => {
        const quantity = quantities[k];
        if (!quantity || quantity.dimension === 'count') return;
        const gold = goldOf(memo, quantity, used);
        if (!gold) return;
        cases.push(caseOf(site, chosen, gold.item, `${story.story} ${memo.id}`));
      },
    });
    for (const { item, attribute, value, unit, limit } of figures)
      if (!limit?.about) known.push({ item, attribute, value, unit });
  }
  return cases;
}

/** Conditional logit with an L2 penalty, by Adam on the whole set; several right candidates share the credit. */
export function fitWeights(cases: readonly Case[], penalty: number, rounds = 120): Weights {
  const useful = cases.filter(
    ({ candidates }) => candidates.some((c) => c.isBest) && candidates.some((c) => !c.isBest),
  );
  const index = new Map<string, number>();
  const seen = new Map<string, number>();
  for (const { candidates } of useful)
    for (const c of candidates) for (const [name] of c.features) seen.set(name, (seen.get(name) ?? 0) + 1);
  for (const [name, n] of seen) if (n >= 8 && !DROP?.test(name)) index.set(name, index.size);
  // Flat arrays: one run of ids and sizes per candidate, one run of candidates per case.
  const ids: number[] = [];
  const sizes: number[] = [];
  const ends: number[] = [];
  const isRight: boolean[] = [];
  const caseEnds: number[] = [];
  for (const { candidates } of useful) {
    for (const c of candidates) {
      for (const [name, size] of c.features) {
        const id = index.get(name);
        if (id === undefined) continue;
        ids.push(id);
        sizes.push(size);
      }
      ends.push(ids.length);
      isRight.push(c.isBest);
    }
    caseEnds.push(ends.length);
  }
  const id = Int32Array.from(ids);
  const size = Float64Array.from(sizes);
  const end = Int32Array.from(ends);
  const w = new Float64Array(index.size);
  const m = new Float64Array(index.size);
  const v = new Float64Array(index.size);
  const g = new Float64Array(index.size);
  const exp = new Float64Array(end.length);
  for (let round = 1; round <= rounds; round++) {
    g.fill(0);
    let from = 0;
    for (const to of caseEnds) {
      let most = Number.NEGATIVE_INFINITY;
      for (let c = from; c < to; c++) {
        let sum = 0;
        for (let k = c === 0 ? 0 : (end[c - 1] as number); k < (end[c] as number); k++)
          sum += (w[id[k] as number] as number) * (size[k] as number);
        exp[c] = sum;
        if (sum > most) most = sum;
      }
      let all = 0;
      let right = 0;
      for (let c = from; c < to; c++) {
        exp[c] = Math.exp((exp[c] as number) - most);
        all += exp[c] as number;
        if (isRight[c]) right += exp[c] as number;
      }
      for (let c = from; c < to; c++) {
        const d = (exp[c] as number) / all - (isRight[c] ? (exp[c] as number) / right : 0);
        if (Math.abs(d) < 1e-6) continue;
        for (let k = c === 0 ? 0 : (end[c - 1] as number); k < (end[c] as number); k++)
          g[id[k] as number] = (g[id[k] as number] as number) + d * (size[k] as number);
      }
      from = to;
    }
    const rate = 0.1 * (1 - round / (rounds * 1.1));
    for (let k = 0; k < w.length; k++) {
      const grad = (g[k] as number) + penalty * (w[k] as number);
      m[k] = 0.9 * (m[k] as number) + 0.1 * grad;
      v[k] = 0.999 * (v[k] as number) + 0.001 * grad * grad;
      const mHat = (m[k] as number) / (1 - 0.9 ** round);
      const vHat = (v[k] as number) / (1 - 0.999 ** round);
      w[k] = (w[k] as number) - (rate * mHat) / (Math.sqrt(vHat) + 1e-8);
    }
  }
  const out: Record<string, number> = {};
  // What the first frame says is worth more than this small set shows: the sentences it must read are few in it.
  const trust = Number(process.argv.find((arg) => arg.startsWith('--trust='))?.slice(8) ?? 0.6);
  for (const [name, k] of index)
    if (Math.abs(w[k] as number) >= 0.02) out[name] = Math.round((w[k] as number) * 100) / 100;
  out.first = (out.first ?? 0) + trust;
  return out;
}

function right(
  cases: readonly Case[],
  weights: Weights,
  log = false,
): { right: number; oracle: number; all: number; first: number } {
  let hits = 0;
  let oracle = 0;
  let first = 0;
  for (const { told, candidates } of cases) {
    const scored = candidates.map((c) => ({
      ...c,
      score: c.features.reduce((s, [n, x]) => s + (weights[n] ?? 0) * x, 0),
    }));
    scored.sort((a, b) => b.score - a.score);
    if (scored[0]?.isRight) hits++;
    else if (log) {
      const wrong = scored[0];
      const best = scored.find((c) => c.isRight);
      console.log(
        `\n${told}\n   SAID ${wrong?.key} ${wrong?.score.toFixed(2)} | RIGHT ${best ? `${best.key} ${best.score.toFixed(2)}` : '- none -'}`,
      );
      if (wrong && best) {
        const net = new Map<string, number>();
        for (const [n, x] of wrong.features) net.set(n, (net.get(n) ?? 0) + (weights[n] ?? 0) * x);
        for (const [n, x] of best.features) net.set(n, (net.get(n) ?? 0) - (weights[n] ?? 0) * x);
        console.log(
          `   ${[...net]
            .filter(([, d]) => Math.abs(d) > 0.25)
            .sort((a, b) => b[1] - a[1])
            .map(([n, d]) => `${n} ${d.toFixed(1)}`)
            .join(', ')}`,
        );
      }
    }
    if (candidates.some((c) => c.isRight)) oracle++;
    if (candidates.some((c) => c.isRight && c.features.some(([n]) => n === 'first'))) first++;
  }
  return { right: hits, oracle, all: cases.length, first };
}

/** The same story with few stops and no commas, as a recogniser may write it; quotes follow. */
export function unpunctuated(story: Story): Story {
  const strip = (text: string) => text.replace(/,(?!\d)/g, '').replace(/[.!?](?= [A-Za-z])/g, '');
  return {
    ...story,
    story: `${story.story} bare`,
    memos: story.memos.map((memo) => ({
      ...memo,
      text: strip(memo.text),
      figures: (memo.figures ?? []).map((figure) => ({ ...figure, quote: strip(figure.quote).trim() })),
    })),
  };
}

const RULES: Weights = { first: 5 };
const args = process.argv.slice(2);
const penalty = Number(args.find((arg) => arg.startsWith('--penalty='))?.split('=')[1] ?? 4);
const stories = args
  .filter((arg) => !arg.startsWith('--'))
  .map((file) => JSON.parse(readFileSync(file, 'utf8')) as Story);
const sets = (weights: Weights) =>
  stories.map((story) => ({ plain: casesOf(story, weights), bare: casesOf(unpunctuated(story), weights) }));

if (args.includes('--check')) {
  const total = { right: 0, oracle: 0, all: 0, first: 0 };
  const bare = { right: 0, oracle: 0, all: 0, first: 0 };
  const base = sets(RULES);
  stories.forEach((story, k) => {
    const others = base
      .filter((_, j) => j !== k)
      .flatMap((set) => [...set.plain, ...set.bare])
      .concat(exampleCases(RULES));
    const weights = fitWeights(others, penalty);
    const plain = right(casesOf(story, weights), weights, args.includes('--verbose'));
    const stripped = right(casesOf(unpunctuated(story), weights), weights);
    const rules = right(base[k]?.plain ?? [], RULES);
    const rulesBare = right(base[k]?.bare ?? [], RULES);
    console.log(
      `${story.story.padEnd(14)} rules ${(rules.first / rules.all).toFixed(3)} weighed ${(plain.right / plain.all).toFixed(3)} possible ${(plain.oracle / plain.all).toFixed(3)} | bare: ${(rulesBare.first / rulesBare.all).toFixed(3)} ${(stripped.right / stripped.all).toFixed(3)} ${(stripped.oracle / stripped.all).toFixed(3)}`,
    );
    for (const key of ['right', 'oracle', 'all'] as const) {
      total[key] += plain[key];
      bare[key] += stripped[key];
    }
    total.first += rules.first;
    bare.first += rulesBare.first;
  });
  for (const t of [total, bare])
    console.log(
      `all: rules ${(t.first / t.all).toFixed(3)} weighed ${(t.right / t.all).toFixed(3)} possible ${(t.oracle / t.all).toFixed(3)} of ${t.all}`,
    );
} else {
  let weights: Weights = RULES;
  for (let turn = 0; turn < 3; turn++)
    weights = fitWeights(
      sets(weights)
        .flatMap((set) => [...set.plain, ...set.bare])
        .concat(exampleCases(weights)),
      penalty,
    );
  const lines = Object.entries(weights)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([name, weight]) => `  ${JSON.stringify(name)}: ${weight},`);
  writeFileSync(
    'src/language/items/choice-weights.ts',
    `/** What each feature of \`choice-features.ts\` weighs. Written by scripts/fit-choice.ts; do not edit by hand. */\nexport const CHOICE_WEIGHTS: Readonly<Record<string, number>> = {\n${lines.join('\n')}\n};\n`,
  );
  console.log(`${lines.length} weights`);
}
