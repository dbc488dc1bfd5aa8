/** Which open task a `done` note closes: by the things they share, the way of doing, and how rare the words are. */
import { actionsOf } from './actions.ts';
import { wordsOf } from './names.ts';
import type { TaskRow } from './rows.ts';
import { stemOf } from './stems.ts';

/** Words that say nothing about which task is meant. */
const EMPTY = new Set(
  `a an the this that these those it its i i'm i've we you he she they them him her my our your his their and or but so
  to of for in on at by with from into onto up down is are was were be been being am do did done does have has had having
  get got gotten getting gotta go goes going gone went will would can could should must need needs needed want wants
  wanted not no till until before after once when while as if then than there here now today tomorrow yesterday morning
  tonight night week day days monday tuesday wednesday thursday friday saturday sunday just only also too all both each
  one two some any bit lot thing things stuff really actually finally already yet still ever never next last new more
  much very quite well right okay yeah oh s t re ll ve d m whole every who what which where how why because since though
  about over under again back off out somebody someone anybody everybody nobody time first second third job jobs`
    .split(/\s+/)
    .map(stemOf),
);

/** Words of rank and side: when both sides have one of a set, it must be the same. */
const RIVALS: readonly (readonly string[])[] = [
  ['first', 'second', 'third', 'fourth', 'final', 'last'],
  ['east', 'west', 'north', 'south'],
  ['left', 'right'],
  ['port', 'starboard'],
  ['front', 'back', 'rear'],
  ['upper', 'lower'],
  ['top', 'bottom'],
  ['inner', 'outer'],
  ['inside', 'outside'],
  ['hot', 'cold'],
];

/** Stems of a text with what they weigh. */
type Weights = ReadonlyMap<string, number>;

export interface Described {
  readonly weights: Weights;
  readonly words: ReadonlySet<string>;
  readonly actions: ReadonlySet<string>;
}

const GIST = 1;
const QUOTE = 0.9;
const AROUND = 0.35;

/** After these stands where a deed was done, and not what was done: "the second coat is on the floor". */
const PLACE = new Set(
  'on in at under behind beside by near round around into onto through inside outside'.split(' '),
);
/** A place says less of a deed than the thing itself. */
const PLACED = 0.5;

/** Describes a deed: as `describe`, with the words for its place weighing less. */
export function describeDeed(gist: string, quote: string, around: string): Described {
  const described = describe(gist, quote, around);
  const weights = new Map(described.weights);
  const words = wordsOf(quote);
  const at = words.findIndex((word, index) => index > 0 && PLACE.has(word) && index < words.length - 1);
  if (at < 0) return described;
  const things = new Set(words.slice(0, at).map(stemOf));
  for (const word of words.slice(at + 1)) {
    const stem = stemOf(word);
    const weight = weights.get(stem);
    if (weight !== undefined && !things.has(stem)) weights.set(stem, weight * PLACED);
  }
  return { ...described, weights };
}

/** Describes a task or a deed by its gist, its quote and the talk around it. */
export function describe(gist: string, quote: string, around: string): Described {
  const weights = new Map<string, number>();
  const put = (text: string, weight: number) => {
    for (const word of wordsOf(text)) {
      const stem = stemOf(word);
      if (EMPTY.has(stem) && !PARTICLES.has(word)) continue;
      weights.set(stem, Math.max(weights.get(stem) ?? 0, weight));
    }
  };
  put(around, AROUND);
  put(quote, QUOTE);
  put(gist, GIST);
  const own = wordsOf(`${gist} ${quote}`);
  const actions = new Set(own.flatMap((word) => [...actionsOf(stemOf(word))]));
  return { weights, words: new Set(own), actions };
}

const PARTICLES: ReadonlySet<string> = new Set();

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
  if (RIVALS.some((group) => areRivals(group, deed.words, task.words))) return 0;
  let things = 0;
  let acts = 0;
  for (const [stem, weight] of deed.weights) {
    const [other, held] = found(task.weights, stem);
    if (other === undefined || held === undefined) continue;
    const worth = (weight * other) / Math.sqrt(Math.max(1, holders.get(held) ?? 0));
    if (actionsOf(stem).size > 0) acts += worth * 0.6;
    else things += worth;
  }
  if (sharesRank(deed.words, task.words) && things > 0) things += SAME_RANK;
  if (things === 0 && acts < 0.55) return 0;
  const common = [...deed.actions].filter((action) => task.actions.has(action)).length;
  const clash = common === 0 && deed.actions.size > 0 && task.actions.size > 0;
  return things + acts + (common > 0 ? 0.45 : 0) - (clash ? 0.45 : 0);
}

