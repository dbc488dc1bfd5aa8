// Fits the weights by which heard words are read as others of the same sound, on stories spoken by the learned voices:
// npx tsx scripts/fit-repair.ts --corpus FOLDER [--sound] [--check] [--verbose]
// --sound fits those that also weigh what the recogniser told of its doubts.
// --check leaves each story out in turn and tells what the weights of the others do to it; without it the table is
// written.
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { candidatesIn } from '../src/language/heard/heard-candidates.ts';
import { doubtsInText, type HeardDoubt } from '../src/language/heard/heard-doubts.ts';
import { mendText } from '../src/language/heard/mended-text.ts';
import { heardWords } from '../src/language/heard/repair.ts';
import { SoundIndex, tradeBySound } from '../src/language/heard/sound-index.ts';
import {
  chosen,
  hasEvidence,
  isBorneOut,
  isOfWords,
  NEEDED,
  NEEDED_WITH_SOUND,
  type Needed,
  sceneOf,
} from '../src/language/heard/trade-by-sound.ts';
import {
  type Candidate,
  doubtsByPlace,
  SOUND_FEATURES,
  FEATURES as WORD_FEATURES,
  weigh,
  weighWithSound,
} from '../src/language/heard/weigh-candidate.ts';
import { singular } from '../src/language/lexicon/trade-nouns.ts';
import { addToTally, align, emptyTally, plainWord, type RepairTally, wordsApart } from './hearing/aligned.ts';
import { HearingCache, textOf } from './hearing/heard-talk.ts';
import { storiesToSpeak } from './hearing/texts.ts';
import { VOICES } from './hearing/voices.ts';

interface Case {
  readonly features: readonly number[];
  readonly isRight: boolean;
  readonly isWord: boolean;
  /** The heard words are wrong as they stand: to read them otherwise makes no right word wrong. */
  readonly isWrongAnyway: boolean;
  readonly told: string;
}
interface Memo {
  readonly story: string;
  readonly said: string;
  readonly heard: string;
  readonly candidates: readonly { readonly candidate: Candidate; readonly case: Case }[];
}

const args = process.argv.slice(2);
const verbose = args.includes('--verbose');
const withSound = args.includes('--sound');
const FEATURES: readonly string[] = withSound ? SOUND_FEATURES : WORD_FEATURES;
const corpus = args[args.indexOf('--corpus') + 1];
const cache = new HearingCache();
const NONE = new SoundIndex([]);

interface HeardMemo {
  readonly story: string;
  readonly said: string;
  readonly heard: string;
  readonly knownItems: readonly string[];
  readonly doubts: readonly HeardDoubt[];
}

/**
 * The candidates in one heard memo, each marked right when it brings the heard words beside it nearer to the said ones and
 * all of its own words were said there.
 */
function casesOf({ story, said, heard, knownItems, doubts }: HeardMemo): Memo {
  const byPlace = doubtsByPlace(doubts);
  const words = heardWords(heard);
  const scene = sceneOf(words, { knownItems });
  const reference = heardWords(said).map(({ lower }) => plainWord(lower));
  const spoken = words.map(({ lower }) => plainWord(lower));
  const pairing = align(reference, spoken);
  // For each heard word the said word beside it.
  const saidBeside = new Int32Array(spoken.length).fill(-1);
  pairing.forEach((h, s) => {
    if (h >= 0) saidBeside[h] = s;
  });
  const candidates = candidatesIn(words, tradeBySound(), NONE).map((candidate) => {
    let first = candidate.from - 1;
    while (first >= 0 && saidBeside[first] === -1) first--;
    let last = candidate.to;
    while (last < spoken.length && saidBeside[last] === -1) last++;
    const start = first < 0 ? 0 : (saidBeside[first] as number) + 1;
    const end = last >= spoken.length ? reference.length : (saidBeside[last] as number);
    const region = reference.slice(start, end);
    const window = spoken.slice(first + 1, last);
    const mended = [
      ...spoken.slice(first + 1, candidate.from),
      ...candidate.means.split(' ').map(plainWord),
      ...spoken.slice(candidate.to, last),
    ];
    // One and many of a thing name the same thing.
    const stems = (list: readonly string[]) => list.map(singular);
    const gain = wordsApart(stems(region), stems(window)) - wordsApart(stems(region), stems(mended));
    const isWrongAnyway = spoken
      .slice(candidate.from, candidate.to)
      .some((word, at) => reference[saidBeside[candidate.from + at] as number] !== word);
    const told = `${words
      .slice(Math.max(0, candidate.from - 3), candidate.from)
      .map((w) => w.lower)
      .join(' ')} [${words
      .slice(candidate.from, candidate.to)
      .map((w) => w.lower)
      .join(' ')} > ${candidate.means}] ${words
      .slice(candidate.to, candidate.to + 3)
      .map((w) => w.lower)
      .join(' ')} | said: ${region.join(' ')}`;
    return {
      candidate,
      case: {
        features: withSound ? weighWithSound(scene, candidate, byPlace) : weigh(scene, candidate),
        isWord: isOfWords(words, candidate),
        isRight:
          gain > 0 &&
          candidate.means
            .split(' ')
            .map(plainWord)
            .every((word) => region.some((other) => singular(other) === singular(word))),
        isWrongAnyway,
        told,
      },
    };
  });
  return { story, said, heard, candidates };
}

