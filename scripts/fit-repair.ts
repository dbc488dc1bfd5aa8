// Fits the weights by which heard words are read as others of the same sound, on stories spoken by the learned voices:
// npx tsx scripts/fit-repair.ts [--corpus FOLDER] [--folder CACHE] [--check] [--verbose] [--missing]
// Each story's features come from tables that do not hold it: of what was counted in talk and of what was seen to be
// heard. --check fits without each part of the stories in turn and tells what that does to it, for many limits; --missing
// tells what no candidate holds; without either the two tables of weights are written.
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { seenInTalkBy } from '../src/language/heard/heard-as-table.ts';
import { doubtsInText } from '../src/language/heard/heard-doubts.ts';
import { mendText } from '../src/language/heard/mended-text.ts';
import { countTalkBy } from '../src/language/heard/neighbours.ts';
import { heardWords } from '../src/language/heard/repair.ts';
import { chosen, hasEvidence, isBorneOut, type Needed } from '../src/language/heard/trade-by-sound.ts';
import { FEATURES, SOUND_FEATURES } from '../src/language/heard/weigh-candidate.ts';
import { addToTally, emptyTally, type RepairTally } from './hearing/aligned.ts';
import { fitChoice } from './hearing/fit-choice.ts';
import { type Case, casesOf, type HeardMemo, type MemoCases, notFound } from './hearing/heard-cases.ts';
import { HearingCache, textOf } from './hearing/heard-talk.ts';
import { type Confusion, confusionsOf, confusionTable } from './hearing/seen-in-talk.ts';
import { TalkCounting } from './hearing/talk-counting.ts';
import { storiesToSpeak } from './hearing/texts.ts';
import { VOICES } from './hearing/voices.ts';

const args = process.argv.slice(2);
const verbose = args.includes('--verbose');
const after = (name: string) => {
  const at = args.indexOf(name);
  return at < 0 ? undefined : args[at + 1];
};
const cache = new HearingCache(after('--folder'));
const stories = storiesToSpeak(after('--corpus')).learned;
/** The stories are left out in so many parts. */
const PARTS = 8;

/** All memos in the cache, each with the names that the project would know by then: those of figures said before it. */
function memosHeard(): readonly HeardMemo[] {
  const memos: HeardMemo[] = [];
  for (const { story, memos: said } of stories)
    for (const { name: voice } of VOICES.filter(({ learned }) => learned)) {
      const known: string[] = [];
      for (const memo of said) {
        const talk = cache.find(memo.text, voice);
        if (talk)
          memos.push({
            story,
            voice,
            said: memo.text,
            heard: textOf(talk),
            knownItems: [...known],
            doubts: doubtsInText(talk.utterances) ?? [],
          });
        known.push(...(memo.figures ?? []).map(({ item }) => item));
      }
    }
  return memos;
}

/** The cases of every memo, judged by tables that its story is not in. */
function casesLeavingOut(memos: readonly HeardMemo[]): readonly MemoCases[] {
  const counting = new TalkCounting();
  for (const { memos: all } of stories) counting.add(all.map(({ text }) => text));
  const seen = memos.map(({ story, said, heard }) => ({ story, confusions: confusionsOf(said, heard) }));
  return stories.flatMap(({ story, memos: all }) => {
    const own = memos.filter((memo) => memo.story === story);
    if (own.length === 0) return [];
    const texts = all.map(({ text }) => text);
    counting.add(texts, -1);
    countTalkBy(counting.tables());
    counting.add(texts);
    const others = seen.filter((one) => one.story !== story);
    seenInTalkBy(confusionTable(others.flatMap(({ confusions }): readonly Confusion[] => confusions)));
    return own.map(casesOf);
  });
}

type Way = 'words' | 'sound';
const SIZES: Readonly<Record<Way, number>> = { words: FEATURES.length, sound: SOUND_FEATURES.length };
const LIKELY: Readonly<Record<Way, (features: readonly number[], isWord: boolean) => boolean>> = {
  words: isBorneOut,
  sound: hasEvidence,
};

/** The candidates for the same heard words: one of them was said, or what was heard. */
function choicesOf(memos: readonly MemoCases[], way: Way): readonly (readonly Case[])[] {
  return memos.flatMap(({ candidates }) => {
    const groups = new Map<string, Case[]>();
    for (const { candidate, case: one } of candidates) {
      if (!LIKELY[way](one.features, one.isWord)) continue;
      const key = `${candidate.from} ${candidate.to}`;
      groups.set(key, [...(groups.get(key) ?? []), one]);
    }
    return [...groups.values()];
  });
}

type Weights = Readonly<Record<Way, readonly number[]>>;
const fitted = (memos: readonly MemoCases[]): Weights => ({
  words: fitChoice(choicesOf(memos, 'words'), SIZES.words),
  sound: fitChoice(choicesOf(memos, 'sound'), SIZES.sound),
});

const score = (weights: readonly number[], features: readonly number[]) =>
  weights.reduce((sum, weight, k) => sum + weight * (features[k] as number), 0);

/** The candidates of one memo that are weighed, with their odds. */
function scoredOf(memo: MemoCases, weights: Weights, way: Way) {
  return memo.candidates.flatMap(({ candidate, case: one }) =>
    LIKELY[way](one.features, one.isWord)
      ? [{ candidate, one, isWord: one.isWord, odds: score(weights[way], one.features) }]
      : [],
  );
}
type ScoredCase = ReturnType<typeof scoredOf>[number];

/** What the repairs of one memo do, in words as they were said and heard. */
function apply(memo: MemoCases, picked: readonly ScoredCase[], tally: RepairTally): void {
  const words = heardWords(memo.heard);
  const repairs = picked.map(({ candidate: { from, to, means } }) => ({
    start: words[from]?.start ?? 0,
    end: words[to - 1]?.end ?? 0,
    means,
  }));
  addToTally(tally, memo.said, memo.heard, mendText(memo.heard, repairs).text, repairs.length);
}

