/** Which open task a `done` note closes: by the things they share, the way of doing, and how rare the words are. */
import { actionsOf } from './actions.ts';
import { type Gisted, type Match, type Sign, signsOf } from './closing-signs.ts';
import { CLOSING_WEIGHTS, LOUD } from './closing-weights.ts';
import { AROUND, type Described, describe, describeDeed, PLACED, QUOTE, type Weights } from './described.ts';
import { answersGate, type GateWords, gateWords } from './gate-words.ts';
import { leavesOpen } from './looking-deeds.ts';
import { wordsOf } from './names.ts';
import type { TaskRow } from './rows.ts';
import { stemOf } from './stems.ts';
import { areRivalWords, isCompound, sharesRank } from './telling-words.ts';
import { withMore } from './with-more.ts';

/** Over how many open tasks each stem is spread: rare words say more. */
export function holdersOf(open: readonly Described[]): ReadonlyMap<string, number> {
  const holders = new Map<string, number>();
  for (const { weights } of open) {
    for (const [stem, weight] of weights)
      if (weight >= QUOTE) holders.set(stem, (holders.get(stem) ?? 0) + 1);
  }
  return holders;
}

/** How well a deed answers a task: about 1 or more is a match. Rare words among the open tasks count for more. */
export function answers(deed: Described, task: Described, holders: ReadonlyMap<string, number>): number {
  const match = matchOf(deed, task, holders);
  return match ? scoreOf(match, deed, task) : 0;
}

/** What the words of a deed and of a task have in common; undefined where they name different ones of a pair. */
function matchOf(deed: Described, task: Described, holders: ReadonlyMap<string, number>): Match | undefined {
  if (areRivalWords(deed.words, task.words) || goOtherWays(deed.goes, task.goes)) return undefined;
  let things = 0;
  let nearby = 0;
  let acts = 0;
  let isAnchored = false;
  for (const [stem, weight] of deed.weights) {
    const [other, held] = found(task.weights, stem);
    if (other === undefined || held === undefined) continue;
    const worth = (weight * other) / Math.sqrt(Math.max(1, holders.get(held) ?? 0));
    const isAct = actionsOf(stem).size > 0 && !deed.named.has(stem) && !task.named.has(held);
    if (isAct) acts += worth * 0.6;
    // "The sink's in" is not told of the sink hole.
    else if (weight >= PLACED && other >= QUOTE)
      things += deed.telling.has(stem) !== task.telling.has(held) ? worth * WHICH_ONE : worth;
    else nearby += worth;
    // In the own words of both: the talk around holds the things of other work.
    const isOwn = weight > AROUND && other > AROUND;
    if (isOwn && (deed.named.has(stem) || task.named.has(held))) isAnchored = true;
  }
  const sameRank = sharesRank(deed.words, task.words);
  if (isOtherGoods(deed, task)) return undefined;
  if (sameRank && things + nearby + acts > 0) things += SAME_RANK;
  const common = [...deed.actions].filter((action) => task.actions.has(action)).length;
  const got = isGot(deed, task);
  const clash = common === 0 && !got && deed.actions.size > 0 && task.actions.size > 0;
  return { things, nearby, acts, isAnchored, sameRank, common, clash, isGot: got };
}

function scoreOf(
  { things, nearby, acts, isAnchored, sameRank, common, clash }: Match,
  deed: Described,
  task: Described,
): number {
  if (things + nearby === 0 && acts < 0.55) return 0;
  // Both name their things, and none of them is the same: words of the talk around, or the way of doing, are no tie.
  if (!isAnchored && !sameRank && deed.things.size > 0 && task.things.size > 0) return 0;
  // Other work: what the talk around shares says little then.
  return clash ? things + nearby / 2 + acts - 0.45 : things + nearby + acts + (common > 0 ? 0.45 : 0);
}

