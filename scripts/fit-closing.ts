/**
 * Fits what speaks for a deed being the end of an open task (logistic, L2) on annotated stories:
 * `npx tsx scripts/fit-closing.ts STORY …` writes src/model/closing-weights.ts; `--check` deals the stories to six
 * folds, leaves out each in turn, and writes nothing.
 */
import { writeFileSync } from 'node:fs';
import { pairsOf } from '../src/model/closing.ts';
import type { Sign } from '../src/model/closing-signs.ts';
import { Draft } from '../src/model/draft.ts';
import { tellingStems } from '../src/model/open-tasks.ts';
import { memoView } from '../src/model/project-views.ts';
import type { TaskRow } from '../src/model/rows.ts';
import { deedsOf } from '../src/model/tasks.ts';
import { Working } from '../src/model/working.ts';
import { tellStory } from '../tests/kit/read-story.ts';
import type { GoldMemo, Story } from '../tests/kit/story.ts';
import { readStoryFile } from '../tests/kit/story-file.ts';
import { fitSigns, type SignWeights, sumOf, tableOf } from './sign-fit.ts';

interface Case {
  readonly story: string;
  /** Pairs of one memo share a name. */
  readonly memo: string;
  readonly at: number;
  readonly index: number;
  readonly signs: readonly Sign[];
  readonly isRight: boolean;
}

const rangeIn = (text: string, quote: string): readonly [number, number] | undefined => {
  const start = text.indexOf(quote);
  return start < 0 ? undefined : [start, start + quote.length];
};
const isSame = (text: string, a: string, b: string): boolean => {
  const [x, y] = [rangeIn(text, a), rangeIn(text, b)];
  if (!x || !y) return false;
  const overlap = Math.min(x[1], y[1]) - Math.max(x[0], y[0]);
  return overlap >= 0.5 * Math.min(x[1] - x[0], y[1] - y[0]);
};

/** The pairs of one story, as they come up while it is told. */
function casesOf(story: Story): readonly Case[] {
  const cases: Case[] = [];
  const goldOf = new Map<string, string>();
  let open: readonly TaskRow[] = [];
  tellStory(story, {
    before: (project) => {
      open = project.rows.all('tasks').filter(({ status }) => status === 'open');
    },
    after: (project, memo: GoldMemo) => {
      const view = memoView(project.rows, memo.id);
      if (!view) return;
      const { notes } = view;
      for (const gold of memo.tasks ?? []) {
        const said = notes.tasks.find(
          ({ id, quote }) => !goldOf.has(id) && isSame(memo.text, gold.quote, quote),
        );
        if (said) goldOf.set(said.id, gold.id);
      }
      const work = new Working(
        new Draft(project.rows),
        { ...memo, notes } as never,
        { tolerances: {} } as never,
      );
      const closes = new Map<string, string | null | undefined>();
      for (const gold of memo.done ?? []) {
        const said = notes.done.find(
          ({ id, quote }) => !closes.has(id) && isSame(memo.text, gold.quote, quote),
        );
        if (said) closes.set(said.id, gold.closes);
      }
      const deeds = deedsOf(work, notes.done, []);
      const stems = new Set(
        tellingStems(...deeds.flatMap(({ gist, quote, around }) => [gist, quote, around])),
      );
      const asked = open.filter(({ gist, quote, around }) =>
        tellingStems(gist, quote, around).some((stem) => stems.has(stem)),
      );
      for (const { at, index, signs } of pairsOf(deeds, asked, memo.recordedAt)) {
        const wanted = closes.get(notes.done[at]?.id ?? '');
        const isRight = wanted != null && goldOf.get(asked[index]?.id ?? '') === wanted;
        if (!signs) continue;
        cases.push({ story: story.story, memo: `${story.story} ${memo.id}`, at, index, signs, isRight });
      }
    },
  });
  return cases;
}

type Weights = SignWeights;
const PENALTY = 2;
const fitCases = (cases: readonly Case[]): Weights => fitSigns(cases, PENALTY);

/** The pairs that are taken, best first, each deed and each task once: as in `allClosedBy`. */
function taken(cases: readonly Case[], weights: Weights, loud: number): readonly Case[] {
  const byMemo = grouped(cases, ({ memo }) => memo);
  return [...byMemo.values()].flatMap((pairs) => {
    const rated = pairs
      .map((pair) => ({ pair, sum: sumOf(weights, pair.signs) }))
      .filter(({ sum }) => sum >= loud)
      .sort((a, b) => b.sum - a.sum);
    const [deeds, tasks] = [new Set<number>(), new Set<number>()];
    return rated.flatMap(({ pair }) => {
      if (deeds.has(pair.at) || tasks.has(pair.index)) return [];
      deeds.add(pair.at);
      tasks.add(pair.index);
      return [pair];
    });
  });
}

function grouped<T, K>(list: readonly T[], keyOf: (one: T) => K): Map<K, T[]> {
  const groups = new Map<K, T[]>();
  for (const one of list) {
    const key = keyOf(one);
    groups.set(key, [...(groups.get(key) ?? []), one]);
  }
  return groups;
}

const LEVELS = [-1.2, -1, -0.8, -0.6, -0.4, -0.2, 0, 0.2, 0.4];

function told(cases: readonly Case[], weightsOf: (one: Case) => Weights): void {
  const wanted = cases.filter(({ isRight }) => isRight).length;
  for (const loud of LEVELS) {
    const groups = grouped(cases, weightsOf);
    const picked = [...groups].flatMap(([weights, own]) => taken(own, weights, loud));
    const right = picked.filter(({ isRight }) => isRight).length;
    const f1 = (2 * right) / (picked.length + wanted);
    console.log(`loud ${loud}: said ${picked.length} right ${right} of ${wanted} F1 ${f1.toFixed(3)}`);
  }
}

const FOLDS = 6;
const files = process.argv.slice(2).filter((word) => !word.startsWith('--'));
const cases = files.flatMap((file) => casesOf(readStoryFile(file)));
console.log(`${cases.length} pairs, ${cases.filter(({ isRight }) => isRight).length} right`);
if (process.argv.includes('--check')) {
  const names = [...new Set(cases.map(({ story }) => story))];
  const foldOf = (story: string) => names.indexOf(story) % FOLDS;
  const fitted = Array.from({ length: FOLDS }, (_, fold) =>
    fitCases(cases.filter(({ story }) => foldOf(story) !== fold)),
  );
  told(cases, ({ story }) => fitted[foldOf(story)] as Weights);
} else {
  const weights = fitCases(cases);
  told(cases, () => weights);
  writeFileSync(
    'src/model/closing-weights.ts',
    `/** Written by scripts/fit-closing.ts: what each sign of \`closing-signs.ts\` weighs. */
export const CLOSING_WEIGHTS: Readonly<Record<string, number>> = {
${tableOf(weights)}
};

/** A deed ends a task where the signs come to this much. */
export const LOUD = -0.2;
`,
  );
}