const told = (t: RepairTally) =>
  `trade words ${t.tradeWords}, wrong ${t.tradeWrongBefore} -> ${t.tradeWrongAfter} (${((1 - t.tradeWrongAfter / t.tradeWrongBefore) * 100).toFixed(1)} % mended), new errors ${((t.newErrors / t.words) * 1000).toFixed(2)} per 1,000 words, ${t.repairs} repairs`;

/** How many repairs are right, and how many take a right word away: quick to count, and near to what they do. */
function outcome(picked: readonly ScoredCase[]): { readonly right: number; readonly broken: number } {
  const broken = picked.filter(({ one }) => !one.isRight && !one.isWrongAnyway);
  return {
    right: picked.filter(({ one }) => one.isRight).length,
    broken: broken.length,
  };
}

/** A new error in a thousand words is the most; what was left out may be a little worse. */
const MOST_BROKEN = 0.85;

/** Fits without each part of the stories and tells what the weights do to that part, for each way and the best limits. */
function check(memos: readonly MemoCases[]): void {
  const names = [...new Set(memos.map(({ story }) => story))];
  const partOf = (memo: MemoCases) => names.indexOf(memo.story) % PARTS;
  const byPart = Array.from({ length: PARTS }, (_, part) =>
    fitted(memos.filter((memo) => partOf(memo) !== part)),
  );
  const words = memos.reduce((sum, { heard }) => sum + heardWords(heard).length, 0);
  for (const way of ['words', 'sound'] as const) {
    const scored = memos.map((memo) => scoredOf(memo, byPart[partOf(memo)] as Weights, way));
    const best = [...allLimits()]
      .map((needed) => {
        const outcomes = scored.map((list) => outcome(chosen(list, needed)));
        const sum = (name: 'right' | 'broken') => outcomes.reduce((all, one) => all + one[name], 0);
        return { needed, right: sum('right'), broken: (sum('broken') / words) * 1000 };
      })
      .sort((a, b) => b.right - a.right);
    for (const most of [0.5, MOST_BROKEN, 1.5, 3]) {
      const one = best.find(({ broken }) => broken <= most);
      if (!one) continue;
      console.log(
        `${way}, ${JSON.stringify(one.needed)}: ${one.right} right, ${one.broken.toFixed(2)} broken in 1,000`,
      );
      if (most !== MOST_BROKEN) continue;
      const tally = emptyTally();
      memos.forEach((memo, at) => {
        const picked = chosen(scored[at] as readonly ScoredCase[], one.needed);
        if (verbose) tellPicked(scored[at] as readonly ScoredCase[], picked);
        apply(memo, picked, tally);
      });
      console.log(told(tally));
    }
  }
}

/** What was picked, and what was right and was not. */
function tellPicked(scored: readonly ScoredCase[], picked: readonly ScoredCase[]): void {
  for (const { one, odds } of scored.filter((case_) => picked.includes(case_) || case_.one.isRight)) {
    const isPicked = picked.some((other) => other.one === one);
    const what = one.isRight ? (isPicked ? 'RIGHT' : 'MISSED') : one.isWrongAnyway ? 'WRONG ANYWAY' : 'BROKE';
    console.log(what, odds.toFixed(1), one.told);
  }
}

/** Limits to choose from. */
function* allLimits(): Generator<Needed> {
  for (const least of [0.3, 0.4, 0.5])
    for (const mostHeard of [0.1, 0.2, 0.3, 0.4, 0.5])
      for (const mostHeardWord of [0.03, 0.05, 0.08, 0.1, 0.13, 0.16, 0.2, 0.25, 0.3, 0.35, 0.4, 0.5])
        yield { least, mostHeard, mostHeardWord };
}

/** Writes the two tables. */
function write(weights: Weights): void {
  for (const [way, file, type, name, features] of [
    ['words', 'repair-weights', 'Feature', 'REPAIR_WEIGHTS', FEATURES],
    ['sound', 'sound-weights', 'SoundFeature', 'SOUND_WEIGHTS', SOUND_FEATURES],
  ] as const) {
    const what = way === 'sound' ? 'a repair where the recogniser told its doubts' : 'a repair';
    const row = (feature: string, k: number) =>
      `  ${/\W/.test(feature) ? `'${feature}'` : feature}: ${Number((weights[way][k] ?? 0).toFixed(2))},`;
    writeFileSync(
      join(import.meta.dirname, `../src/language/heard/${file}.ts`),
      `/**
 * Weights of what speaks for and against ${what}. Written by scripts/fit-repair.ts; do not edit by
 * hand.
 */
import type { ${type} } from './weigh-candidate.ts';

export const ${name}: Readonly<Record<${type}, number>> = {
${features.map(row).join('\n')}
};
`,
    );
  }
}

const memos = casesLeavingOut(memosHeard());
const all = memos.flatMap(({ candidates }) => candidates.map((one) => one.case));
console.log(
  `${memos.length} memos, ${all.length} candidates, ${all.filter(({ isRight }) => isRight).length} right`,
);
if (args.includes('--missing'))
  for (const memo of memos) for (const line of notFound(memo)) console.log(line);
else if (args.includes('--check')) check(memos);
else {
  const weights = fitted(memos);
  SOUND_FEATURES.forEach((name, k) => {
    const [byWords, bySound] = [weights.words[k], weights.sound[k]];
    console.log(
      name.padEnd(26),
      byWords?.toFixed(2).padStart(7) ?? '       ',
      bySound?.toFixed(2).padStart(7),
    );
  });
  write(weights);
}