/** All memos in the cache, each with the names that the project would know by then: those of figures said before it. */
function memosHeard(): readonly Memo[] {
  const memos: Memo[] = [];
  for (const story of storiesToSpeak(corpus).learned)
    for (const voice of VOICES.filter(({ learned }) => learned)) {
      const known: string[] = [];
      for (const memo of story.memos) {
        const heard = cache.find(memo.text, voice.name);
        if (heard)
          memos.push(
            casesOf({
              story: story.story,
              said: memo.text,
              heard: textOf(heard),
              knownItems: [...known],
              doubts: doubtsInText(heard.utterances) ?? [],
            }),
          );
        known.push(...(memo.figures ?? []).map(({ item }) => item));
      }
    }
  return memos;
}

/** The candidates for the same heard words: one of them was said, or what was heard. */
function choicesOf(memos: readonly Memo[]): readonly (readonly Case[])[] {
  return memos.flatMap(({ candidates }) => {
    const groups = new Map<string, Case[]>();
    for (const { candidate, case: one } of candidates) {
      const key = `${candidate.from} ${candidate.to}`;
      groups.set(key, [...(groups.get(key) ?? []), one]);
    }
    return [...groups.values()];
  });
}

/** Fits a choice among candidates and what was heard, by Adam; features are brought to one scale first. */
function fitChoice(choices: readonly (readonly Case[])[]): readonly number[] {
  const size = FEATURES.length;
  const cases = choices.flat();
  const scale = FEATURES.map((_, k) => {
    const mean = cases.reduce((sum, { features }) => sum + (features[k] as number) ** 2, 0) / cases.length;
    return Math.sqrt(mean) || 1;
  });
  const rows = choices.map((group) =>
    group.map(({ features, isRight, isWrongAnyway }) => ({
      isRight,
      isWrongAnyway,
      x: features.map((value, k) => value / (scale[k] as number)),
    })),
  );
  const weights = new Float64Array(size);
  const m = new Float64Array(size);
  const v = new Float64Array(size);
  for (let round = 1; round <= ROUNDS; round++) {
    const gradient = new Float64Array(size);
    for (const group of rows) {
      const odds = group.map(({ x }) =>
        Math.exp(x.reduce((sum, value, k) => sum + value * (weights[k] as number), 0)),
      );
      const all = 1 + odds.reduce((sum, one) => sum + one, 0);
      const rightOdds = group.reduce((sum, { isRight }, at) => sum + (isRight ? (odds[at] as number) : 0), 0);
      const weight = rightOdds === 0 && group[0]?.isWrongAnyway ? WRONG_ANYWAY : 1;
      group.forEach(({ isRight, x }, at) => {
        const chance = (odds[at] as number) / all;
        const error = chance - (isRight ? (odds[at] as number) / rightOdds : 0);
        for (let k = 0; k < size; k++)
          gradient[k] = (gradient[k] as number) + weight * error * (x[k] as number);
      });
    }
    for (let k = 0; k < size; k++) {
      const slope = (gradient[k] as number) / rows.length + PENALTY * (weights[k] as number);
      m[k] = 0.9 * (m[k] as number) + 0.1 * slope;
      v[k] = 0.999 * (v[k] as number) + 0.001 * slope * slope;
      weights[k] =
        (weights[k] as number) -
        (0.1 * (1 - round / (ROUNDS * 1.1)) * ((m[k] as number) / (1 - 0.9 ** round))) /
          (Math.sqrt((v[k] as number) / (1 - 0.999 ** round)) + 1e-8);
    }
  }
  return [...weights].map((weight, k) => weight / (scale[k] as number));
}
const ROUNDS = 300;
/** Keeps weights small that few cases speak for (ridge). */
const PENALTY = 0.001;
/** How much a choice counts in which no candidate is right and the heard words are wrong too: to read them otherwise does little harm. */
const WRONG_ANYWAY = 0.2;