/** "The glass is ordered" is no answer to "order the cable": both name what is ordered, and it is not the same. */
function isOtherGoods(deed: Described, task: Described): boolean {
  if (!deed.weights.has(ORDER) || !task.weights.has(ORDER)) return false;
  if (deed.named.size === 0 || task.named.size === 0) return false;
  return ![...deed.named].some((stem) => found(task.weights, stem)[0] !== undefined);
}
const ORDER = stemOf('order');

/** A word that is a thing here and there only tells which one of its kind another thing is. */
const WHICH_ONE = 0.8;

/** "Get the floorboards up", "the floorboards are back down": what was put back is not what was to be taken up. */
function goOtherWays(a: string | undefined, b: string | undefined): boolean {
  return a !== undefined && b !== undefined && OTHER_WAYS[a] === b;
}
const OTHER_WAYS: Readonly<Record<string, string>> = {
  up: 'down',
  down: 'up',
  in: 'out',
  out: 'in',
  on: 'off',
  off: 'on',
};

/** Ways of doing that end when the goods are there. */
const GETTING: ReadonlySet<string> = new Set(['buy', 'fetch', 'ask', 'pay']);
const isGetting = ({ actions }: Described) => [...actions].some((action) => GETTING.has(action));
/** What was to be bought is done when it was fetched. */
const isGot = (deed: Described, task: Described) =>
  isGetting(task) && [...deed.actions].some((action) => action === 'buy' || action === 'fetch');

/** "Do the second tomorrow", "second coat's on": the same one of a row. */
const SAME_RANK = 0.45;

/** The weight of a stem, or of a compound that ends in it or that it ends in. */
function found(weights: Weights, stem: string): readonly [number | undefined, string | undefined] {
  const exact = weights.get(stem);
  if (exact !== undefined) return [exact, stem];
  for (const [other, weight] of weights) {
    if (isCompound(stem, other))
      return [weight * (other.startsWith(stem) || stem.startsWith(other) ? ROOT : COMPOUND), other];
  }
  return NONE;
}
const NONE = [undefined, undefined] as const;
const COMPOUND = 0.8;
const ROOT = 0.9;

/** Enough for a deed to close a task. */
const CLOSES = 0.85;
/** Enough for a deed to close a task although it also answers what the task waits for. */
const SURE = 1.2;

const NUMBER = '(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\\d+)';
/** "Three of the four posts", "half of the sheets", "the first dozen panes": the rest is still to do. */
const PARTLY = new RegExp(
  `\\b(?:half|most|some|part|a few|a couple|${NUMBER}) (?:out )?of (?:the|them|those|my|our|these)?\\b|\\bhalf (?:the|my|our|a) |\\bso far\\b|\\bthe first (?:few|dozen|half|lot|${NUMBER})\\b|\\b(?:one|${NUMBER}) (?:down|done)\\b.*\\bto go\\b`,
  'i',
);
/** A task to begin with something is done by a part of it. */
const BEGINS = /\b(?:start|begin|first)/i;
const WHOLE = /\ball (?:of|the)\b|\bevery (?:one|last|single)\b|\bother\b/i;

export const isPartly = (quote: string): boolean => PARTLY.test(quote) && !WHOLE.test(quote);

const ALL_BUT = /^[\s,;:]*(?:bar|except|excepting|apart from|all but|save|minus|short of)\b/i;
/** "The deck's down, bar two boards". */
function isAllBut({ around, quote }: Deed): boolean {
  const at = around.indexOf(quote);
  return at >= 0 && ALL_BUT.test(around.slice(at + quote.length));
}

function without(text: string, part: string): string {
  const at = text.toLowerCase().indexOf(part.toLowerCase());
  return at < 0 ? text : text.slice(0, at) + text.slice(at + part.length);
}

const ON_ITS_WAY = /\b(?:ship(?:ped|ping)|on (?:its|their|the) way|sent|post(?:ed)?|gone back|going back)\b/i;
function isDoneByGoods({ goods, quote }: Deed, task: Described): boolean {
  if (goods === 'received') return isGetting(task);
  return task.actions.has(ON_ITS_WAY.test(quote) && task.actions.has('send') ? 'send' : 'buy');
}