/** "Do the second tomorrow", "second coat's on": the same one of a row. */
const SAME_RANK = 0.45;
const RANKS = new Set(RIVALS[0]);
const sharesRank = (a: ReadonlySet<string>, b: ReadonlySet<string>) =>
  [...RANKS].some((rank) => a.has(rank) && b.has(rank));

/** Shortest part by which a compound is known: the "mill" of "sawmill". */
const PART = 4;

/** The weight of a stem, or of a compound that ends in it or that it ends in. */
function found(weights: Weights, stem: string): readonly [number | undefined, string | undefined] {
  const exact = weights.get(stem);
  if (exact !== undefined) return [exact, stem];
  if (stem.length < PART) return NONE;
  for (const [other, weight] of weights) {
    if (other.length < PART || other.length === stem.length) continue;
    if (other.endsWith(stem) || stem.endsWith(other)) return [weight * COMPOUND, other];
  }
  return NONE;
}
const NONE = [undefined, undefined] as const;
const COMPOUND = 0.8;

function areRivals(group: readonly string[], a: ReadonlySet<string>, b: ReadonlySet<string>): boolean {
  const [left, right] = [group.filter((word) => a.has(word)), group.filter((word) => b.has(word))];
  return left.length > 0 && right.length > 0 && !left.some((word) => right.includes(word));
}

/** Enough for a deed to close a task. */
const CLOSES = 0.85;

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

function without(text: string, part: string): string {
  const at = text.toLowerCase().indexOf(part.toLowerCase());
  return at < 0 ? text : text.slice(0, at) + text.slice(at + part.length);
}

/** A task as far as matching goes: what it waits for is other work, so those words say nothing of it. */
function describeTask(task: TaskRow): Described {
  const known = describedTasks.get(task);
  if (known) return known;
  const described = describeAnew(task);
  describedTasks.set(task, described);
  return described;
}
/** A task that stays open is held against the deeds of one memo after another. */
const describedTasks = new WeakMap<TaskRow, Described>();

function describeAnew(task: TaskRow): Described {
  const described = describe(task.gist, task.quote, task.around);
  if (task.waitsFor.length === 0) return described;
  const ownGist = task.waitsFor.reduce((gist, wait) => without(gist, wait), task.gist);
  const own = new Set(wordsOf(ownGist).map(stemOf));
  const weights = new Map(described.weights);
  const gateWords = task.waitsFor.flatMap((wait) => wordsOf(wait).map(stemOf));
  for (const stem of gateWords) if (!own.has(stem)) weights.delete(stem);
  const actions = new Set(wordsOf(ownGist).flatMap((word) => [...actionsOf(stemOf(word))]));
  return { ...described, weights, actions: actions.size > 0 ? actions : described.actions };
}

export interface Deed {
  readonly gist: string;
  readonly quote: string;
  /** The sentence that it was said in. */
  readonly around: string;
}

/**
 * Which open task each deed of a memo closes, if any. The best answer is given first and each task is closed once; of
 * equals the earlier deed closes the later task.
 */
export function closedBy(
  deeds: readonly Deed[],
  tasks: readonly TaskRow[],
): readonly (TaskRow | undefined)[] {
  const described = tasks.map(describeTask);
  const holders = holdersOf(described);
  const waits = tasks.map((task) => task.waitsFor.map((wait) => describe(wait, wait, '')));
  const pairs = deeds.flatMap((deed, at) => {
    const told = describeDeed(deed.gist, deed.quote, deed.around);
    const partly = isPartly(deed.quote);
    return tasks.flatMap((task, index) => {
      if (partly && !BEGINS.test(task.quote)) return [];
      const score = answers(told, described[index] as Described, holders);
      // "The bench has had its oil" ends the waiting of "fix the vice once the bench is oiled", and not that task.
      const gates = (waits[index] as readonly Described[]).some(
        (wait) => answers(told, wait, holders) > score,
      );
      return score >= CLOSES && !gates ? [{ at, index, score }] : [];
    });
  });
  pairs.sort((a, b) => b.score - a.score || a.at - b.at || b.index - a.index);
  const closed = new Map<number, TaskRow>();
  const taken = new Set<number>();
  for (const { at, index } of pairs) {
    if (closed.has(at) || taken.has(index)) continue;
    closed.set(at, tasks[index] as TaskRow);
    taken.add(index);
  }
  return deeds.map((_, at) => closed.get(at));
}