const score = (weights: readonly number[], features: readonly number[]) =>
  features.reduce((sum, value, k) => sum + value * (weights[k] ?? 0), 0);

/** Makes the repairs of one memo that these weights make, and adds what they did to the tally. */
function apply(
  memo: Memo,
  weights: readonly number[],
  needed: Needed,
  tally: RepairTally,
  tell: boolean,
): void {
  const scored = memo.candidates
    .filter(({ case: one }) => (withSound ? hasEvidence : isBorneOut)(one.features, one.isWord))
    .map(({ candidate, case: one }) => ({
      candidate,
      odds: score(weights, one.features),
      isWord: one.isWord,
      one,
    }));
  const picked = chosen(scored, needed);
  const words = heardWords(memo.heard);
  const repairs = picked.map(({ candidate }) => ({
    start: words[candidate.from]?.start ?? 0,
    end: words[candidate.to - 1]?.end ?? 0,
    means: candidate.means,
  }));
  if (tell)
    for (const { one, odds } of picked)
      console.log(one.isRight ? 'RIGHT' : 'WRONG', odds.toFixed(1), one.told);
  addToTally(tally, memo.said, memo.heard, mendText(memo.heard, repairs).text, repairs.length);
}

const tell = (name: string, t: RepairTally) =>
  console.log(
    `${name}: trade words ${t.tradeWords}, wrong ${t.tradeWrongBefore} -> ${t.tradeWrongAfter} (${((1 - t.tradeWrongAfter / t.tradeWrongBefore) * 100).toFixed(1)} % mended), new errors ${((t.newErrors / t.words) * 1000).toFixed(2)} per 1,000 words, ${t.repairs} repairs`,
  );

const memos = memosHeard();
const stories = [...new Set(memos.map(({ story }) => story))];
const all = memos.flatMap(({ candidates }) => candidates.map((one) => one.case));
console.log(
  `${memos.length} memos, ${all.length} candidates, ${all.filter(({ isRight }) => isRight).length} right`,
);
if (args.includes('--check')) {
  const byStory = stories.map((left) => {
    return { left, weights: fitChoice(choicesOf(memos.filter(({ story }) => story !== left))) };
  });
  const needed = withSound ? NEEDED_WITH_SOUND : NEEDED;
  for (const least of [0.35, 0.5])
    for (const mostHeardWord of [0.05, 0.1, 0.2, 0.3]) {
      const tally = emptyTally();
      for (const memo of memos)
        apply(
          memo,
          byStory.find(({ left }) => left === memo.story)?.weights ?? [],
          { ...needed, least, mostHeardWord },
          tally,
          verbose && least === 0.35 && mostHeardWord === 0.1,
        );
      tell(`at least ${least}, a heard word at most ${mostHeardWord}`, tally);
    }
}
const weights = fitChoice(choicesOf(memos));
if (args.includes('--odds')) {
  const told = all
    .map((one) => ({ one, odds: score(weights, one.features) }))
    .sort((a, b) => b.odds - a.odds);
  const sum = (features: readonly number[]) =>
    features
      .map((x, k) => [FEATURES[k], x * (weights[k] ?? 0)] as const)
      .filter(([, x]) => Math.abs(x) > 0.4)
      .map(([n, x]) => `${n} ${x.toFixed(1)}`)
      .join(', ');
  for (const { one, odds } of told.filter(({ one, odds }) => one.isRight || odds > -1))
    console.log(one.isRight ? '+' : '-', odds.toFixed(1), one.told, '   ', sum(one.features));
}
FEATURES.forEach((name, k) => {
  console.log(name.padEnd(24), weights[k]?.toFixed(3));
});
if (!args.includes('--check')) {
  const [file, type, name] = withSound
    ? (['sound-weights', 'SoundFeature', 'SOUND_WEIGHTS'] as const)
    : (['repair-weights', 'Feature', 'REPAIR_WEIGHTS'] as const);
  const what = withSound ? 'a repair where the recogniser told its doubts' : 'a repair';
  const row = (feature: string, k: number) =>
    `  ${/\W/.test(feature) ? `'${feature}'` : feature}: ${Number((weights[k] ?? 0).toFixed(2))},`;
  writeFileSync(
    join(import.meta.dirname, `../src/language/heard/${file}.ts`),
    `/**
 * Weights of what speaks for and against ${what}. Written by scripts/fit-repair.ts; do not edit by
 * hand.
 */
import type { ${type} } from './weigh-candidate.ts';

export const ${name}: Readonly<Record<${type}, number>> = {
${FEATURES.map(row).join('\n')}
};
`,
  );
}