/** Where what is waited for begins in the words of a task. */
const GATE_BEGINS =
  /\b(?:until|till|til|before|once|as soon as|soon as|when|after|unless|but not|ahead of|waiting (?:on|for))\b/i;

function withoutGate({ quote, waitsFor }: TaskRow): string {
  const at = waitsFor.length > 0 ? quote.search(GATE_BEGINS) : -1;
  return at > 0 ? quote.slice(0, at) : quote;
}

/** A task as far as matching goes: what it waits for is other work, so those words say nothing of it. */
function describeTask(task: TaskRow): Gisted {
  const known = describedTasks.get(task);
  if (known) return known;
  const described = withMore(describeAnew(task), { gist: task.gist });
  describedTasks.set(task, described);
  return described;
}
/** A task that stays open is held against the deeds of one memo after another. */
const describedTasks = new WeakMap<TaskRow, Gisted>();

function describeAnew(task: TaskRow): Described {
  const described = describe(task.gist, withoutGate(task), task.around);
  if (task.waitsFor.length === 0) return described;
  const ownGist = task.waitsFor.reduce((gist, wait) => without(gist, wait), task.gist);
  const own = new Set(wordsOf(ownGist).map(stemOf));
  const weights = new Map(described.weights);
  const gateWords = task.waitsFor.flatMap((wait) => wordsOf(wait).map(stemOf));
  for (const stem of gateWords) if (!own.has(stem)) weights.delete(stem);
  const actions = new Set(wordsOf(ownGist).flatMap((word) => [...actionsOf(stemOf(word))]));
  const things = new Set([...described.things].filter((stem) => weights.has(stem)));
  return { ...described, weights, things, actions: actions.size > 0 ? actions : described.actions };
}

export interface Deed {
  readonly gist: string;
  readonly quote: string;
  /** The sentence that it was said in. */
  readonly around: string;
  /**
   * Goods: received ones close the task of getting them, expected ones that of ordering them (or of sending them, where
   * they are on their way); no other work on them is done by that.
   */
  readonly goods?: 'received' | 'expected';
}

/**
 * Which open task each deed of a memo closes, if any. The best answer is given first and each task is closed once; of
 * equals the earlier deed closes the later task.
 */
export function closedBy(
  deeds: readonly Deed[],
  tasks: readonly TaskRow[],
): readonly (TaskRow | undefined)[] {
  return allClosedBy(deeds, tasks).map(([first]) => first);
}

/** Every open task that each deed closes: the one that it answers best, and others that it plainly tells of as well. */
export function allClosedBy(
  deeds: readonly Deed[],
  tasks: readonly TaskRow[],
  today?: string,
): readonly (readonly TaskRow[])[] {
  const pairs = [...pairsOf(deeds, tasks, today)].filter(
    ({ score, signs }) => score >= CLOSES || (signs !== undefined && weigh(signs) >= LOUD),
  );
  // What a person says is done comes before what follows from goods that came.
  const isGoods = ({ at }: { readonly at: number }) => (deeds[at]?.goods ? 1 : 0);
  pairs.sort((a, b) => isGoods(a) - isGoods(b) || rateOf(b) - rateOf(a) || a.at - b.at || b.index - a.index);
  const closed = new Map<number, TaskRow>();
  const taken = new Set<number>();
  for (const { at, index } of pairs) {
    if (closed.has(at) || taken.has(index)) continue;
    closed.set(at, tasks[index] as TaskRow);
    taken.add(index);
  }
  const more = new Map<number, TaskRow[]>();
  for (const { at, index, score } of pairs) {
    const [deed, first, task] = [deeds[at], closed.get(at), tasks[index]];
    if (!deed || !first || !task || taken.has(index) || score < PLAINLY || deed.goods) continue;
    if (!endsAlso(deed, describeTask(first), describeTask(task))) continue;
    more.set(at, [...(more.get(at) ?? []), task]);
    taken.add(index);
  }
  return deeds.map((_, at) => {
    const first = closed.get(at);
    return first ? [first, ...(more.get(at) ?? [])] : [];
  });
}

/** A deed and an open task that may be ended by it. */
export interface Pair {
  /** Numbers of the deed and of the task. */
  readonly at: number;
  readonly index: number;
  readonly score: number;
  /** What speaks for it; none where goods came or are on order. */
  readonly signs?: readonly Sign[];
}

/** Every deed with every open task that shares something with it and that it may end. `today`: the memo's day. */
export function pairsOf(deeds: readonly Deed[], tasks: readonly TaskRow[], today?: string): readonly Pair[] {
  const described = tasks.map(describeTask);
  const holders = holdersOf(described);
  // Only what came or is on order asks which of the open tasks are for getting something.
  const getting = deeds.some(({ goods }) => goods) ? holdersOf(described.filter(isGetting)) : holders;
  const waits = tasks.map((task) => task.waitsFor.map(gateWords));
  const matched = deeds.flatMap((deed, at) => {
    const told = withMore(describeDeed(deed.gist, deed.quote, deed.around), { gist: deed.gist });
    const said = gateWords(`${deed.gist} ${deed.quote}`);
    const partly = isPartly(deed.quote) || isAllBut(deed);
    return tasks.flatMap((task, index) => {
      const asked = described[index] as Gisted;
      if (partly && !BEGINS.test(task.quote)) return [];
      if (deed.goods && !isDoneByGoods(deed, asked)) return [];
      if (!deed.goods && leavesOpen(deed, asked)) return [];
      const match = matchOf(told, asked, deed.goods ? getting : holders);
      if (!match || match.things + match.nearby + match.acts === 0) return [];
      const score = scoreOf(match, told, asked);
      // "The bench has had its oil" ends the waiting of "fix the vice once the bench is oiled", and not that task.
      const gates =
        (waits[index] as readonly GateWords[]).some((wait) => answersGate(said, wait)) && score < SURE;
      return gates ? [] : [{ at, index, score, match, told, deed, asked, task }];
    });
  });
  const best = (key: 'at' | 'index') => {
    const most = new Map<number, number>();
    for (const pair of matched) most.set(pair[key], Math.max(most.get(pair[key]) ?? 0, strength(pair.match)));
    return most;
  };
  const [ofDeed, ofTask] = [best('at'), best('index')];
  const namers = namersOf(described);
  return matched.map(({ at, index, score, match, told, deed, asked, task }): Pair => {
    if (deed.goods || isBarred(told, asked, match)) return { at, index, score };
    const shared = [...told.named].filter((stem) => asked.named.has(stem));
    const counts = shared.map((stem) => namers.get(stem) ?? 0);
    const standing = {
      ofDeed: strength(match) / (ofDeed.get(at) || 1),
      ofTask: strength(match) / (ofTask.get(index) || 1),
      sharers: counts.length === 0 ? 0 : Math.min(...counts),
      asked: tasks.length,
      waits: task.waitsFor.length > 0,
      days: today === undefined ? 0 : Math.max(0, daysApart(task.source.recordedAt, today)),
      isDue: today === undefined || task.due === undefined ? undefined : task.due <= today.slice(0, 10),
    };
    const signs = signsOf(told, asked, match, standing);
    return { at, index, score, signs };
  });
}

/** How many tasks name each thing. */
function namersOf(described: readonly Described[]): ReadonlyMap<string, number> {
  const namers = new Map<string, number>();
  for (const { named } of described) for (const stem of named) namers.set(stem, (namers.get(stem) ?? 0) + 1);
  return namers;
}

/** What shares words enough comes first; behind it what the other signs speak for. */
const rateOf = ({ score, signs }: Pair): number =>
  score >= CLOSES || signs === undefined ? SHARED + score : weigh(signs);
const SHARED = 100;

/** What no other sign outweighs: such a deed is of another thing, or of another stage of the work. */
function isBarred(deed: Described, task: Described, match: Match): boolean {
  const { isAnchored, sameRank, things, acts, clash } = match;
  // Both name their things, none of them is the same, and only the talk around has words of both.
  if (!isAnchored && !sameRank && things + acts === 0 && deed.things.size > 0 && task.things.size > 0)
    return true;
  // "The sink's in" is not told of the sink hole.
  const shared = [...deed.named].filter((stem) => task.named.has(stem));
  if (
    shared.length > 0 &&
    shared.every((stem) => deed.telling.has(stem) !== task.telling.has(stem)) &&
    match.common === 0
  )
    return true;
  // "The new flashing's ordered": the wrong one has not gone back yet.
  if (isSendingBack(task) && !WENT_BACK.some((word) => deed.words.has(word))) return true;
  // What was glued is not sanded yet.
  return clash && [...deed.actions, ...task.actions].every((way) => STAGES.has(way));
}
const isSendingBack = ({ words }: Described): boolean =>
  words.has('return') ||
  (words.has('back') && ['send', 'take', 'bring', 'post'].some((word) => words.has(word)));
const WENT_BACK = [
  'back',
  'sent',
  'return',
  'returned',
  'posted',
  'collected',
  'swapped',
  'gone',
  'went',
  'took',
];

/** Ways of doing that follow each other on one thing. */
const STAGES: ReadonlySet<string> = new Set([
  'cut',
  'drill',
  'join',
  'fit',
  'coat',
  'clean',
  'dig',
  'fill',
  'measure',
]);

const strength = ({ things, nearby, acts, common, clash }: Match): number =>
  things + nearby / 2 + acts + (common > 0 ? 0.45 : clash ? -0.2 : 0) || 0;

const daysApart = (from: string, to: string): number =>
  (Date.parse(to.slice(0, 10)) - Date.parse(from.slice(0, 10))) / 86_400_000;

const WEIGHTS: ReadonlyMap<string, number> = new Map(Object.entries(CLOSING_WEIGHTS));

const weigh = (signs: readonly Sign[]): number =>
  signs.reduce((sum, [name, size]) => sum + (WEIGHTS.get(name) ?? 0) * size, 0);

/**
 * Whether a deed ends a task that the same memo told before it. More is asked than of a task of another day, since a memo
 * tells of much work on one thing: the same way of doing, in so many words, to what the task names.
 */
export function closesOwn(deed: Deed, task: TaskRow): boolean {
  if ((isPartly(deed.quote) || isAllBut(deed)) && !BEGINS.test(task.quote)) return false;
  const described = describeTask({ ...task, around: task.quote });
  const told = describeDeed(deed.gist, deed.quote, deed.quote);
  const sameWay = [...told.actions].some((way) => described.actions.has(way));
  const sameThing = [...described.named].some((stem) => told.named.has(stem));
  if (!sameThing || !(sameWay || (told.goes !== undefined && told.goes === described.goes))) return false;
  if (task.waitsFor.some((wait) => answersGate(gateWords(deed.quote), gateWords(wait)))) return false;
  return answers(told, described, NO_HOLDERS) >= SURE;
}
const NO_HOLDERS: ReadonlyMap<string, number> = new Map();

/** As well as a task can be answered by a deed that is about another one, too. */
const PLAINLY = 1;
/** "Both", "all of them": the same done to several. */
const SEVERAL = /\b(?:both|all|every|everything|pair|two|three|four|the lot)\b/i;

/** Whether a deed that ends one task tells of another as well: done in another way, to another thing, or to both. */
function endsAlso(deed: Deed, first: Described, task: Described): boolean {
  const told = describe(deed.gist, deed.quote, '');
  const shared = [...task.actions].filter((way) => told.actions.has(way));
  if (task.actions.size > 0 && told.actions.size > 0 && shared.length === 0) return false;
  const isWholly = task.things.size > 0 && [...task.things].every((stem) => told.things.has(stem));
  if (SEVERAL.test(deed.quote) && isWholly) return true;
  if (areRivalWords(task.words, first.words)) return false;
  if (!/\band\b|,/.test(deed.quote)) return false;
  const otherWay = shared.some((way) => !first.actions.has(way));
  const otherThing = [...task.named].some((stem) => told.named.has(stem) && !first.named.has(stem));
  return otherWay || otherThing;
}
